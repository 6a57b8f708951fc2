package stand

import "math"

// sizeCurve is a plant's size against its age in good days over the good days
// it needs to be ready: the expolinear curve of [GOUDRIAAN90],
// ln(1+exp(a(x-b))), exponential while leaves do not touch, straight once
// they cover the ground; 0 at x = 0 and 1 at x = 1.
type sizeCurve [sizeSteps + 1]float32

const (
	sizeSteps   = 96
	sizeEnd     = 1.5  // ages beyond this add nothing
	seedSteep   = 12.0 // a for plants from seed: about two doublings in each sixth of the way
	seedTouch   = 0.55 // b: leaves touch a little past the middle
	startSteep  = 8.0  // the same for plants set out or planted, which begin larger
	startTouch  = 0.40
	coverPower  = 0.67 // ground covered grows as the two-thirds power of mass
	heightPower = 0.5
	leastShare  = 0.05 // of its final ground, held from sowing on
)

func newSizeCurve(steep, touch float64) *sizeCurve {
	f := func(x float64) float64 { return math.Log1p(math.Exp(steep * (x - touch))) }
	var s sizeCurve
	zero, one := f(0), f(1)
	for i := range s {
		s[i] = float32((f(float64(i)*sizeEnd/sizeSteps) - zero) / (one - zero))
	}
	return &s
}

// power is the curve of a part that goes with a power of size, from least up
// to 1.
func (s *sizeCurve) power(p float64, least float32) *sizeCurve {
	var out sizeCurve
	for i, x := range s {
		out[i] = max(least, float32(math.Pow(math.Min(1, float64(x)), p)))
	}
	return &out
}

// at returns the size at age x; it stays level beyond sizeEnd.
func (s *sizeCurve) at(x float32) float32 {
	p := x * (sizeSteps / sizeEnd)
	i := int(p)
	if i < 0 {
		return 0
	}
	if i >= sizeSteps {
		return s[sizeSteps]
	}
	return s[i] + (s[i+1]-s[i])*(p-float32(i))
}

// age is the inverse of at, for sizes up to 1.
func (s *sizeCurve) age(size float32) float32 {
	for i := 1; i <= sizeSteps; i++ {
		if s[i] >= size {
			return (float32(i-1) + (size-s[i-1])/(s[i]-s[i-1])) * sizeEnd / sizeSteps
		}
	}
	return sizeEnd
}
