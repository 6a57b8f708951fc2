package chance

import "math"

// AtLeastUnsure returns the chance of k or more successes among n when the
// rate itself is known only from a test of tried seeds of which up came up:
// the rate has the Jeffreys distribution Beta(up + ½, tried - up + ½), so the
// count is beta-binomial. With nothing tried the rate may be anything.
func AtLeastUnsure(n, k, up, tried int) float64 {
	switch {
	case k <= 0:
		return 1
	case k > n:
		return 0
	}
	a, b := float64(up)+0.5, float64(tried-up)+0.5
	sum := 0.0
	for x := k; x <= n; x++ {
		sum += math.Exp(logChoose(n, x) + logBeta(float64(x)+a, float64(n-x)+b) - logBeta(a, b))
	}
	return math.Min(sum, 1)
}

// SeedsNeededUnsure is SeedsNeeded with the rate known from a test only. It
// asks for more than SeedsNeeded does for the share that came up; ok is false
// when no number up to most does.
func SeedsNeededUnsure(up, tried, wanted int, confidence float64, most int) (n int, ok bool) {
	if wanted <= 0 {
		return 0, true
	}
	if tried < 0 || up < 0 || up > tried || AtLeastUnsure(most, wanted, up, tried) < confidence {
		return 0, false
	}
	low, high := wanted-1, most // low falls short, high does not
	for high-low > 1 {
		if m := (low + high) / 2; AtLeastUnsure(m, wanted, up, tried) < confidence {
			low = m
		} else {
			high = m
		}
	}
	return high, true
}

func logBeta(a, b float64) float64 {
	x, _ := math.Lgamma(a)
	y, _ := math.Lgamma(b)
	z, _ := math.Lgamma(a + b)
	return x + y - z
}

func logChoose(n, k int) float64 {
	return -math.Log(float64(n)+1) - logBeta(float64(n-k)+1, float64(k)+1)
}
