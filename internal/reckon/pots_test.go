package reckon

import (
	"testing"

	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// TestPotsGoToTheLinesTheyReach: of an earlier plan's lines the soonest takes
// the pots at hand, and one for which they do not reach is raised anew, so that
// both lines last.
func TestPotsGoToTheLinesTheyReach(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	m := modelled(t, in)
	// Per tray: the starts that pots and new plants could both make.
	type start struct {
		space int
		crop  string
		week  int
	}
	anew := map[start]bool{}
	key := func(o season.Option) start { return start{o.Space, o.Crop, o.Week} }
	for _, o := range m.p.Options {
		if !isTray(o) && o.ShelfFrom != noShelf {
			anew[key(o)] = true
		}
	}
	tried := 0
	for tray, pots := range m.p.Totals {
		var both []season.Planting
		for i, o := range m.p.Options {
			n := len(both)
			if o.MaxTotal == tray && isTray(o) && anew[key(o)] && o.Max >= pots && (n == 0 || m.p.Options[both[n-1].Option].Space != o.Space) {
				both = append(both, season.Planting{Option: i, Plants: pots})
			}
		}
		if len(both) < 2 {
			continue
		}
		tried++
		first, second := m.likeness(both[0]), m.likeness(both[1])
		if first.Since > second.Since {
			first, second = second, first
		}
		plan := m.prior(&ledger.KeptPlan{Lines: []ledger.PlanLine{second, first}})
		if len(plan.Plantings) != 2 {
			t.Fatalf("%s: %d of two lines are found", tray, len(plan.Plantings))
		}
		for k, pl := range plan.Plantings {
			if o := m.p.Options[pl.Option]; isTray(o) != (k == 0) {
				t.Errorf("%s: line %d, %s in week %d, is from the pots: %v", tray, k+1, o.ID, o.Week, isTray(o))
			}
		}
	}
	if tried == 0 {
		t.Error("no tray of the demo could stand where new plants could")
	}
}
