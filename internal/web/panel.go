package web

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// span is the time a picture shows, to not included.
type span struct{ from, to cal.Day }

// sheet is the form a picture is drawn in, in px.
type sheet struct {
	wide   float64 // of the whole drawing
	gutter float64 // left room for the names of spaces; 0 = written above
	letter float64 // width of one letter of the names, on average
	single bool    // one space only: its name is not written again
}

// The sheets: a phone's width and a desk's, for all spaces and for one.
var (
	narrowOne   = sheet{wide: 366, letter: 7.4, single: true}
	wideOne     = sheet{wide: 1220, letter: 7.4, single: true}
	narrowSheet = sheet{wide: 366, letter: 7.4}
	wideSheet   = sheet{wide: 1220, gutter: 176, letter: 7.4}
	paperSheet  = sheet{wide: 500, letter: 7.4} // printed a third larger: letters of 14 are 14 pt
)

// Heights inside a row, in px.
const (
	headTall   = 34 // months and weeks over the rows
	nameTall   = 22 // the space's name, where written above
	laneTall   = 36 // one line with its name above it
	clashTall  = 18 // words under a hatch
	rowGap     = 10
	boldLetter = 9.2 // width of a letter of a space's name
)

// Panel is one picture of the lines.
type Panel struct {
	Key         string // tells the pictures of a page apart
	Title, Desc string
	Wide, Tall  float64
	Left        float64 // where time begins
	Foot        float64 // bottom of the lines of time
	Ticks       []Tick
	Weeks       string // path of the week rules
	Today       float64
	HasToday    bool
	Bands       []Band
	Keys        []KeyName
	From, To    cal.Day
	Asks        bool // lines may be tapped to ask why
}

// Tick is the first of a month.
type Tick struct {
	X     float64
	Words string
}

// Band is one row of the picture.
type Band struct {
	Names      []string // as written, one a line; none = not written
	NameY      []float64
	Rule       float64 // y of the ground under the row
	FloorLeft  float64
	FloorRight float64
	Marks      []Mark
	Idle       bool // nothing in the span
	IdleX      float64
	IdleY      float64
}

// Mark is one line of a row.
type Mark struct {
	No             int
	Path           string // threads in the ground, or the thin shelf stroke
	Thin           bool
	Slant          string // from the shelf down to the ground
	Picks          string // dots, one a week of picking
	Label          string
	LabelX, LabelY float64
	Clash          string
	HX, HY, HW, HH float64 // hatch
	CX, CY         float64 // clash words
	ID             string  // of the line, to ask why; "" = pots with no day yet
	TX, TY, TW     float64 // where it is tapped
}

// KeyName is a name too long to be written along its line.
type KeyName struct {
	No    int
	Words string
}

// pencil draws one panel.
type pencil struct {
	day   *reckon.Day
	s     span
	sh    sheet
	scale float64 // px a day
	p     Panel
}

// drawPanel draws rows over a span on a sheet.
func drawPanel(day *reckon.Day, rows []Row, s span, sh sheet, key string) Panel {
	c := &pencil{day: day, s: s, sh: sh}
	c.scale = (sh.wide - sh.gutter) / float64(s.to-s.from)
	c.p = Panel{Key: key, Wide: sh.wide, Left: sh.gutter, From: s.from, To: s.to}
	c.p.Title = fmt.Sprintf("%s to %s", dayFrom(s.from, day.Date), dayFrom(s.to-1, day.Date))
	c.p.Desc = "Time runs left to right, spaces from the seed shelf down in walking order. The sentences and the table say the same."
	c.time()
	y := float64(headTall)
	shelfY := map[string]float64{}
	for _, row := range rows {
		if row.Shelf && len(row.Items) == 0 {
			continue
		}
		y = c.band(row, y, shelfY)
	}
	c.p.Foot = y
	c.p.Tall = y + 4
	return c.p
}

// x is the place of a day, which may have a fraction.
func (c *pencil) x(d float64) float64 { return c.sh.gutter + (d-float64(c.s.from))*c.scale }

// clamp keeps a place inside the drawing.
func (c *pencil) clamp(x float64) float64 {
	return math.Min(math.Max(x, c.sh.gutter), c.sh.wide)
}

// time rules months, weeks and today.
func (c *pencil) time() {
	var weeks strings.Builder
	for d := c.s.from; d < c.s.to; d += 7 {
		fmt.Fprintf(&weeks, "M%s 28v5", at(c.x(float64(d))))
	}
	c.p.Weeks = weeks.String()
	end := -1000.0 // where the last name ends
	for d := c.s.from; d < c.s.to; d++ {
		_, m, dom := d.Date()
		if dom != 1 && d != c.s.from {
			continue
		}
		x := c.x(float64(d))
		words := m.String()[:3]
		if m == 1 || d == c.s.from {
			words += fmt.Sprintf(" %d", d.Year())
		}
		if d == c.s.from && daysLeft(d) < 22 && float64(daysLeft(d))*c.scale < 64 {
			continue // no room before the next month
		}
		if wide := float64(len(words)) * boldLetter; x < end || x+wide > c.sh.wide {
			words = ""
		} else {
			end = x + wide
		}
		c.p.Ticks = append(c.p.Ticks, Tick{x, words})
	}
	if c.day.Date >= c.s.from && c.day.Date < c.s.to {
		c.p.HasToday, c.p.Today = true, c.x(float64(c.day.Date))
	}
}

