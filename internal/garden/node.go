package garden

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"
)

// first returns the token where a node begins: a mapping's first key, not its
// colon.
func first(n ast.Node) *token.Token {
	switch n := n.(type) {
	case *ast.MappingNode:
		if !n.IsFlowStyle && len(n.Values) > 0 {
			return first(n.Values[0].Key)
		}
	case *ast.MappingValueNode:
		return first(n.Key)
	}
	return n.GetToken()
}

// bare strips the marks that foreign has already reported.
func bare(n ast.Node) ast.Node {
	for {
		switch m := n.(type) {
		case *ast.AnchorNode:
			n = m.Value
		case *ast.TagNode:
			n = m.Value
		case *ast.MappingKeyNode:
			n = m.Value
		default:
			return n
		}
		if n == nil {
			return nil
		}
	}
}

// null reports whether nothing was written for a value.
func null(n ast.Node) bool { n = bare(n); return n == nil || n.Type() == ast.NullType }

// scalar returns a node's text as written; ok is false for lists, mappings
// and nothing.
func scalar(n ast.Node) (text string, tk *token.Token, ok bool) {
	switch m := bare(n).(type) {
	case *ast.StringNode:
		return m.Value, m.Token, true
	case *ast.LiteralNode:
		return strings.TrimSpace(m.Value.Value), m.Start, true
	case *ast.IntegerNode, *ast.FloatNode, *ast.BoolNode, *ast.InfinityNode, *ast.NanNode:
		return m.GetToken().Value, m.GetToken(), true
	}
	return "", nil, false
}

// alias reports whether n is a reference, which foreign has reported.
func alias(n ast.Node) bool { n = bare(n); return n != nil && n.Type() == ast.AliasType }

// pair is one key and its value.
type pair struct {
	key   string
	at    *token.Token
	value ast.Node
}

// pairs returns a mapping's keys in the order of the file, reporting keys
// written twice. ok is false, with a fault, when n is no mapping.
func (r *reader) pairs(n ast.Node, what string) ([]pair, bool) {
	var values []*ast.MappingValueNode
	switch m := bare(n).(type) {
	case *ast.MappingNode:
		values = m.Values
	case *ast.MappingValueNode:
		values = []*ast.MappingValueNode{m}
	default:
		if !alias(n) && n != nil {
			r.at(first(n), what+" is not written as keys and values", "Write each as key: value, one to a line, indented alike.")
		}
		return nil, false
	}
	var list []pair
	seen := map[string]int{}
	for _, v := range values {
		text, tk, ok := scalar(v.Key)
		if !ok {
			if v.Key.Type() != ast.MergeKeyType {
				r.at(first(v.Key), "a key that is no word", "Write the key as a plain word.")
			}
			continue
		}
		if line, twice := seen[text]; twice {
			r.at(tk, clip(text)+" written twice", fmt.Sprintf("It stands in line %d already. Keep one.", line))
			continue
		}
		seen[text] = tk.Position.Line
		list = append(list, pair{text, tk, v.Value})
	}
	return list, true
}

// items returns the entries of a list; a single scalar or mapping counts as a
// list of one.
func (r *reader) items(n ast.Node) []ast.Node {
	switch m := bare(n).(type) {
	case nil, *ast.NullNode:
		return nil
	case *ast.SequenceNode:
		return m.Values
	}
	return []ast.Node{n}
}

// fields is one mapping with the values of its known keys.
type fields struct {
	r     *reader
	shape shape
	at    *token.Token // where the thing is named, for keys that are missing
	pairs map[string]pair
}

// fields reads a mapping of a shape, reporting unknown and missing keys. at is
// where the thing is named.
func (r *reader) fields(n ast.Node, sh shape, at *token.Token) (fields, bool) {
	f := fields{r: r, shape: sh, at: at, pairs: map[string]pair{}}
	if null(n) {
		r.at(at, "nothing said of "+sh.what, "It needs "+list(f.missing())+".")
		return f, false
	}
	all, ok := r.pairs(n, sh.what)
	if !ok {
		return f, false
	}
	for _, p := range all {
		if _, known := sh.key(p.key); !known {
			r.unknown(p, sh)
			continue
		}
		f.pairs[p.key] = p
	}
	for _, name := range f.missing() {
		r.at(at, sh.what+" without "+name, "Add a line "+name+": to it.")
	}
	return f, true
}

