package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/weather"
	"bedweek/internal/web"
)

// emptyDesk begins a desk whose garden is not described far enough to plan.
func emptyDesk(ctx context.Context, led *ledger.Ledger, in reckon.Inputs, now func() time.Time) (*desk, error) {
	d := &desk{led: led, past: led.Recall(), device: "home", now: now, in: in, kick: make(chan struct{}, 1), over: make(chan struct{}), plans: readPlans(led.Dir())}
	d.climate = climateIn(led.Dir())
	if err := d.readText(ctx); err != nil {
		return nil, err
	}
	d.again()
	d.idle.Add(1)
	go d.behind(ctx, false)
	return d, nil
}

// readText takes over the garden's text from the ledger when it changed.
func (d *desk) readText(ctx context.Context) error {
	state, err := d.led.State(ctx)
	if err != nil {
		return fmt.Errorf("reading the ledger: %w", err)
	}
	d.mu.Lock()
	same := state.GardenText == d.text
	first := d.text == "" && d.ground != nil
	d.text = state.GardenText
	d.mu.Unlock()
	if same || first { // the desk was made with this garden
		return nil
	}
	if state.GardenText == "" {
		d.mu.Lock()
		d.in.Garden, d.ground, d.stale = nil, nil, true
		d.put(nil)
		d.mu.Unlock()
		return nil
	}
	g, faults := garden.Read("the garden", []byte(state.GardenText), garden.FromBook(d.in.Book))
	if len(faults) > 0 {
		return fmt.Errorf("reading the kept garden: %s", faults[0])
	}
	var c climate
	words := ""
	if d.climate != nil {
		if c, err = d.climate(g); err != nil {
			words = err.Error()
		}
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.in.Garden, d.in.Record, d.in.Normals, d.stale, d.trouble = g, c.record, c.normals, true, words
	if len(g.Spaces) == 0 {
		d.put(nil)
	}
	return nil
}

// footing returns what to reckon with, making the ground anew when the garden
// changed. The ground is nil while the garden cannot be planned yet.
func (d *desk) footing() (reckon.Inputs, *reckon.Ground, error) {
	d.mu.Lock()
	in, ground, stale := d.in, d.ground, d.stale
	d.mu.Unlock()
	if in.Garden == nil || len(in.Garden.Spaces) == 0 || in.Record == nil && in.Normals == nil {
		return in, nil, nil
	}
	if ground != nil && !stale {
		return in, ground, nil
	}
	ground, err := reckon.NewGround(&in)
	if err != nil {
		return in, nil, err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.in.Garden == in.Garden && d.in.Date == in.Date {
		d.ground, d.stale = ground, false
	}
	return in, ground, nil
}

// climateIn finds a garden's weather in a data folder: the file it names, or
// the months it holds.
func climateIn(dir string) func(*garden.Garden) (climate, error) {
	return func(g *garden.Garden) (climate, error) {
		if g.Place.Weather == "" {
			if g.Place.Normals == nil {
				return climate{}, nil
			}
			return climate{normals: monthsOf(g)}, nil
		}
		text, err := os.ReadFile(filepath.Join(dir, g.Place.Weather))
		if err != nil {
			return climate{}, fmt.Errorf("the weather file %s is not in the data folder: give it again", g.Place.Weather)
		}
		c, words := climateFrom(g.Place.Weather, text, g)
		if len(words) > 0 {
			return climate{}, fmt.Errorf("the weather file %s: %s", g.Place.Weather, words[0])
		}
		if from := sourceOf(text); from != "" && c.record != nil {
			c.record.Name = from // the services want to be named with their figures
		}
		return c, nil
	}
}

// climateElse gives the built-in weather while the garden names it.
func climateElse(c climate, named, dir string) func(*garden.Garden) (climate, error) {
	other := climateIn(dir)
	return func(g *garden.Garden) (climate, error) {
		if g.Place.Weather == named {
			return c, nil
		}
		return other(g)
	}
}

// climateFrom reads a weather file; every fault comes back in words.
func climateFrom(name string, text []byte, g *garden.Garden) (climate, []string) {
	var c climate
	var faults []weather.Fault
	if weather.Sniff(text) == weather.KindMonthly {
		c.normals, faults = weather.ReadNormals(name, strings.NewReader(string(text)), siteOf(g))
	} else {
		c.record, faults = weather.Read(name, strings.NewReader(string(text)), siteOf(g))
	}
	var words []string
	for _, f := range faults {
		words = append(words, f.String())
	}
	return c, words
}

// entry wires the desk to the pages that describe the garden.
func (d *desk) entry() *web.Entry {
	return &web.Entry{
		Book:  d.in.Book,
		Today: d.today,
		Text: func(context.Context) (string, error) {
			d.mu.Lock()
			defer d.mu.Unlock()
			return d.text, nil
		},
		Keep: func(ctx context.Context, text string) (string, error) {
			sum := sha256.Sum256([]byte(text))
			return d.record(ctx, ledger.GardenSet, d.today(), "", ledger.Garden{Text: text, SHA256: hex.EncodeToString(sum[:])})
		},
		Working: d.working,
		Weather: d.keepWeather, WeatherFrom: d.weatherFrom, Archive: d.archive(),
		State: func(ctx context.Context) (*ledger.State, error) {
			s, err := d.led.State(ctx)
			return &s, err
		},
		Unknown: d.unknowns,
		Round:   d.round,
		Append:  d.appendAll,
	}
}

// working says in words what is being worked out, or why nothing is.
func (d *desk) working() string {
	d.mu.Lock()
	defer d.mu.Unlock()
	switch {
	case d.trouble != "" && d.day == nil:
		return "There is no plan: " + d.trouble
	case d.busy > 0 && d.in.Garden != nil && len(d.in.Garden.Spaces) > 0:
		return "The plan is being worked out"
	}
	return ""
}

// keepWeather writes a weather file into the data folder under a name made
// from its content, so that an older one stays for older texts.
func (d *desk) keepWeather(ctx context.Context, name string, data []byte) (string, []string, error) {
	d.mu.Lock()
	g := d.in.Garden
	d.mu.Unlock()
	if g == nil {
		return "", []string{"Say where the garden is first."}, nil
	}
	if _, words := climateFrom(filepath.Base(name), data, g); len(words) > 0 {
		return "", words, nil
	}
	file := ledger.BesideName(data)
	return file, nil, putBeside(d.led.Dir(), file, data)
}

// putBeside writes a weather file beside the record, unless it is there.
func putBeside(dir, file string, data []byte) error {
	path := filepath.Join(dir, file)
	if have, err := os.ReadFile(path); err == nil && bytes.Equal(have, data) {
		return nil
	}
	err := writeThrough(path+".part", data)
	if err == nil {
		err = os.Rename(path+".part", path)
	}
	if err != nil {
		return fmt.Errorf("keeping %s: %w", file, err)
	}
	return nil
}

// takeWeather copies the weather file that lies beside a garden file into the
// data folder: the next start, a backup and an export look for it there.
func takeWeather(dir, gardenPath, named string) error {
	if named == "" {
		return nil
	}
	data, err := os.ReadFile(filepath.Join(filepath.Dir(gardenPath), named))
	if errors.Is(err, os.ErrNotExist) {
		return nil // given by -weather
	}
	if err != nil {
		return fmt.Errorf("reading the weather: %w", err)
	}
	return putBeside(dir, named, data)
}

// archive fetches twenty years of weather for the garden's place when asked.
func (d *desk) archive() func(context.Context) (string, string, error) {
	if d.services == nil {
		return nil
	}
	return func(ctx context.Context) (string, string, error) {
		d.mu.Lock()
		g := d.in.Garden
		d.mu.Unlock()
		if g == nil {
			return "", "", errors.New("say where the garden is first")
		}
		y, err := d.services.Years(ctx, siteOf(g), min(d.today(), cal.FromTime(d.now())))
		if err != nil {
			return "", "", err
		}
		file, wrong, err := d.keepWeather(ctx, "the archive", y.CSV)
		if err == nil && len(wrong) > 0 {
			err = errors.New(wrong[0])
		}
		return file, y.Words, err
	}
}

// weatherFrom reads a kept weather file's first line, where ours say where
// they come from and when they were fetched.
func (d *desk) weatherFrom(file string) string {
	f, err := os.Open(filepath.Join(d.led.Dir(), file))
	if err != nil {
		return ""
	}
	defer f.Close()
	b := make([]byte, 400)
	n, _ := io.ReadFull(f, b)
	return sourceOf(b[:n])
}

// sourceOf is what a weather file's first line says of it, "" = nothing.
func sourceOf(text []byte) string {
	line, _, _ := strings.Cut(string(text), "\n")
	words, ok := strings.CutPrefix(line, "# ")
	if !ok || len(words) > 300 {
		return ""
	}
	return strings.TrimSpace(strings.ToValidUTF8(words, "?"))
}

// writeThrough writes a file and has the disk keep it. What cannot be written
// whole is taken away again.
func writeThrough(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_CREATE|os.O_TRUNC|os.O_WRONLY, 0o600)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err != nil {
		os.Remove(path)
	}
	return err
}

// letters of an entry's id.
const letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// appendAll writes several entries at once, or none. The first has the form's
// id and the others ids made from it, so that a form sent twice writes once.
func (d *desk) appendAll(ctx context.Context, all []web.Happening) error {
	var events []ledger.Event
	form := web.FormID(ctx)
	for i, h := range all {
		e, err := ledger.NewEvent(web.DeviceOf(ctx, d.device), h.On, h.Kind, h.Body)
		if err != nil {
			return err
		}
		if form != "" {
			id := []byte(form)
			for k, n := len(id)-1, i; n > 0 && k > 20; k, n = k-1, n/32 {
				at := strings.IndexByte(letters, id[k])
				id[k] = letters[(at+n%32)%32]
			}
			e.ID = string(id)
		}
		events = append(events, e)
	}
	if _, err := d.led.Append(ctx, events...); err != nil {
		return err
	}
	if slices.ContainsFunc(all, func(h web.Happening) bool { return h.Kind == ledger.GardenSet }) {
		if err := d.readText(ctx); err != nil {
			return err
		}
	}
	d.mu.Lock()
	for _, h := range all {
		d.note(h.Kind, h.Body)
	}
	d.mu.Unlock()
	d.again()
	return nil
}
