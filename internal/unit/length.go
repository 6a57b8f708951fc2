package unit

import (
	"math"
	"strings"
)

// ParseLength reads a length or a range of lengths: "60 cm", `2'6"`,
// "2 1/2 ft", ".75m", "0,75 m", "18-24 in". The error is a *Fault.
func ParseLength(typed string) (Length, error) {
	sp, err := lengths().parse(typed)
	if err != nil {
		return Length{}, err
	}
	return Length{M: sp.middle(), LowM: float(sp.low), HighM: float(sp.high), Typed: strings.TrimSpace(typed)}, nil
}

func lengths() quantity {
	return quantity{name: "length", example: `60 cm or 2'6"`, ranges: true, unit: lengthUnit}
}

// lengthUnit gives the metres of a unit. The inch is 25.4 mm exactly.
func lengthUnit(word string) (measured, bool) {
	switch word {
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return measured{"1/1000", Metric}, true
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return measured{"1/100", Metric}, true
	case "m", "metre", "metres", "meter", "meters":
		return measured{"1", Metric}, true
	case "in", "inch", "inches", `"`, "″", "”", "''", "′′", "’’":
		return measured{"254/10000", Imperial}, true
	case "ft", "foot", "feet", "'", "′", "’":
		return measured{"3048/10000", Imperial}, true
	case "yd", "yard", "yards":
		return measured{"9144/10000", Imperial}, true
	}
	return measured{}, false
}

// Metres returns a length that nobody typed, such as one computed.
func Metres(m float64) Length { return Length{M: m, LowM: m, HighM: m} }

// System reports the units l was typed in; Metric when nobody typed it.
func (l Length) System() System {
	if sp, err := lengths().parse(l.Typed); err == nil {
		return sp.system
	}
	return Metric
}

// String returns l as typed, or in whole centimetres when nobody typed it.
func (l Length) String() string {
	if l.Typed != "" {
		return l.Typed
	}
	return l.In(Metric)
}

// In returns l in a system: as typed when it was typed in that system, else
// converted. A range keeps both ends, each rounded to what a range can mean:
// "18-24 in" is "45-60 cm".
func (l Length) In(s System) string {
	if l.Typed != "" && l.System() == s {
		return l.Typed
	}
	if l.LowM < l.HighM {
		return lengthRange(l.LowM, l.HighM, s)
	}
	return FormatLength(l.M, s)
}

// FormatLength writes a length for a tape: whole centimetres below 10 m and
// metres to the centimetre above; or feet and inches to the nearest half inch,
// a quarter below six inches.
func FormatLength(m float64, s System) string {
	if s == Imperial {
		return feetInches(m)
	}
	cm := math.Round(m * 100)
	if math.Abs(cm) < 1000 {
		return decimals(cm, 0) + " cm"
	}
	return decimals(cm/100, 2) + " m"
}

// feetInches writes metres as 2'6½".
func feetInches(m float64) string {
	sign := ""
	if m < 0 {
		sign, m = "-", -m
	}
	quarters := math.Round(m/0.0254*2) * 2 // half inches, counted in quarters
	if m < 6*0.0254 {
		quarters = math.Round(m / 0.0254 * 4)
	}
	feet := math.Floor(quarters / 48)
	quarters -= 48 * feet
	inches := math.Floor(quarters / 4)
	part := [4]string{"", "¼", "½", "¾"}[int(quarters)%4]
	if inches > 0 || part == "" {
		part = decimals(inches, 0) + part
	}
	switch {
	case feet == 0 && quarters == 0:
		return `0"`
	case feet == 0:
		return sign + part + `"`
	case quarters == 0:
		return sign + decimals(feet, 0) + `'`
	}
	return sign + decimals(feet, 0) + `'` + part + `"`
}

// lengthRange writes a converted range. Ends go to 5 cm when the range is at
// least that wide, else to 1 cm; in inches, to 1 in or half an inch.
func lengthRange(low, high float64, s System) string {
	size, step, name := 0.01, 5.0, " cm"
	fine := 1.0
	if s == Imperial {
		size, step, fine, name = 0.0254, 1, 0.5, " in"
	}
	if high-low < step*size*0.99 {
		step = fine
	}
	a := decimals(math.Round(low/size/step)*step, 1)
	b := decimals(math.Round(high/size/step)*step, 1)
	if a == b {
		return a + name
	}
	return a + "-" + b + name
}
