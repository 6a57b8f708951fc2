package weather

import (
	"math"
	"testing"

	"bedweek/internal/cal"
)

// TestColdTailBySeason: nights far below the mean are as rare in each season
// as the record says, or as rare as half-way between it and the usual tail.
// Late spring is where it matters: tender crops go out then. With the winter's
// tail used all year, late May froze in one generated year of sixty, where the
// record of four years knows no night under 6.7 °C.
func TestColdTailBySeason(t *testing.T) {
	rec := seattleRecord(t)
	mean, _ := MeanYear(rec, nil, seattle)
	set := Make(rec, nil, seattle, cal.Of(2022, 1, 1), Ask{Days: 365, N: 400, Seed: 7})
	real := []Future{{Start: rec.Start, Days: rec.Days}}
	var late []float64
	for _, f := range set.Futures {
		cold := math.Inf(1)
		for i, d := range f.Days {
			if x := f.Start + cal.Day(i); x.Month() == 5 && x.YearDay() > 136 {
				cold = min(cold, d.TminC)
			}
		}
		late = append(late, cold)
	}
	low, _ := Quantile(late, 0.02, 7)
	within(t, "coldest night of late May in fifty years", low, 4, 1.5, "NOAA record of Seattle: least 6.7 °C in four years")
	const usual = 0.099 // excessOf(1, 1, coldTail)
	for q, season := range []string{"winter", "spring", "summer", "autumn"} {
		a, b := farNights(mean, real)[q], farNights(mean, set.Futures)[q]
		t.Logf("%s: mean squared excess %.3f recorded, %.3f generated", season, a, b)
		if most := 1.1 * (a + usual) / 2; b < 0.8*a || b > most {
			t.Errorf("%s: nights stray %.3f below one spread, record %.3f, want %.3f at most (NOAA record of Seattle, 2012 to 2015)", season, b, a, most)
		}
	}
}

// farNights is the mean squared excess of nights below one spread, by season.
func farNights(mean [yearDays]Day, fs []Future) (out [4]float64) {
	var square, n [4]float64
	each := func(do func(q int, stray float64)) {
		for _, f := range fs {
			for i, d := range f.Days {
				x := f.Start + cal.Day(i)
				do(int(x.Month())%12/3, d.TminC-mean[x.YearDay()-1].TminC)
			}
		}
	}
	each(func(q int, s float64) { square[q], n[q] = square[q]+s*s, n[q]+1 })
	each(func(q int, s float64) { out[q] += excess(s/math.Sqrt(square[q]/n[q])) / n[q] })
	return out
}

// TestTailFor: the tail found gives the excess asked for; a steady season has
// none.
func TestTailFor(t *testing.T) {
	for _, tail := range []float64{0.03, 0.12, 0.2} {
		within(t, "tail", tailFor(1.02, 0.98, excessOf(1.02, 0.98, tail)), tail, 0.002, "its own excess")
	}
	if got := tailFor(1, 1, 0.05); got != 0 {
		t.Errorf("a season steadier than a bell curve gets a tail of %v", got)
	}
	within(t, "excess of a bell curve", excessOf(1, 1, 0), tailMean, 0.002, "2Φ(-1) - φ(1)")
}
