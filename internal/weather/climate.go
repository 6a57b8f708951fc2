package weather

import "math"

// wetMM is the rain from which a day counts as wet: the least an ordinary
// gauge reads, 0.01 inch, rounded down.
const wetMM = 0.2

// Values assumed where a record is too short to tell. All are our own
// judgement, checked against the demonstration record; docs/weather.md lists
// them.
const (
	slowDays     = 25.0 // days, the time in which a slow swing fades to a third
	slowLeast    = 0.06 // least share of the variance in the slow swing
	slowMost     = 0.30
	yearOffsetC  = 0.6  // °C, spread of yearly means about the mean of all years
	yearPriorN   = 8.0  // years, the weight of yearOffsetC against what the record shows
	coldTail     = 0.12 // stretch of nights colder than one spread below the mean
	wetSwing     = 0.25 // spread of the slow swing of wetness, in log odds
	leastRangeC  = 0.6  // °C, the least daily range
	widenPerYear = 0.2  // widening of the spread, over the years of record
)

// variable is one of the two temperatures of a climate.
type variable struct {
	mean table // °C
	wet  table // °C, wet days less dry days
	sd   table // °C, spread about mean and wet
	low  table // stretch of values below the mean, 1 = as above
	high table
	fade float64 // autocorrelation of the fast part from day to day
}

// climate is all the generator needs to know of a place.
type climate struct {
	site     Site
	tx, tn   variable
	together float64 // correlation of the fast parts of tx and tn
	slow     float64 // share of the variance in the slow swing
	year     float64 // and in the yearly offset; the rest is fast
	widen    float64 // factor on the spread
	tail     table   // extra stretch of cold nights, by season
	wetAfter [2]table
	rain     table   // mm, mean of a wet day
	shape    float64 // of the gamma law of a wet day's rain
	wind     [2]table
	windSD   float64 // of the logarithm
	windFade float64
	rad      table   // recorded radiation over that worked out, 1 where not recorded
	years    float64 // of record behind it
}

// wetShare returns the share of wet days that the chain settles to.
func (c *climate) wetShare(i int) float64 {
	p01, p11 := c.wetAfter[0][i], c.wetAfter[1][i]
	return p01 / max(1e-9, 1+p01-p11)
}

// fastShare returns the share of the variance that changes from day to day.
func (c *climate) fastShare() float64 { return 1 - c.slow - c.year }

// stretch turns a standard normal value into one with the season's own tails,
// mean 0 and spread 1, and lengthens the cold tail by tail. It rises always.
func stretch(z, low, high, tail float64) float64 {
	shift := (high - low) * 0.3989 // mean of the two halves, 1/sqrt(2 pi)
	spread := math.Sqrt((low*low+high*high)/2 - shift*shift)
	y := high * z
	if z < 0 {
		y = low * z
	}
	y = (y - shift) / spread
	if z < -1 && tail > 0 {
		y -= tail * (z + 1) * (z + 1)
	}
	return y + tail*tailMean // the mean stays 0
}

// tailMean is the mean of (z+1)² over z < -1 under the standard normal law:
// 2Φ(-1) - φ(1).
const tailMean = 2*0.15865525 - 0.24197072

// enough says whether days of the year are covered well enough to fit: every
// stretch of 30 days needs ten.
func enough(count table) bool {
	for i := range count {
		if count[i] < 10 {
			return false
		}
	}
	return true
}