// daysLeft counts the days of d's month from d on.
func daysLeft(d cal.Day) int {
	y, m, dom := d.Date()
	return int(cal.Of(y, m+1, 1)-cal.Of(y, m, 1)) - dom + 1
}

// placed is an item with its place in a band.
type placed struct {
	it       Item
	x1, x2   float64 // of the stroke
	l1, l2   float64 // of stroke and name together
	label    string
	labelX   float64
	lane     int
	clashing bool
}

// band draws one row from y on and returns where the next begins.
func (c *pencil) band(row Row, y float64, shelfY map[string]float64) float64 {
	b := Band{FloorRight: c.sh.wide}
	switch {
	case c.sh.single:
	case c.sh.gutter == 0:
		b.Names, b.NameY = []string{clip(row.Name, int(c.sh.wide/boldLetter))}, []float64{y + 16}
		y += nameTall
	default:
		b.Names = twoLines(row.Name, int((c.sh.gutter-6)/boldLetter))
		b.NameY = []float64{y + 15, y + 32}[:len(b.Names)]
	}
	items := c.place(row)
	lanes := c.lanes(items)
	tops := make([]float64, lanes+1)
	tops[0] = y
	for k := range lanes {
		tops[k+1] = tops[k] + laneTall
		for _, it := range items {
			if it.lane == k && it.clashing {
				tops[k+1] = tops[k] + laneTall + clashTall
				break
			}
		}
	}
	for _, it := range items {
		b.Marks = append(b.Marks, c.mark(row, it, tops[it.lane]+24, shelfY))
	}
	end := tops[lanes]
	if lanes == 0 {
		end = y + laneTall - 10
		b.Idle, b.IdleX, b.IdleY = true, c.sh.gutter+8, y+16
		if c.sh.gutter > 0 {
			b.IdleY = y + 15
		}
	}
	b.Rule = end + rowGap/2
	c.p.Bands = append(c.p.Bands, b)
	return end + rowGap
}

// twoLines breaks a name at a space into at most two lines of room letters.
func twoLines(name string, room int) []string {
	if len([]rune(name)) <= room {
		return []string{name}
	}
	first := ""
	words := strings.Fields(name)
	for len(words) > 0 && len([]rune(first))+1+len([]rune(words[0])) <= room+1 {
		first = strings.TrimSpace(first + " " + words[0])
		words = words[1:]
	}
	if first == "" {
		return []string{clip(name, room)}
	}
	return []string{first, clip(strings.Join(words, " "), room)}
}

// ends gives the days between which a row draws an item: on the shelf until
// it moves, in the ground until the last thread ends.
func (c *pencil) ends(row Row, l reckon.Line) (from, to float64) {
	if l.In.None() { // in pots: known to stand until today
		return float64(l.OnShelf), float64(c.day.Date) + 1
	}
	if row.Shelf {
		return float64(l.OnShelf), float64(l.In.Likely)
	}
	from = float64(l.In.Early)
	to = float64(l.Out.Late)
	if l.Out.None() {
		to = float64(c.s.to) + 1
	}
	return from, to
}

// place finds what is seen in the span, and where names fit.
func (c *pencil) place(row Row) []placed {
	var out []placed
	for _, it := range row.Items {
		from, to := c.ends(row, it.Line)
		if row.Shelf && it.OnShelf == 0 {
			continue
		}
		if to <= float64(c.s.from) || from >= float64(c.s.to) {
			continue
		}
		p := placed{it: it, x1: c.clamp(c.x(from)), x2: c.clamp(c.x(to)), clashing: c.hatched(it)}
		p.label = it.Shown
		if it.Tray {
			p.label += ", no day yet"
		}
		if width(p.label, c.sh) > math.Min(230, c.sh.wide-c.sh.gutter-8) {
			no := len(c.p.Keys) + 1
			c.p.Keys = append(c.p.Keys, KeyName{no, it.Shown})
			p.label = fmt.Sprintf("no. %d", no)
		}
		w := width(p.label, c.sh)
		p.labelX = math.Min(p.x1, c.sh.wide-w)
		p.l1, p.l2 = math.Min(p.x1, p.labelX), math.Max(p.x2, p.labelX+w)
		if p.clashing {
			p.l2 = math.Max(p.l2, c.clashRight(it))
		}
		out = append(out, p)
	}
	return out
}

// width guesses how wide a name is, in px.
func width(s string, sh sheet) float64 { return float64(len([]rune(s)))*sh.letter + 6 }

// lanes stacks items that are there at the same time, and counts the lanes.
func (c *pencil) lanes(items []placed) int {
	var ends []float64
	for i := range items {
		lane := -1
		for k, e := range ends {
			if items[i].l1 >= e+4 {
				lane = k
				break
			}
		}
		if lane < 0 {
			lane = len(ends)
			ends = append(ends, 0)
		}
		ends[lane] = items[i].l2
		items[i].lane = lane
	}
	return len(ends)
}
