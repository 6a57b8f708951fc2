package garden

import (
	"os"
	"strings"
	"testing"
)

// TestSaidLines reads lines as gardeners type them. What the keys should be
// follows from docs/formats.md.
func TestSaidLines(t *testing.T) {
	standing := func(s string) (Value, []Said) { v, _, bad := SayStanding(s, book(t), false); return v, bad }
	for _, tt := range []struct {
		read  func(string) (Value, []Said)
		typed string
		want  string // "" = a fault
		words string // in the fault
	}{
		{SaySize, "3 m x 1.2 m", "{length: 3 m, width: 1.2 m}", ""},
		{SaySize, `4 ft by 3 ft x 12 in deep`, "{length: 4 ft, width: 3 ft, depth: 12 in}", ""},
		{SaySize, "18 in across, 14 in deep", "{across: 18 in, depth: 14 in}", ""},
		{SaySize, `2'6" × 60cm`, `{length: "2'6\"", width: 60cm}`, ""},
		{SaySize, "triangle 3 m, 4 m, 5 m", "{shape: \"triangle 3 m, 4 m, 5 m\"}", ""},
		{SaySize, "3 x 1.2", "", "unit"},
		{SaySize, "3 m", "", "length x width"},
		{SaySize, "-3 m x 1 m", "{length: -3 m, width: 1 m}", ""}, // the reader refuses it, with its bounds
		{SaySize, "triangle 1 m, 1 m, 5 m", "", "do not meet"},
		{SaySize, "L 3 m x 2 m, less 1 m x 80 cm, north west", "{shape: \"L 3 m x 2 m, less 1 m x 80 cm, north west\"}", ""},
		{SaySize, "oval 2 m x 1 m, 40 cm deep", "{depth: 40 cm, shape: oval 2 m x 1 m}", ""},
		{SaySize, "oval 2 m x 1 m, 40 deep", "", "unit"},
		{SaySize, "L 3 m x 2 m, less 3 m x 80 cm", "", "as large as the whole"},
		{SaySize, "L 3 m x 2 m", "", "Write it as L 3 m x 2 m, less 1 m x 80 cm"},
		{SaySize, "oval 3 x 1.2", "", "unit"},
		{SaySize, "oval 0 m x 1 m", "", "between 2 cm and 60 m"},
		{SaySize, "oval 300 m x 1 m", "", "another unit"},
		{SaySize, "half round -2 m", "", "between 2 cm and 60 m"},
		{SaySize, "four sides 1 m, 1 m, 1 m, 1 m, across 3 m", "", "do not meet"},
		{SayWhere, "2.2 m east, 5 m north", "{east: 2.2 m, north: 5 m}", ""},
		{SayWhere, "3 m west, 2 ft south, turned 90 degrees, 6 m up", "{east: -3 m, north: -2 ft, turn: 90 degrees, floor: 6 m}", ""},
		{SayWhere, "2.2 m, 5 m", "{east: 2.2 m, north: 5 m}", ""},
		{SayWhere, "2.2 m east", "", "both"},
		{SayWhere, "2.2, 5", "", "unit"},
		{SaySupport, "trellis 3 m long, 1.8 m high, west side", "{kind: trellis, length: 3 m, height: 1.8 m, side: west}", ""},
		{SaySupport, "stakes 2 m x 1.5 m, pole", "{kind: stakes, length: 2 m, height: 1.5 m, side: pole}", ""},
		{SaySupport, "ladder 2 m", "", "trellis"},
		{standing, "40 garlic Purple Skerry, since 18 October 2014, well, stays", "{crop: garlic, variety: Purple Skerry, since: 18 October 2014, count: 40, looks: well, keep: yes}", ""},
		{standing, "5 kale, one of Black Frond / Curled Ebb, set out early August 2014, bolting", "{crop: kale, one of: [Black Frond, Curled Ebb], set out: early August 2014, count: 5, looks: bolting}", ""},
		{standing, "leaf lettuce", "{crop: lettuce-leaf}", ""},
		{standing, "6 kalle, since March 2015", "", "kale"},
		{standing, "6 kale, since 03/04/2015", "", "two ways"},
		{standing, "6 kale, fine", "", "not understood"},
		{standing, "0 kale", "", "count"},
	} {
		v, bad := tt.read(tt.typed)
		got := ""
		if v.Line = true; len(bad) == 0 {
			got = inline(v)
		}
		said := ""
		for _, b := range bad {
			said += b.Words
		}
		if got != tt.want || !strings.Contains(said, tt.words) {
			t.Errorf("%q: %s, said %q; want %s and %q", tt.typed, got, said, tt.want, tt.words)
		}
	}
}

// TestLinesComeBack writes every planting and support of the demonstration as
// a line and wants the same back.
func TestLinesComeBack(t *testing.T) {
	text, err := os.ReadFile("../../demo/garden.yaml")
	if err != nil {
		t.Fatal(err)
	}
	spaces, _ := Look(text, "spaces")
	seen := 0
	for _, sp := range spaces.Pairs {
		for _, v := range sp.Value.At("standing").List() {
			seen++
			v.Line = true
			if got, _, bad := SayStanding(StandingLine(v), book(t), false); inline(got) != inline(v) {
				t.Errorf("%s: %q gives %s (%v), want %s", sp.Key, StandingLine(v), inline(got), bad, inline(v))
			}
		}
		for _, v := range sp.Value.At("supports").List() {
			seen++
			if got, bad := SaySupport(SupportLine(v)); inline(got) != inline(v) {
				t.Errorf("%s: %q gives %s (%v), want %s", sp.Key, SupportLine(v), inline(got), bad, inline(v))
			}
		}
	}
	if seen < 20 {
		t.Fatalf("%d lines seen", seen)
	}
}

func TestPathAt(t *testing.T) {
	text := "garden: x\nspaces:\n  a:\n    kind: bag\n    standing:\n      - {crop: kale}\n      - crop: leek\n        count: 2\n  b:\n    depth: 2 m\n"
	for line, want := range map[int]string{1: "garden", 4: "spaces > a > kind", 6: "spaces > a > standing > 0 > crop", 8: "spaces > a > standing > 1 > count", 9: "spaces > b", 10: "spaces > b > depth"} {
		if got := PathAt([]byte(text), line).String(); got != want {
			t.Errorf("line %d: %s, want %s", line, got, want)
		}
	}
}
