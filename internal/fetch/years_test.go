package fetch

import (
	"bytes"
	"fmt"
	"net/http"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// yearsRig serves the archive from start to end as asked.
func yearsRig(t *testing.T, spoil func(string) string) *rig {
	return newRig(t, func(w http.ResponseWriter, q *http.Request) {
		from, err1 := cal.Parse(q.URL.Query().Get("start_date"))
		to, err2 := cal.Parse(q.URL.Query().Get("end_date"))
		if err1 != nil || err2 != nil || q.URL.Query().Get("latitude") != "47.60" {
			t.Errorf("asked for %s", q.URL)
		}
		var days, hi, lo, rain []string
		for d := from; d <= to; d++ {
			days = append(days, `"`+d.String()+`"`)
			hi, lo, rain = append(hi, "14.2"), append(lo, "5.1"), append(rain, "2.5")
		}
		hi[3] = "null"
		list := func(v []string) string { return "[" + strings.Join(v, ",") + "]" }
		s := fmt.Sprintf(`{"latitude":47.6,"longitude":-122.3,"daily_units":{"temperature_2m_max":"°C","temperature_2m_min":"°C","precipitation_sum":"mm"},"daily":{"time":%s,"temperature_2m_max":%s,"temperature_2m_min":%s,"precipitation_sum":%s}}`,
			list(days), list(hi), list(lo), list(rain))
		if spoil != nil {
			s = spoil(s)
		}
		fmt.Fprint(w, s)
	})
}

// TestYearsAreARecord wants twenty years in one request, and a table that the
// reader of weather files takes without a fault.
func TestYearsAreARecord(t *testing.T) {
	r := yearsRig(t, nil)
	y, err := r.Years(t.Context(), seattle, cal.Of(2026, 3, 27))
	if err != nil {
		t.Fatal(err)
	}
	if y.To != cal.Of(2026, 3, 20) || y.From != cal.Of(2006, 3, 21) || y.Days != 7304 || r.hits.Load() != 1 {
		t.Errorf("%s to %s, %d days, %d requests", y.From, y.To, y.Days, r.hits.Load())
	}
	rec, faults := weather.Read("years.csv", bytes.NewReader(y.CSV), seattle)
	if len(faults) > 0 {
		t.Fatalf("faults: %v", faults[0])
	}
	if rec.Start != y.From || rec.End() != y.To {
		t.Errorf("the record runs from %s to %s", rec.Start, rec.End())
	}
	if first, _, _ := strings.Cut(string(y.CSV), "\n"); !strings.Contains(first, "CC BY 4.0") || !strings.Contains(first, "fetched 27 March 2026") {
		t.Errorf("the first line does not name the source and the day: %q", first)
	}
	r.now = r.now.Add(48 * time.Hour)
	r.serve = func(w http.ResponseWriter, _ *http.Request) { http.Error(w, "away", http.StatusInternalServerError) }
	if y, err = r.Years(t.Context(), seattle, cal.Of(2026, 3, 27)); err != nil || !strings.Contains(y.Words, "could not be asked again") {
		t.Errorf("with the service away the same days are not told with their age: %v", err)
	}
}

func TestYearsGoneWrong(t *testing.T) {
	for name, spoil := range map[string]func(string) string{
		"cut off":       func(s string) string { return s[:len(s)/2] },
		"another place": func(s string) string { return strings.Replace(s, "47.6", "10.6", 1) },
		"other unit":    func(s string) string { return strings.Replace(s, "°C", "°F", 1) },
		"nearly empty":  func(s string) string { return strings.ReplaceAll(s, "14.2", "null") },
		"backwards":     func(s string) string { return strings.Replace(s, `"2006-03-22"`, `"2006-03-21"`, 1) },
	} {
		r := yearsRig(t, spoil)
		if y, err := r.Years(t.Context(), seattle, cal.Of(2026, 3, 27)); err == nil {
			t.Errorf("%s: %d days were taken", name, y.Days)
		}
	}
}
