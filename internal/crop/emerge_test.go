package crop

import (
	"math"
	"slices"
	"testing"
)

func TestEmergePct(t *testing.T) {
	for _, tt := range []struct {
		id    ID
		soilC float64
		want  float64
		known bool
		from  string
	}{
		{"carrot", 20, 96, true, "[HM1954] row"},
		{"spinach", 30, 32, true, "[HM1954] row, higher than at 25"},
		{"celery", 25, 65, true, "[HM1954] percent, though its days say none"},
		{"lettuce-head", 30, 12, true, "[HM1954] lettuce in general"},
		{"carrot", 12.5, 94, true, "half way between 93 and 95"},
		{"tomato", 7.5, 41, true, "half way between 0 and 82"},
		{"cabbage", 20, 0, false, "a gap in the table, not 0 %"},
		{"cabbage", 18, 0, false, "beside a gap"},
		{"cauliflower", 20, 0, false, "a gap in the table, not 0 %"},
		{"parsley", 15, 0, false, "a gap in the table"},
		{"cucumber", 40, 49, true, "[HM1954] row without days"},
		{"pea-shelling", 36, 0, true, "above the book's maximum"},
		{"spinach", 32.5, 16, true, "half way between 32 and 0"},
		{"radish", 33, 0, false, "hotter than tested, below the book's maximum"},
		{"eggplant", 18, 0, false, "colder than tested, above the book's minimum"},
		{"eggplant", 10, 0, true, "below the book's minimum"},
		{"tomato", -3, 0, true, "colder than a row that failed"},
		{"kale", 10, 0, false, "borrowed from cabbage, which is known there"},
		{"basil", 20, 0, false, "no table"},
	} {
		got, known := mustCrop(t, tt.id).EmergePct(tt.soilC)
		if math.Abs(got-tt.want) > 0.01 || known != tt.known {
			t.Errorf("%s EmergePct(%v °C) = %v, %v; want %v, %v (%s)", tt.id, tt.soilC, got, known, tt.want, tt.known, tt.from)
		}
	}
}

func TestEmergeDays(t *testing.T) {
	for _, tt := range []struct {
		id    ID
		soilC float64
		days  float64 // 0 = never
		tol   float64 // days
		from  string
	}{
		{"carrot", 10, 17, 1e-9, "[HM1954]"},
		{"tomato", 10, 43, 1e-9, "[HM1954]"},
		{"lettuce-leaf", 0, 49, 1e-9, "[HM1954]"},
		{"cabbage", 20, 6, 1e-9, "[HM1954]: days known though percent is not"},
		{"onion-bulb", 7.5, 2 / (1/31.0 + 1/13.0), 1e-9, "rates run straight between rows"},
		{"snap-bean-bush", 10, 0, 0, "[HM1954] none at 10"},
		{"cucumber", 10, 0, 0, "[HM1954] none at 10"},
		{"celery", 25, 0, 0, "[HM1954] none at 25"},
		{"kale", 10, 15, 1e-9, "cabbage's table"},
		{"summer-squash", 21.1, 9, 1, "common practice: up in 7 to 10 days in soil of 21"},
		{"basil", 21, 9, 2, "EXT-HERB, from memory: 5 to 10 days at 21 to 29"},
		{"basil", 9, 0, 0, "BASIL-BIRJ, published: 6 to 15 % at 10"},
		{"potato", 10, 40, 12, "common practice: chitted tubers planted in March show in five weeks"},
	} {
		got, ok := mustCrop(t, tt.id).EmergeDaysAt(tt.soilC)
		if ok != (tt.days > 0) || math.Abs(got-tt.days) > tt.tol {
			t.Errorf("%s EmergeDaysAt(%v °C) = %.2f, %v; want %.2f (%s)", tt.id, tt.soilC, got, ok, tt.days, tt.from)
		}
	}
}

