package unit

import (
	"math/big"
	"strings"
	"unicode"
)

// maxTyped bounds a typed quantity, in runes.
const maxTyped = 60

// measured is one unit of a quantity: its exact size and family.
type measured struct {
	size   string // exact, in the canonical unit
	system System
}

// quantity says how one kind of quantity is written.
type quantity struct {
	name    string // "length"
	example string // for remedies
	ranges  bool   // "18-24 in" may be written
	unit    func(word string) (measured, bool)
}

// span is a quantity read: exact ends and the family of its first unit.
type span struct {
	low, high *big.Rat
	system    System
}

// middle returns the value halfway, rounded once.
func (s span) middle() float64 {
	sum := new(big.Rat).Add(s.low, s.high)
	return float(sum.Quo(sum, rat("2")))
}

// parse reads one quantity or a range of it.
func (q quantity) parse(typed string) (span, error) {
	sc := &scanner{text: []rune(typed)}
	if len(sc.text) > maxTyped {
		return span{}, &Fault{0, len(sc.text), "a " + q.name + " of " + itoa(len(sc.text)) + " letters", "Write it as " + q.example + "."}
	}
	sc.spaces()
	if sc.done() {
		return span{}, &Fault{0, 1, "no " + q.name + " here", "Write it as " + q.example + "."}
	}
	sp, fault := q.read(sc)
	if fault != nil {
		return span{}, fault
	}
	return sp, nil
}

// read reads a quantity, a separator and perhaps a second quantity.
func (q quantity) read(sc *scanner) (span, *Fault) {
	minus := sc.peek() == '-' || sc.peek() == '−'
	if minus {
		sc.at++
	}
	from := sc.at
	first, fault := q.side(sc)
	if fault != nil {
		return span{}, fault
	}
	if !sc.separator() {
		return q.single(sc, from, first, minus)
	}
	second, fault := q.side(sc)
	switch {
	case fault != nil:
		return span{}, fault
	case !q.ranges:
		return span{}, sc.fault(from, "a range where one "+q.name+" is wanted", "Write it as "+q.example+".")
	case minus:
		return span{}, sc.fault(from, "a range that starts below zero", "Write it as "+q.example+".")
	case !sc.done():
		return span{}, q.rest(sc)
	case !second.hasUnit:
		return span{}, q.noUnit(sc, from)
	}
	if !first.hasUnit { // "18-24 in": the unit at the end serves both
		first.value.Mul(first.bare, rat(second.last.size))
		first.last = second.last
	}
	if first.value.Cmp(second.value) > 0 {
		return span{}, sc.fault(from, "a range that falls", "Write the smaller first, as 18-24 in. Write two and a half as 2 1/2.")
	}
	return span{first.value, second.value, first.last.system}, nil
}

// single finishes a quantity that is no range.
func (q quantity) single(sc *scanner, from int, one part, minus bool) (span, *Fault) {
	if !sc.done() {
		return span{}, q.rest(sc)
	}
	if !one.hasUnit {
		return span{}, q.noUnit(sc, from)
	}
	if minus {
		one.value.Neg(one.value)
	}
	return span{one.value, one.value, one.last.system}, nil
}

// part is one side of a range, perhaps in two units: 2 ft 6 in.
type part struct {
	value   *big.Rat // canonical, when hasUnit
	bare    *big.Rat // the number without unit
	last    measured
	hasUnit bool
}

