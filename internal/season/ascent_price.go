package season

import (
	"math"
	"math/bits"
	"slices"
)

// offer is a cell with what it pays at the prices of the moment.
type offer struct {
	pays float64 // worth less price, above 0
	most float64
	week int32
	at   int32 // cell
}

// market is what the prices of the moment mean for the options: sums made
// once and read by all.
type market struct {
	e      *expected
	x      []float64  // prices: rows, then cells
	offers [][]offer  // by food: cells that pay, best first
	ranks  [][]uint64 // by food and week, words to a week: which of the offers, by place in that list, are of the week
	words  int
	looks  way                 // in which numbers of plants are looked for
	pays   [][]float64         // by food and cell: what it pays, 0 = nothing
	order  [][]int32           // by food: its cells, those that pay most first
	byWeek [][][segments]offer // the same by food and week; those that do not pay have pays 0
	best   [][]float64         // by food and week of pick: most that a meal picked then can be worth
	sums   [][]float64         // by space: support prices summed from week 0
	litres [][]float64         // by space: root room prices summed
	shelf  []float64           // summed
	dear   [][kinds]bool
	parts  int    // first price of a filled part, by level, space and week
	crowds []bool // by space: such a price is above 0
	steps  []float64
	store  []stored
	wanted []uint64
}

func newMarket(e *expected) *market {
	m := &market{e: e, offers: make([][]offer, len(e.cells)), byWeek: make([][][segments]offer, len(e.cells)), best: make([][]float64, len(e.cells)),
		sums: make([][]float64, len(e.p.Spaces)), litres: make([][]float64, len(e.p.Spaces)), dear: make([][kinds]bool, len(e.p.Spaces)),
		crowds: make([]bool, len(e.p.Spaces)), shelf: make([]float64, e.rows.minutes-e.rows.shelf+1), store: make([]stored, e.weeks), ranks: make([][]uint64, len(e.cells)), words: (segments*e.weeks + 63) / 64}
	m.wanted = make([]uint64, m.words)
	m.pays, m.order = make([][]float64, len(e.cells)), make([][]int32, len(e.cells))
	for k := range m.best {
		m.ranks[k] = make([]uint64, m.words*e.weeks)
		m.pays[k] = make([]float64, len(e.cells[k]))
		for at := range e.cells[k] {
			m.order[k] = append(m.order[k], int32(at))
		}
		m.best[k] = make([]float64, e.weeks)
		m.byWeek[k] = make([][segments]offer, e.weeks)
	}
	for i := range m.sums {
		m.sums[i], m.litres[i] = make([]float64, e.weeks+1), make([]float64, e.weeks+1)
	}
	return m
}

// beside is a market that reads the same prices, with scratch of its own.
func (m *market) beside() *market {
	out := *m
	out.store, out.steps, out.wanted = make([]stored, len(m.store)), nil, make([]uint64, m.words)
	return &out
}

// follow takes over the prices that another market has opened.
func (m *market) follow(from *market) {
	store, steps, wanted := m.store, m.steps, m.wanted
	*m = *from
	m.store, m.steps, m.wanted = store, steps, wanted
}

// open reads the prices.
func (m *market) open(x []float64, cellAt []int) {
	e := m.e
	m.x = x
	for k := range e.cells {
		list := m.offers[k][:0]
		top := make([]float64, e.weeks)
		for at, c := range e.cells[k] {
			m.pays[k][at] = 0
			if pays := c.worth - x[cellAt[k]+at]; pays > 0 && c.most > 0 {
				m.pays[k][at] = pays
				top[at/segments] = max(top[at/segments], pays)
			}
		}
		m.rank(k)
		for _, at := range m.order[k] {
			pays := m.pays[k][at]
			if pays <= 0 {
				break
			}
			list = append(list, offer{pays, e.cells[k][at].most, at / segments, int32(cellAt[k]) + at})
		}
		m.offers[k] = list
		clear(m.byWeek[k])
		clear(m.ranks[k])
		for rank, c := range list {
			m.ranks[k][int(c.week)*m.words+rank/64] |= 1 << (rank % 64)
			row := &m.byWeek[k][c.week]
			at := 0
			for row[at].pays > 0 {
				at++
			}
			row[at] = c
		}
		for w := range e.weeks {
			m.best[k][w] = slices.Max(top[w:min(w+e.p.Foods[k/e.apart].Shelf+1, e.weeks)])
		}
	}
	for i := range m.sums {
		for w := range e.weeks {
			m.sums[i][w+1] = m.sums[i][w] + x[e.room(i, support, w)]
			m.litres[i][w+1] = m.litres[i][w] + x[e.room(i, volume, w)]
		}
		m.dear[i][volume] = m.litres[i][e.weeks] > 0
		m.crowds[i] = false
		for level := range levels {
			m.crowds[i] = m.crowds[i] || slices.ContainsFunc(x[m.partAt(level, i):][:e.weeks], func(y float64) bool { return y > 0 })
		}
		m.dear[i][tall] = false
		for _, y := range x[e.room(i, tall, 0):e.room(i, tall, e.weeks)] {
			m.dear[i][tall] = m.dear[i][tall] || y > 0
		}
	}
	for i := range len(m.shelf) - 1 {
		m.shelf[i+1] = m.shelf[i] + x[e.rows.shelf+i]
	}
}

