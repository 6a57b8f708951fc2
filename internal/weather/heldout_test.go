package weather

import (
	"math"
	"testing"

	"bedweek/internal/cal"
)

// TestHeldOutYears fits on three years and asks where the fourth falls among
// 200 futures, for seven figures of each year. Of 28 figures the middle four
// in five should hold about 22. They are not independent (one warm year moves
// several), so 17 to 27 is allowed; all 28 would mean a spread far too wide.
func TestHeldOutYears(t *testing.T) {
	rec := seattleRecord(t)
	inside, all := 0, 0
	for year := 2012; year <= 2015; year++ {
		from := cal.Of(year, 1, 1)
		set := Make(rec, nil, seattle, from, Ask{Days: 365, N: 200, Seed: 21})
		at := int(from - rec.Start)
		truth := figures(from, rec.Days[at:at+365])
		var made [7][]float64
		for _, f := range set.Futures {
			for k, v := range figures(f.Start, f.Days) {
				made[k] = append(made[k], v)
			}
		}
		for k, v := range truth {
			low, _ := Quantile(made[k], 0.1, 7)
			high, _ := Quantile(made[k], 0.9, 7)
			if v >= low && v <= high {
				inside++
			}
			all++
			t.Logf("%d figure %d: %.1f, four in five %.1f to %.1f", year, k, v, low, high)
		}
	}
	t.Logf("%d of %d inside the middle four in five", inside, all)
	if inside < 17 || inside > 27 {
		t.Errorf("%d of %d held-out figures inside the middle four in five, want 17 to 27", inside, all)
	}
}

// figures of a year: mean temperature, coldest, warmest, last and first frost
// (day of the year), rain, frost nights.
func figures(start cal.Day, days []Day) [7]float64 {
	v := [7]float64{1: math.Inf(1), 2: math.Inf(-1), 4: 366}
	for _, d := range days {
		v[0] += (d.TmaxC + d.TminC) / 2 / float64(len(days))
		v[1], v[2] = min(v[1], d.TminC), max(v[2], d.TmaxC)
		v[5] += d.RainMM
		v[6] += float64(index(d.TminC <= 0))
	}
	y := FrostYears(start, days, 0, false)[0]
	if y.HasLast {
		v[3] = float64(y.LastSpring.YearDay())
	}
	if y.HasFirst {
		v[4] = float64(y.FirstAutumn.YearDay())
	}
	return v
}
