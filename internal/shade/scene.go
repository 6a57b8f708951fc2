// Package shade says how much light reaches a point among the things that
// stand in its way.
//
// Method: plain ray casting. A ray from the point towards the sun, or towards
// each part of the sky, is multiplied by the share every body on its way lets
// through. Nothing is cut short or cached between points, so that this code
// can be read, and can stand as the measure for the faster [Field], which does
// every cell of flat surfaces at once, week by week, in whole numbers.
//
// Beam and diffuse light: the monthly rule of [Erbs1982] for mean skies and
// its daily rule for clear ones; the course of a day after [CollaresRabl1979]
// (global) and [LiuJordan1960] (diffuse); clear sky after [FAO56] equation 37;
// the sky is evenly bright (isotropic).
//
// Conventions: x east, y north, z up, metres; turn is degrees clockwise from
// east-west, seen from above; months 1 to 12; hours are local mean solar
// hours, 12 at mean noon. Sun hours count the disc's centre above the level
// horizon with no air. A receptor strictly inside an opaque body is dark; a
// receptor on its face, or a ray along its face, is not shaded by it.
//
// Range and accuracy: see docs/shade.md. Any latitude.
//
// Left out: light thrown back by walls and ground, the bright ring round the
// sun, hills beyond a [Horizon], and leaves coming out little by little (crowns
// change at the turn of a month, or on two days of the year).
package shade

