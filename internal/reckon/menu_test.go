package reckon

import (
	"slices"
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
	if out := worthOffering([]Entry{set(0, 16), set(2, leastCool-1)}, leastCool, leastTray, nil); len(out) != 1 {
		t.Errorf("without pots a poor start is offered: %+v", out)
	}
}

// TestARiskyStartHasNoBetterOne: a start that may well fail is offered only where
// none of the same way within three weeks is as sure and gives as much.
func TestARiskyStartHasNoBetterOne(t *testing.T) {
	c := &crop.Crop{ID: "lettuce-leaf"}
	start := func(way crop.Way, week, success int, kg float32) Entry {
		day := cal.Of(2015, 8, 24) + cal.Day(7*week)
		return Entry{Crop: c, Way: way, Week: week, Day: day, Growth: stand.Growth{Success: success, Sown: day - 28, ShelfWeeks: 4, Outcomes: []stand.Outcome{{OK: true, Total: kg}}}}
	}
	pots := []standing{{crop: c, tray: true, id: "t", since: cal.Window{Likely: cal.Of(2015, 7, 20)}}}
	for _, one := range []struct {
		says string
		all  []Entry
		pots []standing
		kept []int // weeks
	}{
		{"surer and as much a fortnight later", []Entry{start(crop.Sow, 0, 12, 1), start(crop.Sow, 2, 13, 1)}, nil, []int{2}},
		{"surer and as much a fortnight sooner", []Entry{start(crop.Sow, 0, 15, 1), start(crop.Sow, 2, 13, 1)}, nil, []int{0}},
		{"as sure, and more", []Entry{start(crop.Sow, 0, 12, 1), start(crop.Sow, 2, 12, 1.1)}, nil, []int{2}},
		{"just alike", []Entry{start(crop.Sow, 0, 12, 1), start(crop.Sow, 2, 12, 1)}, nil, []int{0, 2}},
		{"surer, but gives less", []Entry{start(crop.Sow, 0, 12, 1), start(crop.Sow, 2, 20, 0.9)}, nil, []int{0, 2}},
		{"surer four weeks away", []Entry{start(crop.Sow, 0, 12, 1), start(crop.Sow, 4, 20, 1)}, nil, []int{0, 4}},
		{"surer by another way", []Entry{start(crop.Sow, 0, 12, 1), start(crop.SetOut, 0, 20, 1)}, nil, []int{0, 0}},
		{"alone, but far ahead", []Entry{start(crop.Sow, farWeeks-1, 12, 1), start(crop.Sow, farWeeks+3, 12, 1), start(crop.Sow, farWeeks+7, sureCool, 1)}, nil, []int{farWeeks - 1, farWeeks + 7}},
		{"both sure", []Entry{start(crop.Sow, 0, sureCool, 1), start(crop.Sow, 2, 20, 1)}, nil, []int{0, 2}},
		{"surer, but no time to raise plants for it", []Entry{start(crop.SetOut, 4, 12, 1), start(crop.SetOut, 3, 20, 1)}, nil, []int{4, 3}},
		{"surer, but these pots are too old by then", []Entry{start(crop.SetOut, 8, 12, 1), start(crop.SetOut, 10, 13, 1)}, pots, []int{8, 10}},
		{"surer, and the same pots reach it", []Entry{start(crop.SetOut, 1, 12, 1), start(crop.SetOut, 3, 13, 1)}, pots, []int{3}},
	} {
		var weeks []int
		for _, e := range surest(one.all, sureCool, one.pots) {
			weeks = append(weeks, e.Week)
		}
		if !slices.Equal(weeks, one.kept) {
			t.Errorf("%s: weeks %v kept, want %v", one.says, weeks, one.kept)
		}
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
