package reckon

import (
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// TestHeapIsTurned: by its thermometer, else every four weeks outside winter.
func TestHeapIsTurned(t *testing.T) {
	g := &garden.Garden{Place: garden.Place{LatDeg: 47}, Spaces: []garden.Space{{ID: "heap", Name: "Heap by the shed", Kind: garden.Heap}, {ID: "bed", Kind: garden.RaisedBed}}}
	day := cal.Of(2015, 5, 20)
	read := func(before cal.Day, c float64) ledger.ReadingNote {
		return ledger.ReadingNote{On: day - before, Reading: ledger.Reading{What: ledger.ReadHeap, Value: c, Space: "heap"}}
	}
	turned := func(before cal.Day) []ledger.DoneNote {
		return []ledger.DoneNote{{About: "heap", Verb: "turn", On: day - before}}
	}
	for _, tt := range []struct {
		name  string
		date  cal.Day
		south bool
		state ledger.State
		words string // of the reason; "" = no task
	}{
		{name: "nothing noted", date: day, words: "is not known"},
		{name: "in winter", date: cal.Of(2015, 1, 20)},
		{name: "in winter, measured cold", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(1, 12)}}, words: "cooled to 12 °C"},
		{name: "January in the south", date: cal.Of(2015, 1, 20), south: true, words: "is not known"},
		{name: "turned three weeks ago", date: day, state: ledger.State{Done: turned(21)}},
		{name: "turned four weeks ago", date: day, state: ledger.State{Done: turned(28)}, words: "nobody has measured"},
		{name: "hot", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(2, 58)}}},
		{name: "too hot, just turned", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(0, 79)}, Done: turned(2)}, words: "at 79 °C"},
		{name: "cooled, turned long ago", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(0, 33)}, Done: turned(15)}, words: "cooled to 33 °C"},
		{name: "cooled, just turned", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(0, 33)}, Done: turned(3)}},
		{name: "cold before and after a turning", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(18, 25), read(0, 24)}, Done: turned(15)}},
		{name: "an old reading speaks for nothing", date: day, state: ledger.State{Readings: []ledger.ReadingNote{read(20, 60)}}, words: "is not known"},
	} {
		g.Place.LatDeg = 47
		if tt.south {
			g.Place.LatDeg = -37
		}
		r := &Result{in: &Inputs{Garden: g, Date: tt.date, State: &tt.state}}
		got := r.heapTasks()
		switch {
		case tt.words == "" && len(got) > 0:
			t.Errorf("%s: it is to be turned: %s", tt.name, got[0].Answer.Reason)
		case tt.words != "" && (len(got) != 1 || !strings.Contains(got[0].Answer.Reason, tt.words)):
			t.Errorf("%s: %+v, want one task whose reason says %q", tt.name, got, tt.words)
		case len(got) == 1 && (got[0].Verb != "turn" || got[0].Space != "heap" || got[0].Event != EventDone || got[0].Answer.Caution == "" || got[0].Answer.Look == ""):
			t.Errorf("%s: %+v", tt.name, got[0])
		}
	}
}
