package season

import (
	"context"
	"slices"
)

// Decisions that can wait. A plan is one for all futures. What is due in its
// first weeks has to be; what comes later may be decided when more is known.
// Later asks what that could be worth: what is due soon is held, and for each
// future by itself the rest is searched again, knowing that future's harvests.
//
// Left out: nobody will know the whole weather after some weeks, so what is
// gained is more than a gardener can have. The search is short, so a future's
// best is seldom quite reached. How long a planting holds its ground goes with
// its start and is not decided anew.

// LaterLimits say what is held and how long is searched.
type LaterLimits struct {
	Weeks      int          // decisions due in so many weeks are held; 0 = four
	Begins     []int        // by option: week of its first act; nil = the week its pots or it take room
	Work       int          // of each search, plantings weighed; 0 = a middling amount
	Workers    int          // at once; 0 = 1. The answer does not depend on it
	ChangeCost float64      // meals a future must gain to give up a planting or pull week
	Prices     *Certificate // of Bound on the problem, to be guided by; nil = none
	Seed       uint64       // of the searches' luck
}

// Later is what the plan's decisions could become.
type Later struct {
	Weeks  int       // decisions due in so many weeks were held
	Fixed  []float64 // by future, worth of the plan as it is, meals
	Fitted []float64 // by future, the same with the later decisions fitted to it, never less
	Plans  []Plan    // by future, fitted
	Starts []LaterStart
	Pulls  []LaterPull // by stay
}

// LaterStart is what is started together: of one crop in one space and week,
// whatever its parts' ends.
type LaterStart struct {
	Plantings []int // indices in the plan
	Begins    int   // week of its first act
	Held      bool  // due soon, so judged with nothing held
	Still     int   // futures in which giving it up gains less than the change costs
	Instead   Instead
}

// LaterPull is a stay's pull week.
type LaterPull struct {
	Judged         bool // false: it is pulled soon, or can be pulled in one week only
	Still          int  // futures in which it is still pulled within laterSlip weeks of its week
	Earlier, After int  // the others
}

// Instead is what most often takes a start's ground in the futures that do
// without it.
type Instead struct {
	Crop    string // "" = a stay, or nothing
	Stay    int    // that stands on, -1 = none
	Futures int    // in which it does
}

// What Later takes where it is not told.
const (
	laterWeeks = 4
	laterWork  = 40_000
)

// laterSlip is how many weeks either way a start or a pull counts as the same.
const laterSlip = 2

// insteadLeast is the share of a start's ground and weeks that something must
// take to stand in its place.
const insteadLeast = 0.2

// LaterOf asks it of a plan. It is nil for what NewStudy refuses, for a plan
// that lacks a must, and when ctx ended before all was done.
func LaterOf(ctx context.Context, p *Problem, plan *Plan, lim LaterLimits) *Later {
	if !answerable(p, plan) || p.Futures == 0 {
		return nil
	}
	if lim.Weeks <= 0 {
		lim.Weeks = laterWeeks
	}
	if lim.Work <= 0 {
		lim.Work = laterWork
	}
	m := newModel(p, &Limits{Prior: plan, ChangeCost: lim.ChangeCost})
	m.setGuide(&Limits{Prior: plan, Prices: lim.Prices})
	s := newState(m)
	if s.load(&snapshot{plantings: plan.Plantings, pull: plan.Pull}); s.lacking() > 0 {
		return nil
	}
	a := &laterAsk{m: m, plan: plan, lim: lim}
	n := p.Futures
	out := &Later{Weeks: lim.Weeks, Fixed: make([]float64, n), Fitted: make([]float64, n), Plans: make([]Plan, n)}
	wanted, known := make([]Plan, n), make([]Plan, n)
	parallel(lim.Workers, n, func(f int) {
		if ctx.Err() != nil {
			return
		}
		h := a.knowing(f)
		wanted[f], out.Fixed[f] = h.fit(ctx, plan, lim.Weeks, true)
		out.Plans[f], _ = h.fit(ctx, &wanted[f], lim.Weeks, false)
		out.Fitted[f] = out.Plans[f].Value
		known[f], _ = h.fit(ctx, &wanted[f], -1, true)
	})
	if ctx.Err() != nil {
		return nil
	}
	a.judgeStarts(out, wanted, known)
	a.judgePulls(out, wanted)
	return out
}

// laterAsk is a plan being asked about.
type laterAsk struct {
	m    *model
	plan *Plan
	lim  LaterLimits
}

