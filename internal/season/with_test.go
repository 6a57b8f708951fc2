package season

import (
	"context"
	"math"
	"slices"
	"testing"
)

// TestWithReachesBrute puts each option a small plan does not have into it.
// The want is Brute's best plan with the option locked, over all numbers of
// plants: the forced plan may not beat it, and is seldom far below.
func TestWithReachesBrute(t *testing.T) {
	const near = 0.05 // of the plan's worth
	done, close, costly := 0, 0, 0
	for seed := uint64(900); done < 60; seed++ {
		p := tiny(seed)
		p.Musts = nil
		if plans(p, 1500) > 1500 {
			continue
		}
		plan := Search(context.Background(), p, Limits{Work: 20_000, Seed: seed})
		y := NewStudy(p, &plan)
		for i := range p.Options {
			if slices.ContainsFunc(plan.Plantings, func(pl Planting) bool { return pl.Option == i }) {
				continue
			}
			f, free := y.With(context.Background(), i, 4000)
			if !f.Possible {
				continue
			}
			v := Evaluate(p, &f.Plan)
			if len(v.Faults) > 0 || math.Abs(v.Value-f.Plan.Value) > agreed {
				t.Fatalf("seed %d option %d: faults %v, value %g and %g", seed, i, v.Faults, v.Value, f.Plan.Value)
			}
			if !slices.ContainsFunc(f.Plan.Plantings, func(pl Planting) bool { return pl.Option == i }) {
				t.Fatalf("seed %d: option %d is not in the plan it was put into", seed, i)
			}
			if math.Abs(f.Plan.Value-free.Value-f.Worth) > 1e-6 {
				t.Errorf("seed %d option %d: worth %g, but plans of %g and %g", seed, i, f.Worth, f.Plan.Value, free.Value)
			}
			want := math.Inf(-1)
			for n := p.Options[i].Min; n <= p.Options[i].Max; n++ {
				q := *p
				q.Locks = []Planting{{Option: i, Plants: n}}
				if b := Brute(&q); b.Status != Infeasible {
					want = max(want, b.Value)
				}
			}
			if f.Plan.Value > want+1e-6 {
				t.Errorf("seed %d option %d: plan %g is better than the best, %g", seed, i, f.Plan.Value, want)
			}
			done++
			if f.Plan.Value > want-near*math.Abs(free.Value) {
				close++
			}
			if f.Worth < -1e-3 {
				costly++
			}
		}
	}
	t.Logf("%d of %d forced plans within %.0f %% of the best; %d cost something", close, done, 100*near, costly)
	if float64(close) < 0.9*float64(done) || costly == 0 {
		t.Errorf("%d of %d within %.0f %%, %d cost something", close, done, 100*near, costly)
	}
}
