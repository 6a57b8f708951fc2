package fetch

import (
	"fmt"
	"math"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"
	_ "time/tzdata" // the machine may have no zones of its own

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// clockDays are days on which clocks change in Seattle (the second Sunday of
// March and the first of November, US Energy Policy Act of 2005), and a plain
// one.
var clockDays = []struct {
	day   cal.Day
	hours int
}{{cal.Of(2026, 3, 8), 23}, {cal.Of(2026, 11, 1), 25}, {cal.Of(2026, 6, 7), 24}}

func seattleClock(t *testing.T) *time.Location {
	t.Helper()
	zone, err := time.LoadLocation("America/Los_Angeles")
	if err != nil {
		t.Fatal(err)
	}
	return zone
}

// clockAt is an hour of a local day.
func clockAt(d cal.Day, hour int, zone *time.Location) time.Time {
	y, m, day := d.Date()
	return time.Date(y, m, day, hour, 0, 0, 0, zone)
}

// clockHours are the hours of three local days round a day, as instants.
func clockHours(d cal.Day, zone *time.Location) (out []time.Time) {
	end := clockAt(d+2, 0, zone)
	for at := clockAt(d-1, 0, zone); at.Before(end); at = at.Add(time.Hour) {
		out = append(out, at)
	}
	return out
}

// orNone is a value, or that there is none.
func orNone(x *float64) any {
	if x == nil {
		return "not said"
	}
	return *x
}

// dayOf picks a day of a forecast asked for through the fixture server.
func (r *rig) dayOf(t *testing.T, d cal.Day, zone *time.Location) weather.FarDay {
	t.Helper()
	r.now = clockAt(d-1, 12, zone)
	fc, err := r.Forecast(t.Context(), seattle, zone)
	if err != nil {
		t.Fatalf("%s: %v", d, err)
	}
	for _, f := range fc.Days {
		if f.Day == d {
			return f
		}
	}
	t.Fatalf("%s is not among the days", d)
	return weather.FarDay{}
}

// The first service tells hours by the local clock: on a day of 23 hours one
// is not there, on one of 25 one comes twice. Wind blows at 2 m/s, but for the
// hours from midnight to four, at 8 m/s: of these a day of 23 hours has three
// and a day of 25 five, and each counts once.
func TestWindOfADayWhenClocksChange(t *testing.T) {
	zone := seattleClock(t)
	for _, c := range clockDays {
		r := newRig(t, func(w http.ResponseWriter, _ *http.Request) {
			var hours, wind []string
			for _, at := range clockHours(c.day, zone) {
				v := 2
				if at.In(zone).Hour() < 4 {
					v = 8
				}
				hours, wind = append(hours, fmt.Sprintf("%q", at.In(zone).Format("2006-01-02T15:04"))), append(wind, fmt.Sprint(v))
			}
			fmt.Fprint(w, meteoBody(c.day-1, 3, func(s string) string {
				return s[:strings.Index(s, `"hourly":`)] + fmt.Sprintf(`"hourly":{"time":[%s],"wind_speed_10m":[%s]}}`, strings.Join(hours, ","), strings.Join(wind, ","))
			}))
		})
		f := r.dayOf(t, c.day, zone)
		windy := 4 + c.hours - 24
		want := (8*float64(windy) + 2*float64(c.hours-windy)) / float64(c.hours) * windTo2
		if f.WindMS == nil || math.Abs(*f.WindMS-want) > 1e-9 {
			t.Errorf("%s, %d hours: wind %v, want %.4f m/s", c.day, c.hours, orNone(f.WindMS), want)
		}
		if f.TmaxC == nil || *f.RainMM != 1.5 {
			t.Errorf("%s: %+v", c.day, f)
		}
	}
}

// The second service tells hours by universal time. A millimetre falls each
// hour, so a day has as many as hours; its first hour is its coldest and its
// last its warmest, and neither goes to the day before or after.
func TestRainOfADayWhenClocksChange(t *testing.T) {
	zone := seattleClock(t)
	for _, c := range clockDays {
		r := newRig(t, func(w http.ResponseWriter, _ *http.Request) { http.Error(w, "away", http.StatusBadGateway) })
		other := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
			var series []string
			hours := clockHours(c.day, zone)
			for i, at := range hours {
				air := 10
				if cal.FromTime(at.In(zone)) == c.day {
					switch {
					case cal.FromTime(hours[i-1].In(zone)) != c.day:
						air = -5
					case cal.FromTime(hours[i+1].In(zone)) != c.day:
						air = 25
					}
				}
				series = append(series, fmt.Sprintf(`{"time":%q,"data":{"instant":{"details":{"air_temperature":%d,"wind_speed":3}},"next_1_hours":{"details":{"precipitation_amount":1}}}}`,
					at.UTC().Format(time.RFC3339), air))
			}
			fmt.Fprintf(w, `{"geometry":{"coordinates":[-122.3,47.6,50]},"properties":{"meta":{"units":{"air_temperature":"celsius","wind_speed":"m/s","precipitation_amount":"mm"}},"timeseries":[%s]}}`, strings.Join(series, ","))
		}))
		r.o.Met = other.URL // a host of its own: the first one is left alone once it fails
		f := r.dayOf(t, c.day, zone)
		other.Close()
		if f.RainMM == nil || math.Abs(*f.RainMM-float64(c.hours)) > 1e-9 || f.TminC == nil || *f.TminC != -5 || *f.TmaxC != 25 {
			t.Errorf("%s, %d hours: rain %v, coldest %v, warmest %v", c.day, c.hours, orNone(f.RainMM), orNone(f.TminC), orNone(f.TmaxC))
		}
	}
}
