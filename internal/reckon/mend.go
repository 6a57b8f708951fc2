package reckon

import (
	"context"
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/season"
)

// Hole is a run of wanted weeks in which most futures have too little of a
// food, and what could mend it.
type Hole struct {
	From, To int    // weeks of the plan, both inside
	Least    int    // futures of twenty with enough in its thinnest week
	Asked    bool   // mends were looked for
	Tried    int    // possible starts that were priced
	Mends    []Mend // best first
	Old      bool   // they are of the plan before a note, and are looked for again
	Words    string // why there is none, "" else
	Ends     string // what of the plan ends it, a sentence; "" = nothing known
}

// Mend is one start that would fill a hole, priced by planning with it.
type Mend struct {
	Option, Crop, CropID string
	Space, SpaceName     string
	Plants               int
	Way                  string     // as of a Line: "sow", "set" or "plant"
	Since, Until         cal.Day    // when it takes the ground and frees it
	Verb                 string     // "sow", "sow on the shelf", "set out", "plant"
	From, By             cal.Day    // to be done between these days
	SetOut               cal.Day    // for what is raised on the shelf, else 0
	Closes               int        // weeks of the hole in which half of the futures or more have enough then
	First, Last          int        // the first and the last of them, weeks of the plan
	OfTwenty             int        // futures of twenty with enough in the thinnest of them
	Gain                 float64    // meals more in the hole, mean
	Costs                []FoodCost // what other foods and other weeks lose, dearest first
	Worth                float64    // of the whole plan, in meals; below 0 = the plan is worse for it
}

// FoodCost is what a food loses over the plan, in wanted meals.
type FoodCost struct {
	Food  string
	Meals float64
}

// How hard mends are looked for. Ours: a page of choices, not of all of them.
const (
	mendHoles  = 2         // longest holes of each food
	mendTries  = 4         // starts priced for each hole
	mendShown  = 3         // and shown
	mendWork   = 30_000    // search behind each price, somewhat less than keepWork
	mendFrom   = 2_000_000 // search of the plan from which mends are looked for: the quick one after a note comes first
	mendGain   = 0.5       // meals it must give in the hole, mean
	mendCost   = 0.5       // meals: less is not told
	mendPart   = 0.6       // of the hole's meals that a later start must still give
	mendPoor   = 2         // times its own meals a mend may lose and still be told beside a better one
	mendCrowds = 2         // starts of one crop among those priced
)

// closes says which weeks of a hole have enough in half of the futures or more.
func (m *Mend) closes(table []season.WeekFood, h *Hole) {
	for w := h.From; w <= h.To; w++ {
		n := 0
		for _, x := range table[w].Eaten {
			if x >= table[w].Wanted/2 {
				n++
			}
		}
		if n = ofTwenty(n, len(table[w].Eaten)); n < 10 {
			continue
		}
		if m.Closes == 0 {
			m.First, m.OfTwenty = w, n
		}
		m.Closes++
		m.Last, m.OfTwenty = w, min(m.OfTwenty, n)
	}
}

// mendTable finds what would mend the holes of the worst foods. rows are in
// the order of the page.
func (r *Result) mendTable(ctx context.Context, rows []FoodRow) {
	study := season.NewStudy(r.Problem, &r.Plan)
	food := map[string]int{}
	for f := range r.Problem.Foods {
		food[r.Problem.Foods[f].ID] = f
	}
	type job struct {
		hole   *Hole
		food   int
		option int
		mend   Mend
		ok     bool
	}
	var jobs []job
	for i := range rows {
		for _, k := range longest(rows[i].Holes) {
			h := &rows[i].Holes[k]
			f := food[rows[i].Food]
			h.Ends = r.endsHole(f, h)
			if study == nil || r.in.Quick || r.in.Work < mendFrom {
				h.Words = mendsLater
				continue
			}
			h.Asked = true
			for _, opt := range r.mendOptions(f, h) {
				jobs = append(jobs, job{hole: h, food: f, option: opt})
				h.Tried++
			}
		}
	}
	each(len(jobs), r.in.Workers, func(i int) {
		j := &jobs[i]
		j.mend, j.ok = r.mend(ctx, study, j.food, j.hole, j.option)
	})
	for i := range jobs {
		if jobs[i].ok {
			jobs[i].hole.Mends = append(jobs[i].hole.Mends, jobs[i].mend)
		}
	}
	for i := range rows {
		for k := range rows[i].Holes {
			h := &rows[i].Holes[k]
			if !h.Asked && h.Words == "" {
				h.Words = "What would mend it was not looked for: only a food's two longest holes are."
			}
			h.choose()
			if h.Asked && len(h.Mends) == 0 {
				h.Words = r.noMend(food[rows[i].Food], h)
			}
		}
	}
}

