package shade

import (
	"math"

	"bedweek/internal/geom"
)

// meshSides is how many flat pieces stand for a full turn where a round solid
// has no closed form here: a cone, a post cut by a tilted surface, a dome seen
// from below its foot.
const meshSides = 48

// kind says how a shape's shadow is worked out.
type kind uint8

const (
	flat    kind = iota // corners and edges
	oval                // an ellipsoid or a disc
	capsule             // an upright cylinder: two equal ovals and all between
	far                 // a skyline: the same for all cells
)

// shape is one solid as one tile sees it: what lies in front of the tile's
// plane, in the tile's frame.
type shape struct {
	part       int
	kind       kind
	low, high  geom.Vec // bounds
	at         []geom.Vec
	edges      []edge
	sil        [][][2]uint16 // by pattern: edges of the outline, anticlockwise
	all        bool          // every edge is tried: more faces than a pattern holds
	mid        geom.Vec      // oval's middle; capsule's foot
	top        geom.Vec      // capsule's other end
	cov        [6]float64    // oval: xx, xy, yy, xz, yz, zz
	cut        bool          // oval crosses the tile's plane
	cutX, cutY float64       // the cut's own oval in the plane
	cutC       [3]float64
	ex, ey     geom.Vec // capsule's radii, level
}

// edge joins corners a and b; face f has it as a to b, face g as b to a.
type edge struct {
	a, b uint16
	f, g uint8
}

// noFace is the face made by the cut with the tile's plane: it never faces a
// light that the tile faces.
const noFace = 63

// form is a part's solid made ready for all tiles.
type form struct {
	at      []geom.Vec
	faces   [][]int
	normals []geom.Vec
	thin    bool
	pat     []uint64 // distinct patterns of faces turned to a ray
	patOf   []uint16 // by ray
}

// formOf prepares a solid as flat faces. Solids are taken a touch smaller and
// sheets a touch larger, so that touching is not crossing, as in geom.
func formOf(s geom.Solid, c *Course) *form {
	f := &form{}
	f.at, f.faces = geom.Faces(s, meshSides)
	f.at = append([]geom.Vec(nil), f.at...)
	f.thin = len(f.faces) == 1
	mid := geom.Vec{}
	for _, p := range f.at {
		mid = mid.Add(p.Scale(1 / float64(len(f.at))))
	}
	grow := -2 * geom.TouchM
	if f.thin {
		back := append([]int(nil), f.faces[0]...)
		for i, j := 0, len(back)-1; i < j; i, j = i+1, j-1 {
			back[i], back[j] = back[j], back[i]
		}
		f.faces = append(f.faces, back)
		grow = geom.TouchM
	}
	for i, p := range f.at {
		out := p.Sub(mid)
		f.at[i] = p.Add(out.Scale(grow / max(out.Len(), 1e-3)))
	}
	for _, face := range f.faces {
		n := geom.Vec{}
		for i := 1; i+1 < len(face); i++ {
			n = n.Add(f.at[face[i]].Sub(f.at[face[0]]).Cross(f.at[face[i+1]].Sub(f.at[face[0]])))
		}
		f.normals = append(f.normals, n.Unit())
	}
	if len(f.faces) < noFace {
		f.patterns(c)
	}
	return f
}

// patterns notes for each ray which faces are turned to it.
func (f *form) patterns(c *Course) {
	const inPlane = 1e-12 // as geom.Sheet
	seen := map[uint64]uint16{}
	last := ^uint64(0) // never a pattern: bit 63 stays clear
	f.patOf = make([]uint16, len(c.rays))
	for i := range c.rays {
		d, m := c.rays[i].d, uint64(0)
		for k, n := range f.normals {
			if n.Dot(d) > inPlane {
				m |= 1 << k
			}
		}
		if m == last {
			f.patOf[i] = f.patOf[i-1]
			continue
		}
		last = m
		id, ok := seen[m]
		if !ok {
			id = uint16(len(f.pat))
			seen[m] = id
			f.pat = append(f.pat, m)
		}
		f.patOf[i] = id
	}
}

