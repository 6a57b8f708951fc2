package stand

import (
	"math"

	"bedweek/internal/crop"
)

// dayShape holds the sine of eight even hours of a day, so that a rate is
// averaged over the day's course and not taken at its mean.
var dayShape = [8]float64{-0.9808, -0.8315, -0.5556, -0.1951, 0.1951, 0.5556, 0.8315, 0.9808}

const (
	refSwingC = 5.0 // half the daily range in the season the printed days hold for
	// Warm crops' printed days fit northern gardens better when held to be true
	// this far below the book's reference (found on the record of one maritime
	// place; within its doubt of 20-22 °C).
	warmRefC = 1.5
)

// warmth answers to temperature: nothing below base, most at the optimum,
// nothing again at the ceiling, straight between ([FAO66]'s cardinal
// temperatures), scaled to 1 at the crop's reference.
type warmth struct {
	base, opt, ceil   float64
	up, down, perUnit float64
}

func newWarmth(c *crop.Crop) warmth {
	w := warmth{base: c.BaseC.Value, opt: c.OptC.Value, ceil: c.CeilC.Value}
	if w.opt <= w.base {
		w.opt = w.base + 18
	}
	if w.ceil <= w.opt {
		w.ceil = w.opt + 10
	}
	w.up, w.down = 1/(w.opt-w.base), 1/(w.ceil-w.opt)
	w.perUnit = 1
	ref := c.RefC
	if c.Warm {
		ref -= warmRefC
	}
	if ref <= w.base {
		ref = (w.base + w.opt) / 2
	}
	w.perUnit = 1 / w.over(ref-refSwingC, ref+refSwingC)
	return w
}

// over is the day's rate in reference days, for its lowest and highest.
func (w *warmth) over(lo, hi float64) float64 {
	mid, half := (lo+hi)/2, (hi-lo)/2
	if lo >= w.base && hi <= w.opt {
		return (mid - w.base) * w.up * w.perUnit
	}
	sum := 0.0
	for _, s := range dayShape {
		t := mid + half*s
		switch {
		case t <= w.base || t >= w.ceil:
		case t < w.opt:
			sum += (t - w.base) * w.up
		default:
			sum += (w.ceil - t) * w.down
		}
	}
	return sum * w.perUnit / float64(len(dayShape))
}

// lightCurve answers to the day's light: straight at first, then flattening
// as a full leaf cover does, scaled to 1 in the bright season the printed
// days and yields hold for.
type lightCurve struct{ half, scale float64 }

const (
	brightDLI  = 35.0 // mol/m2/day of a good growing season in temperate gardens
	halfOfBest = 1.5  // light for half of the greatest growth, in the crop's DLIBest
	lampBest   = 14.0 // DLIBest of a crop whose book entry gives none: leafy crops
)

func newLightCurve(c *crop.Crop, indoor bool) lightCurve {
	best := c.DLIBest.Value
	if best <= 0 {
		best = lampBest
		if c.Warm {
			best = 25
		}
	}
	ref := math.Max(best, math.Min(brightDLI, 2*best))
	if indoor {
		ref = best
	}
	half := halfOfBest * best
	return lightCurve{half: half, scale: (ref + half) / ref}
}

func (l *lightCurve) at(dli float64) float64 { return dli / (dli + l.half) * l.scale }

// clamp01 keeps x within 0 and 1.
func clamp01(x float64) float64 { return math.Max(0, math.Min(1, x)) }

// setShare is the share of flowers that set on a day with these
// temperatures. Limits are printed as the point where set fails; it fades
// over fadeC degrees on either side.
func setShare(c *crop.Crop, lo, hi float64) float64 {
	const (
		fadeC  = 3.0
		enough = 0.5 // plants flower more than they can carry (common practice)
	)
	spare := enough
	if heatShy(c) {
		spare = 1
	}
	s := 1.0
	if c.FruitMaxDay.Known() {
		s *= clamp01((c.FruitMaxDay.Value + fadeC - hi) / (2 * fadeC))
	}
	if c.FruitMaxNight.Known() {
		s *= clamp01((c.FruitMaxNight.Value + fadeC - lo) / (2 * fadeC))
	}
	if c.FruitMinNight.Known() {
		s *= clamp01((lo - c.FruitMinNight.Value + fadeC) / (2 * fadeC))
	}
	return min(1, s/spare)
}

// lostInFull is what a day of lost flowers takes from the picking days of favas,
// which flower once (assumption; later beans make up 1 - ageSpend of it).
const lostInFull = 1.0

// heatShy reports peas and favas: what heat costs them in flowers they do not
// make up with later ones ([PEAHEAT], [FABAHEAT]: yield falls from the first warm days).
func heatShy(c *crop.Crop) bool {
	return c.Class == "legume" && !c.Warm && c.FruitMaxDay.Known()
}
