package ledger

import (
	"testing"

	"bedweek/internal/cal"
)

// TestForecastLayoutOne reads the body as it was first written. The text below
// is the fixture: layout 1 is read for ever.
func TestForecastLayoutOne(t *testing.T) {
	const fixture = `{"planting":"bed-1","crop":"kale","space":"bed","plants":6,"first_early":"2015-06-01","first_likely":"2015-06-08","first_late":"2015-06-20","out_early":"2015-09-01","out_likely":"2015-09-08","out_late":"2015-09-20","kg_low":1.5,"kg_likely":2,"kg_high":3.25,"of_twenty":17}`
	text, body, faults := canonical(Forecasted, 1, []byte(fixture))
	if len(faults) > 0 || string(text) != fixture || body.(Forecast).First() != (cal.Window{Early: cal.Of(2015, 6, 1), Likely: cal.Of(2015, 6, 8), Late: cal.Of(2015, 6, 20)}) {
		t.Fatalf("read and written again: %s, %v", text, faults)
	}
	for _, bad := range []string{
		`{}`,
		`{"planting":"a","crop":"kale","space":"b","of_twenty":21}`,
		`{"planting":"a","crop":"kale","space":"b","of_twenty":1,"first_early":"2015-06-09","first_likely":"2015-06-08","first_late":"2015-06-20"}`,
		`{"planting":"a","crop":"kale","space":"b","of_twenty":1,"kg_low":3,"kg_likely":2,"kg_high":4}`,
		`{"planting":"a","crop":"kale","space":"b","of_twenty":1,"kg_low":-1,"kg_likely":2,"kg_high":4}`,
	} {
		if _, _, faults := canonical(Forecasted, 1, []byte(bad)); len(faults) == 0 {
			t.Errorf("%s has no faults", bad)
		}
	}
}

// TestTheFirstForecastStays: what was said first is what is held against the
// outcome; later words do not rewrite it.
func TestTheFirstForecastStays(t *testing.T) {
	first := event(t, Forecasted, "2015-05-01", Forecast{Planting: "p", Crop: "kale", Space: "bed", OfTwenty: 18})
	second := event(t, Forecasted, "2015-06-01", Forecast{Planting: "p", Crop: "kale", Space: "bed", OfTwenty: 3})
	back := event(t, Voided, "2015-06-02", Void{Event: first.ID})
	all := []Event{first, second, back}
	for k := range all {
		all[k].Seq = int64(k + 1)
	}
	if s := Replay(all[:2]); len(s.Forecasts) != 1 || s.Forecasts[0].OfTwenty != 18 || s.Forecasts[0].On != cal.Of(2015, 5, 1) || len(s.Plantings) != 0 {
		t.Errorf("forecasts %+v, plantings %v", s.Forecasts, s.Plantings)
	}
	if s := Replay(all); len(s.Forecasts) != 1 || s.Forecasts[0].OfTwenty != 3 {
		t.Errorf("after taking the first back: %+v", s.Forecasts)
	}
}
