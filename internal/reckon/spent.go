package reckon

import (
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// Minutes a note stands for where no crop says. The list's own times: a pull,
// a tie, a net are 10 there on the whole, a hand-over 5, a look or a can 2.
const (
	doneMinutes = 10
	handMinutes = 5
	lookMinutes = 2
)

// SpentOn is about how many minutes of work the entries that happened on a day
// stand for. It holds over a restart, and what is taken back is not in it.
func SpentOn(events []ledger.Event, state *ledger.State, book *crop.Book, on cal.Day) int {
	back := ledger.TakenBack(events)
	crops := map[string]string{}
	for _, p := range state.Plantings {
		crops[p.ID] = p.Crop
	}
	minutes := func(id string, of func(*crop.Crop) float64) int {
		if c, ok := book.Crop(crop.ID(id)); ok {
			return int(of(c) + 0.5)
		}
		return doneMinutes
	}
	sum := 0
	for _, e := range events {
		if e.Happened != on || back[e.ID] {
			continue
		}
		body, err := ledger.Decode(e)
		if err != nil {
			continue
		}
		switch b := body.(type) {
		case ledger.Started:
			sum += minutes(orElse(b.Crop, crops[b.Planting]), func(c *crop.Crop) float64 { return c.MinutesStart })
		case ledger.Amount:
			sum += minutes(crops[b.Planting], func(c *crop.Crop) float64 { return c.MinutesPick })
		case ledger.Ended:
			if e.Kind == ledger.Pulled {
				sum += doneMinutes
			}
		case ledger.Handover:
			sum += handMinutes
		case ledger.Watering:
			sum += lookMinutes
		case ledger.Look:
			switch {
			case strings.HasPrefix(b.Looks, ledger.DoneMark):
				sum += doneMinutes
			case b.Looks != ledger.NotYet:
				sum += lookMinutes
			}
		}
	}
	return sum
}
