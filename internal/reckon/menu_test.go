package reckon

import (
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/season"
	"bedweek/internal/stand"
)

// TestPotsKeepTheirBestWeek: setting out that no pot at hand is of an age for
// does not push out the best week those pots can have, and what is hopeless
// for them is kept only to be told.
func TestPotsKeepTheirBestWeek(t *testing.T) {
	c := &crop.Crop{ID: "lettuce-leaf"}
	set := func(week, success int) Entry {
		day := cal.Of(2015, 8, 24) + cal.Day(7*week)
		return Entry{Crop: c, Way: crop.SetOut, Week: week, Day: day, Growth: stand.Growth{Success: success, Sown: day - 28}}
	}
	pots := []standing{{crop: c, tray: true, since: cal.Window{Likely: cal.Of(2015, 8, 10)}}}
	for _, one := range []struct {
		later    int
		kept     int
		hopeless bool
	}{{15, 2, false}, {12, 2, false}, {6, 2, true}} {
		out := worthOffering([]Entry{set(0, 16), set(2, one.later)}, leastCool, leastTray, pots)
		if len(out) != one.kept || out[1].Week != 2 || out[1].Hopeless != one.hopeless {
			t.Errorf("pots that reach only week 2, %d of 20: kept %+v", one.later, out)
		}
	}
	if out := worthOffering([]Entry{set(0, 16), set(2, 12)}, leastCool, leastTray, nil); len(out) != 1 {
		t.Errorf("without pots a poor start is offered: %+v", out)
	}
}

// TestWaitCostsNoMoreThanIsGiven: a week's delay cannot cost more than the
// planting gives.
func TestWaitCostsNoMoreThanIsGiven(t *testing.T) {
	r := demoPlan(t, demoCases()[1])
	some := 0
	for _, b := range r.batches(func(o season.Option) bool { return o.Week == 0 }) {
		_, loss := r.wait(b.option)
		if loss < 0 || loss > 1 {
			t.Errorf("%v: a week's wait costs %.2f of it", b.ids, loss)
		}
		if loss > 0.02 {
			some++
		}
		if g := r.given(b.ids); g < 0 || g == 0 && r.Problem.Options[b.option].Food != r.model.bees {
			t.Errorf("%v gives %.1f meals", b.ids, g)
		}
	}
	if some == 0 {
		t.Error("in late August nothing loses by waiting")
	}
}
