package web

import (
	"context"
	"fmt"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// namesRoutes are the pages about seed, trays and identity; none without
// Options.Names.
func (s *site) namesRoutes() []route {
	if s.o.Names == nil {
		return nil
	}
	return []route{
		{"/seeds", s.view(s.seeds), nil},
		{"/seeds/new", s.view(s.newLot), s.keepForm(s.saveNewLot)},
		{"/seeds/find", nil, s.findTag},
		{"/lot/{id}/ask", nil, s.askNames("/lot/", "plants")},
		{"/which/{id}/ask", nil, s.askNames("/which/", "answer", "name", "other", "count", "only")},
		{"/labels/ask", nil, s.askNames("/labels", append(ownKeys(), "id", "sheet", "from", "copies")...)},
		{"/lot/{id}", s.view(s.lot), s.keepForm(s.saveLot)},
		{"/plant/{id}", s.view(s.plant), nil},
		{"/P/{tag}", s.byTag, nil},
		{"/plant/{id}/move/{step}", s.view(s.handOver), s.keepForm(s.saveHand)},
		{"/plant/{id}/seed", s.view(s.saveSeedPage), s.keepForm(s.saveSeed)},
		{"/which/{id}", s.view(s.which), s.keepForm(s.saveWhich)},
		{"/which/{id}/looks", nil, s.keepForm(s.saveTrait)},
		{"/labels", s.view(s.labels), nil},
		{"/labels.pdf", s.labelsPDF, nil},
	}
}

// namesDesk asks for everything about names as it is now.
func (s *site) namesDesk(ctx context.Context) (*names.Desk, error) {
	d, err := s.o.Names(ctx)
	if err == nil && d == nil {
		err = errGone
	}
	if err != nil {
		return nil, fmt.Errorf("asking for the names: %w", err)
	}
	return d, nil
}

// filled is a page with a form, drawn again when the form has faults.
type filled interface {
	page
	faulty(problem string) bool // takes the words over; true when there are faults
}

// formPage is what such pages share.
type formPage struct {
	Faults  faults
	Problem string
}

func (p *formPage) faulty(words string) bool {
	if words != "" {
		p.Problem = words
	}
	return len(p.Faults) > 0
}

// saver reads the form into the page and, when it has no faults, keeps it.
type saver func(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error)

// keepForm makes the handler of a form: kept once, or the page again with
// words at the fields.
func (s *site) keepForm(save saver) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if err := readForm(r); err != nil {
			s.fail(w, r, err)
			return
		}
		var p filled
		err := s.once(w, r, func() (done, error) {
			day, err := s.present(r)
			if err != nil {
				return done{}, err
			}
			d, err := s.namesDesk(r.Context())
			if err != nil {
				return done{}, err
			}
			q, out, err := save(r, day, d)
			p = q
			if err == nil && q != nil && q.faulty("") {
				err = errForm
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
		p.faulty(t.words)
		s.draw(w, r, t.status, p)
	}
}

// keep writes one entry under the form's id and says it; words may use the
// desk as it is afterwards.
func (s *site) keepEntry(r *http.Request, kind ledger.Kind, on cal.Day, parent string, body any, words func(d *names.Desk, id string) (string, string)) (done, error) {
	id, err := s.o.Record(withForm(r, r.PostForm.Get("form")), kind, on, parent, body)
	if err != nil {
		return done{}, err
	}
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return done{}, err
	}
	said, back := words(d, id)
	return done{event: id, words: said, back: back, undo: true}, nil
}

// freshForm is the form's id again, or a new one.
func freshForm(v url.Values) string {
	if f := v.Get("form"); ledger.IsID(f) {
		return f
	}
	return ledger.NewID()
}

// figureIn reads a number of a field, with a comma as a point; 0 when empty.
func (f faults) figureIn(v url.Values, field string, most float64, such string) float64 {
	t := strings.Replace(strings.TrimSpace(v.Get(field)), ",", ".", 1)
	if t == "" {
		return 0
	}
	x, err := strconv.ParseFloat(t, 64)
	if err != nil || !(x >= 0) || x > most {
		f[field] = fmt.Sprintf("Write a number up to %g, such as %s.", most, such)
		return 0
	}
	return x
}

// askNames leads a form that only asks to the address that answers it.
// Nothing is kept of it.
func (s *site) askNames(to string, keys ...string) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if err := readForm(r); err != nil {
			s.fail(w, r, err)
			return
		}
		v := url.Values{}
		for _, k := range keys {
			for _, x := range r.PostForm[k] {
				if x != "" && len(v[k]) < 500 {
					v.Add(k, clip(x, 200))
				}
			}
		}
		at := to + url.PathEscape(r.PathValue("id"))
		if len(v) > 0 {
			at += "?" + v.Encode()
		}
		http.Redirect(w, r, at, http.StatusSeeOther)
	}
}

// findTag opens what bears a tag somebody said or read.
func (s *site) findTag(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	s.openTag(w, r, r.PostForm.Get("tag"))
}

// byTag opens what a label's code says.
func (s *site) byTag(w http.ResponseWriter, r *http.Request) { s.openTag(w, r, r.PathValue("tag")) }

func (s *site) openTag(w http.ResponseWriter, r *http.Request, tag string) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	id, lot, ok := d.Find(tag)
	switch {
	case !ok && r.URL.Path == "/seeds/find":
		http.Redirect(w, r, "/seeds?tag="+url.QueryEscape(clip(tag, 60))+"#find", http.StatusSeeOther)
	case !ok:
		s.fail(w, r, ErrNotThere)
	case lot:
		http.Redirect(w, r, "/lot/"+url.PathEscape(id), http.StatusSeeOther)
	default:
		http.Redirect(w, r, "/plant/"+url.PathEscape(id), http.StatusSeeOther)
	}
}

// spaceOptions lists spaces, with one chosen. Growing ones only, or the
// shelves and benches first.
func spaceOptions(d *names.Desk, grows bool, chosen string) []Option {
	var shelf, beds []Option
	for _, sp := range d.Garden.Spaces {
		o := Option{Value: string(sp.ID), Words: sp.Name}
		if o.Words == "" {
			o.Words = o.Value
		}
		if sp.Grows() {
			beds = append(beds, o)
		} else {
			shelf = append(shelf, o)
		}
	}
	out := beds
	if !grows {
		out = append(shelf, beds...)
	}
	return choose(out, chosen)
}

// TellItem is one line of a story, with its way back.
type TellItem struct {
	names.Happening
	Form string
}

// Story is a history with the page to come back to.
type Story struct {
	Items []TellItem
	Back  string
}

func tellItems(all []names.Happening) []TellItem {
	var out []TellItem
	for i := len(all) - 1; i >= 0; i-- {
		out = append(out, TellItem{all[i], ledger.NewID()})
	}
	return out
}
