package main

import (
	"context"
	"slices"
	"sync/atomic"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TestAnAnswerDuringAPlanDoesNotComeBack: work that was answered while the plan
// was being worked out from older entries does not return to the list when that
// plan is shown.
func TestAnAnswerDuringAPlanDoesNotComeBack(t *testing.T) {
	var during atomic.Pointer[func()]
	d, _ := deskOf(t, time.Now, func(in *reckon.Inputs) {
		in.Work, in.Futures, in.Weeks = quickWork+1, 4, 26
		in.Progress = func(string) {
			if f := during.Swap(nil); f != nil {
				(*f)()
			}
		}
	}, newDesk)
	ctx := context.Background()
	day, _ := d.Day(ctx)
	if len(day.Today) < 2 {
		t.Fatalf("%d tasks: the test needs two", len(day.Today))
	}
	first, second := day.Today[0].ID, day.Today[1].ID
	answer := func(task string) {
		if _, err := d.record(ctx, ledger.Dismissed, cal.FromTime(time.Now()), "", ledger.Dismissal{Task: task, Why: "not this year"}); err != nil {
			t.Error(err)
		}
	}
	has := func(day *reckon.Day, task string) bool {
		return slices.ContainsFunc(day.Today, func(x reckon.Task) bool { return x.ID == task })
	}
	answered := make(chan struct{})
	meanwhile := func() { answer(second); close(answered) }
	during.Store(&meanwhile)
	answer(first)
	<-answered
	d.shows(t, func(day *reckon.Day) bool {
		if has(day, first) || has(day, second) {
			t.Fatalf("answered work is back on the list: %v, %v", has(day, first), has(day, second))
		}
		d.mu.Lock()
		defer d.mu.Unlock()
		return d.busy == 0
	})
}
