package verify

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"strconv"
	"strings"

	"bedweek/demo"
	"bedweek/internal/weather"
)

// hourlyNormalsGz is seattle-weather-hourly-normals.csv of vega-datasets
// 3.2.1 (NOAA, public domain), packed.
//
//go:embed cases/data/seattle-weather-hourly-normals.csv.gz
var hourlyNormalsGz []byte

// shippedFileCases finds the case another one says it equals.
//
//go:embed cases/weather_files.json
var shippedFileCases []byte

// weatherFiles recomputes what a reader makes of weather files and of single
// lines. Files that are not shipped are not covered.
func weatherFiles(c Case) (map[string]any, bool) {
	in := c.Inputs
	format, _ := in["format"].(string)
	switch {
	case in["file"] != nil:
		return wholeFile(c)
	case strings.HasSuffix(format, "1-based columns"):
		return dlyLayout(c), true
	case strings.HasSuffix(format, "flags"):
		return dlyFlags(c), true
	case in["record"] != nil:
		return dlyRecord(c)
	case in["header"] != nil:
		return badRow(c)
	case in["line"] != nil:
		return longLine(c)
	case in["text"] != nil:
		return wideText(c)
	}
	return nil, false
}

// shippedFile returns a file's bytes when it ships and is the one meant.
func shippedFile(c Case) ([]byte, bool) {
	var b []byte
	switch c.Inputs["file"] {
	case "seattle-weather.csv":
		b = demo.SeattleCSV
	case "seattle-weather-hourly-normals.csv":
		z, err := gzip.NewReader(bytes.NewReader(hourlyNormalsGz))
		if err != nil {
			return nil, false
		}
		if b, err = io.ReadAll(z); err != nil {
			return nil, false
		}
	default:
		return nil, false
	}
	if want, given := c.Inputs["sha256"].(string); given {
		sum := sha256.Sum256(b)
		return b, want == hex.EncodeToString(sum[:])
	}
	return b, true
}

func wholeFile(c Case) (map[string]any, bool) {
	b, ok := shippedFile(c)
	if !ok {
		return nil, false
	}
	if year, ok := c.Inputs["year"].(float64); ok {
		return yearOfFile(c, int(year))
	}
	if weather.Sniff(b[:min(len(b), 4096)]) == weather.KindHourly {
		return hourlyFile(b)
	}
	sheet, _ := weather.ReadSheet("", "", bytes.NewReader(b))
	if len(sheet.Rows) == 0 {
		return nil, false
	}
	stats := map[string]any{}
	got := map[string]any{
		"data_rows": float64(sheet.Lines), "columns": texts(sheet.Columns),
		"first_date": sheet.Rows[0].Day.String(), "last_date": sheet.Rows[len(sheet.Rows)-1].Day.String(),
		"missing_days": float64(sheet.MissingDays()), "stats": stats,
		"duplicate_dates_if_location_ignored": float64(sheet.Repeats),
	}
	for _, name := range sheet.Columns {
		if q := weather.QuantityOf(name); q != "" {
			stats[name] = summary(sheet.Values(q))
		}
		if words := sheet.Words[name]; words != nil {
			got[name+"_counts"] = counts(words)
		}
	}
	return got, true
}

func summary(vs []float64) map[string]any {
	s := weather.Summarise(vs)
	return map[string]any{"count": float64(s.Count), "sum": s.Sum, "mean": s.Mean, "min": s.Min, "max": s.Max}
}

func texts(ss []string) []any {
	out := make([]any, len(ss))
	for i, s := range ss {
		out[i] = s
	}
	return out
}

func counts(words map[string]int) map[string]any {
	out := map[string]any{}
	for w, n := range words {
		out[w] = float64(n)
	}
	return out
}

func hourlyFile(b []byte) (map[string]any, bool) {
	h, _ := weather.ReadHourly("", bytes.NewReader(b))
	if h == nil {
		return nil, false
	}
	return map[string]any{
		"data_rows": float64(len(h.TempC)), "columns": texts(h.Columns), "first": h.First, "last": h.Last,
		"stats": map[string]any{"pressure": summary(h.PressureHPa), "temperature": summary(h.TempC), "wind": summary(h.WindMS)},
	}, true
}

func yearOfFile(c Case, year int) (map[string]any, bool) {
	rec, ok := shippedRecord(c)
	if !ok {
		return nil, false
	}
	y := rec.Year(year)
	rain, tmax, tmin := map[string]any{}, map[string]any{}, map[string]any{}
	for m := range y.RainMM {
		name := fmt.Sprintf("%02d", m+1)
		rain[name], tmax[name], tmin[name] = y.RainMM[m], y.TmaxC[m], y.TminC[m]
	}
	return map[string]any{
		"days": float64(y.Days), "rain_sum_mm": rain, "tmax_mean_C": tmax, "tmin_mean_C": tmin,
		"days_tmin_le_0": float64(y.FrostDays), "days_tmax_ge_30": float64(y.HotDays),
		"wettest_day": y.Wettest.String(), "dry_days": float64(y.DryDays),
		"longest_dry_spell_days": float64(y.LongestDry), "gdd_base10_simple_average_zero_after": y.Heat10,
	}, true
}

