package web

import (
	"fmt"
	"net/http"
	"net/url"
	"slices"

	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// WhichPage asks which one a group is, and shows before agreeing what an
// answer changes.
type WhichPage struct {
	Frame
	formPage
	*names.Which
	Form     string
	FormLook string
	FormNot  map[string]string
	Says     string
	When     string
	Likes    []string
	Names    []Option // to say how one looks
	Feats    []Option
	Bys      []Option
	Value    string
	Count    string
	History  []names.Happening
	Own      map[string]*Picture // of a candidate, taken here

	Ask     bool // second step: what it changes
	Answer  string
	Name    string
	Only    bool
	Changes []names.Change
}

var bys = []Option{{Value: "packet", Words: "The packet says so"}, {Value: "own eyes", Words: "I saw it here"}, {Value: "hearsay", Words: "Somebody told me"}}

func (s *site) which(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	v := r.URL.Query()
	p, err := s.whichPage(r, day, d, v)
	if err != nil {
		return nil, err
	}
	if b, ok := p.naming(v); ok && p.Answer != "cannot" && len(p.Faults) == 0 {
		if p.Changes, err = d.Preview(b); err != nil {
			return nil, err
		}
		p.Ask = true
	}
	return p, nil
}

func (s *site) whichPage(r *http.Request, day *reckon.Day, d *names.Desk, v url.Values) (*WhichPage, error) {
	w, ok := d.Which(r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	p := &WhichPage{Frame: s.framed(r, day, "Which one is this?", "which"), formPage: formPage{Faults: faults{}}, Which: w, Form: freshForm(v), FormLook: ledger.NewID(),
		Likes: d.Lookalikes(w.Group), Value: v.Get("value"), Count: v.Get("count"), Only: v.Get("only") != ""}
	p.Own = map[string]*Picture{}
	for _, c := range w.Candidates {
		if c.Own != nil {
			pic := pictureNamed(c.Name, *c.Own)
			p.Own[c.Name] = &pic
		}
		p.Names = append(p.Names, Option{Value: c.Name, Words: c.Name})
	}
	for _, n := range w.Others {
		p.Names = append(p.Names, Option{Value: n, Words: n})
	}
	p.Names = choose(p.Names, v.Get("variety"))
	feature := v.Get("feature")
	if feature == "" {
		feature = w.Feature
	}
	feats := w.Features
	if w.Feature != "" && !slices.Contains(feats, w.Feature) {
		feats = append([]string{w.Feature}, feats...)
	}
	for _, f := range feats {
		p.Feats = append(p.Feats, Option{Value: f, Words: f, Chosen: f == feature})
	}
	p.Bys = choose(bys, v.Get("by"))
	if v.Get("by") == "" {
		p.Bys = choose(bys, "packet")
	}
	switch {
	case !w.Known:
		p.Says = fmt.Sprintf("%s in %s could be %d sorts.", name(w.Group.Crop), w.SpaceName, len(w.OneOf))
	case w.Variety != "":
		p.Says = fmt.Sprintf("These are noted as %s. Say so if that is not right.", w.Variety)
	default:
		p.Says = "Nobody noted which sort these are."
	}
	if !w.Seen.None() {
		p.When = fmt.Sprintf("The %s shows from %s.", w.Feature, names.Around(w.Seen))
		if w.Young {
			p.When = fmt.Sprintf("Too young to tell by the %s: look again %s.", w.Feature, names.Around(w.Seen))
		}
	}
	for _, h := range d.Story(w.Group.ID) {
		for _, c := range w.Named {
			if c.Event == h.Event {
				p.History = append(p.History, h)
			}
		}
	}
	return p, nil
}

// naming reads an answer.
func (p *WhichPage) naming(v url.Values) (ledger.Naming, bool) {
	b := ledger.Naming{Planting: p.Group.ID, Only: p.Only, By: p.Feature}
	f := p.Faults
	if p.Mixed || v.Get("count") != "" {
		b.Count = f.count(v, "count", false, 1)
		if b.Count > p.Group.Count && p.Group.Count > 0 && f["count"] == "" {
			f["count"] = fmt.Sprintf("There are only %d.", p.Group.Count)
		}
	}
	named := v.Get("name")
	if t := f.text(v, "other", maxVariety); t != "" {
		named = t
	}
	p.Answer, p.Name = v.Get("answer"), named
	switch p.Answer {
	case "is":
		if named == "" {
			f["other"] = "Write the name."
		}
		b.Is = named
		for _, c := range p.Candidates {
			if c.Name == named {
				b.From = c.From
			}
		}
	case "not":
		b.Not = []string{named}
		if named == "" {
			return b, false
		}
	case "cannot":
		b.Count = 0
	default:
		return b, false
	}
	return b, true
}

// saveWhich keeps an answer. Before that the page itself, asked with the
// answer, shows what it changes.
func (s *site) saveWhich(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p, err := s.whichPage(r, day, d, v)
	if err != nil {
		return nil, done{}, err
	}
	b, ok := p.naming(v)
	if !ok {
		return nil, done{}, errBroken
	}
	if len(p.Faults) > 0 {
		return p, done{}, nil
	}
	out, err := s.keepEntry(r, ledger.Named, day.Date, "", b, func(d *names.Desk, id string) (string, string) {
		g, _ := d.Group(p.Group.ID)
		at := g.ID
		if h, own := d.Group(id); own {
			g = h
			at = id
		}
		said := "Saved: nobody can tell yet."
		if p.Answer != "cannot" {
			said = "Saved: " + g.Name() + "."
		}
		if p.Answer == "cannot" && !p.Seen.None() && p.Seen.Likely > day.Date {
			said += " Look again " + names.Around(p.Seen) + "."
		}
		return said, "/plant/" + url.PathEscape(at)
	})
	return p, out, err
}

// saveTrait keeps how a sort looks.
func (s *site) saveTrait(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p, err := s.whichPage(r, day, d, v)
	if err != nil {
		return nil, done{}, err
	}
	f := p.Faults
	b := ledger.Trait{Crop: p.Group.CropID, Variety: f.oneOf(v, "variety", p.Names, "Choose which sort."), Feature: f.oneOf(v, "feature", p.Feats, "Choose what to look at."),
		Value: f.text(v, "value", 60), By: f.oneOf(v, "by", p.Bys, "Choose who says so.")}
	if b.Value == "" && f["value"] == "" {
		f["value"] = "Say in a word or two how it looks, such as curled."
	}
	if len(f) > 0 {
		return p, done{}, nil
	}
	out, err := s.keepEntry(r, ledger.Described, day.Date, "", b, func(*names.Desk, string) (string, string) {
		return fmt.Sprintf("Saved: %s has %s %s.", b.Variety, b.Feature, b.Value), "/which/" + url.PathEscape(p.Group.ID)
	})
	return p, out, err
}
