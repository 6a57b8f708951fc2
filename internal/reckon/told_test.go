package reckon

import (
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// Forecasts of 1, 3 and 7 days ahead are told once twenty days can be compared:
// the own thermometer wins over the record, days filled in and days to come do
// not count.
func TestForecastsMetAreTold(t *testing.T) {
	start := cal.Of(2026, 5, 1)
	rec := &weather.Record{Start: start, Days: make([]weather.Day, 60), Gaps: []weather.Gap{{Quantity: "all", From: start + 2, To: start + 3}}}
	for i := range rec.Days {
		rec.Days[i] = weather.Day{TmaxC: 20, TminC: 10}
	}
	var told []*weather.Forecast
	for i := range cal.Day(40) {
		fc := &weather.Forecast{Issued: start + i}
		for lead := range cal.Day(weather.MostFarDays) {
			hi, lo := 20+float64(lead)/2, 9.0
			fc.Days = append(fc.Days, weather.FarDay{Day: fc.Issued + lead, TmaxC: &hi, TminC: &lo})
		}
		told = append(told, fc)
	}
	state := &ledger.State{}
	for i := range cal.Day(40) { // every night two degrees under the station
		state.Readings = append(state.Readings, ledger.ReadingNote{On: start + i, Reading: ledger.Reading{What: ledger.ReadLow, Value: 8}})
	}
	in := Inputs{Garden: &garden.Garden{}, Record: rec, State: state, Told: told, Date: start + 27}
	met := in.ForecastsMet()
	want := []ForecastMet{
		{"1 day", 24, "0.5 °C off, on the whole 0.5 °C too warm", "1.0 °C off, on the whole 1.0 °C too warm"},
		{"3 days", 23, "1.5 °C off, on the whole 1.5 °C too warm", "1.0 °C off, on the whole 1.0 °C too warm"},
		{"7 days", 20, "3.5 °C off, on the whole 3.5 °C too warm", "1.0 °C off, on the whole 1.0 °C too warm"},
	}
	for i, row := range met.Rows {
		if row != want[i] {
			t.Errorf("%+v, want %+v", row, want[i])
		}
	}
	if fc := in.withForecast(told[26]).ownForecast(); fc.Own == nil || fc.Own[1].Low.Days != 26 || !strings.Contains(fc.Words(), "the error that earlier forecasts had here") {
		t.Errorf("the futures' forecast: %+v", fc)
	}
	in.Date = start + 10
	if met = in.ForecastsMet(); met.Rows[0].High != "not known yet: 7 days so far" || !strings.Contains(met.Words, "not known yet: 20 days have to be compared") {
		t.Errorf("%+v", met)
	}
	if in.Told = nil; in.ForecastsMet() != nil || in.withForecast(told[0]).ownForecast().Own != nil {
		t.Error("with nothing kept something is told")
	}
}

func (in *Inputs) withForecast(fc *weather.Forecast) *Inputs {
	out := *in
	out.Forecast = fc
	return &out
}
