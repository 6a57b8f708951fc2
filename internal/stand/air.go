package stand

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/sun"
	"bedweek/internal/weather"
)

// Air is what any crop meets in one space: the futures turned into the
// warmth, light, cold and moisture of that space. It is made once per space
// and shared by all crops.
type Air struct {
	env    *Env
	start  cal.Day // first day of the futures
	n      int     // days
	k      int     // futures
	months []uint8 // by day, 0 = January
	dayH   []float32
	sunSum []float32 // running sum of clear-day sun hours, by day

	// By future and day, future-major: index f*n+i.
	tmin, tmax []float32
	soil       []float32 // °C in the seed zone
	soil7      []float32 // mean of this and the last six days
	dli        []float32 // mol/m2/day
	open       []float32 // the same under the open sky
	dliSum     []float32 // running sum, f*(n+1)+i
	wet        []float32 // 1 = moist, 0 = wilted
	hard       []float32 // 0 = soft, 1 = hardened by cool weather
	night10    []float32 // mean of this and the next nine nights, °C
	warm14     []float32 // mean of this and the last thirteen days' highest in the space's shade, °C
	mean28     []float32 // mean of this and the last 27 days in the space's shade, °C
}

const (
	molPerMJ      = 2.06 // mol of photosynthetic light in 1 MJ of sunshine: 45 % of energy at 4.57 µmol/J
	lampDayH      = 16.0 // hours a lamp shelf is lit (common practice)
	hardenBelowC  = 10.0 // daily mean below which plants harden (0 to 10 °C: [HARDEN])
	hardenDays    = 10.0 // days of it for full hardening ([CABHARD])
	softenDays    = 3.0  // days of softenSpanC above it that undo it: a day in growing warmth for cabbage seedlings ([CABHARD]), slower for rape (assumption)
	softenSpanC   = 10.0
	usualRangeC   = 10.0  // daily range, °C, that printed night figures are read with (assumption)
	dayShare      = 0.5   // of the range lies a day's mean above its lowest: what growth goes by ([CUCDAY], [GRIMSTAD93])
	nightShare    = 0.28  // and the mean of the dark hours, which pollen meets (assumption: air cools to sunrise ever more slowly)
	coverHoldMM   = 130.0 // plant-available water in a metre of good medium, mm
	tiredShare    = 0.5   // share of that water left when growth begins to slow
	defaultDepthM = 0.3
	stillMS       = 2.0 // mean wind up to which a night counts as still
	stillEndMS    = 5.0 // and from which hollows and roofs are as cold as the station (assumption)
	cropFactor    = 0.8 // of reference evapotranspiration, a half-grown cover ([FAO56] 0.5-1.1)
)

// NewAir turns the env's futures into the space's own air, light and soil.
// It panics when the futures are missing or of unlike length.
func NewAir(env *Env) *Air {
	if len(env.Futures) == 0 {
		panic("stand: an env needs at least one future")
	}
	a := &Air{env: env, start: env.Futures[0].Start, n: len(env.Futures[0].Days), k: len(env.Futures)}
	for _, f := range env.Futures {
		if f.Start != a.start || len(f.Days) != a.n {
			panic("stand: futures must share their first day and length")
		}
	}
	a.calendar()
	size := a.k * a.n
	for _, s := range []*[]float32{&a.tmin, &a.tmax, &a.soil, &a.soil7, &a.dli, &a.open, &a.wet, &a.hard, &a.night10, &a.warm14, &a.mean28} {
		*s = make([]float32, size)
	}
	a.dliSum = make([]float32, a.k*(a.n+1))
	for f := range env.Futures {
		a.future(f)
	}
	return a
}

func (a *Air) calendar() {
	a.months = make([]uint8, a.n)
	a.dayH = make([]float32, a.n)
	a.sunSum = make([]float32, a.n+1)
	byYear := dayHours(a.env.Site)
	for i := range a.n {
		d := a.start + cal.Day(i)
		a.months[i] = uint8(d.Month() - 1)
		a.dayH[i] = byYear[d.YearDay()-1]
		if a.env.Indoor {
			a.dayH[i] = lampDayH
		}
		a.sunSum[i+1] = a.sunSum[i] + float32(a.env.SunH[a.months[i]])
	}
}

