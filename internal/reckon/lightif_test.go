package reckon

import (
	"math"
	"testing"

	"bedweek/demo"
	"bedweek/internal/garden"
	"bedweek/internal/shade"
)

// What a what-if says is what a new garden with that change says, worked out
// from nothing: for every thing of the demo that the way makes sense for.
func TestWhatIfIsAFullRecomputation(t *testing.T) {
	d := lightDesk(t, demo.GardenYAML)
	start := d.light.Field.Day(0).Monday()
	tried := map[string]int{}
	for thing := range d.light.Bodies {
		for k, w := range WhatIfWays() {
			if (thing+k)%4 != 0 { // a quarter of all pairs; every way and every thing is met
				continue
			}
			rows, words, err := d.Try(WhatIf{Thing: thing, Do: w.Do, By: w.Usual})
			if err != nil {
				continue
			}
			g, things := changedByHand(d, thing, w)
			fresh := newGardenLight(g, nil, nil, nil, start, 52, shade.QuickLooks(), false, 1)
			if things != nil {
				fresh = &GardenLight{Garden: g, Bodies: things}
				gr := groundsOf(g, things, nil)
				fresh.space, fresh.buried = gr.space, gr.buried
				fresh.Field = shade.NewField(d.light.Field.Course(), gr.surfaces, things, false, 1)
			}
			hours, mol := fresh.monthly()
			for s, r := range rows {
				if r.Before != d.base[s] {
					t.Fatalf("%s: %s before", words, r.Space)
				}
				for m := range 12 {
					if math.Abs(r.After[m]-hours[s][m]) > 1e-9 || math.Abs(r.MolAfter[m]-mol[s][m]) > 1e-9 {
						t.Fatalf("%s %s, month %d: %.4f h, a new garden has %.4f", words, r.Name, m+1, r.After[m], hours[s][m])
					}
				}
			}
			tried[w.Do]++
		}
	}
	for _, w := range WhatIfWays() {
		if tried[w.Do] == 0 {
			t.Errorf("%q was never tried", w.Do)
		}
	}
	t.Log(tried)
}

// changedByHand makes a what-if's garden in the plainest way; with bodies when
// the garden's own words cannot say it.
func changedByHand(d *LightDesk, thing int, w WhatIfWay) (*garden.Garden, []shade.Body) {
	g := *d.light.Garden
	g.Obstacles = append(g.Obstacles[:0:0], g.Obstacles...)
	g.Spaces = append(g.Spaces[:0:0], g.Spaces...)
	dx := map[string]float64{"east": w.Usual, "west": -w.Usual}[w.Do]
	dy := map[string]float64{"north": w.Usual, "south": -w.Usual}[w.Do]
	up := map[string]float64{"raise": w.Usual, "lower": -w.Usual}[w.Do]
	if thing < len(g.Obstacles) && dx+dy+up != 0 {
		o := &g.Obstacles[thing]
		o.X, o.Y, o.Height.M = o.X+dx, o.Y+dy, o.Height.M+up
		if o.Kind == "roof" && o.Base.Known() {
			o.Base.M += up
		}
		return &g, nil
	}
	for i := range g.Spaces {
		if "space "+string(g.Spaces[i].ID) == d.light.Bodies[thing].Name && dx+dy != 0 {
			g.Spaces[i].X, g.Spaces[i].Y = g.Spaces[i].X+dx, g.Spaces[i].Y+dy
			return &g, nil
		}
	}
	things := append([]shade.Body(nil), d.light.Bodies...)
	old := things[thing]
	one := shade.Body{Name: old.Name, Parts: append([]shade.Part(nil), old.Parts...)}
	if w.Do == "remove" {
		one = shade.Body{}
	}
	for k := range one.Parts {
		p := &one.Parts[k]
		switch {
		case w.Do == "net":
			p.InLeaf, p.Bare = 0.8, 0.8
		case w.Do == "prune" && p.InLeaf+p.Bare > 0:
			p.InLeaf, p.Bare = p.InLeaf+0.3*(1-p.InLeaf), p.Bare+0.3*(1-p.Bare)
		case dx+dy+up != 0: // a support is a sheet: its four corners move
			sheet := things[thing]
			for i := range g.Spaces {
				sp := g.Spaces[i]
				for n, su := range sp.Supports {
					if sheet.Name != string(sp.ID)+" support "+string(rune('1'+n)) {
						continue
					}
					x, y, turn := supportAt(sp, su.Side, g.Place.LatDeg)
					one = shade.Sheet(sheet.Name, x+dx, y+dy, turn, su.Length.M, sp.Rim.M, sp.Rim.M+su.Height.M+up, trellisLight)
				}
			}
		}
	}
	things[thing] = one
	return &g, things
}

// Ground under a thing that is moved onto it is no ground, and comes back when
// the thing goes.
func TestWhatIfABoxIsMovedOntoTheBed(t *testing.T) {
	text := yard("  box: {name: Box, kind: box, east: 0 m, north: 2 m, length: 1 m, width: 0.6 m, height: 1 m}\n")
	d := lightDesk(t, text)
	rows, _, err := d.Try(WhatIf{Thing: 0, Do: "south", By: 2})
	if err != nil {
		t.Fatal(err)
	}
	onto := lightDesk(t, yard("  box: {name: Box, kind: box, east: 0 m, north: 0 m, length: 1 m, width: 0.6 m, height: 1 m}\n"))
	if rows[0].After != onto.base[0] || rows[0].After == d.base[0] {
		t.Errorf("moved on %v, standing there %v", rows[0].After, onto.base[0])
	}
	rows, _, err = onto.Try(WhatIf{Thing: 0, Do: "north", By: 2})
	if err != nil {
		t.Fatal(err)
	}
	if rows[0].After != d.base[0] {
		t.Errorf("moved off %v, away %v", rows[0].After, d.base[0])
	}
}
