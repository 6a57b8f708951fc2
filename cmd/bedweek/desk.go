package main

import (
	"context"
	"fmt"
	"io"
	"slices"
	"sync"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/fetch"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/web"
)

// quickWork is the first search after an event; the full one follows.
const quickWork = 400_000

// desk holds what the pages draw: the ledger and the day reckoned from it. A
// note is kept and shown at once; the plan is worked out anew behind, first
// quickly, then with the full search.
type desk struct {
	led    *ledger.Ledger
	past   *ledger.Recall
	told   told
	device string
	now    func() time.Time
	in     reckon.Inputs
	ground *reckon.Ground
	out    outdoors
	lit    lit
	called called
	crops  crops

	climate  func(g *garden.Garden) (climate, error) // weather of a garden; see entry.go
	services *fetch.Client                           // asked when somebody taps; nil = never

	mu      sync.Mutex
	day     *reckon.Day // nil while there is no plan yet
	shown   shown       // how far the notes are told on day
	text    string      // of the garden as last accepted
	stale   bool        // the garden or the day changed: the ground must be made anew
	busy    int         // reckonings asked for and not yet done
	trouble string      // why there is no plan, "" = none known
	unknown unknowns
	plans   *plans                  // the last plan of each week
	halt    context.CancelCauseFunc // ends the full search under way; nil = none is
	search  *searching              // the full search under way; nil = none is
	kick    chan struct{}           // holds one: there is something new to reckon with
	over    chan struct{}           // closed when no more is reckoned behind
	idle    sync.WaitGroup
}

// newDesk plans once, fully. Reckoning behind ends with ctx.
func newDesk(ctx context.Context, led *ledger.Ledger, in reckon.Inputs, now func() time.Time) (*desk, error) {
	return deskAfter(ctx, led, in, now, in.Work)
}

// soonDesk is ready after a first, quick plan; the full search goes on behind.
func soonDesk(ctx context.Context, led *ledger.Ledger, in reckon.Inputs, now func() time.Time) (*desk, error) {
	return deskAfter(ctx, led, in, now, quickWork)
}

// deskAfter is a desk ready after a first plan of so much work.
func deskAfter(ctx context.Context, led *ledger.Ledger, in reckon.Inputs, now func() time.Time, work int) (*desk, error) {
	d := &desk{led: led, past: led.Recall(), device: "home", now: now, in: in, kick: make(chan struct{}, 1), over: make(chan struct{}), plans: readPlans(led.Dir())}
	ground, err := reckon.NewGround(&d.in)
	if err != nil {
		return nil, err
	}
	d.ground = ground
	quick := work < in.Work
	if err := d.reckon(ctx, work, quick); err != nil {
		return nil, err
	}
	if err := d.readText(ctx); err != nil {
		return nil, err
	}
	d.idle.Add(1)
	go d.behind(ctx, quick)
	return d, nil
}

