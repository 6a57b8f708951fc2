package water

import (
	"math"
	"testing"
)

func near(t *testing.T, from string, got, want, within float64) {
	t.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > within {
		t.Errorf("%s: got %.5g, want %.5g within %g", from, got, want, within)
	}
}

func TestBookFiguresAsPrinted(t *testing.T) {
	b, err := LoadBook()
	if err != nil {
		t.Fatal(err)
	}
	tomato, ok := b.Crop("tomato")
	if !ok || tomato.KcMid != 1.15 || tomato.KcbMid != 1.10 || tomato.KcStaked != 1.20 || tomato.P != 0.40 || tomato.RootM != (Range{0.7, 1.5, true}) {
		t.Errorf("tomato = %+v, want [FAO56] tables 12, 17 and 22: 1.15, 1.10, 1.20 staked, p 0.40, roots 0.7-1.5 m", tomato)
	}
	loam, ok := b.Medium("loam")
	if !ok || loam.Full != (Range{0.20, 0.30, true}) || loam.Holds != (Range{0.13, 0.18, true}) {
		t.Errorf("loam = %+v, want [FAO56] table 19: 0.20-0.30 full, 0.13-0.18 held", loam)
	}
	bean, ok := b.Salt("snap-bean-bush")
	if !ok || bean != (Salt{1.0, 19}) {
		t.Errorf("bean salt = %+v, want 1.0 dS/m and 19 %% (Maas 1990)", bean)
	}
	if _, ok := b.Crop("no-such-crop"); ok {
		t.Error("a crop not in the book is said to be in it")
	}
	for name, m := range b.media {
		if m.Holds.Known && m.Full.Known && m.Holds.High > m.Full.High {
			t.Errorf("%s holds more for plants (%g) than it holds (%g)", name, m.Holds.High, m.Full.High)
		}
		if m.Source == "" || m.Basis == "" {
			t.Errorf("%s has no source or basis", name)
		}
	}
	for name, c := range b.crops {
		if c.KcbMid <= 0 || c.KcbMid > 1.2 || c.P <= 0 || c.P > 0.8 || c.Source == "" || c.Basis == "" {
			t.Errorf("%s: %+v", name, c)
		}
	}
}

func TestEdges(t *testing.T) {
	near(t, "[FAO56] eq. 84, at the wilting point", Ks(100, 40, 100), 0, 0)
	near(t, "[FAO56] eq. 84, beyond it", Ks(100, 40, 130), 0, 0)
	near(t, "[FAO56] eq. 84, a soil that holds nothing", Ks(0, 0, 5), 0, 0)
	near(t, "[FAO56] eq. 84, halfway down", Ks(100, 40, 70), 0.5, 1e-12)
	near(t, "[FAO56] table 22 footnote, 8 mm a day", AdjustP(0.4, 8), 0.28, 1e-12)
	near(t, "[FAO56] table 22 footnote, never under 0.1", AdjustP(0.2, 15), 0.1, 0)
	near(t, "[FAO56] eq. 62 is for coefficients of 0.45 and more", AdjustKc(0.4, 4, 20, 2), 0.4, 0)
	near(t, "closed form: a box no deeper than water rises is moist throughout", WickShare(0.25, 0.30), 1, 0)
	near(t, "closed form: 10 cm of a 40 cm box stay dry over a rise of 30 cm", TopWaterUntilM(0.40, 0.30), 0.10, 1e-12)
	near(t, "1 mm on 1 m2 is 1 litre: 15 cm of gravel with 0.4 void over 0.32 m2", ReservoirL(0.32, 0.15, 0.4), 19.2, 1e-9)
	near(t, "Maas and Hoffman: bean (1.0, 19 %) at 3 dS/m", SaltYield(3, 1, 19), 0.62, 1e-12)
	if _, ok := LeachingRequirement(3, 0.5); ok {
		t.Error("leaching requirement of 1 and more said to be possible")
	}
	if _, _, ok := LeachGiveL(5, 1); ok {
		t.Error("water to leach all of itself said to be possible")
	}
	if _, ok := Minutes(5, 0); ok {
		t.Error("minutes for a line that gives nothing")
	}
	if due, give := Flush(4.2, 4); !due || math.Abs(give-5) > 1e-12 {
		t.Errorf("flush at 4.2 dS/m: %v, %.2f L, want yes and 5 L (Michigan State: above 3.5, a fifth to run through)", due, give)
	}
}

