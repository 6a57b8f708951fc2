package ledger

import (
	"math"

	"bedweek/internal/cal"
)

// Figured is a gardener's own figure for a crop, or for one variety of it, in
// place of the book's. Taking the entry back lets the book speak again.
const Figured Kind = "figure"

// OwnFigure is the body of Figured, layout 1. Value, Low and High are in Unit;
// Low and High both zero, or left out, mean that no range was given. Which
// crops and figures there are, and what a plant can be, the crop book says;
// the record keeps what was said.
type OwnFigure struct {
	Crop    string  `json:"crop"`
	Variety string  `json:"variety,omitempty"` // "" = every variety in this garden
	Figure  string  `json:"figure"`            // key of the crop book, such as days-from-sow
	Value   float64 `json:"value"`
	Low     float64 `json:"low,omitempty"`
	High    float64 `json:"high,omitempty"`
	Unit    string  `json:"unit"`            // of the numbers above
	Typed   string  `json:"typed,omitempty"` // the value as it was typed
	Why     string  `json:"why"`             // where the figure comes from, in the gardener's words
	Note    string  `json:"note,omitempty"`
}

// FigureNote is an own figure with the entry that holds it.
type FigureNote struct {
	Event string
	On    cal.Day
	OwnFigure
}

// figureMost bounds the numbers of a figure: no quantity of a plant, in the
// book's units, comes near it.
const figureMost = 10000

// figure lists what is wrong with the body.
func (f *Faults) figure(b OwnFigure, given func(field string) bool) {
	f.name("crop", b.Crop, true)
	f.name("figure", b.Figure, true)
	f.name("unit", b.Unit, true)
	f.name("variety", b.Variety, false)
	f.text("typed", b.Typed, wordsLimit)
	f.text("why", b.Why, wordsLimit)
	f.text("note", b.Note, noteLimit)
	if !given("value") {
		f.add("%q is missing", "value")
	}
	for _, n := range []struct {
		field string
		v     float64
	}{{"value", b.Value}, {"low", b.Low}, {"high", b.High}} {
		if !(math.Abs(n.v) <= figureMost) {
			f.add("%q is %g; it must lie between %d and %d", n.field, n.v, -figureMost, figureMost)
		}
	}
	if (b.Low != 0 || b.High != 0) && (b.Low > b.Value || b.Value > b.High) {
		f.add("the range is upside down: low %g, value %g, high %g", b.Low, b.Value, b.High)
	}
}
