package season

import (
	"math"
	"runtime"
	"slices"
	"sort"
)

// CheckBound says how much any valid plan of p can be worth at the prices of
// c, by Evaluate or by Expect. It has no solver, shares no code with the
// search for prices, and reads p alone. Prices below 0 (or absent) count as 0.
//
// Why it holds. Take any valid plan. Adding price × (limit - use) for every
// limit adds nothing negative, since prices are not negative and limits are
// kept; a minute over the wish costs OverCost, a litre WaterCost, which is at
// least its price.
// What is left falls apart by batch: a batch pays for what it uses, and eats
// from each cell (food, week, step of worth) at its worth less its price, at
// most as much as the cell holds, since all eat no more than that together.
// Each batch is worth no more than its best number of plants. An early return
// is charged where nothing the plan decides can avoid it, and after the first
// week in which a family leaves its batch of medium, whichever week that is
// (leaving); the cost of clearing is left out, being a cost. The mean harvest
// eaten with foresight is worth at least the mean of the futures by the eating
// rule.
func CheckBound(p *Problem, c *Certificate) float64 {
	k := check{p: p, c: c, apart: max(c.Apart, 1)}
	if k.apart > 1 && k.apart != p.Futures || len(c.Cells) != len(p.Foods)*k.apart {
		return math.Inf(1) // prices of another garden
	}
	k.room()
	k.stand()
	k.open()
	sum := k.limits()
	kin := map[lineage]*kinsfolk{}
	for _, s := range k.starts() {
		if r := k.kin(kin, s.o.Space, s.o.Family); r != nil {
			r.starts = append(r.starts, s)
		} else {
			sum += s.plain
		}
	}
	for i := range p.Stays {
		s := &p.Stays[i]
		curve := k.stay(s)
		if r := k.kin(kin, s.Space, s.Family); r != nil {
			r.stays = append(r.stays, curve)
		} else {
			sum += slices.Max(curve)
		}
	}
	sum += k.kinSum(kin)
	return sum + 1e-7*(1+math.Abs(sum)) // room for rounding
}

// checkedAtOnce is how many options one worker takes before it takes more.
const checkedAtOnce = 256

// starts is what each option that there is room for can be worth at most, in
// their order. Several processors share the work; each option is reckoned by
// itself, so the sum does not depend on them.
func (k *check) starts() []start {
	locked := map[int]int{}
	for _, l := range k.p.Locks {
		locked[l.Option] = l.Plants
	}
	lots := make([][]start, (len(k.p.Options)+checkedAtOnce-1)/checkedAtOnce)
	parallel(runtime.GOMAXPROCS(0), len(lots), func(lot int) {
		own := *k
		own.room()
		for i := lot * checkedAtOnce; i < min((lot+1)*checkedAtOnce, len(k.p.Options)); i++ {
			o := &k.p.Options[i]
			if locked[i] == 0 && own.most(o) < max(o.Min, 1) {
				continue
			}
			plain := own.option(o, locked[i], 0)
			charged := plain
			if (locked[i] > 0 || plain > 0) && !own.returns(o) {
				charged = own.option(o, locked[i], o.RotationCost)
			}
			lots[lot] = append(lots[lot], start{o, locked[i] > 0, plain, charged})
		}
	})
	return slices.Concat(lots...)
}

// room makes the check room of its own to reckon in.
func (k *check) room() {
	k.eaten, k.picked = make([]float64, k.p.Weeks), make([][]float64, k.apart)
	for f := range k.picked {
		k.picked[f] = make([]float64, k.p.Weeks)
	}
}

type check struct {
	p     *Problem
	c     *Certificate
	all   [][][4]float64 // [space][week]: taken by all that stands, if nothing is pulled
	sure  [][][4]float64 // the same of what cannot be pulled by then
	apart int            // harvests told apart: 1 = the mean, else each future
	cells [][]place      // by food × apart + future: cells that pay, best first
	best  [][]float64    // the same by week of picking: the most a meal can pay

	eaten  []float64   // room to reckon in
	picked [][]float64 // the same
}

// place is a cell that pays at the prices.
type place struct {
	week       int
	most, pays float64
}

// open lists the cells that pay.
func (k *check) open() {
	k.cells, k.best = make([][]place, len(k.c.Cells)), make([][]float64, len(k.c.Cells))
	for food := range k.cells {
		k.best[food] = make([]float64, k.p.Weeks)
		for w := range k.p.Weeks {
			for step := range 3 {
				most, pays := k.cell(food, w, step)
				if pays <= 0 || most <= 0 {
					continue
				}
				k.cells[food] = append(k.cells[food], place{w, most, pays})
				for a := max(w-k.p.Foods[food/k.apart].Shelf, 0); a <= w; a++ {
					k.best[food][a] = max(k.best[food][a], pays)
				}
			}
		}
		sort.SliceStable(k.cells[food], func(a, b int) bool { return k.cells[food][a].pays > k.cells[food][b].pays })
	}
}

