package season

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"testing"
)

// everyPlan calls see with every plan of a tiny problem that breaks no limit.
func everyPlan(p *Problem, see func(plan *Plan, v *Verdict)) {
	plan := Plan{Pull: naturalEnds(p)}
	var options func(i int)
	options = func(i int) {
		if i == len(p.Options) {
			if v := Evaluate(p, &plan); len(v.Faults) == 0 {
				see(&plan, &v)
			}
			return
		}
		options(i + 1)
		for n := max(p.Options[i].Min, 1); n <= p.Options[i].Max; n++ {
			plan.Plantings = append(plan.Plantings, Planting{i, n})
			options(i + 1)
			plan.Plantings = plan.Plantings[:len(plan.Plantings)-1]
		}
	}
	var pulls func(i int)
	pulls = func(i int) {
		if i == len(p.Stays) {
			options(0)
			return
		}
		for w := firstPull(p, &p.Stays[i]); w <= lastWeek(p, &p.Stays[i]); w++ {
			plan.Pull[i] = w
			pulls(i + 1)
		}
	}
	pulls(0)
}

// randomPrices fills a certificate with prices of all sizes, many of them 0.
func randomPrices(p *Problem, seed uint64, apart int) *Certificate {
	r := rand.New(rand.NewPCG(seed, 11))
	c := newCertificate(p, apart)
	fill := func(row []float64, size float64) {
		for i := range row {
			row[i] = size * math.Max(0, r.Float64()-0.5)
		}
	}
	for i := range c.Room {
		fill(c.Halves[i], 2)
		fill(c.Thirds[i], 1)
		for k, size := range []float64{2, 0.01, 1, 1} {
			fill(c.Room[i][k], size)
		}
	}
	for k := range c.Cells {
		for w := range c.Cells[k] {
			fill(c.Cells[k][w][:], 3/float64(apart))
		}
	}
	fill(c.Shelf, 0.3)
	fill(c.Minutes, 2) // some above the cost of a minute over
	fill(c.Water, 3)   // far above the cost of a litre over
	fill(c.Musts, 2)
	for name := range p.Totals {
		c.Totals[name] = r.Float64()
	}
	return c
}

// TestBoundIsAboveEveryPlan: on tiny gardens no plan at all is worth more than
// the bound, by the evaluator on the futures or by the expected-yield model,
// whatever the prices; and the evaluator is never above the model (Jensen).
func TestBoundIsAboveEveryPlan(t *testing.T) {
	done, tight := 0, 0
	var above, aboveValue, worth float64
	for seed := uint64(0); done < 150; seed++ {
		p := tiny(seed)
		if plans(p, 1500) > 1500 {
			continue
		}
		if seed%3 == 0 { // one batch, so that families return to it
			for i := range p.Spaces {
				p.Spaces[i].Batch = 0
			}
		}
		if seed%5 == 0 { // all planted must share a place with one that stands
			p.Locks = []Planting{{0, p.Options[0].Min}}
		}
		done++
		found := Bound(context.Background(), p, BoundLimits{Work: 1})
		bounds := []float64{found.Bound, CheckBound(p, newCertificate(p, 1)), CheckBound(p, randomPrices(p, seed, 1)), CheckBound(p, randomPrices(p, seed+1<<20, 1))}
		apart := Bound(context.Background(), p, BoundLimits{Work: 20 * len(p.Options), Futures: true, Warm: found})
		byFuture := []float64{apart.Bound, CheckBound(p, newCertificate(p, p.Futures)), CheckBound(p, randomPrices(p, seed, p.Futures)), CheckBound(p, randomPrices(p, seed+1<<20, p.Futures))}
		best, value := math.Inf(-1), math.Inf(-1)
		everyPlan(p, func(plan *Plan, v *Verdict) {
			model := v.Value + v.Parts.Lean - v.Parts.Food + meanEaten(p, v)
			if v.Value > model+1e-9 {
				t.Fatalf("seed %d: evaluator %.9f above the expected-yield model %.9f", seed, v.Value, model)
			}
			best, value = max(best, model), max(value, v.Value)
			for k, b := range byFuture {
				if v.Value > b+1e-9 {
					t.Fatalf("seed %d: %v with pulls %v is worth %.9f on the futures, bound %d is %.9f", seed, plan.Plantings, plan.Pull, v.Value, k, b)
				}
			}
			for k, b := range bounds {
				if model > b+1e-9 {
					t.Fatalf("seed %d: %v with pulls %v is worth %.9f, bound %d is %.9f", seed, plan.Plantings, plan.Pull, model, k, b)
				}
			}
		})
		if !math.IsInf(best, -1) {
			above += found.Bound - best
			aboveValue += apart.Bound - value
			if apart.Bound > found.Bound+1e-6 {
				t.Errorf("seed %d: futures told apart %.9f, the mean harvest %.9f", seed, apart.Bound, found.Bound)
			}
			worth += best
			if found.Bound < best+0.02*math.Abs(best)+1e-3 {
				tight++
			}
		}
	}
	t.Logf("%d gardens, the bound %.3f above plans worth %.3f in all, with the futures told apart %.3f above; within 2 %% of the best in %d", done, above, worth, aboveValue, tight)
	if tight < done/10 {
		t.Errorf("the bound is near the best plan in %d of %d gardens: too loose to test anything", tight, done)
	}
}