// begins is the week of an option's first act: its pots are sown, or it takes
// ground. Pots that stand before the plan begins are sown already.
func (a *laterAsk) begins(i int) int {
	if a.lim.Begins != nil {
		return a.lim.Begins[i]
	}
	if o := &a.m.p.Options[i]; o.ShelfFrom >= 0 && o.ShelfPlaces > 0 {
		return min(o.ShelfFrom, o.Week)
	}
	return a.m.p.Options[i].Week
}

// hindsight is one future's own model, and which options pay in it.
type hindsight struct {
	*laterAsk
	f    int
	own  *model
	dull []bool // by option: far from paying at the prices, or paying nothing with the locks alone
}

// knowing makes a future's model: its harvests stand for the mean.
func (a *laterAsk) knowing(f int) *hindsight {
	one, p := *a.m, *a.m.p
	p.Futures = 1
	one.p = &p
	one.opts, one.stays = slices.Clone(a.m.opts), slices.Clone(a.m.stays)
	rows := make([]harvest, 2*len(one.opts))
	for i := range one.opts {
		if o := &one.opts[i]; len(o.meals) > 0 {
			own := rows[2*i : 2*i+2]
			own[0], own[1] = o.meals[f+1], o.meals[f+1]
			o.meals = own
		}
	}
	for i := range one.stays {
		if s := &one.stays[i]; len(s.meals) > 0 {
			s.meals = [][]float32{s.meals[f+1], s.meals[f+1]}
		}
	}
	h := &hindsight{laterAsk: a, f: f, own: &one, dull: make([]bool, len(one.opts))}
	h.screen()
	return h
}

// screen finds the options worth looking at: those that the prices do not put
// far from paying, and that pay in this future in a garden with the locks
// alone, what stands pulled early, early return and clearing forgiven.
func (h *hindsight) screen() {
	m, s := h.own, newState(h.own)
	s.load(&snapshot{plantings: m.p.Locks, pull: h.plan.Pull})
	for i := range m.stays {
		s.setPull(i, m.stays[i].first)
	}
	for i := range m.opts {
		o := &m.opts[i]
		if h.dull[i] = o.min > o.max || m.guide != nil && m.guide.far[i]; h.dull[i] || s.plants[i] > 0 {
			continue
		}
		n, worth, ok := s.batch(i)
		worth += float64(o.risked(n)*o.returning) + m.p.RestCost
		h.dull[i] = !ok || worth <= 0
	}
}

// fit searches on from a plan, what is due before a week held as it is; -1 holds
// nothing but the locks. With keeping, what the plan asked about has is given up
// only for the change's cost. It gives the best plan and what the plan it began
// with is worth.
func (h *hindsight) fit(ctx context.Context, from *Plan, weeks int, keeping bool) (best Plan, began float64) {
	m := *h.own
	if !keeping {
		m.keep, m.keepAt, m.likePull = nil, nil, 0
	}
	m.stays = slices.Clone(m.stays)
	for i := range m.stays {
		m.stays[i].first = min(max(m.stays[i].first, weeks), m.stays[i].last) // a pull before is held anyway
	}
	w := newWalk(&m, h.lim.Seed, uint64(h.f))
	w.fixed = make([]bool, len(m.stays))
	for i, at := range from.Pull {
		w.fixed[i] = at < weeks
	}
	w.openUp(w.open)
	w.banned, w.dull = make([]bool, len(m.opts)), slices.Clone(h.dull)
	for i := range m.opts {
		if w.banned[i] = h.begins(i) < weeks; w.banned[i] {
			w.dull[i] = true
		} else if !w.dull[i] {
			w.forced = append(w.forced, int32(i))
		}
	}
	for _, pl := range from.Plantings {
		w.locked[pl.Option] = w.banned[pl.Option] || slices.Contains(m.p.Locks, pl)
	}
	w.load(&snapshot{plantings: from.Plantings, pull: from.Pull})
	began = w.worth()
	w.remember(&w.best)
	w.settle(ctx, h.lim.Work)
	best = w.plan()
	best.Status, best.Seed = Feasible, h.lim.Seed
	return best, began
}

// settle fills what is free, digs for so much work, and holds the best plan
// seen, which is never worse than the one it began with.
func (w *walk) settle(ctx context.Context, work int) {
	w.refill(w.open, taste{by: byRoot}, w.rng)
	w.tune(w.open)
	w.steps = w.steps[:0]
	if w.value > w.best.value+dust {
		w.remember(&w.best)
	} else {
		w.load(&w.best)
	}
	w.dig(ctx, w.spent()+work, func() {})
	w.load(&w.best)
}
