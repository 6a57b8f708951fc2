package reckon

import (
	"math"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// rowsKey says which rows of an entry: to which week ground is held, from which
// Monday weeks count, and whether what it gives is wanted at all.
type rowsKey struct {
	end   int
	start cal.Day
	eaten bool
}

// entryRows is what one plant of an entry takes and gives, by week from the
// entry's own.
type entryRows struct {
	key       rowsKey
	footprint []float64   // m2
	minutes   []float64   // of tending and picking
	tallFrom  int         // plan week, -1 = never
	ok        []bool      // by future
	meals     [][]float32 // [future][week from mealsFrom]; flowers count their weeks of bloom
	mealsFrom int         // plan week
	sum       float64     // of all futures
}

// rowsOnce keeps the rows made for an entry. Plans on the same ground share
// them: a garden has some 20,000 options, and several plans are worked on at
// once.
type rowsOnce struct {
	mu   sync.Mutex
	made []*entryRows
}

func (e *Entry) rowsTo(key rowsKey) *entryRows {
	if e.rows == nil {
		return e.makeRows(key)
	}
	e.rows.mu.Lock()
	defer e.rows.mu.Unlock()
	for _, r := range e.rows.made {
		if r.key == key {
			return r
		}
	}
	r := e.makeRows(key)
	e.rows.made = append(e.rows.made, r)
	return r
}

func (e *Entry) makeRows(key rowsKey) *entryRows {
	c, g := e.Crop, &e.Growth
	n := key.end - e.Week + 1
	r := &entryRows{key: key, tallFrom: -1, footprint: make([]float64, n), minutes: make([]float64, n), ok: make([]bool, len(g.Outcomes))}
	top := 0.0
	for k := range n {
		w := e.Week + k
		if w < len(g.FootprintM2) {
			top = math.Max(top, float64(g.FootprintM2[w]))
			r.footprint[k] = float64(g.FootprintM2[w])
		}
		// Ground once taken stays taken until the end: a mean over futures thins
		// out when some have finished early, the bed does not.
		r.footprint[k] = math.Max(r.footprint[k], 0.9*top)
		r.minutes[k] = c.MinutesWeek
		if w < len(g.HeightM) && r.tallFrom < 0 && float64(g.HeightM[w]) >= tallM {
			r.tallFrom = w
		}
	}
	for f, out := range g.Outcomes {
		r.ok[f] = out.OK
	}
	r.fillMeals(e)
	if key.eaten {
		for k := range n {
			if anyAt(r.meals, e.Week+k-r.mealsFrom) {
				r.minutes[k] += c.MinutesPick / float64(max(c.BatchMin, 4))
			}
		}
	}
	return r
}

// gives is what a plant gives in a future and week, meals; flowers count 1 for
// a week of bloom.
func (r *entryRows) gives(e *Entry, f, w int) float64 {
	c, out := e.Crop, &e.Growth.Outcomes[f]
	switch bloom := c.Harvest == crop.Bloom; {
	case !r.key.eaten:
	case bloom && out.OK && inBloom(*out, r.key.start+cal.Day(7*w)):
		return 1
	case !bloom && c.MealKg > 0:
		return float64(out.Kg.At(w)) / c.MealKg
	}
	return 0
}

// fillMeals writes each future's row from the first week in which any gives
// something to its own last. The rows lie side by side: most weeks give nothing.
func (r *entryRows) fillMeals(e *Entry) {
	futures := len(r.ok)
	first, lasts, room := r.key.end+1, make([]int, futures), 0
	for f := range futures {
		lasts[f] = e.Week - 1
		for w := e.Week; w <= r.key.end; w++ {
			if v := r.gives(e, f, w); v > 0 {
				first, lasts[f] = min(first, w), w
				r.sum += v
			}
		}
	}
	for _, last := range lasts {
		room += max(last-first+1, 0)
	}
	all := make([]float32, 0, room)
	r.mealsFrom, r.meals = first, make([][]float32, futures)
	for f, last := range lasts {
		start := len(all)
		for w := first; w <= last; w++ {
			all = append(all, float32(r.gives(e, f, w)))
		}
		r.meals[f] = all[start:len(all):len(all)]
	}
}
