package reckon

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/shade"
)

// Overhead is the garden from above in one week, at one hour of its middle day.
//
// Shadows are drawn as they fall on the plan's level ground; a terrace above it
// gets less of them than is drawn, so each space also says for itself whether
// the sun is on it.
type Overhead struct {
	Week           int // 1 to 52
	Day            cal.Day
	Hour           float64 // by the clock
	Sunrise        float64 // by the clock; both 0 when it does not rise or set
	Sunset         float64
	BearingDeg     float64
	HeightDeg      float64 // of the sun
	Up             bool
	MinX, MinY     float64 // of the drawing, metres
	MaxX, MaxY     float64
	Spaces         []SpaceAbove
	Things         []ThingAbove
	Mean           bool // the mean light is the weather's
	Clock          bool // hours are the clock's; else mean solar ones
	OpenMol        float64
	DayHours       float64
	LastWeekOfYear int
}

// SpaceAbove is one space from above.
type SpaceAbove struct {
	ID, Name string
	No       int // in walking order
	Outline  geom.Outline
	Light    shade.SurfaceLight
	SunStep  int     // 1 to 5, of hours of sun
	MolStep  int     // 1 to 5, of daily light
	Lit      float64 // share of the space in the sun at that hour
	Covered  bool    // no open ground, or under lamps
	High     bool    // stands on a building, over the shadows drawn on the ground
}

// ThingAbove is something that takes light, from above.
type ThingAbove struct {
	Name    string
	Outline geom.Outline
	Shadow  []geom.Outline // of its parts, together its shadow; nil with the sun down
	Half    bool           // it lets some light through
	Passes  float64        // its crown's share in that week
	High    bool           // stands on something above the ground
	Solid   bool           // a building or wall on the ground: drawn over shadows
}

// Steps of the amounts drawn, least value of each step but the first.
var (
	sunSteps = [4]float64{2, 4, 6, 8}    // hours a day
	molSteps = [4]float64{5, 10, 20, 30} // mol/m²/day
)

// StepWords are the five steps in words, for a key.
func StepWords(mol bool) [5]string {
	steps, unit := sunSteps, "h"
	if mol {
		steps, unit = molSteps, "mol"
	}
	out := [5]string{fmt.Sprintf("under %g %s", steps[0], unit)}
	for k := 1; k < 4; k++ {
		out[k] = fmt.Sprintf("%g to %g %s", steps[k-1], steps[k], unit)
	}
	out[4] = fmt.Sprintf("%g %s or more", steps[3], unit)
	return out
}

func stepOf(x float64, steps [4]float64) int {
	k := 1
	for _, s := range steps {
		if x >= s {
			k++
		}
	}
	return k
}

// Week52 is the week of the field's year in which a day lies, 1 to 52.
func (d *LightDesk) Week52(day cal.Day) int {
	w := int(day-d.light.Field.Day(0)+3) / 7
	return min(max(w+1, 1), d.light.Field.Course().Weeks())
}

// Overhead draws a week, 1 to 52, at an hour by the clock.
func (d *LightDesk) Overhead(week int, hour float64) *Overhead {
	d.mu.Lock()
	defer d.mu.Unlock()
	f := d.light.Field
	w := min(max(week, 1), f.Course().Weeks()) - 1
	hour = min(max(hour, 0), 24)
	day := f.Day(w)
	to := sunTowards(d.light.Garden, d.zone, day, hour)
	o := &Overhead{Week: w + 1, Day: day, Hour: hour, BearingDeg: to.BearingDeg(), HeightDeg: to.ElevationDeg(), Up: to.ElevationDeg() > geom.LowestSunDeg,
		Mean: d.light.Mean, Clock: d.zone != nil, DayHours: f.Course().DayHours(w), LastWeekOfYear: f.Course().Weeks()}
	_, o.OpenMol = f.Course().OpenMol(w)
	o.Sunrise, o.Sunset = d.riseSet(day)
	scene := d.scene.On(day)
	for i, sp := range d.light.Garden.Spaces {
		o.Spaces = append(o.Spaces, d.spaceAbove(i, sp, w, scene, to))
	}
	for i, b := range d.light.Bodies {
		if len(b.Parts) == 0 {
			continue
		}
		t := ThingAbove{Name: d.thingName(i), Outline: b.Footprint(), Passes: b.Parts[0].PassesOn(day)}
		t.Half = t.Passes > 0
		if id, ok := strings.CutPrefix(b.Name, containerName); ok {
			if sp, ok := d.light.Garden.Space(garden.SpaceID(id)); ok && sp.Figure != nil {
				t.Outline = spaceOutline(sp) // a dent is no part of it
			}
		}
		if i < len(d.light.Garden.Obstacles) {
			t.High = d.light.Garden.Obstacles[i].Base.M > 0.01 && d.light.Garden.Obstacles[i].Kind != "tree"
			t.Solid = !t.High && !t.Half
		}
		if o.Up {
			if s, ok := b.Shadows(to); ok {
				t.Shadow = s
			}
		}
		o.Things = append(o.Things, t)
	}
	o.bound()
	return o
}

