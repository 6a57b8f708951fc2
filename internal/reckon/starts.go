package reckon

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
)

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
		t.Crop, t.Count, t.Event, t.line = o.Crop, b.plants, event, o.ID
		t.Planting = "" // it begins with the note; a setting out goes on with its tray
		if s, ok := r.trayOf(o); ok {
			t.Planting, t.Object = s.id, named(s.crop, s.variety, s.oneOf)
		}
		t.How = howStart(e.Way, e.Crop, b.plants)
		t.Minutes = int(e.Crop.MinutesStart + 0.5)
		n := ofTwenty(e.Growth.Success, r.in.Futures)
		last, loss := r.wait(b.option)
		loss *= r.given(b.ids)
		t.Until = m.p.Start + cal.Day(7*last+6)
		t.Pressing = last == 0 && loss >= pressingLoss
		t.DayCost, t.counted = loss/7, true
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("%s %s in %s: %s", verb, t.Object, t.SpaceName, plants(b.plants))),
			Reason:   join(r.reasons(o, e, b.plants)),
			Sure:     chance(n),
			OfTwenty: n,
			Look:     r.getFirst(o, e) + r.lookBefore(m.spaces[o.Space], e),
			Change:   r.change(last, loss),
			Caution:  startCaution(r.in.Garden.Spaces[m.spaces[o.Space]], e),
		}
		out = append(out, t)
	}
	return out
}

// trayOf is the tray on the shelf that an option sets out, so that the plants
// keep their identity; false when it sets out none.
func (r *Result) trayOf(o season.Option) (standing, bool) {
	id, ok := strings.CutPrefix(o.MaxTotal, "tray.")
	if !ok {
		return standing{}, false
	}
	for _, s := range whatStands(r.in) {
		if s.tray && s.id == id {
			return s, true
		}
	}
	return standing{}, false
}

// pressingLoss is the meals a week's delay must cost before a start is said
// not to wait.
const pressingLoss = 3

// given is what plantings give by the plan and is wanted, meals, mean over the
// futures.
func (r *Result) given(ids []string) float64 {
	sum := 0.0
	for _, pl := range r.Plan.Plantings {
		o := r.Problem.Options[pl.Option]
		if !slices.Contains(ids, o.ID) || o.Food < 0 || o.Food == r.model.bees {
			continue
		}
		sum += math.Min(float64(pl.Plants)*mealsOf(&o), wantedWhile(&r.Problem.Foods[o.Food], &o, r.Problem.Foods[o.Food].Shelf))
	}
	return sum
}

// wait says until which week a start may wait: the last in which the same
// start in the same space succeeds nearly as often and gives nine tenths as
// much; and which share of its picking a week's wait costs. It is read off the
// growth tables; the rest of the plan is taken as it is.
func (r *Result) wait(opt int) (last int, loss float64) {
	m := r.model
	o := m.p.Options[opt]
	e := m.entries[m.entry[opt]]
	best := entryKg(e)
	last = o.Week
	still := true
	for w := o.Week + 1; w <= o.Week+8 && still; w++ {
		still = false
		for _, x := range m.entries {
			if x.Week != w || x.Class != e.Class || x.Way != e.Way || x.Crop.ID != e.Crop.ID || x.Hopeless {
				continue
			}
			still = x.Growth.Success >= e.Growth.Success-2 && entryKg(x) >= 0.9*best
		}
		if still {
			last = w
		}
	}
	if best > 0 && e.Later >= 0 {
		loss = math.Max(0, 1-e.Later/best)
	}
	return last, loss
}

// entryKg is the mean picking of a plant over the futures.
func entryKg(e Entry) float64 {
	sum := 0.0
	for _, o := range e.Growth.Outcomes {
		sum += o.Kg.Sum()
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

// getFirst says that what a start begins with is not at hand, "" when it is, or
// when nobody said what is.
func (r *Result) getFirst(o season.Option, e Entry) string {
	if isTray(o) || !toBuy(r.in, e.Crop.ID) {
		return ""
	}
	if e.Way == crop.Plant {
		return sentence("none is listed in the tin: get "+plantedAs(e.Crop)+" first") + " "
	}
	return "No packet of it is listed in the tin: get seed first. "
}

// lookBefore is what to look at before a start of this week.
func (r *Result) lookBefore(space int, e Entry) string {
	c := e.Crop
	switch {
	case e.Way == crop.SetOut && c.Warm:
		return fmt.Sprintf("Read the night minimum for a week: %.0f °C or more is wanted. Are the plants hardened?", c.SetNightMin.Value)
	case e.Way == crop.SetOut:
		return "Are the plants hardened, with roots holding the pot together?"
	case e.Way == crop.Sow:
		soil, known := soilWeekC(r.Place.Envs[space], r.in.Date)
		return seedbedLook(c, soil, known)
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
		t.line = o.ID
		t.How = howShelf(e.Crop, b.plants)
		t.Minutes = int(e.Crop.MinutesStart + 0.5)
		last, loss := r.wait(b.option)
		loss *= r.given(b.ids)
		t.Until = m.p.Start + cal.Day(7*(last-o.Week)+6)
		t.Pressing = last == o.Week && loss >= pressingLoss
		change := "If the space will not be free by then, sow a week or two later."
		if t.Pressing {
			change = fmt.Sprintf("A week's wait costs %s.", meals(loss))
		} else if last > o.Week {
			change = fmt.Sprintf("It can wait until %s; the pots then go out later too.", t.Until.Short())
		}
		to := spaceName(r.in.Garden.Spaces[m.spaces[o.Space]])
		t.Answer = Answer{
			Verdict:  sentence(fmt.Sprintf("Sow %s on the shelf: pots for %s", t.Object, plants(b.plants))),
			Reason:   fmt.Sprintf("They go to %s in %s. ", to, week(e.Day)) + join(r.reasons(o, e, b.plants)),
			Sure:     chance(n),
			OfTwenty: n,
			Look:     r.getFirst(o, e) + "Is a place under the lamps free, and is the seed young enough? Test ten seeds if unsure.",
			Change:   change,
			Caution:  "Keep plugs above the water and use an outlet with ground-fault protection.",
		}
		out = append(out, t)
	}
	return out
}
