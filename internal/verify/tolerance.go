package verify

import (
	"math"
	"strconv"
	"strings"
)

// tolerances returns a case's tolerances for one expected key, with two forms
// spelled out that name no unit of their own: X_daytime and X_night over the
// hours of a day, and X_relative for a quantity named in full or by initials.
func tolerances(c Case, key string) map[string]float64 {
	out := map[string]float64{}
	for k, v := range c.Tolerance {
		out[k] = v
	}
	for name, v := range c.Tolerance {
		if stem, ok := strings.CutSuffix(name, "_relative"); ok && (wordsIn(stem, key) || strings.HasPrefix(initials(key), stem)) {
			if want, number := c.Expect[key].(float64); number {
				out[key] = v * math.Abs(want)
			}
		}
		if unit, ok := strings.CutSuffix(name, "_daytime"); ok && wordsIn(unit+"_by_hour", key) {
			byHour(c, v, c.Tolerance[unit+"_night"], out)
		}
	}
	return out
}

// byHour names a tolerance for each place of a list of hours: day runs from the
// case's own sunrise to its sunset. Without those it names none.
func byHour(c Case, day, night float64, out map[string]float64) {
	rise, okRise := c.Expect["sunrise_h"].(float64)
	set, okSet := c.Expect["sunset_h"].(float64)
	if !okRise || !okSet {
		return
	}
	for h := range 24 {
		v := night
		if float64(h) >= rise && float64(h) <= set {
			v = day
		}
		out[strconv.Itoa(h)] = v
	}
}

// initials are the first letters of a key's words.
func initials(key string) string {
	s := ""
	for _, w := range strings.Split(key, "_") {
		if w != "" {
			s += w[:1]
		}
	}
	return s
}
