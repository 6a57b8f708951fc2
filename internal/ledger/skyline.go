package ledger

import "strings"

// Skyline is what somebody saw of the sky from a space, where the garden file
// says otherwise: the edge of what stands in the way is higher or lower there.
const Skyline Kind = "skyline"

// Edge is the body of Skyline, layout 1. Degrees are true bearings clockwise
// from north, and heights over the level.
type Edge struct {
	Space      string  `json:"space"`
	BearingDeg float64 `json:"bearing_deg"`
	WasDeg     float64 `json:"was_deg"`         // the edge as it was shown
	EdgeDeg    float64 `json:"edge_deg"`        // the edge as it was seen
	How        string  `json:"how"`             // "by hand", "sun reached", "sun left"
	Clock      string  `json:"clock,omitempty"` // of the sun seen, such as 10:40, on the day it happened
	Note       string  `json:"note,omitempty"`
}

// EdgeNote is an edge with the entry that holds it.
type EdgeNote struct {
	Event string
	Edge
}

// edge lists what is wrong with the body.
func (f *Faults) edge(b Edge) {
	f.name("space", b.Space, true)
	f.text("note", b.Note, noteLimit)
	f.text("clock", b.Clock, 5)
	if !(b.BearingDeg >= 0 && b.BearingDeg < 360) {
		f.add("%q is %g; it must be 0 or more and less than 360", "bearing_deg", b.BearingDeg)
	}
	for _, h := range []struct {
		field string
		deg   float64
	}{{"was_deg", b.WasDeg}, {"edge_deg", b.EdgeDeg}} {
		if !(h.deg >= 0 && h.deg <= 90) {
			f.add("%q is %g; it must lie between 0 and 90", h.field, h.deg)
		}
	}
	switch b.How {
	case "by hand":
	case "sun reached", "sun left":
		if strings.TrimSpace(b.Clock) == "" {
			f.add("%q is missing; say when the sun was seen", "clock")
		}
	default:
		f.add("%q is %q; it may be by hand, sun reached or sun left", "how", clip(b.How))
	}
}
