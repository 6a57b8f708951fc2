package sun

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"bedweek/internal/cal"
)

func ExampleAtDeltaT() {
	// Reda & Andreas, NREL/TP-560-34302, worked example: zenith 50.11162°,
	// azimuth 194.34024°.
	at := time.Date(2003, time.October, 17, 19, 30, 30, 0, time.UTC)
	golden := Place{LatDeg: 39.742476, LonDeg: -105.1786, ElevM: 1830.14}
	p := AtDeltaT(at, golden, Air{PressureHPa: 820, TempC: 11}, 67)
	fmt.Printf("zenith %.2f, azimuth %.2f\n", p.ApparentZenithDeg(), p.AzimuthDeg)
	// Output: zenith 50.11, azimuth 194.34
}

func TestGeocentricMeeus(t *testing.T) {
	// [Meeus] example 25.a, 1992 October 13.0 TD: apparent right ascension
	// 198.38083°, declination -7.78507° by the low-accuracy method; the true
	// place, example 25.b, is 198.378178° and -7.783871°.
	g := geocentric((2448908.5 - 2451545) / 36525)
	ra := math.Mod(g.ra+360, 360)
	if math.Abs(ra-198.378178) > 0.002 || math.Abs(g.dec+7.783871) > 0.002 {
		t.Errorf("ra %.5f, dec %.5f; want 198.37818, -7.78387 within 0.002 ([Meeus] example 25.b)", ra, g.dec)
	}
	if math.Abs(g.distAU-0.99760775) > 0.0001 {
		t.Errorf("distance %.5f AU, want 0.99761 ([Meeus] example 25.b)", g.distAU)
	}
}

func TestSidereal(t *testing.T) {
	// [Meeus] example 12.b: 1987 April 10 at 19:21:00 UT, 128.7378734°.
	got := math.Mod(siderealDeg(2446896.30625-2451545)+360, 360)
	if math.Abs(got-128.7378734) > 1e-5 {
		t.Errorf("mean sidereal time %.7f°, want 128.7378734 ([Meeus] example 12.b)", got)
	}
}

func TestNutation(t *testing.T) {
	// [Meeus] example 22.a: 1987 April 10.0 TD, -3.788″ and +9.443″.
	T := (2446895.5 - 2451545.0) / 36525
	dψ, dε := nutation(T, (125.04452-T*1934.136261)*rad)
	if math.Abs(dψ*3600+3.788) > 0.5 || math.Abs(dε*3600-9.443) > 0.1 {
		t.Errorf("nutation %.3f″ %.3f″, want -3.788 within 0.5, 9.443 within 0.1 ([Meeus] example 22.a)", dψ*3600, dε*3600)
	}
}

func TestDeltaT(t *testing.T) {
	for _, tt := range []struct {
		year  int
		wantS float64
		from  string
	}{
		{1900, -2.79, "[EspenakMeeus] constant term"},
		{1950, 29.07, "[EspenakMeeus] constant term"},
		{1975, 45.45, "[EspenakMeeus] constant term"},
		{2000, 63.86, "[EspenakMeeus] constant term"},
	} {
		if got := DeltaT(time.Date(tt.year, 1, 1, 12, 0, 0, 0, time.UTC)); math.Abs(got-tt.wantS) > 0.2 {
			t.Errorf("DeltaT(%d) = %.2f, want %.2f s (%s)", tt.year, got, tt.wantS, tt.from)
		}
	}
	for y := 1901; y < 2149; y++ { // the pieces meet
		a := DeltaT(time.Date(y, 1, 1, 0, 0, 0, 0, time.UTC))
		if b := DeltaT(time.Date(y+1, 1, 1, 0, 0, 0, 0, time.UTC)); math.Abs(b-a) > 3.2 {
			t.Errorf("DeltaT jumps from %.1f to %.1f s after %d", a, b, y)
		}
	}
}

// A day by the almanac rule is longer than by the bare centre, and a dusk
// comes after the sunset.
func TestLevelsAreOrdered(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 300 {
		p := Place{LatDeg: r.Float64()*180 - 90, LonDeg: r.Float64()*360 - 180}
		day := cal.Of(1950+r.IntN(120), time.January, 1+r.IntN(365))
		last := -1.0
		for _, l := range []Level{Centre, UpperLimb, Civil, Nautical, Astronomical} {
			d := Of(day, p, l)
			if d.LengthH < last || d.LengthH < 0 || d.LengthH > 24.1 || math.IsNaN(d.LengthH) {
				t.Fatalf("%v at %+v level %v: %.3f h after %.3f h at the level above", day, p, l, d.LengthH, last)
			}
			if l == UpperLimb && last > 0.01 && last < 23.5 && d.LengthH <= last {
				t.Fatalf("%v at %+v: almanac day %.3f h is not longer than %.3f h", day, p, d.LengthH, last)
			}
			if (d.State == AlwaysAbove && d.LengthH != 24) || (d.State == AlwaysBelow && d.LengthH != 0) {
				t.Fatalf("%v at %+v level %v: state %v with %.3f h", day, p, l, d.State, d.LengthH)
			}
			last = d.LengthH
		}
	}
}

