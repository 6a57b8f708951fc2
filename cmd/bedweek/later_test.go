package main

import (
	"context"
	"testing"
	"time"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TestWhatCanWaitComesAfterThePlan: it is not there with the plan, comes behind
// it on all its starts, and what was told stands on while a note's quick plan is
// shown.
func TestWhatCanWaitComesAfterThePlan(t *testing.T) {
	d, _ := deskOf(t, time.Now, func(in *reckon.Inputs) { in.Work, in.Futures, in.Weeks = quickWork+1, 4, 26 }, newDesk)
	ctx := context.Background()
	var was *reckon.Later
	d.shows(t, func(day *reckon.Day) bool {
		was = day.Later
		return was != nil
	})
	day, _ := d.Day(ctx)
	starts := 0
	for _, sp := range day.Spaces {
		for _, l := range sp.Lines {
			if l.Standing {
				continue
			}
			if starts++; l.Later == nil {
				t.Errorf("%s: nothing is told of it", l.ID)
			}
		}
	}
	if starts == 0 || was.Words == "" {
		t.Errorf("%d starts, told %q", starts, was.Words)
	}
	if d.asking().Day.Later != nil {
		t.Error("the plan's own day was changed under those who read it")
	}
	if _, err := d.record(ctx, ledger.Dismissed, day.Date, "", ledger.Dismissal{Task: day.Today[0].ID, Why: "not this year"}); err != nil {
		t.Fatal(err)
	}
	kept := false
	d.shows(t, func(day *reckon.Day) bool {
		kept = kept || d.asking().Day.Later == was // of the quick plan after the note
		return kept && day.Later != nil && day.Later != was
	})
}
