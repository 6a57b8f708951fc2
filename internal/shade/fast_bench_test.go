package shade

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"bedweek/internal/geom"
)

// study is a garden of the size of the light study: 32 surfaces, about 4,600
// cells, with houses, walls, trees, trellises, an awning and posts, and the
// surfaces' own boxes. It is invented.
func study() ([]Surface, []Body) {
	r := rand.New(rand.NewPCG(32, 4600))
	bodies := []Body{
		Box("house", 0, 12, 5, 10, 7, 0, 6),
		Gable("house next door", 14, 0, 95, 9, 7, 0, 4, 7, 0.5),
		Gable("shed", -8, -5, 10, 3, 2, 0, 2, 2.8, 0.5),
		Wall("fence south", 0, -8, 0, 20, 0, 1.8),
		Wall("fence west", -10, 0, 90, 16, 0, 2),
		Tree("maple", 9, -7, 7, 10, 2.5, 0.15, 0.6, 5, 10),
		Tree("apple", -4, -6.5, 3.5, 4, 1.2, 0.25, 0.7, 4, 10),
		Tree("holly", -9, 6, 3, 5, 1, 0.08, 0.08, 0, 0),
		Awning("awning", 0, 7.5, 5, 4, 2, 2.5, 0.3),
		Ball("box bush", 6, 2, 0.5, 0.5, 0.1),
	}
	for i := range 6 {
		bodies = append(bodies, Sheet(fmt.Sprintf("trellis %d", i), -8+3*float64(i), 5.3-float64(i%3)*4, 10*float64(i), 2, 0.4, 2, 0.5))
	}
	for i := range 5 {
		bodies = append(bodies, Post(fmt.Sprintf("post %d", i), -6+3*float64(i), 6.4, 0.1, 0, 2.5))
	}
	var surfaces []Surface
	for i := range 32 {
		p := Patch{Name: fmt.Sprintf("s%02d", i), X: -7 + 2*float64(i%8) + 0.3*r.Float64(), Y: -5.5 + 3.3*float64(i/8) + 0.5*r.Float64(),
			Z: 0.2 + 0.6*r.Float64(), TurnDeg: 20*r.Float64() - 10, Length: 1.6, Width: 0.9}
		if i%8 == 7 {
			p.Length, p.Width, p.Round = 1.2, 1.2, true
		}
		surfaces = append(surfaces, LevelSurface(p))
	}
	return surfaces, bodies
}

func cellsOf(s []Surface) int {
	n := 0
	for _, x := range s {
		a, b := x.Grid()
		n += a * b
	}
	return n
}

func studyCourse(steps int) *Course {
	return NewCourse(seattle, YearStart(2025), 52, Looks{steps, 600}, nil)
}

// timed runs the benchmark and adds the processor time of each run.
func timed(b *testing.B, run func(i int)) {
	at, n := cpuSeconds(), 0
	for b.Loop() {
		run(n)
		n++
	}
	b.ReportMetric((cpuSeconds()-at)*1000/float64(n), "cpu-ms/op")
}

// A year of the study's garden, the two engines in turn. Compare the
// cpu-ms/op.
func BenchmarkStudyYear(b *testing.B) {
	surfaces, bodies := study()
	c := studyCourse(144)
	b.Logf("%d surfaces, %d cells, %d sun and %d sky directions, %d bodies", len(surfaces), cellsOf(surfaces), c.first[52], c.first[53]-c.first[52], len(bodies))
	b.Run("rays", func(b *testing.B) {
		timed(b, func(int) { traced(c, surfaces, bodies, false) })
	})
	b.Run("rays, culled", func(b *testing.B) {
		timed(b, func(int) { traced(c, surfaces, bodies, true) })
	})
	b.Run("field", func(b *testing.B) {
		timed(b, func(int) { NewField(c, surfaces, bodies, false, 1) })
	})
	b.Run("kept", func(b *testing.B) {
		timed(b, func(int) { NewField(c, surfaces, bodies, true, 1) })
	})
}

func BenchmarkStudyCourse(b *testing.B) {
	timed(b, func(int) { studyCourse(144) })
}

