package ledger

import (
	"encoding/json"
	"strings"
	"testing"
)

// TestAssumedLayoutOne reads the body as it was first written, and wants a
// planting assumed until something is seen of it. The text below is the
// fixture: layout 1 is read for ever.
func TestAssumedLayoutOne(t *testing.T) {
	const fixture = `{"space":"long-bed","what":"as planned","note":"after the holidays"}`
	text, body, faults := canonical(Assumed, 1, []byte(fixture))
	if len(faults) > 0 || string(text) != fixture || body.(Assumption).Note != "after the holidays" {
		t.Fatalf("read and written again: %s, %v", text, faults)
	}
	for _, bad := range []string{`{}`, `{"space":"a","what":"perhaps"}`, `{"what":"gone"}`} {
		if _, _, faults := canonical(Assumed, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
	sown := event(t, Sown, "2015-04-12", Started{Crop: "kale", Space: "long-bed", Count: 6})
	round := event(t, Assumed, "2015-06-01", Assumption{Space: "long-bed", What: "as planned"})
	look := event(t, Looked, "2015-06-09", Look{Planting: sown.ID, Looks: "well"})
	all := []Event{sown, round, look}
	for i, want := range []bool{false, true, false} {
		for k := range all {
			all[k].Seq = int64(k + 1)
		}
		s := Replay(all[:i+1])
		if got := s.StillAssumed(s.Plantings[0]); got != want {
			t.Errorf("after %d entries: assumed %v, want %v", i+1, got, want)
		}
	}
	s := Replay(append(all[:2:2], event(t, Voided, "2015-06-02", Void{Event: round.ID})))
	if s.StillAssumed(s.Plantings[0]) {
		t.Error("an assumption taken back still holds")
	}
	var b map[string]any
	if err := json.Unmarshal(round.Body, &b); err != nil || !strings.Contains(string(round.Body), "long-bed") {
		t.Error("the body is no JSON")
	}
}
