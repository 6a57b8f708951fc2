package reckon

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/stand"
)

// StartView follows one start through the plan's twenty futures.
type StartView struct {
	Way      crop.Way
	Day      cal.Day // sown outdoors, set out or planted
	Shelf    cal.Day // sown under lamps; 0 = not
	Space    string  // in words
	Says     string
	Plants   int // the meals are of so many
	Futures  int
	OK       int        // futures in which it works
	Threads  []Thread   // first picked first
	Fates    []Fate     // what ended it, or stopped it
	Weeks    []SizeWeek // while anything stands
	Ways     []Choice   // to choose from
	Dates    []cal.Day  // to choose from
	KgNotEat bool       // flowers: there are no meals
}

// Thread is the start in one future.
type Thread struct {
	Future                int // from 1
	OK                    bool
	Up, First, Last, End  cal.Day // 0 = never
	Meals                 float64 // in the plan's weeks and after, of Plants plants
	Fate                  string
	First1, Last1, Ended1 string // in words
}

// Fate is what became of it in some futures, and when.
type Fate struct {
	Words string
	OK    bool // it worked all the same
	Of20  int
	When  cal.Window
}

// SizeWeek is one week of the start: its size and what it gives.
type SizeWeek struct {
	Monday            cal.Day
	WidthM, HeightM   float64
	Low, Likely, High float64 // meals; the middle four futures in five
	Picks             int     // futures in which there is something to pick
}

// follow grows the start that is asked for, or the next that works.
func (d *CropDesk) follow(v *CropView, yard int, ask CropAsk) {
	c := v.Crop
	if len(c.Ways) == 0 {
		v.StartNot = "The book knows no way of starting it."
		return
	}
	s := &StartView{Way: ask.Way, Plants: mealPlants(c), Futures: d.in.Futures, KgNotEat: c.Harvest == crop.Bloom || c.MealKg <= 0}
	if !slices.Contains(c.Ways, s.Way) {
		s.Way = d.wayNow(v)
	}
	for _, w := range c.Ways {
		s.Ways = append(s.Ways, Choice{string(w), wayVerb(w)})
	}
	start := d.in.Date.Monday()
	for w := range min(52, d.in.Weeks) {
		s.Dates = append(s.Dates, max(start+cal.Day(7*w), d.in.Date))
	}
	if len(s.Dates) == 0 {
		v.StartNot = "The plan is too short to follow a start."
		return
	}
	s.Day = d.dayAsked(v, s, ask.Week)
	s.Space = v.Yard
	t := d.growing(yard).Table(c, stand.Worlds(c, d.in.Futures, d.in.Seed))
	g := t.Grow(s.Way, s.Day)
	s.OK = g.Success
	if s.Way == crop.SetOut {
		s.Shelf = g.Sown
	}
	s.threads(c, g)
	s.fates(g)
	s.weeks(c, g, start)
	s.say(c, g)
	for _, w := range v.Ways {
		if w.Way == s.Way {
			s.Says += middleSays(w.KindOn(s.Day))
		}
	}
	v.Start = s
}

// middleSays warns that a start is followed for the middle variety on a day on
// which only another kind works.
func middleSays(k stand.Kind) string {
	switch k {
	case "":
		return ""
	case stand.CutYoung:
		return " That is for full-grown leaves; on this day only young ones will come of it."
	}
	return " That is the middle variety; on this day only " + string(k) + " work."
}

// mealPlants is how many plants meals are told of: one where a plant gives
// several, else ten.
func mealPlants(c *crop.Crop) int {
	if c.MealKg > 0 && c.YieldKg.Value/c.MealKg >= 3 {
		return 1
	}
	return 10
}

// usualYard is where the garden grows the crop or would: where the plan puts
// most of it, else where it stands.
func (d *CropDesk) usualYard(c *crop.Crop) (int, bool) {
	best, most := 0, 0
	if d.plan != nil {
		for _, pl := range d.plan.Plan.Plantings {
			o := d.plan.model.p.Options[pl.Option]
			if o.Crop == string(c.ID) && pl.Plants > most {
				best, most = d.plan.model.spaces[o.Space], pl.Plants
			}
		}
	}
	if most == 0 {
		for _, s := range whatStands(d.in) {
			if s.crop.ID == c.ID && !s.tray && s.count > most {
				best, most = s.space, s.count
			}
		}
	}
	return best, most > 0 && d.place.Airs[best] != nil
}

// wayNow is the way to choose now: open soonest, then oftenest at its best.
func (d *CropDesk) wayNow(v *CropView) crop.Way {
	best, open, of := v.Crop.Ways[0], cal.Day(math.MaxInt32), -1
	for _, w := range v.Ways {
		day, ok := nextOpen(w.Window, d.in.Date)
		if !ok {
			continue
		}
		t, _ := tryAt(w.Window, day)
		if day < open || day == open && t.Best20 > of {
			best, open, of = w.Way, day, t.Best20
		}
	}
	return best
}

// dayAsked is the start day: the Monday of the week asked for, or the next
// day on which the window is open.
func (d *CropDesk) dayAsked(v *CropView, s *StartView, ask cal.Day) cal.Day {
	for _, x := range s.Dates {
		if ask != 0 && x.Monday() == ask.Monday() {
			return x
		}
	}
	for _, w := range v.Ways {
		if w.Way != s.Way {
			continue
		}
		last := s.Dates[len(s.Dates)-1]
		for x := d.in.Date; x <= last; x++ { // the start is drawn for the middle variety
			if w.Open(x) && w.KindOn(x) == "" {
				return x
			}
		}
		if x, ok := nextOpen(w.Window, d.in.Date); ok && x <= last {
			return x
		}
	}
	return s.Dates[0]
}

