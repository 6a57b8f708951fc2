package season

import (
	"context"
	"math"
	"testing"
	"time"
)

func TestStudyTimes(t *testing.T) {
	if testing.Short() {
		t.Skip()
	}
	p := plausible(1, 20, 30, 60, 20)
	plan := Search(context.Background(), p, Limits{Work: 8000000, Seed: 1, Workers: 2})
	a := time.Now()
	y := NewStudy(p, &plan)
	t.Logf("study %.3f s", time.Since(a).Seconds())
	for stay := range 3 {
		var weeks []int
		for w := -1; w <= p.Stays[stay].End; w++ {
			weeks = append(weeks, w)
		}
		a = time.Now()
		for _, f := range y.KeepCurve(context.Background(), stay, weeks, 0) {
			v := Evaluate(p, &f.Plan)
			if math.Abs(v.Value-f.Plan.Value) > agreed || len(v.Faults) > 0 {
				t.Error(f.Plan.Value, v.Value, v.Faults)
			}
			t.Logf("stay %d (plan pulls %d) week %d worth %.3f meals %.2f next %d", stay, plan.Pull[stay], f.Week, f.Worth, f.Meals[0], f.Next)
		}
		t.Logf("%d weeks %.3f s", len(weeks), time.Since(a).Seconds())
	}
	for _, k := range []int{0, 40, 80} {
		a = time.Now()
		f := y.Without(context.Background(), k, 0)
		t.Logf("without %s: %.3f instead %d plan %v, %.3f s", p.Options[plan.Plantings[k].Option].ID, f.Worth, len(f.Instead), f.Plan.Status, time.Since(a).Seconds())
		for d := 1; d < 4; d++ {
			f = y.Delay(context.Background(), plan.Plantings[k].Option, d, 0)
			t.Logf("  delay %d: %.3f", d, f.Worth)
		}
	}
}
