package compass

import (
	"math"
	"testing"
)

// TestAgainstPublishedValues holds the declination to the twelve values of
// [WMM2025] table 6, read in a copy of it; they are printed to two decimals.
func TestAgainstPublishedValues(t *testing.T) {
	const tolDeg = 0.0051
	for _, tt := range []struct{ year, heightKM, lat, lon, wantDeg float64 }{
		{2025, 0, 80, 0, 1.28}, {2025, 0, 0, 120, -0.16}, {2025, 0, -80, 240, 68.78},
		{2025, 100, 80, 0, 0.85}, {2025, 100, 0, 120, -0.15}, {2025, 100, -80, 240, 68.21},
		{2027.5, 0, 80, 0, 2.59}, {2027.5, 0, 0, 120, -0.24}, {2027.5, 0, -80, 240, 68.49},
		{2027.5, 100, 80, 0, 2.16}, {2027.5, 100, 0, 120, -0.23}, {2027.5, 100, -80, 240, 67.93},
	} {
		north, east := field(tt.lat, tt.lon, tt.heightKM, tt.year)
		if got := math.Atan2(east, north) * 180 / math.Pi; math.Abs(got-tt.wantDeg) > tolDeg {
			t.Errorf("%v at %v, %v, %v km: %.3f°, want %.2f° ([WMM2025] table 6)", tt.year, tt.lat, tt.lon, tt.heightKM, got, tt.wantDeg)
		}
	}
}

// TestWhereNoCompassHelps: by the magnetic poles nothing is said; at the poles
// and the date line there is no break, and years out of range are their ends.
func TestWhereNoCompassHelps(t *testing.T) {
	if _, ok := DeclinationDeg(86, 140, 2026); ok {
		t.Error("a compass is believed by the north magnetic pole (about 86° N, 139° E, from memory)")
	}
	if _, ok := DeclinationDeg(-64, 135.5, 2026); ok {
		t.Error("a compass is believed by the south magnetic pole (about 64° S, 136° E, from memory)")
	}
	for lat := -90.0; lat <= 90; lat += 7.5 {
		a, okA := DeclinationDeg(lat, -180, 2026)
		b, okB := DeclinationDeg(lat, 180, 2026)
		if okA != okB || math.Abs(a-b) > 1e-9 || math.IsNaN(a) {
			t.Errorf("latitude %v: %v° and %v° on both sides of the date line", lat, a, b)
		}
	}
	early, _ := DeclinationDeg(47.6, -122.3, 2015)
	first, _ := DeclinationDeg(47.6, -122.3, 2025)
	late, _ := DeclinationDeg(47.6, -122.3, 2040)
	last, _ := DeclinationDeg(47.6, -122.3, 2030)
	if early != first || late != last || first == last {
		t.Errorf("2015 %v°, 2025 %v°, 2030 %v°, 2040 %v°", early, first, last, late)
	}
	if n := len(terms()); n != 90 {
		t.Errorf("%d coefficients, want 90", n)
	}
}
