package crop

// Fit is a straight line through rates of emergence: the rate (1/days) rises
// by 1/DegreeDays for each degree above BaseC. It holds up to the optimum only.
type Fit struct {
	BaseC      float64 // °C at which the line gives no progress
	DegreeDays float64 // °C·day above BaseC to emergence
	R2         float64 // share of the spread of the rates explained, 0 to 1
}

// FitThermal fits rates, not days, on soil temperature by least squares. It
// answers false with fewer than two temperatures, lists of unequal length, a
// time that is not above zero, or a line that does not rise.
func FitThermal(soilC, days []float64) (Fit, bool) {
	n := float64(len(soilC))
	if len(soilC) < 2 || len(soilC) != len(days) {
		return Fit{}, false
	}
	var st, sr float64
	for i := range soilC {
		if days[i] <= 0 {
			return Fit{}, false
		}
		st += soilC[i]
		sr += 1 / days[i]
	}
	mt, mr := st/n, sr/n
	var tt, tr, rr float64
	for i := range soilC {
		t, r := soilC[i]-mt, 1/days[i]-mr
		tt += t * t
		tr += t * r
		rr += r * r
	}
	if tt <= 0 || tr <= 0 || rr <= 0 {
		return Fit{}, false
	}
	slope := tr / tt
	return Fit{BaseC: mt - mr/slope, DegreeDays: 1 / slope, R2: tr * tr / (tt * rr)}, true
}
