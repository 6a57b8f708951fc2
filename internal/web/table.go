package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TablePage says whether there will be a gap on the table.
type TablePage struct {
	Frame
	Foods []FoodCloth
	Says  string
}

// FoodCloth is one food over the weeks: its strip, and the table behind it.
type FoodCloth struct {
	reckon.FoodRow
	Woven      bool   // drawn: the six worst
	Cloth      string // path of the threads
	Ridge      string // path of the threads bunched above the rule: more than is wanted
	Bare       string // path of weeks not wanted
	Ticks      []Tick
	Spots      []HoleSpot
	Most       string // weeks of glut, "" = none
	Said       string // for a reader of the picture
	Weekly     []FoodLine
	Plants     bool   // counted in plants in flower, not meals
	More, Less string // forms that want a meal a week more or less
}

// HoleSpot is a hole with its place in the strip and its mends in words.
type HoleSpot struct {
	reckon.Hole
	No    int
	Words string
	X, W  float64
	Lines []MendLine
}

// MendLine is one way to mend a hole.
type MendLine struct {
	reckon.Mend
	Do, Closes, Gives, Costs, In string
	Form                         string // takes it into the plan
}

// FoodLine is one week of one food.
type FoodLine struct {
	Week, ISO, Wanted, Expected string
	Enough, Much                int
	IsWanted                    bool
}

// strips is how many foods are drawn; a wall of pictures is not read.
const strips = 6

// Sizes of a strip, in px.
const (
	clothWide = 366.0
	clothGap  = 2.5  // between threads
	ridgeGap  = 1.1  // between those bunched above the rule
	clothRule = 26.0 // of the wanted amount; threads lie below it
	clothFoot = clothRule + 4 + 20*clothGap
)

// table draws the page.
func (s *site) table(r *http.Request, day *reckon.Day) (page, error) {
	p := &TablePage{Frame: s.framed(r, day, "On the table", "table")}
	holes := 0
	for i, f := range day.Table {
		c := cloth(day, f, i < strips)
		if len(c.Spots) > 0 {
			holes++
		}
		p.Foods = append(p.Foods, c)
	}
	p.Says = "No food was asked for."
	if n := len(p.Foods); n > 0 {
		p.Says = fmt.Sprintf("%s, the worst gap first. %s a hole in the weeks ahead.", plural(n, "food", "foods"), haveHoles(holes))
	}
	return p, nil
}

func haveHoles(n int) string {
	switch n {
	case 0:
		return "None has"
	case 1:
		return "1 has"
	}
	return fmt.Sprintf("%d have", n)
}

// enough counts the futures of a week with enough.
func enough(w reckon.FoodWeek) int {
	n := 0
	for _, t := range w.Threads {
		if t {
			n++
		}
	}
	return n
}

// muchIn counts the futures of a week with more than is wanted.
func muchIn(w reckon.FoodWeek) int {
	n := 0
	for _, t := range w.Much {
		if t {
			n++
		}
	}
	return n
}

// beeFood is the row that is looked at, not eaten.
const beeFood = "flowers for the bees"

