package main

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

const helpWater = `bedweek water GARDEN [-weather FILE] [-date DATE] [-away DAYS] [-json]

Say who runs dry first: for each space the litres a day it drinks now, when it
runs dry, the litres to give, the minutes for its line, and what a time away
would kill.

  bedweek water demo/garden.yaml
  bedweek water demo/garden.yaml -date 2015-07-20 -away 7

  -weather FILE  a daily record (CSV, GHCN .dly) or twelve monthly normals;
                 without it the file named in the garden file is used
  -date DATE     that morning, 7 o'clock (year-month-day); else the garden
                 file's date, else today
  -away DAYS     days nobody comes, 1 to 60, after a good soak
  -json          print JSON

What stands is what the garden file says stood on its own date, grown on to the
date asked for. Exit 0: done. 1: faults were found. 2: wrong usage.
`

// Morning round: the hour from which drying is counted, and the hours until
// the next visit, tomorrow evening at the latest.
const (
	roundHour = 7
	nextVisit = 24
)

// waterWeeks is how far the futures must reach: no plan is made.
const waterWeeks = reckon.MinWeeks + 4

func runWater(_ context.Context, w *world, args []string) int {
	fs := flags("water")
	file := fs.String("weather", "", "")
	date := fs.String("date", "", "")
	away := fs.Int("away", 0, "")
	asJSON := fs.Bool("json", false, "")
	names, code, done := parse(w, fs, helpWater, args)
	if done {
		return code
	}
	switch {
	case len(names) != 1:
		return wrong(w, "water", "name one garden file")
	case *away < 0 || *away > reckon.MostAway:
		return wrong(w, "water", "-away %d: want 1 to %d days", *away, reckon.MostAway)
	}
	if *date != "" {
		if _, err := cal.Parse(*date); err != nil {
			return wrong(w, "water", "-date: %v", err)
		}
	}
	in, code := loadInputs(w, "water", names[0], *file, *date)
	if in == nil {
		return code
	}
	in.Weeks = waterWeeks
	place, err := reckon.NewPlace(in)
	if err == nil {
		var d *reckon.Dryness
		d, err = reckon.Dry(in, place, reckon.DryAsk{FromHour: roundHour, NextH: nextVisit, AwayDays: *away})
		if err == nil && *asJSON {
			enc := json.NewEncoder(w.out)
			enc.SetIndent("", " ")
			err = enc.Encode(d.JSON())
		} else if err == nil {
			printDry(w.out, d)
		}
	}
	if err != nil {
		fmt.Fprintf(w.err, "bedweek water: %v\n", err)
		return exitNo
	}
	return exitDone
}

// printDry prints who runs dry first.
func printDry(w io.Writer, d *reckon.Dryness) {
	fmt.Fprintf(w, "%s, %s, %d o'clock\nWHO RUNS DRY FIRST\n", d.Garden, d.Date.Long(), d.FromHour)
	var empty, cautions, places []string
	for _, r := range d.Rows {
		if r.Empty {
			r.Caution = ""
		}
		cautions, places = append(cautions, r.Caution), append(places, r.Name)
	}
	care := reckon.CareOnce(cautions, places)
	for i, r := range d.Rows {
		if r.Empty {
			empty = append(empty, r.Name)
			continue
		}
		fmt.Fprintf(w, "\n%s (%s, %s)\n", r.Name, r.Kind, strings.Join(r.Crops, ", "))
		para(w, "   ", r.When)
		para(w, "   ", fmt.Sprintf("It drinks about %s a day now; it holds about %s.", litreFigure(r.Answer.DrinksL.Likely), litreFigure(r.Answer.HoldsL)))
		para(w, "   ", r.Give)
		para(w, "   ", r.Out)
		para(w, "   ", r.Learned)
		para(w, "   look first: ", r.Look)
		para(w, "   take care: ", care[i])
	}
	if len(empty) > 0 {
		fmt.Fprintln(w)
		para(w, "Nothing stands in: ", strings.Join(empty, ", ")+".")
	}
	fmt.Fprintf(w, "\nTAKEN FOR GRANTED\n")
	for _, t := range d.Taken {
		para(w, "   ", t)
	}
	para(w, "   ", d.Weather)
}

func litreFigure(l float64) string {
	if l < 3 {
		return fmt.Sprintf("%.1f L", l)
	}
	return fmt.Sprintf("%.0f L", l)
}
