package stand

import (
	"testing"

	"bedweek/internal/crop"
)

// TestWeekly: what is kept of a year's picking answers as the whole year does,
// and holds nothing before the first week or after the last.
func TestWeekly(t *testing.T) {
	weeks := []float32{0, 0, 1.5, 0, 2, 0, 0}
	from, to := picked(weeks)
	k := Weekly{int32(from), weeks[from:to]}
	if from != 2 || to != 5 || k.Sum() != 3.5 || k.At(-1) != 0 || k.At(99) != 0 {
		t.Errorf("from %d to %d, sum %v", from, to, k.Sum())
	}
	for w, want := range weeks {
		if k.At(w) != want {
			t.Errorf("week %d: %v, want %v", w, k.At(w), want)
		}
	}
	for w, v := range k.All() {
		if v != weeks[w] {
			t.Errorf("week %d of all: %v, want %v", w, v, weeks[w])
		}
	}
	if from, to := picked(make([]float32, 5)); from != to {
		t.Errorf("nothing picked: %d to %d", from, to)
	}
	e := maritime(6)
	kept, of := 0, 0
	for _, id := range []crop.ID{"carrot", "kale", "tomato"} {
		c := fromBook(t, id)
		g := NewTable(c, e, nil).Grow(c.Ways[0], e.Start+150)
		for _, o := range g.Outcomes {
			kept, of = kept+len(o.Kg.kg), of+e.Weeks
			if cap(o.Kg.kg) != len(o.Kg.kg) {
				t.Errorf("%s: room for %d weeks is held for %d", id, cap(o.Kg.kg), len(o.Kg.kg))
			}
			if n := len(o.Kg.kg); n > 0 && (o.Kg.kg[0] == 0 || o.Kg.kg[n-1] == 0) {
				t.Errorf("%s: empty weeks are kept at an end", id)
			}
			if o.OK && o.Kg.Sum() == 0 {
				t.Errorf("%s works and gives nothing", id)
			}
		}
	}
	for _, c := range book(t)[:40] { // and every week of every future, bit for bit
		tab := NewTable(c, e, nil)
		way, day := c.Ways[0], e.Start+100
		sum := tally{flow: make([]float32, tab.air.n), wait: waitDays}
		for f, o := range tab.Grow(way, day).Outcomes {
			year := make([]float32, e.Weeks)
			tab.run(tab.course(way), f, tab.air.at(day), false, &sum, year)
			for w, v := range year {
				if o.Kg.At(w) != v {
					t.Fatalf("%s, future %d, week %d: %v kept of %v", c.ID, f, w, o.Kg.At(w), v)
				}
			}
		}
	}
	if kept == 0 || kept*2 > of {
		t.Errorf("%d of %d weeks are kept", kept, of)
	}
}

// TestKernelAllocatesNothing: a start is followed without taking memory.
func TestKernelAllocatesNothing(t *testing.T) {
	a := NewAir(maritime(3))
	scratch := tally{flow: make([]float32, a.n), wait: waitDays}
	kg := make([]float32, a.env.Weeks)
	for _, c := range book(t) {
		tab := a.Table(c, nil)
		for _, co := range tab.courses {
			if n := testing.AllocsPerRun(3, func() {
				for k := range 4 {
					tab.run(co, k%a.k, a.at(a.env.Start)+90*k, false, &scratch, kg)
				}
			}); n != 0 {
				t.Errorf("%s, %s: %v allocations", c.ID, co.way, n)
			}
		}
	}
}
