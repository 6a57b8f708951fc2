package garden

import (
	"math"
	"strings"

	"bedweek/internal/geom"
	"bedweek/internal/unit"
)

// form is one odd shape: its word, how its measures are written, and how the
// figure is made of them. Each measure of pattern is one length, in order.
type form struct {
	word    string
	pattern string // as a person writes it, with lengths
	corner  bool   // a corner may be named after the measures
	make    func(m []float64, at geom.Corner) (*geom.Figure, string)
}

const (
	notMeet  = "Sides of these lengths do not meet. Measure them again."
	tooLarge = "What is taken out is as large as the whole. Look at the measures."
)

// forms lists the odd shapes. A longer word comes before one it begins with.
var forms = []form{
	{"L", "3 m x 2 m, less 1 m x 80 cm", true, func(m []float64, at geom.Corner) (*geom.Figure, string) {
		if m[2] >= m[0] || m[3] >= m[1] {
			return nil, tooLarge
		}
		return geom.LShape(m[0], m[1], m[2], m[3], at), ""
	}},
	{"cut corner", "3 m x 2 m, less 50 cm x 50 cm", true, func(m []float64, at geom.Corner) (*geom.Figure, string) {
		if m[2] >= m[0] || m[3] >= m[1] {
			return nil, tooLarge
		}
		return geom.CutCorner(m[0], m[1], m[2], m[3], at), ""
	}},
	{"trapezoid", "3 m, 2 m, 1.2 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) {
		return geom.Trapezoid(m[0], m[1], m[2]), ""
	}},
	{"triangle", "3 m, 2 m, 2 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) {
		return geom.Triangle(m[0], m[1], m[2]), notMeet
	}},
	{"four sides", "3 m, 1 m, 2.8 m, 1.2 m, across 3.2 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) {
		return geom.FourSides(m[0], m[1], m[2], m[3], m[4]), notMeet
	}},
	{"oval", "3 m x 1.2 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) { return geom.Oval(m[0], m[1]), "" }},
	{"half round", "2 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) { return geom.HalfRound(m[0]), "" }},
	{"quarter round", "1 m", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) { return geom.QuarterRound(m[0]), "" }},
	{"ring", "90 cm, less 60 cm", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) {
		if m[1] >= m[0] {
			return nil, tooLarge
		}
		return geom.Ring(m[0], m[1]), ""
	}},
	{"frame", "1.2 m x 1.2 m, less 80 cm x 80 cm", false, func(m []float64, _ geom.Corner) (*geom.Figure, string) {
		if m[2] >= m[0] || m[3] >= m[1] {
			return nil, tooLarge
		}
		return geom.Frame(m[0], m[1], m[2], m[3]), ""
	}},
}

// FormLines lists how each odd shape is written, with example measures.
func FormLines() []string {
	var out []string
	for _, f := range forms {
		out = append(out, f.word+" "+f.pattern)
	}
	return out
}

// FigureOf makes the figure of a shape as a file writes it; false for what no
// file may hold.
func FigureOf(typed string) (*geom.Figure, bool) {
	f, _, wrong := figureOf(typed)
	return f, wrong == ""
}

// Box returns the outer size and the area of what SaySize made; false while a
// measure is missing or faulty.
func Box(v Value) (lengthM, widthM, areaM2 float64, ok bool) {
	if f, ok := FigureOf(v.Get("shape")); ok {
		return f.Length, f.Width, f.AreaM2(), true
	}
	if d, err := unit.ParseLength(v.Get("across")); err == nil {
		return d.M, d.M, math.Pi / 4 * d.M * d.M, true
	}
	l, errL := unit.ParseLength(v.Get("length"))
	w, errW := unit.ParseLength(v.Get("width"))
	return l.M, w.M, l.M * w.M, errL == nil && errW == nil
}

// formOf finds the odd shape a line speaks of, and its measures.
func formOf(typed string) (form, string, bool) {
	low := strings.ToLower(strings.TrimSpace(typed))
	for _, f := range forms {
		if rest, ok := strings.CutPrefix(low, strings.ToLower(f.word)); ok && (rest == "" || !isLetter(rest[0])) {
			return f, strings.TrimLeft(strings.TrimPrefix(rest, "-shape"), " :"), true
		}
	}
	return form{}, "", false
}

func isLetter(b byte) bool { return b >= 'a' && b <= 'z' }

// corners are the corners of a shape before it is turned.
var corners = map[string]geom.Corner{"north-east": {Right: true, Far: true}, "north-west": {Far: true}, "south-east": {Right: true}, "south-west": {}}

// sizes of an odd shape's measures, metres.
const (
	leastMeasureM = 0.02
	mostMeasureM  = 60
)

// figureOf reads an odd shape by its measures, such as "L 3 m x 2 m, less 1 m x
// 80 cm, north-west". wrong says what to write instead; the measures are told
// in the system of the first.
func figureOf(typed string) (f *geom.Figure, system unit.System, wrong string) {
	one, rest, ok := formOf(typed)
	if !ok {
		return nil, 0, "Write one of: " + strings.Join(FormLines(), "; ") + "."
	}
	as := "Write it as " + one.word + " " + one.pattern + "."
	at := corners["north-east"]
	rest, cuts := cutsOf(rest)
	parts := measures(rest)
	if n := len(parts); one.corner && n > 0 {
		if c, ok := corners[strings.ReplaceAll(parts[n-1], " ", "-")]; ok {
			at, parts = c, parts[:n-1]
		}
	}
	want := measures(one.pattern)
	if len(parts) != len(want) {
		return nil, 0, as
	}
	m := make([]float64, len(parts))
	for i, p := range parts {
		l, err := unit.ParseLength(p)
		switch {
		case err != nil:
			return nil, 0, quoteWord(p) + ": " + err.Error() + " " + as
		case l.M < leastMeasureM || l.M > mostMeasureM:
			return nil, 0, quoteWord(p) + " is not between 2 cm and 60 m. Did you mean another unit?"
		}
		if m[i] = l.M; i == 0 {
			system = l.System()
		}
	}
	f, words := one.make(m, at)
	if f != nil {
		f, words = cut(f, cuts)
	}
	if f == nil {
		return nil, 0, words
	}
	if math.Max(f.Length, f.Width) > mostMeasureM {
		return nil, 0, "This is more than 60 m long. Did you mean another unit?"
	}
	return f, system, ""
}

// measures splits "3 m x 2 m, less 1 m x 80 cm" into its lengths.
func measures(s string) []string {
	var out []string
	for _, part := range strings.Split(strings.ReplaceAll(s, " and ", ","), ",") {
		part = strings.TrimSpace(part)
		for _, word := range []string{"less ", "across "} {
			part = strings.TrimPrefix(part, word)
		}
		for _, word := range []string{" across", " apart", " between"} {
			part = strings.TrimSuffix(part, word)
		}
		for _, one := range crossed.Split(part, -1) {
			if one = strings.TrimSpace(one); one != "" {
				out = append(out, one)
			}
		}
	}
	return out
}

// odd reads the shape of a space, and takes its outer box for length and width.
func (f fields) odd(s *Space) {
	text, tk, ok := f.text("shape")
	if !ok {
		return
	}
	fig, system, wrong := figureOf(text)
	if wrong != "" {
		f.r.at(tk, "shape "+clip(text), wrong)
		return
	}
	s.Shape, s.Figure = text, fig
	box := func(m float64) unit.Length {
		l := unit.Metres(m)
		l.Typed = unit.FormatLength(m, system)
		return l
	}
	s.Length, s.Width = box(fig.Length), box(fig.Width)
}
