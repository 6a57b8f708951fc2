package reckon

import (
	"context"
	"math"
	"slices"
	"sync"

	"bedweek/internal/season"
)

// Work of one search behind a price or a what-if. Each side has two searches,
// with different luck: all over the garden, or in some spaces only.
const (
	tryWork   = 1_000_000
	localWork = 150_000
)

// twice is how many searches each side of a comparison has.
const twice = 2

// asked is what was worked out on a plan's questions, once.
type asked struct {
	mu     sync.Mutex
	once   sync.Mutex // held while the polished plan is made
	smooth *season.Plan
	base   *tried
	prices []WishPrice
	priced bool
	whys   map[string]*Why
	later  sync.Mutex // held while waits is worked out
	waits  *Later
}

// tried is one side of a comparison: the best plan of its searches.
type tried struct {
	m       *model
	in      *Inputs
	plan    season.Plan
	verdict season.Verdict
	spread  float64 // between the searches' worths, meals: the noise of this side
}

// try searches a model on from a plan: in the spaces named, or everywhere when
// none are.
func try(ctx context.Context, in *Inputs, m *model, from *season.Plan, scope []string) *tried {
	plans := make([]season.Plan, twice)
	each(twice, in.Workers, func(k int) {
		seed := in.Seed + 1000*uint64(k+1)
		if scope == nil {
			plans[k] = season.Search(ctx, m.p, season.Limits{Work: tryWork, Seed: seed, Workers: 1, Prior: from})
			return
		}
		own := *from
		own.Seed = seed
		if y := season.NewStudy(m.p, &own); y != nil {
			plans[k] = y.SettleIn(ctx, m.spacesOf(scope), localWork)
		}
	})
	t := &tried{m: m, in: in}
	low, high := math.Inf(1), math.Inf(-1)
	for k := range plans {
		if len(plans[k].Pull) != len(m.p.Stays) {
			continue
		}
		v := season.Evaluate(m.p, &plans[k])
		low = math.Min(low, v.Value)
		met, was := plans[k].Status != season.Infeasible, t.plan.Status != season.Infeasible
		if t.m == nil || math.IsInf(high, -1) || met && !was || met == was && v.Value > high {
			t.plan, t.verdict = plans[k], v
		}
		high = math.Max(high, v.Value)
	}
	t.spread = math.Max(0, high-low)
	return t
}

func (m *model) spacesOf(ids []string) []int {
	var out []int
	for i := range m.p.Spaces {
		if slices.Contains(ids, m.p.Spaces[i].ID) {
			out = append(out, i)
		}
	}
	return out
}

// polished is the plan searched on until more work finds little, so that what
// a question finds is owed to the question. Made once.
func (r *Result) polished(ctx context.Context) *season.Plan {
	r.asked.once.Lock()
	defer r.asked.once.Unlock()
	if r.asked.smooth != nil {
		return r.asked.smooth
	}
	plans := make([]season.Plan, twice)
	each(twice, r.in.Workers, func(k int) {
		plans[k] = season.Search(ctx, r.Problem, season.Limits{Work: max(r.in.Work, tryWork), Seed: r.in.Seed + 100*uint64(k+1), Workers: 1, Prior: &r.Plan,
			Prices: prices{r.proof.certificate, r.proof.byFuture}.guide()})
	})
	best := &r.Plan
	value := season.Evaluate(r.Problem, best).Value
	for k := range plans {
		if v := season.Evaluate(r.Problem, &plans[k]).Value; plans[k].Status != season.Infeasible && v > value {
			best, value = &plans[k], v
		}
	}
	if ctx.Err() == nil {
		r.asked.smooth = best
	}
	return best
}

// beside is the present plan searched on with the same work as the other side
// of a comparison has.
func (r *Result) beside(ctx context.Context, scope []string) *tried {
	from := r.polished(ctx)
	if scope != nil {
		return try(ctx, r.in, r.model, from, scope)
	}
	r.asked.once.Lock()
	defer r.asked.once.Unlock()
	if r.asked.base == nil {
		b := try(ctx, r.in, r.model, from, nil)
		if ctx.Err() != nil {
			return b
		}
		r.asked.base = b
	}
	return r.asked.base
}

// around are the spaces that have most to do with some others, and these.
func (r *Result) around(ctx context.Context, ids []string) []string {
	y := season.NewStudy(r.Problem, r.polished(ctx))
	out := slices.Clone(ids)
	if y == nil {
		return out
	}
	for _, i := range r.model.spacesOf(ids) {
		for _, j := range y.Around(i) {
			if id := r.Problem.Spaces[j].ID; !slices.Contains(out, id) {
				out = append(out, id)
			}
		}
	}
	return out
}

// spacesWith are the spaces in which the plan has one of some crops.
func (r *Result) spacesWith(ctx context.Context, crops []string) []string {
	var out []string
	plan := r.polished(ctx)
	for _, pl := range plan.Plantings {
		o := &r.Problem.Options[pl.Option]
		if id := r.Problem.Spaces[o.Space].ID; slices.Contains(crops, o.Crop) && !slices.Contains(out, id) {
			out = append(out, id)
		}
	}
	return out
}

// carried is a plan in another model's options, by their IDs and the IDs of
// what stands; nothing is carried into the spaces named, whose growth differs.
func carried(plan *season.Plan, from, to *model, but ...string) *season.Plan {
	at := map[string]int{}
	for i := range to.p.Options {
		at[to.p.Options[i].ID] = i
	}
	out := &season.Plan{}
	for _, pl := range plan.Plantings {
		i, ok := at[from.p.Options[pl.Option].ID]
		if !ok || slices.Contains(but, from.p.Spaces[from.p.Options[pl.Option].Space].ID) {
			continue
		}
		if o := &to.p.Options[i]; pl.Plants >= o.Min {
			out.Plantings = append(out.Plantings, season.Planting{Option: i, Plants: min(pl.Plants, o.Max)})
		}
	}
	pulls := map[string]int{}
	for i := range from.p.Stays {
		pulls[from.p.Stays[i].ID] = plan.Pull[i]
	}
	for i := range to.p.Stays {
		st := &to.p.Stays[i]
		end := min(st.End, to.p.Weeks-1)
		at := end
		if w, ok := pulls[st.ID]; ok {
			at = max(min(w, end), min(st.MustKeepTo, end), -1)
		}
		out.Pull = append(out.Pull, at)
	}
	return out
}
