package weather

import "math"

// Hour is one hour's weather for an hourly evapotranspiration.
type Hour struct {
	TC     float64 // mean air temperature
	EaKPa  float64 // vapour pressure
	WindMS float64 // at 2 m
	RadMJ  float64 // global radiation, MJ/m2 in the hour
}

// HourRadiation turns a mean flow of W/m2 over an hour into MJ/m2.
func HourRadiation(wattM2 float64) float64 { return wattM2 * 0.0036 }

// seasonalH is Sc, hours the true sun is ahead of the mean one. [FAO56] eq. 32, 33.
func seasonalH(doy int) float64 {
	b := 2 * math.Pi * (float64(doy) - 81) / 364
	return 0.1645*math.Sin(2*b) - 0.1255*math.Cos(b) - 0.025*math.Sin(b)
}

// SolarHourAngle returns ω, radians, 0 at solar noon, of a clock time in the
// middle of a period. lonDeg is the place's and zoneLonDeg the longitude its
// clock keeps, both east +. [FAO56] eq. 31 (the paper counts west +).
func SolarHourAngle(clockH, lonDeg, zoneLonDeg float64, doy int) float64 {
	return math.Pi / 12 * (clockH + (lonDeg-zoneLonDeg)/15 + seasonalH(doy) - 12)
}

// HourRaMJ returns Ra of the hour whose middle has the hour angle omega,
// MJ/m2. [FAO56] eq. 28-30. The hour is cut where the sun rises or sets, and
// the result is 0 when it is down.
func HourRaMJ(latDeg float64, doy int, omega float64) float64 {
	ws := SunsetAngleRad(latDeg, doy)
	w1 := max(-ws, min(ws, omega-math.Pi/24))
	w2 := max(-ws, min(ws, omega+math.Pi/24))
	if w2 <= w1 {
		return 0
	}
	phi, delta := latDeg*math.Pi/180, DeclinationRad(doy)
	return max(0, 12*60/math.Pi*solarConstant*InverseDistance(doy)*
		((w2-w1)*math.Sin(phi)*math.Sin(delta)+math.Cos(phi)*math.Cos(delta)*(math.Sin(w2)-math.Sin(w1))))
}

// CloudFactor returns fcd, how clear an hour's sky is for heat going up, from
// measured over clear-sky radiation. [ASCE05] eq. 45: the ratio is held
// between 0.3 and 1. By night, or with the sun under 0.3 rad (17°), use that
// of the last hour of better sun.
func CloudFactor(rsMJ, rsoMJ float64) float64 {
	if rsoMJ <= 0 {
		return 1.35*0.7 - 0.35 // a middling sky, when nothing better is known
	}
	return 1.35*max(0.3, min(1, rsMJ/rsoMJ)) - 0.35
}

// hourBoltz is Stefan-Boltzmann's constant by the hour, MJ/K4/m2/h.
const hourBoltz = stefanBoltz / 24

// HourNetMJ returns Rn of an hour, MJ/m2. [FAO56] eq. 39 by the hour.
func HourNetMJ(h Hour, cloudFactor float64) float64 {
	up := hourBoltz * math.Pow(h.TC+kelvinOffset, 4) * (0.34 - 0.14*math.Sqrt(max(0, h.EaKPa))) * cloudFactor
	return NetShortwaveMJ(h.RadMJ) - up
}

// FAOHourMM returns the hourly reference evapotranspiration after [FAO56]
// eq. 53, mm: it keeps the 0.34 of the day. Heat into the ground is a tenth of
// the net radiation by day and a half by night (eq. 45, 46).
func FAOHourMM(h Hour, netMJ, elevM float64) float64 {
	return hourMM(37, 0.34, 0.1, 0.5, h, netMJ, elevM)
}

// StandardHourMM returns the standardised hourly reference
// evapotranspiration, mm. [ASCE05] eq. 1 and table 1: 0.24 by day and 0.96 by
// night for short grass, 0.25 and 1.7 for tall. Dew, a little below 0, is
// kept.
func StandardHourMM(ref Reference, h Hour, netMJ, elevM float64) float64 {
	cn, cdDay, cdNight, gDay, gNight := 37.0, 0.24, 0.96, 0.1, 0.5
	if ref == Tall {
		cn, cdDay, cdNight, gDay, gNight = 66, 0.25, 1.7, 0.04, 0.2
	}
	cd := cdDay
	if netMJ < 0 {
		cd = cdNight
	}
	return hourMM(cn, cd, gDay, gNight, h, netMJ, elevM)
}

func hourMM(cn, cd, gDay, gNight float64, h Hour, netMJ, elevM float64) float64 {
	g := gDay * netMJ
	if netMJ < 0 {
		g = gNight * netMJ
	}
	rad, air := combination(cn, cd, h.TC, SaturationKPa(h.TC)-h.EaKPa, h.WindMS, netMJ-g, PsychrometricKPa(elevM))
	return rad + air
}

// DayCourse returns how a day's reference evapotranspiration spreads over its
// 24 solar hours, summing to 1: as the radiation above the air does. In polar
// night it is spread evenly. Wind and heat after noon make the true course
// lag by half an hour to an hour, which is left out.
func DayCourse(latDeg float64, doy int) [24]float64 {
	var out [24]float64
	sum := 0.0
	for h := range out {
		out[h] = HourRaMJ(latDeg, doy, math.Pi/12*(float64(h)+0.5-12))
		sum += out[h]
	}
	for h := range out {
		if sum <= 0 {
			out[h] = 1.0 / 24
			continue
		}
		out[h] /= sum
	}
	return out
}
