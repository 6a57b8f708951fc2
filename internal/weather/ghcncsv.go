package weather

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
)

func monthOf(m int) time.Month { return time.Month(m) }

// Observation is one line of a GHCN-Daily CSV file in long form.
type Observation struct {
	Station string
	Day     cal.Day
	Element string
	Value   float64
	Unit    string
	Trace   bool
	Use     bool
	Why     string // why not to use it
	ObsTime string // "07:00"; "" = not said
}

// ParseLong reads one line "ID,YYYYMMDD,ELEMENT,VALUE,MFLAG,QFLAG,SFLAG,TIME"
// after the readme of NOAA NCEI. ok is false, with a fault, when it cannot.
func ParseLong(line string) (Observation, []Fault, bool) {
	fl := &faultList{}
	o, ok := parseLong(line, 0, fl)
	return o, fl.all(), ok
}

func parseLong(line string, at int, fl *faultList) (Observation, bool) {
	f := splitCSV(strings.TrimRight(line, "\r"), ',')
	for i := range f {
		f[i] = strings.TrimSpace(f[i])
	}
	if len(f) < 4 {
		fl.add(at, line, "the line is cut off", "Download the file anew.")
		return Observation{}, false
	}
	for len(f) < 8 {
		f = append(f, "")
	}
	o := Observation{Station: f[0], Element: f[2]}
	d, what, remedy := parseDay(f[1])
	if what != "" {
		fl.add(at, f[1], what, remedy)
		return o, false
	}
	o.Day = d
	n, err := strconv.Atoi(f[3])
	if err != nil {
		fl.add(at, f[3], "not a whole number", "This kind of file holds whole numbers. Download it anew.")
		return o, false
	}
	unit, _, scale, known := GHCNUnit(o.Element)
	if !known {
		scale = 1
	}
	o.Unit, o.Value = unit, scaled(n, scale)
	o.Trace = f[4] == "T"
	_, o.Use = QualityFlag(f[5])
	if !o.Use {
		o.Why = "quality flag " + f[5]
	}
	if n == ghcnMissing {
		o.Use, o.Why = false, "missing"
	}
	if t := f[7]; len(t) == 4 && allDigits(t) && t < "2401" {
		o.ObsTime = t[:2] + ":" + t[2:]
	}
	return o, true
}

// long reads the lines of a GHCN-Daily CSV file in long form.
func (p *parser) long(lines []string) {
	multi := map[cal.Day]total{}
	var order []cal.Day
	for i, line := range lines {
		t := strings.TrimSpace(line)
		if t == "" || strings.HasPrefix(t, "#") || i == 0 && !looksLong(line) {
			continue
		}
		p.sheet.Lines++
		o, ok := parseLong(line, i+1, p.faults)
		if !ok || !p.meet(o.Station) {
			continue
		}
		used := ghcnQuantity(o.Element) != ""
		switch {
		case !o.Use:
			if used && o.Why != "missing" {
				p.note(noteQuality, o.Day)
			}
			continue
		case o.Element == "MDPR" || o.Element == "DAPR":
			order = gather(multi, order, o.Day, o.Element, o.Value)
			continue
		}
		p.put(o.Day, o.Element, o.Value, i+1)
		if used && o.ObsTime != "" && o.ObsTime < "12:00" {
			p.note(noteMorning, o.Day)
		}
		if o.Trace && o.Element == "PRCP" {
			p.trace(o.Day)
		}
	}
	p.multiDay(multi, order)
	p.pairs()
}

// wideCell is one VALUE with its VALUE_ATTRIBUTES "M,Q,S[,time]".
type wideCell struct {
	text  string
	flags []string
}

func (c wideCell) flag(i int) string {
	if i < len(c.flags) {
		return strings.TrimSpace(c.flags[i])
	}
	return ""
}

// wide reads GHCN-Daily access CSV, one row a day. Values are tenths in the
// access files; the order form can deliver whole metric units (seen by their
// decimals) or °F and inches (seen by their size, and refused).
func (p *parser) wide(lines []string) {
	start := 0
	for strings.TrimSpace(lines[start]) == "" || strings.HasPrefix(strings.TrimSpace(lines[start]), "#") {
		start++
	}
	h := newHeading(lines[start])
	p.sheet.Columns = h.names
	whole, fahrenheit := wideUnits(h, lines[start+1:])
	if fahrenheit {
		p.faults.add(start+1, lines[start], "the temperatures look like °F", "Order the file again in metric units.")
		return
	}
	if whole {
		p.sheet.Notes = append(p.sheet.Notes, "The values have decimals, so they were taken as whole °C and mm, not tenths.")
	}
	for i := start + 1; i < len(lines); i++ {
		if strings.TrimSpace(lines[i]) != "" {
			p.wideLine(h, whole, i+1, lines[i])
		}
	}
	p.pairs()
}

