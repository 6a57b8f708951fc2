package web

import (
	"fmt"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Field is one question of a form.
type Field struct {
	Name, Label, Hint string
	Sort              string // "text", "area", "choice", "list", "checks", "file", "hidden"
	Value             string
	Options           []Option
	Draw              []Drawing  // beside the options of a choice, same order
	Offers            []string   // typed once, offered again
	Shapes            []OddShape // other ways to say a size, folded away
	Rows              int
	Guess             bool // we guessed the value
	Number            bool // a phone shows its number keys
	Photo             bool // a file that is a picture
}

// Group is some fields; with a Legend they can be folded away.
type Group struct {
	Legend string
	Open   bool
	Fields []Field
}

// FormPage is a form about the garden.
type FormPage struct {
	Frame
	Lead      string
	Action    string
	Form      string
	Groups    []Group
	Submit    string
	Links     []Link
	Notes     []string
	Faults    faults
	Problem   string
	Files     bool   // the form carries a file
	Locate    bool   // offer the browser's position
	Elsewhere bool   // how to bring a garden kept on another machine
	Point     string // the bearing of the pole side, for pointing a phone; "" = not offered
	PointOff  string // how far east of true north a compass points here, degrees
	PointSay  string // the same in words
	Fetch     string // id of the form that fetches the weather; "" = not offered
	FetchNow  string // where the weather in use comes from
	Fields    string // where a fault of the file's key is said, for the caller

	Picture *Picture // the newest kept one of the space

	patches []garden.Patch
	space   string                      // id of the space the form is about
	after   func(r *http.Request) error // what else to keep once the text is
	next    string                      // where to go after saving
	words   string                      // said after saving
	begin   string                      // the text to begin with when there is none
	where   map[string]string           // from a key of the file to the field
}

// former makes a form: filled from the garden when v is nil, else from what
// was typed, then with patches ready to be made.
type former func(r *http.Request, d *described, v url.Values) (*FormPage, error)

// formPage draws a form.
func (s *site) formPage(f former) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		d, err := s.described(r.Context())
		if err != nil {
			s.fail(w, r, err)
			return
		}
		p, err := f(r, d, nil)
		if err != nil {
			s.fail(w, r, err)
			return
		}
		s.draw(w, r, http.StatusOK, p)
	}
}

// saveForm makes a form's patches, or shows it again with words at the field.
func (s *site) saveForm(f former) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if err := readForm(r); err != nil {
			s.fail(w, r, err)
			return
		}
		s.saveRead(w, r, f)
	}
}

func (s *site) saveRead(w http.ResponseWriter, r *http.Request, f former) {
	var p *FormPage
	err := s.once(w, r, func() (done, error) {
		d, err := s.described(r.Context())
		if err != nil {
			return done{}, err
		}
		q, err := f(r, d, r.PostForm)
		if err != nil {
			return done{}, err
		}
		p = q
		if len(p.Faults) > 0 || p.Problem != "" {
			return done{}, errForm
		}
		out, err := s.keepText(r, d, p)
		if err == nil && p.after != nil {
			out.words = p.words
			err = p.after(r)
		}
		return out, err
	})
	if err == nil {
		return
	}
	if p == nil {
		s.fail(w, r, err)
		return
	}
	t := troubleOf(err)
	if p.Problem == "" {
		p.Problem = t.words
	}
	s.draw(w, r, t.status, p)
}

// keepText applies a form's patches and takes the new text over.
func (s *site) keepText(r *http.Request, d *described, p *FormPage) (done, error) {
	text := d.text
	if len(text) == 0 {
		text = []byte(p.begin)
	}
	fresh, err := garden.Apply(text, p.patches...)
	if err != nil {
		p.Problem = "This cannot be changed here: " + plainErr(err) + " Change it in the file, then bring the file in."
		return done{}, errForm
	}
	if string(fresh) == string(d.text) {
		return done{words: "Nothing to change.", back: p.next}, nil
	}
	g, bad := garden.Read("the garden", fresh, d.book)
	if len(bad) > 0 {
		p.say(fresh, bad)
		return done{}, errForm
	}
	event, err := s.o.Entry.Keep(withForm(r, r.PostForm.Get("form")), string(fresh))
	if err != nil {
		return done{}, err
	}
	return done{event: event, words: p.words + overloads(g), back: p.next, undo: true}, nil
}