func TestTiersGetTheirNeed(t *testing.T) {
	give, gets, ok := TierGiveL([]float64{1, 0.5, 2}, []float64{0.5, 0.2, 0.25})
	if !ok {
		t.Fatal("not possible")
	}
	near(t, "closed form: the neediest tier decides, 2 L over a share of 0.25", give, 8, 1e-12)
	for i, want := range []float64{4, 1.6, 2} {
		near(t, "closed form: share of 8 L", gets[i], want, 1e-12)
	}
	if _, _, ok := TierGiveL([]float64{0, 1}, []float64{1, 0}); ok {
		t.Error("a tier that gets nothing said to be watered")
	}
}

// The daily steps of the paper and the exact run agree when steps are small.
func TestLeftFollowsKs(t *testing.T) {
	const cap, p = 20.0, 0.4
	w, steps := 18.0, 4800
	for range steps {
		w -= Ks(cap, p*cap, cap-w) * 15 / float64(steps)
	}
	near(t, "[FAO56] eq. 84 in 4800 small steps", Left(18, cap, p, 15), w, 0.01)
}

func TestReservoirKeepsItMoistUntilEmpty(t *testing.T) {
	s := pot(45, 0.5)
	s.TankL, s.RiseM = 15, fixed(0.5)
	sky := steady(1, 21, 6, 0)
	d := draw{holds: 0.22, rise: 0.5, exposure: 1, leaf: 1, rate: 1, fullness: 1, tank: 1}
	o := s.run(s.newStore(d), d, sky, 0, 0)
	plain := *s
	plain.TankL = 0
	without := plain.run(plain.newStore(d), d, sky, 0, 0)
	if !(without.dry < o.tank && o.tank < o.dry) {
		t.Errorf("without a reservoir dry after %.0f h; reservoir empty after %.0f h, dry after %.0f h: want them rising", without.dry, o.tank, o.dry)
	}
	// 19.95 L at some 3.3 L a day (water.json, container_reservoir): 6 days.
	near(t, "closed form: usable over demand, 6.05 days", o.dry/24, 6.05, 0.6)
	shallow := *s
	shallow.DepthM, shallow.RootM, shallow.RiseM = 0.4, 0.1, fixed(0.2)
	d.rise = 0.2
	if o := shallow.run(shallow.newStore(d), d, sky, 0, 0); o.dry > 72 || o.tank < o.dry {
		t.Errorf("seedlings 20 cm above the wick's reach: dry after %.0f h, tank %.0f h; want them dry over a full tank", o.dry, o.tank)
	}
}

func TestConvertRefuses(t *testing.T) {
	for _, bad := range [][2]string{{"", "L"}, {"1 inch", "L"}, {"1 gal on 2 ft2", "L"}, {"1 inch on 2 gal", "L"},
		{"x gal", "L"}, {"-1 gal", "L"}, {"1 gal/fortnight", "L/h"}, {"1 gal/h", "L"}, {"1 gal", "L/h"}, {"1 gal", "ft2"}, {"NaN gal", "L"}} {
		if v, err := Convert(bad[0], bad[1]); err == nil {
			t.Errorf("Convert(%q, %q) = %g, want words", bad[0], bad[1], v)
		}
	}
}

func TestConvertFlows(t *testing.T) {
	for _, tt := range []struct {
		from, amount, unit string
		want               float64
	}{
		{"definition", "1 gal/min", "L/h", 227.1247}, {"definition", "6 mm/day on 0.5 m2", "L/day", 3},
		{"definition", "1 ha", "acre", 2.471054}, {"definition", "0.25 inch/day", "mm/day", 6.35},
	} {
		got, err := Convert(tt.amount, tt.unit)
		if err != nil {
			t.Errorf("%s: %v", tt.amount, err)
		}
		near(t, tt.from+" "+tt.amount, got, tt.want, 1e-4)
	}
}

