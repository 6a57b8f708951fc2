package season

import (
	"context"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"
)

// TestMoreNeverMakesTheBestWorse: on proven best plans, more room, more wished
// minutes, more seed and more water never make the plan worth less.
func TestMoreNeverMakesTheBestWorse(t *testing.T) {
	done, better := 0, [4]int{}
	for seed := uint64(1000); done < 60; seed++ {
		p := tiny(seed)
		if plans(p, 1500) > 1500 {
			continue
		}
		done++
		best := Brute(p)
		for k, more := range [4]func(q *Problem){
			func(q *Problem) {
				q.Spaces = slices.Clone(q.Spaces)
				for i := range q.Spaces {
					q.Spaces[i].AreaM2 *= 1.5
					q.Spaces[i].VolumeL *= 1.5
					q.Spaces[i].TallM2 *= 1.5
					q.Spaces[i].SupportM *= 1.5
				}
				q.Shelf = slices.Clone(q.Shelf)
				for i := range q.Shelf {
					q.Shelf[i] += 2
				}
			},
			func(q *Problem) {
				q.Minutes = slices.Clone(q.Minutes)
				for w := range q.Minutes {
					q.Minutes[w] += 10
				}
			},
			func(q *Problem) {
				if q.Totals != nil {
					q.Totals = map[string]int{"g": q.Totals["g"] + 2}
				}
			},
			func(q *Problem) {
				q.Water = slices.Clone(q.Water)
				for w := range q.Water {
					q.Water[w] += 1
				}
			},
		} {
			q := *p
			more(&q)
			then := Brute(&q)
			if best.Status == Proven && (then.Status != Proven || then.Value < best.Value-agreed) {
				t.Errorf("seed %d, more of kind %d: best was %.6f, now %.6f (%v)", seed, k, best.Value, then.Value, then.Status)
			}
			if then.Value > best.Value+1e-6 {
				better[k]++
			}
		}
	}
	// The property would be empty if more never made a difference.
	t.Logf("of %d gardens more room helped %d, more minutes %d, more seed %d, more water %d", done, better[0], better[1], better[2], better[3])
	for k, n := range better {
		if n == 0 {
			t.Errorf("more of kind %d never changed the best plan: the test tests nothing", k)
		}
	}
}

// TestSameWithAnyWorkers: problem, seed and work decide the plan; workers,
// and the order in which the options are listed, do not.
func TestSameWithAnyWorkers(t *testing.T) {
	p := plausible(4, 5, 8, 40, 4)
	lim := Limits{Work: 60_000, Seed: 3, Workers: 1}
	want := Search(context.Background(), p, lim)
	for _, n := range []int{2, 3, 8} {
		lim.Workers = n
		if got := Search(context.Background(), p, lim); !reflect.DeepEqual(got, want) {
			t.Errorf("%d workers: value %.9f work %d, one worker %.9f work %d", n, got.Value, got.Work, want.Value, want.Work)
		}
	}
	lim.Seed = 4
	if got := Search(context.Background(), p, lim); reflect.DeepEqual(got.Plantings, want.Plantings) {
		t.Errorf("another seed gave the very same plan: the seed is not used")
	}
	lim.Seed = 3
	q := *p
	q.Options = slices.Clone(p.Options)
	slices.Reverse(q.Options)
	got := Search(context.Background(), &q, lim)
	names := func(p *Problem, plan Plan) []string {
		var ids []string
		for _, pl := range plan.Plantings {
			ids = append(ids, p.Options[pl.Option].ID)
		}
		slices.Sort(ids)
		return ids
	}
	if !slices.Equal(names(p, want), names(&q, got)) {
		t.Errorf("the order of the options changed the plan: %.6f, was %.6f", got.Value, want.Value)
	}
}

// TestPricesAgreeAlongTheWay: after each of many rounds, in both ways of
// pricing, the running value equals one made anew, and undoing restores it.
func TestPricesAgreeAlongTheWay(t *testing.T) {
	for seed := range uint64(60) {
		p := tiny(seed)
		if seed%2 == 1 { // one family in one batch, so that all follow one another
			for i := range p.Spaces {
				p.Spaces[i].Batch = 0
			}
			for i := range p.Options {
				p.Options[i].Family, p.Options[i].Interval = 1, 1+int(seed)%4
			}
			for i := range p.Stays {
				p.Stays[i].Family = 1
			}
		}
		m := newModel(p, nil)
		w := newWalk(m, seed, 0)
		w.screen()
		w.remember(&w.best)
		for n := range 120 {
			if n == 60 {
				w.perFuture(true)
				w.remember(&w.best)
			}
			w.round(math.Inf(-1))
			if n%3 == 0 {
				w.round(math.Inf(1)) // always undone
			}
			got := w.value
			w.reprice()
			if math.Abs(got-w.value) > agreed {
				t.Fatalf("seed %d round %d: running value %.12f, made anew %.12f", seed, n, got, w.value)
			}
			if w.futures {
				plan := w.plan()
				v := Evaluate(p, &plan)
				if math.Abs(v.Value-plan.Value) > agreed {
					t.Fatalf("seed %d round %d: search %.12f, evaluator %.12f", seed, n, plan.Value, v.Value)
				}
				for _, f := range v.Faults {
					if !strings.HasPrefix(f, "must") {
						t.Fatalf("seed %d round %d: %s", seed, n, f)
					}
				}
			}
		}
	}
}

