// Package demo holds the built-in gardens, the weather they are planned on and
// the events that carry the first one through its season.
//
// The gardens, their people and the events are our own invention. The weather
// of the first is a real record; README.md says whose. The normals of the
// southern garden are made up from it, and say so in their first line.
package demo

import _ "embed"

// GardenYAML is the courtyard garden as it stands on 6 April 2015.
//
//go:embed garden.yaml
var GardenYAML []byte

// SeattleCSV is the daily record of Seattle, 2012 to 2015:
// date,precipitation (mm),temp_max,temp_min (°C),wind (m/s),weather.
//
//go:embed seattle-weather.csv
var SeattleCSV []byte

// EventsCSV is what was done in the courtyard garden from April to August
// 2015: date,kind,space,crop,variety,count,note,kg after lines that begin with
// "#". Kinds are those of the ledger. A setting out takes plants of that crop
// and variety from the lamp shelf or the bench when any stand there; a pulling
// without a count takes all.
//
//go:embed events.csv
var EventsCSV []byte

// SouthYAML is the small garden south of the equator, on 5 October 2015.
//
//go:embed south.yaml
var SouthYAML []byte

// SouthNormalsCSV is the invented climate of the southern garden:
// month,tmax_c,tmin_c,rain_mm.
//
//go:embed south-normals.csv
var SouthNormalsCSV []byte

// ForecastsCSV is what the program said of the courtyard garden's plantings
// when it first saw each, walked through the season week by week; see
// story.Forecasts.
//
//go:embed forecasts.csv
var ForecastsCSV []byte