// A moved trellis, tree and fence.
func BenchmarkStudyMove(b *testing.B) {
	surfaces, bodies := study()
	f := NewField(studyCourse(144), surfaces, bodies, true, 1)
	for _, n := range []int{12, 6, 3, 0} {
		moved := moveBody(bodies[n], 0.3)
		b.Run("year/"+bodies[n].Name, func(b *testing.B) {
			timed(b, func(i int) { f.Replace(n, []Body{moved, bodies[n]}[i%2]) })
		})
		f.Replace(n, bodies[n])
		b.Run("week/"+bodies[n].Name, func(b *testing.B) {
			timed(b, func(int) { f.Peek(20, n, moved) })
		})
	}
}

// moveBody shifts a body of the study east.
func moveBody(b Body, by float64) Body {
	out := Body{Name: b.Name, Parts: slices.Clone(b.Parts)}
	d := geom.Vec{X: by}
	for i := range out.Parts {
		switch s := out.Parts[i].Solid.(type) {
		case geom.Box:
			s.At = s.At.Add(d)
			out.Parts[i].Solid = s
		case geom.Sheet:
			s.Corner = s.Corner.Add(d)
			out.Parts[i].Solid = s
		case geom.Cylinder:
			s.At = s.At.Add(d)
			out.Parts[i].Solid = s
		case geom.Ellipsoid:
			s.At = s.At.Add(d)
			out.Parts[i].Solid = s
		}
	}
	return out
}

// The rest of the file is the measure: a ray tracer written to be quick. Each
// body is turned into the tracer's own plain numbers, made ready once for each
// surface and direction; within a ray the opaque ones come first, large ones
// leading, and end it.

type tracedPart struct {
	opaque               bool
	pass                 [53]float64 // by week; then for the sky's one season
	ball                 geom.Vec
	radius               float64
	box                  *geom.Box
	sin, cos, hx, hy, hz float64
	cyl                  *geom.Cylinder
	ell                  *geom.Ellipsoid
	sheet                *tracedSheet
	planes               *geom.Convex
	normal               []geom.Vec
	offset               []float64
}

type tracedSheet struct {
	corner, n, a, b geom.Vec
	off, la, lb     float64
}

func tracedParts(c *Course, bodies []Body) []tracedPart {
	var out []tracedPart
	for _, b := range bodies {
		for _, p := range b.Parts {
			q := tracedPart{}
			for w := range c.weeks {
				q.pass[w] = p.PassesOn(c.Day(w))
			}
			q.opaque = q.pass[0] == 0
			var rim []geom.Vec
			switch s := p.Solid.(type) {
			case geom.Box:
				q.box = &s
				q.sin, q.cos = math.Sincos(s.TurnDeg * math.Pi / 180)
				q.hx, q.hy, q.hz = s.Length/2, s.Width/2, s.Height
				rim = s.Rim(geom.Vec{})
			case geom.Cylinder:
				q.cyl, rim = &s, s.Rim(geom.Vec{})
			case geom.Ellipsoid:
				q.ell = &s
				q.ball, q.radius = s.At, max(s.Radius, s.HalfHeight)
			case geom.Sheet:
				n := s.A.Cross(s.B).Unit()
				q.sheet = &tracedSheet{s.Corner, n, s.A.Unit(), s.B.Unit(), n.Dot(s.Corner), s.A.Len(), s.B.Len()}
				rim = s.Rim(geom.Vec{})
			case geom.Convex:
				q.planes, rim = &s, s.Corners
				for _, f := range s.Faces {
					n := s.Corners[f[1]].Sub(s.Corners[f[0]]).Cross(s.Corners[f[2]].Sub(s.Corners[f[1]])).Unit()
					q.normal = append(q.normal, n)
					q.offset = append(q.offset, n.Dot(s.Corners[f[0]]))
				}
			}
			if rim != nil {
				for _, v := range rim {
					q.ball = q.ball.Add(v.Scale(1 / float64(len(rim))))
				}
				for _, v := range rim {
					q.radius = max(q.radius, v.Sub(q.ball).Len())
				}
			}
			out = append(out, q)
		}
	}
	slices.SortStableFunc(out, func(a, b tracedPart) int {
		if a.opaque != b.opaque {
			if a.opaque {
				return -1
			}
			return 1
		}
		return int(math.Copysign(1, b.radius-a.radius))
	})
	return out
}

