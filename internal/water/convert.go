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

// amountUnit returns a unit's size in mm, m2, L or hours, and which of them.
func amountUnit(word string) (size float64, kind string) {
	switch word {
	case "inch", "inches", "in":
		return inchMM, "depth"
	case "mm":
		return 1, "depth"
	case "cm":
		return 10, "depth"
	case "ft2", "sqft":
		return FootM2, "area"
	case "m2":
		return 1, "area"
	case "acre", "acres":
		return acreM2, "area"
	case "ha":
		return 10000, "area"
	case "L", "l", "litre", "litres":
		return 1, "volume"
	case "m3":
		return 1000, "volume"
	case "mL", "ml":
		return 0.001, "volume"
	case "gal":
		return GallonL, "volume"
	case "qt":
		return GallonL / 4, "volume"
	case "ft3":
		return FootM * FootM * FootM * 1000, "volume"
	case "acre-inch":
		return acreM2 * inchMM, "volume"
	}
	return 0, ""
}

// timeUnit returns hours.
func timeUnit(word string) (hours float64, ok bool) {
	switch word {
	case "h", "hour":
		return 1, true
	case "min":
		return 1.0 / 60, true
	case "s":
		return 1.0 / 3600, true
	case "day", "d":
		return 24, true
	case "week":
		return 168, true
	}
	return 0, false
}

// amount is a size with what it measures.
type amount struct {
	size float64
	kind string
	flow bool // by the hour
}

// Convert turns an amount of water such as "1 inch on 30 ft2", "2 gal/h" or
// "1 acre-inch" into another unit of the same kind. The gallon is the US one.
func Convert(text, unit string) (float64, error) {
	have, err := readAmount(text)
	if err != nil {
		return 0, err
	}
	want, err := readUnit(strings.TrimSpace(unit))
	if err != nil {
		return 0, err
	}
	if want.kind != have.kind || want.flow != have.flow {
		return 0, fmt.Errorf("%q in %q: these measure different things", text, unit)
	}
	return have.size / want.size, nil
}

// readAmount reads a number with a unit, or a depth on an area.
func readAmount(text string) (amount, error) {
	first, second, on := strings.Cut(text, " on ")
	a, err := measure(first)
	if err != nil || !on {
		return a, err
	}
	b, err := measure(second)
	if err != nil {
		return b, err
	}
	if a.kind != "depth" || b.kind != "area" || b.flow {
		return a, fmt.Errorf("amount %q: want a depth on an area, as in 1 inch on 30 ft2", text)
	}
	return amount{a.size * b.size, "volume", a.flow}, nil
}

func measure(text string) (amount, error) {
	number, word, ok := strings.Cut(strings.TrimSpace(text), " ")
	n, err := strconv.ParseFloat(number, 64)
	if !ok || err != nil || !(n >= 0 && n <= 1e9) {
		return amount{}, fmt.Errorf("amount %q: want a number and a unit, as in 2 gal", text)
	}
	u, err := readUnit(strings.TrimSpace(word))
	u.size *= n
	return u, err
}

func readUnit(word string) (amount, error) {
	base, per, flow := strings.Cut(word, "/")
	size, kind := amountUnit(base)
	if kind == "" {
		return amount{}, fmt.Errorf("the unit %q is not known", word)
	}
	if flow {
		hours, ok := timeUnit(per)
		if !ok {
			return amount{}, fmt.Errorf("the unit %q is not known: want it by the min, h, day or week", word)
		}
		size /= hours
	}
	return amount{size, kind, flow}, nil
}
