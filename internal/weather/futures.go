package weather

import (
	"fmt"
	"math"
	"math/rand/v2"

	"bedweek/internal/cal"
)

// Ask says what futures are wanted.
type Ask struct {
	Past int    // days before the plan date that every future shares
	Days int    // from the plan date on
	N    int    // futures
	Seed uint64 // of all chance
	// Forecast of the coming days, which futures then follow; nil = none.
	Forecast *Forecast
}

// Set is futures and where they come from.
type Set struct {
	Futures []Future // each starts Past days before the plan date
	Words   string   // which years, how made, and what they cannot tell
	Seed    uint64
}

// sampleFrom is the number of whole years from which a record is sampled
// rather than imitated.
const (
	sampleFrom = 20
	sampleMost = 30 // years; older ones belong to another climate
)

// Make makes possible futures from the day from on. Exactly one of rec and
// norm is given; anything else is our own mistake and panics. Days of the
// record on or after from never count as known, and those inside the planned
// span are kept out of the fit as well.
//
// With a record too short to cover the year Futures is empty and Words says so.
//
// Future k is the same whatever N is. Futures come in mirrored pairs.
func Make(rec *Record, norm *Normals, site Site, from cal.Day, ask Ask) Set {
	set := possible(rec, norm, site, from, ask)
	if ask.Forecast != nil && len(set.Futures) > 0 {
		set.Futures = Follow(set.Futures, ask.Forecast, site, from)
		set.Words += " " + ask.Forecast.Words()
	}
	return set
}

// possible is Make without a forecast.
func possible(rec *Record, norm *Normals, site Site, from cal.Day, ask Ask) Set {
	if (rec == nil) == (norm == nil) {
		panic("weather: Make needs a record or normals, not both")
	}
	if ask.Past < 0 || ask.Days < 0 || ask.N < 0 {
		panic("weather: Make with a negative count")
	}
	set := Set{Seed: ask.Seed}
	if norm != nil {
		return fromClimate(set, fitNormals(norm, site), nil, from, ask, normalsWords(norm))
	}
	if runs := wholeYears(rec, from, ask.Days); len(runs) >= sampleFrom {
		return sampled(set, rec, site, runs, from, ask)
	}
	use, kept := keptOut(rec, from, ask.Days)
	c, ok := fitRecord(rec, site, use)
	if !ok {
		kept = false
		for i := range use {
			use[i] = true
		}
		if c, ok = fitRecord(rec, site, use); !ok {
			set.Words = fmt.Sprintf("The record %s is too short: it does not cover a whole year. Give a longer one, or monthly normals.", rec.Name)
			return set
		}
	}
	return fromClimate(set, c, rec, from, ask, recordWords(rec, use, c, kept, from, ask))
}

// Futures is Make without a shared past.
func Futures(rec *Record, norm *Normals, site Site, from cal.Day, days, n int, seed uint64) ([]Future, string) {
	set := Make(rec, norm, site, from, Ask{Days: days, N: n, Seed: seed})
	return set.Futures, set.Words
}

// keptOut marks the days of the record that may be used: all but the planned
// span. kept says whether any had to be left out.
func keptOut(rec *Record, from cal.Day, days int) (use []bool, kept bool) {
	use = make([]bool, len(rec.Days))
	for i := range use {
		d := rec.Start + cal.Day(i)
		use[i] = d < from || d >= from+cal.Day(days)
		kept = kept || !use[i]
	}
	return use, kept
}

// fromClimate draws all futures from a climate and sets them behind the past.
func fromClimate(set Set, c *climate, rec *Record, from cal.Day, ask Ask, words string) Set {
	past, known := pastDays(rec, c, from, ask.Past)
	st := nothingKnown()
	if rec != nil {
		st = c.startAfter(rec, from)
	}
	for k := range ask.N {
		s, offsets := chance(ask.Seed, k, 1+ask.Days/365, st)
		days := make([]Day, 0, len(past)+ask.Days)
		days = append(append(days, past...), c.generate(from, ask.Days, st, offsets, s)...)
		set.Futures = append(set.Futures, Future{
			Start: from - cal.Day(ask.Past), Days: days,
			From: fmt.Sprintf("generated, number %d of seed %d", k+1, ask.Seed),
		})
	}
	set.Words = words + pastWords(ask.Past, known)
	return set
}

// pastDays returns the days before from: from the record where it holds them,
// else the mean year. known counts the former.
func pastDays(rec *Record, c *climate, from cal.Day, n int) (days []Day, known int) {
	if n == 0 {
		return nil, 0
	}
	mean := c.meanYear()
	days = make([]Day, n)
	for i := range days {
		d := from - cal.Day(n-i)
		days[i] = mean[d.YearDay()-1]
		if rec == nil {
			continue
		}
		if day, ok := rec.At(d); ok {
			days[i] = day
			known++
		}
	}
	return days, known
}

