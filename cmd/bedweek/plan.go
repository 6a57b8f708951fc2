package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"bedweek/internal/crop"
	"bedweek/internal/reckon"
	"bedweek/internal/season"
)

const helpPlan = `bedweek plan GARDEN [-weather FILE] [-from DATE] [-weeks N] [-work N | -seconds S] [-seed N] [-json] [-mps FILE]

Print the season plan of a garden file: what to start where and when, what
stays, what will be on the table, and how sure all this is.

  bedweek plan demo/garden.yaml
  bedweek plan demo/garden.yaml -from 2015-08-24 -json

  -weather FILE  a daily record (CSV, GHCN .dly) or twelve monthly normals;
                 without it the file named in the garden file is used
  -from DATE     plan from this day (year-month-day); else the garden file's
                 date, else today
  -weeks N       how many weeks, 8 to 78 (60)
  -work N        search moves; the same work gives the same plan anywhere
  -seconds S     price and search for S seconds instead; the plan then depends on the
                 machine, and says that it was stopped
  -seed N        draws the futures and steers the search (1)
  -json          print JSON
  -mps FILE      also write the model that was solved, in free MPS, for any
                 solver to check; the plan goes beside it with the ending .sol

Exit 0: a plan. 1: faults, or the musts cannot all be met. 2: wrong usage.
`

func runPlan(ctx context.Context, w *world, args []string) int {
	fs := flags("plan")
	file := fs.String("weather", "", "")
	from := fs.String("from", "", "")
	weeks := fs.Int("weeks", reckon.DefaultWeeks, "")
	work := fs.Int("work", reckon.DefaultWork, "")
	seconds := fs.Float64("seconds", 0, "")
	seed := fs.Uint64("seed", 1, "")
	asJSON := fs.Bool("json", false, "")
	mps := fs.String("mps", "", "")
	names, code, done := parse(w, fs, helpPlan, args)
	if done {
		return code
	}
	switch {
	case len(names) != 1:
		return wrong(w, "plan", "name one garden file")
	case *weeks < reckon.MinWeeks || *weeks > reckon.MaxWeeks:
		return wrong(w, "plan", "-weeks %d: want %d to %d", *weeks, reckon.MinWeeks, reckon.MaxWeeks)
	case *work < 0 || *work > 1_000_000_000:
		return wrong(w, "plan", "-work %d: want 0 to a thousand million", *work)
	case *seconds < 0 || *seconds > 86400:
		return wrong(w, "plan", "-seconds %g: want 0 to 86400", *seconds)
	}
	in, code := loadInputs(w, "plan", names[0], *file, *from)
	if in == nil {
		return code
	}
	in.Weeks, in.Work, in.Seed = *weeks, *work, *seed
	in.Progress = progress(w)
	ground, err := reckon.NewGround(in)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek plan: %v\n", err)
		return exitNo
	}
	if in.Seconds = *seconds; in.Seconds > 0 {
		in.Work = 1_000_000_000
	}
	r, err := reckon.Reckon(ctx, in, ground)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek plan: %v\n", err)
		return exitNo
	}
	in.Progress("weighing what can wait")
	r.Day = r.Day.WithLater(r.Later(ctx))
	if *mps != "" {
		if err := writeModel(w, *mps, r); err != nil {
			fmt.Fprintf(w.err, "bedweek plan: %v\n", err)
			return exitNo
		}
	}
	if *asJSON {
		enc := json.NewEncoder(w.out)
		enc.SetIndent("", " ")
		if err := enc.Encode(r.JSON()); err != nil {
			fmt.Fprintf(w.err, "bedweek plan: writing: %v\n", err)
			return exitNo
		}
	} else {
		printDay(w.out, r.Day)
	}
	if r.Infeasible() {
		return exitNo
	}
	return exitDone
}

// largeModel is the size, in options, from which few solvers get anywhere.
const largeModel = 3000

// writeModel writes the model and the plan beside it.
func writeModel(w *world, path string, r *reckon.Result) error {
	if n := len(r.Problem.Options); n > largeModel {
		fmt.Fprintf(w.err, "the model has %d possible plantings in %d spaces over %d weeks: large for most solvers; written all the same\n",
			n, len(r.Problem.Spaces), r.Problem.Weeks)
	}
	_, _, bound := r.Expected()
	for _, f := range []struct {
		path  string
		write func(io.Writer) error
	}{
		{path, func(out io.Writer) error { return season.WriteMPS(out, r.Problem) }},
		{strings.TrimSuffix(path, ".mps") + ".sol", func(out io.Writer) error { return season.WriteSol(out, r.Problem, &r.Plan, bound) }},
	} {
		out, err := os.Create(f.path)
		if err != nil {
			return fmt.Errorf("writing the model: %w", err)
		}
		if err := errors.Join(f.write(out), out.Close()); err != nil {
			return fmt.Errorf("writing %s: %w", f.path, err)
		}
	}
	return nil
}

// loadInputs reads garden, weather and book; nil with an exit code on faults.
func loadInputs(w *world, cmd, path, weatherPath, from string) (*reckon.Inputs, int) {
	text, err := os.ReadFile(path)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek %s: reading the garden: %v\n", cmd, err)
		return nil, exitUsage
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek %s: %v\n", cmd, err)
		return nil, exitNo
	}
	g, ok := readGarden(w, path, text, book)
	if !ok {
		return nil, exitNo
	}
	date, err := planDate(w, from, g)
	if err != nil {
		return nil, wrong(w, cmd, "-from: %v", err)
	}
	c, code := weatherFor(w, cmd, weatherPath, path, g)
	if code != exitDone {
		return nil, code
	}
	return inputs(w, g, book, c, date), exitDone
}
