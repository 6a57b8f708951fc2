package season

import "bedweek/internal/cal"

// Certificate is a set of prices that proves how much a season can be worth at
// most. Any prices of 0 or more prove something; CheckBound says what. All
// prices are in meals.
type Certificate struct {
	Start   cal.Day            // Monday of week 0
	Apart   int                // harvests told apart: 1 = the mean harvest, else one for each future
	Bound   float64            // as CheckBound finds it; no plan is worth more
	Cells   [][][3]float64     // [food × Apart + future][week]: of room for one more meal in each step of its worth
	Room    [][4][]float64     // [space][ground, root room, tall ground, support][week]: per m2, litre, m2, m
	Shelf   []float64          // per place and week, from ShelfStart
	Minutes []float64          // per minute, by week
	Water   []float64          `json:",omitempty"` // per litre a day, by week; none where water is not limited
	Totals  map[string]float64 // per plant of a group
	Musts   []float64          // per plant of a must
	Halves  [][]float64        // [space][week]: per batch that takes more than half the ground
	Thirds  [][]float64        // [space][week]: per third of the ground that a batch more than fills
	Work    int                // options priced to find it
}

// newCertificate is one with all prices 0 and the shape of p.
func newCertificate(p *Problem, apart int) *Certificate {
	c := &Certificate{Start: p.Start, Apart: apart, Cells: make([][][3]float64, len(p.Foods)*apart), Room: make([][4][]float64, len(p.Spaces)),
		Shelf: make([]float64, max(p.Weeks-p.ShelfStart, 0)), Minutes: make([]float64, p.Weeks), Totals: map[string]float64{}, Musts: make([]float64, len(p.Musts)), Halves: make([][]float64, len(p.Spaces)), Thirds: make([][]float64, len(p.Spaces))}
	for k := range c.Cells {
		c.Cells[k] = make([][3]float64, p.Weeks)
	}
	if p.waterCounts() {
		c.Water = make([]float64, p.Weeks)
	}
	for i := range c.Room {
		c.Halves[i], c.Thirds[i] = make([]float64, p.Weeks), make([]float64, p.Weeks)
		for k := range c.Room[i] {
			c.Room[i][k] = make([]float64, p.Weeks)
		}
	}
	return c
}

// certificate writes the prices of the ascent down.
func (a *ascent) certificate(x []float64) *Certificate {
	p, e := a.e.p, a.e
	c := newCertificate(p, e.apart)
	for i := range c.Room {
		copy(c.Halves[i], x[a.part(0, i, 0):])
		copy(c.Thirds[i], x[a.part(1, i, 0):])
		for k := range c.Room[i] {
			copy(c.Room[i][k], x[e.room(i, k, 0):])
		}
	}
	copy(c.Shelf, x[e.rows.shelf:e.rows.minutes])
	copy(c.Minutes, x[e.rows.minutes:e.rows.water])
	copy(c.Water, x[e.rows.water:e.rows.groups])
	for g, name := range e.group {
		c.Totals[name] = x[e.rows.groups+g]
	}
	copy(c.Musts, x[e.rows.musts:e.rows.end])
	for k := range c.Cells {
		for w := range c.Cells[k] {
			copy(c.Cells[k][w][:], x[a.cellAt[k]+w*segments:])
		}
	}
	return c
}

// warm takes the prices of an earlier certificate of the same spaces and
// foods, moved to this plan's first week.
func (a *ascent) warm(c *Certificate, x []float64) bool {
	p, e := a.e.p, a.e
	if c == nil || len(c.Room) != len(p.Spaces) || len(c.Cells) != len(p.Foods)*c.Apart || c.Apart < 1 {
		return false
	}
	late := int(p.Start-c.Start) / 7
	from := func(row []float64, w int) float64 {
		if w += late; w < 0 || len(row) == 0 {
			return 0
		}
		return row[min(w, len(row)-1)]
	}
	for i := range c.Room {
		for w := range e.weeks {
			if i < len(c.Halves) {
				x[a.part(0, i, w)] = from(c.Halves[i], w)
			}
			if i < len(c.Thirds) {
				x[a.part(1, i, w)] = from(c.Thirds[i], w)
			}
		}
		for k := range c.Room[i] {
			for w := range e.weeks {
				x[e.room(i, k, w)] = from(c.Room[i][k], w)
			}
		}
	}
	for i := range e.rows.minutes - e.rows.shelf {
		x[e.rows.shelf+i] = from(c.Shelf, i)
	}
	for w := range e.rows.water - e.rows.minutes {
		x[e.rows.minutes+w] = from(c.Minutes, w)
	}
	for w := range e.rows.groups - e.rows.water {
		x[e.rows.water+w] = from(c.Water, w)
	}
	for g, name := range e.group {
		x[e.rows.groups+g] = c.Totals[name]
	}
	if len(c.Musts) == len(p.Musts) {
		copy(x[e.rows.musts:e.rows.end], c.Musts)
	}
	a.warmCells(c, late, x)
	return true
}

// warmCells takes the prices of meals. Of the mean harvest's price each future
// takes its share; the mean takes all of theirs.
func (a *ascent) warmCells(c *Certificate, late int, x []float64) {
	e := a.e
	for k := range e.cells {
		food, f := k/e.apart, k%e.apart
		from, to, share := f, f+1, 1.0
		if c.Apart != e.apart {
			from, to, share = 0, c.Apart, 1/float64(e.apart)
		}
		for w := max(0, -late); w < e.weeks; w++ {
			at := x[a.cellAt[k]+w*segments:][:segments]
			if len(c.Cells[food*c.Apart]) == 0 {
				continue
			}
			clear(at)
			for _, rows := range c.Cells[food*c.Apart+from : food*c.Apart+to] {
				for step, y := range rows[min(w+late, len(rows)-1)] {
					at[step] += float64(y * share)
				}
			}
		}
	}
}
