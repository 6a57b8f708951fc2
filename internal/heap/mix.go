package heap

// Material is something that goes on a heap.
type Material struct {
	Name        string
	WetKg       float64
	MoisturePct float64 // of wet weight
	CarbonPct   float64 // of dry weight
	NitrogenPct float64 // of dry weight
}

func (m Material) dryKg() float64 { return m.WetKg * (1 - m.MoisturePct/100) }

// Mix returns carbon to nitrogen and moisture (percent) of materials thrown
// together. ok is false when there is nothing, or no nitrogen in it.
func Mix(materials []Material) (cToN, moisturePct float64, ok bool) {
	wet, water, c, n := 0.0, 0.0, 0.0, 0.0
	for _, m := range materials {
		wet += m.WetKg
		water += m.WetKg * m.MoisturePct / 100
		c += m.dryKg() * m.CarbonPct
		n += m.dryKg() * m.NitrogenPct
	}
	if wet <= 0 || n <= 0 {
		return 0, 0, false
	}
	return c / n, 100 * water / wet, true
}

// SecondForCN returns the wet weight of second that brings first to a wanted
// carbon to nitrogen. ok is false when no amount does: both lie on one side.
func SecondForCN(first, second Material, goal float64) (wetKg float64, ok bool) {
	lacks := first.dryKg() * (goal*first.NitrogenPct - first.CarbonPct)
	perKg := (1 - second.MoisturePct/100) * (second.CarbonPct - goal*second.NitrogenPct)
	return share(lacks, perKg)
}

// SecondForMoisture returns the wet weight of second that brings first to a
// wanted moisture, percent; ok as in SecondForCN.
func SecondForMoisture(first, second Material, goalPct float64) (wetKg float64, ok bool) {
	return share(first.WetKg*(first.MoisturePct-goalPct), goalPct-second.MoisturePct)
}

func share(lacks, perKg float64) (float64, bool) {
	if lacks == 0 {
		return 0, true
	}
	if perKg == 0 || lacks/perKg < 0 {
		return 0, false
	}
	return lacks / perKg, true
}