const mendsLater = "What would mend it is looked for in the longer search, some seconds from now."

// mendsBefore carries over what the day before a note told of the same holes,
// until the longer search looks again; what the plan took up is left out.
func (r *Result) mendsBefore(d, before *Day) {
	planned := map[string]bool{}
	for _, pl := range r.Plan.Plantings {
		planned[r.Problem.Options[pl.Option].ID] = true
	}
	told := map[string][]Mend{}
	if before != nil && len(before.WeekOf) > 0 && before.WeekOf[0] == d.WeekOf[0] {
		for _, row := range before.Table {
			for _, h := range row.Holes {
				told[row.Food] = append(told[row.Food], h.Mends...)
			}
		}
	}
	for i := range d.Table {
		for _, k := range longest(d.Table[i].Holes) {
			h := &d.Table[i].Holes[k]
			for _, m := range told[d.Table[i].Food] {
				if m.First >= h.From && m.Last <= h.To && !planned[m.Option] {
					h.Mends, h.Old = append(h.Mends, m), true
				}
			}
			if !h.Old {
				h.Words = mendsLater
			}
		}
	}
}

// longest returns the places of the holes asked about, in order of time.
func longest(hs []Hole) []int {
	at := make([]int, len(hs))
	for i := range at {
		at[i] = i
	}
	sort.SliceStable(at, func(a, b int) bool { return hs[at[a]].To-hs[at[a]].From > hs[at[b]].To-hs[at[b]].From })
	at = at[:min(mendHoles, len(at))]
	sort.Ints(at)
	return at
}

// choose keeps the mends worth telling and says why there is none.
func (h *Hole) choose() {
	// A mend that costs little for what it gives comes first.
	sort.SliceStable(h.Mends, func(a, b int) bool {
		x, y := h.Mends[a], h.Mends[b]
		if x.value() != y.value() {
			return x.value() > y.value()
		}
		return x.Option < y.Option
	})
	kept, crops := h.Mends[:0], map[string]int{}
	for _, m := range h.Mends {
		poor := len(kept) > 0 && m.value() < -mendPoor*m.Gain
		if crops[m.CropID] < mendCrowds && len(kept) < mendShown && !poor {
			kept = append(kept, m)
			crops[m.CropID]++
		}
	}
	h.Mends = kept
}

// noMend says why nothing mends a hole.
func (r *Result) noMend(food int, h *Hole) string {
	name := r.model.foods[food]
	soonest := -1
	for i := range r.Problem.Options {
		o := &r.Problem.Options[i]
		if o.Food != food {
			continue
		}
		for w := max(o.MealsFrom, o.Week); w <= h.To; w++ {
			if gives(o, w) && (soonest < 0 || w < soonest) {
				soonest = w
				break
			}
		}
	}
	switch {
	case soonest < 0:
		return sentence(fmt.Sprintf("nothing that can be started now gives %s before %s", name, week(r.Problem.Start+cal.Day(7*h.To+13))))
	case soonest > h.From && h.Tried == 0:
		return sentence(fmt.Sprintf("too late for most of it: what is started now gives %s from %s at the soonest", name, week(r.Problem.Start+cal.Day(7*soonest))))
	case h.Tried == 0:
		return sentence("what could still be started gives too little " + name + " in these weeks to close one of them")
	}
	return sentence(fmt.Sprintf("of %d starts tried in the plan, none makes a week of it likely", h.Tried))
}

// gives reports whether an option gives something in a week in half of the
// futures or more.
func gives(o *season.Option, w int) bool {
	n := 0
	for _, row := range o.Meals {
		if k := w - o.MealsFrom; k >= 0 && k < len(row) && row[k] > 0 {
			n++
		}
	}
	return 2*n >= len(o.Meals) && n > 0
}

