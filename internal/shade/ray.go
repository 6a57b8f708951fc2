package shade

import "bedweek/internal/geom"

// Receptor is a small flat piece of surface that receives light.
type Receptor struct {
	At     geom.Vec
	Normal geom.Vec // outward, unit length
}

// Level is a receptor that faces straight up.
func Level(x, y, z float64) Receptor {
	return Receptor{At: geom.Vec{X: x, Y: y, Z: z}, Normal: geom.Up()}
}

// BeamFactor returns the receptor's share of a beam from a direction: the
// cosine to its normal, 0 from behind.
func (r Receptor) BeamFactor(towards geom.Vec) float64 {
	return max(0, towards.Dot(r.Normal))
}

// AnyMonth is a month for scenes in which nothing drops its leaves.
const AnyMonth = 1

// Passes returns the share of light, 0 to 1, that comes through the scene to
// a point from a unit direction in a month. Each body counts once a part.
func (s *Scene) Passes(at, towards geom.Vec, month int) float64 {
	t := 1.0
	for i := range s.Bodies {
		parts := s.Bodies[i].Parts
		for j := range parts {
			p := &parts[j]
			f := p.Passes(month)
			if f < 1 && p.Solid.Crosses(at, towards) {
				t *= f
				if t == 0 {
					return 0
				}
			}
		}
	}
	return t
}

// PassesYear returns [Scene.Passes] for each month, January first.
func (s *Scene) PassesYear(at, towards geom.Vec) [12]float64 {
	t := [12]float64{1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1}
	for i := range s.Bodies {
		parts := s.Bodies[i].Parts
		for j := range parts {
			p := &parts[j]
			if !p.Solid.Crosses(at, towards) {
				continue
			}
			if p.InLeaf == 0 && p.Bare == 0 {
				return [12]float64{}
			}
			for m := range t {
				t[m] *= p.Passes(m + 1)
			}
		}
	}
	return t
}

// Shadow returns the outline on level ground of the body's shadow, foot
// included, and false with the sun too low. For a body of several solids it is
// the outline around all of them.
func (b Body) Shadow(sun geom.Vec) (geom.Outline, bool) {
	var all []geom.Vec
	for _, p := range b.Parts {
		o, ok := geom.Shadow(p.Solid, sun)
		if !ok {
			return nil, false
		}
		all = append(all, o...)
	}
	return geom.Hull(all), true
}

// Shadows returns the shadows of the body's parts on level ground at z = 0,
// each by itself: together they leave a body's dents and holes open. ok is
// false with the sun down.
func (b Body) Shadows(sun geom.Vec) (all []geom.Outline, ok bool) {
	for _, p := range b.Parts {
		o, ok := geom.Shadow(p.Solid, sun)
		if !ok {
			return nil, false
		}
		all = append(all, o)
	}
	return all, true
}

// Footprint returns the body's outline seen from above.
func (b Body) Footprint() geom.Outline {
	var all []geom.Vec
	for _, p := range b.Parts {
		all = append(all, geom.Footprint(p.Solid)...)
	}
	return geom.Hull(all)
}

// ShadowBeyondM2 returns the area of the shadow outside the footprint of a
// body that stands on the ground.
func (b Body) ShadowBeyondM2(sun geom.Vec) (m2 float64, ok bool) {
	o, ok := b.Shadow(sun)
	return o.AreaM2() - b.Footprint().AreaM2(), ok
}
