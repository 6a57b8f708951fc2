package chance

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Test is a two-sample t test with equal sizes and equal scatter.
type Test struct {
	Alpha float64 // risk of a false alarm
	Sides int     // 1 or 2
}

func (t Test) tail() float64 { return t.Alpha / float64(t.Sides) }

// Power returns the chance that the test shows a true difference of d standard
// deviations with n plants a side. n need not be whole, but must be over 1.
func (t Test) Power(n, d float64) float64 {
	df := 2 * (n - 1)
	crit := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: df}.Quantile(1 - t.tail())
	nc := distuv.NoncentralT{Nu: df, Mu: d * math.Sqrt(n/2)}
	p := 1 - nc.CDF(crit)
	if t.Sides == 2 {
		p += nc.CDF(-crit)
	}
	return math.Max(0, math.Min(p, 1))
}

// Detectable returns the least difference, in standard deviations, that n
// plants a side show with the wished power; ok is false below 2 a side.
func (t Test) Detectable(n int, power float64) (d float64, ok bool) {
	if n < 2 || !(power > t.Alpha) || !(power < 1) {
		return 0, false
	}
	low, high := 0.0, 1.0
	for t.Power(float64(n), high) < power {
		if high *= 2; high > 1e6 {
			return 0, false
		}
	}
	return halve(low, high, func(d float64) bool { return t.Power(float64(n), d) < power }), true
}

// Needed returns how many plants a side show a true difference of d standard
// deviations with the wished power: the exact crossing, and the whole number
// to plant. ok is false for no difference or an impossible power.
func (t Test) Needed(d, power float64) (exact float64, whole int, ok bool) {
	if d == 0 || !(power > t.Alpha) || !(power < 1) {
		return 0, 0, false
	}
	d = math.Abs(d)
	const least = 1.5 // a side: below that the noncentral t has no use
	low, high := least, 2.0
	for t.Power(high, d) < power {
		if low, high = high, 2*high; high > 1e7 {
			return 0, 0, false
		}
	}
	exact = halve(low, high, func(n float64) bool { return t.Power(n, d) < power })
	return exact, int(math.Max(2, math.Ceil(exact))), true
}

// NormalShortcut is the textbook approximation of [Test.Detectable] by the
// normal curve. It is much too hopeful for a few plants and is shown as a
// warning only.
func (t Test) NormalShortcut(n int, power float64) (d float64) {
	z := distuv.UnitNormal
	return (z.Quantile(1-t.tail()) + z.Quantile(power)) * math.Sqrt(2/float64(n))
}

// InShareOfMean turns a difference in standard deviations into a share of the
// mean, by the coefficient of variation (in the same unit as the result).
func InShareOfMean(d, cv float64) float64 { return d * cv }

// InDeviations is the inverse of [InShareOfMean].
func InDeviations(difference, cv float64) float64 { return difference / cv }

// halve finds where short turns from true to false between low and high.
func halve(low, high float64, short func(float64) bool) float64 {
	for range 60 {
		if m := (low + high) / 2; short(m) {
			low = m
		} else {
			high = m
		}
	}
	return (low + high) / 2
}
