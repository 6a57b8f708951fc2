package shade

import (
	"math"

	"bedweek/internal/geom"
)

// Sky is a dome cut into bands of equal elevation and sectors of equal
// azimuth, with a ray through the middle of each piece.
type Sky struct {
	rays  []geom.Vec
	solid []float64 // solid angle of each piece, steradian
}

// NewSky cuts the dome.
func NewSky(bands, sectors int) Sky {
	var s Sky
	for i := range bands {
		low, high := 90*float64(i)/float64(bands), 90*float64(i+1)/float64(bands)
		sl, sh := math.Sin(low*math.Pi/180), math.Sin(high*math.Pi/180)
		for j := range sectors {
			s.rays = append(s.rays, geom.Direction(360*(float64(j)+0.5)/float64(sectors), (low+high)/2))
			s.solid = append(s.solid, (sh-sl)*2*math.Pi/float64(sectors))
		}
	}
	return s
}

// FineSky has half-degree bands and one-degree sectors: 64,800 rays, within
// 0.003 of the closed forms in docs/shade.md.
func FineSky() Sky { return NewSky(180, 360) }

// CoarseSky has 648 rays: quick, within 0.02 of the fine one.
func CoarseSky() Sky { return NewSky(18, 36) }

// SkyView returns the light a receptor gets from an evenly bright sky, as a
// share of what open level ground gets: the cosine-weighted sky view factor. A
// receptor with nothing in the way and tilted by b gets (1 + cos b) / 2.
func (s *Scene) SkyView(sky Sky, r Receptor, month int) float64 {
	got, open := 0.0, 0.0
	for i, d := range sky.rays {
		open += d.Z * sky.solid[i]
		if c := r.BeamFactor(d); c > 0 {
			got += c * sky.solid[i] * s.Passes(r.At, d, month)
		}
	}
	return got / open
}

// SkyViewYear returns [Scene.SkyView] for each month, January first.
func (s *Scene) SkyViewYear(sky Sky, r Receptor) [12]float64 {
	var got [12]float64
	open := 0.0
	for i, d := range sky.rays {
		open += d.Z * sky.solid[i]
		c := r.BeamFactor(d)
		if c == 0 {
			continue
		}
		for m, t := range s.PassesYear(r.At, d) {
			got[m] += c * sky.solid[i] * t
		}
	}
	for m := range got {
		got[m] /= open
	}
	return got
}

// SkySeen returns the share of the dome's solid angle that is seen from a
// point, whatever way it faces.
func (s *Scene) SkySeen(sky Sky, at geom.Vec, month int) float64 {
	got, open := 0.0, 0.0
	for i, d := range sky.rays {
		open += sky.solid[i]
		got += sky.solid[i] * s.Passes(at, d, month)
	}
	return got / open
}
