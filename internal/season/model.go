package season

import (
	"math"
	"slices"
	"strings"
)

// model is a problem made ready for searching: nothing in it changes after
// newModel, so that all workers share one.
type model struct {
	p        *Problem
	weeks    int
	opts     []opt
	stays    []stay
	foods    []food
	bySpace  [][]int32 // usable options of each space, by ID
	staysIn  [][]int32 // stays of each space
	inBatch  [][]int32 // spaces of each batch
	wish     []float64 // minutes by week
	drinks   []float64 // litres a day wished by week; nil = water is not limited
	worth    []float64 // of a meal by week, for the delay
	groups   []int     // most plants of each group
	rank     []int32   // of each option by ID, to break ties
	usable   int       // options with Min <= Max and a lawful lock-free start
	lack     float64   // penalty for each plant a must lacks
	keep     []float64 // per option: worth of keeping it because the prior plan had it
	keepAt   []int     // per stay: pull week of the prior plan, -2 = none
	guide    *guide    // what prices tell; nil = none
	likePull float64   // what keeping a pull week of the prior plan is worth
}

// opt is an option with its rows spread out and its constants gathered.
type opt struct {
	id, crop            string
	space, food, batch  int
	family, interval    int
	week, end, min, max int
	foot, vol           []float64 // per plant by week, from week
	mostFoot, mostVol   float64
	tallFrom            int // from week, len(foot) = never
	support             float64
	shelfLo, shelfHi    int // indices in the shelf's rows
	places              float64
	minutes             []float64 // per plant, from week; nil = none
	batchMinutes        float64
	water               []float64 // litres a day per plant, from week; nil = water is not limited
	fixed, each         float64   // worth of a batch and of a plant, without food (costs below 0)
	returning           float64   // rotation cost per plant, for atRisk of them at most
	risk                float64   // cost per plant of a loss, the same; 0 where each holds it
	atRisk              int
	groups              []int // those with a limit
	musts               []int32
	lo, hi              int       // weeks with meals: lo <= w < hi
	meals               []harvest // [0] mean, [1+f] future f
	ground              float64   // per plant: weeks times the share it takes of what is scarcest there
}

// stay is a planting in the ground with its rows spread out.
type stay struct {
	space, food, batch, family int
	first, last                int       // pull weeks
	foot, vol                  []float64 // by week
	tall                       bool
	support                    float64
	minutes                    []float64
	water                      []float64   // litres a day; nil = water is not limited
	meals                      [][]float32 // [0] mean, [1+f]; from week 0
	tail, pullCost             float64
	musts                      []int32
	plants                     int
}

// food is a food with its worth by week spread out.
type food struct {
	weeks []table
	shelf int
}

func newModel(p *Problem, lim *Limits) *model {
	m := &model{p: p, weeks: p.Weeks}
	m.wish = make([]float64, p.Weeks)
	m.worth = make([]float64, p.Weeks)
	now := 1.0
	for w := range p.Weeks {
		m.wish[w] = math.MaxFloat64
		if w < len(p.Minutes) {
			m.wish[w] = p.Minutes[w]
		}
		m.worth[w] = now
		now /= 1 + p.Discount
	}
	m.setWater()
	m.setFoods()
	group := map[string]int{}
	m.opts = make([]opt, len(p.Options))
	m.bySpace = make([][]int32, len(p.Spaces))
	m.staysIn = make([][]int32, len(p.Spaces))
	m.inBatch = make([][]int32, len(p.Batches))
	for i := range p.Spaces {
		if b := p.Spaces[i].Batch; b >= 0 {
			m.inBatch[b] = append(m.inBatch[b], int32(i))
		}
	}
	for i := range p.Options {
		m.setOption(i, group)
	}
	order := make([]int32, len(p.Options))
	for i := range order {
		order[i] = int32(i)
	}
	slices.SortStableFunc(order, func(a, b int32) int {
		return strings.Compare(p.Options[a].ID, p.Options[b].ID)
	})
	m.rank = make([]int32, len(order))
	for r, i := range order {
		m.rank[i] = int32(r)
		if o := &m.opts[i]; o.min <= o.max {
			m.bySpace[o.space] = append(m.bySpace[o.space], i)
			m.usable++
		}
	}
	m.stays = make([]stay, len(p.Stays))
	for i := range p.Stays {
		m.setStay(i)
	}
	m.setPrior(lim)
	return m
}

