package web

import (
	"net/http"
	"net/url"
	"strconv"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// LookPage asks what is different from what a task says.
type LookPage struct {
	Frame
	Task    reckon.Task
	Looks   []Option
	Forms   [3]string // one id for each form of the page
	Count   string
	CanNum  bool
	Happend string
	Note    string
	Why     string
	Faults  faults
	Problem string
}

// looks are the ways a planting can look.
var looks = []Option{
	{Value: "well", Words: "It looks well"},
	{Value: "young", Words: "Too young yet"},
	{Value: "poor", Words: "It looks poor"},
	{Value: "bolting", Words: "It is bolting"},
	{Value: "finished", Words: "It is finished"},
}

// look draws the page for one task.
func (s *site) look(r *http.Request, day *reckon.Day) (page, error) {
	t, ok := taskOf(day, r.URL.Query().Get("task"))
	if !ok {
		return nil, errGone
	}
	p := s.lookPage(r, day, t)
	return p, nil
}

func (s *site) lookPage(r *http.Request, day *reckon.Day, t reckon.Task) *LookPage {
	p := &LookPage{Frame: s.framed(r, day, "What is different?", "look"), Task: t,
		Looks: choose(looks, "-"), Happend: day.Date.String(), Faults: faults{}}
	for i := range p.Forms {
		p.Forms[i] = ledger.NewID()
	}
	p.CanNum = t.Event == string(ledger.Sown) || t.Event == string(ledger.PutOut)
	if t.Count > 0 {
		p.Count = strconv.Itoa(t.Count)
	}
	return p
}

// saveLook writes how it looks, what was done otherwise, or that it will not
// be done.
func (s *site) saveLook(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v, f := r.PostForm, faults{}
	var back *LookPage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		t, ok := taskOf(day, v.Get("task"))
		if !ok {
			return done{}, errGone
		}
		back = s.lookPage(r, day, t)
		d, err := s.lookAnswer(r, day, t, v, f)
		if err == nil && len(f) > 0 {
			err = errForm
		}
		return d, err
	})
	if err == nil {
		return
	}
	if back == nil {
		s.fail(w, r, err)
		return
	}
	back.Note, back.Why, back.Happend, back.Faults = v.Get("note"), v.Get("why"), v.Get("day"), f
	if v.Has("count") {
		back.Count = v.Get("count")
	}
	back.Looks = choose(looks, v.Get("looks"))
	tr := troubleOf(err)
	back.Problem = tr.words
	s.draw(w, r, tr.status, back)
}

// lookAnswer writes the one of the page's three forms that was sent.
func (s *site) lookAnswer(r *http.Request, day *reckon.Day, t reckon.Task, v url.Values, f faults) (done, error) {
	ctx := withForm(r, v.Get("form"))
	switch v.Get("what") {
	case "looks":
		l := f.oneOf(v, "looks", looks, "Choose how it looks.")
		note := f.text(v, "note", maxNote)
		if len(f) > 0 {
			return done{}, nil
		}
		e, err := s.o.Record(ctx, ledger.Looked, day.Date, "", ledger.Look{Planting: t.Planting, Space: spaceFor(day, t), Looks: l, Note: note})
		return done{event: e, words: "Saved: it looks " + l + ". The plan takes it up.", back: "/", undo: true}, err
	case "did":
		count := t.Count
		if v.Has("count") {
			count = f.count(v, "count", true, 1)
		}
		on := f.day(v, "day", day.Date)
		note := f.text(v, "note", maxNote)
		if len(f) > 0 {
			return done{}, nil
		}
		return s.recordDone(r, day, t, count, "", note, on)
	case "never":
		why := f.text(v, "why", maxNote)
		if why == "" {
			f["why"] = "Say why in a few words, so that it stays away for a reason."
		}
		if len(f) > 0 {
			return done{}, nil
		}
		e, err := s.o.Record(ctx, ledger.Dismissed, day.Date, "", ledger.Dismissal{Task: t.ID, Why: why})
		return done{event: e, words: "Saved: this advice will not come back.", back: "/", undo: true}, err
	}
	return done{}, errBroken
}