func (a *Air) future(f int) {
	e, days := a.env, a.env.Futures[f].Days
	o := f * a.n
	depth := e.DepthM
	if depth <= 0 {
		depth = defaultDepthM
	}
	hold := coverHoldMM * math.Min(depth, 0.6)
	water, hard := hold, 0.0
	means, highs, nights := make([]float32, a.n), make([]float32, a.n), make([]float32, a.n)
	soil := weather.SoilC(days, a.start.YearDay(), e.Site)
	for i, d := range days {
		lo, hi := d.TminC+e.NightC*clamp01((stillEndMS-d.WindMS)/(stillEndMS-stillMS)), d.TmaxC
		light := e.Light[a.months[i]] * net(e)
		dli := d.RadMJ * molPerMJ * light
		if e.Indoor {
			lo, hi, dli = e.LampC, e.LampC, e.LampDLI
		}
		a.open[o+i] = float32(dli)
		if !e.Indoor {
			a.open[o+i] = float32(d.RadMJ * molPerMJ)
		}
		if hi < lo {
			hi = lo
		}
		mean := (lo + hi) / 2
		sun := math.Min(d.RadMJ*light/15, 1.3)
		seed := soil[i] + e.WarmC*sun
		if e.Indoor {
			seed = e.LampC
		}
		if mean < hardenBelowC {
			hard += 1 / hardenDays
		} else {
			hard -= math.Min(1, (mean-hardenBelowC)/softenSpanC) / softenDays
		}
		hard = math.Max(0, math.Min(1, hard))
		water = math.Min(hold, math.Max(0, water+d.RainMM-cropFactor*weather.ET0MM(d, e.Site, (a.start+cal.Day(i)).YearDay())))
		a.tmin[o+i], a.tmax[o+i] = float32(lo), float32(hi)
		a.soil[o+i], a.dli[o+i] = float32(seed), float32(dli)
		a.hard[o+i] = float32(hard)
		cool := e.shadeC(int(a.months[i]))
		means[i], highs[i], nights[i] = float32(mean-cool/2), float32(hi-cool), float32(a.night(lo, hi))
		a.wet[o+i] = float32(1 - e.Thirst*(1-math.Min(1, water/(tiredShare*hold))))
		s := f*(a.n+1) + i
		a.dliSum[s+1] = a.dliSum[s] + float32(dli)
	}
	rolling(a.night10[o:o+a.n], nights, 0, 10)
	rolling(a.soil7[o:o+a.n], a.soil[o:o+a.n], -6, 1)
	rolling(a.warm14[o:o+a.n], highs, -13, 1)
	rolling(a.mean28[o:o+a.n], means, 1-spellDays, 1)
}

// usualNight is the lowest of a day of usual range whose mean (dayShare), or
// whose dark hours (nightShare), are as warm: printed night figures mean the
// lowest of such days. Down to nights of 10 °C young plants go by the day's mean.
func usualNight(lo, hi, share float64) float64 { return lo + share*(hi-lo-usualRangeC) }

// night is usualNight for growth, and the lamp shelf's own warmth indoors.
func (a *Air) night(lo, hi float64) float64 {
	if a.env.Indoor {
		return lo
	}
	return usualNight(lo, hi, dayShare)
}

// rolling sets out[i] to the mean of in over [i+from, i+to), cut at the ends.
func rolling(out, in []float32, from, to int) {
	for i := range in {
		sum, n := 0.0, 0
		for j := max(0, i+from); j < min(len(in), i+to); j++ {
			sum += float64(in[j])
			n++
		}
		out[i] = float32(sum / float64(n))
	}
}

func net(e *Env) float64 {
	if e.Net <= 0 {
		return 1
	}
	return e.Net
}

// dayHours is the time the sun's upper limb is above the horizon by day of
// the year; 366 days. It is reckoned every sunStep days and joined by straight
// lines, within a minute at middle latitudes; years differ by under a minute.
func dayHours(site weather.Site) [366]float32 {
	var out [366]float32
	place := sun.Place{LatDeg: site.LatDeg, LonDeg: site.LonDeg, ElevM: site.ElevM}
	at := func(i int) float64 { return sun.Of(cal.Of(leapYear, 1, 1)+cal.Day(i), place, sun.UpperLimb).LengthH }
	a := at(0)
	for from := 0; from < len(out); from += sunStep {
		b := at(from + sunStep)
		for j := 0; j < sunStep && from+j < len(out); j++ {
			out[from+j] = float32(a + (b-a)*float64(j)/sunStep)
		}
		a = b
	}
	return out
}

const (
	leapYear = 2024
	sunStep  = 6
)

// at returns the index of day d, which may lie outside [0, n).
func (a *Air) at(d cal.Day) int { return int(d - a.start) }

// week returns the plan week of index i; negative before the plan.
func (a *Air) week(i int) int {
	d := i - int(a.env.Start-a.start)
	if d < 0 {
		return -1
	}
	return d / 7
}
