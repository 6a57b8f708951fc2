package main

import (
	"context"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// The garden goes into a new day at the first request after midnight, plans for
// it, and keeps what was noted; a clock put back changes nothing, and with a
// date asked for the day stands still.
func TestTheDayGoesWithTheClock(t *testing.T) {
	var clock atomic.Int64
	set := func(d, h, m int) {
		clock.Store(time.Date(2015, 10, d, h, m, 0, 0, time.Local).UnixNano())
	}
	set(5, 23, 50)
	d, led := testDeskAt(t, func() time.Time { return time.Unix(0, clock.Load()) })
	ctx := context.Background()
	first := cal.Of(2015, 10, 5)
	settled := func() {
		t.Helper()
		for range 3000 {
			d.mu.Lock()
			done := d.busy == 0 && !d.stale
			d.mu.Unlock()
			if done {
				return
			}
			time.Sleep(20 * time.Millisecond)
		}
		t.Fatal("the plan was never made anew")
	}
	set(6, 0, 10)
	if day, _ := d.Day(ctx); day.Date != first || d.today() != first {
		t.Fatalf("a date was asked for, and yet the day went on to %s", d.today().Long())
	}
	set(5, 23, 50)
	d.mu.Lock()
	d.in.ByClock = true
	d.mu.Unlock()
	if _, err := d.record(ctx, ledger.Watered, first, "", ledger.Watering{Space: "north-bed", Litres: 10, Hour: 20}); err != nil {
		t.Fatal(err)
	}
	settled()
	if day, _ := d.Day(ctx); day.Date != first {
		t.Fatalf("before midnight: %s", day.Date.Long())
	}
	set(6, 0, 10)
	day, _ := d.Day(ctx)
	if day.Date != first || len(day.Notes) == 0 || !strings.Contains(day.Notes[0], "It is a new day") {
		t.Errorf("just after midnight: the page of %s says %q", day.Date.Long(), day.Notes)
	}
	settled()
	if day, _ = d.Day(ctx); day.Date != first+1 || day.Dry.Date != first+1 {
		t.Errorf("the new day is %s, its water %s", day.Date.Long(), day.Dry.Date.Long())
	}
	for _, r := range day.Dry.Rows {
		if r.Space == "north-bed" && r.Checked != "last checked by hand yesterday" {
			t.Errorf("the bed was watered the evening before; it says %q", r.Checked)
		}
	}
	set(5, 9, 0)
	if day, _ = d.Day(ctx); day.Date != first+1 {
		t.Errorf("the clock went back, and the day to %s", day.Date.Long())
	}
	events, err := led.Events(ctx)
	if err != nil {
		t.Fatal(err)
	}
	waterings := 0
	for _, e := range events {
		if e.Kind == ledger.Watered {
			waterings++
		}
	}
	if waterings != 1 {
		t.Errorf("%d waterings are kept, want the one", waterings)
	}
}
