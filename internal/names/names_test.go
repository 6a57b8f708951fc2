package names

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/chance"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

const gardenText = `garden: Invented for tests
place: {latitude: 47.6 N, longitude: 122.3 W}
media:
  mix: {kind: compost blend}
spaces:
  bed: {kind: raised bed, east: 1 m, north: 1 m, medium: mix, water: can, length: 3 m, width: 1 m, depth: 30 cm, name: The bed}
  bench: {kind: bench, east: 3 m, north: 1 m, length: 1 m, width: 50 cm}
  store:
    kind: lamp shelf
    length: 1 m
    width: 50 cm
    standing:
      - {id: tray-1, crop: kale, one of: [Black Frond, Curled Ebb], since: 1 March 2015, count: 12}
shelf: {places: 48, light: 13 mol a day, warmth: 20 C}
seeds:
  - {id: kale-a, crop: kale, variety: Black Frond, year: 2014, count: 80}
  - {id: kale-b, crop: kale, variety: Curled Ebb, year: 2014, count: 80}
  - {id: parsnip-a, crop: parsnip, variety: Long Mast, year: 2011, count: 200}
  - {id: bean-a, crop: runner-bean, count: 25}
  - {id: leek-a, crop: leek, variety: Grey Pier, year: 2012}
`

func event(t *testing.T, kind ledger.Kind, on cal.Day, body any) ledger.Event {
	t.Helper()
	e, err := ledger.NewEvent("test", on, kind, body)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// desk makes a desk of 15 April 2015 over the garden.
func desk(t *testing.T, events ...ledger.Event) *Desk {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("test.yaml", []byte(gardenText), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	for i := range events {
		events[i].Seq = int64(i + 1)
	}
	standing := []ledger.Planting{{ID: "tray-1", Crop: "kale", OneOf: []string{"Black Frond", "Curled Ebb"}, Space: "store", Count: 12, Sown: cal.Of(2015, time.March, 1)}}
	state := ledger.ReplayOver(standing, events)
	d, err := New(g, book, &state, standing, events, cal.Of(2015, time.April, 15))
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func lotOf(t *testing.T, d *Desk, id string) Lot {
	t.Helper()
	l, ok := d.Lot(id)
	if !ok {
		t.Fatalf("no lot %s", id)
	}
	return l
}

// TestRateIsARangeUntilTested: kale of 2014 is within what all lists say (2
// to 4 years, WATTS and ISU-LIFE), so from the legal least of 75 % (CFR-201);
// parsnip of 2011 is past them all; a bean without a year and leek between two
// lists are not known.
func TestRateIsARangeUntilTested(t *testing.T) {
	d := desk(t)
	if l := lotOf(t, d, "kale-a"); l.Rate.Low != 0.75 || l.Rate.High != 0.95 || l.Doubt() != "" || l.Left != 80 {
		t.Errorf("kale: %+v", l)
	}
	if l := lotOf(t, d, "parsnip-a"); l.Rate.Low != 0 || !strings.Contains(l.Doubt(), "Older") || !l.Need(6).Unknowable {
		t.Errorf("parsnip: %+v", l)
	}
	if l := lotOf(t, d, "bean-a"); l.Rate.Known || l.Doubt() == "" {
		t.Errorf("bean: %+v", l)
	}
	if l := lotOf(t, d, "leek-a"); !strings.Contains(l.Rate.Words, "disagree") || l.Left != -1 {
		t.Errorf("leek, 3 years, lists say 2 and 3: %+v", l)
	}
	if d.Lots()[0].Doubt() == "" {
		t.Error("the first of the list is nothing to decide about")
	}
}

// TestTestedSeed: 7 of 10 means 39 to 91 % at 90 % (exact binomial); the number
// to sow counts that, and is more than the binomial's 11 for 70 % (jobs.md 4).
func TestTestedSeed(t *testing.T) {
	d := desk(t, event(t, ledger.SeedTested, cal.Of(2015, 4, 1), ledger.Germination{Lot: "kale-a", Sown: 10, Up: 7}))
	l := lotOf(t, d, "kale-a")
	if math.Abs(l.Rate.Low-0.393) > 0.001 || math.Abs(l.Rate.High-0.913) > 0.001 {
		t.Errorf("interval %.3f to %.3f, want 0.393 to 0.913", l.Rate.Low, l.Rate.High)
	}
	n := l.Need(6)
	if n.Least <= 11 || n.Plain != 9 || chance.AtLeastUnsure(n.Least, 6, 7, 10) < 0.9 || chance.AtLeastUnsure(n.Least-1, 6, 7, 10) >= 0.9 {
		t.Errorf("%+v", n)
	}
	old := desk(t, event(t, ledger.SeedTested, cal.Of(2013, 4, 1), ledger.Germination{Lot: "kale-a", Sown: 10, Up: 7}))
	if l := lotOf(t, old, "kale-a"); !l.Rate.Stale || !l.Need(6).Unknowable {
		t.Errorf("a test of two years ago: %+v", l.Rate)
	}
	few := desk(t, event(t, ledger.SeedUsed, cal.Of(2015, 4, 1), ledger.SeedUse{Lot: "kale-a", Count: 75}))
	if n := lotOf(t, few, "kale-a").Need(6); n.Enough || !strings.Contains(n.Words, "5 left") {
		t.Errorf("five seeds are enough for six plants: %+v", n)
	}
}

// season is a tray pricked out, set out in part, picked, and seed saved.
func season(t *testing.T) []ledger.Event {
	sown := event(t, ledger.Sown, cal.Of(2015, 3, 1), ledger.Started{Crop: "kale", Variety: "Black Frond", Space: "store", Count: 12, Lot: "kale-a"})
	prick := event(t, ledger.PrickedOut, cal.Of(2015, 3, 20), ledger.Handover{Planting: sown.ID, Count: 9, Rest: "gone", Pot: "9 cm"})
	out := event(t, ledger.PutOut, cal.Of(2015, 4, 10), ledger.Started{Planting: sown.ID, Crop: "kale", Space: "bed", Count: 5})
	pick := event(t, ledger.Picked, cal.Of(2015, 4, 12), ledger.Amount{Planting: out.ID, Kg: 0.2})
	seed := event(t, ledger.SeedGot, cal.Of(2015, 4, 13), ledger.Lot{Crop: "kale", Variety: "Black Frond", Year: 2015, From: out.ID})
	return []ledger.Event{sown, prick, out, pick, seed}
}

func TestLineFromPacketToSavedSeed(t *testing.T) {
	ev := season(t)
	d := desk(t, ev...)
	line, perhaps := d.Descent(ev[2].ID)
	var got []string
	for _, l := range line {
		if l.Lot != nil {
			got = append(got, fmt.Sprintf("%d packet %s", l.Deep, l.Lot.ID))
		} else {
			got = append(got, fmt.Sprintf("%d %s in %s, %s", l.Deep, l.Group.CountWords(), l.Group.SpaceName, l.How))
		}
	}
	want := []string{"-2 packet kale-a", "-1 4 plants in store, sown", "0 5 plants in The bed, set out", "1 packet " + ev[4].ID}
	if strings.Join(got, "; ") != strings.Join(want, "; ") || perhaps {
		t.Errorf("%q, want %q", got, want)
	}
	if o := d.Origin(ev[2].ID); o != "kale-a" {
		t.Errorf("origin %q", o)
	}
	if o := d.Origin("tray-1"); o != "" {
		t.Errorf("a tray without a label comes from %q", o)
	}
	var words []string
	for _, h := range d.Story(ev[2].ID) {
		words = append(words, h.Words)
	}
	if len(words) != 5 || !strings.HasPrefix(words[0], "Sown in store, 12 plants, from the packet") || words[1] != "Pricked out, 9 plants, pots of 9 cm; there are no others." ||
		!strings.HasPrefix(words[2], "Set out in The bed, 5 plants") || words[3] != "Picked 0.20 kg." {
		t.Errorf("%q", words)
	}
	// What happens to the tray after the parting is no part of the line's past.
	later := desk(t, append(season(t)[:0:0], append(ev, event(t, ledger.Lost, cal.Of(2015, 4, 14), ledger.Ended{Planting: ev[0].ID, Count: 1, Cause: "eaten"}))...)...)
	if n := len(later.Story(ev[2].ID)); n != 5 {
		t.Errorf("%d lines, want 5: the tray's later loss is not theirs", n)
	}
	if l := lotOf(t, d, "kale-a"); l.Left != 68 {
		t.Errorf("%d seeds left, want 80 less 12", l.Left)
	}
	if s := lotOf(t, d, ev[4].ID); s.From != ev[2].ID || s.Tag == "" {
		t.Errorf("saved seed: %+v", s)
	}
	if c := d.CrossingCaution(ev[2].ID); !strings.Contains(c, "Insects") || !strings.Contains(c, "one of Black Frond or Curled Ebb") || !strings.Contains(c, "second year") {
		t.Errorf("caution: %s", c)
	}
}

func TestTagsOpenWhatTheyStandFor(t *testing.T) {
	ev := season(t)
	d := desk(t, ev...)
	g, _ := d.Group(ev[2].ID)
	for _, heard := range []string{string(g.Tag), strings.ToLower(string(g.Tag)), g.Tag.Short()} {
		if id, lot, ok := d.Find(heard); id != g.ID || lot || !ok {
			t.Errorf("%q opens %q, %v, %v", heard, id, lot, ok)
		}
	}
	l := lotOf(t, d, "leek-a")
	if id, lot, ok := d.Find(string(l.Tag)); id != "leek-a" || !lot || !ok {
		t.Errorf("%q opens %q, %v, %v", l.Tag, id, lot, ok)
	}
	if _, _, ok := d.Find("Purple Nobody 11"); ok {
		t.Error("a tag that nobody bears opens something")
	}
	// What comes later, and what is taken back, change no tag.
	more := desk(t, append(append([]ledger.Event{}, ev...), event(t, ledger.Sown, cal.Of(2015, 4, 1), ledger.Started{Crop: "kale", Space: "store", Count: 3}),
		event(t, ledger.Voided, cal.Of(2015, 4, 1), ledger.Void{Event: ev[0].ID}))...)
	for _, id := range []string{"tray-1", ev[4].ID} {
		if a, b := d.tags.of[id], more.tags.of[id]; a != b {
			t.Errorf("%s: %s became %s", id, a, b)
		}
	}
	if s := g.Stick(); len([]rune(s)) > 40 || !strings.HasPrefix(s, string(g.Tag)) {
		t.Errorf("stick: %q", s)
	}
}

// TestShelfWindows: kale is fit 4 to 6 weeks after sowing (the crop book), and
// a pot it was potted on into holds it longer.
func TestShelfWindows(t *testing.T) {
	d := desk(t)
	tr, ok := d.Tray("tray-1")
	if !ok {
		t.Fatal("no tray")
	}
	book := d.Book
	c, _ := book.Crop("kale")
	sown := cal.Of(2015, 3, 1)
	if tr.Ready.Early != sown+cal.Day(7*c.NurseryWeeks.Low) || tr.Ready.Late != sown+cal.Day(7*c.NurseryWeeks.High) || tr.Bound.Early != tr.Ready.Late || tr.Bound.Late <= tr.Bound.Likely {
		t.Errorf("%+v", tr)
	}
	if tr.Places != 12 || tr.Days != 45 || tr.Next != ledger.Hardening {
		t.Errorf("places %v, days %d, next %s: %s", tr.Places, tr.Days, tr.Next, tr.Says)
	}
	pot := desk(t, event(t, ledger.PottedOn, cal.Of(2015, 4, 10), ledger.Handover{Planting: "tray-1", Pot: "14 cm"}))
	tp, _ := pot.Tray("tray-1")
	if tp.Bound.Early <= tr.Bound.Early || tp.Places != 48 {
		t.Errorf("potted on into 14 cm: %+v, %v places, want four to a plant", tp.Bound, tp.Places)
	}
	hard := desk(t, event(t, ledger.Hardening, cal.Of(2015, 4, 10), ledger.Handover{Planting: "tray-1", Space: "bench"}))
	if th, _ := hard.Tray("tray-1"); th.Next != ledger.PutOut || !strings.Contains(th.Says, "about 20 April (17 April to 24 April)") {
		t.Errorf("hardening: %s", th.Says)
	}
	young := desk(t, event(t, ledger.Sown, cal.Of(2015, 4, 8), ledger.Started{Crop: "kale", Space: "store", Count: 6}))
	for _, tr := range young.Trays() {
		if tr.ID != "tray-1" && (tr.Next != ledger.PrickedOut || tr.Prick.None()) {
			t.Errorf("a week after sowing: %s", tr.Says)
		}
	}
}

// TestWhich: two sorts share twenty dots; what parts them is the feature with
// different values; an answer's reach is shown before it is given.
func TestWhich(t *testing.T) {
	part := event(t, ledger.PutOut, cal.Of(2015, 4, 10), ledger.Started{Planting: "tray-1", Crop: "kale", Space: "bed", Count: 5})
	ev := []ledger.Event{part,
		event(t, ledger.Described, cal.Of(2015, 4, 1), ledger.Trait{Crop: "kale", Variety: "Black Frond", Feature: "leaf edge", Value: "smooth", By: "packet"}),
		event(t, ledger.Described, cal.Of(2015, 4, 1), ledger.Trait{Crop: "kale", Variety: "Curled Ebb", Feature: "leaf edge", Value: "curled", By: "packet"}),
		event(t, ledger.Described, cal.Of(2015, 4, 1), ledger.Trait{Crop: "kale", Variety: "Black Frond", Feature: "seed", Value: "black", By: "packet"}),
	}
	d := desk(t, ev...)
	w, ok := d.Which(part.ID)
	if !ok || w.Known || len(w.Candidates) != 2 || w.Candidates[0].Of20+w.Candidates[1].Of20 != 20 || w.Feature != "leaf edge" || !w.Even {
		t.Fatalf("%+v", w)
	}
	if w.Candidates[0].Shape == "" || w.Candidates[0].Shape == w.Candidates[1].Shape {
		t.Error("two edges are drawn alike, or not at all")
	}
	if w.Young {
		t.Errorf("too young six weeks after sowing, when it shows from %s", Around(w.Seen))
	}
	changes, err := d.Preview(ledger.Naming{Planting: part.ID, Is: "Curled Ebb"})
	if err != nil || len(changes) != 2 {
		t.Fatalf("%+v, %v: the tray it came from is of one sort with it", changes, err)
	}
	for _, c := range changes {
		if c.Now != "kale, Curled Ebb" || !strings.Contains(c.Was, "one of") {
			t.Errorf("%s: %q to %q", c.ID, c.Was, c.Now)
		}
	}
	if only, _ := d.Preview(ledger.Naming{Planting: part.ID, Is: "Curled Ebb", Only: true}); len(only) != 1 {
		t.Errorf("only these: %d change", len(only))
	}
	if g, _ := d.Group(part.ID); !g.Unknown() {
		t.Error("asking changed it")
	}
	// From two trays: dots by how many stood in each.
	a := event(t, ledger.Sown, cal.Of(2015, 3, 1), ledger.Started{Crop: "kale", Variety: "Black Frond", Space: "store", Count: 9})
	b := event(t, ledger.Sown, cal.Of(2015, 3, 1), ledger.Started{Crop: "kale", Variety: "Curled Ebb", Space: "store", Count: 3})
	m := event(t, ledger.PrickedOut, cal.Of(2015, 3, 20), ledger.Handover{OneOf: []string{a.ID, b.ID}, Count: 8})
	w, _ = desk(t, a, b, m).Which(m.ID)
	if len(w.Candidates) != 2 || w.Candidates[0].Name != "Black Frond" || w.Candidates[0].Of20 != 15 || w.Candidates[1].Of20 != 5 || !w.Mixed || w.Even {
		t.Errorf("nine and three: %+v", w.Candidates)
	}
	seen := desk(t, event(t, ledger.Sown, cal.Of(2015, 4, 8), ledger.Started{Crop: "kale", OneOf: []string{"A", "B", "C", "D"}, Space: "store", Count: 6}))
	for _, g := range seen.Groups() {
		if g.ID != "tray-1" {
			if w, _ := seen.Which(g.ID); !w.Young || len(w.Candidates) != 3 || len(w.Others) != 1 {
				t.Errorf("a week old, four sorts: young %v, %d shown, %d more", w.Young, len(w.Candidates), len(w.Others))
			}
		}
	}
}

// TestOwnPicture: a line-up shows the latest picture of plants that bear a
// name for sure, and none of the plants that are asked about.
func TestOwnPicture(t *testing.T) {
	part := event(t, ledger.PutOut, cal.Of(2015, 4, 10), ledger.Started{Planting: "tray-1", Crop: "kale", Space: "bed", Count: 5})
	sure := event(t, ledger.Sown, cal.Of(2015, 3, 1), ledger.Started{Crop: "kale", Variety: "Curled Ebb", Space: "store", Count: 9})
	shot := func(day int, of string, n byte) ledger.Event {
		return event(t, ledger.Pictured, cal.Of(2015, 4, day), ledger.Photo{Planting: of, SHA256: strings.Repeat(string('a'+rune(n)), 64), Bytes: 9, Width: 4, Height: 3})
	}
	w, ok := desk(t, part, sure, shot(20, sure.ID, 0), shot(22, sure.ID, 1), shot(25, part.ID, 2)).Which(part.ID)
	if !ok || len(w.Candidates) != 2 {
		t.Fatalf("%+v", w)
	}
	for _, c := range w.Candidates {
		switch {
		case c.Name == "Black Frond" && c.Own != nil:
			t.Errorf("%s has a picture that nobody took: %+v", c.Name, c.Own)
		case c.Name == "Curled Ebb" && (c.Own == nil || !strings.HasPrefix(c.Own.SHA256, "bb")):
			t.Errorf("%s: %+v, want the later of two pictures", c.Name, c.Own)
		}
	}
}

// TestTenYears: a record of ten years is put into words.
func TestTenYears(t *testing.T) {
	ev := tenYears(t)
	d := desk(t, ev...)
	if len(d.Groups()) == 0 || len(d.order) < 1000 {
		t.Fatalf("%d groups", len(d.order))
	}
	for _, id := range d.order {
		if d.Origin(id) == "" && id != "tray-1" {
			t.Fatalf("%s traces to no packet", id)
		}
	}
}

func tenYears(t testing.TB) []ledger.Event {
	var ev []ledger.Event
	add := func(k ledger.Kind, on cal.Day, b any) string {
		e, err := ledger.NewEvent("test", on, k, b)
		if err != nil {
			t.Fatal(err)
		}
		e.Seq = int64(len(ev) + 1)
		ev = append(ev, e)
		return e.ID
	}
	day := cal.Of(2005, 4, 15)
	for range 520 {
		s := add(ledger.Sown, day, ledger.Started{Crop: "kale", Variety: "Black Frond", Space: "store", Count: 12, Lot: "kale-a"})
		add(ledger.PrickedOut, day+14, ledger.Handover{Planting: s, Count: 10, Rest: "gone", Pot: "7 cm"})
		o := add(ledger.PutOut, day+40, ledger.Started{Planting: s, Space: "bed", Count: 8})
		add(ledger.Lost, day+41, ledger.Ended{Planting: s, Cause: "eaten"})
		for k := range cal.Day(4) {
			add(ledger.Picked, day+80+7*k, ledger.Amount{Planting: o, Kg: 0.3})
		}
		add(ledger.Pulled, day+120, ledger.Ended{Planting: o})
		day += 7
	}
	return ev
}

func BenchmarkTenYears(b *testing.B) {
	ev := tenYears(b)
	book, err := crop.Load()
	if err != nil {
		b.Fatal(err)
	}
	g, _ := garden.Read("test.yaml", []byte(gardenText), garden.FromBook(book))
	for b.Loop() {
		state := ledger.ReplayOver(nil, ev)
		d, err := New(g, book, &state, nil, ev, cal.Of(2015, 4, 15))
		if err != nil {
			b.Fatal(err)
		}
		d.Story(ev[len(ev)-1].ID)
	}
}
