package reckon

import (
	"math"
	"strings"
	"testing"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
	"bedweek/internal/water"
)

// The wet circles of a line cover the share that is wet; with emitters each
// 30 cm on lines 60 cm apart, 0.7 x 0.3 x 0.3 m2 a circle (see dripEveryM)
// leaves a dry strip worth a warning.
func TestLineLeavesDryEdges(t *testing.T) {
	usual := lineWet(garden.Space{})
	if usual.Measured || math.Abs(math.Pi*usual.AcrossM*usual.AcrossM/4-usual.Share*usual.EveryM*usual.LinesM) > 1e-12 {
		t.Errorf("usual line %+v", usual)
	}
	sp := garden.Space{}
	sp.Watering.EmitterEvery, sp.Watering.LinesEvery = unit.Length{M: 0.3}, unit.Length{M: 0.6}
	far := lineWet(sp)
	if !far.Measured || math.Abs(far.AcrossM-usual.AcrossM) > 1e-9 || math.Abs(far.DryM-(0.6-usual.AcrossM)) > 1e-9 || !strings.Contains(far.Words, "stay dry") {
		t.Errorf("lines twice as far apart %+v, usual %+v", far, usual)
	}
	if far.Share >= usual.Share {
		t.Errorf("further lines wet %.2f, nearer ones %.2f", far.Share, usual.Share)
	}
}

// Weights of the demo are those of water and medium, and what hangs or stands
// high carries its caution; a bed on the ground has none.
func TestFullWeightsAndDryMix(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	d := dryOf(t, in, p, DryAsk{FromHour: 9, NextH: 24})
	weighed := 0
	for _, r := range d.Rows {
		sp, _ := in.Garden.Space(garden.SpaceID(r.Space))
		onGround := sp.Kind == garden.Ground || sp.Kind == garden.RaisedBed
		if r.Ground == nil || r.Ground.Weight == nil {
			if !onGround {
				t.Errorf("%s has no weight", r.Space)
			}
			continue
		}
		weighed++
		w := r.Ground.Weight
		if onGround || w.LowKg > w.HighKg || w.HighKg < 0.3*sp.VolumeL() || w.HighKg > 2.6*sp.VolumeL()+60 {
			t.Errorf("%s of %.0f L: %+v", r.Space, sp.VolumeL(), w)
		}
		if (sp.Kind == garden.Railing || sp.Kind == garden.Hanging) != strings.Contains(w.Words, "landlord") && sp.Floor.M < 1 {
			t.Errorf("%s: %s", r.Space, w.Words)
		}
	}
	if weighed < 5 {
		t.Errorf("%d weights", weighed)
	}
	s := &water.Space{Medium: water.Medium{Name: "potting mix"}}
	late := water.Answer{Dry: water.Window{Likely: 40}}
	if repels(s, nil, late) != "" || repels(s, []SpaceSeen{{What: water.Damp}}, late) != "" {
		t.Error("damp mix is said to repel")
	}
	if repels(s, []SpaceSeen{{What: water.DryLook}}, late) == "" || repels(s, nil, water.Answer{}) == "" {
		t.Error("dry mix is not said to repel")
	}
	s.Medium.Name = "garden soil"
	if repels(s, []SpaceSeen{{What: water.Wilting}}, late) != "" {
		t.Error("garden soil is said to repel")
	}
}
