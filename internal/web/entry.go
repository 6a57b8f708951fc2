package web

import (
	"context"
	"fmt"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Entry is what the pages that describe a garden need from their caller. Nil
// in Options: there are no such pages.
type Entry struct {
	// Text returns the garden file's text as last accepted, "" = none yet.
	Text func(ctx context.Context) (string, error)

	// Keep takes over a text that reads without faults and returns the
	// event's id. The form's id is in the context.
	Keep func(ctx context.Context, text string) (event string, err error)

	// Book is the crop book.
	Book *crop.Book

	// Today is the day in the garden.
	Today func() cal.Day

	// Working says in words what is being worked out, "" = nothing is.
	Working func() string

	// Weather keeps a weather file beside the garden and returns the name to
	// write into the garden's text, or in words what is wrong with it.
	Weather func(ctx context.Context, name string, data []byte) (file string, wrong []string, err error)

	// Archive asks an open weather service for twenty years at the garden's
	// place, and keeps them as Weather does. May be nil.
	Archive func(ctx context.Context) (file, words string, err error)

	// WeatherFrom says where a kept weather file comes from, and how old it is;
	// "" = the file does not say. May be nil.
	WeatherFrom func(file string) string

	// State is the ledger replayed.
	State func(ctx context.Context) (*ledger.State, error)

	// Unknown lists what nobody measured yet, the guess that matters most
	// first; ready is false while it is still being worked out. May be nil.
	Unknown func(ctx context.Context) (list []Unknown, ready bool)

	// Round tells what the plan that stood wanted since somebody wrote last.
	// May be nil.
	Round func(ctx context.Context) (*reckon.CatchUp, error)

	// Append writes several events at once, or none. The form's id is in the
	// context and becomes the first one's.
	Append func(ctx context.Context, events []Happening) error
}

// Unknown is one thing nobody measured, with what knowing it would change.
type Unknown struct {
	Space, Key string // "" = the garden as a whole
	Words      string // "Depth of the long bed: we took 20-40 cm."
	Change     string // "Between the ends, 3 of 8 plantings differ."
	Worth      float64
}

// Happening is one event to be written.
type Happening struct {
	Kind ledger.Kind
	On   cal.Day
	Body any
}

// described is the garden as far as it is described.
type described struct {
	text  []byte
	g     *garden.Garden // nil before the first answer
	today cal.Day
	book  garden.Crops
}

func (s *site) described(ctx context.Context) (*described, error) {
	text, err := s.o.Entry.Text(ctx)
	if err != nil {
		return nil, err
	}
	d := &described{text: []byte(text), today: s.o.Entry.Today(), book: garden.FromBook(s.o.Entry.Book)}
	if text == "" {
		return d, nil
	}
	g, faults := garden.Read("the garden", d.text, d.book)
	if len(faults) > 0 {
		return nil, fmt.Errorf("reading the kept garden: %s", faults[0])
	}
	d.g = g
	return d, nil
}

// get returns what the text holds at a path, as typed.
func (d *described) get(at ...string) string {
	v, _ := garden.Look(d.text, at...)
	return v.Text
}

// entryRoutes are the addresses of the pages that describe a garden.
func (s *site) entryRoutes() []route {
	if s.o.Entry == nil {
		return nil
	}
	return []route{
		{"/entry", s.entryHub, nil},
		{"/entry/place", s.formPage(s.placeForm), s.saveForm(s.placeForm)},
		{"/entry/months", s.formPage(s.monthsForm), s.saveForm(s.monthsForm)},
		{"/entry/weather", s.formPage(s.weatherForm), s.saveWeather},
		{"/entry/archive", nil, s.saveArchive},
		{"/entry/kind", s.kindPage, nil},
		{"/entry/space", s.formPage(s.spaceForm), s.saveSpace},
		{"/entry/copies", s.formPage(s.copiesForm), s.saveForm(s.copiesForm)},
		{"/entry/ending", s.formPage(s.endingForm), s.saveForm(s.endingForm)},
		{"/entry/split", s.formPage(s.splitForm), s.saveForm(s.splitForm)},
		{"/entry/plan", s.planPage, s.saveMove},
		{"/entry/person", s.formPage(s.personForm), s.saveForm(s.personForm)},
		{"/entry/obstacle", s.formPage(s.obstacleForm), s.saveForm(s.obstacleForm)},
		{"/entry/medium", s.formPage(s.mediumForm), s.saveForm(s.mediumForm)},
		{"/entry/turnover", s.formPage(s.turnoverForm), s.saveForm(s.turnoverForm)},
		{"/entry/wants", s.formPage(s.wantsForm), s.saveForm(s.wantsForm)},
		{"/entry/tin", s.formPage(s.tinForm), s.saveForm(s.tinForm)},
		{"/entry/unknown", s.unknownPage, nil},
		{"/entry/ready", s.readyPage, nil},
		{"/entry/file", s.filePage, s.fileDiff},
		{"/entry/file/garden.yaml", s.fileOut, nil},
		{"/entry/accept", nil, s.fileAccept},
		{"/entry/round", s.roundPage, s.saveRound},
		{"/entry/list", s.formPage(s.listForm), s.listMap},
		{"/entry/list/save", nil, s.listSave},
	}
}

// entryFrame makes the frame of a page about the description.
func (s *site) entryFrame(r *http.Request, d *described, title, here string) Frame {
	f := s.bare(title, here)
	f.Sheets = append(f.Sheets[:1:1], s.assets.href["entry.css"])
	f.Script = s.assets.href["entry.js"]
	f.Date = d.today
	if d.g != nil {
		f.Garden = d.g.Name
	}
	if done, ok := s.sent.get(r.URL.Query().Get("saved")); ok {
		f.Saved = &Saved{Words: done.words, Event: done.event, Undo: done.undo, Form: ledger.NewID(), Back: r.URL.Path}
	}
	return f
}

// HubPage is the garden as described so far, and the ways on.
type HubPage struct {
	Frame
	Begun    bool
	Place    string
	Weather  string
	Plan     *PlanDrawing
	Spaces   []HubSpace
	Ended    []HubSpace
	People   []Link
	Things   []Link
	Media    []Link
	Wants    string
	Guesses  int
	Working  string
	HasDay   bool
	NeedsSky bool // no weather is known yet
}

// HubSpace is one space in the list.
type HubSpace struct {
	ID, Name, Words, Guessed string
	No                       int
	Up, Down                 bool
	Form                     string
}

// entryHub draws the garden so far, or begins it.
func (s *site) entryHub(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	if d.g == nil {
		http.Redirect(w, r, "/entry/place", http.StatusSeeOther)
		return
	}
	p := &HubPage{Frame: s.entryFrame(r, d, "My garden", "entry"), Begun: true, Working: s.o.Entry.Working()}
	day, err := s.o.Day(r.Context())
	p.HasDay = err == nil && day != nil
	p.Place = placeWords(d.g)
	p.Weather, p.NeedsSky = weatherWords(d.g)
	if from := s.weatherFrom(d.g); from != "" {
		p.Weather = from
	}
	p.Plan = drawPlan(d.g, "")
	for i, sp := range d.g.Spaces {
		p.Guesses += len(sp.Guessed)
		p.Spaces = append(p.Spaces, HubSpace{ID: string(sp.ID), Name: sp.Name, Words: spaceWords(sp), Guessed: guessedWords(sp.Guessed), No: i + 1, Up: i > 0, Down: i+1 < len(d.g.Spaces), Form: ledger.NewID()})
	}
	p.Guesses += len(d.g.Guessed)
	for _, sp := range d.g.Ended {
		p.Ended = append(p.Ended, HubSpace{ID: string(sp.ID), Name: sp.Name, Words: "Taken away on " + sp.Until.Long() + "."})
	}
	for _, one := range d.g.People {
		p.People = append(p.People, Link{Href: "/entry/person?id=" + url.QueryEscape(string(one.ID)), Words: one.Name})
	}
	for _, o := range d.g.Obstacles {
		p.Things = append(p.Things, Link{Href: "/entry/obstacle?id=" + url.QueryEscape(o.ID), Words: o.Name})
	}
	for _, b := range d.g.Batches {
		p.Media = append(p.Media, Link{Href: "/entry/medium?id=" + url.QueryEscape(string(b.ID)), Words: string(b.ID) + ", " + b.Kind})
	}
	p.Wants = wantsWords(d.g)
	s.draw(w, r, http.StatusOK, p)
}

func placeWords(g *garden.Garden) string {
	return reckon.SayPlace(g.Place)
}

// weatherWords says where the weather comes from; none is true when nothing
// is known of it.
func weatherWords(g *garden.Garden) (words string, none bool) {
	switch {
	case g.Place.Weather != "":
		return "The file " + g.Place.Weather + ".", false
	case g.Place.Normals != nil && isGuessed(g.Guessed, "place"):
		return "Twelve months: " + g.Place.Normals.From + ". Guessed for your place.", false
	case g.Place.Normals != nil && g.Place.Normals.From != "":
		return "Twelve months: " + g.Place.Normals.From + ".", false
	case g.Place.Normals != nil:
		return "Twelve months as you gave them.", false
	}
	return "Not known yet. Without it there is no plan.", true
}

func isGuessed(keys []string, key string) bool {
	for _, k := range keys {
		if k == key {
			return true
		}
	}
	return false
}

// keyWords are the keys of a space in plain words.
var keyWords = map[string]string{"east": "place", "north": "place", "length": "size", "width": "size", "across": "size", "shape": "size", "depth": "depth", "medium": "medium",
	"water": "water", "standing": "what stands", garden.OtherKey: "something else", "rim": "height", "volume": "volume"}

// guessedWords names guessed keys once each.
func guessedWords(keys []string) string {
	var out []string
	for _, k := range keys {
		word := keyWords[k]
		if word == "" {
			word = k
		}
		if len(out) == 0 || !isGuessed(out, word) {
			out = append(out, word)
		}
	}
	return strings.Join(out, ", ")
}

func spaceWords(sp garden.Space) string {
	words := name(string(sp.Kind))
	switch {
	case sp.Shape != "":
		words += ", " + sp.Shape
	case sp.Round.Known():
		words += ", " + sp.Round.String() + " across"
	case sp.Length.Known():
		words += ", " + sp.Length.String() + " x " + sp.Width.String()
	}
	if sp.Depth.Known() {
		words += ", " + sp.Depth.String() + " deep"
	}
	switch n := len(sp.Standing); {
	case n == 1:
		words += ". One planting stands in it"
	case n > 1:
		words += fmt.Sprintf(". %d plantings stand in it", n)
	}
	for i, o := range sp.Others {
		words += []string{". Something else: ", ", "}[min(i, 1)] + o.Name
	}
	return words + "."
}

func wantsWords(g *garden.Garden) string {
	if len(g.Wants) == 0 {
		return "Nothing said yet."
	}
	var parts []string
	for _, w := range g.Wants {
		if n := len(parts); n == 0 || parts[n-1] != string(w.Food) {
			parts = append(parts, string(w.Food))
		}
	}
	words := "Meals a week of " + strings.Join(parts, ", ") + "."
	if isGuessed(g.Guessed, "wants") {
		words += " Guessed: two people who eat a bit of everything."
	}
	return words
}

// readyPage waits for the first answer, then shows it.
func (s *site) readyPage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	working := s.o.Entry.Working()
	day, err := s.o.Day(r.Context())
	if err == nil && day != nil && working == "" {
		http.Redirect(w, r, "/", http.StatusSeeOther)
		return
	}
	if d.g == nil || len(d.g.Spaces) == 0 {
		http.Redirect(w, r, "/entry", http.StatusSeeOther)
		return
	}
	p := &WaitPage{Frame: s.entryFrame(r, d, "Working it out", "entrywait"), Working: working, HasDay: day != nil}
	if _, none := weatherWords(d.g); none {
		p.NeedsSky = true
	} else if working != "" {
		w.Header().Set("Refresh", "2")
	}
	s.draw(w, r, http.StatusOK, p)
}

// WaitPage is shown while the plan is worked out.
type WaitPage struct {
	Frame
	Working  string
	HasDay   bool
	NeedsSky bool
}

// unknownShown is how many guesses are listed: a short list is looked at.
const unknownShown = 10

// UnknownPage lists what nobody measured, by what it would change.
type UnknownPage struct {
	Frame
	More  int // guesses not shown
	List  []Unknown
	Ready bool
}

func (s *site) unknownPage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	p := &UnknownPage{Frame: s.entryFrame(r, d, "Still unknown", "entryunknown"), Ready: true}
	if s.o.Entry.Unknown != nil {
		p.List, p.Ready = s.o.Entry.Unknown(r.Context())
	}
	if n := len(p.List) - unknownShown; n > 0 {
		p.List, p.More = p.List[:unknownShown], n
	}
	if !p.Ready {
		w.Header().Set("Refresh", "4")
	}
	s.draw(w, r, http.StatusOK, p)
}