func at(row []float64, i int) float64 {
	if i < 0 || i >= len(row) || !(row[i] > 0) {
		return 0
	}
	return row[i]
}

func (k *check) minute(w int) float64 {
	if w < 0 || w >= len(k.p.Minutes) || w >= k.p.Weeks {
		return 0
	}
	return min(at(k.c.Minutes, w), k.p.OverCost)
}

func (k *check) litre(w int) float64 {
	if w < 0 || w >= len(k.p.Water) || w >= k.p.Weeks {
		return 0
	}
	return min(at(k.c.Water, w), k.p.WaterCost)
}

func (k *check) cell(food, w, step int) (most, pays float64) {
	f := &k.p.Foods[food/k.apart]
	want := at(f.Want, w)
	most = [3]float64{want / 2, want / 2, want}[step]
	pays = [3]float64{f.Worth, (f.Worth + f.Extra) / 2, f.Extra}[step] * math.Pow(1+k.p.Discount, -float64(w)) / float64(k.apart)
	return most, pays - at(k.c.Cells[food][w][:], step)
}

// limits sums price × limit. Limits have the evaluator's tolerance.
func (k *check) limits() float64 {
	p, c, sum := k.p, k.c, 0.0
	for w := range p.Weeks {
		for i := range p.Spaces {
			s := &p.Spaces[i]
			for j, limit := range [4]float64{s.AreaM2, s.VolumeL, s.TallM2, s.SupportM} {
				sum += (limit + tolerance) * at(c.Room[i][j], w)
			}
			sum += k.parts(i, w, math.Inf(1))
		}
		sum += at(p.Minutes, w)*k.minute(w) + at(p.Water, w)*k.litre(w)
		for food := range c.Cells {
			for step := range 3 {
				most, _ := k.cell(food, w, step)
				sum += most * at(c.Cells[food][w][:], step)
			}
		}
	}
	for i := range p.Weeks - p.ShelfStart {
		sum += (at(p.Shelf, i) + tolerance) * at(c.Shelf, i)
	}
	names := make([]string, 0, len(p.Totals))
	for name := range p.Totals {
		names = append(names, name)
	}
	sort.Strings(names)
	for _, name := range names {
		sum += float64(p.Totals[name]) * max(0, c.Totals[name])
	}
	for i, m := range p.Musts {
		sum -= float64(m.Plants) * at(c.Musts, i)
	}
	return sum
}

// option is the most a batch of o can be worth where each plant costs so much
// more, or none of it; locked plants are in every plan.
func (k *check) option(o *Option, locked int, more float64) float64 {
	p, room := k.p, k.c.Room[o.Space]
	batch, plant := o.Fixed+o.BatchMinutes*k.minute(o.Week), o.Cost-o.Bonus-o.Tail
	loss, risked := o.Risk+more, math.MaxInt
	if o.AtRisk > 0 {
		risked = o.AtRisk
	}
	if k.returns(o) {
		loss += o.RotationCost
	}
	for w := o.Week; w <= o.End; w++ {
		foot := held(o.Footprint, w-o.Week)
		plant += foot*at(room[0], w) + o.VolumeL*rootShare(o.Footprint, w-o.Week, o.End-o.Week+1)*at(room[1], w) + o.SupportM*at(room[3], w)
		if o.TallFrom >= 0 && w >= o.TallFrom {
			plant += foot * at(room[2], w)
		}
	}
	for w := max(o.ShelfFrom, p.ShelfStart); w < o.Week && o.ShelfFrom != -1<<30; w++ {
		plant += o.ShelfPlaces * at(k.c.Shelf, w-p.ShelfStart)
	}
	for i, t := range o.Minutes {
		plant += t * k.minute(o.Week+i)
	}
	for w := o.Week; w <= o.End; w++ {
		plant += at(o.Water, w-o.Week) * k.litre(w)
	}
	for name := range o.totals(p) {
		plant += max(0, k.c.Totals[name])
	}
	for i, m := range p.Musts {
		if m.counts(o) {
			plant -= at(k.c.Musts, i)
		}
	}
	meals := k.meals(o.Food, o.Meals, o.MealsFrom)
	if locked > 0 {
		return k.eatAll(o.Food, meals, p.Weeks, float64(locked)) - batch - float64(locked)*plant - float64(min(locked, risked))*loss - k.crowd(o, locked)
	}
	best, last, most := 0.0, math.Inf(-1), k.most(o)
	if risked >= most {
		plant, loss = plant+loss, 0
	}
	if batch >= 0 && float64(most)*(k.atMost(o.Food, meals)-plant-min(loss, 0)) <= batch {
		return 0 // no number of plants pays
	}
	for n := max(o.Min, 1); n <= most; n++ {
		worth := k.eatAll(o.Food, meals, p.Weeks, float64(n)) - batch - float64(n)*plant - float64(min(n, risked))*loss
		if worth < last && n > risked {
			break // each further plant is worth less than the one before
		}
		if worth < last && n < risked {
			n, last = risked-1, math.Inf(-1) // the same up to the last at risk
			continue
		}
		best, last = max(best, worth-k.crowd(o, n)), worth
	}
	return best
}

