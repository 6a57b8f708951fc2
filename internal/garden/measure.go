package garden

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/token"

	"bedweek/internal/unit"
)

// bound is what a size may be, in the canonical unit. above excludes low
// itself: nothing may be 0 deep.
type bound struct {
	low, high float64
	above     bool
}

// length reads a length within bounds; the zero Length when missing or wrong.
func (f fields) length(name string, b bound) unit.Length {
	text, tk, ok := f.text(name)
	if !ok {
		return unit.Length{}
	}
	l, err := unit.ParseLength(text)
	if err != nil {
		f.r.typed(err, tk, name, text)
		return unit.Length{}
	}
	if !f.inside(tk, name, text, l.LowM, l.HighM, b, metres()) {
		return unit.Length{}
	}
	return l
}

// volume reads a volume within bounds in litres.
func (f fields) volume(name string, b bound) unit.Volume {
	text, tk, ok := f.text(name)
	if !ok {
		return unit.Volume{}
	}
	v, err := unit.ParseVolume(text)
	if err != nil {
		f.r.typed(err, tk, name, text)
		return unit.Volume{}
	}
	if !f.inside(tk, name, text, v.LowL, v.HighL, b, litres()) {
		return unit.Volume{}
	}
	return v
}

// mass reads a mass within bounds in kilograms.
func (f fields) mass(name string, b bound) unit.Mass {
	text, tk, ok := f.text(name)
	if !ok {
		return unit.Mass{}
	}
	m, err := unit.ParseMass(text)
	if err != nil {
		f.r.typed(err, tk, name, text)
		return unit.Mass{}
	}
	if !f.inside(tk, name, text, m.Kg, m.Kg, b, kilograms()) {
		return unit.Mass{}
	}
	return m
}

// number reads a plain number within bounds, 0 when missing or wrong. Words
// after the number that merely name what is counted are allowed.
func (f fields) number(name string, b bound, counted ...string) float64 {
	text, tk, ok := f.text(name)
	if !ok {
		return 0
	}
	return f.r.number(text, tk, name, b, counted...)
}

func (r *reader) number(text string, tk *token.Token, name string, b bound, counted ...string) float64 {
	digits := text
	for _, word := range counted {
		digits = strings.TrimSpace(strings.TrimSuffix(digits, word))
	}
	x, err := strconv.ParseFloat(digits, 64)
	switch {
	case err != nil || strings.ContainsAny(digits, "xXpPnN_"):
		r.at(tk, name+" "+clip(text), "Write a number, such as "+example(b)+".")
	case x < b.low || x > b.high || b.above && x <= b.low:
		r.at(tk, name+" "+clip(text), fmt.Sprintf("Write a number from %s to %s.", plainNumber(b.low), plainNumber(b.high)))
	default:
		return x
	}
	return 0
}

// whole reads a whole number within bounds, 0 when missing or wrong.
func (f fields) whole(name string, b bound) int {
	before := len(f.r.faults)
	x := f.number(name, b)
	if x != math.Trunc(x) {
		f.r.at(f.where(name), name+" "+plainNumber(x), "Write a whole number.")
	}
	if len(f.r.faults) > before {
		return 0
	}
	return int(x)
}

// share reads a part of one: "85 %" or "0.85"; ok is false when missing or
// wrong.
func (f fields) share(name string) (float64, bool) {
	text, tk, ok := f.text(name)
	if !ok {
		return 0, false
	}
	digits, percent := strings.CutSuffix(text, "%")
	x, err := strconv.ParseFloat(strings.TrimSpace(digits), 64)
	if percent {
		x /= 100
	}
	switch {
	case err != nil || math.IsNaN(x) || x < 0 || x > 1:
		f.r.at(tk, name+" "+clip(text), "Write the share of light that passes, from 0 % to 100 %.")
		return 0, false
	case !percent && x == 1:
		f.r.at(tk, name+" "+clip(text), "Write 1 % or 100 %.")
		return 0, false
	}
	return x, true
}

// typed reports a quantity that does not parse, at the place within it.
func (r *reader) typed(err error, tk *token.Token, name, text string) {
	var fault *unit.Fault
	if !errors.As(err, &fault) {
		r.at(tk, name+" "+clip(text), err.Error())
		return
	}
	skip := fault.At
	if strings.HasPrefix(strings.TrimSpace(tk.Origin), `"`) || strings.HasPrefix(strings.TrimSpace(tk.Origin), `'`) {
		skip++
	}
	r.within(tk, skip, fault.Len, name+" "+clip(text)+": "+fault.What, fault.Remedy)
}

// scale is how bounds of a quantity are said and slips of the unit tried.
type scale struct {
	say   func(x float64) string
	read  func(text string) (float64, bool)
	units []string // tried in turn for "did you mean"
}

func metres() scale {
	return scale{
		say: func(x float64) string {
			if x >= 1 {
				return plainNumber(x) + " m"
			}
			return unit.Metres(x).String()
		},
		read: func(t string) (float64, bool) {
			l, err := unit.ParseLength(t)
			return l.M, err == nil
		},
		units: []string{"cm", "m", "in", "mm", "ft"},
	}
}

func litres() scale {
	return scale{
		say: func(x float64) string { return unit.Volume{L: x, LowL: x, HighL: x}.String() },
		read: func(t string) (float64, bool) {
			v, err := unit.ParseVolume(t)
			return v.L, err == nil
		},
		units: []string{"L", "gal", "ml"},
	}
}

func kilograms() scale {
	return scale{
		say: func(x float64) string { return unit.Mass{Kg: x}.String() },
		read: func(t string) (float64, bool) {
			m, err := unit.ParseMass(t)
			return m.Kg, err == nil
		},
		units: []string{"kg", "lb", "g"},
	}
}

// inside reports a size out of bounds, with the same number in another unit
// where that would fit.
func (f fields) inside(tk *token.Token, name, text string, low, high float64, b bound, s scale) bool {
	var why string
	switch {
	case b.above && low <= b.low:
		why = fmt.Sprintf("The %s must be more than %s.", name, s.say(b.low))
		if low == 0 && b.low == 0 {
			f.r.at(tk, name+" "+clip(text), why+" Measure it, or leave the line out.")
			return false
		}
	case low < b.low:
		why = fmt.Sprintf("%s of %s is less than the %s we accept.", aSize(name), clip(text), s.say(b.low))
	case high > b.high:
		why = fmt.Sprintf("%s of %s is more than the %s we accept.", aSize(name), clip(text), s.say(b.high))
	default:
		return true
	}
	remedy := " Measure again."
	digits := strings.TrimSpace(text[:len(text)-len(strings.TrimLeft(text, "0123456789.,/ ½¼¾"))])
	for _, u := range s.units {
		if x, ok := s.read(digits + " " + u); ok && x > b.low && x <= b.high {
			remedy = " Did you mean " + digits + " " + u + "?"
			break
		}
	}
	f.r.at(tk, name+" "+clip(text), why+remedy)
	return false
}

// example is a number inside a bound, for remedies.
func example(b bound) string {
	for _, x := range []float64{2, 10, 100, 2000} {
		if x >= b.low && x <= b.high {
			return plainNumber(x)
		}
	}
	return plainNumber(b.high)
}

func plainNumber(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// aSize writes a key with its article at the start of a sentence.
func aSize(name string) string {
	switch {
	case name == "east" || name == "north":
		return "A way " + name
	case name == "across":
		return "A width across"
	case strings.ContainsRune("aeiou", rune(name[0])):
		return "An " + name
	}
	return "A " + name
}
