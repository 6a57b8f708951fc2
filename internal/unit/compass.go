package unit

import (
	"math/big"
	"strings"
	"unicode"
)

// ParseLatitude reads degrees north (+) or south: "47.6 N", "47.6 S", "-47.6",
// "47° 36′ N". The error is a *Fault; values beyond the poles are faults.
func ParseLatitude(typed string) (deg float64, err error) {
	return compass{"latitude", 'n', 's', "90", "47.6 N"}.parse(typed)
}

// ParseLongitude reads degrees east (+) or west: "122.3 W", "-122.3",
// "122° 18′ W". The error is a *Fault; values beyond 180 are faults.
func ParseLongitude(typed string) (deg float64, err error) {
	return compass{"longitude", 'e', 'w', "180", "122.3 W"}.parse(typed)
}

// ParseTurn reads an angle on the plan: "30", "30 degrees", "30°", "-12.5".
// The error is a *Fault.
func ParseTurn(typed string) (deg float64, err error) {
	return compass{"turn", 0, 0, "360", "30 degrees"}.parse(typed)
}

// compass is one way of saying where: its letters, bound and an example.
type compass struct {
	name        string
	plus, minus rune
	most        string
	example     string
}

// parse reads degrees, perhaps minutes and seconds, and a letter.
func (c compass) parse(typed string) (float64, error) {
	sc := &scanner{text: []rune(typed)}
	bad := &Fault{0, max(1, len(sc.text)), c.name + " " + strings.TrimSpace(typed), "Write it as " + c.example + "."}
	if len(sc.text) > maxTyped {
		bad.What = "a " + c.name + " of " + itoa(len(sc.text)) + " letters"
		return 0, bad
	}
	sc.spaces()
	sign := sc.peek() == '-' || sc.peek() == '−'
	if sign {
		sc.at++
	}
	sum, ok := sc.sexagesimal()
	if !ok {
		return 0, bad
	}
	south, ok := c.side(sc)
	if !ok || south != 0 && sign {
		return 0, bad
	}
	if sum.Cmp(rat(c.most)) > 0 {
		bad.Remedy = "A " + c.name + " lies between -" + c.most + " and " + c.most + "."
		return 0, bad
	}
	if sign || south < 0 {
		sum.Neg(sum)
	}
	return float(sum), nil
}

// side reads the letter or word at the end: +1, -1, or 0 for none.
func (c compass) side(sc *scanner) (int, bool) {
	word := strings.ToLower(strings.TrimSpace(string(sc.text[sc.at:])))
	switch {
	case word == "" || word == "deg" || word == "degrees":
		return 0, true
	case c.plus == 0:
		return 0, false
	case word == string(c.plus):
		return 1, true
	case word == string(c.minus):
		return -1, true
	}
	return 0, false
}

// sexagesimal reads 47.6, 47° 36′ or 47° 36′ 20″ as exact degrees.
func (s *scanner) sexagesimal() (*big.Rat, bool) {
	sum, size := new(big.Rat), rat("1")
	for i, marks := range []string{"°", "'′’", `"″”`} {
		s.spaces()
		if i > 0 && !unicode.IsDigit(s.peek()) {
			break
		}
		n, fault := s.number()
		if fault != nil || n == nil || i > 0 && n.Cmp(rat("60")) >= 0 {
			return nil, false
		}
		sum.Add(sum, n.Mul(n, size))
		s.spaces()
		if !strings.ContainsRune(marks, s.peek()) || s.done() {
			if i > 0 {
				return nil, false // minutes want their mark
			}
			break
		}
		s.at++
		size.Quo(size, rat("60"))
	}
	s.spaces()
	return sum, true
}
