package weather

import "bedweek/internal/cal"

// YearFacts is what a calendar year of a record amounts to.
type YearFacts struct {
	Days         int // of the year in the record
	RainMM       [12]float64
	TmaxC, TminC [12]float64 // monthly means, 0 for a month without days
	MonthDays    [12]int
	FrostDays    int // coldest at or below 0 °C
	HotDays      int // warmest at or above 30 °C
	DryDays      int // no rain at all
	Wettest      cal.Day
	LongestDry   int     // days on end without rain
	Heat10       float64 // °C·day over 10 °C, see HeatSum
}

// Year gathers a calendar year. A year outside the record has Days 0.
func (r *Record) Year(year int) YearFacts {
	var y YearFacts
	most, dry := -1.0, 0
	var days []Day
	for d := cal.Of(year, 1, 1); d <= cal.Of(year, 12, 31); d++ {
		day, ok := r.At(d)
		if !ok {
			continue
		}
		days = append(days, day)
		m := int(d.Month()) - 1
		y.MonthDays[m]++
		y.RainMM[m] += day.RainMM
		y.TmaxC[m] += day.TmaxC
		y.TminC[m] += day.TminC
		y.FrostDays += index(day.TminC <= 0)
		y.HotDays += index(day.TmaxC >= 30)
		if day.RainMM > most {
			most, y.Wettest = day.RainMM, d
		}
		dry++
		if day.RainMM > 0 {
			dry = 0
		}
		y.DryDays += index(day.RainMM == 0)
		y.LongestDry = max(y.LongestDry, dry)
	}
	for m, n := range y.MonthDays {
		if n > 0 {
			y.TmaxC[m] /= float64(n)
			y.TminC[m] /= float64(n)
		}
	}
	y.Days, y.Heat10 = len(days), HeatSum(days, 10)
	return y
}

// HeatSum adds up the daily means above a base, °C·day: the simple average,
// cut at zero after averaging.
func HeatSum(days []Day, baseC float64) (sum float64) {
	for _, d := range days {
		sum += max(0, (d.TmaxC+d.TminC)/2-baseC)
	}
	return sum
}
