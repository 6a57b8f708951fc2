package water

import "math"

// TotalMM returns TAW, the water between full and wilting that roots reach.
// [FAO56] eq. 82.
func TotalMM(thetaFull, thetaWilt, rootM float64) float64 {
	return 1000 * max(0, thetaFull-thetaWilt) * rootM
}

// ReadyMM returns RAW, the part of TAW used before a crop feels it. [FAO56]
// eq. 83.
func ReadyMM(totalMM, p float64) float64 { return p * totalMM }

// AdjustP carries p from 5 mm a day to another demand, held in 0.1 to 0.8.
// [FAO56] table 22, footnote.
func AdjustP(p, etcMM float64) float64 {
	return max(0.1, min(0.8, p+0.04*(5-etcMM)))
}

// Ks is the share of its demand a crop still takes up at a depletion, 0 to 1.
// [FAO56] eq. 84. The depletion is that at the start of the day.
func Ks(totalMM, readyMM, depletionMM float64) float64 {
	if depletionMM <= readyMM {
		return 1
	}
	if totalMM <= readyMM {
		return 0
	}
	return max(0, min(1, (totalMM-depletionMM)/(totalMM-readyMM)))
}

// Thirst is one day of a drying series.
type Thirst struct{ Ks, TakenMM, DepletionMM float64 }

// DrySpell runs days without water from a depletion, in the paper's daily steps
// ([FAO56] example 37): Ks from the start of each day.
func DrySpell(totalMM, p, depletionMM, demandMM float64, days int) []Thirst {
	out := make([]Thirst, days)
	ready := ReadyMM(totalMM, p)
	for i := range out {
		ks := Ks(totalMM, ready, depletionMM)
		taken := min(ks*demandMM, max(0, totalMM-depletionMM))
		depletionMM += taken
		out[i] = Thirst{ks, taken, depletionMM}
	}
	return out
}

// Left returns what is left of a store of capL after a demand, with Ks
// falling as it empties: eq. 84 followed without steps. More in the store
// always leaves more, whatever the step.
func Left(storeL, capL, p, demandL float64) float64 {
	if storeL <= 0 || demandL <= 0 {
		return max(0, storeL)
	}
	edge := (1 - p) * capL // below it Ks < 1
	if storeL > edge {
		if storeL-demandL >= edge {
			return storeL - demandL
		}
		demandL -= storeL - edge
		storeL = edge
	}
	if edge <= 0 {
		return max(0, storeL-demandL)
	}
	return storeL * math.Exp(-demandL/edge)
}

// Root is a root zone in daily steps.
type Root struct{ TotalMM, P, DepletionMM float64 }

// RootDay is what happened in a root zone on a day, mm.
type RootDay struct{ GivenMM, PercolatedMM, TakenMM, DepletionMM float64 }

// Step runs one day: if the depletion has reached the ready water and refill
// is asked for, water by exactly the depletion in the morning; then the rain,
// what does not fit percolates; then the crop takes Ks times its demand.
// [FAO56] eq. 85.
func (r *Root) Step(rainMM, demandMM float64, refill bool) RootDay {
	var d RootDay
	ready := ReadyMM(r.TotalMM, r.P)
	if refill && r.DepletionMM >= ready {
		d.GivenMM = r.DepletionMM
	}
	left := r.DepletionMM - d.GivenMM - rainMM
	d.PercolatedMM = max(0, -left)
	left = max(0, left)
	d.TakenMM = min(Ks(r.TotalMM, ready, left)*demandMM, r.TotalMM-left)
	r.DepletionMM = left + d.TakenMM
	d.DepletionMM = r.DepletionMM
	return d
}
