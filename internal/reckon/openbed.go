package reckon

import (
	"errors"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// windowFutures is how many years the edges of a window rest on: twenty random
// ones move an edge by ten days (growth.md).
const (
	windowFutures = 60
	windowWeeks   = 104
	windowStep    = 5 // days between the starts that are tried
)

// windowYears are the years windows rest on, and the Monday they begin with.
// The year behind the days means nothing.
func windowYears(rec *weather.Record, norm *weather.Normals, site weather.Site) (weather.Set, cal.Day) {
	start := cal.Of(2018, 1, 1)
	if rec != nil {
		// After the record's end, so that all its years may be used.
		start = cal.Of((rec.Start+cal.Day(len(rec.Days))).Year()+1, 1, 1)
	}
	start = start.Monday()
	return weather.Make(rec, norm, site, start, weather.Ask{Past: 30, Days: 3 * 366, N: windowFutures, Seed: 1}), start
}

// OpenBedWindows works out the windows of crops in a plain open bed of 30 cm
// good medium in full sun. The year behind the days means nothing.
func OpenBedWindows(crops []*crop.Crop, rec *weather.Record, norm *weather.Normals, site weather.Site) ([]stand.Window, string, error) {
	set, start := windowYears(rec, norm, site)
	if len(set.Futures) == 0 {
		return nil, "", errors.New(set.Words)
	}
	env := OpenBed(site, start, set.Futures)
	out := make([][]stand.Window, len(crops))
	each(len(crops), 0, func(i int) { out[i] = stand.Windows(crops[i], env, windowStep) })
	var all []stand.Window
	for _, w := range out {
		all = append(all, w...)
	}
	return all, set.Words, nil
}

// OpenBed is the plain bed that published calendars speak of.
func OpenBed(site weather.Site, start cal.Day, fs []weather.Future) *stand.Env {
	e := &stand.Env{Site: site, Start: start, Weeks: windowWeeks, Futures: fs, DepthM: 0.3, VolumeL: 3000, AreaM2: 10, Net: 1}
	for m := range e.Light {
		e.Light[m], e.SunH[m] = 1, 12
	}
	return e
}
