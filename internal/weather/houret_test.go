package weather

import (
	"math"
	"testing"
)

// The two parts are the whole, and the hours of Ra are the day's.
func TestPartsAndHoursAddUp(t *testing.T) {
	site := Site{LatDeg: 47.6, LonDeg: -122.3, ElevM: 50}
	for _, doy := range []int{1, 80, 172, 300} {
		day := Day{TmaxC: 24, TminC: 11, WindMS: 2.4, RadMJ: 0.5 * RaMJ(site.LatDeg, doy)}
		rad, air := ET0Parts(day, site, doy)
		ea := SaturationKPa(day.TminC)
		net := NetShortwaveMJ(day.RadMJ) - NetLongwaveMJ(day.TmaxC, day.TminC, ea, day.RadMJ, ClearSkyMJ(RaMJ(site.LatDeg, doy), site.ElevM))
		want := PenmanMonteithMM(day.TmaxC, day.TminC, ea, day.WindMS, net, 0, site.ElevM)
		if math.Abs(rad+air-want) > 1e-12 || air <= 0 {
			t.Errorf("day %d: parts %.4f and %.4f, whole %.4f ([FAO56] eq. 6)", doy, rad, air, want)
		}
		for _, lat := range []float64{-55, 0, 37.5, 65} {
			sum, share := 0.0, 0.0
			course := DayCourse(lat, doy)
			for h := range 24 {
				sum += HourRaMJ(lat, doy, math.Pi/12*(float64(h)+0.5-12))
				share += course[h]
			}
			if ra := RaMJ(lat, doy); math.Abs(sum-ra) > 1e-9*ra || math.Abs(share-1) > 1e-12 {
				t.Errorf("day %d at %g: hours of Ra sum to %.4f, the day's is %.4f; the course sums to %.6f", doy, lat, sum, ra, share)
			}
		}
	}
	if c := DayCourse(80, 355); c[0] != 1.0/24 {
		t.Errorf("polar night: course %v, want even", c)
	}
}

// [FAO56] example 19, N'Diaye in Senegal, from memory: hourly ETo 0.00 at 2-3
// in the night and 0.63 mm at 14-15 on 1 October.
func TestFAOHourExample19(t *testing.T) {
	lat, elev, doy := 16.0+13.0/60, 8.0, 274
	for _, tt := range []struct {
		name                   string
		t, rh, u, rs, clock, f float64
		want                   float64
	}{
		{"14-15 h", 38, 52, 3.3, 2.450, 14.5, 0, 0.63},
		{"2-3 h, cloud factor of the evening before (Rs/Rso 0.8)", 28, 90, 1.9, 0, 2.5, 1.35*0.8 - 0.35, 0},
	} {
		h := Hour{TC: tt.t, EaKPa: SaturationKPa(tt.t) * tt.rh / 100, WindMS: tt.u, RadMJ: tt.rs}
		f := tt.f
		if f == 0 {
			omega := SolarHourAngle(tt.clock, -16.25, -15, doy)
			f = CloudFactor(h.RadMJ, ClearSkyMJ(HourRaMJ(lat, doy, omega), elev))
		}
		if got := FAOHourMM(h, HourNetMJ(h, f), elev); math.Abs(got-tt.want) > 0.01 {
			t.Errorf("%s: %.3f mm, want %.2f", tt.name, got, tt.want)
		}
	}
}

// Curves meet where they are pieced together, and touch the minimum.
func TestDayCurvesMeet(t *testing.T) {
	e := Extremes{4, 16}
	rise, set := SunUpSolarH(47, 100)
	for _, at := range []float64{rise, set} {
		if a, b := LinvillC(e, e, e, 47, 100, at-1e-6), LinvillC(e, e, e, 47, 100, at+1e-6); math.Abs(a-b) > 1e-3 {
			t.Errorf("Linvill at %.3f h: %.4f before, %.4f after", at, a, b)
		}
	}
	if got := LinvillC(e, e, e, 47, 100, rise); math.Abs(got-4) > 1e-6 {
		t.Errorf("Linvill at sunrise: %.3f, want the minimum 4", got)
	}
	if got := LinvillC(e, e, e, 80, 355, 12); got != 10 {
		t.Errorf("Linvill in polar night: %g, want the mean 10", got)
	}
}

// Warmth undoes what cold began: a warm day after ten cool hours leaves no
// portion, and the same cool hours unbroken do.
func TestChillIsUndoneByWarmth(t *testing.T) {
	var broken, whole []float64
	for range 20 {
		for range 10 {
			broken, whole = append(broken, 6), append(whole, 6)
		}
		for range 14 {
			broken = append(broken, 28)
		}
	}
	if a, b := ChillPortions(broken), ChillPortions(whole); a != 0 || b < 5 {
		t.Errorf("portions %.2f broken by warmth, %.2f whole; want none and more than 5 ([EREZ90], closed behaviour)", a, b)
	}
}

func TestVapour(t *testing.T) {
	for _, tt := range []struct {
		from      string
		got, want float64
	}{
		{"[FAO56] example 4: dry 25.6, wet 19.5 at 1200 m, aspirated", VapourFromBulbsKPa(25.6, 19.5, 0.000662, PressureKPa(1200)), 1.91},
		{"[FAO56] example 5: 25 and 18 °C, 82 and 54 %", VapourFromHumidityKPa(25, 18, 82, 54), 1.70},
		{"[FAO56] example 5, from the highest alone", VapourFromMostHumidKPa(18, 82), 1.69},
		{"[FAO56] example 5, from the mean of 68 %", VapourFromMeanHumidityKPa(25, 18, 68), 1.78},
		{"[FAO56] example 13: April, after March 14.1 and before May 18.8 °C", GroundHeatBetweenMJ(18.8, 14.1), 0.33},
	} {
		if math.Abs(tt.got-tt.want) > 0.01 {
			t.Errorf("%s (from memory): %.4f, want %.2f", tt.from, tt.got, tt.want)
		}
	}
}
