package weather

import "math"

// Values [FAO56] gives for what is not recorded.
const (
	albedoGrass  = 0.23
	defaultWind  = 2.0 // m/s, [FAO56] p. 63, mean of 2000 stations
	leastWind    = 0.5 // m/s, [FAO56] p. 63, air is never quite still
	stefanBoltz  = 4.903e-9
	latentInvMJ  = 0.408 // mm of water per MJ/m2, [FAO56] eq. 20
	kelvinOffset = 273.16
)

// SaturationKPa returns e°, the vapour pressure of air that can hold no more
// water at t °C. [FAO56] eq. 11.
func SaturationKPa(t float64) float64 { return 0.6108 * math.Exp(17.27*t/(t+237.3)) }

// MeanSaturationKPa returns es, the mean over the day's two extremes, not the
// pressure of the mean. [FAO56] eq. 12.
func MeanSaturationKPa(tmaxC, tminC float64) float64 {
	return (SaturationKPa(tmaxC) + SaturationKPa(tminC)) / 2
}

// SlopeKPa returns Δ, kPa/°C, at t °C. [FAO56] eq. 13.
func SlopeKPa(t float64) float64 {
	return 4098 * SaturationKPa(t) / ((t + 237.3) * (t + 237.3))
}

// PressureKPa returns the air pressure at a height above the sea. [FAO56] eq. 7.
func PressureKPa(elevM float64) float64 {
	return 101.3 * math.Pow((293-0.0065*elevM)/293, 5.26)
}

// PsychrometricKPa returns γ, kPa/°C. [FAO56] eq. 8.
func PsychrometricKPa(elevM float64) float64 { return 0.665e-3 * PressureKPa(elevM) }

// NetLongwaveMJ returns Rnl, the heat the grass sends to the sky. [FAO56]
// eq. 39. With no clear-sky radiation (polar night) the sky is taken as half
// clouded.
func NetLongwaveMJ(tmaxC, tminC, eaKPa, rsMJ, rsoMJ float64) float64 {
	tx, tn := tmaxC+kelvinOffset, tminC+kelvinOffset
	clear := 0.5
	if rsoMJ > 0 {
		clear = min(1, rsMJ/rsoMJ)
	}
	return stefanBoltz * (math.Pow(tx, 4) + math.Pow(tn, 4)) / 2 *
		(0.34 - 0.14*math.Sqrt(max(0, eaKPa))) * (1.35*clear - 0.35)
}

// PenmanMonteithMM returns the reference evapotranspiration of a day, mm.
// [FAO56] eq. 6. Heat into the ground g is about 0 for a day.
func PenmanMonteithMM(tmaxC, tminC, eaKPa, windMS, netMJ, gMJ, elevM float64) float64 {
	return StandardDayMM(Short, tmaxC, tminC, eaKPa, windMS, netMJ-gMJ, elevM)
}

// HargreavesMM returns the reference evapotranspiration from temperature
// alone, mm a day. [FAO56] eq. 52. It runs high in damp places and low in wind.
func HargreavesMM(tmaxC, tminC, raMJ float64) float64 {
	t := (tmaxC + tminC) / 2
	return max(0, 0.0023*(t+17.8)*math.Sqrt(max(0, tmaxC-tminC))*latentInvMJ*raMJ)
}

// ET0MM returns the reference evapotranspiration of a day, mm, by
// Penman-Monteith. Humidity is not recorded: the air is taken to be full at
// the night's coldest ([FAO56] eq. 48), which runs low in dry country. Wind
// below 0.5 m/s is taken as 0.5.
func ET0MM(day Day, site Site, doy int) float64 {
	rad, air := ET0Parts(day, site, doy)
	return max(0, rad+air)
}
