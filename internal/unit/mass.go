package unit

import "strings"

// ParseMass reads a mass: "8 kg", "15 lb", "2 lb 4 oz". The error is a *Fault.
func ParseMass(typed string) (Mass, error) {
	sp, err := masses().parse(typed)
	if err != nil {
		return Mass{}, err
	}
	return Mass{Kg: float(sp.low), Typed: strings.TrimSpace(typed)}, nil
}

func masses() quantity {
	return quantity{name: "mass", example: "8 kg or 15 lb", unit: massUnit}
}

// massUnit gives the kilograms of a unit. The pound is 0.45359237 kg exactly.
func massUnit(word string) (measured, bool) {
	switch word {
	case "g", "gram", "grams", "gramme", "grammes":
		return measured{"1/1000", Metric}, true
	case "kg", "kilo", "kilos", "kilogram", "kilograms":
		return measured{"1", Metric}, true
	case "oz", "ounce", "ounces":
		return measured{"45359237/1600000000", Imperial}, true
	case "lb", "lbs", "pound", "pounds":
		return measured{"45359237/100000000", Imperial}, true
	}
	return measured{}, false
}

// System reports the units m was typed in; Metric when nobody typed it.
func (m Mass) System() System {
	if sp, err := masses().parse(m.Typed); err == nil {
		return sp.system
	}
	return Metric
}

// String returns m as typed, or in kilograms when nobody typed it.
func (m Mass) String() string {
	if m.Typed != "" {
		return m.Typed
	}
	return m.In(Metric)
}

// In returns m in a system: as typed when it was typed in that system, else
// converted to kilograms or pounds.
func (m Mass) In(s System) string {
	switch {
	case m.Typed != "" && m.System() == s:
		return m.Typed
	case s == Imperial:
		return readable(m.Kg/0.45359237) + " lb"
	}
	return readable(m.Kg) + " kg"
}
