package season

import (
	"context"
	"slices"
)

// Besides says what the plan would do, and lose, if a planting could not be
// had and neither could these crops: they are forbidden in its space while it
// would have stood. So the second best, and the third, come to light. planting
// is an index in the plan.
func (y *Study) Besides(ctx context.Context, planting int, crops []string, work int) Forced {
	if planting < 0 || planting >= len(y.plan.Plantings) {
		return Forced{Next: -1}
	}
	option := y.plan.Plantings[planting].Option
	o := &y.m.opts[option]
	return y.forbid(ctx, option, work, func(q *opt) bool {
		return q.space == o.space && q.week <= o.end && q.end >= o.week && slices.Contains(crops, q.crop)
	}, func(*walk) {})
}

// Around are a space and those that have most to do with it, by the plan: the
// same medium, the same foods.
func (y *Study) Around(space int) []int {
	var out []int
	if space < 0 || space >= len(y.m.p.Spaces) {
		return out
	}
	for _, sp := range y.related(space, -1) {
		out = append(out, int(sp))
	}
	return out
}

// SettleIn searches on in some spaces, with the rest of the plan held, and
// returns the plan: never worse than the one asked about, unless that one
// breaks a limit.
func (y *Study) SettleIn(ctx context.Context, spaces []int, work int) Plan {
	if work <= 0 {
		work = studyWork
	}
	var in []int32
	for _, sp := range spaces {
		if sp >= 0 && sp < len(y.m.p.Spaces) {
			in = append(in, int32(sp))
		}
	}
	w := y.walkIn(in, -1, &y.base)
	w.perFuture(true)
	for _, l := range y.m.p.Locks {
		if w.plants[l.Option] == 0 && w.isOpen[y.m.opts[l.Option].space] && w.room(l.Option) >= l.Plants {
			w.add(l.Option, l.Plants)
			w.locked[l.Option] = true
		}
	}
	w.remember(&w.best)
	w.settleIn(ctx, work)
	out := w.plan()
	out.Seed, out.Nothing, out.Status = y.plan.Seed, y.plan.Nothing, Feasible
	if words := w.lackWords(); len(words) > 0 {
		out.Status, out.Conflict = Infeasible, words
	}
	return out
}
