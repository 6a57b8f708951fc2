package stand

import (
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// TestPastFrost: a frost before the plan kills a start grown through it, but
// not what is known to stand.
func TestPastFrost(t *testing.T) {
	e := maritime(4)
	e.Start += 240
	e.Weeks = 30
	for f := range e.Futures {
		e.Futures[f].Days[200].TminC = -18
	}
	tab := NewTable(fromBook(t, "kale"), e, nil)
	day := e.Start - 80 // 40 days before that night
	if g := tab.Grow(crop.SetOut, day); g.Success != 0 || g.Cause != Frosted && g.Cause != Unhardened {
		t.Errorf("kale through a July night of -18 °C: %d of 4 (%s)", g.Success, g.Cause)
	}
	if g := tab.Stand(crop.SetOut, day); g.Success != 4 {
		t.Errorf("kale known to stand: %d of 4 (%s)", g.Success, g.Cause)
	}
}

// TestPastPicks: what was picked before the plan is in no week of it.
func TestPastPicks(t *testing.T) {
	e := maritime(3)
	e.Start += 252 // mid-September
	e.Weeks = 20
	c := fromBook(t, "snap-bean-bush")
	o := NewTable(c, e, nil).Stand(crop.Sow, e.Start-90).Outcomes[0]
	if o.First < e.Start {
		t.Errorf("beans picked since August: next pick %v, want one in the plan from %v", o.First, e.Start)
	}
	sum := float32(0)
	for _, kg := range o.Kg.All() {
		sum += kg
	}
	if before := o.Total - o.Later - sum; before < 0.3*o.Total || o.Total == 0 {
		t.Errorf("beans sown 90 days ago: %.3f of %.3f kg before the plan, want a third at least", before, o.Total)
	}
	if o.Kg.At(0) > 0.5*o.Total {
		t.Errorf("the first week holds %.3f of %.3f kg", o.Kg.At(0), o.Total)
	}
}

// TestNoFirstPickInStandstill: nothing becomes ready in the weeks when nothing
// grows (season.md, "Plain truths").
func TestNoFirstPickInStandstill(t *testing.T) {
	e := seattle(t, 20)
	n := 0
	for _, id := range []crop.ID{"carrot", "lettuce-head", "beet", "lettuce-leaf", "turnip", "cabbage"} {
		c := fromBook(t, id)
		tab := NewTable(c, e, nil)
		for d := on(e, 7, 15); d < on(e, 10, 20); d += 4 {
			for f, o := range tab.Grow(c.Ways[0], d).Outcomes {
				if o.First == 0 {
					continue
				}
				n++
				i := tab.air.at(o.First)
				if p := tab.rates[f*tab.air.n+i].pace; p < standstill {
					t.Errorf("%s sown %s is first picked %s, when nothing grows (%.2f good days a day)", id, d.Short(), o.First.Short(), p)
				}
				if m := o.First.Month(); m == time.December && o.First.YearDay() > 355 && id != "beet" {
					t.Logf("%s sown %s: first pick %s", id, d.Short(), o.First.Short())
				}
			}
		}
	}
	if n < 200 {
		t.Fatalf("only %d first picks", n)
	}
}

// TestEmergence: in soil of one temperature seed comes up in the days of the
// laboratory table, longer by what a field takes.
func TestEmergence(t *testing.T) {
	for _, tt := range []struct {
		crop  crop.ID
		soilC float64
		days  float64
		from  string
	}{
		{"carrot", 10, 17.3, "[HM1954]"},
		{"carrot", 20, 7.0, "[HM1954]"},
		{"pea-shelling", 10, 13.5, "[HM1954]"},
		{"pea-shelling", 20, 7.5, "[HM1954]"},
		{"spinach", 10, 12.5, "[HM1954]"},
	} {
		e := maritime(1)
		for i := range e.Futures[0].Days {
			d := &e.Futures[0].Days[i]
			d.TmaxC, d.TminC, d.RadMJ = tt.soilC, tt.soilC, 17.5 // the soil rule's neutral sunshine
		}
		day := e.Start + 60
		o := NewTable(fromBook(t, tt.crop), e, nil).Grow(crop.Sow, day).Outcomes[0]
		want := tt.days * fieldSlow
		if got := float64(o.Up - day); got < want-1.5 || got > want+1.5 {
			t.Errorf("%s at %v °C: up after %v days, want %.1f (%s, times %.2f)", tt.crop, tt.soilC, got, want, tt.from, fieldSlow)
		}
	}
}

// TestLamps: on a lamp shelf the month makes no difference.
func TestLamps(t *testing.T) {
	e := maritime(1)
	e.Indoor, e.LampDLI, e.LampC = true, 12, 18
	tab := NewTable(fromBook(t, "lettuce-leaf"), e, nil)
	a := tab.Grow(crop.Sow, e.Start+10).Outcomes[0]
	b := tab.Grow(crop.Sow, e.Start+200).Outcomes[0]
	if !a.OK || a.First-(e.Start+10) != b.First-(e.Start+200) {
		t.Errorf("lettuce under lamps: %d days in January (%s), %d in July", a.First-e.Start-10, a.Cause, b.First-e.Start-200)
	}
	e.LampDLI = 2
	if g := NewTable(fromBook(t, "lettuce-leaf"), e, nil).Grow(crop.Sow, e.Start+cal.Day(10)); g.Success != 0 {
		t.Error("lettuce grows under a lamp of 2 mol")
	}
}
