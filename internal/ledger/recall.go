package ledger

import (
	"context"
	"reflect"
	"slices"
	"sync"
)

// Recall keeps the record's entries in memory as they come, and what they
// amount to over the plantings of a garden file. A note then costs what it
// adds, and not the whole record once more. Many may ask at once.
type Recall struct {
	l *Ledger

	mu       sync.Mutex
	events   []Event // read so far, bodies understood, without digest and chain
	last     int64   // Seq of the last
	standing []Planting
	work     *replayer // nil = not begun
	heard    int       // events that work has taken in
	state    State
	fresh    bool // state is work's
}

// Recall returns a memory of the record, empty until it is first asked.
func (l *Ledger) Recall() *Recall { return &Recall{l: l} }

// Events returns every entry in order of writing. Each is checked against its
// digest and the chain when it is first read. The slice is shared: it may be
// kept, and must not be changed.
func (c *Recall) Events(ctx context.Context) ([]Event, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	return c.read(ctx)
}

func (c *Recall) read(ctx context.Context) ([]Event, error) {
	if seq, _ := c.l.Head(); seq > c.last {
		more, err := c.l.Since(ctx, c.last)
		if err != nil {
			return nil, err
		}
		bodies := bodiesFor(more)
		c.events = slices.Grow(c.events, len(more))
		for i, e := range more {
			e.body, e.Digest, e.Chain = bodies[i], nil, nil
			c.events = append(c.events, e)
			c.last = e.Seq
		}
	}
	return c.events[:len(c.events):len(c.events)], nil
}

// Over returns every entry, and what they amount to begun with the plantings
// standing in the garden file: see ReplayOver.
func (c *Recall) Over(ctx context.Context, standing []Planting) ([]Event, State, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	events, err := c.read(ctx)
	if err != nil {
		return nil, State{}, err
	}
	if c.work == nil || !reflect.DeepEqual(standing, c.standing) {
		c.work, c.fresh = replayed(standing, events), false
		c.standing = append([]Planting(nil), standing...)
	} else if c.heard < len(events) {
		c.hear(understood(events[c.heard:]))
	}
	c.heard = len(events)
	if !c.fresh {
		c.state, c.fresh = c.work.state(), true
	}
	return events, c.state.clone(), nil
}

// hear takes new steps on top, or from the beginning when one reaches back.
func (c *Recall) hear(steps []step) {
	c.fresh = false
	for i, s := range steps {
		if !c.work.follows(s) {
			c.work = replayedSteps(c.standing, append(c.work.steps, steps[i:]...))
			return
		}
		c.work.arrive(s)
		c.work.apply(s)
	}
	c.work.touched = map[string]bool{}
}

// Entry returns the entry with an id; false when there is none.
func (c *Recall) Entry(ctx context.Context, id string) (Event, bool, error) {
	events, err := c.Events(ctx)
	if err != nil {
		return Event{}, false, err
	}
	for i := len(events) - 1; i >= 0; i-- {
		if events[i].ID == id {
			return events[i], true, nil
		}
	}
	return Event{}, false, nil
}
