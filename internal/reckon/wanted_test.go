package reckon

import (
	"testing"

	"bedweek/internal/season"
)

// TestGivenIsWhatIsWanted: forty herbs give many more meals than anybody wants,
// so a week's wait cannot cost more than these.
func TestGivenIsWhatIsWanted(t *testing.T) {
	food := season.Food{ID: "herbs", Want: []float64{4, 4, 4, 4, 0, 4, 4}, Shelf: 1}
	herb := season.Option{ID: "bed.dill.sow0.w00", Food: 0, MealsFrom: 1, Meals: [][]float32{{0, 1, 1}, {0, 0, 1}}}
	if got := wantedWhile(&food, &herb, food.Shelf); got != 4+4+0 { // weeks 2 and 3, and a week's keeping
		t.Errorf("wanted while it is picked: %v, want 8", got)
	}
	r := &Result{model: &model{bees: -1}, Problem: &season.Problem{Foods: []season.Food{food}, Options: []season.Option{herb}}}
	for _, tt := range []struct {
		plants int
		want   float64
	}{{2, 3}, {40, 8}} {
		r.Plan.Plantings = []season.Planting{{Option: 0, Plants: tt.plants}}
		if got := r.given([]string{herb.ID}); got != tt.want {
			t.Errorf("%d plants give %v meals that are wanted, want %v", tt.plants, got, tt.want)
		}
	}
	if got := wantedWhile(&food, &season.Option{Meals: [][]float32{{0, 0}}}, 1); got != 0 {
		t.Errorf("never picked: %v wanted, want 0", got)
	}
}
