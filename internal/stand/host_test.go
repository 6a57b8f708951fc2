package stand

import (
	"testing"

	"bedweek/internal/crop"
)

// TestHostReady: corn carries a bean two to six weeks after it is sown, and a
// sowing in the cold of early May later than one of June (common practice:
// beans go in when corn is a hand high).
func TestHostReady(t *testing.T) {
	e := seattle(t, 20)
	tab := NewTable(fromBook(t, "sweet-corn"), e, nil)
	early, n := tab.HostReady(crop.Sow, on(e, 5, 10))
	late, m := tab.HostReady(crop.Sow, on(e, 6, 5))
	if n < 15 || m < 18 {
		t.Fatalf("corn carries beans in %d and %d of 20 futures", n, m)
	}
	a, b := int(early.Likely-on(e, 5, 10)), int(late.Likely-on(e, 6, 5))
	if a < 20 || a > 55 || b < 14 || b > a {
		t.Errorf("corn is ready for beans after %d days from 10 May and %d from 5 June", a, b)
	}
	if _, n := NewTable(fromBook(t, "carrot"), e, nil).HostReady(crop.Sow, on(e, 5, 10)); n != 0 {
		t.Error("a carrot carries beans")
	}
}

// TestDeadheading: cut flowers bloom longer than those left to seed; before
// and after its time nothing blooms; a perennial blooms in its own year.
func TestDeadheading(t *testing.T) {
	e := maritime(20)
	sum := func(v []float32) (s float32) {
		for _, x := range v {
			s += x
		}
		return s
	}
	tab := NewTable(fromBook(t, "calendula"), e, nil)
	cut, left := tab.BloomWeeks(crop.Sow, on(e, 4, 10), true), tab.BloomWeeks(crop.Sow, on(e, 4, 10), false)
	if a, b := sum(cut), sum(left); a < b+2 || b < 4 {
		t.Errorf("calendula blooms %.1f weeks cut and %.1f left to seed, want two weeks more (common practice)", a, b)
	}
	if cut[8] > 0 || cut[59] > 0 {
		t.Errorf("calendula sown in April blooms in week 8 (%.2f) or in the next winter (%.2f)", cut[8], cut[59])
	}
	if s := sum(tab.BloomWeeks(crop.Plant, on(e, 4, 10), true)); s != 0 {
		t.Error("blooms by a way it is not started")
	}
	yarrow := NewTable(fromBook(t, "yarrow"), e, nil).BloomWeeks(crop.SetOut, on(e, 4, 20), true)
	if sum(yarrow[:35]) > 0.5 {
		t.Errorf("yarrow set out in April blooms %.1f weeks that year, want the next", sum(yarrow[:35]))
	}
}

// TestYearlyBearers: what bears once a year begins in its own year, gives half
// a crop first, and says so when the plan is too short to see it.
func TestYearlyBearers(t *testing.T) {
	e := seattle(t, 10)
	asparagus := fromBook(t, "asparagus")
	tab := NewTable(asparagus, e, nil)
	if g := tab.Grow(crop.Plant, on(e, 3, 20)); g.Success > 0 && g.FirstPick.Likely < on(e, 3, 20)+600 {
		t.Errorf("asparagus planted in March is picked %v", g.FirstPick)
	}
	short := maritime(3)
	for f := range short.Futures {
		short.Futures[f].Days = short.Futures[f].Days[:500]
	}
	if g := NewTable(asparagus, short, nil).Grow(crop.Plant, short.Start+80); g.Success != 0 || g.Cause != Young {
		t.Errorf("asparagus in a plan of 500 days: %d of 3 (%s), want %q", g.Success, g.Cause, Young)
	}
	old := tab.Stand(crop.Plant, e.Start-5*365)
	young := tab.Stand(crop.Plant, e.Start-2*365)
	if old.Success < 9 || old.FirstPick.Likely.Month() < 3 || old.FirstPick.Likely.Month() > 5 {
		t.Errorf("a bed of five years: %d of 10, first pick %v, want April or so (common practice)", old.Success, old.FirstPick)
	}
	a, b := kgBetween(e, young, e.Start, e.Start+200), kgBetween(e, old, e.Start, e.Start+200)
	if a < 0.4*b || a > 0.6*b {
		t.Errorf("third spring gives %.3f kg, an old bed %.3f, want half", a, b)
	}
	for _, tt := range []struct {
		crop     crop.ID
		from, to int // month of the first pick of an old plant, common practice of the maritime north
	}{{"raspberry", 6, 7}, {"blueberry-shb", 6, 7}, {"blackberry", 6, 8}, {"rhubarb", 3, 4}, {"strawberry", 5, 6}} {
		g := NewTable(fromBook(t, tt.crop), e, nil).Stand(crop.Plant, e.Start-4*365)
		if m := int(g.FirstPick.Likely.Month()); g.Success < 8 || m < tt.from || m > tt.to {
			t.Errorf("%s of four years: %d of 10 (%s), first pick %v, want month %d to %d", tt.crop, g.Success, g.Cause, g.FirstPick, tt.from, tt.to)
		}
	}
	// A winter without cold: the berries that want rest hardly bear.
	warm := maritime(3)
	for f := range warm.Futures {
		for i := range warm.Futures[f].Days {
			d := &warm.Futures[f].Days[i]
			d.TminC, d.TmaxC = max(d.TminC, 11), max(d.TmaxC, 18)
		}
	}
	if g := NewTable(fromBook(t, "raspberry"), warm, nil).Stand(crop.Plant, warm.Start-4*365); kgBetween(warm, g, warm.Start+380, warm.Start+600) > 0.05 {
		t.Errorf("raspberries bear after a winter that never fell to 7 °C")
	}
}

// TestTooTender: what cannot ripen outdoors by a cool sea says so.
func TestTooTender(t *testing.T) {
	e := seattle(t, 20)
	for _, tt := range []struct {
		id     crop.ID
		way    crop.Way
		causes []Cause
	}{
		{"ginger", crop.Plant, []Cause{Chilled, ColdSoil, TooSlow, Frosted, TooSmall}},
		{"chayote", crop.Plant, []Cause{LongDays, Frosted, Chilled, TooSlow}},
		{"roselle", crop.SetOut, []Cause{LongDays, Chilled, ColdSoil, TooSlow, Frosted}},
		{"lemon", crop.Plant, []Cause{TooSlow, Frosted, Unhardened, Young}},
	} {
		g := NewTable(fromBook(t, tt.id), e, nil).Grow(tt.way, on(e, 6, 5))
		ok := g.Success == 0
		for i, c := range tt.causes {
			if c == g.Cause {
				break
			}
			ok = ok && i < len(tt.causes)-1
		}
		if !ok {
			t.Errorf("%s: %d of 20 (%s), want none for one of %q", tt.id, g.Success, g.Cause, tt.causes)
		}
	}
}
