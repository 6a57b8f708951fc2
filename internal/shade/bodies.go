package shade

import (
	"fmt"
	"math"

	"bedweek/internal/geom"
)

// Gable is an opaque house or shed with a sloped roof: eaves and ridge are
// heights above base; ridgeShare says where across the width the ridge runs
// (0.5 an even gable, 0 or 1 a lean-to; 0 is the side facing south at turn 0).
func Gable(name string, x, y, turnDeg, length, width, base, eaves, ridge, ridgeShare float64) Body {
	return Body{Name: name, Parts: []Part{opaque(geom.NewGable(
		geom.Vec{X: x, Y: y, Z: base}, turnDeg, length, width, eaves, ridge, ridgeShare))}}
}

// Sloped is a thin sloped sheet about x, y, z: a roof, an awning, a cold
// frame's lid. It rises by tiltDeg from level away from the compass bearing it
// faces; width is measured along the slope.
func Sloped(name string, x, y, z, facingDeg, tiltDeg, length, width, transmit float64) Body {
	a := geom.Direction(facingDeg+90, 0).Scale(-length)
	b := geom.Direction(facingDeg+180, tiltDeg).Scale(width)
	corner := geom.Vec{X: x, Y: y, Z: z}.Sub(a.Scale(0.5)).Sub(b.Scale(0.5))
	return Body{Name: name, Parts: []Part{sheer(geom.Sheet{Corner: corner, A: a, B: b}, transmit)}}
}

// Conifer is an upright cone from base to height.
func Conifer(name string, x, y, diameter, base, height, transmit float64) Body {
	return Body{Name: name, Parts: []Part{sheer(geom.Cone{
		At: geom.Vec{X: x, Y: y, Z: base}, Radius: diameter / 2, Height: height - base}, transmit)}}
}

// Mound is the upper half of an ellipsoid standing on base: a bush, a tunnel's
// end, a sprawling crop.
func Mound(name string, x, y, diameter, base, height, transmit float64) Body {
	return Body{Name: name, Parts: []Part{sheer(geom.Dome{
		At: geom.Vec{X: x, Y: y, Z: base}, Radius: diameter / 2, Height: height - base}, transmit)}}
}

// Parasol is a thin round sheet about x, y, z facing a bearing and elevation
// (90 is level).
func Parasol(name string, x, y, z, diameter, bearingDeg, elevationDeg, transmit float64) Body {
	return Body{Name: name, Parts: []Part{sheer(geom.Disc{
		At: geom.Vec{X: x, Y: y, Z: z}, Facing: geom.Direction(bearingDeg, elevationDeg), Radius: diameter / 2}, transmit)}}
}

// Shaped is an opaque upright body with an odd ground plan about x, y.
func Shaped(name string, f *geom.Figure, x, y, turnDeg, base, height float64) Body {
	out := Body{Name: name}
	for _, s := range f.Prisms(geom.Vec{X: x, Y: y, Z: base}, turnDeg, height-base) {
		out.Parts = append(out.Parts, opaque(s))
	}
	return out
}

// archPieces is how many flat strips stand for an arch's curve.
const archPieces = 8

// Arch is a half-round arch or tunnel of thin sheet: span across, width along
// it, its crown at height above base. turnDeg turns the span from east-west.
func Arch(name string, x, y, turnDeg, span, width, base, height, transmit float64) Body {
	out := Body{Name: name}
	along, across := geom.Direction(90+turnDeg, 0), geom.Direction(turnDeg, 0).Scale(width)
	foot := geom.Vec{X: x, Y: y, Z: base}.Sub(across.Scale(0.5))
	at := func(i int) geom.Vec {
		s, c := math.Sincos(math.Pi * float64(i) / archPieces)
		return foot.Add(along.Scale(-c * span / 2)).Add(geom.Vec{Z: s * (height - base)})
	}
	for i := range archPieces {
		p := sheer(geom.Sheet{Corner: at(i), A: at(i + 1).Sub(at(i)), B: across}, transmit)
		p.Name = fmt.Sprintf("strip %d", i+1)
		out.Parts = append(out.Parts, p)
	}
	return out
}
