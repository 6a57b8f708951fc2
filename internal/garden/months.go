package garden

import (
	"fmt"
	"math"
	"strings"
	"time"

	"bedweek/internal/unit"
)

// Normals are the monthly means of a place, written in the garden file: mean
// daily maximum and minimum in °C, and rain of the month in mm. What was typed
// is kept, so that 48 F comes back as 48 F.
type Normals struct {
	From         string // where they come from, in the gardener's words
	Typed        [12]string
	TmaxC, TminC [12]float64
	RainMM       [12]float64
}

// say writes the twelve months as typed.
func (n *Normals) say() string { return strings.Join(n.Typed[:], "; ") + "; " + n.From }

// monthParts is what a month's line holds: maximum, minimum, rain.
const monthParts = 3

// ParseMonth reads one month, such as "9 C, 3 C, 140 mm" or "48 F, 37 F,
// 5.5 in". The second result says in words what is wrong, "" = nothing.
func ParseMonth(typed string) (maxC, minC, rainMM float64, wrong string) {
	parts := strings.Split(typed, ",")
	if len(parts) != monthParts {
		return 0, 0, 0, "Write maximum, minimum and rain, as 9 C, 3 C, 140 mm."
	}
	hot, err := unit.ParseTemperature(parts[0])
	if err != nil {
		return 0, 0, 0, "The maximum: " + err.Error()
	}
	cold, err := unit.ParseTemperature(parts[1])
	if err != nil {
		return 0, 0, 0, "The minimum: " + err.Error()
	}
	rain, err := unit.ParseLength(parts[2])
	if err != nil {
		return 0, 0, 0, "The rain: " + err.Error()
	}
	maxC, minC, rainMM = float64(hot.C), float64(cold.C), math.Round(rain.M*1e6)/1e3
	switch {
	case maxC < minC:
		return 0, 0, 0, "The maximum is below the minimum. Write the maximum first."
	case maxC > 55 || minC < -70:
		return 0, 0, 0, "No month on earth is like that. Look at the unit, C or F."
	case rainMM < 0 || rainMM > 3000:
		return 0, 0, 0, "More than 3 m of rain in a month, or less than none. Look at the unit."
	}
	return maxC, minC, rainMM, ""
}

// months reads the twelve months of the place; nil when missing or wrong.
func (f fields) months(name string) *Normals {
	p, ok := f.pairs[name]
	if !ok || null(p.value) {
		return nil
	}
	m, ok := f.r.fields(p.value, monthsShape(), p.at)
	if !ok {
		return nil
	}
	n := &Normals{From: f.name("months from")}
	before := len(f.r.faults)
	for i := range 12 {
		month := strings.ToLower(time.Month(i + 1).String())
		text, tk, ok := m.text(month)
		if !ok {
			continue
		}
		var wrong string
		n.Typed[i] = text
		if n.TmaxC[i], n.TminC[i], n.RainMM[i], wrong = ParseMonth(text); wrong != "" {
			f.r.at(tk, fmt.Sprintf("%s %s", month, clip(text)), wrong)
		}
	}
	if len(f.r.faults) > before {
		return nil
	}
	return n
}

// words reads a list of words, each of which must be one of a list.
func (r *reader) words(f fields, name string, of []string) []string {
	var out []string
	p, ok := f.pairs[name]
	if !ok || null(p.value) {
		return nil
	}
	for _, n := range r.items(p.value) {
		text, tk, ok := r.single(n, p.at, name)
		if !ok {
			continue
		}
		if !has(of, text) {
			r.at(tk, name+" "+clip(text), "Write keys that stand beside it, such as depth.")
			continue
		}
		out = append(out, text)
	}
	return out
}
