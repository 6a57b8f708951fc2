package geom

import (
	"math/rand/v2"
	"testing"
)

// Touching is not crossing, on the solids of this file's subjects too.
func TestTouchingSlopesAndRounds(t *testing.T) {
	gable := NewGable(Vec{}, 0, 4, 2, 2, 3, 0.5)
	cone, dome := Cone{Vec{}, 1, 2}, Dome{Vec{Z: 1}, 1, 2}
	disc := Disc{Vec{Z: 2}, Up(), 1}
	for _, tt := range []struct {
		name string
		s    Solid
		o, d Vec
		want bool
	}{
		{"roof, through the ridge", gable, Vec{0, -5, 2.9}, Direction(0, 0), true},
		{"roof, over the ridge", gable, Vec{0, -5, 3.1}, Direction(0, 0), false},
		{"roof, along its slope", gable, Vec{0, -2, 1}, Vec{0, 1, 1}.Unit(), false},
		{"roof, just under its slope", gable, Vec{0, -2, 0.99}, Vec{0, 1, 1}.Unit(), true},
		{"roof, standing on it", gable, Vec{0, -0.5, 2.5}, Up(), false},
		{"gable, its end's plane", gable, Vec{2, -5, 1}, Direction(0, 0), false},
		{"gable, its end's plane, a hair inside", gable, Vec{1.999, -5, 1}, Direction(0, 0), true},
		{"no volume", NewGable(Vec{}, 0, 4, 0, 2, 3, 0.5), Vec{0, -5, 1}, Direction(0, 0), false},
		{"cone, through", cone, Vec{3, 0, 1}, Direction(270, 0), true},
		{"cone, grazing", cone, Vec{3, 0.5, 1}, Direction(270, 0), false},
		{"cone, over its tip", cone, Vec{3, 0, 2.1}, Direction(270, 0), false},
		{"cone, its other half is not there", cone, Vec{3, 0, 3}, Direction(270, 0), false},
		{"cone, straight up inside", cone, Vec{0.4, 0, 0.5}, Up(), true},
		{"cone, from its tip", cone, Vec{0, 0, 2}, Up(), false},
		{"cone, from its foot down", cone, Vec{0, 0, 0}, Direction(0, -80), false},
		{"cone, no size", Cone{Vec{}, 0, 2}, Vec{3, 0, 1}, Direction(270, 0), false},
		{"dome, through", dome, Vec{3, 0, 2}, Direction(270, 0), true},
		{"dome, its lower half is not there", dome, Vec{3, 0, 0.5}, Direction(270, 0), false},
		{"dome, along its foot", dome, Vec{3, 0, 1}, Direction(270, 0), false},
		{"dome, up through its foot", dome, Vec{0.3, 0, 0}, Up(), true},
		{"dome, from its top", dome, Vec{0, 0, 3}, Up(), false},
		{"disc, through", disc, Vec{0.5, 0, 0}, Up(), true},
		{"disc, beside", disc, Vec{1.1, 0, 0}, Up(), false},
		{"disc, from it", disc, Vec{0.5, 0, 2}, Up(), false},
		{"disc, in its plane", disc, Vec{-3, 0, 2}, Direction(90, 0), false},
	} {
		if got := tt.s.Crosses(tt.o, tt.d); got != tt.want {
			t.Errorf("%s: crosses = %v, want %v (drawn by hand)", tt.name, got, tt.want)
		}
	}
}

// A ray crosses a solid where some of its points lie inside, found by walking.
func TestCrossesAgreesWithInside(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 55))
	hits := 0
	for n := range 6000 {
		at := Vec{r.Float64(), r.Float64(), r.Float64()}
		solids := []Solid{
			NewBox(at, 360*r.Float64(), 0.5+r.Float64(), 0.5+r.Float64(), 0.5+r.Float64()),
			NewGable(at, 360*r.Float64(), 1+r.Float64(), 0.5+r.Float64(), 0.5, 0.5+r.Float64(), r.Float64()),
			Cylinder{at, 0.3 + r.Float64(), 0.5 + r.Float64()}, Cone{at, 0.3 + r.Float64(), 0.5 + 2*r.Float64()},
			Dome{at, 0.3 + r.Float64(), 0.5 + r.Float64()}, Ellipsoid{at, 0.3 + r.Float64(), 0.5 + r.Float64()},
		}
		s := solids[n%len(solids)]
		o := Vec{4*r.Float64() - 2, 4*r.Float64() - 2, 4*r.Float64() - 2}
		d := Direction(360*r.Float64(), 180*r.Float64()-90)
		const step = 0.01
		run, longest := 0, 0
		for k := range 800 {
			if Inside(s, o.Add(d.Scale(step*float64(k)))) {
				run++
				longest = max(longest, run)
			} else {
				run = 0
			}
		}
		got := s.Crosses(o, d)
		if got {
			hits++
		}
		if longest > 0 && !got {
			t.Fatalf("case %d: %T %+v from %v along %v: inside for %d steps, yet not crossed", n, s, s, o, d, longest)
		}
		if longest == 0 && got && deep(s, o, d) {
			t.Fatalf("case %d: %T %+v from %v along %v: crossed, yet never inside", n, s, s, o, d)
		}
	}
	if hits < 500 {
		t.Errorf("only %d hits; the test no longer sees much", hits)
	}
}

// deep reports whether rays beside this one cross too, so that a walk of a
// centimetre cannot have stepped over a corner.
func deep(s Solid, o, d Vec) bool {
	a := d.Cross(Vec{0.3, 0.5, 0.8}).Unit().Scale(0.02)
	b := d.Cross(a)
	return s.Crosses(o.Add(a), d) && s.Crosses(o.Sub(a), d) && s.Crosses(o.Add(b), d) && s.Crosses(o.Sub(b), d)
}

// Faces close up: each edge of a solid is met once each way, corners lie on
// the true surface, and each face looks outwards.
func TestFacesAreClosed(t *testing.T) {
	at := Vec{1, 2, 3}
	for _, s := range []Solid{
		NewBox(at, 30, 2, 1, 3), NewGable(at, 70, 4, 2, 2, 3, 0.3), Cylinder{at, 1, 2}, Cone{at, 1, 2}, Dome{at, 1, 2}, Ellipsoid{at, 1, 2},
	} {
		corners, faces := Faces(s, 24)
		edges := map[[2]int]int{}
		mid := Vec{}
		for _, c := range corners {
			mid = mid.Add(c.Scale(1 / float64(len(corners))))
		}
		for _, f := range faces {
			n, out := Vec{}, corners[f[0]].Sub(mid)
			for i := range f {
				a, b := f[i], f[(i+1)%len(f)]
				edges[[2]int{a, b}]++
				n = n.Add(corners[a].Cross(corners[b]))
			}
			if n.Dot(out) <= 0 {
				t.Errorf("%T: face %v looks inwards", s, f)
			}
		}
		for e, n := range edges {
			if n != 1 || edges[[2]int{e[1], e[0]}] != 1 {
				t.Errorf("%T: edge %v met %d times, its way back %d", s, e, n, edges[[2]int{e[1], e[0]}])
			}
		}
		for _, c := range corners {
			if Inside(s, c.Add(c.Sub(mid).Unit().Scale(1e-6))) || !Inside(s, mid.Add(c.Sub(mid).Scale(0.98))) {
				t.Errorf("%T: corner %v is not on the surface", s, c)
			}
		}
	}
	if _, f := Faces(Skyline{1}, 24); f != nil {
		t.Error("a skyline has no faces")
	}
}
