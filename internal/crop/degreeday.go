package crop

import "math"

// Degree days of one day from its lowest and highest temperature. All
// temperatures of a call share one scale, °C or °F, and the answer is in that
// scale's degree days. Lower and upper are the limits of development; upper
// math.Inf(1) means none. Where min and max come in the wrong order the day is
// taken as flat at their mean.

// Cutoff says what heat above the upper limit does.
type Cutoff int

// Cutoffs, as [ZALOM83] names them.
const (
	Horizontal   Cutoff = iota // the excess does nothing
	Intermediate               // the excess is taken off again
	Vertical                   // development stops while it is hotter
)

// Shape is the shape a day's temperature is taken to follow.
type Shape int

// Shapes of a day.
const (
	Triangle Shape = iota // straight up and straight down
	Sine                  // half a wave between the two extremes
)

// MeanDD is the mean of the two extremes less the base, and never below 0:
// [MCMASTER97] method 1.
func MeanDD(min, max, base float64) float64 {
	return math.Max(0, (min+max)/2-base)
}

// RaisedDD is [MCMASTER97] method 2: both extremes are raised to the base
// before they are averaged. It counts a day that is warm only at noon.
func RaisedDD(min, max, base float64) float64 {
	return ClampedDD(min, max, base, math.Inf(1))
}

// ClampedDD brings both extremes within lower and upper before averaging them.
// With 50 and 86 °F it is the corn rule.
func ClampedDD(min, max, lower, upper float64) float64 {
	clamp := func(t float64) float64 { return math.Min(math.Max(t, lower), upper) }
	return (clamp(min)+clamp(max))/2 - lower
}

// MostDD is the most a day can give under a horizontal cutoff.
func MostDD(lower, upper float64) float64 { return math.Max(0, upper-lower) }

// SingleDD integrates one day shaped between its own extremes. An intermediate
// cutoff in strong heat may go below 0.
func SingleDD(s Shape, min, max, lower, upper float64, c Cutoff) float64 {
	dd := over(s, min, max, lower)
	if math.IsInf(upper, 1) {
		return dd
	}
	switch hot := over(s, min, max, upper); c {
	case Horizontal:
		return dd - hot
	case Intermediate:
		return dd - 2*hot
	default: // Vertical: the hot hours give nothing at all
		return dd - hot - MostDD(lower, upper)*shareOver(s, min, max, upper)
	}
}

// DoubleDD integrates the day in two halves: up from its own lowest, and down
// to the next day's lowest.
func DoubleDD(s Shape, min, max, nextMin, lower, upper float64, c Cutoff) float64 {
	return (SingleDD(s, min, max, lower, upper, c) + SingleDD(s, nextMin, max, lower, upper, c)) / 2
}

// over is the day's mean height above a threshold.
func over(s Shape, min, max, at float64) float64 {
	if max <= min {
		return math.Max(0, (min+max)/2-at)
	}
	switch {
	case at <= min:
		return (min+max)/2 - at
	case at >= max:
		return 0
	}
	if s == Triangle {
		return (max - at) * (max - at) / (2 * (max - min))
	}
	mean, half := (min+max)/2, (max-min)/2
	a := angleOver(mean, half, at)
	return ((mean-at)*a + half*math.Sin(a)) / math.Pi
}

// shareOver is the share of the day above a threshold.
func shareOver(s Shape, min, max, at float64) float64 {
	switch {
	case max <= min:
		if (min+max)/2 > at {
			return 1
		}
		return 0
	case at <= min:
		return 1
	case at >= max:
		return 0
	case s == Triangle:
		return (max - at) / (max - min)
	}
	return angleOver((min+max)/2, (max-min)/2, at) / math.Pi
}

// angleOver is half the angle, 0 to π, that the wave mean + half·cos spends
// above a threshold.
func angleOver(mean, half, at float64) float64 {
	return math.Acos(math.Min(1, math.Max(-1, (at-mean)/half)))
}
