package season

import (
	"context"
	"math"
	"testing"
)

// glut is a bed of two plantings of one family that give a meal a plant, two
// wanted a week: the second comes back early, and two plants of it are all that
// would be eaten.
func glut(atRisk int) *Problem {
	p := oneBed(6, 0)
	p.Spaces[0].Batch, p.Batches = 0, []Batch{{ID: "b"}}
	for _, week := range []int{0, 2} {
		o := crop("bean", week, week, 0.1, 1)
		o.ID, o.Family, o.Interval, o.Min, o.AtRisk = o.ID+string(rune('a'+week)), 0, 5, 1, atRisk
		o.Risk, o.RotationCost = 0.05, 0.5
		p.Options = append(p.Options, o)
	}
	return p
}

// TestOnlyWhatIsEatenIsAtRisk: plants beyond those at risk pay for no loss, by
// hand in every number of plants, and search and bound agree with it.
func TestOnlyWhatIsEatenIsAtRisk(t *testing.T) {
	for _, tt := range []struct {
		atRisk, plants int
		want           float64
		how            string
	}{
		{0, 10, 10*0.05 + 10*0.5, "all ten"},
		{2, 10, 2*0.05 + 2*0.5, "two of ten"},
		{2, 1, 0.05 + 0.5, "one of one"},
		{20, 3, 3*0.05 + 3*0.5, "more at risk than there are"},
	} {
		p := glut(tt.atRisk)
		v := Evaluate(p, &Plan{Plantings: []Planting{{0, 1}, {1, tt.plants}}, Pull: []int{}})
		if got := v.Parts.Risk - 0.05 + v.Parts.Rotation; !near(got, tt.want) {
			t.Errorf("%s: risk and return cost %.6f, want %.6f", tt.how, got, tt.want)
		}
	}
	p := glut(2)
	best, found := Brute(p), Search(context.Background(), p, Limits{Work: 20_000})
	// Two plants cost 1.1 of 1.6 meals; all ten give 2, and cost no more.
	p.Options[1].Min = 5
	late := Search(context.Background(), p, Limits{Work: 20_000})
	if !near(best.Value, found.Value) || !near(late.Value, best.Value) {
		t.Errorf("best %.6f, search %.6f, many or none %.6f", best.Value, found.Value, late.Value)
	}
	// With five at risk four plants of the first are best and two of the second, ten of which are worth less than none.
	few := glut(5)
	if best, found := Brute(few), Search(context.Background(), few, Limits{Work: 20_000}); !near(best.Value, 1.8+0.5) || !near(found.Value, best.Value) {
		t.Errorf("five at risk: best %.6f, search %.6f, want 2.3", best.Value, found.Value)
	}
	agree(t, glut(2), 1, 2000)
	if c := Bound(context.Background(), glut(2), BoundLimits{Work: 40_000}); c.Bound < best.Value || c.Bound > best.Value+0.05 {
		t.Errorf("bound %.6f, best %.6f", c.Bound, best.Value)
	}
}

// TestBoundSeesWhatIsAtRisk: checker and ascent agree, and no plan is above
// them, where few plants of large batches are at risk and returns are dear.
func TestBoundSeesWhatIsAtRisk(t *testing.T) {
	kinks := 0
	for seed := range uint64(2) {
		p := plausible(20+seed, 4, 8, 40, 3)
		for i := range p.Options {
			o := &p.Options[i]
			o.Max *= 2
			o.AtRisk = (i*7)%o.Max + i%2
			o.RotationCost, o.Risk = 0.6, 0.2
			if o.AtRisk > o.Min && o.AtRisk < o.Max {
				kinks++
			}
		}
		agree(t, p, 1, 100)
		agree(t, p, p.Futures, 30)
		plan := Search(context.Background(), p, Limits{Work: 200_000})
		if v := Evaluate(p, &plan); len(v.Faults) > 0 || math.Abs(v.Value-plan.Value) > agreed {
			t.Errorf("seed %d: search %.9f, evaluator %.9f, %v", seed, plan.Value, v.Value, v.Faults)
		}
		c := Bound(context.Background(), p, BoundLimits{Work: 200_000})
		if value := Expect(p, &plan); c.Bound < value {
			t.Errorf("seed %d: bound %.6f below a plan of %.6f", seed, c.Bound, value)
		}
	}
	if kinks < 150 {
		t.Errorf("only %d options have fewer plants at risk than they may have", kinks)
	}
}
