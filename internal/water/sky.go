package water

import (
	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Sky is the air over a garden in many futures, day by day: what it would take
// from short grass, in the two parts shade does and does not lessen.
type Sky struct {
	Start  cal.Day
	Days   int
	UntilH int           // of a past: hour of its last day up to which it has been; 0 = all of it
	course [][24]float64 // by day
	month  []int         // by day, 0 = January
	days   [][]skyDay    // by future and day
}

type skyDay struct {
	radMM, airMM float64 // reference evapotranspiration, its two parts
	climate      float64 // [FAO56] eq. 62: what wind and dry air add
	rainMM       float64
}

// NewSky works out days days from a date on in each future. windShare is how
// much of the record's wind reaches the spaces: 1 in the open, less behind
// walls. It returns nil when the futures do not reach so far.
func NewSky(futures []weather.Future, site weather.Site, from cal.Day, days int, windShare float64) *Sky {
	s := &Sky{Start: from, Days: days}
	s.calendar(site.LatDeg)
	for _, f := range futures {
		at := int(from - f.Start)
		if at < 0 || at+days > len(f.Days) {
			return nil
		}
		run := make([]skyDay, days)
		for d := range run {
			day := f.Days[at+d]
			day.WindMS *= windShare
			run[d] = newSkyDay(day, site, (from + cal.Day(d)).YearDay())
		}
		s.days = append(s.days, run)
	}
	return s
}

func newSkyDay(day weather.Day, site weather.Site, doy int) skyDay {
	rad, air := weather.ET0Parts(day, site, doy)
	return skyDay{radMM: max(0, rad), airMM: max(0, air), rainMM: day.RainMM,
		climate: climateTerm(day.WindMS, weather.LeastHumidityPct(day.TmaxC, day.TminC))}
}

// et0MM is the reference evapotranspiration of a place with a share of the
// open sky's light.
func (d skyDay) et0MM(light float64) float64 { return d.radMM*light + d.airMM }

// calendar fills what follows from the dates alone.
func (s *Sky) calendar(latDeg float64) {
	for d := range s.Days {
		day := s.Start + cal.Day(d)
		s.course = append(s.course, weather.DayCourse(latDeg, day.YearDay()))
		s.month = append(s.month, int(day.Month())-1)
	}
}

// MeanET0MM is the mean reference evapotranspiration of the first days, mm a
// day, over all futures, for a place with shares of light by month.
func (s *Sky) MeanET0MM(light [12]float64, days int) float64 {
	sum, n := 0.0, 0
	for _, run := range s.days {
		for d := range min(days, s.Days) {
			sum += run[d].et0MM(light[s.month[d]])
			n++
		}
	}
	return sum / float64(max(n, 1))
}
