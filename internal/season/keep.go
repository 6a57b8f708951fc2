package season

import (
	"cmp"
	"context"
	"slices"
)

// KeepCurve forces each of the pull weeks on a stay, searches again for so
// much work each (0 = a middling amount), and says what each is worth against
// the best of them, what is picked until then, and what follows.
func (y *Study) KeepCurve(ctx context.Context, stay int, weeks []int, work int) []Forced {
	m := y.m
	if work <= 0 {
		work = studyWork
	}
	if stay < 0 || stay >= len(m.stays) {
		return nil
	}
	st := &m.stays[stay]
	spaces := y.related(st.space, st.food)
	free := y.walkIn(spaces, -1, &y.base)
	free.perFuture(true)
	free.remember(&free.best)
	free.settleIn(ctx, 2*work)
	out := make([]Forced, len(weeks))
	walks := make([]*walk, len(weeks))
	parallel(y.Workers, len(weeks), func(i int) {
		out[i] = Forced{Week: weeks[i], Next: -1}
		w := y.walkIn(spaces, -1, &free.best)
		if !w.forcePull(stay, weeks[i]) {
			return
		}
		w.settleIn(ctx, work)
		walks[i] = w
	})
	// A neighbour's plan may do better with only the week changed.
	order := make([]int, len(weeks))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(weeks[a], weeks[b]) })
	borrow := func(from, to int) {
		if from, to := walks[from], walks[to]; from != nil && to != nil {
			to.borrow(&from.best, stay)
		}
	}
	for k := 1; k < len(order); k++ {
		borrow(order[k-1], order[k])
	}
	for k := len(order) - 1; k > 0; k-- {
		borrow(order[k], order[k-1])
	}
	top := -1
	for i, w := range walks {
		if w == nil {
			continue
		}
		f := y.compare(w)
		if !f.Possible {
			continue
		}
		f.Week, f.Meals = weeks[i], y.mealsTo(st, weeks[i])
		f.Next, f.NextOK = y.next(w, st, weeks[i])
		out[i] = f
		if top < 0 || f.Worth > out[top].Worth+dust {
			top = i
		}
	}
	if top >= 0 {
		best, bestBy := out[top].Worth, slices.Clone(out[top].PerFuture)
		for i := range out {
			if out[i].Possible {
				out[i].against(best, bestBy)
				out[i].Worth = min(out[i].Worth, 0)
			}
		}
	}
	return out
}

// forcePull sets and fixes a pull week; false when it cannot be.
func (w *walk) forcePull(stay, to int) bool {
	st := &w.m.stays[stay]
	if to < st.first || to > st.last {
		return false
	}
	w.makeWay(stay, to)
	if to > w.pull[stay] && !w.pullRoom(stay, to) {
		return false
	}
	w.setPull(stay, to)
	w.fixed[stay] = true
	w.stays = slices.DeleteFunc(w.stays, func(i int32) bool { return int(i) == stay })
	return true
}

// borrow takes another week's plan if it is better with this week's pull.
func (w *walk) borrow(other *snapshot, stay int) {
	to, mine := w.pull[stay], w.best
	w.best = snapshot{}
	mine.plantings = slices.Clone(mine.plantings)
	w.load(other)
	w.makeWay(stay, to)
	if to > w.pull[stay] && !w.pullRoom(stay, to) {
		w.best = mine
		w.load(&mine)
		return
	}
	w.setPull(stay, to)
	w.refill(w.open, taste{by: byRoot}, w.rng)
	w.tune(w.open)
	w.steps = w.steps[:0]
	w.remember(&w.best)
	if w.best.value <= mine.value+dust {
		w.best = mine
	}
	w.load(&w.best)
}

// mealsTo is what a stay gives to the end of a week, by future.
func (y *Study) mealsTo(st *stay, week int) []float64 {
	out := make([]float64, y.m.p.Futures)
	if st.food < 0 {
		return out
	}
	for f := range out {
		for _, x := range st.meals[f+1][:week+1] {
			out[f] += float64(x)
		}
	}
	return out
}

// next is what first takes the stay's space after its pull week: the earliest,
// of equals the one that takes most ground.
func (y *Study) next(w *walk, st *stay, week int) (int, []bool) {
	at := -1
	ground := func(i int) float64 { return y.m.opts[i].ground * float64(w.plants[i]) }
	for _, j := range w.in[st.space] {
		i := int(j)
		o := &y.m.opts[i]
		if o.week <= week {
			continue
		}
		if at < 0 || o.week < y.m.opts[at].week || (o.week == y.m.opts[at].week && ground(i) > ground(at)) {
			at = i
		}
	}
	if at < 0 {
		return -1, nil
	}
	return at, y.m.p.Options[at].OK
}
