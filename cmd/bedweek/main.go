// Command bedweek plans a crowded food garden week by week and keeps its
// record. See README.md; `bedweek help` lists the commands.
package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
	"time"
)

// Exit codes, the same for every command.
const (
	exitDone   = 0 // done
	exitNo     = 1 // the answer is no, or faults were found
	exitUsage  = 2 // wrong usage
	exitPartly = 3 // verify only: nothing outside, some cases not covered
)

// world is what a command may touch: its streams and the clock.
type world struct {
	out, err io.Writer
	in       io.Reader // nil = standard input
	now      func() time.Time
	polite   *manners // nil = planning gives way to nobody
}

// command is one word of the command line.
type command struct {
	name, short, help string
	run               func(ctx context.Context, w *world, args []string) int
}

func commands() []command {
	return []command{
		{"demo", "plan the built-in garden on real weather and open the pages", helpDemo, runDemo},
		{"serve", "keep a garden in a data folder and serve its pages", helpServe, runServe},
		{"new", "begin a garden file by answering a few questions", helpNew, runNew},
		{"check", "print every fault of a garden file", helpCheck, runCheck},
		{"plan", "print the season plan of a garden file", helpPlan, runPlan},
		{"water", "say who runs dry first and how much to give", helpWater, runWater},
		{"windows", "print when each crop may be sown or set out at a place", helpWindows, runWindows},
		{"light", "print the sun and light on each space, by month", helpLight, runLight},
		{"verify", "recompute published cases on this machine", helpVerify, runVerify},
		{"audit", "check a data folder: database, digests, replay, backups", helpAudit, runAudit},
		{"backup", "make and prove a backup of a data folder", helpBackup, runBackup},
		{"restore", "put a data folder back to a proven backup", helpRestore, runRestore},
		{"drill", "try every backup: restore it aside, check and count it", helpDrill, runDrill},
		{"import", "take over the entries of an exported folder", helpImport, runImport},
		{"export", "write a data folder as CSV and JSON anyone can read", helpExport, runExport},
	}
}

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	os.Exit(run(ctx, &world{out: os.Stdout, err: os.Stderr, now: time.Now, polite: newManners()}, os.Args[1:]))
}

func run(ctx context.Context, w *world, args []string) int {
	if len(args) == 0 {
		usage(w.err)
		return exitUsage
	}
	switch args[0] {
	case "help", "-h", "--help", "-help":
		if len(args) > 1 {
			for _, c := range commands() {
				if c.name == args[1] {
					fmt.Fprint(w.out, c.help)
					return exitDone
				}
			}
		}
		usage(w.out)
		return exitDone
	}
	for _, c := range commands() {
		if c.name == args[0] {
			return c.run(ctx, w, args[1:])
		}
	}
	fmt.Fprintf(w.err, "bedweek: there is no command %q. Try: bedweek help\n", args[0])
	return exitUsage
}

func usage(w io.Writer) {
	fmt.Fprintln(w, "bedweek: what should each growing space be doing this week and next?")
	fmt.Fprintln(w)
	for _, c := range commands() {
		fmt.Fprintf(w, "  bedweek %-8s %s\n", c.name, c.short)
	}
	fmt.Fprintln(w)
	fmt.Fprintln(w, "Each command explains itself: bedweek plan -h")
	fmt.Fprintln(w, "Exit codes: 0 done, 1 the answer is no or faults were found, 2 wrong usage.")
}

// flags is a flag set whose flags may stand before or after the names.
func flags(name string) *flag.FlagSet {
	fs := flag.NewFlagSet(name, flag.ContinueOnError)
	fs.SetOutput(io.Discard)
	fs.Usage = func() {}
	return fs
}

// parse reads flags and names in any order. When done is true the command has
// nothing more to do and returns code.
func parse(w *world, fs *flag.FlagSet, help string, args []string) (names []string, code int, done bool) {
	for {
		err := fs.Parse(args)
		switch {
		case errors.Is(err, flag.ErrHelp):
			fmt.Fprint(w.out, help)
			return nil, exitDone, true
		case err != nil:
			fmt.Fprintf(w.err, "bedweek %s: %v\nTry: bedweek %s -h\n", fs.Name(), err, fs.Name())
			return nil, exitUsage, true
		}
		if fs.NArg() == 0 {
			return names, 0, false
		}
		names = append(names, fs.Arg(0))
		args = fs.Args()[1:]
	}
}

// wrong says what is wrong with the call.
func wrong(w *world, name, format string, a ...any) int {
	fmt.Fprintf(w.err, "bedweek %s: %s\nTry: bedweek %s -h\n", name, fmt.Sprintf(format, a...), name)
	return exitUsage
}
