package water

// WickShare returns the share of a medium's depth that a reservoir keeps moist
// from below: all of it while it is no deeper than water rises in it.
func WickShare(depthM, riseM float64) float64 {
	if depthM <= 0 {
		return 0
	}
	return max(0, min(1, riseM/depthM))
}

// TopWaterUntilM reports how deep roots must go before a reservoir feeds them:
// the dry part above the rise. 0 = from the first day.
func TopWaterUntilM(depthM, riseM float64) float64 { return max(0, depthM-riseM) }

// ReservoirL returns the litres in a reservoir of a height under its overflow
// hole; void is the share not filled by gravel or pipes.
func ReservoirL(areaM2, heightM, void float64) float64 {
	return 1000 * max(0, areaM2*heightM*void)
}
