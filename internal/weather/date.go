package weather

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
)

// Years outside these are taken for mistakes: no instrument record is older,
// and a planner looks only a few years ahead.
const (
	firstYear = 1750
	lastYear  = 2200
)

// parseDay reads 2006-01-02, 2006/01/02 or 20060102, with or without a time
// behind it. It returns what is wrong and what to try, or "", "".
func parseDay(s string) (d cal.Day, what, remedy string) {
	s = strings.TrimSpace(s)
	if i := strings.IndexAny(s, "T "); i >= 8 {
		s = s[:i]
	}
	var parts []string
	switch {
	case len(s) == 8 && allDigits(s):
		parts = []string{s[:4], s[4:6], s[6:]}
	case strings.Count(s, "-") == 2:
		parts = strings.Split(s, "-")
	case strings.Count(s, "/") == 2:
		parts = strings.Split(s, "/")
	}
	const form = "Write dates as year-month-day: 2015-04-12."
	if len(parts) != 3 || len(parts[0]) != 4 {
		return 0, "date not understood", form
	}
	var n [3]int
	for i, p := range parts {
		if !allDigits(p) || len(p) > 4 {
			return 0, "date not understood", form
		}
		n[i], _ = strconv.Atoi(p) // digits only, at most four
	}
	return makeDay(n[0], n[1], n[2])
}

// makeDay checks a year, month and day.
func makeDay(y, m, day int) (d cal.Day, what, remedy string) {
	if y < firstYear || y > lastYear {
		return 0, "impossible date", fmt.Sprintf("Years from %d to %d are read.", firstYear, lastYear)
	}
	if m < 1 || m > 12 {
		return 0, "impossible date", "Months run from 1 to 12. Write dates as year-month-day."
	}
	if last := monthLength(y, m); day < 1 || day > last {
		return 0, "impossible date", fmt.Sprintf("%s %d has %d days. Correct the date or leave the line out.", time.Month(m), y, last)
	}
	return cal.Of(y, time.Month(m), day), "", ""
}

// monthLength returns the number of days in a month.
func monthLength(y, m int) int {
	return int(cal.Of(y, time.Month(m)+1, 1) - cal.Of(y, time.Month(m), 1))
}
