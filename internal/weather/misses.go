package weather

import (
	"math"

	"bedweek/internal/cal"
)

// Came is what a day turned out to be; nil is not known.
type Came struct{ TmaxC, TminC *float64 }

// Miss is how far forecasts of some days ahead were from what came, °C.
type Miss struct {
	Lead      int // days ahead; 0 = of the same day
	High, Low Off
}

// Off is the error of one extreme over some days: forecast less what came.
type Off struct {
	Days int     // pairs of forecast and day
	Bias float64 // mean
	Mean float64 // mean size
	RMS  float64 // root of the mean square: what a spread is held against
}

// LeastPairs is how many days must have been compared before a garden's own
// figure is told or used: our own choice.
const LeastPairs = 20

// leastErrorC keeps futures from being narrowed to less than a thermometer in
// a garden can tell.
const leastErrorC = 0.5

// Misses compares kept forecasts with what came, by days ahead. Of two of one
// day the first counts.
func Misses(kept []*Forecast, came func(cal.Day) Came) (out [MostFarDays]Miss) {
	var sums [MostFarDays][2][3]float64
	seen := map[cal.Day]bool{}
	for lead := range out {
		out[lead].Lead = lead
	}
	for _, fc := range kept {
		if fc == nil || seen[fc.Issued] {
			continue
		}
		seen[fc.Issued] = true
		for _, d := range fc.Days {
			lead := int(d.Day - fc.Issued)
			if lead < 0 || lead >= MostFarDays {
				continue
			}
			was := came(d.Day)
			for k, pair := range [2][2]*float64{{d.TmaxC, was.TmaxC}, {d.TminC, was.TminC}} {
				if pair[0] == nil || pair[1] == nil {
					continue
				}
				off := *pair[0] - *pair[1]
				[2]*Off{&out[lead].High, &out[lead].Low}[k].Days++
				sum := &sums[lead][k]
				sum[0], sum[1], sum[2] = sum[0]+off, sum[1]+math.Abs(off), sum[2]+off*off
			}
		}
	}
	for lead := range out {
		for k, o := range [2]*Off{&out[lead].High, &out[lead].Low} {
			if n := float64(o.Days); n > 0 {
				o.Bias, o.Mean, o.RMS = sums[lead][k][0]/n, sums[lead][k][1]/n, math.Sqrt(sums[lead][k][2]/n)
			}
		}
	}
	return out
}

// spreadC is the error a forecast of a day's high or low is taken to have: this
// garden's own where enough days were compared, else the usual one.
func (fc *Forecast) spreadC(lead int, high bool) float64 {
	if fc.Own == nil || lead < 0 || lead >= len(fc.Own) {
		return errorC(lead)
	}
	o := fc.Own[lead].Low
	if high {
		o = fc.Own[lead].High
	}
	if o.Days < LeastPairs {
		return errorC(lead)
	}
	return math.Max(leastErrorC, o.RMS)
}
