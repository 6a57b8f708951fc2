package season

import (
	"cmp"
	"context"
	"math/rand/v2"
	"slices"
	"strings"
)

// Study asks a finished plan "what if": it forces one choice, searches again
// in that space and a few related ones with the rest of the plan held, and
// compares. Its methods may be called at the same time. Results do not depend
// on the number of processors.
type Study struct {
	Workers int // at once; 0 = 1. The answers do not depend on it

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
	if !answerable(p, plan) {
		return nil
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

// answerable says whether questions can be asked of a plan.
func answerable(p *Problem, plan *Plan) bool {
	if len(Check(p)) > 0 || len(plan.Pull) != len(p.Stays) {
		return false
	}
	for _, pl := range plan.Plantings {
		if pl.Option < 0 || pl.Option >= len(p.Options) || pl.Plants < 1 {
			return false
		}
	}
	for i, at := range plan.Pull {
		if at < firstPull(p, &p.Stays[i]) || at > lastWeek(p, &p.Stays[i]) {
			return false
		}
	}
	return true
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
			tie[o.space] += float64(o.ground * float64(pl.Plants))
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
	w.refill(w.open, taste{by: byRoot}, w.rng)
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
	if s.leans() {
		food = s.lean.worth(out)
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
