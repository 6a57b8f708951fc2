package season

import (
	"cmp"
	"math"
	"slices"
)

// kinsfolk is what a plan may hold of one family in one batch of medium.
type kinsfolk struct {
	starts []start
	stays  [][]float64 // worth by pull week, entry w+1
}

// start is an option with its worth at most, if its family does not return too
// soon and if it does.
type start struct {
	o              *Option
	locked         bool
	plain, charged float64
}

// kin finds the kinsfolk of a family in the batch of a space; nil = none.
func (k *check) kin(all map[lineage]*kinsfolk, space, family int) *kinsfolk {
	batch := k.p.Spaces[space].Batch
	if batch < 0 || family < 0 {
		return nil
	}
	key := lineage{batch, family}
	if all[key] == nil {
		all[key] = &kinsfolk{}
	}
	return all[key]
}

// kinSum adds up the most that each family can be worth in each batch.
func (k *check) kinSum(all map[lineage]*kinsfolk) float64 {
	keys := make([]lineage, 0, len(all))
	for key := range all {
		keys = append(keys, key)
	}
	slices.SortFunc(keys, func(a, b lineage) int {
		return cmp.Or(cmp.Compare(a.batch, b.batch), cmp.Compare(a.family, b.family))
	})
	sum := 0.0
	for _, key := range keys {
		best := math.Inf(-1)
		for first := -1; first <= k.p.Weeks; first++ {
			best = math.Max(best, all[key].leaving(first, k.p.Weeks))
		}
		sum += best
	}
	return sum
}

// leaving is the most the family can be worth where the first of it leaves in
// a week, the week after the last meaning that none does; minus infinity where
// that cannot be. In any plan some such week is true. Then nothing of the family
// has left before, and what begins within its interval after pays for it.
func (r *kinsfolk) leaving(first, weeks int) float64 {
	sum, any := 0.0, first == weeks
	for _, x := range r.starts {
		any = any || x.o.End == first
		switch {
		case x.o.End < first:
			if x.locked {
				return math.Inf(-1)
			}
		case first < x.o.Week && x.o.Week-first-1 < x.o.Interval:
			sum += x.charged
		default:
			sum += x.plain
		}
	}
	for _, curve := range r.stays {
		best := math.Inf(-1)
		for w := first; w < len(curve)-1; w++ {
			best = math.Max(best, curve[w+1])
			any = any || w == first && !math.IsInf(curve[w+1], -1)
		}
		sum += best
	}
	if !any {
		return math.Inf(-1)
	}
	return sum
}
