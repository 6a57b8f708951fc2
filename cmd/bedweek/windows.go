package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/reckon"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

const helpWindows = `bedweek windows [CROP...] -place LAT,LON[,ELEV] -weather FILE [-json]

Print when each crop may be sown, set out or planted in a plain open bed of
30 cm good medium in full sun: the days that work and, within them, the best.
With no CROP all crops of the book are printed.

  bedweek windows carrot tomato -place 47.45,-122.31,130 -weather seattle-weather.csv

  -place    latitude north, longitude east, metres above the sea
  -weather  a daily record (CSV, GHCN .dly) or twelve monthly normals
            (month,tmax_c,tmin_c,rain_mm)

Exit 0: printed. 1: faults in the weather file. 2: wrong usage.
`

// WindowJSON is one crop and way as the contract promises it.
type windowJSON struct {
	Crop    string      `json:"crop"`
	Way     string      `json:"way"`
	AllYear bool        `json:"all_year"`
	Quick   int         `json:"quick_days,omitempty"`
	Works   []rangeJSON `json:"works"`
	Kinds   []kindJSON  `json:"only_kinds,omitempty"`
	Best    []rangeJSON `json:"best"`
	Picks   []pickJSON  `json:"first_pick"`
}

type kindJSON struct {
	Kind string `json:"kind"`
	Days int    `json:"days"`
	From string `json:"from"`
	To   string `json:"to"`
}

type rangeJSON struct {
	From      string `json:"from"`
	To        string `json:"to"`
	LimitFrom string `json:"limit_from"`
	LimitTo   string `json:"limit_to"`
	OfFrom    int    `json:"success_of_20_from"`
	OfTo      int    `json:"success_of_20_to"`
	WaitFrom  int    `json:"too_cold_of_20_from"`
	WaitTo    int    `json:"too_cold_of_20_to"`
}

type pickJSON struct {
	Start  string `json:"start"`
	Early  string `json:"early"`
	Likely string `json:"likely"`
	Late   string `json:"late"`
}

func runWindows(_ context.Context, w *world, args []string) int {
	fs := flags("windows")
	at := fs.String("place", "", "")
	file := fs.String("weather", "", "")
	asJSON := fs.Bool("json", false, "")
	names, code, done := parse(w, fs, helpWindows, args)
	if done {
		return code
	}
	site, err := parsePlace(*at)
	if err != nil {
		return wrong(w, "windows", "-place: %v", err)
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek windows: %v\n", err)
		return exitNo
	}
	crops, code := chosen(w, book, names)
	if code != exitDone {
		return code
	}
	if *file == "" {
		return wrong(w, "windows", "which weather? Give -weather FILE")
	}
	text, err := os.ReadFile(*file)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek windows: reading the weather: %v\n", err)
		return exitUsage
	}
	c, ok := readClimate(w, *file, text, site)
	if !ok {
		return exitNo
	}
	rows, words, err := reckon.OpenBedWindows(crops, c.record, c.normals, site)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek windows: %v\n", err)
		return exitNo
	}
	if *asJSON {
		out := []windowJSON{}
		for _, r := range rows {
			out = append(out, asWindowJSON(r))
		}
		enc := json.NewEncoder(w.out)
		enc.SetIndent("", " ")
		if err := enc.Encode(out); err != nil {
			fmt.Fprintf(w.err, "bedweek windows: writing: %v\n", err)
			return exitNo
		}
		return exitDone
	}
	para(w.out, "", words)
	for _, r := range rows {
		printWindow(w, book, r)
	}
	return exitDone
}

// parsePlace reads LAT,LON[,ELEV] and names every fault.
func parsePlace(s string) (weather.Site, error) {
	var site weather.Site
	parts := strings.Split(s, ",")
	if s == "" || len(parts) < 2 || len(parts) > 3 {
		return site, fmt.Errorf("want latitude,longitude or latitude,longitude,metres, such as 47.45,-122.31,130")
	}
	var faults []string
	for i, lim := range []struct {
		name string
		most float64
		to   *float64
	}{{"latitude", 90, &site.LatDeg}, {"longitude", 180, &site.LonDeg}, {"elevation", 6000, &site.ElevM}} {
		if i >= len(parts) {
			break
		}
		v, err := strconv.ParseFloat(strings.TrimSpace(parts[i]), 64)
		if err != nil || v != v || v < -lim.most || v > lim.most {
			faults = append(faults, fmt.Sprintf("%s %q: want a number from -%g to %g", lim.name, parts[i], lim.most, lim.most))
			continue
		}
		*lim.to = v
	}
	if len(faults) > 0 {
		return site, fmt.Errorf("%s", strings.Join(faults, "; "))
	}
	return site, nil
}