func (s *StartView) threads(c *crop.Crop, g stand.Growth) {
	for k, o := range g.Outcomes {
		t := Thread{Future: k + 1, OK: o.OK, Up: o.Up, First: o.First, Last: o.Last, End: o.End, Fate: fateWords(o)}
		if !s.KgNotEat {
			t.Meals = float64(o.Total) / c.MealKg * float64(s.Plants)
		}
		t.First1, t.Last1, t.Ended1 = dayWords(o.First), dayWords(o.Last), dayWords(o.End)
		s.Threads = append(s.Threads, t)
	}
	sort.SliceStable(s.Threads, func(i, j int) bool {
		a, b := s.Threads[i], s.Threads[j]
		if a.OK != b.OK {
			return a.OK
		}
		if a.First != b.First {
			return a.First != 0 && (b.First == 0 || a.First < b.First)
		}
		return a.End < b.End
	})
}

func dayWords(d cal.Day) string {
	if d == 0 {
		return "–"
	}
	return d.Long()
}

// fateWords is what ended a start, or kept it from working.
func fateWords(o stand.Outcome) string {
	switch {
	case o.Cause == stand.Spent || o.Cause == stand.Fine:
		return "comes to its natural end"
	case !o.OK && o.First != 0:
		return "gives too little: " + string(o.Cause)
	}
	return string(o.Cause)
}

func (s *StartView) fates(g stand.Growth) {
	type key struct {
		ok    bool
		words string
	}
	when := map[key][]cal.Day{}
	for _, o := range g.Outcomes {
		k := key{o.OK, fateWords(o)}
		when[k] = append(when[k], o.End)
	}
	for k, days := range when {
		slices.Sort(days)
		f := Fate{Words: k.words, OK: k.ok, Of20: ofTwenty(len(days), len(g.Outcomes))}
		if days[0] != 0 {
			at := func(q float64) cal.Day { return days[int(q*float64(len(days)-1)+0.5)] }
			f.When = cal.Window{Early: at(0.1), Likely: at(0.5), Late: at(0.9)}
		}
		s.Fates = append(s.Fates, f)
	}
	sort.Slice(s.Fates, func(i, j int) bool {
		a, b := s.Fates[i], s.Fates[j]
		if a.OK != b.OK {
			return a.OK
		}
		if a.Of20 != b.Of20 {
			return a.Of20 > b.Of20
		}
		return a.Words < b.Words
	})
}

// weeks lists the weeks in which anything stands or is picked.
func (s *StartView) weeks(c *crop.Crop, g stand.Growth, start cal.Day) {
	last := -1
	for w := range g.FootprintM2 {
		if g.FootprintM2[w] > 0 {
			last = w
		}
		for _, o := range g.Outcomes {
			if o.Kg.At(w) > 0 {
				last = w
			}
		}
	}
	for w := int(s.Day.Monday()-start) / 7; w >= 0 && w <= last; w++ {
		x := SizeWeek{Monday: start + cal.Day(7*w), WidthM: math.Sqrt(float64(g.FootprintM2[w])), HeightM: float64(g.HeightM[w])}
		if !s.KgNotEat {
			var meals []float64
			for _, o := range g.Outcomes {
				m := float64(o.Kg.At(w)) / c.MealKg * float64(s.Plants)
				if m > 0 {
					x.Picks++
				}
				meals = append(meals, m)
			}
			x.Low, x.Likely, x.High = quantile(meals, 0.1), quantile(meals, 0.5), quantile(meals, 0.9)
		}
		s.Weeks = append(s.Weeks, x)
	}
}

func (s *StartView) say(c *crop.Crop, g stand.Growth) {
	what := fmt.Sprintf("%s on %s in %s: works %s", capital(pastVerb(s.Way)), s.Day.Long(), s.Space, ofWords(ofTwenty(s.OK, s.Futures)))
	switch {
	case s.OK == 0:
		s.Says = sentence(fmt.Sprintf("%s, %s", what, g.Cause))
	case g.FirstPick.None():
		s.Says = sentence(what)
	case c.Harvest == crop.Bloom:
		s.Says = fmt.Sprintf("%s. First flowers %s, last %s.", what, seenFrom(g.FirstPick, s.Day), seenFrom(g.LastPick, s.Day))
	default:
		s.Says = fmt.Sprintf("%s. First pick %s, last pick %s.", what, seenFrom(g.FirstPick, s.Day), seenFrom(g.LastPick, s.Day))
	}
}

func pastVerb(w crop.Way) string {
	switch w {
	case crop.SetOut:
		return "set out"
	case crop.Plant:
		return "planted"
	}
	return "sown outdoors"
}

// seenFrom writes a window with the years that are not those of a day.
func seenFrom(w cal.Window, from cal.Day) string {
	if w.None() {
		return "not at all"
	}
	if w.Early == w.Late {
		return dayOf(w.Likely, from)
	}
	return fmt.Sprintf("about %s (%s to %s)", dayOf(w.Likely, from), dayOf(w.Early, from), dayOf(w.Late, from))
}
