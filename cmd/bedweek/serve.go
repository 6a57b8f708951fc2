package main

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/fetch"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

const helpServe = `bedweek serve [-garden FILE] [-weather FILE] [-date DATE] [-port N] [-online] [-home] [DATA]

Keep a garden in a data folder and serve its pages on this machine only.
Without -garden a new folder is begun through the pages; from then on the
folder holds the garden's text and everything noted. DATA is bedweek-data in your home folder unless given.

  bedweek serve -garden my-garden.yaml my-data

  -garden FILE   seed a new data folder, or take over an edited file
  -weather FILE  a daily record or monthly normals; else the one the garden
                 file names
  -date DATE     answer for this day instead of today
  -port N        the port on loopback (8750)
  -online        ask two open services for the coming ten days, and for days
                 since the record ended; the place is sent to about 1 km.
                 Without it, or without a network, everything still answers
  -home          open the home network too. Only phones that were paired on the
                 page Backup, Phones, get an answer
  -home-port N   the plain port there (8751); HTTPS is the next one up
  -home-on ADDR  listen on this address only
  -host NAMES    more names phones may use, divided by commas
  -tls-cert FILE -tls-key FILE
                 your own certificate, instead of one by the household's own
                 authority

Each day a backup is made and proven, and everything is checked.

Exit 0: stopped. 1: faults, or the folder cannot be used. 2: wrong usage.
`

func runServe(ctx context.Context, w *world, args []string) int {
	fs := flags("serve")
	file := fs.String("garden", "", "")
	weatherFile := fs.String("weather", "", "")
	date := fs.String("date", "", "")
	port := fs.Int("port", 8750, "")
	useNet := fs.Bool("online", false, "")
	var home homeFlags
	fs.BoolVar(&home.open, "home", false, "")
	fs.StringVar(&home.on, "home-on", "", "")
	fs.IntVar(&home.port, "home-port", 8751, "")
	fs.StringVar(&home.host, "host", "", "")
	fs.StringVar(&home.cert, "tls-cert", "", "")
	fs.StringVar(&home.key, "tls-key", "", "")
	names, code, done := parse(w, fs, helpServe, args)
	if done {
		return code
	}
	if len(names) > 1 {
		return wrong(w, "serve", "name one data folder")
	}
	if *port < 0 || *port > 65535 {
		return wrong(w, "serve", "-port %d: want 0 to 65535", *port)
	}
	if home.port < 0 || home.port > 65534 {
		return wrong(w, "serve", "-home-port %d: want 0 to 65534", home.port)
	}
	dir, err := dataFolder(names)
	if err != nil {
		return wrong(w, "serve", "%v", err)
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return exitNo
	}
	// Read what was given before the folder is touched, so that a faulty
	// file writes nothing.
	var fresh []byte
	if *file != "" {
		if fresh, err = os.ReadFile(*file); err != nil {
			fmt.Fprintf(w.err, "bedweek serve: reading the garden: %v\n", err)
			return exitUsage
		}
		if _, ok := readGarden(w, *file, fresh, book); !ok {
			return exitNo
		}
	}
	w.polite.makeRoom()
	h, err := openHouse(w, dir, *port, false, home)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return exitNo
	}
	defer h.shut()
	o := serveOptions{dir, *file, *weatherFile, *date, fresh, *useNet, book}
	for first := true; ; first = false {
		code, again := serveOnce(ctx, w, h, o, first)
		if again == "" {
			return code
		}
		h.restore(again)
		o.fresh = nil // taken over already, or gone with what was put back
	}
}

// serveOptions are what serve was given.
type serveOptions struct {
	dir, file, weatherFile, date string
	fresh                        []byte
	useNet                       bool
	book                         *crop.Book
}

