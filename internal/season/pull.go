package season

// setPull moves the pull week of stay i to week to and prices it.
func (s *state) setPull(i, to int) {
	if to == s.pull[i] {
		return
	}
	s.value += s.weighPull(i, to)
	st := &s.m.stays[i]
	from := s.pull[i]
	a, b, sign := from+1, to, 1.0
	if to < from {
		a, b, sign = to+1, from, -1
	}
	for w := a; w <= b; w++ {
		s.takeStay(st, w, sign)
		s.used[w] += sign * st.minutes[w]
		s.drink(st, w, sign)
	}
	s.clearAt(st.space, -1, from, -1)
	s.after(st.batch, st.family, from, func(j int32) { s.early[j]-- })
	s.clearAt(st.space, -1, to, 1)
	s.after(st.batch, st.family, to, func(j int32) { s.early[j]++ })
	for _, k := range st.musts {
		if from == st.last {
			s.have[k] -= st.plants
		}
		if to == st.last {
			s.have[k] += st.plants
		}
	}
	s.pull[i] = to
	if st.food >= 0 && a <= b {
		s.eatMore(st.food, st.between(s.pulled, a, b), sign)
	}
}

// weighPull is what moving the pull week of stay i to week to is worth.
func (s *state) weighPull(i, to int) float64 {
	m, st := s.m, &s.m.stays[i]
	from := s.pull[i]
	if to == from {
		return 0
	}
	a, b, sign := from+1, to, 1.0
	if to < from {
		a, b, sign = to+1, from, -1
	}
	sum := s.endWorth(i, to) - s.endWorth(i, from)
	if st.food >= 0 {
		sum += s.weighPulled(st, a, b, sign)
	}
	if m.p.OverCost > 0 {
		for w := a; w <= b; w++ {
			if sign > 0 {
				sum -= s.overMore(w, st.minutes[w])
			} else {
				sum += s.overLess(w, st.minutes[w])
			}
		}
	}
	if m.drinks != nil {
		for w := a; w <= b; w++ {
			if sign > 0 {
				sum -= s.thirstMore(w, st.water[w])
			} else {
				sum += s.thirstLess(w, st.water[w])
			}
		}
	}
	s.each(st.batch, st.family, func(j int32) {
		q, n := &m.opts[j], s.early[j]
		if tooSoon(q, from) {
			n--
		}
		if tooSoon(q, to) {
			n++
		}
		cost := s.returnCost(j)
		if s.early[j] > 0 && n == 0 {
			sum += cost
		} else if s.early[j] == 0 && n > 0 {
			sum -= cost
		}
	})
	if m.p.ClearMax > 0 && m.p.RestCost > 0 {
		sum -= s.pullClear(st.space, from, to)
	}
	for _, k := range st.musts {
		need := m.p.Musts[k].Plants
		now, then := s.have[k], s.have[k]
		if from == st.last {
			then -= st.plants
		}
		if to == st.last {
			then += st.plants
		}
		sum -= float64(m.lack * float64(max(need-then, 0)-max(need-now, 0)))
	}
	return sum
}

// between is what a stay gives in weeks a to b, by future, written into room.
func (st *stay) between(room []harvest, a, b int) []harvest {
	for f, meals := range st.meals {
		room[f] = trimmed(a, meals[a:b+1])
	}
	return room
}

// weighPulled is the worth of the food of a stay in weeks a to b.
func (s *state) weighPulled(st *stay, a, b int, sign float64) float64 {
	from, to, weight := s.span()
	f, lines, sum := &s.m.foods[st.food], s.lines[st.food], 0.0
	for i := from; i < to; i++ {
		more := f.change(lines[i], trimmed(a, st.meals[i][a:b+1]), sign, s.scratch)
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

// endWorth is what pulling stay i in week at is worth of itself: its tail at
// its end, the cost of pulling before.
func (s *state) endWorth(i, at int) float64 {
	st := &s.m.stays[i]
	worth := 0.0
	if at == st.last {
		worth = st.tail
	} else {
		worth = -st.pullCost
	}
	if s.m.keepAt != nil && s.m.keepAt[i] == at {
		worth += s.m.likePull
	}
	return worth
}

// overLess is the cost saved by t fewer minutes in week w.
func (s *state) overLess(w int, t float64) float64 {
	over := s.used[w] - s.m.wish[w]
	if over <= 0 {
		return 0
	}
	return float64(s.m.p.OverCost * min(over, t))
}

// pullClear is the cost in clearing of moving a pull week.
func (s *state) pullClear(space, from, to int) float64 {
	holds, leaves := s.holds[space], s.leaves[space]
	cost := 0.0
	for w := min(from, to); w <= max(from, to) && w < s.m.weeks-1; w++ {
		h, l := holds[w+1], leaves[w+1]
		before := isCleared(h, l)
		if w <= from {
			h--
		}
		if w == from {
			l--
		}
		if w <= to {
			h++
		}
		if w == to {
			l++
		}
		after := isCleared(h, l)
		if before && !after && s.cleared[w+1] > s.m.p.ClearMax {
			cost -= s.m.p.RestCost
		}
		if after && !before && s.cleared[w+1] >= s.m.p.ClearMax {
			cost += s.m.p.RestCost
		}
	}
	return cost
}

// pullRoom says whether stay i may stand to week to beside what is new there.
func (s *state) pullRoom(i, to int) bool {
	st := &s.m.stays[i]
	free, fresh := &s.free[st.space], &s.fresh[st.space]
	for w := s.pull[i] + 1; w <= to; w++ {
		need := [kinds]float64{st.foot[w], st.vol[w], 0, st.support}
		if st.tall {
			need[tall] = st.foot[w]
		}
		for k, x := range need {
			if x > 0 && fresh[k][w] > margin && x > free[k][w]+margin {
				return false
			}
		}
	}
	return true
}
