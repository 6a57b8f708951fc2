package web

import (
	"net/http"
	"net/url"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// NotePage is one form about one space.
type NotePage struct {
	Frame
	Space     reckon.SpaceDay
	Kind      string // as in the address
	Verb      string
	Form      string
	Crops     []Option
	Plantings []Option
	Measures  []Option
	Causes    []Option
	Looks     []Option
	Nothing   string // why the form cannot be filled, "" = it can
	AskCount  bool
	CountTip  string
	Variety   string
	Count     string
	Kg        string
	Words     string
	Note      string
	Happened  string
	Faults    faults
	Problem   string
}

// causes of loss, the words of the trade.
var causes = []Option{
	{Value: "", Words: "Choose"},
	{Value: "unknown", Words: "Not known"},
	{Value: "not up", Words: "Did not come up"},
	{Value: "damped off", Words: "Damped off"},
	{Value: "eaten", Words: "Eaten"},
	{Value: "dug up", Words: "Dug up"},
	{Value: "dried", Words: "Dried out"},
	{Value: "drowned", Words: "Drowned"},
	{Value: "scorched", Words: "Scorched"},
	{Value: "chilled", Words: "Chilled"},
	{Value: "crowded", Words: "Crowded out"},
	{Value: "diseased", Words: "Diseased"},
	{Value: "bolted", Words: "Bolted"},
	{Value: "pulled in error", Words: "Pulled in error"},
}

// noteVerb finds a kind of note by its address.
func noteVerb(kind string) (string, bool) {
	for _, k := range noteKinds {
		if k.Value == kind {
			return k.Words, true
		}
	}
	return "", false
}

// note draws an empty form.
func (s *site) note(r *http.Request, day *reckon.Day) (page, error) {
	return s.notePage(r, day, url.Values{
		"day": {day.Date.String()}, "planting": {r.URL.Query().Get("planting")}, "cause": {r.URL.Query().Get("cause")}, "form": {ledger.NewID()},
	})
}

// notePage fills the form with what was typed.
func (s *site) notePage(r *http.Request, day *reckon.Day, v url.Values) (*NotePage, error) {
	i, ok := spaceOf(day, r.PathValue("id"))
	verb, known := noteVerb(r.PathValue("kind"))
	if !ok || !known {
		return nil, ErrNotThere
	}
	sp := day.Spaces[i]
	p := &NotePage{Frame: s.framed(r, day, verb+": "+sp.Name, "note"), Space: sp, Kind: r.PathValue("kind"), Verb: verb,
		Form: v.Get("form"), Variety: v.Get("variety"), Count: v.Get("count"), Kg: v.Get("kg"),
		Words: v.Get("words"), Note: v.Get("note"), Happened: v.Get("day"), Faults: faults{}}
	if !ledger.IsID(p.Form) {
		p.Form = ledger.NewID()
	}
	p.choices(day, v)
	return p, nil
}

// choices fills the lists the kind of note needs.
func (p *NotePage) choices(day *reckon.Day, v url.Values) {
	here := standingHere(day, p.Space)
	switch p.Kind {
	case "sown":
		p.Crops, p.AskCount, p.CountTip = cropOptions(day, v.Get("crop"), "Choose a crop"), true, "How many"
	case "set-out":
		p.Plantings = choose(append(shelfHere(day), Option{Value: "", Words: "Not from the shelf: bought or given"}), v.Get("planting"))
		p.Crops, p.AskCount, p.CountTip = cropOptions(day, v.Get("crop"), "As on the shelf"), true, "How many"
		return
	case "pulled", "lost":
		p.AskCount, p.CountTip = true, "How many (leave empty for all)"
	case "counted":
		p.AskCount, p.CountTip = true, "How many stand there"
	case "looked":
		here = append(here, Option{Value: "", Words: "The whole space"})
		p.Looks = choose(append(append([]Option{}, looks...), Option{Value: "other", Words: "In my own words"}), v.Get("looks"))
	}
	if p.Kind == "picked" {
		p.Measures = choose(measures, v.Get("measure"))
	}
	if p.Kind == "lost" {
		p.Causes = choose(causes, v.Get("cause"))
	}
	if p.Kind == "sown" {
		return
	}
	if len(here) == 0 {
		p.Nothing = "Nothing stands here by the plan. Note what was sown or set out first."
		return
	}
	want := v.Get("planting")
	if len(here) == 1 {
		want = here[0].Value
	}
	p.Plantings = choose(here, want)
}

// standingHere lists what stands in a space.
func standingHere(day *reckon.Day, sp reckon.SpaceDay) []Option {
	var out []Option
	for _, l := range sp.Lines {
		if l.Standing {
			out = append(out, Option{Value: l.ID, Words: lineName(l)})
		}
	}
	return out
}

// shelfHere lists what stands on the shelf.
func shelfHere(day *reckon.Day) []Option {
	var out []Option
	for _, l := range day.Shelf {
		if l.Standing && l.OnShelf != 0 {
			out = append(out, Option{Value: l.ID, Words: lineName(l)})
		}
	}
	return out
}

// cropOptions lists the book's crops.
func cropOptions(day *reckon.Day, chosen, none string) []Option {
	out := []Option{{Value: "", Words: none}}
	for _, c := range day.Crops {
		out = append(out, Option{Value: c.ID, Words: c.Name})
	}
	return choose(out, chosen)
}

// saveNote writes the note, or shows the form again with words at the field.
func (s *site) saveNote(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *NotePage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		q, err := s.notePage(r, day, r.PostForm)
		if err != nil {
			return done{}, err
		}
		p = q
		kind, body, words := p.event(day, r.PostForm)
		on := p.Faults.day(r.PostForm, "day", day.Date)
		if len(p.Faults) > 0 {
			return done{}, errForm
		}
		e, err := s.o.Record(withForm(r, p.Form), kind, on, "", body)
		return done{event: e, words: words, back: backElse(r.PostForm, "/space/"+url.PathEscape(p.Space.ID)), undo: true}, err
	})
	if err == nil {
		return
	}
	if p == nil {
		s.fail(w, r, err)
		return
	}
	t := troubleOf(err)
	p.Problem = t.words
	s.draw(w, r, t.status, p)
}

