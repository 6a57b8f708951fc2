package web

import (
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TodayPage says what must be done now and what each space does.
type TodayPage struct {
	Frame
	Day    *reckon.Day
	Walk   *reckon.Walk
	Ribbon *Ribbon
	Whose  WalkForm
	Now    []TaskCard
	Later  []TaskCard
	Spaces []reckon.SpaceDay
	Search *Searching // nil = the plan is searched to its end

	Sheet     int      // stops that are printed
	Care      []string // of each stop, on the sheet
	Unprinted string   // what is left off the sheet, and where it is found
}

// sheetStops is how many stops of a walk two printed sides hold.
const sheetStops = 14

// WalkForm asks whose walk it is.
type WalkForm struct {
	Form                   string
	People, Minutes, Seats []Option
	Set                    bool // something was chosen
}

// TaskCard is one task with its form.
type TaskCard struct {
	reckon.Task
	No       int
	Form     string
	Anchor   string
	CanWait  string
	People   string
	Measures []Option
	Packets  []Option
	DidIt    string
	Day      string
	At       string // the space the answer is about
}

// today draws Today.
func (s *site) today(r *http.Request, day *reckon.Day) (page, error) {
	p := &TodayPage{Frame: s.framed(r, day, "Today", "today"), Day: day, Spaces: day.Spaces, Search: s.searching()}
	ask := walkAsk(r, day)
	p.Walk = day.Walk(ask)
	p.Ribbon, p.Whose = drawRibbon(p.Walk), whose(day, ask)
	p.Sheet, p.Care, p.Unprinted = sheetStops, stopCare(p.Walk.Stops), unprinted(p.Walk, len(day.Spaces))
	called := s.namesIf(r.Context())
	for _, t := range day.Today {
		c := TaskCard{Task: t, Form: ledger.NewID(), DidIt: didIt(t), Day: day.Date.String(), At: spaceFor(day, t)}
		c.People = strings.Join(t.Who, ", ")
		if t.Until > day.Date {
			c.CanWait = "can wait until " + shortDay(t.Until)
		}
		if t.Event == string(ledger.Picked) {
			c.Measures = choose(measures, "")
		}
		c.Packets = packetChoices(called, t)
		if t.Pressing {
			p.Now = append(p.Now, c)
		} else {
			p.Later = append(p.Later, c)
		}
	}
	for i := range p.Now {
		p.Now[i].No, p.Now[i].Anchor = i+1, fmt.Sprintf("task-%d", i+1)
	}
	for i := range p.Later {
		n := len(p.Now) + i + 1
		p.Later[i].No, p.Later[i].Anchor = n, fmt.Sprintf("task-%d", n)
	}
	return p, nil
}

// unprinted counts what is not on the day's sheet, names what presses, and
// says where the rest is found.
func unprinted(w *reckon.Walk, spaces int) string {
	var s []string
	if n := len(w.Stops) - sheetStops; n > 0 {
		s = append(s, fmt.Sprintf("%s: print the pocket strip.", plural(n, "more stop", "more stops")))
	}
	var press []string
	for _, l := range w.Left {
		if l.Pressing && len(press) < 5 {
			press = append(press, l.Verb+" "+l.Object)
		}
	}
	if n := len(w.Left); n > 0 {
		s = append(s, fmt.Sprintf("%d for another day.", n))
	}
	if len(press) > 0 {
		s = append(s, "Best done today if there is time: "+strings.Join(press, "; ")+".")
	}
	if n := len(w.Ask); n > 0 {
		s = append(s, fmt.Sprintf("%d for somebody else.", n))
	}
	return strings.Join(append(s, fmt.Sprintf("All of it is on the page Today. The %s are on the sheet Lines.", plural(spaces, "space", "spaces"))), " ")
}

// whose fills the form that asks whose walk it is.
func whose(day *reckon.Day, ask reckon.WalkAsk) WalkForm {
	f := WalkForm{Form: ledger.NewID(), Set: ask != reckon.WalkAsk{}}
	f.People = []Option{{Value: "", Words: "Whoever comes"}}
	for _, p := range day.People {
		words := p.Name
		if p.Seated {
			words += ", seated"
		}
		f.People = append(f.People, Option{Value: p.ID, Words: words})
	}
	f.People = choose(f.People, ask.Person)
	f.Seats = choose(seats(day, ask), ask.Seat)
	for _, m := range walkMinutes {
		m.Chosen = minutesOf[m.Value] == ask.Minutes
		f.Minutes = append(f.Minutes, m)
	}
	return f
}

// seats are the places to sit with something to do in reach, and the one that
// is chosen.
func seats(day *reckon.Day, ask reckon.WalkAsk) []Option {
	out := []Option{{Value: "", Words: "Moving about"}}
	for _, seat := range day.Seats(ask.Person) {
		out = append(out, Option{Value: seat.Space, Words: fmt.Sprintf("Seated at %s: %d to do", seat.Name, seat.Tasks)})
	}
	for _, sp := range day.Spaces {
		if sp.ID == ask.Seat && !slices.ContainsFunc(out, func(o Option) bool { return o.Value == sp.ID }) {
			out = append(out, Option{Value: sp.ID, Words: "Seated at " + sp.Name})
		}
	}
	return out
}

// didIt is the word on the first button.
func didIt(t reckon.Task) string {
	switch t.Event {
	case string(ledger.Looked):
		return "Looked, it is fine"
	case string(ledger.Named):
		return "I cannot tell"
	}
	return "Did it"
}

// measures are how much was picked, by hand.
var measures = []Option{
	{Value: "handful", Words: "A handful"},
	{Value: "bowl", Words: "A bowl"},
	{Value: "bucket", Words: "A bucket"},
	{Value: "", Words: "Not measured"},
}

// saveTask writes what was answered to a task.
func (s *site) saveTask(w http.ResponseWriter, r *http.Request) {
	if err := s.answerTask(w, r); err != nil {
		s.fail(w, r, err)
	}
}

func (s *site) answerTask(w http.ResponseWriter, r *http.Request) error {
	if err := readForm(r); err != nil {
		return err
	}
	v := r.PostForm
	if v.Get("answer") == "different" {
		http.Redirect(w, r, "/look?task="+queryEscape(v.Get("task")), http.StatusSeeOther)
		return nil
	}
	return s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		t, ok := taskOf(day, v.Get("task"))
		if !ok {
			return done{}, errGone
		}
		return s.recordAnswer(r, day, t, v, day.Date)
	})
}

