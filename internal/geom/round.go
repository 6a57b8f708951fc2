package geom

import "math"

// Cone is an upright cone standing on a round foot, such as a conifer.
type Cone struct {
	At     Vec // centre of the foot
	Radius float64
	Height float64
}

// Crosses meets the endless double cone by a quadratic, between foot and tip.
func (c Cone) Crosses(o, d Vec) bool {
	if c.Radius <= 0 || c.Height <= 0 {
		return false
	}
	p := o.Sub(c.At)
	near, far := 0.0, math.Inf(1)
	if !slab(p.Z, d.Z, 0, c.Height, &near, &far) {
		return false
	}
	// Inside: x² + y² < (k (h - z))².
	k := c.Radius / c.Height
	g, gd := k*(c.Height-p.Z), -k*d.Z
	A := d.X*d.X + d.Y*d.Y - gd*gd
	B := p.X*d.X + p.Y*d.Y - g*gd
	C := p.X*p.X + p.Y*p.Y - g*g
	if math.Abs(A) < 1e-15 { // along the flank
		if math.Abs(B) < 1e-15 {
			return C < 0
		}
		t := -C / (2 * B)
		if B > 0 {
			far = math.Min(far, t)
		} else {
			near = math.Max(near, t)
		}
		return far-near > TouchM
	}
	D := B*B - A*C
	if D <= 0 {
		return A < 0 && C < 0
	}
	r := math.Sqrt(D)
	a, b := (-B-r)/A, (-B+r)/A
	if A > 0 {
		return math.Min(far, b)-math.Max(near, a) > TouchM
	}
	// Steep ray: inside before the smaller and after the larger root; only
	// one of them lies in the lower cone, where z is below the tip.
	return math.Min(far, b)-near > TouchM || far-math.Max(near, a) > TouchM
}

// Rim returns the foot's circle and the tip.
func (c Cone) Rim(Vec) []Vec {
	out := []Vec{c.At.Add(Vec{0, 0, c.Height})}
	for i := range RimPoints {
		s, k := math.Sincos(2 * math.Pi * float64(i) / RimPoints)
		out = append(out, c.At.Add(Vec{c.Radius * s, c.Radius * k, 0}))
	}
	return out
}

// Dome is the upper half of an ellipsoid on a flat round foot.
type Dome struct {
	At     Vec // centre of the foot
	Radius float64
	Height float64
}

// Crosses meets the whole ellipsoid and keeps what lies above the foot.
func (e Dome) Crosses(o, d Vec) bool {
	if e.Radius <= 0 || e.Height <= 0 {
		return false
	}
	w := Ellipsoid{e.At, e.Radius, e.Height}
	near, far := 0.0, math.Inf(1)
	if !slab(o.Z-e.At.Z, d.Z, 0, e.Height, &near, &far) {
		return false
	}
	p, q := w.squeeze(o.Sub(w.At)), w.squeeze(d)
	A, B, C := q.Dot(q), p.Dot(q), p.Dot(p)-1
	D := B*B - A*C
	if D <= 0 {
		return false
	}
	r := math.Sqrt(D)
	return math.Min(far, (-B+r)/A)-math.Max(near, (-B-r)/A) > TouchM
}

// Rim returns the foot's circle and the grazed points above it.
func (e Dome) Rim(d Vec) []Vec {
	var out []Vec
	for _, p := range (Ellipsoid{e.At, e.Radius, e.Height}).Rim(d) {
		if p.Z >= e.At.Z {
			out = append(out, p)
		}
	}
	for i := range RimPoints {
		s, k := math.Sincos(2 * math.Pi * float64(i) / RimPoints)
		out = append(out, e.At.Add(Vec{e.Radius * s, e.Radius * k, 0}))
	}
	return out
}

// Disc is a thin flat round sheet, facing any way.
type Disc struct {
	At     Vec // centre
	Facing Vec // unit normal
	Radius float64
}

// Crosses meets the disc's plane; a ray in the plane does not cross it.
func (s Disc) Crosses(o, d Vec) bool {
	across := d.Dot(s.Facing)
	if s.Radius <= 0 || math.Abs(across) < 1e-12 {
		return false
	}
	t := s.At.Sub(o).Dot(s.Facing) / across
	return t > TouchM && o.Add(d.Scale(t)).Sub(s.At).Len() <= s.Radius+TouchM
}

// Axes returns two unit directions in the disc, at right angles.
func (s Disc) Axes() (a, b Vec) {
	a = s.Facing.Cross(Vec{0, 0, 1})
	if a.Len() < 1e-9 {
		a = Vec{1, 0, 0}
	}
	a = a.Unit()
	return a, s.Facing.Cross(a)
}

// Rim returns the edge.
func (s Disc) Rim(Vec) []Vec {
	a, b := s.Axes()
	out := make([]Vec, 0, RimPoints)
	for i := range RimPoints {
		q, k := math.Sincos(2 * math.Pi * float64(i) / RimPoints)
		out = append(out, s.At.Add(a.Scale(s.Radius*k)).Add(b.Scale(s.Radius*q)))
	}
	return out
}
