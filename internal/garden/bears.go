package garden

import (
	"fmt"
	"strings"

	"bedweek/internal/unit"
)

// Bears is what somebody who may say so gave as the limit of a balcony, a rail,
// a shelf or a roof: in all, or on each square metre. The zero value is "not
// said"; Typed alone is "not known".
type Bears struct {
	Kg, KgM2 float64
	Typed    string
}

// Known reports whether a limit was given.
func (b Bears) Known() bool { return b.Kg > 0 || b.KgM2 > 0 }

// notKnown is a lawful answer for what nobody has asked yet.
const notKnown = "not known"

// loadUnits are limits of a surface: kg/m2 in one of each. Gravity is the
// standard 9.80665 m/s2, the pound 0.45359237 kg, the foot 0.3048 m.
var loadUnits = []struct {
	ends []string
	mass string  // added to the amount before it is read as a mass
	kgM2 float64 // of one mass read
}{
	{[]string{"/m2", "/m²", "/ m2", " a m2", " per m2", " a square metre", " per square metre"}, "", 1},
	{[]string{"/ft2", "/ft²", "/sq ft", " per sq ft", " per square foot", " a square foot"}, "", 1 / (0.3048 * 0.3048)},
	{[]string{"psf"}, " lb", 1 / (0.3048 * 0.3048)},
	{[]string{"kN/m2", "kN/m²", "kN / m2", "kPa"}, " kg", 1000 / 9.80665}, // the engineer's; last, as its end is the first's too
}

// Most a garden's surface is believed to bear: beyond it we take it for a slip.
const (
	mostBearsKg   = 100000
	mostBearsKgM2 = 5000
)

// bears reads "150 kg", "250 kg/m2", "40 psf", "2.5 kN/m2" or "not known".
func (f fields) bears(name string) Bears {
	text, tk, ok := f.text(name)
	if !ok {
		return Bears{}
	}
	if text == notKnown {
		return Bears{Typed: text}
	}
	amount, each, area := text, 1.0, false
	for _, u := range loadUnits {
		for _, end := range u.ends {
			if cut, found := strings.CutSuffix(text, end); found {
				amount, each, area = strings.TrimSpace(cut)+u.mass, u.kgM2, true
			}
		}
	}
	m, err := unit.ParseMass(amount)
	most, per := float64(mostBearsKg), "kg"
	if area {
		most, per = mostBearsKgM2, "kg/m2"
	}
	switch kg := m.Kg * each; {
	case err != nil:
		f.r.at(tk, name+" "+clip(text), "Write a weight in all or on a square metre: 150 kg, 250 kg/m2, 50 psf, 2.5 kN/m2, or not known.")
	case kg <= 0 || kg > most:
		f.r.at(tk, name+" "+clip(text), fmt.Sprintf("Write more than 0 and at most %.0f %s. Ask whose surface it is, or write not known.", most, per))
	case area:
		return Bears{KgM2: kg, Typed: text}
	default:
		return Bears{Kg: kg, Typed: text}
	}
	return Bears{}
}

// oneLimit reports spaces on one surface with different limits.
func (r *reader) oneLimit(spaces []Space) {
	said := map[string]Space{}
	for _, s := range spaces {
		if s.StandsOn == "" || !s.Bears.Known() {
			continue
		}
		first, ok := said[s.StandsOn]
		if ok && first.Bears.Typed != s.Bears.Typed {
			r.at(r.points[s.ID], fmt.Sprintf("%s bears %s here and %s at %s", s.StandsOn, s.Bears.Typed, first.Bears.Typed, first.ID), "One surface has one limit. Keep the right line, once is enough.")
		}
		if !ok {
			said[s.StandsOn] = s
		}
	}
}
