package weather

import "math"

// Coefficients of [FAO56] eq. 50 for radiation from the daily range.
const (
	krsInterior = 0.16
	krsCoast    = 0.19
)

// solarConstant is Gsc of [FAO56] eq. 21, MJ/m2/min.
const solarConstant = 0.0820

// InverseDistance returns dr, the inverse relative distance earth to sun, on
// day of the year doy. [FAO56] eq. 23.
func InverseDistance(doy int) float64 {
	return 1 + 0.033*math.Cos(2*math.Pi/365*float64(doy))
}

// DeclinationRad returns the sun's declination, radians. [FAO56] eq. 24, good
// to half a degree; light on surfaces uses package sun instead.
func DeclinationRad(doy int) float64 {
	return 0.409 * math.Sin(2*math.Pi/365*float64(doy)-1.39)
}

// SunsetAngleRad returns ωs, the hour angle of sunset, radians: 0 when the sun
// stays down, π when it stays up. [FAO56] eq. 25.
func SunsetAngleRad(latDeg float64, doy int) float64 {
	x := -math.Tan(latDeg*math.Pi/180) * math.Tan(DeclinationRad(doy))
	return math.Acos(max(-1, min(1, x)))
}

// DaylightH returns N, the hours from sunrise to sunset with the sun's centre
// and no air. [FAO56] eq. 34.
func DaylightH(latDeg float64, doy int) float64 {
	return 24 / math.Pi * SunsetAngleRad(latDeg, doy)
}

// RaMJ returns Ra, the radiation above the air on the level, MJ/m2/day.
// [FAO56] eq. 21. It is never negative.
func RaMJ(latDeg float64, doy int) float64 {
	phi, delta, ws := latDeg*math.Pi/180, DeclinationRad(doy), SunsetAngleRad(latDeg, doy)
	ra := 24 * 60 / math.Pi * solarConstant * InverseDistance(doy) *
		(ws*math.Sin(phi)*math.Sin(delta) + math.Cos(phi)*math.Cos(delta)*math.Sin(ws))
	return max(0, ra)
}

// ClearSkyMJ returns Rso, the radiation under a clear sky. [FAO56] eq. 37.
func ClearSkyMJ(raMJ, elevM float64) float64 {
	return (0.75 + 2e-5*elevM) * raMJ
}

// HargreavesRadMJ returns the radiation worked out from the daily range,
// bounded by the clear sky. [FAO56] eq. 50. Single days are rough: expect
// errors of a fifth; means over a week or more are what it is for.
func HargreavesRadMJ(tmaxC, tminC float64, site Site, doy int) float64 {
	krs := krsInterior
	if site.Coastal {
		krs = krsCoast
	}
	ra := RaMJ(site.LatDeg, doy)
	return min(RangeRadMJ(krs, tmaxC, tminC, ra), ClearSkyMJ(ra, site.ElevM))
}

// SunshineRadMJ returns the radiation from n hours of sunshine of a possible
// N. [FAO56] eq. 35 with the constants it recommends. In polar night it is 0.
func SunshineRadMJ(nHours, daylightH, raMJ float64) float64 {
	return SunshineRadWithMJ(0.25, 0.50, nHours, daylightH, raMJ)
}

// stationWindM is the height of a weather station's wind vane when the file
// does not say: 10 m, the rule of the World Meteorological Organization.
const stationWindM = 10

// WindAt2M turns wind measured at height z (m) into wind at 2 m over short
// grass. [FAO56] eq. 47. Heights below 0.5 m are taken as 0.5 m.
func WindAt2M(windMS, zM float64) float64 {
	return windMS * 4.87 / math.Log(67.8*max(0.5, zM)-5.42)
}