// setWater spreads the wished litres out, where water is limited.
func (m *model) setWater() {
	if !m.p.waterCounts() {
		return
	}
	m.drinks = make([]float64, m.weeks)
	for w := range m.drinks {
		m.drinks[w] = math.MaxFloat64
		if w < len(m.p.Water) {
			m.drinks[w] = m.p.Water[w]
		}
	}
}

// setFoods spreads the foods out and finds the penalty for a lacking must:
// more than all the food of the plan could be worth.
func (m *model) setFoods() {
	p := m.p
	m.foods = make([]food, len(p.Foods))
	m.lack = 1000
	for k := range p.Foods {
		f := &p.Foods[k]
		x := food{weeks: make([]table, p.Weeks), shelf: f.Shelf}
		for w, now := range m.worth {
			want := 0.0
			if w < len(f.Want) {
				want = f.Want[w]
			}
			t := table{want: want, half: want / 2, first: float64(now * f.Worth), second: float64(now * (f.Worth + f.Extra) / 2), extra: float64(now * f.Extra)}
			t.halfWorth = float64(t.half * t.first)
			t.fullWorth = t.halfWorth + float64(t.half*t.second)
			x.weeks[w] = t
			m.lack += float64(want * (f.Worth + f.Extra))
		}
		m.foods[k] = x
	}
}

func (m *model) setOption(i int, group map[string]int) {
	p, src := m.p, &m.p.Options[i]
	space := &p.Spaces[src.Space]
	o := &m.opts[i]
	*o = opt{
		id: src.ID, crop: src.Crop, space: src.Space, food: src.Food, batch: space.Batch, family: src.Family, interval: src.Interval,
		week: src.Week, end: src.End, min: max(src.Min, 1), max: src.Max,
		support: src.SupportM, batchMinutes: src.BatchMinutes,
		fixed: -src.Fixed, each: src.Bonus + src.Tail - src.Cost - src.Risk, returning: src.RotationCost, atRisk: math.MaxInt,
	}
	if src.AtRisk > 0 && src.AtRisk < src.Max {
		o.atRisk, o.risk, o.each = src.AtRisk, src.Risk, o.each+src.Risk
	}
	if o.family < 0 {
		o.batch = -1
	}
	n := src.End - src.Week + 1
	o.foot, o.mostFoot = spread(src.Footprint, n)
	o.vol = shareOf(src.VolumeL, o.foot, o.mostFoot)
	for _, v := range o.vol {
		o.mostVol = max(o.mostVol, v)
	}
	o.tallFrom = n
	if src.TallFrom >= 0 {
		o.tallFrom = min(max(src.TallFrom-src.Week, 0), n)
	}
	if src.ShelfFrom != -1<<30 && src.ShelfPlaces > 0 {
		o.places = src.ShelfPlaces
		o.shelfLo = max(src.ShelfFrom, p.ShelfStart) - p.ShelfStart
		o.shelfHi = src.Week - p.ShelfStart
	}
	if slices.ContainsFunc(src.Minutes, func(x float64) bool { return x > 0 }) {
		o.minutes = src.Minutes[:min(p.Weeks-src.Week, len(src.Minutes))]
	}
	if p.OverCost == 0 || len(p.Minutes) == 0 {
		o.minutes, o.batchMinutes = nil, 0
	}
	if m.drinks != nil {
		o.water = src.Water[:min(n, len(src.Water))]
	}
	for name := range src.totals(p) {
		g, known := group[name]
		if !known {
			g = len(m.groups)
			group[name] = g
			m.groups = append(m.groups, p.Totals[name])
		}
		o.groups = append(o.groups, g)
	}
	for k, must := range p.Musts {
		if must.counts(src) {
			o.musts = append(o.musts, int32(k))
		}
	}
	m.setMeals(o, src)
	for k, f := range o.foot {
		share := 0.0
		if space.AreaM2 > 0 {
			share = f / space.AreaM2
		}
		if space.VolumeL > 0 {
			share = max(share, o.vol[k]/space.VolumeL)
		}
		o.ground += share
	}
	o.ground = max(o.ground, 1e-3)
}

