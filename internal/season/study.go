package season

import (
	"cmp"
	"context"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
)

// Study asks a finished plan "what if": it forces one choice, searches again
// in that space and a few related ones with the rest of the plan held, and
// compares. Its methods may be called at the same time. Results do not depend
// on the number of processors.
type Study struct {
	m      *model
	plan   Plan
	dull   []bool
	forced []int32
	base   snapshot
	lacks  int // plants the plan's musts lack
}

// Forced is what a plan becomes when one choice is forced.
type Forced struct {
	Week      int        // pull week, or weeks of delay
	Possible  bool       // false: the choice breaks a limit or a lock; the rest is empty
	Plan      Plan       // the whole plan under the force
	Worth     float64    // of the plan against the best choice, meals, 0 or less
	PerFuture []float64  // the same by future, of either sign
	Meals     []float64  // KeepCurve: by future, meals picked from the stay to its pull week
	Next      int        // KeepCurve: option that follows in the stay's space, -1 = none
	NextOK    []bool     // by future, whether what follows makes it; nil = none or not known
	Instead   []Planting // Delay, Without: what takes the ground that was not there before
}

// studyWork is the work of one forced search that is given none.
const studyWork = 400_000

// relatives is how many spaces besides its own a forced search may change.
const relatives = 3

// NewStudy makes a plan ready for questions. It is nil for a problem that
// Check refuses or a plan whose indices are out of range.
func NewStudy(p *Problem, plan *Plan) *Study {
	if len(Check(p)) > 0 || len(plan.Pull) != len(p.Stays) {
		return nil
	}
	for _, pl := range plan.Plantings {
		if pl.Option < 0 || pl.Option >= len(p.Options) || pl.Plants < 1 {
			return nil
		}
	}
	for i, at := range plan.Pull {
		if at < firstPull(p, &p.Stays[i]) || at > lastWeek(p, &p.Stays[i]) {
			return nil
		}
	}
	y := &Study{m: newModel(p, nil), plan: *plan}
	w := newWalk(y.m, 0, 0)
	w.screen()
	y.dull, y.forced = w.dull, w.forced
	y.base = snapshot{plantings: plan.Plantings, pull: plan.Pull}
	w.load(&y.base)
	y.lacks = w.lacking()
	return y
}

// KeepCurve forces each of the pull weeks on a stay; see Study.KeepCurve.
func KeepCurve(ctx context.Context, p *Problem, plan *Plan, stay int, weeks []int, work int) []Forced {
	y := NewStudy(p, plan)
	if y == nil {
		return nil
	}
	return y.KeepCurve(ctx, stay, weeks, work)
}

// Delay forces a planting later; see Study.Delay.
func Delay(ctx context.Context, p *Problem, plan *Plan, option, weeks, work int) Forced {
	y := NewStudy(p, plan)
	if y == nil {
		return Forced{}
	}
	return y.Delay(ctx, option, weeks, work)
}

// Without forbids a planting; see Study.Without.
func Without(ctx context.Context, p *Problem, plan *Plan, planting, work int) Forced {
	y := NewStudy(p, plan)
	if y == nil {
		return Forced{}
	}
	return y.Without(ctx, planting, work)
}

// walkIn makes a walk that holds a plan and may change the given spaces.
func (y *Study) walkIn(spaces []int32, unlock int, base *snapshot) *walk {
	m := y.m
	w := &walk{state: newState(m), rng: rand.New(rand.NewPCG(y.plan.Seed, 1<<32))}
	w.mark = make([]bool, len(m.bySpace))
	w.isOpen = make([]bool, len(m.bySpace))
	w.fixed = make([]bool, len(m.stays))
	w.banned = make([]bool, len(m.opts))
	w.dull = y.dull
	w.openUp(spaces)
	for _, i := range y.forced {
		if w.isOpen[m.opts[i].space] {
			w.forced = append(w.forced, i)
		}
	}
	w.load(base)
	for _, l := range m.p.Locks {
		if w.plants[l.Option] > 0 && l.Option != unlock {
			w.locked[l.Option] = true
		}
	}
	return w
}

// related are a space and those that have most to do with what stands and is
// planned there: the same medium, the same foods.
func (y *Study) related(space int, also int) []int32 {
	m := y.m
	foods := map[int]bool{also: true}
	for _, pl := range y.plan.Plantings {
		if o := &m.opts[pl.Option]; o.space == space {
			foods[o.food] = true
		}
	}
	tie := make([]float64, len(m.bySpace))
	for _, pl := range y.plan.Plantings {
		if o := &m.opts[pl.Option]; foods[o.food] {
			tie[o.space] += o.ground * float64(pl.Plants)
		}
	}
	for sp := range tie {
		if b := m.p.Spaces[sp].Batch; b >= 0 && b == m.p.Spaces[space].Batch {
			tie[sp] += 1000
		}
	}
	var others []int32
	for sp := range tie {
		if sp != space {
			others = append(others, int32(sp))
		}
	}
	slices.SortStableFunc(others, func(a, b int32) int {
		return cmp.Or(cmp.Compare(tie[b], tie[a]), strings.Compare(m.p.Spaces[a].ID, m.p.Spaces[b].ID))
	})
	return append([]int32{int32(space)}, others[:min(relatives, len(others))]...)
}

// settleIn refills what was opened and digs for so much work, on the mean over
// the futures. It leaves the best plan in w.best.
func (w *walk) settleIn(ctx context.Context, work int) {
	w.perFuture(true)
	w.refill(w.open, taste{byGround: 1}, w.rng)
	w.tune(w.open)
	w.steps = w.steps[:0]
	if w.best.plantings == nil || w.value > w.best.value+dust {
		w.remember(&w.best)
	} else {
		w.load(&w.best)
	}
	w.dig(ctx, w.spent()+work, func() {})
	w.load(&w.best)
}

// compare fills in what is read off a walk's best plan. A plan that lacks more
// of the musts than the plan asked about is none.
func (y *Study) compare(w *walk) Forced {
	f := Forced{Possible: true, Plan: w.plan(), Next: -1}
	if w.lacking() > y.lacks {
		return Forced{Next: -1}
	}
	f.Plan.Status, f.Plan.Seed, f.Plan.Nothing, f.Plan.Weighed = Feasible, y.plan.Seed, y.plan.Nothing, y.plan.Weighed
	if words := w.lackWords(); len(words) > 0 {
		f.Plan.Status, f.Plan.Conflict = Infeasible, words
	}
	f.PerFuture = w.byFuture()
	f.Worth = w.value
	return f
}

// byFuture is the plan's worth in each future.
func (s *state) byFuture() []float64 {
	food, out := 0.0, make([]float64, s.m.p.Futures)
	for f := range out {
		for k := range s.lines {
			out[f] += s.lines[k][f+1].value()
		}
		food += out[f] / float64(len(out))
	}
	for f := range out {
		out[f] += s.worth() - food
	}
	return out
}

// against turns values into differences from the best.
func (f *Forced) against(best float64, bestBy []float64) {
	f.Worth -= best
	for k := range f.PerFuture {
		f.PerFuture[k] -= bestBy[k]
	}
}

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
	parallel(runtime.GOMAXPROCS(0), len(weeks), func(i int) {
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
	w.refill(w.open, taste{byGround: 1}, w.rng)
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
