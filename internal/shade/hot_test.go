package shade

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"bedweek/internal/cal"
)

// castHot is what the plain caster says of the light from noon to five that
// does not arrive at a receptor, on the middle day of a month.
func castHot(s *Scene, r Receptor, site Place, month int, meanMJ float64) float64 {
	day := stepsOf(site, cal.Of(refYear, time.Month(month), lightDay), 288)
	diffuse := day.meanDiffuse(meanMJ)
	through := s.through(r, &day, month)
	view := s.SkyView(NewSky(45, 90), r, month)
	got, open, kept, all := 0.0, 0.0, 0.0, 0.0
	for i, beam := range day.beams(1, diffuse) {
		up := day.dirs[i].Z * day.spans[i]
		all += up
		if day.hours[i] < 0 || day.hours[i] > HotToDeg {
			continue
		}
		kept += up
		open += beam
		got += beam * through[i]
	}
	if all == 0 || kept == 0 {
		return 0
	}
	sky := diffuse * kept / all
	return 1 - (got+sky*view)/(open+sky)
}

// The field's hot hours are the caster's, on random scenes on both halves of
// the world. Means of a surface; 0.02 is twice the sky's promise, as the sun
// counts too.
func TestHotShadeAgreesWithCaster(t *testing.T) {
	const tol = 0.02
	for seed := uint64(1); seed <= 5; seed++ {
		r := rand.New(rand.NewPCG(seed, 1700))
		site := Place{LatDeg: 130*r.Float64() - 65, LonDeg: 20}
		var s Scene
		for range 2 + r.IntN(8) {
			s.Bodies = append(s.Bodies, anyBody(r))
		}
		surf := level(0.3, 0.3, 0.3)
		var mean [12]float64
		for m := range mean {
			mean[m] = 14
		}
		got := Lights([]Surface{surf}, s.Bodies, site, mean, nil, 1)[0].HotShade
		nu, nv := surf.Grid()
		for _, m := range []int{0, 6} {
			scene := s.On(cal.Of(refYear, time.Month(m+1), lightDay))
			want := 0.0
			for k := range nu * nv {
				want += castHot(scene, Receptor{At: surf.Cell(k%nu, k/nu), Normal: surf.Normal()}, site, m+1, mean[m]) / float64(nu*nv)
			}
			if math.Abs(got[m]-want) > tol {
				t.Errorf("seed %d, latitude %.0f, month %d: %.4f of the hot hours' light taken, the caster %.4f", seed, site.LatDeg, m+1, got[m], want)
			}
		}
	}
}

// Two walls alike, one to the east and one to the west, take the same of the
// day and a very different part of the hot hours; nothing takes nothing, and in
// the polar night there is nothing to take.
func TestHotShadeIsOfTheAfternoon(t *testing.T) {
	var mean [12]float64
	for m := range mean {
		mean[m] = 18
	}
	of := func(lat float64, bodies ...Body) Light {
		return Lights([]Surface{level(1, 1, 0)}, bodies, Place{LatDeg: lat}, mean, nil, 1)[0]
	}
	for _, lat := range []float64{33, -33} {
		east, west := of(lat, Wall("east", 1, 0, 90, 6, 0, 2)), of(lat, Wall("west", -1, 0, 90, 6, 0, 2))
		for m := range 12 {
			if math.Abs(east.Share[m]-west.Share[m]) > 0.01 || west.HotShade[m] < 2*east.HotShade[m] || west.HotShade[m] < 0.15 {
				t.Errorf("latitude %v, month %d: share %.3f and %.3f, hot hours' shade %.3f by the east wall and %.3f by the west one", lat, m+1, east.Share[m], west.Share[m], east.HotShade[m], west.HotShade[m])
			}
		}
	}
	for m, h := range of(80).HotShade {
		if h > 1e-6 {
			t.Errorf("open ground at 80 N, month %d: %.4f", m+1, h)
		}
	}
}

// Months tell the same light as Lights, and their hot hours lie within the day.
func TestMonthsHoldTheHotHours(t *testing.T) {
	c := NewMonths(Place{LatDeg: 33}, QuickLooks(), [12]float64{10, 12, 15, 18, 20, 22, 23, 21, 18, 14, 11, 9})
	if c.Weeks() != 24 {
		t.Fatalf("%d weeks", c.Weeks())
	}
	for m := range 12 {
		_, day := c.OpenMol(m)
		_, hot := c.OpenMol(12 + m)
		if c.Day(m).Month() != time.Month(m+1) || c.Day(12+m) != c.Day(m) || c.DayHours(12+m) > 5.1 || c.DayHours(12+m) < 4.8 || hot < 0.35*day || hot > 0.55*day {
			t.Errorf("month %d: %s, %.2f h of %.2f h, %.1f of %.1f mol", m+1, c.Day(m), c.DayHours(12+m), c.DayHours(m), hot, day)
		}
	}
}