// setMeals trims the meals to the weeks that have any and puts their mean in
// front.
func (m *model) setMeals(o *opt, src *Option) {
	p := m.p
	if src.Food < 0 {
		return
	}
	o.lo, o.hi = p.Weeks, 0
	for f := range min(p.Futures, len(src.Meals)) {
		row := src.Meals[f]
		for a, x := range row {
			if w := src.MealsFrom + a; x > 0 && w >= 0 && w < p.Weeks {
				o.lo, o.hi = min(o.lo, w), max(o.hi, w+1)
			}
		}
	}
	if o.lo >= o.hi {
		o.lo, o.hi = 0, 0
		return
	}
	o.meals = make([]harvest, p.Futures+1)
	mean := make([]float64, o.hi-o.lo)
	for f := range p.Futures {
		var row []float32
		if f < len(src.Meals) {
			row = src.Meals[f]
		}
		from, to := max(o.lo-src.MealsFrom, 0), min(o.hi-src.MealsFrom, len(row))
		if from >= to {
			continue
		}
		h := trimmed(from+src.MealsFrom, row[from:to])
		for k, x := range h.meals {
			mean[h.lo-o.lo+k] += float64(x)
		}
		o.meals[f+1] = h
	}
	o.meals[0] = harvest{o.lo, means(mean, p.Futures)}
}

// means divides sums over n futures.
func means(sum []float64, n int) []float32 {
	out := make([]float32, len(sum))
	for k, x := range sum {
		out[k] = float32(x / float64(n))
	}
	return out
}

func (m *model) setStay(i int) {
	p, src := m.p, &m.p.Stays[i]
	s := &m.stays[i]
	*s = stay{
		space: src.Space, food: src.Food, batch: p.Spaces[src.Space].Batch, family: src.Family,
		last: min(src.End, p.Weeks-1), tall: src.Tall, support: src.SupportM,
		tail: src.Tail, pullCost: src.PullCost, plants: src.Plants,
	}
	s.first = min(max(src.MustKeepTo, -1), s.last)
	if s.family < 0 {
		s.batch = -1
	}
	var most float64
	s.foot, most = spread(src.Footprint, s.last+1)
	s.vol = shareOf(src.VolumeL, s.foot, most)
	s.minutes = make([]float64, s.last+1)
	copy(s.minutes, src.Minutes)
	if m.drinks != nil {
		s.water = make([]float64, s.last+1)
		copy(s.water, src.Water)
	}
	if s.food >= 0 {
		mean := make([]float64, s.last+1)
		s.meals = make([][]float32, p.Futures+1)
		for f := range p.Futures {
			s.meals[f+1] = make([]float32, s.last+1)
			if f < len(src.Meals) {
				copy(s.meals[f+1], src.Meals[f])
			}
			for w, x := range s.meals[f+1] {
				mean[w] += float64(x)
			}
		}
		s.meals[0] = means(mean, max(p.Futures, 1))
	}
	for k, must := range p.Musts {
		if must.Crop == src.Crop && (must.Space == -1 || must.Space == src.Space) {
			s.musts = append(s.musts, int32(k))
		}
	}
	m.staysIn[s.space] = append(m.staysIn[s.space], int32(i))
}

// setPrior notes what the prior plan had, so that keeping it is worth a little.
func (m *model) setPrior(lim *Limits) {
	if lim == nil || lim.Prior == nil || lim.ChangeCost <= 0 {
		return
	}
	m.keep = make([]float64, len(m.opts))
	for _, pl := range lim.Prior.Plantings {
		if pl.Option >= 0 && pl.Option < len(m.opts) {
			m.keep[pl.Option] = lim.ChangeCost
		}
	}
	if len(lim.Prior.Pull) == len(m.stays) {
		m.keepAt, m.likePull = lim.Prior.Pull, lim.ChangeCost
	}
}

// spread writes a row out to n weeks, the last entry holding on.
func spread(row []float64, n int) (out []float64, most float64) {
	out = make([]float64, n)
	last := 0.0
	for i := range out {
		if i < len(row) {
			last = row[i]
		}
		out[i] = last
		most = max(most, last)
	}
	return out, most
}

// shareOf spreads a full-size root room by the share of the largest footprint.
func shareOf(full float64, foot []float64, most float64) []float64 {
	out := make([]float64, len(foot))
	for i, f := range foot {
		if most > 0 {
			out[i] = full * f / most
		} else {
			out[i] = full
		}
	}
	return out
}
