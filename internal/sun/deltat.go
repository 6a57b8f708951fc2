package sun

import "time"

// DeltaT returns Terrestrial Time less Universal Time in seconds, by the
// polynomials of [EspenakMeeus]. They ran some 5 s high by 2025, which moves
// the sun 0.00006° in the sky's frame; before 1900 and after 2150 the long
// parabola is used.
func DeltaT(t time.Time) float64 {
	return deltaTOf(float64(t.Unix()-j2000Unix) / 86400)
}

// deltaTOf is DeltaT by days after J2000.
func deltaTOf(d float64) float64 {
	y := 2000 + d/365.25
	switch {
	case y < 1900 || y >= 2150:
		return longDeltaT(y)
	case y < 1920:
		return poly(y-1900, -2.79, 1.494119, -0.0598939, 0.0061966, -0.000197)
	case y < 1941:
		return poly(y-1920, 21.20, 0.84493, -0.076100, 0.0020936)
	case y < 1961:
		return poly(y-1950, 29.07, 0.407, -1.0/233, 1.0/2547)
	case y < 1986:
		return poly(y-1975, 45.45, 1.067, -1.0/260, -1.0/718)
	case y < 2005:
		return poly(y-2000, 63.86, 0.3345, -0.060374, 0.0017275, 0.000651814, 0.00002373599)
	case y < 2050:
		return poly(y-2000, 62.92, 0.32217, 0.005589)
	}
	return longDeltaT(y) - 0.5628*(2150-y)
}

func longDeltaT(y float64) float64 {
	u := (y - 1820) / 100
	return -20 + 32*u*u
}

// poly evaluates c[0] + c[1]x + c[2]x² + …
func poly(x float64, c ...float64) float64 {
	sum := 0.0
	for i := len(c) - 1; i >= 0; i-- {
		sum = sum*x + c[i]
	}
	return sum
}
