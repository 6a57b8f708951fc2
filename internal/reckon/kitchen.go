package reckon

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Kitchen is the wall sheet: the coming weeks by food.
type Kitchen struct {
	WeekOf []cal.Day
	Rows   []KitchenRow
	UseUp  []string // what is plenty or nearly over, in sentences
	Words  string
}

// KitchenRow is one food.
type KitchenRow struct {
	Food  string
	Weeks []KitchenWeek
	From  []string // crop and space it is picked from
	Keeps string   // how long it keeps once picked, "" = not known
}

// KitchenWeek is one food in one week, in meals.
type KitchenWeek struct {
	Wanted, Low, Likely, High float64
	Enough, Much              int // of twenty
}

// kitchenWeeks is how far the wall sheet looks: beyond that the plan changes.
const kitchenWeeks = 4

// kitchenOf makes the wall sheet from the table's rows.
func (r *Result) kitchenOf(rows []FoodRow, weekOf []cal.Day) *Kitchen {
	k := &Kitchen{WeekOf: weekOf[:min(kitchenWeeks, len(weekOf))]}
	for f := range rows {
		row := rows[f]
		at := r.foodAt(row.Food)
		if at == r.model.bees {
			continue
		}
		out := KitchenRow{Food: row.Name, Keeps: r.keepsFor(at)}
		any := false
		for w := range k.WeekOf {
			fw := row.Weeks[w]
			c := r.Verdict.Table[at][w]
			n := len(fw.Threads)
			kw := KitchenWeek{Wanted: fw.Wanted, Low: fw.Low, Likely: quantile(c.Eaten, 0.5), High: fw.High, Enough: ofTwenty(count(fw.Threads), n), Much: ofTwenty(count(fw.Much), n)}
			out.Weeks = append(out.Weeks, kw)
			any = any || kw.Wanted > 0 || kw.High >= 0.5
		}
		if !any {
			continue
		}
		out.From = r.pickedFrom(at, len(k.WeekOf))
		k.Rows = append(k.Rows, out)
		for w, kw := range out.Weeks {
			if kw.Much >= 10 {
				k.UseUp = append(k.UseUp, sentence(fmt.Sprintf("%s: more than you want in %s (%d of 20); eat it first, give some away, or store it", row.Name, week(k.WeekOf[w]), kw.Much)))
				break
			}
		}
	}
	k.UseUp = append(k.UseUp, r.nearlyOver(len(k.WeekOf))...)
	var full []string
	none := 0
	for _, row := range k.Rows {
		switch n := row.Weeks[0].Enough; {
		case row.Weeks[0].Wanted > 0 && n >= 10:
			full = append(full, row.Food)
		case row.Weeks[0].Wanted > 0:
			none++
		}
	}
	k.Words = kitchenSays(full, none)
	if len(k.Rows) == 0 {
		k.Words = "Nothing is wanted and nothing is ready in these weeks."
	}
	return k
}

// kitchenSays names what is likely enough this week, and counts what is not.
func kitchenSays(full []string, short int) string {
	s := "No wanted food is likely to be enough this week."
	switch {
	case len(full) > 0 && short == 0:
		return sentence("likely enough this week: " + list(full))
	case len(full) > 0:
		s = sentence(fmt.Sprintf("likely enough this week: %s; too little of %s", list(full), plural(short, "other", "others")))
	case short == 0:
		s = "No food is wanted this week."
	}
	return s
}

func count(bs []bool) int {
	n := 0
	for _, b := range bs {
		if b {
			n++
		}
	}
	return n
}

// foodAt is a food's place in the problem.
func (r *Result) foodAt(id string) int {
	for f := range r.Problem.Foods {
		if r.Problem.Foods[f].ID == id {
			return f
		}
	}
	return -1
}

// pickedFrom names what gives a food within some weeks, in walking order.
func (r *Result) pickedFrom(food, weeks int) []string {
	m := r.model
	type from struct {
		space int
		words string
	}
	var fs []from
	add := func(space int, c *crop.Crop) {
		fs = append(fs, from{space, c.Name + ", " + spaceName(r.in.Garden.Spaces[space])})
	}
	for i, s := range m.stays {
		st := m.p.Stays[i]
		if st.Food == food && meansAny(st.Meals, 0, min(weeks-1, r.Plan.Pull[i])) {
			add(s.space, s.crop)
		}
	}
	for _, pl := range r.Plan.Plantings {
		o := m.p.Options[pl.Option]
		if o.Food == food && meansAny(o.Meals, -o.MealsFrom, weeks-1-o.MealsFrom) {
			add(m.spaces[o.Space], m.entries[m.entry[pl.Option]].Crop)
		}
	}
	sort.SliceStable(fs, func(a, b int) bool { return fs[a].space < fs[b].space })
	var out []string
	for _, f := range fs {
		if len(out) == 0 || out[len(out)-1] != f.words {
			out = append(out, f.words)
		}
	}
	return out
}

// meansAny reports whether something is picked in half of the futures in one
// of the places from a to b of the rows.
func meansAny(rows [][]float32, a, b int) bool {
	for k := max(a, 0); k <= b; k++ {
		n := 0
		for _, row := range rows {
			if k < len(row) && row[k] > 0 {
				n++
			}
		}
		if n > 0 && 2*n >= len(rows) {
			return true
		}
	}
	return false
}

// keepsFor says how long a food keeps, over the crops that give it.
func (r *Result) keepsFor(food int) string {
	low, high := 0.0, 0.0
	seen := func(c *crop.Crop) {
		if !c.ShelfDays.Known() {
			return
		}
		if low == 0 || c.ShelfDays.Low < low {
			low = c.ShelfDays.Low
		}
		high = max(high, c.ShelfDays.High)
	}
	m := r.model
	for i, s := range m.stays {
		if m.p.Stays[i].Food == food {
			seen(s.crop)
		}
	}
	for _, pl := range r.Plan.Plantings {
		if o := m.p.Options[pl.Option]; o.Food == food {
			seen(m.entries[m.entry[pl.Option]].Crop)
		}
	}
	switch {
	case high == 0:
		return ""
	case high <= 21:
		return fmt.Sprintf("%.0f to %.0f days cold", low, high)
	case low <= 21:
		return fmt.Sprintf("%.0f days to %.0f weeks cold", low, high/7)
	}
	return fmt.Sprintf("%.0f to %.0f weeks", low/7, high/7)
}

// nearlyOver names what gives its last within some weeks.
func (r *Result) nearlyOver(weeks int) []string {
	m := r.model
	var out []string
	for i, s := range m.stays {
		st := m.p.Stays[i]
		if st.Food < 0 || r.Plan.Pull[i] < 0 || r.Plan.Pull[i] >= weeks || s.crop.Perennial || !meansAny(st.Meals, 0, r.Plan.Pull[i]) {
			continue
		}
		end := m.p.Start + cal.Day(7*r.Plan.Pull[i]+6)
		out = append(out, sentence(fmt.Sprintf("%s in %s: the plan picks the last by %s", s.crop.Name, spaceName(r.in.Garden.Spaces[s.space]), end.Short())))
	}
	return out
}
