package weather

// Soil at seed depth, 5 to 10 cm, bare and moist. Two published pieces, both
// from memory: the daily mean the ground strives for is that of bare soil in
// the EPIC and SWAT models, air temperature plus a share of the half range
// that grows with radiation (J. R. Williams, C. A. Jones and P. T. Dyke, A
// modeling approach to determining the relationship between erosion and soil
// productivity, Transactions of the ASAE 27, 1984); and a quarter of the way
// is gone each day, the rate for 10 cm of D. Zheng, E. R. Hunt and S. W.
// Running, A daily soil temperature model based on air temperature and
// precipitation for continental applications, Climate Research 2, 1993.
const (
	soilRate   = 0.25
	soilAlbedo = 0.2  // moist loam; common practice
	frozenRate = 0.06 // below freezing the water's own heat holds the soil; an assumption
	soilStart  = 10   // days whose mean the first day begins from
)

// SoilC returns the daily mean soil temperature at seed depth for a run of
// days. startYearDay is the day of the year of the first. The soil begins at
// the mean of the first ten days' aims, so trust the result from the second
// week on. Pots, mulch, covers and snow are the caller's affair.
//
// Expect 2 °C of error in open ground; more under snow, which is left out.
func SoilC(days []Day, startYearDay int, site Site) []float64 {
	out := make([]float64, len(days))
	if len(days) == 0 {
		return out
	}
	t := 0.0
	n := min(soilStart, len(days))
	for i := range n {
		t += soilAim(days[i], startYearDay+i, site) / float64(n)
	}
	for i, d := range days {
		rate := soilRate
		aim := soilAim(d, startYearDay+i, site)
		if t <= 0 && aim < 0 {
			rate = frozenRate
		}
		t += rate * (aim - t)
		out[i] = t
	}
	return out
}

// soilAim is the temperature bare soil strives for on a day. A day without
// radiation gets that worked out from its range.
func soilAim(d Day, yearDay int, site Site) float64 {
	rad := d.RadMJ
	if rad <= 0 {
		rad = HargreavesRadMJ(d.TmaxC, d.TminC, site, (yearDay-1)%365+1)
	}
	mean, half := (d.TmaxC+d.TminC)/2, (d.TmaxC-d.TminC)/2
	// SWAT theory, bare soil surface. Its winter cooling below the air is left
	// out: at seed depth the warmth from below makes up for it (an assumption).
	warming := min(1, max(0, (rad*(1-soilAlbedo)-14)/20))
	return mean + warming*half
}
