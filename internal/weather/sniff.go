package weather

import (
	"bytes"
	"strings"
)

// Kinds of weather file, as Sniff names them.
const (
	KindEmpty   = "empty"
	KindBinary  = "not text"
	KindDaily   = "daily table"
	KindHourly  = "hourly normals"
	KindMonthly = "monthly normals"
	KindDLY     = "GHCN-Daily .dly"
	KindLong    = "GHCN-Daily CSV, one value a line"
	KindWide    = "GHCN-Daily CSV, one day a line"
	KindUnknown = "unknown"
)

// Sniff names the kind of a weather file from its first bytes; a few thousand
// are plenty. It looks at the first lines that are not comments (#).
func Sniff(first []byte) string {
	if bytes.IndexByte(first, 0) >= 0 {
		return KindBinary
	}
	lines := firstLines(string(first), 2)
	if len(lines) == 0 {
		return KindEmpty
	}
	head := lines[0]
	if looksDLY(head) {
		return KindDLY
	}
	if looksLong(head) || len(lines) > 1 && looksLong(lines[1]) {
		return KindLong
	}
	cols := newHeading(head)
	switch {
	case cols.has("STATION") && cols.has("DATE") && (cols.has("TMAX") || cols.has("TMIN") || cols.has("PRCP")):
		return KindWide
	case cols.find("month") >= 0 && cols.find("tmax") >= 0:
		return KindMonthly
	case cols.find("date") >= 0 && cols.find("temperature") >= 0 && cols.find("tmax") < 0:
		return KindHourly
	case cols.find("date") >= 0 && (cols.find("tmax") >= 0 || cols.find("tmin") >= 0 || cols.find("rain") >= 0):
		return KindDaily
	case cols.fahrenheit() != "":
		return KindDaily // its reader says what is wrong with it
	}
	return KindUnknown
}

// firstLines returns up to n lines that hold something and are not comments.
func firstLines(s string, n int) []string {
	s = strings.TrimPrefix(s, "\ufeff")
	var out []string
	for s != "" && len(out) < n {
		var line string
		line, s, _ = strings.Cut(s, "\n")
		line = strings.TrimRight(line, "\r")
		if t := strings.TrimSpace(line); t != "" && !strings.HasPrefix(t, "#") {
			out = append(out, line)
		}
	}
	return out
}

func looksDLY(line string) bool {
	if len(line) < 26 || strings.ContainsAny(line[:21], ",;\t ") {
		return false
	}
	return allDigits(line[11:17]) && isElement(line[17:21])
}

func looksLong(line string) bool {
	f := splitCSV(line, ',')
	return len(f) >= 4 && len(f[0]) == 11 && len(f[1]) == 8 && allDigits(f[1]) && isElement(f[2])
}

// isElement reports whether s is a four-letter element name such as TMAX.
func isElement(s string) bool {
	if len(s) != 4 || s[0] < 'A' || s[0] > 'Z' {
		return false
	}
	for i := 1; i < 4; i++ {
		if c := s[i]; (c < 'A' || c > 'Z') && (c < '0' || c > '9') {
			return false
		}
	}
	return true
}

func allDigits(s string) bool {
	for i := 0; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			return false
		}
	}
	return s != ""
}
