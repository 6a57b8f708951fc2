package geom

import "math"

// arcSides is how many straight edges stand for a full round. Their corners
// lie a touch outside, so that a full round has its true area.
const arcSides = 96

// arcPoints are corners of an arc about 0,0 with half axes a and b, from one
// angle to another in degrees anticlockwise from east.
func arcPoints(a, b, fromDeg, toDeg float64) Outline {
	n := int(math.Round(arcSides * (toDeg - fromDeg) / 360))
	step := (toDeg - fromDeg) * rad / float64(n)
	grow := math.Sqrt(step / math.Sin(step)) // of a polygon with the round's area
	out := Outline{}
	for i := 0; i <= n; i++ {
		s, c := math.Sincos(fromDeg*rad + float64(i)*step)
		out = append(out, Vec{a * grow * c, b * grow * s, 0})
	}
	if toDeg-fromDeg >= 360 {
		out = out[:n]
	}
	return out
}

func whole(o Outline) *Figure { return figure([]Outline{o}, []Outline{o}) }

// Oval is an ellipse by its two widths.
func Oval(length, width float64) *Figure { return whole(arcPoints(length/2, width/2, 0, 360)) }

// HalfRound is half a circle: its straight side lies along, on the near side.
func HalfRound(across float64) *Figure { return whole(arcPoints(across/2, across/2, 0, 180)) }

// QuarterRound is a quarter of a circle, its square corner near and to the
// left.
func QuarterRound(radius float64) *Figure {
	return whole(append(Outline{{}}, arcPoints(radius, radius, 0, 90)...))
}

// Trapezoid has two level sides apart from one another, each about the same
// middle line; the first is the near one.
func Trapezoid(near, far, apart float64) *Figure {
	return whole(Outline{{-near / 2, 0, 0}, {near / 2, 0, 0}, {far / 2, apart, 0}, {-far / 2, apart, 0}})
}

// Triangle has its first side near, the next follow anticlockwise. It is nil
// when the sides do not meet.
func Triangle(a, b, c float64) *Figure {
	top, ok := apex(a, c, b)
	if !ok {
		return nil
	}
	return whole(Outline{{}, {a, 0, 0}, top})
}

// apex is the corner at fromLow of 0,0 and fromHigh of base,0, above the base.
func apex(base, fromLow, fromHigh float64) (Vec, bool) {
	x := (base*base + fromLow*fromLow - fromHigh*fromHigh) / (2 * base)
	h := fromLow*fromLow - x*x
	if !(h > 1e-9) {
		return Vec{}, false
	}
	return Vec{x, math.Sqrt(h), 0}, true
}

// FourSides has its first side near, the next follow anticlockwise; across
// runs from the first corner to the third. It is nil when they do not meet.
// One with a dent at its second or fourth corner cannot be told so.
func FourSides(a, b, c, d, across float64) *Figure {
	third, ok := apex(a, across, b) // from the first corner, and from the second
	if !ok {
		return nil
	}
	// The fourth corner lies beyond the line across.
	top, ok := apex(across, d, c)
	if !ok {
		return nil
	}
	e := third.Scale(1 / across)
	fourth := Vec{float64(top.X*e.X) - float64(top.Y*e.Y), float64(top.X*e.Y) + float64(top.Y*e.X), 0}
	o := Outline{{}, {a, 0, 0}, third, fourth}
	return figure([]Outline{o}, []Outline{{o[0], o[1], o[2]}, {o[0], o[2], o[3]}})
}

// Corner names a corner of a box before it is turned.
type Corner struct{ Right, Far bool }

// mirrored turns an outline made for the far right corner to another one.
func (c Corner) mirrored(o Outline) Outline {
	out := make(Outline, len(o))
	for i, v := range o {
		if !c.Right {
			v.X = -v.X
		}
		if !c.Far {
			v.Y = -v.Y
		}
		out[i] = v
	}
	if c.Right != c.Far { // one mirror turns the order of corners round
		for i, j := 0, len(out)-1; i < j; i, j = i+1, j-1 {
			out[i], out[j] = out[j], out[i]
		}
	}
	return out
}

// LShape is a rectangle with a smaller one taken out of a corner.
func LShape(length, width, lessLength, lessWidth float64, at Corner) *Figure {
	x, y := length/2, width/2
	u, v := x-lessLength, y-lessWidth
	ring := Outline{{-x, -y, 0}, {x, -y, 0}, {x, v, 0}, {u, v, 0}, {u, y, 0}, {-x, y, 0}}
	low := Outline{{-x, -y, 0}, {x, -y, 0}, {x, v, 0}, {-x, v, 0}}
	high := Outline{{-x, v, 0}, {u, v, 0}, {u, y, 0}, {-x, y, 0}}
	return figure([]Outline{at.mirrored(ring)}, []Outline{at.mirrored(low), at.mirrored(high)})
}

// CutCorner is a rectangle with one corner cut off straight.
func CutCorner(length, width, lessLength, lessWidth float64, at Corner) *Figure {
	x, y := length/2, width/2
	return whole(at.mirrored(Outline{{-x, -y, 0}, {x, -y, 0}, {x, y - lessWidth, 0}, {x - lessLength, y, 0}, {-x, y, 0}}))
}

// joined joins an outer and an inner ring of as many corners by quadrangles.
func joined(outer, inner Outline) *Figure {
	var pieces []Outline
	for i := range outer {
		j := (i + 1) % len(outer)
		pieces = append(pieces, Outline{outer[i], outer[j], inner[j], inner[i]})
	}
	return figure([]Outline{outer, inner}, pieces)
}

// Ring is a round with a smaller round taken out of its middle, such as the
// step of a tier.
func Ring(across, less float64) *Figure {
	return joined(arcPoints(across/2, across/2, 0, 360), arcPoints(less/2, less/2, 0, 360))
}

// Frame is a rectangle with a smaller one taken out of its middle.
func Frame(length, width, lessLength, lessWidth float64) *Figure {
	box := func(l, w float64) Outline {
		return Outline{{-l / 2, -w / 2, 0}, {l / 2, -w / 2, 0}, {l / 2, w / 2, 0}, {-l / 2, w / 2, 0}}
	}
	return joined(box(length, width), box(lessLength, lessWidth))
}
