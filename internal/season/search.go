package season

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"sync"
)

// DefaultWork is the work of a search that is given none: about two seconds
// on two cores for twenty spaces and 9,500 options.
const DefaultWork = 14_000_000

// Limits bound and steer a search. The zero value is lawful.
type Limits struct {
	Work       int            // plantings weighed, times the futures each was weighed in; 0 = DefaultWork
	Seed       uint64         // of the search's own luck
	Workers    int            // at once; 0 = 1. The plan does not depend on it
	Progress   func(Progress) // called now and then, by one worker at a time; nil = not
	Prior      *Plan          // plan to start from, in this problem's options; nil = none
	Prices     *Certificate   // of Bound, on the same spaces and foods, to be guided by; nil = none
	ChangeCost float64        // meals a new plan must gain for each planting or pull week of Prior it gives up

	// Clock gives the share of the time allowed that is gone, 0 to 1; the search
	// paces itself by it and ends with it, or with the work. The plan then
	// depends on the machine. nil = the work alone decides.
	Clock func() float64
}

// Progress is how far a search has come.
type Progress struct {
	Work, Of int     // work done by this task and its share
	Value    float64 // best plan of this task so far, as it prices it
	Counts   bool    // Value is the mean over the futures, and no must is lacking
}

// tasks is how many searches share the work. It is fixed, so that the number
// of workers changes nothing but the time.
const tasks = 2

// Search finds a good plan. It stops when the work is done; a cancelled
// context only makes it stop earlier, with the best plan so far and status
// Interrupted. The plan is always one to use: where the musts cannot all be
// met it is Infeasible, breaks no other limit, and Conflict says why.
func Search(ctx context.Context, p *Problem, lim Limits) Plan {
	if faults := Check(p); len(faults) > 0 {
		return Plan{Status: Infeasible, Pull: naturalEnds(p), Seed: lim.Seed, Conflict: faults}
	}
	m := newModel(p, &lim)
	plan := m.search(ctx, lim)
	if plan.Status == Infeasible && len(p.Musts) > 1 && ctx.Err() == nil {
		plan.Conflict = append(plan.Conflict, cheapestToGiveUp(ctx, p, lim)...)
	}
	return plan
}

func naturalEnds(p *Problem) []int {
	pull := make([]int, len(p.Stays))
	for i := range p.Stays {
		pull[i] = lastWeek(p, &p.Stays[i])
	}
	return pull
}

func (m *model) search(ctx context.Context, lim Limits) Plan {
	if lim.Work <= 0 {
		lim.Work = DefaultWork
	}
	start := newState(m)
	start.perFuture(true)
	nothing := start.worth()
	start.perFuture(false)
	conflict := start.lock()

	m.setGuide(&lim)
	var mu sync.Mutex
	walks := make([]*walk, tasks)
	if lim.Clock != nil && lim.Workers < tasks {
		walks = walks[:1] // one after the other, the second would come too late
	}
	tell := func(w *walk) {
		if lim.Progress != nil {
			mu.Lock()
			defer mu.Unlock()
			lim.Progress(Progress{Work: w.gone(), Of: lim.Work / tasks, Value: w.best.worth, Counts: w.best.counts})
		}
	}
	parallel(lim.Workers, len(walks), func(t int) {
		w := newWalk(m, lim.Seed, uint64(t))
		w.all, w.clock = lim.Work/tasks, lim.Clock
		w.lock()
		w.alone(ctx, t, lim, func() { tell(w) })
		walks[t] = w
	})
	best := bestOf(walks).best.clone()
	parallel(lim.Workers, len(walks), func(t int) {
		w := walks[t]
		w.best = best.clone()
		w.load(&w.best)
		w.dig(ctx, lim.Work/tasks, func() { tell(w) })
	})
	final := newState(m)
	final.load(&bestOf(walks).best)
	final.perFuture(true)
	plan := final.plan()
	plan.Nothing, plan.Seed, plan.Weighed, plan.Status = nothing, lim.Seed, m.usable, Feasible
	for _, w := range walks {
		plan.Work += w.spent()
		if w.stopped {
			plan.Status = Interrupted
		}
	}
	plan.Conflict = append(conflict, final.lackWords()...)
	if len(plan.Conflict) > 0 {
		plan.Status = Infeasible
	}
	return plan
}

// bestOf is the walk with the best plan, the first of equals.
func bestOf(walks []*walk) *walk {
	top := walks[0]
	for _, w := range walks {
		if w.best.value > top.best.value+dust {
			top = w
		}
	}
	return top
}

// parallel runs do(0) to do(n-1), so many at once.
func parallel(workers, n int, do func(i int)) {
	workers = min(max(workers, 1), n)
	if workers == 1 {
		for i := range n {
			do(i)
		}
		return
	}
	next := make(chan int, n)
	for i := range n {
		next <- i
	}
	close(next)
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for i := range next {
				do(i)
			}
		})
	}
	wg.Wait()
}

