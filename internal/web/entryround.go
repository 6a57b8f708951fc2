package web

import (
	"fmt"
	"net/http"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// RoundPage is the round after days or months away: one tap a space.
type RoundPage struct {
	Frame
	Since  string
	By     string // the plan that is asked by
	Spaces []RoundSpace
	Done   int
}

// RoundSpace is one space of the round.
type RoundSpace struct {
	ID, Name string
	Here     []string // what stands by the record
	Due      []string // what the plan wanted done
	Form     string
	No       int
	Answered string // what was said on this day already
}

// roundPage lists every space with what the record believes of it.
func (s *site) roundPage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	day, err := s.o.Day(r.Context())
	if err != nil || day == nil || d.g == nil {
		http.Redirect(w, r, "/entry", http.StatusSeeOther)
		return
	}
	p := &RoundPage{Frame: s.entryFrame(r, d, "Catching up", "entryround")}
	state, err := s.o.Entry.State(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	c, err := s.catchUp(r, day)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	if c.Left != 0 {
		p.Since = c.Left.Long()
	}
	if c.Plan != 0 {
		p.By = c.Plan.Long()
	}
	for i, sp := range day.Spaces {
		one := RoundSpace{ID: sp.ID, Name: sp.Name, Form: ledger.NewID(), No: i + 1}
		for _, l := range sp.Lines {
			if l.Standing {
				one.Here = append(one.Here, lineName(l))
			}
		}
		for _, e := range sp.Else {
			if e.AreaM2 > 0 {
				one.Here = append(one.Here, e.Name+" (not in the book)")
			}
		}
		for _, m := range wantedHere(c, day, sp.ID) {
			one.Due = append(one.Due, m.Words)
		}
		for _, a := range state.Assumed {
			if a.Space == sp.ID && (a.On == day.Date || c.Left != 0 && a.On > c.Left) {
				one.Answered = a.What
			}
		}
		if one.Answered != "" {
			p.Done++
		}
		p.Spaces = append(p.Spaces, one)
	}
	s.draw(w, r, http.StatusOK, p)
}

// saveRound keeps one answer of the round. What nobody saw is written down as
// assumed, in words that every page shows.
func (s *site) saveRound(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v := r.PostForm
	if v.Get("answer") == "else" {
		http.Redirect(w, r, "/space/"+v.Get("space"), http.StatusSeeOther)
		return
	}
	err := s.once(w, r, func() (done, error) {
		if s.keptBefore(r, v.Get("form")) { // by now the plan may want more than was answered
			return done{back: "/entry/round"}, nil
		}
		day, err := s.o.Day(r.Context())
		if err != nil {
			return done{}, err
		}
		if day == nil {
			return done{}, errGone
		}
		i, ok := spaceOf(day, v.Get("space"))
		if !ok {
			return done{}, errGone
		}
		c, err := s.catchUp(r, day)
		if err != nil {
			return done{}, err
		}
		all, words, err := roundEvents(day, day.Spaces[i], v.Get("answer"), wantedHere(c, day, v.Get("space")))
		if err != nil {
			return done{}, err
		}
		if err := s.o.Entry.Append(withForm(r, v.Get("form")), all); err != nil {
			return done{}, err
		}
		return done{words: day.Spaces[i].Name + ": " + words, back: "/entry/round"}, nil
	})
	if err != nil {
		s.fail(w, r, err)
	}
}

// catchUp is what the plan that stood wanted meanwhile; empty when no plan is
// remembered.
func (s *site) catchUp(r *http.Request, day *reckon.Day) (*reckon.CatchUp, error) {
	if s.o.Entry.Round == nil {
		return &reckon.CatchUp{}, nil
	}
	return s.o.Entry.Round(r.Context())
}

// wantedHere is what was wanted of a space meanwhile. Of today's plan only
// what it wants of things that stand is asked: a start that today's plan thought
// of first was never known to who was away. Without an older plan all of
// today's is asked.
func wantedHere(c *reckon.CatchUp, day *reckon.Day, space string) []reckon.Meanwhile {
	out := append([]reckon.Meanwhile(nil), c.Spaces[space]...)
	said := map[string]bool{}
	for _, m := range out {
		switch b := m.Body.(type) {
		case ledger.Amount:
			said[b.Planting] = true
		case ledger.Ended:
			said[b.Planting] = true
		}
	}
	const note = "Assumed: nobody wrote it down. Found done on a round."
	for _, t := range day.Today {
		m := reckon.Meanwhile{Words: t.Verb + " " + t.Object, Kind: ledger.Kind(t.Event), On: day.Date}
		if t.Space != space || said[t.Planting] {
			continue
		}
		switch m.Kind {
		case ledger.Sown, ledger.PutOut:
			if c.Plan != 0 {
				continue
			}
			b := ledger.Started{Crop: t.Crop, Space: space, Count: t.Count, Note: note}
			if m.Kind == ledger.PutOut {
				b.Planting = t.Planting
			}
			m.Body = b
		case ledger.Picked:
			m.Body = ledger.Amount{Planting: t.Planting, Note: note}
		case ledger.Pulled:
			m.Body = ledger.Ended{Planting: t.Planting, Note: note}
		case ledger.Looked:
			continue
		default:
			m.Kind = ""
		}
		out = append(out, m)
	}
	return out
}

// roundEvents are the entries one answer makes: the assumption first,
// then what is assumed to have been done since.
func roundEvents(day *reckon.Day, sp reckon.SpaceDay, answer string, wanted []reckon.Meanwhile) ([]Happening, string, error) {
	all := []Happening{{ledger.Assumed, day.Date, ledger.Assumption{Space: sp.ID, What: answer}}}
	switch answer {
	case "as planned":
		for _, m := range wanted {
			if m.Kind != "" {
				all = append(all, Happening{m.Kind, m.On, m.Body})
			}
		}
		if len(all) == 1 {
			return all, "as planned.", nil
		}
		return all, fmt.Sprintf("as planned. %s taken as done, marked as assumed.", plural(len(all)-1, "thing is", "things are")), nil
	case "not done":
		return all, "nothing was done. The plan goes on from what stands.", nil
	case "gone":
		for _, l := range sp.Lines {
			if l.Standing {
				all = append(all, Happening{ledger.Lost, day.Date, ledger.Ended{Planting: l.ID, Cause: "unknown", Note: "Assumed: found gone on a round; the day is not known."}})
			}
		}
		return all, "noted as gone.", nil
	}
	return nil, "", errBroken
}
