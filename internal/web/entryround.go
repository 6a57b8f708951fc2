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
	if state.Last != 0 && state.Last < day.Date {
		p.Since = state.Last.Long()
	}
	for i, sp := range day.Spaces {
		one := RoundSpace{ID: sp.ID, Name: sp.Name, Form: ledger.NewID(), No: i + 1}
		for _, l := range sp.Lines {
			if l.Standing {
				one.Here = append(one.Here, lineName(l))
			}
		}
		for _, t := range day.Today {
			if t.Space == sp.ID && t.Event != string(ledger.Looked) {
				one.Due = append(one.Due, t.Verb+" "+t.Object)
			}
		}
		for _, a := range state.Assumed {
			if a.Space == sp.ID && a.On == day.Date {
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
		all, words, err := roundEvents(day, day.Spaces[i], v.Get("answer"))
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

// roundEvents are the entries one answer makes: the assumption first,
// then what is assumed to have been done since.
func roundEvents(day *reckon.Day, sp reckon.SpaceDay, answer string) ([]Happening, string, error) {
	look := func(words string) Happening {
		return Happening{ledger.Assumed, day.Date, ledger.Assumption{Space: sp.ID, What: words}}
	}
	switch answer {
	case "as planned":
		all := []Happening{look("as planned")}
		n := 0
		for _, t := range day.Today {
			if t.Space != sp.ID {
				continue
			}
			note := "Assumed: nobody wrote it down. Found done on a round."
			switch ledger.Kind(t.Event) {
			case ledger.Sown, ledger.PutOut:
				b := ledger.Started{Crop: t.Crop, Space: sp.ID, Count: t.Count, Note: note}
				if ledger.Kind(t.Event) == ledger.PutOut {
					b.Planting = t.Planting
				}
				all = append(all, Happening{ledger.Kind(t.Event), day.Date, b})
			case ledger.Picked:
				all = append(all, Happening{ledger.Picked, day.Date, ledger.Amount{Planting: t.Planting, Note: note}})
			case ledger.Pulled:
				all = append(all, Happening{ledger.Pulled, day.Date, ledger.Ended{Planting: t.Planting, Note: note}})
			default:
				continue
			}
			n++
		}
		if n == 0 {
			return all, "as planned.", nil
		}
		return all, fmt.Sprintf("as planned. %s taken as done, marked as assumed.", plural(n, "thing is", "things are")), nil
	case "not done":
		return []Happening{look("not done")}, "nothing was done. The plan goes on from what stands.", nil
	case "gone":
		all := []Happening{look("gone")}
		for _, l := range sp.Lines {
			if l.Standing {
				all = append(all, Happening{ledger.Lost, day.Date, ledger.Ended{Planting: l.ID, Cause: "unknown", Note: "Assumed: found gone on a round; the day is not known."}})
			}
		}
		return all, "noted as gone.", nil
	}
	return nil, "", errBroken
}
