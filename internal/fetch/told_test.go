package fetch

import (
	"fmt"
	"math"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Thirty invented days: each is fetched from the fixture server three times,
// also by a new run that finds the folder, and kept once. Kept, it is what was
// fetched, to the digit, and its errors are those built in: highs are told a
// degree too warm a day ahead and a degree more each day further, lows 0.25 °C
// too cold.
func TestForecastsAreKeptAndCompared(t *testing.T) {
	first := cal.Of(2026, 3, 27)
	high := func(d cal.Day) float64 { return 12 + 5*math.Sin(float64(d)/4) }
	r := newRig(t, nil)
	r.serve = func(w http.ResponseWriter, _ *http.Request) {
		today := cal.FromTime(r.now)
		var days, hi, lo, rain []string
		for i := range cal.Day(11) {
			days = append(days, fmt.Sprintf("%q", (today+i).String()))
			hi, lo, rain = append(hi, fmt.Sprintf("%.2f", high(today+i)+float64(i))), append(lo, fmt.Sprintf("%.2f", high(today+i)-8.25)), append(rain, "0.5")
		}
		rain[2] = "null"
		list := func(v []string) string { return "[" + strings.Join(v, ",") + "]" }
		fmt.Fprintf(w, `{"latitude":47.6,"longitude":-122.3,"daily":{"time":%s,"temperature_2m_max":%s,"temperature_2m_min":%s,"precipitation_sum":%s}}`, list(days), list(hi), list(lo), list(rain))
	}
	r.o.Wait = time.Minute // a busy machine is no fault of the services
	for day := range cal.Day(30) {
		for _, h := range []int{-6, -2, 6} {
			r.now = (first + day).Time().Add(time.Duration(h) * time.Hour) // from noon
			c := New(r.o)
			fc, err := c.Forecast(t.Context(), seattle, nil)
			if err == nil {
				err = c.Keep(fc, seattle)
			}
			if err != nil {
				t.Fatal(err)
			}
		}
	}
	file := filepath.Join(r.o.Dir, toldName)
	text, err := os.ReadFile(file)
	if err != nil || strings.Count(string(text), "issued") != 1 || len(text) > 30*600 {
		t.Fatalf("%d bytes, %v: %.200s", len(text), err, text)
	}
	kept := r.Kept(seattle)
	if len(kept) != 30 || kept[0].Issued != first || len(kept[0].Days) != weather.MostFarDays || kept[0].Days[2].RainMM != nil || *kept[0].Days[0].RainMM != 0.5 {
		t.Fatalf("%d kept, the first %+v", len(kept), kept[0])
	}
	got := weather.Misses(kept, func(d cal.Day) weather.Came {
		if d >= first+30 {
			return weather.Came{}
		}
		hi, lo := high(d), high(d)-8
		return weather.Came{TmaxC: &hi, TminC: &lo}
	})
	const tolC = 0.006 // the server tells hundredths
	for _, lead := range []int{1, 3, 7} {
		if m := got[lead]; m.High.Days != 30-lead || math.Abs(m.High.Bias-float64(lead)) > tolC || math.Abs(m.Low.Bias+0.25) > tolC {
			t.Errorf("%d days ahead: %+v", lead, m)
		}
	}
	// Another place's are not this one's, and a damaged line costs only itself.
	if n := len(r.Kept(weather.Site{LatDeg: 40})); n != 0 {
		t.Errorf("%d kept for another place", n)
	}
	if err := os.WriteFile(file, []byte(strings.Replace(string(text), "2026-03-27,47.60", "2026-03-97,47.60", 1)+"2026-04-26,47.60,-12"), 0o600); err != nil {
		t.Fatal(err)
	}
	if kept = r.Kept(seattle); len(kept) != 30 || len(kept[0].Days) != weather.MostFarDays-1 {
		t.Errorf("after damage %d are kept, the first with %d days", len(kept), len(kept[0].Days))
	}
	r.now = (first + 30).Time().Add(6 * time.Hour)
	fc, err := r.Forecast(t.Context(), seattle, nil)
	if err == nil {
		err = r.Keep(fc, seattle)
	}
	if kept = r.Kept(seattle); err != nil || len(kept) != 31 || len(kept[30].Days) != weather.MostFarDays {
		t.Errorf("after a line cut off %d are kept, %v", len(kept), err)
	}
}
