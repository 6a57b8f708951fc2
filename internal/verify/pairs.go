package verify

import (
	"time"

	"bedweek/internal/cal"
)

// pairs returns a list of pairs of numbers.
func (g *given) pairs(key string) [][2]float64 {
	var out [][2]float64
	for _, v := range take[[]any](g, g.in, key) {
		p, ok := v.([]any)
		if !ok || len(p) != 2 {
			g.lack = true
			continue
		}
		a, okA := p[0].(float64)
		b, okB := p[1].(float64)
		if !okA || !okB {
			g.lack = true
		}
		out = append(out, [2]float64{a, b})
	}
	return out
}

// table returns one thing by name out of a list of tables.
func (g *given) table(v any) map[string]any {
	m, ok := v.(map[string]any)
	if !ok {
		g.lack = true
	}
	return m
}

// daysIn is the number of days of a month, 1 to 12.
func daysIn(year, month int) int {
	return int(cal.Of(year, time.Month(month)+1, 1) - cal.Of(year, time.Month(month), 1))
}
