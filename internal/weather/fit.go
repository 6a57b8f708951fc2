package weather

import "math"

// Half widths of the windows over which a record is smoothed, days either side.
const (
	windowWet    = 24
	windowSpread = 45
	windowTail   = 60
)

// fitter holds what fitting needs of the days in use.
type fitter struct {
	rec  *Record
	use  []bool
	doy  []int
	c    *climate
	z    [2][]float64 // standard residuals, tx and tn
	one  [2]float64   // autocorrelation of z that gives the whole its own, see follow
	wet  []bool
	days float64
}

// fitRecord fits a climate to the days of rec for which use is true. ok is
// false when they do not cover the year.
func fitRecord(rec *Record, site Site, use []bool) (*climate, bool) {
	f := &fitter{rec: rec, use: use, c: &climate{site: site}}
	f.doy, f.wet = make([]int, len(rec.Days)), make([]bool, len(rec.Days))
	var cover bins
	for i := range rec.Days {
		f.doy[i] = (rec.Start + calDay(i)).YearDay()
		f.wet[i] = rec.Days[i].RainMM >= wetMM
		if use[i] {
			f.days++
			cover.add(f.doy[i], 1)
		}
	}
	if _, count := cover.smooth(15, 0); !enough(count) {
		return nil, false
	}
	f.c.years = f.days / 365.25
	f.c.widen = 1 + widenPerYear/max(1, f.c.years)
	f.rain()
	ok := f.variable(0, &f.c.tx, func(d Day) float64 { return d.TmaxC }) &&
		f.variable(1, &f.c.tn, func(d Day) float64 { return d.TminC })
	if !ok {
		return nil, false
	}
	f.c.tail = f.coldTails(&f.c.tn, f.z[1])
	f.shares()
	f.wind()
	f.radiation()
	return f.c, true
}

// rain fits the wet and dry chain and the gamma law.
func (f *fitter) rain() {
	var after [2]bins
	var amount bins
	var sum, sumLog, n float64
	for i := range f.rec.Days {
		if !f.use[i] {
			continue
		}
		if i > 0 && f.use[i-1] {
			after[index(f.wet[i-1])].add(f.doy[i], float64(index(f.wet[i])))
		}
		if f.wet[i] {
			r := f.rec.Days[i].RainMM
			amount.add(f.doy[i], r)
			sum, sumLog, n = sum+r, sumLog+math.Log(r), n+1
		}
	}
	overall := [2]float64{after[0].overall(0.2), after[1].overall(0.5)}
	for k := range after {
		p, count := after[k].smooth(windowWet, overall[k])
		for i := range p { // a month with few such days leans on the year's mean
			w := count[i] / (count[i] + 5)
			f.c.wetAfter[k][i] = min(0.98, max(0.002, w*p[i]+(1-w)*overall[k]))
		}
	}
	mean := amount.overall(5)
	rain, count := amount.smooth(windowSpread, mean)
	for i := range rain {
		w := count[i] / (count[i] + 5)
		f.c.rain[i] = max(wetMM, w*rain[i]+(1-w)*mean)
	}
	f.c.shape = gammaShape(sum, sumLog, n)
}

// gammaShape is Thom's estimate of the shape of a gamma law from the sum and
// the sum of logarithms. H. C. S. Thom, A note on the gamma distribution,
// Monthly Weather Review 86 (1958). With too few values it is 0.75.
func gammaShape(sum, sumLog, n float64) float64 {
	if n < 20 {
		return 0.75
	}
	a := math.Log(sum/n) - sumLog/n
	if a < 1e-6 {
		return 2
	}
	return min(2, max(0.4, (1+math.Sqrt(1+4*a/3))/(4*a)))
}

// overall returns the mean of all values, or otherwise.
func (b *bins) overall(otherwise float64) float64 {
	sum, n := 0.0, 0.0
	for i := range b.sum {
		sum, n = sum+b.sum[i], n+b.n[i]
	}
	if n == 0 {
		return otherwise
	}
	return sum / n
}

