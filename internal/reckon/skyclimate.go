package reckon

import (
	"fmt"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/sun"
	"bedweek/internal/weather"
)

// Climate is what the years are like here.
type Climate struct {
	Frosts         []FrostLine
	Record         string // which years, and what they cannot tell
	Ten            string // the ten-hour season, with its definition
	TenFrom, TenTo cal.Day
	Hot            string // hot days and nights to come
	Years          []YearLine
	Title          string // of Years: which they are
}

// FrostLine is one kind of frost date.
type FrostLine struct {
	Name      string
	Ahead     cal.Window // over the futures, from now on: 10, 50, 90 of 100
	With      int        // of twenty futures that have one
	Past      [3]string  // of the record: 1 year in 10, the middle, 9 in 10; "" = not known
	PastYears int
}

// YearLine is one year as it was, or one future's next twelve months.
type YearLine struct {
	Name                  string
	LastFrost, FirstFrost string
	HotDays, WarmNights   int
	RainMM                float64
	LongestDry            int
}

// yearsFor is how many whole years a record needs before its one year in ten is
// said: with fewer, one year in ten lies outside all of them.
const yearsFor = 9

func climateOf(in *Inputs, p *Place) Climate {
	c := Climate{}
	south := in.Garden.Place.LatDeg < 0
	var years []weather.FrostYear
	if in.Record != nil {
		known := in.Record.Days[:max(0, min(len(in.Record.Days), int(in.Date-in.Record.Start)))] // nothing after the date counts
		for _, y := range weather.FrostYears(in.Record.Start, known, freezeC, south) {
			if y.Whole {
				years = append(years, y)
			}
		}
		c.Record = fmt.Sprintf("The record %s has %s until now.", in.Record.Name, wholeYears(len(years)))
		if len(years) < yearsFor {
			c.Record += " That is too few for one year in ten. Trust the twenty futures, which are widened for it."
		}
	} else {
		c.Record = "Only monthly normals are known: dates come from the twenty futures alone."
	}
	c.Frosts = []FrostLine{springLine(in, p, years, south), autumnLine(in, p, years, south)}
	c.tenHours(in)
	c.years(in, p, south)
	return c
}

func wholeYears(n int) string {
	switch n {
	case 0:
		return "no whole year"
	case 1:
		return "1 whole year"
	}
	return fmt.Sprintf("%d whole years", n)
}

// turn is the next day from date on that begins a month.
func turn(date cal.Day, m time.Month) cal.Day {
	d := cal.Of(date.Year(), m, 1)
	if d < date {
		d = cal.Of(date.Year()+1, m, 1)
	}
	return d
}

// springLine is the last frost before the next turn to autumn.
func springLine(in *Inputs, p *Place, years []weather.FrostYear, south bool) FrostLine {
	l := FrostLine{Name: "Last frost of spring"}
	end := turn(in.Date, monthFor(south, time.August, time.February))
	from := in.Date
	if begin := cal.Of(end.Year(), monthFor(south, time.January, time.July), 1); begin < end && begin > from {
		from = begin
	} else if south {
		if begin := cal.Of(end.Year()-1, time.July, 1); begin > from {
			from = begin
		}
	}
	var with int
	_, l.Ahead, with = weather.FrostDates(p.Set.Futures, freezeC, from, end-1)
	l.With = ofTwenty(with, len(p.Set.Futures))
	var days []float64
	for _, y := range years {
		if y.HasLast {
			days = append(days, float64(y.LastSpring-cal.Of(y.Year, monthFor(south, time.January, time.July), 1)))
		}
	}
	l.past(days, len(years), monthFor(south, time.January, time.July))
	return l
}

// autumnLine is the first frost after the next turn to autumn, or after today
// when autumn has begun.
func autumnLine(in *Inputs, p *Place, years []weather.FrostYear, south bool) FrostLine {
	l := FrostLine{Name: "First frost of autumn"}
	begin := turn(in.Date, monthFor(south, time.August, time.February))
	from := begin
	if in.Date >= cal.Of(begin.Year()-1, begin.Month(), 1) && in.Date < cal.Of(begin.Year()-1, begin.Month(), 1)+153 {
		from = in.Date
		begin = cal.Of(begin.Year()-1, begin.Month(), 1)
	}
	var with int
	l.Ahead, _, with = weather.FrostDates(p.Set.Futures, freezeC, from, begin+330)
	l.With = ofTwenty(with, len(p.Set.Futures))
	var days []float64
	for _, y := range years {
		if y.HasFirst {
			days = append(days, float64(y.FirstAutumn-cal.Of(y.Year, monthFor(south, time.January, time.July), 1)))
		}
	}
	l.past(days, len(years), monthFor(south, time.January, time.July))
	return l
}

