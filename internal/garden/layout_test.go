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

func placedAt(x, y, turn, long, wide float64) Space {
	return Space{Kind: RaisedBed, X: x, Y: y, TurnDeg: turn, Length: unit.Metres(long), Width: unit.Metres(wide), Depth: unit.Metres(0.3)}
}

func roundAt(x, y, across float64) Space {
	return Space{Kind: Bag, X: x, Y: y, Round: unit.Metres(across), Depth: unit.Metres(0.3)}
}

func oddAt(x, y, turn float64, shape string) Space {
	f, _, wrong := figureOf(shape)
	if wrong != "" {
		panic("garden: test shape " + wrong)
	}
	s := placedAt(x, y, turn, f.Length, f.Width)
	s.Shape, s.Figure = shape, f
	return s
}

func TestOverlap(t *testing.T) {
	for _, tt := range []struct {
		name string
		a, b Space
		want bool
		from string
	}{
		{"apart", placedAt(0, 0, 0, 2, 1), placedAt(3, 0, 0, 2, 1), false, "1 m between"},
		{"touching", placedAt(0, 0, 0, 2, 1), placedAt(2, 0, 0, 2, 1), false, "edges meet"},
		{"one in another", placedAt(0, 0, 0, 2, 1), placedAt(0.2, 0, 0, 0.4, 0.4), true, "inside"},
		{"crossed", placedAt(0, 0, 0, 4, 0.5), placedAt(0, 0, 90, 4, 0.5), true, "a cross"},
		{"turned away", placedAt(0, 0, 0, 4, 0.5), placedAt(0, 2.3, 90, 4, 0.5), false, "the upright begins at 0.3, the other ends at 0.25"},
		{"turned into", placedAt(0, 0, 0, 4, 0.5), placedAt(0, 2.2, 90, 4, 0.5), true, "the upright begins at 0.2"},
		{"clockwise", placedAt(0, 0, 30, 4, 0.2), placedAt(1.5, -0.86, 30, 0.5, 0.2), true, "turning clockwise takes the east end south"},
		{"not the other way", placedAt(0, 0, 30, 4, 0.2), placedAt(1.5, 0.86, 30, 0.5, 0.2), false, "turning clockwise takes the east end south"},
		{"a bed in the L's dent", oddAt(0, 0, 0, "L 3 m x 2 m, less 1 m x 80 cm"), placedAt(1, 0.6, 0, 0.98, 0.78), false, "the dent is 1 m by 80 cm about 1, 0.6"},
		{"a bed over the L's arm", oddAt(0, 0, 0, "L 3 m x 2 m, less 1 m x 80 cm"), placedAt(0.9, 0.6, 0, 0.98, 0.78), true, "it begins at 0.41, the arm ends at 0.5"},
		{"the dent turned away", oddAt(0, 0, 180, "L 3 m x 2 m, less 1 m x 80 cm"), placedAt(1, 0.6, 0, 0.98, 0.78), true, "turned half round the dent lies south-west"},
		{"a pot in a ring", oddAt(0, 0, 0, "ring 2 m, less 1 m"), roundAt(0, 0, 0.9), false, "the hole is 1 m across"},
		{"rounds apart", roundAt(0, 0, 0.6), roundAt(0.6, 0, 0.6), false, "radii meet"},
		{"rounds over", roundAt(0, 0, 0.6), roundAt(0.4, 0.4, 0.6), true, "centres 0.57 apart, radii sum to 0.6"},
		{"round by a corner", placedAt(0, 0, 0, 2, 2), roundAt(1.35, 1.35, 0.9), false, "corner 0.49 from the centre, radius 0.45"},
		{"round on a corner", placedAt(0, 0, 0, 2, 2), roundAt(1.25, 1.25, 0.9), true, "corner 0.35 from the centre, radius 0.45"},
	} {
		if got := clash(tt.a, tt.b); got != tt.want {
			t.Errorf("%s: clash %v, want %v (%s)", tt.name, got, tt.want, tt.from)
		}
		if clash(tt.a, tt.b) != clash(tt.b, tt.a) {
			t.Errorf("%s: the order matters", tt.name)
		}
	}
	high, low := placedAt(0, 0, 0, 2, 1), placedAt(0, 0, 0, 2, 1)
	high.Rim, low.Rim = unit.Metres(1.8), unit.Metres(0.4)
	if clash(high, low) {
		t.Error("a space 1 m above another stands in its place")
	}
	high.Kind, low.Kind, high.Rim = Tier, Tier, unit.Metres(0.5)
	if clash(high, low) {
		t.Error("two storeys of a tiered planter stand in one place")
	}
	low.Kind = RaisedBed
	if !clash(high, low) || !clash(low, high) {
		t.Error("a tiered planter may stand in the middle of a bed")
	}
}