func index(wet bool) int {
	if wet {
		return 1
	}
	return 0
}

// variable fits mean, difference of wet days, spread and tails.
func (f *fitter) variable(k int, v *variable, get func(Day) float64) bool {
	h, ok := f.harmonics(get)
	if !ok {
		return false
	}
	v.mean = h.table()
	r := make([]float64, len(f.rec.Days))
	var byWet [2]bins
	for i := range r {
		if f.use[i] {
			r[i] = get(f.rec.Days[i]) - v.mean[f.doy[i]-1]
			byWet[index(f.wet[i])].add(f.doy[i], r[i])
		}
	}
	dry, nDry := byWet[0].smooth(windowSpread, 0)
	wet, nWet := byWet[1].smooth(windowSpread, 0)
	for i := range v.wet {
		n := min(nDry[i], nWet[i])
		v.wet[i] = (wet[i] - dry[i]) * n / (n + 10)
	}
	var square bins
	whole := append([]float64(nil), r...)
	for i := range r {
		if f.use[i] {
			r[i] -= f.wetPart(v, i)
			square.add(f.doy[i], r[i]*r[i])
		}
	}
	f.one[k] = f.follow(whole, r)
	variance, _ := square.smooth(windowSpread, 1)
	for i := range variance {
		v.sd[i] = math.Sqrt(max(0.01, variance[i]))
	}
	f.tails(v, r)
	f.z[k] = r
	return true
}

// follow returns the autocorrelation over one day that the strays (r) must
// have, so that strays and the part of wet days together follow from day to
// day as the record does (whole).
func (f *fitter) follow(whole, r []float64) float64 {
	var lag, square, n, m float64
	for i := range r {
		if !f.use[i] {
			continue
		}
		square, m = square+r[i]*r[i], m+1
		if i > 0 && f.use[i-1] {
			wet, before := whole[i]-r[i], whole[i-1]-r[i-1]
			lag += whole[i]*whole[i-1] - wet*before
			n++
		}
	}
	if n == 0 || square == 0 {
		return 0.6
	}
	return (lag / n) / (square / m)
}

// harmonics fits the mean year: three waves, or two from less than two years.
func (f *fitter) harmonics(get func(Day) float64) (harmonics, bool) {
	s := normalSums{k: 3}
	if f.days < 730 {
		s.k = 2
	}
	for i := range f.rec.Days {
		if f.use[i] {
			s.add(basis(phase(f.doy[i]), s.k), get(f.rec.Days[i]))
		}
	}
	return s.solve()
}

// wetPart is what day i's being wet or dry adds.
func (f *fitter) wetPart(v *variable, i int) float64 {
	d := f.doy[i] - 1
	return v.wet[d] * (float64(index(f.wet[i])) - f.c.wetShare(d))
}

// tails turns r into standard residuals and fits how far each half reaches.
// Half of what a record of few years shows is believed.
func (f *fitter) tails(v *variable, r []float64) {
	var half [2]bins
	for i := range r {
		if !f.use[i] {
			continue
		}
		r[i] /= v.sd[f.doy[i]-1]
		half[index(r[i] > 0)].add(f.doy[i], r[i]*r[i])
	}
	low, _ := half[0].smooth(windowTail, 1)
	high, _ := half[1].smooth(windowTail, 1)
	for i := range low {
		v.low[i] = 1 + (min(1.5, max(0.6, math.Sqrt(low[i])))-1)/2
		v.high[i] = 1 + (min(1.5, max(0.6, math.Sqrt(high[i])))-1)/2
	}
}

// correlation of two series at a lag, over the days in use.
func (f *fitter) correlation(a, b []float64, lag int) float64 {
	var ab, aa, bb float64
	for i := lag; i < len(a); i++ {
		if f.use[i] && f.use[i-lag] {
			ab += a[i] * b[i-lag]
			aa += a[i] * a[i]
			bb += b[i-lag] * b[i-lag]
		}
	}
	if aa == 0 || bb == 0 {
		return 0
	}
	return ab / math.Sqrt(aa*bb)
}

