package names

import (
	"fmt"
	"math"
	"strings"
)

// shapeOf draws a leaf by its edge as the path of an outline in a box 100 wide
// and 120 high, stalk down; "" when the value is none we can draw. The forms
// are schematic: only the edge is meant.
func shapeOf(feature, value string) string {
	if feature != "leaf edge" {
		return ""
	}
	v := strings.ToLower(value)
	for _, s := range []struct {
		word             string
		waves            float64 // along one side
		deep             float64 // of half the width
		sharp            bool
		narrow, ragged   float64
		alternateSmaller bool
	}{
		{"fine", 9, 0.62, true, 0.9, 0, true},
		{"curl", 11, 0.16, false, 1, 0.04, false},
		{"frill", 11, 0.16, false, 1, 0.04, false},
		{"lobe", 3, 0.45, false, 1, 0, false},
		{"tooth", 10, 0.16, true, 1, 0, false},
		{"wav", 5, 0.12, false, 1, 0, false},
		{"narrow", 0, 0, false, 0.45, 0, false},
		{"strap", 0, 0, false, 0.4, 0, false},
		{"smooth", 0, 0, false, 0.9, 0, false},
		{"plain", 0, 0, false, 0.9, 0, false},
	} {
		if strings.Contains(v, s.word) {
			narrow := s.narrow
			if strings.Contains(v, "narrow") || strings.Contains(v, "strap") {
				narrow = 0.45
			}
			return leaf(s.waves, s.deep, s.sharp, narrow, s.ragged)
		}
	}
	return ""
}

// leaf outlines a blade: half an egg on each side, its width lessened by waves.
func leaf(waves, deep float64, sharp bool, narrow, ragged float64) string {
	const steps = 90
	side := func(t float64) float64 { // t 0 at the stalk, 1 at the tip
		w := 40 * narrow * math.Sqrt(math.Sin(math.Pi*math.Pow(t, 0.8)))
		p := math.Abs(math.Sin(math.Pi * waves * t))
		if sharp {
			_, f := math.Modf(waves * t)
			p = f
		}
		return w * (1 - deep*(1-p) + ragged*math.Sin(7*math.Pi*waves*t))
	}
	var b strings.Builder
	b.WriteString("M50 118V100")
	for i := 0; i <= steps; i++ {
		t := float64(i) / steps
		fmt.Fprintf(&b, "L%.1f %.1f", 50-side(t), 100-90*t)
	}
	for i := steps; i >= 0; i-- {
		t := float64(i) / steps
		fmt.Fprintf(&b, "L%.1f %.1f", 50+side(t), 100-90*t)
	}
	return b.String() + "Z"
}