// readied is a part made ready for one direction.
type readied struct {
	p       *tracedPart
	x, y, z float64 // 1 / direction in a box's own axes
	A, k    float64
	d       geom.Vec
	pass    float64
}

func (p *tracedPart) ready(d geom.Vec, w int) readied {
	r := readied{p: p, d: d, pass: p.pass[w]}
	switch {
	case p.box != nil:
		r.x, r.y, r.z = 1/(d.X*p.cos-d.Y*p.sin), 1/(d.X*p.sin+d.Y*p.cos), 1/d.Z
	case p.cyl != nil:
		r.A, r.z = 1/(d.X*d.X+d.Y*d.Y), 1/d.Z
	case p.ell != nil:
		r.d = geom.Vec{X: d.X / p.ell.Radius, Y: d.Y / p.ell.Radius, Z: d.Z / p.ell.HalfHeight}
		r.A = r.d.X*r.d.X + r.d.Y*r.d.Y + r.d.Z*r.d.Z
	case p.sheet != nil:
		r.k = 1 / (d.X*p.sheet.n.X + d.Y*p.sheet.n.Y + d.Z*p.sheet.n.Z)
	}
	return r
}

func (r *readied) hit(o *geom.Vec) bool {
	p := r.p
	switch {
	case p.box != nil:
		b := p.box
		ox, oy, oz := o.X-b.At.X, o.Y-b.At.Y, o.Z-b.At.Z
		lx, ly := ox*p.cos-oy*p.sin, ox*p.sin+oy*p.cos
		a, c := (-p.hx-lx)*r.x, (p.hx-lx)*r.x
		near, far := min(a, c), max(a, c)
		a, c = (-p.hy-ly)*r.y, (p.hy-ly)*r.y
		near, far = max(near, min(a, c)), min(far, max(a, c))
		a, c = -oz*r.z, (p.hz-oz)*r.z
		near, far = max(near, min(a, c), 0), min(far, max(a, c))
		return far-near > 1e-9
	case p.cyl != nil:
		x, y, z := o.X-p.cyl.At.X, o.Y-p.cyl.At.Y, o.Z-p.cyl.At.Z
		B := (x*r.d.X + y*r.d.Y) * r.A
		D := B*B - (x*x+y*y-p.cyl.Radius*p.cyl.Radius)*r.A
		if D <= 0 {
			return false
		}
		s := math.Sqrt(D)
		a, c := -z*r.z, (p.cyl.Height-z)*r.z
		near, far := max(0, -B-s, min(a, c)), min(-B+s, max(a, c))
		return far-near > 1e-9
	case p.ell != nil:
		e := p.ell
		x, y, z := (o.X-e.At.X)/e.Radius, (o.Y-e.At.Y)/e.Radius, (o.Z-e.At.Z)/e.HalfHeight
		B := x*r.d.X + y*r.d.Y + z*r.d.Z
		D := B*B - r.A*(x*x+y*y+z*z-1)
		return D > 0 && -B+math.Sqrt(D) > 1e-9
	case p.sheet != nil:
		s := p.sheet
		t := (s.off - o.X*s.n.X - o.Y*s.n.Y - o.Z*s.n.Z) * r.k
		if !(t > 1e-9) {
			return false
		}
		x, y, z := o.X+t*r.d.X-s.corner.X, o.Y+t*r.d.Y-s.corner.Y, o.Z+t*r.d.Z-s.corner.Z
		a := x*s.a.X + y*s.a.Y + z*s.a.Z
		if a < 0 || a > s.la {
			return false
		}
		b := x*s.b.X + y*s.b.Y + z*s.b.Z
		return b >= 0 && b <= s.lb
	}
	near, far := 0.0, math.Inf(1)
	for i, n := range p.normal {
		room := p.offset[i] - n.X*o.X - n.Y*o.Y - n.Z*o.Z
		rate := n.X*r.d.X + n.Y*r.d.Y + n.Z*r.d.Z
		if rate > 0 {
			far = min(far, room/rate)
		} else {
			near = max(near, room/rate)
		}
		if far-near <= 1e-9 {
			return false
		}
	}
	return true
}

