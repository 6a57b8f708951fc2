package weather

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"time"
)

// ReadNormals reads monthly normals: a heading month,tmax_c,tmin_c,rain_mm and
// twelve lines in any order; months by number or English name. Lines that
// begin with # are comments. The result is nil unless all twelve months are
// whole.
func ReadNormals(name string, r io.Reader, site Site) (*Normals, []Fault) {
	fl := &faultList{}
	lines := readLines(r, fl)
	if lines == nil {
		return nil, fl.all()
	}
	n := &Normals{Name: name, Site: site}
	p := &normalsParser{n: n, fl: fl}
	p.read(lines)
	if len(fl.list) > 0 {
		return nil, fl.all()
	}
	return n, nil
}

type normalsParser struct {
	n    *Normals
	fl   *faultList
	h    heading
	seen [12]bool
}

func (p *normalsParser) read(lines []string) {
	headed := false
	for i, line := range lines {
		t := strings.TrimSpace(line)
		switch {
		case t == "" || strings.HasPrefix(t, "#"):
		case !headed:
			headed = true
			p.h = newHeading(line)
			if !p.heading(i+1, line) {
				return
			}
		default:
			p.line(i+1, line)
		}
	}
	if !headed {
		p.fl.add(0, "", "the file holds only comments", "Add the heading month,tmax_c,tmin_c,rain_mm and twelve lines.")
		return
	}
	p.whole()
}

func (p *normalsParser) heading(line int, text string) bool {
	if Sniff([]byte(text)) == KindHourly {
		p.fl.add(line, text, "hourly means hold no rain", "Give monthly normals: month,tmax_c,tmin_c,rain_mm.")
		return false
	}
	if bad := p.h.fahrenheit(); bad != "" {
		p.fl.add(line, bad, "this column is not in °C or mm", "Convert it: °C = (°F - 32) / 1.8, mm = inches x 25.4.")
		return false
	}
	ok := true
	for _, want := range []struct{ q, words string }{{"month", "month"}, {"tmax", "tmax_c"}, {"tmin", "tmin_c"}, {"rain", "rain_mm"}} {
		if p.h.find(want.q) < 0 {
			p.fl.add(line, text, "no column "+want.words, "Write the heading month,tmax_c,tmin_c,rain_mm.")
			ok = false
		}
	}
	return ok
}

func (p *normalsParser) line(line int, text string) {
	f := splitCSV(text, p.h.sep)
	if len(f) != len(p.h.names) {
		p.fl.add(line, text, fmt.Sprintf("%d values where the heading has %d", len(f), len(p.h.names)), "Give each line as many values as the heading has.")
		return
	}
	m, ok := parseMonth(f[p.h.find("month")])
	if !ok {
		p.fl.add(line, f[p.h.find("month")], "month not understood", "Write 1 to 12 or the English name.")
		return
	}
	if p.seen[m] {
		p.fl.add(line, text, "the same month twice", "Delete one of the two lines.")
		return
	}
	p.seen[m] = true
	for _, c := range []struct {
		q    string
		into *float64
	}{{"tmax", &p.n.TmaxC[m]}, {"tmin", &p.n.TminC[m]}, {"rain", &p.n.RainMM[m]}} {
		cell := f[p.h.find(c.q)]
		v, blank, ok := number(cell, p.h.sep)
		if blank || !ok {
			p.fl.add(line, cell, "not a number", "Normals need all three values for every month.")
			continue
		}
		*c.into = v
	}
	if p.n.TminC[m] > p.n.TmaxC[m] {
		p.fl.add(line, text, "minimum above maximum", "Correct the two temperatures.")
	}
}

// whole checks what needs all twelve months.
func (p *normalsParser) whole() {
	var missing []string
	for m, ok := range p.seen {
		if !ok {
			missing = append(missing, time.Month(m+1).String())
		}
	}
	if len(missing) > 0 {
		p.fl.add(0, strings.Join(missing, ", "), "months are missing", "Add a line for each.")
		return
	}
	for m := range p.n.TmaxC {
		name := time.Month(m + 1).String()
		switch {
		case p.n.TmaxC[m] > hotMonthC:
			p.fl.add(0, fmt.Sprintf("%s %g", name, p.n.TmaxC[m]), "the temperatures look like °F", "Convert them: °C = (°F - 32) / 1.8.")
			return
		case math.Abs(p.n.TminC[m]) > 80 || p.n.TmaxC[m] < -80:
			p.fl.add(0, name, impossibleTemp, "Correct the value.")
		case p.n.RainMM[m] < 0:
			p.fl.add(0, fmt.Sprintf("%s %g", name, p.n.RainMM[m]), "negative rain", "Correct the value.")
		case p.n.RainMM[m] > 5000:
			p.fl.add(0, fmt.Sprintf("%s %g", name, p.n.RainMM[m]), "impossible rain", "Correct the value; rain is in mm.")
		}
	}
}

// parseMonth reads 1 to 12, or an English name of three letters or more, and
// returns 0 to 11.
func parseMonth(s string) (int, bool) {
	s = strings.TrimSpace(s)
	if n, err := strconv.Atoi(s); err == nil {
		return n - 1, n >= 1 && n <= 12
	}
	if len(s) < 3 {
		return 0, false
	}
	for m := time.January; m <= time.December; m++ {
		if name := m.String(); len(s) <= len(name) && strings.EqualFold(s, name[:len(s)]) {
			return int(m) - 1, true
		}
	}
	return 0, false
}
