package ledger

import (
	"testing"

	"bedweek/internal/cal"
)

// TestDoneIsNoLook wants work done to be kept beside how a planting looks, not
// over it: a poor plant that was tied is still poor.
func TestDoneIsNoLook(t *testing.T) {
	sown := event(t, Sown, "2015-04-12", Started{Crop: "tomato", Space: "long-bed", Count: 2})
	poor := event(t, Looked, "2015-06-01", Look{Planting: sown.ID, Looks: "poor"})
	tied := event(t, Looked, "2015-06-03", Look{Planting: sown.ID, Looks: "done: tie"})
	bed := event(t, Looked, "2015-06-04", Look{Space: "long-bed", Looks: "done: flush"})
	later := event(t, Looked, "2015-06-04", Look{Planting: sown.ID, Looks: NotYet, Note: "prune tomato"})
	all := []Event{sown, poor, tied, bed, later}
	for k := range all {
		all[k].Seq = int64(k + 1)
	}
	s := Replay(all)
	p := s.Plantings[0]
	if p.Looks != "poor" || p.LookedOn != cal.Of(2015, 6, 3) {
		t.Errorf("looks %q on %s, want poor, seen 2015-06-03", p.Looks, p.LookedOn)
	}
	if got := s.LastDone(sown.ID, "tie"); got != cal.Of(2015, 6, 3) {
		t.Errorf("last tied %s, want 2015-06-03", got)
	}
	if got := s.LastDone("long-bed", "flush"); got != cal.Of(2015, 6, 4) || len(s.SpaceLooks) != 0 {
		t.Errorf("last flushed %s with %d looks of spaces, want 2015-06-04 and none", got, len(s.SpaceLooks))
	}
	if s.LastDone("long-bed", "tie") != 0 {
		t.Error("a space is tied that was not")
	}
	back := event(t, Voided, "2015-06-05", Void{Event: tied.ID})
	back.Seq = 6
	s = Replay(append(all, back))
	if s.LastDone(sown.ID, "tie") != 0 {
		t.Error("taken back, it still counts as tied")
	}
}
