package reckon

import (
	"fmt"
	"math"
	"sort"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/ledger"
	"bedweek/internal/shade"
)

// The view from a space, unrolled as the eye sees it that looks to the
// equator's side: in the north from east through south to west, in the south
// from west through north to east. So the picture can be held against what
// stands there; in the south the sun then crosses it from right to left.
//
// Method: from the middle of the ground, just above the rim, rays go out every
// skyStepDeg of bearing, at each degree of height from the top down; where the
// first meets something opaque the edge is halved down to a twentieth of a
// degree. Things that let light through are kept apart, with the share they let
// through in leaf and bare. Corrections overrule both.
//
// Left out: things thinner than a degree (a wire), and holes below an edge.

const skyStepDeg = 2

// SkylineView is the view from one space, and its sun by month. The picture
// and its tables are drawn from it.
type SkylineView struct {
	Space, Name string
	Left, Right float64 // bearings of the picture's ends, Left < Right; Left may lie below 0 in the south
	South       bool    // the equator's side is north
	Points      []SkyPoint
	Paths       []SunPath
	Months      [12]MonthSun
	Strips      []Strip // along the bed
	Edges       []ledger.EdgeNote
	Guessed     bool // nobody measured what stands around: edges are dashed
	Mean        bool // the mean light is the weather's
}

// SkyPoint is the view at one bearing.
type SkyPoint struct {
	BearingDeg float64
	EdgeDeg    float64 // of everything opaque, 0 = open
	What       string  // what makes the edge, "" = nothing
	Seen       bool    // the gardener corrected it here
	VeilLow    float64 // what lets some light through, from here
	VeilHigh   float64 // up to here; 0 = nothing
	Leaf, Bare float64 // share of light that passes it
	Veil       string  // what it is
}

// SunPath is the sun's way over the sky on one day.
type SunPath struct {
	Day    cal.Day
	Name   string
	Steps  []SunStep
	Hours  float64 // of direct sun, half light counted half
	Spells []SunSpell
}

// SunStep is the sun at one moment, every ten minutes.
type SunStep struct {
	Hour       float64 // by the clock
	BearingDeg float64
	HeightDeg  float64
	Passes     float64 // share of the sun's light that arrives
}

// SunSpell is a stretch with sun, by the clock; each look stands for the ten
// minutes around it.
type SunSpell struct {
	From, To float64
	Half     bool // through something that lets light through
}

// MonthSun is one bar: hours of direct sun on a clear day at the points of the
// space, and what clouds leave of them.
type MonthSun struct {
	Hours      [5]float64 // at the points, tenth to nine tenths
	Mean       float64
	Least      float64 // at the darkest point
	Most       float64
	Cloudy     float64 // of the mean, in a month of mean cloud; -1 = no weather
	MolMean    float64 // mol/m²/day
	MolClear   float64
	Low, High  float64 // mean hours were everything a seventh higher or lower; only when guessed
	SkyPercent float64
}

// Strip is a fifth of the bed, along its length.
type Strip struct {
	Name  string
	Hours float64 // mean over the growing half of the year
}

// eye is the point of a surface from which the view is drawn: its middle, or
// the open cell nearest to it.
func (d *LightDesk) eye(s int) (geom.Vec, bool) {
	f := d.light.Field.Surfaces()[s]
	nu, nv := f.Grid()
	best, found := geom.Vec{}, false
	for j := range nv {
		for i := range nu {
			if !f.Counts(i, j) || d.light.Buried(s, i, j) {
				continue
			}
			if c := f.Cell(i, j); !found || c.Sub(f.Middle).Len() < best.Sub(f.Middle).Len()-1e-9 {
				best, found = c, true
			}
		}
	}
	if found && best.Sub(f.Middle).Len() < 0.12 {
		best = f.Middle
	}
	return best, found
}

