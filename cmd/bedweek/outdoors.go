package main

import (
	"context"
	"fmt"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/fetch"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// outdoors is what the desk knows of water and weather between two plans.
type outdoors struct {
	last  *reckon.Result // the plan behind the day
	keyed *reckon.Ground // the ground remade for key
	key   string         // own readings and forecast the ground was made with
	figs  string         // own figures of crops its menu was grown with
}

// usualRound is what the day itself answers: from the morning round to the next
// visit.
func usualRound(now time.Time, date cal.Day) reckon.DryAsk {
	hour := roundHour
	if cal.FromTime(now) == date {
		hour = now.Hour()
	}
	return reckon.DryAsk{FromHour: hour, NextH: nextVisit}
}

// fillOutdoors puts water and weather on a day, with all that was noted. A
// fault leaves them out: the rest of the day still stands.
func (d *desk) fillOutdoors(r *reckon.Result, state *ledger.State, day *reckon.Day) {
	if r == nil {
		return
	}
	dry, err := r.DryNow(state, usualRound(d.now(), day.Date))
	if err != nil {
		day.Notes = append([]string{"Water could not be reckoned: " + err.Error()}, day.Notes...)
	}
	day.SetOutdoors(dry, r.Sky(state), state.Dismissed)
}

// dry answers a question about water with all that was noted so far.
func (d *desk) dry(ctx context.Context, ask reckon.DryAsk) (*reckon.Dryness, error) {
	d.mu.Lock()
	r, g := d.out.last, d.in.Garden
	d.mu.Unlock()
	if r == nil {
		return nil, nil
	}
	_, state, err := d.remembered(ctx, g)
	if err != nil {
		return nil, err
	}
	return r.DryNow(&state, ask)
}

// regrounded makes the ground anew when own readings or the forecast changed:
// both move the cold and the warmth that plants meet. When only own figures of
// crops changed, those crops are grown anew in it.
func (d *desk) regrounded(in *reckon.Inputs, ground *reckon.Ground) (*reckon.Ground, error) {
	key := ""
	for _, r := range in.State.Readings {
		key += fmt.Sprint(r.Event, r.On, r.Reading)
	}
	key += edgeKey(in.State.Edges)
	if in.Forecast != nil {
		key += fmt.Sprint(in.Forecast.Words(), len(in.Told))
		for _, f := range in.Forecast.Days {
			key += f.Day.String()
			if f.TminC != nil {
				key += fmt.Sprint(*f.TminC)
			}
		}
	}
	figs := figuresKey(in.State.Figures)
	d.mu.Lock()
	keyed, had, hadFigs := d.out.keyed, d.out.key, d.out.figs
	d.mu.Unlock()
	if keyed != ground {
		had, hadFigs = "", "" // the garden changed, and its ground was made without readings and figures
	}
	if key == had && figs == hadFigs {
		return ground, nil
	}
	var fresh *reckon.Ground
	var err error
	if key == had {
		fresh, err = ground.Regrown(in)
	} else {
		fresh, err = reckon.NewGround(in)
	}
	if err != nil {
		return nil, err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.ground == ground {
		d.ground = fresh
	}
	d.out.keyed, d.out.key, d.out.figs = fresh, key, figs
	return fresh, nil
}

// askAgain is how often a forecast is asked for.
const askAgain = 3 * time.Hour

// online asks the weather services once. What it cannot get is said, and
// everything goes on without.
func online(ctx context.Context, w *world, c *fetch.Client, in *reckon.Inputs) {
	zone, err := time.LoadLocation(in.Garden.Place.Zone)
	if err != nil {
		zone = time.Local
	}
	site := siteOf(in.Garden)
	if yesterday := in.Date - 1; in.Record != nil && in.Record.End() < yesterday && yesterday-in.Record.End() <= 1000 {
		days, source, err := c.Archive(ctx, site, in.Record.End()+1, yesterday)
		if err == nil {
			var n int
			in.Record, n = in.Record.CarriedOn(days, source)
			fmt.Fprintf(w.err, "The record goes on by %s (%s).\n", count(n, "day"), source)
		} else {
			fmt.Fprintf(w.err, "The record ends on %s and could not be carried on: %v\n", in.Record.End().Long(), err)
		}
	}
	fc, err := c.Forecast(ctx, site, zone)
	if err != nil {
		fmt.Fprintf(w.err, "Going on without a forecast: %v\n", err)
		return
	}
	in.Forecast = fc
	if err := c.Keep(fc, site); err != nil {
		fmt.Fprintf(w.err, "%v\n", err)
	}
	in.Told = c.Kept(site)
	fmt.Fprintln(w.err, fc.Words())
}

// follow asks for the forecast anew now and then, until ctx ends.
func (d *desk) follow(ctx context.Context, c *fetch.Client) {
	t := time.NewTicker(askAgain)
	defer t.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case <-t.C:
		}
		d.mu.Lock()
		g := d.in.Garden
		d.mu.Unlock()
		if g == nil {
			continue
		}
		zone, err := time.LoadLocation(g.Place.Zone)
		if err != nil {
			zone = time.Local
		}
		fc, err := c.Forecast(ctx, siteOf(g), zone)
		if err != nil {
			continue // the last good one stands; its age is in its words
		}
		site := siteOf(g)
		keeping := c.Keep(fc, site)
		kept := c.Kept(site)
		d.mu.Lock()
		d.in.Forecast, d.in.Told = fc, kept
		d.mu.Unlock()
		if keeping != nil {
			d.tell("The plan goes on, but the forecast will not be compared: " + keeping.Error())
		}
		select {
		case d.kick <- struct{}{}:
		default:
		}
	}
}
