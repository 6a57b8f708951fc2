package web

import (
	"net/http"
	"net/url"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// QuickPage notes something in two more taps: what it is about, and how much
// or how it looks. Its forms are those of the notes, so they wait without a
// signal as the notes do.
type QuickPage struct {
	Frame
	What  string
	Kinds []Option
	Asks  string // the question
	Rows  []QuickRow
	Form  string // of a picture or a sound, which is one form for all spaces
	Day   string
	Back  string
	Late  []LatePicture
}

// QuickRow is one planting or space with its buttons.
type QuickRow struct {
	Form, Action, Planting string
	Name, Where            string
	Buttons                []Option // Value is what the button sends
}

// LatePicture is a picture that has no words yet.
type LatePicture struct {
	Picture
	Event, Form, Space, SpaceName string
}

// quickKinds are the things noted in a hurry.
var quickKinds = []Option{
	{Value: "picked", Words: "Picked"},
	{Value: "wet", Words: "Damp or dry"},
	{Value: "looks", Words: "How it looks"},
	{Value: "photo", Words: "Photo"},
	{Value: "voice", Words: "Voice"},
	{Value: "lost", Words: "Lost"},
}

// wetLooks are what a finger finds, in the words the water page learns from.
var wetLooks = []Option{
	{Value: "damp at a knuckle", Words: "Damp"}, {Value: "dry", Words: "Dry"},
	{Value: "wilting", Words: "Wilting"}, {Value: "watered", Words: "Watered"},
}

// quick draws the page for one kind of note.
func (s *site) quick(r *http.Request, day *reckon.Day) (page, error) {
	p := &QuickPage{Frame: s.framed(r, day, "Note something", "quick"), What: r.URL.Query().Get("what"), Form: ledger.NewID(), Day: day.Date.String(), Back: "/"}
	for _, k := range quickKinds {
		if k.Value == "photo" && s.o.Keeping == nil || k.Value == "voice" && (s.o.Keeping == nil || s.o.Keeping.KeepSound == nil) {
			continue // no store for them
		}
		k.Chosen = k.Value == p.What
		p.Kinds = append(p.Kinds, k)
	}
	switch p.What {
	case "picked":
		p.Asks = "Picked what, and how much?"
		p.plantings(day, "picked", measures[:3], pickedFirst)
	case "looks":
		p.Asks = "How does it look?"
		p.plantings(day, "looked", []Option{looks[0], looks[2], looks[3], looks[4]}, nil)
	case "lost":
		p.Asks = "What was lost?"
		p.plantings(day, "lost", nil, nil)
	case "wet":
		p.Asks = "What does a finger say?"
		for _, sp := range wettestFirst(day) {
			if len(standingHere(day, sp)) == 0 {
				continue
			}
			p.Rows = append(p.Rows, QuickRow{Form: ledger.NewID(), Action: noteAt(sp.ID, "looked"), Name: sp.Name, Buttons: wetLooks})
		}
	case "photo", "voice":
		p.Asks = "Where is it?"
		for _, sp := range day.Spaces {
			p.Rows = append(p.Rows, QuickRow{Action: sp.ID, Name: sp.Name})
		}
	default:
		p.What, p.Asks = "", "What happened?"
		late, err := s.latePictures(r, day)
		if err != nil {
			return nil, err
		}
		p.Late = late
	}
	return p, nil
}

func noteAt(space, kind string) string { return "/space/" + url.PathEscape(space) + "/note/" + kind }

// plantings lists what stands, those of first before the others.
func (p *QuickPage) plantings(day *reckon.Day, kind string, buttons []Option, first func(*reckon.Day) map[string]bool) {
	ahead := map[string]bool{}
	if first != nil {
		ahead = first(day)
	}
	for _, turn := range []bool{true, false} {
		for _, sp := range day.Spaces {
			for _, o := range standingHere(day, sp) {
				if ahead[o.Value] == turn {
					p.Rows = append(p.Rows, QuickRow{Form: ledger.NewID(), Action: noteAt(sp.ID, kind), Planting: o.Value, Name: o.Words, Where: sp.Name, Buttons: buttons})
				}
			}
		}
	}
}

// pickedFirst is what today's list says to pick.
func pickedFirst(day *reckon.Day) map[string]bool {
	out := map[string]bool{}
	for _, t := range day.Today {
		if t.Event == string(ledger.Picked) {
			out[t.Planting] = true
		}
	}
	return out
}

// wettestFirst puts the spaces that run dry first at the head.
func wettestFirst(day *reckon.Day) []reckon.SpaceDay {
	var out []reckon.SpaceDay
	had := map[string]bool{}
	if day.Dry != nil {
		for _, row := range day.Dry.Rows {
			if i, ok := spaceOf(day, row.Space); ok && !had[row.Space] {
				out, had[row.Space] = append(out, day.Spaces[i]), true
			}
		}
	}
	for _, sp := range day.Spaces {
		if !had[sp.ID] {
			out = append(out, sp)
		}
	}
	return out
}

// lateDays is how far back pictures without words are asked about.
const lateDays = 14

// latePictures lists the latest pictures that say nothing yet.
func (s *site) latePictures(r *http.Request, day *reckon.Day) ([]LatePicture, error) {
	if s.o.Keeping == nil || s.o.Keeping.KeepSound == nil {
		return nil, nil
	}
	var out []LatePicture
	for _, sp := range day.Spaces {
		all, err := s.o.Keeping.Pictures(r.Context(), sp.ID)
		if err != nil {
			return nil, err
		}
		for _, n := range all {
			if n.Note != "" || n.On < day.Date-lateDays {
				continue
			}
			out = append(out, LatePicture{Picture: pictureOf(sp, n), Event: n.Event, Form: ledger.NewID(), Space: sp.ID, SpaceName: sp.Name})
		}
	}
	return out, nil
}
