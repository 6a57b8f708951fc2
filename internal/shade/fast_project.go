package shade

import "math"

// slant is a ray seen from a tile: a point z metres in front of the tile's
// plane throws its shadow kx·z cells west and ky·z cells south of its foot.
type slant struct {
	kx, ky float64
	cos    float64 // to the tile's normal; not above 0 from behind
}

func (t *tile) slants(c *Course) []slant {
	out := make([]slant, len(c.rays))
	for i := range c.rays {
		d := c.rays[i].d
		cos := d.Dot(t.n)
		if cos <= 1e-9 { // along the face: touching is not crossing
			continue
		}
		out[i] = slant{kx: d.Dot(t.u) * t.pu / cos, ky: d.Dot(t.v) * t.pv / cos, cos: cos}
	}
	return out
}

// spread is the range of slants of a group of rays.
type spread struct {
	any                      bool // some ray meets the tile's face
	lowX, highX, lowY, highY float64
}

func spreads(c *Course, slants []slant) []spread {
	out := make([]spread, len(c.groups))
	for g, span := range c.groups {
		p := &out[g]
		for _, s := range slants[span[0]:span[1]] {
			if s.cos <= 0 {
				continue
			}
			if !p.any {
				*p = spread{true, s.kx, s.kx, s.ky, s.ky}
			}
			p.lowX, p.highX = min(p.lowX, s.kx), max(p.highX, s.kx)
			p.lowY, p.highY = min(p.lowY, s.ky), max(p.highY, s.ky)
		}
	}
	return out
}

// missesAll reports quickly that a shape's shadow cannot touch the tile under
// any ray of a group.
func (p *shape) missesAll(t *tile, s *spread) bool {
	reach := func(k float64, up bool) float64 { // the least or the most of z·k
		if (k > 0) == up {
			return p.high.Z * k
		}
		return p.low.Z * k
	}
	return p.high.X-reach(s.lowX, false) < 0 || p.low.X-reach(s.highX, true) > float64(t.nu-1) ||
		p.high.Y-reach(s.lowY, false) < 0 || p.low.Y-reach(s.highY, true) > float64(t.nv-1)
}

// rows is a shadow on a tile: for rows r0..r1 the columns lo up to, not with,
// hi.
type rows struct {
	r0, r1 int
	lo, hi []uint8
	xl, xr []float64 // scratch
}

func newRows(nv int) rows {
	return rows{lo: make([]uint8, nv), hi: make([]uint8, nv), xl: make([]float64, nv), xr: make([]float64, nv)}
}

// misses reports quickly that a shape's shadow cannot touch the tile.
func (p *shape) misses(t *tile, s *slant) bool {
	a, b := p.low.Z*s.kx, p.high.Z*s.kx
	if a > b {
		a, b = b, a
	}
	if p.high.X-a < 0 || p.low.X-b > float64(t.nu-1) {
		return true
	}
	a, b = p.low.Z*s.ky, p.high.Z*s.ky
	if a > b {
		a, b = b, a
	}
	return p.high.Y-a < 0 || p.low.Y-b > float64(t.nv-1)
}

// project works out a shape's shadow on a tile under ray number i, and reports
// whether any row has one. Rows without are given an empty interval.
func (p *shape) project(t *tile, f *form, c *Course, i int, s *slant, out *rows) bool {
	switch p.kind {
	case oval:
		return p.ovalRows(t, s, out)
	case capsule:
		return p.capsuleRows(t, s, out)
	case far:
		return false // the field asks the skyline itself
	}
	out.r0, out.r1 = t.nv, -1
	if p.all {
		p.allEdges(t, s, out)
	} else {
		p.outlineRows(t, p.outline(f, f.patOf[i]), s, out)
	}
	if out.r1 < out.r0 {
		return false
	}
	last, any := float64(t.nu-1), uint8(0)
	for r := out.r0; r <= out.r1; r++ {
		any |= out.put(r, out.xl[r], out.xr[r], last)
	}
	return any != 0
}

