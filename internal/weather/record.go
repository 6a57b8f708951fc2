package weather

import (
	"fmt"
	"io"
	"math"

	"bedweek/internal/cal"
)

// Read reads a daily weather file of any kind Sniff knows, fills its gaps
// openly and works out what was not recorded. The record is nil when nothing
// can be made of the file; the faults then say why. With a record, the faults
// name what was left out of it.
//
// site is where the garden lies; a file that names its own place keeps that.
func Read(name string, r io.Reader, site Site) (*Record, []Fault) {
	return ReadStation(name, "", r, site)
}

// ReadStation is Read for one named station of a file that holds several.
func ReadStation(name, station string, r io.Reader, site Site) (*Record, []Fault) {
	sheet, faults := ReadSheet(name, station, r)
	if len(sheet.Rows) == 0 {
		if len(faults) == 0 {
			faults = []Fault{{What: "no days could be read", Remedy: "Check that the file holds temperatures and rain."}}
		}
		return nil, faults
	}
	rec, more := sheet.Record(name, site)
	return rec, append(faults, more...)
}

// Record fills the gaps of a sheet. See Read.
func (s *Sheet) Record(name string, site Site) (*Record, []Fault) {
	if math.Abs(site.LatDeg) > 90 || site.LatDeg != site.LatDeg {
		return nil, []Fault{{What: "latitude out of range", Remedy: "Give a latitude from -90 to 90."}}
	}
	rec := &Record{Name: name, Site: site, Notes: append([]string(nil), s.Notes...)}
	if s.Place != nil {
		coast := site.Coastal
		rec.Site = *s.Place
		rec.Site.Coastal = coast
	}
	first, last, ok := s.span()
	if !ok {
		return nil, []Fault{{What: "no day has both a maximum and a minimum temperature", Remedy: "Choose a station that records both."}}
	}
	f := newFiller(first, int(last-first)+1)
	early := f.load(s)
	if early > 0 {
		rec.Notes = append(rec.Notes, fmt.Sprintf("%d days lie before or after the first and last temperatures; they were left out.", early))
	}
	f.spread(s.totals)
	if !f.has("rain") {
		return nil, []Fault{{What: "no rain was recorded", Remedy: "Choose a station that records rain as well."}}
	}
	f.fillAll()
	faults := s.apart(first, last)
	rec.Start, rec.Gaps = first, f.gaps
	rec.Days = make([]Day, len(f.col["tmax"]))
	f.wind(rec, s.WindHeightM)
	f.temperaturesAndRain(rec)
	f.radiation(rec)
	return rec, faults
}

// longestGap is the gap, in days, at which a record falls into two: five years
// filled with means would drown what was recorded.
const longestGap = 5 * 365

// span is from the first to the last day with both temperatures, of the part
// of the sheet with most such days when gaps of years part it.
func (s *Sheet) span() (first, last cal.Day, ok bool) {
	var from, to cal.Day
	n, most := 0, 0
	keep := func() {
		if n > most {
			first, last, most = from, to, n
		}
	}
	for i := range s.Rows {
		r := &s.Rows[i]
		if r.TmaxC == nil || r.TminC == nil {
			continue
		}
		if n > 0 && r.Day-to > longestGap {
			keep()
			n = 0
		}
		if n == 0 {
			from = r.Day
		}
		to = r.Day
		n++
	}
	keep()
	return first, last, most > 0
}

// apart says in words which rows lie years away from the rest.
func (s *Sheet) apart(first, last cal.Day) []Fault {
	n, example := 0, cal.Day(0)
	for i := range s.Rows {
		r := &s.Rows[i]
		if r.TmaxC != nil && r.TminC != nil && (r.Day < first || r.Day > last) {
			n++
			example = r.Day
		}
	}
	if n == 0 {
		return nil
	}
	return []Fault{{
		Excerpt: example.String(), What: fmt.Sprintf("days more than five years away from the rest: %d", n),
		Remedy: "They were left out. Check the year for a slip.",
	}}
}