// chosen looks the crops up and names every unknown one.
func chosen(w *world, book *crop.Book, names []string) ([]*crop.Crop, int) {
	if len(names) == 0 {
		return book.Crops, exitDone
	}
	var out []*crop.Crop
	bad := false
	for _, n := range names {
		c, ok := book.Crop(crop.ID(n))
		if !ok {
			bad = true
			fmt.Fprintf(w.err, "bedweek windows: the book has no crop %q.", n)
			if near, ok := book.Nearest(n); ok {
				fmt.Fprintf(w.err, " Did you mean %s?", near)
			}
			fmt.Fprintln(w.err)
			continue
		}
		out = append(out, c)
	}
	if bad {
		return nil, exitUsage
	}
	return out, exitDone
}

func monthDay(d cal.Day) string { return d.String()[5:] }

func asWindowJSON(r stand.Window) windowJSON {
	j := windowJSON{Crop: string(r.Crop), Way: string(r.Way), AllYear: r.AllYear, Quick: r.Quick, Works: ranges(r.Works), Best: ranges(r.Best), Picks: []pickJSON{}}
	for _, k := range r.Kinds {
		j.Kinds = append(j.Kinds, kindJSON{string(k.Kind), k.Days, monthDay(k.From), monthDay(k.To)})
	}
	for _, p := range r.Picks {
		j.Picks = append(j.Picks, pickJSON{monthDay(p.Start), monthDay(p.First.Early), monthDay(p.First.Likely), monthDay(p.First.Late)})
	}
	return j
}

func ranges(rs []stand.Range) []rangeJSON {
	out := []rangeJSON{}
	for _, r := range rs {
		out = append(out, rangeJSON{monthDay(r.From), monthDay(r.To), r.LimitFrom, r.LimitTo, r.SuccessFrom, r.SuccessTo, r.WaitFrom, r.WaitTo})
	}
	return out
}

// endCount is how often a start at a window's end works, of twenty years, and
// how often it is still too cold to make it.
func endCount(works, wait int) string {
	if wait == 0 {
		return fmt.Sprintf("%d of 20", works)
	}
	return fmt.Sprintf("%d of 20, still too cold in %d", works, wait)
}

func printWindow(w *world, book *crop.Book, r stand.Window) {
	c, _ := book.Crop(r.Crop)
	fmt.Fprintf(w.out, "%s, %s\n", c.Name, r.Way)
	if r.AllYear {
		fmt.Fprintln(w.out, "   works all year")
	}
	if len(r.Works) == 0 && !r.AllYear {
		fmt.Fprintln(w.out, "   never works here")
	}
	for _, set := range []struct {
		name string
		rs   []stand.Range
	}{{"works", r.Works}, {"best", r.Best}} {
		for _, x := range set.rs {
			fmt.Fprintf(w.out, "   %-5s %s (%s; before: %s) to %s (%s; after: %s)\n", set.name,
				x.From.Short(), endCount(x.SuccessFrom, x.WaitFrom), x.LimitFrom, x.To.Short(), endCount(x.SuccessTo, x.WaitTo), x.LimitTo)
		}
	}
	for _, k := range r.Kinds {
		with := "with "
		if k.Kind == stand.CutYoung {
			with = ""
		}
		fmt.Fprintf(w.out, "   only  %s to %s %s%s (%d days)\n", k.From.Short(), k.To.Short(), with, k.Kind, k.Days)
	}
	if r.Quick > 0 && !slices.ContainsFunc(r.Kinds, func(k stand.KindRange) bool { return k.Kind == stand.Quick }) {
		fmt.Fprintf(w.out, "   the middle varieties hardly have time here; quick ones are ready in about %d days\n", r.Quick)
	}
	for i, p := range r.Picks {
		if i > 0 && p.Start == r.Picks[i-1].Start { // a short range has one day for two of its three
			continue
		}
		fmt.Fprintf(w.out, "   started %s, first pick %s\n", p.Start.Short(), p.First)
	}
}
