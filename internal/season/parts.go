package season

import "math"

// levels is into how many kinds of parts a space is cut: halves and thirds.
const levels = 2

// partMargin is how much more than so many parts a batch must take to fill
// them, in m2, so that rounding never counts a part too many.
const partMargin = 1e-9

// fills counts the parts of a space that so much ground more than fills: of
// halves 0 or 1, of thirds 0 to 2. Of all that stands in a space in a week they
// are never more than 1 and 2: each batch takes more than the parts counted for
// it, so with as many as there are they would take more than the space.
func (e *expected) fills(level, space int, ground float64) float64 {
	n := 0.0
	for t := 1; t <= level+1; t++ {
		if ground > float64(float64(t)*e.parts[level][space])+partMargin {
			n++
		}
	}
	return n
}

// part is the price of a filled part in a space and week.
func (a *ascent) part(level, space, w int) int {
	return a.parts + (level*len(a.e.p.Spaces)+space)*a.e.weeks + w
}

// takeParts counts the parts that so much ground fills.
func (a *ascent) takeParts(use []float64, space, w int, ground float64) {
	for level := range levels {
		use[a.part(level, space, w)] += a.e.fills(level, space, ground)
	}
}

// partCost is what the parts cost that so much ground fills in a week.
func (m *market) partCost(space, w int, ground float64) float64 {
	if !m.crowds[space] {
		return 0
	}
	sum := 0.0
	for level := range levels {
		if y := m.x[m.partAt(level, space)+w]; y > 0 {
			sum += float64(y * m.e.fills(level, space, ground))
		}
	}
	return sum
}

// partAt is the price of a filled part in a space and week 0.
func (m *market) partAt(level, space int) int {
	return m.parts + (level*len(m.e.p.Spaces)+space)*m.e.weeks
}

// partCosts is what the parts cost that 0 to most plants of o fill over all
// its weeks; nil = nothing.
func (m *market) partCosts(o *column, most int) []float64 {
	if !m.crowds[o.space] {
		return nil
	}
	out, any := m.steps[:0], false
	for range most + 1 {
		out = append(out, 0)
	}
	m.steps = out
	for level := range levels {
		part := m.e.parts[level][o.space]
		for k, y := range m.x[m.partAt(level, o.space)+o.week:][:len(o.foot)] {
			if y <= 0 || o.foot[k] <= 0 {
				continue
			}
			for t := 1; t <= level+1; t++ {
				if n := atMost(float64(float64(t)*part)+partMargin, o.foot[k]) + 1; n <= most {
					out[n] += y
					any = true
				}
			}
		}
	}
	if !any {
		return nil
	}
	for n := 1; n <= most; n++ {
		out[n] += out[n-1]
	}
	return out
}

// mostBeside is the most that any number of plants from least on can be worth
// at slope a plant, less what the parts they fill and what could be lost cost.
func mostBeside(costs []float64, least int, slope float64, b *bill) float64 {
	most := math.Inf(-1)
	for n := least; n < len(costs); n++ {
		most = max(most, float64(float64(n)*slope)-b.lost(n)-costs[n])
	}
	return most
}

// atMost is the largest number of plants of so much ground each that take no
// more than room, as a product compared with it says.
func atMost(room, each float64) int {
	n := int(room / each)
	for float64(n)*each > room {
		n--
	}
	for float64(n+1)*each <= room {
		n++
	}
	return n
}

// smaller looks whether fewer plants than n, which fill fewer parts, are worth
// more. worth is that of n without parts, never below that of fewer, and slope
// the most that a plant can be worth, what could be lost left out. Without that and
// parts the worth is concave in the number and -fixed for none, which spares most
// numbers a look.
func (m *market) smaller(o *column, costs []float64, n, likely int, worth, slope float64, b *bill) (int, float64) {
	at, best := n, worth-costs[n]
	full := worth + b.lost(n)
	from, there, falls := n, full, 0.0 // below from, worth there, each plant fewer loses falls at least
	look := func(k int) {
		if min(there-float64(float64(from-k)*falls), float64(float64(k)*slope)-b.fixed)-b.lost(k)-costs[k] <= best {
			return
		}
		worth := m.gain(o, k, b)
		there = worth + b.lost(k)
		from, falls = k, max((full-there)/float64(n-k), 0)
		if x := worth - costs[k]; x > best {
			at, best = k, x
		}
	}
	if likely >= o.min && likely < n {
		look(likely)
		from, there, falls = n, full, 0
	}
	for k := n - 1; k >= o.min; k-- {
		if costs[k] < costs[k+1] {
			look(k)
		}
	}
	return at, best
}
