package water

import (
	"bytes"
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Bands promised on real dates, held against the weather that came (Seattle,
// 2015, kept out of the futures' fit) and against worlds drawn anew: four
// bands in five should cover what came, give or take a tenth.
func TestBandsCoverWhatCame(t *testing.T) {
	site := weather.Site{LatDeg: 47.6, LonDeg: -122.3, ElevM: 50, Coastal: true}
	rec, faults := weather.Read("seattle", bytes.NewReader(demo.SeattleCSV), site)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	const days = 21
	spaces := []*Space{pot(25, 0.4), pot(60, 0.5), bedOf(2.4, 0.3)}
	covered, n := 0, 0
	for k := range 12 {
		from := cal.Of(2015, 4, 10) + cal.Day(14*k)
		futures, _ := weather.Futures(rec, nil, site, from, days, 20, uint64(k))
		sky := NewSky(futures, site, from, days, 1)
		var came []weather.Day
		for d := range days {
			day, ok := rec.At(from + cal.Day(d))
			if !ok {
				t.Fatal("the record ends too soon")
			}
			came = append(came, day)
		}
		real := NewSky([]weather.Future{{Start: from, Days: came}}, site, from, days, 1)
		for i, s := range spaces {
			s.ID = string(rune('a' + i))
			s.Medium.Holds, s.Exposure = Range{0.25, 0.35, true}, Range{0.95, 1.2, true}
			b := Unseen(Can)
			a := Dry(s, b, sky, Ask{FromHour: 7, NextH: 24, Seed: 1})
			for _, d := range s.draws(b, 20, 99) {
				o := s.run(s.newStore(d), d, real, 0, 7)
				n++
				if o.dry >= a.Dry.Early && o.dry <= a.Dry.Late {
					covered++
				}
			}
		}
	}
	share := float64(covered) / float64(n)
	t.Logf("%d of %d runs on the weather that came lie in their bands: %.0f %%", covered, n, 100*share)
	if share < 0.70 || share > 0.90 {
		t.Errorf("bands cover %.0f %% of what came, want 70 to 90", 100*share)
	}
}
