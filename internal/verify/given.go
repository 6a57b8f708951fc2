package verify

import (
	"time"

	"bedweek/internal/cal"
)

// given unpacks a case's inputs and remembers whether one was wanted and not
// there, or of the wrong kind: such a case is not covered.
type given struct {
	in   map[string]any
	lack bool
}

func unpack(c Case) *given { return &given{in: c.Inputs} }

func (g *given) has(key string) bool { _, ok := g.in[key]; return ok }

func take[T any](g *given, in map[string]any, key string) T {
	v, ok := in[key].(T)
	if !ok {
		g.lack = true
	}
	return v
}

func (g *given) num(key string) float64 { return take[float64](g, g.in, key) }
func (g *given) text(key string) string { return take[string](g, g.in, key) }

// numOr returns a number that may be left out.
func (g *given) numOr(key string, otherwise float64) float64 {
	if !g.has(key) {
		return otherwise
	}
	return g.num(key)
}

// nums returns a list of numbers.
func (g *given) nums(key string) []float64 { return g.numsIn(g.in, key) }

func (g *given) numsIn(in map[string]any, key string) []float64 {
	var out []float64
	for _, v := range take[[]any](g, in, key) {
		f, ok := v.(float64)
		if !ok {
			g.lack = true
		}
		out = append(out, f)
	}
	return out
}

// day returns a date written year-month-day.
func (g *given) day(key string) cal.Day { return g.asDay(g.text(key)) }

func (g *given) asDay(s string) cal.Day {
	d, err := cal.Parse(s)
	if err != nil {
		g.lack = true
	}
	return d
}

// instant returns time_utc or time_local.
func (g *given) instant() time.Time {
	key := "time_utc"
	if g.has("time_local") {
		key = "time_local"
	}
	t, err := time.Parse(time.RFC3339, g.text(key))
	if err != nil {
		g.lack = true
	}
	return t
}

// instantText writes an instant as the cases do; the zero time is "no such
// value".
func instantText(t time.Time, layout string) any {
	if t.IsZero() {
		return nil
	}
	return t.Format(layout)
}