// unknown reports a key the shape does not have.
func (r *reader) unknown(p pair, sh shape) {
	what := "unknown key " + clip(p.key)
	if name, ok := nearest(p.key, sh.names()); ok {
		r.at(p.at, what, "Did you mean "+name+"?")
		return
	}
	r.at(p.at, what, "The keys of "+sh.what+" are "+list(sh.names())+".")
}

// missing lists needed keys not written.
func (f fields) missing() []string {
	var names []string
	for _, k := range f.shape.keys {
		if _, ok := f.pairs[k.name]; k.needed && !ok {
			names = append(names, k.name)
		}
	}
	return names
}

func (f fields) has(name string) bool { _, ok := f.pairs[name]; return ok }

// where returns the place of a key's value, or of the thing itself.
func (f fields) where(name string) *token.Token {
	p, ok := f.pairs[name]
	switch {
	case !ok:
		return f.at
	case null(p.value):
		return p.at
	}
	return first(bare(p.value))
}

// text returns a key's value as written, trimmed. ok is false when the key is
// missing or, with a fault, holds no single value.
func (f fields) text(name string) (string, *token.Token, bool) {
	p, ok := f.pairs[name]
	if !ok {
		return "", nil, false
	}
	return f.r.single(p.value, p.at, name)
}

// single returns the text of a value that must be one word, number or line.
func (r *reader) single(n ast.Node, at *token.Token, name string) (string, *token.Token, bool) {
	text, tk, ok := scalar(n)
	text = strings.TrimSpace(text)
	switch {
	case ok && text != "":
		return text, tk, true
	case ok || null(n):
		r.at(at, name+" without a value", "Write the value after the colon, or take the line out.")
	case !alias(n):
		r.at(first(bare(n)), name+" holds more than one value", "Write one value.")
	}
	return "", nil, false
}

// name returns a free text of at most maxName letters.
func (f fields) name(key string) string {
	text, tk, ok := f.text(key)
	if !ok || !f.r.nameFits(text, tk, key) {
		return ""
	}
	return text
}

// maxName and maxID bound names and ids, in letters.
const (
	maxName = 80
	maxID   = 40
)

// nameFits refuses names too long for a label and letters that do not show.
func (r *reader) nameFits(text string, tk *token.Token, key string) bool {
	if n := len([]rune(text)); n > maxName {
		r.at(tk, fmt.Sprintf("%s of %d letters", key, n), fmt.Sprintf("Names hold at most %d letters. Shorten it.", maxName))
		return false
	}
	for _, c := range text {
		if unicode.IsControl(c) || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069 {
			r.at(tk, key+" with a letter that does not show", "Type the name again without it.")
			return false
		}
	}
	return true
}

// word returns one of the words a key takes; "" when missing or wrong.
func (f fields) word(name string) string {
	text, tk, ok := f.text(name)
	if !ok {
		return ""
	}
	k, _ := f.shape.key(name)
	lower := strings.ToLower(text)
	for _, w := range k.words {
		if w == lower {
			return w
		}
	}
	remedy := "Write " + orList(k.words) + "."
	if w, ok := nearest(text, k.words); ok {
		remedy = "Did you mean " + w + "?"
	}
	f.r.at(tk, name+" "+clip(text), remedy)
	return ""
}

// yes reads yes or no; when the key is missing it returns otherwise.
func (f fields) yes(name string, otherwise bool) bool {
	text, tk, ok := f.text(name)
	if !ok {
		return otherwise
	}
	switch strings.ToLower(text) {
	case "yes", "true":
		return true
	case "no", "false":
		return false
	}
	f.r.at(tk, name+" "+clip(text), "Write yes or no.")
	return otherwise
}

var idForm = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// id checks an identifier written by the gardener.
func (r *reader) id(text string, tk *token.Token) bool {
	if len(text) <= maxID && idForm.MatchString(text) {
		return true
	}
	remedy := "Use lower case letters, digits and dashes, at most 40."
	if s := slug(text); s != "" && s != text {
		remedy = "Use lower case letters, digits and dashes, such as " + s + "."
	}
	r.at(tk, "id "+clip(text), remedy)
	return false
}

// clip shortens a text for a message.
func clip(text string) string {
	runes := []rune(text)
	for i, c := range runes {
		if unicode.IsControl(c) {
			runes[i] = ' '
		}
	}
	if len(runes) > 40 {
		return string(runes[:37]) + "..."
	}
	return string(runes)
}

// list writes "a, b and c".
func list(words []string) string { return join(words, " and ") }

// orList writes "a, b or c".
func orList(words []string) string { return join(words, " or ") }

func join(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return strings.Join(words[:n], ", ") + last + words[n]
}
