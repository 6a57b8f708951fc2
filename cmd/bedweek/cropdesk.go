package main

import (
	"context"
	"fmt"

	"bedweek/internal/crop"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// crops is what the desk knows of the gardener's own figures.
type crops struct {
	base    *crop.Book // as built in
	key     string     // the figures book was made with
	book    *crop.Book // base with them
	desk    *reckon.CropDesk
	at      string // what desk was made from
	full    *reckon.Result
	waiting []changed // figures whose effect on the plan is not known yet
	effects map[string]reckon.PlanEffect
}

// changed is an own figure kept since the last whole plan, which is before.
type changed struct {
	event, crop string
	before      *reckon.Result
}

// figuresKey tells sets of own figures apart.
func figuresKey(notes []ledger.FigureNote) string {
	key := ""
	for _, n := range notes {
		key += n.Event + " "
	}
	return key
}

// ownBook is the crop book with the figures of a state. While they are the
// same it is the same book, and so are its crops.
func (d *desk) ownBook(notes []ledger.FigureNote) *crop.Book {
	key := figuresKey(notes)
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.crops.base == nil {
		d.crops.base = d.in.Book
	}
	if d.crops.book == nil || d.crops.key != key {
		d.crops.book, _ = reckon.OwnBook(d.crops.base, notes) // faults are told on the crop pages
		d.crops.key = key
	}
	return d.crops.book
}

// figured notes that an own figure was kept or taken back, so that the next
// whole plan can be compared with the last one.
func (d *desk) figured(e ledger.Event, body any) {
	f, ok := body.(ledger.OwnFigure)
	if !ok || d.crops.full == nil {
		return
	}
	d.crops.waiting = append(d.crops.waiting, changed{e.ID, f.Crop, d.crops.full})
}

// planned takes over a plan, and with a whole one tells what figures changed.
// d.mu is held.
func (d *desk) planned(r *reckon.Result, whole bool, state *ledger.State) {
	if !whole {
		return
	}
	if d.crops.effects == nil {
		d.crops.effects = map[string]reckon.PlanEffect{}
	}
	var left []changed
	for _, w := range d.crops.waiting {
		in := false
		for _, n := range state.Figures {
			in = in || n.Event == w.event
		}
		if in { // else it came after the plan was begun, or was taken back
			d.crops.effects[w.event] = reckon.NewPlanEffect(w.before, r, w.crop)
		} else {
			left = append(left, w)
		}
	}
	d.crops.waiting, d.crops.full = left, r
}

// cropDesk answers about crops as the garden and its figures are now; nil
// while there is no plan.
func (d *desk) cropDesk(ctx context.Context) (*reckon.CropDesk, error) {
	d.mu.Lock()
	in, ground, last, kept, at := d.in, d.ground, d.out.last, d.crops.desk, d.crops.at
	d.mu.Unlock()
	if in.Garden == nil || ground == nil {
		return nil, nil
	}
	events, state, err := d.remembered(ctx, in.Garden)
	if err != nil {
		return nil, err
	}
	key := fmt.Sprintf("%p %p %s %d", ground, last, in.Date, len(events))
	if kept == nil || key != at {
		base := in.Book
		in.State, in.Book = &state, d.ownBook(state.Figures)
		kept = reckon.NewCropDesk(&in, base, ground, last, kept)
		d.mu.Lock()
		for id, e := range d.crops.effects {
			kept.Effect(id, e)
		}
		d.crops.desk, d.crops.at = kept, key
		d.mu.Unlock()
	}
	return kept, nil
}
