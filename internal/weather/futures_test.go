package weather

import (
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

// climateStats is what the generator is compared by.
type climateStats struct {
	tx, tn, sdTx, sdTn     [4]float64 // by season, December first
	wet                    [4]float64
	follow                 [2]float64 // autocorrelation over a day of tx and tn about the mean year
	rainMM                 float64    // a year
	heavy                  float64    // mm, 99 % of wet days bring less
	one, week              float64    // share of wet spells of one day, of seven and more
	coldest, last, first   []float64
	days, spells, lastDays int
}

// statsOf measures runs of days against the mean year.
func statsOf(mean [yearDays]Day, fs []Future) (s climateStats) {
	var n [4]float64
	var lag, square [2]float64
	spells := map[string]int{}
	var falls []float64
	for _, f := range fs {
		var before [2]float64
		spell, cold := 0, math.Inf(1)
		for i, d := range f.Days {
			day := f.Start + cal.Day(i)
			q, m := int(day.Month())%12/3, mean[day.YearDay()-1]
			a := [2]float64{d.TmaxC - m.TmaxC, d.TminC - m.TminC}
			n[q]++
			s.days++
			s.tx[q], s.tn[q] = s.tx[q]+d.TmaxC, s.tn[q]+d.TminC
			s.sdTx[q], s.sdTn[q] = s.sdTx[q]+a[0]*a[0], s.sdTn[q]+a[1]*a[1]
			s.rainMM += d.RainMM
			if i > 0 {
				for k := range a {
					lag[k], square[k] = lag[k]+a[k]*before[k], square[k]+a[k]*a[k]
				}
			}
			before, cold = a, min(cold, d.TminC)
			if d.RainMM >= wetMM {
				s.wet[q]++
				falls = append(falls, d.RainMM)
				spell++
				continue
			}
			if spell > 0 {
				spells["all"]++
				spells["one"] += index(spell == 1)
				spells["week"] += index(spell >= 7)
			}
			spell = 0
		}
		s.coldest = append(s.coldest, cold)
		for _, y := range FrostYears(f.Start, f.Days, 0, false) {
			if y.HasLast {
				s.last = append(s.last, float64(y.LastSpring.YearDay()))
			}
			if y.HasFirst {
				s.first = append(s.first, float64(y.FirstAutumn.YearDay()))
			}
		}
	}
	for q := range n {
		s.tx[q], s.tn[q], s.wet[q] = s.tx[q]/n[q], s.tn[q]/n[q], s.wet[q]/n[q]
		s.sdTx[q], s.sdTn[q] = math.Sqrt(s.sdTx[q]/n[q]), math.Sqrt(s.sdTn[q]/n[q])
	}
	s.follow = [2]float64{lag[0] / square[0], lag[1] / square[1]}
	s.heavy, _ = Quantile(falls, 0.99, 7)
	s.rainMM *= 365.25 / float64(s.days)
	s.one, s.week = float64(spells["one"])/float64(spells["all"]), float64(spells["week"])/float64(spells["all"])
	return s
}

// TestGeneratorAgainstRecord compares 200 generated years with the four real
// ones. Four years are few, so tolerances hold their own scatter: the standard
// error of a season's mean over four years is near 0.7 °C, of its spread near
// a tenth, of a season's wet share 0.05.
func TestGeneratorAgainstRecord(t *testing.T) {
	rec := seattleRecord(t)
	mean, ok := MeanYear(rec, nil, seattle)
	if !ok {
		t.Fatal("four years do not cover the year")
	}
	var years []Future
	for y := 2012; y <= 2015; y++ {
		at := int(cal.Of(y, 1, 1) - rec.Start)
		years = append(years, Future{Start: cal.Of(y, 1, 1), Days: rec.Days[at : at+365]})
	}
	set := Make(rec, nil, seattle, cal.Of(2022, 1, 1), Ask{Days: 365, N: 200, Seed: 7})
	real, made := statsOf(mean, years), statsOf(mean, set.Futures)
	const from = "NOAA record of Seattle, 2012 to 2015"
	for q, season := range []string{"winter", "spring", "summer", "autumn"} {
		within(t, season+" mean tmax", made.tx[q], real.tx[q], 0.5, from)
		within(t, season+" mean tmin", made.tn[q], real.tn[q], 0.5, from)
		within(t, season+" spread of tmax, ratio", made.sdTx[q]/real.sdTx[q], 1.03, 0.12, from)
		within(t, season+" spread of tmin, ratio", made.sdTn[q]/real.sdTn[q], 1.03, 0.12, from)
		within(t, season+" wet days", made.wet[q], real.wet[q], 0.04, from)
	}
	within(t, "autocorrelation of tmax", made.follow[0], real.follow[0], 0.05, from)
	within(t, "autocorrelation of tmin", made.follow[1], real.follow[1], 0.05, from)
	within(t, "yearly rain, ratio", made.rainMM/real.rainMM, 1, 0.05, from)
	within(t, "heaviest rain in a hundred wet days, ratio", made.heavy/real.heavy, 1, 0.2, from)
	within(t, "wet spells of one day", made.one, real.one, 0.08, from)
	within(t, "wet spells of a week and more", made.week, real.week, 0.04, from)
	bracket(t, "coldest night", made.coldest, real.coldest)
	bracket(t, "last frost", made.last, real.last)
	bracket(t, "first frost", made.first, real.first)
	// The middle of the dates must agree, not only hold them: half the range
	// of the four real years.
	within(t, "median last frost", median(made.last), median(real.last), 12, from)
	within(t, "median first frost", median(made.first), median(real.first), 8, from)
	within(t, "median coldest night", median(made.coldest), median(real.coldest), 1.5, from)
}

func median(vs []float64) float64 {
	q, _ := Quantile(vs, 0.5, 7)
	return q
}

// bracket wants every real value inside the generated 2 to 98 %, and the real
// range to be at least a quarter of the generated four in five: under a normal
// law four years fall closer together than that about once in fifty times.
func bracket(t *testing.T, what string, made, real []float64) {
	t.Helper()
	low, _ := Quantile(made, 0.02, 7)
	high, _ := Quantile(made, 0.98, 7)
	s := Summarise(real)
	if s.Count == 0 || s.Min < low || s.Max > high {
		t.Errorf("%s: real %v to %v, generated 2 to 98 %%: %.1f to %.1f", what, s.Min, s.Max, low, high)
	}
	q10, _ := Quantile(made, 0.1, 7)
	q90, _ := Quantile(made, 0.9, 7)
	if s.Max-s.Min < (q90-q10)/4 {
		t.Errorf("%s: generated four in five span %.1f, over four times the real range %.1f", what, q90-q10, s.Max-s.Min)
	}
}

// normalsOf makes monthly normals of a record.
func normalsOf(rec *Record) *Normals {
	n := &Normals{Name: "normals of " + rec.Name, Site: rec.Site}
	var days [12]float64
	for i, d := range rec.Days {
		m := int((rec.Start + cal.Day(i)).Month()) - 1
		days[m]++
		n.TmaxC[m] += d.TmaxC
		n.TminC[m] += d.TminC
		n.RainMM[m] += d.RainMM * 365.25 / float64(len(rec.Days))
	}
	for m := range days {
		n.TmaxC[m] /= days[m]
		n.TminC[m] /= days[m]
	}
	return n
}

// From normals alone the same place must come out roughly: means kept, spread
// within a quarter by season, frost dates within what growth trials found.
func TestNormalsAgainstRecord(t *testing.T) {
	rec := seattleRecord(t)
	norm := normalsOf(rec)
	mean, _ := MeanYear(nil, norm, seattle)
	year := []Future{{Start: rec.Start, Days: rec.Days}}
	set := Make(nil, norm, seattle, cal.Of(2022, 1, 1), Ask{Days: 365, N: 200, Seed: 7})
	real, made := statsOf(mean, year), statsOf(mean, set.Futures)
	const from = "NOAA record of Seattle, 2012 to 2015, by its monthly means"
	for q, season := range []string{"winter", "spring", "summer", "autumn"} {
		within(t, season+" mean tmax", made.tx[q], real.tx[q], 0.3, from)
		within(t, season+" mean tmin", made.tn[q], real.tn[q], 0.3, from)
		within(t, season+" spread of tmax, ratio", made.sdTx[q]/real.sdTx[q], 1, 0.25, from)
		within(t, season+" spread of tmin, ratio", made.sdTn[q]/real.sdTn[q], 1, 0.25, from)
		within(t, season+" wet days", made.wet[q], real.wet[q], 0.12, from)
	}
	within(t, "yearly rain, ratio", made.rainMM/real.rainMM, 1, 0.05, from)
	within(t, "median last frost", median(made.last), median(real.last), 20, from)
	within(t, "median first frost", median(made.first), median(real.first), 15, from)
}

// The same place south of the equator, half a year on, has the same climate.
func TestMirroredNormals(t *testing.T) {
	north := normalsOf(seattleRecord(t))
	south := &Normals{Name: "mirrored"}
	for m := range south.TmaxC {
		o := (m + 6) % 12
		south.TmaxC[m], south.TminC[m], south.RainMM[m] = north.TmaxC[o], north.TminC[o], north.RainMM[o]
	}
	below := seattle
	below.LatDeg = -below.LatDeg
	ask := Ask{Days: 365, N: 60, Seed: 3}
	a := monthsOf(Make(nil, north, seattle, cal.Of(2021, 1, 1), ask).Futures)
	b := monthsOf(Make(nil, south, below, cal.Of(2021, 7, 1), ask).Futures)
	for m := range a {
		o := b[(m+6)%12]
		name := fmt.Sprintf("month %d ", m+1)
		within(t, name+"tmax", o.TmaxC, a[m].TmaxC, 0.4, "the northern half")
		within(t, name+"tmin", o.TminC, a[m].TminC, 0.4, "the northern half")
		within(t, name+"rain", o.RainMM, a[m].RainMM, 0.2+0.15*a[m].RainMM, "the northern half")
		// The earth is nearest to the sun in January: up to 7 % between halves.
		within(t, name+"radiation", o.RadMJ/a[m].RadMJ, 1, 0.10, "the northern half")
	}
}

func monthsOf(fs []Future) (mean [12]Day) {
	var n [12]float64
	for _, f := range fs {
		for i, d := range f.Days {
			m := int((f.Start + cal.Day(i)).Month()) - 1
			n[m]++
			mean[m].TmaxC += d.TmaxC
			mean[m].TminC += d.TminC
			mean[m].RainMM += d.RainMM
			mean[m].RadMJ += d.RadMJ
		}
	}
	for m := range mean {
		mean[m] = Day{TmaxC: mean[m].TmaxC / n[m], TminC: mean[m].TminC / n[m], RainMM: mean[m].RainMM / n[m], RadMJ: mean[m].RadMJ / n[m]}
	}
	return mean
}

func TestFuturesReproduce(t *testing.T) {
	rec := seattleRecord(t)
	from := cal.Of(2015, 4, 13)
	ask := Ask{Past: 200, Days: 500, N: 20, Seed: 11}
	a, b := Make(rec, nil, seattle, from, ask), Make(rec, nil, seattle, from, ask)
	if !reflect.DeepEqual(a, b) {
		t.Fatal("the same arguments give other futures")
	}
	few := ask
	few.N = 7
	if c := Make(rec, nil, seattle, from, few); !reflect.DeepEqual(c.Futures, a.Futures[:7]) {
		t.Error("future k depends on how many there are")
	}
	other := ask
	other.Seed++
	if c := Make(rec, nil, seattle, from, other); reflect.DeepEqual(c.Futures[0].Days, a.Futures[0].Days) {
		t.Error("another seed gives the same future")
	}
	if a.Seed != 11 || a.Words == "" {
		t.Errorf("seed %d, words %q", a.Seed, a.Words)
	}
}

// What has happened is shared and true; what has not is unknown to all, even
// to the fit.
func TestNothingLeaksFromTheFuture(t *testing.T) {
	rec := seattleRecord(t)
	from := cal.Of(2014, 4, 14)
	ask := Ask{Past: 150, Days: 400, N: 6, Seed: 5}
	a := Make(rec, nil, seattle, from, ask)
	changed := *rec
	changed.Days = append([]Day(nil), rec.Days...)
	for d := from; d < from+cal.Day(ask.Days); d++ {
		changed.Days[d-rec.Start] = Day{TmaxC: 40, TminC: 30, RainMM: 50, WindMS: 9, RadMJ: 1}
	}
	if b := Make(&changed, nil, seattle, from, ask); !reflect.DeepEqual(a, b) {
		t.Error("days of the record inside the plan change the futures")
	}
	for k, f := range a.Futures {
		if f.Start != from-150 || len(f.Days) != 550 {
			t.Fatalf("future %d starts %s with %d days", k, f.Start, len(f.Days))
		}
		for i := range 150 {
			if want, _ := rec.At(f.Start + cal.Day(i)); f.Days[i] != want {
				t.Fatalf("future %d: %s is not as recorded", k, f.Start+cal.Day(i))
			}
		}
	}
	if !strings.Contains(a.Words, "The 150 days before the plan are as recorded.") {
		t.Errorf("words: %s", a.Words)
	}
	late := Make(rec, nil, seattle, cal.Of(2016, 1, 31), ask)
	if !strings.Contains(late.Words, "Of the 150 days before the plan, 120 are as recorded") {
		t.Errorf("words: %s", late.Words)
	}
}

// Twenty futures hold the spread of two hundred: warm and cold years come
// evenly because offsets are stratified and mirrored.
func TestTwentyFuturesHoldTheSpread(t *testing.T) {
	rec := seattleRecord(t)
	from := cal.Of(2022, 1, 1)
	means := func(n int, seed uint64) []float64 {
		var out []float64
		for _, f := range Make(rec, nil, seattle, from, Ask{Days: 365, N: n, Seed: seed}).Futures {
			sum := 0.0
			for _, d := range f.Days {
				sum += (d.TmaxC + d.TminC) / 2
			}
			out = append(out, sum/float64(len(f.Days)))
		}
		return out
	}
	spread := func(vs []float64) (mean, sd float64) {
		m := Summarise(vs).Mean
		for _, v := range vs {
			sd += (v - m) * (v - m)
		}
		return m, math.Sqrt(sd / float64(len(vs)))
	}
	mean, sd := spread(means(400, 1))
	for seed := uint64(1); seed <= 10; seed++ {
		m, s := spread(means(20, seed))
		// Twenty independent years would scatter by sd/sqrt(20) = 0.22 sd.
		within(t, fmt.Sprintf("seed %d: mean of 20", seed), m, mean, 0.15*sd, "400 futures")
		within(t, fmt.Sprintf("seed %d: spread of 20, ratio", seed), s/sd, 1, 0.25, "400 futures")
	}
}

func TestGeneratedDaysAreSound(t *testing.T) {
	rec := seattleRecord(t)
	for _, site := range []Site{seattle, {LatDeg: 70}, {LatDeg: -45}, {LatDeg: 0, ElevM: 3000}} {
		for _, norm := range []*Normals{normalsOf(rec), {Name: "frozen"}, {Name: "hot", TmaxC: all(40), TminC: all(25)}, {Name: "wet", TmaxC: all(30), TminC: all(24), RainMM: all(900)}} {
			for _, f := range Make(nil, norm, site, cal.Of(2024, 2, 29), Ask{Past: 20, Days: 800, N: 4, Seed: 2}).Futures {
				for i, d := range f.Days {
					if why := insane(d); why != "" {
						t.Fatalf("%s at %v, day %d: %s: %+v", norm.Name, site.LatDeg, i, why, d)
					}
					if d.TmaxC-d.TminC < leastRangeC-1e-9 {
						t.Fatalf("%s, day %d: range %.2f °C", norm.Name, i, d.TmaxC-d.TminC)
					}
				}
			}
		}
	}
}

func all(v float64) (a [12]float64) {
	for i := range a {
		a[i] = v
	}
	return a
}

// longRecord is made up: thirty generated years laid end to end.
func longRecord(t *testing.T, years int) *Record {
	t.Helper()
	short := seattleRecord(t)
	fs, _ := Futures(short, nil, seattle, cal.Of(1980, 1, 1), years*365+years/4, 1, 9)
	return &Record{Name: "made up", Site: seattle, Start: fs[0].Start, Days: fs[0].Days}
}

func TestLongRecordIsSampled(t *testing.T) {
	rec := longRecord(t, 30)
	from := cal.Of(1995, 4, 10)
	ask := Ask{Past: 100, Days: 400, N: 20, Seed: 4}
	set := Make(rec, nil, seattle, from, ask)
	seen := map[string]bool{}
	for k, f := range set.Futures {
		if seen[f.From] {
			t.Errorf("future %d repeats: %s", k, f.From)
		}
		seen[f.From] = true
		if strings.Contains(f.From, "1995") || strings.Contains(f.From, "1994") || strings.Contains(f.From, "1996") {
			t.Errorf("future %d touches the planned span: %s", k, f.From)
		}
		found := false
		for y := 1980; y < 2010 && !found; y++ {
			at := int(cal.Of(y, 4, 10) - rec.Start)
			found = at+400 <= len(rec.Days) && reflect.DeepEqual(f.Days[100:], rec.Days[at:at+400])
		}
		if !found {
			t.Errorf("future %d is no stretch of the record from 10 April", k)
		}
	}
	few := ask
	few.N = 5
	if !reflect.DeepEqual(Make(rec, nil, seattle, from, few).Futures, set.Futures[:5]) {
		t.Error("future k depends on how many there are")
	}
	if !strings.Contains(set.Words, "real years") {
		t.Errorf("words: %s", set.Words)
	}
}

func TestShortRecordSaysSo(t *testing.T) {
	rec := seattleRecord(t)
	short := &Record{Name: "half a year", Site: seattle, Start: rec.Start, Days: rec.Days[:180]}
	set := Make(short, nil, seattle, cal.Of(2012, 7, 1), Ask{Days: 100, N: 20, Seed: 1})
	if len(set.Futures) != 0 || !strings.Contains(set.Words, "too short") {
		t.Errorf("%d futures from half a year; words: %s", len(set.Futures), set.Words)
	}
}

// Words a gardener reads: sentences of twenty words at most.
func TestWordsAreShort(t *testing.T) {
	rec := seattleRecord(t)
	ask := Ask{Past: 60, Days: 300, N: 4, Seed: 1}
	for _, w := range []string{
		Make(rec, nil, seattle, cal.Of(2015, 4, 13), ask).Words,
		Make(rec, nil, seattle, cal.Of(2019, 4, 13), ask).Words,
		Make(nil, normalsOf(rec), seattle, cal.Of(2019, 4, 13), ask).Words,
		Make(longRecord(t, 30), nil, seattle, cal.Of(1995, 4, 10), ask).Words,
	} {
		for _, s := range strings.Split(w, ". ") {
			if n := len(strings.Fields(s)); n > 20 {
				t.Errorf("%d words: %s", n, s)
			}
		}
	}
}

// TestHotMonthsStrayLittle: in a month whose highest pass 33 °C on average days
// stray as [GWGEN] found over the world's stations, 2.5 °C about the mean of dry
// days, and rain and dry days lie further apart by some of a degree. A summer
// of 26 °C keeps the spread that its daily range gives.
func TestHotMonthsStrayLittle(t *testing.T) {
	hot := &Normals{Name: "hot summer"}
	for m := range hot.TmaxC {
		w := math.Sin(2 * math.Pi * (float64(m) - 3) / 12) // warmest in July
		hot.TmaxC[m], hot.TminC[m], hot.RainMM[m] = 26+10*w, 14+9*w, 70
	}
	site := Site{LatDeg: 31, LonDeg: -96, ElevM: 90}
	set := Make(nil, hot, site, cal.Of(2022, 7, 1), Ask{Days: 31, N: 400, Seed: 5})
	var sum, squares, n float64
	for _, f := range set.Futures {
		for _, d := range f.Days {
			sum, squares, n = sum+d.TmaxC, squares+d.TmaxC*d.TmaxC, n+1
		}
	}
	within(t, "spread of July's highest at a mean of 36 °C", math.Sqrt(squares/n-sum/n*sum/n), 2.5, 0.7, "Sommer and Kaplan 2017, dry days")
	if sd := hotDaySpread(4.2, 26); sd != 4.2 {
		t.Errorf("a summer of 26 °C strays %.2f °C, want the 4.2 of its range", sd)
	}
	if at, under := hotDaySpread(4.2, 35), hotDaySpread(4.2, 34.999); math.Abs(at-under) > 0.1 {
		t.Errorf("the spread jumps from %.2f to %.2f °C at a mean of 35", under, at)
	}
}
