package web

import (
	"fmt"
	"html/template"
	"math"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// helpers are the few functions templates may call.
var helpers = template.FuncMap{
	"weekday":   weekday,
	"dots":      func(n int) *TwentyDots { return twentyDots(n) },
	"px":        px,
	"at":        at,
	"hours":     hours,
	"window":    window,
	"plural":    plural,
	"capital":   name,
	"fresh":     ledger.NewID,
	"story":     func(items []TellItem, back string) Story { return Story{items, back} },
	"many":      many,
	"after":     after,
	"compass":   reckon.Compass,
	"hourwords": clock,
	"signed":    func(x float64) string { return strings.Replace(fmt.Sprintf("%+.1f", x), "-", "−", 1) },
	"minus":     func(a float64, up any) float64 { return a - figure(up) },
	"share":     func(x float64) string { return strconv.Itoa(int(math.Round(100*x))) + " %" },
	"cm":        func(m float64) string { return strconv.Itoa(int(math.Round(100 * m))) },
	"neg":       func(a float64) float64 { return -a },
}

// figure reads a template's number, which may be written as a whole one.
func figure(v any) float64 {
	switch n := v.(type) {
	case int:
		return float64(n)
	case float64:
		return n
	}
	panic("web: a template gave something else than a number")
}

// weekday writes a day as "Saturday 10 October 2015".
func weekday(d cal.Day) string { return d.Time().Format("Monday 2 January 2006") }

// shortDay writes a day as "Sat 10 Oct".
func shortDay(d cal.Day) string { return d.Time().Format("Mon 2 Jan") }

// window writes a window as "about 3 June (20 May to 15 June)", with years
// when they are not the year of the day it is seen from.
func window(w cal.Window, seen cal.Day) string {
	if w.None() {
		return "not at all"
	}
	if w.Early == w.Late {
		return dayFrom(w.Likely, seen)
	}
	return fmt.Sprintf("about %s (%s to %s)", dayFrom(w.Likely, seen), dayFrom(w.Early, seen), dayFrom(w.Late, seen))
}

// dayFrom writes a day, with its year when it lies far from the day it is
// seen from.
func dayFrom(d, seen cal.Day) string {
	if d < seen-270 || d > seen+270 {
		return d.Long()
	}
	return d.Short()
}

// plural writes a count with its noun.
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// after drops a first word that the page says itself, as "Next: ".
func after(word, s string) string {
	if len(s) >= len(word) && strings.EqualFold(s[:len(word)], word) {
		return name(strings.TrimSpace(s[len(word):]))
	}
	return s
}

// many writes a large whole number with commas.
func many(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0 && s[i-1] != '-'; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}

// mealsOf writes a number of meals with its noun.
func mealsOf(x float64) string {
	if m := meals(x); m == "1" || m == "0.5" {
		return m + " meal"
	} else {
		return m + " meals"
	}
}

// meals writes a number of meals as a cook would: halves when few, whole when
// many.
func meals(x float64) string {
	switch {
	case math.Abs(x) < 0.25:
		return "0"
	case math.Abs(x) < 3:
		return strconv.FormatFloat(math.Round(x*2)/2, 'f', -1, 64)
	}
	return strconv.FormatFloat(math.Round(x), 'f', 0, 64)
}

// mealsRange writes "about 7 meals (6 to 9)".
func mealsRange(low, likely, high float64) string {
	l, h := meals(low), meals(high)
	switch {
	case h == "0":
		return "no meal"
	case l == h:
		return "about " + mealsOf(likely)
	}
	return fmt.Sprintf("about %s (%s to %s)", mealsOf(likely), l, h)
}

// px writes a length of a picture with one decimal at most.
func px(x float64) string {
	return strconv.FormatFloat(math.Round(x*10)/10, 'f', -1, 64)
}

// at writes a place in the lines' picture, in whole px.
func at(x float64) string { return strconv.Itoa(int(math.Round(x))) }

// hours writes minutes as a person says them.
func hours(minutes int) string {
	h, m := minutes/60, minutes%60
	switch {
	case h == 0:
		return plural(minutes, "minute", "minutes")
	case m == 0:
		return plural(h, "hour", "hours")
	}
	return plural(h, "hour", "hours") + " " + plural(m, "minute", "minutes")
}

// clip shortens a name to n letters.
func clip(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return strings.TrimSpace(string(r[:n-1])) + "…"
}

// TwentyDots is a row of twenty dots, the first Full of them filled.
type TwentyDots struct {
	Full           int
	FullTo, OpenTo string // where the dotted strokes end
	OpenFrom       string
}

// twentyDots makes the row; nil when n is not a count out of twenty. Each row
// is drawn as a stroke dashed into dots, 10 px apart.
func twentyDots(n int) *TwentyDots {
	if n < 0 || n > 20 {
		return nil
	}
	return &TwentyDots{
		Full:     n,
		FullTo:   px(float64(10*n) - 4),
		OpenFrom: px(float64(10*n) + 5),
		OpenTo:   "196",
	}
}
