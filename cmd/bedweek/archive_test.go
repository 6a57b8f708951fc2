package main

import (
	"context"
	"fmt"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/fetch"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// yearsOn serves an invented archive on this machine; where away says so, it
// answers with a fault.
func yearsOn(t testing.TB, away func() bool) string {
	t.Helper()
	s := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, q *http.Request) {
		if away() {
			http.Error(w, "away", http.StatusInternalServerError)
			return
		}
		from, _ := cal.Parse(q.URL.Query().Get("start_date"))
		to, _ := cal.Parse(q.URL.Query().Get("end_date"))
		var days, hi, lo, rain []string
		for d := from; d <= to; d++ {
			warm := 20 - float64(abs(d.YearDay()-190))/12
			days, hi = append(days, `"`+d.String()+`"`), append(hi, fmt.Sprintf("%.1f", warm))
			lo, rain = append(lo, fmt.Sprintf("%.1f", warm-8)), append(rain, "2.1")
		}
		list := func(v []string) string { return "[" + strings.Join(v, ",") + "]" }
		fmt.Fprintf(w, `{"latitude":47.6,"longitude":-122.3,"daily":{"time":%s,"temperature_2m_max":%s,"temperature_2m_min":%s,"precipitation_sum":%s}}`, list(days), list(hi), list(lo), list(rain))
	}))
	t.Cleanup(s.Close)
	return s.URL
}

// TestArchiveIsKeptBesideTheRecord fetches from a server on this machine: the
// file lies in the data folder, can be planned with, and is in the next backup.
func TestArchiveIsKeptBesideTheRecord(t *testing.T) {
	away := false
	archive := yearsOn(t, func() bool { return away })
	now := func() time.Time { return time.Date(2015, 4, 6, 9, 0, 0, 0, time.UTC) }
	dir := t.TempDir()
	led, err := ledger.Open(dir, ledger.Options{Now: now})
	if err != nil {
		t.Fatal(err)
	}
	defer led.Close()
	g := &garden.Garden{Place: garden.Place{LatDeg: 47.6, LonDeg: -122.3}}
	d := &desk{led: led, now: now, services: fetch.New(fetch.Options{Now: now, Archive: archive, AllowPrivate: true})}
	d.in.Garden, d.in.Date = g, cal.Of(2015, 4, 6)
	file, words, err := d.archive()(context.Background())
	if err != nil || !strings.Contains(words, "Open-Meteo") {
		t.Fatalf("%q, %v", words, err)
	}
	g.Place.Weather = file
	c, err := climateIn(dir)(g)
	if err != nil || c.record == nil || len(c.record.Days) < 7000 || !strings.Contains(c.record.Name, "CC BY 4.0") {
		t.Fatalf("read back: %v, %+v", err, c.record)
	}
	if got := d.weatherFrom(file); got != words {
		t.Errorf("the file says %q, fetched %q", got, words)
	}
	away = true
	d.in.Garden = &garden.Garden{Place: garden.Place{LatDeg: 51, LonDeg: 0}}
	if _, _, err := d.archive()(context.Background()); err == nil || strings.Contains(err.Error(), "latitude=") {
		t.Errorf("a service that is away: %v", err)
	}
}

func abs(n int) int { return max(n, -n) }
