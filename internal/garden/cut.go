package garden

import (
	"math"
	"strings"

	"bedweek/internal/geom"
	"bedweek/internal/unit"
)

// A cut is said behind the measures of a shape: "L 3 m x 2 m, less 1 m x 80 cm,
// first 1.2 m" is the part up to 1.2 m from its west end (its south end when it
// is deeper than long), as it lies unturned; "beyond 1.2 m" is the rest.
const (
	cutFirst  = "first "
	cutBeyond = "beyond "
)

// LeastPartM is the shortest part a space may be split into, metres.
const LeastPartM = 0.05

// cutsOf takes the cuts off the end of a shape's words.
func cutsOf(rest string) (measures string, cuts []string) {
	parts := strings.Split(rest, ",")
	n := len(parts)
	for n > 0 {
		p := strings.TrimSpace(parts[n-1])
		if !strings.HasPrefix(p, cutFirst) && !strings.HasPrefix(p, cutBeyond) {
			break
		}
		cuts = append([]string{p}, cuts...)
		n--
	}
	return strings.Join(parts[:n], ","), cuts
}

// cut makes the parts a shape's cuts leave, one after the other.
func cut(f *geom.Figure, cuts []string) (*geom.Figure, string) {
	for _, c := range cuts {
		first := strings.HasPrefix(c, cutFirst)
		typed := strings.TrimPrefix(strings.TrimPrefix(c, cutFirst), cutBeyond)
		at, err := unit.ParseLength(typed)
		if err != nil {
			return nil, quoteWord(c) + ": " + err.Error() + " Write it as first 1.2 m or beyond 1.2 m."
		}
		low, high, _, _ := f.Cut(at.M)
		if low == nil {
			return nil, quoteWord(c) + " does not pass through it: it is " + unit.FormatLength(longerM(f), at.System()) + " long."
		}
		if f = high; first {
			f = low
		}
	}
	return f, ""
}

func longerM(f *geom.Figure) float64 { return math.Max(f.Length, f.Width) }

// Part is one of the two spaces made of one: its shape as the file writes it,
// and its middle on the plan.
type Part struct {
	Shape       string
	East, North float64
	AreaM2      float64
}

// asFigure is a round or odd space's figure, and its shape in words.
func (s Space) asFigure() (*geom.Figure, string) {
	if s.Round.Known() {
		return geom.Oval(s.Round.M, s.Round.M), "oval " + s.Round.String() + " x " + s.Round.String()
	}
	return s.Figure, s.Shape
}

// CutLengthM is how long a round or odd space is where it is cut, and the
// bearing of the end from which a cut is measured. ok is false for others.
func (s Space) CutLengthM() (m, endDeg float64, ok bool) {
	f, _ := s.asFigure()
	if f == nil {
		return 0, 0, false
	}
	endDeg = 270 + s.TurnDeg
	if f.CutsAcross() {
		endDeg = 180 + s.TurnDeg
	}
	return longerM(f), math.Mod(endDeg+360, 360), true
}

// Cut parts a round or odd space at a distance as typed. ok is false when the
// line leaves one part shorter than LeastPartM.
func (s Space) Cut(typed string) (first, second Part, ok bool) {
	f, shape := s.asFigure()
	at, err := unit.ParseLength(typed)
	if f == nil || err != nil || at.M < LeastPartM || at.M > longerM(f)-LeastPartM {
		return Part{}, Part{}, false
	}
	low, high, lowMid, highMid := f.Cut(at.M)
	if low == nil {
		return Part{}, Part{}, false
	}
	part := func(g *geom.Figure, mid geom.Vec, word string) Part {
		sin, cos := math.Sincos(s.TurnDeg * math.Pi / 180)
		return Part{Shape: shape + ", " + word + strings.TrimSpace(typed), AreaM2: g.AreaM2(),
			East: s.X + mid.X*cos + mid.Y*sin, North: s.Y - mid.X*sin + mid.Y*cos}
	}
	return part(low, lowMid, cutFirst), part(high, highMid, cutBeyond), true
}