// dlyLayout asks the reader for the columns of every field the case names.
func dlyLayout(c Case) map[string]any {
	fields, units := map[string]any{}, map[string]any{}
	named, _ := c.Expect["fields"].(map[string]any)
	for name := range named {
		if from, to, ok := weather.DLYColumns(name); ok {
			fields[name] = []any{float64(from), float64(to)}
		}
	}
	elements, _ := c.Expect["units"].(map[string]any)
	for e := range elements {
		if _, inFile, _, ok := weather.GHCNUnit(e); ok {
			units[e] = inFile
		}
	}
	length, missing := weather.DLYLength()
	return map[string]any{"fields": fields, "record_length": float64(length), "missing": float64(missing), "units": units}
}

// dlyFlags asks the reader for the meaning of every flag the case names.
func dlyFlags(c Case) map[string]any {
	measure, quality := map[string]any{}, map[string]any{}
	named, _ := c.Expect["MFLAG"].(map[string]any)
	for f := range named {
		measure[f] = weather.MeasureFlag(f)
	}
	named, _ = c.Expect["QFLAG_examples"].(map[string]any)
	for f := range named {
		if means, use := weather.QualityFlag(f); !use {
			quality[f] = means
		}
	}
	blank, _ := weather.QualityFlag(" ")
	other, _ := weather.QualityFlag("?")
	return map[string]any{"MFLAG": measure, "QFLAG_blank": blank, "QFLAG_any_other": other, "QFLAG_examples": quality}
}

func dlyRecord(c Case) (map[string]any, bool) {
	line, ok := c.Inputs["record"].(string)
	if !ok {
		return nil, false
	}
	m, faults := weather.ParseDLY(line)
	values, sum := map[string]any{}, []float64{}
	for k, v := range m.Values {
		name := strconv.Itoa(k + 1)
		values[name] = nil
		if v != nil {
			values[name] = *v
			sum = append(sum, *v)
		}
	}
	s := weather.Summarise(sum)
	got := map[string]any{
		"station": m.Station, "year": float64(m.Year), "month": float64(m.Month), "element": m.Element,
		"days_in_month": float64(len(m.Values)), "values_by_day": values, "valid_count": float64(s.Count),
		"dropped_for_quality": numbers(m.Flagged), "trace_days": numbers(m.Trace), "unit": m.Unit, "sum": s.Sum,
		"accept": len(faults) == 0, "length": float64(len(line)),
	}
	if !m.Whole() {
		got["or"] = m.CutOff()
	}
	if id, ok := sameRecord(c.ID, m); ok {
		got["same_as"] = id
	}
	return got, true
}

func numbers(ns []int) []any {
	out := make([]any, len(ns))
	for i, n := range ns {
		out[i] = float64(n)
	}
	return out
}

// sameRecord finds another shipped case whose line reads the same.
func sameRecord(id string, m weather.Month) (string, bool) {
	var file struct{ Cases []Case }
	if err := json.Unmarshal(shippedFileCases, &file); err != nil {
		return "", false
	}
	for _, other := range file.Cases {
		line, ok := other.Inputs["record"].(string)
		if !ok || other.ID == id {
			continue
		}
		if o, faults := weather.ParseDLY(line); len(faults) == 0 && reflect.DeepEqual(o, m) {
			return other.ID, true
		}
	}
	return "", false
}

func longLine(c Case) (map[string]any, bool) {
	line, _ := c.Inputs["line"].(string)
	o, _, ok := weather.ParseLong(line)
	if !ok {
		return nil, false
	}
	got := map[string]any{
		"station": o.Station, "date": o.Day.String(), "element": o.Element, "value": o.Value, "unit": o.Unit,
		"use": o.Use, "trace": o.Trace, "why": o.Why, "obs_time": nil,
	}
	if o.ObsTime != "" {
		got["obs_time"] = o.ObsTime
	}
	return got, true
}

func wideText(c Case) (map[string]any, bool) {
	text, _ := c.Inputs["text"].(string)
	sheet, _ := weather.ReadSheet("", "", strings.NewReader(text))
	got := map[string]any{"rows": float64(sheet.Lines), "name": sheet.PlaceName}
	for i, r := range sheet.Rows {
		day := map[string]any{
			"date": r.Day.String(), "rain_mm": orNone(r.RainMM), "tmax_C": orNone(r.TmaxC), "tmin_C": orNone(r.TminC),
		}
		if r.Trace {
			day["trace"] = true
		}
		got["day"+strconv.Itoa(i+1)] = day
	}
	return got, true
}

func orNone(v *float64) any {
	if v == nil {
		return nil
	}
	return *v
}

// badRow reads a heading and one line, and reports the first fault.
func badRow(c Case) (map[string]any, bool) {
	header, _ := c.Inputs["header"].(string)
	line, _ := c.Inputs["line"].(string)
	_, faults := weather.ReadSheet("", "", strings.NewReader(header+"\n"+line+"\n"))
	got := map[string]any{"silently_accept": len(faults) == 0}
	if len(faults) > 0 {
		got["flag"] = faults[0].What
	}
	return got, true
}
