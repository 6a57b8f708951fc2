package reckon

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
)

// today lists what there is to do, pressing first, then in walking order.
func (r *Result) today() []Task {
	var out []Task
	out = append(out, r.pickTasks()...)
	out = append(out, r.pullTasks()...)
	out = append(out, r.startTasks()...)
	out = append(out, r.shelfTasks()...)
	out = append(out, r.coverTasks()...)
	out = append(out, r.thinTasks()...)
	out = append(out, r.lookTasks()...)
	kept := out[:0]
	for _, t := range out {
		if r.in.State != nil {
			if _, gone := r.in.State.Dismissed[t.ID]; gone {
				continue
			}
		}
		kept = append(kept, t)
	}
	order := map[string]int{}
	for i, sp := range r.in.Garden.Spaces {
		order[string(sp.ID)] = i
	}
	sort.SliceStable(kept, func(a, b int) bool {
		if kept[a].Pressing != kept[b].Pressing {
			return kept[a].Pressing
		}
		if order[kept[a].Space] != order[kept[b].Space] {
			return order[kept[a].Space] < order[kept[b].Space]
		}
		return kept[a].ID < kept[b].ID
	})
	return kept
}

// task fills what every task about a space shares.
func (r *Result) task(space int, verb, object, planting string) Task {
	sp := r.in.Garden.Spaces[space]
	return Task{
		ID: string(sp.ID) + "." + verb + "." + planting, Space: string(sp.ID), SpaceName: spaceName(sp),
		Verb: verb, Object: object, Planting: planting, Who: r.who(sp),
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

// batch is what is started together: plantings of one crop, way and week in
// one space, whatever their ends.
type batch struct {
	option int // the largest part
	plants int
	ids    []string
}

// batches gathers the plan's plantings that pass a test.
func (r *Result) batches(want func(o season.Option) bool) []batch {
	m := r.model
	var out []batch
	at := map[string]int{}
	most := map[string]int{}
	for _, pl := range r.Plan.Plantings {
		o := m.p.Options[pl.Option]
		if !want(o) {
			continue
		}
		e := m.entries[m.entry[pl.Option]]
		key := fmt.Sprint(o.Space, " ", o.Crop, " ", e.Way, " ", o.Week)
		i, ok := at[key]
		if !ok {
			i = len(out)
			at[key] = i
			out = append(out, batch{option: pl.Option})
		}
		if pl.Plants > most[key] {
			most[key], out[i].option = pl.Plants, pl.Option
		}
		out[i].plants += pl.Plants
		out[i].ids = append(out[i].ids, o.ID)
	}
	return out
}

func (r *Result) startTasks() []Task {
	m := r.model
	var out []Task
	for _, b := range r.batches(func(o season.Option) bool { return o.Week == 0 }) {
		o := m.p.Options[b.option]
		e := m.entries[m.entry[b.option]]
		verb, event := "sow", "sown"
		switch e.Way {
		case crop.SetOut:
			verb, event = "set out", "set out"
		case crop.Plant:
			verb = "plant"
		}
		t := r.task(m.spaces[o.Space], verb, named(e.Crop, r.lotVariety(o.Crop), nil), o.ID)
		t.Crop, t.Count, t.Event = o.Crop, b.plants, event
		t.Minutes = int(e.Crop.MinutesStart + 0.5)
		n := ofTwenty(e.Growth.Success, r.in.Futures)
		last, loss := r.wait(b.option)
		loss *= float64(b.plants)
		t.Until = m.p.Start + cal.Day(7*last+6)
		t.Pressing = last == 0 && loss >= pressingLoss
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("%s %s in %s: %s", verb, t.Object, t.SpaceName, plants(b.plants))),
			Reason:   join(r.reasons(o, e, b.plants)),
			Sure:     chance(n),
			OfTwenty: n,
			Look:     lookBefore(e),
			Change:   r.change(last, loss),
			Caution:  startCaution(r.in.Garden.Spaces[m.spaces[o.Space]], e),
		}
		out = append(out, t)
	}
	return out
}

