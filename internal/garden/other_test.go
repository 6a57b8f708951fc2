package garden

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

// TestSayOther reads lines as a gardener writes them, and writes them back.
func TestSayOther(t *testing.T) {
	for _, tt := range []struct {
		typed, back string
		ground      bool
	}{
		{"comfrey, 60 cm across, 80 cm high, since 2012, until October 2016", "", true},
		{"3 hydrangea, 40 cm across each", "3 hydrangea, 40 cm across", true},
		{"Großmutters Rose", "", false},
		{"water butt, 2'6\" x 2 ft, 4 ft high", "", true},
		{"until, 1 m x 40 cm", "", true}, // a name is whatever was typed
	} {
		v, ground, bad := SayOther(tt.typed, nil, false)
		if len(bad) > 0 || ground != tt.ground {
			t.Errorf("%s: ground %v, %v", tt.typed, ground, bad)
			continue
		}
		want := tt.back
		if want == "" {
			want = tt.typed
		}
		if got := OtherLine(v); got != want {
			t.Errorf("%s comes back as %s", tt.typed, got)
		}
	}
	for typed, want := range map[string]string{
		"":                                      "Begin with its name",
		"comfrey, 60":                           "One measure is not enough",
		"comfrey, 60 across":                    "unit",
		"comfrey, 60 cm across, 40 cm deep":     "not understood",
		"comfrey, 1 m x 1 m x 1 m":              "the ground one of them takes",
		"comfrey, until soonish":                "soonish",
		"comfrey, 3 high":                       "unit",
		"0 comfrey":                             "count from 1",
		strings.Repeat("x", 81) + ", 1 m x 1 m": "at most 80",
	} {
		_, _, bad := SayOther(typed, nil, false)
		if len(bad) == 0 || !strings.Contains(bad[0].Words, want) {
			t.Errorf("%q: %v, want %q", typed, bad, want)
		}
	}
}

// TestOthersOfAFile reads them, and names each slip at its line.
func TestOthersOfAFile(t *testing.T) {
	head := "garden: G\nplace: {latitude: 47.6 N, longitude: 122.3 W}\nfrom: 6 April 2015\nmedia:\n  mix: {kind: potting mix}\nspaces:\n  bed:\n    kind: raised bed\n    east: 0 m\n    north: 0 m\n    length: 2 m\n    width: 1 m\n    depth: 30 cm\n    medium: mix\n    water: can\n    something else:\n"
	g, bad := Read("g", []byte(head+"      - {name: \"Gran's comfrey\", count: 2, takes: 50 cm across, height: 80 cm, since: 2012, until: October 2016}\n"), book(t))
	if len(bad) > 0 {
		t.Fatal(bad)
	}
	o := g.Spaces[0].Others[0]
	if o.Name != "Gran's comfrey" || o.Takes != "50 cm across" || math.Abs(o.AreaM2()-2*math.Pi/16) > 1e-9 || o.Height.String() != "80 cm" {
		t.Errorf("read as %+v", o)
	}
	for on, want := range map[cal.Day]bool{cal.Of(2011, 12, 31): false, cal.Of(2015, 4, 6): true, cal.Of(2016, 10, 31): true, cal.Of(2016, 11, 1): false} {
		if o.Here(on) != want {
			t.Errorf("on %s it is here: %v, want %v", on, o.Here(on), want)
		}
	}
	if d := Diff(&Garden{}, g); !strings.Contains(fmt.Sprint(d), "2 Gran's comfrey, 50 cm across, 80 cm high, since") {
		t.Errorf("the difference does not tell it: %s", fmt.Sprint(d))
	}
	for line, want := range map[string]string{
		"{takes: 50 cm across}":                                          "name",
		"{name: comfrey}":                                                "takes",
		"{name: comfrey, takes: 50}":                                     "takes 50",
		"{name: comfrey, takes: 50 across}":                              "takes 50 across",
		"{name: kale, takes: 50 cm across}":                              "kale is in the book",
		"{name: comfrey, takes: 50 cm across, since: 2014, until: 2013}": "lies before its since",
		"{name: comfrey, takes: 50 cm across, since: 2016}":              "lies in the future",
		"{name: comfrey, takes: 50 cm across, height: 300 m}":            "height 300 m",
		"{name: comfrey, count: 0, takes: 50 cm across}":                 "count 0",
		"{name: comfrey, count: 900, takes: 50 cm across}":               "bed is crowded",
		"{name: comfrey, takes: 50 cm across, looks: well}":              "looks",
	} {
		_, bad := Read("g", []byte(head+"      - "+line+"\n"), book(t))
		if len(bad) == 0 || !strings.Contains(bad[0].What, want) {
			t.Errorf("%s: %v, want %q", line, bad, want)
		}
	}
	shelf := strings.Replace(head, "raised bed", "bench", 1) + "      - {name: comfrey, takes: 50 cm across}\n"
	if _, bad := Read("g", []byte(shelf), book(t)); len(bad) == 0 || !strings.Contains(bad[0].What, "on a bench") {
		t.Errorf("on a bench: %v", bad)
	}
}
