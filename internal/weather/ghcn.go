package weather

import (
	"fmt"
	"strconv"
	"strings"

	"bedweek/internal/cal"
)

// Layout of a .dly line, counted from 1, after the GHCN-Daily readme of NOAA
// NCEI, section III. Day k's group begins at column 22 + 8 (k - 1).
const (
	dlyLength   = 269
	dlyFirst    = 22
	dlyGroup    = 8
	dlyDays     = 31
	ghcnMissing = -9999
)

// DLYColumns returns the first and last column, counted from 1, of a field of
// a .dly line: ID, YEAR, MONTH, ELEMENT, or VALUE, MFLAG, QFLAG, SFLAG with a
// day behind it, as in "VALUE31".
func DLYColumns(field string) (from, to int, ok bool) {
	switch field {
	case "ID":
		return 1, 11, true
	case "YEAR":
		return 12, 15, true
	case "MONTH":
		return 16, 17, true
	case "ELEMENT":
		return 18, 21, true
	}
	for _, part := range []struct {
		name         string
		skip, length int
	}{{"VALUE", 0, 5}, {"MFLAG", 5, 1}, {"QFLAG", 6, 1}, {"SFLAG", 7, 1}} {
		if num, found := strings.CutPrefix(field, part.name); found {
			k, err := strconv.Atoi(num)
			if err != nil || k < 1 || k > dlyDays {
				return 0, 0, false
			}
			from = dlyFirst + dlyGroup*(k-1) + part.skip
			return from, from + part.length - 1, true
		}
	}
	return 0, 0, false
}

// DLYLength returns the length of a whole .dly line, and the value that stands
// for "missing".
func DLYLength() (length, missing int) { return dlyLength, ghcnMissing }

// GHCNUnit returns the unit of an element in our words and the file's words,
// and what one unit of the file is in ours. ok is false for elements we do
// not know.
func GHCNUnit(element string) (unit, inFile string, scale float64, ok bool) {
	switch element {
	case "TMAX", "TMIN", "TAVG", "TOBS", "MDTX", "MDTN":
		return "C", "tenths of C", 0.1, true
	case "PRCP", "MDPR", "EVAP", "MDEV":
		return "mm", "tenths of mm", 0.1, true
	case "SNOW", "SNWD", "MDSF":
		return "mm", "mm", 1, true
	case "AWND":
		return "m/s", "tenths of m/s", 0.1, true
	case "TSUN":
		return "minutes", "minutes", 1, true
	case "DAPR":
		return "days", "days", 1, true
	}
	return "", "", 0, false
}

// MeasureFlag says what a measurement flag of GHCN-Daily means, "" if unknown.
func MeasureFlag(flag string) string {
	switch flag {
	case "T":
		return "trace"
	case "B":
		return "two 12-hour totals"
	case "D":
		return "four six-hour totals"
	case "P":
		return "missing presumed zero"
	case "H":
		return "from hourly extremes"
	case "K":
		return "converted from knots"
	case "L":
		return "lagged"
	case "O":
		return "converted from oktas"
	case "W":
		return "converted from wind code"
	}
	return ""
}

// QualityFlag says what a quality flag of GHCN-Daily means and whether its
// value may be used.
func QualityFlag(flag string) (means string, use bool) {
	switch strings.TrimSpace(flag) {
	case "":
		return "passed all checks", true
	case "D":
		return "duplicate", false
	case "G":
		return "gap", false
	case "I":
		return "internal consistency", false
	case "K":
		return "streak", false
	case "L":
		return "multi-day length", false
	case "M":
		return "mega-consistency", false
	case "N":
		return "naught", false
	case "O":
		return "climatological outlier", false
	case "R":
		return "lagged range", false
	case "S":
		return "spatial consistency", false
	case "T":
		return "temporal consistency", false
	case "W":
		return "temperature too warm for snow", false
	case "X":
		return "bounds", false
	}
	return "failed a check: leave the value out by default", false
}

// Month is one line of a .dly file: one element of one station and month.
type Month struct {
	Station string
	Year    int
	Month   int
	Element string
	Unit    string     // of Values, in our words; "" = element not known, values as written
	Values  []*float64 // by day of the month, nil = missing or flagged
	Flagged []int      // days left out for quality
	Trace   []int      // days with a trace of rain
	Read    int        // days that could be read; fewer than len(Values) when the line is cut off
}

// Whole reports whether no part of the line is missing.
func (m Month) Whole() bool { return m.Read >= len(m.Values) }

// CutOff says in words what was read of a line that is cut off.
func (m Month) CutOff() string {
	return fmt.Sprintf("read days 1-%d only and report the rest as unreadable", m.Read)
}

// ParseDLY reads one .dly line. Trailing blanks that an editor cut off are put
// back. A line cut off in earnest gives the days before the cut.
func ParseDLY(line string) (Month, []Fault) {
	fl := &faultList{}
	m, _ := parseDLY(line, 0, fl)
	return m, fl.all()
}

