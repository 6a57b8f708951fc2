package sun

import (
	"time"

	"bedweek/internal/cal"
)

// TenHours is the day length below which winter vegetables all but stand
// still, by common practice.
const TenHours = 10.0

// AnyWinter is the year in which a winter begins when none is named. Dates
// differ by at most a day from year to year.
const AnyWinter = 2024

// Short is the run of short days in a season.
type Short struct {
	First, Last cal.Day // both 0 when there is none
	Count       int     // days shorter than the limit
	ShortestH   float64
}

// ShortDays returns the days from..to shorter than hours, by a level.
func ShortDays(p Place, l Level, hours float64, from, to cal.Day) Short {
	out := Short{ShortestH: 24}
	for d := from; d <= to; d++ {
		h := Of(d, p, l).LengthH
		out.ShortestH = min(out.ShortestH, h)
		if h >= hours {
			continue
		}
		if out.Count == 0 {
			out.First = d
		}
		out.Last = d
		out.Count++
	}
	return out
}

// Winter returns the half year about the shortest day that begins in a year:
// from September in the north, from March in the south.
func Winter(latDeg float64, year int) (from, to cal.Day) {
	if latDeg < 0 {
		return cal.Of(year, time.March, 20), cal.Of(year, time.September, 22)
	}
	return cal.Of(year, time.September, 22), cal.Of(year+1, time.March, 20)
}
