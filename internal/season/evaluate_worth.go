package season

import "slices"

// priceLinear counts what goes by batch and plant.
func (e *evaluation) priceLinear() {
	parts := &e.v.Parts
	for _, pl := range e.plantings {
		o, n := &e.p.Options[pl.Option], float64(pl.Plants)
		parts.Batches += o.Fixed
		parts.Plants += n * o.Cost
		parts.Risk += o.risked(pl.Plants) * o.Risk
		parts.Bonus += n * o.Bonus
		parts.Tail += n * o.Tail
	}
	for i := range e.p.Stays {
		s := &e.p.Stays[i]
		if e.pull[i] == lastWeek(e.p, s) {
			parts.Tail += s.Tail
		} else {
			parts.PullCost += s.PullCost
		}
	}
}

// priceMinutes counts minutes by week and the cost of those over the wish.
func (e *evaluation) priceMinutes() {
	p := e.p
	e.v.Minutes = make([]float64, p.Weeks)
	for w := range p.Weeks {
		sum := 0.0
		for _, pl := range e.plantings {
			o := &p.Options[pl.Option]
			if w == o.Week {
				sum += o.BatchMinutes
			}
			sum += float64(pl.Plants) * once(o.Minutes, w-o.Week)
		}
		for i := range p.Stays {
			if w <= e.pull[i] {
				sum += once(p.Stays[i].Minutes, w)
			}
		}
		e.v.Minutes[w] = sum
		if w < len(p.Minutes) && sum > p.Minutes[w] {
			e.v.Parts.Over += p.OverCost * (sum - p.Minutes[w])
		}
	}
}

// priceWater counts litres a day in a dry week, by week, and the cost of those
// over the wish.
func (e *evaluation) priceWater() {
	p := e.p
	e.v.Water = make([]float64, p.Weeks)
	for w := range p.Weeks {
		sum := 0.0
		for _, pl := range e.plantings {
			if o := &p.Options[pl.Option]; w <= o.End {
				sum += float64(pl.Plants) * once(o.Water, w-o.Week)
			}
		}
		for i := range p.Stays {
			if w <= e.pull[i] {
				sum += once(p.Stays[i].Water, w)
			}
		}
		e.v.Water[w] = sum
		if w < len(p.Water) && sum > p.Water[w] {
			e.v.Parts.Thirst += p.WaterCost * (sum - p.Water[w])
		}
	}
}

// priceRotation charges each planting whose family left its batch of medium
// less than Interval whole weeks before: by the batch's history, a planting
// pulled, or another planting of the plan that ended. Those that stand at the
// same time are side by side, which is no return.
func (e *evaluation) priceRotation() {
	p := e.p
	for _, pl := range e.plantings {
		o := &p.Options[pl.Option]
		batch := p.Spaces[o.Space].Batch
		if batch < 0 || o.Family < 0 {
			continue
		}
		early := false
		left := func(week int) {
			if week < o.Week && o.Week-week-1 < o.Interval {
				early = true
			}
		}
		if week, ok := p.Batches[batch].Last[o.Family]; ok {
			left(week)
		}
		for _, other := range e.plantings {
			q := &p.Options[other.Option]
			if q.Family == o.Family && p.Spaces[q.Space].Batch == batch {
				left(q.End)
			}
		}
		for i := range p.Stays {
			s := &p.Stays[i]
			if s.Family == o.Family && p.Spaces[s.Space].Batch == batch {
				left(e.pull[i])
			}
		}
		if early {
			e.v.Parts.Rotation += o.risked(pl.Plants) * o.RotationCost
		}
	}
}

// priceClearing charges weeks in which more than ClearMax spaces are cleared.
// A space is cleared in a week when something stood there and all that stood
// has its last week then. Week -1 counts what is pulled before the plan
// begins; the last week, where the plan is cut off, does not count.
func (e *evaluation) priceClearing() {
	p := e.p
	if p.ClearMax <= 0 {
		return
	}
	for w := -1; w < p.Weeks-1; w++ {
		cleared := 0
		for si := range p.Spaces {
			standing, leaving := 0, 0
			for _, pl := range e.plantings {
				o := &p.Options[pl.Option]
				if o.Space == si && o.Week <= w && w <= o.End {
					standing++
					if o.End == w {
						leaving++
					}
				}
			}
			for i := range p.Stays {
				if p.Stays[i].Space == si && w <= e.pull[i] {
					standing++
					if e.pull[i] == w {
						leaving++
					}
				}
			}
			if standing > 0 && standing == leaving {
				cleared++
			}
		}
		if cleared > p.ClearMax {
			e.v.Parts.Clearing += p.RestCost * float64(cleared-p.ClearMax)
		}
	}
}

