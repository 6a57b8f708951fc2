package reckon

import (
	"fmt"

	"bedweek/internal/garden"
	"bedweek/internal/season"
)

// Planning for bad years: the worst five of twenty futures have a share of
// their own in what a plan is worth.

// badShares are the shares of the steps: our own choice. docs/accuracy.md says
// what they bring and cost.
var badShares = map[string]float64{garden.Somewhat: 0.3, garden.Much: 0.6}

// worths are what the plan and doing nothing are worth on the mean over the
// futures, which is what pages and proofs speak of, and what the plan is worth
// in the mean of its worst futures.
func (r *Result) worths() (value, nothing, worst float64) {
	value, nothing = onAverage(r.Problem, &r.Plan, r.Verdict.PerFuture)
	return value, nothing, season.WorstMean(r.Verdict.PerFuture)
}

// onAverage is the mean over the futures of a plan and of doing nothing.
func onAverage(p *season.Problem, plan *season.Plan, perFuture []float64) (value, nothing float64) {
	if p.WorstShare == 0 || len(perFuture) == 0 {
		return plan.Value, plan.Nothing
	}
	rest := season.Plan{Pull: make([]int, len(p.Stays))}
	for i := range p.Stays {
		rest.Pull[i] = min(p.Stays[i].End, p.Weeks-1)
	}
	return mean(perFuture), mean(season.Evaluate(p, &rest).PerFuture)
}

// badWords says what a wish to plan for bad years costs and brings: what the
// plan with it is worth more than the plan without, on average and in the worst
// futures.
func badWords(average, worst, noise float64) string {
	side := func(where string, x float64) string {
		switch {
		case x >= noise:
			return fmt.Sprintf("%s the plan gives %s more", where, meals(x))
		case x <= -noise:
			return fmt.Sprintf("%s the plan gives %s less", where, meals(-x))
		}
		return where + " no difference is seen"
	}
	return sentence(side("on average", average) + "; " + side("in the worst five of twenty years", worst) + fmt.Sprintf(", give or take %s", mealsCount(roundUp(noise))))
}

// worth is what the plan is worth more than leaving everything as it stands.
func (r *Result) worth() float64 {
	value, nothing, _ := r.worths()
	return value - nothing
}
