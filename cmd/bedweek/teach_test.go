package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"fmt"
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
	"bedweek/internal/web"
)

// secret marks every word of the household's own in the test below.
const secret = "Qzx"

// secretGarden is the southern demo with a mark in every free text: the
// garden's name, people, obstacles, spaces, varieties and remarks; their ids
// too.
func secretGarden() string {
	text := string(demo.SouthYAML)
	marks := 0
	mark := func(s string) string { marks++; return fmt.Sprintf("%s%d%s", secret, marks, s) }
	text = regexp.MustCompile(`(?m)^(garden: )(.*)$`).ReplaceAllStringFunc(text, func(s string) string { return "garden: " + mark(s[8:]) })
	text = regexp.MustCompile(`(?m)(\b(?:name|variety): )([^\n,}]+)`).ReplaceAllStringFunc(text, func(s string) string {
		k, v, _ := strings.Cut(s, ": ")
		return k + ": " + mark(v)
	})
	for _, id := range []string{"wren", "abel", "field-soil", "bed-blend", "pot-mix", "cottage", "willow", "door-trough", "north-bed", "south-bed"} {
		text = regexp.MustCompile(`\b`+id+`\b`).ReplaceAllString(text, "qzx-"+id)
	}
	return "# " + secret + " remark\n" + text
}

// TestTheLessonTellsNothingOfTheHousehold plants marked words everywhere in a
// garden and its record, and finds none in the file that is given away.
func TestTheLessonTellsNothingOfTheHousehold(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	text := secretGarden()
	g, faults := garden.Read("secret", []byte(text), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	n, wf := weather.ReadNormals("south", bytes.NewReader(demo.SouthNormalsCSV), siteOf(g))
	if len(wf) > 0 {
		t.Fatal(wf)
	}
	led, err := ledger.Open(t.TempDir(), ledger.Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	defer led.Close()
	space, planting := "", ""
	for _, sp := range g.Spaces {
		if sp.Grows() && len(sp.Standing) > 0 {
			space, planting = string(sp.ID), sp.Standing[0].ID
		}
	}
	var events []ledger.Event
	add := func(kind ledger.Kind, body any) {
		e, err := ledger.NewEvent("qzx-phone", g.From-1, kind, body)
		if err != nil {
			t.Fatal(err)
		}
		events = append(events, e)
	}
	add(ledger.GardenSet, ledger.Garden{Text: text, SHA256: fmt.Sprintf("%x", sha256.Sum256([]byte(text)))})
	add(ledger.Sown, ledger.Started{Crop: "radish", Variety: secret + " Globe", OneOf: []string{secret + " A", secret + " B"}, Space: space, Count: 12, Lot: secret + " lot", Note: secret + " note"})
	add(ledger.Picked, ledger.Amount{Planting: planting, Kg: 0.4, Note: secret + " picked"})
	add(ledger.Looked, ledger.Look{Planting: planting, Looks: secret + " looks", Note: secret + " note"})
	add(ledger.Dismissed, ledger.Dismissal{Task: "x", Why: secret + " why"})
	add(ledger.Skyline, ledger.Edge{Space: space, BearingDeg: 10, EdgeDeg: 20, How: "by hand", Note: secret + " sky"})
	digest := strings.Repeat("ab", 32)
	add(ledger.Pictured, ledger.Photo{Space: space, SHA256: digest, Bytes: 900, Width: 30, Height: 20, Note: secret + " photo"})
	add(ledger.Captioned, ledger.Caption{Picture: events[len(events)-1].ID, Note: secret + " caption"})
	add(ledger.Voiced, ledger.Sound{Space: space, SHA256: digest, Bytes: 900, Format: "webm", Note: secret + " voice"})
	add(ledger.SeedGot, ledger.Lot{Crop: "kale", Variety: secret + " Frond", Source: secret + " shop", Year: 2014, Count: 80, Note: secret + " packet"})
	add(ledger.SeedTested, ledger.Germination{Lot: events[len(events)-1].ID, Sown: 20, Up: 14, Note: secret + " towel"})
	add(ledger.Named, ledger.Naming{Planting: planting, Is: secret + " name", By: secret + " leaf", Note: secret + " named"})
	add(ledger.Wished, ledger.Wish{What: ledger.WishMinutes, Minutes: 10, Note: secret + " wish"})
	if _, err := led.Append(context.Background(), events...); err != nil {
		t.Fatal(err)
	}
	w := &world{now: time.Now}
	in := inputs(w, g, book, climate{normals: n}, g.From)
	in.Work = 200_000
	ctx, stop := context.WithCancel(context.Background())
	d, err := newDesk(ctx, led, *in, time.Now)
	if err != nil {
		t.Fatal(err)
	}
	defer d.idle.Wait()
	defer stop()
	h, err := web.New(d.options(nil, false))
	if err != nil {
		t.Fatal(err)
	}
	get := func(path string) string {
		r := httptest.NewRecorder()
		h.ServeHTTP(r, httptest.NewRequest("GET", "http://127.0.0.1"+path, nil))
		if r.Code != 200 {
			t.Fatalf("GET %s: %d", path, r.Code)
		}
		return r.Body.String()
	}
	if !strings.Contains(get("/"), secret) || !strings.Contains(get("/space/"+space), secret+" Globe") || !strings.Contains(get("/seeds"), secret+" Frond") {
		t.Fatal("the marks are not in the garden's own pages; the test sees nothing")
	}
	file := get("/teach/bedweek-lesson.html")
	if len(file) < 10_000 || !strings.Contains(file, "of 20") {
		t.Fatalf("a lesson of %d bytes tells nothing", len(file))
	}
	low := strings.ToLower(file)
	for _, bad := range []string{"qzx", "far landing", "47.6", "latitude", "longitude", "etc/gmt", "http://127", "bedweek-demo"} {
		if i := strings.Index(low, bad); i >= 0 {
			t.Errorf("the lesson holds %q: …%s…", bad, file[max(0, i-80):min(len(file), i+80)])
		}
	}
}

// TestForecastsAreKeptOnce: what the plan said on the first day stays, and a
// second reckoning adds nothing.
func TestForecastsAreKeptOnce(t *testing.T) {
	d, led := testDesk(t)
	ctx := context.Background()
	state, err := led.State(ctx)
	if err != nil {
		t.Fatal(err)
	}
	first := state.Forecasts
	if len(first) < 3 {
		t.Fatalf("%d forecasts kept on the first day", len(first))
	}
	if err := d.reckon(ctx, d.in.Work, false); err != nil {
		t.Fatal(err)
	}
	if state, err = led.State(ctx); err != nil {
		t.Fatal(err)
	}
	if len(state.Forecasts) != len(first) || state.Forecasts[0] != first[0] {
		t.Errorf("after another reckoning: %d forecasts, were %d", len(state.Forecasts), len(first))
	}
	day, _ := d.Day(ctx)
	kept := 0
	for _, y := range day.Papers.Years {
		kept += y.Kept
	}
	if kept != len(first) {
		t.Errorf("%d of %d kept forecasts are on the year pages", kept, len(first))
	}
}
