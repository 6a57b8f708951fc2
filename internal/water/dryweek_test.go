package water

import (
	"math"
	"testing"
)

// TestDryTenthByHand: eleven futures that lack 0 to 10 mm a day lack 9 at their
// dry tenth; rain is taken off, sun by its share, and no future lacks less than
// nothing.
func TestDryTenthByHand(t *testing.T) {
	s := steady(11, 28, 0, 0)
	for f, run := range s.days {
		for d := range run {
			run[d] = skyDay{radMM: float64(f)}
			if d < 14 {
				run[d].rainMM = 2
			}
		}
	}
	full, half := [12]float64{}, [12]float64{}
	for m := range full {
		full[m], half[m] = 1, 0.5
	}
	for _, tt := range []struct {
		name         string
		light        [12]float64
		rain         float64
		before, days int
		want         float64
	}{
		{"the last week", full, 1, 28, 7, 9},
		{"half the sun", half, 1, 28, 7, 4.5},
		{"a week with rain", full, 1, 14, 7, 7},
		{"under a roof", full, 0, 14, 7, 9},
		{"three weeks, one of them with rain", full, 1, 28, 21, 9 - 2.0/3},
		{"more days than the sky has before", full, 1, 7, 21, 7},
		{"more rain than is drunk", full, 10, 14, 7, 0},
		{"beyond the sky", full, 1, 60, 7, 0},
	} {
		if got := s.DryTenthMM(tt.light, tt.rain, tt.before, tt.days); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("%s: %.4f mm a day, want %.4f", tt.name, got, tt.want)
		}
	}
}

func TestCarriedByHand(t *testing.T) {
	c := Crop{KcMid: 1.15, KcbMid: 1.10, KcStaked: 1.2}
	for _, tt := range []struct {
		name   string
		mulch  float64
		staked bool
		want   float64
	}{
		{"5 mm x 1.1 of exposure x 1.15 x 0.5 m2, a tenth lost on the way", 0, false, 5 * 1.1 * 1.15 * 0.5 / 0.9},
		{"on tall supports", 0, true, 5 * 1.1 * 1.2 * 0.5 / 0.9},
		{"a mulch that lets half of the surface's 0.05 pass", 0.5, false, 5 * 1.1 * 1.125 * 0.5 / 0.9},
	} {
		if got := c.CarriedL(5, 0.5, 1.1, tt.mulch, tt.staked); math.Abs(got-tt.want) > 1e-12 {
			t.Errorf("%s: %.6f L, want %.6f", tt.name, got, tt.want)
		}
	}
}
