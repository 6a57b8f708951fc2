package season

import (
	"fmt"
	"math"
)

// Check names what makes p unlawful: indices that point nowhere, weeks outside
// the plan, negative or not-a-number figures. A lawful problem may be empty.
// At most twenty faults are named.
func Check(p *Problem) []string {
	c := checker{}
	if p.Weeks < 0 {
		c.say("the plan has %d weeks", p.Weeks)
	}
	if p.Futures < 0 {
		c.say("the plan has %d futures", p.Futures)
	}
	c.figure("cost of a minute over", p.OverCost, 0)
	c.figure("cost of a litre over", p.WaterCost, 0)
	c.figure("cost of clearing", p.RestCost, 0)
	c.figure("discount", p.Discount, 0)
	if c.figure("share of the worst futures", p.WorstShare, 0); p.WorstShare > 1 {
		c.say("the share of the worst futures is %v, want 1 at most", p.WorstShare)
	}
	c.row("shelf places", p.Shelf)
	c.row("wished minutes", p.Minutes)
	c.row("wished litres", p.Water)
	if p.ShelfStart > 0 {
		c.say("the shelf begins in week %d, after the plan does", p.ShelfStart)
	}
	for i := range p.Spaces {
		s := &p.Spaces[i]
		c.figure("space "+s.ID+": area", s.AreaM2, 0)
		c.figure("space "+s.ID+": volume", s.VolumeL, 0)
		c.figure("space "+s.ID+": ground for tall plants", s.TallM2, 0)
		c.figure("space "+s.ID+": support", s.SupportM, 0)
		if s.Batch < -1 || s.Batch >= len(p.Batches) {
			c.say("space %s: batch %d is not in the list", s.ID, s.Batch)
		}
	}
	for i := range p.Foods {
		f := &p.Foods[i]
		c.row("food "+f.ID+": want", f.Want)
		c.figure("food "+f.ID+": extra", f.Extra, 0)
		c.figure("food "+f.ID+": worth", f.Worth, f.Extra)
		if f.Shelf < 0 {
			c.say("food %s keeps %d weeks", f.ID, f.Shelf)
		}
	}
	for i := range p.Options {
		c.option(p, &p.Options[i])
	}
	for i := range p.Stays {
		c.stay(p, &p.Stays[i])
	}
	for i, m := range p.Musts {
		if m.Space < -1 || m.Space >= len(p.Spaces) {
			c.say("must %d (%s): space %d is not in the list", i, m.Crop, m.Space)
		}
	}
	for _, l := range p.Locks {
		if l.Option < 0 || l.Option >= len(p.Options) {
			c.say("a lock names option %d, which is not in the list", l.Option)
		}
	}
	return c.faults
}

// checker gathers faults, the first twenty.
type checker struct{ faults []string }

func (c *checker) say(format string, a ...any) {
	if len(c.faults) < 20 {
		c.faults = append(c.faults, fmt.Sprintf(format, a...))
	}
}

// figure wants a finite number of at least least.
func (c *checker) figure(what string, x, least float64) {
	if !(x >= least) || math.IsInf(x, 0) {
		c.say("%s is %v, want at least %v", what, x, least)
	}
}

// row wants finite numbers of at least 0.
func (c *checker) row(what string, xs []float64) {
	for i, x := range xs {
		if !(x >= 0) || math.IsInf(x, 0) {
			c.say("%s, entry %d, is %v", what, i, x)
			return
		}
	}
}

func (c *checker) option(p *Problem, o *Option) {
	if o.Space < 0 || o.Space >= len(p.Spaces) {
		c.say("option %s: space %d is not in the list", o.ID, o.Space)
	}
	if o.Food < -1 || o.Food >= len(p.Foods) {
		c.say("option %s: food %d is not in the list", o.ID, o.Food)
	}
	if o.Week < 0 || o.End < o.Week || o.End >= p.Weeks {
		c.say("option %s: holds ground from week %d to %d of %d", o.ID, o.Week, o.End, p.Weeks)
	}
	if bad(o.Footprint) || bad(o.Minutes) || bad(o.Water) || badMeals(o.Meals) {
		c.say("option %s: a footprint, minute, litre or meal is below 0 or not a number", o.ID)
	}
	if o.AtRisk < 0 {
		c.say("option %s: %d plants at risk", o.ID, o.AtRisk)
	}
	for _, x := range [...]float64{o.VolumeL, o.SupportM, o.ShelfPlaces, o.BatchMinutes, o.RotationCost} {
		if !(x >= 0) || math.IsInf(x, 0) {
			c.say("option %s: volume, support, places, minutes or rotation cost is %v", o.ID, x)
		}
	}
	for _, x := range [...]float64{o.Fixed, o.Cost, o.Tail, o.Bonus, o.Risk} {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			c.say("option %s: a cost or worth is %v", o.ID, x)
		}
	}
}

func (c *checker) stay(p *Problem, s *Stay) {
	if s.Space < 0 || s.Space >= len(p.Spaces) {
		c.say("stay %s: space %d is not in the list", s.ID, s.Space)
	}
	if s.Food < -1 || s.Food >= len(p.Foods) {
		c.say("stay %s: food %d is not in the list", s.ID, s.Food)
	}
	if s.End < -1 || s.MustKeepTo > s.End {
		c.say("stay %s: ends in week %d and must be kept to week %d", s.ID, s.End, s.MustKeepTo)
	}
	if bad(s.Footprint) || bad(s.Minutes) || bad(s.Water) || badMeals(s.Meals) {
		c.say("stay %s: a footprint, minute, litre or meal is below 0 or not a number", s.ID)
	}
	for _, x := range [...]float64{s.VolumeL, s.SupportM} {
		if !(x >= 0) || math.IsInf(x, 0) {
			c.say("stay %s: volume or support is %v", s.ID, x)
		}
	}
	for _, x := range [...]float64{s.Tail, s.PullCost} {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			c.say("stay %s: a cost or worth is %v", s.ID, x)
		}
	}
}

func bad(xs []float64) bool {
	for _, x := range xs {
		if !(x >= 0) || x > math.MaxFloat64 {
			return true
		}
	}
	return false
}

func badMeals(futures [][]float32) bool {
	for _, row := range futures {
		for _, x := range row {
			if !(x >= 0) || x > math.MaxFloat32 {
				return true
			}
		}
	}
	return false
}
