package shade

import (
	"math"
)

// CellLight is the light on one cell in one week, a day of its middle.
type CellLight struct {
	HoursOpaque float64 // hours of sun with nothing at all in the way
	Hours       float64 // hours of sun, half light counted half
	SkyView     float64 // cosine-weighted sky view factor
	MolClear    float64 // mol/m²/day on a clear day
	MolMean     float64 // mol/m²/day under the week's mean sky
}

// WeekLight is one week of a [Field]. It shows the field as it is when asked,
// or, from [Field.Peek], as it would be.
type WeekLight struct {
	f         *Field
	week      int
	lost, sky [][]int64 // by tile
}

// Week returns week w, counted from 0.
func (f *Field) Week(w int) *WeekLight {
	out := &WeekLight{f: f, week: w}
	for i := range f.tiles {
		out.lost = append(out.lost, f.tiles[i].lost[w])
		out.sky = append(out.sky, f.tiles[i].sky[f.epochOf[w]])
	}
	return out
}

// cell reads cell k of tile i.
func (l *WeekLight) cell(i, k int) CellLight {
	t := &l.f.tiles[i]
	whole, sky := &t.whole[l.week], t.whole[len(t.lost)][1]
	at := l.lost[i][4*k : 4*k+4]
	num := func(q int) float64 { return float64(whole[q]-at[q]) / valueUnit }
	out := CellLight{HoursOpaque: num(0), Hours: num(1), SkyView: float64(sky-l.sky[i][4*k+1]) / skyUnit}
	w := &l.f.course.weeks[l.week]
	out.MolClear = num(2) + w.sky[0]*out.SkyView
	out.MolMean = num(3) + w.sky[1]*out.SkyView
	return out
}

// Cell returns the light on the cell in column i, row j of surface s.
func (l *WeekLight) Cell(s, i, j int) CellLight {
	for k := range l.f.tiles {
		if t := &l.f.tiles[k]; t.surf == s && i >= t.col0 && i < t.col0+t.nu {
			return l.cell(k, j*t.nu+i-t.col0)
		}
	}
	panic("shade: no such cell")
}

// Span is how a figure runs over a surface's cells.
type Span struct {
	Min  float64 `json:"min"`
	Mean float64 `json:"mean"`
	Max  float64 `json:"max"`
}

// SurfaceLight is one surface in one week.
type SurfaceLight struct {
	Cells                       int
	HoursOpaque, Hours, SkyView Span
	MolClear, MolMean           Span
	Classes                     []float64 // share of the area by class of hours
}

// Surface returns surface s in this week; see [MeanSurface].
func (l *WeekLight) Surface(s int, thresholdsH []float64, skip func(i, j int) bool) SurfaceLight {
	return MeanSurface([]*WeekLight{l}, s, thresholdsH, skip)
}

// MeanSurface returns surface s with each cell's light the mean of some weeks
// of one field, and its area split by thresholds of sun hours, which must
// rise: class 0 lies below the first, the last class at or above the last.
// skip, when not nil, leaves cells out.
func MeanSurface(weeks []*WeekLight, s int, thresholdsH []float64, skip func(i, j int) bool) SurfaceLight {
	out := SurfaceLight{Classes: make([]float64, len(thresholdsH)+1)}
	if len(weeks) == 0 {
		return out
	}
	f := weeks[0].f
	sum := newSummer()
	for k := range f.tiles {
		t := &f.tiles[k]
		if t.surf != s {
			continue
		}
		for j := range t.nv {
			for i := range t.nu {
				if !f.surfaces[s].Counts(t.col0+i, j) || skip != nil && skip(t.col0+i, j) {
					continue
				}
				c := meanCell(weeks, k, j*t.nu+i)
				sum.add(&c)
				class := 0
				for class < len(thresholdsH) && c.Hours >= thresholdsH[class] {
					class++
				}
				out.Classes[class]++
			}
		}
	}
	if sum.n == 0 {
		return out
	}
	out.Cells = sum.n
	for i := range out.Classes {
		out.Classes[i] /= float64(sum.n)
	}
	for i, p := range [5]*Span{&out.HoursOpaque, &out.Hours, &out.SkyView, &out.MolClear, &out.MolMean} {
		*p = sum.span[i]
		p.Mean /= float64(sum.n)
	}
	return out
}

func meanCell(weeks []*WeekLight, tile, cell int) CellLight {
	var out CellLight
	n := float64(len(weeks))
	for _, l := range weeks {
		c := l.cell(tile, cell)
		out.HoursOpaque += c.HoursOpaque / n
		out.Hours += c.Hours / n
		out.SkyView += c.SkyView / n
		out.MolClear += c.MolClear / n
		out.MolMean += c.MolMean / n
	}
	return out
}

// summer adds up cells, in order.
type summer struct {
	n    int
	span [5]Span
}

func newSummer() *summer {
	s := &summer{}
	for i := range s.span {
		s.span[i].Min = math.Inf(1)
	}
	return s
}

func (s *summer) add(c *CellLight) {
	s.n++
	for i, v := range [5]float64{c.HoursOpaque, c.Hours, c.SkyView, c.MolClear, c.MolMean} {
		p := &s.span[i]
		p.Min, p.Max, p.Mean = min(p.Min, v), max(p.Max, v), p.Mean+v
	}
}
