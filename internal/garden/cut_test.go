package garden

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"bedweek/internal/geom"
	"bedweek/internal/unit"
)

// TestCutPartsAreTheWhole cuts each odd shape, and a round one, wherever the
// dice say, turned and moved; a part of a part too. The words of the parts, read
// again, have the area of the whole together, and a point of the whole lies in
// one of them at its place.
func TestCutPartsAreTheWhole(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	shapes := append(FormLines(), "L 3 m x 2 m, less 1 m x 80 cm, south west", "oval 50 cm x 3 m", "")
	for _, shape := range shapes {
		for range 20 {
			s := Space{X: 10 * r.Float64(), Y: -10 * r.Float64(), TurnDeg: 360 * r.Float64()}
			if shape == "" {
				s.Round = unit.Metres(1.2)
			} else {
				s.Shape = shape
				f, ok := FigureOf(shape)
				if !ok {
					t.Fatalf("%s is no shape", shape)
				}
				s.Figure = f
			}
			for range 2 {
				long, _, ok := s.CutLengthM()
				if !ok {
					t.Fatalf("%s: not cut at all", shape)
				}
				typed := fmt.Sprintf("%.0f cm", math.Max(6, math.Min(100*long-6, 100*long*r.Float64())))
				a, b, ok := s.Cut(typed)
				if !ok {
					t.Fatalf("%s of %.2f m: not cut at %s", s.Shape, long, typed)
				}
				fa, okA := FigureOf(a.Shape)
				fb, okB := FigureOf(b.Shape)
				if !okA || !okB || math.Abs(fa.AreaM2()+fb.AreaM2()-s.AreaM2()) > 1e-6 || math.Abs(fa.AreaM2()-a.AreaM2) > 1e-9 {
					t.Fatalf("%s: %q and %q have %.4f and %.4f m² of %.4f", s.Shape, a.Shape, b.Shape, a.AreaM2, b.AreaM2, s.AreaM2())
				}
				whole, _ := s.asFigure()
				whole = whole.At(geom.Vec{X: s.X, Y: s.Y}, s.TurnDeg)
				first, second := fa.At(geom.Vec{X: a.East, Y: a.North}, s.TurnDeg), fb.At(geom.Vec{X: b.East, Y: b.North}, s.TurnDeg)
				seen := 0
				for range 200 {
					x, y := s.X+long*(r.Float64()-0.5), s.Y+long*(r.Float64()-0.5)
					in, parts := whole.Holds(x, y), 0
					for _, p := range []*geom.Figure{first, second} {
						if p.Holds(x, y) {
							parts++
						}
					}
					if in {
						seen++
					}
					if in && parts == 0 || !in && parts > 0 || parts > 1 {
						t.Fatalf("%s cut at %s: a point of it lies in %d parts, want %v", s.Shape, typed, parts, in)
					}
				}
				if seen == 0 {
					t.Fatalf("%s: no point was looked at", s.Shape)
				}
				s = Space{X: b.East, Y: b.North, TurnDeg: s.TurnDeg, Shape: b.Shape, Figure: fb}
				if long, _, _ := s.CutLengthM(); long < 0.15 {
					break
				}
			}
		}
	}
}

// TestCutSlips names what is wrong with a cut.
func TestCutSlips(t *testing.T) {
	for typed, want := range map[string]string{
		"L 3 m x 2 m, less 1 m x 80 cm, first 4 m":         "does not pass through it: it is 300 cm long",
		"L 3 m x 2 m, less 1 m x 80 cm, beyond 0 m":        "does not pass through it",
		"L 3 m x 2 m, less 1 m x 80 cm, first 1":           "unit",
		"oval 1 m x 60 cm, first 50 cm, beyond 70 cm":      "does not pass through it: it is 60 cm long",
		"oval 1 m x 60 cm, first":                          "Write it as oval",
		"half round 2 m, beyond 50 cm, first":              "Write it as half round",
		"trapezoid 3 m, 2 m, 1.2 m, beyond 1 m, first x m": "first x m",
	} {
		if _, _, wrong := figureOf(typed); !strings.Contains(wrong, want) {
			t.Errorf("%s: %q, want %q", typed, wrong, want)
		}
	}
	if v, bad := SaySize("L 3 m x 2 m, less 1 m x 80 cm, first 1.2 m, 40 cm deep"); len(bad) > 0 || v.Get("shape") != "L 3 m x 2 m, less 1 m x 80 cm, first 1.2 m" || v.Get("depth") != "40 cm" {
		t.Errorf("with a depth: %v %v", v, bad)
	}
}
