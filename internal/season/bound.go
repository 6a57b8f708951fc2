package season

import (
	"context"
	"math"
)

// DefaultBoundWork is the work of a Bound that is given none: two to four
// seconds of one processor.
const DefaultBoundWork = 3_000_000

// BoundLimits steer Bound. The zero value is lawful.
type BoundLimits struct {
	Work     int                 // options priced; 0 = DefaultBoundWork
	Workers  int                 // at once, 2 at most are of use; 0 = 1. The bound does not depend on it
	Warm     *Certificate        // prices to start from, of the same spaces and foods; nil = none
	Futures  bool                // tell the futures' harvests apart: it proves what Evaluate says, and is no bound of Expect
	Progress func(bound float64) // called now and then; nil = not
	Clock    func() float64      // share of the time allowed that is gone, as in Limits; nil = the work alone decides
}

// leastLooks is how often each option is looked at in the shortest search.
const leastLooks = 50

// fewSteps is how many steps are made where there is nothing to plant.
const fewSteps = 400

// Bound proves how much a season can be worth at most: no plan that meets all
// limits has a value above it by Evaluate, on the futures, or by Expect, on the
// mean harvest; with the futures told apart, by Evaluate alone. The certificate's Bound is what CheckBound finds; the prices
// are the best seen. Nil for a problem that Check refuses. The result depends
// on the work and not on the machine; a cancelled context gives the best so
// far.
func Bound(ctx context.Context, p *Problem, lim BoundLimits) *Certificate {
	if len(Check(p)) > 0 {
		return nil
	}
	if lim.Work <= 0 {
		lim.Work = DefaultBoundWork
	}
	apart := 1
	if lim.Futures {
		apart = max(p.Futures, 1)
	}
	a := newAscent(newExpected(p, apart))
	a.workers, a.clock = lim.Workers, lim.Clock
	x, step := make([]float64, len(a.limit)), float64(firstStep)
	for r := a.e.rows.end; r < a.parts; r++ {
		x[r] = 0.3 * a.most[r] // of the worth of a meal: nearer than nothing
	}
	if a.warm(lim.Warm, x) {
		step = warmStep
		for r := range x {
			x[r] = min(max(x[r], 0), a.most[r])
		}
	}
	tell := func(best float64) {
		if lim.Progress != nil {
			lim.Progress(best)
		}
	}
	work := lim.Work
	if !lim.Futures {
		work = max(work, leastLooks*len(p.Options))
	}
	if len(p.Options) == 0 {
		work = fewSteps * (len(x)/256 + 1) // little to find out
	}
	c := a.certificate(a.climb(ctx, x, work, step, tell))
	c.Work = a.work
	c.Bound = CheckBound(p, c)
	return c
}

// Gap is how much better than a plan any other could be, as a share of what
// the plan is worth above doing nothing: (bound-value)/(value-nothing). It is
// not known (ok false) when the plan is worth no more than doing nothing.
func Gap(bound, value, nothing float64) (gap float64, ok bool) {
	if !(value > nothing) || math.IsInf(bound, 0) || math.IsNaN(bound) {
		return 0, false
	}
	return math.Max(0, (bound-value)/(value-nothing)), true
}
