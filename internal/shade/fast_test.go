package shade

import (
	"math"
	"math/rand/v2"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
)

// anyBody invents a body of any kind, about x and y of -6 to 6.
func anyBody(r *rand.Rand) Body {
	x, y := 12*r.Float64()-6, 12*r.Float64()-6
	turn, a, b, h := 360*r.Float64(), 0.2+3*r.Float64(), 0.2+3*r.Float64(), 0.2+4*r.Float64()
	base, t := 2*r.Float64(), r.Float64()
	switch r.IntN(14) {
	case 0:
		return Gable("shed", x, y, turn, a, b, 0, h, h+b/2, r.Float64())
	case 1:
		return Sloped("lid", x, y, base, turn, 90*r.Float64(), a, b, t)
	case 2:
		return Conifer("fir", x, y, a, base, base+h, t)
	case 3:
		return Mound("bush", x, y, a, base, base+h, t)
	case 4:
		return Parasol("parasol", x, y, base+h/2, a, turn, 90*r.Float64(), t)
	case 5:
		return Arch("arch", x, y, turn, a, b, base, base+h, t)
	case 6:
		return Ball("ball", x, y, base, a/2, t)
	case 7:
		return Post("pole", x, y, a/8, base, base+h)
	case 8:
		return Box("hanging box", x, y, turn, a, b, base, base+h)
	}
	return randomBody(r)
}

// anySurface invents a surface, level or not.
func anySurface(r *rand.Rand) Surface {
	x, y, z := 8*r.Float64()-4, 8*r.Float64()-4, 1.5*r.Float64()
	switch r.IntN(4) {
	case 0:
		return TiltedSurface("slope", geom.Vec{X: x, Y: y, Z: z}, 360*r.Float64(), 90*r.Float64(), 0.3+r.Float64(), 0.3+r.Float64())
	case 1:
		return TiltedSurface("wall", geom.Vec{X: x, Y: y, Z: z}, 360*r.Float64(), 90, 0.3+r.Float64(), 0.3+r.Float64())
	}
	return LevelSurface(Patch{Name: "bed", X: x, Y: y, Z: z, TurnDeg: 360 * r.Float64(), Length: 0.3 + 2*r.Float64(), Width: 0.3 + r.Float64(), Round: r.IntN(3) == 0})
}

// Ray by ray, a field and the plain caster see the same things in the way.
func TestFieldAgreesWithCasterRayByRay(t *testing.T) {
	rays, off := 0, 0
	for seed := range uint64(40) {
		r := rand.New(rand.NewPCG(seed, 2024))
		site := Place{LatDeg: 140*r.Float64() - 70, LonDeg: 360*r.Float64() - 180}
		c := NewCourse(site, cal.Of(2023, 1, 2)+cal.Day(r.IntN(365)), 2, Looks{24, 600}, nil)
		var s Scene
		for range 1 + r.IntN(6) {
			s.Bodies = append(s.Bodies, anyBody(r))
		}
		surf := anySurface(r)
		nu, nv := surf.Grid()
		for w := range c.Weeks() {
			scene := s.On(c.Day(w))
			for k := c.first[w]; k < c.first[w+1]; k++ {
				one := *c
				one.rays = []ray{c.rays[k]}
				one.weeks = c.weeks[w : w+1]
				one.first = []int{0, 1, 1}
				one.group()
				f := NewField(&one, []Surface{surf}, s.Bodies, false, 1)
				d := c.rays[k].d
				if d.Dot(surf.Normal()) <= 1e-6 {
					continue
				}
				for j := range nv {
					for i := range nu {
						rays++
						got := f.Week(0).Cell(0, i, j).Hours / c.rays[k].hours
						want := scene.Passes(surf.Cell(i, j), d, AnyMonth)
						if math.Abs(got-want) > 0.002 {
							off++
							if off < 6 {
								t.Logf("seed %d ray %v cell %d,%d: passes %.4f, caster %.4f\n%+v\n%+v", seed, d, i, j, got, want, surf, s.Bodies)
							}
						}
					}
				}
			}
		}
	}
	t.Logf("%d of %d rays differ", off, rays)
	if off > rays/2000 {
		t.Errorf("%d of %d rays differ", off, rays)
	}
}