// reckon replays the ledger, plans and puts the new day in place. Quick, it
// starts from the plan before, and what takes longest waits for the full plan.
func (d *desk) reckon(ctx context.Context, work int, quick bool) error {
	ctx = mannered(ctx)
	in, ground, err := d.footing()
	if err != nil || ground == nil {
		return err
	}
	d.mu.Lock()
	d.shown.unmet = nil // they are among the entries that are read now
	d.mu.Unlock()
	events, state, err := d.remembered(ctx, in.Garden)
	if err != nil {
		return err
	}
	if in.ByClock && len(events) > 0 {
		in.Newest = cal.FromTime(slices.MaxFunc(events, func(a, b ledger.Event) int { return a.Written.Compare(b.Written) }).Written)
	}
	in.Stop = func() bool { return ctx.Err() != nil && context.Cause(ctx) == errOvertaken }
	if !quick {
		d.watch(&in)
	}
	in.State, in.Work, in.Book = &state, work, d.ownBook(state.Figures)
	in.LastWeek, in.Prior = d.plans.before(in.Date), d.plans.latest(in.Date)
	d.mu.Lock()
	in.Before, in.Quick = d.day, quick
	if d.day != nil && d.out.last != nil && !d.day.First {
		k := d.out.last.Likeness()
		in.Prior = &k
	}
	d.mu.Unlock()
	if ground, err = d.regrounded(&in, ground); err != nil {
		return err
	}
	r, err := reckon.Reckon(ctx, &in, ground)
	if err != nil {
		return err
	}
	if in.Stop() {
		return errOvertaken
	}
	if !in.Quick && work == d.in.Work { // the quick search's word is not kept
		d.keepForecasts(ctx, r, &state)
	}
	d.told.on(r.Day, events, &state, in.Book, in.Garden)
	r.Day.Spent = reckon.SpentOn(events, &state, in.Book, in.Date)
	d.fillOutdoors(r, &state, r.Day)
	if !in.Quick && ctx.Err() == nil {
		if err := d.plans.remember(r.Likeness()); err != nil {
			r.Day.Notes = append(r.Day.Notes, "What changes next week may not be told: "+err.Error())
		}
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.in.Garden == in.Garden { // else it changed meanwhile, and another turn follows
		d.putPlanned(r.Day)
		d.trouble, d.out.last = "", r
		d.planned(r, work == d.in.Work, &state)
	}
	return nil
}

// keepForecasts writes down what the plan says of plantings of which nothing
// was kept yet, once for each. When it cannot, the day says so.
func (d *desk) keepForecasts(ctx context.Context, r *reckon.Result, state *ledger.State) {
	said := r.Forecasts()
	var events []ledger.Event
	for _, f := range said {
		e, err := ledger.NewEvent(d.device, d.in.Date, ledger.Forecasted, f)
		if err != nil {
			r.Day.Notes = append(r.Day.Notes, "What was forecast today could not be written: "+err.Error())
			return
		}
		events = append(events, e)
	}
	if len(events) == 0 {
		return
	}
	if _, err := d.led.Append(ctx, events...); err != nil {
		r.Day.Notes = append(r.Day.Notes, "What was forecast today could not be kept: "+err.Error())
		return
	}
	for i, f := range said {
		state.Forecasts = append(state.Forecasts, ledger.ForecastNote{Event: events[i].ID, On: d.in.Date, Forecast: f})
	}
}

// behind works the plan out anew whenever something was noted, and first to its
// end when it was only begun. A fault leaves the last day in place and says so
// on it.
func (d *desk) behind(ctx context.Context, begun bool) {
	defer d.idle.Done()
	defer close(d.over)
	if begun {
		err := d.reckonFully(ctx)
		d.failed(ctx, err)
		if d.in.Progress != nil && err == nil {
			d.in.Progress("the plan is whole")
		}
	}
	var pondering sync.WaitGroup
	defer pondering.Wait()
	for {
		thinking, stop := context.WithCancel(ctx)
		pondering.Go(func() { d.ponder(mannered(thinking)) })
		select {
		case <-ctx.Done():
			stop()
			return
		case <-d.kick:
		}
		stop()
		d.breathe(ctx)
		d.mu.Lock()
		turns := d.busy
		d.mu.Unlock()
		err := d.reckon(ctx, quickWork, true)
		d.mu.Lock()
		d.busy -= turns
		d.mu.Unlock()
		if err == nil && len(d.kick) == 0 {
			err = d.reckonFully(ctx)
		}
		d.failed(ctx, err)
	}
}

// failed tells why the plan could not be worked out anew, if it could not.
func (d *desk) failed(ctx context.Context, err error) {
	if err != nil && err != errOvertaken && ctx.Err() == nil {
		d.tell("Your notes are kept, but the plan could not be worked out anew: " + err.Error())
	}
}

// breath is how long a note's own page is left alone before the plan is worked
// out anew beside it.
const breath = 300 * time.Millisecond

func (d *desk) breathe(ctx context.Context) {
	t := time.NewTimer(breath)
	defer t.Stop()
	select {
	case <-ctx.Done():
	case <-t.C:
	}
}

// errOvertaken ends a full search that a newer note makes pointless.
var errOvertaken = reckon.ErrOvertaken

// tell puts a sentence at the head of the day's notes.
func (d *desk) tell(words string) {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.trouble = words
	if d.day == nil {
		return
	}
	day := *d.day
	day.Notes = append([]string{words}, day.Notes...)
	d.put(&day)
}

// toFill is the day for a form that is being saved.
func (d *desk) toFill(context.Context) (*reckon.Day, error) {
	d.turnDay()
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.day, nil
}

// record keeps an event, shows it on the day and has the plan made anew.
func (d *desk) record(ctx context.Context, kind ledger.Kind, happened cal.Day, parent string, body any) (string, error) {
	e, err := ledger.NewEvent(web.DeviceOf(ctx, d.device), happened, kind, body)
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
	if kind == ledger.Voided || kind == ledger.GardenSet {
		if err := d.readText(ctx); err != nil {
			return "", err
		}
	}
	d.mu.Lock()
	d.figured(e, body)
	d.note(kind, body)
	d.mu.Unlock()
	d.again()
	return e.ID, nil
}

// remembered is every entry, and what they amount to in a garden.
func (d *desk) remembered(ctx context.Context, g *garden.Garden) ([]ledger.Event, ledger.State, error) {
	events, state, err := d.past.Over(ctx, reckon.FromFile(g))
	if err != nil {
		return nil, ledger.State{}, fmt.Errorf("reading the ledger: %w", err)
	}
	return events, state, nil
}

// told is the past of a garden in words, which goes on with each entry.
type told struct {
	mu     sync.Mutex
	garden *garden.Garden
	teller *reckon.Teller
}

// on puts the past on the spaces of a day, and on its year sheets.
func (t *told) on(day *reckon.Day, events []ledger.Event, state *ledger.State, book *crop.Book, g *garden.Garden) {
	t.mu.Lock()
	defer t.mu.Unlock()
	if t.garden != g {
		t.garden, t.teller = g, reckon.NewTeller(book, g)
	}
	t.teller.Hear(events)
	day.Tell(t.teller)
	day.TellYears(t.teller, state)
}

// again asks for the plan to be worked out anew.
func (d *desk) again() {
	d.mu.Lock()
	d.busy++
	halt := d.halt
	d.mu.Unlock()
	select {
	case d.kick <- struct{}{}:
	default:
	}
	if halt != nil {
		halt(errOvertaken)
	}
}

func (d *desk) void(ctx context.Context, event string) error {
	_, err := d.record(ctx, ledger.Voided, d.today(), event, ledger.Void{Event: event})
	return err
}

// options wires the desk to the pages.
func (d *desk) options(hosts []string, demo bool) web.Options {
	return web.Options{
		Entry: d.entry(), Light: d.light, Names: d.names, TallCosts: d.tallCosts, Crops: d.cropDesk,
		Wishes:    &web.Wishes{Try: d.try, Why: d.why, Prices: d.prices, Likeness: d.likeness, Kept: d.keptPlans},
		Searching: d.searched, Enough: d.enough,
		Day: d.Day, ToFill: d.toFill, Record: d.record, Void: d.void, Dry: d.dry, Hosts: hosts, Now: d.now, Demo: demo,
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