// TestBoundSparesAnAvoidableReturn: where pulling early avoids the cost of an
// early return, the bound does not charge it.
func TestBoundSparesAnAvoidableReturn(t *testing.T) {
	p := oneBed(6, 0)
	p.Spaces[0].Batch, p.Batches = 0, []Batch{{ID: "b"}}
	o := crop("leek.3", 3, 4, 0.5, 2, 2)
	o.Crop, o.Family, o.Interval, o.RotationCost = "leek", 0, 2, 50
	p.Options = []Option{o}
	p.Stays = []Stay{{ID: "old", Crop: "onion", Plants: 1, End: 1, MustKeepTo: -1, Food: -1, Footprint: []float64{0.1}}}
	best := Brute(p)
	if c := Bound(context.Background(), p, BoundLimits{Work: 1}); best.Pull[0] >= 1 || c.Bound < best.Value {
		t.Errorf("best %.6f with pull %v, bound %.6f", best.Value, best.Pull, c.Bound)
	}
	p.Stays[0].MustKeepTo = 1
	if c := Bound(context.Background(), p, BoundLimits{Work: 1}); c.Bound > 0.01 {
		t.Errorf("a return that cannot be avoided costs more than it gives, bound %.6f", c.Bound)
	}
}

// TestCheckerAgreesWithAscent: two codes that share nothing but the problem
// find the same bound at the same prices.
func TestCheckerAgreesWithAscent(t *testing.T) {
	for seed := range uint64(60) {
		p := tiny(seed)
		agree(t, p, 1, 20)
		agree(t, p, p.Futures, 20)
	}
	agree(t, plausible(5, 4, 8, 40, 4), 1, 100)
	agree(t, plausible(5, 4, 8, 40, 4), 4, 30)
	dry := plausible(5, 4, 8, 40, 4)
	thirsty(dry, 5, 0.3)
	agree(t, dry, 1, 100)
	agree(t, dry, 4, 30)
}

// TestPriceOfALitreIsCapped: a litre over the wish can be carried, so no price
// above its cost counts, or the bound would deny a plan that pays for carrying.
func TestPriceOfALitreIsCapped(t *testing.T) {
	p := oneBed(1, 0)
	o := crop("a", 0, 0, 0.1, 2)
	o.Water = []float64{5}
	p.Options, p.Water, p.WaterCost = []Option{o}, []float64{0}, 0.1
	plan := Plan{Plantings: []Planting{{0, 1}}}
	const worth = 1 + 0.6 - 0.5
	if v := Evaluate(p, &plan); !near(v.Value, worth) {
		t.Fatalf("the plan is worth %.6f, want %.6f by hand", v.Value, worth)
	}
	c := newCertificate(p, 1)
	c.Water[0] = 10
	if b := CheckBound(p, c); b < worth || b > worth+0.01 {
		t.Errorf("at a price of 10 a litre the bound is %.6f, want the %.6f of the cost of carrying", b, worth)
	}
	if b := Bound(context.Background(), p, BoundLimits{Work: 2000}).Bound; b < worth || b > worth+0.1 {
		t.Errorf("the bound found is %.6f, the plan is worth %.6f", b, worth)
	}
}

func agree(t *testing.T, p *Problem, apart, steps int) {
	t.Helper()
	a := newAscent(newExpected(p, apart))
	x := a.climb(context.Background(), make([]float64, len(a.limit)), steps*len(p.Options), firstStep, func(float64) {})
	own, checked := a.value(x, a.everything()), CheckBound(p, a.certificate(x))
	if math.Abs(own-checked) > 1e-6*(1+math.Abs(own)) {
		t.Errorf("the ascent says %.9f, the checker %.9f", own, checked)
	}
}

