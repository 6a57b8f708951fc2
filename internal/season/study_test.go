package season

import (
	"context"
	"math"
	"slices"
	"testing"
)

// forcedTo is p with stay i pulled in week w and nothing else possible, the
// same worth of it kept: Brute can then say what KeepCurve should find.
func forcedTo(p *Problem, i, w int) *Problem {
	q := *p
	q.Stays = slices.Clone(p.Stays)
	s := &q.Stays[i]
	if w != lastWeek(p, s) {
		s.Tail = -s.PullCost
	}
	s.PullCost, s.End, s.MustKeepTo = 0, w, w
	return &q
}

// TestKeepCurveReachesBrute wants each forced week's plan to be the proven
// best under that force in at least 95 of 100 cases, and never above it.
func TestKeepCurveReachesBrute(t *testing.T) {
	const least = 0.95
	done, equal := 0, 0
	for seed := uint64(500); done < 120; seed++ {
		p := tiny(seed)
		p.Musts = nil // a stay cut short would count as kept to its end
		for i := range p.Stays {
			p.Stays[i].VolumeL = 0 // its share goes by the largest footprint to its end
		}
		if len(p.Stays) == 0 || plans(p, 3000) > 3000 {
			continue
		}
		plan := Search(context.Background(), p, Limits{Work: 20_000, Seed: seed})
		s := &p.Stays[0]
		var weeks []int
		for w := firstPull(p, s); w <= lastWeek(p, s); w++ {
			weeks = append(weeks, w)
		}
		curve := KeepCurve(context.Background(), p, &plan, 0, append(slices.Clone(weeks), 99), 4000)
		if last := curve[len(weeks)]; last.Possible {
			t.Errorf("seed %d: week 99 is said to be possible", seed)
		}
		best := math.Inf(-1)
		for k := range weeks {
			best = max(best, curve[k].Plan.Value)
		}
		meals := -1.0
		for k, w := range weeks {
			f := curve[k]
			done++
			v := Evaluate(p, &f.Plan)
			if !f.Possible || f.Plan.Pull[0] != w || len(v.Faults) > 0 || math.Abs(v.Value-f.Plan.Value) > agreed {
				t.Fatalf("seed %d week %d: possible %v, pulled %v, faults %v, %.12f against %.12f", seed, w, f.Possible, f.Plan.Pull, v.Faults, f.Plan.Value, v.Value)
			}
			if math.Abs(f.Worth-(f.Plan.Value-best)) > 1e-6 {
				t.Errorf("seed %d week %d: worth %.6f, plan %.6f of %.6f", seed, w, f.Worth, f.Plan.Value, best)
			}
			mean := 0.0
			for _, x := range f.PerFuture {
				mean += x / float64(p.Futures)
			}
			if p.WorstShare == 0 && math.Abs(mean-f.Worth) > 1e-6 {
				t.Errorf("seed %d week %d: worth %.6f, mean over the futures %.6f", seed, w, f.Worth, mean)
			}
			if f.Meals[0] < meals {
				t.Errorf("seed %d week %d: meals fall from %v to %v", seed, w, meals, f.Meals[0])
			}
			meals = f.Meals[0]
			want := Brute(forcedTo(p, 0, w)).Value
			if f.Plan.Value > want+1e-6 {
				t.Errorf("seed %d week %d: %.6f above the proven best %.6f", seed, w, f.Plan.Value, want)
			}
			if f.Plan.Value > want-1e-6 {
				equal++
			}
		}
	}
	t.Logf("%d of %d forced weeks equal the proven best", equal, done)
	if float64(equal) < least*float64(done) {
		t.Errorf("%d of %d forced weeks equal the proven best, want %.0f %%", equal, done, 100*least)
	}
}

