package season

// room is how many plants of option i the plan has room for, 0 when fewer than
// its smallest batch.
func (s *state) room(i int) int {
	s.looks++
	o := &s.m.opts[i]
	n := o.max
	for _, g := range o.groups {
		n = min(n, s.left[g])
	}
	if n < o.min {
		return 0
	}
	free := &s.free[o.space]
	ground, litres := free[area], free[volume]
	least := float64(o.min)
	for k, f := range o.foot {
		w := o.week + k
		if f > 0 {
			if have := ground[w] + margin; float64(n)*f > have {
				if least*f > have {
					return 0
				}
				n = int(have / f)
			}
		}
		if v := o.vol[k]; v > 0 {
			if have := litres[w] + margin; float64(n)*v > have {
				if least*v > have {
					return 0
				}
				n = int(have / v)
			}
		}
		if k >= o.tallFrom && f > 0 {
			if have := free[tall][w] + margin; float64(n)*f > have {
				if least*f > have {
					return 0
				}
				n = int(have / f)
			}
		}
		if o.support > 0 {
			if have := free[support][w] + margin; float64(n)*o.support > have {
				if least*o.support > have {
					return 0
				}
				n = int(have / o.support)
			}
		}
	}
	if o.places > 0 {
		for w := o.shelfLo; w < o.shelfHi; w++ {
			if have := s.shelf[w] + margin; float64(n)*o.places > have {
				if least*o.places > have {
					return 0
				}
				n = int(have / o.places)
			}
		}
	}
	if n < o.min {
		return 0
	}
	return n
}

// weigh is what putting n plants of option i into the plan is worth. The
// option must not be in the plan. It does not check room.
func (s *state) weigh(i, n int) float64 {
	o := &s.m.opts[i]
	return s.weighAside(o, i, n) + s.weighFood(o, n)
}

func (s *state) weighFood(o *opt, n int) float64 {
	if o.food < 0 || o.hi <= o.lo {
		s.work++
		return 0
	}
	from, to, weight := s.span()
	f, lines, sum := &s.m.foods[o.food], s.lines[o.food], 0.0
	for i := from; i < to; i++ {
		more := f.change(lines[i], o.meals[i], float64(n), s.scratch)
		if sum += more; s.leans() {
			s.lean.then[i-1] = s.lean.by[i-1] + more
		}
	}
	s.work += to - from
	if s.leans() {
		return s.lean.worth(s.lean.then) - s.lean.now
	}
	return float64(sum * weight)
}

// leans says whether the worst futures have a share in what is weighed now.
func (s *state) leans() bool { return s.futures && s.lean != nil }

// weighAside is all of weigh but the food.
func (s *state) weighAside(o *opt, i, n int) float64 {
	m := s.m
	x := float64(n)
	sum := o.fixed + float64(x*o.each) - float64(o.risked(n)*o.risk)
	if m.keep != nil {
		sum += m.keep[i]
	}
	for k, t := range o.minutes {
		t = float64(x * t)
		if k == 0 {
			t += o.batchMinutes
		}
		sum -= s.overMore(o.week+k, t)
	}
	if len(o.minutes) == 0 && o.batchMinutes > 0 {
		sum -= s.overMore(o.week, o.batchMinutes)
	}
	for k, l := range o.water {
		sum -= s.thirstMore(o.week+k, float64(x*l))
	}
	if o.batch >= 0 {
		if o.returning > 0 && s.cameBefore(o) > 0 {
			sum -= float64(o.risked(n) * o.returning)
		}
		s.after(o.batch, o.family, o.end, func(j int32) {
			if s.early[j] == 0 {
				sum -= s.returnCost(j)
			}
		})
	}
	if m.p.ClearMax > 0 && m.p.RestCost > 0 {
		sum -= s.clearChange(o.space, o.week, o.end)
	}
	for _, k := range o.musts {
		if lacks := m.p.Musts[k].Plants - s.have[k]; lacks > 0 {
			sum += float64(m.lack * float64(min(lacks, n)))
		}
	}
	return sum
}

