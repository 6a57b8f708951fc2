package weather

import (
	"bytes"
	"fmt"
	"io"
	"sort"
	"strings"

	"bedweek/internal/cal"
)

// Limits of what is read, so that a wrong file cannot fill the memory: a
// station of 150 years with every element in long form stays below them.
const (
	maxBytes = 64 << 20
	maxLines = 2_000_000
)

// Sheet is a daily file as it was given: units brought to ours, nothing filled.
type Sheet struct {
	Kind        string
	Station     string         // whose rows these are, "" if the file does not say
	Stations    []string       // all stations met, in order of appearance
	StationRows map[string]int // lines of each
	Columns     []string       // heading as written; nil where the kind has none
	Lines       int            // lines of data met, of all stations
	Rows        []Row          // by day, one each
	WindHeightM float64        // height of Row.WindMS
	Place       *Site          // where the file says the station stands
	PlaceName   string
	Words       map[string]map[string]int // text columns: how often each word stands
	Repeats     int                       // lines whose day had been read before, whatever the station
	Notes       []string

	totals []total // rain totals of several days
}

// total is rain gathered over several days and read on the last.
type total struct {
	last   cal.Day
	days   int // 0 = not said
	rainMM float64
}

// ReadSheet reads a daily file without filling anything. station chooses one
// station by name where the file holds several; "" asks for one if need be.
// The sheet is never nil; with faults it holds what could be read.
func ReadSheet(name, station string, r io.Reader) (*Sheet, []Fault) {
	fl := &faultList{}
	lines := readLines(r, fl)
	sheet := &Sheet{WindHeightM: stationWindM, StationRows: map[string]int{}, Words: map[string]map[string]int{}}
	if lines == nil {
		return sheet, fl.all()
	}
	sheet.Kind = Sniff([]byte(strings.Join(lines[:min(len(lines), 200)], "\n")))
	p := &parser{sheet: sheet, station: station, faults: fl, byDay: map[cal.Day]int{}}
	switch sheet.Kind {
	case KindDaily:
		p.plain(lines)
	case KindDLY:
		p.dly(lines)
	case KindLong:
		p.long(lines)
	case KindWide:
		p.wide(lines)
	case KindEmpty:
		fl.add(0, "", "the file is empty", "Choose the file again, or download it anew.")
	case KindHourly:
		fl.add(1, lines[0], "these are hourly means, not a daily record", "Give a daily record, or monthly normals with rain.")
	case KindMonthly:
		fl.add(1, lines[0], "these are monthly normals, not a daily record", "Read them as normals.")
	default:
		fl.add(1, firstText(lines), "we do not know this kind of file",
			"Give a table with a heading: date,rain_mm,tmax_c,tmin_c,wind_ms. NOAA GHCN-Daily files are read as well.")
	}
	p.finish()
	return sheet, fl.all()
}

func firstText(lines []string) string {
	for _, l := range lines {
		if strings.TrimSpace(l) != "" {
			return l
		}
	}
	return ""
}

// readLines reads all of r within the limits. It returns nil, with a fault,
// when there is no text.
func readLines(r io.Reader, fl *faultList) []string {
	b, err := io.ReadAll(io.LimitReader(r, maxBytes+1))
	if err != nil {
		fl.add(0, err.Error(), "reading stopped in the middle", "Try again; the disk or the line may have failed.")
		return nil
	}
	if len(b) > maxBytes {
		b = b[:maxBytes]
		fl.add(0, "", fmt.Sprintf("the file is larger than %d MB; the rest was not read", maxBytes>>20),
			"Keep one station and the last thirty years.")
	}
	if len(bytes.TrimSpace(b)) == 0 {
		fl.add(0, "", "the file is empty", "Choose the file again, or download it anew.")
		return nil
	}
	if bytes.IndexByte(b, 0) >= 0 {
		fl.add(0, "", "this is not a text file",
			"Unpack it if it is packed. From a spreadsheet, save it as CSV (UTF-8).")
		return nil
	}
	s := strings.TrimPrefix(string(b), "\ufeff")
	s = strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n")
	lines := strings.Split(strings.TrimSuffix(s, "\n"), "\n")
	if len(lines) > maxLines {
		fl.add(maxLines, "", fmt.Sprintf("the file has more than %d lines; the rest was not read", maxLines),
			"Keep one station and the last thirty years.")
		lines = lines[:maxLines]
	}
	return lines
}

// parser gathers rows from the lines of any kind of daily file.
type parser struct {
	sheet   *Sheet
	station string // wanted; "" = the only one
	faults  *faultList
	byDay   map[cal.Day]int
	days    map[cal.Day]bool // days met, whatever the station
	notes   [noteKinds]noteCount
	latest  cal.Day
	mixed   bool // out of order already said
}

// meet notes a station's line and says whether its values are wanted.
func (p *parser) meet(station string) bool {
	s := p.sheet
	if station == "" {
		return true
	}
	if s.StationRows[station] == 0 {
		s.Stations = append(s.Stations, station)
	}
	s.StationRows[station]++
	if p.station != "" {
		return station == p.station
	}
	return station == s.Stations[0]
}

