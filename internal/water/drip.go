package water

// LineRate is how fast emitters put water on, mm/h (litres per m2 and hour):
// each emitter serves its spacing along the line times the space between
// lines. 0 without spacing.
func LineRate(emitterLH, spacingM, betweenM float64) float64 {
	if spacingM <= 0 || betweenM <= 0 {
		return 0
	}
	return emitterLH / (spacingM * betweenM)
}

// TapeRate is LineRate for a tape sold by its flow per length, L/h per m, over
// a bed of a width.
func TapeRate(flowLHPerM, bedWidthM float64) float64 {
	if bedWidthM <= 0 {
		return 0
	}
	return flowLHPerM / bedWidthM
}

// GrossMM returns what to put on so that netMM stays: efficiency is the share
// that stays.
func GrossMM(netMM, efficiency float64) float64 {
	if efficiency <= 0 {
		return 0
	}
	return netMM / efficiency
}

// Minutes returns how long a rate of mm/h (or L/h) takes for mm (or L); ok is
// false when the line gives nothing.
func Minutes(amount, perHour float64) (minutes float64, ok bool) {
	if perHour <= 0 {
		return 0, false
	}
	return 60 * amount / perHour, true
}

// TierShares says how the water given at the top of a tiered planter ends up:
// the share each tier keeps, top first, measured once by counting drips. What
// is left runs out at the bottom.
//
// TierGiveL returns the litres to give at the top so that every tier gets its
// need, and what each then gets. ok is false when a tier in need gets nothing.
func TierGiveL(needL, shares []float64) (giveL float64, getsL []float64, ok bool) {
	if len(needL) != len(shares) {
		panic("water: tiers and shares differ in number")
	}
	for i, n := range needL {
		if n <= 0 {
			continue
		}
		if shares[i] <= 0 {
			return 0, nil, false
		}
		giveL = max(giveL, n/shares[i])
	}
	for _, s := range shares {
		getsL = append(getsL, giveL*s)
	}
	return giveL, getsL, true
}
