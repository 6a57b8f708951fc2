package stand

import (
	"math"
	"testing"
)

func TestWorlds(t *testing.T) {
	c := fromBook(t, "carrot")
	a, b := Worlds(c, 20, 5), Worlds(c, 60, 5)
	mean, low, high := 0.0, 9.0, 0.0
	for k := range a {
		if a[k] != b[k] {
			t.Errorf("future %d believes otherwise among 60 than among 20", k)
		}
	}
	for _, w := range b {
		mean += w.Days / float64(len(b))
		low, high = math.Min(low, w.Days), math.Max(high, w.Days)
		if w.Emerge < 0.8 || w.Emerge > 1.2 || w.Yield < 0.5 || w.Yield > 1.6 || math.Abs(w.ColdC) > 1.4 {
			t.Errorf("world out of bounds: %+v", w)
		}
	}
	if mean < 0.9 || mean > 1.15 || low > 0.95 || high < 1.05 {
		t.Errorf("days: mean factor %.3f from %.3f to %.3f, want about 1 with a spread", mean, low, high)
	}
	var fifths [5]int // of cold doubt, by the normal's own fifths
	for _, w := range a {
		z := w.ColdC / coldSDC
		i := 0
		for _, edge := range []float64{-0.84, -0.25, 0.25, 0.84} {
			if z > edge {
				i++
			}
		}
		fifths[i]++
	}
	for i, n := range fifths {
		if n < 3 || n > 5 {
			t.Errorf("of 20 futures %d fall in fifth %d, want 3 to 5", n, i+1)
		}
	}
	if Worlds(c, 1, 5)[0] == Worlds(c, 1, 6)[0] {
		t.Error("another seed draws the same world")
	}
}
