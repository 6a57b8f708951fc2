package season

import (
	"context"
	"testing"
)

// plans counts the plans Brute would try, up to a most.
func plans(p *Problem, most int) int {
	n := 1
	for i := range p.Stays {
		n *= lastWeek(p, &p.Stays[i]) - firstPull(p, &p.Stays[i]) + 1
	}
	for i := range p.Options {
		n *= 1 + max(p.Options[i].Max-max(p.Options[i].Min, 1)+1, 0)
		if n > most {
			return most + 1
		}
	}
	return n
}

// TestSearchReachesBrute wants the proven best on at least 95 of 100 random
// tiny problems, never more than it, and the same word on musts.
func TestSearchReachesBrute(t *testing.T) {
	const gardens, least = 250, 0.95
	const same = 1e-6 // meals; the search leaves gains below its dust alone
	done, equal, greedy, plantings := 0, 0, 0, 0
	for seed := uint64(0); done < gardens; seed++ {
		p := tiny(seed)
		if plans(p, 6000) > 6000 {
			continue
		}
		done++
		best := Brute(p)
		plantings += len(best.Plantings)
		if first := Search(context.Background(), p, Limits{Work: 1, Seed: seed}); first.Value >= best.Value-same {
			greedy++
		}
		got := Search(context.Background(), p, Limits{Work: 40000, Seed: seed})
		switch {
		case best.Status == Infeasible && got.Status != Infeasible:
			t.Errorf("seed %d: search says %v, no plan meets the musts", seed, got.Status)
		case best.Status == Infeasible:
			equal++
		case got.Status == Infeasible:
			t.Logf("seed %d: search found no plan that meets the musts, brute force did: %v", seed, got.Conflict)
		case got.Value > best.Value+same:
			t.Errorf("seed %d: search %.9f above the proven best %.9f", seed, got.Value, best.Value)
		case got.Value >= best.Value-same:
			equal++
		default:
			t.Logf("seed %d: search %.6f, best %.6f", seed, got.Value, best.Value)
		}
	}
	t.Logf("%d of %d equal the proven best (the greedy start alone %d); the best have %d plantings in all", equal, done, greedy, plantings)
	if greedy == done || plantings < done {
		t.Errorf("the gardens are too easy to try the search")
	}
	if float64(equal) < least*float64(done) {
		t.Errorf("%d of %d equal the proven best, want %.0f %%", equal, done, 100*least)
	}
}
