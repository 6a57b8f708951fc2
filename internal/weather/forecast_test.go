package weather

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

func some(x float64) *float64 { return &x }

// forecastNormals are invented: a mild coast.
func forecastNormals() *Normals {
	n := &Normals{Name: "invented", Site: Site{LatDeg: 47.6}}
	for m := range 12 {
		c := math.Cos(2 * math.Pi * float64(m-6) / 12)
		n.TmaxC[m], n.TminC[m], n.RainMM[m] = 15+9*c, 7+5*c, 60
	}
	return n
}

func stats(fs []Future, d cal.Day, of func(Day) float64) (mean, sd float64) {
	i := int(d - fs[0].Start)
	for _, f := range fs {
		mean += of(f.Days[i]) / float64(len(fs))
	}
	for _, f := range fs {
		x := of(f.Days[i]) - mean
		sd += x * x / float64(len(fs))
	}
	return mean, math.Sqrt(sd)
}

// The next days have the forecast's mean and its usual error, the past is left
// alone, and a fortnight later nothing of it is left.
func TestFuturesFollowAForecast(t *testing.T) {
	n, from := forecastNormals(), cal.Of(2016, 5, 2)
	site := n.Site
	ask := Ask{Past: 30, Days: 60, N: 20, Seed: 5}
	plain := Make(nil, n, site, from, ask)
	fc := &Forecast{Source: "invented", Issued: from + 2}
	for k := range cal.Day(14) {
		fc.Days = append(fc.Days, FarDay{Day: from + 2 + k, TmaxC: some(31), TminC: some(17), RainMM: some(0), RainChance: some(0.05), WindMS: some(1.5)})
	}
	ask.Forecast = fc
	with := Make(nil, n, site, from, ask)
	tmax := func(d Day) float64 { return d.TmaxC }
	for lead := range cal.Day(MostFarDays) {
		mean, sd := stats(with.Futures, from+2+lead, tmax)
		if math.Abs(mean-31) > 0.3 || math.Abs(sd-errorC(int(lead))) > 0.8 {
			t.Errorf("lead %d: mean %.2f spread %.2f, want 31 and about %.2f", lead, mean, sd, errorC(int(lead)))
		}
		wet := 0
		for _, f := range with.Futures {
			if f.Days[int(from+2+lead-f.Start)].RainMM > 0 {
				wet++
			}
		}
		if wet != 1 {
			t.Errorf("lead %d: rain in %d of 20, want the chance of 5 %%", lead, wet)
		}
	}
	for k, f := range with.Futures {
		if !reflect.DeepEqual(f.Days[:32], plain.Futures[k].Days[:32]) {
			t.Fatalf("future %d: days before the forecast changed", k)
		}
		if !reflect.DeepEqual(f.Days[55:], plain.Futures[k].Days[55:]) {
			t.Fatalf("future %d: a fortnight after its last day the forecast still counts", k)
		}
		for i, d := range f.Days {
			if !(d.TmaxC > d.TminC) || d.RainMM < 0 || d.WindMS <= 0 || d.RadMJ < 0 || math.IsNaN(d.RadMJ+d.TmaxC+d.RainMM+d.WindMS) {
				t.Fatalf("future %d day %d: %+v", k, i, d)
			}
		}
	}
	if !strings.Contains(with.Words, "invented") || strings.Contains(plain.Words, "forecast") {
		t.Errorf("words: %q", with.Words)
	}
	if again := Make(nil, n, site, from, ask); !reflect.DeepEqual(with, again) {
		t.Error("asked twice, it differs")
	}
}

// A forecast with holes or nonsense in it leaves days as they were.
func TestForecastWithHoles(t *testing.T) {
	n, from := forecastNormals(), cal.Of(2016, 5, 2)
	ask := Ask{Days: 40, N: 20, Seed: 5}
	plain := Make(nil, n, n.Site, from, ask)
	for name, days := range map[string][]FarDay{
		"none":     nil,
		"all nil":  {{Day: from}, {Day: from + 1}},
		"long ago": {{Day: from - 9, TmaxC: some(40), TminC: some(30)}},
		"far off":  {{Day: from + 900, TmaxC: some(40), TminC: some(30)}},
		"twice":    {{Day: from, RainMM: nil}, {Day: from}},
	} {
		got := Follow(plain.Futures, &Forecast{Issued: from, Days: days}, n.Site, from)
		for k := range got {
			for i := range got[k].Days {
				a, b := got[k].Days[i], plain.Futures[k].Days[i]
				if a.TmaxC != b.TmaxC || a.TminC != b.TminC || a.RainMM != b.RainMM || a.WindMS != b.WindMS {
					t.Fatalf("%s: future %d day %d: %+v, was %+v", name, k, i, a, b)
				}
			}
		}
	}
	nan := []FarDay{{Day: from, TmaxC: some(math.NaN()), RainMM: some(math.NaN()), RainChance: some(7)}}
	for _, f := range Follow(plain.Futures, &Forecast{Issued: from, Days: nan}, n.Site, from) {
		if math.IsNaN(f.Days[0].TmaxC + f.Days[0].RainMM + f.Days[0].RadMJ) {
			t.Fatal("a forecast that is no number came through")
		}
	}
}
