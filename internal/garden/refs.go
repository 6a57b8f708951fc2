package garden

import "github.com/goccy/go-yaml/token"

// ref is a name that must stand elsewhere in the file.
type ref struct {
	section string
	id      string
	at      *token.Token
}

// refer reads a key that names something of a section and keeps it to be
// looked up when the whole file is read.
func (f fields) refer(name, section string) string {
	text, tk, ok := f.text(name)
	if !ok {
		return ""
	}
	f.r.refs = append(f.r.refs, ref{section, text, tk})
	return text
}

// resolve reports names that stand nowhere in the file.
func (r *reader) resolve() {
	one := map[string]string{"people": "person", "media": "batch of medium", "spaces": "space"}
	for _, ref := range r.refs {
		if !has(r.declared[ref.section], ref.id) {
			remedy := "Add it under " + ref.section + ", or write one that stands there."
			if id, ok := nearest(ref.id, r.declared[ref.section]); ok {
				remedy = "Did you mean " + id + "?"
			}
			r.at(ref.at, "unknown "+one[ref.section]+" "+clip(ref.id), remedy)
		}
	}
}

func has(names []string, name string) bool {
	for _, n := range names {
		if n == name {
			return true
		}
	}
	return false
}
