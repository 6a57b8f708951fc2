package story

import (
	"reflect"
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// TestTheStoryIsToldTheSame: the same ids each time, and no id twice, so that
// the demo's plan is the same wherever and whenever it is made.
func TestTheStoryIsToldTheSame(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("demo", demo.GardenYAML, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	var told [2][]ledger.Event
	for i := range told {
		if told[i], err = Events(demo.EventsCSV, g, cal.Of(2015, 12, 31)); err != nil {
			t.Fatal(err)
		}
	}
	if len(told[0]) < 20 || !reflect.DeepEqual(told[0], told[1]) {
		t.Errorf("%d events, not the same the second time", len(told[0]))
	}
	seen := map[string]bool{}
	for _, e := range told[0] {
		if seen[e.ID] || !ledger.IsID(e.ID) {
			t.Errorf("id %q", e.ID)
		}
		seen[e.ID] = true
	}
}
