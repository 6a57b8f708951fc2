package season

import (
	"context"
	"fmt"
	"slices"
)

// worth is the value of the plan without penalties and likeness to a prior.
func (s *state) worth() float64 {
	return s.value - s.kept() + float64(s.m.lack*float64(s.lacking()))
}

// plan writes out what the state holds, plantings by option.
func (s *state) plan() Plan {
	var snap snapshot
	s.remember(&snap)
	slices.SortFunc(snap.plantings, func(a, b Planting) int { return a.Option - b.Option })
	return Plan{Plantings: snap.plantings, Pull: snap.pull, Value: s.worth()}
}

// lock puts the locks in, pulling what stays there where it must, and says
// which do not fit.
func (s *state) lock() []string {
	var words []string
	for _, l := range s.m.p.Locks {
		o := &s.m.opts[l.Option]
		if s.plants[l.Option] > 0 {
			words = append(words, fmt.Sprintf("%s is locked twice", o.id))
			continue
		}
		if l.Plants < o.min || l.Plants > o.max {
			words = append(words, fmt.Sprintf("%s is locked with %d plants, want %d to %d", o.id, l.Plants, o.min, o.max))
			continue
		}
		for _, j := range s.m.staysIn[o.space] {
			if s.room(l.Option) >= l.Plants {
				break
			}
			if st := &s.m.stays[j]; s.pull[j] >= o.week {
				s.setPull(int(j), max(st.first, min(s.pull[j], o.week-1)))
			}
		}
		if s.room(l.Option) < l.Plants {
			words = append(words, fmt.Sprintf("%s is locked with %d plants, and there is no room for them", o.id, l.Plants))
			continue
		}
		s.add(l.Option, l.Plants)
		s.locked[l.Option] = true
	}
	return words
}

// lackWords says which musts the plan lacks.
func (s *state) lackWords() []string {
	var words []string
	for k, must := range s.m.p.Musts {
		if s.have[k] >= must.Plants {
			continue
		}
		what := fmt.Sprintf("%d plants of %s%s", must.Plants, must.Crop, inSpace(s.m.p, must.Space))
		most := 0
		for i := range s.m.opts {
			if o := &s.m.opts[i]; slices.Contains(o.musts, int32(k)) && o.min <= o.max {
				most += o.max
			}
		}
		if most == 0 {
			words = append(words, "nothing can be started that would give "+what)
		} else {
			words = append(words, fmt.Sprintf("no plan was found with %s; %d fit", what, s.have[k]))
		}
	}
	return words
}

// cheapestToGiveUp searches once without each must and says which one alone
// could be given up, the best plan first.
func cheapestToGiveUp(ctx context.Context, p *Problem, lim Limits) []string {
	lim.Work = max(lim.Work, DefaultWork) / 8
	lim.Progress, lim.Prior = nil, nil
	best, at := 0.0, -1
	var able []string
	for k, must := range p.Musts {
		q := *p
		q.Musts = slices.Delete(slices.Clone(p.Musts), k, k+1)
		plan := newModel(&q, &lim).search(ctx, lim)
		if plan.Status == Infeasible {
			continue
		}
		able = append(able, must.Crop)
		if at < 0 || plan.Value > best+dust {
			best, at = plan.Value, k
		}
	}
	if at < 0 {
		return []string{"giving up any one of the musts is not enough"}
	}
	return []string{
		fmt.Sprintf("these compete: %s", join(able)),
		fmt.Sprintf("cheapest to give up: %s%s", p.Musts[at].Crop, inSpace(p, p.Musts[at].Space)),
	}
}

// join lists words with commas and a last "and".
func join(words []string) string {
	out := ""
	for i, w := range words {
		switch {
		case i == 0:
		case i == len(words)-1:
			out += " and "
		default:
			out += ", "
		}
		out += w
	}
	return out
}
