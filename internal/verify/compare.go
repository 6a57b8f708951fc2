package verify

import (
	"encoding/json"
	"fmt"
	"math"
	"sort"
	"strconv"
	"strings"
	"time"
)

// exact is what binary rounding may add to a difference, no more.
const exact = 1e-9

// isWarning reports whether an expected key is a remark and not a result.
func isWarning(key string) bool {
	for _, p := range []string{"wrong_if", "must_not_be", "note"} {
		if strings.HasPrefix(key, p) {
			return true
		}
	}
	return key == "or" // names a second way to be right
}

// compare returns a miss for every place where got and want part. path holds
// the key and, for nested values, the keys above it, outermost first.
func compare(path []string, got, want any, tol map[string]float64) []Miss {
	got = plain(got)
	switch w := want.(type) {
	case nil:
		if got == nil {
			return nil
		}
		return []Miss{miss(path, got, want, "no such value")}
	case map[string]any:
		g, ok := got.(map[string]any)
		if !ok {
			return []Miss{miss(path, got, want, "a table")}
		}
		return compareTables(path, g, w, tol)
	case []any:
		g, ok := got.([]any)
		if !ok || len(g) != len(w) {
			return []Miss{miss(path, got, want, fmt.Sprintf("a list of %d", len(w)))}
		}
		var out []Miss
		for i := range w {
			out = append(out, compare(append(path[:len(path):len(path)], strconv.Itoa(i)), g[i], w[i], tol)...)
		}
		return out
	case float64:
		g, ok := got.(float64)
		if !ok {
			return []Miss{miss(path, got, want, "a number")}
		}
		allowed := allowance(path, math.Abs(w), tol)
		if d := difference(path, g, w); d <= allowed+exact {
			return nil
		}
		return []Miss{miss(path, g, w, allowed)}
	case string:
		return compareText(path, got, w, tol)
	default: // true, false
		if got == want {
			return nil
		}
		return []Miss{miss(path, got, want, "exact")}
	}
}

func compareTables(path []string, g, w map[string]any, tol map[string]float64) []Miss {
	keys := make([]string, 0, len(w))
	for k := range w {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	var out []Miss
	for _, k := range keys {
		if isWarning(k) {
			continue
		}
		v, ok := g[k]
		if !ok {
			out = append(out, miss(append(path[:len(path):len(path)], k), nil, w[k], "missing"))
			continue
		}
		out = append(out, compare(append(path[:len(path):len(path)], k), v, w[k], tol)...)
	}
	for k := range g {
		if _, ok := w[k]; !ok {
			out = append(out, miss(append(path[:len(path):len(path)], k), g[k], nil, "not expected"))
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Key < out[j].Key })
	return out
}

// compareText compares instants, clock times and dates by their tolerance and
// any other text exactly.
func compareText(path []string, got any, w string, tol map[string]float64) []Miss {
	g, ok := got.(string)
	if !ok {
		return []Miss{miss(path, got, w, "text")}
	}
	if g == w {
		return nil
	}
	for _, f := range []struct {
		layout  string
		perUnit time.Duration
		names   []string
	}{
		{time.RFC3339, time.Second, []string{"seconds"}},
		{"15:04:05", time.Second, []string{"seconds"}},
		{"15:04", time.Minute, []string{"minutes"}},
		{"2006-01-02", 24 * time.Hour, []string{"date_days", "dates"}},
		{"01-02", 24 * time.Hour, []string{"date_days", "dates"}},
	} {
		tw, err := time.Parse(f.layout, w)
		if err != nil {
			continue
		}
		tg, err := time.Parse(f.layout, g)
		if err != nil {
			break
		}
		allowed := 0.0
		for _, n := range f.names {
			if v, ok := tol[n]; ok {
				allowed = v
				break
			}
		}
		d := math.Abs(tg.Sub(tw).Seconds()) / f.perUnit.Seconds()
		if d <= allowed+exact {
			return nil
		}
		return []Miss{miss(path, g, w, allowed)}
	}
	return []Miss{miss(path, g, w, "exact")}
}

// difference is |got-want|, the short way round for bearings.
func difference(path []string, got, want float64) float64 {
	d := math.Abs(got - want)
	if math.IsNaN(d) {
		return math.Inf(1)
	}
	for _, s := range path {
		if strings.Contains(s, "azimuth") || strings.Contains(s, "bearing") {
			return math.Min(d, math.Abs(360-d))
		}
	}
	return d
}

// allowance finds the tolerance for a value: its own name first, then the
// longest tolerance name whose words stand in the key in order (a unit or a
// quantity), innermost key first; then a share of the value; then "-" and
// "count".
func allowance(path []string, size float64, tol map[string]float64) float64 {
	for i := len(path) - 1; i >= 0; i-- {
		if v, ok := tol[path[i]]; ok {
			return v
		}
	}
	names := make([]string, 0, len(tol))
	for n := range tol {
		names = append(names, n)
	}
	sort.Slice(names, func(i, j int) bool {
		if len(names[i]) != len(names[j]) {
			return len(names[i]) > len(names[j])
		}
		return names[i] < names[j]
	})
	for i := len(path) - 1; i >= 0; i-- {
		for _, n := range names {
			if n != "-" && n != "count" && n != "relative" && n != "count_days" && wordsIn(n, path[i]) {
				return tol[n]
			}
		}
	}
	if v, ok := tol["relative"]; ok {
		return v * size
	}
	for _, n := range []string{"count_days", "count", "-"} {
		if v, ok := tol[n]; ok {
			return v
		}
	}
	return printed(size)
}

// printed is the rounding of a figure for which a case names no tolerance:
// half a unit in its last printed place, three places at the least since
// trailing zeros are not kept; a whole number is exact.
func printed(size float64) float64 {
	if size == math.Trunc(size) {
		return 0
	}
	places := 0
	if _, after, ok := strings.Cut(strconv.FormatFloat(size, 'f', -1, 64), "."); ok {
		places = len(after)
	}
	return 0.5 * math.Pow(10, -float64(max(places, 3)))
}

// wordsIn reports whether the words of name stand in key in the same order;
// a plural "s" does not matter.
func wordsIn(name, key string) bool {
	words := strings.Split(key, "_")
	at := 0
	for _, n := range strings.Split(name, "_") {
		for at < len(words) && words[at] != n && words[at] != n+"s" {
			at++
		}
		if at == len(words) {
			return false
		}
		at++
	}
	return true
}

// plain turns any value into what JSON would hold, so that adaptors may answer
// with ints, typed slices and maps.
func plain(v any) any {
	switch v.(type) {
	case nil, float64, string, bool:
		return v
	}
	b, err := json.Marshal(v)
	if err != nil {
		return fmt.Sprint(v)
	}
	var out any
	if json.Unmarshal(b, &out) != nil {
		return fmt.Sprint(v)
	}
	return out
}

func miss(path []string, got, want, tol any) Miss {
	return Miss{Key: strings.Join(path, "."), Got: got, Want: want, Tolerance: tol}
}
