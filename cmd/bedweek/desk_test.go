package main

import (
	"bytes"
	"context"
	"math"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/weather"
)

// testDesk is the southern demo on a real ledger in a folder of its own.
func testDesk(t *testing.T) (*desk, *ledger.Ledger) {
	t.Helper()
	return testDeskAt(t, time.Now)
}

// testDeskAt is the same by another clock.
func testDeskAt(t *testing.T, now func() time.Time) (*desk, *ledger.Ledger) {
	t.Helper()
	return deskOf(t, now, func(in *reckon.Inputs) { in.Work = 200_000 }, newDesk)
}

// deskOf is a desk of the southern demo, its inputs changed, made by begin.
func deskOf(t *testing.T, now func() time.Time, change func(*reckon.Inputs), begin func(context.Context, *ledger.Ledger, reckon.Inputs, func() time.Time) (*desk, error)) (*desk, *ledger.Ledger) {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("south", demo.SouthYAML, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	n, wf := weather.ReadNormals("south", bytes.NewReader(demo.SouthNormalsCSV), siteOf(g))
	if len(wf) > 0 {
		t.Fatal(wf)
	}
	led, err := ledger.Open(t.TempDir(), ledger.Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	w := &world{now: time.Now}
	in := inputs(w, g, book, climate{normals: n}, g.From)
	change(in)
	ctx, stop := context.WithCancel(context.Background())
	d, err := begin(ctx, led, *in, now)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		stop()
		d.idle.Wait()
		led.Close()
	})
	return d, led
}

// A note is kept and shown at once, and the plan follows.
func TestANoteIsShownAtOnceAndThePlanFollows(t *testing.T) {
	d, _ := testDesk(t)
	ctx := context.Background()
	day, _ := d.Day(ctx)
	var task reckon.Task
	for _, x := range day.Today {
		if x.Event == "sown" && x.Crop != "" {
			task = x
		}
	}
	if task.ID == "" {
		t.Fatal("the demo asks for no sowing; choose another task for this test")
	}
	body := ledger.Started{Crop: task.Crop, Space: task.Space, Count: task.Count}
	id, err := d.record(ctx, ledger.Sown, day.Date, "", body)
	if err != nil {
		t.Fatal(err)
	}
	after, _ := d.Day(ctx)
	for _, x := range after.Today {
		if x.ID == task.ID {
			t.Errorf("%s still asks for what was done", x.ID)
		}
	}
	if len(after.Notes) == 0 || after.Notes[0] != reckon.Anew {
		t.Errorf("the page does not say that the plan is behind: %q", after.Notes)
	}
	found := false
	for _, sp := range after.Spaces {
		for _, n := range sp.History {
			found = found || n.ID == id
		}
	}
	if !found {
		t.Error("the note does not stand on its space")
	}
	// The new plan must take the planting as standing.
	deadline := time.Now().Add(2 * time.Minute)
	for {
		now, _ := d.Day(ctx)
		if len(now.Notes) == 0 || now.Notes[0] != reckon.Anew {
			ok := false
			for _, sp := range now.Spaces {
				for _, l := range sp.Lines {
					ok = ok || l.ID == id && l.Standing
				}
				for _, s := range now.Shelf {
					ok = ok || s.ID == id
				}
			}
			if !ok {
				t.Error("the new plan does not know the planting")
			}
			return
		}
		if time.Now().After(deadline) {
			t.Fatal("no new plan came")
		}
		time.Sleep(50 * time.Millisecond)
	}
}

func TestVoidTakesItBack(t *testing.T) {
	d, led := testDesk(t)
	ctx := context.Background()
	sp := ""
	for _, s := range d.in.Garden.Spaces {
		if s.Grows() {
			sp = string(s.ID)
		}
	}
	id, err := d.record(ctx, ledger.Sown, d.in.Date, "", ledger.Started{Crop: "radish", Space: sp, Count: 10})
	if err != nil {
		t.Fatal(err)
	}
	if err := d.void(ctx, id); err != nil {
		t.Fatal(err)
	}
	day, _ := d.Day(ctx)
	for _, s := range day.Spaces {
		for _, n := range s.History {
			if n.ID == id && !n.Voided {
				t.Error("a note taken back is not marked so")
			}
		}
	}
	if r := ledger.Audit(led.Dir()); !r.OK {
		t.Errorf("the record is not in order: %v", r)
	}
}

