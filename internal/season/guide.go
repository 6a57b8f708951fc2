package season

import (
	"cmp"
	"slices"
)

// guide is what prices tell a search: which options hardly ever pay, and what
// a plant of each would have to pay for the room it takes. It steers and
// decides nothing: a plan is weighed without it.
type guide struct {
	far    []bool             // by option: pays so little at the prices that refills leave it out
	rent   []float64          // by option, of a plant, in meals
	batch  []float64          // by option, of a batch whatever its number
	ground [][kinds][]float64 // by space and week: price of room
}

// How many options refills keep: so large a share of those that can be planted,
// and never fewer than so many. On the demo and on invented gardens 0.08 to
// 0.25 did nearly as well as one another; 0.04 did worse. On the demo of 18,949
// options 0.15 left two seeds in three 50 meals short (docs/accuracy.md).
const (
	keepShare = 0.1
	keepLeast = 300
)

// setGuide reads prices; without any, or with too few options to leave some
// out, the search goes unguided.
func (m *model) setGuide(lim *Limits) {
	if lim.Prices == nil || m.usable <= keepLeast {
		return
	}
	apart := 1
	if lim.Prices.Apart == m.p.Futures {
		apart = m.p.Futures
	}
	a := newAscent(newExpected(m.p, apart))
	x := make([]float64, len(a.limit))
	if !a.warm(lim.Prices, x) {
		return
	}
	a.value(x, a.everything())
	g := &guide{far: make([]bool, len(m.opts)), rent: make([]float64, len(m.opts)), batch: make([]float64, len(m.opts)), ground: make([][kinds][]float64, len(m.bySpace))}
	for sp := range g.ground {
		for k := range kinds {
			g.ground[sp][k] = x[a.e.room(sp, k, 0):][:m.weeks]
		}
	}
	order := make([]int32, 0, m.usable)
	for i := range m.opts {
		o := &a.e.opts[i]
		batch, plant := a.m.cost(o)
		for k, f := range o.foot {
			batch += a.m.partCost(o.space, o.week+k, float64(max(o.min, 1))*f)
		}
		g.rent[i], g.batch[i] = max(0, plant+o.each), max(0, batch+o.fixed)
		if m.opts[i].min <= m.opts[i].max {
			order = append(order, int32(i))
		}
	}
	slices.SortFunc(order, func(i, j int32) int {
		return cmp.Or(cmp.Compare(a.reach[j], a.reach[i]), cmp.Compare(m.rank[i], m.rank[j]))
	})
	for _, i := range order[min(max(int(keepShare*float64(m.usable)), keepLeast), len(order)):] {
		g.far[i] = len(m.opts[i].musts) == 0
	}
	if lim.Prior != nil {
		for _, pl := range lim.Prior.Plantings {
			if pl.Option >= 0 && pl.Option < len(g.far) {
				g.far[pl.Option] = false
			}
		}
	}
	m.guide = g
}
