package fetch

import (
	"context"
	"fmt"
	"net"
	"net/http"
	"net/http/httptest"
	"net/netip"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// No test here leaves this machine: each service is a server on loopback with
// answers made by hand after the services' own descriptions.

var (
	seattle = weather.Site{LatDeg: 47.6, LonDeg: -122.3, ElevM: 50}
	spring  = time.Date(2026, 3, 27, 9, 30, 0, 0, time.UTC)
)

// meteoBody is a forecast of n days from a day; spoil may change the text.
func meteoBody(from cal.Day, n int, spoil func(string) string) string {
	var days, hi, lo, rain, sun, p, hours, wind []string
	for i := range n {
		d := from + cal.Day(i)
		days = append(days, `"`+d.String()+`"`)
		hi, lo = append(hi, fmt.Sprint(12+i)), append(lo, fmt.Sprint(3+i))
		rain, sun, p = append(rain, "1.5"), append(sun, "11.2"), append(p, "40")
		for h := range 24 {
			if d == cal.Of(2026, 3, 29) && h == 2 {
				continue // clocks go forward: the hour is not there
			}
			hours, wind = append(hours, fmt.Sprintf(`"%sT%02d:00"`, d, h)), append(wind, "4")
		}
	}
	list := func(v []string) string { return "[" + strings.Join(v, ",") + "]" }
	s := fmt.Sprintf(`{"latitude":47.6,"longitude":-122.3,"utc_offset_seconds":0,"daily_units":{"temperature_2m_max":"°C","temperature_2m_min":"°C","precipitation_sum":"mm"},
"daily":{"time":%s,"temperature_2m_max":%s,"temperature_2m_min":%s,"precipitation_sum":%s,"shortwave_radiation_sum":%s,"precipitation_probability_max":%s},
"hourly_units":{"wind_speed_10m":"m/s"},"hourly":{"time":%s,"wind_speed_10m":%s}}`,
		list(days), list(hi), list(lo), list(rain), list(sun), list(p), list(hours), list(wind))
	if spoil != nil {
		s = spoil(s)
	}
	return s
}

type rig struct {
	*Client
	now   time.Time
	hits  atomic.Int32
	serve http.HandlerFunc
}

// newRig serves the first service; the second is always away.
func newRig(t *testing.T, serve http.HandlerFunc) *rig {
	t.Helper()
	r := &rig{now: spring, serve: serve}
	s := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, q *http.Request) {
		r.hits.Add(1)
		if strings.HasPrefix(q.URL.Path, "/weatherapi") {
			http.Error(w, "away", http.StatusInternalServerError)
			return
		}
		if !strings.Contains(q.UserAgent(), "bedweek") {
			http.Error(w, "who are you", http.StatusForbidden)
			return
		}
		r.serve(w, q)
	}))
	t.Cleanup(s.Close)
	r.Client = New(Options{Dir: t.TempDir(), Now: func() time.Time { return r.now }, Meteo: s.URL, Archive: s.URL, Met: s.URL, AllowPrivate: true, Wait: 300 * time.Millisecond})
	return r
}

func good(w http.ResponseWriter, _ *http.Request) {
	fmt.Fprint(w, meteoBody(cal.Of(2026, 3, 27), 11, nil))
}

