package season

import (
	"context"
	"math"
)

// ascent looks for the prices that prove most: it lowers the bound by steps
// against its slope, each price in its own measure and with some memory of the
// steps before (a subgradient method with averaged directions). It stores no
// matrix: a step prices each option anew from its own rows.
type ascent struct {
	e       *expected
	m       *market
	cellAt  []int     // first cell of each food in the list of prices
	parts   int       // first price of a filled part, by level, space and week
	limit   []float64 // by price: room in the row, or in the cell
	ask     []bool    // by price: the row asks for at least (a must)
	most    []float64 // by price: never worth setting higher
	typical []float64 // by price: the size it usually has, 0 = it stays as it is
	likely  []likely  // by option
	charged []likely  // the same with the cost of an early return
	kin     []kin
	kinOf   []int32     // by option: its kin, -1 = none
	free    []bool      // by stay: of no kin
	curves  [][]float64 // by stay: worth by pull week at the prices
	stayAte [][]float64 // by stay and week + 1: worth of what is eaten of it when pulled then
	use     []float64   // by price: used at the prices
	halves  [2]half     // the options are priced in two halves, one after the other or at once
	workers int
	looked  int    // so many times, for the turns
	kept    []kept // by option: what it took when last looked at afresh
	work    int
	clock   func() float64 // share of the time allowed that is gone; nil = none is
	reach   []float64      // by option: never below its worth when last looked at
	all     []int32
	some    []int32
}

// half prices one half of the options; the sums of both are then added in their
// order, so that the result does not depend on the number of workers.
type half struct {
	m    *market // reads the prices of the ascent's, with room of its own to reckon in
	use  []float64
	sum  float64
	paid []paid
}

func newAscent(e *expected) *ascent {
	a := &ascent{e: e, m: newMarket(e), likely: make([]likely, len(e.opts)), charged: make([]likely, len(e.opts)), curves: make([][]float64, len(e.stays)), stayAte: make([][]float64, len(e.stays)), reach: make([]float64, len(e.opts)), kept: make([]kept, len(e.opts))}
	a.limit = append(a.limit, e.limit...)
	n := len(e.limit)
	for k := range e.cells {
		a.cellAt = append(a.cellAt, n)
		n += len(e.cells[k])
		for _, c := range e.cells[k] {
			a.limit = append(a.limit, c.most)
		}
	}
	a.parts = n
	for level := range levels {
		for range len(e.p.Spaces) * e.weeks {
			a.limit = append(a.limit, float64(level+1))
			n++
		}
	}
	a.m.parts = a.parts
	a.ask, a.most, a.typical, a.use = make([]bool, n), make([]float64, n), make([]float64, n), make([]float64, n)
	for k := range a.halves {
		a.halves[k] = half{m: a.m.beside(), use: make([]float64, n)}
	}
	for r := range n {
		a.most[r] = math.MaxFloat64
		switch {
		case r >= e.rows.musts && r < e.rows.end:
			a.ask[r], a.typical[r] = true, 0.3
		case r >= e.rows.minutes && r < e.rows.water:
			a.most[r], a.typical[r] = e.p.OverCost, e.p.OverCost
		case r >= e.rows.water && r < e.rows.groups:
			a.most[r], a.typical[r] = e.p.WaterCost, e.p.WaterCost
		case a.limit[r] <= 2*tolerance: // no room, so nothing that needs it is left
		case r < e.rows.shelf:
			a.typical[r] = 0.3 / a.limit[r]
		case r < e.rows.minutes:
			a.typical[r] = 0.02
		case r < e.rows.groups:
			a.typical[r] = 0.3
		}
	}
	for r := a.parts; r < n; r++ {
		a.typical[r] = 0.3 / a.limit[r]
	}
	a.setKin()
	for k := range e.cells {
		for at, c := range e.cells[k] {
			r := a.cellAt[k] + at
			a.most[r] = c.worth
			if c.most > 0 {
				a.typical[r] = c.worth
			}
		}
	}
	return a
}

// everything lists all options, for value.
func (a *ascent) everything() []int32 {
	if a.all == nil {
		a.all = make([]int32, len(a.e.opts))
		for i := range a.all {
			a.all[i] = int32(i)
		}
	}
	return a.all
}

// near lists the options that are worth more than less at the prices last
// looked at, nearly.
func (a *ascent) near(less float64) []int32 {
	a.some = a.some[:0]
	for i, x := range a.reach {
		if x > less {
			a.some = append(a.some, int32(i))
		}
	}
	return a.some
}

// Products are rounded before they are added, here and in what is called from
// here, so that prices are the same on machines that would do both at once.

