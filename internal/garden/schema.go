package garden

import _ "embed"

//go:embed garden-file.schema.json
var schemaText []byte

// Schema returns the published JSON Schema (draft 2020-12) of the garden file,
// the same text as docs/garden-file.schema.json. It checks keys, words and
// forms; references, dates and the plan itself are the reader's to check.
func Schema() []byte { return append([]byte(nil), schemaText...) }
