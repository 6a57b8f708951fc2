package weather

import "math"

// Warmth going down into soil or medium as a wave: heat conduction in a deep,
// even ground whose surface swings as a sine. [HILLEL82] D. Hillel,
// Introduction to Soil Physics (1982), and the teaching pages of Oklahoma
// State University. Even ground is an idealisation: layers, drying and rain
// change it, and a pot is warmed from its sides as well.

// DampingDepthM returns the depth at which a swing has shrunk to 1/e (37 %).
// diffusivity is in m2/s: about 2e-7 in dry mix, 5e-7 in moist loam; the
// period is in seconds.
func DampingDepthM(diffusivity, periodS float64) float64 {
	return math.Sqrt(max(0, diffusivity*periodS) / math.Pi)
}

// SwingLeft returns the share of the surface's swing left at a depth.
func SwingLeft(depthM, dampingM float64) float64 {
	if dampingM <= 0 {
		return 0
	}
	return math.Exp(-depthM / dampingM)
}

// SwingLag returns how long the wave takes to a depth, in the unit of period.
func SwingLag(depthM, dampingM, period float64) float64 {
	if dampingM <= 0 {
		return 0
	}
	return depthM / dampingM * period / (2 * math.Pi)
}

// DepthOfShareM returns the depth at which a share of the swing is left; ok is
// false unless 0 < share <= 1.
func DepthOfShareM(share, dampingM float64) (depthM float64, ok bool) {
	if share <= 0 || share > 1 {
		return 0, false
	}
	return -dampingM * math.Log(share), true
}

// yearS is a year of 365 days, seconds.
const yearS = 365 * 86400

// YearWaveC returns the soil temperature at a depth on a day of the year, with
// the surface coldest on coldestDay.
func YearWaveC(meanC, surfaceSwingC, depthM, diffusivity, dayOfYear, coldestDay float64) float64 {
	d := DampingDepthM(diffusivity, yearS)
	z := 0.0
	if d > 0 {
		z = depthM / d
	}
	return meanC - surfaceSwingC*SwingLeft(depthM, d)*math.Cos(2*math.Pi*(dayOfYear-coldestDay)/365-z)
}
