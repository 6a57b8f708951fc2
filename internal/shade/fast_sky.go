package shade

import "math"

// MolUnder returns the daily light, mol/m²/day, that a cell with light l in
// week w would get in a week whose mean global radiation on open level ground
// is globalMJ a day: one of twenty years' skies, say. Its diffuse share is that
// of [Erbs1982]'s monthly rule. The beam's course over the day is linear in the
// diffuse share but for its ends, so it is drawn through the clear and the mean
// day and need not be thrown anew: within 1 %, or 5 % where mean days are as
// clear as clear ones, so that only one course is known.
func (c *Course) MolUnder(w int, l CellLight, globalMJ float64) float64 {
	k := &c.weeks[w]
	global := max(0, globalMJ) * MolPerMJ
	if global == 0 {
		return 0
	}
	diffuse := k.sums.meanDiffuse(globalMJ)
	return global * (diffuse*l.SkyView + k.beamShare(l, diffuse))
}

// beamShare is the beam a cell gets, as a share of the open field's global
// light, under a sky of a given diffuse share.
func (k *weekSun) beamShare(l CellLight, diffuse float64) float64 {
	part := func(q int, mol float64) float64 {
		if k.open[q] <= 0 {
			return 0
		}
		return max(0, mol-k.sky[q]*l.SkyView) / k.open[q]
	}
	clear, mean := part(0, l.MolClear), part(1, l.MolMean)
	a, b := k.diffuse[0], k.diffuse[1]
	if k.open[1] <= 0 || math.Abs(b-a) < 0.02 { // one sky only
		if a >= 1 {
			return 0
		}
		return clear * (1 - diffuse) / (1 - a)
	}
	return max(0, clear+(mean-clear)*(diffuse-a)/(b-a))
}
