package reckon

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/season"
	"bedweek/internal/stand"
)

// plantedLine draws a chosen planting as a line.
func (r *Result) plantedLine(k int) Line {
	m := r.model
	pl := r.Plan.Plantings[k]
	o := m.p.Options[pl.Option]
	e := m.entries[m.entry[pl.Option]]
	l := Line{
		ID: o.ID, Space: m.p.Spaces[o.Space].ID, Crop: e.Crop.Name, CropID: string(e.Crop.ID), Plants: pl.Plants,
		In:    cal.Window{Early: e.Day, Likely: e.Day, Late: e.Day},
		First: e.Growth.FirstPick, Last: e.Growth.LastPick, Out: e.Growth.EndOfUse,
		OfTwenty: ofTwenty(e.Growth.Success, r.in.Futures),
		Way:      wayWord(e.Way), Holds: m.p.Start + cal.Day(7*o.End+6),
	}
	if e.Way == crop.SetOut {
		l.OnShelf = e.Day - cal.Day(7*e.Growth.ShelfWeeks)
	}
	l.Variety = r.lotVariety(string(e.Crop.ID))
	if s, ok := r.trayOf(o); ok {
		l.OnShelf, l.Variety = s.since.Likely, s.variety
	}
	cut := m.p.Start + cal.Day(7*o.End+6)
	if o.End < m.p.Weeks-1 && cut < l.Out.Late {
		l.Out = clip(l.Out, cut)
		l.Last = clip(l.Last, cut)
	}
	l.Reasons = r.reasons(o, e, pl.Plants)
	return l
}

// clip ends a window at a day that is decided.
func clip(w cal.Window, at cal.Day) cal.Window {
	if w.None() {
		return w
	}
	return cal.Window{Early: min(w.Early, at), Likely: min(w.Likely, at), Late: min(w.Late, at)}
}

// stayLine draws what stands as a line.
func (r *Result) stayLine(i int) Line {
	m := r.model
	s := m.stays[i]
	g := s.growth
	l := Line{
		ID: s.id, Space: string(r.in.Garden.Spaces[s.space].ID), Crop: s.crop.Name, CropID: string(s.crop.ID),
		Variety: s.variety, Plants: s.count, Standing: true, In: s.since,
		First: g.FirstPick, Last: g.LastPick, Out: g.EndOfUse,
		OfTwenty: ofTwenty(g.Success, r.in.Futures),
	}
	if l.Variety == "" && len(s.oneOf) > 0 {
		l.Variety = "one of " + list(s.oneOf)
	}
	end := m.p.Stays[i].End
	if s.over() {
		l.First, l.Last = cal.Window{}, cal.Window{}
		l.Out = cal.Window{Early: r.in.Date, Likely: r.in.Date, Late: m.p.Start + 6}
		l.Reasons = append(l.Reasons, "It was seen to be finished.")
	} else if pull := r.Plan.Pull[i]; pull < end {
		cut := max(m.p.Start+cal.Day(7*pull+6), r.in.Date)
		l.Last = clip(l.Last, cut)
		l.Out = cal.Window{Early: cut, Likely: cut, Late: cut}
		l.Reasons = append(l.Reasons, "The ground is worth more to what follows; see pull or keep.")
	} else if s.crop.Perennial {
		l.Out = cal.Window{}
		l.Reasons = append(l.Reasons, "It lives for years and stays.")
	} else {
		l.Reasons = append(l.Reasons, "Stays to its natural end.")
	}
	if own := ownReason(s.crop); own != "" {
		l.Reasons = append(l.Reasons, own)
	}
	return l
}

// spaceLines returns the lines of one space in order of time, and marks where
// a line is cut although it would still be giving in some futures.
func (r *Result) spaceLines(space string) []Line {
	m := r.model
	type held struct {
		line     Line
		outcomes []stand.Outcome
		cut      bool
		from, to int
	}
	var hs []held
	for i, s := range m.stays {
		if string(r.in.Garden.Spaces[s.space].ID) == space {
			hs = append(hs, held{r.stayLine(i), s.growth.Outcomes, r.Plan.Pull[i] < m.p.Stays[i].End && !s.over(), 0, r.Plan.Pull[i]})
		}
	}
	for k, pl := range r.Plan.Plantings {
		o := m.p.Options[pl.Option]
		if m.p.Spaces[o.Space].ID == space {
			hs = append(hs, held{r.plantedLine(k), m.entries[m.entry[pl.Option]].Growth.Outcomes, o.End < m.p.Weeks-1, o.Week, o.End})
		}
	}
	sort.SliceStable(hs, func(a, b int) bool {
		if hs[a].from != hs[b].from {
			return hs[a].from < hs[b].from
		}
		return hs[a].line.ID < hs[b].line.ID
	})
	out := make([]Line, len(hs))
	for i, h := range hs {
		if h.cut {
			cutDay := m.p.Start + cal.Day(7*h.to+6)
			for _, next := range hs {
				if next.from > h.to && next.from <= h.to+2 {
					n := 0
					for _, oc := range h.outcomes {
						if oc.OK && oc.Last > cutDay {
							n++
						}
					}
					h.line.ClashOf, h.line.ClashWith = ofTwenty(n, len(h.outcomes)), next.line.Crop
					break
				}
			}
		}
		out[i] = h.line
	}
	return out
}

// reasons says why a planting is here and now, in short sentences.
func (r *Result) reasons(o season.Option, e Entry, n int) []string {
	m := r.model
	var out []string
	if e.Crop.Harvest == crop.Bloom {
		out = append(out, "Flowers for the bees and what they set.")
	} else if o.Food >= 0 {
		sum := float64(n) * mealsOf(&o)
		out = append(out, fmt.Sprintf("Gives %s of %s.", meals(sum), m.foods[o.Food]))
		if wanted := wantedWhile(&m.p.Foods[o.Food], &o, m.p.Foods[o.Food].Shelf); sum > plenty*wanted {
			out[0] = fmt.Sprintf("Gives %s of %s, more than the %.0f wanted then: some to give away.", meals(sum), m.foods[o.Food], wanted)
		}
	}
	if !e.Growth.FirstPick.None() {
		first := "First pick "
		if e.Crop.Harvest == crop.Bloom {
			first = "First flowers "
		}
		out = append(out, first+e.Growth.FirstPick.String()+".")
	}
	if c := e.Growth.Cause; c != "" && e.Growth.Success < len(e.Growth.Outcomes) {
		out = append(out, fmt.Sprintf("Fails in %d of 20: %s.", 20-ofTwenty(e.Growth.Success, len(e.Growth.Outcomes)), c))
	}
	if own := ownReason(e.Crop); own != "" {
		out = append(out, own)
	}
	return out
}

// plenty is how many times what is wanted a planting must give for its line to
// say so.
const plenty = 1.5

// wantedWhile is how many meals of its food are wanted in the weeks in which an
// option is picked and what is picked last still keeps, so many weeks.
func wantedWhile(food *season.Food, o *season.Option, keeps int) float64 {
	first, last := -1, -1
	for _, row := range o.Meals {
		for k, v := range row {
			if w := o.MealsFrom + k; v > 0 {
				if first < 0 || w < first {
					first = w
				}
				last = max(last, w)
			}
		}
	}
	sum := 0.0
	for w := max(first, 0); first >= 0 && w <= min(last+keeps, len(food.Want)-1); w++ {
		sum += food.Want[w]
	}
	return sum
}

// lotVariety is the variety of the seed lot at hand for a crop, if one is.
func (r *Result) lotVariety(id string) string { return lotOf(r.in.Garden, crop.ID(id)) }
