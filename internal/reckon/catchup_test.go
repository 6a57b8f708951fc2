package reckon

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// TestCatchUpAsksByThePlanThatStood leaves for five weeks and wants what the
// plan of the day of leaving wanted in between, and nothing else.
func TestCatchUpAsksByThePlanThatStood(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	left, today := cal.Of(2015, 4, 8), cal.Of(2015, 5, 13) // a Wednesday, five weeks on
	monday := left.Monday()
	g := &garden.Garden{Spaces: []garden.Space{{ID: "bed", Kind: garden.RaisedBed}, {ID: "bag", Kind: garden.Bag}, {ID: "lamps", Kind: garden.LampShelf}}}
	state := &ledger.State{Plantings: []ledger.Planting{
		{ID: "old-kale", Crop: "kale", Space: "bed", Sown: cal.Of(2014, 8, 1), FromFile: true},
		{ID: "tray", Crop: "tomato", Space: "lamps", Sown: cal.Of(2015, 3, 1)},
		{ID: "pea", Crop: "pea-shelling", Space: "bag", Sown: cal.Of(2015, 4, 1)},
	}, Forecasts: []ledger.ForecastNote{
		{Forecast: ledger.Forecast{Planting: "pea", FirstLikely: cal.Of(2015, 5, 10)}},
		{Forecast: ledger.Forecast{Planting: "old-kale", FirstLikely: cal.Of(2015, 5, 5)}}, // pulled before
	}}
	stood := &ledger.KeptPlan{On: cal.Of(2015, 4, 7), Lines: []ledger.PlanLine{
		{Space: "bed", Crop: "carrot", Way: "sow", Since: monday - 7, Until: today + 90, Plants: 30},       // before leaving: today's plan speaks of it
		{Space: "bed", Crop: "carrot", Way: "sow", Since: monday + 14, Until: today + 90, Plants: 40},      // meanwhile
		{Space: "bag", Crop: "kale", Way: "sow", Since: monday, Until: today + 60, Plants: 4},              // of the very week of leaving
		{Space: "bag", Crop: "pea-shelling", Way: "sow", Since: monday, Until: today + 60, Plants: 9},      // done, and written
		{Space: "bed", Crop: "tomato", Way: "set", Since: monday + 28, Until: today + 120, Plants: 2},      // meanwhile
		{Space: "bag", Crop: "radish", Way: "sow", Since: monday + 7, Until: today - 3, Plants: 20},        // came and went
		{Space: "bed", Crop: "leek", Way: "set", Since: today.Monday(), Until: today + 150, Plants: 8},     // only just due
		{Space: "bed", Crop: "leek", Way: "set", Since: today.Monday() + 7, Until: today + 150, Plants: 9}, // still to come
		{Space: "taken-away", Crop: "leek", Way: "set", Since: monday + 7, Until: today + 150, Plants: 9}}, // no such space
		Pulls: []ledger.PlanPull{{Planting: "old-kale", On: cal.Of(2015, 5, 3)}, {Planting: "pea", On: cal.Of(2015, 7, 26)}}} // the second is to come
	c := CatchUpOf(g, book, state, stood, left, today)
	var got []string
	for _, id := range []string{"bed", "bag", "lamps", "taken-away"} {
		for _, m := range c.Spaces[id] {
			got = append(got, fmt.Sprintf("%s: %s %s %s", id, m.Words, m.Kind, m.On))
			if m.Kind == "" {
				continue
			}
			if _, err := ledger.NewEvent("x", m.On, m.Kind, m.Body); err != nil {
				t.Errorf("%s: %v", m.Words, err)
			}
		}
	}
	kale, _ := book.Crop("kale")
	carrot, _ := book.Crop("carrot")
	tomato, _ := book.Crop("tomato")
	radish, _ := book.Crop("radish")
	pea, _ := book.Crop("pea-shelling")
	want := []string{
		"bed: sow 40 " + carrot.Name + ", week of 20 April sown 2015-04-23",
		"bed: pull " + kale.Name + ", by 3 May pulled 2015-05-03",
		"bed: set out 2 " + tomato.Name + ", week of 4 May set out 2015-05-07",
		"bag: sow 4 " + kale.Name + ", week of 6 April sown 2015-04-09",
		"bag: sow 20 " + radish.Name + ", week of 13 April; over by now  2015-04-16",
		"bag: pick " + pea.Name + ", from about 10 May picked 2015-05-10",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("asked:\n%s\nwant:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	if b := c.Spaces["bed"][2].Body.(ledger.Started); b.Planting != "tray" {
		t.Errorf("the tomatoes set out are %q, want the tray under the lamps", b.Planting)
	}
}

// TestLeftOn leaves out what was written today and by the program itself.
func TestLeftOn(t *testing.T) {
	day := func(d int) time.Time { return time.Date(2015, 4, d, 9, 0, 0, 0, time.UTC) }
	events := []ledger.Event{
		{Kind: ledger.Sown, Happened: cal.Of(2015, 4, 1), Written: day(1)},
		{Kind: ledger.Looked, Happened: cal.Of(2015, 4, 8), Written: day(8)},
		{Kind: ledger.Forecasted, Happened: cal.Of(2015, 4, 12), Written: day(12)},
		{Kind: ledger.Picked, Happened: cal.Of(2015, 4, 15), Written: day(20)}, // back-dated, written today
		{Kind: ledger.Assumed, Happened: cal.Of(2015, 4, 20), Written: day(20)},
	}
	if got := LeftOn(events, cal.Of(2015, 4, 20), cal.Of(2015, 4, 20)); got != cal.Of(2015, 4, 8) {
		t.Errorf("left on %s, want 8 April", got)
	}
	broken := append(events, ledger.Event{Kind: ledger.Assumed, Happened: cal.Of(2015, 4, 19), Written: day(19)}, ledger.Event{Kind: ledger.Picked, Happened: cal.Of(2015, 4, 19), Written: day(19)})
	if got := LeftOn(broken, cal.Of(2015, 4, 20), cal.Of(2015, 4, 20)); got != cal.Of(2015, 4, 8) {
		t.Errorf("with half the round done yesterday left on %s, want 8 April", got)
	}
	if got := LeftOn(broken, cal.Of(2015, 4, 26), cal.Of(2015, 4, 26)); got != cal.Of(2015, 4, 20) {
		t.Errorf("a week later left on %s, want 20 April", got)
	}
	for i := range events { // a day given by hand: all of it was written in another year
		events[i].Written = time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	if got := LeftOn(events, cal.Of(2015, 4, 20), cal.Of(2026, 1, 1)); got != cal.Of(2015, 4, 15) {
		t.Errorf("with a day given by hand left on %s, want 15 April", got)
	}
	if got := LeftOn(nil, 100, 100); got != 0 {
		t.Errorf("with nothing written left on %s", got)
	}
}
