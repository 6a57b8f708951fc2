package geom

import (
	"math"
	"math/rand/v2"
	"testing"
)

// some figures with areas by the textbook formula of each.
func someFigures() []struct {
	name string
	f    *Figure
	area float64
} {
	return []struct {
		name string
		f    *Figure
		area float64
	}{
		{"oval", Oval(3, 1.2), math.Pi / 4 * 3 * 1.2},
		{"half round", HalfRound(2), math.Pi / 2},
		{"quarter round", QuarterRound(1), math.Pi / 4},
		{"trapezoid", Trapezoid(3, 2, 1.2), 2.5 * 1.2},
		{"triangle 3-4-5", Triangle(3, 4, 5), 6},
		{"triangle, obtuse", Triangle(2, 4, 2.5), math.Sqrt(4.25 * 2.25 * 0.25 * 1.75)}, // Heron
		{"four sides, a rectangle", FourSides(4, 3, 4, 3, 5), 12},
		{"four sides, a kite", FourSides(2, 3, 3, 2, math.Sqrt(2+math.Sqrt(3)*math.Sqrt(6))), 0}, // area below
		{"L", LShape(3, 2, 1, 0.8, Corner{true, true}), 6 - 0.8},
		{"L, near left", LShape(3, 2, 1, 0.8, Corner{}), 6 - 0.8},
		{"cut corner", CutCorner(3, 2, 0.5, 0.5, Corner{true, false}), 6 - 0.125},
		{"ring", Ring(0.9, 0.6), math.Pi / 4 * (0.81 - 0.36)},
		{"frame", Frame(1.2, 1.2, 0.8, 0.8), 1.44 - 0.64},
	}
}

// TestFigureAreas holds each figure to its formula, to the share of points of
// its box that it holds, and to its prism and turned self.
func TestFigureAreas(t *testing.T) {
	const n = 200_000
	for _, tt := range someFigures() {
		f := tt.f
		if tt.area > 0 && math.Abs(f.AreaM2()-tt.area) > 1e-6 {
			t.Errorf("%s: area %.6f, want %.6f", tt.name, f.AreaM2(), tt.area)
		}
		r := rand.New(rand.NewPCG(1, 2))
		in, solid := 0, 0
		prisms := f.Prisms(Vec{5, -2, 0.1}, 30, 0.5)
		turned := f.At(Vec{5, -2, 0}, 30)
		for range n {
			x, y := f.Length*(r.Float64()-0.5), f.Width*(r.Float64()-0.5)
			if !f.Holds(x, y) {
				continue
			}
			in++
			if in%50 > 0 {
				continue
			}
			s, c := math.Sincos(30 * rad)
			p := Vec{5 + x*c + y*s, -2 - x*s + y*c, 0.3}
			if !turned.Holds(p.X, p.Y) {
				t.Fatalf("%s: turned, it does not hold its own point", tt.name)
			}
			for _, one := range prisms {
				if Inside(one, p) {
					solid++
					break
				}
			}
		}
		share := float64(in) / n * f.Length * f.Width
		if math.Abs(share-f.AreaM2()) > 0.01*f.Length*f.Width {
			t.Errorf("%s: it holds %.3f m², its area is %.3f m²", tt.name, share, f.AreaM2())
		}
		if solid < in/50-20 {
			t.Errorf("%s: %d of %d points lie in its prisms", tt.name, solid, in/50)
		}
		for k, p := range f.Pieces {
			for i := range p {
				if turn(p[i], p[(i+1)%len(p)], p[(i+2)%len(p)]) < -1e-9 {
					t.Errorf("%s: piece %d turns right at corner %d", tt.name, k, i+1)
				}
			}
		}
	}
}

func TestFiguresThatDoNotMeet(t *testing.T) {
	for name, f := range map[string]*Figure{"triangle": Triangle(1, 1, 5), "four sides": FourSides(1, 1, 1, 1, 3), "flat": Triangle(1, 2, 3)} {
		if f != nil {
			t.Errorf("%s: sides that do not meet make %+v", name, f)
		}
	}
}

func TestDeepestAndEdges(t *testing.T) {
	for _, tt := range []struct {
		name string
		f    *Figure
		deep float64 // known distance, m
	}{
		{"rectangle", FourSides(4, 2, 4, 2, math.Sqrt(20)), 1},
		{"triangle 3-4-5", Triangle(3, 4, 5), 1}, // its inner circle
		{"L of two equal arms", LShape(2, 2, 1, 1, Corner{true, true}), 2 - math.Sqrt2},
	} {
		if got := tt.f.DeepM(); got > tt.deep+1e-9 || got < tt.deep-0.06 {
			t.Errorf("%s: %.3f m deep, want %.3f", tt.name, got, tt.deep)
		}
	}
	l := LShape(3, 2, 1, 0.8, Corner{true, true})
	mid, looks := l.EdgeTowards(0)
	if math.Abs(mid.X+0.5) > 1e-9 || mid.Y != 1 || looks != 0 {
		t.Errorf("the L's far edge is at %v and looks to %v", mid, looks)
	}
	if mid, looks = l.At(Vec{}, 90).EdgeTowards(90); math.Abs(mid.X-1) > 1e-9 || math.Abs(looks-90) > 1e-9 {
		t.Errorf("turned, it is at %v and looks to %v", mid, looks)
	}
}
