package main

import (
	"context"
	"fmt"

	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// called is the last answer about names and what it was made from.
type called struct {
	desk *names.Desk
	key  string
}

// names answers about seed, trays and which plant is which, with everything
// noted so far; nil while there is no garden. Made anew when something was
// written or the garden changed, else kept.
func (d *desk) names(ctx context.Context) (*names.Desk, error) {
	d.mu.Lock()
	garden, date, kept := d.in.Garden, d.in.Date, d.called
	d.mu.Unlock()
	if garden == nil {
		return nil, nil
	}
	seq, _ := d.led.Head()
	key := fmt.Sprintf("%p %s %d", garden, date, seq)
	if kept.desk != nil && kept.key == key {
		return kept.desk, nil
	}
	d.mu.Lock()
	in := d.in
	d.mu.Unlock()
	if in.Garden != garden || in.Date != date {
		key = "" // changed meanwhile: good for this answer only
	}
	standing := reckon.FromFile(in.Garden)
	events, state, err := d.remembered(ctx, in.Garden)
	if err != nil {
		return nil, err
	}
	fresh, err := names.New(in.Garden, in.Book, &state, standing, events, in.Date)
	if err != nil {
		return nil, err
	}
	d.mu.Lock()
	d.called = called{fresh, key}
	d.mu.Unlock()
	return fresh, nil
}
