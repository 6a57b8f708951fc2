package garden

import (
	"strings"

	"github.com/goccy/go-yaml/ast"
)

// Look returns what a text holds at a path, as typed; false when nothing
// stands there or the text is not readable.
func Look(text []byte, at ...string) (Value, bool) {
	d, err := openText([]byte(strings.ReplaceAll(strings.TrimPrefix(string(text), "\ufeff"), "\r\n", "\n")))
	if err != nil {
		return Value{}, false
	}
	s, ok := d.find(at)
	if !ok || null(s.value) {
		return Value{}, false
	}
	return valueOf(s.value), true
}

// valueOf turns nodes into a value as typed.
func valueOf(n ast.Node) Value {
	if text, _, ok := scalar(n); ok {
		return Text(text)
	}
	if list, ok := bare(n).(*ast.SequenceNode); ok {
		v := Value{Line: list.IsFlowStyle, Items: []Value{}}
		for _, one := range list.Values {
			v.Items = append(v.Items, valueOf(one))
		}
		return v
	}
	m, ok := mapping(n)
	if !ok {
		return Text("")
	}
	v := Value{Line: m.flow, Pairs: []KeyValue{}}
	for _, p := range m.values {
		key, _, _ := scalar(p.Key)
		v.Pairs = append(v.Pairs, KeyValue{key, valueOf(p.Value)})
	}
	return v
}

// Get returns the text behind a key of a mapping, "" when it has none.
func (v Value) Get(key string) string { return v.At(key).Text }

// At returns the value behind a key of a mapping, an empty one when it has none.
func (v Value) At(key string) Value {
	for _, p := range v.Pairs {
		if p.Key == key {
			return p.Value
		}
	}
	return Value{}
}

// Has reports whether a mapping has a key.
func (v Value) Has(key string) bool {
	for _, p := range v.Pairs {
		if p.Key == key {
			return true
		}
	}
	return false
}

// List returns a list's entries; a single text or mapping is a list of one.
func (v Value) List() []Value {
	switch {
	case v.Items != nil:
		return v.Items
	case v.Pairs == nil && v.Text == "":
		return nil
	}
	return []Value{v}
}

// Keys lists the keys of a mapping in order.
func (v Value) Keys() []string {
	var out []string
	for _, p := range v.Pairs {
		out = append(out, p.Key)
	}
	return out
}

// With returns the mapping with a key set, or taken out when the value is empty.
func (v Value) With(key string, to Value) Value {
	empty := to.Text == "" && len(to.Items) == 0 && len(to.Pairs) == 0
	out := Value{Line: v.Line, Pairs: []KeyValue{}}
	done := false
	for _, p := range v.Pairs {
		if p.Key == key {
			done = true
			if empty {
				continue
			}
			p.Value = to
		}
		out.Pairs = append(out.Pairs, p)
	}
	if !done && !empty {
		out.Pairs = append(out.Pairs, KeyValue{key, to})
	}
	return out
}

// PathAt returns the entry whose key stands in a line of a text, counted from
// 1, or the nearest above it; the path of the whole file when there is none.
func PathAt(text []byte, line int) Path {
	d, err := openText([]byte(strings.ReplaceAll(strings.TrimPrefix(string(text), "\ufeff"), "\r\n", "\n")))
	if err != nil {
		return nil
	}
	var best Path
	var walk func(n ast.Node, at Path)
	walk = func(n ast.Node, at Path) {
		if m, ok := mapping(n); ok {
			for _, v := range m.values {
				key, _, _ := scalar(v.Key)
				here := append(append(Path{}, at...), key)
				if first(v.Key).Position.Line <= line {
					best = here
					walk(v.Value, here)
				}
			}
			return
		}
		if list, ok := bare(n).(*ast.SequenceNode); ok {
			for i, one := range list.Values {
				here := append(append(Path{}, at...), itoa(i))
				if first(bare(one)).Position.Line <= line {
					best = here
					walk(one, here)
				}
			}
		}
	}
	walk(d.root, nil)
	return best
}
