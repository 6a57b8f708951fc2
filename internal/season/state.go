package season

import "slices"

// The kinds of room in a space.
const (
	area = iota
	volume
	tall
	support
	kinds
)

// margin is the room a limit is given for rounding in the search, in the
// limit's own unit; it is far below the evaluator's tolerance.
const margin = 1e-9

// state is one plan in the hands of one worker, with all that is needed to
// price a change of it from what the change touches.
type state struct {
	m       *model
	futures bool // price the mean over the futures, not the mean harvest

	plants []int32   // per option, 0 = not in the plan
	locked []bool    // per option
	banned []bool    // per option: may not be chosen; nil = none
	dull   []bool    // per option: worth nothing even in an empty garden; nil = not known
	fixed  []bool    // per stay: its pull week is forced; nil = none
	in     [][]int32 // options in the plan by space
	pull   []int     // per stay

	free  [][kinds][]float64 // by space and week: limit less what is taken
	fresh [][kinds][]float64 // by space and week: taken by new plantings
	shelf []float64          // places left by week
	used  []float64          // minutes by week
	drunk []float64          // litres a day by week; nil = water is not limited
	left  []int              // plants left of each group

	holds, leaves [][]int // by space, entry w+1: what stands in week w, what has its last week then
	cleared       []int   // spaces cleared, entry w+1
	early         []int32 // per option in the plan: how many came too shortly before it
	have          []int   // plants per must

	lines   [][]line // by food: mean, then the futures
	lean    *leaning // the futures told apart for the share of the worst; nil = they have none
	value   float64  // of the plan, as priced so far, penalties in
	scratch []float64
	pulled  []harvest // room to write down what a stay gives
	heap    []choice
	steps   []step
	work    int // plantings weighed, times the futures they were weighed in
	looks   int // plantings looked at for room only
}

func newState(m *model) *state {
	p := m.p
	s := &state{
		m:       m,
		plants:  make([]int32, len(m.opts)),
		locked:  make([]bool, len(m.opts)),
		early:   make([]int32, len(m.opts)),
		in:      make([][]int32, len(p.Spaces)),
		free:    make([][kinds][]float64, len(p.Spaces)),
		fresh:   make([][kinds][]float64, len(p.Spaces)),
		holds:   make([][]int, len(p.Spaces)),
		leaves:  make([][]int, len(p.Spaces)),
		cleared: make([]int, p.Weeks+1),
		shelf:   make([]float64, max(p.Weeks-p.ShelfStart, 0)),
		used:    make([]float64, p.Weeks),
		left:    slices.Clone(m.groups),
		have:    make([]int, len(p.Musts)),
		pull:    make([]int, len(p.Stays)),
		lines:   make([][]line, len(p.Foods)),
		scratch: make([]float64, p.Weeks),
		pulled:  make([]harvest, p.Futures+1),
		lean:    newLeaning(p),
	}
	copy(s.shelf, p.Shelf)
	if m.drinks != nil {
		s.drunk = make([]float64, p.Weeks)
	}
	for i := range p.Spaces {
		sp := &p.Spaces[i]
		for k, limit := range [kinds]float64{sp.AreaM2, sp.VolumeL, sp.TallM2, sp.SupportM} {
			s.free[i][k] = make([]float64, p.Weeks)
			s.fresh[i][k] = make([]float64, p.Weeks)
			for w := range p.Weeks {
				s.free[i][k][w] = limit
			}
		}
		s.holds[i] = make([]int, p.Weeks+1)
		s.leaves[i] = make([]int, p.Weeks+1)
	}
	for k := range s.lines {
		s.lines[k] = make([]line, p.Futures+1)
		for f := range s.lines[k] {
			s.lines[k][f] = make(line, p.Weeks+1)
		}
	}
	for i := range m.stays {
		s.standStay(i)
	}
	s.reprice()
	return s
}

// standStay puts stay i in at its natural end, without pricing.
func (s *state) standStay(i int) {
	m, st := s.m, &s.m.stays[i]
	s.pull[i] = st.last
	for w := 0; w <= st.last; w++ {
		s.takeStay(st, w, 1)
		s.used[w] += st.minutes[w]
		s.drink(st, w, 1)
	}
	s.clearAt(st.space, -1, st.last, 1)
	for _, k := range st.musts {
		s.have[k] += st.plants
	}
	if st.food >= 0 {
		for f := range s.lines[st.food] {
			m.foods[st.food].apply(s.lines[st.food][f], trimmed(0, st.meals[f]), 1)
		}
	}
}

