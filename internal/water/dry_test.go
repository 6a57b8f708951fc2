package water

import (
	"math"
	"math/rand/v2"
	"testing"

	"bedweek/internal/cal"
)

// steady is a sky of like days in n futures.
func steady(n, days int, et0MM, rainMM float64) *Sky {
	s := &Sky{Start: cal.Of(2023, 7, 1), Days: days}
	s.calendar(47)
	for range n {
		run := make([]skyDay, days)
		for d := range run {
			run[d] = skyDay{radMM: et0MM, rainMM: rainMM}
		}
		s.days = append(s.days, run)
	}
	return s
}

func fixed(v float64) Range { return Range{v, v, true} }

// pot is a plain container; its leaves cover it, so that the air takes next to
// nothing from the surface.
func pot(volumeL, leafM2 float64) *Space {
	s := &Space{ID: "pot", AreaM2: 0.07, DepthM: 0.3, VolumeL: volumeL, Medium: Medium{Holds: fixed(0.25)}, Way: Can,
		LeafM2: []float64{leafM2}, Kcb: 1.1, P: 0.5, Exposure: fixed(1), RainShare: 1}
	for m := range s.Light {
		s.Light[m] = 1
	}
	return s
}

// sure believes in one rate and one level.
func sure(rate, level float64) Belief { return Belief{cells: []cell{{rate, level, level, 1}}} }

func TestContainerDriesWhenItsSumSaysSo(t *testing.T) {
	for _, tt := range []struct {
		from          string
		volume, leaf  float64
		et0           float64
		usable, drink float64
	}{
		{"closed form: 19 L at a quarter, half of it spent, 6 mm x 1.1 x 0.5 m2 (water.json, container_0)", 19, 0.5, 6, 2.375, 3.3},
		{"closed form: 75 L (water.json, container_1)", 75, 0.5, 6, 9.375, 3.3},
	} {
		s := pot(tt.volume, tt.leaf)
		d := draw{holds: 0.25, exposure: 1, leaf: 1, rate: 1, fullness: 1}
		sky := steady(1, 20, tt.et0, 0)
		th := s.thirst(d)
		air, leaf := th.demand(sky.days[0][0], 6, 0)
		if math.Abs(leaf-tt.drink) > 0.001 {
			t.Errorf("%s: leaves ask %.3f L a day, want %.3f", tt.from, leaf, tt.drink)
		}
		// Whole days only, begun at midnight: the course of the day does not matter then.
		o := s.run(s.newStore(d), d, sky, 0, 0)
		got := math.Floor(o.dry/24) * 1
		want := math.Floor(tt.usable / (tt.drink + air))
		if got != want {
			t.Errorf("%s: dry after %.1f h, in day %g, want day %g", tt.from, o.dry, got, want)
		}
	}
}

// random makes a lawful space of any kind.
func random(r *rand.Rand) *Space {
	s := pot(2+300*r.Float64()*r.Float64(), r.Float64()*1.5)
	s.AreaM2, s.DepthM = 0.03+r.Float64(), 0.1+0.5*r.Float64()
	s.Medium.Holds = fixed(0.1 + 0.25*r.Float64())
	s.Kcb, s.P, s.HeightM = 0.3+0.9*r.Float64(), 0.2+0.4*r.Float64(), 2*r.Float64()
	s.RootM = []float64{0, 0.1, 0.3}[r.IntN(3)]
	if r.IntN(3) == 0 {
		s.TankL, s.RiseM = 20*r.Float64(), fixed(0.05+0.3*r.Float64())
	}
	if r.IntN(3) == 0 {
		s.Wet = 0.4
	}
	return s
}

func randomSky(r *rand.Rand, days int) *Sky {
	s := steady(1, days, 0, 0)
	for d := range s.days[0] {
		s.days[0][d] = skyDay{radMM: 6 * r.Float64(), airMM: 3 * r.Float64(), climate: 0.1 * r.NormFloat64()}
		if r.IntN(3) == 0 {
			s.days[0][d].rainMM = 25 * r.Float64() * r.Float64()
		}
	}
	return s
}

func randomDraw(r *rand.Rand, s *Space) draw {
	return draw{holds: s.Medium.Holds.Low, rise: s.RiseM.Low, exposure: 0.9 + 0.4*r.Float64(), leaf: 1,
		rate: 0.5 + r.Float64(), fullness: r.Float64(), tank: r.Float64()}
}

// What came in is what went out and what is left, to a thousandth of a
// millilitre, over random seasons.
func TestBalanceCloses(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for i := range 300 {
		s, sky := random(r), randomSky(r, 120)
		d := randomDraw(r, s)
		w, th := s.newStore(d), s.thirst(d)
		start := w.total()
		var all flows
		for day := range sky.Days {
			air, leaf := th.demand(sky.days[0][day], 6, day)
			if day%5 == 0 {
				all.given += 2
				all.drained += w.pour(2)
			}
			for h := range 24 {
				all.add(w.step(CaughtL(sky.days[0][day].rainMM, s.AreaM2, 1)/24, air*sky.course[day][h], leaf*sky.course[day][h]))
			}
		}
		off := start + all.rain + all.given - all.drained - all.evaporated - all.drunk - w.total()
		if math.Abs(off) > 1e-6 {
			t.Fatalf("season %d: %.9f L unaccounted for", i, off)
		}
		if all.drunk < 0 || all.evaporated < 0 || w.held() > w.capacity()+1e-9 {
			t.Fatalf("season %d: %+v, holds %.3f of %.3f", i, all, w.held(), w.capacity())
		}
	}
}

