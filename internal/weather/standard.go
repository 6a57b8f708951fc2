package weather

import "math"

// Reference is the surface a reference evapotranspiration speaks of.
type Reference int

// The reference surfaces. Short grass of 12 cm is that of [FAO56]; tall is
// lucerne of 50 cm in [ASCE05], ASCE-EWRI, The ASCE Standardized Reference
// Evapotranspiration Equation (2005).
const (
	Short Reference = iota
	Tall
)

// daily returns Cn and Cd for whole days. [ASCE05] table 1; the short pair is
// that of [FAO56] eq. 6 as well.
func (r Reference) daily() (cn, cd float64) {
	if r == Tall {
		return 1600, 0.38
	}
	return 900, 0.34
}

// combination is the Penman-Monteith equation in the form [FAO56] and
// [ASCE05] share: mm over the time in which netMJ and groundMJ were received.
// The two parts are what radiation and what dry moving air take up.
func combination(cn, cd, tC, vpdKPa, windMS, netMJ, gammaKPa float64) (radMM, airMM float64) {
	delta := SlopeKPa(tC)
	under := delta + gammaKPa*(1+cd*windMS)
	return latentInvMJ * delta * netMJ / under, gammaKPa * cn / (tC + 273) * windMS * vpdKPa / under
}

// StandardDayMM returns the standardised reference evapotranspiration of a
// day, mm, never below 0. [ASCE05] eq. 1. netMJ is net radiation less heat
// into the ground, which is about 0 over a day.
func StandardDayMM(ref Reference, tmaxC, tminC, eaKPa, windMS, netMJ, elevM float64) float64 {
	cn, cd := ref.daily()
	rad, air := combination(cn, cd, (tmaxC+tminC)/2, MeanSaturationKPa(tmaxC, tminC)-eaKPa,
		windMS, netMJ, PsychrometricKPa(elevM))
	return max(0, rad+air)
}

// ET0Parts returns what of a day's reference evapotranspiration is driven by
// radiation and what by dry moving air, mm. Their sum, at least 0, is ET0MM;
// a place in the shade has a share of the first and, the wind being equal,
// all of the second.
func ET0Parts(day Day, site Site, doy int) (radMM, airMM float64) {
	ea := SaturationKPa(day.TminC)
	rso := ClearSkyMJ(RaMJ(site.LatDeg, doy), site.ElevM)
	net := NetShortwaveMJ(day.RadMJ) - NetLongwaveMJ(day.TmaxC, day.TminC, ea, day.RadMJ, rso)
	cn, cd := Short.daily()
	return combination(cn, cd, (day.TmaxC+day.TminC)/2, MeanSaturationKPa(day.TmaxC, day.TminC)-ea,
		max(leastWind, day.WindMS), net, PsychrometricKPa(site.ElevM))
}

func rootRange(tmaxC, tminC float64) float64 { return math.Sqrt(max(0, tmaxC-tminC)) }
