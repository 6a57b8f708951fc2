package web

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// YearSide is one sheet, A4 or Letter lying down, of the whole garden's year:
// a row for each space in walking order, with as many lanes as its plantings
// need to keep clear of each other.
type YearSide struct {
	Key    string
	Tall   float64
	Title  string
	Desc   string
	Ticks  []Tick
	Spaces []YearRows
}

// YearRows is one space on the sheet.
type YearRows struct {
	Name       string
	Top, NameY float64
	Rule       float64 // the line above it
	Plants     []YearMark
	Plantings  int
	lanes      int
}

// Sizes of the sheet, in units of which 1040 are its width. Letters of 10.5 units
// are 7.2 pt on Letter and 7.7 pt on A4.
const (
	yearAllWide   = 1040.0
	yearAllLeft   = 170.0 // the names of spaces
	yearAllLane   = 17.0
	yearAllTop    = 16.0
	yearAllLanes  = 34 // on one sheet, with the heading and the code for a phone
	yearAllLetter = 5.7
)

// yearAll lays the year of all spaces out, on as few sheets as hold it; a space
// is not parted.
func yearAll(years []reckon.YearSheet) []YearSide {
	var out []YearSide
	var side *YearSide
	lanes, plants := 0, 0
	for i, y := range years {
		rows := yearRows(y)
		if side == nil || lanes+rows.lanes > yearAllLanes {
			out = append(out, YearSide{Key: fmt.Sprintf("garden-%d", len(out)+1), Ticks: yearTicks(y)})
			side, lanes, plants = &out[len(out)-1], 0, 0
		}
		rows.Top = yearAllTop + float64(lanes)*yearAllLane
		rows.NameY, rows.Rule = rows.Top+12, rows.Top
		for k := range rows.Plants {
			rows.Plants[k].drop(rows.Top)
		}
		lanes, plants = lanes+rows.lanes, plants+rows.Plantings
		side.Spaces = append(side.Spaces, rows)
		side.Tall = yearAllTop + float64(lanes)*yearAllLane + 2
		side.Title = fmt.Sprintf("The year of the garden, %s to %s: %s, %s.", y.From.Long(), y.To.Long(), plural(len(side.Spaces), "space", "spaces"), plural(plants, "planting", "plantings"))
		side.Desc = "Each space has a page of its own with the same plantings as a table, from " + years[0].Name + " to " + years[i].Name + "."
	}
	return out
}

func yearTicks(y reckon.YearSheet) []Tick {
	var out []Tick
	for d := y.From; d < y.To; d++ {
		if _, _, dom := d.Date(); dom == 1 {
			out = append(out, Tick{yearAllX(y, d), d.Month().String()[:3]})
		}
	}
	return out
}

func yearAllX(y reckon.YearSheet, d cal.Day) float64 {
	return yearAllLeft + (yearAllWide-yearAllLeft)*min(1, max(0, float64(d-y.From)/float64(y.To-y.From)))
}

// yearRows puts the plantings of a space into lanes, each in the first where
// neither its line nor its name meets another.
func yearRows(y reckon.YearSheet) YearRows {
	rows := YearRows{Name: clipMiddle(y.Name, 28), Plantings: len(y.Rows), lanes: 1}
	var free []float64 // of each lane, from where it is free
	for i, row := range y.Rows {
		m := YearMark{YearRow: row, No: i + 1, Label: clip(yearAllSays(row), 60)}
		from, end := yearAllX(y, row.In), y.To
		if row.Ended != 0 {
			end = row.Ended
		}
		to := max(yearAllX(y, end), from+2)
		wide := yearAllLetter * float64(utf8.RuneCountInString(m.Label))
		m.LabelX = max(yearAllLeft+2, min(from, yearAllWide-wide))
		lane := 0
		for lane < len(free) && free[lane] > min(from, m.LabelX) {
			lane++
		}
		if lane == len(free) {
			free = append(free, 0)
		}
		free[lane] = max(to, m.LabelX+wide) + 6
		m.lane = lane
		m.from, m.to = from, to
		for _, d := range row.Dots {
			if d+6 >= y.From {
				m.dots = append(m.dots, yearAllX(y, max(d+3, y.From)))
			}
		}
		if w := row.Foretold(); !w.None() && w.Late >= y.From && w.Early <= y.To {
			m.said = []float64{yearAllX(y, w.Early), yearAllX(y, w.Late)}
		}
		rows.Plants = append(rows.Plants, m)
	}
	rows.lanes = max(1, len(free))
	return rows
}

// drop draws a planting into its lane of a space that begins at top.
func (m *YearMark) drop(top float64) {
	y := top + float64(m.lane)*yearAllLane
	m.LabelY, m.Y = y+9.5, y+13
	m.Line = fmt.Sprintf("M%s %sH%s", px(m.from), px(m.Y), px(m.to))
	var b strings.Builder
	for _, x := range m.dots {
		fmt.Fprintf(&b, "M%s %sh0", px(x), px(m.Y))
	}
	m.Dots = b.String()
	if len(m.said) == 2 {
		m.Window = fmt.Sprintf("M%s %sv3H%sv-3", px(m.said[0]), px(m.Y+1.5), px(m.said[1]))
	}
}

// yearAllSays is what a planting is and how it came, in a few words.
func yearAllSays(r reckon.YearRow) string {
	s := r.Crop
	if r.Plants > 0 {
		s += fmt.Sprintf(" %d", r.Plants)
	}
	switch {
	case r.Lost:
		s += ", lost"
	case r.Weighed > 0 && r.Weighed == r.Picks:
		s += fmt.Sprintf(", %.1f kg", r.Kg)
	case r.Picks > 0:
		s += ", " + plural(r.Picks, "pick", "picks")
	}
	switch {
	case r.Off > 0:
		s += fmt.Sprintf(", %s late", plural(r.Off, "day", "days"))
	case r.Off < 0:
		s += fmt.Sprintf(", %s early", plural(-r.Off, "day", "days"))
	}
	return s
}
