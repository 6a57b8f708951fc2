package weather

import (
	"strconv"
	"strings"
)

// heading is the first line of a table with named columns.
type heading struct {
	names []string // as written, trimmed
	sep   byte
}

// newHeading reads a heading line; the separator is the commonest of comma,
// semicolon and tab.
func newHeading(line string) heading {
	line = strings.TrimPrefix(line, "\ufeff")
	sep := byte(',')
	for _, c := range []byte{';', '\t'} {
		if strings.Count(line, string(c)) > strings.Count(line, string(sep)) {
			sep = c
		}
	}
	h := heading{sep: sep}
	for _, f := range splitCSV(line, sep) {
		h.names = append(h.names, strings.TrimSpace(f))
	}
	return h
}

// columnNames lists, for each quantity, the names its column may have.
func columnNames(quantity string) []string {
	switch quantity {
	case "date":
		return []string{"date", "day"}
	case "month":
		return []string{"month"}
	case "rain":
		return []string{"precipitation", "rain_mm", "rain", "precip_mm", "precipitation_mm", "prcp_mm"}
	case "tmax":
		return []string{"temp_max", "tmax_c", "tmax", "temp_max_c", "temperature_max"}
	case "tmin":
		return []string{"temp_min", "tmin_c", "tmin", "temp_min_c", "temperature_min"}
	case "wind":
		return []string{"wind", "wind_ms", "wind_10m_ms"}
	case "wind2":
		return []string{"wind_2m_ms", "wind_2m"}
	case "radiation":
		return []string{"radiation", "radiation_mj", "rad_mj", "solar_mj"}
	case "location":
		return []string{"location", "station", "place"}
	case "temperature":
		return []string{"temperature", "temp", "temp_c"}
	case "pressure":
		return []string{"pressure", "pressure_hpa"}
	}
	return nil
}

// find returns the column of a quantity, -1 if there is none.
func (h heading) find(quantity string) int {
	for _, want := range columnNames(quantity) {
		for i, n := range h.names {
			if strings.EqualFold(n, want) {
				return i
			}
		}
	}
	return -1
}

// has reports whether a column has exactly this name, capitals included.
func (h heading) has(name string) bool { return h.at(name) >= 0 }

func (h heading) at(name string) int {
	for i, n := range h.names {
		if n == name {
			return i
		}
	}
	return -1
}

// fahrenheit returns the first column whose name speaks of units we do not
// take (°F, inches, miles or kilometres an hour), or "".
func (h heading) fahrenheit() string {
	for _, n := range h.names {
		l := strings.ToLower(n)
		for _, end := range []string{"_f", " f", "(f)", "°f", "_in", "inch", "inches", "_mph", "_kmh", "_km_h", "fahrenheit"} {
			if strings.HasSuffix(l, end) {
				return n
			}
		}
	}
	return ""
}

// splitCSV splits one line at sep. Quotes may hold separators; a doubled quote
// inside quotes is one quote. A quote left open ends with the line.
func splitCSV(line string, sep byte) []string {
	if strings.IndexByte(line, '"') < 0 {
		return strings.Split(line, string(rune(sep)))
	}
	var out []string
	var b strings.Builder
	quoted := false
	for i := 0; i < len(line); i++ {
		c := line[i]
		switch {
		case c == '"' && quoted && i+1 < len(line) && line[i+1] == '"':
			b.WriteByte('"')
			i++
		case c == '"':
			quoted = !quoted
		case c == sep && !quoted:
			out = append(out, b.String())
			b.Reset()
		default:
			b.WriteByte(c)
		}
	}
	return append(out, b.String())
}

// number reads a cell. blank says that nothing was recorded; ok is false for
// text that is no number. Where columns are parted by semicolon or tab, a
// decimal comma is understood.
func number(cell string, sep byte) (v float64, blank, ok bool) {
	s := strings.TrimSpace(cell)
	switch strings.ToLower(s) {
	case "", "na", "n/a", "null", "none", "nan", "-", ".", "-9999", "-9999.0", "-999", "-999.9", "-99.9":
		return 0, true, true
	}
	if sep != ',' {
		s = strings.Replace(s, ",", ".", 1)
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || v != v || v > 1e9 || v < -1e9 {
		return 0, false, false
	}
	return v, false, true
}
