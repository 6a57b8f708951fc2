package stand

import "bedweek/internal/crop"

const (
	// A cool crop is lost when the mean of four weeks stands this far above the
	// warmest monthly mean it is printed to bear ([KNOTT97-TEMP]: 23.9 °C, onions
	// and their kin 29.4). The 4.5 °C is an assumption.
	coolMonthC  = 23.9
	onionMonthC = 29.4
	monthSlackC = 4.5

	spellDays = 28

	heatOverMean = 2.5 // a crop's printed heat by day lies so far over the month it bears (assumption)

	scorched = -100 // a night no plant outlives: how the table tells a spell too hot

	// The ground shields a crown in a bed; pots freeze through (common practice:
	// wrap or bury them). Litres from which it begins and is full, assumptions.
	potL = 50.0
	bedL = 250.0
)

// killing is the coldest that what lives through the night of index i meets,
// in °C: the air at night with any cover, or the ground for crops that come
// again from crown, root or clove. Spells too hot for cool crops kill alike.
func (a *Air) killing(c *crop.Crop, i int, lo float64) float32 {
	if a.env.Indoor {
		return 20
	}
	if a.tooHotMonth(c, i) {
		return scorched
	}
	night := lo + a.env.Cover
	if ground := float64(a.soil[i]); c.Crown && ground > night {
		night += (ground - night) * clamp01((a.env.VolumeL-potL)/(bedL-potL))
	}
	return float32(night)
}

// tooHotMonth reports the end of four weeks too hot for a cool crop of a season.
func (a *Air) tooHotMonth(c *crop.Crop, i int) bool {
	if c.Warm || c.Perennial || a.env.Indoor {
		return false
	}
	return a.mean28[i] > hottestMonth(c)
}

// hottestMonth is the mean of four weeks that a cool crop of a season bears, °C.
func hottestMonth(c *crop.Crop) float32 {
	most := float32(coolMonthC + monthSlackC)
	if c.Family == "Amaryllidaceae" {
		most = onionMonthC + monthSlackC
	}
	if c.HeatC.Known() { // collards and their like bear more
		most = max(most, float32(c.HeatC.Value-heatOverMean))
	}
	return most
}
