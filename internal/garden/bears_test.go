package garden

import (
	"math"
	"strings"
	"testing"
)

// Limits in every unit: 1 kN/m2 is 101.97 kg/m2 by the standard 9.80665 m/s2;
// 1 psf is 4.88243 kg/m2 by the pound and foot of 1959.
func TestBearsUnits(t *testing.T) {
	read := func(text string) (Bears, string) {
		g, faults := Read("g.yaml", []byte(strings.Replace(small, "water: can", "water: can\n    stands on: balcony\n    bears: "+text, 1)), book(t))
		if len(faults) > 0 {
			return Bears{}, print(faults)
		}
		return g.Spaces[0].Bears, ""
	}
	for _, c := range []struct {
		text     string
		kg, kgM2 float64
	}{
		{"150 kg", 150, 0}, {"330 lb", 149.685, 0}, {"250 kg/m2", 0, 250}, {"250 kg per m2", 0, 250}, {"250 kg/m²", 0, 250}, {"250 kg a m2", 0, 250}, {"2.5 kN/m2", 0, 254.929},
		{"50 psf", 0, 244.121}, {"50 lb/sq ft", 0, 244.121}, {"not known", 0, 0},
	} {
		b, bad := read(c.text)
		if bad != "" || math.Abs(b.Kg-c.kg) > 0.01 || math.Abs(b.KgM2-c.kgM2) > 0.01 || b.Typed != c.text {
			t.Errorf("%s: %+v %s", c.text, b, bad)
		}
	}
	for text, want := range map[string]string{"lots": "or not known", "0 kg": "more than 0", "9000 kg/m2": "at most 5000 kg/m2", "-3 kg": "bears", "200000 kg": "at most 100000 kg"} {
		if _, bad := read(text); !strings.Contains(bad, want) {
			t.Errorf("%s: %q, want %q", text, bad, want)
		}
	}
}

// Two limits for one balcony are one too many; a limit beside "not known" is
// what somebody found out.
func TestOneLimitForOneSurface(t *testing.T) {
	read := func(a, b string) string {
		pot := func(id, east, bears string) string {
			return "\n  " + id + ":\n    kind: bag\n    east: " + east + " m\n    north: 9 m\n    across: 40 cm\n    depth: 30 cm\n    medium: m\n    water: can\n    stands on: balcony\n    bears: " + bears
		}
		text := "garden: G\nplace: {latitude: 47, longitude: 8}\nmedia:\n  m: {kind: potting mix}\nspaces:" + pot("p", "3", a) + pot("q", "6", b) + "\n"
		_, faults := Read("g.yaml", []byte(text), book(t))
		return print(faults)
	}
	if bad := read("150 kg", "250 kg"); !strings.Contains(bad, "balcony bears 250 kg here and 150 kg at p") {
		t.Errorf("two limits: %q", bad)
	}
	for _, b := range []string{"150 kg", "not known"} {
		if bad := read("150 kg", b); bad != "" {
			t.Errorf("150 kg and %s: %q", b, bad)
		}
	}
}
