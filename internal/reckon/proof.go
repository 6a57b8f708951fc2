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
}

// boundShare is the work of the proof as a share of the search's.
const boundShare = 2

// prove finds the prices: they guide the search, and judge its plan after.
func prove(ctx context.Context, p *season.Problem, work, workers int) *season.Certificate {
	if work <= 0 {
		work = DefaultWork
	}
	return season.Bound(ctx, p, season.BoundLimits{Work: max(work/boundShare, 1), Workers: workers})
}

// judge says what the prices prove of a plan.
func judge(p *season.Problem, c *season.Certificate, plan *season.Plan) proof {
	x := proof{certificate: c, value: season.Expect(p, plan)}
	nothing := season.Plan{Pull: make([]int, len(p.Stays))}
	for i := range p.Stays {
		nothing.Pull[i] = min(p.Stays[i].End, p.Weeks-1)
	}
	x.nothing = season.Expect(p, &nothing)
	if x.certificate == nil || plan.Status == season.Infeasible {
		return x
	}
	// The pages say a gap only after the checker has looked.
	x.certificate.Bound = season.CheckBound(p, x.certificate)
	x.gap, x.ok = season.Gap(x.certificate.Bound, x.value, x.nothing)
	return x
}

// words says the proof in a sentence.
func (x proof) words() string {
	if !x.ok {
		return "How much better another plan could be is not known: no bound is proved."
	}
	return fmt.Sprintf("Counted on average harvests, no plan can be more than %.0f %% better.", math.Ceil(100*x.gap-1e-9))
}

// Expected returns the plan's worth and that of doing nothing by the
// expected-yield model, and the bound on it, 0 when none is proved.
func (r *Result) Expected() (value, nothing, bound float64) {
	if r.proof.ok {
		bound = r.proof.certificate.Bound
	}
	return r.proof.value, r.proof.nothing, bound
}
