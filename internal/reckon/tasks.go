package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// today lists what there is to do, pressing first, then in walking order.
// Waterings join it when water is reckoned: see SetOutdoors.
func (r *Result) today(keeps []Keep) []Task {
	var out []Task
	out = append(out, r.pickTasks()...)
	out = append(out, r.pullTasks()...)
	out = append(out, r.startTasks()...)
	out = append(out, r.shelfTasks()...)
	out = append(out, r.coverTasks()...)
	out = append(out, r.thinTasks()...)
	out = append(out, r.nameTasks()...)
	out = append(out, r.trayTasks()...)
	out = append(out, r.careTasks()...)
	out = append(out, r.netTasks()...)
	out = append(out, r.uncoverTasks()...)
	out = append(out, r.flushTasks()...)
	out = append(out, r.batchTests()...)
	out = append(out, r.heapTasks()...)
	out = append(out, r.upTasks()...)
	out = append(out, r.againTasks()...)
	kept := out[:0]
	for _, t := range out {
		if r.in.State != nil {
			if _, gone := r.in.State.Dismissed[t.ID]; gone {
				continue
			}
		}
		kept = append(kept, t)
	}
	r.weighDelays(kept, keeps)
	for i := range kept {
		kept[i].LiftKg = lift(kept[i].Verb)
	}
	var ids []string
	for _, sp := range r.in.Garden.Spaces {
		ids = append(ids, string(sp.ID))
	}
	return inOrder(kept, ids)
}

// lift is what a piece of work makes one carry, kg: half a can, or a full tray.
// Common practice.
func lift(verb string) float64 {
	switch verb {
	case "water", "refill", "flush":
		return 5
	case "turn": // a fork of wet compost
		return 5
	case "harden", "pot on":
		return 3
	}
	return 0
}

// task fills what every task about a space shares.
func (r *Result) task(space int, verb, object, planting string) Task {
	sp := r.in.Garden.Spaces[space]
	return Task{
		ID: string(sp.ID) + "." + verb + "." + planting, Space: string(sp.ID), SpaceName: spaceName(sp),
		Verb: verb, Object: object, Planting: planting, Who: r.who(sp), Reach: reaches(r.in.Garden, sp),
	}
}

// who names the people who reach a space: those the file says, else everyone
// standing.
func (r *Result) who(sp garden.Space) []string {
	var out []string
	for _, p := range r.in.Garden.People {
		if len(sp.ReachedBy) == 0 {
			if !p.Seated {
				out = append(out, p.Name)
			}
			continue
		}
		for _, id := range sp.ReachedBy {
			if id == p.ID {
				out = append(out, p.Name)
			}
		}
	}
	return out
}

// pickTasks lists what gives something this week.
func (r *Result) pickTasks() []Task {
	m := r.model
	var out []Task
	for i, s := range m.stays {
		st := m.p.Stays[i]
		if st.Food < 0 || r.Plan.Pull[i] < 0 {
			continue
		}
		now := firstWeek(st.Meals)
		n := 0
		for f := range now {
			now[f] *= s.ready(r.in.Date)
			if now[f] > 0.25 {
				n++
			}
		}
		when, least := "this week", 0.4
		if s.ready(r.in.Date) < 1 { // worth the way again from a whole meal on
			when, least = "since "+s.picked.Short(), 1
		}
		if mean(now) < least {
			continue
		}
		t := r.task(s.space, "pick", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes = string(s.crop.ID), "picked", int(s.crop.MinutesPick+0.5)
		t.How = howPick(s.crop)
		t.Until = m.p.Start + 6
		t.Pressing = s.crop.Harvest == crop.Fruiting || s.crop.Harvest == crop.Flush
		k := ofTwenty(n, len(now))
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("pick %s in %s: %s %s", t.Object, t.SpaceName, span(quantile(now, 0.1), quantile(now, 0.9)), when)),
			Reason:   pickReason(s.crop),
			Sure:     chance(k),
			OfTwenty: k,
			Look:     "Look before you cut: size, colour, and whether it has begun to run up.",
			Change:   "If it looks finished or bolting, say so: the plan for this ground changes.",
		}
		t.Answer.Caution = poisonCaution(s.crop.Poison)
		out = append(out, t)
	}
	return out
}

// ready is the share of a week's picking that hangs there on a day: all of it,
// unless it was picked within the week, for then what is there has come since.
// That a picking takes all that is ready is ours.
func (s standing) ready(on cal.Day) float64 {
	if s.picked == 0 || s.picked > on {
		return 1
	}
	return min(1, float64(on-s.picked)/7)
}

func pickReason(c *crop.Crop) string {
	switch c.Harvest {
	case crop.Fruiting:
		return "Left on the plant, ripe fruit slows the next."
	case crop.Flush:
		return "Shoots open and toughen within days once ready."
	case crop.CutAgain:
		return "Cut leaves grow again; old ones toughen."
	}
	return "It is ready and keeps better in the kitchen than past its time."
}

