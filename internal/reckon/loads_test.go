package reckon

import (
	"math"
	"strings"
	"testing"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

func potOf(id, on string, litres, acrossM float64, b garden.Bears) garden.Space {
	return garden.Space{ID: garden.SpaceID(id), Kind: garden.Bag, Round: unit.Metres(acrossM), Volume: unit.Volume{L: litres}, Water: "can", StandsOn: on, Bears: b}
}

// Pots on one balcony are weighed together: 100 L of potting mix hold 100 kg a
// thousand litres dry at the least and more when full, so two of them weigh
// twice one, and the limit is that of the one line that gives it.
func TestLoadsAreSummedOverASurface(t *testing.T) {
	of := func(b garden.Bears, n int) Load {
		g := &garden.Garden{}
		for i := range n {
			one := garden.Bears{}
			if i == 0 {
				one = b
			}
			g.Spaces = append(g.Spaces, potOf(string(rune('a'+i)), "balcony", 100, 0.5, one))
		}
		g.Spaces = append(g.Spaces, potOf("elsewhere", "", 500, 1, garden.Bears{}))
		loads, err := Loads(g)
		if err != nil || len(loads) != 1 {
			t.Fatalf("%d loads, %v", len(loads), err)
		}
		return loads[0]
	}
	one, two := of(garden.Bears{Typed: "not known"}, 1), of(garden.Bears{Typed: "not known"}, 2)
	if one.State != NotAsked || math.Abs(two.HighKg-2*one.HighKg) > 1e-9 || math.Abs(two.HighM2-one.HighM2) > 1e-9 || one.LowKg < 30 || one.HighKg > 150 {
		t.Errorf("one pot %+v, two %+v", one, two)
	}
	if m2 := one.HighKg / (math.Pi / 16); math.Abs(one.HighM2-m2) > 1e-9 {
		t.Errorf("%.1f kg/m2, want %.1f: the pot stands on its own circle", one.HighM2, m2)
	}
	for _, c := range []struct {
		b    garden.Bears
		want LoadState
		say  string
	}{
		{garden.Bears{Kg: two.LowKg - 1, Typed: "few"}, Passes, "more than the few given"},
		{garden.Bears{Kg: (two.LowKg + two.HighKg) / 2, Typed: "some"}, MayPass, "may be more than the some"},
		{garden.Bears{Kg: two.HighKg + 1, Typed: "much"}, Under, "figure given is much"},
		{garden.Bears{KgM2: two.LowM2 - 1, Typed: "thin"}, Passes, "the heaviest of a, b weighs"},
		{garden.Bears{KgM2: two.HighM2 + 1, Typed: "thick"}, Under, "kg on a square metre"},
		{garden.Bears{Typed: "not known"}, NotAsked, "is not known"},
	} {
		l := of(c.b, 2)
		if l.State != c.want || !strings.Contains(l.Words, c.say) || !strings.Contains(l.Words, "structural engineer or the landlord") || strings.Contains(strings.ToLower(l.Words), "safe") {
			t.Errorf("%+v: state %d, want %d: %s", c.b, l.State, c.want, l.Words)
		}
	}
	// It reaches the notes of the day unless it lies under the figure.
	in := Inputs{Garden: &garden.Garden{Spaces: []garden.Space{potOf("a", "", 100, 0.5, garden.Bears{Kg: 10, Typed: "10 kg"})}}}
	if got := in.doubts(); len(got) != 1 || !strings.Contains(got[0], "10 kg") {
		t.Errorf("the day says %q", got)
	}
}

// A lamp shelf of 40 places and a bench of 1.4 m by 35 cm (20 by 5 pots of 7 cm)
// are weighed full of pots: a pot of 0.28 L of potting mix, 90 to 160 kg a
// thousand litres dry and 0.6 to 0.7 of water when full (the book), weighs 0.193
// to 0.241 kg, and 0.049 kg more in a centimetre of water.
func TestBenchAndShelfAreWeighed(t *testing.T) {
	shelf := garden.Space{ID: "lamps", Kind: garden.LampShelf, Bears: garden.Bears{Kg: 9, Typed: "9 kg"}}
	bench := garden.Space{ID: "bench", Kind: garden.Bench, Length: unit.Metres(1.4), Width: unit.Metres(0.35), Bears: garden.Bears{Kg: 40, Typed: "40 kg"}}
	bare := garden.Space{ID: "bare", Kind: garden.Bench, Bears: garden.Bears{Typed: "not known"}}
	g := &garden.Garden{Spaces: []garden.Space{shelf, bench, bare}, Shelf: garden.Shelf{Places: 40}}
	loads, err := Loads(g)
	if err != nil || len(loads) != 3 {
		t.Fatalf("%d loads, %v", len(loads), err)
	}
	const tolKg = 0.1
	for i, tt := range []struct {
		pots  float64
		state LoadState
		say   string
	}{{40, MayPass, "may be more than the 9 kg"}, {100, Under, "figure given is 40 kg"}, {0, NotAsked, "Weigh a full tray and count"}} {
		l := loads[i]
		low, high := tt.pots*0.28*(0.09+0.6), tt.pots*(0.28*(0.16+0.7)+0.049)
		if math.Abs(l.LowKg-low) > tolKg || math.Abs(l.HighKg-high) > tolKg || l.State != tt.state || !strings.Contains(l.Words, tt.say) {
			t.Errorf("%s: %.2f to %.2f kg, want %.2f to %.2f; state %d: %s", l.Surface, l.LowKg, l.HighKg, low, high, l.State, l.Words)
		}
	}
	g.Spaces = append(g.Spaces, garden.Space{ID: "more", Kind: garden.LampShelf, StandsOn: "rack"})
	if loads, _ = Loads(g); math.Abs(loads[0].LowKg-20*0.28*0.69) > tolKg || math.Abs(loads[3].LowKg-loads[0].LowKg) > 1e-9 {
		t.Errorf("two lamp shelves share 40 places: %.2f and %.2f kg", loads[0].LowKg, loads[3].LowKg)
	}
}
