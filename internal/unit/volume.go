package unit

import (
	"math"
	"strconv"
	"strings"
)

// ParseVolume reads a volume or a range of volumes: "75 L", "12 gal",
// "10 imp gal", "2 cu ft". A bare "gal" is a US gallon. The error is a *Fault.
func ParseVolume(typed string) (Volume, error) {
	sp, err := volumes().parse(typed)
	if err != nil {
		return Volume{}, err
	}
	return Volume{L: sp.middle(), LowL: float(sp.low), HighL: float(sp.high), Typed: strings.TrimSpace(typed)}, nil
}

func volumes() quantity {
	return quantity{name: "volume", example: "75 L or 12 gal", ranges: true, unit: volumeUnit}
}

// volumeUnit gives the litres of a unit, all exact.
func volumeUnit(word string) (measured, bool) {
	switch word {
	case "ml", "millilitre", "millilitres", "milliliter", "milliliters":
		return measured{"1/1000", Metric}, true
	case "l", "litre", "litres", "liter", "liters":
		return measured{"1", Metric}, true
	case "m3", "cubic metre", "cubic metres", "cubic meter", "cubic meters":
		return measured{"1000", Metric}, true
	case "gal", "gals", "gallon", "gallons", "us gal", "us gals", "us gallon", "us gallons":
		return measured{"3785411784/1000000000", Imperial}, true
	case "imp gal", "imp gals", "imperial gallon", "imperial gallons", "uk gal", "uk gallon", "uk gallons":
		return measured{"454609/100000", Imperial}, true
	case "qt", "quart", "quarts", "us qt", "us quart", "us quarts":
		return measured{"946352946/1000000000", Imperial}, true
	case "cu ft", "ft3", "cubic foot", "cubic feet":
		return measured{"28316846592/1000000000", Imperial}, true
	}
	return measured{}, false
}

// System reports the units v was typed in; Metric when nobody typed it.
func (v Volume) System() System {
	if sp, err := volumes().parse(v.Typed); err == nil {
		return sp.system
	}
	return Metric
}

// String returns v as typed, or in litres when nobody typed it.
func (v Volume) String() string {
	if v.Typed != "" {
		return v.Typed
	}
	return v.In(Metric)
}

// In returns v in a system: as typed when it was typed in that system, else
// converted to litres or US gallons.
func (v Volume) In(s System) string {
	if v.Typed != "" && v.System() == s {
		return v.Typed
	}
	size, name := 1.0, " L"
	if s == Imperial {
		size, name = 3.785411784, " US gal"
	}
	a, b := readable(v.LowL/size), readable(v.HighL/size)
	if v.LowL >= v.HighL || a == b {
		return readable(v.L/size) + name
	}
	return a + "-" + b + name
}

// readable rounds to one decimal below ten and to whole numbers above.
func readable(x float64) string {
	if math.Abs(x) < 9.95 {
		return decimals(x, 1)
	}
	return decimals(x, 0)
}

// decimals writes x with at most n decimals and no idle zeros.
func decimals(x float64, n int) string {
	text := strconv.FormatFloat(x, 'f', n, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}
