package verify

import (
	"bedweek/internal/geom"
	"bedweek/internal/shade"
	"bedweek/internal/sun"
)

// shadeGeometry answers with the ray caster and the solids it uses. The case's
// inputs say which question is asked.
func shadeGeometry(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("shapes"):
		got = sunBehind(in)
	case in.has("declination_deg"):
		got = noonShadow(in)
	case in.has("surface_tilt_deg"):
		got = incidence(in)
	case in.has("fence_runs_along_bearing_deg"):
		got = fenceShadow(in)
	case in.has("height_above_ground_m"):
		got = shelfShadow(in)
	case in.has("sun_elevation_deg") && in.has("size_east_m"):
		got = beyond(shade.Box("box", 0, 0, 0, in.num("size_east_m"), in.num("size_north_m"), 0, in.num("height_m")), in)
	case in.has("sun_elevation_deg") && in.has("diameter_m") && in.has("height_m"):
		got = beyond(shade.Post("cylinder", 0, 0, in.num("diameter_m"), 0, in.num("height_m")), in)
	case in.has("sun_elevation_deg") && in.has("diameter_m"):
		got = ballShadow(in)
	case in.has("sun_elevation_deg"):
		got = postShadow(in)
	default:
		got = skyView(in)
	}
	return got, got != nil && !in.lack
}

// caseSun is the direction to the sun; where the answer cannot depend on the
// azimuth the case leaves it out.
func caseSun(in *given) geom.Vec {
	return geom.Direction(in.numOr("sun_azimuth_deg", 0), in.num("sun_elevation_deg"))
}

func postShadow(in *given) map[string]any {
	tip, ok := geom.ShadowOf(geom.Up().Scale(in.num("height_m")), caseSun(in))
	if !ok {
		return map[string]any{"shadow_length_m": nil, "shadow_bearing_deg": nil, "tip_east_m": nil, "tip_north_m": nil}
	}
	return map[string]any{
		"shadow_length_m":    tip.LevelLen(),
		"shadow_bearing_deg": tip.BearingDeg(),
		"tip_east_m":         tip.X,
		"tip_north_m":        tip.Y,
	}
}

func noonShadow(in *given) map[string]any {
	d := sun.ToSun(in.num("lat_deg"), in.num("declination_deg"), 0)
	got := map[string]any{"noon_elevation_deg": d.ElevationDeg()}
	tip, ok := geom.ShadowOf(geom.Up().Scale(in.num("height_m")), d)
	if !ok {
		got["noon_shadow_m"], got["shadow_points"] = nil, nil
		return got
	}
	got["noon_shadow_m"] = tip.LevelLen()
	got["shadow_points"] = geom.Compass(tip.BearingDeg())
	return got
}

func incidence(in *given) map[string]any {
	face := geom.Normal(in.num("surface_tilt_deg"), in.num("surface_azimuth_deg"))
	d := caseSun(in)
	r := shade.Receptor{Normal: face}
	return map[string]any{
		"cos_incidence": face.Dot(d),
		"incidence_deg": geom.AngleDeg(face, d),
		"beam_factor":   r.BeamFactor(d),
	}
}

func fenceShadow(in *given) map[string]any {
	bearing := in.num("fence_runs_along_bearing_deg")
	fence := shade.Wall("fence", 0, 0, shade.TurnOf(bearing), in.num("length_m"), 0, in.num("height_m"))
	outline, ok := fence.Shadow(caseSun(in))
	tip, _ := geom.ShadowOf(geom.Up().Scale(in.num("height_m")), caseSun(in))
	if !ok {
		return map[string]any{"shadow_depth_perpendicular_m": nil, "shadow_area_m2": nil, "shadow_length_along_ray_m": nil}
	}
	return map[string]any{
		"shadow_depth_perpendicular_m": outline.FarFrom(geom.Vec{}, bearing),
		"shadow_area_m2":               outline.AreaM2(),
		"shadow_length_along_ray_m":    tip.LevelLen(),
	}
}

func beyond(b shade.Body, in *given) map[string]any {
	m2, ok := b.ShadowBeyondM2(caseSun(in))
	if !ok {
		return map[string]any{"ground_shadow_area_outside_footprint_m2": nil}
	}
	return map[string]any{"ground_shadow_area_outside_footprint_m2": m2}
}

func ballShadow(in *given) map[string]any {
	r := in.num("diameter_m") / 2
	outline, ok := shade.Ball("ball", 0, 0, r, r, 0).Shadow(caseSun(in))
	if !ok {
		return map[string]any{"shadow_area_m2": nil}
	}
	return map[string]any{"shadow_area_m2": outline.AreaM2()}
}