// wideUnits looks at the maxima: decimals mean whole units; whole numbers that
// never pass 130 but reach 50 cannot be tenths of °C of any warm season.
func wideUnits(h heading, lines []string) (whole, fahrenheit bool) {
	at := h.at("TMAX")
	if at < 0 {
		return false, false
	}
	var vs []float64
	for _, l := range lines {
		f := splitCSV(l, h.sep)
		if at >= len(f) {
			continue
		}
		if strings.Contains(f[at], ".") {
			whole = true
		}
		if v, blank, ok := number(f[at], h.sep); ok && !blank {
			vs = append(vs, v)
		}
	}
	s := Summarise(vs)
	if whole {
		return true, looksFahrenheit(vs)
	}
	const year = 200 // days: shorter files cannot tell a cold spell from °F
	return false, s.Count >= year && s.Max > hotYearC && s.Max <= 130 && s.Min > -60
}

func (p *parser) wideLine(h heading, whole bool, line int, text string) {
	f := splitCSV(strings.TrimRight(text, "\r"), h.sep)
	p.sheet.Lines++
	if len(f) != len(h.names) {
		p.faults.add(line, text, fmt.Sprintf("%d values where the heading has %d", len(f), len(h.names)), "Download the file anew; do not edit it.")
		return
	}
	d, what, remedy := parseDay(f[h.at("DATE")])
	if what != "" {
		p.faults.add(line, f[h.at("DATE")], what, remedy)
		return
	}
	if !p.meet(strings.TrimSpace(f[h.at("STATION")])) {
		return
	}
	if _, dup := p.byDay[d]; dup {
		p.faults.add(line, d.String(), "the same day twice", "The first line is kept. Delete the other.")
		return
	}
	p.ordered(line, d, d.String())
	p.row(d)
	p.widePlace(h, f)
	for _, e := range []string{"TMAX", "TMIN", "PRCP", "AWND"} {
		at := h.at(e)
		if at < 0 {
			continue
		}
		c := wideCell{text: f[at]}
		if a := h.at(e + "_ATTRIBUTES"); a >= 0 {
			c.flags = strings.Split(f[a], ",")
		}
		p.wideValue(d, e, c, whole, line)
	}
}

func (p *parser) wideValue(d cal.Day, element string, c wideCell, whole bool, line int) {
	v, blank, ok := number(c.text, ',')
	if blank {
		return
	}
	if !ok {
		p.faults.add(line, c.text, "not a number", "Download the file anew; do not edit it.")
		return
	}
	if _, use := QualityFlag(c.flag(1)); !use {
		p.note(noteQuality, d)
		return
	}
	if !whole {
		v /= 10
	}
	p.put(d, element, v, line)
	if element == "PRCP" && c.flag(0) == "T" {
		p.trace(d)
	}
	if t := c.flag(3); len(t) == 4 && allDigits(t) && t < "1200" {
		p.note(noteMorning, d)
	}
}

// widePlace keeps the station's name and place from the first row.
func (p *parser) widePlace(h heading, f []string) {
	if at := h.at("NAME"); at >= 0 && p.sheet.PlaceName == "" {
		p.sheet.PlaceName = strings.TrimSpace(f[at])
	}
	if p.sheet.Place != nil {
		return
	}
	var v [3]float64
	for i, n := range []string{"LATITUDE", "LONGITUDE", "ELEVATION"} {
		at := h.at(n)
		if at < 0 {
			return
		}
		x, blank, ok := number(f[at], ',')
		if blank || !ok {
			return
		}
		v[i] = x
	}
	if math.Abs(v[0]) <= 90 && math.Abs(v[1]) <= 180 && v[2] > -500 && v[2] < 9000 {
		p.sheet.Place = &Site{LatDeg: v[0], LonDeg: v[1], ElevM: v[2]}
	}
}