// takeStay takes (sign 1) or gives back (-1) the room of a stay in one week.
func (s *state) takeStay(st *stay, w int, sign float64) {
	free := &s.free[st.space]
	free[area][w] -= sign * st.foot[w]
	free[volume][w] -= sign * st.vol[w]
	if st.tall {
		free[tall][w] -= sign * st.foot[w]
	}
	free[support][w] -= sign * st.support
}

// drink adds (sign 1) or takes off (-1) what a stay drinks in one week.
func (s *state) drink(st *stay, w int, sign float64) {
	if s.drunk != nil {
		s.drunk[w] += sign * st.water[w]
	}
}

// span gives the futures a change is priced in: from, to, and the weight of
// each.
func (s *state) span() (from, to int, weight float64) {
	if !s.futures {
		return 0, 1, 1
	}
	n := s.m.p.Futures
	return 1, n + 1, 1 / float64(max(n, 1))
}

// counts is how many of the futures a change was priced in: one more unit of
// work each.
func (s *state) counts() int {
	from, to, _ := s.span()
	return to - from
}

// put takes the room of n plants of an option and gives what their food is
// worth.
func (s *state) put(i int, n int) float64 { return s.shift(i, n, 1) }

// shift puts an option in (sign 1) or takes it out (-1) and gives the change of
// the worth of food.
func (s *state) shift(i, n, sign int) (food float64) {
	o := &s.m.opts[i]
	x := float64(n * sign)
	free, fresh := &s.free[o.space], &s.fresh[o.space]
	for k, foot := range o.foot {
		w := o.week + k
		a, v := float64(x*foot), float64(x*o.vol[k])
		free[area][w] -= a
		fresh[area][w] += a
		free[volume][w] -= v
		fresh[volume][w] += v
		if k >= o.tallFrom {
			free[tall][w] -= a
			fresh[tall][w] += a
		}
		if o.support > 0 {
			free[support][w] -= float64(x * o.support)
			fresh[support][w] += float64(x * o.support)
		}
	}
	if o.places > 0 {
		for w := o.shelfLo; w < o.shelfHi; w++ {
			s.shelf[w] -= float64(x * o.places)
		}
	}
	for k, t := range o.minutes {
		s.used[o.week+k] += float64(x * t)
	}
	s.used[o.week] += float64(sign) * o.batchMinutes
	for k, l := range o.water {
		s.drunk[o.week+k] += float64(x * l)
	}
	for _, g := range o.groups {
		s.left[g] -= n * sign
	}
	for _, k := range o.musts {
		s.have[k] += n * sign
	}
	s.clearAt(o.space, o.week, o.end, sign)
	s.early[i] = 0
	if sign > 0 {
		s.early[i] = s.cameBefore(o)
	}
	s.after(o.batch, o.family, o.end, func(j int32) { s.early[j] += int32(sign) })
	if sign > 0 {
		s.in[o.space] = append(s.in[o.space], int32(i))
		s.plants[i] = int32(n)
	} else {
		at := slices.Index(s.in[o.space], int32(i))
		s.in[o.space] = slices.Delete(s.in[o.space], at, at+1)
		s.plants[i] = 0
	}
	if o.food < 0 || o.hi <= o.lo {
		return 0
	}
	return s.eatMore(o.food, o.meals, x)
}

// eatMore adds times × a harvest to a food and gives the change of its worth.
func (s *state) eatMore(k int, h []harvest, times float64) float64 {
	f, lines := &s.m.foods[k], s.lines[k]
	sum := f.apply(lines[0], h[0], times)
	if !s.futures {
		return sum
	}
	sum = 0
	for i := 1; i < len(lines); i++ {
		more := f.apply(lines[i], h[i], times)
		if sum += more; s.lean != nil {
			s.lean.by[i-1] += more
		}
	}
	if s.lean != nil {
		return s.lean.settle()
	}
	_, _, weight := s.span()
	return float64(sum * weight)
}
