package weather

// Vapour from what a station tells, wind in other units, and heat into the
// ground over months: the procedures of [FAO56] for data that come in other
// shapes than a plain daily file.

// VapourFromHumidityKPa returns ea from the day's two relative humidities in
// percent: the highest belongs to the coldest hour. [FAO56] eq. 17.
func VapourFromHumidityKPa(tmaxC, tminC, rhMaxPct, rhMinPct float64) float64 {
	return (SaturationKPa(tminC)*rhMaxPct + SaturationKPa(tmaxC)*rhMinPct) / 200
}

// VapourFromMostHumidKPa returns ea when only the highest humidity is trusted.
// [FAO56] eq. 18.
func VapourFromMostHumidKPa(tminC, rhMaxPct float64) float64 {
	return SaturationKPa(tminC) * rhMaxPct / 100
}

// VapourFromMeanHumidityKPa returns ea from the day's mean humidity. [FAO56]
// eq. 19. It is the weakest of the three.
func VapourFromMeanHumidityKPa(tmaxC, tminC, rhMeanPct float64) float64 {
	return MeanSaturationKPa(tmaxC, tminC) * rhMeanPct / 100
}

// VapourFromBulbsKPa returns ea from a dry and a wet bulb; a is 0.000662 for
// an aspirated psychrometer, 0.0008 for one in natural air, 0.0012 indoors.
// [FAO56] eq. 15, 16.
func VapourFromBulbsKPa(dryC, wetC, a, pressureKPa float64) float64 {
	return SaturationKPa(wetC) - a*pressureKPa*(dryC-wetC)
}

// VapourFromDewpointKPa returns ea from the dewpoint. [FAO56] eq. 14.
func VapourFromDewpointKPa(dewC float64) float64 { return SaturationKPa(dewC) }

// LeastHumidityPct returns RHmin, percent, when humidity is not recorded: the
// air is taken to be full at the night's coldest. [FAO56] eq. 64.
func LeastHumidityPct(tmaxC, tminC float64) float64 {
	return min(100, 100*SaturationKPa(tminC)/SaturationKPa(tmaxC))
}

// WindFromKmH turns km/h into m/s at the same height.
func WindFromKmH(kmh float64) float64 { return kmh / 3.6 }

// NetShortwaveMJ returns Rns, the radiation grass keeps. [FAO56] eq. 38.
func NetShortwaveMJ(rsMJ float64) float64 { return (1 - albedoGrass) * rsMJ }

// DepthMM returns the depth of water that radiation could turn to vapour.
// [FAO56] eq. 20.
func DepthMM(radMJ float64) float64 { return latentInvMJ * radMJ }

// RadiationOfDepthMJ is DepthMM the other way round.
func RadiationOfDepthMJ(mm float64) float64 { return mm / latentInvMJ }

// GroundHeatMonthMJ returns G of a month, MJ/m2/day, from its mean air
// temperature and that of the month before. [FAO56] eq. 44.
func GroundHeatMonthMJ(thisC, beforeC float64) float64 { return 0.14 * (thisC - beforeC) }

// GroundHeatBetweenMJ returns G of a month from the months before and after.
// [FAO56] eq. 43.
func GroundHeatBetweenMJ(afterC, beforeC float64) float64 { return 0.07 * (afterC - beforeC) }

// RangeRadMJ returns the radiation worked out from the daily range with a
// coefficient of the caller's choosing: 0.16 inland, 0.19 at a coast.
// [FAO56] eq. 50. It is not bounded by the clear sky; HargreavesRadMJ is.
func RangeRadMJ(krs, tmaxC, tminC, raMJ float64) float64 {
	return krs * rootRange(tmaxC, tminC) * raMJ
}

// SunshineRadWithMJ is SunshineRadMJ with the site's own constants.
// [FAO56] eq. 35. In polar night it is 0.
func SunshineRadWithMJ(a, b, nHours, daylightH, raMJ float64) float64 {
	if daylightH <= 0 {
		return 0
	}
	return (a + b*nHours/daylightH) * raMJ
}
