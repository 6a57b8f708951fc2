package ledger

import (
	"encoding/json"
	"math"

	"bedweek/internal/cal"
)

// Bodies about water and weather. Looks with an hour are layout 2 of "looked";
// layout 1 stays as it was.
type (
	// LookAt is a Look with its hour.
	LookAt struct {
		Planting string `json:"planting,omitempty"`
		Space    string `json:"space,omitempty"`
		Looks    string `json:"looks"`
		Hour     int    `json:"hour,omitempty"` // 0 to 23, on the garden's clock
		Note     string `json:"note,omitempty"`
	}
	// Watering is water given to a whole space.
	Watering struct {
		Space  string  `json:"space"`
		Litres float64 `json:"litres,omitempty"` // 0 = until it ran through
		Hour   int     `json:"hour,omitempty"`
		Note   string  `json:"note,omitempty"`
	}
	// Reading is what one's own thermometer or rain gauge said.
	Reading struct {
		What  string  `json:"what"`            // ReadLow, ReadHigh, ReadRain or ReadHeap
		Value float64 `json:"value"`           // °C, or mm
		Space string  `json:"space,omitempty"` // "" = the garden's own instrument
		Hour  int     `json:"hour,omitempty"`  // when it was read
		Note  string  `json:"note,omitempty"`
	}
)

// What a Reading can be of.
const (
	ReadLow  = "low"  // coldest air since the day before
	ReadHigh = "high" // warmest air of the day
	ReadHeap = "heap" // middle of a compost heap
	ReadRain = "rain" // fallen since the gauge was emptied, at most a day before
)

// Look is the same look without its hour.
func (b LookAt) Look() Look {
	return Look{Planting: b.Planting, Space: b.Space, Looks: b.Looks, Note: b.Note}
}

// WetLook is a watering or a look at a whole space, in replay order. Hour is 0
// when only the day is known.
type WetLook struct {
	Space  string
	Looks  string // "watered", or how it looked
	On     cal.Day
	Hour   int
	Litres float64 // of a watering; 0 = until it ran through
}

// ReadingNote is a reading with its day and the entry that holds it.
type ReadingNote struct {
	Event string
	On    cal.Day
	Reading
}

// watered is the look of a space just watered.
const watered = "watered"

// Limits of what is believed: 2000 L at once is a bed under water, and no
// thermometer in a garden has read outside -70 to 60 °C. 2000 mm is above the
// wettest day on record.
const (
	litresLimit  = 2000
	coldestLimit = -70
	hottestLimit = 60
	rainLimit    = 2000
	heapLimit    = 100
)

func (r *replayer) wetLook(s step, space, planting, looks string, hour int, litres float64) {
	if space == "" || planting != "" {
		return
	}
	switch looks {
	case watered, "damp at a knuckle", "dry", "wilting":
	default:
		return
	}
	r.wet = append(r.wet, WetLook{Space: space, Looks: looks, On: s.Happened, Hour: hour, Litres: litres})
}

func (f *Faults) hour(h int) {
	if h < 0 || h > 23 {
		f.add("%q is %d; it must lie between 0 and 23", "hour", h)
	}
}

func (f *Faults) watering(b Watering) {
	f.name("space", b.Space, true)
	f.text("note", b.Note, noteLimit)
	f.hour(b.Hour)
	if !(b.Litres >= 0 && b.Litres <= litresLimit) {
		f.add("%q is %g; it must lie between 0 and %d L", "litres", b.Litres, litresLimit)
	}
}

func (f *Faults) reading(b Reading, fields map[string]json.RawMessage) {
	f.name("space", b.Space, false)
	f.text("note", b.Note, noteLimit)
	f.hour(b.Hour)
	if _, given := fields["value"]; !given {
		f.add("%q is missing; say what was read", "value")
	}
	low, high := math.Inf(1), math.Inf(-1)
	switch b.What {
	case ReadLow, ReadHigh:
		low, high = coldestLimit, hottestLimit
	case ReadRain:
		low, high = 0, rainLimit
	case ReadHeap:
		low, high = coldestLimit, heapLimit
		f.name("space", b.Space, true)
	default:
		f.add("%q is %q; it may be low, high, rain or heap", "what", clip(b.What))
		return
	}
	if !(b.Value >= low && b.Value <= high) {
		f.add("%q is %g; it must lie between %g and %g", "value", b.Value, low, high)
	}
}
