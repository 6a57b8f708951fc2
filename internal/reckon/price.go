package reckon

import (
	"context"
	"math"
	"slices"

	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// WishPrice is what one wish costs the plan.
type WishPrice struct {
	Event    string // of the wish; "" = it stands in the garden file
	Words    string
	Meals    float64 // worth of the best plan without it, less the plan with it, meals; 0 or more
	Noise    float64 // below this no difference can be seen, meals
	BadYears float64 // what the plan with it is worth more in the mean of its worst futures, meals
	Frees    bool    // without it all other wishes can be met, and with it they cannot
	Says     string
}

// Prices works out what each wish costs, by planning again without it. Both
// sides start from the plan and are searched with the same work. Once for a
// plan; a cancelled context gives none.
func (r *Result) Prices(ctx context.Context) []WishPrice {
	if prices, ok := r.Priced(); ok {
		return prices
	}
	var out []WishPrice
	for _, h := range r.Day.Heard {
		if h.State == "done" || h.State == "past" {
			continue
		}
		p, ok := r.priceOf(ctx, h)
		if ctx.Err() != nil {
			return nil
		}
		if ok {
			out = append(out, p)
		}
	}
	r.asked.mu.Lock()
	defer r.asked.mu.Unlock()
	r.asked.prices, r.asked.priced = out, true
	return out
}

// Priced are the prices when they are worked out already.
func (r *Result) Priced() ([]WishPrice, bool) {
	r.asked.mu.Lock()
	defer r.asked.mu.Unlock()
	return r.asked.prices, r.asked.priced
}

// without are the inputs less one wish.
func (in *Inputs) without(h Heard) *Inputs {
	out := *in
	if h.Event == "" {
		g := *in.Garden
		g.Musts = slices.Clone(g.Musts)
		for i, q := range g.Musts {
			if string(q.Crop) == h.Wish.Crop && string(q.Space) == h.Wish.Space && q.Plants == h.Wish.Plants {
				g.Musts = slices.Delete(g.Musts, i, i+1)
				break
			}
		}
		out.Garden = &g
		return &out
	}
	s := *in.State
	s.Wishes = slices.DeleteFunc(slices.Clone(s.Wishes), func(w ledger.WishNote) bool { return w.Event == h.Event })
	out.State = &s
	return &out
}

// scopeOf are the spaces in which a wish is priced; nil = everywhere.
func (r *Result) scopeOf(ctx context.Context, w ledger.Wish) []string {
	switch w.What {
	case ledger.WishLock, ledger.WishRefuse:
		return r.around(ctx, []string{w.Space})
	case ledger.WishMust, ledger.WishNever:
		if w.Space != "" {
			return r.around(ctx, []string{w.Space})
		}
		if in := r.spacesWith(ctx, []string{w.Crop}); len(in) > 0 {
			return r.around(ctx, in)
		}
	}
	return nil
}

// priceOf plans without one wish. What the plan with it is worth is counted by
// the measure of the garden without it: a wish for more of a food is not paid
// with the meals it asked for.
func (r *Result) priceOf(ctx context.Context, h Heard) (WishPrice, bool) {
	scope := r.scopeOf(ctx, h.Wish)
	if r.Plan.Status == season.Infeasible {
		scope = nil // room for what is not met may be anywhere
	}
	base := r.beside(ctx, scope)
	in := r.plainInputs().without(h).wished()
	like := r.likenessOf(base)
	in.Prior = &like // spares the plan's own lines from thinning
	m, err := modelOf(in, r.ground.wider(in))
	if err != nil {
		return WishPrice{}, false
	}
	free := try(ctx, in, m, carried(r.polished(ctx), r.model, m), scope)
	with := season.Evaluate(m.p, carried(&base.plan, base.m, m))
	p := WishPrice{Event: h.Event, Words: h.Words, Noise: math.Max(noise, math.Max(free.spread, base.spread))}
	p.Meals = math.Max(0, free.verdict.Value-with.Value)
	p.BadYears = season.WorstMean(with.PerFuture) - season.WorstMean(free.verdict.PerFuture)
	p.Frees = base.plan.Status == season.Infeasible && free.plan.Status != season.Infeasible
	p.Says = priceWords(h, p, r.moreOf(h, base, free))
	return p, true
}

// plainInputs are the inputs with the garden as its file says, wishes not yet
// taken in.
func (r *Result) plainInputs() *Inputs {
	in := *r.in
	in.Garden = r.in.plain
	return &in
}

func (r *Result) likenessOf(t *tried) ledger.KeptPlan {
	x := Result{in: r.in, model: t.m, Plan: t.plan, Problem: t.m.p}
	return x.Likeness()
}

// moreOf is how many meals of a wanted food the plan with the wish gives more
// than the plan without, in the months wished for.
func (r *Result) moreOf(h Heard, with, without *tried) float64 {
	if h.Wish.What != ledger.WishWant {
		return 0
	}
	return eatenIn(with, h.Wish) - eatenIn(without, h.Wish)
}

func eatenIn(t *tried, w ledger.Wish) float64 {
	sum := 0.0
	for f := range t.m.p.Foods {
		if t.m.p.Foods[f].ID != w.Food {
			continue
		}
		for k := 0; k < t.in.Weeks && k < len(t.verdict.Table[f]); k++ {
			if inMonths(w.First, w.Last, int(monthOf(t.m.p.Start, k))) {
				sum += mean(t.verdict.Table[f][k].Picked)
			}
		}
	}
	return sum
}
