package weather

import (
	"math"
	"math/rand/v2"

	"bedweek/internal/cal"
)

// state is what one day hands to the next.
type state struct {
	fast [2]float64 // tx and tn, standard
	slow float64
	damp float64 // slow swing of wetness
	wind float64
	wet  bool
}

// start is what a future begins from: the state expected at its first day and
// how sure it is.
type start struct {
	state
	slowSD float64    // 1 = nothing known
	fastSD float64    // 0 = the day before is known
	year   [2]float64 // mean and spread of the year's offset, standard
}

// nothingKnown is the start of a future with no known past.
func nothingKnown() start { return start{slowSD: 1, fastSD: 1, year: [2]float64{0, 1}} }

// streams are the sources of chance of one future. They are apart so that the
// number of draws in one does not move another.
type streams struct {
	air, wet, rain, wind *rand.Rand
	mirror               float64 // -1 in the second of a pair
}

// normal returns a standard normal value, mirrored in the second of a pair.
func (s *streams) normal() float64 { return s.mirror * s.air.NormFloat64() }

// uniform returns a value of 0 to 1 for wet or dry, mirrored likewise.
func (s *streams) uniform() float64 {
	u := s.wet.Float64()
	if s.mirror < 0 {
		return 1 - u
	}
	return u
}

// generate makes n days from day from on. offsets are the standard offsets of
// the first, second, ... 365 days.
func (c *climate) generate(from cal.Day, n int, st start, offsets []float64, s *streams) []Day {
	x := st.state
	for k := range x.fast {
		x.fast[k] += st.fastSD * s.normal()
	}
	x.slow += st.slowSD * s.normal()
	x.damp += s.normal()
	days := make([]Day, n)
	for i := range days {
		doy := (from + cal.Day(i)).YearDay()
		days[i] = c.step(&x, doy, blend(offsets, i), s)
	}
	return days
}

// blend returns the year's offset on day i: constant through a year, passing
// to the next over 60 days.
func blend(offsets []float64, i int) float64 {
	const year, pass = 365, 60
	k, in := i/year, i%year
	if k >= len(offsets)-1 {
		return offsets[len(offsets)-1]
	}
	w := max(0, float64(in-(year-pass))/pass)
	// The spread stays 1 while two independent offsets mix.
	return (offsets[k]*(1-w) + offsets[k+1]*w) / math.Hypot(1-w, w)
}

// step draws one day.
func (c *climate) step(x *state, doy int, offset float64, s *streams) Day {
	i := doy - 1
	c.stepAir(x, s)
	x.wet = s.uniform() < shiftOdds(c.wetAfter[index(x.wet)][i], wetSwing*x.damp)
	d := Day{
		TmaxC: c.temperature(&c.tx, x, 0, i, offset, 0),
		TminC: c.temperature(&c.tn, x, 1, i, offset, c.tail[i]),
	}
	if d.TmaxC-d.TminC < leastRangeC {
		mid := (d.TmaxC + d.TminC) / 2
		d.TmaxC, d.TminC = mid+leastRangeC/2, mid-leastRangeC/2
	}
	if x.wet {
		d.RainMM = max(wetMM, c.rain[i]*gamma(c.shape, s.rain))
	}
	x.wind = c.windFade*x.wind + math.Sqrt(1-c.windFade*c.windFade)*s.wind.NormFloat64()
	d.WindMS = min(25, math.Exp(c.wind[index(x.wet)][i]+c.windSD*x.wind))
	ra := RaMJ(c.site.LatDeg, doy)
	d.RadMJ = min(ClearSkyMJ(ra, c.site.ElevM), c.rad[i]*HargreavesRadMJ(d.TmaxC, d.TminC, c.site, doy))
	return d
}

// stepAir moves the fast and slow parts on by a day.
func (c *climate) stepAir(x *state, s *streams) {
	a, b := c.tx.fade, c.tn.fade
	ex, ey := s.normal(), s.normal()
	sx, sy := math.Sqrt(1-a*a), math.Sqrt(1-b*b)
	r := min(0.99, max(-0.99, c.together*(1-a*b)/(sx*sy))) // correlation of the shocks
	x.fast[0] = a*x.fast[0] + sx*ex
	x.fast[1] = b*x.fast[1] + sy*(r*ex+math.Sqrt(1-r*r)*ey)
	fade := math.Exp(-1 / slowDays)
	x.slow = fade*x.slow + math.Sqrt(1-fade*fade)*s.normal()
	x.damp = fade*x.damp + math.Sqrt(1-fade*fade)*s.normal()
}

// temperature joins mean, wet or dry, and the strays of year, month and day.
func (c *climate) temperature(v *variable, x *state, k, i int, offset, tail float64) float64 {
	z := math.Sqrt(c.fastShare())*x.fast[k] + math.Sqrt(c.slow)*x.slow + math.Sqrt(c.year)*offset
	return v.mean[i] + v.wet[i]*(float64(index(x.wet))-c.wetShare(i)) +
		c.widen*v.sd[i]*stretch(z, v.low[i], v.high[i], tail)
}

// shiftOdds moves a probability by a step in log odds; 0 and 1 stay.
func shiftOdds(p, by float64) float64 {
	if p <= 0 || p >= 1 {
		return p
	}
	return 1 / (1 + (1-p)/p*math.Exp(-by))
}

// gamma draws from the gamma law of mean 1. G. Marsaglia and W. W. Tsang, A
// simple method for generating gamma variables, ACM TOMS 26 (2000).
func gamma(shape float64, r *rand.Rand) float64 {
	k, boost := shape, 1.0
	if k < 1 {
		boost = math.Pow(1-r.Float64(), 1/k)
		k++
	}
	d := k - 1.0/3
	c := 1 / math.Sqrt(9*d)
	for {
		x := r.NormFloat64()
		v := 1 + c*x
		if v <= 0 {
			continue
		}
		v *= v * v
		if math.Log(1-r.Float64()) < 0.5*x*x+d-d*v+d*math.Log(v) {
			return d * v * boost / shape
		}
	}
}
