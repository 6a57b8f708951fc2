package main

import (
	"context"
	"fmt"
	"os"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

const helpCheck = `bedweek check [-schema] GARDEN

Read a garden file and print every fault at once, each with its place, the
text, what is wrong and what to try. Nothing is written.

  bedweek check demo/garden.yaml
  bedweek check -schema > garden-file.schema.json

Exit 0: no faults. 1: faults. 2: wrong usage or no such file.
`

func runCheck(_ context.Context, w *world, args []string) int {
	fs := flags("check")
	schema := fs.Bool("schema", false, "print the JSON Schema of garden files")
	names, code, done := parse(w, fs, helpCheck, args)
	if done {
		return code
	}
	if *schema {
		w.out.Write(garden.Schema())
		return exitDone
	}
	if len(names) != 1 {
		return wrong(w, "check", "name one garden file")
	}
	text, err := os.ReadFile(names[0])
	if err != nil {
		fmt.Fprintf(w.err, "bedweek check: reading the garden: %v\n", err)
		return exitUsage
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek check: %v\n", err)
		return exitNo
	}
	// Faults are the answer here, so they go to the output.
	g, ok := readGarden(&world{out: w.out, err: w.out, now: w.now}, names[0], text, book)
	if !ok {
		return exitNo
	}
	standing := 0
	for _, s := range g.Spaces {
		standing += len(s.Standing)
	}
	fmt.Fprintf(w.out, "%s: no faults. %s, %s standing, %s, %s.\n", names[0],
		count(len(g.Spaces), "space"), count(standing, "planting"), count(len(g.Obstacles), "obstacle"), count(len(g.Wants), "want"))
	return exitDone
}