import (
	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

// Place is where the scene lies.
type Place = sun.Place

// EndlessM is a length in metres that is as good as endless for a wall a few
// metres off.
const EndlessM = 2e5

// Scene is everything that takes light. The zero Scene is open ground.
type Scene struct {
	Bodies []Body
}

// Body is one thing that stands in the light: one or more solids, each with
// the share of light that passes it.
type Body struct {
	Name  string
	Parts []Part
}

// Part is a solid and the share of light, 0 to 1, that crosses it, whatever
// the length of the way through.
type Part struct {
	Name         string // where a body has several: "crown", "trunk"; may be empty
	Solid        geom.Solid
	InLeaf, Bare float64
	From, To     int // first and last month in leaf; both 0 = all year
	// The rest is known to [Part.PassesOn] and the light field only.
	LeafOut, LeafFall int     // first and last day of the year in leaf; 0 = by month
	Begin, End        cal.Day // stands from, to; 0 = always
}

// Passes returns the share of light that crosses the part in a month.
func (p Part) Passes(month int) float64 {
	if inLeaf(p.From, p.To, month) {
		return p.InLeaf
	}
	return p.Bare
}

// inLeaf reports whether month lies in from..to, which may run over the turn
// of the year. Either end 0 means all year.
func inLeaf(from, to, month int) bool {
	switch {
	case from == 0 || to == 0:
		return true
	case from <= to:
		return month >= from && month <= to
	}
	return month >= from || month <= to
}

func opaque(s geom.Solid) Part { return Part{Solid: s} }

// sheer is a part that lets the same share through all year.
func sheer(s geom.Solid, passes float64) Part {
	t := share(passes)
	return Part{Solid: s, InLeaf: t, Bare: t}
}

// share brings a transmittance to 0..1; what is not a number lets nothing by.
func share(t float64) float64 {
	if !(t > 0) {
		return 0
	}
	return min(t, 1)
}

// Box is an opaque upright box about x, y: base is the height of its
// underside, height that of its top. With no thickness it takes no light.
func Box(name string, x, y, turnDeg, length, width, base, height float64) Body {
	return Body{Name: name, Parts: []Part{opaque(
		geom.NewBox(geom.Vec{X: x, Y: y, Z: base}, turnDeg, length, width, height-base))}}
}

// BoxBetween is an opaque box given by its ends along east, north and up.
func BoxBetween(name string, x0, x1, y0, y1, z0, z1 float64) Body {
	return Box(name, (x0+x1)/2, (y0+y1)/2, 0, x1-x0, y1-y0, z0, z1)
}

// Wall is a thin opaque upright wall or fence; x, y is the middle of its foot.
func Wall(name string, x, y, turnDeg, length, base, height float64) Body {
	return Sheet(name, x, y, turnDeg, length, base, height, 0)
}

// WallBetween is a thin opaque upright wall from one point to another.
func WallBetween(name string, x0, y0, x1, y1, base, height float64) Body {
	return Body{Name: name, Parts: []Part{opaque(geom.Sheet{
		Corner: geom.Vec{X: x0, Y: y0, Z: base},
		A:      geom.Vec{X: x1 - x0, Y: y1 - y0},
		B:      geom.Vec{Z: height - base}})}}
}

// Sheet is a thin upright sheet such as a trellis, net or hedge screen that
// lets a share of the light through.
func Sheet(name string, x, y, turnDeg, length, base, height, transmit float64) Body {
	along := geom.Direction(90+turnDeg, 0).Scale(length)
	foot := geom.Vec{X: x, Y: y, Z: base}.Sub(along.Scale(0.5))
	return Body{Name: name, Parts: []Part{sheer(geom.Sheet{
		Corner: foot, A: along, B: geom.Vec{Z: height - base}}, transmit)}}
}

// Post is an opaque upright cylinder.
func Post(name string, x, y, diameter, base, height float64) Body {
	return Body{Name: name, Parts: []Part{opaque(geom.Cylinder{
		At: geom.Vec{X: x, Y: y, Z: base}, Radius: diameter / 2, Height: height - base})}}
}

// trunkShare is a trunk's thickness as a share of its crown's spread, for a
// broadleaved tree standing free; from memory.
const trunkShare = 0.05

// Tree is a crown (an ellipsoid from base to height) on an opaque trunk. The
// crown lets leafOn through in the months leafFrom to leafTo and leafOff in
// the others; either month 0 means evergreen.
func Tree(name string, x, y, crownDiameter, height, base, leafOn, leafOff float64, leafFrom, leafTo int) Body {
	crown := Part{
		Name: "crown",
		Solid: geom.Ellipsoid{At: geom.Vec{X: x, Y: y, Z: (base + height) / 2},
			Radius: crownDiameter / 2, HalfHeight: (height - base) / 2},
		InLeaf: share(leafOn), Bare: share(leafOff), From: leafFrom, To: leafTo,
	}
	parts := []Part{crown}
	if base > 0 {
		trunk := opaque(geom.Cylinder{
			At: geom.Vec{X: x, Y: y}, Radius: crownDiameter * trunkShare / 2, Height: base})
		trunk.Name = "trunk"
		parts = append(parts, trunk)
	}
	return Body{Name: name, Parts: parts}
}

// Ball is a sphere about a centre, for a clipped bush or a crown without its
// trunk.
func Ball(name string, x, y, z, radius, transmit float64) Body {
	return Body{Name: name, Parts: []Part{sheer(geom.Ellipsoid{
		At: geom.Vec{X: x, Y: y, Z: z}, Radius: radius, HalfHeight: radius}, transmit)}}
}

// Roof is an opaque level sheet at a height.
func Roof(name string, x, y, turnDeg, length, width, height float64) Body {
	return Awning(name, x, y, turnDeg, length, width, height, 0)
}

// Awning is a level sheet at a height that lets a share of the light through.
func Awning(name string, x, y, turnDeg, length, width, height, transmit float64) Body {
	a := geom.Direction(90+turnDeg, 0).Scale(length)
	b := geom.Direction(turnDeg, 0).Scale(width)
	corner := geom.Vec{X: x, Y: y, Z: height}.Sub(a.Scale(0.5)).Sub(b.Scale(0.5))
	return Body{Name: name, Parts: []Part{sheer(geom.Sheet{Corner: corner, A: a, B: b}, transmit)}}
}

// Horizon is a far opaque skyline: elevations in degrees at equal steps of
// azimuth from north, clockwise; one figure is the same all round.
func Horizon(name string, elevationDeg ...float64) Body {
	return Body{Name: name, Parts: []Part{opaque(geom.Skyline(elevationDeg))}}
}

// TurnOf returns the turn of a long side that runs along a compass bearing.
func TurnOf(bearingDeg float64) float64 { return bearingDeg - 90 }
