package season

import "fmt"

// Verdict is what Evaluate has to say of a plan.
type Verdict struct {
	Value     float64      // mean of PerFuture, the worst of them by WorstShare, meals; without futures, the costs and worths that are no food
	PerFuture []float64    // worth of the plan in each future
	Faults    []string     // limits, musts and locks broken, in words; empty = the plan is valid
	Table     [][]WeekFood // [food][week]
	Minutes   []float64    // of work, by week
	Water     []float64    // litres a day in a dry week, by week
	Shelf     []float64    // places taken, by week from ShelfStart
	Parts     Parts
}

// WeekFood is one food in one week.
type WeekFood struct {
	Wanted float64   // meals
	Picked []float64 // by future, meals that come in
	Eaten  []float64 // by future, meals eaten in this week
	Spoilt []float64 // by future, meals that keep no longer than this week
}

// Parts is where the value comes from. Value is Food (mean over the futures)
// + Bonus + Tail less all the others; Lean is what the worst futures' share
// takes off.
type Parts struct {
	Food, Bonus, Tail                                                       float64
	Batches, Plants, Risk, Over, Thirst, Rotation, Clearing, PullCost, Lean float64
}

// tolerance is how far sums may stand above a limit before it counts as a
// fault, in the limit's own unit: room for the rounding of a few hundred sums.
const tolerance = 1e-6

// Evaluate prices plan and checks every limit. It is plain on purpose and
// shares no code with Search. A plan with faults is still priced, as far as it
// makes sense; a problem that Check refuses is not priced at all.
func Evaluate(p *Problem, plan *Plan) Verdict {
	var v Verdict
	if v.Faults = Check(p); len(v.Faults) > 0 {
		return v
	}
	e := evaluation{p: p, v: &v}
	e.read(plan)
	e.checkRoom()
	e.checkShelf()
	e.checkCounts()
	e.priceLinear()
	e.priceMinutes()
	e.priceWater()
	e.priceRotation()
	e.priceClearing()
	e.priceFood()
	return v
}

// evaluation is one plan being priced.
type evaluation struct {
	p         *Problem
	v         *Verdict
	plantings []Planting // those with a lawful option and at least one plant
	pull      []int      // per stay
}

func (e *evaluation) fault(format string, a ...any) {
	e.v.Faults = append(e.v.Faults, fmt.Sprintf(format, a...))
}

// lastWeek is the natural end of a stay within the plan.
func lastWeek(p *Problem, s *Stay) int { return min(s.End, p.Weeks-1) }

// firstPull is the earliest week a stay may be pulled.
func firstPull(p *Problem, s *Stay) int { return min(max(s.MustKeepTo, -1), lastWeek(p, s)) }

// read takes the plan apart and checks what needs no sums.
func (e *evaluation) read(plan *Plan) {
	p := e.p
	seen := map[int]bool{}
	for _, pl := range plan.Plantings {
		if pl.Option < 0 || pl.Option >= len(p.Options) {
			e.fault("planting of option %d, which is not in the list", pl.Option)
			continue
		}
		o := &p.Options[pl.Option]
		if seen[pl.Option] {
			e.fault("%s is planted twice", o.ID)
		}
		seen[pl.Option] = true
		if pl.Plants < max(o.Min, 1) || pl.Plants > o.Max {
			e.fault("%s: %d plants, want %d to %d", o.ID, pl.Plants, o.Min, o.Max)
		}
		if pl.Plants > 0 {
			e.plantings = append(e.plantings, pl)
		}
	}
	e.pull = make([]int, len(p.Stays))
	for i := range p.Stays {
		e.pull[i] = lastWeek(p, &p.Stays[i])
	}
	if len(plan.Pull) != len(p.Stays) {
		e.fault("%d pull weeks for %d plantings in the ground", len(plan.Pull), len(p.Stays))
		return
	}
	for i, w := range plan.Pull {
		s := &p.Stays[i]
		if w < firstPull(p, s) || w > lastWeek(p, s) {
			e.fault("%s: pulled in week %d, want %d to %d", s.ID, w, firstPull(p, s), lastWeek(p, s))
			continue
		}
		e.pull[i] = w
	}
}

// held is entry i of a row whose last entry holds on; an empty row is 0.
func held(row []float64, i int) float64 {
	if len(row) == 0 {
		return 0
	}
	return row[min(i, len(row)-1)]
}

// once is entry i of a row that is 0 beyond its ends.
func once(row []float64, i int) float64 {
	if i < 0 || i >= len(row) {
		return 0
	}
	return row[i]
}

