package verify

import (
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/sun"
)

// dayLength answers with package sun: by local date, by UTC date, or the run
// of short days in a season.
func dayLength(c Case) (map[string]any, bool) {
	in := unpack(c)
	switch {
	case in.has("local_date"):
		return sunDay(in)
	case in.has("utc_date"):
		return sunOnUTC(in)
	case in.has("season"), in.has("winter"):
		return sunShortDays(in)
	}
	return nil, false
}

func sunDay(in *given) (map[string]any, bool) {
	day, at := in.day("local_date"), sunPlace(in)
	got := map[string]any{}
	for _, l := range []struct {
		name  string
		level sun.Level
	}{{"A", sun.UpperLimb}, {"B", sun.Centre}} {
		d := sun.Of(day, at, l.level)
		got["sunrise_"+l.name+"_utc"] = instantText(d.Rise, time.RFC3339)
		got["sunset_"+l.name+"_utc"] = instantText(d.Set, time.RFC3339)
		got["day_length_"+l.name+"_h"] = d.LengthH
		got["state_"+l.name] = underscored(d.State.Words(l.level))
		got["solar_noon_utc"] = instantText(d.Noon, time.RFC3339)
	}
	for _, l := range twilights() {
		d := sun.Of(day, at, l.level)
		got[l.name+"_dawn_utc"] = instantText(d.Rise, time.RFC3339)
		got[l.name+"_dusk_utc"] = instantText(d.Set, time.RFC3339)
		got[l.name] = underscored(d.State.Words(l.level))
	}
	return got, !in.lack
}

type namedLevel struct {
	name  string
	level sun.Level
}

func twilights() []namedLevel {
	return []namedLevel{{"civil", sun.Civil}, {"nautical", sun.Nautical}, {"astronomical", sun.Astronomical}}
}

func underscored(s string) string { return strings.ReplaceAll(s, " ", "_") }

func sunOnUTC(in *given) (map[string]any, bool) {
	day, at := in.day("utc_date"), sunPlace(in)
	const layout = "15:04"
	rise, set := sun.OnUTC(day, at, sun.UpperLimb)
	got := map[string]any{
		"sunrise_on_that_utc_date": instantText(sun.ToMinute(rise), layout),
		"sunset_on_that_utc_date":  instantText(sun.ToMinute(set), layout),
	}
	for _, l := range twilights() {
		dawn, dusk := sun.OnUTC(day, at, l.level)
		got[l.name+"_dawn_on_that_utc_date"] = instantText(sun.ToMinute(dawn), layout)
		got[l.name+"_dusk_on_that_utc_date"] = instantText(sun.ToMinute(dusk), layout)
	}
	return got, !in.lack
}

// sunShortDays names the run of days under ten hours by both definitions; the
// plain names are those of the almanac rule.
func sunShortDays(in *given) (map[string]any, bool) {
	at := sunPlace(in)
	from, to, ok := sunSeason(in, at)
	if !ok {
		return nil, false
	}
	got := map[string]any{}
	for _, l := range []namedLevel{{"_A", sun.UpperLimb}, {"_B", sun.Centre}, {"", sun.UpperLimb}} {
		s := sun.ShortDays(at, l.level, sun.TenHours, from, to)
		got["shortest_day"+l.name+"_h"] = s.ShortestH
		got["days_under_10h"+l.name] = s.Count
		got["first_under_10h"+l.name] = dayText(s, s.First)
		got["last_under_10h"+l.name] = dayText(s, s.Last)
		if s.Count > 0 {
			got["first_under_10h"+l.name+"_month_day"] = s.First.Time().Format("01-02")
			got["last_under_10h"+l.name+"_month_day"] = s.Last.Time().Format("01-02")
		}
	}
	return got, !in.lack
}

func dayText(s sun.Short, d cal.Day) any {
	if s.Count == 0 {
		return nil
	}
	return d.String()
}

// sunSeason reads "from..to", or the winter named by its first year, or any.
func sunSeason(in *given, at sun.Place) (from, to cal.Day, ok bool) {
	if in.has("season") {
		a, b, ok := strings.Cut(in.text("season"), "..")
		return in.asDay(a), in.asDay(b), ok
	}
	year := sun.AnyWinter
	if w := in.text("winter"); w != "any" {
		first, _, _ := strings.Cut(w, "-")
		y, err := strconv.Atoi(first)
		if err != nil {
			return 0, 0, false
		}
		year = y
	}
	from, to = sun.Winter(at.LatDeg, year)
	return from, to, true
}
