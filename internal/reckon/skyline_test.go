package reckon

import (
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// lightDesk is the demo's, by the clock there.
func lightDesk(t *testing.T, text []byte, edges ...ledger.Edge) *LightDesk {
	t.Helper()
	state := &ledger.State{}
	for _, e := range edges {
		state.Edges = append(state.Edges, ledger.EdgeNote{Event: ledger.NewID(), Edge: e})
	}
	g := demoGarden(t, text)
	zone := time.FixedZone("", int(math.Round(g.Place.LonDeg/15))*3600)
	return NewLightDesk(&Inputs{Garden: g, Date: cal.Of(2015, 6, 9), Workers: 1, State: state}, zone)
}

// yard is a small invented garden: a bed and one wall, whose angles can be
// worked out by hand.
func yard(more string) []byte {
	return []byte(`garden: Invented yard
place: {latitude: 47.6 N, longitude: 120 W, elevation: 50 m}
media:
  mix: {kind: potting mix}
spaces:
  bed: {name: The bed, kind: raised bed, east: 0 m, north: 0 m, length: 2 m, width: 1 m, rim: 30 cm, depth: 30 cm, medium: mix, water: can}
obstacles:
` + more)
}

const southWall = `  wall: {name: Wall, kind: wall, east: 0 m, north: -5.05 m, length: 40 m, width: 10 cm, height: 3 m}
`

// The edge of a long wall 5 m off, 3 m high, seen from 0.35 m: atan(2.65/5) to
// the south, and lower beside by the cosine of the bearing's offset.
func TestSkylineOfAWall(t *testing.T) {
	d := lightDesk(t, yard(southWall))
	v, ok := d.Skyline("bed")
	if !ok || len(v.Points) < 80 || v.Left > 90 || v.Right < 270 {
		t.Fatalf("%v %+v", ok, v)
	}
	looked := 0
	for _, p := range v.Points {
		off := (p.BearingDeg - 180) * math.Pi / 180
		want := math.Atan(2.65/5*math.Cos(off)) * 180 / math.Pi
		if math.Abs(5*math.Tan(off)) > 19.9 || math.Abs(off) > 1.5 {
			continue
		}
		looked++
		if math.Abs(p.EdgeDeg-want) > 0.11 || p.What != "Wall" || p.Seen {
			t.Errorf("bearing %.0f: edge %.2f by %q, want %.2f", p.BearingDeg, p.EdgeDeg, p.What, want)
		}
	}
	if looked < 60 {
		t.Errorf("only %d bearings looked at", looked)
	}
	// The midwinter sun at 47.6° N climbs to 90 - 47.6 - 23.4 = 19°, below 27.9°.
	if w := v.Paths[2]; w.Hours != 0 || v.Months[11].Mean > 0.01 {
		t.Errorf("midwinter: %.1f h on the path, %.2f h in December, want none", w.Hours, v.Months[11].Mean)
	}
	if june := v.Paths[0]; june.Hours < 14 || math.Abs(june.Hours-v.Months[5].Mean) > 0.7 {
		t.Errorf("midsummer: %.1f h on the path, %.1f h in June", june.Hours, v.Months[5].Mean)
	}
	if ends := v.Strips; len(ends) != 5 || ends[0].Name != "west end" || ends[4].Name != "east end" {
		t.Errorf("strips %+v", ends)
	}
}

// A sight of the sun moves the edge to where the sun then stood, and the model
// then has it come out at that time.
func TestSunReachedMovesTheEdge(t *testing.T) {
	text := yard(`  shed: {name: Shed, kind: box, east: 5 m, north: 0 m, length: 2 m, width: 12 m, height: 5 m}
`)
	day := cal.Of(2015, 6, 21)
	before := lightDesk(t, text)
	first := func(d *LightDesk) float64 {
		v, _ := d.Skyline("bed")
		return v.Paths[0].Spells[0].From
	}
	was := first(before)
	for _, hour := range []float64{was - 0.8, was + 0.6} {
		e, words, err := before.SeenSun("bed", day, hour, false)
		if err != nil {
			t.Fatal(err)
		}
		bearing, height := SunAt(before.Garden(), before.zone, day, hour)
		if math.Abs(e.EdgeDeg-height) > 0.06 || math.Abs(e.BearingDeg-bearing) > 0.06 || !strings.Contains(words, "fist") {
			t.Errorf("%+v (%s): the sun stood at %.1f, %.1f", e, words, bearing, height)
		}
		after := lightDesk(t, text, e)
		if got := first(after); math.Abs(got-hour) > 0.18 {
			t.Errorf("seen at %.2f, the model now has %.2f (it had %.2f)", hour, got, was)
		}
		edge, _ := after.EdgeAt("bed", e.BearingDeg)
		if math.Abs(edge-e.EdgeDeg) > 0.15 {
			t.Errorf("the edge is drawn at %.1f, seen at %.1f", edge, e.EdgeDeg)
		}
		gain := after.base[0][5] - before.base[0][5]
		if (hour < was) != (gain > 0) || math.Abs(gain) < 0.1 {
			t.Errorf("seen at %.2f for %.2f: June changes by %.2f h", hour, was, gain)
		}
	}
	for _, tt := range []struct {
		hour float64
		left bool
		want string
	}{{2, false, "below the level"}, {15, false, "sinking"}, {9, true, "climbing"}} {
		if _, _, err := before.SeenSun("bed", day, tt.hour, tt.left); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%.0f o'clock: %v, want %q", tt.hour, err, tt.want)
		}
	}
}