// tracedCell is what the tracer finds for a cell.
type tracedCell struct {
	hours, mol [52]float64
	sky        float64 // leaf on, the season of week 26
}

// traced works the study out ray by ray.
//
// Without cull every ray asks every body in front of the surface, as a tracer
// does that knows nothing of surfaces; with it, bodies that cannot shade any of
// the surface from one direction are left out for all of its cells at once.
func traced(c *Course, surfaces []Surface, bodies []Body, cull bool) [][]tracedCell {
	parts := tracedParts(c, bodies)
	out := make([][]tracedCell, len(surfaces))
	var live []readied
	for k, s := range surfaces {
		nu, nv := s.Grid()
		at := make([]geom.Vec, 0, nu*nv)
		for j := range nv {
			for i := range nu {
				at = append(at, s.Cell(i, j))
			}
		}
		out[k] = make([]tracedCell, len(at))
		n := s.Normal()
		reach := math.Hypot(s.Length, s.Width) / 2
		one := func(i, w int, put func(cell int, pass, cos float64)) {
			d := c.rays[i].d
			cos := d.Dot(n)
			if cos <= 0 {
				return
			}
			live = live[:0]
			for q := range parts {
				p := &parts[q]
				m := p.ball.Sub(s.Middle)
				along := m.Dot(d)
				if m.Dot(n)+p.radius <= 0 || p.pass[w] == 1 {
					continue
				}
				if cull && (along < -p.radius-reach || m.Dot(m)-along*along > (p.radius+reach)*(p.radius+reach)) {
					continue
				}
				live = append(live, p.ready(d, w))
			}
			for cell := range at {
				pass := 1.0
				for q := range live {
					if live[q].hit(&at[cell]) {
						pass *= live[q].pass
						if pass == 0 {
							break
						}
					}
				}
				if pass > 0 {
					put(cell, pass, cos)
				}
			}
		}
		for w := range c.weeks {
			for i := c.first[w]; i < c.first[w+1]; i++ {
				r := &c.rays[i]
				one(i, w, func(cell int, pass, cos float64) {
					o := &out[k][cell]
					o.hours[w] += pass * r.hours
					o.mol[w] += pass * r.mol[0] * cos
				})
			}
		}
		for i := c.first[52]; i < c.first[53]; i++ {
			one(i, 26, func(cell int, pass, cos float64) {
				out[k][cell].sky += pass * c.rays[i].solid * cos / math.Pi
			})
		}
	}
	return out
}

// The measure and the field agree on the study's garden, so that their times
// may be compared.
func TestStudyTracedAgrees(t *testing.T) {
	surfaces, bodies := study()
	c := studyCourse(144)
	began := time.Now()
	rays := traced(c, surfaces, bodies, true)
	middle := time.Now()
	f := NewField(c, surfaces, bodies, false, 1)
	t.Logf("traced %v, field %v", middle.Sub(began), time.Since(middle))
	hours, sky, mol, n := 0.0, 0.0, 0.0, 0.0
	for s := range surfaces {
		nu, _ := surfaces[s].Grid()
		for k := range rays[s] {
			for w := range 52 {
				got := f.Week(w).Cell(s, k%nu, k/nu)
				hours += math.Abs(got.Hours - rays[s][k].hours[w])
				mol += math.Abs(got.MolClear - c.weeks[w].sky[0]*got.SkyView - rays[s][k].mol[w])
				if w == 26 {
					sky += math.Abs(got.SkyView-rays[s][k].sky) * 52
				}
				n++
			}
		}
	}
	t.Logf("mean difference: %.6f h/day, %.6f mol, sky view %.6f", hours/n, mol/n, sky/n)
	if hours/n > 0.003 || sky/n > 0.0005 || mol/n > 0.005 {
		t.Errorf("field and tracer differ by %.4f h/day, %.4f mol and %.5f of the sky", hours/n, mol/n, sky/n)
	}
}
