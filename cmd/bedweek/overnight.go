package main

import (
	"bedweek/internal/cal"
)

// today is the day the garden is at.
func (d *desk) today() cal.Day {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.in.Date
}

// turnDay carries the garden into a new day, at the first request after
// midnight, when its day goes with the clock. Until the new plan is there, the
// last one is shown with a note. A clock that goes back changes nothing.
func (d *desk) turnDay() {
	d.mu.Lock()
	if !d.in.ByClock {
		d.mu.Unlock()
		return
	}
	today := cal.FromTime(d.now())
	if today <= d.in.Date {
		d.mu.Unlock()
		return
	}
	d.in.Date, d.stale = today, true
	if d.day != nil {
		day := *d.day
		day.Notes = append([]string{"It is a new day. This is the plan of " + day.Date.Long() + "; that of " + today.Long() + " is being worked out."}, day.Notes...)
		d.put(&day)
	}
	d.mu.Unlock()
	d.again()
}
