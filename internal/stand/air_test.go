package stand

import (
	"encoding/csv"
	"math"
	"math/rand/v2"
	"os"
	"strconv"
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

// seattle makes n futures by joining the record's years, shifted so that
// every year serves in every place.
func seattle(tb testing.TB, n int) *Env {
	tb.Helper()
	days := seattleDays(tb)
	e := openBed(47.45)
	e.Start = monday(testStart)
	for k := range n {
		f := weather.Future{Start: e.Start, Days: make([]weather.Day, testDays)}
		for i := range f.Days {
			d := e.Start + cal.Day(i)
			y := 2012 + (k+(d.Year()-testStart)*(1+k/4))%4
			_, m, dd := d.Date()
			if m == time.February && dd == 29 {
				dd = 28
			}
			src := int(cal.Of(y, m, dd) + cal.Day(k/4%5*2-4) - cal.Of(2012, time.January, 1))
			src = max(0, min(src, len(days)-1))
			f.Days[i] = days[src]
		}
		e.Futures = append(e.Futures, f)
	}
	return e
}

func seattleDays(tb testing.TB) []weather.Day {
	tb.Helper()
	f, err := os.Open("../../demo/seattle-weather.csv")
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		tb.Fatal(err)
	}
	num := func(s string) float64 {
		v, err := strconv.ParseFloat(s, 64)
		if err != nil {
			tb.Fatal(err)
		}
		return v
	}
	var out []weather.Day
	for _, r := range rows[1:] {
		d, err := cal.Parse(r[0])
		if err != nil {
			tb.Fatal(err)
		}
		hi, lo := num(r[2]), num(r[3])
		out = append(out, weather.Day{TmaxC: hi, TminC: lo, RainMM: num(r[1]), WindMS: num(r[4]),
			RadMJ: 0.17 * math.Sqrt(math.Max(1, hi-lo)) * extraMJ(47.45, d.YearDay())})
	}
	return out
}