func TestBoundOnInventedGardens(t *testing.T) {
	p := plausible(5, 4, 8, 40, 4)
	plan := Search(context.Background(), p, Limits{Work: 400_000})
	value := Expect(p, &plan)
	c := Bound(context.Background(), p, BoundLimits{Work: 1_000_000})
	gap, ok := Gap(c.Bound, value, Expect(p, &Plan{Pull: naturalEnds(p)}))
	t.Logf("%d options: plan %.2f (%.2f over the futures), bound %.2f, gap %.1f %%", len(p.Options), value, plan.Value, c.Bound, 100*gap)
	if c.Bound < value || !ok || gap > 0.5 {
		t.Errorf("plan %.6f, bound %.6f, gap %.3f", value, c.Bound, gap)
	}
	if again := Bound(context.Background(), p, BoundLimits{Work: 1_000_000}); !reflect.DeepEqual(c, again) {
		t.Errorf("the same work gave another certificate: %.9f and %.9f", c.Bound, again.Bound)
	}
	rough := Bound(context.Background(), p, BoundLimits{Work: 1})
	warm := Bound(context.Background(), p, BoundLimits{Work: 1, Warm: c})
	if warm.Bound > c.Bound+1e-9 || rough.Bound < c.Bound {
		t.Errorf("from old prices %.6f, from none %.6f, long work %.6f", warm.Bound, rough.Bound, c.Bound)
	}
	// Each future by itself, and back to their mean.
	apart := Bound(context.Background(), p, BoundLimits{Work: 200_000, Warm: c, Futures: true})
	t.Logf("with the futures told apart: bound %.2f", apart.Bound)
	if apart.Bound < plan.Value || apart.Bound > c.Bound-0.01*math.Abs(c.Bound) {
		t.Errorf("futures told apart %.6f, want between the plan's %.6f and well below %.6f", apart.Bound, plan.Value, c.Bound)
	}
	if two := Bound(context.Background(), p, BoundLimits{Work: 200_000, Warm: c, Futures: true, Workers: 2}); !reflect.DeepEqual(apart, two) {
		t.Errorf("two workers: %.12f, one: %.12f", two.Bound, apart.Bound)
	}
	if back := Bound(context.Background(), p, BoundLimits{Work: 1, Warm: apart}); back.Bound < c.Bound-1e-6-0.01*math.Abs(c.Bound) || back.Bound > rough.Bound {
		t.Errorf("back to the mean harvest: %.6f, from none %.6f, long work %.6f", back.Bound, rough.Bound, c.Bound)
	}
	// A week later most prices still hold.
	q := *p
	q.Start += 7
	later := Bound(context.Background(), &q, BoundLimits{Work: 1, Warm: c})
	if math.IsNaN(later.Bound) || later.Bound < c.Bound-1e-6-0.2*math.Abs(c.Bound) {
		t.Errorf("moved by a week: %.6f", later.Bound)
	}
}

func TestGap(t *testing.T) {
	for _, c := range []struct {
		bound, value, nothing, want float64
		ok                          bool
	}{{110, 100, 50, 0.2, true}, {100, 100, 50, 0, true}, {110, 50, 50, 0, false}, {110, 40, 50, 0, false}, {math.Inf(1), 2, 1, 0, false}, {99.9999999, 100, 50, 0, true}} {
		if got, ok := Gap(c.bound, c.value, c.nothing); math.Abs(got-c.want) > 1e-12 || ok != c.ok {
			t.Errorf("%v: %v %v", c, got, ok)
		}
	}
	if c := Bound(context.Background(), &Problem{Weeks: -1}, BoundLimits{}); c != nil {
		t.Errorf("an unlawful problem has a bound: %v", c.Bound)
	}
	empty := Bound(context.Background(), &Problem{}, BoundLimits{})
	if empty == nil || math.Abs(empty.Bound) > 1e-6 {
		t.Errorf("an empty problem: %v, want a bound of 0", empty)
	}
}

// TestBoundChargesAReturn: where a family must either return too soon or stay
// away, the bound is the better of these, worked out by hand.
func TestBoundChargesAReturn(t *testing.T) {
	bean := func(week, interval int, foot float64) Option {
		o := crop("bean", week, week, foot, 2) // two meals: 1 + 0.6
		o.ID, o.Max, o.Family, o.Interval, o.RotationCost = fmt.Sprint("bed.bean.", week), 1, 0, interval, 1
		return o
	}
	for _, tt := range []struct {
		name    string
		options []Option
		stays   []Stay
		want    float64
	}{
		{"both, the second a week too soon", []Option{bean(0, 3, 1), bean(2, 3, 1)}, nil, 1.6 + 1.6 - 1},
		{"both, far enough apart", []Option{bean(0, 1, 1), bean(2, 1, 1)}, nil, 1.6 + 1.6},
		{"what stands must stay to its end", []Option{bean(3, 1, 0.8)},
			[]Stay{{ID: "old", Crop: "old", Plants: 1, End: 2, MustKeepTo: 2, Food: -1, Footprint: []float64{0.1}}}, 1.6 - 1},
		{"what stands may make way in the very first week", []Option{bean(0, 0, 1)},
			[]Stay{{ID: "old", Crop: "old", Plants: 1, End: 3, MustKeepTo: -1, Food: -1, Footprint: []float64{1}}}, 1.6},
	} {
		p := oneBed(6, 0)
		p.Spaces[0].Batch, p.Batches = 0, []Batch{{ID: "b"}}
		p.Options, p.Stays = tt.options, tt.stays
		best, c := Brute(p), Bound(context.Background(), p, BoundLimits{Work: 20_000})
		agree(t, p, 1, 2000)
		if math.Abs(best.Value-tt.want) > 1e-9 || c.Bound < tt.want || c.Bound > tt.want+0.02 {
			t.Errorf("%s: best %.6f, bound %.6f, want %.6f", tt.name, best.Value, c.Bound, tt.want)
		}
	}
}
