package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// potDust is the caution for every handling of mix: jobs of the bench.
const potDust = "Dampen dusty mix, open a door, wash hands: potting dust can carry Legionella."

// hardenDays is how long starts are got used to sun and wind: 7 to 14 days,
// University of California master gardeners; the middle is ours.
const hardenDays = 10

// trayTasks says what the pots on shelf and bench want before they go out:
// pricking out, a bigger pot, hardening.
func (r *Result) trayTasks() []Task {
	var out []Task
	for _, s := range whatStands(r.in) {
		if !s.tray || s.count == 0 {
			continue
		}
		to, placed := r.goesOut(s.id)
		if t, ok := r.prickOut(s); ok && placed { // those without a place are named as spare
			out = append(out, t)
		}
		if t, ok := r.hardenOff(s, to, placed); ok {
			out = append(out, t)
		} else if t, ok := r.potOn(s, to, placed); ok {
			out = append(out, t)
		}
	}
	return out
}

// goesOut is the first day the plan sets a tray out.
func (r *Result) goesOut(id string) (cal.Day, bool) {
	on, ok := cal.Day(0), false
	for _, pl := range r.Plan.Plantings {
		if r.Problem.Options[pl.Option].MaxTotal != "tray."+id {
			continue
		}
		if d := r.model.entries[r.model.entry[pl.Option]].Day; !ok || d < on {
			on, ok = d, true
		}
	}
	return on, ok
}

// upAfter is the days to emergence on the shelf; 10 when the book has none.
func (r *Result) upAfter(c *crop.Crop) int {
	warm := r.in.Garden.Shelf.WarmthC
	if warm == 0 {
		warm = 20
	}
	if d, ok := c.EmergeDaysAt(warm); ok {
		return int(math.Round(d))
	}
	return 10
}

// oneToPot reports crops whose large seed is sown singly: nothing to prick out.
func oneToPot(c *crop.Crop) bool {
	return c.Class == "legume" || c.Class == "grain" || c.Family == "Cucurbitaceae"
}

// prickOut asks from a week after emergence for two weeks.
func (r *Result) prickOut(s standing) (Task, bool) {
	age, up := int(r.in.Date-s.since.Likely), r.upAfter(s.crop)
	if oneToPot(s.crop) || r.handed(s.id, ledger.PrickedOut) != 0 || age < up+7 || age > up+21 {
		return Task{}, false
	}
	t := r.trayTask("prick out", s)
	t.Minutes, t.Until = max(5, s.count/2), s.since.Likely+cal.Day(up+21)
	t.Rule, t.Basis = "When the first true leaf shows, one to a pot.", "common practice"
	t.Answer.Reason = fmt.Sprintf("Sown %d days ago, up about %d. Crowded seedlings damp off and tangle.", age, age-up)
	t.Answer.Look = "Is there a true leaf above the two seed leaves? Hold it by a seed leaf, never by the stem."
	t.Answer.Caution = potDust
	t.Names = true
	return t, true
}

// potOn asks when a tray is fit to go out but its place is not free yet.
func (r *Result) potOn(s standing, to cal.Day, placed bool) (Task, bool) {
	weeks := s.crop.NurseryWeeks
	fit, bound := s.since.Likely+cal.Day(7*weeks.Value), s.since.Likely+cal.Day(7*weeks.High)
	if last := r.handed(s.id, ledger.PottedOn); last != 0 {
		fit, bound = last+21, last+28
	}
	if !weeks.Known() || r.in.Date < fit || placed && to <= r.in.Date+hardenDays {
		return Task{}, false
	}
	t := r.trayTask("pot on", s)
	t.Minutes, t.Until = max(5, s.count), max(bound, r.in.Date)
	t.Pressing = bound <= r.in.Date
	t.Rule, t.Basis = "Before roots circle the pot.", "common practice; weeks to planting size from the crop book"
	t.Answer.Reason = fmt.Sprintf("Fit to go out since about %s, and no place is free yet.", fit.Short())
	if placed {
		t.Answer.Reason = fmt.Sprintf("Fit since about %s. Their place is free in %s.", fit.Short(), week(to))
	}
	t.Answer.Look = "Lift one: are roots at the holes, or circling?"
	t.Answer.Change = fmt.Sprintf("Pot-bound from about %s. No roots at the holes: wait a week.", bound.Short())
	t.Answer.Caution = potDust
	t.Names = true
	return t, true
}