// risked is how many of n plants pay for what could be lost.
func (o *opt) risked(n int) float64 { return float64(min(n, o.atRisk)) }

// returnCost is what planting j costs where its family comes back early.
func (s *state) returnCost(j int32) float64 {
	o := &s.m.opts[j]
	return float64(o.risked(int(s.plants[j])) * o.returning)
}

// overMore is the cost of t more minutes in week w.
func (s *state) overMore(w int, t float64) float64 {
	over := s.used[w] + t - s.m.wish[w]
	if over <= 0 {
		return 0
	}
	return float64(s.m.p.OverCost * min(over, t))
}

// thirstMore is the cost of l more litres a day in week w.
func (s *state) thirstMore(w int, l float64) float64 {
	over := s.drunk[w] + l - s.m.drinks[w]
	if over <= 0 {
		return 0
	}
	return float64(s.m.p.WaterCost * min(over, l))
}

// thirstLess is the cost saved by l fewer litres a day in week w.
func (s *state) thirstLess(w int, l float64) float64 {
	over := s.drunk[w] - s.m.drinks[w]
	if over <= 0 {
		return 0
	}
	return float64(s.m.p.WaterCost * min(over, l))
}

// clearChange is the cost in clearing of one more thing standing in a space
// from week from to week to.
func (s *state) clearChange(space, from, to int) float64 {
	holds, leaves := s.holds[space], s.leaves[space]
	cost := 0.0
	for w := from; w <= to && w < s.m.weeks-1; w++ {
		before := isCleared(holds[w+1], leaves[w+1])
		after := w == to && holds[w+1] == leaves[w+1]
		if before && !after && s.cleared[w+1] > s.m.p.ClearMax {
			cost -= s.m.p.RestCost
		}
		if after && !before && s.cleared[w+1] >= s.m.p.ClearMax {
			cost += s.m.p.RestCost
		}
	}
	return cost
}

// add puts n plants of option i in and prices it.
func (s *state) add(i, n int) {
	aside := s.weighAside(&s.m.opts[i], i, n)
	s.value += aside + s.put(i, n)
	s.work += s.counts()
}

// remove takes option i out and prices it.
func (s *state) remove(i int) (n int) {
	n = int(s.plants[i])
	food := s.shift(i, n, -1)
	s.value += food - s.weighAside(&s.m.opts[i], i, n)
	s.work += s.counts()
	return n
}

// batch finds the best number of plants of option i, and what it is worth.
// ok is false when there is no room. It leans on the worth being concave in
// the number, which all but the eating rule's few corners are.
func (s *state) batch(i int) (n int, worth float64, ok bool) {
	most := s.room(i)
	if most == 0 {
		return 0, 0, false
	}
	o := &s.m.opts[i]
	if lo := o.min; o.atRisk > lo && o.atRisk < most && (o.risk > 0 || o.returning > 0 && s.cameBefore(o) > 0) {
		// What could be lost is no more than so many plants': concave below and above.
		below, then := s.between(i, lo, o.atRisk)
		if n, worth = s.between(i, o.atRisk, most); then > worth {
			n, worth = below, then
		}
		return n, worth, true
	}
	n, worth = s.between(i, o.min, most)
	return n, worth, true
}

// between finds the best number of plants of option i from lo to hi, and what
// it is worth.
func (s *state) between(i, lo, hi int) (n int, worth float64) {
	best, at := s.weigh(i, hi), hi
	if lo == hi {
		return at, best
	}
	// The slope at the top says whether all that fit are wanted.
	if below := s.weigh(i, hi-1); below <= best {
		return at, best
	} else {
		best, at = below, hi-1
	}
	hi--
	for lo < hi {
		mid := (lo + hi) / 2
		a := s.weigh(i, mid)
		b := best
		if mid+1 != at {
			b = s.weigh(i, mid+1)
		}
		if a >= b {
			hi = mid
			if a >= best {
				best, at = a, mid
			}
		} else {
			lo = mid + 1
			if b > best {
				best, at = b, mid+1
			}
		}
	}
	return at, best
}
