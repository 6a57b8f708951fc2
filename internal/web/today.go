package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TodayPage says what must be done now and what each space does.
type TodayPage struct {
	Frame
	Day    *reckon.Day
	Sum    string
	Now    []TaskCard
	Later  []TaskCard
	Spaces []reckon.SpaceDay
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
	DidIt    string
}

// today draws Today.
func (s *site) today(r *http.Request, day *reckon.Day) (page, error) {
	p := &TodayPage{Frame: s.framed(r, day, "Today", "today"), Day: day, Spaces: day.Spaces}
	minutes, later := 0, 0
	for _, t := range day.Today {
		c := TaskCard{Task: t, Form: ledger.NewID(), DidIt: didIt(t)}
		c.People = strings.Join(t.Who, ", ")
		if t.Until > day.Date {
			c.CanWait = "can wait until " + shortDay(t.Until)
		}
		if t.Event == string(ledger.Picked) {
			c.Measures = choose(measures, "")
		}
		if t.Pressing {
			minutes += t.Minutes
			p.Now = append(p.Now, c)
		} else {
			later++
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
	p.Sum = todaySum(len(p.Now), minutes, later)
	return p, nil
}

// todaySum is the first sentence of Today.
func todaySum(now, minutes, later int) string {
	s := "Nothing presses this week."
	if now > 0 {
		s = plural(now, "thing", "things") + " will not wait."
		if minutes > 0 {
			s += " About " + hours(minutes) + " of work."
		}
	}
	if later > 0 {
		s += " " + plural(later, "other", "others") + " can wait."
	}
	return s
}

// didIt is the word on the first button.
func didIt(t reckon.Task) string {
	if t.Event == string(ledger.Looked) {
		return "Looked, it is fine"
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
	id, answer := r.PostForm.Get("task"), r.PostForm.Get("answer")
	if answer == "different" {
		http.Redirect(w, r, "/look?task="+queryEscape(id), http.StatusSeeOther)
		return nil
	}
	return s.once(w, r, func() (done, error) {
		day, err := s.o.Day(r.Context())
		if err == nil && day == nil {
			err = errGone // no plan yet
		}
		if err != nil {
			return done{}, err
		}
		t, ok := taskOf(day, id)
		if !ok {
			return done{}, errGone
		}
		switch answer {
		case "did":
			f := faults{}
			m := f.oneOf(r.PostForm, "measure", measures, "Choose one.")
			return s.recordDone(r, day, t, t.Count, m, "", day.Date)
		case "not yet":
			b := ledger.Look{Planting: t.Planting, Space: spaceFor(day, t), Looks: "not yet", Note: clip(t.Verb+" "+t.Object, maxNote)}
			e, err := s.o.Record(withForm(r, r.PostForm.Get("form")), ledger.Looked, day.Date, "", b)
			return done{event: e, words: "Noted: not yet. " + name(t.Verb) + " " + t.Object + " stays on the list.", back: "/", undo: true}, err
		}
		return done{}, errBroken
	})
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