// hardenOff asks every day from ten days before setting out.
func (r *Result) hardenOff(s standing, to cal.Day, placed bool) (Task, bool) {
	left := int(to - r.in.Date)
	if !placed || left < 1 || left > hardenDays || r.handed(s.id, ledger.Hardening) == r.in.Date {
		return Task{}, false
	}
	day := hardenDays - left + 1
	t := r.trayTask("harden", s)
	t.Minutes, t.Until, t.Pressing = 5, r.in.Date, true
	t.Rule, t.Basis = "Seven to fourteen days: shade first, then more sun and wind each day.", "University of California master gardeners; growers differ in length"
	t.Answer.Verdict = sentence(fmt.Sprintf("harden off %s: day %d of about %d", t.Object, day, hardenDays))
	t.Answer.Reason = hardenStep(day) + " Sun and wind scorch shelf-raised leaves; cold alone seldom does it."
	t.Answer.Look = "Pale or limp leaves: back into shade, a day slower."
	t.Answer.Change = "A hot, windy or near-freezing day: keep them in, and count it as no day."
	if why, harsh := r.harsh(s); harsh {
		t.Answer.Verdict = sentence(fmt.Sprintf("keep %s in today, hardening waits a day", t.Object))
		t.Answer.Reason = why
		t.Pressing = false
	}
	return t, true
}

// hardenStep says what a day of hardening is.
func hardenStep(day int) string {
	switch {
	case day <= 2:
		return "An hour or two outdoors in shade, out of the wind."
	case day <= 5:
		return fmt.Sprintf("About %d hours outdoors, the last ones in morning sun.", day)
	case day <= 8:
		return "All day outdoors, in at night."
	}
	return "Out day and night, unless frost is near."
}

// harsh says why a day is no day for hardening, by the middle of the futures.
func (r *Result) harsh(s standing) (string, bool) {
	d := meanDay(r.Place.Set.Futures, r.in.Date)
	low := 5.0
	if s.crop.Warm {
		low = math.Max(low, s.crop.ChillC.Value)
	}
	switch {
	case d.TmaxC >= hotDayC:
		return fmt.Sprintf("About %.0f °C today: sun would scorch them.", d.TmaxC), true
	case d.WindMS >= 6:
		return fmt.Sprintf("Wind about %.0f m/s today: it would shred them.", d.WindMS), true
	case d.TmaxC < low:
		return fmt.Sprintf("No warmer than about %.0f °C today: they would stand still.", d.TmaxC), true
	}
	return "", false
}

func (r *Result) trayTask(verb string, s standing) Task {
	t := r.task(s.space, verb, named(s.crop, s.variety, s.oneOf), s.id)
	t.Crop, t.Count, t.Event = string(s.crop.ID), s.count, string(handKind[verb])
	t.Answer = Answer{Verdict: sentence(fmt.Sprintf("%s %s: %s", verb, t.Object, plants(s.count))), Sure: "a rule of the trade, not a count", OfTwenty: -1,
		Change: "What the plants look like goes before the calendar."}
	return t
}

// handKind is the hand-over that a verb of the bench is kept as.
var handKind = map[string]ledger.Kind{"prick out": ledger.PrickedOut, "pot on": ledger.PottedOn, "harden": ledger.Hardening}

// handed is the last day a planting was handed on so; 0 = never noted.
func (r *Result) handed(id string, k ledger.Kind) cal.Day {
	if r.in.State == nil {
		return 0
	}
	on := cal.Day(0)
	for _, t := range r.in.State.Threads {
		for _, h := range t.Steps {
			if t.ID == id && h.Kind == k && h.On > on {
				on = h.On
			}
		}
	}
	return on
}
