package reckon

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
)

// reckoned plans a garden file quickly.
func reckoned(t *testing.T, text string, weeks int) *Result {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("odd", []byte(text), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	in := inventedInputs(t, 1, 1)
	in.Garden, in.Futures, in.Weeks, in.Work = g, 4, weeks, 300_000
	ground, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	r, err := Reckon(context.Background(), in, ground)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// TestOddGardensGetAPlan: without water, without a shelf, with one pot, with
// 120 spaces there is a lawful plan, and it does what such a garden can.
func TestOddGardensGetAPlan(t *testing.T) {
	head := "garden: Odd\nplace: {latitude: 47.6 N, longitude: 122.3 W, elevation: 50 m, zone: America/Los_Angeles}\nmedia:\n  mix: {kind: potting mix}\n"
	bed := "    kind: raised bed\n    length: 2 m\n    width: 1 m\n    rim: 30 cm\n    depth: 35 cm\n    medium: mix\n"
	at := func(k int) string {
		return fmt.Sprintf("  b%03d:\n    east: %d m\n    north: %d m\n", k, 3*(k%12), 2*(k/12))
	}
	wants := "wants: {salad: 4, roots: 3, tomatoes: 2, beans and peas: 2, cooking greens: 2}\n"
	lamps := "  lamps: {kind: lamp shelf, length: 1 m, width: 40 cm}\nshelf: {places: 24, light: 12 mol a day, warmth: 19 C}\n"
	many := ""
	for k := range 120 {
		many += at(k) + bed + "    water: drip\n"
	}
	for _, c := range []struct {
		name, text string
		spaces     int
		raised     bool // pots may be raised here
	}{
		{"without water", head + "spaces:\n" + at(0) + bed + "    water: rain\n" + at(1) + bed + "    water: rain\n" + lamps + wants, 2, true},
		{"without a shelf", head + "spaces:\n" + at(0) + bed + "    water: can\n" + at(1) + bed + "    water: can\n" + wants, 2, false},
		{"one pot", head + "spaces:\n  pot:\n    kind: bag\n    east: 1 m\n    north: 1 m\n    across: 30 cm\n    rim: 30 cm\n    depth: 26 cm\n    medium: mix\n    water: can\n" + wants, 1, false},
		{"120 spaces", head + "spaces:\n" + many + lamps + wants, 120, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			weeks := 52
			if c.spaces > 100 {
				weeks = 10 // enough to show that it is planned, in seconds
			}
			r := reckoned(t, c.text, weeks)
			if len(r.Problem.Spaces) != c.spaces || r.Plan.Status != season.Feasible || len(r.Verdict.Faults) > 0 {
				t.Fatalf("%d spaces, %v, faults %v", len(r.Problem.Spaces), r.Plan.Status, r.Verdict.Faults)
			}
			if len(r.Plan.Plantings) == 0 || r.Plan.Value <= r.Plan.Nothing {
				t.Errorf("%d plantings worth %.1f, nothing is worth %.1f", len(r.Plan.Plantings), r.Plan.Value, r.Plan.Nothing)
			}
			pots := 0
			for _, pl := range r.Plan.Plantings {
				if o := &r.Problem.Options[pl.Option]; o.ShelfFrom != noShelf && o.ShelfFrom < o.Week {
					pots++
				}
			}
			if !c.raised && pots > 0 {
				t.Errorf("%d plantings are raised on a shelf that is not there", pots)
			}
			t.Logf("%d options, %d plantings, worth %.1f; %s", len(r.Problem.Options), len(r.Plan.Plantings), r.Plan.Value, r.Day.Plan.Proof)
		})
	}
}

// TestMustsThatCannotAllBeMet: the plan meets what it can, says which must
// lacks and which alone is cheapest to give up, and proves nothing.
func TestMustsThatCannotAllBeMet(t *testing.T) {
	head := "garden: Odd\nplace: {latitude: 47.6 N, longitude: 122.3 W, elevation: 50 m, zone: America/Los_Angeles}\nmedia:\n  mix: {kind: potting mix}\n"
	tub := "spaces:\n  tub:\n    name: The tub\n    kind: bag\n    east: 1 m\n    north: 1 m\n    across: 45 cm\n    rim: 40 cm\n    depth: 36 cm\n    medium: mix\n    water: can\n"
	wants := "wants: {salad: 2, roots: 2, potatoes: 2, cooking greens: 2}\n"
	r := reckoned(t, head+tub+wants+"musts:\n  - {crop: chard, plants: 40, space: tub}\n  - {crop: radish, plants: 10, space: tub}\n", 52)
	words := strings.Join(r.Plan.Conflict, "; ")
	t.Log(words)
	if r.Plan.Status != season.Infeasible || !strings.Contains(words, "chard") || !strings.Contains(words, "cheapest to give up: chard") {
		t.Errorf("forty chard in a tub: %v, %q; want infeasible, chard the one to give up", r.Plan.Status, words)
	}
	if len(r.Plan.Plantings) == 0 || r.proof.ok {
		t.Errorf("%d plantings, proved %v: want a plan of what can be met, and no proof", len(r.Plan.Plantings), r.proof.ok)
	}
}
