package water

// EvaporableMM returns TEW, the most a wet surface layer can lose to the air:
// down to half the wilting point. [FAO56] eq. 73.
func EvaporableMM(thetaFull, thetaWilt, layerM float64) float64 {
	return 1000 * max(0, thetaFull-0.5*thetaWilt) * layerM
}

// Kr is how freely a surface still dries, 1 to 0, at a depletion of its layer.
// readyMM is REW, lost at full speed. [FAO56] eq. 74.
func Kr(totalMM, readyMM, depletionMM float64) float64 {
	if depletionMM <= readyMM {
		return 1
	}
	if totalMM <= readyMM {
		return 0
	}
	return max(0, min(1, (totalMM-depletionMM)/(totalMM-readyMM)))
}

// Exposed returns few, the share of the surface both wet and bare. [FAO56]
// eq. 75. Under drip the leaves stand over the wet part, so the wet share
// shrinks with cover.
func Exposed(cover, wet float64, drip bool) float64 {
	if drip {
		wet *= 1 - 2.0/3*cover
	}
	return max(0.01, min(1-cover, wet))
}

// Ke returns the coefficient of evaporation from the surface. [FAO56] eq. 71.
func Ke(kr, kcMax, kcb, exposed float64) float64 {
	return max(0, min(kr*(kcMax-kcb), exposed*kcMax))
}

// rainWetsMM is the rain that wets a whole surface rather than the circles of
// its emitters. [FAO56] p. 151.
const rainWetsMM = 3

// Surface is the layer that dries, in daily steps.
type Surface struct {
	TotalMM, ReadyMM float64 // TEW, REW
	DepletionMM      float64
	Wet              float64 // fw, share wetted by the last water; 1 at first
}

// SurfaceDay is a day over a surface with a crop.
type SurfaceDay struct {
	KcMax, Cover, Wet float64 // Cover is fc; Wet is fw of a watering
	RainMM, GivenMM   float64 // GivenMM over the whole ground
	ET0MM, Kcb        float64
}

// SurfaceLost is what a day took from a surface.
type SurfaceLost struct {
	Exposed, Kr, Ke                              float64
	EvaporatedMM, CropMM, DrainedMM, DepletionMM float64
}

// Step runs one day, water coming early. [FAO56] eq. 71-77, without what roots
// take from the layer and without runoff.
func (s *Surface) Step(d SurfaceDay) SurfaceLost {
	switch {
	case d.RainMM >= rainWetsMM:
		s.Wet = 1
	case d.GivenMM > 0:
		s.Wet = d.Wet
	}
	var out SurfaceLost
	out.Exposed = Exposed(d.Cover, s.Wet, false)
	came := d.RainMM
	if d.GivenMM > 0 && d.Wet > 0 {
		came += d.GivenMM / d.Wet
	}
	out.DrainedMM = max(0, came-s.DepletionMM)
	at := max(0, s.DepletionMM-came)
	out.Kr = Kr(s.TotalMM, s.ReadyMM, at)
	out.Ke = Ke(out.Kr, d.KcMax, d.Kcb, out.Exposed)
	out.EvaporatedMM = out.Ke * d.ET0MM
	out.CropMM = (out.Ke + d.Kcb) * d.ET0MM
	s.DepletionMM = min(s.TotalMM, at+out.EvaporatedMM/out.Exposed)
	out.DepletionMM = s.DepletionMM
	return out
}