// lastBits lists all whole numbers a field holds.
func lastBits(f *Field) []int64 {
	var out []int64
	for w := range f.course.Weeks() {
		l := f.Week(w)
		for i := range l.lost {
			out = append(append(out, l.lost[i]...), l.sky[i]...)
		}
	}
	return out
}

func firstDifference(a, b []int64) int {
	if len(a) != len(b) {
		return 0
	}
	for i := range a {
		if a[i] != b[i] {
			return i
		}
	}
	return -1
}

// A body that comes, moves, grows, loses its leaves and goes leaves no trace:
// after each step the field is, to the last bit, one made from nothing.
func TestChangesAreExact(t *testing.T) {
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(seed, 77))
		c := NewCourse(Place{LatDeg: 110*r.Float64() - 55}, cal.Of(2024, 1, 1), 3, Looks{48, 600}, []float64{5, 9, 13})
		c.weeks[1].day, c.weeks[2].day = cal.Of(2024, 5, 1), cal.Of(2024, 8, 1)
		var bodies []Body
		for range 6 {
			bodies = append(bodies, anyBody(r))
		}
		if seed%3 == 0 {
			bodies[5] = bodies[5].Between(0, cal.Of(2024, 6, 1))
		}
		if seed%4 == 0 {
			bodies[4] = Horizon("hills", 5, 20, 3, 12)
		}
		surfaces := []Surface{anySurface(r), anySurface(r), LevelSurface(Patch{Length: 7, Width: 0.5})}
		f := NewField(c, surfaces, bodies, true, 1)
		start := lastBits(f)
		if k := firstDifference(start, lastBits(NewField(c, surfaces, bodies, false, 2))); k >= 0 {
			t.Fatalf("seed %d: kept and plain field differ at %d", seed, k)
		}
		first := append([]Body(nil), bodies...)
		for step := range 10 {
			n := r.IntN(len(bodies))
			b := anyBody(r)
			switch r.IntN(4) {
			case 0:
				b = Body{}
			case 1:
				b = first[n]
			}
			was := lastBits(f)
			peeks := [][]int64{}
			for w := range c.Weeks() {
				l, err := f.Peek(w, n, b)
				if err != nil {
					t.Fatal(err)
				}
				one := []int64{}
				for i := range l.lost {
					one = append(append(one, l.lost[i]...), l.sky[i]...)
				}
				peeks = append(peeks, one)
			}
			if k := firstDifference(was, lastBits(f)); k >= 0 {
				t.Fatalf("seed %d step %d: looking changed number %d", seed, step, k)
			}
			bodies[n] = b
			if err := f.Replace(n, b); err != nil {
				t.Fatal(err)
			}
			anew := NewField(c, surfaces, bodies, step%2 == 0, 1)
			if k := firstDifference(lastBits(f), lastBits(anew)); k >= 0 {
				t.Fatalf("seed %d step %d: body %d to %q: number %d is %d, from nothing %d", seed, step, n, b.Name, k, lastBits(f)[k], lastBits(anew)[k])
			}
			flat := []int64{}
			for _, p := range peeks {
				flat = append(flat, p...)
			}
			if k := firstDifference(flat, lastBits(anew)); k >= 0 {
				t.Fatalf("seed %d step %d: the look ahead was wrong at %d", seed, step, k)
			}
		}
		for n, b := range first {
			if err := f.Replace(n, b); err != nil {
				t.Fatal(err)
			}
		}
		if k := firstDifference(start, lastBits(f)); k >= 0 {
			t.Fatalf("seed %d: number %d is not back", seed, k)
		}
	}
	if err := NewField(NewCourse(seattle, 0, 1, Looks{24, 600}, nil), nil, nil, false, 1).Replace(0, Body{}); err != ErrNotKept {
		t.Errorf("a field made without keep: %v", err)
	}
}
