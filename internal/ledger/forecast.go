package ledger

import "bedweek/internal/cal"

// Forecasted keeps what the program said would come of a planting, on the day
// it first stood there: the plan of next week says something else, and a miss
// can be shown only against what was kept. The program writes it; people do not.
const Forecasted Kind = "forecast"

// Forecast is the body of Forecasted, layout 1. Each window holds the middle
// sixteen futures of twenty; a day left out is not known.
type Forecast struct {
	Planting    string  `json:"planting"`
	Crop        string  `json:"crop"`
	Space       string  `json:"space"`
	Plants      int     `json:"plants,omitempty"`
	FirstEarly  cal.Day `json:"first_early,omitempty"`
	FirstLikely cal.Day `json:"first_likely,omitempty"`
	FirstLate   cal.Day `json:"first_late,omitempty"`
	OutEarly    cal.Day `json:"out_early,omitempty"`
	OutLikely   cal.Day `json:"out_likely,omitempty"`
	OutLate     cal.Day `json:"out_late,omitempty"`
	KgLow       float64 `json:"kg_low,omitempty"` // still to be picked, all plants
	KgLikely    float64 `json:"kg_likely,omitempty"`
	KgHigh      float64 `json:"kg_high,omitempty"`
	OfTwenty    int     `json:"of_twenty"` // futures in which it makes it
}

// First is the window of the first pick.
func (f Forecast) First() cal.Window {
	return cal.Window{Early: f.FirstEarly, Likely: f.FirstLikely, Late: f.FirstLate}
}

// Out is the window of the end.
func (f Forecast) Out() cal.Window {
	return cal.Window{Early: f.OutEarly, Likely: f.OutLikely, Late: f.OutLate}
}

// ForecastNote is a forecast with the entry that holds it and its day.
type ForecastNote struct {
	Event string
	On    cal.Day
	Forecast
}

// forecast lists what is wrong with the body.
func (f *Faults) forecast(b Forecast) {
	f.name("planting", b.Planting, true)
	f.name("crop", b.Crop, true)
	f.name("space", b.Space, true)
	f.count(b.Plants)
	if b.OfTwenty < 0 || b.OfTwenty > 20 {
		f.add("%q is %d; it must lie between 0 and 20", "of_twenty", b.OfTwenty)
	}
	if b.FirstEarly > b.FirstLikely || b.FirstLikely > b.FirstLate {
		f.add("the days of the first pick are out of order")
	}
	if b.OutEarly > b.OutLikely || b.OutLikely > b.OutLate {
		f.add("the days of the end are out of order")
	}
	if !(b.KgLow >= 0 && b.KgLow <= b.KgLikely && b.KgLikely <= b.KgHigh && b.KgHigh < 1e5) {
		f.add("the kilos are out of order")
	}
}