// atMost is what a harvest could be worth if all of it were eaten where it pays
// most.
func (k *check) atMost(food int, picked [][]float64) float64 {
	sum := 0.0
	for f, row := range picked {
		for w, x := range row {
			sum += x * k.best[food*k.apart+f][w]
		}
	}
	return sum
}

// parts is the price of the halves and thirds of a space that so much ground
// more than fills in a week. All that stands together more than fills one half
// and two thirds at most: new batches and what stands keep within the ground,
// what stands alone is shrunk to it, and each takes more than what is counted.
func (k *check) parts(space, w int, ground float64) float64 {
	sum := 0.0
	for i, prices := range [2][][]float64{k.c.Halves, k.c.Thirds} {
		if space >= len(prices) {
			continue
		}
		for t := 1; t <= i+1; t++ {
			if ground > float64(t)*((k.p.Spaces[space].AreaM2+tolerance)/float64(i+2))+1e-9 {
				sum += at(prices[space], w)
			}
		}
	}
	return sum
}

// crowd is the price of the parts that n plants of o fill over its weeks.
func (k *check) crowd(o *Option, n int) float64 {
	sum := 0.0
	for w := o.Week; w <= o.End; w++ {
		sum += k.parts(o.Space, w, float64(n)*held(o.Footprint, w-o.Week))
	}
	return sum
}

// returns says whether o comes too soon after its family whatever else is
// planned: by the medium's history, or after a planting whenever it is pulled.
func (k *check) returns(o *Option) bool {
	b := k.p.Spaces[o.Space].Batch
	if b < 0 || o.Family < 0 {
		return false
	}
	soon := func(left int) bool { return left < o.Week && o.Week-left-1 < o.Interval }
	last, ok := k.p.Batches[b].Last[o.Family]
	sure := ok && soon(last)
	for i := range k.p.Stays {
		s := &k.p.Stays[i]
		if s.Family == o.Family && k.p.Spaces[s.Space].Batch == b {
			end := min(s.End, k.p.Weeks-1)
			sure = sure || soon(min(max(s.MustKeepTo, -1), end)) && soon(end)
		}
	}
	return sure
}

// most is how many plants of o there is room for beside what cannot be pulled.
func (k *check) most(o *Option) int {
	s, most := &k.p.Spaces[o.Space], float64(o.Max)
	for name := range o.totals(k.p) {
		most = min(most, float64(k.p.Totals[name]))
	}
	for w := max(o.ShelfFrom, k.p.ShelfStart); w < o.Week && o.ShelfFrom != -1<<30 && o.ShelfPlaces > 0; w++ {
		most = min(most, (at(k.p.Shelf, w-k.p.ShelfStart)+tolerance)/o.ShelfPlaces)
	}
	for w := o.Week; w <= o.End; w++ {
		foot := held(o.Footprint, w-o.Week)
		use := [4]float64{foot, o.VolumeL * rootShare(o.Footprint, w-o.Week, o.End-o.Week+1), 0, o.SupportM}
		if o.TallFrom >= 0 && w >= o.TallFrom {
			use[2] = foot
		}
		for j, limit := range [4]float64{s.AreaM2, s.VolumeL, s.TallM2, s.SupportM} {
			if use[j] > 0 {
				most = min(most, max(limit+tolerance-k.sure[o.Space][w][j], tolerance)/use[j])
			}
		}
	}
	return int(most + 1e-9)
}

// takes is what s takes of its space in week w.
func takes(s *Stay, w, weeks int) [4]float64 {
	foot := held(s.Footprint, w)
	use := [4]float64{foot, s.VolumeL * rootShare(s.Footprint, w, min(s.End+1, weeks)), 0, s.SupportM}
	if s.Tall {
		use[2] = foot
	}
	return use
}

