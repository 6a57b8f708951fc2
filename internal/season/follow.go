package season

// What stands after what: spaces cleared in a week, and families that return
// to a batch of medium.

// isCleared says whether a space is cleared in a week, from its counts.
func isCleared(holds, leaves int) bool { return holds > 0 && holds == leaves }

// clearAt counts something standing from week from to week to in a space, or
// no longer (sign -1).
func (s *state) clearAt(space, from, to, sign int) {
	holds, leaves := s.holds[space], s.leaves[space]
	for w := from; w <= to; w++ {
		before := isCleared(holds[w+1], leaves[w+1])
		holds[w+1] += sign
		if w == to {
			leaves[w+1] += sign
		}
		after := isCleared(holds[w+1], leaves[w+1])
		if before != after {
			if after {
				s.cleared[w+1]++
			} else {
				s.cleared[w+1]--
			}
		}
	}
}

// tooSoon says whether q returns too early after its family left in week end.
func tooSoon(q *opt, end int) bool {
	return q.week > end && q.week-end-1 < q.interval
}

// each calls do for each planting of a family in a batch.
func (s *state) each(batch, family int, do func(j int32)) {
	if batch < 0 {
		return
	}
	for _, sp := range s.m.inBatch[batch] {
		for _, j := range s.in[sp] {
			if s.m.opts[j].family == family {
				do(j)
			}
		}
	}
}

// after calls do for each planting that returns too early when its family
// leaves the batch in week end.
func (s *state) after(batch, family, end int, do func(j int32)) {
	s.each(batch, family, func(j int32) {
		if tooSoon(&s.m.opts[j], end) {
			do(j)
		}
	})
}

// cameBefore counts what left the option's batch too shortly before it.
func (s *state) cameBefore(o *opt) int32 {
	if o.batch < 0 || o.interval <= 0 {
		return 0
	}
	n := int32(0)
	if last, ok := s.m.p.Batches[o.batch].Last[o.family]; ok && tooSoon(o, last) {
		n++
	}
	for _, sp := range s.m.inBatch[o.batch] {
		for _, j := range s.in[sp] {
			if q := &s.m.opts[j]; q.family == o.family && tooSoon(o, q.end) {
				n++
			}
		}
		for _, j := range s.m.staysIn[sp] {
			if s.m.stays[j].family == o.family && tooSoon(o, s.pull[j]) {
				n++
			}
		}
	}
	return n
}
