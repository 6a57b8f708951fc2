package garden

import (
	"encoding/json"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// rendered writes a value as it stands behind "key:". A text or a line begins
// with a space; a block begins with a line end. indent is the key's own.
func rendered(v Value, indent int, nl string, flow bool) string {
	lead := " "
	if flow {
		lead = ""
	}
	switch {
	case v.Pairs == nil && v.Items == nil:
		return lead + quote(v.Text, flow)
	case flow || v.Line:
		return lead + inline(v)
	}
	out := nl
	for _, p := range v.Pairs {
		out += block(p, indent+2, nl)
	}
	for _, i := range v.Items {
		out += item(i, indent+2, nl)
	}
	return strings.TrimSuffix(out, nl)
}

// inline writes a value on one line.
func inline(v Value) string {
	var parts []string
	switch {
	case v.Items != nil:
		for _, i := range v.Items {
			parts = append(parts, inline(i))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case v.Pairs != nil:
		for _, p := range v.Pairs {
			parts = append(parts, quote(p.Key, true)+": "+inline(p.Value))
		}
		return "{" + strings.Join(parts, ", ") + "}"
	}
	return quote(v.Text, true)
}

// block writes a key with its value as whole lines.
func block(p KeyValue, indent int, nl string) string {
	return strings.Repeat(" ", indent) + quote(p.Key, false) + ":" + rendered(p.Value, indent, nl, false) + nl
}

// item writes an entry of a list as whole lines.
func item(v Value, indent int, nl string) string {
	pad := strings.Repeat(" ", indent)
	if v.Pairs == nil || v.Line {
		return pad + "- " + strings.TrimLeft(rendered(v, indent, nl, true), " ") + nl
	}
	out := ""
	for i, p := range v.Pairs {
		lines := block(p, indent+2, nl)
		if i == 0 {
			lines = pad + "- " + strings.TrimLeft(lines, " ")
		}
		out += lines
	}
	return out
}

// quote writes a text so that it reads back letter by letter: plain where YAML
// takes it plain, in double quotes elsewhere.
func quote(text string, flow bool) string {
	text = strings.TrimSpace(text)
	if plainReads(text, flow) {
		return text
	}
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(strings.ToValidUTF8(text, "?")); err != nil {
		return `""`
	}
	return strings.TrimSpace(b.String())
}

// plainReads reports whether a text without quotes reads as itself.
func plainReads(text string, flow bool) (ok bool) {
	if text == "" || strings.ContainsAny(text, "\n\r\t\"#&*!|>%@`{}[]~") || strings.Contains(text, ": ") || strings.HasSuffix(text, ":") {
		return text != "" && inchesOnly(text, flow)
	}
	return reads(text, flow)
}

// inchesOnly lets sizes such as 2'6" stand plain: a quote that does not begin
// a text does not end it.
func inchesOnly(text string, flow bool) bool {
	if text[0] < '0' || text[0] > '9' || strings.ContainsAny(text, "\n\r\t#&*!|>%@`{}[]~:,") {
		return false
	}
	return reads(text, flow)
}

func reads(text string, flow bool) (ok bool) {
	defer func() {
		if recover() != nil {
			ok = false
		}
	}()
	line := "k: " + text + "\n"
	if flow {
		if strings.Contains(text, ",") || strings.ContainsAny(text, `"'`) {
			return false
		}
		line = "k: [" + text + "]\n"
	}
	file, err := parser.ParseBytes([]byte(line), 0)
	if err != nil || len(file.Docs) != 1 {
		return false
	}
	m, isMap := mapping(file.Docs[0].Body)
	if !isMap || len(m.values) != 1 {
		return false
	}
	n := m.values[0].Value
	if flow {
		list, isList := n.(*ast.SequenceNode)
		if !isList || len(list.Values) != 1 {
			return false
		}
		n = list.Values[0]
	}
	got, _, single := scalar(n)
	return single && got == text
}
