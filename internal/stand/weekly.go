package stand

import "iter"

// Weekly is an amount by plan week of which most weeks hold nothing: only the
// weeks from the first with something to the last are kept, so that tables of
// many starts stay small.
type Weekly struct {
	from int32
	kg   []float32
}

// At is the amount of a week; 0 outside.
func (k Weekly) At(week int) float32 {
	if i := week - int(k.from); i >= 0 && i < len(k.kg) {
		return k.kg[i]
	}
	return 0
}

// All runs over the weeks from the first with something to the last.
func (k Weekly) All() iter.Seq2[int, float32] {
	return func(yield func(int, float32) bool) {
		for i, v := range k.kg {
			if !yield(int(k.from)+i, v) {
				return
			}
		}
	}
}

// Sum is the amount of all weeks.
func (k Weekly) Sum() float64 {
	sum := 0.0
	for _, v := range k.kg {
		sum += float64(v)
	}
	return sum
}

// picked finds the first week with something, and the week after the last.
func picked(weeks []float32) (from, to int) {
	to = len(weeks)
	for to > 0 && weeks[to-1] == 0 {
		to--
	}
	for from < to && weeks[from] == 0 {
		from++
	}
	return from, to
}
