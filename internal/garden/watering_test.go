package garden

import (
	"strings"
	"testing"
)

// The gallon is 231 cubic inches, 3.785411784 L, by definition.
func TestWateringKeys(t *testing.T) {
	base := strings.Replace(small, "water: can", "water: drip\n    emitter flow: 0.5 gal/h\n    emitter spacing: 12 in\n    line spacing: 40 cm\n    mulch: 5 cm", 1)
	if base == small {
		t.Fatal("the small garden has no space watered by can")
	}
	g, faults := Read("g.yaml", []byte(base), book(t))
	if len(faults) > 0 {
		t.Fatalf("faults:\n%s", print(faults))
	}
	w := g.Spaces[0].Watering
	if w.EmitterLH.LH != 1.892705892 || w.EmitterEvery.M != 0.3048 || w.LinesEvery.M != 0.4 || w.Mulch.M != 0.05 || w.EmitterLH.Typed != "0.5 gal/h" {
		t.Errorf("read %+v", w)
	}
	for _, tt := range []struct{ old, with, want string }{
		{"0.5 gal/h", "2 L", "without its time"},
		{"0.5 gal/h", "2/h", "emitter flow"},
		{"0.5 gal/h", "900 L/h", "at most 200 L/h"},
		{"0.5 gal/h", "0 L/h", "more than 0"},
		{"emitter spacing: 12 in", "line spacing: 12 in", "line spacing"},
		{"    emitter spacing: 12 in\n", "", "emitters without their spacing"},
		{"water: drip", "water: can", "without a drip line"},
		{"mulch: 5 cm", "mulch: 5 m", "mulch"},
		{"mulch: 5 cm", "reservoir: 12 L", "not watered by one"},
		{"mulch: 5 cm", "tier share: 40 %", "no tier"},
	} {
		_, faults := Read("g.yaml", []byte(strings.Replace(base, tt.old, tt.with, 1)), book(t))
		if len(faults) == 0 || !strings.Contains(print(faults), tt.want) {
			t.Errorf("%s for %s: faults %q, want %q", tt.with, tt.old, print(faults), tt.want)
		}
	}
	tank := strings.Replace(small, "water: can", "water: reservoir\n    reservoir: 12 L", 1)
	if g, faults := Read("g.yaml", []byte(tank), book(t)); len(faults) > 0 || g.Spaces[0].Watering.Tank.L != 12 {
		t.Errorf("reservoir: %s", print(faults))
	}
}

// TestWaterADay: with units as elsewhere, none is not the same as not said, and
// a slip is told at its line.
func TestWaterADay(t *testing.T) {
	with := func(line string) string { return strings.Replace(small, "place:", line+"place:", 1) }
	for _, tt := range []struct {
		line  string
		want  float64
		known bool
	}{
		{"", 0, false}, {"water a day: 40 L\n", 40, true}, {"water a day: 0 L\n", 0, true},
		{"water a day: 10 gal\n", 37.85411784, true}, {"water a day: 30-50 L\n", 40, true},
	} {
		g, faults := Read("g.yaml", []byte(with(tt.line)), book(t))
		if len(faults) > 0 || g.WaterDay.L != tt.want || g.WaterDay.Known() != tt.known {
			t.Errorf("%q: %+v, want %v L, known %v; %s", tt.line, g, tt.want, tt.known, print(faults))
		}
	}
	for _, tt := range []struct{ line, want string }{
		{"water a day: 40\n", "water a day 40"}, {"water a day: -3 L\n", "water a day -3 L"},
		{"water a day: much\n", "water a day much"}, {"water a day: 30000 L\n", "20000 L"},
	} {
		g, faults := Read("g.yaml", []byte(with(tt.line)), book(t))
		if g != nil || len(faults) != 1 || faults[0].Line != 2 || faults[0].Remedy == "" || !strings.Contains(print(faults), tt.want) {
			t.Errorf("%q: %s, want one fault in line 2 with %q", tt.line, print(faults), tt.want)
		}
	}
}
