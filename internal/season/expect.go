package season

import (
	"math"
	"slices"
)

// expected is the expected-yield model: one plan, harvests at their mean over
// the futures, and the food eaten as well as could be. The bound and the MPS
// file are made from it. docs/season.md writes it out.
//
// It differs from what Evaluate prices in two ways, both upwards:
//
//   - The mean harvest is eaten, not each future's harvest. The worth of a
//     week's meals is concave and eating is linear, so the best eating of a
//     mean harvest is worth at least the mean of the best eatings (Jensen).
//   - The eating rule is replaced by the best eating with foresight. The rule
//     is one way of eating, so it is never worth more.
//
// Every other cost and limit is the evaluator's. Hence for any valid plan:
// Evaluate's value <= Expect's value <= the bound.
type expected struct {
	p     *Problem
	weeks int
	now   []float64 // worth of a meal by week, for the delay
	cells [][]cell  // [food][week*segments+segment]
	rows  rowIndex
	limit []float64 // by row; minutes and water rows may be passed at a cost, must rows ask for at least
	opts  []column
	stays []stand
	apart int               // harvests told apart: 1 for the mean harvest, or one for each future
	group []string          // by group row
	parts [levels][]float64 // by space: a half and a third of the ground, see fills
}

// segments is how many falling steps a week's worth of one food has.
const segments = 3

// cell is one step of the worth of one food in one week.
type cell struct {
	most  float64 // meals that find room in it
	worth float64 // of each
}

// rowIndex says where in the list of rows each kind begins.
type rowIndex struct{ shelf, minutes, water, groups, musts, end int }

// room is the row of a kind of room in a space and week.
func (e *expected) room(space, kind, w int) int { return (space*kinds+kind)*e.weeks + w }

// column is an option as the model sees it: what a batch and a plant of it
// take and give.
type column struct {
	space, food      int
	week, min, max   int // min > max = never
	locked           int // number of plants it must have, 0 = free
	foot             []float64
	mostFoot         float64
	litres           float64 // root room per m2 of footprint; per plant where it has no footprint
	flat             bool    // no footprint: root room is the same all along
	tallFrom         int     // from week, len(foot) = never
	support, places  float64
	shelfLo, shelfHi int
	minutes          []float64
	batchMinutes     float64
	water            []float64
	fixed, each      float64 // worth of a batch and of a plant, costs below 0, certain early return in
	interval         int     // whole weeks the family should be absent before it
	returning        float64 // cost per plant of an early return that depends on the plan
	risk             float64 // cost per plant of what could be lost, and of a certain early return; 0 where each holds it
	atRisk           int     // most plants that pay risk and returning
	groups           []int   // rows
	musts            []int   // rows
	lo               int
	meals            [][]float64 // per plant from week lo, by harvest told apart
}

// stand is a planting in the ground as the model sees it.
type stand struct {
	space, food    int
	first, last    int
	full           [kinds][]float64 // what it takes, by week
	take           [kinds][]float64 // the same, shrunk where all that stands is more than the limit
	minutes        []float64        // by week
	water          []float64        // litres a day by week
	meals          [][]float64      // by harvest told apart and week
	tail, pullCost float64
	musts          []int
	plants         int
}

func newExpected(p *Problem, apart int) *expected {
	e := &expected{p: p, weeks: p.Weeks, apart: apart, now: make([]float64, p.Weeks)}
	for w := range e.now {
		e.now[w] = math.Pow(1+p.Discount, -float64(w))
	}
	e.addCells()
	e.addRows()
	e.addStays()
	locked := make([]int, len(p.Options))
	for _, l := range p.Locks {
		locked[l.Option] = l.Plants
	}
	e.opts = make([]column, len(p.Options))
	for i := range p.Options {
		e.addOption(i, locked[i])
	}
	return e
}

func (e *expected) addCells() {
	e.cells = make([][]cell, len(e.p.Foods)*e.apart)
	for k := range e.cells {
		f := &e.p.Foods[k/e.apart]
		e.cells[k] = make([]cell, e.weeks*segments)
		for w := range e.weeks {
			want, c := once(f.Want, w), e.cells[k][w*segments:]
			now := e.now[w] / float64(e.apart)
			c[0] = cell{want / 2, now * f.Worth}
			c[1] = cell{want / 2, now * (f.Worth + f.Extra) / 2}
			c[2] = cell{want, now * f.Extra}
		}
	}
}

