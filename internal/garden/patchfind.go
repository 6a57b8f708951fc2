package garden

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
)

// draft is a text being changed, with its nodes and where its lines begin.
type draft struct {
	text  []byte
	lines []int // byte where each line begins
	nl    string
	root  ast.Node
}

// spot is one entry of a file: what stands behind a key or in a list.
type spot struct {
	pair     *ast.MappingValueNode // nil in a list
	value    ast.Node
	flow     bool // within brackets
	index    int  // among its siblings
	siblings int
	list     *ast.SequenceNode // the list it stands in, nil behind a key
}

// keys are the entries of a mapping.
type keys struct {
	values []*ast.MappingValueNode
	flow   bool
}

func openText(text []byte) (d *draft, err error) {
	defer func() {
		if recover() != nil {
			d, err = nil, fmt.Errorf("the text is not readable YAML")
		}
	}()
	d = &draft{text: text, nl: "\n", lines: []int{0}}
	for i, c := range text {
		if c == '\n' {
			d.lines = append(d.lines, i+1)
		}
	}
	file, err := parser.ParseBytes(text, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		return nil, fmt.Errorf("the text is not readable YAML: %w", err)
	}
	for _, doc := range file.Docs {
		if doc.Body != nil && doc.Body.Type() != ast.CommentType && d.root == nil {
			d.root = doc.Body
		}
	}
	if d.root == nil {
		return nil, fmt.Errorf("%w: nothing is written yet", errPlace)
	}
	return d, nil
}

// mapping returns the entries of a mapping; ok is false for anything else.
func mapping(n ast.Node) (keys, bool) {
	switch m := bare(n).(type) {
	case *ast.MappingNode:
		return keys{m.Values, m.IsFlowStyle}, true
	case *ast.MappingValueNode:
		return keys{[]*ast.MappingValueNode{m}, false}, true
	}
	return keys{}, false
}

// emptyFlow reports whether a value is {} or [].
func emptyFlow(n ast.Node) bool {
	switch m := bare(n).(type) {
	case *ast.MappingNode:
		return m.IsFlowStyle && len(m.Values) == 0
	case *ast.SequenceNode:
		return m.IsFlowStyle && len(m.Values) == 0
	}
	return false
}

// find follows a path from the root.
func (d *draft) find(at Path) (spot, bool) {
	s := spot{value: d.root, siblings: 1}
	for _, step := range at {
		next, ok := child(s, step)
		if !ok {
			return spot{}, false
		}
		s = next
	}
	return s, true
}

func child(s spot, step string) (spot, bool) {
	if list, ok := bare(s.value).(*ast.SequenceNode); ok {
		i, err := strconv.Atoi(step)
		if err != nil || i < 0 || i >= len(list.Values) {
			return spot{}, false
		}
		return spot{value: list.Values[i], flow: s.flow || list.IsFlowStyle, index: i, siblings: len(list.Values), list: list}, true
	}
	m, ok := mapping(s.value)
	if !ok {
		return spot{}, false
	}
	if step == "0" && s.pair != nil { // a single entry counts as a list of one
		if _, named := keyed(m, step); !named {
			return s, true
		}
	}
	i, ok := keyed(m, step)
	if !ok {
		return spot{}, false
	}
	return spot{pair: m.values[i], value: m.values[i].Value, flow: s.flow || m.flow, index: i, siblings: len(m.values)}, true
}

func keyed(m keys, key string) (int, bool) {
	for i, v := range m.values {
		if text, _, ok := scalar(v.Key); ok && text == key {
			return i, true
		}
	}
	return 0, false
}

// at turns a line and a column in letters, both from 1, into a byte.
func (d *draft) at(line, col int) int {
	if line < 1 {
		return 0
	}
	if line > len(d.lines) {
		return len(d.text)
	}
	i := d.lines[line-1]
	for ; col > 1 && i < len(d.text) && d.text[i] != '\n'; col-- {
		_, n := utf8.DecodeRune(d.text[i:])
		i += n
	}
	return i
}

// start is the byte where a node begins.
func (d *draft) start(n ast.Node) int {
	p := first(bare(n)).Position
	return d.at(p.Line, p.Column)
}

func (d *draft) column(n ast.Node) int { return first(bare(n)).Position.Column }

// lineStart and lineEnd give the whole line around a byte; lineEnd is past
// the line's own end.
func (d *draft) lineStart(i int) int {
	for i > 0 && d.text[i-1] != '\n' {
		i--
	}
	return i
}

func (d *draft) lineEnd(i int) int {
	if i > 0 && d.text[i-1] == '\n' {
		return i
	}
	for i < len(d.text) && d.text[i] != '\n' {
		i++
	}
	return min(i+1, len(d.text))
}

// begin and finish bound an entry: from its key or dash to the end of its value.
func (d *draft) begin(s spot) int {
	switch {
	case s.pair != nil:
		return d.start(s.pair.Key)
	case s.list != nil && !s.flow:
		return d.lineStart(d.start(s.value)) // the dash stands on the same line
	}
	return d.start(s.value)
}