// spaceAbove is one space in week w, counted from 0.
func (d *LightDesk) spaceAbove(i int, sp garden.Space, w int, scene *shade.Scene, to geom.Vec) SpaceAbove {
	out := SpaceAbove{ID: string(sp.ID), Name: spaceName(sp), No: i + 1, Outline: spaceOutline(sp), Covered: true, High: sp.Floor.M >= 1}
	s, ok := d.light.surfaceOf(out.ID)
	if !ok {
		return out
	}
	out.Light = d.light.Over(s, []int{w})
	if out.Light.Cells == 0 {
		return out
	}
	out.Covered = false
	out.SunStep, out.MolStep = stepOf(out.Light.Hours.Mean, sunSteps), stepOf(out.Light.MolMean.Mean, molSteps)
	if to.Z > 0 {
		out.Lit = d.lit(s, scene, to)
	}
	return out
}

// lit is the share of a surface that a ray from the sun reaches: up to about
// fifty of its cells are looked at.
func (d *LightDesk) lit(s int, scene *shade.Scene, to geom.Vec) float64 {
	f := d.light.Field.Surfaces()[s]
	nu, nv := f.Grid()
	stride := int(math.Ceil(math.Sqrt(float64(nu*nv) / 50)))
	sum, n := 0.0, 0
	for j := stride / 2; j < nv; j += stride {
		for i := stride / 2; i < nu; i += stride {
			if !f.Counts(i, j) || d.light.Buried(s, i, j) {
				continue
			}
			sum += d.passes(scene, f.Mends, f.Cell(i, j), to)
			n++
		}
	}
	if n == 0 {
		return 0
	}
	return sum / float64(n)
}

// riseSet are sunrise and sunset by the clock over a level horizon, to five
// minutes; both 0 when the sun does neither.
func (d *LightDesk) riseSet(day cal.Day) (rise, set float64) {
	was := sunTowards(d.light.Garden, nil, day, 0).Z > 0
	for k := 1; k <= 288; k++ {
		h := float64(k) / 12
		up := sunTowards(d.light.Garden, nil, day, h).Z > 0
		if up && !was {
			rise = clockHour(d.light.Garden, d.zone, day, h)
		}
		if was && !up {
			set = clockHour(d.light.Garden, d.zone, day, h)
		}
		was = up
	}
	return rise, set
}

// spaceOutline is a space from above.
func spaceOutline(sp garden.Space) geom.Outline {
	if sp.Round.Known() {
		return shade.Post("", sp.X, sp.Y, sp.Round.M, 0, 1).Footprint()
	}
	if sp.Figure != nil {
		return sp.Figure.At(geom.Vec{X: sp.X, Y: sp.Y}, sp.TurnDeg).Rings[0]
	}
	return shade.Box("", sp.X, sp.Y, sp.TurnDeg, sp.Length.M, sp.Width.M, 0, 1).Footprint()
}

// edgeM is how much is drawn around the spaces, metres.
const edgeM = 3

// bound sets the drawing's ends: the spaces and a margin.
func (o *Overhead) bound() {
	o.MinX, o.MinY, o.MaxX, o.MaxY = math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, s := range o.Spaces {
		for _, p := range s.Outline {
			o.MinX, o.MaxX = min(o.MinX, p.X), max(o.MaxX, p.X)
			o.MinY, o.MaxY = min(o.MinY, p.Y), max(o.MaxY, p.Y)
		}
	}
	if o.MinX > o.MaxX {
		o.MinX, o.MinY, o.MaxX, o.MaxY = 0, 0, 1, 1
	}
	o.MinX, o.MinY, o.MaxX, o.MaxY = o.MinX-edgeM, o.MinY-edgeM, o.MaxX+edgeM, o.MaxY+edgeM
}
