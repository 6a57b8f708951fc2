package season

import "fmt"

// bruteMost is how many plans Brute looks at before it gives up.
const bruteMost = 5_000_000

// Brute tries every plan of a tiny problem and prices each with Evaluate. Its
// plan is Proven, or Infeasible when no plan meets the musts and locks. With
// more plans than it can try it gives the best it saw as Interrupted.
func Brute(p *Problem) Plan {
	if faults := Check(p); len(faults) > 0 {
		return Plan{Status: Infeasible, Pull: naturalEnds(p), Conflict: faults}
	}
	b := brute{p: p, locked: map[int]int{}}
	for _, l := range p.Locks {
		b.locked[l.Option] = l.Plants
	}
	b.now.Pull = naturalEnds(p)
	b.best = Plan{Status: Infeasible, Pull: naturalEnds(p), Weighed: len(p.Options)}
	b.pulls(0)
	b.best.Nothing = Evaluate(p, &Plan{Pull: naturalEnds(p)}).Value
	b.best.Work = b.tried
	switch {
	case b.tried > bruteMost:
		b.best.Status = Interrupted
	case b.best.Status != Proven:
		b.best.Conflict = []string{fmt.Sprintf("none of all %d plans meets the musts and locks", b.tried)}
	}
	return b.best
}

type brute struct {
	p      *Problem
	now    Plan
	best   Plan
	locked map[int]int
	tried  int
}

// pulls goes through the pull weeks of stay i and the stays after it.
func (b *brute) pulls(i int) {
	if i == len(b.p.Stays) {
		b.options(0)
		return
	}
	s := &b.p.Stays[i]
	for w := firstPull(b.p, s); w <= lastWeek(b.p, s); w++ {
		b.now.Pull[i] = w
		b.pulls(i + 1)
	}
}

// options goes through the numbers of option i and the options after it.
func (b *brute) options(i int) {
	if b.tried > bruteMost {
		return
	}
	if i == len(b.p.Options) {
		b.judge()
		return
	}
	o := &b.p.Options[i]
	lo, hi := max(o.Min, 1), o.Max
	if n, ok := b.locked[i]; ok {
		lo, hi = n, n
	} else {
		b.options(i + 1)
	}
	for n := lo; n <= hi; n++ {
		b.now.Plantings = append(b.now.Plantings, Planting{Option: i, Plants: n})
		b.options(i + 1)
		b.now.Plantings = b.now.Plantings[:len(b.now.Plantings)-1]
	}
}

func (b *brute) judge() {
	b.tried++
	v := Evaluate(b.p, &b.now)
	if len(v.Faults) > 0 || (b.best.Status == Proven && v.Value <= b.best.Value) {
		return
	}
	b.best.Status, b.best.Value = Proven, v.Value
	b.best.Plantings = append([]Planting(nil), b.now.Plantings...)
	b.best.Pull = append([]int(nil), b.now.Pull...)
}