func (d *draft) finish(s spot) int {
	if s.pair != nil && null(s.value) {
		return d.afterColon(s.pair)
	}
	return d.end(s.value)
}

// dash is the indent of the dash of a list's entry.
func (d *draft) dash(s spot) int {
	if s.list == nil {
		return 0
	}
	return d.column(s.list) - 1
}

// afterColon is the byte behind a key's colon.
func (d *draft) afterColon(v *ast.MappingValueNode) int {
	p := v.Start.Position
	return d.at(p.Line, p.Column) + 1
}

// end is the byte behind a node.
func (d *draft) end(n ast.Node) int {
	switch m := bare(n).(type) {
	case *ast.MappingNode:
		if m.IsFlowStyle {
			return d.bracket(d.start(m))
		}
		return d.end(m.Values[len(m.Values)-1])
	case *ast.MappingValueNode:
		if null(m.Value) {
			return d.afterColon(m)
		}
		return d.end(m.Value)
	case *ast.SequenceNode:
		if m.IsFlowStyle {
			return d.bracket(d.start(m))
		}
		return d.end(m.Values[len(m.Values)-1])
	case *ast.LiteralNode:
		line := m.Start.Position.Line + strings.Count(strings.TrimRight(m.Value.GetToken().Origin, "\r\n"), "\n") + 1
		return d.at(line+1, 1) - 1
	}
	return d.scalarEnd(d.start(n), n, false, false)
}

// bracket is the byte behind the bracket that closes the one at i.
func (d *draft) bracket(i int) int {
	depth := 0
	for ; i < len(d.text); i++ {
		switch c := d.text[i]; {
		case c == '[' || c == '{':
			depth++
		case c == ']' || c == '}':
			if depth--; depth == 0 {
				return i + 1
			}
		case (c == '"' || c == '\'') && strings.ContainsRune(" ,[{:\n", rune(d.text[i-1])):
			i = d.quoteEnd(i) - 1
		case c == '#' && (d.text[i-1] == ' ' || d.text[i-1] == '\n'):
			for i < len(d.text) && d.text[i] != '\n' {
				i++
			}
		}
	}
	return len(d.text)
}

// quoteEnd is the byte behind the quote that closes the one at i.
func (d *draft) quoteEnd(i int) int {
	q := d.text[i]
	for i++; i < len(d.text); i++ {
		switch {
		case q == '"' && d.text[i] == '\\':
			i++
		case d.text[i] == q && q == '\'' && i+1 < len(d.text) && d.text[i+1] == q:
			i++
		case d.text[i] == q:
			return i + 1
		}
	}
	return len(d.text)
}

// scalarEnd is the byte behind a text that begins at i. Plain texts end where
// their own letters do.
func (d *draft) scalarEnd(i int, n ast.Node, flow, key bool) int {
	if i < len(d.text) && (d.text[i] == '"' || d.text[i] == '\'') {
		return d.quoteEnd(i)
	}
	origin := strings.TrimSpace(strings.ReplaceAll(n.GetToken().Origin, "\r\n", "\n"))
	j := i
	for _, want := range origin { // spaces and ends of line may differ; the letters do not
		if want == ' ' || want == '\n' || want == '\t' {
			continue
		}
		for j < len(d.text) && (d.text[j] == ' ' || d.text[j] == '\n' || d.text[j] == '\r' || d.text[j] == '\t') {
			j++
		}
		_, size := utf8.DecodeRune(d.text[j:])
		j += size
	}
	return min(j, len(d.text))
}

// aboveComments goes up from a line over comments of its own indent.
func (d *draft) aboveComments(from, indent int) int {
	for from > 0 {
		up := d.lineStart(from - 1)
		line := strings.TrimRight(string(d.text[up:from]), "\r\n")
		body := strings.TrimLeft(line, " ")
		if !strings.HasPrefix(body, "#") || len(line)-len(body) != indent {
			return from
		}
		from = up
	}
	return from
}

// belowComments goes down over comments indented deeper than an entry.
func (d *draft) belowComments(to, indent int) int {
	for to < len(d.text) {
		end := d.lineEnd(to + 1)
		line := strings.TrimRight(string(d.text[to:end]), "\r\n")
		body := strings.TrimLeft(line, " ")
		if !strings.HasPrefix(body, "#") || len(line)-len(body) <= indent {
			return to
		}
		to = end
	}
	return to
}

// splice returns the text with [from, to) replaced, and checks that it is
// still readable YAML.
func (d *draft) splice(from, to int, with string) ([]byte, error) {
	if from < 0 || to < from || to > len(d.text) {
		return nil, errPlace
	}
	out := slices.Concat(d.text[:from], []byte(with), d.text[to:])
	if _, err := openText(out); err != nil {
		return nil, fmt.Errorf("this change cannot be made by itself: %w", err)
	}
	return out, nil
}
