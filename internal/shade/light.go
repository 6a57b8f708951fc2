package shade

import (
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
)

// Patch is a level surface: a rectangle about X, Y at height Z, or a circle of
// diameter Length when Round.
type Patch struct {
	Name          string
	X, Y, Z       float64
	TurnDeg       float64
	Length, Width float64
	Round         bool
	Figure        *geom.Figure // an odd shape about the middle, in the box of Length and Width
}

// Light is the light on a patch, mean over its points, January first.
type Light struct {
	SunH     [12]float64 // hours of direct sun on the 21st, clear sky
	Share    [12]float64 // of the open field's daily light under a mean sky, 0 to 1
	HotShade [12]float64 // share of the open field's light from noon to five that does not arrive; 0 = all does, or the sun is not up. Only [Lights] says it
	SkyView  float64     // cosine-weighted sky view factor, mean of the months
	DLI      [12]float64 // mol/m2/day under a mean sky
	DLIClear [12]float64 // mol/m2/day on a clear day in the middle of the month
}

// refYear is the year whose sun stands for all: the sun's course on a date
// shifts by less than 0.4° from year to year.
const refYear = 2023

// sunHoursDay is the day of the month whose sun hours are told; lightDay is
// nearest to the month's mean sun, for the daily light.
const (
	sunHoursDay = 21
	lightDay    = 15
)

// Patch works out the light on p. mean is the mean global radiation on open
// level ground by month, MJ/m2/day; 0 means that there is none, and then Share
// is what an overcast sky would give.
//
// The result does not depend on what else runs, and is the same each time.
func (s *Scene) Patch(p Patch, site Place, mean [12]float64) Light {
	points := p.points()
	lights := make([]Light, len(points))
	var year [12]month
	for m := range year {
		year[m].light = newSunDay(site, cal.Of(refYear, time.Month(m+1), lightDay))
		year[m].hours = newCourse(site, cal.Of(refYear, time.Month(m+1), sunHoursDay))
	}
	sky := CoarseSky()
	for i, at := range points {
		lights[i] = s.light(Receptor{At: at, Normal: geom.Up()}, site, &year, sky, mean)
	}
	return meanLight(lights)
}

// month is the sun of one month: the day for the light, the day for the hours.
type month struct {
	light sunDay
	hours *course
}

// light works out one receptor.
func (s *Scene) light(r Receptor, site Place, year *[12]month, sky Sky, mean [12]float64) Light {
	var l Light
	views := s.SkyViewYear(sky, r)
	for m := range 12 {
		l.SkyView += views[m] / 12
		l.SunH[m] = DayHours(s.spells(r, year[m].hours))

		day := &year[m].light
		through := s.through(r, day, m+1)
		clear := day.topMJ * ClearShare(site.ElevM)
		l.DLIClear[m] = clear * MolPerMJ *
			day.shareOf(through, views[m], DiffuseDaily(ClearShare(site.ElevM), day.setDeg))
		l.Share[m] = day.shareOf(through, views[m], day.meanDiffuse(mean[m]))
		l.DLI[m] = l.Share[m] * max(0, mean[m]) * MolPerMJ
	}
	return l
}

// through returns, for each step of the day, the receptor's beam as a share of
// that on open level ground.
func (s *Scene) through(r Receptor, day *sunDay, month int) []float64 {
	out := make([]float64, len(day.dirs))
	for i, d := range day.dirs {
		if c := r.BeamFactor(d); c > 0 {
			out[i] = c / d.Z * s.Passes(r.At, d, month)
		}
	}
	return out
}

// meanDiffuse is the diffuse share under a mean sky; all of it when there is
// no light to speak of.
func (s *sunDay) meanDiffuse(meanMJ float64) float64 {
	if !(meanMJ > 0) || s.topMJ <= 0 {
		return 1
	}
	return DiffuseMonthly(meanMJ/s.topMJ, s.setDeg)
}

// shareOf joins beam and sky into the share of the open field's light.
func (s *sunDay) shareOf(through []float64, skyView, diffuse float64) float64 {
	if len(through) == 0 {
		return skyView
	}
	sum := diffuse * skyView
	for i, w := range s.beams(1, diffuse) {
		sum += w * through[i]
	}
	return sum
}

func meanLight(ls []Light) Light {
	var out Light
	n := float64(len(ls))
	for _, l := range ls {
		out.SkyView += l.SkyView / n
		for m := range 12 {
			out.SunH[m] += l.SunH[m] / n
			out.Share[m] += l.Share[m] / n
			out.DLI[m] += l.DLI[m] / n
			out.DLIClear[m] += l.DLIClear[m] / n
		}
	}
	return out
}

// points returns the middles of three by two equal pieces of a rectangle; of a
// circle, the middle and five points round it, each for a sixth of the area;
// of an odd shape, the middles of its cells.
func (p Patch) points() []geom.Vec {
	at := geom.Vec{X: p.X, Y: p.Y, Z: p.Z}
	var out []geom.Vec
	if p.Figure != nil {
		s := LevelSurface(p)
		nu, nv := s.Grid()
		for k := range nu * nv {
			if s.Counts(k%nu, k/nu) {
				out = append(out, s.Cell(k%nu, k/nu))
			}
		}
		return out
	}
	if p.Round {
		const ring = 0.764 // halves the outer five sixths by area
		out = append(out, at)
		for i := range 5 {
			out = append(out, at.Add(geom.Direction(p.TurnDeg+72*float64(i), 0).Scale(ring*p.Length/2)))
		}
		return out
	}
	along, across := geom.Direction(90+p.TurnDeg, 0), geom.Direction(p.TurnDeg, 0)
	for _, a := range [3]float64{-1.0 / 3, 0, 1.0 / 3} {
		for _, b := range [2]float64{-0.25, 0.25} {
			out = append(out, at.Add(along.Scale(a*p.Length)).Add(across.Scale(b*p.Width)))
		}
	}
	return out
}
