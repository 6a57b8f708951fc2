package unit

import (
	"math/big"
	"strings"
	"unicode"
)

// maxDigits bounds the digits of one number: more than any tape can show, and
// few enough that exact fractions stay small.
const maxDigits = 20

// scanner walks a typed quantity rune by rune.
type scanner struct {
	text []rune
	at   int
}

func (s *scanner) peek() rune {
	if s.at < len(s.text) {
		return s.text[s.at]
	}
	return 0
}

func (s *scanner) done() bool { return s.at >= len(s.text) }

func (s *scanner) spaces() {
	for !s.done() && unicode.IsSpace(s.peek()) {
		s.at++
	}
}

func (s *scanner) digits() string {
	from := s.at
	for s.peek() >= '0' && s.peek() <= '9' {
		s.at++
	}
	return string(s.text[from:s.at])
}

// plain drops leading zeros, which big.Rat would take for an octal mark.
func plain(digits string) string {
	if short := strings.TrimLeft(digits, "0"); short != "" {
		return short
	}
	return "0"
}

// glyph reads one of the ready-made fractions.
func glyph(r rune) (string, bool) {
	switch r {
	case '¼':
		return "1/4", true
	case '½':
		return "1/2", true
	case '¾':
		return "3/4", true
	case '⅓':
		return "1/3", true
	case '⅔':
		return "2/3", true
	case '⅛':
		return "1/8", true
	case '⅜':
		return "3/8", true
	case '⅝':
		return "5/8", true
	case '⅞':
		return "7/8", true
	}
	return "", false
}

// number reads "12", "0.75", ".75", "0,75", "2 1/2", "1/2" or "2½" exactly.
// It returns nil and no fault where no number stands.
func (s *scanner) number() (*big.Rat, *Fault) {
	from := s.at
	whole := s.digits()
	if whole != "" && s.peek() == '/' {
		return s.fraction(from, whole)
	}
	if c := s.peek(); (c == '.' || c == ',') && s.at+1 < len(s.text) && unicode.IsDigit(s.text[s.at+1]) {
		return s.decimal(from, whole, c)
	}
	if whole == "" {
		if g, ok := glyph(s.peek()); ok {
			s.at++
			return rat(g), nil
		}
		return nil, nil
	}
	if len(whole) > maxDigits {
		return nil, s.fault(from, "a number of "+itoa(len(whole))+" digits", "Write at most 20 digits.")
	}
	n := rat(plain(whole))
	return s.mixed(n)
}

// mixed adds a fraction that follows a whole number: "2 1/2", "2½", "2 ½".
func (s *scanner) mixed(n *big.Rat) (*big.Rat, *Fault) {
	back := s.at
	s.spaces()
	if g, ok := glyph(s.peek()); ok {
		s.at++
		return n.Add(n, rat(g)), nil
	}
	from := s.at
	if top := s.digits(); top != "" && s.peek() == '/' && from > back {
		f, fault := s.fraction(from, top)
		if fault != nil {
			return nil, fault
		}
		if f.Cmp(rat("1")) >= 0 {
			return nil, s.fault(from, "a fraction of one or more after a whole number", "Write it as 2 1/2 or 2.5.")
		}
		return n.Add(n, f), nil
	}
	s.at = back
	return n, nil
}

// fraction reads the rest of top/bottom.
func (s *scanner) fraction(from int, top string) (*big.Rat, *Fault) {
	s.at++ // the stroke
	bottom := s.digits()
	switch {
	case bottom == "":
		return nil, s.fault(from, "a fraction without its lower number", "Write it as 1/2.")
	case len(top) > maxDigits || len(bottom) > maxDigits:
		return nil, s.fault(from, "a fraction with too many digits", "Write at most 20 digits.")
	case strings.Trim(bottom, "0") == "":
		return nil, s.fault(from, "a fraction over zero", "Write it as 1/2.")
	}
	return rat(plain(top) + "/" + plain(bottom)), nil
}

// decimal reads the rest of a decimal number; mark is its point or comma.
func (s *scanner) decimal(from int, whole string, mark rune) (*big.Rat, *Fault) {
	s.at++ // the mark
	part := s.digits()
	again := (s.peek() == '.' || s.peek() == ',') && s.at+1 < len(s.text) && unicode.IsDigit(s.text[s.at+1])
	switch {
	case again:
		for s.peek() == '.' || s.peek() == ',' || unicode.IsDigit(s.peek()) {
			s.at++
		}
		return nil, s.fault(from, "a number with two points or commas", "Write it without thousands marks.")
	case mark == ',' && len(part) == 3 && strings.Trim(whole, "0") != "":
		typed := whole + "," + part
		return nil, s.fault(from, typed+" can be read two ways", "Write "+whole+part+" or "+whole+"."+part+".")
	case len(whole)+len(part) > maxDigits:
		return nil, s.fault(from, "a number of "+itoa(len(whole)+len(part))+" digits", "Write at most 20 digits.")
	}
	return rat(plain(whole) + "." + part), nil
}

// fault places a fault on the text read since from.
func (s *scanner) fault(from int, what, remedy string) *Fault {
	return &Fault{At: from, Len: max(1, s.at-from), What: what, Remedy: remedy}
}

// rat makes an exact fraction from text known to hold one.
func rat(text string) *big.Rat {
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		panic("unit: not a fraction")
	}
	return r
}

// float rounds r once.
func float(r *big.Rat) float64 {
	f, _ := r.Float64()
	return f
}

func itoa(n int) string { return big.NewInt(int64(n)).String() }
