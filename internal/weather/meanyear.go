package weather

import (
	"math"
	"time"
)

// MeanYear returns the smooth mean year by day of the year, index YearDay-1.
// Rain is the mean of wet and dry days together. Exactly one of rec and norm
// is given. ok is false when a record does not cover the year.
func MeanYear(rec *Record, norm *Normals, site Site) (days [yearDays]Day, ok bool) {
	if (rec == nil) == (norm == nil) {
		panic("weather: MeanYear needs a record or normals, not both")
	}
	if norm != nil {
		return fitNormals(norm, site).meanYear(), true
	}
	use := make([]bool, len(rec.Days))
	for i := range use {
		use[i] = true
	}
	c, ok := fitRecord(rec, site, use)
	if !ok {
		return days, false
	}
	return c.meanYear(), true
}

// MeanRad returns the mean global radiation by month, MJ/m2/day, January
// first, after MeanYear.
func MeanRad(rec *Record, norm *Normals, site Site) (radMJ [12]float64, ok bool) {
	days, ok := MeanYear(rec, norm, site)
	if !ok {
		return radMJ, false
	}
	at := 0
	for m := range radMJ {
		n := monthLength(2004, m+1) // a leap year: all 366 days
		for k := 0; k < n; k++ {
			radMJ[m] += days[at].RadMJ / float64(n)
			at++
		}
	}
	return radMJ, true
}

// meanYear lists the climate's means.
func (c *climate) meanYear() (days [yearDays]Day) {
	for i := range days {
		p := c.wetShare(i)
		d := Day{
			TmaxC:  c.tx.mean[i],
			TminC:  min(c.tn.mean[i], c.tx.mean[i]-leastRangeC),
			RainMM: p * c.rain[i],
			WindMS: c.meanWind(i, p),
		}
		d.RadMJ = c.meanRad(i, p)
		days[i] = d
	}
	return days
}

// meanWind is the mean of the log-normal winds of wet and dry days.
func (c *climate) meanWind(i int, wetShare float64) float64 {
	half := c.windSD * c.windSD / 2
	return wetShare*math.Exp(c.wind[1][i]+half) + (1-wetShare)*math.Exp(c.wind[0][i]+half)
}

// meanRad weighs the radiation of a mean wet and a mean dry day, which have
// different ranges. A day's radiation goes with the root of its range, and the
// mean of roots lies below the root of the mean: the second-order term of that
// is taken off.
func (c *climate) meanRad(i int, p float64) float64 {
	at := func(w float64) float64 {
		tx := c.tx.mean[i] + c.tx.wet[i]*(w-p)
		tn := c.tn.mean[i] + c.tn.wet[i]*(w-p)
		span := max(leastRangeC, tx-tn)
		rho := c.fastShare()*c.together + c.slow + c.year
		x, n := c.tx.sd[i], c.tn.sd[i]
		bend := min(0.2, (x*x+n*n-2*rho*x*n)/(8*span*span))
		return c.rad[i] * (1 - bend) * HargreavesRadMJ(tn+span, tn, c.site, i+1)
	}
	return p*at(1) + (1-p)*at(0)
}

// MonthOf returns the month (0 = January) of a day of the year counted from 1,
// in a leap year.
func MonthOf(doy int) int {
	return int(time.Date(2004, 1, doy, 12, 0, 0, 0, time.UTC).Month()) - 1
}
