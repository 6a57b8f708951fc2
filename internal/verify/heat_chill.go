package verify

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"math"
	"strings"
	"time"

	"bedweek/internal/weather"
)

// heatChill answers with package weather: soil waves, a day's hours from its
// extremes, and chill and heat counts.
func heatChill(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("ratio"):
		d := weather.DampingDepthM(in.num("diffusivity_m2_s"), in.period().Seconds())
		m, ok := weather.DepthOfShareM(in.num("ratio"), d)
		got = map[string]any{"depth_m": orNothing(m, ok)}
	case in.has("period"):
		got = damping(in)
	case in.has("day_of_minimum"):
		got = yearWave(in)
	case in.has("alpha_h"):
		got = sineDecay(in)
	case in.has("days") && in.has("report_day"):
		got = linvill(in)
	case in.has("hour"):
		if m := in.in["method"]; m != nil && !strings.HasPrefix(in.text("method"), "Campbell & Norman") {
			return nil, false
		}
		got = map[string]any{"t_C": weather.CampbellNormanC(in.num("tmax_C"), in.num("tmin_C"), in.num("hour"))}
	case in.has("t_F"):
		got = map[string]any{"units_per_hour": weather.UtahUnitF(in.num("t_F"))}
	case in.has("hourly_C"):
		h := in.nums("hourly_C")
		got = map[string]any{"hours_0_to_7p2_inclusive": weather.ChillingHours(h), "hours_at_or_below_7p2": weather.ChillingHoursBelow(h)}
	default:
		h, ok := chillHours(in)
		if !ok {
			return nil, false
		}
		got = map[string]any{
			"hours": len(h), "chill_portions": weather.ChillPortions(h), "utah_units": weather.UtahUnits(h),
			"chilling_hours_0_to_7p2":       weather.ChillingHours(h),
			"growing_degree_hours_anderson": weather.FruitTree().GrowingDegreeHours(h),
		}
	}
	return got, got != nil && !in.lack
}

// period reads "1 day" or "365 days".
func (g *given) period() time.Duration {
	var n int
	var word string
	if _, err := fmt.Sscanf(g.text("period"), "%d %s", &n, &word); err != nil || !strings.HasPrefix(word, "day") || n < 1 || n > 36500 {
		g.lack = true
	}
	return time.Duration(n) * 24 * time.Hour
}

func damping(in *given) map[string]any {
	p := in.period()
	d := weather.DampingDepthM(in.num("diffusivity_m2_s"), p.Seconds())
	var left, hours, days []float64
	for _, z := range in.nums("depths_m") {
		left = append(left, weather.SwingLeft(z, d))
		hours = append(hours, weather.SwingLag(z, d, p.Hours()))
		days = append(days, weather.SwingLag(z, d, p.Hours()/24))
	}
	return map[string]any{"damping_depth_m": d, "amplitude_ratio": left, "lag_hours": hours, "lag_days": days}
}

func yearWave(in *given) map[string]any {
	var out [][]float64
	for _, z := range in.nums("depths_m") {
		var row []float64
		for _, day := range in.nums("days_of_year") {
			row = append(row, weather.YearWaveC(in.num("mean_C"), in.num("surface_amplitude_C"), z, in.num("diffusivity_m2_s"), day, in.num("day_of_minimum")))
		}
		out = append(out, row)
	}
	return map[string]any{"temperature_C_depth_by_day": out}
}

func sineDecay(in *given) map[string]any {
	s := weather.SineDecay{LagH: in.num("alpha_h"), StartH: in.num("beta_h"), Rate: in.num("gamma")}
	out := make([]float64, 24)
	for h := range out {
		out[h] = s.C(in.num("tmax_C"), in.num("tmin_C"), in.num("tmin_next_C"), in.num("lat_deg"), int(in.num("day_of_year")), float64(h))
	}
	return map[string]any{"t_C_by_hour_0_to_23": out}
}

func linvill(in *given) map[string]any {
	var days []weather.Extremes
	doy := 0
	for i, v := range take[[]any](in, in.in, "days") {
		m := in.table(v)
		days = append(days, weather.Extremes{MinC: take[float64](in, m, "tmin_C"), MaxC: take[float64](in, m, "tmax_C")})
		t, err := time.Parse("02-01", take[string](in, m, "day_month"))
		if err != nil {
			in.lack = true
		}
		if i == 1 {
			doy = t.YearDay() // of a common leap year: a day's slip moves sunrise by a minute or two
		}
	}
	if len(days) != 3 || in.lack {
		in.lack = true
		return map[string]any{}
	}
	lat := in.num("lat_deg")
	out := make([]float64, 24)
	top := 0
	for h := range out {
		out[h] = weather.LinvillC(days[0], days[1], days[2], lat, doy, float64(h))
		if out[h] > out[top] {
			top = h
		}
	}
	rise, set := weather.SunUpSolarH(lat, doy)
	return map[string]any{"t_C_by_hour_0_to_23": out, "sunrise_h": rise, "sunset_h": set, "daily_max_at_h": top}
}

// chillHours lists the temperatures a chill case counts over.
func chillHours(in *given) ([]float64, bool) {
	switch {
	case in.has("constant_C"):
		return cycle([][2]float64{{in.num("hours"), in.num("constant_C")}}, 1), true
	case in.has("daily_cycle"):
		return cycle(in.pairs("daily_cycle"), int(in.num("days"))), true
	case in.has("dataset"):
		return normalsHours(in)
	case in.has("t_C_of_hour_k"):
		return sineHours(in)
	}
	return nil, false
}

func cycle(pairs [][2]float64, days int) []float64 {
	var out []float64
	for range days {
		for _, p := range pairs {
			for range int(p[0]) {
				out = append(out, p[1])
			}
		}
	}
	return out
}

// sineHours makes a wave written as "6 + 4 sin(2 pi (k-9)/24), k = 0,1,2,...".
func sineHours(in *given) ([]float64, bool) {
	var mean, swing, late, period float64
	if _, err := fmt.Sscanf(in.text("t_C_of_hour_k"), "%f + %f sin(2 pi (k-%f)/%f)", &mean, &swing, &late, &period); err != nil || period == 0 {
		return nil, false
	}
	out := make([]float64, int(in.num("days"))*24)
	for k := range out {
		out[k] = mean + swing*math.Sin(2*math.Pi*(float64(k)-late)/period)
	}
	return out, true
}

// normalsHours takes months out of the hourly normals that ship.
func normalsHours(in *given) ([]float64, bool) {
	if !strings.HasSuffix(in.text("dataset"), "seattle-weather-hourly-normals.csv") {
		return nil, false
	}
	z, err := gzip.NewReader(bytes.NewReader(hourlyNormalsGz))
	if err != nil {
		return nil, false
	}
	h, _ := weather.ReadHourly("hourly normals", z)
	if h == nil {
		return nil, false
	}
	var months []float64
	if in.has("month") {
		months = []float64{in.num("month")}
	} else {
		months = in.nums("months")
	}
	var out []float64
	for _, m := range months {
		for i, t := range h.TempC {
			if h.Month[i] == int(m) {
				out = append(out, t)
			}
		}
	}
	return out, true
}
