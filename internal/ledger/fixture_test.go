package ledger

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"flag"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"testing"
)

var update = flag.Bool("update", false, "write testdata/v1, when it is not there")

// everyKind is an invented season with every kind of entry in layout 1.
func everyKind(t *testing.T) []Event {
	text := "garden: Invented for tests\nspaces: []\n"
	sum := sha256.Sum256([]byte(text))
	g := event(t, GardenSet, "2015-03-01", Garden{Text: text, SHA256: hex.EncodeToString(sum[:])})
	sown := event(t, Sown, "2015-04-12", Started{Crop: "lettuce-leaf", Variety: "Red <oak> & more", OneOf: []string{"a", "b"}, Space: "shelf", Count: 12, Lot: "tin-3", Note: "under\nthe lamp"})
	part := event(t, PutOut, "2015-05-10", Started{Planting: sown.ID, Space: "long-bed", Count: 8})
	bought := event(t, PutOut, "2015-05-11", Started{Crop: "tomato", Space: "bag-1", Count: 2})
	carrots := event(t, Sown, "2015-04-20", Started{Crop: "carrot", Space: "long-bed"})
	counted := event(t, Counted, "2015-05-20", Count{Planting: carrots.ID, Count: 60})
	counted.Parent = carrots.ID
	other := event(t, Counted, "2015-05-20", Count{Planting: carrots.ID, Count: 55, Note: "from the other side"})
	other.Device = "phone"
	lost := event(t, Lost, "2015-05-25", Ended{Planting: part.ID, Count: 3, Cause: "eaten"})
	pick := event(t, Picked, "2015-06-10", Amount{Planting: part.ID, Kg: 0.25})
	bowl := event(t, Picked, "2015-06-12", Amount{Planting: "winter-bed-1", Measure: "bowl"})
	look := event(t, Looked, "2015-06-12", Look{Planting: bought.ID, Looks: "young"})
	bed := event(t, Looked, "2015-06-12", Look{Space: "long-bed", Looks: "dry at the south end"})
	pulled := event(t, Pulled, "2015-06-30", Ended{Planting: part.ID})
	wrong := event(t, Pulled, "2015-06-30", Ended{Planting: bought.ID, Cause: "a slip of the thumb"})
	void := event(t, Voided, "2015-07-01", Void{Event: wrong.ID, Why: "it still stands"})
	void.Parent = wrong.ID
	again := event(t, Voided, "2015-07-01", Void{Event: look.ID})
	back := event(t, Voided, "2015-07-02", Void{Event: again.ID})
	no := event(t, Dismissed, "2015-07-03", Dismissal{Task: "long-bed.pull.x", Why: "seed saving"})
	return []Event{g, sown, part, bought, carrots, counted, other, lost, pick, bowl, look, bed, pulled, wrong, void, again, back, no}
}

// TestLayoutOneIsReadForEver reads a record written with layout 1. The golden
// state was read through by eye when it was written; see the comments below.
func TestLayoutOneIsReadForEver(t *testing.T) {
	if *update {
		writeFixture(t)
	}
	dir := t.TempDir()
	for _, name := range []string{dataName, headName} {
		b, err := os.ReadFile(filepath.Join("testdata/v1", name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), b, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	auditClean(t, dir)
	l := open(t, dir)
	events, err := l.Events(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	f, err := os.Open("testdata/v1/events.json")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	exported, err := ReadEvents(f)
	if err != nil || !reflect.DeepEqual(exported, events) {
		t.Errorf("events.json (%v) differs from ledger.db", err)
	}
	st, err := l.State(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	want, err := os.ReadFile("testdata/v1/state.json")
	if err != nil {
		t.Fatal(err)
	}
	if got := indented(t, st); !bytes.Equal(got, want) {
		t.Errorf("state:\n%s\nwant:\n%s", got, want)
	}
	kinds := map[Kind]bool{}
	for _, e := range events {
		kinds[e.Kind] = true
		text, _, faults := canonical(e.Kind, e.Version, e.Body)
		if len(faults) > 0 || !bytes.Equal(text, e.Body) {
			t.Errorf("entry %d: read and written again gives %s, was %s (%v)", e.Seq, text, e.Body, faults)
		}
	}
	for _, k := range []Kind{GardenSet, Sown, PutOut, Picked, Pulled, Lost, Counted, Looked, Voided, Dismissed} {
		if !kinds[k] {
			t.Errorf("the fixture has no %q", k)
		}
	}
	// Appended to an empty record, the exported events get the same chain.
	copied := open(t, t.TempDir())
	if again := add(t, copied, exported...); !reflect.DeepEqual(again, events) {
		t.Error("an export given to an empty record gives another record")
	}
	// Replay is the same whatever the order of the slice.
	chance := rand.New(rand.NewPCG(1, 2))
	for range 20 {
		chance.Shuffle(len(events), func(i, j int) { events[i], events[j] = events[j], events[i] })
		if got := Replay(events); !reflect.DeepEqual(indented(t, got), indented(t, st)) {
			t.Fatal("replay depends on the order of the slice")
		}
	}
}

func indented(t *testing.T, v any) []byte {
	t.Helper()
	b, err := json.MarshalIndent(v, "", "\t")
	if err != nil {
		t.Fatal(err)
	}
	return append(b, '\n')
}

func writeFixture(t *testing.T) {
	if _, err := os.Stat("testdata/v1"); err == nil {
		t.Fatal("testdata/v1 is there already: what was shipped is never written again")
	}
	dir := t.TempDir()
	l := open(t, dir)
	add(t, l, everyKind(t)...)
	st, err := l.State(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(t.TempDir(), "out")
	if err := l.Export(context.Background(), out); err != nil {
		t.Fatal(err)
	}
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll("testdata/v1", 0o755); err != nil {
		t.Fatal(err)
	}
	for from, to := range map[string]string{filepath.Join(dir, dataName): dataName, filepath.Join(dir, headName): headName, filepath.Join(out, "events.json"): "events.json"} {
		b, err := os.ReadFile(from)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join("testdata/v1", to), b, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.WriteFile("testdata/v1/state.json", indented(t, st), 0o644); err != nil {
		t.Fatal(err)
	}
}