func TestForecastIsRead(t *testing.T) {
	r := newRig(t, good)
	fc, err := r.Forecast(t.Context(), seattle, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(fc.Days) != 11 || fc.Issued != cal.Of(2026, 3, 27) || !strings.Contains(fc.Words(), "CC BY 4.0") {
		t.Fatalf("%d days, issued %s: %s", len(fc.Days), fc.Issued, fc.Words())
	}
	const want = 4 * 0.748      // [FAO56] eq. 47 from 10 m
	for _, d := range fc.Days { // the day of 23 hours too
		if d.TmaxC == nil || *d.RainMM != 1.5 || *d.RainChance != 0.4 || *d.RadMJ != 11.2 || d.WindMS == nil || *d.WindMS < want-0.01 || *d.WindMS > want+0.01 {
			t.Errorf("%s: %+v", d.Day, d)
		}
	}
}

// What services do wrong: each is said, and nothing false comes through.
func TestServicesGoneWrong(t *testing.T) {
	from := cal.Of(2026, 3, 27)
	text := func(spoil func(string) string) http.HandlerFunc {
		return func(w http.ResponseWriter, _ *http.Request) { fmt.Fprint(w, meteoBody(from, 11, spoil)) }
	}
	swap := func(a, b string) http.HandlerFunc {
		return text(func(s string) string { return strings.Replace(s, a, b, 1) })
	}
	status := func(code int, head ...string) http.HandlerFunc {
		return func(w http.ResponseWriter, _ *http.Request) {
			if len(head) == 2 {
				w.Header().Set(head[0], head[1])
			}
			w.WriteHeader(code)
			fmt.Fprint(w, `{"error":true,"reason":"because"}`)
		}
	}
	for _, tt := range []struct {
		name  string
		serve http.HandlerFunc
		want  string
	}{
		{"truncated", text(func(s string) string { return s[:len(s)/2] }), "cut off"},
		{"no JSON", text(func(string) string { return "<html>" }), "cut off, or no JSON"},
		{"another place", swap(`"latitude":47.6`, `"latitude":-47.6`), "not for the garden"},
		{"Fahrenheit", swap(`"temperature_2m_max":"°C"`, `"temperature_2m_max":"°F"`), "not in °C"},
		{"kilometres an hour", swap(`"wind_speed_10m":"m/s"`, `"wind_speed_10m":"km/h"`), "not in m/s"},
		{"a clock wrong by a year", text(func(s string) string { return strings.ReplaceAll(s, "2026-", "2025-") }), "is a clock wrong"},
		{"columns of unlike length", swap(`"precipitation_sum":[1.5,`, `"precipitation_sum":[`), "does not fit"},
		{"a day that is none", swap(`"2026-03-28"`, `"2026-13-28"`), "is no day"},
		{"no days", text(func(string) string { return `{"latitude":47.6,"longitude":-122.3,"daily":{}}` }), "holds no days"},
		{"all null", text(func(s string) string {
			i, j := strings.Index(s, `"temperature_2m_max":[`), strings.LastIndex(s, `,"precipitation_sum"`)
			return s[:i] + `"temperature_2m_max":[null,null,null,null,null,null,null,null,null,null,null],"temperature_2m_min":[null,null,null,null,null,null,null,null,null,null,null]` + s[j:]
		}), "not the coming ones"},
		{"403", status(403), "refused"}, {"429", status(429, "Retry-After", "120"), "asked us to wait"},
		{"500", status(500), "answered 500: because"}, {"400", status(400), "because"}, {"304 unasked", status(304), "304"},
		{"huge", func(w http.ResponseWriter, _ *http.Request) {
			for range 40 {
				fmt.Fprint(w, strings.Repeat(" ", 64<<10))
			}
		}, "larger than"},
		{"slow", func(w http.ResponseWriter, q *http.Request) {
			select {
			case <-q.Context().Done():
			case <-time.After(3 * time.Second):
			}
		}, "deadline"},
		{"a ring", func(w http.ResponseWriter, q *http.Request) {
			http.Redirect(w, q, q.URL.String()+"1", http.StatusFound)
		}, "too often"},
	} {
		r := newRig(t, tt.serve)
		fc, err := r.Forecast(t.Context(), seattle, nil)
		if err == nil || fc != nil || !strings.Contains(strings.ToLower(err.Error()), strings.ToLower(tt.want)) {
			t.Errorf("%s: %v, want it to say %q", tt.name, err, tt.want)
			continue
		}
		before := r.hits.Load()
		r.now = r.now.Add(10 * time.Second) // asked again at once, the service is left alone
		if _, err := r.Forecast(t.Context(), seattle, nil); err == nil || r.hits.Load() != before {
			t.Errorf("%s: asked again %d times within seconds (%v)", tt.name, r.hits.Load()-before, err)
		}
	}
}

// Single nulls are "not said"; the rest of the day stands.
func TestNullsAreNotZero(t *testing.T) {
	r := newRig(t, func(w http.ResponseWriter, _ *http.Request) {
		fmt.Fprint(w, meteoBody(cal.Of(2026, 3, 27), 11, func(s string) string {
			return strings.Replace(strings.Replace(s, `"precipitation_sum":[1.5`, `"precipitation_sum":[null`, 1), `"shortwave_radiation_sum":[11.2`, `"shortwave_radiation_sum":[-999`, 1)
		}))
	})
	fc, err := r.Forecast(t.Context(), seattle, nil)
	if err != nil {
		t.Fatal(err)
	}
	if d := fc.Days[0]; d.RainMM != nil || d.RadMJ != nil || d.TmaxC == nil || *d.TmaxC != 12 {
		t.Errorf("the first day: %+v", d)
	}
}

// An answer is not asked again before it expires, then by its marks; when the
// service fails the last good one is used and its age said, for three days.
func TestAnswersAreKept(t *testing.T) {
	down, asked := false, 0
	r := newRig(t, func(w http.ResponseWriter, q *http.Request) {
		asked++
		switch {
		case down:
			w.WriteHeader(500)
		case q.Header.Get("If-None-Match") == `"one"` && q.Header.Get("If-Modified-Since") != "":
			w.Header().Set("Expires", spring.Add(5*time.Hour).Format(http.TimeFormat))
			w.WriteHeader(http.StatusNotModified)
		default:
			w.Header().Set("ETag", `"one"`)
			w.Header().Set("Last-Modified", spring.Format(http.TimeFormat))
			w.Header().Set("Expires", spring.Add(2*time.Hour).Format(http.TimeFormat))
			good(w, q)
		}
	})
	at := func(h float64) (*weather.Forecast, error) {
		r.now = spring.Add(time.Duration(h * float64(time.Hour)))
		return r.Forecast(t.Context(), seattle, nil)
	}
	for _, tt := range []struct {
		h     float64
		asked int
	}{{0, 1}, {1.9, 1}, {2.1, 2}, {4.9, 2}} {
		if _, err := at(tt.h); err != nil || asked != tt.asked {
			t.Fatalf("after %.1f h: asked %d times (%v), want %d", tt.h, asked, err, tt.asked)
		}
	}
	other := New(r.o) // another run finds it in the folder
	if _, err := other.Forecast(t.Context(), seattle, nil); err != nil || asked != 2 {
		t.Errorf("a new run asked %d times (%v), want none more", asked, err)
	}
	down = true
	fc, err := at(20)
	if err != nil || !strings.Contains(fc.Words(), "18 hours old") {
		t.Fatalf("down: %v, %v; want the old one, 18 hours old", fc, err)
	}
	if _, err := at(90); err == nil {
		t.Error("a forecast of four days ago is still used")
	}
}

func metBody(hours int, spoil func(string) string) string {
	var b strings.Builder
	b.WriteString(`{"geometry":{"coordinates":[-122.3,47.6,50]},"properties":{"meta":{"units":{"air_temperature":"celsius","wind_speed":"m/s","precipitation_amount":"mm"}},"timeseries":[`)
	at := time.Date(2026, 3, 27, 7, 0, 0, 0, time.UTC) // midnight in the garden
	for i := 0; i < hours; {
		if i > 0 {
			b.WriteString(",")
		}
		near := i < 48
		fmt.Fprintf(&b, `{"time":"%s","data":{"instant":{"details":{"air_temperature":%d,"wind_speed":4}},`, at.Add(time.Duration(i)*time.Hour).Format(time.RFC3339), 5+(i%24)/2)
		if near {
			b.WriteString(`"next_1_hours":{"details":{"precipitation_amount":0.5}},`)
		}
		fmt.Fprintf(&b, `"next_6_hours":{"details":{"precipitation_amount":3,"air_temperature_max":18,"air_temperature_min":4}}}}`)
		if near {
			i++
		} else {
			i += 6
		}
	}
	b.WriteString(`]}}`)
	s := b.String()
	if spoil != nil {
		s = spoil(s)
	}
	return s
}

// Half a millimetre an hour is 12 mm a day, whether it comes by the hour or by
// six: none is counted twice.
func TestSecondService(t *testing.T) {
	zone := time.FixedZone("garden", -7*3600)
	days, err := readMet([]byte(metBody(48+6*28, nil)), seattle, zone)
	if err != nil {
		t.Fatal(err)
	}
	whole := 0
	for _, d := range days {
		if d.RainMM != nil {
			whole++
			if *d.RainMM < 11.99 || *d.RainMM > 12.01 {
				t.Errorf("%s: %.2f mm, want 12", d.Day, *d.RainMM)
			}
		}
	}
	if whole < 8 || *days[0].TmaxC != 16 || *days[4].TmaxC != 18 {
		t.Errorf("%d whole days; %+v", whole, days[0])
	}
	for name, spoil := range map[string]func(string) string{
		"elsewhere":    func(s string) string { return strings.Replace(s, "[-122.3,47.6", "[12.3,47.6", 1) },
		"fahrenheit":   func(s string) string { return strings.Replace(s, "celsius", "fahrenheit", 1) },
		"times fall":   func(s string) string { return strings.Replace(s, "2026-03-27T08", "2026-03-26T08", 1) },
		"nothing":      func(string) string { return `{"geometry":{"coordinates":[-122.3,47.6]}}` },
		"another kind": func(string) string { return `[]` },
	} {
		if _, err := readMet([]byte(metBody(60, spoil)), seattle, zone); err == nil {
			t.Errorf("%s was taken", name)
		}
	}
}

func TestArchiveCarriesARecordOn(t *testing.T) {
	r := newRig(t, func(w http.ResponseWriter, q *http.Request) {
		if q.URL.Query().Get("start_date") != "2026-03-10" {
			t.Errorf("asked for %s", q.URL)
		}
		fmt.Fprint(w, meteoBody(cal.Of(2026, 3, 10), 17, nil))
	})
	days, source, err := r.Archive(t.Context(), seattle, cal.Of(2026, 3, 10), cal.Of(2026, 3, 26))
	if err != nil {
		t.Fatal(err)
	}
	rec := &weather.Record{Name: "mine", Site: seattle, Start: cal.Of(2026, 3, 1), Days: make([]weather.Day, 9)}
	on, n := rec.CarriedOn(days, source)
	if n != 17 || on.End() != cal.Of(2026, 3, 26) || len(rec.Days) != 9 {
		t.Errorf("carried on by %d days to %s", n, on.End())
	}
	if _, n := rec.CarriedOn(days[1:], source); n != 0 {
		t.Error("a hole was jumped")
	}
}

// Thirty ways to point inwards; all refused at the dial. OWASP, server-side
// request forgery prevention.
func TestNothingInward(t *testing.T) {
	for _, a := range []string{"127.0.0.1", "127.8.8.8", "0.0.0.0", "0.1.2.3", "10.0.0.1", "172.16.0.1", "172.31.255.255", "192.168.1.1", "169.254.169.254", "100.64.0.1",
		"192.0.0.8", "198.18.0.1", "224.0.0.1", "240.0.0.1", "255.255.255.255", "::", "::1", "fe80::1", "fc00::1", "fd12::1", "ff02::1", "::ffff:127.0.0.1",
		"::ffff:192.168.0.1", "::ffff:100.64.0.1", "64:ff9b::7f00:1", "64:ff9b::c0a8:101", "2002:7f00:1::", "2002:c0a8:101::", "::127.0.0.1", "fec0::1", "64:ff9b:1::1"} {
		if !inward(netip.MustParseAddr(a)) {
			t.Errorf("%s passes", a)
		}
	}
	for _, a := range []string{"8.8.8.8", "1.1.1.1", "2606:4700::1111", "::ffff:8.8.8.8"} {
		if inward(netip.MustParseAddr(a)) {
			t.Errorf("%s is refused", a)
		}
	}
	hit := atomic.Bool{}
	canary := httptest.NewServer(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { hit.Store(true) }))
	defer canary.Close()
	port := canary.Listener.Addr().(*net.TCPAddr).Port
	for _, base := range []string{canary.URL, fmt.Sprintf("http://localhost:%d", port), fmt.Sprintf("http://2130706433:%d", port), fmt.Sprintf("http://[::ffff:127.0.0.1]:%d", port)} {
		c := New(Options{Meteo: base, Met: base, Archive: base, Now: func() time.Time { return spring }, Wait: time.Second})
		if _, err := c.Forecast(context.Background(), seattle, nil); err == nil {
			t.Errorf("%s was asked", base)
		}
	}
	if hit.Load() {
		t.Error("the canary was reached")
	}
}
