package main

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"slices"

	"bedweek/demo"
	"bedweek/demo/story"
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

const helpDemo = `bedweek demo [-once] [-south] [-date DATE] [-port N] [-data DIR]

Plan an invented garden on a real weather record and serve its pages on this
machine only. Two dates are worth seeing: 2015-04-06, the change from cool to
warm crops, and 2015-08-24, late summer with a season's notes behind it.

  bedweek demo
  bedweek demo -once -date 2015-08-24

  -once       print the plan as a short report and stop
  -south      the small garden south of the equator
  -date DATE  answer for this day (2015-04-06; in the south 2015-10-05)
  -port N     the port on loopback (8750)
  -data DIR   keep what you note in this folder; else it is thrown away

Exit 0: done. 1: it could not be planned. 2: wrong usage.
`

func runDemo(ctx context.Context, w *world, args []string) int {
	fs := flags("demo")
	once := fs.Bool("once", false, "")
	south := fs.Bool("south", false, "")
	date := fs.String("date", "", "")
	port := fs.Int("port", 8750, "")
	data := fs.String("data", "", "")
	names, code, done := parse(w, fs, helpDemo, args)
	if done {
		return code
	}
	if len(names) > 0 {
		return wrong(w, "demo", "it takes no names, only flags; found %q", names[0])
	}
	fmt.Fprintln(w.err, "Bedweek demo: an invented garden on a real weather record. Planning takes some seconds.")
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek demo: %v\n", err)
		return exitNo
	}
	text, name := demo.GardenYAML, "demo/garden.yaml"
	if *south {
		text, name = demo.SouthYAML, "demo/south.yaml"
	}
	g, ok := readGarden(w, name, text, book)
	if !ok {
		return exitNo
	}
	day, err := planDate(w, *date, g)
	if err != nil {
		return wrong(w, "demo", "-date: %v", err)
	}
	var c climate
	if *south {
		c, ok = readClimate(w, "demo/south-normals.csv", demo.SouthNormalsCSV, siteOf(g))
	} else {
		c, ok = readClimate(w, "demo/seattle-weather.csv", demo.SeattleCSV, siteOf(g))
	}
	if !ok {
		return exitNo
	}
	if c.record != nil && (day < c.record.Start+365 || day > c.record.Start+cal.Day(len(c.record.Days))+365) {
		return wrong(w, "demo", "-date %s: the demo's record runs from %s to %s; choose a day from its second year on", day, c.record.Start, c.record.Start+cal.Day(len(c.record.Days)-1))
	}
	dir := *data
	if dir == "" {
		if dir, err = os.MkdirTemp("", "bedweek-demo-"); err != nil {
			fmt.Fprintf(w.err, "bedweek demo: making a folder: %v\n", err)
			return exitNo
		}
		defer os.RemoveAll(dir)
	}
	led, err := ledger.Open(dir, ledger.Options{Now: w.now})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek demo: %v\n", err)
		return exitNo
	}
	defer led.Close()
	if err := seedDemo(ctx, led, text, g, day, *south); err != nil {
		fmt.Fprintf(w.err, "bedweek demo: %v\n", err)
		return exitNo
	}
	in := inputs(w, g, book, c, day)
	in.Demo, in.Progress = true, progress(w)
	if !*once {
		w.polite.makeRoom()
	}
	ctx, stop := context.WithCancel(w.polite.with(ctx))
	begin := soonDesk
	if *once {
		begin = newDesk
	}
	d, err := begin(ctx, led, *in, w.now)
	if err != nil {
		stop()
		fmt.Fprintf(w.err, "bedweek demo: %v\n", err)
		return exitNo
	}
	d.climate = climateElse(c, g.Place.Weather, led.Dir())
	if err == nil && d.text != string(text) { // the folder's garden was changed through the pages
		d.text = "as built in"
		if err = d.readText(ctx); err == nil {
			d.again()
		}
	}
	defer d.idle.Wait()
	defer stop()
	if *once {
		r := d.asking()
		printDay(w.out, r.Day.WithLater(r.Later(ctx)))
		return exitDone
	}
	return listen(ctx, w, d, *port, true)
}

// seedDemo writes the demo's garden and its story up to day, unless the folder
// holds one already.
func seedDemo(ctx context.Context, led *ledger.Ledger, text []byte, g *garden.Garden, day cal.Day, south bool) error {
	if seq, _ := led.Head(); seq > 0 {
		return nil
	}
	sum := sha256.Sum256(text)
	e, err := ledger.NewEvent("demo", g.From, ledger.GardenSet, ledger.Garden{Text: string(text), SHA256: hex.EncodeToString(sum[:])})
	if err != nil {
		return err
	}
	e.ID = ledger.FollowingID("garden", hex.EncodeToString(sum[:]))
	events := []ledger.Event{e}
	if !south {
		told, err := story.Events(demo.EventsCSV, g, day)
		if err != nil {
			return err
		}
		events = append(events, told...)
		numbered := slices.Clone(events)
		for i := range numbered {
			numbered[i].Seq = int64(i + 1) // as the ledger will, so that the replay takes them in order
		}
		state := ledger.ReplayOver(reckon.FromFile(g), numbered)
		said, err := story.Forecasts(demo.ForecastsCSV, state.Plantings, day)
		if err != nil {
			return err
		}
		events = append(events, said...)
	}
	_, err = led.Append(ctx, events...)
	if err != nil {
		return fmt.Errorf("writing the demo's story: %w", err)
	}
	return nil
}