// value is the bound at prices x, with what is used at them in a.use. Looking
// at some of the options only, it is a direction to go in and no bound.
func (a *ascent) value(x []float64, some []int32) float64 {
	e, m := a.e, a.m
	m.open(x, a.cellAt)
	clear(a.use)
	sum := 0.0
	for r, y := range x {
		if a.ask[r] {
			sum -= float64(y * a.limit[r])
		} else {
			sum += float64(y * a.limit[r])
		}
	}
	eaten := func(at int32, y float64) { a.use[at] += y }
	a.looked++
	if m.looks = turns[a.looked%len(turns)]; len(some) == len(e.opts) {
		m.looks = both
	}
	for i := range e.stays {
		if a.curves[i] = a.curve(i); a.free[i] {
			at, worth := bestPull(&e.stays[i], a.curves[i])
			sum += worth
			a.takeStay(&e.stays[i], at, eaten)
		}
	}
	a.work += len(x)/256 + 1 // the prices themselves cost a little
	if m.looks == same {
		a.work += len(some) / sameCheap
	} else {
		a.work += len(some)
	}
	cut, workers := len(some)/2, a.atOnce(len(some))
	parallel(workers, len(a.halves), func(k int) {
		a.price(&a.halves[k], [2][]int32{some[:cut], some[cut:]}[k])
	})
	sum += a.settleKin(eaten)
	parallel(workers, len(a.halves), func(k int) { a.takePaid(&a.halves[k]) })
	for k := range a.halves {
		sum += a.halves[k].sum
		for r, y := range a.halves[k].use {
			a.use[r] += y
		}
	}
	return sum
}

// alonePriced is how many options priced on the mean harvest one worker has done
// before a second has begun, nearly.
const alonePriced = 1500

// atOnce is how many workers a look at so many options is worth.
func (a *ascent) atOnce(some int) int {
	if a.e.apart > 1 {
		some *= apartDear
	}
	if a.m.looks == same {
		some /= sameCheap
	}
	if some < alonePriced {
		return 1
	}
	return a.workers
}

// price prices some options into a half.
func (a *ascent) price(h *half, some []int32) {
	h.m.follow(a.m)
	clear(h.use)
	h.sum, h.paid = 0, h.paid[:0]
	for _, i := range some {
		o, x := &a.e.opts[i], paid{i: i}
		if h.m.looks == same {
			a.again(h.m, o, &x)
		} else {
			a.afresh(h.m, o, &x)
		}
		switch {
		case x.n[0] == 0:
		case a.kinOf[i] < 0:
			h.sum += x.worth[0]
			a.take(h, o, &x, 0)
		default:
			h.paid = append(h.paid, x)
		}
	}
}

// kept is what an option took when it was last looked at afresh, as it is and
// with the cost of an early return: how many plants, and what they ate where.
type kept struct {
	n   [2]int
	ate [2][]mouthful
}

// mouthful is so many meals eaten from a cell.
type mouthful struct {
	at int32
	x  float64
}

// afresh looks for the best number of plants of o and keeps what they take.
func (a *ascent) afresh(m *market, o *column, x *paid) {
	k := &a.kept[x.i]
	n, worth, most := m.batch(o, &a.likely[x.i], 0)
	a.reach[x.i] = most
	k.n = [2]int{n, n}
	if n == 0 {
		return
	}
	x.worth = [2]float64{worth, worth}
	a.eatInto(m, o, k, 0)
	if o.returning > 0 && a.kinOf[x.i] >= 0 {
		if k.n[1], x.worth[1], _ = m.batch(o, &a.charged[x.i], o.returning); k.n[1] == 0 {
			x.worth[1] = 0
		} else if k.n[1] != n {
			a.eatInto(m, o, k, 1)
		}
	}
	x.n = k.n
}

// eatInto keeps what the plants of o eat.
func (a *ascent) eatInto(m *market, o *column, k *kept, charged int) {
	k.ate[charged] = k.ate[charged][:0]
	if len(o.meals) > 0 {
		m.eatAll(o.food, o.lo, len(o.meals[0]), o.meals, float64(k.n[charged]), func(at int32, y float64) {
			k.ate[charged] = append(k.ate[charged], mouthful{at, y})
		})
	}
}

// mouthfuls is what the plants of o ate, with the cost of an early return or
// without; as many plants eat the same.
func (k *kept) mouthfuls(charged int) []mouthful {
	if k.n[charged] == k.n[0] {
		return k.ate[0]
	}
	return k.ate[charged]
}

