package reckon

import (
	"context"
	"fmt"
	"math"

	"bedweek/internal/season"
)

// proof is what is proved of a plan: how much better any other could be. It
// is known only when season.CheckBound has verified the prices.
type proof struct {
	certificate    *season.Certificate
	value, nothing float64 // by the expected-yield model: the plan, and doing nothing
	gap            float64 // share of the worth above doing nothing
	ok             bool

	byFuture  *season.Certificate // the futures' harvests told apart; nil = not worked out
	futureGap float64             // the same share of what the plan is worth on the futures
	known     bool                // that share
}

// The work of the proof on the mean harvest, and of that with the futures told
// apart, as shares of the search's; and how often each option is looked at for
// it at most. An option costs about ten times as much to price with the futures
// told apart.
const (
	boundShare  = 4
	boundLooks  = 1000
	futureShare = 20
	futureLooks = 300
)

// prices prove how much any plan could be worth: on the mean harvest, and on
// the futures, nil where there was no time.
type prices struct{ mean, byFuture *season.Certificate }

// Of the seconds given, the share that is gone at the latest when the prices on
// the mean harvest and those with the futures told apart are found; the rest is
// the search's. In little time the futures' prices would prove next to nothing.
const (
	briefMean   = 0.4
	brief       = 6.0 // seconds; with more of them the futures are priced as well
	longMean    = 0.2
	longFutures = 0.5
)

// prove finds the prices: they guide the search, and judge its plan after.
func prove(ctx context.Context, in *Inputs, p *season.Problem) prices {
	work, options, from := in.Work, len(p.Options), in.now()
	if work <= 0 {
		work = DefaultWork
	}
	mean := season.BoundLimits{Work: max(min(work/boundShare, boundLooks*options), 1), Workers: in.Workers}
	short := in.Seconds > 0 && in.Seconds < brief
	switch {
	case short:
		mean.Clock = in.clock(from + briefMean*in.Seconds)
	case in.Seconds > 0:
		mean.Clock = in.clock(from + longMean*in.Seconds)
	}
	x := prices{mean: season.Bound(ctx, p, mean)}
	if ctx.Err() != nil || short {
		return x
	}
	apart := season.BoundLimits{Work: max(min(work/futureShare, futureLooks*options), 1), Workers: in.Workers, Warm: x.mean, Futures: true}
	if in.Seconds > 0 {
		apart.Clock = in.clock(from + longFutures*in.Seconds)
	}
	x.byFuture = season.Bound(ctx, p, apart)
	return x
}

// clock tells the share that is gone of the time from now to an end.
func (in *Inputs) clock(end float64) func() float64 {
	from := in.now()
	return func() float64 { return max(in.now()-from, 0) / max(end-from, 1e-3) }
}

// guide is the prices that guide the search: nearer to what plans are judged by
// where the futures are told apart.
func (x prices) guide() *season.Certificate {
	if x.byFuture != nil {
		return x.byFuture
	}
	return x.mean
}

// judge says what the prices prove of a plan.
func judge(p *season.Problem, c prices, plan *season.Plan) proof {
	x := proof{certificate: c.mean, byFuture: c.byFuture, value: season.Expect(p, plan)}
	nothing := doingNothing(p)
	x.nothing = season.Expect(p, &nothing)
	if x.certificate == nil || plan.Status == season.Infeasible {
		return x
	}
	// A certificate's bound is what the checker found: Bound ends with its look.
	x.gap, x.ok = season.Gap(x.certificate.Bound, x.value, x.nothing)
	if x.byFuture != nil {
		value, nothing := plan.Value, plan.Nothing
		if p.WorstShare > 0 { // what is proved is the mean over the futures
			value, nothing = onAverage(p, plan, season.Evaluate(p, plan).PerFuture)
		}
		x.futureGap, x.known = season.Gap(x.byFuture.Bound, value, nothing)
	}
	return x
}

// doingNothing keeps what stands to its end and starts nothing.
func doingNothing(p *season.Problem) season.Plan {
	plan := season.Plan{Pull: make([]int, len(p.Stays))}
	for i := range p.Stays {
		plan.Pull[i] = min(p.Stays[i].End, p.Weeks-1)
	}
	return plan
}

// words says the proof in a sentence.
func (x proof) words() string {
	if !x.ok {
		return "How much better another plan could be is not known: no bound is proved."
	}
	words := fmt.Sprintf("Counted on average harvests, no plan can be more than %.0f %% better.", percent(x.gap))
	if x.known {
		words = fmt.Sprintf("Over the futures no plan can be more than %.0f %% better; counted on average harvests, %.0f %%.", percent(x.futureGap), percent(x.gap))
	}
	return words
}

// percent is a share in whole per cent, never less than it is.
func percent(share float64) float64 { return math.Ceil(100*share - 1e-9) }

// Expected returns the plan's worth and that of doing nothing by the
// expected-yield model, and the bound on it, 0 when none is proved.
func (r *Result) Expected() (value, nothing, bound float64) {
	if r.proof.ok {
		bound = r.proof.certificate.Bound
	}
	return r.proof.value, r.proof.nothing, bound
}