func TestMustsThatCompete(t *testing.T) {
	p := oneBed(3, 0)
	p.Options = []Option{crop("bean.0", 0, 2, 0.6, 2, 2), crop("leek.0", 0, 2, 0.6, 1)}
	p.Options[0].Crop, p.Options[1].Crop = "bean", "leek"
	p.Musts = []Must{{Crop: "bean", Space: -1, Plants: 1}, {Crop: "leek", Space: -1, Plants: 1}}
	plan := Search(context.Background(), p, Limits{Work: 5000})
	words := strings.Join(plan.Conflict, "; ")
	if plan.Status != Infeasible || !strings.Contains(words, "these compete: bean and leek") || !strings.Contains(words, "cheapest to give up: leek") {
		t.Errorf("%v: %q, want infeasible, bean and leek compete, leek cheapest", plan.Status, words)
	}
	if best := Brute(p); best.Status != Infeasible {
		t.Errorf("brute force says %v", best.Status)
	}
	p.Musts = []Must{{Crop: "plum", Space: 0, Plants: 1}}
	plan = Search(context.Background(), p, Limits{Work: 5000})
	if words = strings.Join(plan.Conflict, "; "); plan.Status != Infeasible || !strings.Contains(words, "nothing can be started that would give 1 plants of plum in bed") {
		t.Errorf("%v: %q", plan.Status, words)
	}
	// A must that costs is met all the same.
	p.Musts = []Must{{Crop: "leek", Space: -1, Plants: 1}}
	plan = Search(context.Background(), p, Limits{Work: 5000})
	if plan.Status != Feasible || len(plan.Plantings) != 1 || plan.Plantings[0].Option != 1 {
		t.Errorf("must leek: %v %v", plan.Status, plan.Plantings)
	}
}

func TestLocksAreKept(t *testing.T) {
	p := plausible(2, 4, 8, 40, 4)
	free := Search(context.Background(), p, Limits{Work: 40_000, Seed: 1})
	chosen := map[int]bool{}
	for _, pl := range free.Plantings {
		chosen[pl.Option] = true
	}
	tried := 0
	for i := 0; i < len(p.Options) && tried < 8; i += 37 {
		if chosen[i] {
			continue
		}
		tried++
		q := *p
		q.Locks = []Planting{{i, p.Options[i].Min}}
		plan := Search(context.Background(), &q, Limits{Work: 40_000, Seed: 1})
		v := Evaluate(&q, &plan)
		if plan.Status != Feasible || len(v.Faults) > 0 || !slices.Contains(plan.Plantings, q.Locks[0]) {
			t.Errorf("lock %s: %v, conflict %v, faults %v", p.Options[i].ID, plan.Status, plan.Conflict, v.Faults)
		}
		if math.Abs(v.Value-plan.Value) > agreed {
			t.Errorf("lock %s: search %.12f, evaluator %.12f", p.Options[i].ID, plan.Value, v.Value)
		}
	}
	p.Locks = []Planting{{0, p.Options[0].Max + 1}}
	if plan := Search(context.Background(), p, Limits{Work: 2000}); plan.Status != Infeasible || len(plan.Conflict) != 1 {
		t.Errorf("a lock above the largest batch: %v %v", plan.Status, plan.Conflict)
	}
}

func TestPriorIsKeptUnlessAChangePays(t *testing.T) {
	p := plausible(6, 4, 8, 40, 4)
	prior := Search(context.Background(), p, Limits{Work: 20_000, Seed: 1})
	shared := func(plan Plan) int {
		n := 0
		for _, pl := range plan.Plantings {
			if slices.ContainsFunc(prior.Plantings, func(q Planting) bool { return q.Option == pl.Option }) {
				n++
			}
		}
		return n
	}
	free := Search(context.Background(), p, Limits{Work: 200_000, Seed: 9})
	kept := Search(context.Background(), p, Limits{Work: 200_000, Seed: 9, Prior: &prior, ChangeCost: 0.5})
	t.Logf("of %d plantings a free search shares %d, one with the prior %d", len(prior.Plantings), shared(free), shared(kept))
	if shared(kept) <= shared(free) || 3*shared(kept) < 2*len(prior.Plantings) {
		t.Errorf("%d of %d plantings kept, %d by a free search", shared(kept), len(prior.Plantings), shared(free))
	}
	if v := Evaluate(p, &kept); math.Abs(v.Value-kept.Value) > agreed || len(v.Faults) > 0 {
		t.Errorf("value %.12f, evaluator %.12f, faults %v", kept.Value, v.Value, v.Faults)
	}
	if kept.Value < prior.Value-agreed {
		t.Errorf("the new plan is worth %.6f, the prior %.6f", kept.Value, prior.Value)
	}
}

func TestCancelled(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	p := plausible(3, 4, 6, 40, 3)
	plan := Search(ctx, p, Limits{})
	v := Evaluate(p, &plan)
	if plan.Status != Interrupted || len(v.Faults) > 0 || len(plan.Plantings) == 0 {
		t.Errorf("%v with %d plantings, faults %v; want the first plan, interrupted", plan.Status, len(plan.Plantings), v.Faults)
	}
}
