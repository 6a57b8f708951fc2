package garden

import (
	"bytes"
	"encoding/json"
	"os"
	"reflect"
	"slices"
	"sort"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

// definition is what the test reads of one of the schema's mappings.
type definition struct {
	Properties           map[string]struct{ Enum []any }
	Required             []string
	AdditionalProperties *bool
}

// TestSchemaAndReaderAgree wants every key the reader knows in the published
// schema and the reverse, the same keys needed, the same words allowed.
func TestSchemaAndReaderAgree(t *testing.T) {
	var schema struct {
		Defs map[string]definition `json:"$defs"`
	}
	if err := json.Unmarshal(keepKeyed(t, Schema()), &schema); err != nil {
		t.Fatal(err)
	}
	var mappings []string
	for name, d := range schema.Defs {
		if d.Properties != nil {
			mappings = append(mappings, name)
		}
	}
	sort.Strings(mappings)
	var known []string
	for _, sh := range shapes() {
		known = append(known, sh.name)
		d := schema.Defs[sh.name]
		if d.AdditionalProperties == nil || *d.AdditionalProperties {
			t.Errorf("%s: the schema lets unknown keys pass, the reader does not", sh.name)
		}
		var needed []string
		for _, k := range sh.keys {
			p, ok := d.Properties[k.name]
			if !ok {
				t.Errorf("%s: the reader knows %q, the schema does not", sh.name, k.name)
			}
			if k.needed {
				needed = append(needed, k.name)
			}
			if k.words != nil && !reflect.DeepEqual(k.words, yesNo()) {
				var words []string
				for _, w := range p.Enum {
					words = append(words, w.(string))
				}
				if !slices.Equal(words, k.words) {
					t.Errorf("%s %s: the reader takes %v, the schema %v", sh.name, k.name, k.words, words)
				}
			}
		}
		for name := range d.Properties {
			if _, ok := sh.key(name); !ok {
				t.Errorf("%s: the schema knows %q, the reader does not", sh.name, name)
			}
		}
		sort.Strings(needed)
		sort.Strings(d.Required)
		if !slices.Equal(needed, d.Required) {
			t.Errorf("%s: the reader needs %v, the schema %v", sh.name, needed, d.Required)
		}
	}
	sort.Strings(known)
	if !slices.Equal(known, mappings) {
		t.Errorf("the reader reads %v, the schema defines %v", known, mappings)
	}
}

// keepKeyed drops the definitions that are no mappings of ours.
func keepKeyed(t *testing.T, schema []byte) []byte {
	var all struct {
		Defs map[string]map[string]any `json:"$defs"`
	}
	if err := json.Unmarshal(schema, &all); err != nil {
		t.Fatal(err)
	}
	for name, d := range all.Defs {
		if d["properties"] == nil {
			delete(all.Defs, name)
		}
	}
	out, err := json.Marshal(all)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// TestPublishedSchema wants the copy in docs to be the one inside.
func TestPublishedSchema(t *testing.T) {
	published, err := os.ReadFile("../../docs/garden-file.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(published, Schema()) {
		t.Error("docs/garden-file.schema.json differs from internal/garden/garden-file.schema.json; copy the latter over it")
	}
}

func compiled(t testing.TB) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("garden-file.schema.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("garden-file.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// validate checks YAML text against the schema as another program would.
func validate(s *jsonschema.Schema, text []byte) error {
	var v any
	if err := yaml.Unmarshal(text, &v); err != nil {
		return err
	}
	asJSON, err := json.Marshal(v)
	if err != nil {
		return err
	}
	if v, err = jsonschema.UnmarshalJSON(bytes.NewReader(asJSON)); err != nil {
		return err
	}
	return s.Validate(v)
}

func TestDemoGardensFitSchema(t *testing.T) {
	s := compiled(t)
	for _, name := range []string{"garden.yaml", "south.yaml"} {
		text, err := os.ReadFile("../../demo/" + name)
		if err != nil {
			t.Fatal(err)
		}
		if err := validate(s, text); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		for _, bad := range []string{
			strings.Replace(string(text), "kind: raised bed", "kind: raised bead", 1),
			strings.Replace(string(text), "depth: ", "depht: ", 1),
			strings.Replace(string(text), "latitude", "lattitude", 1),
			strings.Replace(string(text), "count: ", "number: ", 1),
		} {
			if validate(s, []byte(bad)) == nil {
				t.Errorf("%s: a spoilt copy fits the schema", name)
			}
		}
	}
}