// pressingLoss is the meals a week's delay must cost before a start is said
// not to wait.
const pressingLoss = 3

// wait says until which week a start may wait: the last in which the same
// start in the same space succeeds nearly as often and gives nine tenths as
// much; and what the week after the option's own costs, in meals a plant. It
// is read off the growth tables; the rest of the plan is taken as it is.
func (r *Result) wait(opt int) (last int, loss float64) {
	m := r.model
	o := m.p.Options[opt]
	e := m.entries[m.entry[opt]]
	best := entryKg(e)
	last = o.Week
	still := true
	next := 0.0
	for w := o.Week + 1; w <= o.Week+8; w++ {
		good := false
		for _, x := range m.entries {
			if x.Week != w || x.Class != e.Class || x.Way != e.Way || x.Crop.ID != e.Crop.ID {
				continue
			}
			kg := entryKg(x)
			if w == o.Week+1 {
				next = kg
			}
			good = x.Growth.Success >= e.Growth.Success-2 && kg >= 0.9*best
		}
		still = still && good
		if still {
			last = w
		}
	}
	if e.Crop.MealKg > 0 && best > next {
		loss = (best - next) / e.Crop.MealKg
	}
	return last, loss
}

// entryKg is the mean picking of a plant over the futures.
func entryKg(e Entry) float64 {
	sum := 0.0
	for _, o := range e.Growth.Outcomes {
		for _, kg := range o.Kg {
			sum += float64(kg)
		}
	}
	return sum / float64(max(len(e.Growth.Outcomes), 1))
}

func (r *Result) change(last int, loss float64) string {
	switch {
	case last == 0 && loss >= 1:
		return fmt.Sprintf("A week's wait costs %s. Only frozen or sodden ground is a reason.", meals(loss))
	case last == 0:
		return "Do it this week if you can. Frozen or sodden ground is a reason to wait."
	}
	return fmt.Sprintf("It can wait until %s. A cold or very wet spell is a reason to wait.", (r.Problem.Start + cal.Day(7*last+6)).Short())
}

func join(ss []string) string {
	s := ""
	for i, x := range ss {
		if i > 0 {
			s += " "
		}
		s += x
	}
	return s
}

func lookBefore(e Entry) string {
	c := e.Crop
	switch {
	case e.Way == crop.SetOut && c.Warm:
		return fmt.Sprintf("Read the night minimum for a week: %.0f °C or more is wanted. Are the plants hardened?", c.SetNightMin.Value)
	case e.Way == crop.SetOut:
		return "Are the plants hardened, with roots holding the pot together?"
	case e.Way == crop.Sow:
		return fmt.Sprintf("Push a thermometer to seed depth at breakfast: %.0f °C or more is wanted.", c.SoilMin.Value)
	}
	return "Is the ground crumbly, neither frozen nor sticky?"
}

// startCaution is the one line that must stand at the moment of action.
func startCaution(sp garden.Space, e Entry) string {
	switch sp.Kind {
	case garden.Railing, garden.Hanging:
		return "Check the fixings first. The building's rules and a rated bracket come before this plan."
	case garden.Bag, garden.PocketBag, garden.Reservoir, garden.Tier, garden.ElevatedBed:
		if sp.Floor.M > 2 {
			return "Wet medium is heavy. Ask the owner or a structural engineer for the rated load."
		}
	}
	if e.Way == crop.SetOut {
		return "Dampen dusty mix, open a door, wash hands: potting dust can carry Legionella."
	}
	return ""
}

