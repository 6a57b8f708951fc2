package main

import (
	"context"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// called is the last answer about names and what it was made from.
type called struct {
	making sync.Mutex // held while an answer is made, and over the rest
	desk   *names.Desk
	garden *garden.Garden
	date   cal.Day
	seq    int64 // of the last entry it knows
}

// names answers about seed, trays and which plant is which, with everything
// noted so far; nil while there is no garden. Made anew when something was
// written or the garden changed, else kept; those who ask meanwhile share it.
func (d *desk) names(ctx context.Context) (*names.Desk, error) {
	seq, _ := d.led.Head()
	c := &d.called
	c.making.Lock()
	defer c.making.Unlock()
	d.mu.Lock()
	in := d.in
	d.mu.Unlock()
	if in.Garden == nil {
		return nil, nil
	}
	if c.desk != nil && c.garden == in.Garden && c.date == in.Date && c.seq >= seq {
		return c.desk, nil
	}
	standing := reckon.FromFile(in.Garden)
	seq, _ = d.led.Head()
	events, state, err := d.remembered(ctx, in.Garden)
	if err != nil {
		return nil, err
	}
	fresh, err := names.New(in.Garden, in.Book, &state, standing, events, in.Date)
	if err != nil {
		return nil, err
	}
	c.desk, c.garden, c.date, c.seq = fresh, in.Garden, in.Date, seq
	return fresh, nil
}
