package unit

import (
	"math/big"
	"strings"
)

// ParseTemperature reads a temperature: "18 C", "18 °C", "65 F". The error is
// a *Fault.
func ParseTemperature(typed string) (Temperature, error) {
	sp, err := temperatures().parse(typed)
	if err != nil {
		return Temperature{}, err
	}
	c := sp.low
	if sp.system == Imperial { // °C = (°F - 32) x 5/9
		c = new(big.Rat).Sub(c, rat("32"))
		c.Mul(c, rat("5/9"))
	}
	return Temperature{C: Celsius(float(c)), Typed: strings.TrimSpace(typed)}, nil
}

func temperatures() quantity {
	return quantity{name: "temperature", example: "18 C or 65 F", unit: temperatureUnit}
}

// temperatureUnit names the scale; sizes are those of the scale's own degree.
func temperatureUnit(word string) (measured, bool) {
	switch word {
	case "c", "°c", "celsius", "deg c", "degrees c", "degrees celsius":
		return measured{"1", Metric}, true
	case "f", "°f", "fahrenheit", "deg f", "degrees f", "degrees fahrenheit":
		return measured{"1", Imperial}, true
	}
	return measured{}, false
}

// System reports the scale t was typed in; Metric when nobody typed it.
func (t Temperature) System() System {
	if sp, err := temperatures().parse(t.Typed); err == nil {
		return sp.system
	}
	return Metric
}

// String returns t as typed, or in degrees Celsius when nobody typed it.
func (t Temperature) String() string {
	if t.Typed != "" {
		return t.Typed
	}
	return t.In(Metric)
}

// In returns t in a scale: as typed when it was typed in it, else converted to
// whole degrees.
func (t Temperature) In(s System) string {
	switch {
	case t.Typed != "" && t.System() == s:
		return t.Typed
	case s == Imperial:
		return decimals(float64(t.C)*1.8+32, 0) + " °F"
	}
	return decimals(float64(t.C), 0) + " °C"
}
