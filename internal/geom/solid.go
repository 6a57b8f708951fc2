package geom

import "math"

// Solid is something a ray can meet.
type Solid interface {
	// Crosses reports whether the ray from o along the unit direction d runs
	// through the solid, further than [TouchM] ahead of o.
	Crosses(o, d Vec) bool
	// Rim returns points of the solid whose parallel projection along d has
	// the same convex hull as the solid's own. Round solids give a polygon of
	// [RimPoints] corners on the true rim.
	Rim(d Vec) []Vec
}

// RimPoints is how many corners stand for a circle in [Solid.Rim]. The
// polygon's area is 0.005 % below the circle's.
const RimPoints = 360

// Box is an upright box turned about the vertical; make one with [NewBox]. A
// box with no thickness in one direction is not met; use [Sheet].
type Box struct {
	At       Vec     // centre of the underside
	TurnDeg  float64 // long side, clockwise from east-west
	Length   float64 // along the long side
	Width    float64 // across
	Height   float64 // from underside to top
	sin, cos float64 // of TurnDeg
}

// NewBox returns a box standing on at.
func NewBox(at Vec, turnDeg, length, width, height float64) Box {
	s, c := math.Sincos(turnDeg * rad)
	return Box{At: at, TurnDeg: turnDeg, Length: length, Width: width, Height: height, sin: s, cos: c}
}

// local turns a direction into the box's own axes: along, across, up.
func (b Box) local(v Vec) Vec {
	return Vec{v.X*b.cos - v.Y*b.sin, v.X*b.sin + v.Y*b.cos, v.Z}
}

// world is the inverse of local.
func (b Box) world(v Vec) Vec {
	return Vec{v.X*b.cos + v.Y*b.sin, -v.X*b.sin + v.Y*b.cos, v.Z}
}

// Crosses cuts the ray by the three pairs of faces (the slab method).
func (b Box) Crosses(o, d Vec) bool {
	p, q := b.local(o.Sub(b.At)), b.local(d)
	near, far := 0.0, math.Inf(1)
	return slab(p.X, q.X, -b.Length/2, b.Length/2, &near, &far) &&
		slab(p.Y, q.Y, -b.Width/2, b.Width/2, &near, &far) &&
		slab(p.Z, q.Z, 0, b.Height, &near, &far)
}

// slab narrows near..far to the part of the ray between two parallel faces,
// and reports whether more than a touch is left.
func slab(p, q, low, high float64, near, far *float64) bool {
	if math.Abs(q) < 1e-15 { // runs along the faces
		return p > low+TouchM && p < high-TouchM
	}
	a, b := (low-p)/q, (high-p)/q
	*near = math.Max(*near, math.Min(a, b))
	*far = math.Min(*far, math.Max(a, b))
	return *far-*near > TouchM
}

// Rim returns the eight corners.
func (b Box) Rim(Vec) []Vec {
	out := make([]Vec, 0, 8)
	for _, x := range [2]float64{-b.Length / 2, b.Length / 2} {
		for _, y := range [2]float64{-b.Width / 2, b.Width / 2} {
			for _, z := range [2]float64{0, b.Height} {
				out = append(out, b.At.Add(b.world(Vec{x, y, z})))
			}
		}
	}
	return out
}

// Cylinder is an upright round post.
type Cylinder struct {
	At     Vec // centre of the underside
	Radius float64
	Height float64
}

// Crosses meets the endless cylinder by a quadratic, then cuts by the ends.
func (c Cylinder) Crosses(o, d Vec) bool {
	p := o.Sub(c.At)
	near, far := 0.0, math.Inf(1)
	if !slab(p.Z, d.Z, 0, c.Height, &near, &far) {
		return false
	}
	A := d.X*d.X + d.Y*d.Y
	B := p.X*d.X + p.Y*d.Y
	C := p.X*p.X + p.Y*p.Y - c.Radius*c.Radius
	if A < 1e-30 { // straight up
		return C < 0 && math.Sqrt(p.X*p.X+p.Y*p.Y) < c.Radius-TouchM
	}
	D := B*B - A*C
	if D <= 0 {
		return false
	}
	r := math.Sqrt(D)
	near, far = math.Max(near, (-B-r)/A), math.Min(far, (-B+r)/A)
	return far-near > TouchM
}

