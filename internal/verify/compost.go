package verify

import "bedweek/internal/heap"

// compost answers with package heap.
func compost(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("daily_temperature_C"):
		v := heap.Judge(heap.Log{Method: heap.Method(in.text("method")), DailyC: in.nums("daily_temperature_C"),
			Turned: int(in.num("turnings_in_hot_period")), StartCN: in.num("start_c_to_n")})
		got = map[string]any{"pfrp_503_consecutive_days": v.Consecutive, "pfrp_257_cumulative_days": v.Cumulative,
			"nop_205_203": v.Organic, "treat_as_hygienised": v.Hygienised}
	case in.has("hourly_runs_hours_then_C"):
		var spells []heap.Spell
		for _, p := range in.pairs("hourly_runs_hours_then_C") {
			spells = append(spells, heap.Spell{Hours: p[0], TC: p[1]})
		}
		got = map[string]any{"psrp": heap.SignificantlyReduced(spells)}
	case in.has("goal_moisture_pct"):
		kg, ok := heap.SecondForMoisture(grass(in), leaves(in), in.num("goal_moisture_pct"))
		got = map[string]any{"leaves_kg": orNothing(kg, ok)}
	case in.has("grass_C_pct"):
		kg, ok := heap.SecondForCN(grass(in), leaves(in), in.num("goal_c_to_n"))
		got = map[string]any{"leaves_kg": orNothing(kg, ok)}
	case in.has("materials"):
		var all []heap.Material
		for _, m := range take[[]any](in, in.in, "materials") {
			all = append(all, material(in, m))
		}
		cn, wet, ok := heap.Mix(all)
		got = map[string]any{"c_to_n": orNothing(cn, ok), "moisture_pct": orNothing(wet, ok)}
	case in.has("second"):
		kg, ok := heap.SecondForCN(material(in, in.in["first"]), material(in, in.in["second"]), in.num("goal_c_to_n"))
		got = map[string]any{"second_wet_kg": orNothing(kg, ok), "possible": ok}
	}
	return got, got != nil && !in.lack
}

func grass(in *given) heap.Material {
	return heap.Material{WetKg: in.num("grass_kg"), MoisturePct: in.num("grass_moisture_pct"),
		CarbonPct: in.numOr("grass_C_pct", 0), NitrogenPct: in.numOr("grass_N_pct", 0)}
}

func leaves(in *given) heap.Material {
	return heap.Material{MoisturePct: in.num("leaves_moisture_pct"),
		CarbonPct: in.numOr("leaves_C_pct", 0), NitrogenPct: in.numOr("leaves_N_pct", 0)}
}

func material(in *given, v any) heap.Material {
	m, ok := v.(map[string]any)
	if !ok {
		in.lack = true
		return heap.Material{}
	}
	out := heap.Material{MoisturePct: take[float64](in, m, "moisture_pct"),
		CarbonPct: take[float64](in, m, "C_pct_dry"), NitrogenPct: take[float64](in, m, "N_pct_dry")}
	if _, given := m["wet_kg"]; given {
		out.WetKg = take[float64](in, m, "wet_kg")
	}
	return out
}