// serveOnce opens the record, plans, and serves until the program ends or the
// record is to be restored from a backup.
func serveOnce(ctx context.Context, w *world, h *house, o serveOptions, first bool) (code int, again string) {
	dir, fresh, book := o.dir, o.fresh, o.book
	led, err := ledger.Open(dir, ledger.Options{Now: w.now})
	if errors.Is(err, ledger.ErrDamaged) || errors.Is(err, ledger.ErrNotLedger) {
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return h.refused(ctx, err)
	}
	if err != nil {
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return exitNo, ""
	}
	defer led.Close()
	for _, n := range led.Notes() {
		fmt.Fprintln(w.err, n)
	}
	today := cal.FromTime(w.now())
	g, base, code := gardenOf(ctx, w, led, book, o.file, fresh, today)
	if g == nil && code != exitDone {
		return code, ""
	}
	day, err := planDate(w, o.date, &garden.Garden{From: today})
	if err != nil {
		return wrong(w, "serve", "-date: %v", err), ""
	}
	begun := g == nil || len(g.Spaces) == 0 || g.Place.Weather == "" && g.Place.Normals == nil && o.weatherFile == "" && o.file == ""
	var c climate
	if !begun {
		if c, code = weatherFor(w, "serve", o.weatherFile, base, g); code != exitDone {
			return code, ""
		}
		if err := takeWeather(led.Dir(), base, g.Place.Weather); err != nil {
			fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
			return exitNo, ""
		}
	}
	in := inputs(w, g, book, c, day)
	in.Progress, in.ByClock = progress(w), o.date == ""
	services := fetch.New(fetch.Options{Dir: filepath.Join(dir, "weather"), Now: w.now})
	if in.Garden != nil {
		in.Told = services.Kept(siteOf(in.Garden))
	}
	if o.useNet && in.Garden != nil {
		online(ctx, w, services, in)
	}
	ctx, stop := context.WithCancel(w.polite.with(ctx))
	var d *desk
	if begun {
		d, err = emptyDesk(ctx, led, *in, w.now)
	} else {
		d, err = soonDesk(ctx, led, *in, w.now)
	}
	if err == nil {
		d.climate = climateIn(led.Dir())
		if o.weatherFile != "" && !begun {
			d.climate = func(*garden.Garden) (climate, error) { return c, nil }
		}
	}
	if err != nil {
		stop()
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return exitNo, ""
	}
	d.services = services
	if o.useNet {
		go d.follow(ctx, services)
	}
	defer d.idle.Wait()
	defer stop()
	return h.attend(ctx, d, first)
}

// dataFolder is the folder named, or the usual one.
func dataFolder(names []string) (string, error) {
	if len(names) == 1 {
		return names[0], nil
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "", fmt.Errorf("no home folder is known; name a data folder: %w", err)
	}
	return filepath.Join(home, "bedweek-data"), nil
}

// gardenOf returns the garden the ledger holds, taking over fresh text first.
// base is the path beside which its weather file lies.
func gardenOf(ctx context.Context, w *world, led *ledger.Ledger, book *crop.Book, file string, fresh []byte, today cal.Day) (*garden.Garden, string, int) {
	state, err := led.State(ctx)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek serve: %v\n", err)
		return nil, "", exitNo
	}
	base := file
	if base == "" {
		base = filepath.Join(led.Dir(), "garden.yaml")
	}
	text := state.GardenText
	if fresh != nil && string(fresh) != text {
		sum := sha256.Sum256(fresh)
		e, err := ledger.NewEvent("home", today, ledger.GardenSet, ledger.Garden{Text: string(fresh), SHA256: hex.EncodeToString(sum[:])})
		if err == nil {
			_, err = led.Append(ctx, e)
		}
		if err != nil {
			fmt.Fprintf(w.err, "bedweek serve: keeping the garden: %v\n", err)
			return nil, "", exitNo
		}
		text = string(fresh)
	}
	if text == "" {
		return nil, "", exitDone // the pages begin one
	}
	g, ok := readGarden(w, "garden in "+led.Dir(), []byte(text), book)
	if !ok {
		return nil, "", exitNo
	}
	return g, base, exitDone
}

// listen serves the pages on loopback until ctx ends. The demo's record cannot
// be restored through the pages: it is made anew each time.
func listen(ctx context.Context, w *world, d *desk, port int, demo bool) int {
	h, err := openHouse(w, d.led.Dir(), port, demo, homeFlags{})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek: %v\n", err)
		return exitNo
	}
	defer h.shut()
	h.busy = true
	code, _ := h.attend(ctx, d, true)
	return code
}