func FuzzConvert(f *testing.F) {
	f.Add("1 inch on 30 ft2", "gal")
	f.Add("2 gal/h", "L/h")
	f.Fuzz(func(t *testing.T, amount, unit string) {
		if v, err := Convert(amount, unit); err == nil && (math.IsNaN(v) || math.IsInf(v, 0) || v < 0) {
			t.Errorf("Convert(%q, %q) = %g", amount, unit, v)
		}
	})
}

// Any run of rains, cans and demands keeps the stores within their walls and
// the balance closed.
func FuzzStore(f *testing.F) {
	f.Add([]byte{10, 200, 3, 40, 90, 1, 255, 0}, 8.0, 0.4, 3.0)
	f.Add([]byte{0}, 0.0, 0.9, 0.0)
	f.Fuzz(func(t *testing.T, moves []byte, capacity, p, tank float64) {
		if !(capacity >= 0 && capacity < 1e5 && p >= 0.1 && p <= 0.9 && tank >= 0 && tank < 1e4) {
			return
		}
		s := store{surfaceCap: capacity / 4, deepCap: 3 * capacity / 4, tankCap: tank, tank: tank / 2, deepWick: capacity / 2, p: p, readyShare: 0.47}
		s.fill(0.6)
		start := s.total()
		var all flows
		for i, m := range moves {
			x := float64(m) * capacity / 200
			switch i % 3 {
			case 0:
				all.add(s.step(x, 0.3*x, x))
			case 1:
				all.given += x
				all.drained += s.pour(x)
			default:
				all.add(s.step(0, x, 0.1*x))
			}
			if !(s.surface >= 0 && s.deep >= 0 && s.tank >= -1e-9 && s.surface <= s.surfaceCap*(1+1e-9) && s.deep <= s.deepCap*(1+1e-9)) {
				t.Fatalf("after move %d: %+v", i, s)
			}
		}
		off := start + all.rain + all.given - all.drained - all.evaporated - all.drunk - s.total()
		if math.Abs(off) > 1e-9*(1+capacity)*float64(1+len(moves)) {
			t.Fatalf("%g L unaccounted for", off)
		}
	})
}

// What is given fills the space with a tenth for what is lost on the way, when
// it is due; its line's minutes follow. And nothing is given when it can wait.
func TestGiveFillsWhatLacks(t *testing.T) {
	s := pot(40, 0.5)
	s.RateLH = 6
	sky := steady(20, 21, 6, 0)
	due := Dry(s, sure(1, 0.55), sky, Ask{FromHour: 7, NextH: 24, Seed: 1, AwayDays: 5})
	near(t, "closed form: 45 % of 10 L lack", due.LackL.Likely, 4.5, 1e-9)
	near(t, "closed form: over a share of 0.9 that stays", due.GiveL, 5, 1e-9)
	near(t, "closed form: 5 L at 6 L an hour", due.Minutes, 50, 1e-9)
	waits := Dry(s, sure(1, 1), sky, Ask{FromHour: 7, NextH: 12, Seed: 1})
	if waits.GiveL != 0 || waits.ByNext != 0 || waits.DaysOut != nil {
		t.Errorf("full and not due: give %.2f L, %d dry by the next visit, away %v", waits.GiveL, waits.ByNext, waits.DaysOut)
	}
	full := Dry(s, sure(1, 1), sky, Ask{FromHour: 7, NextH: 24, Seed: 1, AwayDays: 5})
	near(t, "an absence begins soaked, whatever the level before", due.Survives.Likely, full.Survives.Likely, 1e-9)
	near(t, "closed form: the mean of 24 hours", full.DrinksL.Likely, 3.3, 0.1)
}

func TestRationGoesByNeed(t *testing.T) {
	needs := []Need{{"a", 10, 0, 30}, {"b", 4, 2, 50}, {"c", 6, 1, 10}, {"d", 5, 1, 5}}
	got := Ration(12, needs)
	want := []Share{{"b", 4, 4}, {"d", 5, 5}, {"c", 6, 3}, {"a", 10, 0}}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("share %d: %+v, want %+v (flowering and filling first, then who dries first)", i, got[i], want[i])
		}
	}
}