// newWalk makes a walk over the whole garden.
func newWalk(m *model, seed, task uint64) *walk {
	w := &walk{state: newState(m), rng: rand.New(rand.NewPCG(seed, task))}
	w.mark = make([]bool, len(m.bySpace))
	w.isOpen = make([]bool, len(m.bySpace))
	all := make([]int32, len(m.bySpace))
	for sp := range all {
		all[sp] = int32(sp)
	}
	w.openUp(all)
	return w
}

// openUp lets the walk change these spaces and no others.
func (w *walk) openUp(spaces []int32) {
	w.open = spaces
	clear(w.isOpen)
	w.stays = w.stays[:0]
	for _, sp := range spaces {
		w.isOpen[sp] = true
		for _, i := range w.m.staysIn[sp] {
			if st := &w.m.stays[i]; st.first < st.last && (w.fixed == nil || !w.fixed[i]) {
				w.stays = append(w.stays, i)
			}
		}
	}
}

// screen finds the options that pay in the garden as it stands, the locks in,
// what stands pulled early, early return and clearing forgiven; the others are
// not looked at again. Of those that pay, those far from paying at the prices
// are left to chance (force). It is a rule of thumb, not a proof.
func (w *walk) screen() {
	m := w.m
	w.dull = make([]bool, len(m.opts))
	w.forced, w.far = w.forced[:0], w.far[:0]
	pulls := slices.Clone(w.pull)
	for _, i := range w.stays {
		w.setPull(int(i), m.stays[i].first)
	}
	for _, sp := range w.open {
		for _, i := range m.bySpace[sp] {
			n, worth, ok := w.batch(int(i))
			worth += float64(m.opts[i].risked(n)*m.opts[i].returning) + m.p.RestCost
			if !ok || worth <= 0 {
				w.dull[i] = true
				continue
			}
			if g := m.guide; g != nil && g.far[i] {
				w.dull[i] = true
				w.far = append(w.far, i)
				continue
			}
			w.forced = append(w.forced, i)
		}
	}
	for i, at := range pulls {
		w.setPull(i, at)
	}
}

// meanShare is the part of a task's work spent on the mean harvest; the rest
// goes to the mean over the futures. A round costs a third there, so a garden
// of many options needs it long enough to get away from the greedy start.
const meanShare = 0.3

// aloneShare is the part of a task's work before the tasks share their best.
const aloneShare = 0.6

// alone is one search from a greedy start: first on the mean harvest, then on
// the mean over the futures.
func (w *walk) alone(ctx context.Context, t int, lim Limits, tell func()) {
	total := float64(lim.Work / tasks)
	w.screen()
	prior := t == 0 && lim.Prior != nil
	if prior {
		w.perFuture(true) // so that what is found is never below what it starts from
		w.follow(lim.Prior)
	}
	w.refill(w.open, taste{by: byRoot + t%2}, w.rng)
	w.tune(w.open)
	w.steps = w.steps[:0]
	w.remember(&w.best)
	tell()
	if !prior {
		w.dig(ctx, int(meanShare*total), tell)
		w.load(&w.best)
		w.perFuture(true)
		w.remember(&w.best)
		tell()
	}
	w.dig(ctx, int(aloneShare*total), tell)
}

// slack is how far below the best plan the walk may go at first, as a share of
// the plan's worth; it falls to none as the work is done.
const slack = 0.005

// tellEvery is how many rounds lie between two words on how far it is.
const tellEvery = 50

// dig makes rounds until so much of the walk's work is done, or of its time gone,
// or the context is cancelled; it notes when work was left.
func (w *walk) dig(ctx context.Context, upTo int, tell func()) {
	if len(w.open) == 0 || w.m.weeks == 0 {
		return
	}
	from := w.gone()
	for n := 1; ; n++ {
		gone := w.gone()
		if gone >= upTo {
			w.stopped = w.stopped || w.spent() < upTo
			return
		}
		if ctx.Err() != nil {
			w.stopped = true
			return
		}
		if n%idleEvery == 1 {
			w.idleRents()
		}
		left := float64(upTo-gone) / float64(max(upTo-from, 1))
		w.round(w.best.value - float64(slack*left*math.Abs(w.best.value)))
		if n%200 == 0 {
			w.steps = w.steps[:0]
			w.reprice()
		}
		if n%tellEvery == 0 {
			tell()
		}
	}
}

// follow puts in what it can of a prior plan.
func (w *walk) follow(prior *Plan) {
	if len(prior.Pull) == len(w.pull) {
		for i, at := range prior.Pull {
			if st := &w.m.stays[i]; at >= st.first && at <= st.last {
				w.repull(i, at)
			}
		}
	}
	for _, pl := range prior.Plantings {
		if pl.Option < 0 || pl.Option >= len(w.m.opts) || w.plants[pl.Option] > 0 {
			continue
		}
		if n := min(w.room(pl.Option), pl.Plants); n >= w.opts(pl.Option).min {
			w.plant(pl.Option, n)
		}
	}
}
