package reckon

import (
	"reflect"
	"testing"
)

// TestPlansShareTheRowsOfTheirGround: two plans on one ground hold the same
// rows, not copies, and they are those that each option would make for itself.
func TestPlansShareTheRowsOfTheirGround(t *testing.T) {
	in := smallInputs(t, 47)
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	first, err := modelOf(in, g)
	if err != nil {
		t.Fatal(err)
	}
	second, err := modelOf(in, g)
	if err != nil {
		t.Fatal(err)
	}
	picked := 0
	for i, o := range first.p.Options {
		x := second.p.Options[i]
		if &o.Footprint[0] != &x.Footprint[0] || &o.Meals[0] != &x.Meals[0] {
			t.Fatalf("%s has rows of its own in each plan", o.ID)
		}
		e := first.entries[first.entry[i]]
		e.rows = nil
		own := first.option(in, &e, o.End)
		if !reflect.DeepEqual([]any{own.Footprint, own.Minutes, own.TallFrom, own.OK, own.Meals, own.MealsFrom}, []any{o.Footprint, o.Minutes, o.TallFrom, o.OK, o.Meals, o.MealsFrom}) {
			t.Fatalf("%s shares rows that are not its own", o.ID)
		}
		if mealsOf(&o) > 0 {
			picked++
		}
	}
	if picked < 50 {
		t.Errorf("%d options of %d give anything", picked, len(first.p.Options))
	}
}