// Skyline draws the view from a space; false when there is no such open ground.
func (d *LightDesk) Skyline(space string) (*SkylineView, bool) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if v, ok := d.views[space]; ok {
		return v, true
	}
	s, ok := d.light.surfaceOf(space)
	if !ok {
		return nil, false
	}
	at, ok := d.eye(s)
	if !ok {
		return nil, false
	}
	g := d.light.Garden
	sp := d.light.Space(s)
	v := &SkylineView{Space: space, Name: spaceName(sp), South: g.Place.LatDeg < 0, Mean: d.light.Mean}
	for _, k := range g.Guessed {
		v.Guessed = v.Guessed || k == "obstacles"
	}
	for _, e := range d.edges {
		if e.Space == space {
			v.Edges = append(v.Edges, e)
		}
	}
	seen := d.light.Field.Surfaces()[s].Mends
	for _, day := range sunDays(d.date.Year()) {
		v.Paths = append(v.Paths, d.path(at, seen, day))
	}
	v.frame()
	parts := d.solids()
	for b := v.Left; b <= v.Right+1e-9; b += skyStepDeg {
		v.Points = append(v.Points, skyPoint(parts, seen, at, geom.Turn360(b)))
	}
	for m := range v.Months {
		v.Months[m] = d.monthSun(s, m)
	}
	if v.Guessed {
		d.widen(v, s)
	}
	v.Strips = d.strips(s)
	d.views[space] = v
	return v, true
}

// EdgeAt returns the height of the edge seen from a space at a bearing.
func (d *LightDesk) EdgeAt(space string, bearingDeg float64) (deg float64, ok bool) {
	d.mu.Lock()
	defer d.mu.Unlock()
	s, ok := d.light.surfaceOf(space)
	if !ok {
		return 0, false
	}
	at, ok := d.eye(s)
	if !ok {
		return 0, false
	}
	p := skyPoint(d.solids(), d.light.Field.Surfaces()[s].Mends, at, geom.Turn360(bearingDeg))
	return p.EdgeDeg, true
}

// sunDays are the three days whose paths are drawn.
func sunDays(year int) []cal.Day {
	return []cal.Day{cal.Of(year, time.June, 21), cal.Of(year, time.March, 21), cal.Of(year, time.December, 21)}
}

// frame chooses the picture's ends: east to west, or wider where the sun rises
// beyond east, all round where it does not set.
func (v *SkylineView) frame() {
	middle, widest := 180.0, 90.0
	if v.South {
		middle = 0
	}
	for _, p := range v.Paths {
		for _, s := range p.Steps {
			off := math.Abs(math.Mod(s.BearingDeg-middle+540, 360) - 180)
			widest = max(widest, off)
		}
	}
	widest = min(180, math.Ceil((widest+4)/10)*10)
	v.Left, v.Right = middle-widest, middle+widest
}

// X places a bearing on the picture, 0 at its left end and 1 at its right.
func (v *SkylineView) X(bearingDeg float64) float64 {
	middle := (v.Left + v.Right) / 2
	off := math.Mod(bearingDeg-middle+540, 360) - 180
	return 0.5 + off/(v.Right-v.Left)
}

// solid is a part with its body's name, as the gardener knows it.
type solid struct {
	name string
	shade.Part
}

func (d *LightDesk) solids() []solid {
	var out []solid
	for i, b := range d.scene.Bodies {
		name := d.thingName(i)
		for _, p := range b.Parts {
			out = append(out, solid{name, p})
		}
	}
	return out
}

func (s solid) dark() bool { return s.InLeaf == 0 && s.Bare == 0 }

// skyPoint looks out at one bearing.
func skyPoint(parts []solid, seen []shade.Mend, at geom.Vec, bearing float64) SkyPoint {
	p := SkyPoint{BearingDeg: bearing}
	blocks := func(h float64, dark bool) (int, bool) {
		dir := geom.Direction(bearing, h)
		if open, known := shade.Mended(seen, dir); known {
			p.Seen = true
			return -1, dark && !open
		}
		for i := range parts {
			if parts[i].dark() == dark && parts[i].Solid.Crosses(at, dir) {
				return i, true
			}
		}
		return -1, false
	}
	edge := func(from, to float64, dark bool) float64 { // from is free, to is not
		for math.Abs(from-to) > 0.05 {
			if mid := (from + to) / 2; hit(blocks(mid, dark)) {
				to = mid
			} else {
				from = mid
			}
		}
		return to
	}
	for h := 89.5; h > 0; h-- {
		if who, ok := blocks(h, true); ok {
			p.EdgeDeg = round(edge(h+1, h, true), 10)
			p.What = "as you saw it"
			if who >= 0 {
				p.What = parts[who].name
			}
			break
		}
	}
	for h := 89.5; h > p.EdgeDeg; h-- {
		who, ok := blocks(h, false)
		if !ok {
			continue
		}
		if p.VeilHigh == 0 {
			p.VeilHigh = round(edge(h+1, h, false), 10)
			p.Veil, p.Leaf, p.Bare = parts[who].name, parts[who].InLeaf, parts[who].Bare
		}
		p.VeilLow = max(p.EdgeDeg, h-0.5)
	}
	if p.VeilLow > 0 && p.VeilLow-p.EdgeDeg < 1 {
		p.VeilLow = p.EdgeDeg
	}
	return p
}