// endsHole names what of the plan begins to give as the hole ends.
func (r *Result) endsHole(food int, h *Hole) string {
	best, at := 0.0, -1
	for k, pl := range r.Plan.Plantings {
		o := &r.Problem.Options[pl.Option]
		if o.Food != food || o.Week > h.To+1 {
			continue
		}
		// More in the weeks after than in the hole: it is what ends it.
		after := mealsBetween(o, h.To+1, h.To+2) * float64(pl.Plants)
		if rise := after - mealsBetween(o, h.To-1, h.To)*float64(pl.Plants); rise > best+1e-9 {
			best, at = rise, k
		}
	}
	if at < 0 || h.To >= r.in.Weeks-1 {
		return ""
	}
	l := r.plantedLine(at)
	name := l.Space
	for _, sp := range r.in.Garden.Spaces {
		if string(sp.ID) == l.Space {
			name = spaceName(sp)
		}
	}
	if l.First.Likely < r.Problem.Start+cal.Day(7*h.To)-14 {
		return sentence(fmt.Sprintf("%s in %s ends it: it gives again then", l.Crop, name))
	}
	return sentence(fmt.Sprintf("%s in %s ends it: first pick about %s", l.Crop, name, l.First.Likely.Short()))
}

// value ranks mends: what it gives in the hole, less what the plan loses.
func (m Mend) value() float64 { return m.Gain + m.Worth }

// mendOptions lists the starts that give most in a hole, a few crops and
// spaces apart, best first.
func (r *Result) mendOptions(food int, h *Hole) []int {
	p := r.Problem
	in := map[int]bool{}
	for _, pl := range r.Plan.Plantings {
		in[pl.Option] = true
	}
	wanted := 0.0
	for w := h.From; w <= h.To; w++ {
		wanted += r.Verdict.Table[food][w].Wanted
	}
	type cand struct {
		opt  int
		give float64 // of the hole's want, per m2 taken
	}
	var cs []cand
	for i := range p.Options {
		o := &p.Options[i]
		if o.Food != food || in[i] || o.Week > h.To || o.Max < max(o.Min, 1) {
			continue
		}
		per := mealsBetween(o, h.From-p.Foods[food].Shelf, h.To)
		if per <= 0 {
			continue
		}
		n := math.Min(float64(o.Max), math.Max(float64(o.Min), math.Ceil(wanted/per)))
		give := math.Min(per*n, wanted)
		if give < mendGain {
			continue
		}
		ground := 0.0
		for _, f := range o.Footprint {
			ground = math.Max(ground, f)
		}
		// What it gives in the hole, less a little for the ground and time it holds.
		cs = append(cs, cand{i, give - 0.02*ground*n*float64(o.End-o.Week+1)})
	}
	sort.SliceStable(cs, func(a, b int) bool {
		if math.Abs(cs[a].give-cs[b].give) > 1e-9 {
			return cs[a].give > cs[b].give
		}
		return p.Options[cs[a].opt].ID < p.Options[cs[b].opt].ID
	})
	var out []int
	crops, spaces := map[string]int{}, map[string]bool{}
	for _, c := range cs {
		o := &p.Options[c.opt]
		key := fmt.Sprint(o.Crop, " ", o.Space)
		if crops[o.Crop] >= mendCrowds || spaces[key] {
			continue
		}
		crops[o.Crop]++
		spaces[key] = true
		if out = append(out, c.opt); len(out) == mendTries {
			break
		}
	}
	return out
}

// mealsBetween is what a plant of an option gives from week a to week b, mean.
func mealsBetween(o *season.Option, a, b int) float64 {
	sum := 0.0
	for _, row := range o.Meals {
		for k, v := range row {
			if w := o.MealsFrom + k; w >= a && w <= b {
				sum += float64(v)
			}
		}
	}
	return sum / float64(max(len(o.Meals), 1))
}

