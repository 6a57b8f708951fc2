package geom

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

func ExampleShadowM() {
	m, _ := ShadowM(1.8, 29)
	fmt.Printf("%.3f m\n", m) // height over the tangent of the elevation
	// Output: 3.247 m
}

func TestShadowShrinksAsSunClimbs(t *testing.T) {
	last := math.Inf(1)
	for deg := 1.0; deg <= 90; deg++ {
		m, ok := ShadowM(1, deg)
		if !ok || m >= last {
			t.Fatalf("elevation %v°: shadow %v m, was %v m one degree lower", deg, m, last)
		}
		last = m
	}
	for _, deg := range []float64{0, -3, math.NaN()} {
		if _, ok := ShadowM(1, deg); ok {
			t.Errorf("elevation %v° casts a shadow", deg)
		}
	}
}

func TestBearings(t *testing.T) {
	for _, tt := range []struct {
		v    Vec
		want float64
		word string
	}{
		{Vec{0, 1, 0}, 0, "north"}, {Vec{1, 0, 0}, 90, "east"}, {Vec{0, -1, 0}, 180, "south"},
		{Vec{-1, 0, 0}, 270, "west"}, {Vec{-1e-17, 1, 0}, 0, "north"}, {Vec{-1, 1, 5}, 315, "north-west"}, {Vec{}, 0, "north"},
	} {
		if got := tt.v.BearingDeg(); math.Abs(got-tt.want) > 1e-9 || Compass(got) != tt.word {
			t.Errorf("%v bears %v, %s; want %v, %s (compass)", tt.v, got, Compass(got), tt.want, tt.word)
		}
	}
	for az := 0.0; az < 360; az += 7 {
		for el := -89.0; el < 90; el += 7 {
			d := Direction(az, el)
			if math.Abs(d.BearingDeg()-az) > 1e-9 || math.Abs(d.ElevationDeg()-el) > 1e-9 {
				t.Fatalf("direction %v, %v comes back as %v, %v", az, el, d.BearingDeg(), d.ElevationDeg())
			}
		}
	}
}

func TestHull(t *testing.T) {
	square := []Vec{{0, 0, 0}, {1, 1, 0}, {0, 1, 0}, {1, 0, 0}, {0.5, 0.5, 0}, {0.5, 0, 0}, {1, 1, 0}}
	if h := Hull(square); len(h) != 4 || h.AreaM2() != 1 {
		t.Errorf("hull of a square: %v, area %v", h, h.AreaM2())
	}
	if a := Hull([]Vec{{0, 0, 0}, {1, 1, 0}, {2, 2, 0}}).AreaM2(); a != 0 {
		t.Errorf("three points in line have area %v", a)
	}
	if a := Hull(nil).AreaM2(); a != 0 {
		t.Errorf("nothing has area %v", a)
	}
}

// Touching is not crossing: on each solid, a start on its face looking out and
// a ray along its face are free; a start on its face looking in is not.
func TestTouchingIsNotCrossing(t *testing.T) {
	box := NewBox(Vec{0, 0, 0}, 0, 2, 2, 1)
	for _, tt := range []struct {
		name string
		s    Solid
		o, d Vec
		want bool
	}{
		{"on the rim, up", box, Vec{1, 0, 1}, Direction(270, 5), false},
		{"on the top, low sun", box, Vec{0, 0, 1}, Direction(90, 0.01), false},
		{"on the top, along it", box, Vec{0, 0, 1}, Direction(90, 0), false},
		{"coplanar with a side", box, Vec{-5, 1, 0.5}, Direction(90, 0), false},
		{"a hair inside that side", box, Vec{-5, 0.999, 0.5}, Direction(90, 0), true},
		{"at the foot of a side, outwards", box, Vec{0, 1, 0}, Direction(0, 45), false},
		{"at the foot of a side, inwards", box, Vec{0, 1, 0}, Direction(180, 10), true},
		{"inside", box, Vec{0, 0, 0.5}, Direction(10, 80), true},
		{"away from it", box, Vec{0, 5, 0.5}, Direction(0, 0), false},
		{"over it", box, Vec{0, 5, 0}, Direction(180, 45), false},
		{"no thickness", NewBox(Vec{}, 0, 2, 0, 1), Vec{0, 1, 0}, Direction(180, 10), false},
		{"post, through", Cylinder{Vec{}, 0.5, 2}, Vec{3, 0, 1}, Direction(270, 0), true},
		{"post, grazing", Cylinder{Vec{}, 0.5, 2}, Vec{3, 0.5, 1}, Direction(270, 0), false},
		{"post, over", Cylinder{Vec{}, 0.5, 2}, Vec{3, 0, 1.9}, Direction(270, 5), false},
		{"post, from its top", Cylinder{Vec{}, 0.5, 2}, Vec{0, 0, 2}, Up(), false},
		{"post, from inside upwards", Cylinder{Vec{}, 0.5, 2}, Vec{0, 0, 1}, Up(), true},
		{"ball, through", Ellipsoid{Vec{0, 0, 3}, 1, 2}, Vec{0, 0, 0}, Up(), true},
		{"ball, grazing", Ellipsoid{Vec{0, 0, 3}, 1, 2}, Vec{1, 0, 0}, Up(), false},
		{"ball, behind", Ellipsoid{Vec{0, 0, 3}, 1, 2}, Vec{0, 0, 6}, Up(), false},
		{"sheet, through", Sheet{Vec{-1, 0, 0}, Vec{2, 0, 0}, Vec{0, 0, 1}}, Vec{0, -1, 0.5}, Direction(0, 0), true},
		{"sheet, in its plane", Sheet{Vec{-1, 0, 0}, Vec{2, 0, 0}, Vec{0, 0, 1}}, Vec{-3, 0, 0.5}, Direction(90, 0), false},
		{"sheet, from it", Sheet{Vec{-1, 0, 0}, Vec{2, 0, 0}, Vec{0, 0, 1}}, Vec{0, 0, 0.5}, Direction(0, 20), false},
		{"sheet, no size", Sheet{Vec{-1, 0, 0}, Vec{2, 0, 0}, Vec{}}, Vec{0, -1, 0}, Direction(0, 0), false},
		{"skyline, below", Skyline{20}, Vec{}, Direction(77, 19), true},
		{"skyline, above", Skyline{20}, Vec{}, Direction(77, 21), false},
		{"skyline, between steps", Skyline{0, 20, 0, 0}, Vec{}, Direction(45, 9.9), true},
		{"skyline, none", Skyline{}, Vec{}, Direction(45, -9), false},
	} {
		if got := tt.s.Crosses(tt.o, tt.d); got != tt.want {
			t.Errorf("%s: crosses = %v, want %v (touching is not crossing)", tt.name, got, tt.want)
		}
	}
}

