package shade

import (
	"cmp"
	"math"
	"slices"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

// Looks is how closely a course looks: how often a day at the sun, and at how
// many fixed directions of the sky.
type Looks struct{ StepsADay, SkyRays int }

// QuickLooks are each ten minutes and 600 directions, to be asked while a thing
// is being moved.
func QuickLooks() Looks { return Looks{144, 600} }

// FineLooks are each five minutes and 2,400 directions, where a figure is to
// be printed and kept.
func FineLooks() Looks { return Looks{288, 2400} }

// Course is the sun over a run of weeks at a place, each by its middle day
// (Thursday), and the sky: all the directions a light field is made of. It
// does not depend on the garden, and may be shared.
type Course struct {
	Site  Place
	weeks []weekSun
	rays  []ray // the sun's, week by week, then the sky's
	first []int // of each week's rays; then of the sky's; then the end
	// groups are short runs of neighbouring rays, so that a body out of all
	// their ways is passed over once for all; of a week from firstGroup on.
	groups     [][2]int
	firstGroup []int
}

// groupRays is how many rays run together at most.
const groupRays = 8

// ray is one direction and the light that comes from it.
type ray struct {
	d     geom.Vec
	hours float64    // length of the sun's step
	mol   [2]float64 // of the step on a face turned to the sun: clear, mean; mol/m²
	solid float64    // sky only: steradian
}

// weekSun is a week's day and its light on open level ground.
type weekSun struct {
	day      cal.Day
	sky      [2]float64 // diffuse light, mol/m²/day: clear, mean
	open     [2]float64 // all light, mol/m²/day: clear, mean
	diffuse  [2]float64 // its diffuse share
	dayHours float64
	sums     sunDay // of its course, without the steps
}

// MidWeek is the day that stands for the week beginning on a Monday.
func MidWeek(monday cal.Day) cal.Day { return monday + 3 }

// YearStart returns the Monday of the year's first week (the week with the
// year's first Thursday).
func YearStart(year int) cal.Day { return cal.Of(year, 1, 4).Monday() }

// NewCourse lays out the weeks from a Monday on. The step in which the sun rises
// or sets is cut to the part with the sun above the level. meanMJ is the mean global radiation on
// open level ground by week, MJ/m²/day; nil means that it is not known, and
// then a mean sky counts as a clear one.
func NewCourse(site Place, start cal.Day, weeks int, looks Looks, meanMJ []float64) *Course {
	var days []cal.Day
	for w := range weeks {
		days = append(days, MidWeek(start.Monday()+cal.Day(7*w)))
	}
	return courseOf(site, days, looks, meanMJ, 0, 0)
}

// HotToDeg is the sun's hour angle at which the hot hours end that begin at
// noon: five by the sun, as leaves and air are hottest some three hours after
// noon (common practice).
const HotToDeg = 75.0

// NewMonths lays out the middle day of each month, in weeks 0 to 11, and the
// hot hours alone of the same days, in weeks 12 to 23. meanMJ is by month.
func NewMonths(site Place, looks Looks, meanMJ [12]float64) *Course {
	return courseOf(site, monthDays(lightDay), looks, meanMJ[:], 0, 12)
}

// monthDays is one day of each month of the year whose sun stands for all.
func monthDays(day int) (out []cal.Day) {
	for m := range 12 {
		out = append(out, cal.Of(refYear, time.Month(m+1), day))
	}
	return out
}

// courseOf lays out single days, each standing for a week or a month, and after
// them the hot hours of those from one to before another.
func courseOf(site Place, days []cal.Day, looks Looks, meanMJ []float64, hotFrom, hotTo int) *Course {
	c := &Course{Site: site}
	for w, day := range days {
		c.first = append(c.first, len(c.rays))
		mean := -1.0
		if w < len(meanMJ) {
			mean = meanMJ[w]
		}
		c.addWeek(stepsOf(site, day, looks.StepsADay), day, mean)
	}
	c.first = append(c.first, len(c.rays))
	for w := hotFrom; w < hotTo; w++ {
		c.addHot(w)
		c.first = append(c.first, len(c.rays))
	}
	c.rays = append(c.rays, spiralSky(looks.SkyRays)...)
	c.first = append(c.first, len(c.rays))
	c.group()
	return c
}

// group cuts each week's rays, and the sky's, in runs.
func (c *Course) group() {
	c.groups, c.firstGroup = nil, nil
	for w := 0; w+1 < len(c.first); w++ {
		c.firstGroup = append(c.firstGroup, len(c.groups))
		for a := c.first[w]; a < c.first[w+1]; a += groupRays {
			c.groups = append(c.groups, [2]int{a, min(a+groupRays, c.first[w+1])})
		}
	}
	c.firstGroup = append(c.firstGroup, len(c.groups))
}

// Weeks returns how many weeks the course holds.
func (c *Course) Weeks() int { return len(c.weeks) }

// Day returns the day that stands for week w, counted from 0.
func (c *Course) Day(w int) cal.Day { return c.weeks[w].day }

// DayHours returns how long the sun's centre is above the level in week w.
func (c *Course) DayHours(w int) float64 { return c.weeks[w].dayHours }

// OpenMol returns the light on open level ground in week w, mol/m²/day.
func (c *Course) OpenMol(w int) (clear, mean float64) {
	return c.weeks[w].open[0], c.weeks[w].open[1]
}

func (c *Course) addWeek(s sunDay, day cal.Day, meanMJ float64) {
	w := weekSun{day: day, sums: sunDay{topMJ: s.topMJ, setDeg: s.setDeg}}
	clear := ClearShare(c.Site.ElevM)
	global := [2]float64{s.topMJ * clear, meanMJ}
	w.diffuse = [2]float64{DiffuseDaily(clear, s.setDeg), s.meanDiffuse(meanMJ)}
	if meanMJ < 0 {
		global[1], w.diffuse[1] = global[0], w.diffuse[0]
	}
	at := len(c.rays)
	for i, d := range s.dirs {
		c.rays = append(c.rays, ray{d: d, hours: s.spans[i]})
		w.dayHours += s.spans[i]
	}
	for k := range global {
		w.open[k] = global[k] * MolPerMJ
		w.sky[k] = w.open[k] * w.diffuse[k]
		if len(s.dirs) == 0 {
			w.sky[k] = w.open[k]
			continue
		}
		for i, share := range s.beams(1, w.diffuse[k]) {
			c.rays[at+i].mol[k] = share * w.open[k] / s.dirs[i].Z
		}
	}
	c.weeks = append(c.weeks, w)
}

// addHot adds the hot hours of week w as a week of their own, with their part
// of the diffuse light by the course of [LiuJordan1960].
func (c *Course) addHot(w int) {
	hot := c.weeks[w]
	hot.dayHours, hot.open = 0, [2]float64{}
	all, kept := 0.0, 0.0
	for _, r := range c.rays[c.first[w]:c.first[w+1]] {
		all += r.d.Z * r.hours
		if h := hourAngle(c.Site.LatDeg, r.d); h < 0 || h > HotToDeg {
			continue
		}
		kept += r.d.Z * r.hours
		hot.dayHours += r.hours
		for k := range hot.open {
			hot.open[k] += r.mol[k] * r.d.Z
		}
		c.rays = append(c.rays, r)
	}
	for k := range hot.sky {
		if all > 0 {
			hot.sky[k] *= kept / all
		} else {
			hot.sky[k] = 0
		}
		hot.open[k] += hot.sky[k]
	}
	c.weeks = append(c.weeks, hot)
}

// stepsOf is the day cut into equal steps, of which only the part with the sun
// above the level counts.
func stepsOf(at Place, day cal.Day, n int) sunDay {
	var s sunDay
	dt := 24 / float64(n)
	sum, up := 0.0, sunAt(at, day, 0).Z > 0
	for i := range n {
		a, b := float64(i)*dt, float64(i+1)*dt
		was := up
		up = sunAt(at, day, b).Z > 0
		if was != up {
			edge := riseOrSet(at, day, a, b, was)
			if was {
				b = edge
			} else {
				a = edge
			}
		} else if !up {
			continue
		}
		d := sunAt(at, day, (a+b)/2)
		if b-a < changeH || d.Z <= 0 {
			continue
		}
		s.dirs = append(s.dirs, d)
		s.hours = append(s.hours, hourAngle(at.LatDeg, d))
		s.spans = append(s.spans, b-a)
		sum += d.Z * (b - a)
		s.setDeg += (b - a) / 2 * 15
	}
	r := sun.DistanceAU(day)
	s.topMJ = solarMJ * sum / (r * r)
	return s
}

// riseOrSet halves down to the second the sun crosses the level.
func riseOrSet(at Place, day cal.Day, a, b float64, upFirst bool) float64 {
	for b-a > changeH {
		if mid := (a + b) / 2; (sunAt(at, day, mid).Z > 0) == upFirst {
			a = mid
		} else {
			b = mid
		}
	}
	return (a + b) / 2
}

// spiralSky spreads n directions over the dome by the golden angle, so that no
// wall or row lines up with them. Their density by height z = sin(elevation)
// is 0.5 + z: between even over the dome, which suits upright faces, and even
// over the level circle, which suits level ones.
func spiralSky(n int) []ray {
	golden := math.Pi * (3 - math.Sqrt(5))
	out := make([]ray, n)
	sum := 0.0
	for i := range out {
		q := (float64(i) + 0.5) / float64(n)
		z := math.Sqrt(0.25+2*q) - 0.5
		s, c := math.Sincos(golden * float64(i))
		r := math.Sqrt(1 - z*z)
		out[i] = ray{d: geom.Vec{X: r * s, Y: r * c, Z: z}, solid: 1 / (0.5 + z)}
		sum += z * out[i].solid
	}
	for i := range out {
		out[i].solid *= math.Pi / sum // level open ground gets exactly one
	}
	neighbours(out)
	return out
}

// neighbours sorts rays by sectors of the compass, up one and down the next,
// so that rays that follow one another point nearly the same way.
func neighbours(rays []ray) {
	const sectors = 20
	sector := func(r ray) int { return int(r.d.BearingDeg() / 360 * sectors) }
	slices.SortStableFunc(rays, func(a, b ray) int {
		if d := sector(a) - sector(b); d != 0 {
			return d
		}
		if sector(a)%2 == 1 {
			a, b = b, a
		}
		return cmp.Compare(a.d.Z, b.d.Z)
	})
}