func TestDemoStoryFitsTheLedger(t *testing.T) {
	code, out, errs := call(t, "demo", "-once", "-date", "2015-08-24")
	if code != exitDone || !strings.Contains(out, "24 August 2015") || !strings.Contains(out, "TO DO NOW") {
		t.Fatalf("code %d: %s", code, errs)
	}
	if strings.Contains(strings.Join(strings.Fields(out), " "), "taken back or has not come yet") {
		t.Error("the demo's story speaks of a planting that is not there")
	}
	if code, _, _ := call(t, "demo", "-once", "-south"); code != exitDone {
		t.Error("the southern demo does not plan")
	}
}

// TestOwnFigureTurnsThePlan: a figure is kept, the plan is made anew with it,
// what it changed is told, and taken back all is as before.
func TestOwnFigureTurnsThePlan(t *testing.T) {
	d, _ := testDesk(t)
	ctx := context.Background()
	settle := func(what string, done func(c *reckon.CropDesk) bool) *reckon.CropDesk {
		deadline := time.Now().Add(3 * time.Minute)
		for {
			c, err := d.cropDesk(ctx)
			if err != nil {
				t.Fatal(err)
			}
			d.mu.Lock()
			busy := d.busy
			d.mu.Unlock()
			if busy == 0 && done(c) {
				return c
			}
			if time.Now().After(deadline) {
				t.Fatalf("never came: %s", what)
			}
			time.Sleep(20 * time.Millisecond)
		}
	}
	says := func(c *reckon.CropDesk) string {
		v, ok, err := c.View("carrot", reckon.CropAsk{Space: reckon.OpenBedID})
		if !ok || err != nil {
			t.Fatal(ok, err)
		}
		return v.Ways[0].Says
	}
	first := settle("the first plan", func(*reckon.CropDesk) bool { return true })
	plan := d.out.last.Plan.Value
	f := ledger.OwnFigure{Crop: "carrot", Figure: "yield-kg", Value: 0.9, Unit: "kg", Why: "giants"}
	g := ledger.OwnFigure{Crop: "carrot", Figure: "days-from-sow", Value: 130, Unit: "days", Why: "slow giants"}
	var ids []string
	for _, x := range []ledger.OwnFigure{f, g} {
		id, err := d.record(ctx, ledger.Figured, d.in.Date, "", x)
		if err != nil {
			t.Fatal(err)
		}
		ids = append(ids, id)
	}
	second := settle("the plan with it", func(c *reckon.CropDesk) bool {
		v, _, _ := c.View("carrot", reckon.CropAsk{})
		return len(v.Own) == 2 && v.Own[0].HasPlan && v.Own[1].HasPlan
	})
	if says(second) == says(first) {
		t.Error("the window did not move")
	}
	v, _, _ := second.View("carrot", reckon.CropAsk{})
	if v.Own[0].Plan.WorthBefore != plan || v.Own[0].Plan.WorthAfter == plan {
		t.Errorf("the plan was worth %.1f and is told as %.1f, now %.1f", plan, v.Own[0].Plan.WorthBefore, v.Own[0].Plan.WorthAfter)
	}
	for _, id := range ids {
		if err := d.void(ctx, id); err != nil {
			t.Fatal(err)
		}
	}
	// The new search begins at the plan that stood, so it need not end at the
	// very first one; it is priced by the book again and must be about as good.
	third := settle("the plan without it", func(c *reckon.CropDesk) bool { return len(c.Notes()) == 0 })
	d.mu.Lock()
	back := d.out.last.Plan.Value
	d.mu.Unlock()
	if math.Abs(back-plan) > 0.03*plan {
		t.Errorf("taken back, the plan is worth %.1f, and was %.1f", back, plan)
	}
	if says(third) != says(first) {
		t.Error("taken back, the window is not the book's")
	}
}