// recordAnswer writes "did", "did bowl" (done, and how much) or "not yet".
func (s *site) recordAnswer(r *http.Request, day *reckon.Day, t reckon.Task, v url.Values, on cal.Day) (done, error) {
	answer, amount, _ := strings.Cut(v.Get("answer"), " ")
	switch {
	case answer == "did":
		if amount == "" {
			amount = v.Get("measure")
		}
		f := faults{}
		m := f.oneOf(url.Values{"measure": {amount}}, "measure", measures, "Choose one.")
		d, err := s.recordDone(r, day, t, t.Count, m, "", on)
		d.back = nextStop(v, 0)
		return d, err
	case v.Get("answer") == "not yet":
		b := ledger.Look{Planting: t.Planting, Space: spaceFor(day, t), Looks: "not yet", Note: clip(t.Verb+" "+t.Object, maxNote)}
		e, err := s.o.Record(withForm(r, v.Get("form")), ledger.Looked, on, "", b)
		return done{event: e, words: "Noted: not yet. " + name(t.Verb) + " " + t.Object + " stays on the list.", back: nextStop(v, 1), undo: true}, err
	}
	return done{}, errBroken
}

// taskOf finds a task by its id.
func taskOf(day *reckon.Day, id string) (reckon.Task, bool) {
	for _, t := range day.Today {
		if t.ID == id {
			return t, true
		}
	}
	return reckon.Task{}, false
}
