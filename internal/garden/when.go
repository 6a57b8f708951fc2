package garden

import (
	"strconv"
	"strings"
	"time"
	"unicode"

	"bedweek/internal/cal"
)

// First and last year a date in a garden file may fall in.
const (
	firstYear = 1900
	lastYear  = 2200
)

// notADate says why a text is no date.
type notADate struct{ what, remedy string }

// When reads a date as a garden file takes it: "early March 2015", "about
// 2013". ok is false when it is none.
func When(text string, south bool) (w cal.Window, ok bool) {
	w, bad := when(text, south)
	return w, bad == nil
}

// when reads a date as gardeners say it. Widths are ours: a month is its
// days; "early", "mid" and "late" its thirds; "about" adds a week to a day,
// ten days to a month, half a year to a year; seasons are three whole months,
// turned south of the equator.
func when(text string, south bool) (cal.Window, *notADate) {
	words := strings.Fields(strings.ToLower(strings.ReplaceAll(text, ",", " ")))
	words = dropWords(words, "of", "the", "in")
	if len(words) > 0 && (words[0] == "between" || words[0] == "from") {
		words = words[1:]
	}
	for i, w := range words {
		if (w == "to" || w == "and" || w == "-" || w == "–") && i > 0 && i < len(words)-1 {
			return stretch(words[:i], words[i+1:], south)
		}
	}
	return one(words, south)
}

// stretch reads "3 to 20 March 2015": what the first end leaves out is taken
// from the second.
func stretch(a, b []string, south bool) (cal.Window, *notADate) {
	late, fault := one(b, south)
	if fault != nil {
		return cal.Window{}, fault
	}
	early, fault := one(a, south)
	if fault != nil { // "March to May 2015", "3 to 20 March 2015"
		for i := len(b) - 1; i >= 0 && fault != nil; i-- {
			early, fault = one(append(append([]string{}, a...), b[i:]...), south)
		}
	}
	switch {
	case fault != nil:
		return cal.Window{}, fault
	case early.Early > late.Late:
		return cal.Window{}, &notADate{"ends before it begins", "Write the earlier date first."}
	}
	return cal.Window{Early: early.Early, Likely: early.Early + (late.Late-early.Early)/2, Late: late.Late}, nil
}

// one reads a date that is no stretch.
func one(words []string, south bool) (cal.Window, *notADate) {
	bad := &notADate{"is no date", "Write it as 2015-03-04, 4 March 2015, early March 2015 or May 2015."}
	if len(words) == 0 || len(words) > 5 {
		return cal.Window{}, bad
	}
	switch words[0] {
	case "about", "around", "circa", "roughly", "~":
		w, fault := one(words[1:], south)
		if fault != nil {
			return cal.Window{}, fault
		}
		return widened(w), nil
	case "week":
		w, fault := one(words[1:], south)
		if fault != nil || w.Early != w.Late {
			return cal.Window{}, bad
		}
		m := w.Early.Monday()
		return cal.Window{Early: m, Likely: m + 3, Late: m + 6}, nil
	case "early", "start", "beginning", "mid", "middle", "late", "end":
		w, fault := one(words[1:], south)
		if fault != nil || w.Late-w.Early < 27 || w.Late-w.Early > 30 {
			return cal.Window{}, bad
		}
		return third(words[0], w), nil
	}
	return date(words, south, bad)
}

// third is the early, middle or late part of a month.
func third(part string, month cal.Window) cal.Window {
	from, to := month.Early, month.Late
	switch part {
	case "early", "start", "beginning":
		to = from + 9
	case "mid", "middle":
		from, to = from+10, from+19
	default:
		from += 20
	}
	return cal.Window{Early: from, Likely: from + (to-from)/2, Late: to}
}

// widened makes a window less sure by a week, ten days or half a year.
func widened(w cal.Window) cal.Window {
	by := cal.Day(10)
	switch n := w.Late - w.Early; {
	case n == 0:
		by = 7
	case n > 31:
		by = (n + 1) / 2
	}
	return cal.Window{Early: w.Early - by, Likely: w.Likely, Late: w.Late + by}
}

// date reads words that name one day, month, season or year.
func date(words []string, south bool, bad *notADate) (cal.Window, *notADate) {
	if len(words) == 1 {
		return numeric(words[0], bad)
	}
	year, ok := number(words[len(words)-1])
	if !ok {
		return cal.Window{}, bad
	}
	if year < firstYear || year > lastYear {
		return cal.Window{}, outOfYears()
	}
	switch len(words) {
	case 2:
		if m, ok := monthNamed(words[0]); ok {
			return days(cal.Of(year, m, 1), cal.Of(year, m+1, 1)-1), nil
		}
		return season(words[0], year, south, bad)
	case 3:
		d, okD := number(strings.TrimRight(words[0], "stndrh"))
		m, okM := monthNamed(words[1])
		if !okM {
			m, okM = monthNamed(words[0])
			d, okD = number(strings.TrimRight(words[1], "stndrh"))
		}
		if okM && okD {
			return oneDay(year, m, d)
		}
	}
	return cal.Window{}, bad
}

