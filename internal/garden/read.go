package garden

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml"
	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	"bedweek/internal/cal"
)

// Crops is what the reader asks of the crop book; see FromBook. A book that
// also has SpacingM(id string) (m float64, ok bool) is asked for the distance
// between plants, to find crowded spaces, and one that has FoodNames()
// []string for the foods to offer.
type Crops interface {
	Known(id string) bool
	Nearest(name string) (id string, ok bool) // the crop most like a name
	Food(name string) bool
}

// Bounds on a file, so that a hostile one costs little.
const (
	maxBytes   = 1 << 20
	maxLine    = 2000  // letters in a line
	maxNesting = 60    // brackets within brackets
	maxMarks   = 60000 // colons and commas
	maxLines   = 15000 // the parser's time grows with their square
)

// Read reads a garden file called name. It returns the garden, or all that is
// wrong with the file, in the order of the file. A nil book leaves crops,
// foods and crowding unchecked. Read changes nothing and asks nobody the time.
func Read(name string, text []byte, book Crops) (*Garden, []Fault) {
	r := &reader{file: name, book: book, declared: map[string][]string{}}
	text = bytes.TrimPrefix(text, []byte("\ufeff"))
	if !r.readable(text) {
		return nil, r.faults
	}
	r.lines = strings.Split(strings.ReplaceAll(string(text), "\r\n", "\n"), "\n")
	root := r.parse(text)
	if root == nil {
		return nil, sorted(r.faults)
	}
	ast.Walk(foreign{r}, root)
	g := r.garden(root)
	if len(r.faults) > 0 {
		return nil, sorted(r.faults)
	}
	return g, nil
}

// reader gathers faults on its way through one file.
type reader struct {
	file   string
	lines  []string
	book   Crops
	faults []Fault
	refs   []ref
	south  bool    // for seasons: spring is in September
	from   cal.Day // the file's date, 0 = not said
	points map[SpaceID]*token.Token
	plants map[SpaceID]*token.Token // where a space's plants are listed

	declared map[string][]string // ids of each section, even of things with faults
}

// readable refuses what is no text of a sensible size.
func (r *reader) readable(text []byte) bool {
	switch {
	case len(text) > maxBytes:
		r.whole(fmt.Sprintf("%d bytes", len(text)), "A garden file is at most 1 MB. Split the garden into two files.")
	case bytes.IndexByte(text, 0) >= 0:
		r.whole("not a text file", "It holds zero bytes. Save it as plain text (UTF-8).")
	case !utf8.Valid(text):
		line := 1 + bytes.Count(text[:firstBad(text)], []byte("\n"))
		r.whole(fmt.Sprintf("letters in another encoding, first in line %d", line), "Save the file as plain text in UTF-8.")
	case len(bytes.TrimSpace(text)) == 0:
		r.whole("nothing in the file", "Begin with the line: garden: the name of your garden")
	default:
		return r.shallow(text)
	}
	return false
}

// firstBad returns where text stops being UTF-8.
func firstBad(text []byte) int {
	for i := 0; i < len(text); {
		c, n := utf8.DecodeRune(text[i:])
		if c == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return len(text)
}

// shallow refuses endless lines, brackets and entries, which no person writes.
func (r *reader) shallow(text []byte) bool {
	line, letters, depth, marks := 1, 0, 0, 0
	for _, c := range text {
		switch c {
		case '\n':
			line, letters = line+1, 0
			continue
		case ':', ',':
			marks++
		case '[', '{':
			depth++
		case ']', '}':
			depth = max(0, depth-1)
		}
		letters++
		if letters > 4*maxLine {
			r.whole(fmt.Sprintf("line %d is very long", line), fmt.Sprintf("A line holds at most %d letters. Break it.", maxLine))
			return false
		}
		if marks > maxMarks || line > maxLines {
			r.whole("more entries than a garden has", "Split the garden into two files.")
			return false
		}
		if depth > maxNesting {
			r.whole(fmt.Sprintf("line %d opens too many brackets", line), "Close each [ and { that is opened.")
			return false
		}
	}
	return true
}

// parse turns the text into nodes; nil when it cannot, with a fault saying why.
func (r *reader) parse(text []byte) (root ast.Node) {
	defer func() {
		if recover() != nil { // a parser of other hands; a fault is kinder than a crash
			root = nil
			r.whole("not read as YAML", "Compare it with the example in docs/formats.md.")
		}
	}()
	file, err := parser.ParseBytes(text, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		r.syntax(err)
		return nil
	}
	for _, doc := range file.Docs {
		switch {
		case doc.Body == nil || doc.Body.Type() == ast.CommentType:
		case root != nil:
			r.at(first(doc.Body), "a second document", "One file holds one garden. Take out the line ---.")
			return nil
		default:
			root = doc.Body
		}
	}
	if root == nil {
		r.whole("nothing in the file but comments", "Begin with the line: garden: the name of your garden")
	}
	return root
}

// syntax reports the one place where the parser stopped.
func (r *reader) syntax(err error) {
	const remedy = "Look at this line and the one above: the indent, a colon and a space after each key, quotes and brackets that close."
	said, ok := err.(yaml.Error)
	if !ok || said.GetToken() == nil || said.GetToken().Position == nil {
		r.whole("not read as YAML", "Compare it with the example in docs/formats.md.")
		return
	}
	what := said.GetMessage()
	if strings.Contains(what, "'\t'") {
		r.at(said.GetToken(), "a tab at the start of a line", "Indent with spaces; YAML takes no tabs.")
		return
	}
	r.at(said.GetToken(), "not read as YAML: "+what, remedy)
}

// foreign reports the parts of YAML that garden files do without.
type foreign struct{ r *reader }

func (f foreign) Visit(n ast.Node) ast.Visitor {
	const plain = "Garden files do without it. Write the value out."
	switch n.Type() {
	case ast.AnchorType:
		f.r.at(n.GetToken(), "an anchor (&)", plain)
	case ast.AliasType:
		f.r.at(n.GetToken(), "an alias (*)", plain)
	case ast.TagType:
		f.r.at(n.GetToken(), "a tag (!)", plain)
	case ast.MergeKeyType:
		f.r.at(n.GetToken(), "a merge key (<<)", plain)
	case ast.MappingKeyType:
		f.r.at(n.GetToken(), "a key marked with ?", "Write the key and a colon.")
	}
	return f
}

// whole reports a fault of the file as a whole.
func (r *reader) whole(what, remedy string) {
	r.faults = append(r.faults, Fault{File: r.file, What: what, Remedy: remedy})
}

// at reports a fault at a token.
func (r *reader) at(tk *token.Token, what, remedy string) {
	r.within(tk, 0, len([]rune(strings.TrimSpace(tk.Origin))), what, remedy)
}

// within reports a fault at n letters of a token, skip letters in.
func (r *reader) within(tk *token.Token, skip, n int, what, remedy string) {
	line, col := tk.Position.Line, tk.Position.Column
	if col < 1 { // the parser counts a block of text from its indent
		col = 1
	}
	text := ""
	if line >= 1 && line <= len(r.lines) {
		text = r.lines[line-1]
	}
	col = max(1, min(col+skip, len([]rune(text))))
	r.faults = append(r.faults, Fault{File: r.file, Line: line, Col: col,
		Excerpt: excerpt(text, line, col, n), What: what, Remedy: remedy})
}
