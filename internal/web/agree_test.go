package web

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// stroke is one horizontal stroke of a path.
type stroke struct{ x1, y, x2 float64 }

// strokes reads a path of "M x y H x" pieces.
func strokes(t *testing.T, d string) []stroke {
	t.Helper()
	var out []stroke
	for _, piece := range strings.Split(d, "M") {
		if piece == "" {
			continue
		}
		var s stroke
		if _, err := fmt.Sscanf(strings.Replace(piece, "H", " ", 1), "%g %g %g", &s.x1, &s.y, &s.x2); err != nil {
			t.Fatalf("stroke %q: %v", piece, err)
		}
		out = append(out, s)
	}
	return out
}

// linesByID finds every line of a space in a day.
func linesByID(d *reckon.Day) map[string]reckon.Line {
	m := map[string]reckon.Line{}
	for _, sp := range d.Spaces {
		for _, l := range sp.Lines {
			m[l.ID] = l
		}
	}
	return m
}

// TestLinesPictureAndTableAgree reads the drawn picture back into days: every
// line of the table that is in sight is drawn, nothing else is, and its
// threads begin and end inside its windows, reaching out to both ends.
func TestLinesPictureAndTableAgree(t *testing.T) {
	for name, d := range map[string]*reckon.Day{"rich": richDay(), "hostile": hostileDay()} {
		root := open(t, handler(t, &fakeGarden{day: d}), "/lines?weeks=52")
		tabled := map[string]string{} // number in the pictures to id
		for _, tr := range root.find("tr") {
			if no := tr.attr["data-line"]; no != "" {
				if tabled[no] != "" {
					t.Errorf("%s: number %s is there twice", name, no)
				}
				tabled[no] = tr.attr["data-id"]
			}
		}
		lines := linesByID(d)
		if len(tabled) != len(lines) {
			t.Fatalf("%s: the table has %d lines, the day %d", name, len(tabled), len(lines))
		}
		wide := root.find("svg")
		seen := 0
		var paper []*node
		for _, svg := range wide {
			if !svg.class("lines") {
				continue
			}
			seen++
			if seen > 5 { // after the year and four quarters come those on paper, some spaces in each
				paper = append(paper, svg)
				continue
			}
			checkPictures(t, fmt.Sprintf("%s picture %d", name, seen), []*node{svg}, tabled, lines, d.Date)
		}
		if len(paper) < 2 {
			t.Fatalf("%s: %d pictures on paper", name, len(paper))
		}
		checkPictures(t, name+" paper", paper, tabled, lines, d.Date)
	}
}

// checkPictures checks pictures of one span that together show all spaces.
func checkPictures(t *testing.T, where string, svgs []*node, tabled map[string]string, lines map[string]reckon.Line, date cal.Day) {
	t.Helper()
	drawn := map[string]bool{}
	var from, to cal.Day
	for _, svg := range svgs {
		from, to = checkPicture(t, where, svg, tabled, lines, date, drawn)
	}
	for id, l := range lines {
		// A day's slack: a line that only touches the border need not be drawn.
		inSight := l.In.Early < to-1 && l.Out.Late > from+1
		if l.In.None() {
			inSight = l.OnShelf < to && date >= from
			if inSight != drawn[id] {
				t.Errorf("%s: pots of %s in sight %v, drawn %v", where, id, inSight, drawn[id])
			}
			continue
		}
		if inSight != drawn[id] && (inSight || drawn[id]) && l.Out.Early < to && l.In.Late > from-400 {
			t.Errorf("%s: %s in sight %v, drawn %v", where, id, inSight, drawn[id])
		}
	}
}

