package weather

import "bedweek/internal/cal"

// Site is where a record was taken, or where a garden lies.
type Site struct {
	LatDeg, LonDeg float64 // north +, east +
	ElevM          float64
	// Coastal says that a sea or great lake rules the daily range. It raises
	// the radiation worked out from temperature ([FAO56] eq. 50: 0.19
	// instead of 0.16).
	Coastal bool
}

// Day is one day's weather with nothing missing.
type Day struct {
	TmaxC, TminC float64
	RainMM       float64
	WindMS       float64 // at 2 m above ground
	RadMJ        float64 // global radiation on the level, MJ/m2/day
}

// Row is one day as a file gave it; nil is "not recorded", never 0. Wind is
// as the station measured it, at the height its Sheet names.
type Row struct {
	Day                                 cal.Day
	TmaxC, TminC, RainMM, WindMS, RadMJ *float64
	Trace                               bool // rain was seen but too little to measure
}

// Gap is a run of days in which one quantity is missing and how it was filled.
type Gap struct {
	Quantity string // "tmax", "tmin", "rain", "wind", "radiation", "all"
	From, To cal.Day
	Filled   string // in words: "mean of the same fortnight in the other years"
}

// Record is a daily weather record with its gaps filled openly.
type Record struct {
	Name  string
	Site  Site
	Start cal.Day
	Days  []Day // one per day from Start, no holes
	Gaps  []Gap
	Notes []string // in words, what the reader took for granted
}

// Normals are twelve monthly means, January first.
type Normals struct {
	Name         string
	Site         Site
	TmaxC, TminC [12]float64
	RainMM       [12]float64 // monthly sum
}

// Future is one possible run of weather from a given day on.
type Future struct {
	Start cal.Day
	Days  []Day
	From  string // in words, where it comes from
}

// At returns the day d of the record, and false outside it.
func (r *Record) At(d cal.Day) (Day, bool) {
	i := int(d - r.Start)
	if i < 0 || i >= len(r.Days) {
		return Day{}, false
	}
	return r.Days[i], true
}

// End returns the last day of the record; the day before Start when empty.
func (r *Record) End() cal.Day { return r.Start + cal.Day(len(r.Days)) - 1 }
