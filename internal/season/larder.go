package season

// line is one food in one future as the search keeps it, week by week, so that
// a change is priced from its first week on and no further than needed. One
// entry more than there are weeks holds what is left at the end.
type line []larder

// larder is one food in one week of one future.
type larder struct {
	left   float64 // meals in store as the week begins
	pick   float64 // that come in
	recent float64 // that came in lately enough to keep beyond the week
	worth  float64 // of what is eaten
}

// value is what the line is worth to the end.
func (l line) value() float64 {
	sum := 0.0
	for w := range l {
		sum += l[w].worth
	}
	return sum
}

// harvest is meals of a plant in one future, from week lo on.
type harvest struct {
	lo    int
	meals []float32
}

// trimmed leaves out the weeks without meals at both ends.
func trimmed(lo int, meals []float32) harvest {
	for len(meals) > 0 && meals[0] == 0 {
		lo, meals = lo+1, meals[1:]
	}
	for len(meals) > 0 && meals[len(meals)-1] == 0 {
		meals = meals[:len(meals)-1]
	}
	return harvest{lo, meals}
}

// table is the worth of a food in one week, for the delay.
type table struct {
	want, half           float64
	first, second, extra float64 // of a meal in each step
	halfWorth, fullWorth float64 // of half the want, of the want
}

// change gives the worth of adding times × a harvest. scratch needs room for
// as many entries as there are weeks.
func (f *food) change(l line, h harvest, times float64, scratch []float64) float64 {
	lo, hi := h.lo, h.lo+len(h.meals)
	if lo == hi {
		return 0
	}
	left, more, sum := l[lo].left, 0.0, 0.0
	for w := lo; w < len(f.weeks); w++ {
		was, t := &l[w], &f.weeks[w]
		if w >= hi && left == 0 && was.left == 0 {
			return sum // the store is bare with and without: the rest is as it was
		}
		have := left + was.pick
		if w < hi {
			x := float64(times * float64(h.meals[w-lo]))
			have += x
			more += x
		}
		scratch[w] = more
		sum -= was.worth
		if have <= t.want {
			sum += t.upToWant(have)
			left = 0
			continue
		}
		young := was.recent + more
		if early := w - f.shelf; early >= lo {
			young -= scratch[early]
		}
		var worth float64
		worth, left = t.beyond(have, young)
		sum += worth
	}
	return sum
}

// upToWant prices meals up to the want.
func (t *table) upToWant(meals float64) float64 {
	switch {
	case meals <= 0:
		return 0
	case meals <= t.half:
		return meals * t.first
	}
	return t.halfWorth + float64((meals-t.half)*t.second)
}

// beyond eats from more than the want, of which young may wait; what would
// spoil is eaten up to twice the want.
func (t *table) beyond(have, young float64) (worth, left float64) {
	eat, worth := t.want, t.fullWorth
	if spoil := have - young - t.want; spoil > 0 {
		spoil = min(spoil, t.want)
		eat += spoil
		worth += float64(spoil * t.extra)
	}
	return worth, min(have-eat, young)
}

// apply adds times × a harvest, brings the line up to date and gives the change
// of its worth.
func (f *food) apply(l line, h harvest, times float64) float64 {
	lo, hi := h.lo, h.lo+len(h.meals)
	if lo == hi {
		return 0
	}
	for i, x := range h.meals {
		at := &l[lo+i]
		at.pick += float64(times * float64(x))
		if at.pick < crumb {
			at.pick = 0
		}
	}
	run := 0.0
	for w := lo; f.shelf > 0 && w < min(hi+f.shelf-1, len(f.weeks)); w++ {
		if w < hi {
			run += float64(times * float64(h.meals[w-lo]))
		}
		if early := w - f.shelf; early >= lo {
			run -= float64(times * float64(h.meals[early-lo]))
		}
		l[w].recent += run
	}
	return f.settle(l, lo, hi)
}

// crumb is the least pick that counts, in meals: below it stand only the
// remains of adding and taking away the same number.
const crumb = 1e-12

// settle brings a line up to date whose picks have changed from week lo to
// before week hi, and gives the change of its worth.
func (f *food) settle(l line, lo, hi int) float64 {
	left, sum := l[lo].left, 0.0
	for w := lo; w < len(f.weeks); w++ {
		at, t := &l[w], &f.weeks[w]
		if w >= hi && left == 0 && at.left == 0 {
			return sum
		}
		at.left = left
		worth, have := 0.0, left+at.pick
		if have <= t.want {
			worth, left = t.upToWant(have), 0
		} else {
			worth, left = t.beyond(have, at.recent)
		}
		sum += worth - at.worth
		at.worth = worth
	}
	l[len(f.weeks)].left = left
	return sum
}

// settleAll works a line out anew from its picks.
func (f *food) settleAll(l line) {
	run := 0.0
	for w := range f.weeks {
		l[w].recent = 0
		if f.shelf > 0 {
			run += l[w].pick
			if early := w - f.shelf; early >= 0 {
				run -= l[early].pick
			}
			l[w].recent = run
		}
	}
	f.settle(l, 0, len(f.weeks))
}