// A fist up takes light, a fist down gives it back; other spaces keep theirs;
// the plan's light takes it too.
func TestFistsChangeOneSpace(t *testing.T) {
	open := lightDesk(t, demo.GardenYAML)
	space := string(open.light.Space(0).ID)
	up, _, err := open.ByHand(space, 180, 3)
	if err != nil {
		t.Fatal(err)
	}
	shut := lightDesk(t, demo.GardenYAML, up)
	down, _, err := shut.ByHand(space, 180, -3)
	if err != nil {
		t.Fatal(err)
	}
	back := lightDesk(t, demo.GardenYAML, up, down)
	year := func(d *LightDesk, s int) (h float64) {
		for m := range 12 {
			h += d.base[s][m]
		}
		return h
	}
	if year(shut, 0) >= year(open, 0)-0.05 || year(back, 0) <= year(shut, 0)+0.05 {
		t.Errorf("hours %.2f open, %.2f a fist up, %.2f taken down again", year(open, 0), year(shut, 0), year(back, 0))
	}
	for s := 1; s < len(open.base); s++ {
		if open.base[s] != shut.base[s] {
			t.Errorf("%s changed with a correction of %s", open.light.Space(s).ID, space)
		}
	}
	in := demoInputs(t, demoCases()[0])
	before, err := NewPlace(in)
	if err != nil {
		t.Fatal(err)
	}
	in.State = &ledger.State{Edges: shut.edges}
	after, err := NewPlace(in)
	if err != nil {
		t.Fatal(err)
	}
	i := shut.light.space[0]
	if after.Lights[i].SkyView >= before.Lights[i].SkyView || after.Lights[i+1] != before.Lights[i+1] {
		t.Errorf("the plan's light: sky %.3f, was %.3f", after.Lights[i].SkyView, before.Lights[i].SkyView)
	}
	if _, _, err := open.ByHand(space, 180, -90); err != nil {
		t.Log(err)
	}
}

// What-ifs and costs leave the light as it was, and a thing's cost is what
// taking it away gives.
func TestWhatIfPutsEverythingBack(t *testing.T) {
	d := lightDesk(t, demo.GardenYAML)
	if _, err := d.Costs(); err != nil {
		t.Fatal(err)
	}
	for _, w := range WhatIfWays() {
		for thing := 0; thing < len(d.light.Bodies); thing += 5 {
			d.Try(WhatIf{Thing: thing, Do: w.Do, By: w.Usual})
		}
	}
	hours, mol := d.light.monthly()
	for s := range hours {
		if hours[s] != d.base[s] || mol[s] != d.mol[s] {
			t.Fatalf("%s: the light was not put back", d.light.Space(s).ID)
		}
	}
	costs, _ := d.Costs()
	if len(costs) < 3 || len(costs[0].Rows) == 0 || costs[0].Total < costs[len(costs)-1].Total {
		t.Fatalf("%d costs", len(costs))
	}
	rows, words, err := d.Try(WhatIf{Thing: costs[0].No, Do: "remove"})
	if err != nil || !strings.Contains(words, costs[0].Name) {
		t.Fatal(words, err)
	}
	for _, c := range costs[0].Rows {
		for _, r := range rows {
			if r.Space == c.Space && r.After != c.After {
				t.Errorf("%s: removed %v, cost %v", r.Space, r.After, c.After)
			}
		}
	}
	if _, _, err := d.Try(WhatIf{Thing: 0, Do: "prune", By: 30}); err == nil {
		t.Error("a house was thinned")
	}
	if _, _, err := d.Try(WhatIf{Thing: 0, Do: "lower", By: 6}); err == nil {
		t.Error("a house of 6 m made 6 m lower")
	}
	if _, _, err := d.Try(WhatIf{Thing: 999, Do: "remove"}); err != ErrNoThing {
		t.Error(err)
	}
}