// side reads "60 cm", "2'6\"" or a bare number.
func (q quantity) side(sc *scanner) (part, *Fault) {
	sum := part{value: new(big.Rat)}
	for {
		sc.spaces()
		from := sc.at
		n, fault := sc.number()
		switch {
		case fault != nil:
			return part{}, fault
		case n == nil && !sum.hasUnit:
			return part{}, q.noNumber(sc)
		case n == nil:
			return sum, nil
		}
		u, ok, fault := q.word(sc)
		switch {
		case fault != nil:
			return part{}, fault
		case !ok && sum.hasUnit:
			return part{}, q.noUnit(sc, from)
		case !ok:
			sum.bare = n
			return sum, nil
		}
		size := n.Mul(n, rat(u.size))
		if sum.hasUnit && (rat(u.size).Cmp(rat(sum.last.size)) >= 0 || size.Cmp(rat(sum.last.size)) >= 0) {
			return part{}, sc.fault(from, "a second part as large as the first unit", "Write it as "+q.example+".")
		}
		sum.value.Add(sum.value, size)
		sum.last, sum.hasUnit = u, true
	}
}

// word reads a unit of one to three words; ok is false where none stands.
func (q quantity) word(sc *scanner) (u measured, ok bool, fault *Fault) {
	back := sc.at
	sc.spaces()
	from := sc.at
	if sc.mark() {
		if u, ok = q.unit(string(sc.text[from:sc.at])); ok {
			return u, true, nil
		}
		return u, false, q.badUnit(sc, from)
	}
	var ends []int // after one, two, three words
	for len(ends) < 3 && sc.letters() {
		ends = append(ends, sc.at)
		sc.spaces()
	}
	if len(ends) == 0 || strings.EqualFold(string(sc.text[from:ends[0]]), "to") {
		sc.at = back
		return u, false, nil
	}
	for i := len(ends) - 1; i >= 0; i-- {
		sc.at = ends[i]
		if u, ok = q.unit(plainWord(string(sc.text[from:sc.at]))); ok {
			return u, true, nil
		}
	}
	return u, false, q.badUnit(sc, from)
}

// mark passes over a sign that stands for a unit: ' or ".
func (s *scanner) mark() bool {
	switch s.peek() {
	case '\'', '′', '’':
		s.at++
		if s.peek() == s.text[s.at-1] { // two single marks for inches
			s.at++
		}
		return true
	case '"', '″', '”':
		s.at++
		return true
	}
	return false
}

// letters passes over one word of a unit with what belongs to it: "°C",
// "in.", "m³", "ft3".
func (s *scanner) letters() bool {
	from := s.at
	for unicode.IsLetter(s.peek()) || s.peek() == '°' {
		s.at++
	}
	if s.at == from {
		return false
	}
	if r := s.peek(); r == '.' || r == '³' || r == '3' {
		s.at++
	}
	return true
}

// plainWord brings a unit as typed to the form the tables hold: lower case,
// single spaces, no full stop.
func plainWord(typed string) string {
	word := strings.Join(strings.Fields(strings.ToLower(typed)), " ")
	word = strings.ReplaceAll(word, "³", "3")
	return strings.ReplaceAll(word, ".", "")
}

// separator passes over what parts the ends of a range.
func (s *scanner) separator() bool {
	s.spaces()
	switch s.peek() {
	case '-', '–', '—':
		s.at++
		return true
	}
	if s.at+1 < len(s.text) && strings.EqualFold(string(s.text[s.at:s.at+2]), "to") {
		s.at += 2
		return true
	}
	return false
}

func (q quantity) badUnit(sc *scanner, from int) *Fault {
	word := strings.TrimSpace(string(sc.text[from:sc.at]))
	return sc.fault(from, `"`+word+`" is no unit of `+q.name, "Write it as "+q.example+".")
}

func (q quantity) noUnit(sc *scanner, from int) *Fault {
	return sc.fault(from, "a "+q.name+" without a unit", "Add the unit: "+q.example+".")
}

func (q quantity) noNumber(sc *scanner) *Fault {
	from := sc.at
	sc.at = len(sc.text)
	return sc.fault(from, "no number here", "Write the "+q.name+" as "+q.example+".")
}

func (q quantity) rest(sc *scanner) *Fault {
	from := sc.at
	sc.at = len(sc.text)
	word := strings.TrimSpace(string(sc.text[from:sc.at]))
	return sc.fault(from, `"`+word+`" after the `+q.name, "Write it as "+q.example+".")
}