func TestPolarStatesAreSaid(t *testing.T) {
	for _, tt := range []struct {
		lat   float64
		day   cal.Day
		level Level
		want  string
	}{
		{68, cal.Of(2025, 6, 21), UpperLimb, "sun up all day"},
		{68, cal.Of(2025, 12, 21), UpperLimb, "sun down all day"},
		{90, cal.Of(2025, 6, 21), Centre, "sun up all day"},
		{-90, cal.Of(2025, 6, 21), Centre, "sun down all day"},
		{60, cal.Of(2025, 6, 21), Nautical, "sun never that low"},
		{90, cal.Of(2025, 12, 21), Astronomical, "sun never that high"},
		{50, cal.Of(2025, 3, 21), UpperLimb, "sun rises and sets"},
	} {
		d := Of(tt.day, Place{LatDeg: tt.lat}, tt.level)
		if got := d.State.Words(tt.level); got != tt.want {
			t.Errorf("latitude %v on %v: %q, want %q (the sun's declination against the latitude)", tt.lat, tt.day, got, tt.want)
		}
		if d.State == AlwaysAbove || d.State == AlwaysBelow {
			if !d.Rise.IsZero() || !d.Set.IsZero() {
				t.Errorf("latitude %v on %v: a rise or set in a day without one", tt.lat, tt.day)
			}
		}
	}
	// The polar day begins with a rise that no set follows.
	onlyRise := 0
	for d := cal.Of(2025, 5, 1); d < cal.Of(2025, 6, 15); d++ {
		if Of(d, Place{LatDeg: 68}, UpperLimb).State == RisesOnly {
			onlyRise++
		}
	}
	if onlyRise > 2 {
		t.Errorf("%d days of rising without setting in one spring", onlyRise)
	}
}

func TestAirLiftsTheSun(t *testing.T) {
	// [Meeus] chapter 16: example 16.a, upper limb at a true 0.5541°, gives
	// 24.618′. About 34′ at the horizon, one minute half way up, none overhead.
	for _, tt := range []struct{ elev, wantArcmin, tol float64 }{
		{0.5541, 24.618, 0.001}, {-0.5667, 34, 1.2}, {45, 1.0, 0.03}, {90, 0, 0.01},
	} {
		if got := RefractionDeg(tt.elev, StandardAir()) * 60; math.Abs(got-tt.wantArcmin) > tt.tol {
			t.Errorf("refraction at %v° = %.2f′, want %.1f′ ([Meeus] chapter 16)", tt.elev, got, tt.wantArcmin)
		}
	}
	last := math.Inf(1)
	for e := -0.8; e <= 90; e += 0.1 {
		r := RefractionDeg(e, StandardAir())
		if r > last || math.IsNaN(r) {
			t.Fatalf("refraction grows from %.5f to %.5f at elevation %.1f", last, r, e)
		}
		last = r
	}
	if RefractionDeg(-5.11, StandardAir()) != 0 || RefractionDeg(10, Air{}) != 0 {
		t.Error("refraction below the horizon or without air")
	}
}

func TestDirectionAgreesWithAt(t *testing.T) {
	p := Place{LatDeg: -34, LonDeg: 150}
	day := cal.Of(2025, 3, 3)
	d := Direction(day, 2.5, p)
	a := At(time.Date(2025, 3, 3, 2, 30, 0, 0, time.UTC), p, Air{})
	if math.Abs(d.BearingDeg()-a.AzimuthDeg) > 1e-6 || math.Abs(d.ElevationDeg()-a.TrueElevDeg) > 1e-6 {
		t.Errorf("Direction says %.6f, %.6f and At %.6f, %.6f", d.BearingDeg(), d.ElevationDeg(), a.AzimuthDeg, a.TrueElevDeg)
	}
	if math.Abs(d.Len()-1) > 1e-12 {
		t.Errorf("direction has length %v", d.Len())
	}
}

func BenchmarkDirection(b *testing.B) {
	p := Place{LatDeg: 47.6, LonDeg: -122.3}
	for i := range b.N {
		Direction(16000, float64(i%24), p)
	}
}

func TestParallaxLowersTheSun(t *testing.T) {
	// [Meeus] chapter 40: 8.794″ at the horizon at the mean distance, none overhead.
	p := Place{LatDeg: 40}
	for h := range 24 {
		a := At(time.Date(2025, 4, 4, h, 0, 0, 0, time.UTC), p, Air{})
		centre := ToSun(p.LatDeg, a.DeclinationDeg, a.HourAngleDeg).ElevationDeg()
		want := 8.794 / a.DistanceAU * math.Cos(centre*rad)
		if got := (centre - a.TrueElevDeg) * 3600; math.Abs(got-want) > 0.01 {
			t.Errorf("at %d h the sun is %.3f″ lower than from the Earth's centre, want %.3f″ ([Meeus] chapter 40)", h, got, want)
		}
	}
}
