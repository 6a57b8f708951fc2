package reckon

import (
	"context"
	"flag"
	"os"
	"testing"

	"bedweek/demo"
	"bedweek/demo/story"
	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

var forecastsTo = flag.String("forecasts", "", "file to write the demo's kept forecasts to; takes some minutes")

// TestDemoForecasts walks the demo through its season, week by week, and keeps
// what the program says of each planting when it first sees it. Without the
// flag it only holds the kept file against the story.
func TestDemoForecasts(t *testing.T) {
	last := cal.Of(2015, 8, 24)
	if *forecastsTo == "" {
		in := demoInputs(t, demoCase{"late summer", false, last})
		es, err := story.Forecasts(demo.ForecastsCSV, in.State.Plantings, last)
		if err != nil {
			t.Fatal(err)
		}
		if len(es) < 30 {
			t.Errorf("%d forecasts kept of a whole season", len(es))
		}
		return
	}
	var all []ledger.ForecastNote
	by := map[string]ledger.Planting{}
	key := func(p ledger.Planting) string {
		return p.Space + "|" + p.Crop + "|" + p.Variety + "|" + story.Since(p).String()
	}
	told := map[string]bool{}
	for on := cal.Of(2015, 4, 6); on < last; on += 7 {
		in := demoInputs(t, demoCase{"walk", false, on})
		for _, p := range in.State.Plantings {
			if told[key(p)] {
				in.State.Forecasts = append(in.State.Forecasts, ledger.ForecastNote{Forecast: ledger.Forecast{Planting: p.ID}})
			}
		}
		g, err := NewGround(in)
		if err != nil {
			t.Fatal(err)
		}
		in.Work = 1_500_000
		r, err := Reckon(context.Background(), in, g)
		if err != nil {
			t.Fatal(err)
		}
		byID := map[string]ledger.Planting{}
		for _, p := range in.State.Plantings {
			byID[p.ID] = p
		}
		for _, f := range r.Forecasts() {
			p, ok := byID[f.Planting]
			if !ok || told[key(p)] || p.Space != f.Space {
				continue
			}
			told[key(p)], by[f.Planting] = true, p
			all = append(all, ledger.ForecastNote{On: on, Forecast: f})
		}
		t.Log(on, len(all))
	}
	if err := os.WriteFile(*forecastsTo, []byte(story.WriteForecasts(all, by)), 0o644); err != nil {
		t.Fatal(err)
	}
}
