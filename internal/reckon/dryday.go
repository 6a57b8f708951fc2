package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/water"
	"bedweek/internal/weather"
)

// Stretch is a run of hours from now.
type Stretch struct{ FromH, ToH float64 }

// RainDay is a day on which rain may help.
type RainDay struct {
	Stretch
	Day      cal.Day
	OfTwenty int // futures with 3 mm or more
}

// drawnDays is how far the race is drawn.
const drawnDays = 10

// rainDrawnOf is the count from which rain is drawn at all.
const rainDrawnOf = 5

// picture adds what the race is drawn over: nights, rain and the next visit.
// Hours go by the sun: noon is when it stands highest.
func (d *Dryness) picture(in *Inputs, p *Place, ask DryAsk) {
	d.NextH, d.Next = ask.NextH, moment(in.Date, ask.FromHour, ask.NextH)
	now := float64(ask.FromHour)
	for k := -1; k <= drawnDays; k++ {
		day := in.Date + cal.Day(k)
		_, set := weather.SunUpSolarH(in.Garden.Place.LatDeg, day.YearDay())
		rise, _ := weather.SunUpSolarH(in.Garden.Place.LatDeg, (day + 1).YearDay())
		from, to := 24*float64(k)+set-now, 24*float64(k+1)+rise-now
		if to > 0 && to > from {
			d.Nights = append(d.Nights, Stretch{math.Max(0, from), to})
		}
		if k < 0 {
			continue
		}
		n := 0
		for _, f := range p.Set.Futures {
			if i := int(day - f.Start); i >= 0 && i < len(f.Days) && f.Days[i].RainMM >= helpfulMM {
				n++
			}
		}
		if of := ofTwenty(n, len(p.Set.Futures)); of >= rainDrawnOf {
			d.Rains = append(d.Rains, RainDay{Stretch{math.Max(0, 24*float64(k)-now), 24*float64(k+1) - now}, day, of})
		}
	}
}

// helpfulMM is the rain that counts as help, as in water.
const helpfulMM = 3

// more fills what the pages say of a row beside its sentences.
func (r *DryRow) more(in *Inputs, s *water.Space, seen []SpaceSeen, futures int) {
	r.DrawnFrom = len(seen)
	r.ByNextOf20 = ofTwenty(r.Answer.ByNext, futures)
	if n := len(seen); n > 0 {
		switch ago := int(in.Date - seen[n-1].On); ago {
		case 0:
			r.Checked = "last checked by hand today"
		case 1:
			r.Checked = "last checked by hand yesterday"
		default:
			r.Checked = fmt.Sprintf("last checked by hand %d days ago", ago)
		}
	}
	if r.Empty {
		return
	}
	a := r.Answer
	r.LitresADay = fmt.Sprintf("%.1f L (%.1f to %.1f)", a.DrinksL.Likely, a.DrinksL.Early, a.DrinksL.Late)
	r.Hours = hoursWords(a)
	if a.DrinksL.Likely > 0 {
		r.FullDays = (a.HoldsL/2 + s.TankL) / a.DrinksL.Likely
	}
}

// hoursWords says how long until dry: hours, or days from three on.
func hoursWords(a water.Answer) string {
	per, unit := 1.0, "hours"
	if a.Dry.Likely >= 72 {
		per, unit = 24, "days"
	}
	at := func(h float64) string {
		if h >= a.Horizon {
			return fmt.Sprintf("over %.0f", math.Floor(a.Horizon/per))
		}
		return fmt.Sprintf("%.0f", h/per)
	}
	e, l, m := at(a.Dry.Early), at(a.Dry.Late), at(a.Dry.Likely)
	if e == l {
		return m + " " + unit
	}
	return fmt.Sprintf("%s %s (%s to %s)", m, unit, e, l)
}

// rankOf says how much what stands in a space loses when it goes short.
func rankOf(in *Inputs, stays []standing, space int) int {
	rank := water.RankOver
	for _, st := range stays {
		if st.space != space || st.tray || st.count <= 0 {
			continue
		}
		k := water.RankGrown
		age := int(in.Date - st.since.Likely)
		switch {
		case st.looks == "finished":
			k = water.RankOver
		case st.looks == "young" || age >= 0 && age < youngDays:
			k = water.RankYoung
		case st.crop.Harvest == crop.Fruiting || st.crop.Class == "legume":
			k = water.RankBlooms
		}
		rank = max(rank, k)
	}
	return rank
}

// youngDays is how long a planting counts as newly started: common practice.
const youngDays = 35

// Taught says what a look changed, comparing a space before and after it.
func Taught(before, after DryRow) string {
	if after.Empty || before.Answer.Rate <= 0 {
		return ""
	}
	change := after.Answer.Rate / before.Answer.Rate
	was, is := lasts(before.FullDays), lasts(after.FullDays)
	switch {
	case change > 1.04 && was != is:
		return fmt.Sprintf("%s dries faster than I thought: full, it lasts %s, not %s.", sentenceName(after.Name), is, was)
	case change < 0.96 && was != is:
		return fmt.Sprintf("%s dries slower than I thought: full, it lasts %s, not %s.", sentenceName(after.Name), is, was)
	case after.DrawnFrom <= 1:
		return fmt.Sprintf("One look says how full %s is now. The next says how fast it dries.", after.Name)
	}
	return fmt.Sprintf("%s dries about as I thought: full, it lasts %s.", sentenceName(after.Name), is)
}

func sentenceName(s string) string {
	s = sentence(s)
	if n := len(s); n > 0 && s[n-1] == '.' {
		return s[:n-1]
	}
	return s
}

// lasts says days to the half below a week.
func lasts(days float64) string {
	switch h := math.Round(days * 2); {
	case days < 0.75:
		return fmt.Sprintf("%.0f hours", math.Max(1, math.Round(days*24)))
	case h == 2:
		return "1 day"
	case h < 14 && int(h)%2 == 1:
		return fmt.Sprintf("%d½ days", int(h)/2)
	case h < 14:
		return fmt.Sprintf("%.0f days", h/2)
	}
	return fmt.Sprintf("%.0f days", math.Round(days))
}

// canBeMoved are the kinds a person may carry; how heavy is said beside.
func canBeMoved(sp garden.Space) bool {
	switch sp.Kind {
	case garden.Bag, garden.PocketBag, garden.Hanging, garden.Railing, garden.Reservoir:
		return sp.VolumeL() <= mostMovedL
	}
	return false
}

// mostMovedL is the largest container anyone is told to move: about 40 kg wet.
const mostMovedL = 45