// TestWithoutAndDelayReachBrute does the same with options forbidden.
func TestWithoutAndDelayReachBrute(t *testing.T) {
	const least = 0.95
	done, equal, costly := 0, 0, 0
	for seed := uint64(700); done < 120; seed++ {
		p := tiny(seed)
		p.Musts = nil
		if plans(p, 3000) > 3000 {
			continue
		}
		for i := range p.Options { // let IDs differ in the week alone
			o := &p.Options[i]
			o.ID = p.Spaces[o.Space].ID + "." + o.Crop + "." + string(rune('0'+o.Week))
		}
		plan := Search(context.Background(), p, Limits{Work: 20_000, Seed: seed})
		best := Brute(p).Value
		check := func(what string, f Forced, forbidden func(o *Option) bool) {
			q := *p
			q.Options = slices.Clone(p.Options)
			for i := range q.Options {
				if forbidden(&q.Options[i]) {
					q.Options[i].Max = 0
				}
			}
			v := Evaluate(&q, &f.Plan)
			if !f.Possible || len(v.Faults) > 0 || math.Abs(v.Value-f.Plan.Value) > agreed {
				t.Fatalf("seed %d %s: possible %v, faults %v", seed, what, f.Possible, v.Faults)
			}
			done++
			want := Brute(&q).Value
			if f.Worth > 0 || f.Plan.Value > want+1e-6 {
				t.Errorf("seed %d %s: worth %.6f, plan %.6f, best %.6f", seed, what, f.Worth, f.Plan.Value, want)
			}
			if math.Abs(f.Worth-(want-best)) < 1e-6 {
				equal++
			}
			if f.Worth < -1e-3 {
				costly++
			}
		}
		for k, pl := range plan.Plantings {
			o := &p.Options[pl.Option]
			check("without", Without(context.Background(), p, &plan, k, 4000), func(q *Option) bool {
				return q.Crop == o.Crop && q.Space == o.Space && q.Week <= o.End && q.End >= o.Week
			})
			check("delay", Delay(context.Background(), p, &plan, pl.Option, 1, 4000), func(q *Option) bool {
				return q.ID[:len(q.ID)-1] == o.ID[:len(o.ID)-1] && q.Week <= o.Week
			})
		}
	}
	t.Logf("%d of %d costs equal the proven ones; %d are above a thousandth of a meal", equal, done, costly)
	if float64(equal) < least*float64(done) || costly == 0 {
		t.Errorf("%d of %d costs equal the proven ones, %d above nothing", equal, done, costly)
	}
}

// TestStudyOnAGarden: on a garden's size the forced plans are valid, only the
// related spaces change, and the answer does not depend on luck in the order.
func TestStudyOnAGarden(t *testing.T) {
	p := plausible(1, 8, 10, 45, 5)
	plan := Search(context.Background(), p, Limits{Work: 300_000, Seed: 1})
	y := NewStudy(p, &plan)
	stay := 0
	curve := y.KeepCurve(context.Background(), stay, []int{0, 2, 4}, 20_000)
	again := y.KeepCurve(context.Background(), stay, []int{0, 2, 4}, 20_000)
	for k, f := range curve {
		if v := Evaluate(p, &f.Plan); len(v.Faults) > 0 || math.Abs(v.Value-f.Plan.Value) > agreed {
			t.Errorf("week %d: faults %v, %.12f against %.12f", f.Week, v.Faults, f.Plan.Value, v.Value)
		}
		if again[k].Worth != f.Worth {
			t.Errorf("week %d: worth %.9f, the second time %.9f", f.Week, f.Worth, again[k].Worth)
		}
		moved := map[int]bool{}
		for i := range p.Options {
			a := slices.ContainsFunc(plan.Plantings, func(pl Planting) bool { return pl.Option == i })
			b := slices.ContainsFunc(f.Plan.Plantings, func(pl Planting) bool { return pl.Option == i })
			if a != b {
				moved[p.Options[i].Space] = true
			}
		}
		if len(moved) > 1+relatives {
			t.Errorf("week %d: %d spaces changed, want at most %d", f.Week, len(moved), 1+relatives)
		}
		if f.Next >= 0 && (p.Options[f.Next].Space != p.Stays[stay].Space || p.Options[f.Next].Week <= f.Week || len(f.NextOK) != p.Futures) {
			t.Errorf("week %d: followed by %s", f.Week, p.Options[f.Next].ID)
		}
	}
}

// TestCostOfALock: Without a lock that costs says so with a worth above 0.
func TestCostOfALock(t *testing.T) {
	p := oneBed(3, 0)
	p.Options = []Option{crop("bean.0", 0, 2, 0.6, 2, 2), crop("leek.0", 0, 2, 0.6, 1)}
	p.Locks = []Planting{{1, 1}}
	plan := Search(context.Background(), p, Limits{Work: 5000})
	f := Without(context.Background(), p, &plan, 0, 1000)
	// Beans are worth 1.6 + 1.6, the locked leek 1.
	if !f.Possible || !near(f.Worth, 2.2) || !slices.Equal(f.Instead, []Planting{{0, 1}}) {
		t.Errorf("without the lock: %+v, want a gain of 2.2 and the beans", f)
	}
}
