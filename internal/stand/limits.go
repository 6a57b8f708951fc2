package stand

import (
	"math"

	"bedweek/internal/crop"
)

// measure finds the place's quickest start and best yield for a course by
// trying a start a week through a year in a few futures, and sets from them
// what still counts as success (growth.md, "which window matches practice").
func (t *Table) measure(co *course) {
	c := t.Crop
	co.limit = math.MaxInt32
	co.floorKg = 0
	days := usualDays(c, co.way)
	book := math.Max(days.Value, days.High)
	quick, best := math.MaxInt32, float32(0)
	scratch := tally{flow: make([]float32, t.air.n), wait: waitDays}
	first := t.air.at(t.air.env.Start)
	for i := first; i < min(first+365, t.air.n); i += 7 {
		slow, kg, n := 0, float32(0), 0
		for f := 0; f < min(tried, t.air.k); f++ {
			p := t.run(co, f, i, false, &scratch, nil)
			kg += p.total / float32(t.world(f).Yield)
			if p.first >= 0 {
				slow += p.first - i
				n++
			}
		}
		if n > 0 {
			quick = min(quick, slow/n)
		}
		best = max(best, kg/float32(min(tried, t.air.k)))
	}
	co.bestKg = best
	if quick < math.MaxInt32 {
		co.quick = quick
	}
	co.limit = int(dueFactor * math.Max(book, float64(co.quick)))
	if c.Winter || c.AutumnPlant || co.ripe == byForm || co.ripe == byWinter {
		co.limit = max(co.limit, int(book)+winterDays)
	}
	if c.AutumnPlant {
		co.limit = autumnLimit
	}
	if co.ripe == byTime { // late flowers are flowers
		co.limit = max(co.limit, int(book)+lateBloom)
	}
	co.floorKg = floorShare * min(best, float32(c.YieldKg.Value)*t.room)
	co.winterKg = co.floorKg
	if c.Winter && c.Harvest == crop.CutAgain {
		co.winterKg *= winterFloor
	}
	co.heatKg = co.floorKg * co.shortPicking(c)
}

const (
	lateBloom   = 30  // days a first flower may be late
	tried       = 4   // futures looked at for the place's best
	winterFloor = 0.8 // of the usual least yield is enough of leaves that stand the winter (common practice)
)

// shortPicking is the share of a plucked leaf crop's yield that its shortest
// printed time of picking gives; 1 for other crops, and for leaves cut whole,
// whose printed yield is of one cutting.
func (co *course) shortPicking(c *crop.Crop) float32 {
	short := c.HarvestDays.Low / c.HarvestDays.Value
	if c.Harvest != crop.CutAgain || c.Perennial || co.pick <= co.goal || short <= 0 || short >= 1 {
		return 1
	}
	first := co.firstCut()
	return first + (1-first)*float32(short)
}

// usualDays is the printed time to the first pick of a way of starting.
func usualDays(c *crop.Crop, way crop.Way) crop.Figure {
	if way == crop.Sow || c.DaysFromSet.Value == 0 {
		return c.DaysFromSow
	}
	return c.DaysFromSet
}
