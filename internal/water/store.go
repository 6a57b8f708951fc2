package water

import "math"

// layerM is the depth of the layer that dries into the air. [FAO56] p. 144
// gives 0.10 to 0.15 m.
const layerM = 0.10

// store is the water of one space: a surface layer that air and roots share,
// the medium below it, and a reservoir that feeds both from below. Litres.
//
// Two stores where [FAO56] keeps one and a marker, so that more water can never
// leave a space drier. Roots take from each in the measure of what it holds.
type store struct {
	surface, deep, tank          float64
	surfaceCap, deepCap, tankCap float64
	surfaceWick, deepWick        float64 // filled so far from the tank
	areaM2                       float64
	p                            float64 // share used before it is felt
	readyShare                   float64 // REW over TEW
}

// flows is where the water of a step went, litres.
type flows struct{ rain, given, drained, evaporated, drunk float64 }

func (f *flows) add(g flows) {
	f.rain += g.rain
	f.given += g.given
	f.drained += g.drained
	f.evaporated += g.evaporated
	f.drunk += g.drunk
}

func (s *store) capacity() float64 { return s.surfaceCap + s.deepCap }
func (s *store) held() float64     { return s.surface + s.deep }
func (s *store) total() float64    { return s.held() + s.tank }

// fill sets the medium to a share of full.
func (s *store) fill(share float64) {
	s.surface, s.deep = s.surfaceCap*share, s.deepCap*share
}

// pour puts water on top; what does not fit runs down, into the tank and then
// out. It returns what ran out.
func (s *store) pour(litres float64) (out float64) {
	in := min(litres, s.surfaceCap-s.surface)
	s.surface += in
	litres -= in
	in = min(litres, s.deepCap-s.deep)
	s.deep += in
	litres -= in
	in = min(litres, s.tankCap-s.tank)
	s.tank += in
	return litres - in
}

// wick lifts water from the tank to where it reaches.
func (s *store) wick() {
	if s.tank <= 0 {
		return
	}
	up := min(s.tank, max(0, s.deepWick-s.deep))
	s.deep += up
	s.tank -= up
	up = min(s.tank, max(0, s.surfaceWick-s.surface))
	s.surface += up
	s.tank -= up
}

// step passes some hours: rain, then what air and leaves would take with
// water enough, litres.
func (s *store) step(rainL, airL, leafL float64) flows {
	f := flows{rain: rainL}
	if rainL > 0 {
		f.drained = s.pour(rainL)
	}
	s.wick()
	was := s.surface
	s.surface = s.driesTo(airL)
	f.evaporated = was - s.surface
	held := s.held()
	if held > 0 {
		left := Left(held, s.capacity(), s.p, leafL)
		f.drunk = held - left
		s.surface *= left / held
		s.deep *= left / held
		// The division rounds; the drunk water is what is gone.
		f.drunk = held - s.held()
	}
	s.wick()
	return f
}

// driesTo is the surface after the air has asked for so much: at full speed
// while its ready part lasts, then ever slower. [FAO56] eq. 74, followed
// without steps.
func (s *store) driesTo(airL float64) float64 {
	edge := s.surfaceCap * (1 - s.readyShare)
	w := s.surface
	if w <= 0 || airL <= 0 {
		return max(0, w)
	}
	if w > edge {
		if w-airL >= edge {
			return w - airL
		}
		airL -= w - edge
		w = edge
	}
	if edge <= 0 {
		return max(0, w-airL)
	}
	return w * math.Exp(-airL/edge)
}

// useShare is the share of its water a space may spend before it counts as
// dry: half, the trade's rule for pots and near the middle of [FAO56] table 22.
// Leaves feel it sooner or later, by their own p.
const useShare = 0.5

// dryL is the water left at which a space counts as dry.
func (s *store) dryL() float64 { return (1 - useShare) * s.capacity() }

// lostShare of what is left when it counts as dry: below this a plant is taken
// as lost. Our own choice; no source was found.
const lostShare = 0.25

func (s *store) lostL() float64 { return lostShare * s.dryL() }
