package chance

import (
	"math"
	"testing"
)

// TestAtLeastUnsure: one seed more comes up with the mean of the rate's
// distribution; a very large test leaves the plain binomial; and for the even
// split Beta(½, ½) of no test at all, two seeds give 0, 1 and 2 with 3/8, 1/4
// and 3/8 (by hand: the moments of the arcsine law, E p = 1/2, E p² = 3/8).
func TestAtLeastUnsure(t *testing.T) {
	const tol = 1e-9
	for _, tt := range []struct {
		n, k, up, tried int
		want            float64
	}{
		{1, 1, 7, 10, 7.5 / 11},
		{2, 2, 0, 0, 3.0 / 8},
		{2, 1, 0, 0, 5.0 / 8},
		{5, 0, 3, 10, 1},
		{5, 6, 3, 10, 0},
	} {
		if got := AtLeastUnsure(tt.n, tt.k, tt.up, tt.tried); math.Abs(got-tt.want) > tol {
			t.Errorf("AtLeastUnsure(%d, %d, %d of %d) = %.10f, want %.10f", tt.n, tt.k, tt.up, tt.tried, got, tt.want)
		}
	}
	if got, want := AtLeastUnsure(17, 6, 500000, 1000000), AtLeast(17, 6, 0.5); math.Abs(got-want) > 1e-5 {
		t.Errorf("a test of a million seeds: %.6f, want the binomial's %.6f", got, want)
	}
}

// TestSeedsNeededUnsure: 6 plants at 90 % from seed of 90, 70 and 50 % want 8,
// 11 and 17 (jobs.md 4, binomial); not knowing the rate well asks for more,
// and the more the smaller the test.
func TestSeedsNeededUnsure(t *testing.T) {
	for _, tt := range []struct {
		share float64
		plain int
	}{{0.9, 8}, {0.7, 11}, {0.5, 17}} {
		if n, _ := SeedsNeeded(tt.share, 6, 0.9); n != tt.plain {
			t.Errorf("share %.1f: %d, want %d", tt.share, n, tt.plain)
		}
		last := 1 << 30
		for _, tried := range []int{10, 20, 50, 1000, 100000} {
			n, ok := SeedsNeededUnsure(int(math.Round(tt.share*float64(tried))), tried, 6, 0.9, 2000)
			if !ok || n > last || n < tt.plain {
				t.Errorf("share %.1f of %d tried: %d seeds (%v), want %d to %d", tt.share, tried, n, ok, tt.plain, last)
			}
			last = n
		}
		if last != tt.plain {
			t.Errorf("share %.1f, a very large test: %d, want %d", tt.share, last, tt.plain)
		}
	}
	n, _ := SeedsNeededUnsure(14, 20, 6, 0.9, 2000)
	if AtLeastUnsure(n, 6, 14, 20) < 0.9 || AtLeastUnsure(n-1, 6, 14, 20) >= 0.9 {
		t.Errorf("%d is not the least number", n)
	}
	if _, ok := SeedsNeededUnsure(0, 50, 20, 0.9, 500); ok {
		t.Error("dead seed has a number to sow")
	}
}
