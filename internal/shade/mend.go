package shade

import (
	"math"

	"bedweek/internal/geom"
)

// Mend is a piece of sky as somebody saw it from a surface, where the bodies
// say otherwise: between two heights, on both sides of a bearing. It holds for
// every cell of the surface.
type Mend struct {
	BearingDeg float64 // its middle
	HalfDeg    float64 // how far it reaches to each side
	LowDeg     float64 // from this height on
	HighDeg    float64 // up to this one
	Open       bool    // the sky is seen there; else something stands there
}

// holds reports whether the piece has a direction in it.
func (m Mend) holds(bearingDeg, elevationDeg float64) bool {
	off := math.Abs(math.Mod(bearingDeg-m.BearingDeg+540, 360) - 180)
	return off <= m.HalfDeg && elevationDeg >= m.LowDeg && elevationDeg < m.HighDeg
}

// Mended says what mends know of a direction: open or not, or nothing at all.
// Of several the last counts.
func Mended(mends []Mend, d geom.Vec) (open, known bool) {
	if len(mends) == 0 {
		return false, false
	}
	b, e := d.BearingDeg(), d.ElevationDeg()
	for i := len(mends) - 1; i >= 0; i-- {
		if mends[i].holds(b, e) {
			return mends[i].Open, true
		}
	}
	return false, false
}

// mend takes the rays a surface's mends decide out of the bodies' reach: dark
// ones give nothing, open ones give all. They are the same for every body, so
// changes stay exact.
func (t *fieldTile) mend(c *Course, mends []Mend) {
	if len(mends) == 0 {
		return
	}
	t.free = make([]float64, len(c.rays))
	for i := range t.slants {
		open, known := Mended(mends, c.rays[i].d)
		if !known || t.slants[i].cos <= 0 {
			continue
		}
		if open {
			t.free[i] = t.slants[i].cos
		}
		t.slants[i].cos = 0
	}
}
