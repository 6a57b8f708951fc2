package water

import "math"

// Way is how a space is watered.
type Way string

// Ways of watering.
const (
	Can       Way = "can"
	Drip      Way = "drip"
	Reservoir Way = "reservoir"
	Rain      Way = "rain" // by nothing else
)

// Space is one growing space as water meets it.
type Space struct {
	ID             string
	AreaM2, DepthM float64
	VolumeL        float64
	Medium         Medium
	Way            Way

	LeafM2  []float64 // leaf spread by day from the sky's start; the last one holds on
	Kcb     float64   // of the leaves, [FAO56] table 17
	HeightM float64
	P       float64 // [FAO56] table 22
	RootM   float64 // how deep roots reach; 0 = all the medium

	Light     [12]float64 // share of the open sky's light, by month
	RainShare float64     // of the rain that falls on its area
	Exposure  Range       // what wind around it and warm walls do to its demand; 1 = a bed among others
	Mulch     float64     // share of its evaporation a mulch lets pass; 0 = none lies on it

	TankL float64 // reservoir, full
	RiseM Range   // from it; not known = the medium's

	RateLH float64 // of its line, all emitters; 0 = none
	Wet    float64 // share of the surface its line wets; 0 = all
}

// leaf returns the leaf spread on a day.
func (s *Space) leaf(day int) float64 {
	if len(s.LeafM2) == 0 {
		return 0
	}
	return max(0, s.LeafM2[max(0, min(day, len(s.LeafM2)-1))])
}

// draw is one future's belief of what is not known of a space.
type draw struct {
	holds, rise, exposure, leaf float64
	rate                        float64 // this space against the reckoning, learned
	fullness, tank              float64 // at the start, shares
}

// newStore builds the space's stores as a future believes them.
func (s *Space) newStore(d draw) store {
	root := s.DepthM
	if s.RootM > 0 {
		root = min(root, s.RootM)
	}
	share := 0.0
	if s.DepthM > 0 {
		share = root / s.DepthM
	}
	capacity := max(0, s.VolumeL*share*d.holds)
	top := 0.0
	if root > 0 {
		top = min(1, layerM/root)
	}
	w := store{surfaceCap: capacity * top, deepCap: capacity * (1 - top), tankCap: s.TankL, areaM2: s.AreaM2,
		p: min(0.9, max(0.1, s.P)), readyShare: readyShare(s.Medium)}
	w.fill(d.fullness)
	if s.TankL > 0 {
		// Heights within the root zone, counted from its bottom.
		climbs := max(0, min(root, d.rise-(s.DepthM-root)))
		below := max(0, root-layerM)
		if below > 0 {
			w.deepWick = w.deepCap * min(1, climbs/below)
		}
		if layer := root - below; layer > 0 {
			w.surfaceWick = w.surfaceCap * max(0, min(1, (climbs-below)/layer))
		}
		w.tank = s.TankL * d.tank
	}
	return w
}

// readyShare is REW over TEW of a medium; loam's when it is not known.
func readyShare(m Medium) float64 {
	if !m.REWMM.Known || !m.TEWMM.Known {
		return 0.47 // middle of loam's 8-10 of 16-22 mm, [FAO56] table 19
	}
	return min(1, m.REWMM.At(0.5)/m.TEWMM.At(0.5))
}

// thirst is a space's demand with what does not change from day to day worked
// out.
type thirst struct {
	s            *Space
	tall         float64 // height term of [FAO56] eq. 62
	factor, leaf float64
	wet          float64
}

func (s *Space) thirst(d draw) thirst {
	t := thirst{s: s, tall: heightTerm(s.HeightM), factor: d.exposure * d.rate, leaf: d.leaf, wet: 1}
	if s.Wet > 0 {
		t.wet = s.Wet
	}
	return t
}

// demand returns what air and leaves ask of a space over a day, litres, with
// water enough. The leaves ask by their own spread, the air by what they leave
// bare. [FAO56] eq. 69-75 with areas for shares.
func (t *thirst) demand(sky skyDay, month, day int) (airL, leafL float64) {
	s := t.s
	leaf := s.leaf(day) * t.leaf
	et := sky.et0MM(s.Light[month]) * t.factor
	kcb := max(0, s.Kcb+sky.climate*t.tall)
	leafL = kcb * et * leaf
	if s.AreaM2 <= 0 {
		return 0, leafL
	}
	cover := min(0.99, leaf/s.AreaM2)
	kcMax := max(1.2+sky.climate*t.tall, kcb*cover+0.05)
	airL = Ke(1, kcMax, kcb*cover, Exposed(cover, t.wet, s.Wet > 0)) * et * s.AreaM2
	if s.Mulch > 0 {
		airL *= s.Mulch
	}
	return airL, leafL
}

// lackL is what it would take to fill a store and its tank.
func (s *store) lackL() float64 { return max(0, s.capacity()-s.held()) + max(0, s.tankCap-s.tank) }

// finite guards against a space no one could have.
func (s *Space) finite() bool {
	for _, v := range []float64{s.AreaM2, s.DepthM, s.VolumeL, s.Kcb, s.HeightM, s.P, s.RootM, s.RainShare, s.TankL, s.RateLH, s.Wet, s.Mulch} {
		if math.IsNaN(v) || math.IsInf(v, 0) || v < 0 {
			return false
		}
	}
	return true
}
