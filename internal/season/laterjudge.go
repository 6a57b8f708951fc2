package season

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
)

// together is what is started together: plantings of one crop in one space and
// week, begun in one week, whatever their ends.
type together struct {
	space, week, begins int
	crop                string
	plantings           []int // indices in the plan
}

// starts gathers a plan's plantings, by space, crop and week.
func (a *laterAsk) starts(plan *Plan) []together {
	var out []together
	at := map[string]int{}
	for k, pl := range plan.Plantings {
		o := &a.m.opts[pl.Option]
		begins := a.begins(pl.Option)
		key := fmt.Sprint(o.space, " ", o.week, " ", begins, " ", o.crop)
		i, ok := at[key]
		if !ok {
			i = len(out)
			at[key] = i
			out = append(out, together{space: o.space, week: o.week, begins: begins, crop: o.crop})
		}
		out[i].plantings = append(out[i].plantings, k)
	}
	return out
}

// stillIn pairs the starts of two plans, the nearest in time first, and says
// which of the first plan's the second has, within laterSlip weeks.
func stillIn(was, now []together) []bool {
	type pair struct{ a, b, off int }
	var pairs []pair
	for i, a := range was {
		for j, b := range now {
			if off := max(b.week-a.week, a.week-b.week); a.space == b.space && a.crop == b.crop && off <= laterSlip {
				pairs = append(pairs, pair{i, j, off})
			}
		}
	}
	slices.SortStableFunc(pairs, func(x, y pair) int { return cmp.Compare(x.off, y.off) })
	out, taken := make([]bool, len(was)), make([]bool, len(now))
	for _, x := range pairs {
		if !out[x.a] && !taken[x.b] {
			out[x.a], taken[x.b] = true, true
		}
	}
	return out
}

// judgeStarts counts the futures in which each start is still wanted: of what
// is held by the plans that knew all, of the rest by those that know after some
// weeks.
func (a *laterAsk) judgeStarts(out *Later, wanted, known []Plan) {
	was := a.starts(a.plan)
	tally := make([]map[Instead]int, len(was))
	for k, s := range was {
		out.Starts = append(out.Starts, LaterStart{Plantings: s.plantings, Begins: s.begins, Held: s.begins < out.Weeks})
		tally[k] = map[Instead]int{}
	}
	for f := range wanted {
		far, near := stillIn(was, a.starts(&wanted[f])), stillIn(was, a.starts(&known[f]))
		for k := range was {
			s, still, plan := &out.Starts[k], far[k], &wanted[f]
			if s.Held {
				still, plan = near[k], &known[f]
			}
			if still {
				s.Still++
			} else {
				tally[k][a.instead(was[k], plan)]++
			}
		}
	}
	for k := range was {
		out.Starts[k].Instead = most(tally[k])
	}
}

// most is what was counted most often, the first by name of equals.
func most(tally map[Instead]int) Instead {
	best := Instead{Stay: -1}
	for what, n := range tally {
		what.Futures = n
		if c := cmp.Or(cmp.Compare(n, best.Futures), cmp.Compare(best.Crop, what.Crop), cmp.Compare(best.Stay, what.Stay)); c > 0 {
			best = what
		}
	}
	return best
}

// instead is what takes most of the ground a start would have held, more than
// it takes by the plan.
func (a *laterAsk) instead(s together, now *Plan) Instead {
	from, to := s.week, s.week
	own := 0.0
	for _, k := range s.plantings {
		pl := a.plan.Plantings[k]
		to = max(to, a.m.opts[pl.Option].end)
		own += a.ground(pl, from, a.m.opts[pl.Option].end)
	}
	more := map[Instead]float64{}
	add := func(plan *Plan, sign float64) {
		for k, pl := range plan.Plantings {
			o := &a.m.opts[pl.Option]
			if o.space == s.space && !(sign < 0 && slices.Contains(s.plantings, k)) {
				more[Instead{Crop: o.crop, Stay: -1}] += sign * a.ground(pl, from, to)
			}
		}
		for i, at := range plan.Pull {
			st := &a.m.stays[i]
			for w := from; w <= min(at, to) && st.space == s.space; w++ {
				more[Instead{Stay: i}] += sign * st.foot[w]
			}
		}
	}
	add(now, 1)
	add(a.plan, -1)
	names := slices.SortedFunc(maps.Keys(more), func(x, y Instead) int { return cmp.Or(cmp.Compare(x.Crop, y.Crop), cmp.Compare(x.Stay, y.Stay)) })
	best, top := Instead{Stay: -1}, insteadLeast*own
	for _, what := range names {
		if more[what] > top {
			best, top = what, more[what]
		}
	}
	return best
}

// ground is the ground a planting takes between two weeks, m2 times weeks.
func (a *laterAsk) ground(pl Planting, from, to int) float64 {
	o, sum := &a.m.opts[pl.Option], 0.0
	for k, x := range o.foot {
		if w := o.week + k; w >= from && w <= to {
			sum += x * float64(pl.Plants)
		}
	}
	return sum
}

// judgePulls counts the futures in which each stay is pulled when the plan says.
func (a *laterAsk) judgePulls(out *Later, wanted []Plan) {
	out.Pulls = make([]LaterPull, len(a.plan.Pull))
	for i, at := range a.plan.Pull {
		st, x := &a.m.stays[i], &out.Pulls[i]
		if x.Judged = at >= out.Weeks && max(st.first, out.Weeks) < st.last; !x.Judged {
			continue
		}
		for f := range wanted {
			switch off := wanted[f].Pull[i] - at; {
			case off < -laterSlip:
				x.Earlier++
			case off > laterSlip:
				x.After++
			default:
				x.Still++
			}
		}
	}
}
