package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// CatchUp is what the plan that stood when somebody left wanted of each space
// in the days nobody wrote down.
type CatchUp struct {
	Left   cal.Day                // last day on which something was written before today; 0 = never
	Plan   cal.Day                // day of the plan that stood; 0 = none is remembered
	Spaces map[string][]Meanwhile // in order of time
}

// Meanwhile is one thing a plan wanted and nobody wrote down.
type Meanwhile struct {
	Words string
	Kind  ledger.Kind // of the entry that assumes it was done; "" = it left nothing that stands
	On    cal.Day
	Body  any
}

// assumedNote is what every entry of a round says of itself.
const assumedNote = "Assumed: nobody wrote it down. Taken as planned on a round; the day is the plan's."

// CatchUpOf lists, by space, what a plan wanted from the week somebody left to
// today: starts and pulls of the plan, and first pickings as they were
// forecast. What the record shows as done is left out.
func CatchUpOf(g *garden.Garden, book *crop.Book, state *ledger.State, stood *ledger.KeptPlan, left, today cal.Day) *CatchUp {
	c := &CatchUp{Left: left, Spaces: map[string][]Meanwhile{}}
	if stood == nil || left == 0 {
		return c
	}
	c.Plan = stood.On
	kinds := map[string]garden.Kind{}
	for _, sp := range g.Spaces {
		kinds[string(sp.ID)] = sp.Kind
	}
	add := func(space string, m Meanwhile) {
		if kinds[space] == "" {
			return // the space is gone
		}
		all := c.Spaces[space]
		i := len(all)
		for i > 0 && all[i-1].On > m.On {
			i--
		}
		c.Spaces[space] = append(all[:i:i], append([]Meanwhile{m}, all[i:]...)...)
	}
	name := func(id string) string {
		if k, ok := book.Crop(crop.ID(id)); ok {
			return k.Name
		}
		return id
	}
	day := func(d cal.Day) cal.Day { return min(max(d, left+1), today) }
	tray := map[string]bool{} // trays spoken for
	for _, l := range stood.Lines {
		if l.Since < left.Monday() || l.Since > today || begun(state, l) {
			continue
		}
		if l.Since == today.Monday() && left < l.Since {
			continue // this week has only begun: today's plan speaks of it
		}
		b := ledger.Started{Crop: l.Crop, Space: l.Space, Count: l.Plants, Note: assumedNote}
		m := Meanwhile{Kind: ledger.Sown, On: day(l.Since + 3)}
		verb := "sow"
		switch l.Way {
		case "set":
			verb, m.Kind = "set out", ledger.PutOut
			for _, p := range state.Plantings {
				if k := kinds[p.Space]; (k == garden.LampShelf || k == garden.Bench) && p.Crop == l.Crop && p.Ended == 0 && !tray[p.ID] {
					b.Planting, tray[p.ID] = p.ID, true
					break
				}
			}
		case "plant":
			verb = "plant"
		}
		m.Body = b
		m.Words = fmt.Sprintf("%s %d %s, week of %s", verb, l.Plants, name(l.Crop), l.Since.Short())
		if l.Until < today {
			m.Kind, m.Body = "", nil
			m.Words += "; over by now"
		}
		add(l.Space, m)
	}
	c.ends(state, stood, name, day, add, today)
	return c
}

// ends adds pulls of the plan, and pickings that were forecast to begin.
func (c *CatchUp) ends(state *ledger.State, stood *ledger.KeptPlan, name func(string) string, day func(cal.Day) cal.Day, add func(string, Meanwhile), today cal.Day) {
	standing := map[string]ledger.Planting{}
	for _, p := range state.Plantings {
		if p.Ended == 0 {
			standing[p.ID] = p
		}
	}
	pulled := map[string]cal.Day{}
	for _, x := range stood.Pulls {
		p, ok := standing[x.Planting]
		if !ok || x.On <= c.Left || x.On > today {
			continue
		}
		pulled[p.ID] = x.On
		add(p.Space, Meanwhile{Words: fmt.Sprintf("pull %s, by %s", name(p.Crop), x.On.Short()), Kind: ledger.Pulled, On: day(x.On),
			Body: ledger.Ended{Planting: p.ID, Note: assumedNote}})
	}
	for _, f := range state.Forecasts {
		p, ok := standing[f.Planting]
		first := f.FirstLikely
		if out := pulled[f.Planting]; !ok || first <= c.Left || first > today || p.LastPick != 0 || out != 0 && out < first {
			continue
		}
		add(p.Space, Meanwhile{Words: fmt.Sprintf("pick %s, from about %s", name(p.Crop), first.Short()), Kind: ledger.Picked, On: day(first),
			Body: ledger.Amount{Planting: p.ID, Note: assumedNote}})
	}
}

// earlyDays is how long before its planned week a start may have been made to
// count as that start.
const earlyDays = 14

// begun reports whether the record shows a planned line as started.
func begun(s *ledger.State, l ledger.PlanLine) bool {
	for _, p := range s.Plantings {
		start := max(p.Sown, p.SetOut)
		if p.Crop == l.Crop && p.Space == l.Space && !p.FromFile && start >= l.Since-earlyDays {
			return true
		}
	}
	return false
}

// roundDays is how many days a round may take: a day on which answers of it
// were written is not the day somebody left, so long.
const roundDays = 3

// LeftOn is the last day on which somebody wrote something before this round:
// by when it was written, or, where all of it was written today, by the day it
// speaks of. What the program writes by itself does not count.
func LeftOn(events []ledger.Event, today, clock cal.Day) cal.Day {
	byWriting, byDay := cal.Day(0), cal.Day(0)
	round := map[cal.Day]bool{}
	for _, e := range events {
		if e.Kind == ledger.Assumed && today-e.Happened <= roundDays {
			round[e.Happened], round[cal.FromTime(e.Written)] = true, true
		}
	}
	for _, e := range events {
		switch e.Kind {
		case ledger.Forecasted, ledger.Restored:
			continue
		}
		if w := cal.FromTime(e.Written); w < clock && w < today && !round[w] {
			byWriting = max(byWriting, w)
		}
		if e.Happened < today && !round[e.Happened] {
			byDay = max(byDay, e.Happened)
		}
	}
	if byWriting != 0 {
		return byWriting
	}
	return byDay
}
