package stand

import (
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// tally gathers the mean picture over futures, by plan week.
type tally struct {
	cover, height []float32
	flow          []float32 // fruit set by day, scratch
	wait          int       // days a start may be put off
}

func (t *Table) growth(way crop.Way, day cal.Day, standing bool) Growth {
	a := t.air
	weeks := a.env.Weeks
	g := Growth{Outcomes: make([]Outcome, a.k), Sown: day}
	g.FootprintM2, g.HeightM = make([]float32, weeks), make([]float32, weeks)
	if way == crop.SetOut {
		g.ShelfWeeks = int(t.Crop.NurseryWeeks.Value + 0.5)
		g.Sown = day - cal.Day(7*g.ShelfWeeks)
	}
	co := t.course(way)
	week := make([]float32, weeks) // one future's picking, scratch
	var kg []float32               // the weeks with picking of all futures
	sum := tally{cover: g.FootprintM2, height: g.HeightM, flow: make([]float32, a.n), wait: waitDays}
	for f := range a.k {
		o := &g.Outcomes[f]
		if co == nil {
			o.Cause = NotUp
			continue
		}
		clear(week)
		p := t.run(co, f, a.at(day), standing, &sum, week)
		t.outcome(&p, o)
		from, to := picked(week)
		o.Kg.from = int32(from)
		o.Kg.kg = week[from:to]
		kg = append(kg, week[from:to]...)
		if o.OK {
			g.Success++
		}
	}
	kg = slices.Clone(kg) // no more than is used
	for f, at := range g.Outcomes {
		n := len(at.Kg.kg)
		g.Outcomes[f].Kg.kg, kg = kg[:n:n], kg[n:]
	}
	side := float32(t.Crop.SpacingM.Value)
	high := float32(t.Crop.HeightM.Value)
	for w := range weeks {
		g.FootprintM2[w] *= side * side / float32(a.k)
		g.HeightM[w] *= high / float32(a.k)
	}
	g.summarise()
	return g
}

// outcome turns a plant's days into calendar days.
func (t *Table) outcome(p *plant, o *Outcome) {
	o.OK, o.Cause, o.Total, o.Later = p.ok, p.cause, p.total, p.later
	date := func(i int) cal.Day {
		if i < 0 {
			return 0
		}
		return t.air.start + cal.Day(i)
	}
	o.Up, o.First, o.Last, o.End = date(p.up), date(p.first), date(p.last), date(p.end)
}

func (g *Growth) summarise() {
	var first, last, end []cal.Day
	counts := map[Cause]int{}
	for _, o := range g.Outcomes {
		if o.OK {
			first, last, end = append(first, o.First), append(last, o.Last), append(end, o.End)
		} else {
			counts[o.Cause]++
		}
	}
	g.FirstPick, g.LastPick, g.EndOfUse = window(first), window(last), window(end)
	best := 0
	for _, c := range causes {
		if counts[c] > best {
			best, g.Cause = counts[c], c
		}
	}
}

// causes in the order that breaks ties.
var causes = [...]Cause{NotUp, ColdSoil, Frosted, Unhardened, Chilled, NoSet, NoBulb, NoCold, LongDays, Bolted, TooHot, TooSmall, TooSlow, Young}

// window takes the middle four in five of the days, sorting them in place.
func window(d []cal.Day) cal.Window {
	if len(d) == 0 {
		return cal.Window{}
	}
	sort.Slice(d, func(i, j int) bool { return d[i] < d[j] })
	at := func(q float64) cal.Day { return d[int(q*float64(len(d)-1)+0.5)] }
	return cal.Window{Early: at(0.1), Likely: at(0.5), Late: at(0.9)}
}
