package weather

import (
	"fmt"
	"sort"
	"strings"

	"bedweek/internal/cal"
)

// Bounds of the possible, beyond the records of the whole earth. A value
// outside is a mistake of the file.
const (
	lowestC   = -95.0  // world record -89.2
	highestC  = 60.0   // world record 56.7
	mostRain  = 2000.0 // mm a day; world record 1825
	mostWind  = 115.0  // m/s as a daily mean
	mostRadMJ = 50.0   // MJ/m2 a day, above the top of the air in any latitude
)

// Means above these are another unit. The hottest places on earth have a mean
// daily maximum near 40 °C over the year and 46 to 48 °C in the worst month.
const (
	hotYearC  = 45.0
	hotMonthC = 50.0
	windyMS   = 14.0 // mean wind of the windiest inhabited places is near 10
)

// plain reads a table with named columns.
func (p *parser) plain(lines []string) {
	start := 0
	for strings.TrimSpace(lines[start]) == "" || strings.HasPrefix(strings.TrimSpace(lines[start]), "#") {
		start++
	}
	h := newHeading(lines[start])
	p.sheet.Columns = h.names
	if !p.usable(h, start+1, lines[start]) {
		return
	}
	p.days = map[cal.Day]bool{}
	for i := start + 1; i < len(lines); i++ {
		if t := strings.TrimSpace(lines[i]); t != "" && !strings.HasPrefix(t, "#") {
			p.plainLine(h, i+1, lines[i], i == len(lines)-1)
		}
	}
	if p.sheet.Lines == 0 {
		p.faults.add(0, "", "a heading but no days", "Add one line for each day, or download the file anew.")
	}
	if h.find("wind2") >= 0 {
		p.sheet.WindHeightM = 2
	}
	p.otherUnits(h)
}

// usable checks the heading.
func (p *parser) usable(h heading, line int, text string) bool {
	if bad := h.fahrenheit(); bad != "" {
		p.faults.add(line, bad, "this column is not in °C, mm or m/s", "Convert it: °C = (°F - 32) / 1.8, mm = inches x 25.4, m/s = miles an hour x 0.447.")
		return false
	}
	ok := true
	for _, want := range []struct{ q, words string }{{"date", "date"}, {"tmax", "tmax_c"}, {"tmin", "tmin_c"}, {"rain", "rain_mm"}} {
		if h.find(want.q) < 0 {
			p.faults.add(line, text, "no column "+want.words, "Add it to the heading and to every line. Leave a cell empty where nothing was recorded.")
			ok = false
		}
	}
	return ok
}

// plainLine reads one line of a plain table.
func (p *parser) plainLine(h heading, line int, text string, last bool) {
	f := splitCSV(text, h.sep)
	p.sheet.Lines++
	if len(f) != len(h.names) {
		remedy := "Give each line as many values as the heading has."
		if last && len(f) < len(h.names) {
			remedy = "The file seems to be cut off here. Download it anew."
		}
		p.faults.add(line, text, fmt.Sprintf("%d values where the heading has %d", len(f), len(h.names)), remedy)
		return
	}
	d, what, remedy := parseDay(f[h.find("date")])
	if what != "" {
		p.faults.add(line, f[h.find("date")], what, remedy)
		return
	}
	if p.days[d] {
		p.sheet.Repeats++
	}
	p.days[d] = true
	if at := h.find("location"); at >= 0 && !p.meet(strings.TrimSpace(f[at])) {
		return
	}
	if _, dup := p.byDay[d]; dup {
		p.faults.add(line, d.String(), "the same day twice", "The first line is kept. Delete the other.")
		return
	}
	p.ordered(line, d, d.String())
	row, _ := p.row(d)
	for _, q := range []string{"rain", "tmax", "tmin", "wind", "wind2", "radiation"} {
		if at := h.find(q); at >= 0 {
			*row.cell(q) = p.value(q, f[at], h.sep, line)
		}
	}
	p.checkPair(row, line, text)
	p.words(h, f)
}

