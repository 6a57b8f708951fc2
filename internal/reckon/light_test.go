package reckon

import (
	"bytes"
	"math"
	"testing"

	"bedweek/demo"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/shade"
)

func demoGarden(t testing.TB, text []byte) *garden.Garden {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("garden.yaml", text, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	return g
}

// The light of the command and that of the plan are one light: over a year of
// clear days the two differ only by the days they stand for.
func TestLightCommandAndPlanAgree(t *testing.T) {
	g := demoGarden(t, demo.GardenYAML)
	l := NewGardenLight(g, nil, nil, shade.YearStart(2015), 52, shade.FineLooks(), false, 2)
	things := bodies(g)
	gr := groundsOf(g, things, nil)
	site := shade.Place{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
	plan := shade.Lights(gr.surfaces, things, site, [12]float64{}, gr.skip, 2)
	for s := range gr.surfaces {
		sp := l.Space(s)
		year, planYear := 0.0, 0.0
		for m := 1; m <= 12; m++ {
			got := l.Over(s, l.Weeks(m))
			if math.Abs(got.SkyView.Mean-plan[s].Share[m-1]) > 0.03 {
				t.Errorf("%s, month %d: sky view %.3f, plan %.3f", sp.ID, m, got.SkyView.Mean, plan[s].Share[m-1])
			}
			year += got.MolClear.Mean
			planYear += plan[s].DLIClear[m-1]
		}
		// A month's middle day can lie to one side of the day on which the sun
		// clears a roof, so single months differ; the year does not.
		if math.Abs(year/planYear-1) > 0.04 {
			t.Errorf("%s: %.1f mol over twelve clear days, plan %.1f", sp.ID, year, planYear)
		}
	}
}

// A tier that carries the next has no ground under it, and less light beside.
func TestTiersShadeTheTierBelow(t *testing.T) {
	g := demoGarden(t, demo.GardenYAML)
	l := NewGardenLight(g, nil, nil, shade.YearStart(2015), 52, shade.FineLooks(), false, 2)
	at := map[garden.SpaceID]shade.SurfaceLight{}
	for s := range l.Field.Surfaces() {
		at[l.Space(s).ID] = l.Over(s, l.Weeks(6))
	}
	low, mid, top := at["tier-low"], at["tier-mid"], at["tier-top"]
	if !(low.SkyView.Mean < top.SkyView.Mean-0.1 && mid.SkyView.Mean < top.SkyView.Mean-0.1) {
		t.Errorf("sky view of the tiers, from below: %.3f %.3f %.3f", low.SkyView.Mean, mid.SkyView.Mean, top.SkyView.Mean)
	}
	// A ring of 90 cm around a round of 65 cm, in cells of a square decimetre.
	want := math.Pi / 4 * (0.9*0.9 - 0.65*0.65) * 100
	if math.Abs(float64(low.Cells)-want) > 4 {
		t.Errorf("%d cells on the lowest tier, want about %.0f", low.Cells, want)
	}
	if low.Hours.Min >= low.Hours.Max || low.Hours.Min < 0 {
		t.Errorf("hours on the lowest tier: %+v", low.Hours)
	}
}

// Least, mean and most are in order, classes add up, and nothing is missing.
func TestLightJSONHolds(t *testing.T) {
	g := demoGarden(t, demo.SouthYAML)
	l := NewGardenLight(g, nil, nil, shade.YearStart(2025), 52, shade.FineLooks(), false, 2)
	year, week := l.JSON(2025, 0), l.JSON(2025, 26)
	if len(year.Spaces) != len(l.Field.Surfaces()) || len(year.Spaces) == 0 {
		t.Fatalf("%d spaces", len(year.Spaces))
	}
	for i, s := range year.Spaces {
		if len(s.Times) != 12 || len(week.Spaces[i].Times) != 1 || week.Spaces[i].Times[0].Month != 6 {
			t.Fatalf("%s: %d months; week 26 in month %d", s.Space, len(s.Times), week.Spaces[i].Times[0].Month)
		}
		for _, x := range append(s.Times, week.Spaces[i].Times...) {
			sum := 0.0
			for _, a := range x.Areas {
				sum += a
			}
			if x.Cells > 0 && math.Abs(sum-1) > 1e-9 {
				t.Errorf("%s month %d: classes add up to %v", s.Space, x.Month, sum)
			}
			for _, v := range []shade.Span{x.Hours, x.HoursOpaque, x.SkyView, x.MolMean, x.MolClear} {
				if !(0 <= v.Min && v.Min <= v.Mean+1e-9 && v.Mean <= v.Max+1e-9) {
					t.Errorf("%s month %d: %+v", s.Space, x.Month, v)
				}
			}
			if x.HoursOpaque.Mean > x.Hours.Mean {
				t.Errorf("%s month %d: nets and leaves let in less than nothing", s.Space, x.Month)
			}
		}
		// South of the equator June is the dark half.
		if s.Times[5].MolClear.Mean >= s.Times[11].MolClear.Mean {
			t.Errorf("%s: June %.1f mol, December %.1f", s.Space, s.Times[5].MolClear.Mean, s.Times[11].MolClear.Mean)
		}
	}
}

// Supports stand on the edge that looks to the side named.
func TestSupportStandsOnItsEdge(t *testing.T) {
	sp := garden.Space{X: 10, Y: 20}
	sp.Length.M, sp.Width.M = 3, 1
	for _, tt := range []struct {
		turn       float64
		side       string
		lat        float64
		x, y, runs float64 // runs: turn of the sheet, modulo 180
	}{
		{0, "pole", 50, 10, 20.5, 0}, {0, "pole", -50, 10, 19.5, 0}, {0, "east", 50, 11.5, 20, 90},
		{90, "west", 50, 9.5, 20, 90}, {90, "pole", 50, 10, 21.5, 0}, {10, "equator", 50, 10 - 0.5*math.Sin(10*math.Pi/180), 20 - 0.5*math.Cos(10*math.Pi/180), 10},
		{30, "middle", 50, 10, 20, 30},
	} {
		sp.TurnDeg = tt.turn
		x, y, turn := supportAt(sp, tt.side, tt.lat)
		if math.Abs(x-tt.x) > 1e-9 || math.Abs(y-tt.y) > 1e-9 || math.Abs(math.Remainder(turn-tt.runs, 180)) > 1e-9 {
			t.Errorf("turn %v, %s at latitude %v: %.3f, %.3f turned %v; want %.3f, %.3f turned %v (drawn by hand)", tt.turn, tt.side, tt.lat, x, y, turn, tt.x, tt.y, tt.runs)
		}
	}
	if !bytes.Contains(demo.GardenYAML, []byte("side: pole")) {
		t.Error("the demo no longer has a support on the pole side")
	}
}
