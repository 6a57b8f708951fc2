package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// upTasks ask whether a sowing is up, when it should be and nobody has said.
func (r *Result) upTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		age := int(r.in.Date - s.since.Likely)
		soil, days, ask := r.upDue(s)
		if !ask {
			continue
		}
		failed := int(math.Ceil(2 * days))
		name := named(s.crop, s.variety, s.oneOf)
		t := r.task(s.space, "look", "whether "+name+" is up", s.id)
		t.ID += ".up"
		t.Crop, t.Event, t.Minutes, t.Hollow = string(s.crop.ID), "looked", 2, true
		t.Until = max(s.since.Likely+cal.Day(failed), r.in.Date)
		t.Rule, t.Basis = "Twice the usual days without a leaf: call it failed.", "days from the emergence table of the crop book; the doubling is ours"
		t.Answer = Answer{
			Verdict: sentence("look " + t.Object + " in " + t.SpaceName),
			Reason:  fmt.Sprintf("Sown %d days ago. At about %.0f °C it comes in about %.0f.", age, soil, days),
			Sure:    "not known from here", OfTwenty: -1,
			Look:   "Lines of seed leaves, or scratched and empty ground?",
			Change: fmt.Sprintf("Nothing by %s: call it failed and sow again, if its window is open.", (s.since.Likely + cal.Day(failed)).Short()),
		}
		out = append(out, t)
	}
	return out
}

// upDue reports whether a sowing should be up and nobody has said; with the
// warmth of its ground since, °C, and the usual days.
func (r *Result) upDue(s standing) (soil, days float64, ask bool) {
	age := float64(r.in.Date - s.since.Likely)
	if s.setOut || s.crop.AutumnPlant || s.looks != "" || s.seen != 0 || !hasSeed(s) || age < 4 || age > 60 {
		return 0, 0, false
	}
	soil = r.meanSince(s.space, s.since.Likely)
	days, ok := s.crop.EmergeDaysAt(soil)
	return soil, days, ok && age >= days && age <= 2.5*days
}

// hasSeed reports whether something was sown, rather than planted.
func hasSeed(s standing) bool { return hasWay(s.crop, crop.Sow) && !s.crop.Perennial }

// meanSince is the mean warmth of a space's ground since a day, as the shared
// past of the futures has it.
func (r *Result) meanSince(space int, from cal.Day) float64 {
	e := r.Place.Envs[space]
	if e == nil || len(e.Futures) == 0 {
		return 10
	}
	sum, n := 0.0, 0
	for d := from; d < r.in.Date; d++ {
		if w, ok := at(e.Futures[0], d); ok {
			sum, n = sum+(w.TmaxC+w.TminC)/2, n+1
		}
	}
	if n == 0 {
		return 10
	}
	return sum/float64(n) + mediumWarmC(r.in.Garden.Spaces[space])
}

// againTasks ask for a second look at what was said to be poor, and at what is
// only taken to be as planned.
func (r *Result) againTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		poor := s.looks == "poor" && s.seen != 0 && r.in.Date >= s.seen+7
		if !poor && !s.assumed {
			continue
		}
		t := r.task(s.space, "look", "again at "+named(s.crop, s.variety, s.oneOf), s.id)
		t.ID += ".again"
		t.Crop, t.Event, t.Minutes, t.Hollow = string(s.crop.ID), "looked", 2, true
		t.Until = r.in.Date + 7
		t.Rule, t.Basis = "A week after trouble, or when nobody has looked since time away.", "common practice"
		t.Answer = Answer{Verdict: sentence(fmt.Sprintf("look %s in %s", t.Object, t.SpaceName)), Sure: "not known from here", OfTwenty: -1,
			Reason: fmt.Sprintf("It looked poor on %s.", s.seen.Short()), Look: "Is the newest leaf clean and growing? Then it mends.",
			Change: "What you see. The trouble key helps to tell causes apart."}
		if !poor {
			t.Answer.Reason = "It is only taken to be as planned. One look makes the plan surer."
		}
		out = append(out, t)
	}
	return out
}
