package web

import (
	"fmt"
	"strings"

	"bedweek/internal/cal"
)

// A line in the ground is five threads side by side. Each stands for four
// futures in twenty: it begins and ends at the 10th, 30th, 50th, 70th or 90th
// hundredth of its windows, so that the ends fray as far as they are unsure.
var (
	beginAt = [5]float64{0.5, 0.1, 0.9, 0.3, 0.7}
	endAt   = [5]float64{0.3, 0.9, 0.5, 0.1, 0.7}
)

// threadGap is the distance of threads, in px; strokes are a little wider, so that
// five of them make one thick line.
const threadGap = 2

// along is the day by which a share q of futures is there. A window's ends
// are the middle four in five: early is at 0.1, late at 0.9; straight between.
func along(w cal.Window, q float64) float64 {
	e, m, l := float64(w.Early), float64(w.Likely), float64(w.Late)
	if q <= 0.5 {
		return e + (m-e)*(q-0.1)/0.4
	}
	return m + (l-m)*(q-0.5)/0.4
}

// mark draws one item with its stroke at height y.
func (c *pencil) mark(row Row, p placed, y float64, shelfY map[string]float64) Mark {
	l := p.it.Line
	m := Mark{No: p.it.No, Label: p.label, LabelX: p.labelX, LabelY: y - 10, TX: p.l1, TY: y - laneTall + 12, TW: p.l2 - p.l1}
	if !p.it.Tray {
		m.ID = l.ID
	}
	if row.Shelf || p.it.Tray {
		m.Thin = true
		m.Path = fmt.Sprintf("M%s %sH%s", at(p.x1), at(y), at(p.x2))
		shelfY[l.ID] = y
		return m
	}
	m.Path = c.threads(p.it, y)
	if from, ok := shelfY[l.ID]; ok && !row.Shelf && l.In.Likely >= c.s.from && l.In.Likely < c.s.to {
		x := c.x(float64(l.In.Likely))
		m.Slant = fmt.Sprintf("M%s %sL%s %s", at(x), at(from), at(c.clamp(x+3*c.scale+6)), at(y))
	}
	m.Picks = c.picks(p.it, y+9)
	if p.clashing {
		x1, x2 := c.hatch(p.it)
		m.HX, m.HY, m.HW, m.HH = x1, y-8, x2-x1, 16
		m.Clash = p.it.Clash
		m.CX = c.clashRight(p.it) - width(m.Clash, c.sh)
		m.CY = y + 25
	}
	return m
}

// threads draws the five strokes of a line in the ground.
func (c *pencil) threads(it Item, y float64) string {
	var b strings.Builder
	for k := range beginAt {
		from, to := along(it.In, beginAt[k]), float64(c.s.to)
		if !it.Line.Out.None() {
			to = along(it.Line.Out, endAt[k])
		}
		x1, x2 := c.clamp(c.x(from)), c.clamp(c.x(to))
		if x2 <= x1 {
			continue
		}
		fmt.Fprintf(&b, "M%s %sH%s", at(x1), at(y+float64(k-2)*threadGap), at(x2))
	}
	return b.String()
}

// picks sets one dot a week from the likely first pick to the likely last.
func (c *pencil) picks(it Item, y float64) string {
	if it.First.None() || it.Last.None() {
		return ""
	}
	var b strings.Builder
	for d := it.First.Likely; d <= it.Last.Likely; d += 7 {
		if d >= c.s.from && d < c.s.to {
			fmt.Fprintf(&b, "M%s %sh0", at(c.x(float64(d)+3)), at(y))
		}
	}
	return b.String()
}

// hatch is where two frayed ends overlap: from the earliest day the next is
// due to the latest day this one stands.
func (c *pencil) hatch(it Item) (x1, x2 float64) {
	from, to := float64(it.Line.Out.Early), float64(it.Line.Out.Late)
	if it.next != nil {
		from = float64(it.next.In.Early)
	}
	if from >= to {
		from = to - 7
	}
	return c.clamp(c.x(from)), c.clamp(c.x(to))
}

// hatched reports whether a clash is seen in the span.
func (c *pencil) hatched(it Item) bool {
	if it.Clash == "" || it.Line.Out.None() {
		return false
	}
	x1, x2 := c.hatch(it)
	return x2-x1 >= 1
}

// clashRight is where the words of a clash end.
func (c *pencil) clashRight(it Item) float64 {
	_, x2 := c.hatch(it)
	return c.clamp(max(x2, c.sh.gutter+width(it.Clash, c.sh)))
}
