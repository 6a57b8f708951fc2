package web

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
	"bedweek/internal/stand"
)

// Sizes of a crop's year, in px.
const (
	yearLeft  = 8.0
	yearWide  = 350.0
	yearTop   = 20.0
	yearStep  = 3.0 // between threads
	yearBar   = 12.0
	yearLane  = 17.0
	yearGlyph = 6.7 // width of a letter
)

// YearPicture is one way of starting through the year: twenty threads over
// each day, as many as futures in which a start on it works.
type YearPicture struct {
	reckon.CropWindow
	Key                   string
	Wide, Tall            float64
	Months                []Tick
	Foot                  float64 // y under the threads
	BestPath, Works, Some string  // threads
	WorkBars, BestBars    string
	BarY                  float64
	Labels                []EndLabel
	Today                 float64
	Rows                  []YearRow
	WorksWords, BestWords []string
	Threads               int
	WorkTicks             string
}

// EndLabel names the limit at an end of a range.
type EndLabel struct {
	X, Y   float64
	Words  string
	Anchor string // "start" or "end"
	Lead   string
	Best   bool
}

// YearRow is a run of days that fare alike: one row of the table.
type YearRow struct {
	From, To string
	Of20     int
	Best20   int
	Word     string // best, works, or what stands in the way
	first    int    // of the tries
	last     int
}

// yearX is where a day lies on the year, which begins with a month.
func yearX(d cal.Day, first int) float64 {
	return yearLeft + yearWide*float64(dayOfYearFrom(d, first))/365
}

// dayOfYearFrom counts days from the first of a month, 0 to 364.
func dayOfYearFrom(d cal.Day, first int) int {
	_, m, day := d.Date()
	before := [12]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334}
	if m == 2 && day == 29 {
		day = 28
	}
	return (before[m-1] + day - 1 - before[first-1] + 365) % 365
}

// drawYear places one way's year.
func drawYear(w reckon.CropWindow, first int, today cal.Day, key string) YearPicture {
	p := YearPicture{CropWindow: w, Key: key, Wide: 2*yearLeft + yearWide, Threads: 20}
	p.Foot = yearTop + 20*yearStep
	for m := range 12 {
		k := (first - 1 + m) % 12
		d := cal.Of(2015, 1, 1)
		for int(d.Month()) != k+1 {
			d++
		}
		p.Months = append(p.Months, Tick{yearX(d, first), monthNames[k][:1]})
	}
	p.Today = yearX(today, first)
	p.threads(first)
	p.bars(first)
	p.rows()
	return p
}

// edges are where each try's days begin, and the year's end.
func (p *YearPicture) edges(first int) []float64 {
	var out []float64
	for i, t := range p.Tries {
		x := yearX(t.Day, first)
		if i == 0 {
			x = yearLeft
		}
		out = append(out, x)
	}
	return append(out, yearLeft+yearWide)
}

// threads draws thread j on every day on which more than j futures work. It is
// heavy where they do their best, dotted where the day is outside the window.
func (p *YearPicture) threads(first int) {
	x := p.edges(first)
	var paths [3]strings.Builder
	kind := func(t stand.Try, j int) int {
		switch {
		case j >= t.Of20:
			return -1
		case !t.Works:
			return 2
		case j < t.Best20:
			return 0
		}
		return 1
	}
	for j := range 20 {
		y := p.Foot - yearStep*(float64(j)+0.5)
		for i := 0; i < len(p.Tries); {
			k := kind(p.Tries[i], j)
			e := i
			for e < len(p.Tries) && kind(p.Tries[e], j) == k {
				e++
			}
			if k >= 0 {
				fmt.Fprintf(&paths[k], "M%s %sH%s", px(x[i]), px(y), px(x[e]))
			}
			i = e
		}
	}
	p.BestPath, p.Works, p.Some = paths[0].String(), paths[1].String(), paths[2].String()
}

