package water

import "math"

// UsableL returns the litres a container gives before it wants water: a share
// of what its medium holds for plants, and all of a reservoir.
func UsableL(mediumL, availableShare, useShare, reservoirL float64) float64 {
	return mediumL*availableShare*useShare + reservoirL
}

// DemandL returns the litres a day a plant drinks: evapotranspiration times
// crop factor over its leaf spread (not over the pot's top).
func DemandL(et0MM, factor, leafM2 float64) float64 { return et0MM * factor * leafM2 }

// DaysToDry returns how long usable water lasts; ok is false when nothing is
// drunk.
func DaysToDry(usableL, demandL float64) (days float64, ok bool) {
	if demandL <= 0 {
		return 0, false
	}
	return usableL / demandL, true
}

// WateringsADay returns how often a container wants water; ok is false when it
// holds none.
func WateringsADay(usableL, demandL float64) (times float64, ok bool) {
	if usableL <= 0 {
		return 0, false
	}
	return demandL / usableL, true
}

// BoxL, CylinderL and FrustumL return inside volumes in litres. Pots named by
// gallons hold less than their name: measure.
func BoxL(lengthM, widthM, depthM float64) float64 { return 1000 * lengthM * widthM * depthM }

// CylinderL is the volume of an upright round pot.
func CylinderL(diameterM, depthM float64) float64 { return FrustumL(diameterM, diameterM, depthM) }

// FrustumL is the volume of a tapered round pot.
func FrustumL(topM, bottomM, depthM float64) float64 {
	r, s := topM/2, bottomM/2
	return 1000 * math.Pi * depthM / 3 * (r*r + r*s + s*s)
}

// gravity is standard gravity, m/s2.
const gravity = 9.80665

// Load is what a full container weighs on what it stands on. Plants, snow and
// people are left out. It says nothing about what a balcony bears: ask its
// owner or a structural engineer.
type Load struct{ Kg, KgM2, KNM2 float64 }

// SaturatedLoad returns the weight of a container with its medium drained but
// full, and the reservoir full; ok is false without a base to stand on.
func SaturatedLoad(mediumL, dryKgM3, waterShare, reservoirL, containerKg, baseM2 float64) (l Load, ok bool) {
	l.Kg = mediumL*dryKgM3/1000 + mediumL*waterShare + reservoirL + containerKg
	if baseM2 <= 0 {
		return l, false
	}
	l.KgM2 = l.Kg / baseM2
	l.KNM2 = l.KgM2 * gravity / 1000
	return l, true
}

// CaughtL returns the litres rain leaves on an area; share is what is not lost
// on the way.
func CaughtL(rainMM, areaM2, share float64) float64 { return rainMM * areaM2 * share }