// put notes the columns whose middles lie between two places of a row, and
// returns 0 when there are none.
func (out *rows) put(r int, xl, xr, last float64) uint8 {
	if !(xl > -1) {
		xl = -1
	}
	if !(xl < last) {
		xl = last
	}
	if !(xr > -1) {
		xr = -1
	}
	if !(xr < last) {
		xr = last
	}
	lo, hi := uint8(int(xl+1)), uint8(int(xr+1))
	if lo >= hi {
		out.lo[r], out.hi[r] = 0, 0
		return 0
	}
	out.lo[r], out.hi[r] = lo, hi
	return hi
}

// rowSpan returns the rows above y0, up to y1.
func rowSpan(y0, y1 float64, nv int) (int, int) {
	last := float64(nv - 1)
	if y0 < -1 {
		y0 = -1
	}
	if y1 > last {
		y1 = last
	}
	if !(y0 < y1) {
		return 0, -1
	}
	return int(y0 + 1), int(y1+1) - 1
}

// outlineRows runs along the outline: going anticlockwise, an edge that rises
// bounds its rows on the right and one that falls on the left.
func (p *shape) outlineRows(t *tile, loop [][2]uint16, s *slant, out *rows) {
	for _, e := range loop {
		a, b := &p.at[e[0]], &p.at[e[1]]
		ya, yb := a.Y-a.Z*s.ky, b.Y-b.Z*s.ky
		if ya < yb {
			if r0, r1 := rowSpan(ya, yb, t.nv); r0 <= r1 {
				x := a.X - a.Z*s.kx
				slope := (b.X - b.Z*s.kx - x) / (yb - ya)
				for r := r0; r <= r1; r++ {
					out.xr[r] = x + (float64(r)-ya)*slope
				}
				out.r0, out.r1 = min(out.r0, r0), max(out.r1, r1)
			}
		} else if yb < ya {
			if r0, r1 := rowSpan(yb, ya, t.nv); r0 <= r1 {
				x := b.X - b.Z*s.kx
				slope := (a.X - a.Z*s.kx - x) / (ya - yb)
				for r := r0; r <= r1; r++ {
					out.xl[r] = x + (float64(r)-yb)*slope
				}
			}
		}
	}
}

// allEdges takes the outermost of all edges: slower, for solids of many faces.
func (p *shape) allEdges(t *tile, s *slant, out *rows) {
	for r := range out.xl {
		out.xl[r], out.xr[r] = math.Inf(1), math.Inf(-1)
	}
	for _, e := range p.edges {
		a, b := &p.at[e.a], &p.at[e.b]
		ya, yb := a.Y-a.Z*s.ky, b.Y-b.Z*s.ky
		xa, xb := a.X-a.Z*s.kx, b.X-b.Z*s.kx
		if ya > yb {
			ya, yb, xa, xb = yb, ya, xb, xa
		}
		r0, r1 := rowSpan(ya, yb, t.nv)
		if r0 > r1 {
			continue
		}
		slope := (xb - xa) / (yb - ya)
		for r := r0; r <= r1; r++ {
			x := xa + (float64(r)-ya)*slope
			out.xl[r], out.xr[r] = min(out.xl[r], x), max(out.xr[r], x)
		}
		out.r0, out.r1 = min(out.r0, r0), max(out.r1, r1)
	}
}

