package web

import (
	"fmt"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// Printed is half a year of lines for paper: pictures that fit a side, then a
// line or two for each space.
type Printed struct {
	Sides []Panel
	Short []Brief
	Far   int // plantings later than that
}

// printed makes the sheets of rows.
func printed(day *reckon.Day, rows []Row) Printed {
	p := Printed{Sides: paperPanels(day, rows)}
	p.brief(day, rows)
	return p
}

// paperTall is how tall a picture may be: two of them fit one printed side, A4 or Letter.
const paperTall = 330

// paperTo is the first day that printed pictures and lists leave out.
func paperTo(day *reckon.Day) cal.Day { return wholeFrom(day) + 26*7 }

// paperPanels draws half a year for paper, as many rows to a side as fit.
func paperPanels(day *reckon.Day, rows []Row) []Panel {
	var out []Panel
	s := span{wholeFrom(day), paperTo(day)}
	for len(rows) > 0 {
		n := 1
		p := drawPanel(day, rows[:n], s, paperSheet, fmt.Sprintf("p%d", len(out)+1))
		for n < len(rows) {
			q := drawPanel(day, rows[:n+1], s, paperSheet, p.Key)
			if q.Tall > paperTall {
				break
			}
			n, p = n+1, q
		}
		out, rows = append(out, p), rows[n:]
	}
	return out
}

// Brief is what one space does in half a year, on one printed line or two.
type Brief struct{ Name, Words string }

// brief writes the rows of half a year short, and counts what comes later.
func (p *Printed) brief(day *reckon.Day, rows []Row) {
	for _, row := range rows {
		var said []string
		for _, it := range row.Items {
			switch {
			case row.Shelf:
			case !it.Tray && it.In.Likely >= paperTo(day):
				p.Far++
			default:
				said = append(said, briefLine(it, day.Date))
			}
		}
		if len(said) > 0 {
			p.Short = append(p.Short, Brief{row.Name, strings.Join(said, "; ")})
		}
	}
}

// briefLine is "garlic (32) in 26 Oct, out 20 Jun to 15 Jul 2016, 20 of 20".
func briefLine(it Item, today cal.Day) string {
	s := it.Shown
	switch {
	case it.Tray:
		return s + " in pots, no day yet"
	case it.Standing && it.In.Likely <= today:
		s += " stands"
	default:
		s += " in " + it.In.Likely.Time().Format("2 Jan")
	}
	if it.Line.Out.None() {
		s += ", stays"
	} else {
		s += ", out " + it.Line.Out.Early.Time().Format("2 Jan") + " to " + it.Line.Out.Late.Time().Format("2 Jan")
		if y := it.Line.Out.Late.Year(); y != today.Year() {
			s += fmt.Sprintf(" %d", y)
		}
	}
	if it.Sure != "" {
		s += ", " + it.Sure
	}
	if it.Wanted != "" && it.Later.Open() {
		s += ", " + it.Wanted
	}
	return s
}