func hit(_ int, ok bool) bool { return ok }

// passes is the share of light that comes to a point on a day.
func (d *LightDesk) passes(scene *shade.Scene, seen []shade.Mend, at, towards geom.Vec) float64 {
	if open, known := shade.Mended(seen, towards); known {
		if open {
			return 1
		}
		return 0
	}
	return scene.Passes(at, towards, shade.AnyMonth)
}

// path follows the sun over one day, every ten minutes.
func (d *LightDesk) path(at geom.Vec, seen []shade.Mend, day cal.Day) SunPath {
	g := d.light.Garden
	scene := d.scene.On(day)
	p := SunPath{Day: day, Name: day.Short()}
	for k := range 6*24 + 1 {
		solar := float64(k) / 6
		dir := sunTowards(g, nil, day, solar)
		if dir.Z <= 0 {
			continue
		}
		s := SunStep{Hour: clockHour(g, d.zone, day, solar), BearingDeg: dir.BearingDeg(), HeightDeg: dir.ElevationDeg(),
			Passes: d.passes(scene, seen, at, dir)}
		p.Steps = append(p.Steps, s)
		p.Hours += s.Passes / 6
		if s.Passes < 0.01 {
			continue
		}
		half, from, to := s.Passes < 0.99, max(s.Hour-1.0/12, 0), min(s.Hour+1.0/12, 24)
		if n := len(p.Spells); n > 0 && p.Spells[n-1].Half == half && from-p.Spells[n-1].To < 0.01 {
			p.Spells[n-1].To = to
		} else {
			p.Spells = append(p.Spells, SunSpell{from, to, half})
		}
	}
	p.Hours = min(p.Hours, 24)
	return p
}

// Words tells a path's sun in a sentence.
func (p SunPath) Words() string {
	if len(p.Steps) == 0 {
		return p.Name + ": the sun does not rise."
	}
	if len(p.Spells) == 0 {
		return p.Name + ": no direct sun here."
	}
	s := ""
	for i, sp := range p.Spells {
		if i > 0 {
			s += ", "
		}
		s += clockWords(toFive(sp.From)) + " to " + clockWords(toFive(sp.To))
		if sp.Half {
			s += " (through leaves or mesh)"
		}
	}
	return fmt.Sprintf("%s: about %.1f hours of sun. %s.", p.Name, p.Hours, s)
}

// toFive rounds an hour of the day to five minutes: no look at the sun is
// closer.
func toFive(hour float64) float64 { return math.Round(hour*12) / 12 }

// monthSun is a space's sun in a month, 0 to 11.
func (d *LightDesk) monthSun(s, m int) MonthSun {
	f := d.light.Field
	weeks := d.light.Weeks(m + 1)
	o := d.light.Over(s, weeks)
	out := MonthSun{Mean: o.Hours.Mean, Least: o.Hours.Min, Most: o.Hours.Max, Cloudy: -1, MolMean: o.MolMean.Mean, MolClear: o.MolClear.Mean, SkyPercent: 100 * o.SkyView.Mean}
	cells := d.cells(s, weeks)
	sort.Float64s(cells)
	for k := range out.Hours {
		if len(cells) > 0 {
			out.Hours[k] = quantile(cells, 0.1+0.2*float64(k))
		}
	}
	if d.light.Mean {
		share := 0.0
		for _, w := range weeks {
			clear, mean := f.Course().OpenMol(w)
			share += brightShare(clear, mean, d.light.Garden.Place.Elev.M) / float64(len(weeks))
		}
		out.Cloudy = out.Mean * share
	}
	return out
}