// rootShare is the part of its full root room a planting uses: its footprint
// over its largest, or all of it where no footprint is given.
func rootShare(foot []float64, i, weeks int) float64 {
	most := 0.0
	for k := range weeks {
		most = max(most, held(foot, k))
	}
	if most == 0 {
		return 1
	}
	return held(foot, i) / most
}

// checkRoom checks area, root volume, tall ground and support by space and
// week. What stands already is no fault by itself: a limit is broken only in a
// week in which something new takes part of it.
func (e *evaluation) checkRoom() {
	p := e.p
	names := [4]string{"m2 of ground", "litres of root room", "m2 of ground for tall plants", "m of support"}
	for si := range p.Spaces {
		space := &p.Spaces[si]
		limit := [4]float64{space.AreaM2, space.VolumeL, space.TallM2, space.SupportM}
		for w := range p.Weeks {
			var fresh, old [4]float64
			for _, pl := range e.plantings {
				o := &p.Options[pl.Option]
				if o.Space != si || w < o.Week || w > o.End {
					continue
				}
				n := float64(pl.Plants)
				fresh[0] += n * held(o.Footprint, w-o.Week)
				fresh[1] += n * o.VolumeL * rootShare(o.Footprint, w-o.Week, o.End-o.Week+1)
				if o.TallFrom >= 0 && w >= o.TallFrom {
					fresh[2] += n * held(o.Footprint, w-o.Week)
				}
				fresh[3] += n * o.SupportM
			}
			for i := range p.Stays {
				s := &p.Stays[i]
				if s.Space != si || w > e.pull[i] {
					continue
				}
				old[0] += held(s.Footprint, w)
				old[1] += s.VolumeL * rootShare(s.Footprint, w, lastWeek(p, s)+1)
				if s.Tall {
					old[2] += held(s.Footprint, w)
				}
				old[3] += s.SupportM
			}
			for k := range limit {
				if fresh[k] > tolerance && fresh[k]+old[k] > limit[k]+tolerance {
					e.fault("space %s, week %d: %.3f %s taken, %.3f there", space.ID, w, fresh[k]+old[k], names[k], limit[k])
				}
			}
		}
	}
}

// checkShelf checks the shelf places by week, from ShelfStart.
func (e *evaluation) checkShelf() {
	p := e.p
	e.v.Shelf = make([]float64, max(p.Weeks-p.ShelfStart, 0))
	for i := range e.v.Shelf {
		w := p.ShelfStart + i
		for _, pl := range e.plantings {
			o := &p.Options[pl.Option]
			if w >= o.ShelfFrom && w < o.Week && o.ShelfFrom != -1<<30 {
				e.v.Shelf[i] += float64(pl.Plants) * o.ShelfPlaces
			}
		}
		if e.v.Shelf[i] > once(p.Shelf, i)+tolerance {
			e.fault("shelf, week %d: %.1f places taken, %.1f there", w, e.v.Shelf[i], once(p.Shelf, i))
		}
	}
}

// checkCounts checks group totals, musts and locks.
func (e *evaluation) checkCounts() {
	p := e.p
	total := map[string]int{}
	for _, pl := range e.plantings {
		o := &p.Options[pl.Option]
		for _, group := range []string{o.MaxTotal, o.AlsoTotal} {
			if group == "" {
				continue
			}
			total[group] += pl.Plants
			most, ok := p.Totals[group]
			if ok && total[group] > most && total[group]-pl.Plants <= most {
				e.fault("group %s: more than the %d plants there may be", group, most)
			}
		}
	}
	for _, m := range p.Musts {
		n := 0
		for _, pl := range e.plantings {
			o := &p.Options[pl.Option]
			if m.counts(o) {
				n += pl.Plants
			}
		}
		for i := range p.Stays {
			s := &p.Stays[i]
			if s.Crop == m.Crop && (m.Space == -1 || m.Space == s.Space) && e.pull[i] == lastWeek(p, s) {
				n += s.Plants
			}
		}
		if n < m.Plants {
			e.fault("must: %d plants of %s%s, %d in the plan", m.Plants, m.Crop, inSpace(p, m.Space), n)
		}
	}
	for _, l := range p.Locks {
		kept := false
		for _, pl := range e.plantings {
			kept = kept || pl == l
		}
		if !kept {
			e.fault("lock: %d plants of %s are not in the plan", l.Plants, p.Options[l.Option].ID)
		}
	}
}

// inSpace says " in" a space, or nothing for any space.
func inSpace(p *Problem, space int) string {
	if space < 0 {
		return ""
	}
	return " in " + p.Spaces[space].ID
}