func monthFor(south bool, north, other time.Month) time.Month {
	if south {
		return other
	}
	return north
}

// past says the dates of the record; type 6 quantiles, as published frost dates
// use.
func (l *FrostLine) past(days []float64, years int, from time.Month) {
	l.PastYears = years
	say := func(q float64) string {
		d, ok := weather.Quantile(days, q, 6)
		if !ok {
			return ""
		}
		return (cal.Of(2001, from, 1) + cal.Day(d+0.5)).Short() // no leap day
	}
	l.Past[1] = say(0.5)
	if len(days) >= yearsFor {
		l.Past[0], l.Past[2] = say(0.1), say(0.9)
	}
}

// tenHours finds the season of days under ten hours.
func (c *Climate) tenHours(in *Inputs) {
	g := in.Garden.Place
	place := sun.Place{LatDeg: g.LatDeg, LonDeg: g.LonDeg}
	year := in.Date.Year()
	var s sun.Short
	for y := year - 1; y <= year+1; y++ {
		from, to := sun.Winter(g.LatDeg, y)
		if s = sun.ShortDays(place, sun.UpperLimb, sun.TenHours, from, to); s.Count == 0 || s.Last >= in.Date {
			break
		}
	}
	if s.Count == 0 {
		c.Ten = "Days never fall below ten hours here, from the sun's upper edge rising to its setting, air bending the light."
		return
	}
	c.TenFrom, c.TenTo = s.First, s.Last
	c.Ten = fmt.Sprintf("Days are under ten hours from %s to %s, %d days; the shortest has %.1f hours. Counted from the sun's upper edge rising to its setting, as almanacs do.",
		s.First.Long(), s.Last.Long(), s.Count, s.ShortestH)
}

// years lists what single years look like, and counts heat to come.
func (c *Climate) years(in *Inputs, p *Place, south bool) {
	var hot, warm []float64
	for k, f := range p.Set.Futures {
		from := int(in.Date - f.Start)
		if from < 0 || from+365 > len(f.Days) {
			continue
		}
		y := yearLine(fmt.Sprintf("Future %d", k+1), in.Date, f.Days[from:from+365], south)
		hot, warm = append(hot, float64(y.HotDays)), append(warm, float64(y.WarmNights))
		c.Years = append(c.Years, y)
	}
	h, w := windowOf(hot), windowOf(warm)
	if len(hot) > 0 {
		c.Hot = fmt.Sprintf("In the next twelve months: days of 30 °C or more, about %.0f (%.0f to %.0f); nights that stay at 20 °C or more, about %.0f (%.0f to %.0f).",
			h.Likely, h.Early, h.Late, w.Likely, w.Early, w.Late)
	}
	c.Title = "The next twelve months in twenty futures"
	if in.Record == nil {
		return
	}
	var real []YearLine
	for y := in.Record.Start.Year(); y <= in.Record.End().Year(); y++ {
		from, to := cal.Of(y, time.January, 1), cal.Of(y, time.December, 31)
		if from >= in.Record.Start && to <= in.Record.End() && to < in.Date {
			i := int(from - in.Record.Start)
			real = append(real, yearLine(fmt.Sprint(y), from, in.Record.Days[i:i+int(to-from)+1], south))
		}
	}
	if len(real) > 20 {
		real = real[len(real)-20:]
	}
	if len(real) > 0 {
		c.Title = fmt.Sprintf("What %s looked like, then the next twelve months in twenty futures", wholeYears(len(real)))
	}
	c.Years = append(real, c.Years...)
}

func yearLine(name string, start cal.Day, days []weather.Day, south bool) YearLine {
	y := YearLine{Name: name, LastFrost: "none", FirstFrost: "none"}
	dry := 0
	for i, d := range days {
		day := start + cal.Day(i)
		if d.TmaxC >= hotDayC {
			y.HotDays++
		}
		if d.TminC >= hotNightC {
			y.WarmNights++
		}
		y.RainMM += d.RainMM
		dry++
		if d.RainMM > 0 {
			dry = 0
		}
		y.LongestDry = max(y.LongestDry, dry)
		if d.TminC > freezeC {
			continue
		}
		m := day.Month()
		autumn := m >= time.August
		if south {
			autumn = m >= time.February && m < time.July
		}
		if !autumn {
			y.LastFrost = day.Short()
		} else if y.FirstFrost == "none" {
			y.FirstFrost = day.Short()
		}
	}
	return y
}
