package ledger

import "testing"

// TestSkylineLayoutOne reads the body as it was first written. The text below
// is the fixture: layout 1 is read for ever.
func TestSkylineLayoutOne(t *testing.T) {
	const fixture = `{"space":"long-bed","bearing_deg":121.5,"was_deg":12,"edge_deg":31.25,"how":"sun reached","clock":"10:40","note":"over the shed"}`
	text, body, faults := canonical(Skyline, 1, []byte(fixture))
	if len(faults) > 0 || string(text) != fixture || body.(Edge).EdgeDeg != 31.25 {
		t.Fatalf("read and written again: %s, %v", text, faults)
	}
	for _, bad := range []string{
		`{}`,
		`{"space":"a","bearing_deg":360,"was_deg":0,"edge_deg":1,"how":"by hand"}`,
		`{"space":"a","bearing_deg":10,"was_deg":0,"edge_deg":91,"how":"by hand"}`,
		`{"space":"a","bearing_deg":10,"was_deg":-1,"edge_deg":1,"how":"by hand"}`,
		`{"space":"a","bearing_deg":10,"was_deg":0,"edge_deg":1,"how":"sun reached"}`,
		`{"space":"a","bearing_deg":10,"was_deg":0,"edge_deg":1,"how":"guessed"}`,
		`{"bearing_deg":10,"was_deg":0,"edge_deg":1,"how":"by hand"}`,
	} {
		if _, _, faults := canonical(Skyline, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
	first := event(t, Skyline, "2015-05-01", Edge{Space: "long-bed", BearingDeg: 0, WasDeg: 10, EdgeDeg: 0, How: "by hand"})
	second := event(t, Skyline, "2015-05-02", Edge{Space: "long-bed", BearingDeg: 100, EdgeDeg: 10, How: "by hand"})
	back := event(t, Voided, "2015-05-03", Void{Event: first.ID})
	all := []Event{first, second, back}
	for k := range all {
		all[k].Seq = int64(k + 1)
	}
	if s := Replay(all[:2]); len(s.Edges) != 2 || s.Edges[0].Event != first.ID || s.Edges[1].EdgeDeg != 10 {
		t.Errorf("edges %+v", s.Edges)
	}
	if s := Replay(all); len(s.Edges) != 1 || s.Edges[0].Event != second.ID {
		t.Errorf("after taking the first back: %+v", s.Edges)
	}
}