// addRows lists the limits. A room, shelf or group row has the evaluator's
// tolerance in its limit.
func (e *expected) addRows() {
	p := e.p
	for i := range p.Spaces {
		s := &p.Spaces[i]
		for level := range levels {
			e.parts[level] = append(e.parts[level], (s.AreaM2+tolerance)/float64(level+2))
		}
		for _, limit := range [kinds]float64{s.AreaM2, s.VolumeL, s.TallM2, s.SupportM} {
			for range e.weeks {
				e.limit = append(e.limit, limit+tolerance)
			}
		}
	}
	e.rows.shelf = len(e.limit)
	for i := range max(e.weeks-p.ShelfStart, 0) {
		e.limit = append(e.limit, once(p.Shelf, i)+tolerance)
	}
	e.rows.minutes = len(e.limit)
	if p.OverCost > 0 {
		e.limit = append(e.limit, p.Minutes[:min(len(p.Minutes), e.weeks)]...)
	}
	e.rows.water = len(e.limit)
	if p.waterCounts() {
		e.limit = append(e.limit, p.Water[:min(len(p.Water), e.weeks)]...)
	}
	e.rows.groups = len(e.limit)
	for name := range p.Totals {
		e.group = append(e.group, name)
	}
	slices.Sort(e.group)
	for _, name := range e.group {
		e.limit = append(e.limit, float64(p.Totals[name]))
	}
	e.rows.musts = len(e.limit)
	for _, m := range p.Musts {
		e.limit = append(e.limit, float64(m.Plants))
	}
	e.rows.end = len(e.limit)
}

// mustRows are the rows of the musts that something helps to meet.
func (e *expected) mustRows(meets func(m *Must) bool) []int {
	var out []int
	for k := range e.p.Musts {
		if meets(&e.p.Musts[k]) {
			out = append(out, e.rows.musts+k)
		}
	}
	return out
}

func (e *expected) addStays() {
	p := e.p
	e.stays = make([]stand, len(p.Stays))
	sum := make([]float64, e.rows.shelf)
	for i := range p.Stays {
		src := &p.Stays[i]
		s := &e.stays[i]
		*s = stand{space: src.Space, food: src.Food, first: firstPull(p, src), last: lastWeek(p, src), tail: src.Tail, pullCost: src.PullCost,
			plants: src.Plants, musts: e.mustRows(func(m *Must) bool { return m.Crop == src.Crop && (m.Space == -1 || m.Space == src.Space) })}
		n := s.last + 1
		for k := range kinds {
			s.full[k], s.take[k] = make([]float64, n), make([]float64, n)
		}
		s.minutes = make([]float64, n)
		copy(s.minutes, src.Minutes)
		s.water = make([]float64, n)
		copy(s.water, src.Water)
		s.meals = e.harvests(src.Meals, 0, n)
		for w := range n {
			s.full[area][w] = held(src.Footprint, w)
			s.full[volume][w] = src.VolumeL * rootShare(src.Footprint, w, n)
			if src.Tall {
				s.full[tall][w] = s.full[area][w]
			}
			s.full[support][w] = src.SupportM
			for k := range kinds {
				sum[e.room(s.space, k, w)] += s.full[k][w]
			}
		}
	}
	for i := range e.stays {
		s := &e.stays[i]
		for k := range kinds {
			for w, x := range s.full[k] {
				r := e.room(s.space, k, w)
				if most := e.limit[r] - tolerance; sum[r] > most {
					x *= most / sum[r]
				}
				s.take[k][w] = x
			}
		}
	}
}

// harvests are the rows of meals told apart: the mean, or each future's.
func (e *expected) harvests(meals [][]float32, lo, hi int) [][]float64 {
	if e.apart == 1 {
		return [][]float64{meanRow(meals, e.p.Futures, lo, hi)}
	}
	out := make([][]float64, e.apart)
	for f := range out {
		out[f] = meanRow(meals[min(f, len(meals)):min(f+1, len(meals))], 1, lo, hi)
	}
	return out
}

// meanRow is the mean over the futures of rows of meals, from week lo to
// before hi of rows that begin in week 0.
func meanRow(meals [][]float32, futures, lo, hi int) []float64 {
	out := make([]float64, max(hi-lo, 0))
	for f := range min(futures, len(meals)) {
		for w := lo; w < min(hi, len(meals[f])); w++ {
			if w >= 0 {
				out[w-lo] += float64(meals[f][w])
			}
		}
	}
	for w := range out {
		out[w] /= float64(futures)
	}
	return out
}

