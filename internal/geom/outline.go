package geom

import (
	"math"
	"sort"
)

// Outline is a convex figure on the ground, corners anticlockwise. Only X and
// Y are used. Fewer than three corners have no area.
type Outline []Vec

// Hull returns the smallest convex outline around points, seen from above.
// Andrew's monotone chain; corners are found by exact ties on X then Y, so the
// order of the input does not matter.
func Hull(points []Vec) Outline {
	p := make([]Vec, 0, len(points))
	for _, v := range points {
		p = append(p, Vec{v.X, v.Y, 0})
	}
	sort.Slice(p, func(i, j int) bool {
		if p[i].X != p[j].X {
			return p[i].X < p[j].X
		}
		return p[i].Y < p[j].Y
	})
	if len(p) < 3 {
		return p
	}
	half := func(at func(int) Vec) []Vec {
		var h []Vec
		for i := range p {
			v := at(i)
			for len(h) >= 2 && turn(h[len(h)-2], h[len(h)-1], v) <= 0 {
				h = h[:len(h)-1]
			}
			h = append(h, v)
		}
		return h[:len(h)-1]
	}
	low := half(func(i int) Vec { return p[i] })
	high := half(func(i int) Vec { return p[len(p)-1-i] })
	return append(low, high...)
}

// turn is positive where a-b-c turns left. Each product is rounded on its own,
// so that three corners in line are in line on every machine.
func turn(a, b, c Vec) float64 {
	return float64((b.X-a.X)*(c.Y-a.Y)) - float64((b.Y-a.Y)*(c.X-a.X))
}

// AreaM2 returns the outline's area by the surveyor's formula.
func (o Outline) AreaM2() float64 {
	if len(o) < 3 {
		return 0
	}
	sum := 0.0
	for i, a := range o {
		b := o[(i+1)%len(o)]
		sum += float64(a.X*b.Y) - float64(b.X*a.Y)
	}
	return math.Abs(sum) / 2
}

// FarFrom returns the greatest distance of a corner from the endless level
// line through at along bearingDeg; 0 for an empty outline.
func (o Outline) FarFrom(at Vec, bearingDeg float64) float64 {
	s, c := math.Sincos(bearingDeg * rad)
	far := 0.0
	for _, v := range o {
		d := math.Abs(float64((v.X-at.X)*c) - float64((v.Y-at.Y)*s))
		far = math.Max(far, d)
	}
	return far
}
