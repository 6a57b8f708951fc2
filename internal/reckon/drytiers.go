package reckon

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// tierGive says what to pour in at the top of each tiered planter whose tiers'
// shares are all known, so that every tier gets what it needs. Tiers of one
// planter stand over one another.
func tierGive(in *Inputs, rows []DryRow) {
	at := map[string]int{}
	for i, r := range rows {
		at[r.Space] = i
	}
	done := map[garden.SpaceID]bool{}
	for _, sp := range in.Garden.Spaces {
		if sp.Kind != garden.Tier || done[sp.ID] {
			continue
		}
		var stack []garden.Space
		for _, t := range in.Garden.Spaces {
			if t.Kind == garden.Tier && math.Hypot(t.X-sp.X, t.Y-sp.Y) < 0.05 {
				stack = append(stack, t)
				done[t.ID] = true
			}
		}
		sort.SliceStable(stack, func(a, b int) bool { return stack[a].Rim.M > stack[b].Rim.M })
		var needs, shares []float64
		known := len(stack) > 1
		for _, t := range stack {
			i, ok := at[string(t.ID)]
			known = known && ok && t.Watering.TierShare > 0
			if known {
				needs, shares = append(needs, rows[i].Answer.GiveL), append(shares, t.Watering.TierShare)
			}
		}
		if !known {
			continue
		}
		litresIn, gets, ok := water.TierGiveL(needs, shares)
		if !ok || litresIn <= 0 {
			continue
		}
		for k, t := range stack {
			r := &rows[at[string(t.ID)]]
			if r.Empty {
				continue
			}
			r.Give = fmt.Sprintf("Pour %s in at the top of its planter: %s of it stays here.", litres(litresIn), litres(gets[k]))
		}
	}
}