// More water, at the start, as rain or from a can, never dries a space sooner.
func TestMoreWaterNeverDrier(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 2))
	for i := range 400 {
		s, sky := random(r), randomSky(r, 25)
		d := randomDraw(r, s)
		base := s.run(s.newStore(d), d, sky, 0, 7)
		more := d
		more.fullness = min(1, d.fullness+0.2*r.Float64())
		wet := s.run(s.newStore(more), more, sky, 0, 7)
		sky.days[0][r.IntN(5)].rainMM += 10 * r.Float64()
		rain := s.run(s.newStore(d), d, sky, 0, 7)
		for _, o := range []outcome{wet, rain} {
			if o.dry < base.dry-1e-6 || o.lost < base.lost-1e-6 {
				t.Fatalf("space %d (%+v): dry after %.4f h with more water, %.4f without", i, s, o.dry, base.dry)
			}
		}
	}
}

// A deeper space of the same area and plants never dries sooner.
func TestBiggerNeverDriesSooner(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	for i := range 400 {
		s, sky := random(r), randomSky(r, 25)
		s.RootM, s.TankL = 0, 0
		s.VolumeL = s.AreaM2 * s.DepthM * 1000
		d := randomDraw(r, s)
		small := s.run(s.newStore(d), d, sky, 0, 7)
		big := *s
		big.DepthM *= 1 + r.Float64()
		big.VolumeL = big.AreaM2 * big.DepthM * 1000
		b := big.run(big.newStore(d), d, sky, 0, 7)
		if b.dry < small.dry-1e-6 {
			t.Fatalf("space %d: dry after %.4f h at %.2f m, %.4f h at %.2f m", i, b.dry, big.DepthM, small.dry, s.DepthM)
		}
	}
}

// What a look says moves the rate the right way, and looks that agree with the
// reckoning leave it near 1.
func TestLooksTeachTheRate(t *testing.T) {
	past := steady(1, 6, 5, 0)
	s := pot(60, 0.4) // holds 15 L, drinks 2.2 L a day: due after 3.4 days
	learn := func(looks ...Seen) Belief { return Learn(s, Unseen(Can), past, looks) }
	full := Seen{Hour: 24, What: Watered}
	asThought := learn(full, Seen{Hour: 24 + 48, What: Damp})
	fast := learn(full, Seen{Hour: 24 + 48, What: DryLook})
	faster := learn(full, Seen{Hour: 24 + 48, What: Wilting})
	slow := learn(full, Seen{Hour: 24 + 118, What: Damp})
	if !(slow.Rate() < asThought.Rate() && asThought.Rate() < fast.Rate() && fast.Rate() < faster.Rate()) {
		t.Errorf("rates: damp late %.2f, damp %.2f, dry %.2f, wilting %.2f: want them rising", slow.Rate(), asThought.Rate(), fast.Rate(), faster.Rate())
	}
	if fast.Rate() < 1.2 || slow.Rate() > 0.8 || math.Abs(asThought.Rate()-1) > 0.15 {
		t.Errorf("rates %.2f %.2f %.2f: want above 1.2, below 0.8, about 1", fast.Rate(), slow.Rate(), asThought.Rate())
	}
	sky := steady(20, 20, 5, 0)
	ask := Ask{FromHour: 7, NextH: 24, Seed: 1}
	if a, b := Dry(s, fast, sky, ask), Dry(s, slow, sky, ask); a.Dry.Likely >= b.Dry.Likely {
		t.Errorf("dry after %.0f h for the fast, %.0f h for the slow", a.Dry.Likely, b.Dry.Likely)
	}
}

// The speed: hourly drying of 25 spaces in 20 futures over ten days in
// 20 ms, and 25 spaces over 20 years daily in 50 ms, on one core.
func BenchmarkHourly25x20x10(b *testing.B) {
	r := rand.New(rand.NewPCG(4, 4))
	sky := steady(20, 10, 4, 0.5)
	var spaces []*Space
	for range 25 {
		spaces = append(spaces, random(r))
	}
	bel := Unseen(Can)
	for b.Loop() {
		for _, s := range spaces {
			Dry(s, bel, sky, Ask{FromHour: 7, NextH: 24, Seed: 1})
		}
	}
}

func BenchmarkDaily25x20years(b *testing.B) {
	r := rand.New(rand.NewPCG(5, 5))
	sky := randomSky(r, 20*365)
	var spaces []*Space
	for range 25 {
		spaces = append(spaces, random(r))
	}
	for b.Loop() {
		for _, s := range spaces {
			d := draw{holds: 0.25, exposure: 1, leaf: 1, rate: 1, fullness: 1, tank: 1}
			s.Season(sky, 0, d, nil)
		}
	}
}