// stand sums what stands already.
func (k *check) stand() {
	k.all, k.sure = make([][][4]float64, len(k.p.Spaces)), make([][][4]float64, len(k.p.Spaces))
	for i := range k.all {
		k.all[i], k.sure[i] = make([][4]float64, k.p.Weeks), make([][4]float64, k.p.Weeks)
	}
	for i := range k.p.Stays {
		s := &k.p.Stays[i]
		for w := 0; w <= min(s.End, k.p.Weeks-1); w++ {
			for j, x := range takes(s, w, k.p.Weeks) {
				k.all[s.Space][w][j] += x
				if w <= s.MustKeepTo {
					k.sure[s.Space][w][j] += x
				}
			}
		}
	}
}

// stay is what a planting in the ground can be worth at most by pull week: entry
// w+1 is week w, weeks in which it may not be pulled are minus infinity.
// What stands breaks no limit by itself. So where all that stands is more than
// the limit, each takes only its share of the limit: what is left for new
// plants is then never less than it may be.
func (k *check) stay(s *Stay) []float64 {
	p, space := k.p, &k.p.Spaces[s.Space]
	limit := [4]float64{space.AreaM2, space.VolumeL, space.TallM2, space.SupportM}
	meals := k.meals(s.Food, s.Meals, 0)
	var out []float64
	cost, last := 0.0, min(s.End, p.Weeks-1)
	for w := -1; w <= last; w++ {
		if w >= 0 {
			for j, x := range takes(s, w, p.Weeks) {
				if all := k.all[s.Space][w][j]; all > limit[j] {
					x *= limit[j] / all
				}
				cost += x * at(k.c.Room[s.Space][j], w)
				if j == 0 {
					cost += k.parts(s.Space, w, x)
				}
			}
			cost += at(s.Minutes, w)*k.minute(w) + at(s.Water, w)*k.litre(w)
		}
		if w < min(s.MustKeepTo, last) {
			out = append(out, math.Inf(-1))
			continue
		}
		worth := -s.PullCost
		if w == last {
			worth = s.Tail
			for i, m := range p.Musts {
				if m.Crop == s.Crop && (m.Space == -1 || m.Space == s.Space) {
					worth += float64(s.Plants) * at(k.c.Musts, i)
				}
			}
		}
		worth += k.eatAll(s.Food, meals, w+1, 1)
		out = append(out, worth-cost)
	}
	return out
}

// meals is each harvest told apart by week of the plan, until it is asked again;
// nil = none eaten.
func (k *check) meals(food int, futures [][]float32, from int) [][]float64 {
	if food < 0 || k.p.Futures == 0 {
		return nil
	}
	out := k.picked
	for f := range out {
		clear(out[f])
	}
	for f, row := range futures[:min(len(futures), k.p.Futures)] {
		for i, x := range row {
			if w := from + i; w >= 0 && w < k.p.Weeks {
				out[f%k.apart][w] += float64(x) * float64(k.apart) / float64(k.p.Futures)
			}
		}
	}
	return out
}

// eatAll is the most the harvests told apart can be worth as far as so many
// weeks.
func (k *check) eatAll(food int, picked [][]float64, weeks int, times float64) float64 {
	sum := 0.0
	for f, row := range picked {
		sum += k.eat(food*k.apart+f, row[:weeks], times)
	}
	return sum
}

// eat is the most a harvest can be worth in the cells of its food, each filled
// once at most: cells of falling worth, each as full as those before allow
// (weeks a to b can eat only what was picked from a-shelf to b).
func (k *check) eat(food int, picked []float64, times float64) float64 {
	from, to, left := 0, len(picked), 0.0
	for from < to && picked[from] == 0 {
		from++
	}
	for to > from && picked[to-1] == 0 {
		to--
	}
	for _, x := range picked {
		left += times * x
	}
	shelf := k.p.Foods[food/k.apart].Shelf
	to = min(to+shelf, k.p.Weeks)
	eaten, worth := k.eaten, 0.0
	clear(eaten)
	for _, c := range k.cells[food] {
		if c.week < from || c.week >= to {
			continue
		}
		if left <= 0 {
			break
		}
		// The least of: picked in a-shelf..b less eaten in a..b, over a <= week <= b.
		before, after := math.Inf(1), 0.0
		for a, sum := c.week, 0.0; a >= from; a-- { // a's part: picked a-shelf..week less eaten a..week
			if a == c.week {
				for i := max(from, a-shelf); i <= a; i++ {
					sum += times * at(picked, i)
				}
			} else if i := a - shelf; i >= from {
				sum += times * at(picked, i)
			}
			sum -= eaten[a]
			before = min(before, sum)
		}
		least := 0.0
		for b := c.week + 1; b < to; b++ {
			after += times*at(picked, b) - eaten[b]
			least = min(least, after)
		}
		if x := min(before+least, c.most); x > 0 {
			eaten[c.week] += x
			left -= x
			worth += x * c.pays
		}
	}
	return worth
}