// Rim returns both end circles.
func (c Cylinder) Rim(Vec) []Vec {
	out := make([]Vec, 0, 2*RimPoints)
	for i := range RimPoints {
		s, k := math.Sincos(2 * math.Pi * float64(i) / RimPoints)
		foot := c.At.Add(Vec{c.Radius * s, c.Radius * k, 0})
		out = append(out, foot, foot.Add(Vec{0, 0, c.Height}))
	}
	return out
}

// Ellipsoid is round seen from above, with its own half height: a crown or a
// ball.
type Ellipsoid struct {
	At         Vec // centre
	Radius     float64
	HalfHeight float64
}

// Crosses squeezes space so that the ellipsoid becomes a unit ball.
func (e Ellipsoid) Crosses(o, d Vec) bool {
	if e.Radius <= 0 || e.HalfHeight <= 0 {
		return false
	}
	p, q := e.squeeze(o.Sub(e.At)), e.squeeze(d)
	A, B, C := q.Dot(q), p.Dot(q), p.Dot(p)-1
	D := B*B - A*C
	if D <= 0 {
		return false
	}
	r := math.Sqrt(D)
	near, far := math.Max(0, (-B-r)/A), (-B+r)/A
	return far-near > TouchM
}

func (e Ellipsoid) squeeze(v Vec) Vec {
	return Vec{v.X / e.Radius, v.Y / e.Radius, v.Z / e.HalfHeight}
}

// Rim returns the points where rays along d graze the ellipsoid: in squeezed
// space, the great circle across the squeezed ray.
func (e Ellipsoid) Rim(d Vec) []Vec {
	if e.Radius <= 0 || e.HalfHeight <= 0 {
		return nil
	}
	q := e.squeeze(d).Unit()
	a := q.Cross(Vec{0, 0, 1})
	if a.Len() < 1e-12 { // straight down
		a = Vec{1, 0, 0}
	}
	a = a.Unit()
	b := q.Cross(a)
	out := make([]Vec, 0, RimPoints)
	for i := range RimPoints {
		s, c := math.Sincos(2 * math.Pi * float64(i) / RimPoints)
		u := a.Scale(c).Add(b.Scale(s))
		out = append(out, e.At.Add(Vec{u.X * e.Radius, u.Y * e.Radius, u.Z * e.HalfHeight}))
	}
	return out
}

// Sheet is a thin flat rectangle: a corner and two sides from it, at right
// angles. Its edges belong to it.
type Sheet struct {
	Corner, A, B Vec
}

// Crosses meets the sheet's plane; a ray in the plane does not cross it.
func (s Sheet) Crosses(o, d Vec) bool {
	n := s.A.Cross(s.B)
	nn := n.Dot(n)
	if nn == 0 {
		return false
	}
	n = n.Scale(1 / math.Sqrt(nn))
	across := d.Dot(n)
	if math.Abs(across) < 1e-12 {
		return false
	}
	t := s.Corner.Sub(o).Dot(n) / across
	if !(t > TouchM) {
		return false
	}
	p := o.Add(d.Scale(t)).Sub(s.Corner)
	return between(p, s.A) && between(p, s.B)
}

// between reports whether p lies between the two ends of side, with a touch of
// grace so that two sheets meeting at an edge leave no gap.
func between(p, side Vec) bool {
	n := side.Len()
	along := p.Dot(side) / n
	return along >= -TouchM && along <= n+TouchM
}

// Rim returns the four corners.
func (s Sheet) Rim(Vec) []Vec {
	return []Vec{s.Corner, s.Corner.Add(s.A), s.Corner.Add(s.A).Add(s.B), s.Corner.Add(s.B)}
}

// Skyline is a far horizon all round: elevations in degrees at equal steps of
// azimuth, the first at north, going clockwise. Between two steps the horizon
// runs straight. It is so far off that every receptor sees the same.
type Skyline []float64

// Crosses reports whether the ray points below the skyline.
func (k Skyline) Crosses(_, d Vec) bool {
	if len(k) == 0 {
		return false
	}
	f := d.BearingDeg() / 360 * float64(len(k))
	i := int(f)
	f -= float64(i)
	a, b := k[i%len(k)], k[(i+1)%len(k)]
	return d.ElevationDeg() < a+(b-a)*f
}

// Rim returns nothing: a skyline casts no shadow of its own shape.
func (k Skyline) Rim(Vec) []Vec { return nil }
