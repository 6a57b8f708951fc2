package geom

import "math"

// LowestSunDeg is the least elevation, in degrees, at which a shadow on level
// ground is given. Below it a metre throws more than five kilometres.
const LowestSunDeg = 0.01

// ShadowOf returns where the shadow of point p falls on the level ground
// z = 0, for a unit direction to the sun; ok is false with the sun below
// [LowestSunDeg].
func ShadowOf(p, sun Vec) (q Vec, ok bool) {
	if !(sun.ElevationDeg() >= LowestSunDeg) {
		return Vec{}, false
	}
	t := p.Z / sun.Z
	return Vec{p.X - t*sun.X, p.Y - t*sun.Y, 0}, true
}

// ShadowM returns the length of the shadow of a post heightM high at a sun
// elevation; ok is false with the sun below [LowestSunDeg].
func ShadowM(heightM, elevationDeg float64) (m float64, ok bool) {
	if !(elevationDeg >= LowestSunDeg) {
		return 0, false
	}
	tip, ok := ShadowOf(Vec{0, 0, heightM}, Direction(0, math.Min(elevationDeg, 90)))
	return tip.LevelLen(), ok
}

// Shadow returns the outline of s's shadow on the level ground, its own foot
// included.
func Shadow(s Solid, sun Vec) (Outline, bool) {
	var fall []Vec
	for _, p := range s.Rim(sun) {
		q, ok := ShadowOf(p, sun)
		if !ok {
			return nil, false
		}
		fall = append(fall, q)
	}
	return Hull(fall), true
}

// Footprint returns the outline of s seen from straight above.
func Footprint(s Solid) Outline { return Hull(s.Rim(Up())) }