// bars rules the ranges under the threads and names the limit at each end.
func (p *YearPicture) bars(first int) {
	p.BarY = p.Foot + 8
	rule := func(rs []stand.Range, y float64) string {
		var b strings.Builder
		for _, r := range rs {
			x1, x2 := yearX(r.From, first), yearX(r.To, first)
			if x2 >= x1 {
				fmt.Fprintf(&b, "M%s %sH%s", px(x1), px(y), px(math.Max(x2, x1+2)))
				continue
			}
			fmt.Fprintf(&b, "M%s %sH%sM%s %sH%s", px(x1), px(y), px(yearLeft+yearWide), px(yearLeft), px(y), px(x2))
		}
		return b.String()
	}
	p.WorkBars, p.BestBars = rule(p.Window.Works, p.BarY), rule(p.Best, p.BarY+yearBar)
	p.Tall = p.BarY + yearBar + 8
	if p.AllYear {
		return
	}
	var lanes [][]float64 // taken stretches of each lane: from, to, from, to
	for _, e := range p.Ends {
		words := e.Day.Time().Format("2 Jan") + ": " + e.Limit
		if e.Best {
			if p.sameEnd(e) {
				continue
			}
			words = "best, " + words
		}
		wide := yearGlyph * float64(len([]rune(words)))
		x := yearX(e.Day, first)
		l := EndLabel{X: x, Words: words, Anchor: "start", Best: e.Best}
		from := x
		switch left, right := x-wide > 0, x+wide < p.Wide; {
		case !left && !right: // too long for either side of its end
			from = math.Max(0, p.Wide-wide)
			l.X = from
		case left && (e.Open || !right):
			l.Anchor, from = "end", x-wide
		}
		lane := 0
		for ; lane < len(lanes); lane++ {
			clash := false
			for k := 0; k < len(lanes[lane]); k += 2 {
				clash = clash || from < lanes[lane][k+1]+8 && lanes[lane][k] < from+wide+8
			}
			if !clash {
				break
			}
		}
		if lane == len(lanes) {
			lanes = append(lanes, nil)
		}
		lanes[lane] = append(lanes[lane], from, from+wide)
		bar := p.BarY
		if e.Best {
			bar += yearBar
		}
		l.Y = p.BarY + yearBar + 22 + yearLane*float64(lane)
		l.Lead = fmt.Sprintf("M%s %sV%s", px(x), px(bar), px(l.Y-12))
		p.Labels = append(p.Labels, l)
		p.Tall = math.Max(p.Tall, l.Y+6)
	}
}

// sameEnd reports an end of the best days that is an end of those that work.
func (p *YearPicture) sameEnd(e reckon.WindowEnd) bool {
	for _, o := range p.Ends {
		if !o.Best && o.Open == e.Open && o.Day == e.Day && o.Limit == e.Limit {
			return true
		}
	}
	return false
}

// rows gathers days that fare alike.
func (p *YearPicture) rows() {
	n := len(p.Tries)
	for i := 0; i < n; {
		t := p.Tries[i]
		e := i
		for e < n && p.Tries[e].Of20 == t.Of20 && p.Tries[e].Best20 == t.Best20 && p.Tries[e].Works == t.Works && p.Tries[e].Best == t.Best && p.Tries[e].Limit == t.Limit && p.Tries[e].Kind == t.Kind {
			e++
		}
		r := YearRow{From: t.Day.Short(), Of20: t.Of20, Best20: t.Best20, Word: t.Limit, first: i, last: e - 1}
		r.To = (p.Tries[e%n].Day - 1).Short()
		switch {
		case t.Best:
			r.Word = "best"
		case t.Works && t.Kind == stand.CutYoung:
			r.Word = "works cut young"
		case t.Works && t.Kind != "":
			r.Word = "works with " + string(t.Kind)
		case t.Works:
			r.Word = "works"
		}
		p.Rows = append(p.Rows, r)
		i = e
	}
}

// GermColumn is emergence at one warmth: a column of twenty seeds.
type GermColumn struct {
	reckon.GermRow
	X, FootY    float64
	Full, Open  string // dotted strokes
	Days1, Pct1 string
	Of20        int // seeds that come up; -1 = not known
	Label       string
}

const (
	germSeed  = 6.0
	germTop   = 34.0
	germStep  = 39.0
	germUnder = 36.0 // below the columns' foot: the bar and the warmth
)

// drawGerm places the columns; where no share of any warmth is known they hold
// the days alone.
func drawGerm(rows []reckon.GermRow) []GermColumn {
	foot := germTop
	if sharesKnown(rows) {
		foot += 20 * germSeed
	}
	var out []GermColumn
	for i, r := range rows {
		c := GermColumn{GermRow: r, X: 24 + germStep*float64(i), FootY: foot, Of20: -1, Days1: "not known", Pct1: "not known", Label: fmt.Sprintf("%.0f", r.SoilC)}
		if r.PctKnown {
			c.Of20 = int(math.Round(r.Pct / 5))
			c.Pct1 = fmt.Sprintf("%.0f %%", r.Pct)
			c.Full, c.Open = seeds(c.X, foot, 0, c.Of20), seeds(c.X, foot, c.Of20, 20)
		}
		switch {
		case r.None:
			c.Days1 = "none came up"
		case r.DaysKnown:
			c.Days1 = plural(int(math.Round(r.Days)), "day", "days")
		}
		out = append(out, c)
	}
	return out
}

// sharesKnown reports whether it is known at any warmth how many seeds come up.
func sharesKnown(rows []reckon.GermRow) bool {
	return slices.ContainsFunc(rows, func(r reckon.GermRow) bool { return r.PctKnown })
}

// GermTall is the height of the picture of emergence.
func (p CropPage) GermTall() float64 {
	if len(p.Germ) == 0 {
		return 0
	}
	return p.Germ[0].FootY + germUnder
}

// seeds is a dotted stroke of seeds from-th to to-th.
func seeds(x, foot float64, from, to int) string {
	if from >= to {
		return ""
	}
	return fmt.Sprintf("M%s %sV%s", px(x), px(foot-germSeed*(float64(from)+0.5)), px(foot-germSeed*(float64(to)-0.5)-0.01))
}
