package reckon

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// GroundRow says where a space's water goes: what a line wets, and what a
// full container weighs. When a planter watered from below wants flushing is in
// flush.go.
type GroundRow struct {
	Space, Name string
	Line        *LineWet    // nil = no line
	Weight      *FullWeight // nil = it stands on the ground
}

// LineWet is what drip lines wet of a surface, metres.
type LineWet struct {
	EveryM, LinesM float64 // emitters along a line, and lines
	AcrossM        float64 // a wet circle
	DryM           float64 // left dry between two lines, 0 = the circles meet
	Share          float64 // of the surface that gets wet
	Measured       bool    // spacing was said, not taken as usual
	Words          string
}

// FullWeight is a container drained but full, with its reservoir.
type FullWeight struct {
	LowKg, HighKg float64
	LowKgM2, KgM2 float64 // the same, on each square metre it stands on
	Words         string
}

// groundRow fills a row; nil when there is nothing to say of a space.
func groundRow(sp garden.Space, s *water.Space) *GroundRow {
	g := &GroundRow{Space: string(sp.ID), Name: spaceName(sp)}
	if s.Way == water.Drip {
		g.Line = lineWet(sp)
	}
	switch sp.Kind {
	case garden.Ground, garden.RaisedBed, garden.Bench, garden.LampShelf, garden.Heap:
	default:
		g.Weight = fullWeight(sp, s.Medium)
	}
	if g.Line == nil && g.Weight == nil {
		return nil
	}
	return g
}

func lineWet(sp garden.Space) *LineWet {
	_, along, between := lineOf(sp)
	l := &LineWet{EveryM: along, LinesM: between, Share: lineWets(along, between), Measured: sp.Watering.EmitterEvery.M > 0 || sp.Watering.LinesEvery.M > 0}
	l.AcrossM = 2 * math.Sqrt(l.Share*along*between/math.Pi)
	l.DryM = max(0, between-l.AcrossM)
	how := "taken as usual, not measured"
	if l.Measured {
		how = "by the spacing you gave"
	}
	l.Words = fmt.Sprintf("Each emitter wets about %.0f cm across, %.0f %% of the surface (%s).", 100*l.AcrossM, 100*l.Share, how)
	if l.DryM >= 0.02 {
		l.Words += fmt.Sprintf(" Between two lines %.0f cm stay dry: sow seed on the line, and water a sowing by hand.", 100*l.DryM)
	}
	return l
}

// fullWeight is over the range of what a medium weighs dry and holds wet; nil
// for a space without medium.
func fullWeight(sp garden.Space, m water.Medium) *FullWeight {
	litres, tank := sp.VolumeL(), 0.0
	if way(sp) == water.Reservoir {
		tank = tankL(sp)
	}
	low, _ := water.SaturatedLoad(litres, m.DryKgM3.At(0), m.Full.At(0), 0, 0, sp.AreaM2())
	high, ok := water.SaturatedLoad(litres, m.DryKgM3.At(1), m.Full.At(1), tank, 1, sp.AreaM2())
	if litres <= 0 || high.Kg <= 0 {
		return nil
	}
	w := &FullWeight{LowKg: low.Kg, HighKg: high.Kg}
	w.Words = fmt.Sprintf("Full it weighs %.0f to %.0f kg, without plants.", low.Kg, high.Kg)
	if ok {
		w.LowKgM2, w.KgM2 = low.KgM2, high.KgM2
	}
	if !sp.Bears.Known() && (sp.Kind == garden.Railing || sp.Kind == garden.Hanging || sp.Floor.M >= 1) {
		w.Words += " What holds it must be made for that: ask its maker, owner or landlord; local code comes first."
	}
	return w
}

// repels says how dry mix is told and wetted again; "" when a space's is not
// likely to be dry.
func repels(s *water.Space, seen []SpaceSeen, a water.Answer) string {
	if !strings.Contains(s.Medium.Name, "mix") && !strings.Contains(s.Medium.Name, "peat") && !strings.Contains(s.Medium.Name, "coir") {
		return ""
	}
	found := false
	if n := len(seen); n > 0 {
		found = seen[n-1].What == water.DryLook || seen[n-1].What == water.Wilting
	}
	if !found && a.Dry.Likely > 3 {
		return ""
	}
	return "Dry mix repels water: the first can may run straight through. You know it by a gap at the rim, or a pot still light. Give a third, wait half an hour, give the rest (common practice)."
}