// chance returns the streams and yearly offsets of future k.
//
// Futures 2j and 2j+1 have the same offset and mirrored days; so chance that
// runs warm in one runs cold in the other. The next two have the offset
// mirrored and days of their own. From four to four the size of the offset
// follows a Kronecker sequence (fractional parts of multiples of an irrational
// number), so that however many futures are drawn, mild and strong years come
// evenly.
func chance(seed uint64, k, years int, st start) (*streams, []float64) {
	pair, four := uint64(k/2), k/4
	stream := func(use uint64) *rand.Rand {
		return rand.New(rand.NewPCG(seed, pair<<8|use))
	}
	own := 8 * uint64(k%2)
	s := &streams{air: stream(1), wet: stream(2), rain: stream(3 + own), wind: stream(4 + own), mirror: 1}
	if k%2 == 1 {
		s.mirror = -1
	}
	shifts := rand.New(rand.NewPCG(seed, 1<<63))
	offsets := make([]float64, years+1)
	for y := range offsets {
		u := shifts.Float64() + float64(four)*irrational(y)
		u -= math.Floor(u)
		offsets[y] = normalQuantile(0.5 + u/2)
		if (k/2+y*four)%2 == 1 { // warm years are not always followed by warm ones
			offsets[y] = -offsets[y]
		}
		if y == 0 {
			offsets[y] = st.year[0] + st.year[1]*offsets[y]
		}
	}
	return s, offsets
}

// irrational returns the step of the sequence in dimension y: the golden ratio
// first, then square roots of primes.
func irrational(y int) float64 {
	steps := [...]float64{0.6180339887498949, 0.4142135623730951, 0.7320508075688772, 0.23606797749978969, 0.6457513110645906}
	return steps[y%len(steps)]
}

// normalQuantile is the inverse of the standard normal law, for 0 < u < 1; the
// ends are drawn in to 1e-6.
func normalQuantile(u float64) float64 {
	return math.Sqrt2 * math.Erfinv(2*min(1-1e-6, max(1e-6, u))-1)
}

// startAfter looks at the record's last two months before from and says where
// the air's strays stand. Without a day of record just before from nothing is
// known.
func (c *climate) startAfter(rec *Record, from cal.Day) start {
	const look = 60
	st := nothingKnown()
	last, ok := rec.At(from - 1)
	if !ok {
		return st
	}
	sum, n := 0.0, 0.0
	for k := 1; k <= look; k++ {
		if d, ok := rec.At(from - cal.Day(k)); ok {
			x, y := c.standard(d, (from - cal.Day(k)).YearDay())
			sum, n = sum+(x+y)/2, n+1
		}
	}
	// Mean of n days = offset + part of the slow swing + day-to-day noise.
	const slowKept = 0.45 // share of the slow variance left in a mean of 60 days
	fade := (c.tx.fade + c.tn.fade) / 2
	noise := c.fastShare() * (1 + fade) / (1 - fade) / n
	total := c.year + slowKept*c.slow + noise
	gainYear, gainSlow := c.year/total, slowKept*c.slow/total
	mean := sum / n
	const kept = 0.5 // how far the coming year's offset follows the last: an assumption
	sy, ss := math.Sqrt(c.year), math.Sqrt(c.slow)
	st.year = [2]float64{kept * gainYear * mean / sy, math.Sqrt(1 - kept*kept*gainYear)}
	st.slow = gainSlow * mean / ss
	st.slowSD = math.Sqrt(1 - gainSlow)
	x, y := c.standard(last, (from - 1).YearDay())
	far := kept*gainYear*mean + gainSlow*mean
	fast := math.Sqrt(c.fastShare())
	st.fast = [2]float64{(x - far) / fast, (y - far) / fast}
	st.fastSD = 0
	st.wet = last.RainMM >= wetMM
	return st
}

// standard returns how far a day's two temperatures stray, in spreads, within
// 3.5.
func (c *climate) standard(d Day, doy int) (x, y float64) {
	i := doy - 1
	w := float64(index(d.RainMM >= wetMM)) - c.wetShare(i)
	x = (d.TmaxC - c.tx.mean[i] - c.tx.wet[i]*w) / (c.widen * c.tx.sd[i])
	y = (d.TminC - c.tn.mean[i] - c.tn.wet[i]*w) / (c.widen * c.tn.sd[i])
	return min(3.5, max(-3.5, x)), min(3.5, max(-3.5, y))
}