// cloth weaves one food: a thread runs through the weeks in which its future
// has enough, is broken in the others, and has a twin above the rule where
// there is more than is wanted.
func cloth(day *reckon.Day, f reckon.FoodRow, woven bool) FoodCloth {
	c := FoodCloth{FoodRow: f, Woven: woven, Plants: f.Food == beeFood, More: ledger.NewID(), Less: ledger.NewID()}
	weeks := min(len(f.Weeks), len(day.WeekOf))
	glut, first, last := 0, 0, 0
	for w := range weeks {
		fw := f.Weeks[w]
		l := FoodLine{Week: day.WeekOf[w].Time().Format("2 Jan 2006"), ISO: day.WeekOf[w].String(), Wanted: meals(fw.Wanted),
			Expected: fmt.Sprintf("%s (%s to %s)", meals(fw.Expected), meals(fw.Low), meals(fw.High)), Enough: enough(fw), Much: muchIn(fw), IsWanted: fw.Wanted > 0}
		c.Weekly = append(c.Weekly, l)
		if 2*l.Much >= 20 {
			if glut == 0 {
				first = w
			}
			glut, last = glut+1, w
		}
	}
	if glut > 0 {
		c.Most = fmt.Sprintf("More than you want, as likely as not, in %s: between the weeks of %s and %s.", plural(glut, "week", "weeks"),
			dayFrom(day.WeekOf[first], day.Date), dayFrom(day.WeekOf[last], day.Date))
		if glut == 1 {
			c.Most = fmt.Sprintf("More than you want, as likely as not, in the week of %s.", dayFrom(day.WeekOf[first], day.Date))
		}
	}
	step := clothWide / float64(max(weeks, 1))
	for i, h := range f.Holes {
		c.Spots = append(c.Spots, holeSpot(day, f, h, i+1, step, c.Plants))
	}
	c.Said = fmt.Sprintf("%s: twenty threads over %s, %s.", name(f.Name), plural(weeks, "week", "weeks"), plural(len(c.Spots), "hole", "holes"))
	if woven {
		c.Cloth, c.Ridge, c.Bare = weave(f, weeks, step)
		c.Ticks = clothTicks(day, weeks, step)
	}
	return c
}

// holeSpot puts a hole in words, with its place in the strip.
func holeSpot(day *reckon.Day, f reckon.FoodRow, h reckon.Hole, no int, step float64, plants bool) HoleSpot {
	s := HoleSpot{Hole: h, No: no, X: float64(h.From) * step, W: float64(h.To-h.From+1) * step}
	s.Words = fmt.Sprintf("%s; too little in %d of 20 at its thinnest.", name(weekSpan(day, h.From, h.To+1)), 20-h.Least)
	for _, m := range h.Mends {
		s.Lines = append(s.Lines, mendLine(day, h, m, plants))
	}
	return s
}

// mendLineOf is a mend as the line it would be in the plan.
func mendLineOf(day *reckon.Day, option string) (reckon.Line, bool) {
	for _, f := range day.Table {
		for _, h := range f.Holes {
			for _, m := range h.Mends {
				if m.Option == option {
					return reckon.Line{ID: m.Option, Space: m.Space, Crop: m.Crop, CropID: m.CropID, Plants: m.Plants, Way: m.Way,
						In: cal.Window{Early: m.Since, Likely: m.Since, Late: m.Since}, Holds: m.Until}, true
				}
			}
		}
	}
	return reckon.Line{}, false
}

// weekFrom names the week of a day; what is done lies within a week.
func weekFrom(d, seen cal.Day) string {
	if d.Monday() <= seen.Monday() {
		return "this week"
	}
	return "in the week of " + dayFrom(d.Monday(), seen)
}

