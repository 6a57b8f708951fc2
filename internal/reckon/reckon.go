package reckon

import (
	"context"
	"errors"
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/season"
)

// Result is a Day with the working behind it, for the command line and tests.
type Result struct {
	Day     *Day
	Place   *Place
	Problem *season.Problem
	Plan    season.Plan
	Verdict season.Verdict
	proof   proof
	model   *model
	in      *Inputs // wishes taken in
	ground  *Ground
	asked   asked
	water   dryMemo
	climate climate
}

// Ground is what does not change with the ledger: light, futures and the menu
// of starts. It is made once for a garden, a date and a seed.
type Ground struct {
	Place   *Place
	Menu    []Entry
	seconds map[string]float64
	cells   map[cell][]Entry // what the menu was gathered from
}

// Regrown is the ground after figures of some crops changed: the place is the
// same and only those crops are grown anew. in holds the book as it is now.
func (g *Ground) Regrown(in *Inputs) (*Ground, error) {
	if err := in.Check(); err != nil {
		return nil, err
	}
	out := &Ground{Place: g.Place, seconds: map[string]float64{"light and weather": 0}}
	t := in.now()
	out.Menu, out.cells = grownMenu(in, g.Place, g.cells)
	out.seconds["growth"] = in.now() - t
	return out, nil
}

// Check says what is wrong with the inputs, in words; nil when they can be
// reckoned with.
func (in *Inputs) Check() error {
	switch {
	case in.Garden == nil || in.Book == nil:
		return errors.New("reckon: no garden or no crop book")
	case (in.Record == nil) == (in.Normals == nil):
		return errors.New("reckon: give a daily record or monthly normals, one of them")
	case in.Weeks < MinWeeks || in.Weeks > MaxWeeks:
		return fmt.Errorf("a plan of %d weeks: want %d to %d", in.Weeks, MinWeeks, MaxWeeks)
	case in.Futures < 1 || in.Futures > 100:
		return fmt.Errorf("%d futures: want 1 to 100", in.Futures)
	case in.Date < cal.Of(1900, 1, 1) || in.Date > cal.Of(2200, 1, 1):
		return fmt.Errorf("the date %s: want 1900 to 2199", in.Date)
	}
	return nil
}

// NewGround does the slow half of the work.
func NewGround(in *Inputs) (*Ground, error) {
	if err := in.Check(); err != nil {
		return nil, err
	}
	g := &Ground{seconds: map[string]float64{}}
	t := in.now()
	in.say("working out the light on each space and drawing twenty futures")
	var err error
	if g.Place, err = NewPlace(in); err != nil {
		return nil, err
	}
	g.seconds["light and weather"], t = in.now()-t, in.now()
	in.say("growing every crop in every space from every week")
	g.Menu, g.cells = grownMenu(in, g.Place, nil)
	g.seconds["growth"] = in.now() - t
	return g, nil
}

// Reckon joins the ground with what stands now and plans the season. ctx may
// end the search early; the plan is then marked interrupted.
func Reckon(ctx context.Context, in *Inputs, g *Ground) (*Result, error) {
	if err := in.Check(); err != nil {
		return nil, err
	}
	seconds := map[string]float64{}
	for k, v := range g.seconds {
		seconds[k] = v
	}
	t := in.now()
	in = in.wished()
	g = g.wider(in)
	m, err := modelOf(in, g)
	if err != nil {
		return nil, err
	}
	seconds["what stands"], t = in.now()-t, in.now()
	began := t
	var found prices
	looking, stop := until(ctx, in.Enough)
	defer stop()
	if !in.Quick {
		in.say("pricing ground, shelf and meals")
		found = prove(looking, in, m.p)
		seconds["prices"], t = in.now()-t, in.now()
	}
	in.say(fmt.Sprintf("searching a plan among %d possible plantings", len(m.p.Options)))
	var left func() float64
	if in.Seconds > 0 {
		left = in.clock(began + in.Seconds)
	}
	plan := season.Search(looking, m.p, season.Limits{Work: in.Work, Seed: in.Seed, Workers: in.Workers, Prices: found.guide(),
		Prior: m.prior(in.Prior), ChangeCost: changeCost, Progress: in.searched(m.p, found), Clock: left})
	seconds["search"], t = in.now()-t, in.now()
	if in.stopped() {
		return nil, ErrOvertaken
	}
	r := &Result{Place: g.Place, Problem: m.p, Plan: plan, model: m, in: in, ground: g}
	r.Verdict = season.Evaluate(m.p, &plan)
	if len(r.Verdict.Faults) > 0 && plan.Status != season.Infeasible {
		return nil, fmt.Errorf("reckon: the evaluator finds faults in the plan: %v", r.Verdict.Faults)
	}
	if !in.Quick {
		in.say("checking how much better another plan could be")
		t = in.now()
		r.proof = judge(m.p, found, &plan)
		seconds["checking the proof"], t = in.now()-t, in.now()
	}
	in.say("weighing what stands: pull or keep")
	if in.stopped() {
		return nil, ErrOvertaken
	}
	r.Day = r.day(ctx, seconds)
	if in.stopped() {
		return nil, ErrOvertaken
	}
	seconds["words"] = in.now() - t
	return r, nil
}

// until is ctx, ended too when end is closed.
func until(around context.Context, end <-chan struct{}) (context.Context, context.CancelFunc) {
	ctx, stop := context.WithCancel(around)
	if end != nil {
		go func() {
			select {
			case <-end:
				stop()
			case <-ctx.Done():
			}
		}()
	}
	return within{ctx, around}, stop
}

// within is a context that asks the one around it too: that one may wait before
// it answers, to give way to others.
type within struct {
	context.Context
	around context.Context
}

func (w within) Err() error {
	if err := w.around.Err(); err != nil {
		return err
	}
	return w.Context.Err()
}

// searched passes on how far the search has come, and what the prices prove of
// its best plan so far; nil when nobody listens.
func (in *Inputs) searched(p *season.Problem, found prices) func(season.Progress) {
	if in.Searched == nil {
		return nil
	}
	c := found.guide()
	nothing := 0.0
	if c != nil {
		none := doingNothing(p)
		nothing = season.Evaluate(p, &none).Value
	}
	best, counts := 0.0, false
	return func(x season.Progress) {
		if x.Counts && (!counts || x.Value > best) {
			best, counts = x.Value, true
		}
		far := SoFar{Share: min(float64(x.Work)/float64(max(x.Of, 1)), 1)}
		if c != nil && counts {
			far.Gap, far.Known = season.Gap(c.Bound, best, nothing)
		}
		in.Searched(far)
	}
}

// changeCost is what a new plan must be worth more, in meals, for each planting
// or pull week of the plan before that it gives up. Ours: twice what two plans
// can be told apart by; docs/accuracy.md says what it keeps and costs.
const changeCost = 2.0

// modelOf joins the ground with what stands now.
func modelOf(in *Inputs, g *Ground) (*model, error) {
	stays := whatStands(in)
	growStanding(in, g.Place, stays)
	m := newModel(in, g.Place, g.Menu, stays)
	if faults := season.Check(m.p); len(faults) > 0 {
		return nil, fmt.Errorf("reckon: the problem is unlawful: %v", faults)
	}
	return m, nil
}
