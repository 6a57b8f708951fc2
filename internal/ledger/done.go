package ledger

import (
	"strings"

	"bedweek/internal/cal"
)

// DoneMark begins the words of a look that says a piece of work was done, as
// in "done: tie". It is no judgement of how the planting looks.
const DoneMark = "done: "

// NotYet are the words of a look that only says that work was put off.
const NotYet = "not yet"

// DoneNote is a piece of work done on a planting, or on a whole space, that
// leaves no entry of another kind: tied, thinned, fed, netted.
type DoneNote struct {
	About string // the planting, else the space
	Verb  string // "tie"
	On    cal.Day
}

// workDone takes a look over that says of work that it was done or put off;
// false when it is an ordinary look.
func (r *replayer) workDone(s step, b Look) bool {
	if b.Looks == NotYet {
		return true // nothing was done and nothing was judged
	}
	verb, ok := strings.CutPrefix(b.Looks, DoneMark)
	if !ok {
		return false
	}
	about := b.Planting
	if about == "" {
		about = b.Space
	} else if p := r.planting(s, b.Planting); p != nil {
		p.LookedOn = s.Happened
	} else {
		return true
	}
	r.works = append(r.works, DoneNote{About: about, Verb: verb, On: s.Happened})
	return true
}

// LastDone is the last day a piece of work was done on a planting or space;
// 0 = never noted.
func (s *State) LastDone(about, verb string) cal.Day {
	on := cal.Day(0)
	for _, d := range s.Done {
		if d.About == about && d.Verb == verb && d.On > on {
			on = d.On
		}
	}
	return on
}
