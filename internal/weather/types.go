package weather

import "bedweek/internal/cal"

// Site is where a record was taken, or where a garden lies.
type Site struct {
	LatDeg, LonDeg float64 // north +, east +
	ElevM          float64
}

// Day is one day's weather with nothing missing.
type Day struct {
	TmaxC, TminC float64
	RainMM       float64
	WindMS       float64 // at 2 m above ground
	RadMJ        float64 // global radiation on the level, MJ/m2/day
}

// Read is one day as a file gave it; nil is "not recorded", never 0.
type Read struct {
	Day                                 cal.Day
	TmaxC, TminC, RainMM, WindMS, RadMJ *float64
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