// again prices what o took when it was last looked at afresh. That is one way
// to plant and eat, so its slope is nearly that of the best, for little work.
func (a *ascent) again(m *market, o *column, x *paid) {
	k := &a.kept[x.i]
	if k.n[0] == 0 {
		return
	}
	b := m.bill(o, 0)
	for charged := range 2 {
		n := k.n[charged]
		if charged == 1 && (o.returning <= 0 || a.kinOf[x.i] < 0) {
			x.n[1], x.worth[1] = x.n[0], x.worth[0]
			break
		}
		worth := -b.fixed - float64(float64(n)*b.plant) - b.lost(n)
		if charged == 1 {
			worth -= float64(float64(min(n, o.atRisk)) * o.returning)
		}
		if m.crowds[o.space] {
			for w, f := range o.foot {
				worth -= m.partCost(o.space, o.week+w, float64(f*float64(n)))
			}
		}
		for _, y := range k.mouthfuls(charged) {
			worth += float64(float64(a.most[y.at]-m.x[y.at]) * y.x)
		}
		if n > 0 && (worth > 0 || o.locked > 0) {
			x.n[charged], x.worth[charged] = n, worth
		}
	}
}

// take adds what the plants of o use and eat, with the cost of an early return
// or without.
func (a *ascent) take(h *half, o *column, x *paid, charged int) {
	a.takeOption(h.use, o, float64(x.n[charged]))
	for _, y := range a.kept[x.i].mouthfuls(charged) {
		h.use[y.at] += y.x
	}
}

// takeOption adds what so many plants of o use to use.
func (a *ascent) takeOption(use []float64, o *column, n float64) {
	e := a.e
	for k, f := range o.foot {
		w := o.week + k
		f = float64(f * n)
		use[e.room(o.space, area, w)] += f
		if o.flat {
			use[e.room(o.space, volume, w)] += float64(n * o.litres)
		} else {
			use[e.room(o.space, volume, w)] += float64(f * o.litres)
		}
		if k >= o.tallFrom {
			use[e.room(o.space, tall, w)] += f
		}
		if o.support > 0 {
			use[e.room(o.space, support, w)] += float64(n * o.support)
		}
	}
	for k, f := range o.foot {
		a.takeParts(use, o.space, o.week+k, float64(n*f))
	}
	if o.places > 0 {
		for i := o.shelfLo; i < o.shelfHi; i++ {
			use[e.rows.shelf+i] += float64(n * o.places)
		}
	}
	for k, t := range o.minutes {
		if r := e.rows.minutes + o.week + k; r < e.rows.water {
			use[r] += float64(n * t)
		}
	}
	for k, l := range o.water {
		if r := e.rows.water + o.week + k; r < e.rows.groups {
			use[r] += float64(n * l)
		}
	}
	if r := e.rows.minutes + o.week; r < e.rows.water {
		use[r] += o.batchMinutes
	}
	for _, r := range o.groups {
		use[r] += n
	}
	for _, r := range o.musts {
		use[r] += n
	}
}

// curve is what each pull week of stay i is worth at the prices, from the first.
// What is eaten by then is reckoned when options are looked at afresh.
func (a *ascent) curve(i int) []float64 {
	e, x, s := a.e, a.m.x, &a.e.stays[i]
	fresh := a.m.looks != same || a.stayAte[i] == nil
	if fresh {
		a.stayAte[i] = make([]float64, s.last+2)
	}
	out := make([]float64, 0, s.last-s.first+1)
	cost := 0.0
	for w := -1; w <= s.last; w++ {
		if w >= 0 {
			for k := range kinds {
				if t := s.take[k][w]; t > 0 {
					cost += float64(t * x[e.room(s.space, k, w)])
				}
			}
			cost += a.m.partCost(s.space, w, s.take[area][w])
			if r := e.rows.minutes + w; r < e.rows.water {
				cost += float64(s.minutes[w] * x[r])
			}
			if r := e.rows.water + w; r < e.rows.groups {
				cost += float64(s.water[w] * x[r])
			}
		}
		if w < s.first {
			continue
		}
		worth := -cost
		if w == s.last {
			worth += s.tail
			for _, r := range s.musts {
				worth += float64(x[r] * float64(s.plants))
			}
		} else {
			worth -= s.pullCost
		}
		if s.food >= 0 && w >= 0 {
			if fresh {
				a.stayAte[i][w+1] = a.m.eatAll(s.food, 0, w+1, s.meals, 1, nil)
			}
			worth += a.stayAte[i][w+1]
		}
		out = append(out, worth)
	}
	return out
}

// bestPull is the pull week that is worth most.
func bestPull(s *stand, curve []float64) (at int, worth float64) {
	worth = math.Inf(-1)
	for k, x := range curve {
		if x > worth {
			at, worth = s.first+k, x
		}
	}
	return at, worth
}

// takeStay adds what s uses when it is pulled in week at.
func (a *ascent) takeStay(s *stand, at int, eaten func(int32, float64)) {
	e := a.e
	for w := 0; w <= at; w++ {
		for k := range kinds {
			a.use[e.room(s.space, k, w)] += s.take[k][w]
		}
		a.takeParts(a.use, s.space, w, s.take[area][w])
		if r := e.rows.minutes + w; r < e.rows.water {
			a.use[r] += s.minutes[w]
		}
		if r := e.rows.water + w; r < e.rows.groups {
			a.use[r] += s.water[w]
		}
	}
	if at == s.last {
		for _, r := range s.musts {
			a.use[r] += float64(s.plants)
		}
	}
	if s.food >= 0 && at >= 0 {
		a.m.eatAll(s.food, 0, at+1, s.meals, 1, eaten)
	}
}

