package weather

import (
	"math"

	"bedweek/internal/cal"
)

func calDay(i int) cal.Day { return cal.Day(i) }

// fitNormals makes a climate of twelve monthly means. What normals do not say
// (spread, wet days, wind) comes from rules of thumb: assumptions, listed in
// docs/weather.md.
func fitNormals(norm *Normals, site Site) *climate {
	c := &climate{site: site, widen: 1, shape: 0.75, windSD: 0.4, windFade: 0.4, years: 30}
	c.tx.mean = monthlyWave(norm.TmaxC).table()
	c.tn.mean = monthlyWave(norm.TminC).table()
	rain := monthlyRain(norm)
	s := seasonOf(c)
	c.tail = c.normalTails(s)
	for i := range rain {
		c.chain(i, rain[i])
		c.rad[i] = 1
		c.wind[0][i], c.wind[1][i] = math.Log(defaultWind)-0.08, math.Log(defaultWind)-0.08
		c.spread(i, s, yearSum(norm.RainMM))
	}
	c.tx.fade, c.tn.fade, c.together = 0.66, 0.66, 0.55
	c.slow = 0.10
	sd := 0.0
	for i := range c.tx.sd {
		sd += (c.tx.sd[i] + c.tn.sd[i]) / 2 / yearDays
	}
	c.year = min(0.25, yearOffsetC*yearOffsetC/(sd*sd))
	return c
}

func yearSum(v [12]float64) (sum float64) {
	for _, x := range v {
		sum += x
	}
	return sum
}

// monthlyWave fits three waves whose monthly means come nearest to v.
func monthlyWave(v [12]float64) harmonics {
	s := normalSums{k: 3}
	doy := 1
	for m := range v {
		n := monthLength(2001, m+1)
		var b harmonics
		for k := 0; k < n; k++ {
			x := basis(phase(doy), 3)
			for i := range b {
				b[i] += x[i] / float64(n)
			}
			doy++
		}
		s.add(b, v[m])
	}
	h, _ := s.solve() // twelve different months: never singular
	return h
}

// monthlyRain returns the mean rain of each day: the monthly sums joined
// smoothly, never negative, each month's sum kept within a few per cent.
func monthlyRain(norm *Normals) (t table) {
	var daily [12]float64
	for m, sum := range norm.RainMM {
		daily[m] = sum / float64(monthLength(2001, m+1))
	}
	for i := range t {
		// Straight lines between the middles of the months.
		x := (float64(i)+0.5)/yearDays*12 - 0.5
		m := int(math.Floor(x))
		w := x - float64(m)
		t[i] = daily[(m+12)%12]*(1-w) + daily[(m+13)%12]*w
	}
	return t
}

// chain sets the wet and dry chain and a wet day's rain from the mean rain of
// day i. A wet day of a wet month brings more: 3 mm and 3.5 % of the month's
// rain. Persistence of wet and dry is 0.35. Assumptions.
func (c *climate) chain(i int, dailyMM float64) {
	const persist = 0.35
	c.rain[i] = 3 + 0.035*30.4*dailyMM
	p := min(0.9, dailyMM/c.rain[i])
	if p > 0 {
		c.rain[i] = dailyMM / p
	}
	c.wetAfter[0][i] = p * (1 - persist)
	c.wetAfter[1][i] = p + persist*(1-p)
}

// season is the yearly wave of the daily mean temperature.
type season struct {
	mean, amplitude float64
}

func seasonOf(c *climate) season {
	lo, hi, sum := math.Inf(1), math.Inf(-1), 0.0
	for i := range c.tx.mean {
		t := (c.tx.mean[i] + c.tn.mean[i]) / 2
		lo, hi, sum = min(lo, t), max(hi, t), sum+t/yearDays
	}
	return season{mean: (lo + hi) / 2, amplitude: (hi - lo) / 2}
}

// warmth returns where day i lies between the coldest (0) and warmest (1) of
// the year. Where the year has hardly a wave it is near 0.5.
func (s season) warmth(c *climate, i int) float64 {
	t := (c.tx.mean[i] + c.tn.mean[i]) / 2
	return 0.5 + 0.5*(t-s.mean)/max(3, s.amplitude)
}

// spread sets the spread of day i by the amplitude rule: the further apart
// winter and summer, the more a day may stray. In summer days stray with the
// daily range, nights less. Cold nights come early in autumn and go early in
// spring, so the nights' spread runs three weeks ahead of the warmth. Dry places
// stray less than their amplitude says. Assumptions, see docs/weather.md.
func (c *climate) spread(i int, s season, yearRainMM float64) {
	const ahead = 20 // days
	warmth, night := s.warmth(c, i), s.warmth(c, (i+ahead)%yearDays)
	span := max(2, c.tx.mean[i]-c.tn.mean[i])
	winter := 1.0 + 0.32*s.amplitude
	dry := 0.8 + 0.2*min(1, yearRainMM/500)
	c.tx.sd[i] = dry * mix(warmth, winter, hotDaySpread(0.25*span+0.12*s.amplitude, c.tx.mean[i]))
	c.tn.sd[i] = dry * mix(night, winter, 0.9+0.13*s.amplitude)
	c.tx.wet[i] = span * mix(warmth, 0.10, -0.30)
	c.tn.wet[i] = span * mix(warmth, 0.30, 0)
	c.tx.low[i], c.tx.high[i], c.tn.low[i], c.tn.high[i] = 1, 1, 1, 1
}

// hotDaySpread keeps a summer's spread of days, °C, to what hot months have:
// where means pass hotMeanC, days stray little whatever their daily range. By
// [GWGEN]'s regression over the world's stations, dry days of a month: 3.0 °C at
// a mean of 30, 2.6 at 33, 2.5 from 35 on.
func hotDaySpread(sd, meanC float64) float64 {
	hot := 2.5
	if meanC < 35 {
		t := meanC
		hot = 4.7455 + t*(-0.07610+t*(0.018931+t*(-0.00134943+t*(3.209e-5-2.5e-7*t))))
	}
	return mix(min(1, max(0, (meanC-hotMeanC)/hotOverC)), sd, min(sd, hot))
}

// Months are hot from these means of the days' highest on, in full hotOverC
// above them (assumption: cooler months of dry summers stray with their range).
const (
	hotMeanC = 28.0
	hotOverC = 4.0
)

// mix passes from a at w = 0 to b at w = 1.
func mix(w, a, b float64) float64 { return a*(1-w) + b*w }
