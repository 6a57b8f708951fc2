package verify

import (
	"math"
	"strings"

	"bedweek/internal/crop"
)

// germinationThermal answers with package crop: the emergence tables of the
// built-in book, thermal-time fits and degree days.
func germinationThermal(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("crop") && in.has("days"):
		got = thermalFit(in)
	case in.has("crop"):
		got = tableRow(in)
	case in.has("base_C"):
		got = twoMeans(in)
	case in.has("tmin_C"):
		got = degreeDays(in, "C")
	case in.has("tmin_F"):
		got = degreeDays(in, "F")
	}
	return got, got != nil && !in.lack
}

// tableRow reads one row of an emergence table.
func tableRow(in *given) map[string]any {
	t, ok := crop.EmergenceTable(strings.ReplaceAll(in.text("crop"), "_", "-"))
	if !ok {
		return nil
	}
	p, ok := t.At(in.num("soil_temp_C"))
	if !ok {
		return nil
	}
	got := map[string]any{"percent": nil, "days": nil}
	if p.HasPct {
		got["percent"] = p.Pct
	}
	if p.HasDays {
		got["days"] = p.Days
	}
	if p.None {
		got["days_state"] = "no_germination_within_the_test"
	}
	return got
}

func thermalFit(in *given) map[string]any {
	f, ok := crop.FitThermal(in.nums("soil_temp_C"), in.nums("days"))
	if !ok {
		return nil
	}
	return map[string]any{"base_temp_C": f.BaseC, "thermal_time_degree_days": f.DegreeDays, "r_squared": f.R2}
}

func twoMeans(in *given) map[string]any {
	lo, hi, base := in.num("tmin_C"), in.num("tmax_C"), in.num("base_C")
	return map[string]any{
		"method1_degree_days_C": crop.MeanDD(lo, hi, base),
		"method2_degree_days_C": crop.RaisedDD(lo, hi, base),
	}
}

// degreeDays names every method's answer for a day, in the scale of its
// inputs; the case picks those it expects.
func degreeDays(in *given, scale string) map[string]any {
	lower, upper := in.num("lower_"+scale), in.num("upper_"+scale)
	unit := "_degree_days_" + scale
	if _, many := in.in["tmin_"+scale].([]any); many {
		total := 0.0
		los, his := in.nums("tmin_"+scale), in.nums("tmax_"+scale)
		for i := range min(len(los), len(his)) {
			total += crop.ClampedDD(los[i], his[i], lower, upper)
		}
		return map[string]any{"degree_days_" + scale + "_total": total}
	}
	lo, hi := in.num("tmin_"+scale), in.num("tmax_"+scale)
	got := map[string]any{
		"degree_days_" + scale:             crop.ClampedDD(lo, hi, lower, upper),
		"greatest_possible_per_day":        crop.MostDD(lower, upper),
		"simple_average_clamped" + unit:    crop.ClampedDD(lo, hi, lower, upper),
		"simple_average_zero_after" + unit: crop.MeanDD(lo, hi, lower),
		"single_sine_no_upper" + unit:      crop.SingleDD(crop.Sine, lo, hi, lower, math.Inf(1), crop.Horizontal),
	}
	for _, s := range []struct {
		name  string
		shape crop.Shape
	}{{"triangle", crop.Triangle}, {"sine", crop.Sine}} {
		got["single_"+s.name+unit] = crop.SingleDD(s.shape, lo, hi, lower, upper, crop.Horizontal)
		for _, k := range []struct {
			name string
			cut  crop.Cutoff
		}{{"horizontal", crop.Horizontal}, {"intermediate", crop.Intermediate}, {"vertical", crop.Vertical}} {
			got["single_"+s.name+"_"+k.name+unit] = crop.SingleDD(s.shape, lo, hi, lower, upper, k.cut)
		}
		if next := "next_day_tmin_" + scale; in.has(next) {
			got["double_"+s.name+unit] = crop.DoubleDD(s.shape, lo, hi, in.num(next), lower, upper, crop.Horizontal)
		}
	}
	return got
}
