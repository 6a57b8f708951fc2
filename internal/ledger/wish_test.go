package ledger

import "testing"

// TestWishLayoutOne reads wishes and kept plans as they were first written.
// The texts below are the fixtures: layout 1 is read for ever.
func TestWishLayoutOne(t *testing.T) {
	for _, fixture := range []string{
		`{"what":"lock","space":"long-bed","crop":"carrot","way":"sow","since":"2015-04-13","until":"2015-08-02","plants":60,"note":"for the show"}`,
		`{"what":"refuse","space":"long-bed","crop":"carrot","way":"sow","since":"2015-04-13","until":"2015-08-02","plants":60}`,
		`{"what":"want","food":"salad","meals":2.5,"first":10,"last":11}`,
		`{"what":"want","food":"salad","meals":-1}`,
		`{"what":"must","crop":"tomato","plants":2}`,
		`{"what":"never","crop":"tomato"}`,
		`{"what":"away","since":"2015-07-01","until":"2015-07-31"}`,
		`{"what":"minutes","minutes":10}`,
		`{"what":"water","litres":40}`,
		`{"what":"water"}`,
		`{"what":"bad years","level":"somewhat"}`,
		`{"what":"return","plan":"01JZZZZZZZZZZZZZZZZZZZZZZZ"}`,
	} {
		text, body, faults := canonical(Wished, 1, []byte(fixture))
		if len(faults) > 0 || string(text) != fixture {
			t.Errorf("read and written again: %s, %v", text, faults)
		} else if body.(Wish).What == "" {
			t.Errorf("%s is no wish", fixture)
		}
	}
	const kept = `{"name":"as in March","on":"2015-04-06","worth":120.5,"lines":[{"space":"a","crop":"pea","way":"sow","since":"2015-04-06","until":"2015-07-05","plants":40}],"pulls":[{"planting":"kale-1","on":"2015-04-12"}]}`
	text, body, faults := canonical(PlanKept, 1, []byte(kept))
	if len(faults) > 0 || string(text) != kept || body.(KeptPlan).Lines[0].Plants != 40 {
		t.Fatalf("read and written again: %s, %v", text, faults)
	}
	for _, bad := range []string{
		`{}`,
		`{"what":"hope"}`,
		`{"what":"lock","space":"a","crop":"b","way":"sow","plants":2}`,
		`{"what":"lock","space":"a","crop":"b","way":"sow","since":"2015-05-01","until":"2015-04-01","plants":2}`,
		`{"what":"lock","space":"a","crop":"b","way":"sow","since":"2015-04-01","until":"2015-05-01"}`,
		`{"what":"want","food":"salad"}`,
		`{"what":"want","food":"salad","meals":51}`,
		`{"what":"want","food":"salad","meals":2,"first":10}`,
		`{"what":"must","crop":"tomato"}`,
		`{"what":"never"}`,
		`{"what":"minutes"}`,
		`{"what":"water","litres":-1}`,
		`{"what":"bad years"}`,
		`{"what":"bad years","level":"very"}`,
		`{"what":"water","litres":20001}`,
		`{"what":"return","plan":"March"}`,
	} {
		if _, _, faults := canonical(Wished, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
	for _, bad := range []string{
		`{"on":"2015-04-06","lines":[]}`,
		`{"name":"x","lines":[]}`,
		`{"name":"x","on":"2015-04-06","lines":[{"space":"a"}]}`,
	} {
		if _, _, faults := canonical(PlanKept, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
}

func TestWishesAreTakenBack(t *testing.T) {
	first := event(t, Wished, "2015-04-06", Wish{What: WishNever, Crop: "tomato"})
	second := event(t, Wished, "2015-04-07", Wish{What: WishMust, Crop: "pea", Plants: 3})
	keep := event(t, PlanKept, "2015-04-07", KeptPlan{Name: "March", On: first.Happened, Lines: []PlanLine{}})
	back := event(t, Voided, "2015-04-08", Void{Event: first.ID})
	all := []Event{first, second, keep, back}
	for k := range all {
		all[k].Seq = int64(k + 1)
	}
	if s := Replay(all[:3]); len(s.Wishes) != 2 || s.Wishes[0].Event != first.ID || len(s.Kept) != 1 || s.Kept[0].Name != "March" {
		t.Errorf("wishes %+v, kept %+v", s.Wishes, s.Kept)
	}
	if s := Replay(all); len(s.Wishes) != 1 || s.Wishes[0].Event != second.ID {
		t.Errorf("after taking the first back: %+v", s.Wishes)
	}
}