// shares splits the variance into year, slow swing and day to day, from the
// yearly means and from the autocorrelation beyond a week.
func (f *fitter) shares() {
	c := f.c
	sd := 0.0
	for i := range c.tx.sd {
		sd += (c.tx.sd[i] + c.tn.sd[i]) / 2 / yearDays
	}
	prior := yearOffsetC * yearOffsetC / (sd * sd)
	seen, years := f.yearVariance()
	c.year = (seen*years + prior*yearPriorN) / (years + yearPriorN)
	if years > 0 {
		c.year *= 1 + 1/years // the mean itself rests on few years
	} else {
		c.year *= 2
	}
	c.year = min(0.25, c.year)
	far, n := 0.0, 0.0
	for lag := 8; lag <= 20; lag++ {
		far += f.correlation(f.z[0], f.z[0], lag) + f.correlation(f.z[1], f.z[1], lag)
		n += 2
	}
	c.slow = min(slowMost, max(slowLeast, far/n-c.year))
	for k, v := range []*variable{&c.tx, &c.tn} {
		v.fade = min(0.9, max(0.1, (f.one[k]-c.slow*math.Exp(-1/slowDays)-c.year)/c.fastShare()))
	}
	both := f.correlation(f.z[0], f.z[1], 0)
	c.together = min(0.95, max(-0.5, (both-c.slow-c.year)/c.fastShare()))
}

// yearVariance returns the variance of whole years' mean residuals, less what
// day-to-day change alone would give, and the number of years.
func (f *fitter) yearVariance() (variance, years float64) {
	const dayToDay = 0.015 // variance of a year's mean of residuals with autocorrelation 0.7
	var means []float64
	sum, n, year := 0.0, 0, 0
	flush := func() {
		if n >= 330 {
			means = append(means, sum/float64(n))
		}
		sum, n = 0, 0
	}
	for i := range f.rec.Days {
		if y := (f.rec.Start + calDay(i)).Year(); y != year {
			flush()
			year = y
		}
		if f.use[i] {
			sum += (f.z[0][i] + f.z[1][i]) / 2
			n++
		}
	}
	flush()
	if len(means) < 2 {
		return 0, 0
	}
	s := Summarise(means)
	for _, m := range means {
		variance += (m - s.Mean) * (m - s.Mean)
	}
	return max(0, variance/float64(len(means)-1)-dayToDay), float64(len(means))
}

// wind fits the logarithm of the wind, apart for wet and dry days.
func (f *fitter) wind() {
	var by [2]bins
	logs := make([]float64, len(f.rec.Days))
	for i, d := range f.rec.Days {
		logs[i] = math.Log(max(0.1, d.WindMS))
		if f.use[i] {
			by[index(f.wet[i])].add(f.doy[i], logs[i])
		}
	}
	for k := range by {
		f.c.wind[k], _ = by[k].smooth(windowSpread, by[k].overall(math.Log(defaultWind)))
	}
	var square, n float64
	for i := range logs {
		if f.use[i] {
			logs[i] -= f.c.wind[index(f.wet[i])][f.doy[i]-1]
			square, n = square+logs[i]*logs[i], n+1
		}
	}
	f.c.windSD = math.Sqrt(square / n)
	f.c.windFade = min(0.9, max(0, f.correlation(logs, logs, 1)))
}

// radiation compares recorded radiation with that worked out from the range.
func (f *fitter) radiation() {
	var by bins
	for i, d := range f.rec.Days {
		out := HargreavesRadMJ(d.TmaxC, d.TminC, f.rec.Site, f.doy[i])
		if f.use[i] && out > 0.5 {
			by.add(f.doy[i], d.RadMJ/out)
		}
	}
	f.c.rad, _ = by.smooth(windowSpread, 1)
}
