package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// YearListPage leads to the year pages.
type YearListPage struct {
	Frame
	Rows  []TurnoverLine
	Sides []YearSide // the whole garden's year, for paper and wide screens
}

// yearList draws the list.
func (s *site) yearList(r *http.Request, day *reckon.Day) (page, error) {
	p := &YearListPage{Frame: s.framed(r, day, "Year pages", "years")}
	if day.Papers != nil {
		for _, y := range day.Papers.Years {
			p.Rows = append(p.Rows, TurnoverLine{y.Space, y.Name, y.Words})
		}
		p.Sides, p.Until = yearAll(day.Papers.Years), ""
	}
	return p, nil
}

// YearPage is one space's year.
type YearPage struct {
	Frame
	reckon.YearSheet
	Pic  YearPic
	Next []string // what the plan has for it now, in sentences
}

// YearPic is the picture: a line for each planting, a dot for each week with a
// pick, a bracket for the first pick as it was forecast.
type YearPic struct {
	Tall     float64
	Title    string
	Desc     string
	Ticks    []Tick
	Marks    []YearMark
	Today    float64
	From, To cal.Day
}

// YearMark is one planting's row in the picture and the table.
type YearMark struct {
	reckon.YearRow
	No                 int
	Y, LabelY, Foot    float64
	Line, Dots, Window string
	Label              string
	InWords, EndWords  string

	LabelX     float64 // on the whole garden's sheet, as are these
	lane       int
	from, to   float64
	dots, said []float64
}

// Sizes of the picture, in px.
const (
	yearPicWide = 366.0
	yearPicRow  = 31.0
	yearPicTop  = 22.0
)

// year draws the page.
func (s *site) year(r *http.Request, day *reckon.Day) (page, error) {
	if day.Papers == nil {
		return nil, ErrNotThere
	}
	for _, y := range day.Papers.Years {
		if y.Space != r.PathValue("id") {
			continue
		}
		p := &YearPage{Frame: s.framed(r, day, "The year in "+y.Name, "year"), YearSheet: y, Pic: yearPic(y)}
		p.Until = ""
		if i, ok := spaceOf(day, y.Space); ok {
			p.Next = []string{after("Now:", day.Spaces[i].Now), day.Spaces[i].Next}
		}
		return p, nil
	}
	return nil, ErrNotThere
}

// yearPic places the rows. Time runs over the sheet's year.
func yearPic(y reckon.YearSheet) YearPic {
	c := YearPic{From: y.From, To: y.To, Tall: yearPicTop + float64(len(y.Rows))*yearPicRow + 18}
	x := func(d cal.Day) float64 {
		return yearPicWide * min(1, max(0, float64(d-y.From)/float64(y.To-y.From)))
	}
	c.Today = x(y.To)
	c.Title = fmt.Sprintf("The year in %s: %s.", y.Name, plural(len(y.Rows), "planting", "plantings"))
	c.Desc = y.Words + " The table has every planting."
	for d := y.From; d < y.To; d++ {
		if _, _, dom := d.Date(); dom == 1 {
			if n := len(c.Ticks); n == 0 || x(d)-c.Ticks[n-1].X > 40 {
				if x(d) < yearPicWide-26 {
					c.Ticks = append(c.Ticks, Tick{x(d), d.Month().String()[:3]})
				}
			}
		}
	}
	for i, row := range y.Rows {
		top := yearPicTop + float64(i)*yearPicRow
		m := YearMark{YearRow: row, No: i + 1, LabelY: top + 12, Y: top + 20, Foot: top + 28}
		m.Label = clip(fmt.Sprintf("%d %s", i+1, row.Crop), 36)
		end := y.To
		if row.Ended != 0 {
			end = row.Ended
		}
		m.Line = fmt.Sprintf("M%s %sH%s", px(x(row.In)), px(m.Y), px(max(x(end), x(row.In)+2)))
		var b strings.Builder
		for _, d := range row.Dots {
			if d+6 >= y.From {
				fmt.Fprintf(&b, "M%s %sh0", px(x(max(d+3, y.From))), px(m.Y))
			}
		}
		m.Dots = b.String()
		if w := row.Foretold(); !w.None() && w.Late >= y.From && w.Early <= y.To {
			m.Window = fmt.Sprintf("M%s %sv5H%sv-5", px(x(w.Early)), px(m.Foot-5), px(x(w.Late)))
		}
		m.InWords = dayFrom(row.In, y.To)
		if row.Guess {
			m.InWords = "about " + m.InWords
		}
		m.EndWords = "stands"
		if row.Ended != 0 {
			m.EndWords = dayFrom(row.Ended, y.To)
		}
		c.Marks = append(c.Marks, m)
	}
	return c
}
