package season

import (
	"cmp"
	"slices"
)

// reprice works the value out anew from what stands, so that the rounding of
// many changes does not add up. It also brings the futures up to date.
func (s *state) reprice() {
	m := s.m
	for k := range s.lines {
		for f := range s.lines[k] {
			for w := range s.lines[k][f] {
				s.lines[k][f][w].pick = 0
			}
		}
	}
	pick := func(k int, harvests []harvest, n float64) {
		for f, h := range harvests {
			for i, x := range h.meals {
				s.lines[k][f][h.lo+i].pick += float64(n * float64(x))
			}
		}
	}
	sum := 0.0
	for sp := range s.in {
		slices.SortFunc(s.in[sp], func(a, b int32) int { return cmp.Compare(m.rank[a], m.rank[b]) })
		for _, i := range s.in[sp] {
			o, n := &m.opts[i], float64(s.plants[i])
			sum += o.fixed + float64(n*o.each) - float64(o.risked(int(s.plants[i]))*o.risk)
			if s.early[i] > 0 {
				sum -= s.returnCost(i)
			}
			if m.keep != nil {
				sum += m.keep[i]
			}
			if o.food >= 0 && o.hi > o.lo {
				pick(o.food, o.meals, n)
			}
		}
	}
	for i := range m.stays {
		st := &m.stays[i]
		sum += s.endWorth(i, s.pull[i])
		if st.food >= 0 {
			pick(st.food, st.between(s.pulled, 0, s.pull[i]), 1)
		}
	}
	for w, t := range s.used {
		if over := t - m.wish[w]; over > 0 {
			sum -= float64(over * m.p.OverCost)
		}
	}
	for w, l := range s.drunk {
		if over := l - m.drinks[w]; over > 0 {
			sum -= float64(over * m.p.WaterCost)
		}
	}
	if m.p.ClearMax > 0 {
		for w := -1; w < m.weeks-1; w++ {
			if more := s.cleared[w+1] - m.p.ClearMax; more > 0 {
				sum -= float64(m.p.RestCost * float64(more))
			}
		}
	}
	for k, must := range m.p.Musts {
		sum -= float64(m.lack * float64(max(must.Plants-s.have[k], 0)))
	}
	from, to, weight := s.span()
	if s.lean != nil {
		clear(s.lean.by)
	}
	for k := range s.lines {
		for f := range s.lines[k] {
			m.foods[k].settleAll(s.lines[k][f])
			if s.lean != nil && f > 0 {
				s.lean.by[f-1] += s.lines[k][f].value()
			}
			if f >= from && f < to && !s.leans() {
				sum += float64(weight * s.lines[k][f].value())
			}
		}
	}
	if s.lean != nil {
		s.lean.settle()
	}
	if s.leans() {
		sum += s.lean.now
	}
	s.value = sum
}

// kept is what the value holds for likeness to the prior plan.
func (s *state) kept() float64 {
	m, sum := s.m, 0.0
	if m.keep != nil {
		for i, n := range s.plants {
			if n > 0 {
				sum += m.keep[i]
			}
		}
	}
	for i, w := range s.pull {
		if m.keepAt != nil && m.keepAt[i] == w {
			sum += m.likePull
		}
	}
	return sum
}

// lacking is how many plants the musts lack.
func (s *state) lacking() int {
	n := 0
	for k, must := range s.m.p.Musts {
		n += max(must.Plants-s.have[k], 0)
	}
	return n
}

// perFuture switches to pricing the mean over the futures, or back.
func (s *state) perFuture(on bool) {
	s.futures = on
	s.reprice()
}

// snapshot is a plan as the search remembers it.
type snapshot struct {
	plantings []Planting
	pull      []int
	value     float64
	worth     float64 // likeness to a prior and penalties left out
	counts    bool    // worth is the mean over the futures, and no must is lacking
}

// clone copies a snapshot.
func (s snapshot) clone() snapshot {
	s.plantings, s.pull = slices.Clone(s.plantings), slices.Clone(s.pull)
	return s
}

// remember copies the plan the state holds.
func (s *state) remember(into *snapshot) {
	into.plantings = into.plantings[:0]
	for sp := range s.in {
		for _, i := range s.in[sp] {
			into.plantings = append(into.plantings, Planting{Option: int(i), Plants: int(s.plants[i])})
		}
	}
	into.pull = append(into.pull[:0], s.pull...)
	into.value, into.worth, into.counts = s.value, s.worth(), s.futures && s.lacking() == 0
}

// load replaces what the state holds by a remembered plan. Locks stay locked.
func (s *state) load(from *snapshot) {
	for sp := range s.in {
		for len(s.in[sp]) > 0 {
			i := int(s.in[sp][len(s.in[sp])-1])
			s.shift(i, int(s.plants[i]), -1)
		}
	}
	for i, w := range from.pull {
		s.setPull(i, w)
	}
	for _, pl := range from.plantings {
		s.put(pl.Option, pl.Plants)
	}
	s.reprice()
}
