package shade

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
)

// With mends, a field agrees ray by ray with the caster's answer overruled by
// the same mends, and a body changed afterwards still leaves the bits of a new
// field.
func TestMendsAgreeWithCasterAndStayExact(t *testing.T) {
	opened, darkened, cells, off := 0, 0, 0, 0
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(seed, 31))
		site := Place{LatDeg: 120*r.Float64() - 60, LonDeg: 10}
		c := NewCourse(site, cal.Of(2023, 1, 2)+cal.Day(r.IntN(365)), 2, Looks{48, 600}, nil)
		var s Scene
		for range 3 + r.IntN(4) {
			s.Bodies = append(s.Bodies, anyBody(r))
		}
		surf := LevelSurface(Patch{Name: "bed", Length: 1, Width: 0.5, Z: 0.2})
		for range 4 {
			low := 60 * r.Float64()
			surf.Mends = append(surf.Mends, Mend{360 * r.Float64(), 40 * r.Float64(), low, low + 30*r.Float64(), r.IntN(2) == 0})
		}
		f := NewField(c, []Surface{surf}, s.Bodies, true, 1)
		nu, nv := surf.Grid()
		for w := range c.Weeks() {
			scene := s.On(c.Day(w))
			for j := range nv {
				for i := range nu {
					want := 0.0
					for k := c.first[w]; k < c.first[w+1]; k++ {
						d := c.rays[k].d
						passes := scene.Passes(surf.Cell(i, j), d, AnyMonth)
						if open, known := Mended(surf.Mends, d); known && open {
							opened++
							passes = 1
						} else if known {
							darkened++
							passes = 0
						}
						want += passes * c.rays[k].hours
					}
					cells++
					if got := f.Week(w).Cell(0, i, j).Hours; math.Abs(got-want) > 0.02 {
						off++
						t.Logf("seed %d week %d cell %d,%d: %.4f h, caster %.4f h", seed, w, i, j, got, want)
					}
				}
			}
		}
		moved := anyBody(r)
		if err := f.Replace(0, moved); err != nil {
			t.Fatal(err)
		}
		bodies := append([]Body{moved}, s.Bodies[1:]...)
		if !slices.Equal(lastBits(f), lastBits(NewField(c, []Surface{surf}, bodies, false, 1))) {
			t.Errorf("seed %d: after a change not the bits of a new field", seed)
		}
	}
	// A ray in 30,000 runs along a rim and may be told either way, without mends too.
	if off > cells/500 {
		t.Errorf("%d of %d cells differ", off, cells)
	}
	if opened == 0 || darkened == 0 {
		t.Errorf("%d rays opened, %d darkened: nothing was tried", opened, darkened)
	}
}

// A piece of sky lies across north as well as anywhere, and the last counts.
func TestMended(t *testing.T) {
	north := []Mend{{BearingDeg: 0, HalfDeg: 5, LowDeg: 0, HighDeg: 20}, {BearingDeg: 358, HalfDeg: 5, LowDeg: 10, HighDeg: 30, Open: true}}
	for _, tt := range []struct {
		bearing, height float64
		open, known     bool
	}{
		{4, 5, false, true}, {356, 5, false, true}, {356, 15, true, true}, {2, 15, true, true}, {4, 15, false, true},
		{180, 5, false, false}, {0, 40, false, false}, {6, 5, false, false},
	} {
		open, known := Mended(north, geom.Direction(tt.bearing, tt.height))
		if open != tt.open || known != tt.known {
			t.Errorf("%v°, %v° up: open %v, known %v", tt.bearing, tt.height, open, known)
		}
	}
}