// pullTasks lists what the plan clears this week.
func (r *Result) pullTasks() []Task {
	m := r.model
	var out []Task
	for i, s := range m.stays {
		if r.Plan.Pull[i] > 0 || m.p.Stays[i].End <= r.Plan.Pull[i] && r.Plan.Pull[i] > 0 {
			continue
		}
		t := r.task(s.space, "pull", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes, t.Count = string(s.crop.ID), "pulled", 10, s.count
		t.Until = m.p.Start + 6
		next, _ := r.follows(m.p.Stays[i].Space, r.Plan.Pull[i])
		reason := "It has given what it will."
		if next != "" && r.still(i) >= 0.5 {
			reason = "The ground is worth more to " + next + "."
		}
		t.Answer = Answer{
			Verdict: sentence(fmt.Sprintf("pull %s in %s this week", t.Object, t.SpaceName)), Reason: reason,
			Sure: "see pull or keep for both costs", OfTwenty: -1,
			Look:   "Is it still making new shoots? Then add a week.",
			Change: "If it looks better than that, say so.",
		}
		out = append(out, t)
	}
	return out
}

// still is what a planting would give from now to its natural end, meals, mean
// over the futures.
func (r *Result) still(stay int) float64 {
	sum, rows := 0.0, r.model.p.Stays[stay].Meals
	for _, row := range rows {
		for _, v := range row {
			sum += float64(v)
		}
	}
	return sum / float64(max(len(rows), 1))
}

// coverTasks warns of frost in the next seven nights over what frost kills.
func (r *Result) coverTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		if s.crop.Hardiness == "hardy" || s.crop.FrostSeedling.Source == "" {
			continue
		}
		e := r.Place.Envs[s.space]
		limit := s.crop.FrostKill.Value
		if s.crop.FrostSeedling.Known() && r.in.Date-s.since.Likely < 35 {
			limit = max(limit, s.crop.FrostSeedling.Value)
		}
		n := 0
		for _, f := range e.Futures {
			for d := range cal.Day(7) {
				if f.Days[int(r.in.Date+d-f.Start)].TminC+e.NightC <= limit {
					n++
					break
				}
			}
		}
		k := ofTwenty(n, len(e.Futures))
		if k < 3 {
			continue
		}
		if r.lastDone(s.id, "cover") == r.in.Date {
			continue
		}
		t := r.task(s.space, "cover", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes, t.Pressing = string(s.crop.ID), EventDone, 5, true
		t.Until = r.in.Date
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("have a cover ready for %s in %s", t.Object, t.SpaceName)),
			Reason:   fmt.Sprintf("A night at or below %.0f °C would kill it. Within seven nights: %d of 20 years.", limit, k),
			Sure:     chance(k),
			OfTwenty: k,
			Look:     "Read tonight's forecast. Clear and still is the danger.",
			Change:   "A forecast above that. Cloth to the ground, dry, on by dusk, off by day; no help in wind.",
		}
		out = append(out, t)
	}
	return out
}

// thinTasks: sown in rows, up, not yet spaced.
func (r *Result) thinTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		age := r.in.Date - s.since.Likely
		if s.setOut || !closeSown(s.crop) || age < 21 || age > 42 || r.lastDone(s.id, "thin") >= s.since.Likely {
			continue
		}
		if _, _, unseen := r.upDue(s); unseen {
			continue // first whether it is up
		}
		t := r.task(s.space, "thin", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes = string(s.crop.ID), EventDone, 10
		t.Until = s.since.Likely + 45
		t.Rule, t.Basis = "At two true leaves, to the width of its roots or heads.", "common practice; spacing from the crop book"
		t.Answer = Answer{
			Verdict: sentence(fmt.Sprintf("thin %s in %s to %.0f cm", t.Object, t.SpaceName, 100*s.crop.SpacingM.Value)),
			Reason:  "Crowded plants stay small, and the strong ones starve the weak.",
			Sure:    "common practice", OfTwenty: -1,
			Look:   "Have most of them two true leaves?",
			Change: "If few came up, leave them and sow the gaps again.",
		}
		out = append(out, t)
	}
	return out
}

// closeSown reports crops sown thicker than they can stand.
func closeSown(c *crop.Crop) bool {
	switch c.Class {
	case "root", "leaf", "head", "bulb":
		return hasWay(c, crop.Sow)
	}
	return false
}

// askAgain is how many days a question about a name rests once somebody
// could not tell.
const askAgain = 28

// nameTasks ask for a lost name, once it can have changed since the last try.
func (r *Result) nameTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		if len(s.oneOf) == 0 || r.lastNamed(s.id) > r.in.Date-askAgain {
			continue
		}
		t := r.task(s.space, "name", "the "+s.crop.Name, s.id)
		t.Crop, t.Event, t.Minutes, t.Hollow, t.Which = string(s.crop.ID), string(ledger.Named), 2, true, true
		t.Answer = Answer{
			Verdict: sentence(fmt.Sprintf("which %s is this in %s? One of %s", s.crop.Name, t.SpaceName, list(s.oneOf))),
			Reason:  "The label was lost. A name lets next year's answer be yours.",
			Sure:    "not known", OfTwenty: -1,
			Look:   "Compare leaf, stalk and habit with the packets.",
			Change: "Nothing is lost by leaving it unknown.",
		}
		out = append(out, t)
	}
	return out
}

// lastNamed is when somebody last said something of a planting's name, or that
// they could not tell; 0 = never.
func (r *Result) lastNamed(id string) (on cal.Day) {
	if r.in.State == nil {
		return 0
	}
	for _, t := range r.in.State.Threads {
		if t.ID != id {
			continue
		}
		for _, c := range t.Named {
			on = max(on, c.On)
		}
	}
	return on
}

// follows names what the plan puts next into a space after a week, and the
// planting's place in the plan.
func (r *Result) follows(space, after int) (string, int) {
	m := r.model
	best, at := -1, -1
	for k, pl := range r.Plan.Plantings {
		o := m.p.Options[pl.Option]
		if o.Space == space && o.Week >= after && (best < 0 || o.Week < best) {
			best, at = o.Week, k
		}
	}
	if at < 0 {
		return "", -1
	}
	return m.entries[m.entry[r.Plan.Plantings[at].Option]].Crop.Name, at
}
