package season

import (
	"cmp"
	"slices"
)

// Expect prices a plan by the expected-yield model: the mean harvest, eaten as
// well as could be, less the very costs that Evaluate finds. It is never below
// Evaluate's value, nor than the mean over the futures where the worst have a share. Zero for a problem that Check refuses.
func Expect(p *Problem, plan *Plan) float64 {
	v := Evaluate(p, plan)
	if v.Table == nil {
		return 0
	}
	return v.Value + v.Parts.Lean - v.Parts.Food + meanEaten(p, &v)
}

// meanEaten is the worth of the mean harvest of an evaluated plan, eaten as
// well as could be.
func meanEaten(p *Problem, v *Verdict) float64 {
	sum := 0.0
	for k := range p.Foods {
		picked := make([]float64, p.Weeks)
		for w, cell := range v.Table[k] {
			for _, x := range cell.Picked {
				picked[w] += x / float64(p.Futures)
			}
		}
		sum += bestEating(p, k, picked)
	}
	return sum
}

// bestEating is the most a food's picks can be worth with foresight. What can
// be eaten by week is a polymatroid (weeks a to b can eat only what was picked
// from a-shelf to b), so filling steps of falling worth, each as far as those
// before leave room, is exact.
func bestEating(p *Problem, k int, picked []float64) float64 {
	type slot struct {
		week        int
		most, worth float64
	}
	food, weeks := &p.Foods[k], len(picked)
	var slots []slot
	now := 1.0
	for w := range picked {
		want := once(food.Want, w)
		slots = append(slots, slot{w, want / 2, now * food.Worth}, slot{w, want / 2, now * (food.Worth + food.Extra) / 2}, slot{w, want, now * food.Extra})
		now /= 1 + p.Discount
	}
	slices.SortStableFunc(slots, func(a, b slot) int { return cmp.Compare(b.worth, a.worth) })
	// over[b] is what was picked to week b less what is eaten to then; due[a]
	// what was picked before week a-shelf less what is eaten before week a.
	// Eating is possible while due[a] <= over[b] for all a <= b.
	over, due := make([]float64, weeks), make([]float64, weeks)
	sum := 0.0
	for w, x := range picked {
		sum += x
		over[w] = sum
		if a := w + food.Shelf + 1; a < weeks {
			due[a] = sum
		}
	}
	total := 0.0
	for _, s := range slots {
		x := over[s.week]
		for _, left := range over[s.week:] {
			x = min(x, left)
		}
		most := due[0]
		for _, gone := range due[:s.week+1] {
			most = max(most, gone)
		}
		if x = min(x-most, s.most); x <= 0 {
			continue
		}
		total += x * s.worth
		for b := s.week; b < weeks; b++ {
			over[b] -= x
		}
		for a := s.week + 1; a < weeks; a++ {
			due[a] -= x
		}
	}
	return total
}
