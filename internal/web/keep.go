package web

import (
	"fmt"
	"math"
	"net/http"
	"sort"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// KeepPage asks, for each standing planting worth asking about: pull or keep?
type KeepPage struct {
	Frame
	Questions []Question
	Says      string
}

// Question is one planting with the pull date looked at.
type Question struct {
	reckon.Keep
	No      int
	Anchor  string
	At      reckon.KeepChoice
	AtIndex int
	AtDay   string
	Spoken  string // what the chosen day gives, in one sentence
	Tie     string
	Sooner  *Link
	Later   *Link
	Meals   DotPlot
	Cliff   *Cliff
	Rows    []KeepRow
	Brief   []KeepRow // for paper: the first day, two and four weeks on, and the best
}

// KeepRow is one row of the table behind the picture.
type KeepRow struct {
	Day, Meals, Next, Worth string
	ISO                     string
	NextMakes               int
	Href                    string
	Here, Best              bool
}

// DotPlot is twenty dots over meals.
type DotPlot struct {
	Dots  []Dot
	Tall  float64
	Marks []Tick
}

// Cliff is the twenty futures of the next crop, each at the last day that
// still lets it make it; those passed over have fallen.
type Cliff struct {
	Stay, Fall []Dot
	LineX      float64
	Edge       float64
	Tall       float64
	Marks      []Tick
	Makes      int
	Beyond     int // futures in time even after the last day shown
}

// Dot is one future.
type Dot struct{ X, Y float64 }

// Sizes of the dots' pictures, in px.
const (
	dotWide  = 366.0
	dotStep  = 13.0
	dotLeft  = 18.0
	dotRight = 18.0
)

// keep draws the page.
func (s *site) keep(r *http.Request, day *reckon.Day) (page, error) {
	p := &KeepPage{Frame: s.framed(r, day, "Pull, or keep?", "keep")}
	q := r.URL.Query()
	for i, k := range day.Keeps {
		at := k.Best
		if q.Get("planting") == k.Planting {
			if d, err := cal.Parse(q.Get("pull")); err == nil {
				at = nearest(k.Choices, d, k.Best)
			}
		}
		p.Questions = append(p.Questions, question(i, k, at))
	}
	p.Says = "Nothing that stands now needs this question."
	if day.First {
		p.Says = "Pull or keep is asked of the full plan. It is being searched; open this page again in a minute."
	}
	if n := len(p.Questions); n > 0 {
		p.Says = keepSays(day.Keeps)
	}
	return p, nil
}

// keepSays answers for all of them: what to pull this week, else what goes
// first and about when.
func keepSays(keeps []reckon.Keep) string {
	var pull []string
	var first *reckon.Keep
	either := 0
	for i, k := range keeps {
		switch {
		case k.Either:
			either++
		case k.Best == 0:
			pull = append(pull, k.Crop+" in "+k.SpaceName)
		case first == nil || k.Choices[k.Best].Pull < first.Choices[first.Best].Pull:
			first = &keeps[i]
		}
	}
	s := "Nothing has to be pulled this week."
	if len(pull) > 0 {
		s = "Pull this week: " + strings.Join(pull, "; ") + "."
	}
	if keep := len(keeps) - len(pull) - either; keep > 0 {
		s += fmt.Sprintf(" Keep %d; the first to go is %s in %s, about %s.", keep, first.Crop, first.SpaceName, first.Choices[first.Best].Pull.Short())
	}
	if either > 0 {
		s += fmt.Sprintf(" For %d either is fine.", either)
	}
	return s
}

// nearest finds the choice closest to a day, the earlier one on a tie.
func nearest(cs []reckon.KeepChoice, d cal.Day, best int) int {
	if len(cs) == 0 {
		return best
	}
	at := 0
	for i, c := range cs {
		if gap(c.Pull, d) < gap(cs[at].Pull, d) {
			at = i
		}
	}
	return at
}

func gap(a, b cal.Day) cal.Day { return max(a-b, b-a) }

// question draws one planting with the pull date looked at.
func question(i int, k reckon.Keep, at int) Question {
	qu := Question{Keep: k, No: i + 1, Anchor: fmt.Sprintf("keep-%d", i+1), AtIndex: at}
	if k.Either {
		qu.Tie = "Either is fine: the difference is smaller than the doubt."
	}
	for j, c := range k.Choices {
		qu.Rows = append(qu.Rows, KeepRow{Day: shortDay(c.Pull), ISO: c.Pull.String(), Meals: mealsShort(c),
			Next: nextWords(c), NextMakes: c.NextMakes, Worth: worthWords(c.Worth, j == k.Best), Href: pullHref(k, c, qu.Anchor), Here: j == at, Best: j == k.Best})
	}
	qu.Brief = brief(k, qu.Rows)
	if at < 0 || at >= len(k.Choices) {
		return qu
	}
	qu.At = k.Choices[at]
	qu.AtDay = shortDay(qu.At.Pull)
	qu.Spoken = spoken(k, qu.At)
	if at > 0 {
		c := k.Choices[at-1]
		qu.Sooner = &Link{Href: pullHref(k, c, qu.Anchor), Words: shortDay(c.Pull)}
	}
	if at+1 < len(k.Choices) {
		c := k.Choices[at+1]
		qu.Later = &Link{Href: pullHref(k, c, qu.Anchor), Words: shortDay(c.Pull)}
	}
	qu.Meals = mealDots(k, qu.At)
	if k.Next != "" && qu.At.NextMakes >= 0 && len(qu.At.DotNext) > 0 {
		qu.Cliff = cliff(k, at)
	}
	return qu
}

// brief keeps the rows a printed line has room for.
func brief(k reckon.Keep, rows []KeepRow) []KeepRow {
	keep := map[int]bool{k.Best: true}
	for _, on := range []cal.Day{0, 14, 28} {
		if len(rows) > 0 {
			keep[nearest(k.Choices, k.Choices[0].Pull+on, k.Best)] = true
		}
	}
	var out []KeepRow
	for i, row := range rows {
		if keep[i] {
			out = append(out, row)
		}
	}
	return out
}

// pullHref looks at another day of one question.
func pullHref(k reckon.Keep, c reckon.KeepChoice, anchor string) string {
	return "/keep?planting=" + queryEscape(k.Planting) + "&pull=" + c.Pull.String() + "#" + anchor
}

// nextWords says how the next crop fares.
func nextWords(c reckon.KeepChoice) string {
	if c.NextMakes < 0 {
		return "nothing follows"
	}
	return fmt.Sprintf("%d of 20", c.NextMakes)
}

// worthWords says the cost against the best choice, in meals.
func worthWords(w float64, best bool) string {
	switch {
	case best:
		return "best"
	case math.Abs(w) < 0.25:
		return "the same"
	case w < 0:
		return mealsOf(-w) + " less"
	}
	return mealsOf(w) + " more"
}

// mealsShort writes meals for a narrow column: "7 (6 to 9)".
func mealsShort(c reckon.KeepChoice) string {
	l, m, h := meals(c.MealsLow), meals(c.MealsLikely), meals(c.MealsHigh)
	if l == h {
		return m
	}
	return fmt.Sprintf("%s (%s to %s)", m, l, h)
}

// spoken is the chosen day in one sentence.
func spoken(k reckon.Keep, c reckon.KeepChoice) string {
	s := fmt.Sprintf("Pull on %s: %s still to pick.", shortDay(c.Pull), mealsRange(c.MealsLow, c.MealsLikely, c.MealsHigh))
	if k.Next != "" && c.NextMakes >= 0 {
		s += fmt.Sprintf(" %s makes it in %d of 20.", name(k.Next), c.NextMakes)
	}
	return s
}

// mealDots stacks twenty dots over a scale of meals that stays the same for
// all days looked at.
func mealDots(k reckon.Keep, at reckon.KeepChoice) DotPlot {
	most := 1.0
	for _, c := range k.Choices {
		most = math.Max(most, c.MealsHigh)
		for _, m := range c.DotMeals {
			most = math.Max(most, m)
		}
	}
	step := niceStep(most)
	top := math.Ceil(most/step) * step
	wide := dotWide - dotLeft - dotRight
	dots := append([]float64{}, at.DotMeals...)
	sort.Float64s(dots)
	bins := int(wide / dotStep)
	count := make([]int, bins+1)
	high := 1
	for _, m := range dots {
		count[binOf(m, top, bins)]++
	}
	for _, n := range count {
		high = max(high, n)
	}
	p := DotPlot{Tall: float64(high)*dotStep + 34}
	floor := float64(high) * dotStep
	for b, n := range count {
		for j := range n {
			p.Dots = append(p.Dots, Dot{dotLeft + float64(b)*wide/float64(bins), floor - float64(j)*dotStep - dotStep/2})
		}
	}
	for v := 0.0; v <= top+step/2; v += step {
		p.Marks = append(p.Marks, Tick{dotLeft + v/top*wide, fmt.Sprintf("%g", v)})
	}
	return p
}

// binOf is the column of a number of meals.
func binOf(m, top float64, bins int) int {
	b := int(math.Round(math.Min(math.Max(m/top, 0), 1) * float64(bins)))
	return min(b, bins)
}

// niceStep is a round step that gives at most six marks.
func niceStep(most float64) float64 {
	for _, s := range []float64{0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000} {
		if most/s <= 6 {
			return s
		}
	}
	return math.Pow(10, math.Ceil(math.Log10(most)))
}

// cliff places the twenty futures of the next crop by the last day that still
// lets them make it. Whether a future has fallen is what the chosen day says.
func cliff(k reckon.Keep, at int) *Cliff {
	n := len(k.Choices)
	col := (dotWide - dotLeft - dotRight) / float64(n)
	now := k.Choices[at]
	c := &Cliff{Makes: now.NextMakes, LineX: dotLeft + col*(float64(at)+0.5)}
	across := max(1, min(3, int(col/dotStep)))
	stayed, fell := make([]int, n+1), make([]int, n+1)
	high, deep := 1, 1
	type spot struct {
		col  int
		stay bool
	}
	var spots []spot
	for f := range now.DotNext {
		last := lastDay(k, f, at)
		spots = append(spots, spot{last, now.DotNext[f]})
		if now.DotNext[f] {
			if last == n {
				c.Beyond++
			}
			stayed[last]++
			high = max(high, (stayed[last]+across-1)/across)
		} else {
			fell[last]++
			deep = max(deep, (fell[last]+across-1)/across)
		}
	}
	c.Edge = float64(high)*dotStep + 22
	up, down := make([]int, n+1), make([]int, n+1)
	for _, s := range spots {
		x0 := dotLeft + col*float64(s.col)
		if s.stay {
			i := up[s.col]
			up[s.col]++
			c.Stay = append(c.Stay, Dot{x0 + inColumn(i, across, stayed[s.col]), c.Edge - 9 - float64(i/across)*dotStep})
			continue
		}
		i := down[s.col]
		down[s.col]++
		c.Fall = append(c.Fall, Dot{x0 + inColumn(i, across, fell[s.col]), c.Edge + 30 + float64(i/across)*dotStep})
	}
	c.Tall = c.Edge + 30 + float64(deep)*dotStep
	every := int(math.Ceil(52 / col))
	for j, ch := range k.Choices {
		t := Tick{X: dotLeft + col*(float64(j)+0.5)}
		if j%every == 0 && j != at {
			t.Words = strings.TrimSpace(ch.Pull.Time().Format("2 Jan"))
		}
		c.Marks = append(c.Marks, t)
	}
	return c
}

// lastDay is where a future stands: one past the last choice, counted from
// the one looked at on, that it still makes; for one that has fallen, one past
// the last choice before it that it made, 0 = none.
func lastDay(k reckon.Keep, f, at int) int {
	makes := func(j int) bool { return f < len(k.Choices[j].DotNext) && k.Choices[j].DotNext[f] }
	j := at
	if makes(at) {
		for j+1 < len(k.Choices) && makes(j+1) {
			j++
		}
		return j + 1
	}
	for j >= 0 && !makes(j) {
		j--
	}
	return j + 1
}

// inColumn spreads dots around a place in time, row by row, centred.
func inColumn(i, across, n int) float64 {
	row := min(across, n-(i/across)*across)
	return (float64(i%across) - float64(row-1)/2) * dotStep
}
