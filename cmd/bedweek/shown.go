package main

import (
	"context"
	"slices"
	"sync"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// shown says how far the notes are told on the desk's day. Its fields but the
// lock are held by the desk's lock.
type shown struct {
	telling sync.Mutex  // held while notes are told on a day
	untold  bool        // notes may have come since the past was put on the day
	notes   int         // how many have come
	later   []later     // those since the day now being told was taken
	unmet   []later     // those that came while a plan was being worked out without them
	puts    int         // how often another day took its place
	latest  *reckon.Day // the last that was told; nil = of an earlier day
	upTo    int         // notes it tells
}

// later is a note that comes while those before it are told.
type later struct {
	kind ledger.Kind
	body any
}

// put shows another day, nil for none. d.mu is held.
func (d *desk) put(day *reckon.Day) {
	d.day = day
	d.shown.puts++
	d.shown.later, d.shown.latest = nil, nil
}

// note shows at once what a note changes on the day. d.mu is held.
func (d *desk) note(kind ledger.Kind, body any) {
	if d.day == nil {
		return
	}
	d.day = d.day.After(string(kind), body)
	d.shown.untold = true
	d.shown.notes++
	d.shown.later = append(d.shown.later, later{kind, body})
	d.shown.unmet = append(d.shown.unmet, later{kind, body})
}

// putPlanned shows a plan's day, and on it what was noted since its entries
// were read: work that was answered meanwhile does not come back. d.mu is held.
func (d *desk) putPlanned(day *reckon.Day) {
	d.put(day)
	d.shown.untold = true
	for _, n := range d.shown.unmet {
		d.day = d.day.After(string(n.kind), n.body)
	}
}

// Day is the page's day; it is always ready. Notes that came since it was last
// asked for are put on it together: fifty phones that write cost one page, and
// nobody who writes waits for it.
func (d *desk) Day(ctx context.Context) (*reckon.Day, error) {
	d.turnDay()
	d.mu.Lock()
	day, told, since := d.day, !d.shown.untold, d.shown.notes
	d.mu.Unlock()
	if told || day == nil {
		return day, nil
	}
	s := &d.shown
	s.telling.Lock()
	defer s.telling.Unlock()
	d.mu.Lock()
	if s.latest != nil && s.upTo >= since { // told since this was asked
		day = s.latest
		d.mu.Unlock()
		return day, nil
	}
	day, told, since = d.day, !s.untold, s.notes
	in, last, puts := d.in, d.out.last, s.puts
	s.later = nil
	d.mu.Unlock()
	if told || day == nil {
		return day, nil
	}
	fresh, err := d.toldOn(ctx, day, &in, last)
	if err != nil {
		return nil, err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if s.puts != puts {
		return fresh, nil
	}
	s.latest, s.upTo = fresh, since
	d.day, s.untold = fresh, len(s.later) > 0
	for _, n := range s.later {
		d.day = d.day.After(string(n.kind), n.body)
	}
	return fresh, nil
}

// toldOn is a day with everything told that was noted.
func (d *desk) toldOn(ctx context.Context, day *reckon.Day, in *reckon.Inputs, last *reckon.Result) (*reckon.Day, error) {
	events, state, err := d.remembered(ctx, in.Garden)
	if err != nil {
		return nil, err
	}
	fresh := *day
	fresh.Spaces = slices.Clone(day.Spaces)
	d.told.on(&fresh, events, &state, in.Book, in.Garden)
	d.fillOutdoors(last, &state, &fresh)
	return &fresh, nil
}
