package story

import (
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// forecastHead is the first line of the demo's kept forecasts.
var forecastHead = strings.Split("on,space,crop,variety,since,plants,first_early,first_likely,first_late,out_early,out_likely,out_late,kg_low,kg_likely,kg_high,of_twenty", ",")

// WriteForecasts writes one line of kept forecasts for each event body; since
// is the day the planting went in.
func WriteForecasts(fs []ledger.ForecastNote, by map[string]ledger.Planting) string {
	var b strings.Builder
	b.WriteString("# What the program said of the demo's plantings as it went through the season, week by week. Made by it, not by hand: see README.md.\n")
	w := csv.NewWriter(&b)
	w.Write(forecastHead)
	day := func(d cal.Day) string {
		if d == 0 {
			return ""
		}
		return d.String()
	}
	kg := func(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
	for _, f := range fs {
		p := by[f.Planting]
		w.Write([]string{f.On.String(), f.Space, f.Crop, p.Variety, day(Since(p)), strconv.Itoa(f.Plants), day(f.FirstEarly), day(f.FirstLikely), day(f.FirstLate),
			day(f.OutEarly), day(f.OutLikely), day(f.OutLate), kg(f.KgLow), kg(f.KgLikely), kg(f.KgHigh), strconv.Itoa(f.OfTwenty)})
	}
	w.Flush()
	return b.String()
}

// Since is the day a planting went in where it stands.
func Since(p ledger.Planting) cal.Day {
	if p.SetOut != 0 {
		return p.SetOut
	}
	return p.Sown
}

// Forecasts reads the kept forecasts made before a day into events. A line
// names a planting by space, crop, variety and the day it went in; one that
// names none is a fault.
func Forecasts(text []byte, plantings []ledger.Planting, before cal.Day) ([]ledger.Event, error) {
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment, r.FieldsPerRecord = '#', len(forecastHead)
	rows, err := r.ReadAll()
	if err != nil {
		return nil, fmt.Errorf("reading the demo's forecasts: %w", err)
	}
	var out []ledger.Event
	for _, row := range rows[min(1, len(rows)):] {
		on, err := cal.Parse(row[0])
		if err != nil {
			return nil, fmt.Errorf("the demo's forecasts: %w", err)
		}
		if on >= before {
			continue
		}
		f := ledger.Forecast{Space: row[1], Crop: row[2]}
		for _, p := range plantings {
			if p.Space == row[1] && p.Crop == row[2] && p.Variety == row[3] && Since(p).String() == row[4] {
				f.Planting = p.ID
			}
		}
		if f.Planting == "" {
			return nil, fmt.Errorf("the demo's forecasts: no planting of %s %s in %s since %s", row[2], row[3], row[1], row[4])
		}
		for i, d := range []*cal.Day{&f.FirstEarly, &f.FirstLikely, &f.FirstLate, &f.OutEarly, &f.OutLikely, &f.OutLate} {
			if s := row[6+i]; s != "" {
				if *d, err = cal.Parse(s); err != nil {
					return nil, fmt.Errorf("the demo's forecasts: %w", err)
				}
			}
		}
		for i, x := range []*float64{&f.KgLow, &f.KgLikely, &f.KgHigh} {
			if *x, err = strconv.ParseFloat(row[12+i], 64); err != nil {
				return nil, fmt.Errorf("the demo's forecasts: %w", err)
			}
		}
		for i, n := range map[int]*int{5: &f.Plants, 15: &f.OfTwenty} {
			if *n, err = strconv.Atoi(row[i]); err != nil {
				return nil, fmt.Errorf("the demo's forecasts: %w", err)
			}
		}
		e, err := ledger.NewEvent("demo", on, ledger.Forecasted, f)
		if err != nil {
			return nil, err
		}
		e.ID = ledger.FollowingID("forecast", fmt.Sprint(len(out), row))
		out = append(out, e)
	}
	return out, nil
}
