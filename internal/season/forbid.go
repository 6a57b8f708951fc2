package season

import (
	"context"
	"slices"
	"strings"
)

// Delay says what it costs when a planting (or any option) cannot be started
// until so many weeks after its week: the same planting later, or what is best
// then.
func (y *Study) Delay(ctx context.Context, option, weeks, work int) Forced {
	if option < 0 || option >= len(y.m.opts) {
		return Forced{Next: -1}
	}
	o := &y.m.opts[option]
	key := sameButWeek(o.id)
	later := -1
	f := y.forbid(ctx, option, work, func(q *opt) bool {
		return q.space == o.space && q.week < o.week+weeks && sameButWeek(q.id) == key
	}, func(w *walk) {
		for _, j := range y.m.bySpace[o.space] {
			if q := &y.m.opts[j]; q.week == o.week+weeks && sameButWeek(q.id) == key {
				later = int(j)
			}
		}
		if later >= 0 && w.plants[later] == 0 {
			w.giveWay(later, y.m.opts[later].min)
			if n, _, ok := w.batch(later); ok {
				w.add(later, n)
			}
		}
	})
	f.Week = weeks
	return f
}

// sameButWeek is an option's ID less what follows its last dot.
func sameButWeek(id string) string {
	if at := strings.LastIndexByte(id, '.'); at >= 0 {
		return id[:at]
	}
	return id
}

// Without says what the plan would do, and lose, if it could not have one of
// its plantings: the crop is forbidden in that space while the planting would
// have stood. Of a locked planting it says what the lock costs: then Worth may
// be above 0. planting is an index in the plan.
func (y *Study) Without(ctx context.Context, planting, work int) Forced {
	if planting < 0 || planting >= len(y.plan.Plantings) {
		return Forced{Next: -1}
	}
	option := y.plan.Plantings[planting].Option
	o, crop := &y.m.opts[option], y.m.p.Options[option].Crop
	return y.forbid(ctx, option, work, func(q *opt) bool {
		return q.space == o.space && q.week <= o.end && q.end >= o.week && q.crop == crop
	}, func(*walk) {})
}

// forbid searches with some options forbidden and compares with a search of
// the same work without.
func (y *Study) forbid(ctx context.Context, option, work int, forbidden func(*opt) bool, begin func(*walk)) Forced {
	m := y.m
	if work <= 0 {
		work = studyWork
	}
	o := &m.opts[option]
	spaces := y.related(o.space, o.food)
	isLocked := slices.ContainsFunc(m.p.Locks, func(l Planting) bool { return l.Option == option })
	free := y.walkIn(spaces, -1, &y.base)
	free.perFuture(true)
	free.remember(&free.best)
	free.settleIn(ctx, work)

	walks := [2]*walk{}
	for k := range walks {
		w := y.walkIn(spaces, option, &free.best)
		for i := range m.opts {
			if q := &m.opts[i]; forbidden(q) {
				w.banned[i] = true
				if w.plants[i] > 0 {
					w.remove(i)
				}
			}
		}
		if k == 0 {
			begin(w)
		}
		w.settleIn(ctx, work)
		walks[k] = w
	}
	w := walks[0]
	if walks[1].value > w.value+dust {
		w = walks[1]
	}
	f := y.compare(w)
	if !f.Possible {
		return f
	}
	best, bestBy := free.value, free.byFuture()
	if w.value > best && !isLocked {
		best, bestBy = w.value, slices.Clone(f.PerFuture)
	}
	f.against(best, bestBy)
	had := map[int]bool{}
	for _, pl := range y.plan.Plantings {
		had[pl.Option] = true
	}
	for _, pl := range f.Plan.Plantings {
		if q := &m.opts[pl.Option]; q.space == o.space && q.week <= o.end && q.end >= o.week && !had[pl.Option] {
			f.Instead = append(f.Instead, pl)
		}
	}
	return f
}