// event reads the form as one event; words at the fields say what is wrong.
func (p *NotePage) event(day *reckon.Day, v url.Values) (ledger.Kind, any, string) {
	f := p.Faults
	note := f.text(v, "note", maxNote)
	planting := ""
	if p.Kind != "sown" {
		planting = f.oneOf(v, "planting", p.Plantings, "Choose which one.")
	}
	saved := "Saved: " + p.Verb + ", " + p.Space.Name + "."
	switch p.Kind {
	case "sown", "set-out":
		kind := ledger.Sown
		if p.Kind == "set-out" {
			kind = ledger.PutOut
		}
		crop := f.oneOf(v, "crop", p.Crops, "Choose a crop of the list.")
		if planting != "" && crop == "" {
			crop = cropOnShelf(day, planting)
		}
		if crop == "" && f["crop"] == "" {
			f["crop"] = "Choose which crop."
		}
		return kind, ledger.Started{Planting: planting, Crop: crop, Variety: f.text(v, "variety", maxVariety),
			Space: p.Space.ID, Count: f.count(v, "count", true, 1), Note: note}, saved
	case "picked":
		m := f.oneOf(v, "measure", p.Measures, "Choose how much, or not measured.")
		return ledger.Picked, ledger.Amount{Planting: planting, Kg: f.kg(v, "kg"), Measure: m, Note: note}, saved
	case "pulled":
		return ledger.Pulled, ledger.Ended{Planting: planting, Count: f.count(v, "count", false, 1), Note: note}, saved
	case "lost":
		c := f.oneOf(v, "cause", p.Causes, "Choose a cause of the list.")
		if c == "" {
			f["cause"] = "Choose a cause. \"Not known\" is a good answer."
		}
		return ledger.Lost, ledger.Ended{Planting: planting, Count: f.count(v, "count", false, 1), Cause: c, Note: note}, saved
	case "counted":
		return ledger.Counted, ledger.Count{Planting: planting, Count: f.count(v, "count", true, 0), Note: note}, saved
	}
	l := f.oneOf(v, "looks", p.Looks, "Choose how it looks.")
	if l == "other" {
		if l = f.text(v, "words", maxVariety); l == "" {
			f["words"] = "Say in a few words how it looks."
		}
	}
	return ledger.Looked, ledger.Look{Planting: planting, Space: p.Space.ID, Looks: l, Note: note}, saved
}

// cropOnShelf is the crop of a planting on the shelf.
func cropOnShelf(day *reckon.Day, planting string) string {
	for _, l := range day.Shelf {
		if l.ID == planting {
			return l.CropID
		}
	}
	return ""
}
