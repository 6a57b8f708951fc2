package water

import (
	"hash/fnv"
	"math"
	"math/rand/v2"
)

// Seen is what somebody found at a space, by its hour counted from the start
// of the sky it is held against.
type Seen struct {
	Hour   float64
	What   Look
	Litres float64 // of a watering; 0 = until it ran through
}

// Look is what a look can say.
type Look string

// Looks.
const (
	Watered Look = "watered"
	Damp    Look = "damp at a knuckle"
	DryLook Look = "dry"
	Wilting Look = "wilting"
)

// Belief is what is held of a space's own rate of drying and of how full it
// is now: cells of equal or unequal weight that sum to 1.
type Belief struct {
	cells []cell
	Looks int // looks it rests on
}

type cell struct{ rate, fullness, tank, weight float64 }

// Spread of the rate before anything was seen: two spaces in three dry within
// a half of the reckoning. Our own choice.
const rateSpread = 0.4

// Cells of the grid: rates from 0.3 to 3.3 of the reckoning, and levels.
const (
	rateCells  = 31
	levelCells = 5
	rateReach  = 1.2 // natural logarithm of the farthest rate
)

// Unseen returns the belief before any look. How full a space is then depends
// on how it is watered: by can somewhere between just watered and due; by a
// timed line near full; a reservoir anywhere above a fifth; by rain alone as
// past weather leaves it (see Learn).
func Unseen(way Way) Belief {
	low, high, tankLow := 1-useShare, 1.0, 0.2
	switch way {
	case Drip:
		low = 0.75
	case Reservoir:
		low = 1
	case Rain:
		low = 0.3
	}
	var b Belief
	sum := 0.0
	for i := range rateCells {
		x := -rateReach + 2*rateReach*float64(i)/(rateCells-1)
		w := math.Exp(-x * x / (2 * rateSpread * rateSpread))
		for k := range levelCells {
			at := (float64(k) + 0.5) / levelCells
			b.cells = append(b.cells, cell{rate: math.Exp(x), fullness: low + (high-low)*at,
				tank: tankLow + (1-tankLow)*at, weight: w})
			sum += w
		}
	}
	for i := range b.cells {
		b.cells[i].weight /= sum
	}
	return b
}

// Rate returns the middle of the believed rates: above 1 it dries faster than
// the reckoning.
func (b Belief) Rate() float64 {
	sum := 0.0
	for i := range b.cells {
		sum += b.cells[i].weight
		if sum >= 0.5 {
			return b.cells[i].rate
		}
	}
	return 1
}

// Full returns the same belief with the space just watered through and its
// reservoir full.
func (b Belief) Full() Belief {
	out := Belief{cells: append([]cell(nil), b.cells...), Looks: b.Looks}
	for i := range out.cells {
		out.cells[i].fullness, out.cells[i].tank = 1, 1
	}
	return out
}

// at returns the cell at a share of the belief, 0 to 1, rates rising.
func (b Belief) at(share float64) cell {
	sum := 0.0
	for _, c := range b.cells {
		sum += c.weight
		if share < sum {
			return c
		}
	}
	return b.cells[len(b.cells)-1]
}

// leafSpread is how far true leaf spread strays from the reckoned: a fifth.
const leafSpread = 0.2

// draws makes one draw a future. Each unknown runs evenly over its range, in an
// order of its own, so that twenty futures show all of each.
func (s *Space) draws(b Belief, n int, seed uint64) []draw {
	h := fnv.New64a()
	h.Write([]byte(s.ID))
	rng := rand.New(rand.NewPCG(seed, h.Sum64()))
	out := make([]draw, n)
	even := func(set func(*draw, float64)) {
		for i, k := range rng.Perm(n) {
			set(&out[i], (float64(k)+0.5)/float64(n))
		}
	}
	rise := s.RiseM
	if !rise.Known {
		rise = s.Medium.RiseM
	}
	even(func(d *draw, u float64) { d.holds = s.Medium.Holds.At(u) })
	even(func(d *draw, u float64) { d.rise = rise.At(u) })
	even(func(d *draw, u float64) { d.exposure = s.Exposure.At(u) })
	even(func(d *draw, u float64) { d.leaf = math.Exp(leafSpread * math.Sqrt2 * math.Erfinv(2*u-1)) })
	even(func(d *draw, u float64) {
		c := b.at(u)
		d.rate, d.fullness, d.tank = c.rate, c.fullness, c.tank
	})
	return out
}
