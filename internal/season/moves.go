package season

import (
	"math/rand/v2"
	"slices"
)

// walk is one worker's search: a state, its luck, and where it may dig.
type walk struct {
	*state
	rng     *rand.Rand
	open    []int32 // spaces that may change
	isOpen  []bool
	stays   []int32 // stays that may move
	forced  []int32 // options worth forcing in
	far     []int32 // options that refills leave out and a force may try
	touched []int32
	mark    []bool
	best    snapshot
	idle    []float64 // rent of what stands idle, summed by open space and week; empty = not known
	stopped bool      // by its context or clock, with work left
	all     int       // work it is given
	clock   func() float64
}

// spent is the work done so far. Looking for room is cheap and counts little.
func (w *walk) spent() int { return w.work + w.looks/16 }

// gone is the work done, or the same share of all of it as of the time allowed
// is gone, where that is more.
func (w *walk) gone() int {
	if w.clock == nil {
		return w.spent()
	}
	return max(w.spent(), int(float64(min(w.clock(), 1)*float64(w.all))))
}

// touch notes that a space is to be refilled.
func (w *walk) touch(sp int32) {
	if !w.mark[sp] {
		w.mark[sp] = true
		w.touched = append(w.touched, sp)
	}
}

// clearOut digs up what stands in a space between two weeks.
func (w *walk) clearOut(sp int32, from, to int) {
	w.touch(sp)
	for k := len(w.in[sp]) - 1; k >= 0; k-- {
		i := w.in[sp][k]
		if o := &w.m.opts[i]; !w.locked[i] && o.week <= to && o.end >= from {
			w.uproot(int(i))
		}
	}
}

// window digs up a stretch of weeks in one or two spaces, and may pull what
// stays there earlier.
func (w *walk) window(spaces int) {
	m := w.m
	for range spaces {
		sp, from, to := w.stretch()
		w.clearOut(sp, from, to)
		for _, i := range m.staysIn[sp] {
			if w.rng.IntN(2) == 0 {
				w.shiftStay(int(i))
			}
		}
	}
}

// shiftStay moves the pull week of a stay to a random one, digging up what
// would stand in its way.
func (w *walk) shiftStay(i int) {
	st := &w.m.stays[i]
	if st.first >= st.last || (w.fixed != nil && w.fixed[i]) {
		return
	}
	to := st.first + w.rng.IntN(st.last-st.first+1)
	if to > w.pull[i] {
		w.makeWay(i, to)
		if !w.pullRoom(i, to) {
			return
		}
	}
	w.repull(i, to)
	w.touch(int32(st.space))
}

// makeWay digs up what keeps stay i from standing to week to.
func (w *walk) makeWay(i, to int) {
	sp := int32(w.m.stays[i].space)
	for k := len(w.in[sp]) - 1; k >= 0 && !w.pullRoom(i, to); k-- {
		j := w.in[sp][k]
		if o := &w.m.opts[j]; !w.locked[j] && o.week <= to && o.end > w.pull[i] {
			w.uproot(int(j))
			w.touch(sp)
		}
	}
}

// food digs up one food, or half of it, wherever it grows.
func (w *walk) food() {
	k := w.rng.IntN(len(w.m.foods))
	all := w.rng.IntN(2) == 0
	for _, sp := range w.open {
		for n := len(w.in[sp]) - 1; n >= 0; n-- {
			i := w.in[sp][n]
			if w.m.opts[i].food == k && !w.locked[i] && (all || w.rng.IntN(2) == 0) {
				w.uproot(int(i))
				w.touch(sp)
			}
		}
	}
}

// some digs up a few plantings anywhere.
func (w *walk) some() {
	for range 1 + w.rng.IntN(5) {
		sp := w.open[w.rng.IntN(len(w.open))]
		if n := len(w.in[sp]); n > 0 {
			i := w.in[sp][w.rng.IntN(n)]
			if !w.locked[i] {
				w.uproot(int(i))
			}
			w.touch(sp)
		}
	}
}

