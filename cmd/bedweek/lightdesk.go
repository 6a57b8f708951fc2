package main

import (
	"context"
	"fmt"
	"time"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// lit is the light of the garden and what it was made from.
type lit struct {
	desk *reckon.LightDesk
	key  string
}

// light answers about sun and shade: made anew when the garden or a correction
// of a skyline changed, else kept.
func (d *desk) light(ctx context.Context) (*reckon.LightDesk, error) {
	state, err := d.led.State(ctx)
	if err != nil {
		return nil, fmt.Errorf("reading the ledger: %w", err)
	}
	d.mu.Lock()
	in, kept := d.in, d.lit
	d.mu.Unlock()
	if in.Garden == nil {
		return nil, nil
	}
	in.State = &state
	key := fmt.Sprintf("%p %s %s", in.Garden, in.Date, edgeKey(state.Edges))
	if kept.desk != nil && kept.key == key {
		return kept.desk, nil
	}
	zone, err := time.LoadLocation(in.Garden.Place.Zone)
	if err != nil || in.Garden.Place.Zone == "" {
		zone = nil // mean solar time, and the page says so
	}
	fresh := lit{reckon.NewLightDesk(&in, zone), key}
	d.mu.Lock()
	d.lit = fresh
	d.mu.Unlock()
	return fresh.desk, nil
}

// lightAhead works out what the page of sun and shade asks first, so that it
// opens at once. What fails is said when the page is asked for.
func (d *desk) lightAhead(ctx context.Context) {
	l, err := d.light(ctx)
	if err != nil || l == nil {
		return
	}
	for _, ask := range []func(){func() { l.HalfYear() }, func() { l.Costs() }, func() { d.tallCosts(ctx) }} {
		if ctx.Err() != nil {
			return
		}
		ask()
	}
}

// tallCosts is what tall plantings of the last plan take from their
// neighbours.
func (d *desk) tallCosts(ctx context.Context) ([]reckon.TallCost, error) {
	l, err := d.light(ctx)
	if err != nil || l == nil {
		return nil, err
	}
	d.mu.Lock()
	last := d.out.last
	d.mu.Unlock()
	return l.TallCosts(last)
}

// edgeKey tells sets of corrections apart.
func edgeKey(edges []ledger.EdgeNote) string {
	key := ""
	for _, e := range edges {
		key += e.Event + " "
	}
	return key
}