// rank puts the cells of a food that pay most first, the earlier of equals; the
// order of the prices before is nearly right.
func (m *market) rank(k int) {
	pays, order := m.pays[k], m.order[k]
	for i, at := range order {
		for ; i > 0; i-- {
			if b := order[i-1]; pays[b] > pays[at] || pays[b] == pays[at] && b < at {
				break
			}
			order[i] = order[i-1]
		}
		order[i] = at
	}
}

// cost is what a batch and a plant of o cost at the prices, their own costs in,
// the parts they fill left out.
func (m *market) cost(o *column) (batch, plant float64) {
	e, x := m.e, m.x
	plant = -o.each
	batch = -o.fixed
	ground := x[e.room(o.space, area, o.week):]
	ground = ground[:len(o.foot)]
	sum := 0.0
	for k, f := range o.foot {
		sum += float64(f * ground[k])
	}
	if m.dear[o.space][volume] {
		if o.flat {
			sum += float64(o.litres * (m.litres[o.space][o.week+len(o.foot)] - m.litres[o.space][o.week]))
		} else {
			litres, deep := 0.0, x[e.room(o.space, volume, o.week):][:len(o.foot)]
			for k, f := range o.foot {
				litres += float64(f * deep[k])
			}
			sum += float64(o.litres * litres)
		}
	}
	if o.tallFrom < len(o.foot) && m.dear[o.space][tall] {
		high := x[e.room(o.space, tall, o.week):]
		for k := o.tallFrom; k < len(o.foot); k++ {
			sum += float64(o.foot[k] * high[k])
		}
	}
	if o.support > 0 {
		sum += float64(o.support * (m.sums[o.space][o.week+len(o.foot)] - m.sums[o.space][o.week]))
	}
	if o.places > 0 && o.shelfHi > o.shelfLo {
		sum += float64(o.places * (m.shelf[o.shelfHi] - m.shelf[o.shelfLo]))
	}
	if from := e.rows.minutes + o.week; from < e.rows.water {
		wish := x[from:e.rows.water]
		for k, t := range o.minutes[:min(len(o.minutes), len(wish))] {
			sum += float64(t * wish[k])
		}
		batch += float64(o.batchMinutes * wish[0])
	}
	if from := e.rows.water + o.week; from < e.rows.groups {
		wish := x[from:e.rows.groups]
		for k, l := range o.water[:min(len(o.water), len(wish))] {
			sum += float64(l * wish[k])
		}
	}
	for _, r := range o.groups {
		sum += x[r]
	}
	for _, r := range o.musts {
		sum -= x[r]
	}
	return batch, plant + sum
}

// most is what a plant's meals can be worth at most.
func (m *market) most(o *column) float64 {
	if len(o.meals) == 0 {
		return 0
	}
	sum := 0.0
	for f, meals := range o.meals {
		best := m.best[o.food*m.e.apart+f][o.lo:]
		for k, x := range meals {
			sum += float64(x * best[k])
		}
	}
	return sum
}

// eatAll eats each harvest told apart, as far as so many weeks.
func (m *market) eatAll(food, lo, weeks int, meals [][]float64, times float64, take func(at int32, x float64)) float64 {
	worth := 0.0
	for f, row := range meals {
		worth += m.eat(food*m.e.apart+f, lo, row[:weeks], times, take)
	}
	return worth
}

