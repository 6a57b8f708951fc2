package sun

import (
	"math"
	"sort"
	"time"

	"bedweek/internal/cal"
)

// Level is what counts as the moment: the true elevation of the disc's centre,
// seen from the Earth's centre, in degrees.
type Level float64

// Levels. The two day lengths differ by 7 to 14 minutes at middle latitudes,
// so a result always goes with its level.
const (
	UpperLimb    Level = -50.0 / 60 // definition A: 16' of disc and 34' of air, as almanacs
	Centre       Level = 0          // definition B: centre of the disc, no air
	Civil        Level = -6
	Nautical     Level = -12
	Astronomical Level = -18
)

// State says how a day goes against a level.
type State int

// States. RisesOnly and SetsOnly happen on the days the polar day or night
// begins or ends.
const (
	RisesAndSets State = iota
	AlwaysAbove
	AlwaysBelow
	RisesOnly
	SetsOnly
)

// Words says the state in plain words. For a twilight "below" means dark.
func (s State) Words(l Level) string {
	twilight := l <= Civil
	switch {
	case s == AlwaysAbove && twilight:
		return "sun never that low"
	case s == AlwaysBelow && twilight:
		return "sun never that high"
	case s == AlwaysAbove:
		return "sun up all day"
	case s == AlwaysBelow:
		return "sun down all day"
	case s == RisesOnly:
		return "sun rises and does not set"
	case s == SetsOnly:
		return "sun sets and does not rise"
	}
	return "sun rises and sets"
}

// Day is one solar day at a place against one level: from the sun's lower
// transit before noon to the one after.
type Day struct {
	State     State
	Rise, Set time.Time // UTC; zero when there is none, see State
	Noon      time.Time // upper transit, UTC
	LengthH   float64   // above the level: 24 when always above, 0 when always below
}

// Of returns the solar day whose mean noon falls on a date of local mean time
// at the place's longitude. Where the civil clock is a whole day apart from
// the sun (some islands near 180°), pass the sun's date.
func Of(day cal.Day, p Place, l Level) Day {
	noon := transit(daysOf(day, MeanNoon(p.LonDeg)), p, 0)
	from, to := transit(noon-0.5, p, 180), transit(noon+0.5, p, 180)
	out := Day{Noon: timeOf(noon)}
	up := above(from, p, l)
	startsUp, last, long, met := up, from, 0.0, 0
	for _, x := range crossings(from, to, p, l) {
		if x.up {
			out.Rise = timeOf(x.at)
			last = x.at
		} else {
			out.Set = timeOf(x.at)
			long += x.at - last
		}
		up, met = x.up, met+1
	}
	if up {
		long += to - last
	}
	out.LengthH = long * 24
	switch {
	case met == 0 && startsUp:
		out.State, out.LengthH = AlwaysAbove, 24
	case met == 0:
		out.State, out.LengthH = AlwaysBelow, 0
	case out.Set.IsZero():
		out.State = RisesOnly
	case out.Rise.IsZero():
		out.State = SetsOnly
	}
	return out
}

// OnUTC returns the first rise and the first set that fall on a date of UTC,
// as almanacs print them: the set may come before the rise. A zero time means
// that there is none on that date.
func OnUTC(day cal.Day, p Place, l Level) (rise, set time.Time) {
	from := daysOf(day, 0)
	for _, x := range crossings(from, from+1, p, l) {
		if x.up && rise.IsZero() {
			rise = timeOf(x.at)
		}
		if !x.up && set.IsZero() {
			set = timeOf(x.at)
		}
	}
	return rise, set
}

// crossing is a moment the sun passes the level, up or down.
type crossing struct {
	at float64 // days after J2000, UTC
	up bool
}

// crossings finds all passages in from..to. It looks each hour and at each
// transit, so that a day of a few minutes is not missed, and halves each
// interval with a change down to a hundredth of a second.
func crossings(from, to float64, p Place, l Level) []crossing {
	var out []crossing
	look := looks(from, to, p)
	was := above(look[0], p, l)
	for i := 1; i < len(look); i++ {
		is := above(look[i], p, l)
		if is != was {
			a, b := look[i-1], look[i]
			for b-a > 0.01/86400 {
				m := (a + b) / 2
				if above(m, p, l) == was {
					a = m
				} else {
					b = m
				}
			}
			out = append(out, crossing{at: (a + b) / 2, up: is})
		}
		was = is
	}
	return out
}

// looks returns the moments to look at, in order.
func looks(from, to float64, p Place) []float64 {
	at := []float64{from, to}
	for t := from + 1.0/24; t < to; t += 1.0 / 24 {
		at = append(at, t)
	}
	for k := math.Floor(from) - 1; k < to+1; k++ {
		for _, angle := range [2]float64{0, 180} {
			mean := k + (MeanNoon(p.LonDeg)-12+angle/15)/24 // k+0 is noon at Greenwich
			if t := transit(mean, p, angle); t > from && t < to {
				at = append(at, t)
			}
		}
	}
	sort.Float64s(at)
	return at
}

// transit returns the moment near d when the hour angle is angle degrees.
func transit(d float64, p Place, angle float64) float64 {
	for range 3 { // each step gains four digits: the sun's own motion is 1/365
		d -= math.Remainder(seen(d, p, deltaTOf(d)).hour-angle, 360) / 360
	}
	return d
}

// above reports whether the centre of the disc, from the Earth's centre,
// stands at or above the level.
func above(d float64, p Place, l Level) bool {
	g := geocentric((d + deltaTOf(d)/86400) / 36525)
	hour := siderealDeg(d) + g.equinoxDeg + p.LonDeg - g.ra
	return ToSun(p.LatDeg, g.dec, hour).ElevationDeg() >= float64(l)
}

// timeOf turns days after J2000 into an instant, to the millisecond.
func timeOf(d float64) time.Time {
	ms := int64(math.Round(d * 86400e3))
	return time.UnixMilli(j2000Unix*1000 + ms).UTC()
}

// ToMinute rounds an instant to the whole minute, as almanacs print it; the
// zero time stays zero.
func ToMinute(t time.Time) time.Time {
	if t.IsZero() {
		return t
	}
	return t.Round(time.Minute)
}
