package season

import "math"

// kin is a family in a batch of medium. Some week is the first in which any of
// it leaves the batch, or none leaves. What leaves before that week is in no
// such plan, and what begins too soon after it pays for an early return. So the
// bound takes the best week, with all that is not ruled out by it.
type kin struct {
	may   []bool // entry t+1: the first of it may leave in week t, from -1; the last entry: none leaves
	stays []int32
	worth []float64 // by entry, at the prices
	first int       // the week that is worth most
}

// paid is an option of a kin that pays at the prices, without and with the cost
// of an early return.
type paid struct {
	i     int32
	n     [2]int
	worth [2]float64
}

// setKin finds the families in which an early return depends on the plan, and
// the weeks in which the first of them may leave.
func (a *ascent) setKin() {
	e, p := a.e, a.e.p
	at := map[lineage]int32{}
	for i := range e.opts {
		if o := &e.opts[i]; o.returning > 0 {
			key := lineage{p.Spaces[o.space].Batch, p.Options[i].Family}
			if _, ok := at[key]; !ok {
				at[key] = int32(len(a.kin))
				a.kin = append(a.kin, kin{may: make([]bool, e.weeks+2), worth: make([]float64, e.weeks+3)})
			}
		}
	}
	latest := make([]int, len(a.kin)) // weeks = none need leave
	for k := range a.kin {
		latest[k] = e.weeks
		a.kin[k].may[e.weeks+1] = true
	}
	a.kinOptions(at, latest)
	a.kinStays(at, latest)
	for k := range a.kin {
		clear(a.kin[k].may[latest[k]+2:])
	}
}

// kinOptions notes the kin of each option that may be planted. One that is
// locked leaves in its last week at the latest.
func (a *ascent) kinOptions(at map[lineage]int32, latest []int) {
	p := a.e.p
	a.kinOf = make([]int32, len(a.e.opts))
	for i := range a.e.opts {
		o := &a.e.opts[i]
		k, ok := at[lineage{p.Spaces[o.space].Batch, p.Options[i].Family}]
		a.kinOf[i] = -1
		if !ok || o.min > o.max && o.locked == 0 {
			continue
		}
		a.kinOf[i] = k
		a.kin[k].may[o.end()+1] = true
		if o.locked > 0 {
			latest[k] = min(latest[k], o.end())
		}
	}
}

// kinStays notes the kin of what stands. It leaves at its end at the latest.
func (a *ascent) kinStays(at map[lineage]int32, latest []int) {
	p := a.e.p
	a.free = make([]bool, len(a.e.stays))
	for i := range a.e.stays {
		s := &a.e.stays[i]
		k, ok := at[lineage{p.Spaces[s.space].Batch, p.Stays[i].Family}]
		if a.free[i] = !ok; !ok {
			continue
		}
		a.kin[k].stays = append(a.kin[k].stays, int32(i))
		latest[k] = min(latest[k], s.last)
		for w := s.first; w <= s.last; w++ {
			a.kin[k].may[w+1] = true
		}
	}
}

// end is the last week an option holds ground.
func (o *column) end() int { return o.week + len(o.foot) - 1 }

// soon says whether o comes too soon after its family has left in week t.
func (o *column) soon(t int) bool { return t < o.week && o.week-t-1 < o.interval }

// add says that something is worth so much where the first leaves in the weeks
// from to to; in the end the entries are summed.
func (k *kin) add(from, to int, worth float64) {
	if from = max(from, -1); from <= to {
		k.worth[from+1] += worth
		k.worth[to+2] -= worth
	}
}

// addPaid adds an option that pays: it leaves no earlier than the first.
func (k *kin) addPaid(o *column, x *paid) {
	k.add(-1, min(o.week-o.interval-1, o.week-1), x.worth[0])
	k.add(o.week-o.interval, o.week-1, x.worth[1])
	k.add(o.week, o.end(), x.worth[0])
}

// addStay adds what stands: it leaves no earlier than the first.
func (k *kin) addStay(s *stand, curve []float64) {
	best := math.Inf(-1)
	for w := s.last; w >= -1; w-- {
		if w >= s.first {
			best = max(best, curve[w-s.first])
		}
		k.add(w, w, best)
	}
}

// settle chooses the week that is worth most and says how much.
func (k *kin) settle() float64 {
	best, sum := math.Inf(-1), 0.0
	for t, may := range k.may {
		sum += k.worth[t]
		if may && sum > best {
			k.first, best = t-1, sum
		}
	}
	return best
}

// settleKin adds up each kin from what the halves found to pay and from the
// stays, and takes what the stays use.
func (a *ascent) settleKin(eaten func(int32, float64)) float64 {
	for k := range a.kin {
		clear(a.kin[k].worth)
	}
	for h := range a.halves {
		for j := range a.halves[h].paid {
			x := &a.halves[h].paid[j]
			a.kin[a.kinOf[x.i]].addPaid(&a.e.opts[x.i], x)
		}
	}
	sum := 0.0
	for k := range a.kin {
		f := &a.kin[k]
		for _, i := range f.stays {
			f.addStay(&a.e.stays[i], a.curves[i])
		}
		sum += f.settle()
		for _, i := range f.stays {
			s := &a.e.stays[i]
			from := max(s.first, f.first)
			at, _ := bestPull(s, a.curves[i][from-s.first:])
			a.takeStay(s, at+from-s.first, eaten)
		}
	}
	return sum
}

// takePaid takes what the options of kin in a half use.
func (a *ascent) takePaid(h *half) {
	for j := range h.paid {
		x := &h.paid[j]
		o, t, charged := &a.e.opts[x.i], a.kin[a.kinOf[x.i]].first, 0
		if o.soon(t) {
			charged = 1
		}
		if o.end() >= t && x.n[charged] > 0 {
			a.take(h, o, x, charged)
		}
	}
}