// TestOverlapAgainstSampling compares with a plain search for a common point.
func TestOverlapAgainstSampling(t *testing.T) {
	const seed = 11
	r := rand.New(rand.NewPCG(seed, 1))
	any := func() Space {
		if r.IntN(3) == 0 {
			return roundAt(r.Float64()*3, r.Float64()*3, 0.3+r.Float64())
		}
		one := placedAt(r.Float64()*3, r.Float64()*3, r.Float64()*180, 0.4+r.Float64(), 0.3+r.Float64())
		switch r.IntN(6) {
		case 0:
			one.Figure = geom.LShape(1.4, 1.2, 0.9, 0.7, geom.Corner{Right: true})
		case 1:
			one.Figure = geom.Triangle(1.3, 1.1, 0.9)
		case 2:
			one.Figure = geom.Ring(1.4, 1)
		}
		return one
	}
	met := 0
	for i := range 400 {
		a, b := any(), any()
		depth := overlapM(outline(a), outline(b))
		common := 0
		for range 3000 {
			x, y := a.X+(r.Float64()-0.5)*2.4, a.Y+(r.Float64()-0.5)*2.4
			if within(a, x, y) && within(b, x, y) {
				common++
			}
		}
		if common > 0 && depth <= 0 || common == 0 && depth > 0.15 {
			t.Fatalf("seed %d pair %d: overlap %.3f m, %d common points of 3000\n%s", seed, i, depth, common, fmt.Sprint(outline(a), outline(b)))
		}
		if common > 0 {
			met++
		}
	}
	if met < 50 {
		t.Fatalf("only %d pairs met; the test looks at nothing", met)
	}
}

// within is an independent test of a point: turn the plan back, not the space.
func within(s Space, x, y float64) bool {
	dx, dy := x-s.X, y-s.Y
	if s.Round.Known() {
		return math.Hypot(dx, dy) < s.Round.M/2
	}
	a := s.TurnDeg * math.Pi / 180
	along := dx*math.Cos(a) - dy*math.Sin(a)
	across := dx*math.Sin(a) + dy*math.Cos(a)
	if s.Figure != nil {
		return s.Figure.Holds(along, across)
	}
	return math.Abs(along) < s.Length.M/2 && math.Abs(across) < s.Width.M/2
}

// One tomato in a 19 L bag is published practice ([umn-2021]: one plant in a
// 5 gallon pot), however small the bag's top is.
func TestOnePlantIsNeverCrowded(t *testing.T) {
	text := `garden: G
place: {latitude: 47 N, longitude: 122 W}
media:
  mix: {kind: potting mix}
spaces:
  bag:
    medium: mix
    kind: bag
    east: 1 m
    north: 1 m
    across: 30 cm
    rim: 30 cm
    depth: 28 cm
    volume: 19 L
    water: can
    standing:
      - {crop: tomato, since: May 2015, count: COUNT}
`
	if _, faults := Read("g", []byte(strings.Replace(text, "COUNT", "1", 1)), book(t)); len(faults) > 0 {
		t.Errorf("one tomato in a 19 L bag: %v", faults)
	}
	if _, faults := Read("g", []byte(strings.Replace(text, "COUNT", "4", 1)), book(t)); len(faults) == 0 {
		t.Error("four tomatoes in a 19 L bag are not called crowded")
	}
}
