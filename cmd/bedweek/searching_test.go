package main

import (
	"context"
	"slices"
	"strings"
	"testing"
	"time"

	"bedweek/internal/reckon"
)

// TestAFirstPlanThenTheWholeOne: the pages have a quick plan to show, say that a
// better one is searched, and end with the plan that a full search alone gives.
func TestAFirstPlanThenTheWholeOne(t *testing.T) {
	small := func(in *reckon.Inputs) { in.Work, in.Futures, in.Weeks = quickWork+1, 4, 26 }
	d, _ := deskOf(t, time.Now, small, soonDesk)
	if day, _ := d.Day(context.Background()); !day.First {
		t.Fatal("the first plan does not say that it is one")
	}
	said := ""
	d.shows(t, func(day *reckon.Day) bool {
		words := d.searched()
		said += words
		return !day.First && words == ""
	})
	if !strings.Contains(said, "better plan") {
		t.Errorf("nothing was said of the search: %q", said)
	}
	whole, _ := deskOf(t, time.Now, small, newDesk)
	got, want := d.asking().Plan, whole.asking().Plan
	if got.Value != want.Value || !slices.Equal(got.Plantings, want.Plantings) || !slices.Equal(got.Pull, want.Pull) {
		t.Errorf("behind the pages %.6f meals, alone %.6f", got.Value, want.Value)
	}
	if d.enough() {
		t.Error("a search was ended that is not there")
	}
}

// TestEnoughEndsTheSearch: told to stop, the search of a thousand million ends
// with a whole day and a lawful plan.
func TestEnoughEndsTheSearch(t *testing.T) {
	d, _ := deskOf(t, time.Now, func(in *reckon.Inputs) { in.Work, in.Futures, in.Weeks = 1_000_000_000, 4, 26 }, soonDesk)
	d.shows(t, func(*reckon.Day) bool { return d.searched() != "" })
	if !d.enough() || d.enough() {
		t.Error("enough is not said once")
	}
	d.shows(t, func(day *reckon.Day) bool { return !day.First })
	r := d.asking()
	if r.Plan.Work >= 1_000_000_000 || len(r.Verdict.Faults) > 0 {
		t.Errorf("work %d, faults %v", r.Plan.Work, r.Verdict.Faults)
	}
}

// shows waits until what the desk shows is so.
func (d *desk) shows(t *testing.T, so func(day *reckon.Day) bool) {
	t.Helper()
	deadline := time.Now().Add(3 * time.Minute)
	for {
		day, _ := d.Day(context.Background())
		if so(day) {
			return
		}
		if time.Now().After(deadline) {
			t.Fatal("it never came")
		}
		time.Sleep(5 * time.Millisecond)
	}
}