// empty reports whether a solid takes no light at all.
func empty(s geom.Solid) bool {
	switch s := s.(type) {
	case geom.Box:
		return !(min(s.Length, s.Width, s.Height) > 0)
	case geom.Cylinder:
		return !(min(s.Radius, s.Height) > 0)
	case geom.Cone:
		return !(min(s.Radius, s.Height) > 0)
	case geom.Dome:
		return !(min(s.Radius, s.Height) > 0)
	case geom.Ellipsoid:
		return !(min(s.Radius, s.HalfHeight) > 0)
	case geom.Disc:
		return !(s.Radius > 0)
	case geom.Sheet:
		return s.A.Cross(s.B).Len() == 0
	case geom.Skyline:
		return len(s) == 0
	}
	return false
}

// see returns the part's shape for a tile; nil when all of it lies behind the
// tile's plane. form is made at most once, when first needed.
func (t *tile) see(part int, s geom.Solid, form func() *form) *shape {
	if empty(s) {
		return nil
	}
	switch s := s.(type) {
	case geom.Skyline:
		inf := math.Inf(1)
		return &shape{part: part, kind: far, low: geom.Vec{X: -inf, Y: -inf}, high: geom.Vec{X: inf, Y: inf}}
	case geom.Ellipsoid:
		return t.oval(part, s.At, [3]geom.Vec{{X: s.Radius}, {Y: s.Radius}, {Z: s.HalfHeight}})
	case geom.Disc:
		a, b := s.Axes()
		return t.oval(part, s.At, [3]geom.Vec{a.Scale(s.Radius), b.Scale(s.Radius)})
	case geom.Dome:
		if s.At.Z <= t.lowZ { // no ray of ours comes from below its foot
			return t.oval(part, s.At, [3]geom.Vec{{X: s.Radius}, {Y: s.Radius}, {Z: s.Height}})
		}
	case geom.Cylinder:
		if p := t.capsule(part, s); p != nil {
			return p
		}
	}
	return t.flat(part, form())
}

// oval is an ellipsoid by its half axes.
func (t *tile) oval(part int, mid geom.Vec, axes [3]geom.Vec) *shape {
	p := &shape{part: part, kind: oval, mid: t.local(mid)}
	for _, a := range axes {
		q := t.along(a)
		p.cov[0] += q.X * q.X
		p.cov[1] += q.X * q.Y
		p.cov[2] += q.Y * q.Y
		p.cov[3] += q.X * q.Z
		p.cov[4] += q.Y * q.Z
		p.cov[5] += q.Z * q.Z
	}
	h := geom.Vec{X: math.Sqrt(p.cov[0]), Y: math.Sqrt(p.cov[2]), Z: math.Sqrt(p.cov[5])}
	p.low, p.high = p.mid.Sub(h), p.mid.Add(h)
	if p.high.Z <= geom.TouchM {
		return nil
	}
	if p.low.Z < 0 {
		p.cut, p.low.Z = true, 0
		zz := p.cov[5]
		left := 1 - p.mid.Z*p.mid.Z/zz
		p.cutX, p.cutY = p.mid.X-p.mid.Z*p.cov[3]/zz, p.mid.Y-p.mid.Z*p.cov[4]/zz
		p.cutC = [3]float64{
			left * (p.cov[0] - p.cov[3]*p.cov[3]/zz),
			left * (p.cov[1] - p.cov[3]*p.cov[4]/zz),
			left * (p.cov[2] - p.cov[4]*p.cov[4]/zz)}
	}
	return p
}

