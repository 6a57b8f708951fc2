package reckon

import (
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// TestSpentOn counts the day's work from the entries alone: what is taken
// back, put off or of another day is not in it.
func TestSpentOn(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	today := cal.Of(2015, 5, 18)
	kale, _ := book.Crop("kale")
	note := func(on cal.Day, kind ledger.Kind, body any) ledger.Event {
		e, err := ledger.NewEvent("test", on, kind, body)
		if err != nil {
			t.Fatal(err)
		}
		return e
	}
	state := &ledger.State{Plantings: []ledger.Planting{{ID: "k", Crop: "kale"}}}
	sown := note(today, ledger.Sown, ledger.Started{Crop: "kale", Space: "bed", Count: 6})
	events := []ledger.Event{
		sown,
		note(today, ledger.Picked, ledger.Amount{Planting: "k", Measure: "bowl"}),
		note(today, ledger.Looked, ledger.Look{Planting: "k", Looks: "well"}),
		note(today, ledger.Looked, ledger.Look{Space: "bed", Looks: ledger.DoneMark + "tie"}),
		note(today, ledger.Looked, ledger.Look{Space: "bed", Looks: ledger.NotYet}),
		note(today-1, ledger.Picked, ledger.Amount{Planting: "k", Measure: "bowl"}),
	}
	start, pick := int(kale.MinutesStart+0.5), int(kale.MinutesPick+0.5)
	if got, want := SpentOn(events, state, book, today), start+pick+lookMinutes+doneMinutes; got != want || start == 0 || pick == 0 {
		t.Errorf("%d minutes, want %d", got, want)
	}
	undone := append(events, note(today, ledger.Voided, ledger.Void{Event: sown.ID}))
	if got, want := SpentOn(undone, state, book, today), pick+lookMinutes+doneMinutes; got != want {
		t.Errorf("with the sowing taken back %d minutes, want %d", got, want)
	}
}
