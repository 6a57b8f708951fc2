package season

import (
	"context"
	"math"
	"reflect"
	"testing"
)

// TestGuidedSearch: prices make plans better at equal work, break no limit, and
// change nothing of what the plan depends on.
func TestGuidedSearch(t *testing.T) {
	with, without := 0.0, 0.0
	for seed := uint64(2); seed < 5; seed++ {
		p := plausible(seed, 8, 14, 52, 6)
		c := Bound(context.Background(), p, BoundLimits{Work: 60 * len(p.Options)})
		if two := Bound(context.Background(), p, BoundLimits{Work: 60 * len(p.Options), Workers: 2}); !reflect.DeepEqual(c, two) {
			t.Errorf("two workers found a bound of %.12f, one %.12f", two.Bound, c.Bound)
		}
		lim := Limits{Work: 500_000, Seed: seed, Workers: 1}
		plain := Search(context.Background(), p, lim)
		lim.Prices = c
		guided := Search(context.Background(), p, lim)
		lim.Workers = 2
		if again := Search(context.Background(), p, lim); !reflect.DeepEqual(again, guided) {
			t.Errorf("two workers found another plan: %.9f and %.9f", again.Value, guided.Value)
		}
		v := Evaluate(p, &guided)
		if len(v.Faults) > 0 || math.Abs(v.Value-guided.Value) > agreed || Expect(p, &guided) > c.Bound {
			t.Errorf("guided plan: faults %v, search %.12f, evaluator %.12f, model %.6f, bound %.6f", v.Faults, guided.Value, v.Value, Expect(p, &guided), c.Bound)
		}
		with, without = with+guided.Value, without+plain.Value
		t.Logf("%d options: unguided %.2f, guided %.2f", len(p.Options), plain.Value, guided.Value)
	}
	if with <= without {
		t.Errorf("guided plans are worth %.2f, unguided ones %.2f", with, without)
	}
}

// TestGuideNeverHidesAMust: a must that pays badly is still met, and prices of
// another garden are left aside.
func TestGuideNeverHidesAMust(t *testing.T) {
	p := plausible(6, 6, 12, 52, 4)
	c := Bound(context.Background(), p, BoundLimits{Work: 20 * len(p.Options)})
	worst, least := "", math.Inf(1)
	sum := map[string]float64{}
	for i := range p.Options {
		sum[p.Options[i].Crop] += density1(&p.Options[i])
	}
	for crop, x := range sum {
		if x < least || x == least && crop < worst {
			worst, least = crop, x
		}
	}
	p.Musts = []Must{{Crop: worst, Space: -1, Plants: 1}}
	plan := Search(context.Background(), p, Limits{Work: 100_000, Prices: c})
	if plan.Status != Feasible {
		t.Errorf("must %s: %v, %v", worst, plan.Status, plan.Conflict)
	}
	other := plausible(7, 5, 12, 52, 4)
	if plan := Search(context.Background(), other, Limits{Work: 50_000, Prices: c}); plan.Status != Feasible {
		t.Errorf("prices of another garden: %v", plan.Status)
	}
}

// density1 is an option's mean meals for its ground.
func density1(o *Option) float64 {
	sum := 0.0
	for _, row := range o.Meals {
		for _, x := range row {
			sum += float64(x)
		}
	}
	return sum / o.Footprint[len(o.Footprint)-1]
}

// TestGuideSeesBulkAndIdleGround: the price of a bulky batch is part of what a
// batch has to pay, and windows are dug where dear ground stands idle.
func TestGuideSeesBulkAndIdleGround(t *testing.T) {
	p := plausible(6, 6, 12, 52, 4)
	c := newCertificate(p, 1)
	const space, week, dear = 2, 20, 7.0
	p.Spaces[space].AreaM2 = 0.25 // so that one plant of some kinds takes more than half
	c.Room[space][area][week] = dear
	for w := range c.Halves[space] {
		c.Halves[space][w] = dear
	}
	m := newModel(p, nil)
	m.setGuide(&Limits{Prices: c})
	bulky := 0
	for i := range p.Options {
		if o := &p.Options[i]; m.guide.batch[i] > 0 {
			bulky++
			if o.Space != space || float64(o.Min)*o.Footprint[len(o.Footprint)-1] <= p.Spaces[space].AreaM2/2 {
				t.Errorf("%s pays %.2f for bulk and takes no bulk's room", o.ID, m.guide.batch[i])
			}
		}
	}
	if bulky == 0 {
		t.Errorf("no batch pays the price of bulk")
	}
	w := newWalk(m, 1, 0)
	w.idleRents()
	hits := 0
	for range 1000 {
		if sp, from, to := w.stretch(); sp == space && from <= week && week <= to {
			hits++
		}
	}
	// Half are drawn there, and of the others one in six spaces, now and then in that week.
	if hits < 450 || hits > 700 {
		t.Errorf("%d of 1000 windows lie on the one dear week, want about half and a few", hits)
	}
}
