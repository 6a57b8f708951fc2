package stand

import (
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// TestCrownsLiveInTheGround: in a hard winter what comes again from crown,
// clove or root lives in a bed, and dies in a pot that freezes through.
func TestCrownsLiveInTheGround(t *testing.T) {
	a := calendarAirOf(t, "minneapolis")
	lost := func(a *Air, id crop.ID, m, d int) int {
		c, n := fromBook(t, id), 0
		day := cal.Of(a.env.Start.Year(), 1, 1) + cal.Day(30*(m-1)+d)
		for _, o := range a.Table(c, nil).Grow(crop.Plant, day).Outcomes {
			if !o.OK && (o.Cause == Frosted || o.Cause == Unhardened) {
				n++
			}
		}
		return n
	}
	pot := *a.env
	pot.VolumeL, pot.AreaM2 = 20, 0.08
	b := NewAir(&pot)
	for _, tt := range []struct {
		id   crop.ID
		m, d int
	}{{"garlic", 10, 5}, {"asparagus", 5, 1}, {"rhubarb", 5, 1}} {
		in, out := lost(a, tt.id, tt.m, tt.d), lost(b, tt.id, tt.m, tt.d)
		if in > a.k/4 || out < a.k/2 {
			t.Errorf("%s at 45 N inland: lost to frost in %d of %d winters in a bed and %d in a pot", tt.id, in, a.k, out)
		}
	}
}

// TestHotMonthsEndCoolCrops: what is started for a subtropical summer is lost
// to heat, collards less than cabbage, and what is started for its winter is not.
func TestHotMonthsEndCoolCrops(t *testing.T) {
	a := calendarAirOf(t, "brazos")
	hot := func(a *Air, id crop.ID, way crop.Way, m, d int) int {
		n := 0
		for _, o := range a.Table(fromBook(t, id), nil).Grow(way, cal.Of(a.env.Start.Year(), 1, 1)+cal.Day(30*(m-1)+d)).Outcomes {
			if !o.OK && o.Cause == TooHot {
				n++
			}
		}
		return n
	}
	for _, id := range []crop.ID{"carrot", "beet", "parsnip"} {
		if june, october := hot(a, id, crop.Sow, 6, 1), hot(a, id, crop.Sow, 10, 10); june < a.k*8/10 || october > a.k/10 {
			t.Errorf("%s at 31 N: too hot in %d of %d when sown in June and %d in October", id, june, a.k, october)
		}
	}
	a = calendarAirOf(t, "georgia")
	if c, k := hot(a, "collards", crop.SetOut, 7, 15), hot(a, "kale", crop.SetOut, 7, 15); 2*c > k {
		t.Errorf("set out in July at 33 N, collards are lost to heat in %d and kale in %d of %d", c, k, a.k)
	}
}

// TestCutBeforeTheHeat: what stands is cut when heat begins, and half-grown
// heads before it, so that spring starts give a crop.
func TestCutBeforeTheHeat(t *testing.T) {
	a := calendarAirOf(t, "minneapolis")
	tab := a.Table(fromBook(t, "arugula"), nil)
	works := func(m, d int) int {
		return tab.Grow(crop.Sow, cal.Of(a.env.Start.Year(), 1, 1)+cal.Day(30*(m-1)+d)).Success
	}
	if april, june := works(4, 18), works(6, 5); april < a.k*11/20 || june > april*8/10 {
		t.Errorf("arugula inland at 45 N: sown in April it works in %d of %d, on 5 June in %d", april, a.k, june)
	}
	a = calendarAirOf(t, "georgia")
	day := cal.Of(a.env.Start.Year(), 3, 5)
	if g := a.Table(fromBook(t, "broccoli"), nil).Grow(crop.SetOut, day); g.Success < a.k*14/20 {
		t.Errorf("broccoli set out on 5 March at 33 N works in %d of %d (%s)", g.Success, a.k, g.Cause)
	}
}
