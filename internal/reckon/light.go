package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/ledger"
	"bedweek/internal/shade"
	"bedweek/internal/weather"
)

// GardenLight is the light on every hand-breadth of a garden, by week. What
// grows in the garden is not among the bodies.
type GardenLight struct {
	Garden *garden.Garden
	Field  *shade.Field
	Bodies []shade.Body
	Mean   bool  // the mean light is the weather's; else it is a clear day's
	space  []int // by surface: index of its space
	buried [][]bool
}

// sunClassesH part a space's ground by hours of direct sun: below 4 h, 4 to
// 6 h, 6 h or more. Common practice for leaf, root and fruit crops.
var sunClassesH = [2]float64{4, 6}

// NewGardenLight works out a garden's light in the weeks from a Monday on. rec
// or norm may give the weather; with neither, only clear days are known. looks
// says how closely. With keep, bodies may be changed afterwards.
func NewGardenLight(g *garden.Garden, rec *weather.Record, norm *weather.Normals, start cal.Day, weeks int, looks shade.Looks, keep bool, workers int) *GardenLight {
	return newGardenLight(g, nil, rec, norm, start, weeks, looks, keep, workers)
}

// newGardenLight is NewGardenLight with what was seen of the sky.
func newGardenLight(g *garden.Garden, edges []ledger.EdgeNote, rec *weather.Record, norm *weather.Normals, start cal.Day, weeks int, looks shade.Looks, keep bool, workers int) *GardenLight {
	l := &GardenLight{Garden: g, Bodies: bodies(g)}
	mean := weeklyMJ(g, rec, norm, start, weeks)
	l.Mean = mean != nil
	gr := groundsOf(g, l.Bodies, edges)
	l.space, l.buried = gr.space, gr.buried
	surfaces := gr.surfaces
	site := shade.Place{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
	course := shade.NewCourse(site, start, weeks, looks, mean)
	l.Field = shade.NewField(course, surfaces, l.Bodies, keep, workers)
	return l
}

// grounds are the planting surfaces of a garden.
type grounds struct {
	surfaces []shade.Surface
	space    []int    // by surface: index of its space
	buried   [][]bool // by surface: cells that are no part of it
}

// groundsOf lists the surfaces under the open sky: lamp shelves are left out.
func groundsOf(g *garden.Garden, bodies []shade.Body, edges []ledger.EdgeNote) grounds {
	var out grounds
	for i, sp := range g.Spaces {
		s := shade.LevelSurface(patch(sp))
		if sp.Kind == garden.LampShelf || s.Length <= 0 || s.Width <= 0 {
			continue
		}
		s.Mends = mends(edges, sp.ID)
		out.surfaces = append(out.surfaces, s)
		out.space = append(out.space, i)
		out.buried = append(out.buried, buried(s, bodies))
	}
	return out
}

// skip reports whether a cell of a surface is no part of its space.
func (g *grounds) skip(s, i, j int) bool {
	nu, _ := g.surfaces[s].Grid()
	return g.buried[s][j*nu+i]
}

// weeklyMJ is the mean radiation of each week; nil when it is not known.
func weeklyMJ(g *garden.Garden, rec *weather.Record, norm *weather.Normals, start cal.Day, weeks int) []float64 {
	if rec == nil && norm == nil {
		return nil
	}
	p := g.Place
	days, ok := weather.MeanYear(rec, norm, weather.Site{LatDeg: p.LatDeg, LonDeg: p.LonDeg, ElevM: p.Elev.M})
	if !ok {
		return nil
	}
	out := make([]float64, weeks)
	for w := range out {
		for d := range 7 {
			out[w] += days[(start+cal.Day(7*w+d)).YearDay()-1].RadMJ / 7
		}
	}
	return out
}

// buried marks the cells that stand inside an opaque body, such as the ground
// of a tier that carries the next one: nothing can grow there, and they are
// no part of the space.
func buried(s shade.Surface, bodies []shade.Body) []bool {
	nu, nv := s.Grid()
	out := make([]bool, nu*nv)
	for _, b := range bodies {
		for _, p := range b.Parts {
			if p.InLeaf > 0 || p.Bare > 0 {
				continue
			}
			for k := range out {
				out[k] = out[k] || geom.Inside(p.Solid, s.Cell(k%nu, k/nu))
			}
		}
	}
	return out
}

// Buried reports whether a cell of a surface is no part of its space.
func (l *GardenLight) Buried(s, i, j int) bool {
	nu, _ := l.Field.Surfaces()[s].Grid()
	return l.buried[s][j*nu+i]
}

// Space returns the space whose ground surface s is.
func (l *GardenLight) Space(s int) garden.Space { return l.Garden.Spaces[l.space[s]] }

// bodies is everything that takes light: obstacles, supports, the spaces' own
// boxes and bags, and what stands in them that is no crop of the book.
func bodies(g *garden.Garden) []shade.Body {
	out := scene(g).Bodies
	for _, sp := range g.Spaces {
		if b, ok := container(sp); ok {
			out = append(out, b)
		}
		out = append(out, otherBodies(sp)...)
	}
	return out
}

// containerName begins the name of a space's body; its id follows.
const containerName = "space "

// container is the body of a space that stands above its floor: down to the
// floor for boxes and bags, no deeper than its medium for what hangs or stands
// on legs or on another tier.
func container(sp garden.Space) (shade.Body, bool) {
	low, top := sp.Floor.M, sp.Rim.M
	switch sp.Kind {
	case garden.Ground, garden.Bench, garden.LampShelf:
		return shade.Body{}, false
	case garden.ElevatedBed, garden.Tier, garden.Railing, garden.Hanging:
		low = max(low, top-sp.Depth.M)
	}
	if top <= low {
		return shade.Body{}, false
	}
	name := containerName + string(sp.ID)
	if sp.Round.Known() {
		return shade.Post(name, sp.X, sp.Y, sp.Round.M, low, top), true
	}
	if sp.Figure != nil {
		return shade.Shaped(name, sp.Figure, sp.X, sp.Y, sp.TurnDeg, low, top), true
	}
	return shade.Box(name, sp.X, sp.Y, sp.TurnDeg, sp.Length.M, sp.Width.M, low, top), true
}

// Weeks lists the field's weeks whose middle day lies in a month, 1 to 12.
func (l *GardenLight) Weeks(month int) (out []int) {
	for w := range l.Field.Course().Weeks() {
		if int(l.Field.Day(w).Month()) == month {
			out = append(out, w)
		}
	}
	return out
}

// Over returns the light on surface s, mean over some weeks.
func (l *GardenLight) Over(s int, weeks []int) shade.SurfaceLight {
	return l.over(s, l.weekLights(weeks))
}

// weekLights are the field's light in some weeks.
func (l *GardenLight) weekLights(weeks []int) (out []*shade.WeekLight) {
	for _, w := range weeks {
		out = append(out, l.Field.Week(w))
	}
	return out
}

// over is Over for weeks already asked for.
func (l *GardenLight) over(s int, weeks []*shade.WeekLight) shade.SurfaceLight {
	return shade.MeanSurface(weeks, s, sunClassesH[:], func(i, j int) bool { return l.Buried(s, i, j) })
}

// Export returns the field made ready to be written out for some weeks of a
// year, told as year-Wnn.
func (l *GardenLight) Export(year int, weeks []int) *shade.Export {
	return &shade.Export{Field: l.Field, Bodies: l.Bodies, Weeks: weeks, Skip: l.Buried,
		Group: func(w int) string { return fmt.Sprintf("%d-W%02d", year, w+1) }}
}