func TestTurnedBox(t *testing.T) {
	// Long side turned 90° clockwise from east-west: it runs north-south.
	b := NewBox(Vec{}, 90, 4, 1, 1)
	if !b.Crosses(Vec{-3, 1.9, 0.5}, Direction(90, 0)) || b.Crosses(Vec{-3, 2.1, 0.5}, Direction(90, 0)) {
		t.Error("a box turned 90° does not run north-south")
	}
	// 45° clockwise from east is south-east.
	c := NewBox(Vec{}, 45, 4, 0.2, 1)
	if !c.Crosses(Vec{1.2, -1.2, -1}, Up()) || c.Crosses(Vec{1.2, 1.2, -1}, Up()) {
		t.Error("a box turned 45° clockwise does not run to the south-east")
	}
}

// The rim gives the same shadow as asking the rays: points of the ground in
// the outline, a hand inside, are in shade, and a hand outside are not.
func TestShadowAgreesWithRays(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	for range 60 {
		sun := Direction(360*r.Float64(), 8+80*r.Float64())
		at := Vec{r.Float64(), r.Float64(), r.Float64()}
		for _, s := range []Solid{
			NewBox(at, 360*r.Float64(), 0.3+r.Float64(), 0.3+r.Float64(), 0.3+r.Float64()),
			Cylinder{at, 0.2 + r.Float64(), 0.2 + r.Float64()},
			Ellipsoid{at.Add(Vec{0, 0, 2}), 0.2 + r.Float64(), 0.2 + r.Float64()},
			Sheet{at, Vec{1, 0.5, 0}, Vec{-0.5, 1, 0}},
		} {
			o, ok := Shadow(s, sun)
			if !ok {
				t.Fatal("no shadow")
			}
			mid := Vec{}
			for _, c := range o {
				mid = mid.Add(c.Scale(1 / float64(len(o))))
			}
			for range 20 {
				c := o[r.IntN(len(o))]
				in, out := mid.Add(c.Sub(mid).Scale(0.98)), mid.Add(c.Sub(mid).Scale(1.02))
				in.Z, out.Z = -1e-6, -1e-6
				if !s.Crosses(in, sun) || s.Crosses(out, sun) {
					t.Fatalf("%T %+v, sun %v: outline and rays disagree at %v", s, s, sun, c)
				}
			}
		}
	}
}

// No input that a garden file could hold makes a NaN or a panic.
func FuzzCrosses(f *testing.F) {
	f.Add(0.0, 0.0, 0.0, 90.0, 0.0, 1.0, 1.0, 1.0)
	f.Add(1.0, 0.0, 1.0, 180.0, 90.0, 0.0, 0.0, 0.0)
	f.Add(-3.0, 2.0, 0.5, 45.0, -10.0, 2.0, 0.5, 1e-12)
	f.Fuzz(func(t *testing.T, x, y, z, az, el, a, b, c float64) {
		for _, v := range []float64{x, y, z, az, el, a, b, c} {
			if math.IsNaN(v) || math.Abs(v) > 1e6 {
				t.Skip("not a garden")
			}
		}
		o, d := Vec{x, y, z}, Direction(az, el)
		for _, s := range []Solid{
			NewBox(Vec{0, 0, 0}, az, a, b, c), Cylinder{Vec{}, a, b}, Ellipsoid{Vec{}, a, b},
			Sheet{Vec{}, Vec{a, 0, 0}, Vec{0, b, c}}, Skyline{a, b, c},
		} {
			s.Crosses(o, d)
			if out, ok := Shadow(s, d); ok && (math.IsNaN(out.AreaM2()) || out.AreaM2() < 0) {
				t.Errorf("%T %+v: shadow area %v under %v", s, s, out.AreaM2(), d)
			}
		}
	})
}