// value reads one cell; nil when blank or wrong.
func (p *parser) value(q, cell string, sep byte, line int) *float64 {
	v, blank, ok := number(cell, sep)
	if blank {
		return nil
	}
	if !ok {
		p.faults.add(line, cell, "not a number", "Write plain numbers such as 12.8. Leave the cell empty where nothing was recorded.")
		return nil
	}
	if what := impossible(q, v); what != "" {
		// Temperatures in °F are reported once, for the column.
		if what != impossibleTemp || v < lowestC || v > 140 {
			p.faults.add(line, cell, what, "Correct the value or leave the cell empty.")
			return nil
		}
	}
	return &v
}

const impossibleTemp = "impossible temperature"

// impossible says in words why a value cannot be, or "".
func impossible(q string, v float64) string {
	switch q {
	case "tmax", "tmin":
		if v < lowestC || v > highestC {
			return impossibleTemp
		}
	case "rain":
		if v < 0 {
			return "negative rain"
		}
		if v > mostRain {
			return "impossible rain"
		}
	case "wind", "wind2":
		if v < 0 {
			return "negative wind"
		}
		if v > mostWind {
			return "impossible wind"
		}
	case "radiation":
		if v < 0 {
			return "negative radiation"
		}
		if v > mostRadMJ {
			return "impossible radiation"
		}
	}
	return ""
}

// checkPair drops a maximum below its minimum: one of them is wrong, and
// nobody can tell which.
func (p *parser) checkPair(row *Row, line int, excerpt string) {
	if row.TmaxC != nil && row.TminC != nil && *row.TminC > *row.TmaxC {
		p.faults.add(line, excerpt, "minimum above maximum", "Correct the two temperatures. Until then both are left out.")
		row.TmaxC, row.TminC = nil, nil
	}
}

// words counts the text of columns that hold no quantity we know.
func (p *parser) words(h heading, f []string) {
	const most = 100 // different words of one column
	for i, n := range h.names {
		if QuantityOf(n) != "" || i == h.find("date") || i == h.find("location") {
			continue
		}
		if p.sheet.Words[n] == nil {
			p.sheet.Words[n] = map[string]int{}
		}
		w := strings.TrimSpace(f[i])
		if _, known := p.sheet.Words[n][w]; known || len(p.sheet.Words[n]) < most {
			p.sheet.Words[n][w]++
		}
	}
}

// otherUnits looks at whole columns: temperatures in °F, wind in km/h.
func (p *parser) otherUnits(h heading) {
	s := p.sheet
	if looksFahrenheit(s.Values("tmax")) {
		p.faults.add(0, "", "the temperatures look like °F", "Convert them: °C = (°F - 32) / 1.8.")
		s.Rows = nil
		return
	}
	for i := range s.Rows { // hot values let through above, now that they are °C
		r := &s.Rows[i]
		for _, q := range []string{"tmax", "tmin"} {
			if c := r.cell(q); *c != nil && impossible(q, **c) != "" {
				p.faults.add(0, fmt.Sprintf("%s: %g", r.Day, **c), impossibleTemp, "Correct the value or leave the cell empty.")
				*c = nil
			}
		}
	}
	if w := Summarise(s.Values("wind")); w.Count > 30 && w.Mean > windyMS {
		p.faults.add(0, fmt.Sprintf("mean %.1f", w.Mean), "the wind looks like km/h or knots", "Convert it: m/s = km/h / 3.6. Until then the wind is left out.")
		for i := range s.Rows {
			s.Rows[i].WindMS = nil
		}
	}
}

// looksFahrenheit reports whether daily maxima cannot be °C: their median is
// above any place's, or one in fifty is above any record.
func looksFahrenheit(tmax []float64) bool {
	if len(tmax) == 0 {
		return false
	}
	s := append([]float64(nil), tmax...)
	sort.Float64s(s)
	return s[len(s)/2] > hotYearC || len(s) >= 10 && s[len(s)-1-len(s)/50] > highestC
}
