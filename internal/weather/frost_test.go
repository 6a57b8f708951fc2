package weather

import (
	"fmt"
	"math"
	"testing"

	"bedweek/internal/cal"
)

func TestFrostYearsOfSeattle(t *testing.T) {
	rec := seattleRecord(t)
	const from = "file read whole with numpy, frost_probability.json"
	years := FrostYears(rec.Start, rec.Days, -2.2, false)
	if len(years) != 4 {
		t.Fatalf("%d years, want 4", len(years))
	}
	if years[0].HasFirst {
		t.Errorf("2012 has an autumn frost of -2.2 °C on %s, want none (%s)", years[0].FirstAutumn, from)
	}
	if _, ok := years[0].FreeDays(); ok {
		t.Error("2012 has frost-free days without an autumn frost")
	}
	if n, _ := years[1].FreeDays(); n != 321 {
		t.Errorf("2013 has %d frost-free days, want 321 (%s)", n, from)
	}
	// A frost in the last days of July is still one of spring.
	july := FrostYears(cal.Of(2001, 1, 1), append(make([]Day, 211), Day{TminC: -5}), -1, false)
	if july[0].LastSpring != cal.Of(2001, 7, 31) || july[0].HasFirst {
		t.Errorf("frost on 31 July: %+v, want the last of spring", july[0])
	}
	winters := FrostWinters(rec.Start, rec.Days, -2.2, false)
	var got []string
	for _, w := range winters {
		if w.Whole {
			got = append(got, w.First.String())
		}
	}
	if want := "[2013-01-01 2013-12-05 2014-11-29]"; fmt.Sprint(got) != want {
		t.Errorf("first frosts of whole winters %v, want %s (%s)", got, want, from)
	}
}

// A southern record, six months out of step, gives the same frosts.
func TestFrostSouth(t *testing.T) {
	start := cal.Of(2001, 1, 1)
	days := make([]Day, 3*365)
	for i := range days {
		days[i].TminC = 10
	}
	frost := func(d cal.Day) { days[d-start].TminC = -1 }
	frost(cal.Of(2001, 9, 20))
	frost(cal.Of(2002, 5, 3))
	frost(cal.Of(2002, 7, 1))
	years := FrostYears(start, days, 0, true)
	var y FrostYear
	for _, v := range years {
		if v.Year == 2001 {
			y = v
		}
	}
	if y.LastSpring != cal.Of(2001, 9, 20) || y.FirstAutumn != cal.Of(2002, 5, 3) || !y.Whole {
		t.Errorf("growing year 2001 = %+v, want 20 September 2001 to 3 May 2002", y)
	}
	for _, w := range FrostWinters(start, days, 0, true) {
		if w.From.Year() == 2002 && (w.First != cal.Of(2002, 5, 3) || w.Last != cal.Of(2002, 7, 1) || w.Days != 2) {
			t.Errorf("winter 2002 = %+v", w)
		}
	}
}

func TestQuantileTypes(t *testing.T) {
	vs := []float64{102, 95, 110, 88, 120, 99, 105, 93, 115, 108, 101, 97, 90, 112, 118, 104, 96, 85, 107, 100, 111, 94, 98, 103, 116, 91, 106, 109, 87, 113}
	for _, tt := range []struct {
		kind   int
		p, day float64
	}{{5, 0.1, 89}, {5, 0.9, 115.5}, {6, 0.1, 88.2}, {6, 0.9, 115.9}, {7, 0.1, 89.8}, {7, 0.5, 102.5}, {7, 0, 85}, {6, 1, 120}} {
		got, ok := Quantile(vs, tt.p, tt.kind)
		if !ok {
			t.Fatalf("Quantile(%v, type %d) has no answer", tt.p, tt.kind)
		}
		within(t, fmt.Sprintf("quantile %v type %d", tt.p, tt.kind), got, tt.day, 0.01, "Hyndman and Fan types by numpy; the ends by definition")
	}
	for _, bad := range []struct {
		vs   []float64
		p    float64
		kind int
	}{{nil, 0.5, 7}, {vs, 1.5, 7}, {vs, math.NaN(), 7}, {vs, 0.5, 9}} {
		if _, ok := Quantile(bad.vs, bad.p, bad.kind); ok {
			t.Errorf("Quantile(%d values, %v, type %d) has an answer", len(bad.vs), bad.p, bad.kind)
		}
	}
}

func TestYearsWithoutFrostAreNotLost(t *testing.T) {
	var e Events
	for _, d := range []int{45, 0, 60, 52, 0, 38, 71, 49, 0, 55, 66, 41, 0, 58, 47, 63, 35, 0, 50, 69} {
		e.Add(d, d > 0)
	}
	within(t, "share without", e.ShareWithout(), 0.25, 1e-9, "5 of 20")
	day, _ := e.DayWithRisk(0.1, 7)
	within(t, "day with one risk in ten after it", day, 66.4, 0.01, "frost_probability.json, record_mild_20")
	if _, ok := e.DayWithRisk(0.8, 7); ok {
		t.Error("a risk of 0.8 has a day although only 15 of 20 years had frost")
	}
	if q, _ := FreezeLevel(0.9, Spring); math.Abs(q-0.1) > 1e-9 {
		t.Errorf("spring level 0.9 stands for quantile %v, want 0.1 (NOAA)", q)
	}
}

func TestFrostChanceCountsFutures(t *testing.T) {
	day := cal.Of(2015, 4, 1)
	cold, warm := Day{TminC: -1}, Day{TminC: 5}
	fs := []Future{
		{Start: day, Days: []Day{warm, cold, warm}},
		{Start: day, Days: []Day{warm, warm, warm}},
		{Start: day + 100, Days: []Day{cold}},
	}
	if n, of := FrostChance(fs, 0, day, day+2); n != 1 || of != 2 {
		t.Errorf("frost in %d of %d futures, want 1 of 2", n, of)
	}
	if n, _ := FrostChance(fs, 0, day+2, day+2); n != 0 {
		t.Errorf("frost on the third day in %d futures, want none", n)
	}
	first, last, with := FrostDates(fs[:2], 0, day, day+2)
	if with != 1 || first.Likely != day+1 || last.Likely != day+1 {
		t.Errorf("frost dates %v, %v in %d futures, want %s in 1", first, last, with, day+1)
	}
}