// overloads says which surfaces may carry too much, after a change; "" = none.
func overloads(g *garden.Garden) string {
	loads, _ := reckon.Loads(g) // its table is tested; a page of the garden needs no weights
	words := ""
	for _, l := range loads {
		if l.State >= reckon.MayPass {
			words += " " + l.Words
		}
	}
	return words
}

// say puts the reader's faults at the fields they belong to.
func (p *FormPage) say(text []byte, bad []garden.Fault) {
	for _, f := range bad {
		words := f.What + ". " + f.Remedy
		path := garden.PathAt(text, f.Line)
		field := ""
		for i := len(path); i > 0 && field == ""; i-- {
			field = p.where[path[:i].String()]
		}
		switch {
		case field == "" && p.Problem == "":
			p.Problem = "Not saved yet. " + words
		case field == "":
		case p.Faults[field] == "":
			p.Faults[field] = words
		}
	}
	if p.Problem == "" {
		p.Problem = "Not saved yet: something below needs a look."
	}
	p.openFaults()
}

// openFaults unfolds groups that hold a fault.
func (p *FormPage) openFaults() {
	for i := range p.Groups {
		for _, f := range p.Groups[i].Fields {
			if p.Faults[f.Name] != "" {
				p.Groups[i].Open = true
			}
		}
	}
}

func plainErr(err error) string {
	s := err.Error()
	if !strings.HasSuffix(s, ".") {
		s += "."
	}
	return s
}

// newForm begins a form page.
func (s *site) newForm(r *http.Request, d *described, v url.Values, title, action string) *FormPage {
	p := &FormPage{Frame: s.entryFrame(r, d, title, "entryform"), Action: action, Submit: "Save", Faults: faults{}, where: map[string]string{}, next: "/entry"}
	p.Form = v.Get("form")
	if !ledger.IsID(p.Form) {
		p.Form = ledger.NewID()
	}
	return p
}

// put adds a patch that sets a key to a text, or drops it when it is empty.
func (p *FormPage) put(value string, at ...string) {
	if value = strings.TrimSpace(value); value == "" {
		p.patches = append(p.patches, garden.Patch{Op: garden.Drop, At: at})
		return
	}
	p.patches = append(p.patches, garden.Patch{At: at, Value: garden.Text(value)})
}

// set adds a patch that writes a value.
func (p *FormPage) set(v garden.Value, at ...string) {
	p.patches = append(p.patches, garden.Patch{At: at, Value: v})
}

// said puts the words about lines not understood at a field.
func (p *FormPage) said(field string, bad []garden.Said) {
	var words []string
	for _, b := range bad {
		words = append(words, b.Words)
	}
	if len(words) > 0 {
		p.Faults[field] = strings.Join(words, " ")
	}
}

// lines splits what was typed into lines that say something.
func lines(typed string) []string {
	var out []string
	for _, l := range strings.Split(strings.ReplaceAll(typed, "\r\n", "\n"), "\n") {
		if l = strings.TrimSpace(l); l != "" {
			out = append(out, l)
		}
	}
	return out
}

// typedIn returns what was typed into a field, or its first value.
func typedIn(v url.Values, field, first string) string {
	if v == nil {
		return first
	}
	return strings.TrimSpace(v.Get(field))
}

// tooLong says when a field holds more than a name may.
func (f faults) tooLong(field, typed string, most int) {
	if n := len([]rune(typed)); n > most {
		f[field] = fmt.Sprintf("This is %d letters long. At most %d fit.", n, most)
	}
}

// freeID makes an id of a name that nothing else has.
func freeID(name, otherwise string, taken func(string) bool) string {
	base := garden.Slug(name)
	if base == "" {
		base = otherwise
	}
	base = strings.Trim(base[:min(len(base), 36)], "-")
	for n, id := 2, base; ; n++ {
		if !taken(id) {
			return id
		}
		id = fmt.Sprintf("%s-%d", base, n)
	}
}

// FieldOf is one field with the faults of its form, as the template draws it.
type FieldOf struct {
	Field  Field
	Faults faults
}

// With puts a field and the form's faults together.
func (p *FormPage) With(f Field) FieldOf { return FieldOf{f, p.Faults} }
