package garden

import "testing"

// TestTowns reads every month of every listed place.
func TestTowns(t *testing.T) {
	towns := Towns()
	if len(towns) < 20 {
		t.Fatalf("%d places", len(towns))
	}
	for i, one := range towns {
		if i > 0 && towns[i-1].Name >= one.Name {
			t.Errorf("%s stands after %s", one.Name, towns[i-1].Name)
		}
		warmest := 0
		var mean [12]float64
		for m, typed := range one.Months {
			hot, cold, _, wrong := ParseMonth(typed)
			if wrong != "" {
				t.Errorf("%s month %d: %s", one.Name, m+1, wrong)
			}
			if mean[m] = hot + cold; mean[m] > mean[warmest] {
				warmest = m
			}
		}
		if south := one.LatDeg < 0; south != (warmest < 3 || warmest == 11) {
			t.Errorf("%s: warmest in month %d at latitude %v", one.Name, warmest+1, one.LatDeg)
		}
		if near, km := NearestTown(one.LatDeg, one.LonDeg); near.Name != one.Name || km > 0.1 {
			t.Errorf("nearest to %s is %s, %.0f km", one.Name, near.Name, km)
		}
	}
	// Paris to London is about 340 km as the crow flies (common knowledge).
	paris, _ := NearestTown(48.9, 2.3)
	if _, km := NearestTown(51.0, 0.6); km < 50 || km > 110 || paris.Name != "Paris" {
		t.Errorf("from the Channel coast: %.0f km", km)
	}
}
