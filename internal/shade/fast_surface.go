package shade

import (
	"math"

	"bedweek/internal/geom"
)

// CellM is the size a surface's cells come nearest to, in metres.
const CellM = 0.1

// mostCells is about how many cells a surface is cut in at most; a field of
// many square metres gets larger ones.
const mostCells = 10000

// leastCells is about how many cells an odd shape is cut in at least: a narrow
// ring gets smaller ones.
const leastCells = 30

// Surface is a flat face that receives light, cut in cells of about [CellM]
// that fill it exactly (larger ones beyond some 100 m²); it may have any tilt and turn. Light comes from its
// upper side only, the side from which Along turns anticlockwise to Across.
type Surface struct {
	Name          string
	Middle        geom.Vec
	Along, Across geom.Vec // unit, at right angles
	Length, Width float64  // along, across
	Round         bool     // only the ellipse within counts
	Mends         []Mend   // what was seen of the sky from here; the last counts

	odd  []bool  // cells of an odd shape, row by row; nil = a rectangle or a round
	cell float64 // their size, m
}

// LevelSurface is the surface of a patch, facing up.
func LevelSurface(p Patch) Surface {
	s := Surface{Name: p.Name, Middle: geom.Vec{X: p.X, Y: p.Y, Z: p.Z},
		Along: geom.Direction(90+p.TurnDeg, 0), Across: geom.Direction(p.TurnDeg, 0),
		Length: p.Length, Width: p.Width, Round: p.Round}
	if p.Figure == nil {
		return s
	}
	s.cell = min(CellM, math.Sqrt(p.Figure.AreaM2()/leastCells))
	nu, nv := s.Grid()
	s.odd = make([]bool, nu*nv)
	for k := range s.odd {
		x, y := s.share(k%nu, nu)*s.Length, s.share(k/nu, nv)*s.Width
		s.odd[k] = p.Figure.Holds(x, y)
	}
	return s
}

// share is where the middle of cell i of n lies, -0.5 to 0.5 of the side.
func (Surface) share(i, n int) float64 { return (float64(i)+0.5)/float64(n) - 0.5 }

// TiltedSurface is a rectangle about middle that faces a bearing, tilted up
// from level: 90 is upright, such as a pocket wall. Length runs level, width
// up the slope.
func TiltedSurface(name string, middle geom.Vec, facingDeg, tiltDeg, length, width float64) Surface {
	return Surface{Name: name, Middle: middle,
		Along: geom.Direction(facingDeg-90, 0), Across: geom.Direction(facingDeg+180, tiltDeg),
		Length: length, Width: width}
}

// Normal returns the unit direction the surface faces.
func (s Surface) Normal() geom.Vec { return s.Along.Cross(s.Across).Unit() }

// Grid returns how many cells lie along and across.
func (s Surface) Grid() (nu, nv int) {
	size := CellM
	if s.cell > 0 {
		size = s.cell
	}
	size = max(size, math.Sqrt(s.Length*s.Width/mostCells), max(s.Length, s.Width)/mostCells)
	n := func(m float64) int { return max(1, int(math.Round(m/size))) }
	return n(s.Length), n(s.Width)
}

// Cell returns the middle of the cell in column i, row j.
func (s Surface) Cell(i, j int) geom.Vec {
	nu, nv := s.Grid()
	return s.Middle.
		Add(s.Along.Scale(s.share(i, nu) * s.Length)).
		Add(s.Across.Scale(s.share(j, nv) * s.Width))
}

// Counts reports whether a cell's middle belongs to the surface: all of a
// rectangle's, those within the rim of a round one or an odd shape.
func (s Surface) Counts(i, j int) bool {
	if s.odd == nil && !s.Round {
		return true
	}
	nu, nv := s.Grid()
	if s.odd != nil {
		return s.odd[j*nu+i]
	}
	a, b := 2*(float64(i)+0.5)/float64(nu)-1, 2*(float64(j)+0.5)/float64(nv)-1
	return a*a+b*b <= 1
}

// tile is a piece of a surface at most 64 cells wide, so that a row of cells
// is one machine word. Its frame has the middle of its first cell as origin,
// x and y counted in cells, z in metres out of the face.
type tile struct {
	surf, col0 int
	nu, nv     int
	o, u, v, n geom.Vec
	pu, pv     float64 // cells per metre
	full       uint64
	lowZ       float64 // lowest world height of a cell's middle
}

// tiles cuts surface number k; one without area has none.
func tiles(k int, s Surface) []tile {
	if !(s.Length > 0 && s.Width > 0) {
		return nil
	}
	nu, nv := s.Grid()
	var out []tile
	for c := 0; c < nu; c += 64 {
		t := tile{surf: k, col0: c, nu: min(64, nu-c), nv: nv, o: s.Cell(c, 0),
			u: s.Along, v: s.Across, n: s.Normal(),
			pu: float64(nu) / s.Length, pv: float64(nv) / s.Width}
		t.full = ^uint64(0) >> (64 - t.nu)
		t.lowZ = math.Inf(1)
		for _, i := range [2]int{c, c + t.nu - 1} {
			for _, j := range [2]int{0, nv - 1} {
				t.lowZ = min(t.lowZ, s.Cell(i, j).Z)
			}
		}
		out = append(out, t)
	}
	return out
}

// local turns a world point into the tile's frame.
func (t *tile) local(p geom.Vec) geom.Vec {
	q := p.Sub(t.o)
	return geom.Vec{X: q.Dot(t.u) * t.pu, Y: q.Dot(t.v) * t.pv, Z: q.Dot(t.n)}
}

// along turns a world vector into the tile's frame.
func (t *tile) along(q geom.Vec) geom.Vec {
	return geom.Vec{X: q.Dot(t.u) * t.pu, Y: q.Dot(t.v) * t.pv, Z: q.Dot(t.n)}
}
