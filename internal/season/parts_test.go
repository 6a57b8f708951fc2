package season

import (
	"math/rand/v2"
	"testing"
)

// TestPartsAreNeverMoreThanThereAre: whatever stands together within a space,
// exact halves and thirds and all the tolerance with it, more than fills one
// half and two thirds at most; and the two codes count alike.
func TestPartsAreNeverMoreThanThereAre(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 14))
	full := [levels]int{}
	for range 5000 {
		area := 0.05 + 3*r.Float64()
		p := &Problem{Weeks: 1, Spaces: []Space{{AreaM2: area, Batch: -1}}}
		e := newExpected(p, 1)
		var grounds []float64
		switch n := 1 + r.IntN(5); r.IntN(4) {
		case 0: // n exact parts
			for range n {
				grounds = append(grounds, (area+tolerance)/float64(n))
			}
		case 1: // exact halves and thirds side by side
			grounds = []float64{(area + tolerance) / 2, (area + tolerance) / 3, (area + tolerance) / 6}
		default: // any that fill the space
			sum := 0.0
			for range n {
				grounds = append(grounds, r.ExpFloat64())
				sum += grounds[len(grounds)-1]
			}
			for i := range grounds {
				grounds[i] *= (area + tolerance) / sum
			}
		}
		for level := range levels {
			c := newCertificate(p, 1)
			[levels][][]float64{c.Halves, c.Thirds}[level][0][0] = 1
			checker := check{p: p, c: c}
			filled, checked := 0.0, 0.0
			for _, ground := range grounds {
				filled += e.fills(level, 0, ground)
				checked += checker.parts(0, 0, ground)
			}
			if filled != checked || filled > float64(level+1) {
				t.Fatalf("%v of %.6f m2: %v of %d parts filled, the checker says %v", grounds, area, filled, level+1, checked)
			}
			if filled == float64(level+1) {
				full[level]++
			}
		}
	}
	for level, n := range full {
		if n < 500 {
			t.Errorf("level %d was full in %d of 5000 spaces: too rarely to test anything", level, n)
		}
	}
}
