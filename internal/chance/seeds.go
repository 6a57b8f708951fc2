// Package chance answers the questions of seeds and of small trials: how many
// to sow, what a germination test tells, how large a difference a few plants
// can show, and whether a trial showed one.
//
// Method: the binomial for seeds; [ClopperPearson1934] and [Wilson1927]
// intervals; two-sample t tests with exact power by the noncentral t (its
// series is AS 243 of Lenth 1989, as carried by gonum); additive two-way
// analysis of variance for randomised blocks. Special functions are gonum's.
//
// Conventions: shares and probabilities run 0 to 1. A question without an
// answer gives ok = false, never a 0.
//
// Range and accuracy: probabilities to 1e-6 against R and SciPy for samples of
// 2 to some thousands; see the tests.
//
// Left out: overdispersed seed (lots whose seeds live and die together), lost
// plots in a block, and more than one treatment factor.
package chance

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// maxSeeds ends the search for a number to sow: a gardener with more than a
// million seeds asks somebody else.
const maxSeeds = 1_000_000

// AtLeast returns the chance of k or more successes among n, each with chance
// p on its own.
func AtLeast(n, k int, p float64) float64 {
	switch {
	case k <= 0:
		return 1
	case k > n || !(p > 0):
		return 0
	case p >= 1:
		return 1
	}
	return distuv.Binomial{N: float64(n), P: p}.Survival(float64(k - 1))
}

// SeedsNeeded returns the least number to sow so that wanted plants or more
// come up with at least the given confidence; ok is false when no number does.
func SeedsNeeded(p float64, wanted int, confidence float64) (n int, ok bool) {
	if wanted <= 0 {
		return 0, true
	}
	if !(p > 0) || !(confidence < 1 || p >= 1) {
		return 0, false
	}
	low, high := wanted-1, wanted // AtLeast(low) falls short
	for AtLeast(high, wanted, p) < confidence {
		if low, high = high, 2*high; high > maxSeeds {
			return 0, false
		}
	}
	for high-low > 1 {
		if m := (low + high) / 2; AtLeast(m, wanted, p) < confidence {
			low = m
		} else {
			high = m
		}
	}
	return high, true
}

// NaiveSeeds is the common shortcut, wanted plants over germination, rounded
// up. It gives about an even chance only.
func NaiveSeeds(p float64, wanted int) (n int, ok bool) {
	if !(p > 0) {
		return 0, false
	}
	const grace = 1e-9 // 12/0.8 is 15, not 15 and a hair
	return int(math.Ceil(float64(wanted)/p - grace)), true
}

// Through returns the chance of passing every one of independent stages.
func Through(stages ...float64) float64 {
	p := 1.0
	for _, s := range stages {
		p *= s
	}
	return p
}

// Cells is what a tray comes to when each cell gets the same number of seeds.
type Cells struct {
	Filled      float64 // chance that one cell has a plant
	Expected    float64 // cells with a plant, mean
	NoneEmpty   float64 // chance that every cell has one
	ToThin      float64 // plants too many, mean
	LowestTenth int     // filled cells reached or passed in at least nine trays of ten
}

// Tray works out a tray of cells; a seed comes up with chance p on its own.
func Tray(p float64, seedsPerCell, cells int) Cells {
	filled := 1 - math.Pow(1-p, float64(seedsPerCell))
	n := float64(cells)
	return Cells{
		Filled:      filled,
		Expected:    n * filled,
		NoneEmpty:   math.Pow(filled, n),
		ToThin:      n * (p*float64(seedsPerCell) - filled),
		LowestTenth: lowest(cells, filled, 0.1),
	}
}

// lowest returns the least k with a chance of at least q of k or fewer
// successes among n.
func lowest(n int, p, q float64) int {
	for k := 0; k < n; k++ {
		if 1-AtLeast(n, k+1, p) >= q {
			return k
		}
	}
	return n
}