// checkPicture marks in drawn what a picture draws, and returns its span.
func checkPicture(t *testing.T, where string, svg *node, tabled map[string]string, lines map[string]reckon.Line, date cal.Day, drawn map[string]bool) (from, to cal.Day) {
	t.Helper()
	var wide, tall float64
	fmt.Sscanf(svg.attr["viewBox"], "0 0 %g %g", &wide, &tall)
	from, err1 := cal.Parse(svg.attr["data-from"])
	to, err2 := cal.Parse(svg.attr["data-to"])
	if err1 != nil || err2 != nil || wide == 0 {
		t.Fatalf("%s: no scale: %v %v", where, err1, err2)
	}
	left := 0.0
	if wide > 1000 {
		left = wideSheet.gutter
	}
	scale := (wide - left) / float64(to-from)
	for _, g := range svg.find("g") {
		no, ok := g.attr["data-line"]
		if !ok {
			continue
		}
		id := tabled[no]
		l, known := lines[id]
		if !known {
			t.Errorf("%s draws %q, which is not in the table", where, id)
			continue
		}
		for _, p := range g.find("path") {
			if p.class("thin") && l.In.None() {
				drawn[id] = true
				s := strokes(t, p.attr["d"])[0]
				end := left + float64(date+1-from)*scale
				if math.Abs(s.x2-end) > 0.51 {
					t.Errorf("%s: the pots of %s are drawn until %.1f px, want today, %.1f", where, id, s.x2, end)
				}
			}
			if p.class("thread") {
				drawn[id] = true
				checkThreads(t, where+" "+id, strokes(t, p.attr["d"]), l, from, to, left, scale)
			}
		}
		clash := len(g.find("rect")) > 0
		if clash && l.ClashOf == 0 {
			t.Errorf("%s: %s is hatched without a clash", where, id)
		}
		if clash && !strings.Contains(g.words(), fmt.Sprintf("clash in %d of 20", l.ClashOf)) {
			t.Errorf("%s: %s does not say its clash", where, id)
		}
	}
	return from, to
}

// checkThreads turns strokes back into days. Half a px is the rounding of the
// drawing; dates in sight only.
func checkThreads(t *testing.T, where string, ss []stroke, l reckon.Line, from, to cal.Day, left, scale float64) {
	t.Helper()
	slack := 0.5/scale + 1e-6
	first, last := math.Inf(1), math.Inf(-1)
	for _, s := range ss {
		a, b := float64(from)+(s.x1-left)/scale, float64(from)+(s.x2-left)/scale
		first, last = math.Min(first, a), math.Max(last, b)
		if a > float64(from)+slack && (a < float64(l.In.Early)-slack || a > float64(l.In.Late)+slack) {
			t.Errorf("%s: a thread begins on %.1f, outside %s", where, a, l.In)
		}
		if b < float64(to)-slack && (b < float64(l.Out.Early)-slack || b > float64(l.Out.Late)+slack) {
			t.Errorf("%s: a thread ends on %.1f, outside %s", where, b, l.Out)
		}
	}
	if len(ss) == 5 {
		if want := math.Max(float64(l.In.Early), float64(from)); math.Abs(first-want) > slack {
			t.Errorf("%s: the first thread begins on %.2f, want %.2f", where, first, want)
		}
		if want := math.Min(float64(l.Out.Late), float64(to)); math.Abs(last-want) > slack {
			t.Errorf("%s: the last thread ends on %.2f, want %.2f", where, last, want)
		}
	}
}

// TestKeepPictureAndTableAgree counts dots: filled ones on the edge are the
// futures the table counts, filled and hollow are twenty, and so are the dots
// of meals.
func TestKeepPictureAndTableAgree(t *testing.T) {
	d := richDay()
	h := handler(t, &fakeGarden{day: d})
	checked := 0
	for _, k := range d.Keeps {
		for j, c := range k.Choices {
			root := open(t, h, "/keep?planting="+k.Planting+"&pull="+c.Pull.String())
			for _, sec := range root.find("section") {
				if !strings.Contains(sec.words(), k.SpaceName) {
					continue
				}
				checked++
				checkKeep(t, fmt.Sprintf("%s choice %d", k.Planting, j), sec, k, c)
			}
		}
	}
	if checked != 42 {
		t.Errorf("%d choices checked, want 42", checked)
	}
}