// season is three whole months. Those that cross the new year could mean two
// years, so they are refused.
func season(name string, year int, south bool, bad *notADate) (cal.Window, *notADate) {
	first := time.Month(0)
	switch name {
	case "spring":
		first = time.March
	case "summer":
		first = time.June
	case "autumn", "fall":
		first = time.September
	case "winter":
		first = time.December
	default:
		return cal.Window{}, bad
	}
	if south {
		first = (first+5)%12 + 1
	}
	if first == time.December {
		return cal.Window{}, &notADate{"lies in two years", "Name the month: December " + strconv.Itoa(year) + " or January " + strconv.Itoa(year) + "."}
	}
	return days(cal.Of(year, first, 1), cal.Of(year, first+3, 1)-1), nil
}

// numeric reads 2015-03-04, 2015-03 and 2015.
func numeric(word string, bad *notADate) (cal.Window, *notADate) {
	parts := strings.Split(word, "-")
	var n [3]int
	for i, p := range parts {
		x, ok := number(p)
		if !ok || i > 2 {
			if strings.ContainsAny(word, "/.") {
				return cal.Window{}, &notADate{"can be read two ways", "Write year-month-day, as 2015-03-04, or name the month."}
			}
			return cal.Window{}, bad
		}
		n[i] = x
	}
	switch {
	case len(parts[0]) != 4:
		return cal.Window{}, bad
	case n[0] < firstYear || n[0] > lastYear:
		return cal.Window{}, outOfYears()
	case len(parts) == 1:
		return days(cal.Of(n[0], 1, 1), cal.Of(n[0], 12, 31)), nil
	case n[1] < 1 || n[1] > 12:
		return cal.Window{}, &notADate{"has no such month", "Months run from 01 to 12: year-month-day."}
	case len(parts) == 2:
		m := time.Month(n[1])
		return days(cal.Of(n[0], m, 1), cal.Of(n[0], m+1, 1)-1), nil
	}
	return oneDay(n[0], time.Month(n[1]), n[2])
}

// oneDay checks that a month has such a day.
func oneDay(year int, m time.Month, d int) (cal.Window, *notADate) {
	day := cal.Of(year, m, d)
	if _, gotM, gotD := day.Date(); gotM != m || gotD != d {
		return cal.Window{}, &notADate{"is a day that month does not have", "Look at the number of the day."}
	}
	return days(day, day), nil
}

func days(a, b cal.Day) cal.Window {
	return cal.Window{Early: a, Likely: a + (b-a)/2, Late: b}
}

func outOfYears() *notADate {
	return &notADate{"is out of range", "Years run from 1900 to 2200. Look at the year."}
}

// number reads a short run of digits.
func number(word string) (int, bool) {
	if word == "" || len(word) > 4 {
		return 0, false
	}
	for _, c := range word {
		if c < '0' || c > '9' {
			return 0, false
		}
	}
	n, err := strconv.Atoi(word)
	return n, err == nil
}

// monthNamed reads a month's name or its first three letters or more.
func monthNamed(word string) (time.Month, bool) {
	word = strings.TrimFunc(word, unicode.IsPunct)
	if len(word) < 3 {
		return 0, false
	}
	for m := time.January; m <= time.December; m++ {
		if strings.HasPrefix(strings.ToLower(m.String()), word) {
			return m, true
		}
	}
	return 0, false
}

// months reads "June", "June to October" or "all year" as two month numbers;
// all year is 0, 0.
func months(text string) (from, to int, ok bool) {
	text = strings.ReplaceAll(strings.ReplaceAll(text, "–", "-"), "-", " to ")
	words := strings.Fields(strings.ToLower(text))
	switch {
	case len(words) == 2 && words[0] == "all" && words[1] == "year":
		return 0, 0, true
	case len(words) == 1:
		words = append(words, "to", words[0])
	}
	if len(words) != 3 || words[1] != "to" {
		return 0, 0, false
	}
	a, okA := monthNamed(words[0])
	b, okB := monthNamed(words[2])
	return int(a), int(b), okA && okB
}

func dropWords(words []string, drop ...string) []string {
	var kept []string
	for _, w := range words {
		keep := true
		for _, d := range drop {
			keep = keep && w != d
		}
		if keep {
			kept = append(kept, w)
		}
	}
	return kept
}
