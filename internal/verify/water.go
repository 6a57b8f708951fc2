package verify

import "bedweek/internal/water"

// waterCases answers with package water. Inputs in inches, feet and US gallons
// are turned by its exact definitions.
func waterCases(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("flow_gal_per_h_per_100ft"), in.has("flow_gal_per_min_per_100ft"):
		got = tapeHours(in)
	case in.has("emitter_gal_per_h"):
		got = dripInches(in)
	case in.has("emitter_L_per_h"):
		got = dripMetric(in)
	case in.has("area_ft2"):
		got = gallonsADay(in)
	case in.has("to_unit"):
		v, err := water.Convert(in.text("from"), in.text("to_unit"))
		if err != nil {
			return nil, false
		}
		got = map[string]any{"value": v}
	case in.has("available_water_fraction"):
		got = container(in)
	case in.has("shape"):
		got = volume(in)
	case in.has("dry_bulk_density_kg_m3"):
		got = saturatedWeight(in)
	case in.has("roof_m2"):
		got = map[string]any{"litres": water.CaughtL(in.num("rain_mm"), in.num("roof_m2"), in.num("runoff_share"))}
	default:
		got = leaching(in)
	}
	return got, got != nil && !in.lack
}

func tapeHours(in *given) map[string]any {
	const run, minutesAnHour = 100.0, 60.0 // feet and unit named by the keys
	gallonsHour := in.numOr("flow_gal_per_min_per_100ft", 0) * minutesAnHour
	if in.has("flow_gal_per_h_per_100ft") {
		gallonsHour = in.num("flow_gal_per_h_per_100ft")
	}
	rate := water.TapeRate(gallonsHour*water.GallonL/(run*water.FootM), in.num("bed_width_in")*water.InchM)
	m, ok := water.Minutes(in.num("depth_wanted_in")*water.InchM*1000, rate)
	return map[string]any{"hours": orNothing(m/minutesAnHour, ok)}
}

func dripInches(in *given) map[string]any {
	const mm = 1000 * water.InchM
	rate := water.LineRate(in.num("emitter_gal_per_h")*water.GallonL, in.num("emitter_spacing_in")*water.InchM, in.num("row_spacing_in")*water.InchM)
	m, ok := water.Minutes(mm/2, rate) // half an inch, named by the key
	return map[string]any{"application_in_per_h": rate / mm, "application_mm_per_h": rate, "minutes_for_half_inch": orNothing(m, ok)}
}

func dripMetric(in *given) map[string]any {
	rate := water.LineRate(in.num("emitter_L_per_h"), in.num("emitter_spacing_m"), in.num("line_spacing_m"))
	gross := water.GrossMM(in.num("net_depth_mm"), in.num("efficiency"))
	m, ok := water.Minutes(gross, rate)
	return map[string]any{"application_mm_per_h": rate, "minutes": orNothing(m, ok), "litres_per_m2": gross}
}

func gallonsADay(in *given) map[string]any {
	net := water.DemandL(in.num("eto_in_per_day")*water.InchM*1000, in.num("kc"), in.num("area_ft2")*water.FootM2)
	litres := water.GrossMM(net, in.num("efficiency"))
	return map[string]any{"gallons_per_day": litres / water.GallonL, "litres_per_day": litres}
}

func container(in *given) map[string]any {
	usable := water.UsableL(in.num("medium_volume_L"), in.num("available_water_fraction"), in.num("share_to_use_before_watering"), in.num("reservoir_usable_L"))
	demand := water.DemandL(in.num("eto_mm_day"), in.num("crop_factor"), in.num("canopy_area_m2"))
	days, ok := water.DaysToDry(usable, demand)
	times, okTimes := water.WateringsADay(usable, demand)
	return map[string]any{"usable_L": usable, "demand_L_per_day": demand, "days_to_dry": orNothing(days, ok), "waterings_per_day": orNothing(times, okTimes)}
}

func volume(in *given) map[string]any {
	a, b, d := in.num("length_or_top_diameter_m"), in.num("width_or_bottom_diameter_m"), in.num("depth_m")
	switch in.text("shape") {
	case "box":
		return map[string]any{"volume_L": water.BoxL(a, b, d)}
	case "cylinder":
		return map[string]any{"volume_L": water.CylinderL(a, d)}
	case "frustum":
		return map[string]any{"volume_L": water.FrustumL(a, b, d)}
	}
	return nil
}

func saturatedWeight(in *given) map[string]any {
	l, ok := water.SaturatedLoad(in.num("medium_volume_L"), in.num("dry_bulk_density_kg_m3"),
		in.num("water_fraction_after_draining"), in.numOr("reservoir_L", 0), in.num("container_kg"), in.num("base_area_m2"))
	return map[string]any{"weight_kg": l.Kg, "load_kg_m2": orNothing(l.KgM2, ok), "load_kN_m2": orNothing(l.KNM2, ok)}
}

func leaching(in *given) map[string]any {
	switch {
	case in.has("drained_L"):
		f, ok := water.LeachingFraction(in.num("entered_L"), in.num("drained_L"))
		return map[string]any{"leaching_fraction": orNothing(f, ok), "retained_L": in.num("entered_L") - in.num("drained_L")}
	case in.has("test_minutes"):
		m, ok := water.RetunedMinutes(in.num("test_minutes"), in.num("measured_leaching_fraction"), in.num("target_leaching_fraction"))
		return map[string]any{"new_minutes": orNothing(m, ok)}
	case in.has("wanted_leaching_fraction"):
		give, drains, ok := water.LeachGiveL(in.num("water_to_refill_L"), in.num("wanted_leaching_fraction"))
		return map[string]any{"apply_L": orNothing(give, ok), "drains_L": orNothing(drains, ok)}
	case in.has("ece_90pct_yield_dS_m"):
		const printed = 0.10 // named by the key
		most, ok90 := water.LeachingRequirement(in.num("ecw_dS_m"), in.num("ece_90pct_yield_dS_m"))
		all, okAll := water.LeachingRequirement(in.num("ecw_dS_m"), in.num("ece_full_yield_dS_m"))
		mm, _, okMM := water.LeachGiveL(in.num("crop_et_mm"), printed)
		return map[string]any{"lr_90pct": orNothing(most, ok90), "lr_full": orNothing(all, okAll), "water_mm_at_lr_0.10": orNothing(mm, okMM)}
	case in.has("ece_dS_m"):
		lr, ok := water.LeachingRequirement(in.num("ecw_dS_m"), in.num("ece_dS_m"))
		return map[string]any{"lr": orNothing(lr, ok)}
	}
	return nil
}

// orNothing is a number, or "no such value".
func orNothing(v float64, ok bool) any {
	if !ok {
		return nil
	}
	return v
}
