package season

import "context"

// With says what a plan becomes when an option it does not have is put in:
// what stands in the way is given up, and the space and a few related ones are
// searched again, the rest held. Worth is against a search of the same work
// without the force; it may be a hair above 0 where the force helps the search
// along. Possible is false when not even the least batch finds room. free is
// the plan of that other search, so that both can be priced food by food.
func (y *Study) With(ctx context.Context, option, work int) (f Forced, free Plan) {
	if option < 0 || option >= len(y.m.opts) {
		return Forced{Next: -1}, Plan{}
	}
	if work <= 0 {
		work = studyWork
	}
	o := &y.m.opts[option]
	spaces := y.related(o.space, o.food)
	base := y.walkIn(spaces, -1, &y.base)
	base.perFuture(true)
	base.remember(&base.best)
	base.settleIn(ctx, work)
	free = base.plan()

	var w *walk
	for _, room := range []int{o.max, o.min} {
		x := y.walkIn(spaces, -1, &base.best)
		if !x.putIn(option, room) {
			continue
		}
		x.settleIn(ctx, work)
		if w == nil || x.value > w.value+dust {
			w = x
		}
	}
	if w == nil {
		return Forced{Next: -1}, free
	}
	if f = y.compare(w); f.Possible {
		f.against(base.value, base.byFuture())
	}
	return f, free
}

// putIn puts an option in for good, making room for so many plants first;
// false when there is none for the least batch. Of the plants that fit, as
// many go in as do best.
func (w *walk) putIn(option, room int) bool {
	w.perFuture(true)
	if w.plants[option] == 0 {
		w.giveWay(option, room)
		n, _, ok := w.batch(option)
		if !ok {
			return false
		}
		w.add(option, n)
	}
	w.locked[option] = true
	w.best = snapshot{}
	return true
}
