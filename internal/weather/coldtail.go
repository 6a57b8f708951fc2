package weather

import "math"

// The cold tail is how much further nights reach down than a bell curve says
// once they lie more than one spread below the mean. It is a matter of season:
// cold air from inland comes in winter, while in late spring and summer clear
// nights end near the dew point. So it is read from the record by season, half
// of it believed and half left to the usual tail.

const (
	believed = 0.5 // of what a record of few years shows
	tailMost = 0.24
)

// coldTails fits the tail of nights: the strays' mean squared excess below one
// spread, by season, against what halves and tail of a size would give.
func (f *fitter) coldTails(v *variable, z []float64) (tails table) {
	var far bins
	for i := range z {
		if !f.use[i] {
			continue
		}
		far.add(f.doy[i], excess(z[i]))
	}
	shown, _ := far.smooth(windowTail, tailMean)
	for i := range tails {
		want := believed*shown[i] + (1-believed)*excessOf(v.low[i], v.high[i], coldTail)
		tails[i] = tailFor(v.low[i], v.high[i], want)
	}
	return tails
}

// excess is the square of what a stray lies below -1, 0 above it.
func excess(z float64) float64 {
	u := max(0, -1-z)
	return u * u
}

// excessOf is the mean excess of a stretched bell curve.
func excessOf(low, high, tail float64) float64 {
	const step = 0.05
	sum := 0.0
	for z := -4.5; z < 0; z += step {
		sum += excess(stretch(z, low, high, tail)) * math.Exp(-z*z/2) * step / math.Sqrt(2*math.Pi)
	}
	return sum
}

// tailFor finds the tail, 0 to tailMost, whose mean excess is want.
func tailFor(low, high, want float64) float64 {
	a, b := 0.0, tailMost
	if excessOf(low, high, a) >= want {
		return a
	}
	if excessOf(low, high, b) <= want {
		return b
	}
	for range 12 {
		if mid := (a + b) / 2; excessOf(low, high, mid) < want {
			a = mid
		} else {
			b = mid
		}
	}
	return (a + b) / 2
}

// normalTails is the tail where only normals are known: in full in the cold
// half of the year, less in the warm (assumption, after the record of one
// maritime place).
func (c *climate) normalTails(s season) (tails table) {
	for i := range tails {
		tails[i] = 1.5 * coldTail * mix(min(1, max(0, s.warmth(c, i))), 1, 0.4)
	}
	return tails
}
