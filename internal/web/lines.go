package web

import (
	"fmt"
	"net/http"
	"strconv"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// LinesPage is what follows what in every space, as a picture, as sentences
// and as a table, all from Rows.
type LinesPage struct {
	Frame
	Rows     []Row
	Wide     Panel
	Quarters []Panel
	OnPaper  Printed
	Spans    []Link
	Earlier  string
	Later    string
	Says     string
	Clashes  int
	Changed  string // how much changed since an earlier week, "" = not known
}

// Link is one way to go on.
type Link struct {
	Href, Words string
	Here        bool
}

// quarter is the weeks of one narrow panel.
const quarter = 13

// spans that may be chosen, in weeks.
var spanChoices = []struct {
	weeks int
	words string
}{{13, "3 months"}, {26, "Half a year"}, {52, "The year"}}

// wholeFrom is the first day pictures show: the Monday one week back, so that
// what stands today is seen standing.
func wholeFrom(day *reckon.Day) cal.Day { return day.Date.Monday() - 7 }

// wholeTo is the day after the last plan week, at least a year on.
func wholeTo(day *reckon.Day) cal.Day {
	to := wholeFrom(day) + 52*7
	if n := len(day.WeekOf); n > 0 {
		to = max(to, day.WeekOf[n-1]+7)
	}
	return min(to, wholeFrom(day)+160*7)
}

// lines draws the page.
func (s *site) lines(r *http.Request, day *reckon.Day) (page, error) {
	weeks, from := 52, wholeFrom(day)
	if n, err := strconv.Atoi(r.URL.Query().Get("weeks")); err == nil && (n == 13 || n == 26 || n == 52) {
		weeks = n
	}
	if d, err := cal.Parse(r.URL.Query().Get("from")); err == nil && d >= wholeFrom(day) && d < wholeTo(day) {
		from = d.Monday()
	}
	p := &LinesPage{Frame: s.framed(r, day, "Lines over the ground", "lines"), Rows: rowsOf(day)}
	for _, row := range p.Rows {
		for _, it := range row.Items {
			if it.Clash != "" {
				p.Clashes++
			}
		}
	}
	p.Wide = drawPanel(day, p.Rows, span{from, from + cal.Day(7*weeks)}, wideSheet, "wide")
	for k := 0; k*quarter < weeks; k++ {
		q := from + cal.Day(7*quarter*k)
		p.Quarters = append(p.Quarters, drawPanel(day, p.Rows, span{q, q + 7*quarter}, narrowSheet, fmt.Sprintf("q%d", k+1)))
	}
	p.OnPaper = printed(day, p.Rows)
	p.Wide.Asks = p.Asks
	for k := range p.Quarters {
		p.Quarters[k].Asks = p.Asks
	}
	for i := range p.Rows {
		for k := range p.Rows[i].Items {
			p.Rows[i].Items[k].Ask = p.Asks && !p.Rows[i].Items[k].Tray
		}
	}
	if p.Asks {
		p.Script = s.assets.href["lines.js"]
	}
	p.links(day, from, weeks)
	p.Says = linesSays(day, p.Clashes)
	if c := day.Changed; c != nil && len(c.Changes) > 0 {
		p.Changed = c.Words
	}
	return p, nil
}

// links fills the ways to choose another time.
func (p *LinesPage) links(day *reckon.Day, from cal.Day, weeks int) {
	for _, c := range spanChoices {
		p.Spans = append(p.Spans, Link{fmt.Sprintf("/lines?from=%s&weeks=%d", from, c.weeks), c.words, c.weeks == weeks})
	}
	step := cal.Day(7 * min(weeks, quarter))
	if from > wholeFrom(day) {
		p.Earlier = fmt.Sprintf("/lines?from=%s&weeks=%d", max(from-step, wholeFrom(day)), weeks)
	}
	if from+cal.Day(7*weeks) < wholeTo(day) {
		p.Later = fmt.Sprintf("/lines?from=%s&weeks=%d", from+step, weeks)
	}
}

// linesSays is the sentence before the picture.
func linesSays(day *reckon.Day, clashes int) string {
	idle := 0
	for _, sp := range day.Spaces {
		if len(sp.Lines) == 0 {
			idle++
		}
	}
	s := fmt.Sprintf("%s, in walking order.", plural(len(day.Spaces), "space", "spaces"))
	if idle > 0 {
		s += fmt.Sprintf(" %d with nothing planned.", idle)
	}
	switch {
	case clashes > 0:
		s += fmt.Sprintf(" %s where two crops may want the same ground.", plural(clashes, "place", "places"))
	case len(day.Spaces) > 0:
		s += " No clash is foreseen."
	}
	return s
}
