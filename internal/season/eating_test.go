package season

import (
	"cmp"
	"context"
	"math"
	"slices"
	"testing"
)

// slowBestEating is bestEating by sums made anew for every step.
func slowBestEating(p *Problem, k int, picked []float64) float64 {
	type slot struct {
		week        int
		most, worth float64
	}
	food := &p.Foods[k]
	var slots []slot
	now := 1.0
	for w := range picked {
		want := once(food.Want, w)
		slots = append(slots, slot{w, want / 2, now * food.Worth}, slot{w, want / 2, now * (food.Worth + food.Extra) / 2}, slot{w, want, now * food.Extra})
		now /= 1 + p.Discount
	}
	slices.SortStableFunc(slots, func(a, b slot) int { return cmp.Compare(b.worth, a.worth) })
	eaten := make([]float64, len(picked))
	total := 0.0
	for _, s := range slots {
		x := s.most
		for a := 0; a <= s.week; a++ {
			left := 0.0
			for i := max(0, a-food.Shelf); i < s.week; i++ {
				left += picked[i]
			}
			for i := a; i < s.week; i++ {
				left -= eaten[i]
			}
			for b := s.week; b < len(picked); b++ {
				left += picked[b] - eaten[b]
				x = min(x, left)
			}
		}
		if x > 0 {
			eaten[s.week] += x
			total += x * s.worth
		}
	}
	return total
}

// TestEatingRuleIsNearBest: the simple rule never does better than the best
// eating there is, and on plans of invented gardens reaches 95 % of it (measured 97.2 %).
func TestEatingRuleIsNearBest(t *testing.T) {
	const least = 0.95
	var rule, best float64
	see := func(p *Problem, plan *Plan) {
		v := Evaluate(p, plan)
		for k := range p.Foods {
			for f := range p.Futures {
				picked := make([]float64, p.Weeks)
				got, now := 0.0, 1.0
				for w, cell := range v.Table[k] {
					picked[w] = cell.Picked[f]
					got += now * worthOf(&p.Foods[k], cell.Wanted, cell.Eaten[f])
					now /= 1 + p.Discount
				}
				most := bestEating(p, k, picked)
				if slow := slowBestEating(p, k, picked); math.Abs(slow-most) > 1e-9 {
					t.Fatalf("food %d future %d: best eating %.9f, by plain sums %.9f", k, f, most, slow)
				}
				if got > most+1e-9 {
					t.Fatalf("food %d future %d: the rule gives %.9f, the best there is %.9f", k, f, got, most)
				}
				rule += got
				best += most
			}
		}
	}
	for seed := range uint64(60) {
		p := tiny(seed)
		plan := Search(context.Background(), p, Limits{Work: 3000, Seed: seed})
		see(p, &plan)
	}
	t.Logf("tiny gardens: %.4f of the best", rule/best)
	rule, best = 0, 0
	for seed := range uint64(4) {
		p := plausible(seed, 6, 12, 52, 4)
		plan := Search(context.Background(), p, Limits{Work: 200_000, Seed: seed})
		see(p, &plan)
	}
	t.Logf("gardens of six spaces: %.4f of the best", rule/best)
	if rule < least*best {
		t.Errorf("the rule reaches %.4f of the best eating, want at least %.2f", rule/best, least)
	}
}