// Odd scenes give finite light or are refused in words by the garden file.
func TestOddScenes(t *testing.T) {
	posts := ""
	for k := range 1000 {
		posts += "  p" + strconv.Itoa(k) + ": {kind: post, east: " + strconv.Itoa(k%40-20) + " m, north: " + strconv.Itoa(k/40-30) + " m, across: 10 cm, height: 2 m}\n"
	}
	for _, tt := range []struct{ name, things string }{
		{"bodies inside one another", "  a: {kind: box, east: 3 m, north: -3 m, length: 2 m, width: 2 m, height: 2 m}\n  b: {kind: box, east: 3 m, north: -3 m, length: 1 m, width: 1 m, height: 1 m}\n  c: {kind: box, east: 3 m, north: -3 m, length: 2 m, width: 2 m, height: 2 m}\n"},
		{"no thickness said", "  a: {kind: wall, east: 0 m, north: -5 m, length: 40 m, height: 3 m}\n"},
		{"zero thickness", "  a: {kind: box, east: 3 m, north: -3 m, length: 2 m, width: 0 m, height: 2 m}\n"},
		{"a tree on the bed", "  t: {kind: tree, east: 0 m, north: 0 m, across: 6 m, height: 8 m, base: 1 m, light in leaf: 10 %, light bare: 60 %, in leaf: May to October}\n"},
		{"a thousand posts", posts},
		{"a tower of 300 m", "  t: {kind: box, east: 0 m, north: -40 m, length: 30 m, width: 30 m, height: 300 m}\n"},
	} {
		g, faults := garden.Read("yard.yaml", yard(tt.things), nil)
		if len(faults) > 0 {
			words := ""
			for _, f := range faults {
				words += f.String() + "\n"
			}
			if !strings.Contains(words, "yard.yaml") {
				t.Errorf("%s: refused without words: %q", tt.name, words)
			}
			t.Logf("%s: refused: %s", tt.name, words[:min(len(words), 200)])
			continue
		}
		begun := time.Now()
		d := NewLightDesk(&Inputs{Garden: g, Date: cal.Of(2015, 6, 9), Workers: 2}, nil)
		v, ok := d.Skyline("bed")
		if !ok {
			t.Errorf("%s: no view", tt.name)
			continue
		}
		for m, one := range v.Months {
			if !(one.Mean >= 0 && one.Mean <= 16.5 && one.Least <= one.Mean+1e-9 && one.Mean <= one.Most+1e-9) {
				t.Errorf("%s, month %d: %+v", tt.name, m+1, one)
			}
		}
		for _, p := range v.Points {
			if !(p.EdgeDeg >= 0 && p.EdgeDeg <= 90) {
				t.Errorf("%s: edge %v", tt.name, p)
			}
		}
		t.Logf("%s: %.1f h in June, %v", tt.name, v.Months[5].Mean, time.Since(begun))
	}
}

// The picture of an hour: shadows lie away from the sun, and a space in full
// sun has none of them on it.
func TestOverheadShadowsLieAwayFromTheSun(t *testing.T) {
	d := lightDesk(t, yard(southWall))
	for _, hour := range []float64{7, 12, 17} {
		o := d.Overhead(25, hour)
		if !o.Up || len(o.Things) != 2 || o.Things[0].Shadow == nil {
			t.Fatalf("%v o'clock: %+v", hour, o)
		}
		north, south := 0.0, 0.0
		for _, p := range o.Things[0].Shadow[0] {
			north, south = max(north, p.Y+5), max(south, -p.Y-5)
		}
		if sunSouth := o.BearingDeg > 90 && o.BearingDeg < 270; sunSouth != (north > south) {
			t.Errorf("%v o'clock: the sun at %.0f°, the shadow %.1f m north and %.1f m south", hour, o.BearingDeg, north, south)
		}
		if s := o.Spaces[0]; s.Covered || s.Lit < 0.99 {
			t.Errorf("%v o'clock in June: %+v", hour, s)
		}
	}
	if o := d.Overhead(51, 12); o.Spaces[0].Lit > 0 || !o.Up || o.Spaces[0].SunStep != 1 {
		t.Errorf("midwinter noon behind the wall: %+v", o.Spaces[0])
	}
	if o := d.Overhead(25, 1); o.Up || o.Things[0].Shadow != nil {
		t.Error("a shadow at night")
	}
}
