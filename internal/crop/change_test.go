package crop

import (
	"math"
	"strings"
	"testing"
)

func TestChangeStandsBesideTheBook(t *testing.T) {
	b := load(t)
	was := mustCrop(t, "carrot").DaysFromSow
	mine, faults := b.WithChanges([]Change{
		{Crop: "carrot", Figure: "days-from-sow", Value: 95, Low: 85, High: 110, Why: "our clay"},
		{Crop: "carrot", Figure: "days-from-sow", Value: 98},
		{Crop: "tomato", Variety: "Aunt Tilda", Figure: "days-from-set", Value: 60},
		{Crop: "tomato", Variety: "Aunt Tilda", Figure: "height-m", Value: 1.2},
		{Crop: "tomato", Figure: "yield-kg", Value: 2.5},
		{Crop: "carrot", Figure: "form-day-h", Value: 15}, // the book has none
	})
	for _, f := range faults {
		t.Error(f)
	}
	c, _ := mine.Crop("carrot")
	f := c.DaysFromSow
	if !f.Mine() || f.Value != 98 || f.Low != 98 || f.Book == nil || *f.Book != was {
		t.Errorf("mine %+v beside the book's %+v", f, f.Book)
	}
	if f := c.FormDayH; !f.Mine() || f.Book != nil {
		t.Errorf("a figure the book has not: %+v", f)
	}
	v, _ := mine.Variety("tomato", "Aunt Tilda")
	plain, _ := mine.Variety("tomato", "another")
	if v.DaysFromSet.Value != 60 || v.HeightM.Value != 1.2 || v.YieldKg.Value != 2.5 {
		t.Errorf("the variety has days %v, height %v, yield %v", v.DaysFromSet.Value, v.HeightM.Value, v.YieldKg.Value)
	}
	if plain.DaysFromSet.Mine() || plain.YieldKg.Value != 2.5 {
		t.Errorf("another variety: days %+v, yield %v", plain.DaysFromSet, plain.YieldKg.Value)
	}
	if x, _ := b.Crop("carrot"); x.DaysFromSow != was {
		t.Error("the book itself was changed")
	}
	if back, _ := b.WithChanges(nil); len(back.Crops) != len(b.Crops) {
		t.Error("taking all back loses crops")
	}
}

func TestChangeFaults(t *testing.T) {
	b := load(t)
	all := []Change{
		{Crop: "carot", Figure: "base", Value: 3},
		{Crop: "carrot", Figure: "bass", Value: 3},
		{Crop: "carrot", Figure: "base", Value: 3, Low: 5, High: 6},
		{Crop: "carrot", Figure: "spacing-m", Value: 10},
		{Crop: "carrot", Figure: "base", Value: math.NaN()},
		{Crop: "carrot", Figure: "base", Value: 19.9, Low: 19.9, High: 20, Variety: "odd"}, // above its optimum less a little is lawful, ref is not
		{Crop: "carrot", Figure: "yield-kg", Value: 0.07},
	}
	want := []string{`Did you mean "carrot"`, `Did you mean "base"`, "upside down", "impossible", "not a number", "ref must lie between"}
	mine, faults := b.WithChanges(all)
	if len(faults) != len(want) {
		t.Fatalf("%d faults, want %d: %v", len(faults), len(want), faults)
	}
	for i, f := range faults {
		if f.Line != i+1 || !strings.Contains(f.String(), want[i]) {
			t.Errorf("fault %d: %s\nwant line %d and %q", i, f, i+1, want[i])
		}
	}
	if c, _ := mine.Crop("carrot"); c.YieldKg.Value != 0.07 || c.BaseC.Mine() {
		t.Error("the sound change must hold and the broken ones not")
	}
}

func TestPollinated(t *testing.T) {
	corn := mustCrop(t, "sweet-corn")
	for _, tt := range []struct {
		plants, rows int
		low, high    float64
	}{
		{0, 0, 0, 0}, {1, 1, 0.05, 0.15}, {4, 2, 0.3, 0.7}, {12, 1, 0.4, 0.65}, {12, 0, 0.8, 1}, {16, 4, 0.9, 1}, {40, 0, 0.98, 1},
	} {
		if got := corn.Pollinated(tt.plants, tt.rows); got < tt.low || got > tt.high {
			t.Errorf("%d plants in %d rows: %.2f, want %.2f to %.2f (common practice: a block of a dozen, not a row)", tt.plants, tt.rows, got, tt.low, tt.high)
		}
	}
	last := 0.0
	for n := 1; n < 60; n++ {
		if got := corn.Pollinated(n, 4); got < last || got > 1 {
			t.Fatalf("%d plants set %.3f, one fewer %.3f", n, got, last)
		} else if n >= 4 {
			last = got
		}
	}
	if got := mustCrop(t, "tomato").Pollinated(1, 1); got != 1 {
		t.Errorf("a tomato needs no block, got %v", got)
	}
}
