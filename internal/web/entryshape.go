package web

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/geom"
)

// OddShape is one odd shape with the measures it takes, drawn to scale in the
// box of a [Drawing].
type OddShape struct {
	Words string
	Draw  Drawing
}

// oddShapes lists the odd shapes by what a tape measures of them.
func oddShapes() []OddShape {
	var out []OddShape
	for _, line := range garden.FormLines() {
		f, ok := garden.FigureOf(line)
		if !ok {
			panic("web: a shape of the list is faulty")
		}
		out = append(out, OddShape{line, Drawing(figurePath(f, math.Min(56/f.Length, 36/f.Width), 32, 22))})
	}
	return out
}

// figurePath draws a figure about x, y, north up, scale pixels to a metre; a
// hole is drawn as a second ring.
func figurePath(f *geom.Figure, scale, x, y float64) string {
	var b strings.Builder
	tenth := func(v float64) float64 { return math.Round(v*10) / 10 }
	for _, ring := range f.Rings {
		for i, v := range thinned(ring) {
			step := "L"
			if i == 0 {
				step = "M"
			}
			fmt.Fprintf(&b, "%s%g %g", step, tenth(x+v.X*scale), tenth(y-v.Y*scale))
		}
		b.WriteString("Z")
	}
	return b.String()
}
