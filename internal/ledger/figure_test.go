package ledger

import "testing"

// TestFigureLayoutOne reads the body as it was first written. The text below
// is the fixture: layout 1 is read for ever.
func TestFigureLayoutOne(t *testing.T) {
	const fixture = `{"crop":"carrot","variety":"Long Tom","figure":"days-from-sow","value":95,"low":85,"high":110,"unit":"days","typed":"95 days","why":"three years' notes","note":"our clay"}`
	text, body, faults := canonical(Figured, 1, []byte(fixture))
	if len(faults) > 0 || string(text) != fixture || body.(OwnFigure).High != 110 {
		t.Fatalf("read and written again: %s, %v", text, faults)
	}
	const least = `{"crop":"kale","figure":"frost-kill","value":0,"unit":"°C","why":""}`
	if text, _, faults := canonical(Figured, 1, []byte(least)); len(faults) > 0 || string(text) != least {
		t.Errorf("the least body: %s, %v", text, faults)
	}
	for _, bad := range []string{
		`{}`,
		`{"figure":"base","value":4,"unit":"°C","why":""}`,
		`{"crop":"carrot","value":4,"unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","value":4,"why":""}`,
		`{"crop":"carrot","figure":"base","value":4,"low":5,"high":6,"unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","value":4,"low":6,"high":2,"unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","value":1e9,"unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","value":"warm","unit":"°C","why":""}`,
		`{"crop":"carrot","figure":"base","value":4,"unit":"°C","why":"","colour":"red"}`,
		`{"crop":"carrot","variety":" x ","figure":"base","value":4,"unit":"°C","why":""}`,
	} {
		if _, _, faults := canonical(Figured, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
	first := event(t, Figured, "2015-05-01", OwnFigure{Crop: "carrot", Figure: "base", Value: 3, Unit: "°C"})
	second := event(t, Figured, "2015-05-02", OwnFigure{Crop: "kale", Figure: "spacing-m", Value: 0.5, Unit: "m", Typed: "50 cm"})
	back := event(t, Voided, "2015-05-03", Void{Event: first.ID})
	all := []Event{first, second, back}
	for k := range all {
		all[k].Seq = int64(k + 1)
	}
	if s := Replay(all[:2]); len(s.Figures) != 2 || s.Figures[0].Event != first.ID || s.Figures[1].Typed != "50 cm" {
		t.Errorf("figures %+v", s.Figures)
	}
	if s := Replay(all); len(s.Figures) != 1 || s.Figures[0].Event != second.ID || s.Figures[0].On.String() != "2015-05-02" {
		t.Errorf("after taking the first back: %+v", s.Figures)
	}
}
