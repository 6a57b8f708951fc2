package season

// worstOf is how many of n futures count as the worst: a quarter, at least one
// of them.
func worstOf(n int) int { return min(max(n/4, 1), n) }

// leaning is the food of a plan future by future, where the worst futures have
// a share of their own in its worth. Costs are the same in every future, so the
// worst are those in which the food is worth least.
type leaning struct {
	share float64   // Problem.WorstShare
	by    []float64 // worth of the food in each future
	then  []float64 // the same after a change that is being weighed
	least []float64 // room for the worst
	now   float64   // what by is worth
}

func newLeaning(p *Problem) *leaning {
	if p.WorstShare <= 0 || p.Futures == 0 {
		return nil
	}
	l := &leaning{share: p.WorstShare, by: make([]float64, p.Futures), then: make([]float64, p.Futures)}
	l.least = make([]float64, 0, worstOf(p.Futures))
	return l
}

// worth is the mean of the futures and of their worst, each by its share. It is
// concave in the worths: a mean of the worst is the least of all means of so
// many.
func (l *leaning) worth(by []float64) float64 {
	sum, least := 0.0, l.least[:0]
	for _, x := range by {
		sum += x
		k := len(least)
		if k < cap(l.least) {
			least = append(least, x)
		} else if x >= least[k-1] {
			continue
		} else {
			k--
		}
		for ; k > 0 && least[k-1] > x; k-- {
			least[k] = least[k-1]
		}
		least[k] = x
	}
	low := 0.0
	for _, x := range least {
		low += x
	}
	return float64((1-l.share)*(sum/float64(len(by)))) + float64(l.share*(low/float64(len(least))))
}

// settle notes that by has changed and gives what that is worth.
func (l *leaning) settle() float64 {
	was := l.now
	l.now = l.worth(l.by)
	return l.now - was
}