func (e *expected) addOption(i, locked int) {
	p, src, o := e.p, &e.p.Options[i], &e.opts[i]
	n := src.End - src.Week + 1
	*o = column{space: src.Space, food: src.Food, week: src.Week, min: max(src.Min, 1), max: src.Max, locked: locked, interval: src.Interval,
		support: src.SupportM, batchMinutes: src.BatchMinutes, tallFrom: n, musts: e.mustRows(func(m *Must) bool { return m.counts(src) }),
		fixed: -src.Fixed, each: src.Bonus + src.Tail - src.Cost - src.Risk, atRisk: math.MaxInt}
	if src.AtRisk > 0 && src.AtRisk < src.Max {
		o.atRisk, o.risk, o.each = src.AtRisk, src.Risk, o.each+src.Risk
	}
	o.foot, o.mostFoot = spread(src.Footprint, n)
	if o.flat = o.mostFoot == 0; o.flat {
		o.litres = src.VolumeL
	} else {
		o.litres = src.VolumeL / o.mostFoot
	}
	if src.TallFrom >= 0 {
		o.tallFrom = min(max(src.TallFrom-src.Week, 0), n)
	}
	if src.ShelfFrom != -1<<30 && src.ShelfPlaces > 0 {
		o.places = src.ShelfPlaces
		o.shelfLo, o.shelfHi = max(src.ShelfFrom, p.ShelfStart)-p.ShelfStart, src.Week-p.ShelfStart
	}
	if e.rows.water > e.rows.minutes {
		o.minutes = src.Minutes[:max(min(e.weeks-src.Week, len(src.Minutes)), 0)]
	} else {
		o.batchMinutes = 0
	}
	if e.rows.groups > e.rows.water {
		o.water = src.Water[:min(n, len(src.Water))]
	}
	for name := range src.totals(p) {
		at, _ := slices.BinarySearch(e.group, name)
		o.groups = append(o.groups, e.rows.groups+at)
	}
	if src.Food >= 0 {
		lo, hi := e.weeks, 0
		for f := range min(p.Futures, len(src.Meals)) {
			for a, x := range src.Meals[f] {
				if w := src.MealsFrom + a; x > 0 && w >= 0 && w < e.weeks {
					lo, hi = min(lo, w), max(hi, w+1)
				}
			}
		}
		if lo < hi {
			o.lo, o.meals = lo, e.harvests(src.Meals, lo-src.MealsFrom, hi-src.MealsFrom)
		}
	}
	e.addRotation(i)
	e.fit(o)
}

// addRotation charges an early return that no plan can avoid: the batch's
// history, or a planting that comes too shortly before whenever it is pulled.
func (e *expected) addRotation(i int) {
	p, src, o := e.p, &e.p.Options[i], &e.opts[i]
	batch := p.Spaces[src.Space].Batch
	if batch < 0 || src.Family < 0 || src.RotationCost == 0 {
		return
	}
	early := func(week int) bool { return week < src.Week && src.Week-week-1 < src.Interval }
	last, ok := p.Batches[batch].Last[src.Family]
	certain := ok && early(last)
	for s := range p.Stays {
		st := &p.Stays[s]
		if st.Family == src.Family && p.Spaces[st.Space].Batch == batch {
			certain = certain || early(firstPull(p, st)) && early(lastWeek(p, st))
		}
	}
	if certain && o.atRisk < math.MaxInt {
		o.risk += src.RotationCost
	} else if certain {
		o.each -= src.RotationCost
	} else {
		o.returning = src.RotationCost
	}
}

// fit lowers the largest batch of an option to what there is room for beside
// that which cannot be pulled.
func (e *expected) fit(o *column) {
	most := float64(o.max)
	e.eachRow(o, func(r int, x float64) {
		if r >= e.rows.minutes && r < e.rows.groups || r >= e.rows.musts || x <= 0 {
			return
		}
		left := e.limit[r]
		if r < e.rows.shelf {
			space, w := r/(kinds*e.weeks), r%e.weeks
			for s := range e.stays {
				if st := &e.stays[s]; st.space == space && w <= st.first {
					left -= st.full[r/e.weeks%kinds][w]
				}
			}
			left = max(left, tolerance)
		}
		most = min(most, left/x)
	})
	o.max = int(most + 1e-9)
}

// eachRow calls do for every row a plant of o takes part in, with how much.
func (e *expected) eachRow(o *column, do func(r int, x float64)) {
	for k, f := range o.foot {
		w := o.week + k
		do(e.room(o.space, area, w), f)
		v := o.litres * f
		if o.flat {
			v = o.litres
		}
		do(e.room(o.space, volume, w), v)
		if k >= o.tallFrom {
			do(e.room(o.space, tall, w), f)
		}
		if o.support > 0 {
			do(e.room(o.space, support, w), o.support)
		}
	}
	if o.places > 0 {
		for i := o.shelfLo; i < o.shelfHi; i++ {
			do(e.rows.shelf+i, o.places)
		}
	}
	for k, t := range o.minutes {
		if r := e.rows.minutes + o.week + k; r < e.rows.water {
			do(r, t)
		}
	}
	for k, l := range o.water {
		if r := e.rows.water + o.week + k; r < e.rows.groups {
			do(r, l)
		}
	}
	for _, r := range o.groups {
		do(r, 1)
	}
	for _, r := range o.musts {
		do(r, 1)
	}
}
