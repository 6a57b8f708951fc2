package main

import (
	"context"
	"fmt"
	"io"
	"sync"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/web"
)

// quickWork is the search after an event, so that the page answers at once;
// the full search follows behind.
const quickWork = 2_000_000

// desk holds what the pages draw: the ledger and the day reckoned from it. A
// new event makes a new day, first quickly, then with the full search.
type desk struct {
	led    *ledger.Ledger
	device string
	now    func() time.Time

	mu     sync.Mutex
	in     reckon.Inputs
	ground *reckon.Ground
	day    *reckon.Day
	seq    int64  // ledger entry the day was reckoned at
	turn   uint64 // counts reckonings, so that a late one does not overwrite a newer
	behind sync.WaitGroup
}

// newDesk plans once, fully.
func newDesk(ctx context.Context, led *ledger.Ledger, in reckon.Inputs, now func() time.Time) (*desk, error) {
	d := &desk{led: led, device: "home", now: now, in: in}
	ground, err := reckon.NewGround(&d.in)
	if err != nil {
		return nil, err
	}
	d.ground = ground
	_, err = d.reckon(ctx, in.Work)
	return d, err
}

// reckon replays the ledger and makes the day.
func (d *desk) reckon(ctx context.Context, work int) (*reckon.Result, error) {
	events, err := d.led.Events(ctx)
	if err != nil {
		return nil, fmt.Errorf("reading the ledger: %w", err)
	}
	state := ledger.ReplayOver(reckon.FromFile(d.in.Garden), events)
	seq, _ := d.led.Head()
	d.mu.Lock()
	in := d.in
	d.turn++
	turn := d.turn
	d.mu.Unlock()
	in.State, in.Work = &state, work
	r, err := reckon.Reckon(ctx, &in, d.ground)
	if err != nil {
		return nil, err
	}
	r.Day.Tell(reckon.TellEvents(events, d.in.Book, d.in.Garden))
	d.mu.Lock()
	defer d.mu.Unlock()
	if turn >= d.turn || d.seq < seq {
		d.day, d.seq = r.Day, seq
	}
	return r, nil
}

// Day is the page's day; it is always ready.
func (d *desk) Day(context.Context) (*reckon.Day, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.day, nil
}

// record writes an event, then replans: quickly now, fully behind.
func (d *desk) record(ctx context.Context, kind ledger.Kind, happened cal.Day, parent string, body any) (string, error) {
	e, err := ledger.NewEvent(d.device, happened, kind, body)
	if err != nil {
		return "", err
	}
	if id := web.FormID(ctx); id != "" {
		e.ID = id
	}
	e.Parent = parent
	if _, err := d.led.Append(ctx, e); err != nil {
		return "", err
	}
	return e.ID, d.replan(ctx)
}

func (d *desk) void(ctx context.Context, event string) error {
	_, err := d.record(ctx, ledger.Voided, d.in.Date, event, ledger.Void{Event: event})
	return err
}

func (d *desk) replan(ctx context.Context) error {
	if _, err := d.reckon(ctx, quickWork); err != nil {
		return fmt.Errorf("the note is kept, but planning anew: %w", err)
	}
	d.behind.Add(1)
	go func() {
		defer d.behind.Done()
		// The page already has an answer; a fault here leaves that one.
		_, _ = d.reckon(context.WithoutCancel(ctx), d.in.Work)
	}()
	return nil
}

// options wires the desk to the pages.
func (d *desk) options(hosts []string, demo bool) web.Options {
	return web.Options{
		Day: d.Day, Record: d.record, Void: d.void, Hosts: hosts, Now: d.now, Demo: demo,
		Backup: func(ctx context.Context) (string, error) {
			p, err := d.led.Backup(ctx, "")
			if err != nil {
				return "", err
			}
			return p.Words(), nil
		},
		Proven: func(context.Context) (string, bool) {
			all := ledger.Backups(d.led.Dir())
			if len(all) == 0 {
				return "", false
			}
			return all[len(all)-1].Words(), true
		},
		Audit: func(context.Context) ([]string, bool) {
			var words []string
			r := ledger.Audit(d.led.Dir())
			for _, c := range r.Checks {
				words = append(words, c.Words)
			}
			return words, r.OK
		},
		Export: func(ctx context.Context, w io.Writer) error { return d.led.ExportZip(ctx, w) },
	}
}
