package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/cal"
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
	Woven  bool   // drawn: the six worst
	Cloth  string // path of the threads
	Bare   string // path of weeks not wanted
	Ticks  []Tick
	Hole   string
	HoleX  float64
	HoleW  float64
	Weekly []FoodLine
	Thin   string
}

// FoodLine is one week of one food.
type FoodLine struct {
	Week, ISO, Wanted, Expected string
	Enough                      int
	IsWanted                    bool
}

// strips is how many foods are drawn; a wall of pictures is not read.
const strips = 6

// Sizes of a strip, in px.
const (
	clothWide = 366.0
	clothGap  = 2.5
)

// table draws the page.
func (s *site) table(r *http.Request, day *reckon.Day) (page, error) {
	p := &TablePage{Frame: s.framed(r, day, "On the table", "table")}
	holes := 0
	for i, f := range day.Table {
		c := cloth(day, f, i < strips)
		if c.Hole != "" {
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

// cloth weaves one food: a thread runs through the weeks in which its future
// has enough, and is broken in the others.
func cloth(day *reckon.Day, f reckon.FoodRow, woven bool) FoodCloth {
	c := FoodCloth{FoodRow: f, Woven: woven}
	from, to, worst := longestHole(f)
	weeks := min(len(f.Weeks), len(day.WeekOf))
	for w := range weeks {
		fw := f.Weeks[w]
		c.Weekly = append(c.Weekly, FoodLine{Week: day.WeekOf[w].Time().Format("2 Jan 2006"), ISO: day.WeekOf[w].String(), Wanted: meals(fw.Wanted),
			Expected: fmt.Sprintf("%s (%s to %s)", meals(fw.Expected), meals(fw.Low), meals(fw.High)), Enough: enough(fw), IsWanted: fw.Wanted > 0})
	}
	step := clothWide / float64(max(weeks, 1))
	if to > from {
		c.Hole = fmt.Sprintf("Hole: %s (none in %d of 20 at its worst).", weekSpan(day, from, to), worst)
		c.HoleX, c.HoleW = float64(from)*step, float64(to-from)*step
	}
	if woven {
		c.Cloth, c.Bare = weave(f, weeks, step)
		c.Ticks = clothTicks(day, weeks, step)
	}
	return c
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

// longestHole finds the longest run of wanted weeks in which most futures have
// too little, the earliest of equals; worst is the most futures without.
func longestHole(f reckon.FoodRow) (from, to, worst int) {
	start, bad := -1, 0
	for w := 0; w <= len(f.Weeks); w++ {
		hole := w < len(f.Weeks) && f.Weeks[w].Wanted > 0 && len(f.Weeks[w].Threads) > 0 && 2*enough(f.Weeks[w]) < len(f.Weeks[w].Threads)
		if hole {
			if start < 0 {
				start, bad = w, 0
			}
			bad = max(bad, 20-enough(f.Weeks[w]))
			continue
		}
		if start >= 0 && w-start > to-from {
			from, to, worst = start, w, bad
		}
		start = -1
	}
	return from, to, worst
}

// weave draws the twenty threads, and a dotted base in weeks not wanted.
func weave(f reckon.FoodRow, weeks int, step float64) (threads, bare string) {
	var b, d strings.Builder
	for k := range 20 {
		y := 4 + float64(k)*clothGap
		start := -1
		for w := 0; w <= weeks; w++ {
			on := w < weeks && f.Weeks[w].Wanted > 0 && k < len(f.Weeks[w].Threads) && f.Weeks[w].Threads[k]
			if on && start < 0 {
				start = w
			}
			if !on && start >= 0 {
				fmt.Fprintf(&b, "M%s %sH%s", px(float64(start)*step), px(y), px(float64(w)*step))
				start = -1
			}
		}
	}
	for w := range weeks {
		if f.Weeks[w].Wanted <= 0 {
			fmt.Fprintf(&d, "M%s %sh0", px((float64(w)+0.5)*step), px(4+9.5*clothGap))
		}
	}
	return b.String(), d.String()
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