// mend prices one start: the plan is made again with it in, and both plans are
// laid side by side, food by food.
func (r *Result) mend(ctx context.Context, study *season.Study, food int, h *Hole, opt int) (Mend, bool) {
	m, p := r.model, r.Problem
	f, free := study.With(ctx, opt, mendWork)
	if !f.Possible {
		return Mend{}, false
	}
	with, without := season.Evaluate(p, &f.Plan), season.Evaluate(p, &free)
	if len(with.Faults) > 0 && f.Plan.Status != season.Infeasible {
		return Mend{}, false
	}
	o := &p.Options[opt]
	e := m.entries[m.entry[opt]]
	sp := r.in.Garden.Spaces[m.spaces[o.Space]]
	out := Mend{Option: o.ID, Crop: e.Crop.Name, CropID: string(e.Crop.ID), Space: string(sp.ID), SpaceName: spaceName(sp), Worth: math.Min(f.Worth, 0),
		Way: wayWord(e.Way), Since: e.Day.Monday(), Until: p.Start + cal.Day(7*o.End+6)}
	for _, pl := range f.Plan.Plantings {
		if pl.Option == opt {
			out.Plants = pl.Plants
		}
	}
	out.closes(with.Table[food], h)
	for w := h.From; w <= h.To; w++ {
		out.Gain += useful(with.Table[food][w]) - useful(without.Table[food][w])
	}
	for k := range p.Foods {
		lost := 0.0
		for w := range r.in.Weeks {
			if k == food && w >= h.From && w <= h.To {
				continue
			}
			lost += useful(without.Table[k][w]) - useful(with.Table[k][w])
		}
		if lost >= mendCost && k != m.bees {
			name := m.foods[k]
			if k == food {
				name += " in other weeks"
			}
			out.Costs = append(out.Costs, FoodCost{name, lost})
		}
	}
	sort.SliceStable(out.Costs, func(a, b int) bool { return out.Costs[a].Meals > out.Costs[b].Meals })
	r.mendDays(&out, o, e, h, food)
	return out, out.Closes > 0 && out.Gain >= mendGain
}

// useful is the mean of what is eaten of the want.
func useful(c season.WeekFood) float64 {
	sum := 0.0
	for _, x := range c.Eaten {
		sum += math.Min(x, c.Wanted)
	}
	return sum / float64(max(len(c.Eaten), 1))
}

// mendDays says what is done first, and by when: until the last week in which
// the same start still gives most of what it gives in the hole.
func (r *Result) mendDays(out *Mend, o *season.Option, e Entry, h *Hole, food int) {
	m := r.model
	a, b := h.From-r.Problem.Foods[food].Shelf, h.To
	best := entryBetween(e, a, b)
	last := e
	for _, x := range m.entries { // of one crop and class they come by rising weeks
		if x.Class != e.Class || x.Way != e.Way || x.Crop.ID != e.Crop.ID || x.Week <= last.Week {
			continue
		}
		if x.Growth.Success < e.Growth.Success-2 || entryBetween(x, a, b) < mendPart*best {
			break
		}
		last = x
	}
	switch {
	case e.Way == crop.SetOut && isTray(*o):
		out.Verb, out.From, out.By = "set out", e.Day, last.Day
	case e.Way == crop.SetOut:
		out.Verb, out.SetOut = "sow on the shelf", e.Day
		out.From = max(r.in.Date, e.Day-cal.Day(7*e.Growth.ShelfWeeks))
		out.By = last.Day - cal.Day(7*last.Growth.ShelfWeeks)
	case e.Way == crop.Plant:
		out.Verb, out.From, out.By = "plant", e.Day, last.Day
	default:
		out.Verb, out.From, out.By = "sow", e.Day, last.Day
	}
	out.By = max(out.By, out.From)
}

// entryBetween is the mean picking of a plant from week a to week b, kg; of
// flowers the weeks in bloom.
func entryBetween(e Entry, a, b int) float64 {
	sum := 0.0
	monday := (e.Day - cal.Day(7*e.Week)).Monday()
	for _, o := range e.Growth.Outcomes {
		for w := max(a, 0); e.Crop.Harvest == crop.Bloom && w <= b; w++ {
			if inBloom(o, monday+cal.Day(7*w)) {
				sum++
			}
		}
		for w := max(a, 0); w <= b; w++ {
			sum += float64(o.Kg.At(w))
		}
	}
	return sum / float64(max(len(e.Growth.Outcomes), 1))
}
