package weather

import (
	"fmt"
	"math"
	"testing"
)

const fao = "[FAO56] "

func within(t *testing.T, what string, got, want, tol float64, from string) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.4f, want %.4f within %.4f (%s)", what, got, want, tol, from)
	}
}

func TestRadiationAboveTheAir(t *testing.T) {
	from := fao + "example 8"
	within(t, "dr", InverseDistance(246), 0.985, 0.001, from)
	within(t, "declination", DeclinationRad(246), 0.12, 0.001, from)
	within(t, "sunset angle", SunsetAngleRad(-20, 246), 1.527, 0.001, from)
	for _, tt := range []struct {
		lat      float64
		doy      int
		ra, n    float64
		tol, hon float64
		from     string
	}{
		{-20, 246, 32.2, 11.7, 0.1, 0.05, fao + "examples 8 and 9"},
		{-22.9, 135, 25.1, 10.9, 0.1, 0.05, fao + "example 10"},
		{13.7333, 105, 38.06, 12.31, 0.06, 0.03, fao + "example 17"},
		{50.8, 187, 41.09, 16.1, 0.06, 0.05, fao + "example 18"},
		{37.5, 15, 16.548, 9.69, 0.05, 0.02, fao + "eq. 21 and 34, evaluated apart"},
		{-34, 15, 43.335, 14.023, 0.05, 0.02, fao + "eq. 21 and 34, evaluated apart"},
		{60, 355, 2.116, 5.513, 0.05, 0.02, fao + "eq. 21 and 34, evaluated apart"},
		{68, 172, 42.127, 24, 0.05, 0.02, fao + "the sun stays up"},
		{68, 355, 0, 0, 0.05, 0.02, fao + "the sun stays down"},
	} {
		within(t, fmt.Sprintf("Ra(%v, %d)", tt.lat, tt.doy), RaMJ(tt.lat, tt.doy), tt.ra, tt.tol, tt.from)
		within(t, fmt.Sprintf("N(%v, %d)", tt.lat, tt.doy), DaylightH(tt.lat, tt.doy), tt.n, tt.hon, tt.from)
	}
}

func TestRadiationFromSunshineAndRange(t *testing.T) {
	within(t, "Rs from 220 h of sunshine in May", SunshineRadMJ(220.0/31, DaylightH(-22.9, 135), RaMJ(-22.9, 135)), 14.5, 0.1, fao+"example 10")
	lyon := Site{LatDeg: 45.7167, ElevM: 200}
	within(t, "Rs from range", HargreavesRadMJ(26.6, 14.8, lyon, 196), 22.3, 0.1, fao+"example 15 and 20, interior")
	coast := lyon
	coast.Coastal = true
	within(t, "coast against interior", HargreavesRadMJ(18, 14.8, coast, 196)/HargreavesRadMJ(18, 14.8, lyon, 196), 0.19/0.16, 1e-9, fao+"eq. 50")
	within(t, "bounded by the clear sky", HargreavesRadMJ(40, 0, lyon, 196), (0.75+2e-5*200)*RaMJ(45.7167, 196), 1e-9, fao+"eq. 37")
	within(t, "wind", WindAt2M(3.2, 10), 2.4, 0.05, fao+"example 14")
}

func TestPenmanMonteithSteps(t *testing.T) {
	within(t, "pressure", PressureKPa(1800), 81.8, 0.1, fao+"example 2")
	within(t, "gamma", PsychrometricKPa(1800), 0.054, 0.001, fao+"example 2")
	within(t, "es", MeanSaturationKPa(24.5, 15), 2.39, 0.01, fao+"example 3")
	from := fao + "example 17, Bangkok in April"
	within(t, "slope", SlopeKPa(30.2), 0.246, 0.001, from)
	rso := ClearSkyMJ(38.06, 2)
	within(t, "Rso", rso, 28.54, 0.06, from)
	rnl := NetLongwaveMJ(34.8, 25.6, 2.85, 22.65, rso)
	within(t, "Rnl", rnl, 3.11, 0.06, from)
	within(t, "ETo", PenmanMonteithMM(34.8, 25.6, 2.85, 2, (1-0.23)*22.65-rnl, 0.14, 2), 5.72, 0.05, from)
	from = fao + "example 18, Uccle 6 July"
	rnl = NetLongwaveMJ(21.5, 12.3, 1.409, 22.07, ClearSkyMJ(RaMJ(50.8, 187), 100))
	within(t, "Rnl", rnl, 3.71, 0.06, from)
	within(t, "ETo", PenmanMonteithMM(21.5, 12.3, 1.409, WindAt2M(10/3.6, 10), (1-0.23)*22.07-rnl, 0, 100), 3.88, 0.05, from)
}

func TestET0WithMissingData(t *testing.T) {
	lyon := Site{LatDeg: 45.7167, ElevM: 200}
	day := Day{TmaxC: 26.6, TminC: 14.8, WindMS: 2, RadMJ: HargreavesRadMJ(26.6, 14.8, lyon, 196)}
	within(t, "ETo by missing-data rules", ET0MM(day, lyon, 196), 4.56, 0.06, fao+"example 20, 4.56 mm from memory")
	within(t, "ETo by Hargreaves", HargreavesMM(26.6, 14.8, RaMJ(45.7167, 196)), 5.0, 0.06, fao+"example 20")
	still := day
	still.WindMS = 0
	half := day
	half.WindMS = 0.5
	if ET0MM(still, lyon, 196) != ET0MM(half, lyon, 196) {
		t.Error("still air is not taken as 0.5 m/s, the least of [FAO56] p. 63")
	}
}

// Water demand never falls below zero, and no weather gives NaN.
func TestET0IsFinite(t *testing.T) {
	for lat := -90.0; lat <= 90; lat += 15 {
		for doy := 1; doy <= 366; doy += 13 {
			for _, d := range []Day{{TmaxC: -40, TminC: -60}, {TmaxC: 50, TminC: 49, WindMS: 20}, {TmaxC: 20, TminC: 5, RadMJ: 30, WindMS: 3}} {
				e := ET0MM(d, Site{LatDeg: lat, ElevM: 3000}, doy)
				if !(e >= 0 && e < 40) {
					t.Fatalf("ET0MM(%+v) at %v on day %d = %v", d, lat, doy, e)
				}
			}
		}
	}
}
