package weather

import (
	"math"
	"os"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
)

func TestDoubts(t *testing.T) {
	f, err := os.Open("../../demo/seattle-weather.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	here := Site{LatDeg: 47.6, LonDeg: -122.3, ElevM: 50}
	rec, faults := Read("seattle", f, here)
	if rec == nil {
		t.Fatal(faults)
	}
	moved := *rec
	moved.Site = Site{LatDeg: 45.5, LonDeg: -122.7, ElevM: 20} // 2.1° of latitude are 233 km, 0.4° of longitude here 31
	high := *rec
	high.Site.ElevM = 1250
	mirror := here
	mirror.LatDeg = -47.6
	short := *rec
	short.Days = rec.Days[:100]
	cold := &Normals{}
	warm := &Normals{}
	for m := range 12 {
		wave := 8 * math.Cos(2*math.Pi*float64(m)/12) // warmest in January
		cold.TmaxC[m], cold.TminC[m] = 18+wave, 8+wave
		warm.TmaxC[m], warm.TminC[m] = 30+wave/8, 22+wave/8
	}
	for _, c := range []struct {
		name  string
		rec   *Record
		norm  *Normals
		site  Site
		today cal.Day
		want  string // of the one question; "" = none
	}{
		{"its own place", rec, nil, here, cal.Of(2016, time.January, 1), ""},
		{"a day chosen in the record", rec, nil, here, 0, ""},
		{"a clock a year behind", rec, nil, here, cal.Of(2015, time.January, 1), "31 December 2015, and this machine says it is 1 January 2015"},
		{"a fortnight old", rec, nil, here, cal.Of(2016, time.January, 14), ""},
		{"forty-five days old", rec, nil, here, cal.Of(2016, time.February, 14), ""},
		{"a day older", rec, nil, here, cal.Of(2016, time.February, 15), "is 31 December 2015. That is 46 days before 15 February 2016"},
		{"months old", rec, nil, here, cal.Of(2016, time.June, 3), "5 months before 3 June 2016"},
		{"a clock years ahead, or a record never renewed", rec, nil, here, cal.Of(2026, time.November, 30), "10 years before 30 November 2026, the day this machine says it is. Is its date right?"},
		{"the sign of the latitude forgotten", &short, nil, mirror, 0, "km from the garden"},
		{"another town", &moved, nil, here, 0, "236 km"},
		{"on a mountain", &high, nil, here, 0, "1200 m above"},
		{"normals of the south, garden in the north", nil, cold, here, 0, "warmest from October to March"},
		{"normals of the south, garden in the south", nil, cold, mirror, 0, ""},
		{"the tropics have no summer to speak of", nil, warm, Site{LatDeg: 14, LonDeg: 100}, 0, ""},
		{"nor islands beyond them", nil, warm, Site{LatDeg: 28, LonDeg: -16}, 0, ""},
	} {
		got := Doubts(c.rec, c.norm, c.site, c.today)
		if c.want == "" && len(got) > 0 || c.want != "" && (len(got) != 1 || !strings.Contains(got[0], c.want)) {
			t.Errorf("%s: asks %q, want %q", c.name, got, c.want)
		}
	}
	if got := Doubts(rec, nil, mirror, 0); len(got) != 2 || !strings.Contains(got[0], "warmest from April to September, but the garden lies south") {
		t.Errorf("the record of the north for a garden in the south: %q", got)
	}
}
