package web

import (
	"context"
	"net/http"
	"slices"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Knot is one question that devices answered differently. All answers are
// kept, and shown side by side until somebody says which stand.
type Knot struct {
	Planting string // what it is about; "" = a whole space
	Space    string
	Kind     ledger.Kind
	Day      cal.Day // of the last answer
	Answers  []KnotAnswer
}

// KnotAnswer is one of them, with who wrote it and when it was kept.
type KnotAnswer struct {
	ID, Who, Words, Note string
	Written              time.Time
}

// KnotsOf joins disputes with the entries they are of.
func KnotsOf(disputes []ledger.Dispute, events []ledger.Event) []Knot {
	by := make(map[string]ledger.Event, len(events))
	for _, e := range events {
		by[e.ID] = e
	}
	var out []Knot
	for _, d := range disputes {
		k := Knot{Planting: d.Planting, Kind: d.Kind}
		for i, id := range d.Events {
			e := by[id]
			a := KnotAnswer{ID: id, Who: e.Device, Words: name(d.Words[i]), Written: e.Written}
			body, _ := ledger.Decode(e) // one that cannot be read has no note
			switch b := body.(type) {
			case ledger.Look:
				a.Note = b.Note
				if b.Planting == "" {
					k.Planting, k.Space = "", b.Space
				}
			case ledger.LookAt:
				a.Note = b.Note
				if b.Planting == "" {
					k.Planting, k.Space = "", b.Space
				}
			case ledger.Count:
				a.Note = b.Note
			case ledger.Ended:
				a.Note = b.Note
			case ledger.Started:
				a.Note = b.Note
			}
			k.Day = e.Happened
			k.Answers = append(k.Answers, a)
		}
		out = append(out, k)
	}
	return out
}

// KnotShown is a knot as the page shows it.
type KnotShown struct {
	Knot
	About         string
	Forms         [2]string
	Asks          string // what a third answer says: "count", "looks", "" = not asked here
	Typed         string
	Fault         string
	SpaceHref     string
	Written, Keep []string // of each answer: when it was kept, what its button is called
}

// showKnots names what each knot is about.
func showKnots(day *reckon.Day, knots []Knot) []KnotShown {
	var out []KnotShown
	for _, k := range knots {
		s := KnotShown{Knot: k, About: "A planting that stands no more", Forms: [2]string{ledger.NewID(), ledger.NewID()}}
		for _, sp := range day.Spaces {
			if k.Space != "" && sp.ID == k.Space {
				s.About, s.SpaceHref = "The whole of "+sp.Name, "/space/"+sp.ID
			}
			for _, l := range sp.Lines {
				if l.ID == k.Planting && k.Planting != "" {
					s.About, s.SpaceHref = name(l.Crop)+" in "+sp.Name, "/space/"+sp.ID
				}
			}
		}
		switch k.Kind {
		case ledger.Counted:
			s.Asks = "count"
		case ledger.Looked:
			s.Asks = "looks"
		}
		for _, a := range k.Answers {
			s.Written = append(s.Written, a.Written.Format("2 January 2006, 15:04"))
			s.Keep = append(s.Keep, "Keep this one, by "+a.Who+": "+a.Words)
		}
		out = append(out, s)
	}
	return out
}

// settle keeps one answer, all of them, or a third in their place. Nothing is
// rubbed out: an answer not kept is taken back, and can be brought back.
func (s *site) settle(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *SafePage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		k, err := s.knotOf(r.Context(), r.PostForm["answer"])
		if err != nil {
			return done{}, err
		}
		if k == nil {
			return done{words: "Settled before.", back: "/safe"}, nil
		}
		f := faults{}
		d, err := s.settled(r, day, *k, f)
		if len(f) > 0 {
			if p, err = s.safePage(r, day); err == nil {
				p.markKnot(k.Answers[0].ID, r.PostForm.Get("third"), f["third"])
				err = errForm
			}
		}
		return d, err
	})
	switch {
	case err == nil:
	case p == nil:
		s.fail(w, r, err)
	default:
		s.draw(w, r, troubleOf(err).status, p)
	}
}

// knotOf finds the knot that holds all these answers; nil = there is none now.
func (s *site) knotOf(ctx context.Context, answers []string) (*Knot, error) {
	if len(answers) < 2 || slices.ContainsFunc(answers, func(id string) bool { return !ledger.IsID(id) }) {
		return nil, errBroken
	}
	all, err := s.o.Keeping.Safety(ctx)
	if err != nil {
		return nil, err
	}
	for _, k := range all.Knots {
		if !slices.ContainsFunc(answers, func(id string) bool { return !k.has(id) }) {
			return &k, nil
		}
	}
	return nil, nil
}

func (k Knot) has(id string) bool {
	return slices.ContainsFunc(k.Answers, func(a KnotAnswer) bool { return a.ID == id })
}

// settled writes what was chosen about the answers the form showed.
func (s *site) settled(r *http.Request, day *reckon.Day, k Knot, f faults) (done, error) {
	form, answers, choice := r.PostForm.Get("form"), r.PostForm["answer"], r.PostForm.Get("choice")
	d := done{words: "Settled. The others were taken back; the history keeps them.", back: "/safe"}
	switch {
	case choice == "both":
		e, err := s.o.Record(withForm(r, form), ledger.Agreed, day.Date, "", ledger.Agreement{Answers: answers})
		return done{event: e, words: "Settled: all of them stand.", back: "/safe", undo: true}, err
	case choice == "third":
		body := k.third(r, f)
		switch {
		case len(f) > 0:
			return done{}, errForm
		case body == nil:
			return done{}, errBroken
		}
		if _, err := s.o.Record(withForm(r, form), k.Kind, k.Day, "", body); err != nil {
			return done{}, err
		}
	case !slices.Contains(answers, choice):
		return done{}, errBroken
	}
	for _, id := range answers {
		if id == choice {
			continue
		}
		if err := s.o.Void(withForm(r, ledger.FollowingID(form, id)), id); err != nil {
			return done{}, err
		}
	}
	return d, nil
}

// third reads an answer that takes the place of all others.
func (k Knot) third(r *http.Request, f faults) any {
	switch k.Kind {
	case ledger.Counted:
		return ledger.Count{Planting: k.Planting, Count: f.count(r.PostForm, "third", true, 0)}
	case ledger.Looked:
		looks := f.text(r.PostForm, "third", maxNote)
		if looks == "" {
			f["third"] = "Say how it looked, such as dry."
		}
		return ledger.Look{Planting: k.Planting, Space: k.Space, Looks: looks}
	}
	return nil
}

// markKnot says what was wrong with a third answer, at its field.
func (p *SafePage) markKnot(answer, typed, fault string) {
	for i := range p.Knots {
		if p.Knots[i].has(answer) {
			p.Knots[i].Typed, p.Knots[i].Fault = typed, fault
		}
	}
}
