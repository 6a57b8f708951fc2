package verify

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// frostProbability recomputes frost dates of the shipped record, quantiles and
// risks of short records, freeze probability levels and the binomial law.
// Cases on files that are not shipped are not covered.
func frostProbability(c Case) (map[string]any, bool) {
	in := c.Inputs
	switch {
	case in["threshold_C"] != nil:
		return frostOfFile(c)
	case in["last_event_day_of_year"] != nil:
		return frostOfEvents(c)
	case in["probability_level"] != nil:
		return freezeLevel(c)
	case in["yearly_risk"] != nil:
		p, ok1 := in["yearly_risk"].(float64)
		n, ok2 := in["years"].(float64)
		k, ok3 := in["events"].(float64)
		if !ok1 || !ok2 || !ok3 {
			return nil, false
		}
		exactly, atLeast, none := weather.Binomial(p, int(n), int(k))
		return map[string]any{"p_exactly": exactly, "p_at_least": atLeast, "p_none": none}, true
	}
	return nil, false
}

// shippedRecord reads the record a case names, if it ships with the program.
func shippedRecord(c Case) (*weather.Record, bool) {
	if c.Inputs["file"] != "seattle-weather.csv" {
		return nil, false
	}
	if place, named := c.Inputs["location"].(string); named && !strings.EqualFold(place, "seattle") {
		return nil, false
	}
	rec, _ := weather.Read("seattle-weather.csv", bytes.NewReader(demo.SeattleCSV), weather.Site{})
	return rec, rec != nil
}

func frostOfFile(c Case) (map[string]any, bool) {
	rec, ok := shippedRecord(c)
	threshold, isNumber := c.Inputs["threshold_C"].(float64)
	rule, _ := c.Inputs["rule"].(string)
	switch {
	case !ok || !isNumber:
		return nil, false
	case strings.HasPrefix(rule, "winter season = 1 Jul to 30 Jun"):
		return frostWinters(rec, threshold), true
	case strings.Contains(rule, "spring = 1 Jan to 31 Jul, autumn = 1 Aug to 31 Dec"):
		return frostYears(c, rec, threshold), true
	}
	return nil, false
}

func frostWinters(rec *weather.Record, threshold float64) map[string]any {
	first, last, count := map[string]any{}, map[string]any{}, map[string]any{}
	for _, w := range weather.FrostWinters(rec.Start, rec.Days, threshold, false) {
		if !w.Whole {
			continue
		}
		name := fmt.Sprintf("%d/%d", w.From.Year(), w.To.Year())
		first[name], last[name] = dayOrNone(w.First, w.Days > 0), dayOrNone(w.Last, w.Days > 0)
		count[name] = float64(w.Days)
	}
	return map[string]any{"first_by_winter": first, "last_by_winter": last, "days_at_or_below_by_winter": count}
}

func dayOrNone(d cal.Day, ok bool) any {
	if !ok {
		return nil
	}
	return d.String()
}

func frostYears(c Case, rec *weather.Record, threshold float64) map[string]any {
	last, first, free := map[string]any{}, map[string]any{}, map[string]any{}
	var lasts, firsts weather.Events
	for _, y := range weather.FrostYears(rec.Start, rec.Days, threshold, false) {
		name := strconv.Itoa(y.Year)
		last[name], first[name] = dayOrNone(y.LastSpring, y.HasLast), dayOrNone(y.FirstAutumn, y.HasFirst)
		free[name] = nil
		if n, ok := y.FreeDays(); ok {
			free[name] = float64(n)
		}
		lasts.Add(y.LastSpring.YearDay(), y.HasLast)
		firsts.Add(y.FirstAutumn.YearDay(), y.HasFirst)
	}
	got := map[string]any{
		"last_spring_by_year": last, "first_autumn_by_year": first, "frost_free_days_by_year": free,
		"mean_last_spring_day_of_year":  weather.Summarise(lasts.Days).Mean,
		"mean_first_autumn_day_of_year": weather.Summarise(firsts.Days).Mean,
	}
	quantiles(c, got, "last_spring_day_of_year_quantiles_type", lasts)
	quantiles(c, got, "first_autumn_day_of_year_quantiles_type", firsts)
	return got
}

// quantiles answers every key of the case that begins with prefix and ends
// with a quantile type, at the levels it names.
func quantiles(c Case, got map[string]any, prefix string, e weather.Events) {
	for key, want := range c.Expect {
		kind, err := strconv.Atoi(strings.TrimPrefix(key, prefix))
		if !strings.HasPrefix(key, prefix) || err != nil {
			continue
		}
		got[key] = byLevel(want, func(p float64) (float64, bool) { return e.Quantile(p, kind) })
	}
}

// byLevel fills a map at the levels the case names. It reads the names only.
func byLevel(want any, at func(level float64) (float64, bool)) any {
	named, ok := want.(map[string]any)
	if !ok {
		return nil
	}
	out := map[string]any{}
	for name := range named {
		level, err := strconv.ParseFloat(name, 64)
		if err != nil {
			continue
		}
		out[name] = nil
		if v, ok := at(level); ok {
			out[name] = v
		}
	}
	return out
}

func frostOfEvents(c Case) (map[string]any, bool) {
	list, ok := c.Inputs["last_event_day_of_year"].([]any)
	if !ok {
		return nil, false
	}
	var e weather.Events
	for _, v := range list {
		day, came := v.(float64)
		e.Add(int(day), came)
	}
	got := map[string]any{
		"years": float64(e.Years), "years_with_event": float64(len(e.Days)), "share_without_event": e.ShareWithout(),
	}
	quantiles(c, got, "day_of_year_by_quantile_type", e)
	for key, want := range c.Expect {
		switch {
		case key == "risk_of_event_on_or_after_day":
			got[key] = byLevel(want, func(day float64) (float64, bool) { return e.RiskFrom(day, false) })
		case key == "risk_weibull_on_or_after_day":
			got[key] = byLevel(want, func(day float64) (float64, bool) { return e.RiskFrom(day, true) })
		case strings.HasPrefix(key, "day_with_unconditional_risk_after_it_type"):
			kind, err := strconv.Atoi(strings.TrimPrefix(key, "day_with_unconditional_risk_after_it_type"))
			if err == nil {
				got[key] = byLevel(want, func(risk float64) (float64, bool) { return e.DayWithRisk(risk, kind) })
			}
		}
	}
	return got, true
}

func freezeLevel(c Case) (map[string]any, bool) {
	level, ok := c.Inputs["probability_level"].(float64)
	season, _ := c.Inputs["season"].(string)
	if !ok {
		return nil, false
	}
	q, ok := weather.FreezeLevel(level, weather.Season(season))
	if !ok {
		return nil, false
	}
	got := map[string]any{"equals_quantile_of_record": q}
	if words, ok := weather.FreezeLevelMeans(level, weather.Season(season)); ok {
		got["meaning"] = words
	}
	return got, true
}
