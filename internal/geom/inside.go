package geom

import "math"

// Inside reports whether p lies within a solid, further than [TouchM] from its
// surface for flat ones. Thin sheets, discs and skylines have no inside.
func Inside(s Solid, p Vec) bool {
	switch s := s.(type) {
	case Box:
		q := s.local(p.Sub(s.At))
		return math.Abs(q.X) < s.Length/2-TouchM && math.Abs(q.Y) < s.Width/2-TouchM && q.Z > TouchM && q.Z < s.Height-TouchM
	case Cylinder:
		q := p.Sub(s.At)
		return q.LevelLen() < s.Radius-TouchM && q.Z > TouchM && q.Z < s.Height-TouchM
	case Cone:
		q := p.Sub(s.At)
		return q.Z > TouchM && q.Z < s.Height && q.LevelLen() < s.Radius*(1-q.Z/s.Height)-TouchM
	case Ellipsoid:
		return s.Radius > 0 && s.HalfHeight > 0 && s.squeeze(p.Sub(s.At)).Len() < 1
	case Dome:
		q := p.Sub(s.At)
		return q.Z > TouchM && Inside(Ellipsoid{s.At, s.Radius, s.Height}, p)
	case Convex:
		for _, f := range s.planes {
			if f.n.Dot(p) > f.c-TouchM {
				return false
			}
		}
		return len(s.planes) >= 4
	}
	return false
}
