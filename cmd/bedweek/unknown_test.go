package main

import (
	"context"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/web"
)

const guessedText = `garden: Guessed yard
place:
  latitude: 47.6 N
  longitude: 122.3 W
  months:
    january: 8 C, 2 C, 140 mm
    february: 10 C, 3 C, 90 mm
    march: 12 C, 4 C, 95 mm
    april: 15 C, 6 C, 70 mm
    may: 19 C, 9 C, 50 mm
    june: 22 C, 12 C, 40 mm
    july: 25 C, 14 C, 18 mm
    august: 25 C, 14 C, 25 mm
    september: 21 C, 11 C, 40 mm
    october: 15 C, 8 C, 90 mm
    november: 10 C, 5 C, 160 mm
    december: 8 C, 2 C, 150 mm
from: 6 April 2015
guessed: [wants]
media:
  mix: {kind: potting mix}
obstacles:
  house: {kind: box, east: 20 m, north: 0 m, length: 8 m, width: 6 m, height: 7 m}
spaces:
  bed: {kind: raised bed, east: 0 m, north: 0 m, length: 2 m, width: 1 m, depth: 12-40 cm, medium: mix, water: can, guessed: [depth, east, north, medium]}
  twin: {kind: raised bed, east: 4 m, north: 0 m, length: 2 m, width: 1 m, depth: 12-40 cm, medium: mix, water: can, guessed: [depth]}
wants: {salad: 4, roots: 3, tomatoes: 3}
`

// TestUnknownIsOrderedByWhatItChanges tries every guess of a small garden: what
// was tried stands before what was not, the dearest first, and two alike spaces
// are tried once.
func TestUnknownIsOrderedByWhatItChanges(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("test", []byte(guessedText), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults[0])
	}
	w := &world{now: time.Now}
	in := inputs(w, g, book, climate{normals: monthsOf(g)}, cal.Of(2015, 4, 6))
	var last []web.Unknown
	calls, complete := 0, false
	tryGuesses(context.Background(), *in, func(list []web.Unknown, done bool) bool {
		calls++
		last, complete = list, done
		return true
	})
	if !complete || calls < len(last) {
		t.Fatalf("%d steps for %d guesses, complete %v", calls, len(last), complete)
	}
	keys := map[string]web.Unknown{}
	for i, u := range last {
		keys[u.Space+" "+u.Key] = u
		if i > 0 && u.Worth > last[i-1].Worth {
			t.Errorf("%s (%.1f) stands after %s (%.1f)", u.Words, u.Worth, last[i-1].Words, last[i-1].Worth)
		}
		if strings.Contains(u.Change, "Not tried") {
			t.Errorf("not tried: %s", u.Words)
		}
		t.Logf("%5.1f  %s %s", u.Worth, u.Words, u.Change)
	}
	for _, key := range []string{" wants", "bed depth", "bed medium", "bed east"} {
		if u, ok := keys[key]; !ok || u.Worth <= 0 && key != "bed east" {
			t.Errorf("%q is worth %.2f; a third of the meals, 28 cm of soil and tired soil change something", key, u.Worth)
		}
	}
	if a, b := keys["bed depth"], keys["twin depth"]; a.Worth != b.Worth || !strings.Contains(a.Change+b.Change, "which is alike") {
		t.Errorf("two alike spaces: %q, %q", a.Change, b.Change)
	}
	stopped := 0
	tryGuesses(context.Background(), *in, func([]web.Unknown, bool) bool { stopped++; return false })
	if stopped != 1 {
		t.Errorf("it went on for %d steps after it was ended", stopped)
	}
}

// TestAGardenBegunOnThePagesIsPlanned begins with an empty record: a garden
// told by a page is planned, and the planning remembers the record.
func TestAGardenBegunOnThePagesIsPlanned(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	now := func() time.Time { return time.Date(2015, 4, 6, 9, 0, 0, 0, time.UTC) }
	led, err := ledger.Open(t.TempDir(), ledger.Options{Now: now})
	if err != nil {
		t.Fatal(err)
	}
	defer led.Close()
	in := reckon.Inputs{Book: book, Date: cal.Of(2015, 4, 6), Futures: 4, Weeks: 10, Work: 10_000}
	ctx, stop := context.WithCancel(context.Background())
	d, err := emptyDesk(ctx, led, in, now)
	if err != nil {
		t.Fatal(err)
	}
	defer d.idle.Wait()
	defer stop()
	text := strings.Replace(guessedText, "obstacles:\n  house: {kind: box, east: 20 m, north: 0 m, length: 8 m, width: 6 m, height: 7 m}\n", "", 1)
	if _, err := d.entry().Keep(ctx, text); err != nil {
		t.Fatal(err)
	}
	for range 1200 {
		d.mu.Lock()
		day := d.day
		d.mu.Unlock()
		if day != nil && len(day.Spaces) == 2 {
			return
		}
		time.Sleep(100 * time.Millisecond)
	}
	t.Error("no plan came")
}
