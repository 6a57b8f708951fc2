package season

import (
	"context"
	"sync/atomic"
	"testing"
)

// ticks is a clock whose time allowed is gone after so many looks at it.
func ticks(n int) func() float64 {
	var looked atomic.Int64
	return func() float64 { return float64(looked.Add(1)) / float64(n) }
}

// TestClockPacesTheBound: prices that end with the time allowed have come as
// far as prices that end with their work. Given endless work and no pace they
// stay in the coarse steps of the beginning. Here the clock goes by steps, and
// short of time half of them look at some options only: so it has twice as many.
func TestClockPacesTheBound(t *testing.T) {
	p := medium9500()
	worked := Bound(context.Background(), p, BoundLimits{Work: 600_000})
	looks := 0
	Bound(context.Background(), p, BoundLimits{Work: 600_000, Clock: func() float64 { looks++; return 0 }})
	timed := Bound(context.Background(), p, BoundLimits{Work: 1_000_000_000, Clock: ticks(2 * looks)})
	if timed.Bound > 1.01*worked.Bound {
		t.Errorf("bound %.1f by the clock, %.1f by work for half as many steps", timed.Bound, worked.Bound)
	}
	if timed.Bound != CheckBound(p, timed) {
		t.Error("the checker finds another bound")
	}
}

// TestClockPacesTheSearch: the same of plans, with one worker and two.
func TestClockPacesTheSearch(t *testing.T) {
	p := medium9500()
	for _, workers := range []int{1, 2} {
		worked := Search(context.Background(), p, Limits{Work: 700_000, Workers: workers, Seed: 1})
		plan := Search(context.Background(), p, Limits{Work: 1_000_000_000, Workers: workers, Seed: 1, Clock: ticks(1200 * workers)})
		if plan.Status != Interrupted {
			t.Errorf("status %v: the time ended it", plan.Status)
		}
		if v := Evaluate(p, &plan); len(v.Faults) > 0 || plan.Value < 0.9*worked.Value {
			t.Errorf("%d workers: worth %.1f by the clock, %.1f by work; faults %v", workers, plan.Value, worked.Value, v.Faults)
		}
		if plan.Work > 20_000_000 {
			t.Errorf("%d of work: the clock did not end it", plan.Work)
		}
	}
	never := Search(context.Background(), p, Limits{Work: 700_000, Seed: 1, Workers: 2, Clock: func() float64 { return 0 }})
	worked := Search(context.Background(), p, Limits{Work: 700_000, Seed: 1, Workers: 2})
	if never.Value != worked.Value || never.Status != worked.Status {
		t.Errorf("a clock that stands still changes the plan: %.3f and %.3f", never.Value, worked.Value)
	}
}

// TestNoTimeAtAll: a clock that has run out gives a lawful plan and a bound
// that holds, whatever they are worth.
func TestNoTimeAtAll(t *testing.T) {
	p := small900()
	gone := func() float64 { return 1 }
	c := Bound(context.Background(), p, BoundLimits{Clock: gone})
	plan := Search(context.Background(), p, Limits{Clock: gone, Prices: c})
	if v := Evaluate(p, &plan); len(v.Faults) > 0 || c.Bound < Expect(p, &plan) {
		t.Errorf("bound %.1f, plan %.1f, faults %v", c.Bound, plan.Value, v.Faults)
	}
}
