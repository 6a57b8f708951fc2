package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// A heap's heat, °C, and days. 77 is 7 CFR 205.203 (170 °F); the others are
// common practice.
const (
	heapTopC    = 77
	heapCoolC   = 40
	heapFresh   = 7  // days a reading speaks for
	heapRest    = 7  // least days between two turnings
	heapEvery   = 28 // days between two turnings when nobody measures
	heapTurning = 20 // minutes
)

// heapTasks ask for the turning of each heap: when its middle has cooled or
// runs too hot, or, without a thermometer, every four weeks outside winter. A
// heap that was cold a week after a turning too is left to cure.
func (r *Result) heapTasks() []Task {
	var out []Task
	for i, sp := range r.in.Garden.Spaces {
		if sp.Kind == garden.Heap {
			if t, ok := r.turnHeap(i); ok {
				out = append(out, t)
			}
		}
	}
	return out
}

func (r *Result) turnHeap(at int) (Task, bool) {
	id := string(r.in.Garden.Spaces[at].ID)
	last := r.lastDone(id, "turn")
	on, middle := r.heapMiddle(id, r.in.Date)
	fresh := on != 0 && on >= last && on > r.in.Date-heapFresh
	if last != 0 && r.in.Date < last+heapRest && !(fresh && middle > heapTopC) {
		return Task{}, false
	}
	t := r.task(at, "turn", "the compost", "")
	t.Event, t.Minutes, t.Until = EventDone, heapTurning, r.in.Date+7
	t.Rule = "Outside in, inside out, and wet what is dry: as damp as a wrung cloth."
	t.Basis = "common practice"
	t.Answer = Answer{
		Verdict: sentence("turn the compost in " + t.SpaceName), OfTwenty: -1,
		Look:    "A long thermometer in its middle, and a handful squeezed: a drop, no stream.",
		Change:  "Cold again a week after turning: it has done its work. Leave it to cure.",
		Caution: "Gloves, and wet it first: dry compost throws dust. Look for nests before the fork goes in.",
	}
	switch {
	case fresh && middle > heapTopC:
		t.Until, t.Basis = r.in.Date+1, "7 CFR 205.203: never above 77 °C (170 °F)"
		t.Answer.Reason = fmt.Sprintf("Its middle is at %.0f °C. Above %d °C what works in it dies.", middle, heapTopC)
		t.Answer.Sure = "sure, by your thermometer"
	case fresh && middle >= heapCoolC:
		return Task{}, false // it works, or is about to
	case fresh:
		if before, was := r.heapMiddle(id, last-1); last != 0 && before != 0 && was < heapCoolC {
			return Task{}, false // turned when cold and cold again
		}
		t.Answer.Reason = fmt.Sprintf("Its middle has cooled to %.0f °C. Air, and what lay outside, heat it again.", middle)
		t.Answer.Sure = "sure, by your thermometer"
	case monthIn(r.in.Date, 12, 2, r.in.Garden.Place.LatDeg < 0) || last != 0 && r.in.Date < last+heapEvery:
		return Task{}, false
	case last == 0:
		t.Answer.Reason = "When it was last turned is not known. Unturned, its outside never rots."
		t.Answer.Sure = "not known, and a thermometer would tell"
	default:
		t.Answer.Reason = fmt.Sprintf("It was turned on %s, and nobody has measured since.", last.Long())
		t.Answer.Sure = "not known, and a thermometer would tell"
	}
	return t, true
}

// heapMiddle is the last reading of a heap's middle up to a day; on is 0 when
// there is none.
func (r *Result) heapMiddle(id string, until cal.Day) (on cal.Day, c float64) {
	if r.in.State == nil {
		return 0, 0
	}
	for _, x := range r.in.State.Readings {
		if x.What == ledger.ReadHeap && x.Space == id && x.On <= until && x.On >= on {
			on, c = x.On, x.Value
		}
	}
	return on, c
}

// heapWords says how a heap is, as far as it was measured and turned.
func (r *Result) heapWords(at int) (now, next string, a Answer) {
	id := string(r.in.Garden.Spaces[at].ID)
	now, next = "How hot its middle is nobody has noted.", "When it was last turned is not known."
	if on, c := r.heapMiddle(id, r.in.Date); on != 0 {
		now = fmt.Sprintf("Its middle was at %.0f °C on %s.", c, on.Long())
	}
	if last := r.lastDone(id, "turn"); last != 0 {
		next = fmt.Sprintf("Last turned on %s.", last.Long())
	}
	if t, ok := r.turnHeap(at); ok {
		return now, next, t.Answer
	}
	return now, next, Answer{Verdict: "Leave the heap alone this week.", Reason: now + " " + next, Sure: "common practice", OfTwenty: -1,
		Look: "A long thermometer in its middle.", Change: "Its heat, noted on the page Weather, changes it at once."}
}
