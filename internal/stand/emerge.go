package stand

import "bedweek/internal/crop"

// emergence reads the crop's table: the share of the way to emergence done in
// a day at this seed-zone temperature, and the share of seeds that come up.
// Rates are joined by straight lines between the table's temperatures and
// fall to nothing at SoilMin and SoilMax.
type emergence struct {
	temp, rate []float64
	temp2, pct []float64
}

func newEmergence(c *crop.Crop) emergence {
	var e emergence
	for _, g := range c.Germ {
		if g.HasDays && g.Days > 0 {
			e.temp, e.rate = append(e.temp, g.SoilC), append(e.rate, 1/g.Days)
		}
		if g.HasPct {
			e.temp2, e.pct = append(e.temp2, g.SoilC), append(e.pct, g.Pct/100)
		}
	}
	lo, hi := c.SoilMin.Value, c.SoilMax.Value
	if !c.SoilMax.Known() {
		hi = 38
	}
	if len(e.temp) == 0 { // no table: ten days at the middle of its range
		mid := (lo + hi) / 2
		e.temp, e.rate = []float64{mid}, []float64{0.1}
	}
	e.temp, e.rate = closeEnds(e.temp, e.rate, lo, hi)
	if len(e.temp2) == 0 {
		e.temp2, e.pct = []float64{lo + 4, hi - 4}, []float64{0.8, 0.8}
	}
	e.temp2, e.pct = closeEnds(e.temp2, e.pct, lo-3, hi+3)
	return e
}

// closeEnds adds a nought at each end when the table does not reach it.
func closeEnds(t, v []float64, lo, hi float64) ([]float64, []float64) {
	if lo < t[0] {
		t, v = append([]float64{lo}, t...), append([]float64{0}, v...)
	}
	if n := len(t); hi > t[n-1] {
		t, v = append(t, hi), append(v, 0)
	}
	return t, v
}

func line(t, v []float64, x float64) float64 {
	if x <= t[0] {
		if x == t[0] {
			return v[0]
		}
		return 0
	}
	for i := 1; i < len(t); i++ {
		if x <= t[i] {
			return v[i-1] + (v[i]-v[i-1])*(x-t[i-1])/(t[i]-t[i-1])
		}
	}
	return 0
}

func (e *emergence) at(soilC float64) (rate, share float64) {
	return line(e.temp, e.rate, soilC), line(e.temp2, e.pct, soilC)
}

// refDays is the time from sowing to emergence at the reference temperature.
func (e *emergence) refDays(refC float64) float64 {
	if r, _ := e.at(refC); r > 0 {
		return min(25, fieldSlow/r)
	}
	return 10
}
