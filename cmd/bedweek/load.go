package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/reckon"
	"bedweek/internal/weather"
)

// readGarden reads a garden file and prints every fault.
func readGarden(w *world, name string, text []byte, book *crop.Book) (*garden.Garden, bool) {
	g, faults := garden.Read(name, text, garden.FromBook(book))
	for _, f := range faults {
		fmt.Fprintln(w.err, f.String())
	}
	if len(faults) > 0 {
		fmt.Fprintf(w.err, "%s: %s. Nothing was planned or written.\n", name, count(len(faults), "fault"))
		return nil, false
	}
	return g, true
}

func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// climate is a daily record or monthly normals.
type climate struct {
	record  *weather.Record
	normals *weather.Normals
}

// readClimate reads either kind of weather file and prints every fault.
func readClimate(w *world, name string, text []byte, site weather.Site) (climate, bool) {
	var c climate
	var faults []weather.Fault
	switch weather.Sniff(text) {
	case weather.KindMonthly:
		c.normals, faults = weather.ReadNormals(name, bytes.NewReader(text), site)
	default:
		c.record, faults = weather.Read(name, bytes.NewReader(text), site)
	}
	for _, f := range faults {
		fmt.Fprintln(w.err, f.String())
	}
	if len(faults) > 0 {
		fmt.Fprintf(w.err, "%s: %s. Nothing was planned or written.\n", name, count(len(faults), "fault"))
		return c, false
	}
	return c, true
}

// weatherFor finds the weather of a garden: the file named on the command
// line, else the one its garden file names, which lies beside it.
func weatherFor(w *world, cmd, flagged, gardenPath string, g *garden.Garden) (climate, int) {
	path := flagged
	if path == "" && g.Place.Weather != "" {
		path = filepath.Join(filepath.Dir(gardenPath), g.Place.Weather)
	}
	if path == "" && g.Place.Normals != nil {
		return climate{normals: monthsOf(g)}, exitDone
	}
	if path == "" {
		return climate{}, wrong(w, cmd, "which weather? Give -weather FILE (a daily record, or twelve monthly normals), or name it in the garden file under place: weather")
	}
	text, err := os.ReadFile(path)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek %s: reading the weather: %v\n", cmd, err)
		return climate{}, exitUsage
	}
	c, ok := readClimate(w, path, text, siteOf(g))
	if !ok {
		return c, exitNo
	}
	return c, exitDone
}

// monthsOf gives the twelve months written in a garden file.
func monthsOf(g *garden.Garden) *weather.Normals {
	n := g.Place.Normals
	from := n.From
	if from == "" {
		from = "twelve months of the garden file"
	}
	return &weather.Normals{Name: from, Site: siteOf(g), TmaxC: n.TmaxC, TminC: n.TminC, RainMM: n.RainMM}
}

func siteOf(g *garden.Garden) weather.Site {
	return weather.Site{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
}

// planDate is the date to plan from: asked for, else the file's, else today.
func planDate(w *world, asked string, g *garden.Garden) (cal.Day, error) {
	if asked != "" {
		d, err := cal.Parse(asked)
		if err == nil && (d < cal.Of(1900, 1, 1) || d > cal.Of(2199, 12, 31)) {
			err = fmt.Errorf("day %s: want a year from 1900 to 2199", asked)
		}
		return d, err
	}
	if g.From != 0 {
		return g.From, nil
	}
	return cal.FromTime(w.now()), nil
}

// inputs gathers what reckon needs.
func inputs(w *world, g *garden.Garden, book *crop.Book, c climate, date cal.Day) *reckon.Inputs {
	began := w.now()
	return &reckon.Inputs{
		Garden: g, Book: book, Record: c.record, Normals: c.normals, Date: date,
		Weeks: reckon.DefaultWeeks, Futures: 20, Seed: 1, Work: reckon.DefaultWork,
		Workers: w.polite.workers(),
		Clock:   func() float64 { return w.now().Sub(began).Seconds() },
	}
}

// progress prints what is being done once a second or so has passed.
func progress(w *world) func(string) {
	began := w.now()
	return func(words string) {
		fmt.Fprintf(w.err, "%5.1f s  %s\n", w.now().Sub(began).Round(100*time.Millisecond).Seconds(), words)
	}
}
