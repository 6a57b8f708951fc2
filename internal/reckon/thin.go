package reckon

import (
	"sort"

	"bedweek/internal/season"
)

// keepKinds is how many crops of one food stay on offer in one space and month.
const keepKinds = 3

// thin drops options that could hardly be chosen: in each space and four-week
// block the crops of one food are ranked by the meals they give for the ground
// and time they take, and the first few stay. Trays, musts, flowers and what is
// spared stay.
// Ties go by ID.
func (m *model) thin(spared map[string]bool) {
	type group struct{ space, food, block int }
	best := map[group]map[string]float64{}
	must := map[string]bool{}
	for _, x := range m.p.Musts {
		must[x.Crop] = true
	}
	for i := range m.p.Options {
		o := &m.p.Options[i]
		g := group{o.Space, o.Food, o.Week / 4}
		if best[g] == nil {
			best[g] = map[string]float64{}
		}
		if d := density(o); d > best[g][o.Crop] {
			best[g][o.Crop] = d
		}
	}
	kept := map[group]map[string]bool{}
	for g, crops := range best {
		var names []string
		for c := range crops {
			names = append(names, c)
		}
		sort.Slice(names, func(a, b int) bool {
			if crops[names[a]] != crops[names[b]] {
				return crops[names[a]] > crops[names[b]]
			}
			return names[a] < names[b]
		})
		kept[g] = map[string]bool{}
		for _, c := range names[:min(keepKinds, len(names))] {
			kept[g][c] = true
		}
	}
	n := 0
	for i := range m.p.Options {
		o := &m.p.Options[i]
		g := group{o.Space, o.Food, o.Week / 4}
		if kept[g][o.Crop] || spared[o.ID] || must[o.Crop] || isTray(*o) || o.Food == m.bees {
			m.p.Options[n], m.entry[n] = *o, m.entry[i]
			n++
		}
	}
	m.p.Options, m.entry = m.p.Options[:n], m.entry[:n]
}

// density is what an option gives for each m2 and week it takes, less its
// risk, per plant.
func density(o *season.Option) float64 {
	ground := 0.0
	for k := o.Week; k <= o.End; k++ {
		ground += o.Footprint[min(k-o.Week, len(o.Footprint)-1)]
	}
	sum := mealsOf(o)
	if ground <= 0 {
		return sum
	}
	return (sum - o.Risk) / ground
}
