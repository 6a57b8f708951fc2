package reckon

import (
	"math"
	"testing"
)

// TestUnseenKeepsTheMean wants the stretch of an assumed planting to widen the
// spread and leave the mean.
func TestUnseenKeepsTheMean(t *testing.T) {
	for _, n := range []int{1, 2, 20, 100} {
		sum := 0.0
		for f := range n {
			x := unseen(f, n)
			if x < 1-unseenPart || x > 1+unseenPart {
				t.Errorf("future %d of %d: %v", f, n, x)
			}
			sum += x
		}
		if math.Abs(sum/float64(n)-1) > 1e-12 {
			t.Errorf("%d futures: mean %v, want 1", n, sum/float64(n))
		}
	}
	if unseen(19, 20)-unseen(0, 20) < 0.7 {
		t.Error("twenty futures are not spread")
	}
}
