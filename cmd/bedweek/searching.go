package main

import (
	"context"
	"fmt"
	"math"

	"bedweek/internal/reckon"
)

// searching is the full search behind the pages: how far it is, and how to end
// it early. Its fields are held by the desk's lock.
type searching struct {
	far    reckon.SoFar // its share is 0 while something else is done
	enough chan struct{}
	ended  bool // enough is closed
}

// reckonFully plans with the full search, until a newer note overtakes it.
func (d *desk) reckonFully(ctx context.Context) error {
	full, halt := context.WithCancelCause(ctx)
	defer halt(nil)
	d.mu.Lock()
	d.halt, d.search = halt, &searching{enough: make(chan struct{})}
	d.mu.Unlock()
	defer func() {
		d.mu.Lock()
		d.search = nil
		d.mu.Unlock()
	}()
	if len(d.kick) > 0 {
		return errOvertaken
	}
	return d.reckon(full, d.in.Work, false)
}

// watch lets the search under way be followed and ended.
func (d *desk) watch(in *reckon.Inputs) {
	d.mu.Lock()
	defer d.mu.Unlock()
	s, say := d.search, in.Progress
	if s == nil {
		return
	}
	note := func(far reckon.SoFar) {
		d.mu.Lock()
		defer d.mu.Unlock()
		s.far = far
	}
	in.Enough = s.enough
	in.Progress = func(words string) {
		note(reckon.SoFar{})
		if say != nil {
			say(words)
		}
	}
	in.Searched = note
}

// searched says how far the search behind the pages is; "" when none is.
func (d *desk) searched() string {
	d.mu.Lock()
	defer d.mu.Unlock()
	switch s := d.search; {
	case s == nil:
		return ""
	case s.ended:
		return "The search was stopped. The best plan it found is being worked out."
	case s.far.Share > 0:
		words := fmt.Sprintf("A better plan is being searched behind this one: %.0f of 100 parts done.", 100*s.far.Share)
		if s.far.Known {
			words += fmt.Sprintf(" Over the futures no plan can be more than %.0f %% better than the best found so far.", math.Ceil(100*s.far.Gap))
		}
		return words
	default:
		return "A better plan is being worked out behind this one."
	}
}

// enough ends the search behind the pages; false when there is none to end.
func (d *desk) enough() bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.search == nil || d.search.ended {
		return false
	}
	d.search.ended = true
	close(d.search.enough)
	return true
}
