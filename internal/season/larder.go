package season

// line is one food in one future as the search keeps it: cumulative rows, so
// that a change is priced from its first week on and no further than needed.
// Entry w+1 is the state at the end of week w.
type line struct {
	pick  []float64 // meals that come in, by week
	in    []float64 // picked so far
	gone  []float64 // eaten or spoilt so far
	worth []float64 // of what was eaten so far
}

func newLine(weeks int) line {
	all := make([]float64, 4*weeks+3)
	return line{
		pick:  all[:weeks:weeks],
		in:    all[weeks : 2*weeks+1 : 2*weeks+1],
		gone:  all[2*weeks+1 : 3*weeks+2 : 3*weeks+2],
		worth: all[3*weeks+2:],
	}
}

// value is what the line is worth to the end.
func (l *line) value() float64 { return l.worth[len(l.worth)-1] }

// change gives the worth of adding times × meals from week lo on. scratch
// needs room for weeks+1 entries.
func (m *model) change(f *food, l *line, lo int, meals []float32, times float64, scratch []float64) float64 {
	in, gone, worth := l.in, l.gone, l.worth
	weeks := len(l.pick)
	total, out := in[lo], gone[lo]
	sum := 0.0
	hi := lo + len(meals)
	shelf := f.shelf
	for w := lo; w < weeks; w++ {
		if w >= hi && out == total && gone[w] == in[w] {
			// The store is bare with and without: the rest is as it was.
			return sum + worth[lo] - worth[w]
		}
		total += l.pick[w]
		if w < hi {
			total += float64(times * float64(meals[w-lo]))
		}
		scratch[w] = total
		due := 0.0 // picked so long ago that it must go this week
		if w-shelf >= lo {
			due = scratch[w-shelf]
		} else if w-shelf >= 0 {
			due = in[w-shelf+1]
		}
		want := f.want[w]
		have := total - out
		if have <= want {
			if have > 0 {
				sum += float64(m.worth[w] * f.first1(have, want))
			}
			out = total
			continue
		}
		eat := want
		if spoil := due - out - want; spoil > 0 {
			eat += min(spoil, want)
		}
		sum += float64(m.worth[w] * f.price(eat, want))
		out = max(out+eat, due)
	}
	return sum - (worth[weeks] - worth[lo])
}

// first1 prices meals up to the want.
func (f *food) first1(meals, want float64) float64 {
	half := want / 2
	if meals <= half {
		return meals * f.first
	}
	return float64(half*f.first) + float64((meals-half)*f.second)
}

// price prices the want and what is eaten beyond it.
func (f *food) price(meals, want float64) float64 {
	half := want / 2
	return float64(half*f.first) + float64(half*f.second) + float64((meals-want)*f.extra)
}

// apply adds times × meals from week lo on and brings the line up to date.
func (m *model) apply(f *food, l *line, lo int, meals []float32, times float64) {
	for i, x := range meals {
		l.pick[lo+i] += float64(times * float64(x))
		if l.pick[lo+i] < crumb {
			l.pick[lo+i] = 0
		}
	}
	m.settle(f, l, lo)
}

// crumb is the least pick that counts, in meals: below it stand only the
// remains of adding and taking away the same number.
const crumb = 1e-12

// settle recomputes a line from week lo on.
func (m *model) settle(f *food, l *line, lo int) {
	for w := lo; w < len(l.pick); w++ {
		total, out := l.in[w]+l.pick[w], l.gone[w]
		l.in[w+1] = total
		due := 0.0
		if w-f.shelf >= 0 {
			due = l.in[w-f.shelf+1]
		}
		want := f.want[w]
		have := total - out
		worth := 0.0
		if have <= want {
			if have > 0 {
				worth = f.first1(have, want)
			}
			out = total
		} else {
			eat := want
			if spoil := due - out - want; spoil > 0 {
				eat += min(spoil, want)
			}
			worth = f.price(eat, want)
			out = max(out+eat, due)
		}
		l.gone[w+1] = out
		l.worth[w+1] = l.worth[w] + float64(m.worth[w]*worth)
	}
}