// eat fills the cells of a food with times × meals picked from week lo on,
// each cell once, as is worth most, and tells take what went where.
func (m *market) eat(food, lo int, meals []float64, times float64, take func(at int32, x float64)) float64 {
	shelf := m.e.p.Foods[food/m.e.apart].Shelf
	if shelf == 0 {
		return m.eatFresh(food, lo, meals, times, take)
	}
	for len(meals) > 0 && meals[0] == 0 {
		lo, meals = lo+1, meals[1:]
	}
	for len(meals) > 0 && meals[len(meals)-1] == 0 {
		meals = meals[:len(meals)-1]
	}
	if len(meals) == 0 {
		return 0
	}
	hi := min(lo+len(meals)+shelf, m.e.weeks)
	store := m.store[:hi-lo]
	all := 0.0
	for k := range store {
		if k < len(meals) {
			all += float64(times * meals[k])
		}
		old := 0.0 // picked so early that it may not be eaten from this week on
		if k > shelf {
			old = store[k-shelf-1].over
		}
		store[k] = stored{all, all, old, old}
	}
	wanted := m.wanted
	clear(wanted)
	for at, x := range m.ranks[food][lo*m.words : hi*m.words] {
		wanted[at%m.words] |= x
	}
	worth, left := 0.0, all
	for word := range wanted {
		for wanted[word] != 0 {
			c := &m.offers[food][64*word+bits.TrailingZeros64(wanted[word])]
			wanted[word] &= wanted[word] - 1
			w := int(c.week) - lo
			x, full := store[w].least-store[w].most, true
			if x > c.most {
				x, full = c.most, false
			}
			if full { // all that could be eaten in this week is, and so it stays
				for j, gone := range m.ranks[food][int(c.week)*m.words:][:m.words] {
					wanted[j] &^= gone
				}
			}
			if x <= 1e-12 {
				continue
			}
			worth += float64(c.pays * x)
			if take != nil {
				take(c.at, x)
			}
			if left -= x; left <= 1e-9*all {
				return worth
			}
			takeFrom(store, w, x)
		}
	}
	return worth
}

// stored is what is left to eat about one week, seen from it.
type stored struct {
	over, least float64 // picked up to the week less eaten up to it; the least of that from here on
	due, most   float64 // what may not be eaten from the week on less eaten before it; the most of that up to here
}

// takeFrom eats x in week w.
func takeFrom(store []stored, w int, x float64) {
	most := store[w].most
	for k := w; k < len(store); k++ {
		s := &store[k]
		s.over -= x
		s.least -= x
		if k == w {
			continue
		}
		s.due -= x
		if s.due > most {
			most = s.due
		}
		s.most = most
	}
	for k := w - 1; k >= 0 && store[k].least > store[k+1].least; k-- {
		store[k].least = store[k+1].least
	}
}

// eatFresh is eat for a food that keeps no week.
func (m *market) eatFresh(food, lo int, meals []float64, times float64, take func(at int32, x float64)) float64 {
	worth := 0.0
	for k, x := range meals {
		left := float64(times * x)
		for _, c := range m.byWeek[food][lo+k] {
			if c.pays <= 0 || left <= 0 {
				break
			}
			x := min(left, c.most)
			left -= x
			worth += float64(c.pays * x)
			if take != nil {
				take(c.at, x)
			}
		}
	}
	return worth
}

// way is where batch looks for a better number of plants than the likely one.
type way int

const (
	both way = iota
	up
	down
	same // nowhere: what was kept of the last look is priced again
)

// turns is the order in which looks at some of the options take turns.
var turns = [...]way{up, same, same, same, down, same, same, same}

// likely is the numbers of plants of an option that were best last time.
type likely struct{ n, full int32 } // full: with the parts it fills left out

// bill is what n plants cost at the prices: fixed, plant for each, and loss for
// each of the first atRisk.
type bill struct {
	fixed, plant, loss float64
	atRisk             int
}

func (m *market) bill(o *column, more float64) bill {
	fixed, plant := m.cost(o)
	loss := o.risk + more
	if most := max(o.max, o.locked); o.atRisk >= most {
		return bill{fixed, plant + loss, 0, most}
	}
	return bill{fixed, plant, loss, o.atRisk}
}