func (r *Result) shelfTasks() []Task {
	m := r.model
	shelf := -1
	for i, sp := range r.in.Garden.Spaces {
		if sp.Kind == garden.LampShelf {
			shelf = i
			break
		}
	}
	var out []Task
	for _, b := range r.batches(func(o season.Option) bool { return o.ShelfFrom == 0 && o.Week > 0 }) {
		o := m.p.Options[b.option]
		e := m.entries[m.entry[b.option]]
		n := ofTwenty(e.Growth.Success, r.in.Futures)
		t := Task{ID: "shelf.sow." + o.ID, SpaceName: "the seed shelf"}
		if shelf >= 0 {
			t = r.task(shelf, "sow", "", o.ID)
		}
		t.Verb, t.Object, t.Crop, t.Count, t.Event = "sow", named(e.Crop, r.lotVariety(o.Crop), nil), o.Crop, b.plants, "sown"
		t.Minutes = int(e.Crop.MinutesStart + 0.5)
		t.Until = m.p.Start + 6
		t.Pressing = true
		to := spaceName(r.in.Garden.Spaces[m.spaces[o.Space]])
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("Sow %s on the shelf: pots for %s", t.Object, plants(b.plants))),
			Reason:   fmt.Sprintf("They go to %s in %s. ", to, week(e.Day)) + join(r.reasons(o, e, b.plants)),
			Sure:     chance(n),
			OfTwenty: n,
			Look:     "Is a place under the lamps free, and is the seed young enough? Test ten seeds if unsure.",
			Change:   "If the space will not be free by then, sow a week or two later.",
			Caution:  "Keep plugs above the water and use an outlet with ground-fault protection.",
		}
		out = append(out, t)
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
		var now []float64
		n := 0
		for _, row := range st.Meals {
			v := 0.0
			if len(row) > 0 {
				v = float64(row[0])
			}
			if v > 0.25 {
				n++
			}
			now = append(now, v)
		}
		if mean(now) < 0.4 {
			continue
		}
		t := r.task(s.space, "pick", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes = string(s.crop.ID), "picked", int(s.crop.MinutesPick+0.5)
		t.Until = m.p.Start + 6
		t.Pressing = s.crop.Harvest == crop.Fruiting || s.crop.Harvest == crop.Flush
		k := ofTwenty(n, len(now))
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("pick %s in %s: %s this week", t.Object, t.SpaceName, span(quantile(now, 0.1), quantile(now, 0.9)))),
			Reason:   pickReason(s.crop),
			Sure:     chance(k),
			OfTwenty: k,
			Look:     "Look before you cut: size, colour, and whether it has begun to run up.",
			Change:   "If it looks finished or bolting, say so: the plan for this ground changes.",
		}
		if s.crop.Poison != "" {
			t.Answer.Caution = "Poisonous part: " + s.crop.Poison + ". A poison line answers questions."
		}
		out = append(out, t)
	}
	return out
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
		if next != "" {
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
		t := r.task(s.space, "cover", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes, t.Pressing = string(s.crop.ID), "looked", 5, true
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
		if s.setOut || s.crop.Class != "root" || age < 21 || age > 42 {
			continue
		}
		t := r.task(s.space, "thin", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes = string(s.crop.ID), "looked", 10
		t.Until = s.since.Likely + 45
		t.Answer = Answer{
			Verdict: sentence(fmt.Sprintf("thin %s in %s to %.0f cm", t.Object, t.SpaceName, 100*s.crop.SpacingM.Value)),
			Reason:  "Crowded roots stay small.",
			Sure:    "common practice", OfTwenty: -1,
			Look:   "Have most of them two true leaves?",
			Change: "If few came up, leave them and sow the gaps again.",
		}
		out = append(out, t)
	}
	return out
}

// lookTasks asks for the looks that would settle something: a lost label, or a
// keep that is within the noise.
func (r *Result) lookTasks() []Task {
	var out []Task
	for _, s := range r.model.stays {
		if len(s.oneOf) == 0 {
			continue
		}
		t := r.task(s.space, "look", s.crop.Name, s.id)
		t.Crop, t.Event, t.Minutes = string(s.crop.ID), "looked", 2
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
