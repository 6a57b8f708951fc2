package reckon

import (
	"reflect"
	"testing"

	"bedweek/internal/ledger"
)

// What is remembered is what would be reckoned anew: after looks at some
// spaces, other hours, absences, limits and readings, asked in any order.
func TestRememberedWaterIsReckonedWater(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	stays := whatStands(in)
	growStanding(in, p, stays)
	memo := &dryMemo{}
	none := &ledger.State{}
	wet := &ledger.State{Wet: []ledger.WetLook{{Space: string(in.Garden.Spaces[2].ID), On: in.Date, Hour: 9, Looks: "dry"}}}
	wetter := &ledger.State{Wet: append(append([]ledger.WetLook(nil), wet.Wet...), ledger.WetLook{Space: string(in.Garden.Spaces[3].ID), On: in.Date - 1, Hour: 9, Looks: "watered", Litres: 10})}
	read := &ledger.State{Wet: wet.Wet, Readings: []ledger.ReadingNote{{Event: entryID("c"), On: in.Date - 2, Reading: ledger.Reading{What: "rain", Value: 22}}}}
	different := 0
	var last []DryRow
	for _, tt := range []struct {
		state *ledger.State
		ask   DryAsk
	}{
		{none, DryAsk{FromHour: 10, NextH: 24}}, {wet, DryAsk{FromHour: 10, NextH: 24}}, {wet, DryAsk{FromHour: 10, NextH: 24}},
		{wetter, DryAsk{FromHour: 10, NextH: 24}}, {wetter, DryAsk{FromHour: 11, NextH: 24}}, {none, DryAsk{FromHour: 10, NextH: 72}},
		{wet, DryAsk{FromHour: 10, NextH: 24, AwayDays: 9}}, {wet, DryAsk{FromHour: 10, NextH: 24, AllowedL: 20}},
		{read, DryAsk{FromHour: 10, NextH: 24}}, {none, DryAsk{FromHour: 10, NextH: 24}},
	} {
		now := *in
		now.State = tt.state
		want, err := dry(&now, p, tt.ask, stays, nil)
		if err != nil {
			t.Fatal(err)
		}
		got, err := dry(&now, p, tt.ask, stays, memo)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%+v: remembered water differs from reckoned water", tt.ask)
		}
		if !reflect.DeepEqual(last, got.Rows) {
			different++
		}
		last = got.Rows
	}
	if different < 8 {
		t.Errorf("only %d of ten questions change an answer: this test asks nothing", different)
	}
}

// A note at one space, and the page after it: what the server works out.
func BenchmarkTapOnWater(b *testing.B) {
	in, p := dryInputs(b, demoCases()[1])
	stays := whatStands(in)
	growStanding(in, p, stays)
	for _, keep := range []bool{false, true} {
		b.Run(map[bool]string{false: "anew", true: "remembered"}[keep], func(b *testing.B) {
			var memo *dryMemo
			if keep {
				memo = &dryMemo{}
			}
			for i := range b.N {
				now := *in
				now.State = &ledger.State{Wet: []ledger.WetLook{{Space: string(in.Garden.Spaces[2].ID), On: in.Date, Hour: 9, Looks: "watered", Litres: float64(i + 1)}}}
				for range 4 { // before, on the day, after, on the page
					if _, err := dry(&now, p, DryAsk{FromHour: 10, NextH: 24}, stays, memo); err != nil {
						b.Fatal(err)
					}
				}
			}
		})
	}
	b.Run("weather", func(b *testing.B) {
		for range b.N {
			sky(in, p, stays, climateOf(in, p))
		}
	})
}
