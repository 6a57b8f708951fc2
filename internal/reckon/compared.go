package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/ledger"
)

// Compared is a plan beside the present one.
type Compared struct {
	Question string
	Says     string  // the answer in a sentence
	Sure     string  // over the twenty futures
	Gain     float64 // worth of the other plan, less the present one's, meals
	Noise    float64 // below this no difference can be seen, meals
	Better   int     // of twenty futures in which it is worth half a meal more
	Worse    int
	Minutes  [2]float64 // of work a week, mean: present, other
	Busiest  [2]float64 // in the week with most
	Eaten    [2]float64 // meals of all foods
	Foods    []FoodBeside
	Spaces   []SpaceBeside
	Unmet    []string // wishes the other plan does not meet
	Limits   string   // what is not reckoned
	Where    string   // where it was planned again, "" = everywhere
}

// FoodBeside is one food over the plan's weeks, in meals eaten.
type FoodBeside struct {
	Name            string
	Present, Other  float64
	Wanted, Differs float64
}

// SpaceBeside is what one space would do otherwise.
type SpaceBeside struct {
	Space, Name string
	Less        []string // planned now, not then
	More        []string // planned then, not now
}

// compare sets two searched sides next to each other.
func compare(a, b *tried) *Compared {
	c := &Compared{Gain: b.verdict.Value - a.verdict.Value, Noise: math.Max(noise, math.Max(a.spread, b.spread))}
	for f := range a.verdict.PerFuture {
		switch d := b.verdict.PerFuture[f] - a.verdict.PerFuture[f]; {
		case d > 0.5:
			c.Better++
		case d < -0.5:
			c.Worse++
		}
	}
	n := len(a.verdict.PerFuture)
	c.Better, c.Worse = ofTwenty(c.Better, n), ofTwenty(c.Worse, n)
	for k, t := range []*tried{a, b} {
		c.Minutes[k], c.Busiest[k] = work(t)
	}
	c.foods(a, b)
	c.spaces(a, b)
	r := Result{in: b.in, model: b.m, Plan: b.plan, Problem: b.m.p}
	for _, h := range r.heard() {
		if h.State == "not met" {
			c.Unmet = append(c.Unmet, h.Words)
		}
	}
	c.Sure = fmt.Sprintf("Better in %d of 20 futures, worse in %d.", c.Better, c.Worse)
	c.Says = gainWords(c.Gain, c.Noise)
	return c
}

// gainWords says a difference with its doubt.
func gainWords(gain, noise float64) string {
	doubt := mealsCount(math.Ceil(noise))
	switch {
	case math.Abs(gain) < noise:
		return fmt.Sprintf("No difference seen: less than %s either way.", doubt)
	case gain > 0:
		return fmt.Sprintf("The plan would be worth %s more, give or take %s.", meals(gain), doubt)
	}
	return fmt.Sprintf("The plan would be worth %s less, give or take %s.", meals(-gain), doubt)
}

// work is the mean and the most minutes of a week, over the plan's weeks.
func work(t *tried) (mean, most float64) {
	for k := 0; k < t.in.Weeks && k < len(t.verdict.Minutes); k++ {
		mean += t.verdict.Minutes[k] / float64(t.in.Weeks)
		most = math.Max(most, t.verdict.Minutes[k])
	}
	return mean, most
}

func (c *Compared) foods(a, b *tried) {
	eaten := func(t *tried) map[string][2]float64 {
		out := map[string][2]float64{}
		for f := range t.m.p.Foods {
			if f == t.m.bees {
				continue
			}
			x := out[t.m.foods[f]]
			for k := 0; k < t.in.Weeks && k < len(t.verdict.Table[f]); k++ {
				x[0] += mean(t.verdict.Table[f][k].Eaten)
				x[1] += t.verdict.Table[f][k].Wanted
			}
			out[t.m.foods[f]] = x
		}
		return out
	}
	ea, eb := eaten(a), eaten(b)
	seen := map[string]bool{}
	for _, names := range [][]string{a.m.foods, b.m.foods} {
		for _, name := range names {
			if seen[name] || name == beesFood {
				continue
			}
			seen[name] = true
			f := FoodBeside{Name: name, Present: ea[name][0], Other: eb[name][0], Wanted: ea[name][1]}
			f.Differs = f.Other - f.Present
			c.Eaten[0] += f.Present
			c.Eaten[1] += f.Other
			c.Foods = append(c.Foods, f)
		}
	}
}

func (c *Compared) spaces(a, b *tried) {
	ra := Result{in: a.in, model: a.m, Plan: a.plan, Problem: a.m.p}
	rb := Result{in: b.in, model: b.m, Plan: b.plan, Problem: b.m.p}
	ka, kb := ra.Likeness(), rb.Likeness()
	d := diffLines(ka.Lines, kb.Lines, a.m.p.Start)
	less, more := map[string][]string{}, map[string][]string{}
	for _, l := range d.gone {
		less[l.Space] = append(less[l.Space], ra.besideWords(l))
	}
	for _, l := range d.fresh {
		more[l.Space] = append(more[l.Space], rb.besideWords(l))
	}
	for _, p := range d.moved {
		less[p[0].Space] = append(less[p[0].Space], ra.besideWords(p[0]))
		more[p[1].Space] = append(more[p[1].Space], rb.besideWords(p[1]))
	}
	for _, p := range d.same {
		if p[0].Plants != p[1].Plants {
			less[p[0].Space] = append(less[p[0].Space], ra.besideWords(p[0]))
			more[p[1].Space] = append(more[p[1].Space], rb.besideWords(p[1]))
		}
	}
	seen := map[string]bool{}
	for _, in := range []*Inputs{a.in, b.in} {
		for _, sp := range in.Garden.Spaces {
			id := string(sp.ID)
			if !seen[id] && len(less[id])+len(more[id]) > 0 {
				c.Spaces = append(c.Spaces, SpaceBeside{Space: id, Name: spaceName(sp), Less: less[id], More: more[id]})
			}
			seen[id] = true
		}
	}
}

// besideWords is "carrot, 60 plants, the week of 6 April".
func (r *Result) besideWords(l ledger.PlanLine) string {
	return fmt.Sprintf("%s, %s, %s", r.model.cropName(r.in, l.Crop), plants(l.Plants), week(l.Since))
}
