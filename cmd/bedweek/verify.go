package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"

	"bedweek/internal/verify"
)

const helpVerify = `bedweek verify [-json] [PATH...]

Recompute published and independently computed cases with the very engines the
plan uses. A PATH is a case file or a folder of case files (*.json). With no
PATH the cases that ship inside the program are used.

  bedweek verify
  bedweek verify -json cases/sun_position.json

Prints a line a topic, then every value outside its tolerance.
Exit 0: all within. 1: some outside. 3: none outside, but some are not covered
(never counted as passed). 2: wrong usage or an unreadable file.
`

func runVerify(_ context.Context, w *world, args []string) int {
	fs := flags("verify")
	asJSON := fs.Bool("json", false, "print JSON")
	paths, code, done := parse(w, fs, helpVerify, args)
	if done {
		return code
	}
	topics, errs := caseTopics(paths)
	if len(errs) > 0 {
		for _, e := range errs {
			fmt.Fprintf(w.err, "bedweek verify: %v\n", e)
		}
		return exitUsage
	}
	r := verify.Run(topics)
	if *asJSON {
		enc := json.NewEncoder(w.out)
		enc.SetIndent("", "  ")
		if err := enc.Encode(r); err != nil {
			fmt.Fprintf(w.err, "bedweek verify: writing: %v\n", err)
			return exitNo
		}
	} else {
		printVerify(w, r)
	}
	t := r.Totals()
	switch {
	case t.Outside > 0:
		return exitNo
	case t.NotCovered > 0:
		return exitPartly
	}
	return exitDone
}

func printVerify(w *world, r verify.Report) {
	fmt.Fprintf(w.out, "%-22s %6s %7s %8s %12s\n", "topic", "cases", "within", "outside", "not covered")
	for _, t := range append(r.Topics, r.Totals()) {
		fmt.Fprintf(w.out, "%-22s %6d %7d %8d %12d\n", t.Topic, t.Cases, t.Within, t.Outside, t.NotCovered)
	}
	for _, m := range r.Outside {
		fmt.Fprintf(w.out, "\noutside: %s %s, %s\n  got %v, want %v, tolerance %v\n  source: %s\n", m.Topic, m.ID, m.Key, m.Got, m.Want, m.Tolerance, m.Source)
	}
}

// caseTopics reads all named files and folders and returns every fault.
func caseTopics(paths []string) ([]verify.Topic, []error) {
	if len(paths) == 0 {
		t, err := verify.Shipped()
		if err != nil {
			return nil, []error{err}
		}
		return t, nil
	}
	var files []string
	var errs []error
	for _, p := range paths {
		st, err := os.Stat(p)
		if err != nil {
			errs = append(errs, fmt.Errorf("%s: there is no such file or folder", p))
			continue
		}
		if !st.IsDir() {
			files = append(files, p)
			continue
		}
		in, err := filepath.Glob(filepath.Join(p, "*.json"))
		if err != nil || len(in) == 0 {
			errs = append(errs, fmt.Errorf("%s: no case files (*.json) in this folder", p))
			continue
		}
		sort.Strings(in)
		files = append(files, in...)
	}
	var topics []verify.Topic
	for _, f := range files {
		b, err := os.ReadFile(f)
		if err != nil {
			errs = append(errs, fmt.Errorf("reading %s: %w", f, err))
			continue
		}
		t, err := verify.Parse(strings.TrimPrefix(f, "./"), b)
		if err != nil {
			errs = append(errs, err)
			continue
		}
		topics = append(topics, t)
	}
	return topics, errs
}
