package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// ForecastsMet is how far earlier forecasts were from what came.
type ForecastsMet struct {
	Kept  int    // forecasts kept
	Words string // in short
	Rows  []ForecastMet
}

// ForecastMet is that for one number of days ahead.
type ForecastMet struct {
	Ahead     string
	Days      int    // compared
	High, Low string // "1.2 °C off, 0.4 °C too warm", or that it is not known yet
}

// toldLeads are the days ahead that are told.
var toldLeads = [3]int{1, 3, 7}

// ownForecast is the forecast with the errors earlier ones had here.
func (in *Inputs) ownForecast() *weather.Forecast {
	if in.Forecast == nil || len(in.Told) == 0 {
		return in.Forecast
	}
	fc := *in.Forecast
	own := weather.Misses(in.Told, in.came)
	fc.Own = &own
	return &fc
}

// came is what is known of a day that has been: the garden's own instruments,
// else the record where nothing was filled in.
func (in *Inputs) came(d cal.Day) (out weather.Came) {
	if d >= in.Date {
		return out
	}
	if r := in.Record; r != nil && d >= r.Start && d <= r.End() {
		day := r.Days[d-r.Start]
		if !filled(r, "tmax", d) {
			out.TmaxC = &day.TmaxC
		}
		if !filled(r, "tmin", d) {
			out.TminC = &day.TminC
		}
	}
	if in.State == nil {
		return out
	}
	for _, x := range in.State.Readings {
		if x.Space != "" || x.On != d {
			continue
		}
		switch v := x.Value; x.What {
		case ledger.ReadHigh:
			out.TmaxC = &v
		case ledger.ReadLow:
			out.TminC = &v
		}
	}
	return out
}

// filled reports whether a day's figure of the record was filled in.
func filled(r *weather.Record, quantity string, d cal.Day) bool {
	for _, g := range r.Gaps {
		if (g.Quantity == quantity || g.Quantity == "all") && d >= g.From && d <= g.To {
			return true
		}
	}
	return false
}

// ForecastsMet holds the kept forecasts against what came; nil when none was
// ever kept.
func (in *Inputs) ForecastsMet() *ForecastsMet {
	if len(in.Told) == 0 {
		return nil
	}
	out := &ForecastsMet{Kept: len(in.Told)}
	got := weather.Misses(in.Told, in.came)
	enough := 0
	for _, lead := range toldLeads {
		m := got[lead]
		row := ForecastMet{Ahead: fmt.Sprintf("%d days", lead), Days: min(m.High.Days, m.Low.Days), High: offWords(m.High), Low: offWords(m.Low)}
		if lead == 1 {
			row.Ahead = "1 day"
		}
		if row.Days >= weather.LeastPairs {
			enough++
		}
		out.Rows = append(out.Rows, row)
	}
	out.Words = fmt.Sprintf("Each day's first forecast is kept and held against your own thermometer, else the record. %d are kept.", out.Kept)
	switch {
	case enough == 0:
		out.Words += fmt.Sprintf(" How far off they are here is not known yet: %d days have to be compared. Until then the error usual elsewhere is taken.", weather.LeastPairs)
	default:
		out.Words += " The futures of the coming days spread as far as these were off."
	}
	return out
}

// offWords says an error, or how much is known so far.
func offWords(o weather.Off) string {
	if o.Days < weather.LeastPairs {
		return fmt.Sprintf("not known yet: %d days so far", o.Days)
	}
	w := fmt.Sprintf("%.1f °C off", o.Mean)
	switch b := math.Round(10*o.Bias) / 10; {
	case b > 0:
		w += fmt.Sprintf(", on the whole %.1f °C too warm", b)
	case b < 0:
		w += fmt.Sprintf(", on the whole %.1f °C too cold", -b)
	}
	return w
}
