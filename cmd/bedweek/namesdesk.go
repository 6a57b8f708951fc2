package main

import (
	"context"
	"fmt"

	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// names answers about seed, trays and which plant is which, with everything
// noted so far; nil while there is no garden.
func (d *desk) names(ctx context.Context) (*names.Desk, error) {
	events, err := d.led.Events(ctx)
	if err != nil {
		return nil, fmt.Errorf("reading the ledger: %w", err)
	}
	d.mu.Lock()
	in := d.in
	d.mu.Unlock()
	if in.Garden == nil {
		return nil, nil
	}
	standing := reckon.FromFile(in.Garden)
	state := ledger.ReplayOver(standing, events)
	return names.New(in.Garden, in.Book, &state, standing, events, in.Date)
}
