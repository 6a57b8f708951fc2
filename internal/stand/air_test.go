package stand

import (
	"math"
	"math/rand/v2"
	"os"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Test places are of our own making: a sine year of a maritime 47° N, its
// mirror in the south, and the real Seattle record of the demo.

const testStart = 2014

// monday is the first Monday of 2014's plan, in the middle of a winter.
func monday(year int) cal.Day { return cal.Of(year, time.January, 6).Monday() }

// extraMJ is the sun's daily energy above the air, MJ/m2, [FAO56] eq. 21.
func extraMJ(latDeg float64, yearDay int) float64 {
	phi := latDeg * math.Pi / 180
	x := 2 * math.Pi * float64(yearDay) / 365
	dr, d := 1+0.033*math.Cos(x), 0.409*math.Sin(x-1.39)
	ws := math.Acos(math.Max(-1, math.Min(1, -math.Tan(phi)*math.Tan(d))))
	return 37.586 * dr * (ws*math.Sin(phi)*math.Sin(d) + math.Cos(phi)*math.Cos(d)*math.Sin(ws))
}

// sineFutures draws n noisy sine years from start on.
func sineFutures(n, days int, start cal.Day, latDeg, meanC, halfC float64, seed uint64) []weather.Future {
	out := make([]weather.Future, n)
	for k := range out {
		rng := rand.New(rand.NewPCG(seed, uint64(k)))
		noise, slow := 0.0, rng.NormFloat64()
		out[k] = weather.Future{Start: start, Days: make([]weather.Day, days)}
		for i := range days {
			yd := (start + cal.Day(i)).YearDay()
			if latDeg < 0 {
				yd = (yd + 182) % 365
			}
			wave := math.Cos(2 * math.Pi * float64(yd-203) / 365)
			noise = 0.72*noise + 2.2*rng.NormFloat64()*math.Sqrt(1-0.72*0.72)
			slow = 0.97*slow + math.Sqrt(1-0.97*0.97)*rng.NormFloat64()
			mean := meanC + halfC*wave + noise + slow
			swing := (9 + 3*wave) / 2 * (0.8 + 0.4*rng.Float64())
			out[k].Days[i] = weather.Day{TmaxC: mean + swing, TminC: mean - swing, RainMM: 2, WindMS: 2,
				RadMJ: 0.16 * math.Sqrt(2*swing) * extraMJ(math.Abs(latDeg), yd)}
		}
	}
	return out
}

func openBed(lat float64) *Env {
	e := &Env{Site: weather.Site{LatDeg: lat}, DepthM: 0.3, VolumeL: 300, AreaM2: 1, Weeks: 60, Net: 1}
	for m := range e.Light {
		e.Light[m] = 1
		e.SunH[m] = float64(dayHours(weather.Site{LatDeg: lat})[15+30*m]) * 0.95
	}
	return e
}

const testDays = 60*7 + 75*7

func maritime(n int) *Env {
	e := openBed(47)
	e.Start = monday(testStart)
	e.Futures = sineFutures(n, testDays, e.Start, 47, 12, 7, 1)
	return e
}

// seattle draws n futures from the demo's real record, so that none of its
// days is known beforehand.
func seattle(tb testing.TB, n int) *Env {
	tb.Helper()
	f, err := os.Open("../../demo/seattle-weather.csv")
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	site := weather.Site{LatDeg: 47.45, LonDeg: -122.31, ElevM: 130}
	rec, faults := weather.Read("seattle", f, site)
	if rec == nil {
		tb.Fatal(faults)
	}
	e := openBed(47.45)
	e.Site = site
	e.Start = cal.Of(2018, time.January, 1)
	set := weather.Make(rec, nil, site, e.Start, weather.Ask{Days: testDays, N: n, Seed: 7})
	if len(set.Futures) != n {
		tb.Fatalf("want %d futures, got %d: %s", n, len(set.Futures), set.Words)
	}
	e.Futures = set.Futures
	return e
}