// priceFood eats what is picked, food by food and future by future, and sums
// the value up.
func (e *evaluation) priceFood() {
	p, v := e.p, e.v
	v.PerFuture = make([]float64, p.Futures)
	v.Table = make([][]WeekFood, len(p.Foods))
	for k := range p.Foods {
		food := &p.Foods[k]
		v.Table[k] = make([]WeekFood, p.Weeks)
		for w := range p.Weeks {
			v.Table[k][w] = WeekFood{
				Wanted: once(food.Want, w),
				Picked: make([]float64, p.Futures),
				Eaten:  make([]float64, p.Futures),
				Spoilt: make([]float64, p.Futures),
			}
		}
		for f := range p.Futures {
			e.pick(k, f)
			v.PerFuture[f] += e.eat(k, f)
		}
	}
	for f := range p.Futures {
		v.Parts.Food += v.PerFuture[f] / float64(p.Futures)
	}
	a := &v.Parts
	rest := a.Bonus + a.Tail - a.Batches - a.Plants - a.Risk - a.Over - a.Thirst - a.Rotation - a.Clearing - a.PullCost
	for f := range p.Futures {
		v.PerFuture[f] += rest
	}
	v.Value = a.Food + rest
	if p.WorstShare > 0 && p.Futures > 0 {
		a.Lean = p.WorstShare * (a.Food + rest - WorstMean(v.PerFuture))
		v.Value -= a.Lean
	}
}

// WorstMean is the mean of the worst quarter of some worths, of one at least; 0
// where there are none.
func WorstMean(perFuture []float64) float64 {
	if len(perFuture) == 0 {
		return 0
	}
	sorted := slices.Sorted(slices.Values(perFuture))
	n := max(len(sorted)/4, 1)
	sum := 0.0
	for _, x := range sorted[:n] {
		sum += x
	}
	return sum / float64(n)
}

// pick fills in the meals of food k that come in by week in future f.
func (e *evaluation) pick(k, f int) {
	p, table := e.p, e.v.Table[k]
	for _, pl := range e.plantings {
		o := &p.Options[pl.Option]
		if o.Food != k || f >= len(o.Meals) {
			continue
		}
		for i, meals := range o.Meals[f] {
			if w := o.MealsFrom + i; w >= 0 && w < p.Weeks {
				table[w].Picked[f] += float64(pl.Plants) * float64(meals)
			}
		}
	}
	for i := range p.Stays {
		s := &p.Stays[i]
		if s.Food != k || f >= len(s.Meals) {
			continue
		}
		for w, meals := range s.Meals[f] {
			if w <= e.pull[i] && w < p.Weeks {
				table[w].Picked[f] += float64(meals)
			}
		}
	}
}

// eat eats food k in future f week by week and gives its worth. Each week up
// to Want is eaten, oldest pick first; what would spoil this week is eaten too,
// up to twice Want; the rest of it spoils.
func (e *evaluation) eat(k, f int) float64 {
	p, table, food := e.p, e.v.Table[k], &e.p.Foods[k]
	left := make([]float64, p.Weeks) // of the pick of each week
	worth, now := 0.0, 1.0
	for w := range p.Weeks {
		left[w] = table[w].Picked[f]
		want := table[w].Wanted
		eaten := 0.0
		for from := max(0, w-food.Shelf); from <= w; from++ {
			bite := min(left[from], want-eaten)
			left[from] -= bite
			eaten += bite
		}
		if last := w - food.Shelf; last >= 0 {
			bite := min(left[last], 2*want-eaten)
			left[last] -= bite
			eaten += bite
			table[w].Spoilt[f] = left[last]
			left[last] = 0
		}
		table[w].Eaten[f] = eaten
		worth += now * worthOf(food, want, eaten)
		now /= 1 + p.Discount
	}
	return worth
}

// worthOf is the worth of eating so many meals of a food in a week that wants
// want: a concave line of four pieces.
func worthOf(food *Food, want, meals float64) float64 {
	first := min(meals, want/2)
	second := min(max(meals-want/2, 0), want/2)
	extra := min(max(meals-want, 0), want)
	return first*food.Worth + second*(food.Worth+food.Extra)/2 + extra*food.Extra
}
