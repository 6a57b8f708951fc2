package verify

import (
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

// sunPosition answers position, incidence and rise cases with package sun.
func sunPosition(c Case) (map[string]any, bool) {
	in := unpack(c)
	t, at := in.instant(), sunPlace(in)
	pos := sun.AtDeltaT(t, at, sunAir(in), in.numOr("delta_t_s", sun.DeltaT(t)))
	got := map[string]any{
		"azimuth_deg":            pos.AzimuthDeg,
		"true_elevation_deg":     pos.TrueElevDeg,
		"apparent_elevation_deg": pos.ApparentElevDeg,
		"apparent_zenith_deg":    pos.ApparentZenithDeg(),
		"declination_deg":        pos.DeclinationDeg,
	}
	if in.has("surface_slope_deg") {
		face := geom.Normal(in.num("surface_slope_deg"), in.num("surface_azimuth_clockwise_from_north_deg"))
		got["incidence_angle_deg"] = geom.AngleDeg(face, geom.Direction(pos.AzimuthDeg, pos.ApparentElevDeg))
	}
	// The NREL report gives the events of the instant's date in UTC, each in
	// local time: at Golden the set shown is that of the evening before.
	date := cal.FromTime(t.UTC())
	rise, set := sun.OnUTC(date, at, sun.UpperLimb)
	got["sunrise_local"] = localClock(rise, t)
	got["sunset_local"] = localClock(set, t)
	got["transit_local"] = localClock(sun.Of(date, at, sun.UpperLimb).Noon, t)
	return got, !in.lack
}

// localClock writes an instant by the clock of another; nil when it is zero.
func localClock(t, like time.Time) any {
	if t.IsZero() {
		return nil
	}
	return t.In(like.Location()).Format(time.TimeOnly)
}

func sunPlace(in *given) sun.Place {
	return sun.Place{LatDeg: in.num("lat_deg"), LonDeg: in.num("lon_deg"), ElevM: in.numOr("elevation_m", 0)}
}

// sunAir is the case's air; a case that names none is asked without air.
func sunAir(in *given) sun.Air {
	return sun.Air{PressureHPa: in.numOr("pressure_hPa", 0), TempC: in.numOr("temperature_C", 0)}
}
