package shade

import (
	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

// StepsADay is how often the sun is looked for: each ten minutes. Between two
// looks that differ the change is found by halving, to a second; sun or shade
// shorter than a step can be missed.
const StepsADay = 144

const changeH = 1.0 / 3600

// Spell is a stretch of a day, in local mean solar hours, through which the
// same share of the beam arrives.
type Spell struct {
	From, To float64
	Passes   float64
	Height   float64 // mean of the receptor's cosine to the sun
}

// course is the sun's way over one day, with its direction at each look.
type course struct {
	site Place
	day  cal.Day
	look [StepsADay + 1]geom.Vec
}

func newCourse(site Place, day cal.Day) *course {
	c := &course{site: site, day: day}
	for i := range c.look {
		c.look[i] = c.at(lookHour(i))
	}
	return c
}

func lookHour(i int) float64 { return 24 * float64(i) / StepsADay }

func (c *course) at(hour float64) geom.Vec { return sunAt(c.site, c.day, hour) }

// Spells returns the stretches of a day in which any direct sun reaches the
// receptor, in order.
func (s *Scene) Spells(r Receptor, site Place, day cal.Day) []Spell {
	return s.spells(r, newCourse(site, day))
}

func (s *Scene) spells(r Receptor, c *course) []Spell {
	month := int(c.day.Month())
	beam := func(d geom.Vec) float64 {
		if d.Z <= 0 || r.BeamFactor(d) == 0 {
			return 0
		}
		return s.Passes(r.At, d, month)
	}
	var out []Spell
	add := func(a, b, passes float64) {
		if passes > 0 && b > a {
			out = append(out, Spell{From: a, To: b, Passes: passes, Height: r.BeamFactor(c.at((a + b) / 2))})
		}
	}
	was := beam(c.look[0])
	for i := 1; i <= StepsADay; i++ {
		a, b := lookHour(i-1), lookHour(i)
		is := beam(c.look[i])
		if is == was {
			add(a, b, is)
			continue
		}
		low, high := a, b
		for high-low > changeH {
			if mid := (low + high) / 2; beam(c.at(mid)) == was {
				low = mid
			} else {
				high = mid
			}
		}
		add(a, low, was)
		add(low, b, is)
		was = is
	}
	return out
}

// sunAt is the direction to the sun at a local mean solar hour.
func sunAt(at Place, day cal.Day, hour float64) geom.Vec {
	return sun.Direction(day, hour-12+sun.MeanNoon(at.LonDeg), at)
}

// SunHours adds up spells between two hours; half light counts half.
func SunHours(spells []Spell, from, to float64) float64 {
	sum := 0.0
	for _, p := range spells {
		if d := min(p.To, to) - max(p.From, from); d > 0 {
			sum += d * p.Passes
		}
	}
	return sum
}

// DayHours adds up a day's spells.
func DayHours(spells []Spell) float64 { return SunHours(spells, 0, 24) }

// MorningHours adds up the spells before mean solar noon.
func MorningHours(spells []Spell) float64 { return SunHours(spells, 0, 12) }

// AfternoonHours adds up the spells after mean solar noon.
func AfternoonHours(spells []Spell) float64 { return SunHours(spells, 12, 24) }

// BeamSum adds up the receptor's cosine to the sun over spells, in hours: what
// it would get from a sun of constant strength.
func BeamSum(spells []Spell) float64 {
	sum := 0.0
	for _, p := range spells {
		sum += (p.To - p.From) * p.Passes * p.Height
	}
	return sum
}

// BeamShare returns got's beam sum as a share of open's, 0 when open has none.
func BeamShare(got, open []Spell) float64 {
	o := BeamSum(open)
	if o <= 0 {
		return 0
	}
	return BeamSum(got) / o
}
