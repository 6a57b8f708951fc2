package ledger

import (
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"os"
	"reflect"
	"testing"
)

// outdoorKinds is an invented week of water and weather: every kind and layout
// added since layout 1 was shipped.
func outdoorKinds(t *testing.T) []Event {
	can := event(t, Watered, "2016-07-02", Watering{Space: "bag-1", Litres: 10, Hour: 7})
	through := event(t, Watered, "2016-07-02", Watering{Space: "bag-2", Hour: 7, Note: "until it ran"})
	dry := event(t, Looked, "2016-07-03", LookAt{Space: "bag-1", Looks: "dry", Hour: 17})
	damp := event(t, Looked, "2016-07-03", LookAt{Space: "bag-2", Looks: "damp at a knuckle", Hour: 17, Note: "north side"})
	old := event(t, Looked, "2016-07-01", Look{Space: "bag-2", Looks: "wilting"})
	words := event(t, Looked, "2016-07-03", LookAt{Space: "bag-1", Looks: "a crack along the rim", Hour: 18})
	low := event(t, Measured, "2016-07-04", Reading{What: ReadLow, Value: 8.5, Space: "bag-1", Hour: 7})
	own := event(t, Measured, "2016-07-04", Reading{What: ReadHigh, Value: 29})
	rain := event(t, Measured, "2016-07-04", Reading{What: ReadRain, Value: 0, Hour: 8})
	wrong := event(t, Measured, "2016-07-04", Reading{What: ReadRain, Value: 40, Hour: 8})
	void := event(t, Voided, "2016-07-04", Void{Event: wrong.ID, Why: "four, not forty"})
	void.Parent = wrong.ID
	return []Event{can, through, dry, damp, old, words, low, own, rain, wrong, void}
}

// TestOutdoorLayoutsAreReadForEver reads entries written when these kinds were
// new. The golden state was read through by eye when it was written.
func TestOutdoorLayoutsAreReadForEver(t *testing.T) {
	const dir = "testdata/outdoors/"
	if *update {
		if _, err := os.Stat(dir); err == nil {
			t.Fatal(dir + " is there already: what was shipped is never written again")
		}
		l := open(t, t.TempDir())
		all, err := eventsJSON(add(t, l, outdoorKinds(t)...))
		if err != nil {
			t.Fatal(err)
		}
		events, err := ReadEvents(bytes.NewReader(all))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.MkdirAll(dir, 0o755); err != nil {
			t.Fatal(err)
		}
		for name, b := range map[string][]byte{"events.json": all, "state.json": indented(t, Replay(events))} {
			if err := os.WriteFile(dir+name, b, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	text, err := os.ReadFile(dir + "events.json")
	if err != nil {
		t.Fatal(err)
	}
	events, err := ReadEvents(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile(dir + "state.json")
	if err != nil {
		t.Fatal(err)
	}
	chance := rand.New(rand.NewPCG(3, 4))
	for range 10 {
		if got := indented(t, Replay(events)); !bytes.Equal(got, want) {
			t.Fatalf("state:\n%s\nwant:\n%s", got, want)
		}
		chance.Shuffle(len(events), func(i, j int) { events[i], events[j] = events[j], events[i] })
	}
	layouts := map[string]bool{}
	for _, e := range events {
		layouts[string(e.Kind)+"/"+string(rune('0'+e.Version))] = true
		again, _, faults := canonical(e.Kind, e.Version, e.Body)
		if len(faults) > 0 || !bytes.Equal(again, e.Body) {
			t.Errorf("%s: read and written again gives %s (%v)", e.Body, again, faults)
		}
		if _, err := Decode(e); err != nil {
			t.Error(err)
		}
	}
	for _, l := range []string{"watered/1", "measured/1", "looked/1", "looked/2"} {
		if !layouts[l] {
			t.Errorf("the fixture has no %s", l)
		}
	}
}

// One line at a time gives the same state as all at once.
func TestOutdoorStateGrows(t *testing.T) {
	events := outdoorKinds(t)
	for i := range events {
		events[i].Seq = int64(i + 1)
	}
	whole := Replay(events)
	if len(whole.Wet) != 5 || len(whole.Readings) != 3 {
		t.Fatalf("%d looks and %d readings, want 5 and 3 (one in other words, one taken back)", len(whole.Wet), len(whole.Readings))
	}
	last := whole.Wet[len(whole.Wet)-1]
	if want := (WetLook{Space: "bag-2", Looks: "wilting", On: last.On}); last != want {
		t.Errorf("the look of layout 1: %+v, want %+v", last, want)
	}
	b, _ := json.Marshal(Replay(nil))
	var empty map[string]any
	if json.Unmarshal(b, &empty); empty["Wet"] != nil || empty["Readings"] != nil {
		t.Error("an empty state says something of water; older golden states would change")
	}
	if !reflect.DeepEqual(whole, Replay(events)) {
		t.Error("replayed twice, it differs")
	}
}
