package water

import "math"

// A knuckle is no meter: how far the level at which a look changes its word
// strays, as a share of full, and how often a look is simply wrong. Our own
// choices.
const (
	lookBlur = 0.10
	slip     = 0.03
	slipWilt = 0.003 // hanging leaves are seldom mistaken
	wiltAt   = 0.25  // share of full at which leaves hang
)

// Learn holds looks against the weather that was, and returns what is then
// believed of the space. past is a sky with one future, the weather known, up
// to now; looks are in order. Without looks it still tells how past rain left
// a space that nobody waters.
//
// It is Bayes' rule on a grid of rates and starting levels: each cell runs the
// past, and its weight is multiplied by how well it foretells each look.
func Learn(s *Space, prior Belief, past *Sky, looks []Seen) Belief {
	if past == nil || len(past.days) == 0 || len(looks) == 0 && s.Way != Rain {
		return prior
	}
	out := Belief{Looks: prior.Looks + len(looks), cells: make([]cell, len(prior.cells))}
	from := 0
	if len(looks) > 0 {
		from = max(0, int(looks[0].Hour/24))
	}
	sum := 0.0
	for i, c := range prior.cells {
		out.cells[i] = s.believe(c, past, from, looks)
		sum += out.cells[i].weight
	}
	if sum <= 0 {
		return prior
	}
	for i := range out.cells {
		out.cells[i].weight /= sum
	}
	return out
}

// learnHours is the step of the past: six hours are plenty for looks.
const learnHours = 6

// believe runs one cell through the past.
func (s *Space) believe(c cell, past *Sky, from int, looks []Seen) cell {
	rise := s.RiseM
	if !rise.Known {
		rise = s.Medium.RiseM
	}
	d := draw{holds: s.Medium.Holds.At(0.5), rise: rise.At(0.5), exposure: s.Exposure.At(0.5), leaf: 1,
		rate: c.rate, fullness: c.fullness, tank: c.tank}
	w, t := s.newStore(d), s.thirst(d)
	next := 0
	for day := from; day < past.Days; day++ {
		sky := past.days[0][day]
		air, leaf := t.demand(sky, past.month[day], day-past.Days)
		rain := CaughtL(sky.rainMM, s.AreaM2, s.RainShare)
		for h := 0; h < 24; h += learnHours {
			if past.UntilH > 0 && day == past.Days-1 && h+learnHours > past.UntilH {
				break // not been yet; looks of these hours are heard below
			}
			share := 0.0
			for k := h; k < h+learnHours; k++ {
				share += past.course[day][k]
			}
			for next < len(looks) && looks[next].Hour < float64(24*day+h+learnHours) {
				c.weight *= w.hear(looks[next])
				next++
			}
			w.step(rain*learnHours/24, air*share, leaf*share)
		}
	}
	for ; next < len(looks); next++ {
		c.weight *= w.hear(looks[next])
	}
	c.fullness, c.tank = 0, 0
	if w.capacity() > 0 {
		c.fullness = w.held() / w.capacity()
	}
	if w.tankCap > 0 {
		c.tank = w.tank / w.tankCap
	}
	return c
}

// hear does what a look says was done, and returns how likely the look was.
func (s *store) hear(l Seen) float64 {
	level := 0.0
	if s.capacity() > 0 {
		level = s.held() / s.capacity()
	}
	dry := above((1-useShare)-level, lookBlur)
	wilts := above(wiltAt-level, lookBlur)
	switch l.What {
	case Watered:
		if l.Litres > 0 {
			s.pour(l.Litres)
		} else {
			s.fill(1)
			s.tank = s.tankCap
		}
		return 1
	case Damp:
		return slip + (1-2*slip)*(1-dry)
	case DryLook:
		return slip + (1-2*slip)*dry*(1-wilts)
	case Wilting:
		return slipWilt + (1-2*slipWilt)*wilts
	}
	return 1
}

// above rises from 0 to 1 as x passes 0, over a blur.
func above(x, blur float64) float64 { return 1 / (1 + math.Exp(-4*x/blur)) }

// Season runs a space by whole days through one future of a sky, watering it
// full whenever refill says so for the day (nil = never), and returns the days
// on which it stood dry and the litres it was given.
func (s *Space) Season(sky *Sky, future int, d draw, refill func(day int, held, capacity float64) bool) (dryDays int, givenL float64) {
	w, t := s.newStore(d), s.thirst(d)
	for day := range sky.Days {
		sd := sky.days[future][day]
		if refill != nil && refill(day, w.held(), w.capacity()) {
			give := w.lackL()
			w.pour(give)
			givenL += give
		}
		air, leaf := t.demand(sd, sky.month[day], day)
		w.step(CaughtL(sd.rainMM, s.AreaM2, s.RainShare), air, leaf)
		if w.held() <= w.dryL() {
			dryDays++
		}
	}
	return dryDays, givenL
}
