package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
)

// Flushing: how often, and from when in a planting's life. Common practice for
// fed containers; how much to run through is a published figure.
const (
	flushEvery = 56 // days
	flushFrom  = 42 // days a planting has stood
)

// flushTasks ask for plain water through containers that were fed for weeks:
// feed and hard water leave salt behind.
func (r *Result) flushTasks() []Task {
	var out []Task
	for i, sp := range r.in.Garden.Spaces {
		last := r.lastDone(string(sp.ID), "flush")
		if !contained(sp.Kind) || sp.Kind == garden.ElevatedBed || last != 0 && r.in.Date < last+flushEvery ||
			!monthIn(r.in.Date, 5, 10, r.in.Garden.Place.LatDeg < 0) {
			continue
		}
		fed, stood := false, cal.Day(0)
		for _, s := range r.model.stays {
			if s.space == i && s.count > 0 {
				stood = max(stood, r.in.Date-s.since.Likely)
				fed = fed || r.lastDone(s.id, "feed") != 0
			}
		}
		if !fed || stood < flushFrom {
			continue // what was never fed has little to wash out
		}
		t := r.task(i, "flush", "the medium", "")
		t.Event, t.Minutes, t.Until = EventDone, 10, r.in.Date+14
		t.Rule = "Plain water from the top until about a fifth of it runs through, then once more; no feed that week."
		t.Basis = "Michigan State University Extension: leach when what runs out is above 3.5 dS/m; the eight weeks are common practice"
		t.Answer = Answer{
			Verdict: sentence("flush the medium of " + t.SpaceName),
			Reason:  "Feed and hard water leave salt. Leaf edges burn, and feeding more makes it worse.",
			Sure:    "a rule of the trade; a meter on what runs out would tell", OfTwenty: -1,
			Look:    "A white crust, or brown leaf edges? Is the drain hole open?",
			Change:  "Rain has run through it for days: no need.",
			Caution: "Just then it weighs most. On a balcony think of what bears it, and who lives below.",
		}
		if sp.Kind == garden.Reservoir {
			t.Answer.Look = "A white crust on top? Is the overflow open, so that it can run out?"
		}
		out = append(out, t)
	}
	return out
}

// flushEarly and flushLate bound the eight weeks: common practice runs from six
// to ten.
const (
	flushEarly = 42
	flushLate  = 70
)

// FlushRow is when the salt in a fed container wants washing out.
type FlushRow struct {
	Space, Name string
	When        cal.Window
	Words       string // with how sure
}

// flushRows gives a window to every container that was fed, in walking order.
func flushRows(in *Inputs, stays []standing) []FlushRow {
	var out []FlushRow
	for i, sp := range in.Garden.Spaces {
		if in.State == nil || !contained(sp.Kind) || sp.Kind == garden.ElevatedBed {
			continue
		}
		from, fed := cal.Day(0), cal.Day(0)
		for _, s := range stays {
			if s.space == i && s.count > 0 {
				if from == 0 || s.since.Likely < from {
					from = s.since.Likely
				}
				fed = max(fed, in.State.LastDone(s.id, "feed"))
			}
		}
		if fed == 0 {
			continue // what was never fed has little to wash out
		}
		last, since := in.State.LastDone(string(sp.ID), "flush"), "planted"
		if last > from {
			from, since = last, "flushed"
		}
		w := cal.Window{Early: from + flushEarly, Likely: from + flushEvery, Late: from + flushLate}
		row := FlushRow{Space: string(sp.ID), Name: spaceName(sp), When: w}
		row.Words = fmt.Sprintf("%s to %s, %s most likely. It was %s about %s and last fed %s.", w.Early.Short(), w.Late.Short(), w.Likely.Short(), since, from.Short(), fed.Short())
		out = append(out, row)
	}
	return out
}
