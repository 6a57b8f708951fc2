package water

// LeachingFraction returns drained over entered water. [IFAS]. ok is false
// when nothing entered.
func LeachingFraction(enteredL, drainedL float64) (fraction float64, ok bool) {
	if enteredL <= 0 {
		return 0, false
	}
	return drainedL / enteredL, true
}

// RetunedMinutes returns the run time that turns a measured leaching fraction
// into a wanted one: the water kept is what the plants used, and stays. [IFAS]
func RetunedMinutes(minutes, measured, wanted float64) (float64, bool) {
	if wanted >= 1 || measured >= 1 {
		return 0, false
	}
	return minutes * (1 - measured) / (1 - wanted), true
}

// LeachGiveL returns what to give so that a fraction of it drains: the need
// over one less the fraction, not the need and a bit. ok is false for
// fractions of 1 and more.
func LeachGiveL(needL, fraction float64) (giveL, drainsL float64, ok bool) {
	if fraction >= 1 || fraction < 0 {
		return 0, 0, false
	}
	giveL = needL / (1 - fraction)
	return giveL, giveL - needL, true
}

// LeachingRequirement returns the least share of water that must drain to hold
// the soil at ece (saturated paste) with water of ecw, dS/m. [FAO29]: ECw over
// 5 ECe less ECw. ok is false when no share does.
func LeachingRequirement(ecw, ece float64) (share float64, ok bool) {
	under := 5*ece - ecw
	if ecw < 0 || under <= 0 || ecw >= under {
		return 0, false
	}
	return ecw / under, true
}

// SaltYield returns the share of its yield a crop keeps in soil of ece dS/m:
// all of it up to a threshold, then a straight fall of slopePct per dS/m.
// E. V. Maas and G. J. Hoffman, Journal of the Irrigation and Drainage
// Division 103 (1977).
func SaltYield(ece, threshold, slopePct float64) float64 {
	return max(0, min(1, 1-slopePct/100*(ece-threshold)))
}

// flushEC is the pour-through reading above which container growers leach:
// Michigan State University Extension gives 3.5 dS/m.
const flushEC = 3.5

// flushShare is the share to run through when leaching: the same source, 20 %.
const flushShare = 0.2

// Flush says whether a reading of the water that runs out, dS/m, asks for
// leaching, and the litres to give, twice, for a space that lacks lacksL.
func Flush(ecOut, lacksL float64) (due bool, giveL float64) {
	if ecOut <= flushEC {
		return false, 0
	}
	giveL, _, _ = LeachGiveL(lacksL, flushShare)
	return true, giveL
}
