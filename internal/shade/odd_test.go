package shade

import (
	"math"
	"math/rand/v2"
	"testing"

	"bedweek/internal/geom"
)

// TestOddSurfaceIsItsParts holds an L to the two rectangles it is made of,
// whose cells are the same, beside a wall that shades one arm more.
func TestOddSurfaceIsItsParts(t *testing.T) {
	site := Place{LatDeg: 47.5}
	wall := []Body{BoxBetween("wall", 1.7, 1.8, -3, 3, 0, 2.5)}
	l := Patch{Name: "L", Z: 0.3, Length: 3, Width: 2, Figure: geom.LShape(3, 2, 1, 0.8, geom.Corner{Right: true, Far: true})}
	low := Patch{Y: -0.4, Z: 0.3, Length: 3, Width: 1.2}
	high := Patch{X: -0.5, Y: 0.6, Z: 0.3, Length: 2, Width: 0.8}
	whole := Patch{Z: 0.3, Length: 3, Width: 2}
	got := Lights([]Surface{LevelSurface(l), LevelSurface(low), LevelSurface(high), LevelSurface(whole)}, wall, site, meanMJ, nil, 1)
	for m := range 12 {
		want := (3.6*got[1].SunH[m] + 1.6*got[2].SunH[m]) / 5.2
		if math.Abs(got[0].SunH[m]-want) > 1e-6 {
			t.Errorf("month %d: the L has %.4f h of sun, its parts %.4f", m+1, got[0].SunH[m], want)
		}
	}
	if math.Abs(got[0].SunH[5]-got[3].SunH[5]) < 0.05 {
		t.Errorf("the L has %.2f h in June, its outer rectangle %.2f: the test sees no difference", got[0].SunH[5], got[3].SunH[5])
	}
	slow := (&Scene{Bodies: wall}).Patch(l, site, meanMJ)
	if math.Abs(slow.SunH[5]-got[0].SunH[5]) > 0.05 || math.Abs(slow.Share[5]-got[0].Share[5]) > 0.01 {
		t.Errorf("by single rays %.2f h and %.3f, by the field %.2f h and %.3f", slow.SunH[5], slow.Share[5], got[0].SunH[5], got[0].Share[5])
	}
}

// TestShapedBodyIsItsBoxes holds the shade of an L-shaped bed to that of two
// boxes, turned, and of an oval one to a post when both ways are as wide.
func TestShapedBodyIsItsBoxes(t *testing.T) {
	site := Place{LatDeg: 47.5}
	near := []Surface{LevelSurface(Patch{X: 0.3, Y: 2, Length: 3, Width: 1, Z: 0.05})}
	l := geom.LShape(3, 2, 1, 0.8, geom.Corner{Right: true, Far: true})
	pairs := [][2][]Body{
		{{Shaped("L", l, 0, 0, 0, 0, 0.6)}, {BoxBetween("a", -1.5, 1.5, -1, 0.2, 0, 0.6), BoxBetween("b", -1.5, 0.5, 0.2, 1, 0, 0.6)}},
		{{Shaped("round", geom.Oval(2, 2), 0, 0.3, 0, 0, 0.6)}, {Post("post", 0, 0.3, 2, 0, 0.6)}},
	}
	for k, p := range pairs {
		a := Lights(near, p[0], site, meanMJ, nil, 1)[0]
		b := Lights(near, p[1], site, meanMJ, nil, 1)[0]
		open := Lights(near, nil, site, meanMJ, nil, 1)[0]
		for m := range 12 {
			if math.Abs(a.SunH[m]-b.SunH[m]) > 0.01 || math.Abs(a.Share[m]-b.Share[m]) > 0.002 {
				t.Errorf("pair %d, month %d: %.3f h and %.4f, want %.3f h and %.4f", k, m+1, a.SunH[m], a.Share[m], b.SunH[m], b.Share[m])
			}
		}
		if open.SunH[11]-a.SunH[11] < 0.1 {
			t.Errorf("pair %d takes %.3f h in December: the test sees nothing", k, open.SunH[11]-a.SunH[11])
		}
	}
}

// TestNarrowRingHasCells wants light on a ring narrower than a cell.
func TestNarrowRingHasCells(t *testing.T) {
	s := LevelSurface(Patch{Length: 0.9, Width: 0.9, Figure: geom.Ring(0.9, 0.82)})
	nu, nv := s.Grid()
	n := 0
	for k := range nu * nv {
		if s.Counts(k%nu, k/nu) {
			n++
		}
	}
	if n < 20 {
		t.Errorf("%d cells of %d count", n, nu*nv)
	}
}

// TestShadowsLeaveDentsOpen looks from points of the ground towards the sun,
// step by step: a point lies in one of a body's shadows when it meets the body.
// In the hull of them all some points lie that see the sun.
func TestShadowsLeaveDentsOpen(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for _, f := range []*geom.Figure{geom.LShape(3, 2, 1.4, 1.2, geom.Corner{Right: true, Far: true}), geom.Frame(3, 2, 2.4, 1.4)} {
		b := Shaped("odd", f, 1, 2, 25, 0, 0.5)
		sun := geom.Direction(40, 60)
		all, ok := b.Shadows(sun)
		hull, _ := b.Shadow(sun)
		if !ok || len(all) != len(f.Pieces) {
			t.Fatalf("%d shadows of %d parts", len(all), len(f.Pieces))
		}
		open := 0
		for range 4000 {
			p := geom.Vec{X: 1 + 5*(r.Float64()-0.5), Y: 2 + 5*(r.Float64()-0.5)}
			in, near := false, false
			for _, o := range all {
				in = in || o.Holds(p)
				near = near || o.Away(p) < 0.02
			}
			met := false
			for k := 1; k < 600; k++ {
				q := p.Add(sun.Scale(float64(k) * 0.001))
				for _, part := range b.Parts {
					met = met || geom.Inside(part.Solid, q)
				}
			}
			if !near && in != met {
				t.Fatalf("a point is in a shadow: %v; towards the sun it meets the body: %v", in, met)
			}
			if !near && !met && hull.Holds(p) {
				open++
			}
		}
		if open < 20 {
			t.Errorf("%d sunny points in the hull: the test sees no dent", open)
		}
		if _, ok := b.Shadows(geom.Direction(40, -5)); ok {
			t.Error("a shadow at night")
		}
	}
}
