package chance

import (
	"math"

	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/stat/distuv"
)

// Estimate returns the plain share k/n; 0 when nothing was tried.
func Estimate(k, n int) float64 {
	if n <= 0 {
		return 0
	}
	return float64(k) / float64(n)
}

// ClopperPearson returns the exact interval for a share from k successes among
// n. It covers at least the confidence, and is wider than [Wilson]; say which
// of the two is shown. n must be 1 or more and k between 0 and n.
func ClopperPearson(k, n int, confidence float64) (low, high float64) {
	tail := (1 - confidence) / 2
	low, high = 0, 1
	if k > 0 {
		low = mathext.InvRegIncBeta(float64(k), float64(n-k+1), tail)
	}
	if k < n {
		high = mathext.InvRegIncBeta(float64(k+1), float64(n-k), 1-tail)
	}
	return low, high
}

// Wilson returns the score interval without continuity correction. It covers
// the confidence on average over shares, not for each.
func Wilson(k, n int, confidence float64) (low, high float64) {
	z := distuv.UnitNormal.Quantile(1 - (1-confidence)/2)
	N, p := float64(n), float64(k)/float64(n)
	mid := p + z*z/(2*N)
	half := z * math.Sqrt(p*(1-p)/N+z*z/(4*N*N))
	low, high = (mid-half)/(1+z*z/N), (mid+half)/(1+z*z/N)
	if k == 0 {
		low = 0
	}
	if k == n {
		high = 1
	}
	return low, high
}