// capsule is an upright post wholly in front of the tile's plane, or cut level
// by it; nil when it is cut askew or lies behind.
func (t *tile) capsule(part int, s geom.Cylinder) *shape {
	p := &shape{part: part, kind: capsule,
		mid: t.local(s.At), top: t.local(s.At.Add(geom.Vec{Z: s.Height})),
		ex: t.along(geom.Vec{X: s.Radius}), ey: t.along(geom.Vec{Y: s.Radius})}
	r := geom.Vec{X: math.Hypot(p.ex.X, p.ey.X), Y: math.Hypot(p.ex.Y, p.ey.Y), Z: math.Hypot(p.ex.Z, p.ey.Z)}
	low := min(p.mid.Z, p.top.Z) - r.Z
	switch {
	case r.Z < 1e-12 && p.top.Z > geom.TouchM && p.mid.Z < 0 && t.n.Z > 0: // level tile
		p.mid.Z = 0
	case low < 0:
		return nil
	}
	p.low = geom.Vec{X: min(p.mid.X, p.top.X) - r.X, Y: min(p.mid.Y, p.top.Y) - r.Y, Z: max(0, low)}
	p.high = geom.Vec{X: max(p.mid.X, p.top.X) + r.X, Y: max(p.mid.Y, p.top.Y) + r.Y, Z: max(p.mid.Z, p.top.Z) + r.Z}
	return p
}

// flat cuts a faceted solid by the tile's plane and keeps what is in front.
func (t *tile) flat(part int, f *form) *shape {
	p := &shape{part: part, kind: flat, all: f.patOf == nil}
	at := make([]geom.Vec, len(f.at))
	for i, v := range f.at {
		at[i] = t.local(v)
	}
	made := map[[2]int]int{} // corners made by the cut, by the edge cut
	crossing := func(a, b int) int {
		key := [2]int{min(a, b), max(a, b)}
		if i, ok := made[key]; ok {
			return i
		}
		va, vb := at[key[0]], at[key[1]]
		k := va.Z / (va.Z - vb.Z)
		v := va.Add(vb.Sub(va).Scale(k))
		v.Z = 0
		at = append(at, v)
		made[key] = len(at) - 1
		return len(at) - 1
	}
	ahead := func(i int) bool { return at[i].Z > geom.TouchM }
	face := map[[2]int]int{} // directed edge to its face
	var order [][2]int
	for k, loop := range f.faces {
		var kept []int
		for i, a := range loop {
			b := loop[(i+1)%len(loop)]
			if ahead(a) {
				kept = append(kept, a)
			}
			if ahead(a) != ahead(b) {
				kept = append(kept, crossing(a, b))
			}
		}
		for i, a := range kept {
			b := kept[(i+1)%len(kept)]
			if len(kept) > 2 && a != b {
				face[[2]int{a, b}] = k
				order = append(order, [2]int{a, b})
			}
		}
	}
	if len(order) == 0 {
		return nil
	}
	used := make([]int, len(at))
	take := func(i int) uint16 {
		if used[i] == 0 {
			p.at = append(p.at, at[i])
			used[i] = len(p.at)
		}
		return uint16(used[i] - 1)
	}
	for _, ab := range order {
		back, two := face[[2]int{ab[1], ab[0]}]
		if two && ab[0] > ab[1] {
			continue // met from its other side
		}
		e := edge{a: take(ab[0]), b: take(ab[1]), g: noFace}
		if !p.all {
			e.f = uint8(face[ab])
			if two {
				e.g = uint8(back)
			}
		}
		p.edges = append(p.edges, e)
	}
	p.low, p.high = p.at[0], p.at[0]
	for _, v := range p.at {
		p.low = geom.Vec{X: min(p.low.X, v.X), Y: min(p.low.Y, v.Y), Z: min(p.low.Z, v.Z)}
		p.high = geom.Vec{X: max(p.high.X, v.X), Y: max(p.high.Y, v.Y), Z: max(p.high.Z, v.Z)}
	}
	p.sil = make([][][2]uint16, len(f.pat))
	return p
}

// outline returns the edges between faces turned to the light and faces turned
// away, anticlockwise seen from the light.
func (p *shape) outline(f *form, pat uint16) [][2]uint16 {
	if got := p.sil[pat]; got != nil {
		return got
	}
	m := f.pat[pat]
	out := make([][2]uint16, 0, 8)
	for _, e := range p.edges {
		switch front, back := m>>e.f&1, m>>e.g&1; {
		case front == 1 && back == 0:
			out = append(out, [2]uint16{e.a, e.b})
		case front == 0 && back == 1:
			out = append(out, [2]uint16{e.b, e.a})
		}
	}
	p.sil[pat] = out
	return out
}