func shelfShadow(in *given) map[string]any {
	h := in.num("height_above_ground_m")
	shelf := shade.Roof("shelf", 0, 0, 0, in.num("size_east_m"), in.num("size_north_m"), h)
	outline, ok := shelf.Shadow(caseSun(in))
	if !ok {
		return map[string]any{"shadow_area_m2": nil, "shadow_offset_east_m": nil, "shadow_offset_north_m": nil}
	}
	middle, _ := geom.ShadowOf(geom.Up().Scale(h), caseSun(in))
	return map[string]any{
		"shadow_area_m2":        outline.AreaM2(),
		"shadow_offset_east_m":  middle.X,
		"shadow_offset_north_m": middle.Y,
	}
}

// skyView builds the scene a case describes and asks the ray caster.
func skyView(in *given) map[string]any {
	at := shade.Level(0, 0, 0)
	var s shade.Scene
	switch {
	case in.has("uniform_horizon_deg"):
		s.Bodies = []shade.Body{shade.Horizon("basin", in.num("uniform_horizon_deg"))}
	case in.has("wall_height_above_point_m"):
		s.Bodies = []shade.Body{shade.Wall("wall", 0, in.num("distance_m"), 0, shade.EndlessM, 0, in.num("wall_height_above_point_m"))}
	case in.has("wall_length_m"):
		s.Bodies = []shade.Body{shade.Wall("wall", 0, in.num("distance_m"), 0, in.num("wall_length_m"), 0, in.num("wall_height_m"))}
	case in.has("width_m"):
		w, h := in.num("width_m"), in.num("wall_height_m")
		s.Bodies = []shade.Body{
			shade.Wall("north", 0, w, 0, shade.EndlessM, 0, h),
			shade.Wall("south", 0, 0, 0, shade.EndlessM, 0, h),
		}
		y, ok := map[string]float64{"middle of the floor": w / 2, "a quarter of the width from one wall": w / 4}[in.text("point")]
		if !ok {
			return nil
		}
		at = shade.Level(0, y, 0)
	case in.has("clear_height_m"):
		e, n := in.num("shelf_east_m"), in.num("shelf_north_m")
		s.Bodies = []shade.Body{shade.Roof("shelf", 0, 0, 0, e, n, in.num("clear_height_m"))}
		switch in.text("point") {
		case "below one corner":
			at = shade.Level(e/2, n/2, 0)
		case "below the centre":
		default:
			return nil
		}
	default:
		return nil
	}
	sky := shade.FineSky()
	view := s.SkyView(sky, at, shade.AnyMonth)
	return map[string]any{
		"svf_cosine":       view,
		"svf_solid_angle":  s.SkySeen(sky, at.At, shade.AnyMonth),
		"blocked_fraction": (&shade.Scene{}).SkyView(sky, at, shade.AnyMonth) - view,
	}
}

// sunBehind follows the sun through a day behind the case's shapes.
func sunBehind(in *given) map[string]any {
	s, ok := caseScene(in)
	p := in.nums("point_m")
	if !ok || len(p) != 3 {
		return nil
	}
	day, at, r := in.day("date"), sunPlace(in), shade.Level(p[0], p[1], p[2])
	open := (&shade.Scene{}).Spells(r, at, day)
	got := s.Spells(r, at, day)
	return map[string]any{
		"unobstructed_h":                          shade.DayHours(open),
		"direct_h":                                shade.DayHours(got),
		"direct_before_mean_solar_noon_h":         shade.MorningHours(got),
		"direct_after_mean_solar_noon_h":          shade.AfternoonHours(got),
		"share_of_unobstructed_sin_elevation_sum": shade.BeamShare(got, open),
	}
}

func caseScene(in *given) (*shade.Scene, bool) {
	var s shade.Scene
	for _, v := range take[[]any](in, in.in, "shapes") {
		shape, _ := v.(map[string]any)
		b, ok := caseShape(in, shape)
		if !ok {
			return nil, false
		}
		s.Bodies = append(s.Bodies, b)
	}
	return &s, !in.lack
}

func caseShape(in *given, shape map[string]any) (shade.Body, bool) {
	name := take[string](in, shape, "shape")
	num := func(key string) float64 { return take[float64](in, shape, key) }
	switch name {
	case "wall":
		at, from, to, h := num("plane_at_m"), num("from_m"), num("to_m"), num("height_m")
		switch take[string](in, shape, "plane_axis") {
		case "x":
			return shade.WallBetween(name, at, from, at, to, 0, h), true
		case "y":
			return shade.WallBetween(name, from, at, to, at, 0, h), true
		}
	case "box":
		x, y, z := in.numsIn(shape, "x_m"), in.numsIn(shape, "y_m"), in.numsIn(shape, "z_m")
		if len(x) == 2 && len(y) == 2 && len(z) == 2 {
			return shade.BoxBetween(name, x[0], x[1], y[0], y[1], z[0], z[1]), true
		}
	case "sphere":
		if p := in.numsIn(shape, "centre_m"); len(p) == 3 {
			return shade.Ball(name, p[0], p[1], p[2], num("radius_m"), 0), true
		}
	}
	return shade.Body{}, false
}