// lost is what n plants pay for what could be lost.
func (b *bill) lost(n int) float64 { return float64(float64(min(n, b.atRisk)) * b.loss) }

// batch is the best number of plants of o and what it is worth at the prices,
// searched from the likely numbers on, which it brings up to date; 0 plants are
// worth 0. A plant costs more than its own costs and rent by more, as far as it
// is at risk. most is never below the worth of any number.
func (m *market) batch(o *column, last *likely, more float64) (n int, worth, most float64) {
	if o.min > o.max && o.locked == 0 {
		return 0, 0, math.Inf(-1)
	}
	b := m.bill(o, more)
	if o.locked > 0 {
		worth = m.gain(o, o.locked, &b)
		if costs := m.partCosts(o, o.locked); costs != nil {
			worth -= costs[o.locked]
		}
		return o.locked, worth, math.Inf(1)
	}
	slope := m.most(o) - b.plant
	most = max(float64(float64(o.min)*slope)-b.lost(o.min), float64(float64(o.max)*slope)-b.lost(o.max)) - b.fixed
	var costs []float64
	if most > 0 {
		if costs = m.partCosts(o, o.max); costs != nil {
			most = mostBeside(costs, o.min, slope, &b) - b.fixed
		}
	}
	if most <= 0 {
		return 0, 0, most
	}
	n = min(max(int(last.full), o.min), o.max)
	n, worth, less := m.peak(o, n, &b)
	if last.full = int32(n); worth > 0 && costs != nil {
		n, worth = m.smaller(o, costs, n, int(last.n), worth, slope, &b)
		if x := less.worth; x > 0 && x-costs[less.n] > worth {
			n, worth = less.n, x-costs[less.n]
		}
		last.n = int32(n)
	}
	if worth <= 0 {
		return 0, 0, worth
	}
	return n, worth, worth
}

// number is a number of plants and what it is worth.
type number struct {
	n     int
	worth float64
}

// peak is the best number of plants without the parts they fill, looked for
// from n on, and the best of those that are all at risk, where it is another.
// Up to that many the worth is concave in the number, and beyond; a look in one
// direction stays on its side.
func (m *market) peak(o *column, n int, b *bill) (int, float64, number) {
	cut := b.atRisk
	if b.loss == 0 || cut <= o.min || cut >= o.max {
		n, worth := m.seek(o, o.min, o.max, n, b)
		return n, worth, number{}
	}
	if m.looks != both {
		if n <= cut {
			n, worth := m.seek(o, o.min, cut, n, b)
			return n, worth, number{}
		}
		n, worth := m.seek(o, cut, o.max, n, b)
		return n, worth, number{}
	}
	k, less := m.seek(o, o.min, cut, min(n, cut), b)
	n, worth := m.seek(o, cut, o.max, max(n, cut), b)
	if less >= worth {
		return k, less, number{}
	}
	return n, worth, number{k, less}
}

// seek looks for a better number of plants than n from lo to hi, in one
// direction or both by longer and longer steps. The worth is concave in the
// number; what a step of more than one leaps over may be better still.
func (m *market) seek(o *column, lo, hi, n int, b *bill) (int, float64) {
	worth := m.gain(o, n, b)
	by, done := 1, 0 // direction, and in how many of them there is no better number
	if m.looks != both {
		done = 1
	}
	if m.looks == down {
		by = -1
	}
	for ; done < 2; by = -by {
		last := 0 // step that was better
		for step := 1; ; {
			k, next := min(max(n+by*step, lo), hi), math.Inf(-1)
			if k != n {
				next = m.gain(o, k, b)
			}
			if next > worth {
				n, worth, last, step = k, next, step, 2*step
			} else if step > 1 {
				step = 1
			} else {
				break
			}
		}
		switch last {
		case 0:
			done++
		case 1:
			done = 2
		default:
			done = 1
		}
	}
	return n, worth
}

func (m *market) gain(o *column, n int, b *bill) float64 {
	worth := -b.fixed - float64(float64(n)*b.plant) - b.lost(n)
	if len(o.meals) > 0 {
		worth += m.eatAll(o.food, o.lo, len(o.meals[0]), o.meals, float64(n), nil)
	}
	return worth
}
