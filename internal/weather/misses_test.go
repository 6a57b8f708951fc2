package weather

import (
	"math"
	"testing"

	"bedweek/internal/cal"
)

// misledForecasts are n days' forecasts in a row, each off by bias and, turn
// about, by swing either way; what came is 20 and 10 °C.
func misledForecasts(n int, bias, swing float64) (out []*Forecast) {
	for i := range n {
		fc := &Forecast{Issued: cal.Of(2026, 5, 1) + cal.Day(i)}
		for lead := range MostFarDays {
			sign := 1.0
			if i%2 == 1 {
				sign = -1
			}
			hi, lo := 20+bias+sign*swing*float64(lead), 10-bias
			fc.Days = append(fc.Days, FarDay{Day: fc.Issued + cal.Day(lead), TmaxC: &hi, TminC: &lo})
		}
		out = append(out, fc)
	}
	return out
}

func steady(known func(cal.Day) bool) func(cal.Day) Came {
	return func(d cal.Day) Came {
		if !known(d) {
			return Came{}
		}
		hi, lo := 20.0, 10.0
		return Came{&hi, &lo}
	}
}

// Errors by hand: a bias of half a degree and a swing of 1 °C a day ahead, over
// an even number of days.
func TestMissesByHand(t *testing.T) {
	last := cal.Of(2026, 5, 24) // the 24th day
	kept := misledForecasts(24, 0.5, 1)
	kept = append(kept, kept[3]) // the same day's second one does not count
	got := Misses(kept, steady(func(d cal.Day) bool { return d <= last }))
	for _, lead := range []int{0, 1, 3, 7} {
		n := 24 - lead
		m, l := got[lead], float64(lead)
		if m.Lead != lead || m.High.Days != n || m.Low.Days != n {
			t.Errorf("lead %d: %+v, want %d days", lead, m, n)
		}
		if n%2 == 0 && math.Abs(m.High.Bias-0.5) > 1e-9 || math.Abs(m.Low.Bias+0.5) > 1e-9 || math.Abs(m.Low.RMS-0.5) > 1e-9 {
			t.Errorf("lead %d: bias %+v %+v", lead, m.High, m.Low)
		}
		even := math.Abs(m.High.RMS-math.Sqrt(l*l+0.25)) < 1e-9
		if n%2 == 0 && !even || l >= 1 && n%2 == 0 && math.Abs(m.High.Mean-l) > 1e-9 {
			t.Errorf("lead %d: %+v, want a mean size of %.1f", lead, m.High, l)
		}
	}
}

// Futures take this garden's own error once twenty days were compared, and the
// usual one before.
func TestOwnErrorIsUsedWhenThereAreEnough(t *testing.T) {
	all := func(cal.Day) bool { return true }
	for _, tt := range []struct {
		days int
		want float64
	}{{19, errorC(2)}, {20, math.Sqrt(4 + 0.25)}} {
		own := Misses(misledForecasts(tt.days, 0.5, 1), steady(all))
		fc := &Forecast{Own: &own}
		if got := fc.spreadC(2, true); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("%d days: a spread of %.3f °C, want %.3f", tt.days, got, tt.want)
		}
		if got := fc.spreadC(2, false); tt.days == 20 && got != leastErrorC {
			t.Errorf("lows never off by more than half a degree: %.3f °C", got)
		}
	}
	if got := (&Forecast{}).spreadC(3, true); got != errorC(3) {
		t.Errorf("nothing kept: %.2f °C", got)
	}
}
