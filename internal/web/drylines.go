package web

import "bedweek/internal/reckon"

// WetDrawing is a piece of a space's surface between two drip lines, to scale.
type WetDrawing struct {
	Space, Name string
	W, H        float64
	Lines       []float64 // y
	Circles     []Dot
	R           float64
	Says        string
}

// cmPx is the scale of the drawing.
const cmPx = 1.6

// wetDrawings draws each spacing of emitters once, for the first space that
// has it.
func wetDrawings(rows []DryCard) []WetDrawing {
	var out []WetDrawing
	known := map[reckon.LineWet]bool{}
	for _, r := range rows {
		if r.Ground == nil || r.Ground.Line == nil || known[*r.Ground.Line] {
			continue
		}
		l := *r.Ground.Line
		known[l] = true
		every, between, radius := 100*l.EveryM*cmPx, 100*l.LinesM*cmPx, 50*l.AcrossM*cmPx
		d := WetDrawing{Space: r.Space, Name: r.Name, R: radius, W: 3 * every, H: 2 * between, Says: l.Words}
		for k := range 2 {
			y := between * (0.5 + float64(k))
			d.Lines = append(d.Lines, y)
			for i := range 3 {
				d.Circles = append(d.Circles, Dot{every * (0.5 + float64(i)), y})
			}
		}
		out = append(out, d)
	}
	return out
}