// Steps of the ascent. Each price moves by about a share of what is typical
// for its kind, a larger share at first than at the end.
const (
	firstStep = 0.2
	warmStep  = 0.06
	lastStep  = 0.003
	keepWay   = 0.8  // of the direction of the steps before
	keepSize  = 0.95 // of the mean square slope seen before
	keepMean  = 0.98 // of the running mean of the prices
	fullLook  = 48   // steps between looks at all options
	nearLeast = 0.03 // meals from paying within which an option is always looked at
	nearStep  = 5    // meals more for a step of 1: prices that move far may bring it near
	sparse    = 7    // at first one option in so many stands for all
	sparseFor = 0.06 // of the work
	hurried   = 0.5  // the same where time is short
	sameCheap = 8    // options priced again that count as one looked at afresh
	apartDear = 10   // options priced on the mean harvest that cost as much as one with the futures told apart
)

// paces is how often the step is made smaller on the way from the first to the
// last; it is a power of 2.
const paces = 1024

// paced is the step when so much of the work is done, falling by the same share
// at each pace. It is made of square roots and products, which are the same on
// every machine; powers are not.
func paced(first, done float64) float64 {
	share := lastStep / first
	for n := paces; n > 1; n /= 2 {
		share = math.Sqrt(share)
	}
	step := first
	for range int(done * paces) {
		step = float64(step * share)
	}
	return step
}

// done is the share that is done of so much work, or gone of the time allowed.
func (a *ascent) done(work int) float64 {
	done := float64(a.work) / float64(work)
	if a.clock != nil {
		done = max(done, a.clock())
	}
	return done
}

// sparseTill is the share of the whole until which some options stand for all:
// longer where the clock leaves no time for leastLooks at each.
func (a *ascent) sparseTill(done float64) float64 {
	if a.clock != nil && float64(a.work) < float64(done*float64(leastLooks*len(a.e.opts))) {
		return hurried
	}
	return sparseFor
}

// climb makes steps from x until so much work is done and returns the best
// prices seen: along the way, and of their running mean. Most steps look only
// at options that pay or nearly pay; only a look at all of them counts.
func (a *ascent) climb(ctx context.Context, x []float64, work int, first float64, tell func(best float64)) []float64 {
	best, top := math.Inf(1), append([]float64(nil), x...)
	see := func(now float64, at []float64) {
		if now < best {
			best = now
			copy(top, at)
		}
	}
	way, size, mean := make([]float64, len(x)), make([]float64, len(x)), append([]float64(nil), x...)
	wayLeft, sizeLeft := 1.0, 1.0
	some := a.everything()
	if first == firstStep && len(some) > 50*sparse {
		some = nil
		for i := range a.e.opts {
			if i%sparse == 0 || len(a.e.opts[i].musts) > 0 || a.e.opts[i].locked > 0 {
				some = append(some, int32(i))
			}
		}
	}
	coarse := len(some) < len(a.e.opts)
	for n := 1; ctx.Err() == nil; n++ {
		done := a.done(work)
		if done >= 1 {
			break
		}
		step := paced(first, done)
		switch {
		case coarse && done < a.sparseTill(done):
			a.value(x, some)
		case n%fullLook == 0 || n == 1 || coarse:
			coarse = false
			see(a.value(x, a.everything()), x)
			some = a.near(-nearLeast - float64(nearStep*step))
			tell(best)
		default:
			a.value(x, some)
		}
		wayLeft = float64(wayLeft * keepWay)
		sizeLeft = float64(sizeLeft * keepSize)
		for r := range x {
			if a.typical[r] == 0 {
				continue
			}
			slope := float64((a.limit[r] - a.use[r]) * a.typical[r])
			if a.ask[r] {
				slope = -slope
			}
			way[r] = float64(keepWay*way[r]) + float64((1-keepWay)*slope)
			size[r] = float64(keepSize*size[r]) + float64((1-keepSize)*slope*slope)
			move := way[r] / (1 - wayLeft) / (math.Sqrt(size[r]/(1-sizeLeft)) + 1e-9)
			x[r] = min(max(x[r]-float64(step*a.typical[r]*move), 0), a.most[r])
			mean[r] += float64((1 - keepMean) * (x[r] - mean[r]))
		}
	}
	for _, at := range [][]float64{x, mean} {
		see(a.value(at, a.everything()), at)
	}
	tell(best)
	return top
}
