package verify

import (
	"os"
	"testing"
)

// Every published case of emergence and degree days must come out, none left
// uncovered. The sources stand in the case file, case by case.
func TestGerminationThermalCases(t *testing.T) {
	b, err := os.ReadFile("cases/germination_thermal.json")
	if err != nil {
		t.Fatal(err)
	}
	topic, err := Parse("germination_thermal.json", b)
	if err != nil {
		t.Fatal(err)
	}
	const cases = 125 // of the published file; fewer would be a weaker check
	r := Run([]Topic{topic})
	if got := r.Totals(); got.Within != cases || got.Cases != cases {
		t.Errorf("within %d of %d cases, want %d of %d", got.Within, got.Cases, cases, cases)
	}
	for _, m := range r.Outside {
		t.Errorf("%s %s = %v, want %v ± %v (%s)", m.ID, m.Key, m.Got, m.Want, m.Tolerance, m.Source)
	}
	for _, id := range r.Uncovered {
		t.Errorf("%s is not covered", id)
	}
}