// row returns the row of day d, made when it is new.
func (p *parser) row(d cal.Day) (r *Row, isNew bool) {
	if i, ok := p.byDay[d]; ok {
		return &p.sheet.Rows[i], false
	}
	p.byDay[d] = len(p.sheet.Rows)
	p.sheet.Rows = append(p.sheet.Rows, Row{Day: d})
	return &p.sheet.Rows[len(p.sheet.Rows)-1], true
}

// ordered says once that days do not follow one another.
func (p *parser) ordered(line int, d cal.Day, excerpt string) {
	if d < p.latest && !p.mixed {
		p.mixed = true
		p.faults.add(line, excerpt, "the days are out of order from here", "We sorted them. Check that no line was moved by mistake.")
	}
	p.latest = max(p.latest, d)
}

// finish sorts the rows, checks what needs all of them, and writes the notes.
func (p *parser) finish() {
	s := p.sheet
	switch {
	case p.station != "" && s.StationRows[p.station] == 0 && len(s.Stations) > 0:
		p.faults.add(0, p.station, "no such station in this file", "The file holds "+list(s.Stations)+".")
		s.Rows = nil
	case p.station == "" && len(s.Stations) > 1:
		p.faults.add(0, list(s.Stations), "more than one station in one file", "Name the one to use; two places must not be mixed.")
		s.Rows = nil
	case p.station != "":
		s.Station = p.station
	case len(s.Stations) == 1:
		s.Station = s.Stations[0]
	}
	sort.Slice(s.Rows, func(i, j int) bool { return s.Rows[i].Day < s.Rows[j].Day })
	sort.Slice(s.totals, func(i, j int) bool { return s.totals[i].last < s.totals[j].last })
	for k, n := range p.notes {
		if n.count > 0 {
			s.Notes = append(s.Notes, n.text(k))
		}
	}
}

// list joins up to five names in words.
func list(names []string) string {
	const most = 5
	if len(names) > most {
		return strings.Join(names[:most], ", ") + fmt.Sprintf(" and %d more", len(names)-most)
	}
	return strings.Join(names, ", ")
}

// Kinds of things a reader notes without calling them faults.
const (
	noteQuality = iota
	noteTrace
	noteTotals
	noteMorning
	noteKinds
)

// noteCount counts one kind of note and keeps the first day.
type noteCount struct {
	count int
	first cal.Day
}

func (p *parser) note(kind int, d cal.Day) {
	n := &p.notes[kind]
	if n.count == 0 || d < n.first {
		n.first = d
	}
	n.count++
}

func (n noteCount) text(kind int) string {
	switch kind {
	case noteQuality:
		return fmt.Sprintf("%d values carry a quality flag and were left out (first on %s).", n.count, n.first)
	case noteTrace:
		return fmt.Sprintf("%d days had a trace of rain, too little to measure; they count as 0 mm.", n.count)
	case noteTotals:
		return fmt.Sprintf("%d rain readings cover several days (first read on %s). Each is spread evenly over its days.", n.count, n.first)
	default:
		return fmt.Sprintf("%d readings were taken in the morning. They belong mostly to the day before; the file's date is kept.", n.count)
	}
}

// MissingDays counts the days without a row between the first and last row.
func (s *Sheet) MissingDays() int {
	if len(s.Rows) == 0 {
		return 0
	}
	return int(s.Rows[len(s.Rows)-1].Day-s.Rows[0].Day) + 1 - len(s.Rows)
}

// Values returns what was recorded of a quantity ("rain", "tmax", "tmin",
// "wind", "radiation"), in order of day.
func (s *Sheet) Values(quantity string) []float64 {
	var out []float64
	for i := range s.Rows {
		if p := *s.Rows[i].cell(quantity); p != nil {
			out = append(out, *p)
		}
	}
	return out
}

// cell returns the place of a quantity in a row. An unknown name is our own
// mistake.
func (r *Row) cell(quantity string) **float64 {
	switch quantity {
	case "tmax":
		return &r.TmaxC
	case "tmin":
		return &r.TminC
	case "rain":
		return &r.RainMM
	case "wind", "wind2":
		return &r.WindMS
	case "radiation":
		return &r.RadMJ
	}
	panic("weather: unknown quantity")
}

// QuantityOf names the quantity a column of a plain table holds, "" if none.
func QuantityOf(column string) string {
	h := heading{names: []string{column}}
	for _, q := range []string{"rain", "tmax", "tmin", "wind", "wind2", "radiation", "temperature", "pressure"} {
		if h.find(q) == 0 {
			return q
		}
	}
	return ""
}

// Summary is a column in five figures.
type Summary struct {
	Count               int
	Sum, Mean, Min, Max float64 // all 0 when Count is 0
}

// Summarise returns the five figures of vs.
func Summarise(vs []float64) Summary {
	var s Summary
	for i, v := range vs {
		if i == 0 || v < s.Min {
			s.Min = v
		}
		if i == 0 || v > s.Max {
			s.Max = v
		}
		s.Count++
		s.Sum += v
	}
	if s.Count > 0 {
		s.Mean = s.Sum / float64(s.Count)
	}
	return s
}