// Every own row of the published table comes back from the functions the plan
// uses, not only from the table.
func TestEmergeAgreesWithEveryRow(t *testing.T) {
	rows := 0
	for _, c := range load(t).Crops {
		if !c.GermOwn {
			continue
		}
		for _, p := range c.Germ {
			if p.HasDays {
				rows++
				if got := c.EmergeRate(p.SoilC); math.Abs(got-1/p.Days) > 1e-9 {
					t.Errorf("%s at %v °C: rate %v, want 1/%v", c.ID, p.SoilC, got, p.Days)
				}
			}
			if p.None && c.EmergeRate(p.SoilC) != 0 {
				t.Errorf("%s at %v °C: rate %v where the table says none", c.ID, p.SoilC, c.EmergeRate(p.SoilC))
			}
			if got, known := c.EmergePct(p.SoilC); known != p.HasPct || got != p.Pct {
				t.Errorf("%s at %v °C: %v %%, %v; want %v, %v", c.ID, p.SoilC, got, known, p.Pct, p.HasPct)
			}
		}
	}
	if rows < 150 {
		t.Errorf("only %d rows checked", rows)
	}
}

func TestEmergeProperties(t *testing.T) {
	for _, c := range load(t).Crops {
		lo, hi, ok := c.EmergeSpan()
		if !ok {
			if !slices.Equal(c.Ways, []Way{Plant}) {
				t.Errorf("%s is sown but has no span", c.ID)
			}
			continue
		}
		if lo >= hi {
			t.Errorf("%s: comes up from %v to %v °C", c.ID, lo, hi)
		}
		last := c.EmergeRate(-20)
		for soil := -20.0; soil < 60; soil += 0.25 {
			r, s := c.EmergeRate(soil), c.EmergeShare(soil)
			if !(r >= 0 && r <= 1) || !(s >= 0 && s <= 1) {
				t.Fatalf("%s at %v °C: rate %v, share %v", c.ID, soil, r, s)
			}
			if (soil < lo || soil > hi) && (r != 0 || s != 0) {
				t.Errorf("%s at %v °C, outside %v to %v: rate %v, share %v", c.ID, soil, lo, hi, r, s)
			}
			if pct, known := c.EmergePct(soil); known && soil >= lo && soil <= hi && math.Abs(s-pct/100) > 0.5 {
				t.Errorf("%s at %v °C: share %v far from the known %v %%", c.ID, soil, s, pct)
			}
			if math.Abs(r-last) > 0.1 {
				t.Errorf("%s: rate leaps from %v to %v at %v °C", c.ID, last, r, soil)
			}
			last = r
		}
		if c.EmergeRate(0) > 0 && c.Warm {
			t.Errorf("%s is a warm crop yet comes up at 0 °C", c.ID)
		}
	}
}

func TestShareBridgesGaps(t *testing.T) {
	c := mustCrop(t, "cabbage")
	if got, want := c.EmergeShare(20), 0.96; math.Abs(got-want) > 1e-9 {
		t.Errorf("cabbage share at 20 °C = %v, want %v, half way between 93 and 99 %%", got, want)
	}
}

func TestFitThermal(t *testing.T) {
	soil, days := []float64{5, 10, 15, 20, 25}, []float64{31, 13, 7, 5, 4} // onion, [HM1954]
	f, ok := FitThermal(soil, days)
	if !ok || math.Abs(f.BaseC-2.431) > 0.01 || math.Abs(f.DegreeDays-89.52) > 0.05 || math.Abs(f.R2-0.997) > 0.001 {
		t.Errorf("onion fit %+v, %v; want base 2.431, 89.52 degree days, R2 0.997 (least squares of the printed days)", f, ok)
	}
	// A line made by hand comes back whole.
	f, ok = FitThermal([]float64{10, 20, 30}, []float64{100 / 5.0, 100 / 15.0, 100 / 25.0})
	if !ok || math.Abs(f.BaseC-5) > 1e-9 || math.Abs(f.DegreeDays-100) > 1e-9 || math.Abs(f.R2-1) > 1e-9 {
		t.Errorf("made line %+v, %v; want base 5, 100 degree days", f, ok)
	}
	for _, bad := range [][2][]float64{
		{{10}, {5}}, {{10, 20}, {5}}, {{10, 20}, {5, 0}}, {{10, 10}, {5, 4}}, {{10, 20}, {5, 9}}, {{10, 20}, {5, 5}}, {nil, nil},
	} {
		if f, ok := FitThermal(bad[0], bad[1]); ok {
			t.Errorf("FitThermal(%v, %v) = %+v, want none", bad[0], bad[1], f)
		}
	}
}