func checkKeep(t *testing.T, where string, sec *node, k reckon.Keep, c reckon.KeepChoice) {
	t.Helper()
	here := ""
	for _, tr := range sec.find("tr") {
		if tr.attr["aria-current"] == "true" {
			here = tr.attr["data-makes"]
		}
	}
	if here != strconv.Itoa(c.NextMakes) {
		t.Errorf("%s: the table marks %q of 20, want %d", where, here, c.NextMakes)
	}
	plots := 0
	for _, svg := range sec.find("svg") {
		full, hollow := 0, 0
		for _, dot := range svg.find("circle") {
			if dot.class("dot") {
				full++
			}
			if dot.class("ring") {
				hollow++
			}
		}
		switch {
		case svg.class("cliff"):
			plots++
			if full != c.NextMakes || full+hollow != 20 {
				t.Errorf("%s: %d dots stand and %d have fallen, want %d of 20", where, full, hollow, c.NextMakes)
			}
		case svg.class("dotplot"):
			plots++
			if full != len(c.DotMeals) {
				t.Errorf("%s: %d dots of meals, want %d", where, full, len(c.DotMeals))
			}
		}
	}
	want := 2
	if k.Next == "" {
		want = 1
	}
	if plots != want {
		t.Errorf("%s: %d pictures, want %d", where, plots, want)
	}
}

// TestClothAndTableAgree counts the threads at the middle of every week of
// every strip against the table: those below the rule are "enough in", those
// bunched above it "too much in". A hole is drawn where the day has one.
func TestClothAndTableAgree(t *testing.T) {
	d := richDay()
	root := open(t, handler(t, &fakeGarden{day: d}), "/table")
	woven, weeks, gluts, holes := 0, 0, 0, 0
	for i, sec := range root.find("section") {
		var rows, much []string
		for _, tr := range sec.find("tr") {
			if e, ok := tr.attr["data-enough"]; ok {
				rows, much = append(rows, e), append(much, tr.attr["data-much"])
			}
		}
		if len(rows) != len(d.WeekOf) {
			t.Fatalf("food %d: %d weeks in the table, want %d", i, len(rows), len(d.WeekOf))
		}
		step := clothWide / float64(len(rows))
		for _, p := range sec.find("path") {
			if no := p.attr["data-hole"]; no != "" {
				holes++
				at, _ := strconv.Atoi(no)
				h := d.Table[i].Holes[at-1]
				if want := fmt.Sprintf("M%s 22V84M%s 22V84", px(float64(h.From)*step), px(float64(h.To+1)*step)); p.attr["d"] != want {
					t.Errorf("%s: hole %s is drawn %q, want %q", d.Table[i].Name, no, p.attr["d"], want)
				}
			}
			counts := rows
			switch {
			case p.class("weft"):
				woven++
			case p.class("ridge"):
				counts = much
			default:
				continue
			}
			ss := strokes(t, p.attr["d"])
			for w := range counts {
				if d.Table[i].Weeks[w].Wanted <= 0 {
					continue
				}
				x, n := (float64(w)+0.5)*step, 0
				for _, s := range ss {
					if s.y < clothRule != p.class("ridge") {
						t.Fatalf("%s: a stroke of %q at %g px, the rule is at %g", d.Table[i].Name, p.attr["class"], s.y, clothRule)
					}
					if s.x1 <= x && x < s.x2 {
						n++
					}
				}
				weeks++
				if p.class("ridge") {
					gluts += n
				}
				if counts[w] != strconv.Itoa(n) {
					t.Errorf("%s week %d: %d threads of %s, the table says %s", d.Table[i].Name, w, n, p.attr["class"], counts[w])
				}
			}
		}
	}
	if woven != strips || weeks < 600 || gluts < 50 || holes < 6 {
		t.Errorf("%d strips, %d weeks, %d gluts and %d holes checked, want %d strips and most weeks", woven, weeks, gluts, holes, strips)
	}
}

// TestFrayOfAWindow holds the threads' places to the meaning of a window:
// early and late are the 10th and the 90th hundredth (cal.Window).
func TestFrayOfAWindow(t *testing.T) {
	w := cal.Window{Early: 100, Likely: 110, Late: 130}
	for _, tt := range []struct {
		q, want float64
		from    string
	}{
		{0.1, 100, "cal.Window: the middle four in five begins"},
		{0.3, 105, "half way to the middle"},
		{0.5, 110, "the middle"},
		{0.7, 120, "half way from the middle"},
		{0.9, 130, "cal.Window: the middle four in five ends"},
	} {
		if got := along(w, tt.q); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("along(%v, %v) = %v, want %v (%s)", w, tt.q, got, tt.want, tt.from)
		}
	}
}
