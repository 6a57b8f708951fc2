package weather

import (
	"math"
	"testing"
)

// After a step in the air, a quarter of the way is gone each day (Zheng, Hunt
// and Running 1993, from memory): 1 - 0.75^n after n days.
func TestSoilLagsTheAir(t *testing.T) {
	days := make([]Day, 60)
	for i := range days {
		days[i] = Day{TmaxC: 12, TminC: 8, RadMJ: 10}
		if i >= 30 {
			days[i].TmaxC, days[i].TminC = 22, 18
		}
	}
	soil := SoilC(days, 100, seattle)
	within(t, "before the step", soil[29], 10, 0.01, "air held at 10 °C, too little sun to warm the ground")
	for _, n := range []int{1, 3, 8} {
		within(t, "after the step", soil[29+n], 20-10*math.Pow(0.75, float64(n)), 0.01, "first-order lag")
	}
}

// Sun warms bare ground above the air: (0.8 Rs - 14) / 20 of half the range.
func TestSunWarmsBareSoil(t *testing.T) {
	days := make([]Day, 60)
	for i := range days {
		days[i] = Day{TmaxC: 26, TminC: 14, RadMJ: 25}
	}
	soil := SoilC(days, 170, seattle)
	within(t, "soil under strong sun", soil[59], 20+0.3*6, 0.01, "EPIC and SWAT bare soil, from memory")
}

func TestSoilThroughTheYear(t *testing.T) {
	rec := seattleRecord(t)
	soil := SoilC(rec.Days, 1, seattle)
	for i, s := range soil {
		if !(s > -15 && s < 35) {
			t.Fatalf("day %d: soil %v °C", i, s)
		}
	}
	if got := SoilC(nil, 1, seattle); len(got) != 0 {
		t.Errorf("no days give %v", got)
	}
	// The soil swings less than the air from day to day.
	air, ground := 0.0, 0.0
	for i := 1; i < len(soil); i++ {
		air += math.Abs(rec.Days[i].TmaxC + rec.Days[i].TminC - rec.Days[i-1].TmaxC - rec.Days[i-1].TminC)
		ground += 2 * math.Abs(soil[i]-soil[i-1])
	}
	if ground > air/2 {
		t.Errorf("soil changes by %.0f, air by %.0f: want less than half", ground, air)
	}
}

func TestMeanYearAndRadiation(t *testing.T) {
	rec := seattleRecord(t)
	rad, ok := MeanRad(rec, nil, seattle)
	if !ok {
		t.Fatal("no mean radiation from four years")
	}
	var sum, n [12]float64
	for i, d := range rec.Days {
		m := int((rec.Start + calDay(i)).Month()) - 1
		sum[m], n[m] = sum[m]+d.RadMJ, n[m]+1
	}
	for m := range rad {
		within(t, "mean radiation, ratio", rad[m]*n[m]/sum[m], 1, 0.06, "the record's own days")
	}
	// Measured long-term means at Seattle: about 3 MJ in December and 22 in
	// July; from memory.
	within(t, "December", rad[11], 3, 1, "from memory")
	within(t, "July", rad[6], 22, 2, "from memory")
	days, _ := MeanYear(rec, nil, seattle)
	for i, d := range days {
		if why := insane(d); why != "" || d.TmaxC <= d.TminC {
			t.Fatalf("mean day %d: %s %+v", i+1, why, d)
		}
	}
}