// ovalRows uses that an ellipsoid throws an ellipse. Where the tile's plane
// cuts the ellipsoid, an end of a row that would come from behind the plane is
// moved to the cut.
func (p *shape) ovalRows(t *tile, s *slant, out *rows) bool {
	kx, ky := s.kx, s.ky
	// The shadow's own covariance: of x - kx z and y - ky z.
	xz, yz := p.cov[3]-kx*p.cov[5], p.cov[4]-ky*p.cov[5]
	cxx := p.cov[0] - kx*p.cov[3] - kx*xz
	cxy := p.cov[1] - ky*p.cov[3] - kx*yz
	cyy := p.cov[2] - ky*p.cov[4] - ky*yz
	if !(cyy > 0) {
		return false
	}
	h := math.Sqrt(cyy)
	m := cxy / cyy
	det := max(0, cxx-cxy*m)
	w := math.Sqrt(det)
	cx, cy := p.mid.X-p.mid.Z*kx, p.mid.Y-p.mid.Z*ky
	r0, r1 := rowSpan(cy-h, cy+h, t.nv)
	if r0 > r1 {
		return false
	}
	out.r0, out.r1 = r0, r1
	last, any := float64(t.nu-1), uint8(0)
	inv := 1 / cyy
	if !p.cut {
		for r := r0; r <= r1; r++ {
			e := float64(r) - cy
			half := w * math.Sqrt(max(0, 1-e*e*inv))
			any |= out.put(r, cx+m*e-half, cx+m*e+half, last)
		}
		return any != 0
	}
	if !(det > 0) {
		return false
	}
	// Height of the grazed point over the middle's: alpha·x + beta·y.
	alpha := (xz - m*yz) / det
	beta := yz*inv - alpha*m
	for r := r0; r <= r1; r++ {
		e := float64(r) - cy
		half := w * math.Sqrt(max(0, 1-e*e*inv))
		xl, xr := m*e-half, m*e+half
		left, right := p.mid.Z+alpha*xl+beta*e > 0, p.mid.Z+alpha*xr+beta*e > 0
		xl, xr = cx+xl, cx+xr
		if !left || !right {
			f := float64(r) - p.cutY
			q := 1 - f*f/p.cutC[2]
			if !(q > 0) {
				if !left && !right {
					xl, xr = 0, -1
				}
			} else {
				mm := p.cutC[1] / p.cutC[2]
				hh := math.Sqrt(max(0, (p.cutC[0]-p.cutC[1]*mm)*q))
				if !left {
					xl = p.cutX + mm*f - hh
				}
				if !right {
					xr = p.cutX + mm*f + hh
				}
			}
		}
		any |= out.put(r, xl, xr, last)
	}
	return any != 0
}

// capsuleRows: a cylinder's shadow is an oval drawn along a line. In each row
// the outermost oval is the one whose rim there runs along that line.
func (p *shape) capsuleRows(t *tile, s *slant, out *rows) bool {
	kx, ky := s.kx, s.ky
	px, py := p.ex.X-p.ex.Z*kx, p.ex.Y-p.ex.Z*ky
	qx, qy := p.ey.X-p.ey.Z*kx, p.ey.Y-p.ey.Z*ky
	hh := py*py + qy*qy
	if !(hh > 0) {
		return false
	}
	h := math.Sqrt(hh)
	m := (px*py + qx*qy) / hh
	w := math.Abs(px*qy-py*qx) / h
	ax, ay := p.mid.X-p.mid.Z*kx, p.mid.Y-p.mid.Z*ky
	bx, by := p.top.X-p.top.Z*kx, p.top.Y-p.top.Z*ky
	r0, r1 := rowSpan(min(ay, by)-h, max(ay, by)+h, t.nv)
	if r0 > r1 {
		return false
	}
	out.r0, out.r1 = r0, r1
	dx, dy := bx-ax, by-ay
	last, any := float64(t.nu-1), uint8(0)
	const still = 1e-9
	tau, inv := 0.0, 0.0
	if math.Abs(dy) > still {
		inv = 1 / dy
		g := m - dx*inv
		if v := math.Hypot(g, w/h); v > 0 {
			tau = g / v
		}
	}
	for r := r0; r <= r1; r++ {
		y := float64(r) - ay
		var sl, sr float64
		if inv == 0 {
			sl, sr = 0, 1
			if dx < 0 {
				sl, sr = 1, 0
			}
		} else {
			sr = clamp01((y - h*tau) * inv)
			sl = clamp01((y + h*tau) * inv)
		}
		e := y - sr*dy
		xr := ax + sr*dx + m*e + w*math.Sqrt(max(0, 1-e*e/hh))
		e = y - sl*dy
		xl := ax + sl*dx + m*e - w*math.Sqrt(max(0, 1-e*e/hh))
		any |= out.put(r, xl, xr, last)
	}
	return any != 0
}

func clamp01(x float64) float64 {
	if !(x > 0) {
		return 0
	}
	if x > 1 {
		return 1
	}
	return x
}
