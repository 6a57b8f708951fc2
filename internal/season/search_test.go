package season

import (
	"context"
	"math"
	"testing"
)

// agreed is how near the search's value and the evaluator's must be, in meals.
const agreed = 1e-9

func TestSearchAgreesWithEvaluate(t *testing.T) {
	for seed := range uint64(300) {
		p := tiny(seed)
		if faults := Check(p); len(faults) > 0 {
			t.Fatalf("seed %d: the generator made an unlawful problem: %v", seed, faults)
		}
		plan := Search(context.Background(), p, Limits{Work: 8000, Seed: seed})
		v := Evaluate(p, &plan)
		if math.Abs(v.Value-plan.Value) > agreed {
			t.Errorf("seed %d: search says %.12f, evaluator %.12f", seed, plan.Value, v.Value)
		}
		if len(v.Faults) > 0 && plan.Status != Infeasible {
			t.Errorf("seed %d: %v plan has faults %v", seed, plan.Status, v.Faults)
		}
	}
}

func TestSearchAgreesWithEvaluateOnGardens(t *testing.T) {
	for seed := range uint64(3) {
		p := plausible(seed, 6, 12, 52, 8)
		plan := Search(context.Background(), p, Limits{Work: 60000, Seed: seed})
		v := Evaluate(p, &plan)
		if math.Abs(v.Value-plan.Value) > agreed || len(v.Faults) > 0 {
			t.Errorf("seed %d: search says %.12f, evaluator %.12f, faults %v", seed, plan.Value, v.Value, v.Faults)
		}
		nothing := Evaluate(p, &Plan{Pull: naturalEnds(p)})
		if math.Abs(nothing.Value-plan.Nothing) > agreed {
			t.Errorf("seed %d: doing nothing is %.12f, evaluator %.12f", seed, plan.Nothing, nothing.Value)
		}
		if plan.Value <= plan.Nothing {
			t.Errorf("seed %d: the plan is worth %.3f, doing nothing %.3f", seed, plan.Value, plan.Nothing)
		}
	}
}
