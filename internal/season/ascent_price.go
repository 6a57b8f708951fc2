package season

import (
	"cmp"
	"math"
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
	x      []float64           // prices: rows, then cells
	offers [][]offer           // by food: cells that pay, best first
	byWeek [][][segments]offer // the same by food and week; those that do not pay have pays 0
	best   [][]float64         // by food and week of pick: most that a meal picked then can be worth
	sums   [][]float64         // by space: support prices summed from week 0
	litres [][]float64         // by space: root room prices summed
	shelf  []float64           // summed
	dear   [][kinds]bool
	parts  int    // first price of a filled part, by level, space and week
	crowds []bool // by space: such a price is above 0
	steps  []float64
	over   []float64
	due    []float64
}

func newMarket(e *expected) *market {
	m := &market{e: e, offers: make([][]offer, len(e.cells)), byWeek: make([][][segments]offer, len(e.cells)), best: make([][]float64, len(e.cells)),
		sums: make([][]float64, len(e.p.Spaces)), litres: make([][]float64, len(e.p.Spaces)), dear: make([][kinds]bool, len(e.p.Spaces)),
		crowds: make([]bool, len(e.p.Spaces)), shelf: make([]float64, e.rows.minutes-e.rows.shelf+1), over: make([]float64, e.weeks), due: make([]float64, e.weeks+1)}
	for k := range m.best {
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
	out.over, out.due, out.steps = make([]float64, len(m.over)), make([]float64, len(m.due)), nil
	return &out
}

// follow takes over the prices that another market has opened.
func (m *market) follow(from *market) {
	over, due, steps := m.over, m.due, m.steps
	*m = *from
	m.over, m.due, m.steps = over, due, steps
}

// open reads the prices.
func (m *market) open(x []float64, cellAt []int) {
	e := m.e
	m.x = x
	for k := range e.cells {
		list := m.offers[k][:0]
		top := make([]float64, e.weeks)
		for at, c := range e.cells[k] {
			if pays := c.worth - x[cellAt[k]+at]; pays > 0 && c.most > 0 {
				w := at / segments
				list = append(list, offer{pays, c.most, int32(w), int32(cellAt[k] + at)})
				top[w] = max(top[w], pays)
			}
		}
		slices.SortFunc(list, func(a, b offer) int { return cmp.Or(cmp.Compare(b.pays, a.pays), cmp.Compare(a.at, b.at)) })
		m.offers[k] = list
		clear(m.byWeek[k])
		for _, c := range list {
			row := &m.byWeek[k][c.week]
			at := 0
			for row[at].pays > 0 {
				at++
			}
			row[at] = c
		}
		for w := range e.weeks {
			m.best[k][w] = slices.Max(top[w:min(w+e.p.Foods[k].Shelf+1, e.weeks)])
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
	if from := e.rows.minutes + o.week; from < e.rows.groups {
		wish := x[from:e.rows.groups]
		for k, t := range o.minutes[:min(len(o.minutes), len(wish))] {
			sum += float64(t * wish[k])
		}
		batch += float64(o.batchMinutes * wish[0])
	}
	if o.group >= 0 {
		sum += x[o.group]
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
	best := m.best[o.food][o.lo:]
	sum := 0.0
	for k, x := range o.meals {
		sum += float64(x * best[k])
	}
	return sum
}

// eat fills the cells of a food with times × meals picked from week lo on,
// each cell once, as is worth most, and tells take what went where.
func (m *market) eat(food, lo int, meals []float64, times float64, take func(at int32, x float64)) float64 {
	shelf := m.e.p.Foods[food].Shelf
	if shelf == 0 {
		return m.eatFresh(food, lo, meals, times, take)
	}
	hi := min(lo+len(meals)+shelf, m.e.weeks)
	over, due := m.over[:hi-lo], m.due[:hi-lo+1]
	clear(due)
	all := 0.0
	for k := range over {
		if k < len(meals) {
			all += float64(times * meals[k])
		}
		over[k] = all
		if a := k + shelf + 1; a < hi-lo {
			due[a] = all
		}
	}
	worth, left := 0.0, all
	for _, c := range m.offers[food] {
		w := int(c.week) - lo
		if w < 0 || w >= len(over) {
			continue
		}
		x := over[w]
		for _, y := range over[w+1:] {
			x = min(x, y)
		}
		gone := 0.0
		for _, y := range due[1 : w+1] {
			gone = max(gone, y)
		}
		if x = min(x-gone, c.most); x <= 1e-12 {
			continue
		}
		worth += float64(c.pays * x)
		if take != nil {
			take(c.at, x)
		}
		if left -= x; left <= 1e-9*all {
			break
		}
		for b := w; b < len(over); b++ {
			over[b] -= x
		}
		for a := w + 1; a < len(over); a++ {
			due[a] -= x
		}
	}
	return worth
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

// likely is the numbers of plants of an option that were best last time.
type likely struct{ n, full int32 } // full: with the parts it fills left out

// batch is the best number of plants of o and what it is worth at the prices,
// searched from the likely numbers on, which it brings up to date; 0 plants are
// worth 0. A plant costs more than its own costs and rent by more. most is never
// below the worth of any number.
func (m *market) batch(o *column, last *likely, more float64) (n int, worth, most float64) {
	if o.min > o.max && o.locked == 0 {
		return 0, 0, math.Inf(-1)
	}
	fixed, plant := m.cost(o)
	plant += more
	if o.locked > 0 {
		worth = m.gain(o, o.locked, fixed, plant)
		if costs := m.partCosts(o, o.locked); costs != nil {
			worth -= costs[o.locked]
		}
		return o.locked, worth, math.Inf(1)
	}
	slope := m.most(o) - plant
	most = max(float64(float64(o.min)*slope), float64(float64(o.max)*slope)) - fixed
	var costs []float64
	if most > 0 {
		if costs = m.partCosts(o, o.max); costs != nil {
			most = mostBeside(costs, o.min, slope) - fixed
		}
	}
	if most <= 0 {
		return 0, 0, most
	}
	n = min(max(int(last.full), o.min), o.max)
	worth = m.gain(o, n, fixed, plant)
	for step := 1; n+step <= o.max; {
		if next := m.gain(o, n+step, fixed, plant); next > worth {
			n, worth = n+step, next
			step = min(2*step, max(o.max-n, 1))
		} else if step == 1 {
			break
		} else {
			step = 1
		}
	}
	for step := 1; n-step >= o.min; {
		if next := m.gain(o, n-step, fixed, plant); next > worth {
			n, worth = n-step, next
			step = min(2*step, max(n-o.min, 1))
		} else if step == 1 {
			break
		} else {
			step = 1
		}
	}
	if last.full = int32(n); worth > 0 && costs != nil {
		n, worth = m.smaller(o, costs, n, int(last.n), worth, fixed, plant, slope)
		last.n = int32(n)
	}
	if worth <= 0 {
		return 0, 0, worth
	}
	return n, worth, worth
}

func (m *market) gain(o *column, n int, fixed, plant float64) float64 {
	worth := -fixed - float64(float64(n)*plant)
	if len(o.meals) > 0 {
		worth += m.eat(o.food, o.lo, o.meals, float64(n), nil)
	}
	return worth
}