// brightShare is the share of a day's sunshine that mean clouds leave:
// [FAO56] equation 35, Rs = (0.25 + 0.50 n/N) Ra, solved for n/N.
func brightShare(clear, mean, elevM float64) float64 {
	if clear <= 0 {
		return 0
	}
	return min(max((mean/clear*shade.ClearShare(elevM)-0.25)/0.5, 0), 1)
}

// cells are the mean hours of each open cell of a surface over some weeks.
func (d *LightDesk) cells(s int, weeks []int) []float64 {
	f := d.light.Field
	looks := d.looks(weeks)
	nu, nv := f.Surfaces()[s].Grid()
	var out []float64
	for j := range nv {
		for i := range nu {
			if !f.Surfaces()[s].Counts(i, j) || d.light.Buried(s, i, j) {
				continue
			}
			h := 0.0
			for _, w := range looks {
				h += w.Cell(s, i, j).Hours / float64(len(looks))
			}
			out = append(out, h)
		}
	}
	return out
}

// looks are some weeks of the field.
func (d *LightDesk) looks(weeks []int) []*shade.WeekLight {
	out := make([]*shade.WeekLight, len(weeks))
	for i, w := range weeks {
		out[i] = d.light.Field.Week(w)
	}
	return out
}

// growingHalf is the half of the year in which most grows, months 0 to 11.
func growingHalf(lat float64) [6]int {
	if lat < 0 {
		return [6]int{9, 10, 11, 0, 1, 2}
	}
	return [6]int{3, 4, 5, 6, 7, 8}
}

// strips says where along a bed the light changes: fifths of its length, over
// the growing half of the year. Short spaces have none.
func (d *LightDesk) strips(s int) []Strip {
	f := d.light.Field.Surfaces()[s]
	nu, nv := f.Grid()
	if f.Length < 1 || f.Round || nu < 5 {
		return nil
	}
	var weeks []int
	for _, m := range growingHalf(d.light.Garden.Place.LatDeg) {
		weeks = append(weeks, d.light.Weeks(m+1)...)
	}
	looks := d.looks(weeks)
	from, to := geom.Compass(f.Along.Scale(-1).BearingDeg()), geom.Compass(f.Along.BearingDeg())
	names := [5]string{from + " end", "towards " + from, "middle", "towards " + to, to + " end"}
	out := make([]Strip, 5)
	for k := range out {
		out[k].Name = names[k]
		n := 0
		for i := k * nu / 5; i < (k+1)*nu/5; i++ {
			for j := range nv {
				if !f.Counts(i, j) || d.light.Buried(s, i, j) {
					continue
				}
				n++
				for _, w := range looks {
					out[k].Hours += w.Cell(s, i, j).Hours / float64(len(looks))
				}
			}
		}
		if n == 0 {
			return nil
		}
		out[k].Hours /= float64(n)
	}
	return out
}

// guessShare is how far a height that nobody measured may be out: our own
// choice, about what a guess by eye is worth.
const guessShare = 1.0 / 7

// widen works the bars out again with everything a seventh higher and lower.
func (d *LightDesk) widen(v *SkylineView, s int) {
	f := d.light.Field
	surface := f.Surfaces()[s]
	skip := func(i, j int) bool { return d.light.Buried(s, i, j) }
	for k, by := range [2]float64{1 + guessShare, 1 - guessShare} {
		g := *d.light.Garden
		g.Obstacles = append(g.Obstacles[:0:0], g.Obstacles...)
		for i := range g.Obstacles {
			g.Obstacles[i].Height.M *= by
			g.Obstacles[i].Base.M *= by
		}
		other := shade.NewField(f.Course(), []shade.Surface{surface}, bodies(&g), false, 1)
		for m := range v.Months {
			var ws []*shade.WeekLight
			for _, w := range d.light.Weeks(m + 1) {
				ws = append(ws, other.Week(w))
			}
			h := shade.MeanSurface(ws, 0, nil, skip).Hours.Mean
			if k == 0 {
				v.Months[m].Low, v.Months[m].High = h, h
			}
			v.Months[m].Low, v.Months[m].High = min(v.Months[m].Low, h), max(v.Months[m].High, h)
		}
	}
}
