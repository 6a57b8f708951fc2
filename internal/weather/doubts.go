package weather

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
)

// Bounds of what is asked about, from memory of common practice: beyond the
// tropics the warm half of the year is warmer by more than this everywhere but
// on ocean islands; a station farther off has another season.
const (
	tropicDeg  = 23.5
	seasonC    = 2.0
	farKM      = 150.0
	farAboveM  = 500.0
	earthKM    = 6371.0
	daysAhead  = 1 // a file of today may hold tomorrow, east of the date line
	seasonDays = 20
	oldDays    = 45 // as far back as water looks for what the ground holds
)

// Doubts asks in words about weather that can hardly be this garden's: seasons
// the wrong way round, a station far off, days that have not come yet. One of
// rec and norm is given. today is the clock's own day; 0 = a chosen one, and
// days after it are no wonder.
func Doubts(rec *Record, norm *Normals, garden Site, today cal.Day) []string {
	var out []string
	if warm, ok := summerC(rec, norm); ok && math.Abs(garden.LatDeg) > tropicDeg && warm*math.Copysign(1, garden.LatDeg) < -seasonC {
		side, half := "north", "October to March"
		if garden.LatDeg < 0 {
			side, half = "south", "April to September"
		}
		out = append(out, fmt.Sprintf("The weather is warmest from %s, but the garden lies %s of the equator. Is its latitude right, or is this another place's file?", half, side))
	}
	if rec == nil {
		return out
	}
	if km := apartKM(rec.Site, garden); km > farKM {
		out = append(out, fmt.Sprintf("The weather was recorded %.0f km from the garden. Is the garden's place right, or is this another place's file?", km))
	} else if up := rec.Site.ElevM - garden.ElevM; math.Abs(up) > farAboveM {
		word := "above"
		if up < 0 {
			word = "below"
		}
		out = append(out, fmt.Sprintf("The weather was recorded %.0f m %s the garden. Is the garden's height right? A station nearer its height tells more.", math.Abs(up), word))
	}
	if today != 0 && rec.End() > today+daysAhead {
		out = append(out, fmt.Sprintf("The weather record goes on to %s, and this machine says it is %s. Is its date right?", rec.End().Long(), today.Long()))
	}
	return append(out, old(rec, today)...)
}

// old asks about a record that ended long before the clock's day: with a clock
// years ahead all dates would be wrong, and with an old record the last weeks'
// rain and warmth are guesses.
func old(rec *Record, today cal.Day) []string {
	age := int(today - rec.End())
	if today == 0 || len(rec.Days) == 0 || age <= oldDays {
		return nil
	}
	return []string{fmt.Sprintf("The last day of the weather record is %s. That is %s before %s, the day this machine says it is. Is its date right?"+
		" If so, what the ground holds today is reckoned from other years' weather. Note rain and what the thermometer says on the page Weather, bring a newer file, or let the services be asked (bedweek serve -online).",
		rec.End().Long(), span(age), today.Long())}
}

// span says a number of days roughly.
func span(days int) string {
	switch {
	case days >= 2*365:
		return fmt.Sprintf("%.0f years", math.Floor(float64(days)/365.25))
	case days >= 60:
		return fmt.Sprintf("%d months", days/30)
	}
	return fmt.Sprintf("%d days", days)
}

// summerC is how much warmer April to September are than the other months, °C;
// false when a month has too few days.
func summerC(rec *Record, norm *Normals) (float64, bool) {
	var sum, n [12]float64
	if norm != nil {
		for m := range sum {
			sum[m], n[m] = (norm.TmaxC[m]+norm.TminC[m])/2, 1
		}
	} else if rec != nil {
		for i, d := range rec.Days {
			m := (rec.Start + cal.Day(i)).Month() - 1
			sum[m] += (d.TmaxC + d.TminC) / 2
			n[m]++
		}
	}
	diff := 0.0
	for m := range sum {
		if n[m] == 0 || rec != nil && n[m] < seasonDays {
			return 0, false
		}
		if m >= 3 && m <= 8 {
			diff += sum[m] / n[m] / 6
		} else {
			diff -= sum[m] / n[m] / 6
		}
	}
	return diff, true
}

// apartKM is the distance along the ground, by the haversine formula.
func apartKM(a, b Site) float64 {
	rad := math.Pi / 180
	lat, lon := math.Sin((b.LatDeg-a.LatDeg)*rad/2), math.Sin((b.LonDeg-a.LonDeg)*rad/2)
	h := lat*lat + math.Cos(a.LatDeg*rad)*math.Cos(b.LatDeg*rad)*lon*lon
	return 2 * earthKM * math.Asin(math.Sqrt(min(1, h)))
}