// mendLine says one mend: what to do by when, what it closes, what it costs.
func mendLine(day *reckon.Day, h reckon.Hole, m reckon.Mend, plants bool) MendLine {
	l := MendLine{Mend: m, Form: ledger.NewID()}
	when := weekFrom(m.From, day.Date)
	if m.By.Monday() > m.From.Monday() {
		when += ", at the latest " + weekFrom(m.By, day.Date)
	}
	l.Do = fmt.Sprintf("%s %s, %s, for %s: %s.", name(m.Verb), m.Crop, plural(m.Plants, "plant", "plants"), m.SpaceName, when)
	if m.Verb != "sow on the shelf" {
		l.Do = fmt.Sprintf("%s %s, %s, in %s: %s.", name(m.Verb), m.Crop, plural(m.Plants, "plant", "plants"), m.SpaceName, when)
	} else if m.SetOut != 0 {
		l.Do = strings.TrimSuffix(l.Do, ".") + fmt.Sprintf("; set out about %s.", dayFrom(m.SetOut, day.Date))
	}
	all := h.To - h.From + 1
	switch {
	case m.Closes >= all && all > 1:
		l.Closes = fmt.Sprintf("It closes all %d weeks", all)
	case all == 1:
		l.Closes = "It closes the week"
	default:
		l.Closes = fmt.Sprintf("It closes %d of the %d weeks, from %s", m.Closes, all, dayFrom(day.WeekOf[min(m.First, len(day.WeekOf)-1)], day.Date))
	}
	l.Closes += fmt.Sprintf(": enough in %d of 20 or more.", m.OfTwenty)
	l.Gives = "About " + mealsOf(m.Gain) + " more in the hole."
	if plants {
		l.Gives = ""
	}
	var costs []string
	for i, c := range m.Costs {
		if i == 3 {
			costs = append(costs, fmt.Sprintf("and less of %s", plural(len(m.Costs)-3, "other food", "other foods")))
			break
		}
		costs = append(costs, fmt.Sprintf("%s of %s", mealsOf(c.Meals), c.Food))
	}
	l.Costs = "No other food loses as much as half a meal."
	if len(costs) > 0 {
		l.Costs = "Elsewhere it costs about " + strings.Join(costs, ", ") + "."
	}
	switch {
	case m.Worth > -1:
		l.In = "In all about as good as the plan."
	default:
		l.In = fmt.Sprintf("In all the plan is worth about %s less.", mealsOf(-m.Worth))
	}
	return l
}

// weekSpan names the weeks of a hole.
func weekSpan(day *reckon.Day, from, to int) string {
	if to > len(day.WeekOf) {
		to = len(day.WeekOf)
	}
	if from >= to {
		return "weeks not known"
	}
	first, last := day.WeekOf[from], day.WeekOf[to-1]
	if first == last {
		return "week of " + dayFrom(first, day.Date)
	}
	return fmt.Sprintf("%d weeks, from week of %s to week of %s", to-from, dayFrom(first, day.Date), dayFrom(last, day.Date))
}

// weave draws the twenty threads, those bunched above the rule where there is
// more than is wanted, and a dotted base in weeks not wanted.
func weave(f reckon.FoodRow, weeks int, step float64) (threads, ridge, bare string) {
	var b, g, d strings.Builder
	for k := range 20 {
		run(&b, weeks, step, clothRule+4+(float64(k)+0.5)*clothGap, func(w int) bool {
			return f.Weeks[w].Wanted > 0 && k < len(f.Weeks[w].Threads) && f.Weeks[w].Threads[k]
		})
	}
	// Bunched from the rule upwards, so that a ridge is as high as its count.
	for k := range 20 {
		run(&g, weeks, step, clothRule-2-float64(k)*ridgeGap, func(w int) bool { return f.Weeks[w].Wanted > 0 && muchIn(f.Weeks[w]) > k })
	}
	for w := range weeks {
		if f.Weeks[w].Wanted <= 0 {
			fmt.Fprintf(&d, "M%s %sh0", px((float64(w)+0.5)*step), px(clothRule+4+10*clothGap))
		}
	}
	return b.String(), g.String(), d.String()
}

// run draws one thread through the weeks in which it is on.
func run(b *strings.Builder, weeks int, step, y float64, on func(w int) bool) {
	start := -1
	for w := 0; w <= weeks; w++ {
		is := w < weeks && on(w)
		if is && start < 0 {
			start = w
		}
		if !is && start >= 0 {
			fmt.Fprintf(b, "M%s %sH%s", px(float64(start)*step), px(y), px(float64(w)*step))
			start = -1
		}
	}
}

// clothTicks names every third month under a strip.
func clothTicks(day *reckon.Day, weeks int, step float64) []Tick {
	var out []Tick
	last := -100.0
	var before cal.Day
	for w := range weeks {
		d := day.WeekOf[w]
		if w > 0 && d.Month() != before.Month() || w == 0 {
			x := float64(w) * step
			if x-last >= 34 && x < clothWide-26 {
				out = append(out, Tick{x, d.Month().String()[:3]})
				last = x
			}
		}
		before = d
	}
	return out
}
