package crop

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// ExampleClampedDD is the corn rule on a warm day, in °F. [UWEX-CORN]
func ExampleClampedDD() {
	fmt.Println(ClampedDD(65, 90, 50, 86))
	// Output: 25.5
}

func TestMeanAndRaised(t *testing.T) {
	for _, tt := range []struct{ min, max, mean, raised float64 }{
		{10, 20, 15, 15}, {-2, 8, 3, 4}, {-7, -2, 0, 0}, {-2, 10, 4, 5},
	} { // [MCMASTER97] table 1, base 0 °C
		if got := MeanDD(tt.min, tt.max, 0); got != tt.mean {
			t.Errorf("MeanDD(%v, %v) = %v, want %v [MCMASTER97]", tt.min, tt.max, got, tt.mean)
		}
		if got := RaisedDD(tt.min, tt.max, 0); got != tt.raised {
			t.Errorf("RaisedDD(%v, %v) = %v, want %v [MCMASTER97]", tt.min, tt.max, got, tt.raised)
		}
	}
}

// dayOf samples a shape at many moments, apart from the closed forms.
func dayOf(s Shape, min, max, lower, upper float64, c Cutoff) float64 {
	const moments = 50000
	sum := 0.0
	for i := range moments {
		x := (float64(i) + 0.5) / moments // from coldest to hottest
		t := min + (max-min)*x
		if s == Sine {
			t = (min+max)/2 - (max-min)/2*math.Cos(math.Pi*x)
		}
		gain := math.Max(0, t-lower)
		if t > upper {
			switch c {
			case Horizontal:
				gain = upper - lower
			case Intermediate:
				gain = upper - lower - (t - upper)
			case Vertical:
				gain = 0
			}
		}
		sum += gain
	}
	return sum / moments
}

func TestSingleDDAgainstSampling(t *testing.T) {
	const tol = 0.001 // degree days; the sampling's own grain at a vertical cutoff
	rng := rand.New(rand.NewPCG(7, 11))
	for i := range 40 {
		min := rng.Float64()*40 - 10
		max := min + rng.Float64()*25
		lower := rng.Float64() * 15
		upper := lower + 5 + rng.Float64()*20
		for _, s := range []Shape{Triangle, Sine} {
			for _, c := range []Cutoff{Horizontal, Intermediate, Vertical} {
				got, want := SingleDD(s, min, max, lower, upper, c), dayOf(s, min, max, lower, upper, c)
				if math.Abs(got-want) > tol {
					t.Errorf("case %d (seed 7, 11): SingleDD(%v, %.3f, %.3f, %.3f, %.3f, %v) = %.5f, sampled %.5f", i, s, min, max, lower, upper, c, got, want)
				}
			}
		}
	}
}

func TestDegreeDayOrder(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	for range 2000 {
		min := rng.Float64()*50 - 15
		max := min + rng.Float64()*25
		lower := rng.Float64() * 15
		upper := lower + rng.Float64()*25
		for _, s := range []Shape{Triangle, Sine} {
			none := SingleDD(s, min, max, lower, math.Inf(1), Horizontal)
			h := SingleDD(s, min, max, lower, upper, Horizontal)
			v := SingleDD(s, min, max, lower, upper, Vertical)
			const grain = 1e-9
			if h < -grain || h > MostDD(lower, upper)+grain || h > none+grain || v > h+grain || v < -grain {
				t.Fatalf("min %v max %v limits %v %v: none %v, horizontal %v, vertical %v", min, max, lower, upper, none, h, v)
			}
			if warmer := SingleDD(s, min+1, max+1, lower, upper, Horizontal); warmer < h-grain {
				t.Fatalf("a warmer day gave less: %v after %v", warmer, h)
			}
			if d := DoubleDD(s, min, max, min, lower, upper, Horizontal); math.Abs(d-h) > grain {
				t.Fatalf("two like halves gave %v, the whole %v", d, h)
			}
		}
	}
}

func TestFlatAndUpsideDownDays(t *testing.T) {
	for _, s := range []Shape{Triangle, Sine} {
		if got := SingleDD(s, 20, 20, 10, 30, Vertical); got != 10 {
			t.Errorf("flat day at 20: %v, want 10", got)
		}
		if got := SingleDD(s, 35, 35, 10, 30, Vertical); got != 0 {
			t.Errorf("flat day above the limit: %v, want 0", got)
		}
		if got := SingleDD(s, 25, 15, 10, 30, Horizontal); got != 10 {
			t.Errorf("upside-down day: %v, want its mean 20 less 10", got)
		}
	}
}
