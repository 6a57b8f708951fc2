package water

import (
	"fmt"
	"strconv"
	"strings"
)

// Exact definitions: the inch is 25.4 mm, the US gallon 231 cubic inches, the
// acre 43,560 square feet.
const (
	InchM   = 0.0254
	FootM   = 12 * InchM
	GallonL = 231 * InchM * InchM * InchM * 1000
	FootM2  = FootM * FootM
	acreM2  = 43560 * FootM2
	inchMM  = InchM * 1000
)

// amountUnits are the units a depth, an area or a volume comes in, in mm, m2
// and L.
func amountUnit(word string) (size float64, kind string) {
	switch word {
	case "inch", "inches", "in":
		return inchMM, "depth"
	case "mm":
		return 1, "depth"
	case "cm":
		return 10, "depth"
	case "ft2":
		return FootM2, "area"
	case "m2":
		return 1, "area"
	case "acre", "acres":
		return acreM2, "area"
	case "L", "l":
		return 1, "volume"
	case "gal":
		return GallonL, "volume"
	case "ft3":
		return FootM * FootM * FootM * 1000, "volume"
	case "acre-inch":
		return acreM2 * inchMM, "volume"
	}
	return 0, ""
}

// Convert turns an amount of water such as "1 inch on 30 ft2", "2 gal/h" or
// "1 acre-inch" into another unit of volume, or of volume by the hour.
func Convert(amount, unit string) (float64, error) {
	litres, per, err := amountL(amount)
	if err != nil {
		return 0, err
	}
	base, slash, hourly := strings.Cut(strings.TrimSpace(unit), "/")
	size, kind := amountUnit(base)
	if kind != "volume" || hourly != (per == "h") || hourly && slash != "h" {
		return 0, fmt.Errorf("%q in %q: want L, gal, ft3 or acre-inch, by the hour if the amount is", amount, unit)
	}
	return litres / size, nil
}

// amountL reads an amount; per is "h" for a flow.
func amountL(text string) (litres float64, per string, err error) {
	depth, area, on := strings.Cut(text, " on ")
	size, kind, per, err := measure(depth)
	if err != nil {
		return 0, "", err
	}
	if !on {
		if kind != "volume" {
			return 0, "", fmt.Errorf("amount %q: say on which area, as in 1 inch on 30 ft2", text)
		}
		return size, per, nil
	}
	m2, areaKind, areaPer, err := measure(area)
	if err != nil {
		return 0, "", err
	}
	if kind != "depth" || areaKind != "area" || per != "" || areaPer != "" {
		return 0, "", fmt.Errorf("amount %q: want a depth on an area, as in 1 inch on 30 ft2", text)
	}
	return size * m2, "", nil
}

func measure(text string) (size float64, kind, per string, err error) {
	number, word, ok := strings.Cut(strings.TrimSpace(text), " ")
	n, bad := strconv.ParseFloat(number, 64)
	if !ok || bad != nil || !(n >= 0 && n <= 1e9) {
		return 0, "", "", fmt.Errorf("amount %q: want a number and a unit, as in 2 gal", text)
	}
	word, per, _ = strings.Cut(strings.TrimSpace(word), "/")
	if per != "" && per != "h" {
		return 0, "", "", fmt.Errorf("amount %q: only flows by the hour are known", text)
	}
	unit, kind := amountUnit(word)
	if kind == "" {
		return 0, "", "", fmt.Errorf("amount %q: the unit %q is not known", text, word)
	}
	return n * unit, kind, per, nil
}