// farTries: one force in so many tries an option that refills leave out.
const farTries = 6

// force plants one option first, digging up whatever is in its way.
func (w *walk) force() {
	list := w.forced
	if len(w.far) > 0 && (len(list) == 0 || w.rng.IntN(farTries) == 0) {
		list = w.far
	}
	i := int(list[w.rng.IntN(len(list))])
	if w.plants[i] > 0 || (w.banned != nil && w.banned[i]) {
		return
	}
	w.giveWay(i, w.opts(i).min)
	if n, _, ok := w.batch(i); ok {
		w.plant(i, n)
	}
}

func (w *walk) opts(i int) *opt { return &w.m.opts[i] }

// giveWay digs up and pulls what keeps n plants of option i out: in its space
// first, then on the shelf and in its group.
func (w *walk) giveWay(i, n int) {
	o := w.opts(i)
	sp := int32(o.space)
	w.touch(sp)
	order := slices.Clone(w.in[sp])
	w.rng.Shuffle(len(order), func(a, b int) { order[a], order[b] = order[b], order[a] })
	for _, j := range order {
		if w.room(i) >= n {
			return
		}
		if q := w.opts(int(j)); !w.locked[j] && q.week <= o.end && q.end >= o.week {
			w.uproot(int(j))
		}
	}
	for _, j := range w.m.staysIn[sp] {
		if w.room(i) >= n {
			return
		}
		st := &w.m.stays[j]
		if w.pull[j] >= o.week && (w.fixed == nil || !w.fixed[j]) {
			w.repull(int(j), max(st.first, o.week-1))
		}
	}
	if o.places <= 0 && len(o.groups) == 0 {
		return
	}
	for _, other := range w.open {
		for k := len(w.in[other]) - 1; k >= 0; k-- {
			if w.room(i) >= n {
				return
			}
			j := w.in[other][k]
			q := w.opts(int(j))
			onShelf := o.places > 0 && q.places > 0 && q.shelfLo < o.shelfHi && q.shelfHi > o.shelfLo
			if !w.locked[j] && (onShelf || slices.ContainsFunc(o.groups, func(g int) bool { return w.left[g] < n && slices.Contains(q.groups, g) })) {
				w.uproot(int(j))
				w.touch(other)
			}
		}
	}
}

// round digs something up, refills, tunes, and keeps the result when it is
// worth at least least.
func (w *walk) round(least float64) {
	before := w.value
	w.steps = w.steps[:0]
	for _, sp := range w.touched {
		w.mark[sp] = false
	}
	w.touched = w.touched[:0]
	w.looks += 16
	switch pick := w.rng.IntN(100); {
	case pick < 35:
		w.window(1)
	case pick < 55:
		w.window(2)
	case pick < 65 && len(w.m.foods) > 0:
		w.food()
	case pick < 75:
		w.some()
	case pick < 90 && len(w.forced)+len(w.far) > 0:
		w.force()
	case len(w.stays) > 0:
		w.shiftStay(int(w.stays[w.rng.IntN(len(w.stays))]))
	default:
		w.window(1)
	}
	if len(w.touched) == 0 {
		w.undo(before)
		return
	}
	w.refill(w.touched, taste{by: w.taste(), noise: float64(0.2 * float64(w.rng.IntN(3))), short: w.rng.IntN(4) == 0}, w.rng)
	w.tune(w.touched)
	if w.value < least {
		w.undo(before)
		return
	}
	if w.value > w.best.value+dust {
		w.remember(&w.best)
	}
}

// taste draws how the next refill ranks: with prices often by the worth for
// what the room costs.
func (w *walk) taste() int {
	if w.m.guide != nil && w.rng.IntN(2) == 0 {
		return byRent
	}
	return w.rng.IntN(byRent)
}
