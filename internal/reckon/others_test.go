package reckon

import (
	"math"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/unit"
)

const elsewhereGarden = `garden: Odd
place: {latitude: 47.6 N, longitude: 122.3 W, elevation: 50 m, zone: America/Los_Angeles}
media:
  mix: {kind: potting mix}
spaces:
  bed: {kind: raised bed, east: 0 m, north: 0 m, length: 2 m, width: 1 m, rim: 30 cm, depth: 35 cm, medium: mix, water: can, something else: [ELSE]}
  half: {kind: raised bed, east: 4 m, north: 0 m, length: 2 m, width: 1 m, rim: 30 cm, depth: 35 cm, medium: mix, water: can, something else: [{name: hydrangea, takes: 1 m x 1 m}]}
wants: {salad: 4, roots: 3, tomatoes: 2, beans and peas: 2, cooking greens: 2}
`

// TestSomethingElseTakesItsGround: a bed filled by what is no crop of the book
// is given to nothing before it goes, and never when nobody said when; half
// taken, the other half is planned.
func TestSomethingElseTakesItsGround(t *testing.T) {
	for _, tt := range []struct {
		name, until, says string
		free              cal.Day // first day on which the ground may be planned; 0 = never
	}{
		{"no end told", "", "Until when is not known, and the day it goes would tell us", 0},
		{"an end told", ", until: 30 June 2015", "until 30 June", cal.Of(2015, 6, 30)},
		{"an end passed", ", until: February 2015", "Is it gone?", cal.Of(2015, 3, 1)},
	} {
		r := reckoned(t, strings.Replace(elsewhereGarden, "ELSE", "{name: comfrey, takes: 2 m x 1 m"+tt.until+"}", 1), 40)
		planned, halfM2 := 0, make([]float64, r.Problem.Weeks)
		for k, pl := range r.Plan.Plantings {
			o := r.Problem.Options[pl.Option]
			l := r.plantedLine(k)
			if r.Problem.Spaces[o.Space].ID == "half" {
				for w := o.Week; w <= o.End && w < len(halfM2); w++ {
					halfM2[w] += float64(pl.Plants) * o.Footprint[min(w-o.Week, len(o.Footprint)-1)]
				}
				continue
			}
			planned++
			if tt.free == 0 || l.In.Likely < tt.free.Monday() {
				t.Errorf("%s: %s goes in on %s", tt.name, l.Crop, l.In.Likely)
			}
		}
		if tt.free != 0 && planned == 0 {
			t.Errorf("%s: nothing is planned after it", tt.name)
		}
		most := 0.0
		for _, m2 := range halfM2 {
			most = math.Max(most, m2)
		}
		if most <= 0 || most > 1+1e-6 {
			t.Errorf("%s: half a bed of 2 m² is planned up to %.2f m²", tt.name, most)
		}
		sp := r.Day.Spaces[0]
		if len(sp.Else) != 1 || !strings.Contains(sp.Else[0].Words, tt.says) || !strings.Contains(sp.Else[0].Words, "“comfrey”") {
			t.Errorf("%s: %+v", tt.name, sp.Else)
		}
		if gone := strings.Contains(tt.says, "gone"); gone == strings.Contains(sp.Now, "not in the book") {
			t.Errorf("%s: now: %s", tt.name, sp.Now)
		}
	}
}

// TestSomethingElseStandsWhereItIs: its boxes lie in the middle of their space,
// have its ground together and leave some open, whatever the space's form.
func TestSomethingElseStandsWhereItIs(t *testing.T) {
	two := []garden.Other{{Name: "a", Count: 2, OneM2: 0.2, Height: unit.Metres(1)}, {Name: "low", Count: 1, OneM2: 0.3}, {Name: "b", Count: 1, OneM2: 0.2, Height: unit.Metres(2)}}
	for _, sp := range []garden.Space{
		{ID: "bed", X: 3, Y: -2, TurnDeg: 30, Length: unit.Metres(3), Width: unit.Metres(1), Rim: unit.Metres(0.4), Others: two},
		{ID: "tub", X: 3, Y: -2, Round: unit.Metres(1.2), Rim: unit.Metres(0.4), Others: two},
		{ID: "small", X: 3, Y: -2, Length: unit.Metres(0.5), Width: unit.Metres(0.5), Others: two},
	} {
		all := otherBodies(sp)
		if len(all) != 2 {
			t.Fatalf("%s: %d boxes; what has no height takes no light", sp.ID, len(all))
		}
		area, mid := 0.0, geom.Vec{}
		for _, b := range all {
			f := b.Footprint()
			a := math.Abs(f.AreaM2())
			area += a
			for _, c := range f {
				mid = mid.Add(c.Scale(a / float64(len(f))))
			}
		}
		want := math.Min(0.6, tallestShare*sp.AreaM2())
		if math.Abs(area-want) > 1e-9 {
			t.Errorf("%s: boxes of %.4f m², want %.4f", sp.ID, area, want)
		}
		if at := mid.Scale(1 / area); math.Hypot(at.X-3, at.Y+2) > 1e-9 {
			t.Errorf("%s: their middle lies at %v", sp.ID, at)
		}
	}
}

// TestSomethingElseTakesLight: a wall of it shades the bed to its pole side and
// is named there; gone by its day, it does not.
func TestSomethingElseTakesLight(t *testing.T) {
	g := demoGarden(t, yard(southWall))
	before := NewLightDesk(&Inputs{Garden: g, Date: cal.Of(2015, 4, 6), Workers: 1}, nil)
	south := g.Spaces[0]
	south.ID, south.Y, south.Standing = "south", south.Y-1.5, nil
	south.Others = []garden.Other{{Name: "hedge", Count: 1, OneM2: south.AreaM2(), Height: unit.Metres(3), Until: cal.Window{Early: cal.Of(2015, 9, 1), Likely: cal.Of(2015, 9, 1), Late: cal.Of(2015, 9, 30)}}}
	g.Spaces = append(g.Spaces, south)
	for on, shades := range map[cal.Day]bool{cal.Of(2015, 4, 6): true, cal.Of(2015, 10, 1): false} {
		d := NewLightDesk(&Inputs{Garden: g, Date: on, Workers: 1}, nil)
		lost := before.base[0][3] - d.base[0][3]
		if shades != (lost > 0.5) || lost < -1e-9 {
			t.Errorf("on %s it takes %.2f h of April sun from the bed behind it", on, lost)
		}
		named := false
		for i := range d.light.Bodies {
			named = named || strings.HasPrefix(d.thingName(i), "hedge in ")
		}
		if named != shades {
			t.Errorf("on %s its box is named: %v", on, named)
		}
	}
}
