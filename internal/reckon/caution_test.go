package reckon

import (
	"slices"
	"testing"
)

// The want is the house rule: a caution stands at the moment of action, in
// full where it comes first, and never points forward.
func TestCareOnce(t *testing.T) {
	dust, sap := "Dampen dusty mix.", "Sap can irritate skin."
	got := CareOnce([]string{"", dust, sap, dust, "", sap, dust}, []string{"stop 1", "stop 2", "stop 3", "stop 4", "stop 5", "stop 6", "stop 7"})
	want := []string{"", dust, sap, "As at stop 2.", "", "As at stop 3.", "As at stop 2."}
	if !slices.Equal(got, want) {
		t.Errorf("CareOnce = %q, want %q", got, want)
	}
}