func parseDLY(line string, at int, fl *faultList) (Month, bool) {
	line = strings.TrimRight(line, "\r")
	if len(line) < dlyFirst-1 || !allDigits(line[11:17]) {
		fl.add(at, line, "not a line of a .dly file", "Download the file anew; do not edit it.")
		return Month{}, false
	}
	year, _ := strconv.Atoi(line[11:15]) // digits, checked above
	month, _ := strconv.Atoi(line[15:17])
	m := Month{Station: line[:11], Year: year, Month: month, Element: line[17:21]}
	if _, what, remedy := makeDay(year, month, 1); what != "" {
		fl.add(at, line[:21], what, remedy)
		return m, false
	}
	m.Values = make([]*float64, monthLength(year, month))
	unit, _, scale, known := GHCNUnit(m.Element)
	m.Unit = unit
	if !known {
		scale = 1
	}
	m.Read = dlyDays
	if lastValue, _, _ := DLYColumns("MFLAG31"); len(line) >= lastValue-1 {
		line += strings.Repeat(" ", max(0, dlyLength-len(line)))
	} else {
		m.Read = (len(line) - (dlyFirst - 1)) / dlyGroup
	}
	for k := 1; k <= min(m.Read, len(m.Values)); k++ {
		m.day(k, line[dlyFirst-1+dlyGroup*(k-1):], scale, at, fl)
	}
	if !m.Whole() {
		fl.add(at, line, "the line is cut off", fmt.Sprintf("Days 1 to %d were read. Download the file anew.", m.Read))
	}
	return m, true
}

// day reads one group: five columns of value, three flags.
func (m *Month) day(k int, group string, scale float64, at int, fl *faultList) {
	text := strings.TrimSpace(group[:5])
	n, err := strconv.Atoi(text)
	if err != nil {
		fl.add(at, group[:dlyGroup], fmt.Sprintf("day %d holds no number", k), "Download the file anew; do not edit it.")
		return
	}
	if n == ghcnMissing {
		return
	}
	if _, use := QualityFlag(group[6:7]); !use {
		m.Flagged = append(m.Flagged, k)
		return
	}
	if group[5] == 'T' {
		m.Trace = append(m.Trace, k)
	}
	v := scaled(n, scale)
	m.Values[k-1] = &v
}

// scaled turns the file's whole number into our unit. Tenths are divided, not
// multiplied by 0.1, so that 254 gives 25.4.
func scaled(n int, scale float64) float64 {
	if scale == 0.1 {
		return float64(n) / 10
	}
	return float64(n) * scale
}

// ghcnQuantity names our quantity of an element, "" for those not used.
func ghcnQuantity(element string) string {
	switch element {
	case "TMAX":
		return "tmax"
	case "TMIN":
		return "tmin"
	case "PRCP":
		return "rain"
	case "AWND":
		return "wind"
	}
	return ""
}

// dly reads the lines of a .dly file.
func (p *parser) dly(lines []string) {
	multi := map[cal.Day]total{}
	var order []cal.Day
	for i, line := range lines {
		if strings.TrimSpace(line) == "" {
			continue
		}
		p.sheet.Lines++
		m, ok := parseDLY(line, i+1, p.faults)
		if !ok || !p.meet(m.Station) {
			continue
		}
		for _, k := range m.Flagged {
			if ghcnQuantity(m.Element) != "" {
				p.note(noteQuality, cal.Of(m.Year, monthOf(m.Month), k))
			}
		}
		for k, v := range m.Values {
			if v == nil {
				continue
			}
			d := cal.Of(m.Year, monthOf(m.Month), k+1)
			switch m.Element {
			case "MDPR", "DAPR":
				order = gather(multi, order, d, m.Element, *v)
			default:
				p.put(d, m.Element, *v, i+1)
			}
		}
		if m.Element == "PRCP" {
			for _, k := range m.Trace {
				p.trace(cal.Of(m.Year, monthOf(m.Month), k))
			}
		}
	}
	p.multiDay(multi, order)
	p.pairs()
}

// put stores one value of an element we use.
func (p *parser) put(d cal.Day, element string, v float64, line int) {
	q := ghcnQuantity(element)
	if q == "" {
		return
	}
	if what := impossible(q, v); what != "" {
		p.faults.add(line, fmt.Sprintf("%s %s %g", d, element, v), what, "The value is left out.")
		return
	}
	row, _ := p.row(d)
	c := row.cell(q)
	if *c != nil {
		p.faults.add(line, fmt.Sprintf("%s %s", d, element), "the same day twice", "The first value is kept. Delete the other.")
		return
	}
	*c = &v
}

func (p *parser) trace(d cal.Day) {
	row, _ := p.row(d)
	row.Trace = true
	p.note(noteTrace, d)
}

// gather collects multi-day totals (MDPR, mm) and their lengths (DAPR, days).
func gather(multi map[cal.Day]total, order []cal.Day, d cal.Day, element string, v float64) []cal.Day {
	t, known := multi[d]
	if !known {
		order = append(order, d)
	}
	t.last = d
	if element == "MDPR" {
		t.rainMM = v
	} else {
		t.days = int(v)
	}
	multi[d] = t
	return order
}

// multiDay keeps the totals whose length is known and possible.
func (p *parser) multiDay(multi map[cal.Day]total, order []cal.Day) {
	const longest = 60 // days; longer totals tell nothing of a day
	for _, d := range order {
		t := multi[d]
		if t.days < 1 || t.days > longest || impossible("rain", t.rainMM) != "" {
			continue
		}
		p.sheet.totals = append(p.sheet.totals, t)
		p.note(noteTotals, d)
	}
}

// pairs checks maxima against minima where they come on different lines.
func (p *parser) pairs() {
	for i := range p.sheet.Rows {
		p.checkPair(&p.sheet.Rows[i], 0, p.sheet.Rows[i].Day.String())
	}
}
