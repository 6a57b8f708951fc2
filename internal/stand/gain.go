package stand

import (
	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Gains reports whether a start of one way is worth making now and not some
// days later: the later one is picked later by a share of the wait, gives
// less or succeeds less often. It is the rule by which a window ends with
// "waiting costs nothing", asked of two starts already grown, and more mildly
// where days are ten hours and more. What is planted for years, or in autumn to
// stand the winter, always gains. What a start loses that lies in the cold and
// wet of the dark weeks is not in the counts, so there the later one may
// succeed less often and give less by a quarter.
func (t *Table) Gains(way crop.Way, day cal.Day, sooner, later Growth, days int) bool {
	co := t.course(way)
	if co == nil || co.lasting || t.Crop.AutumnPlant || sooner.FirstPick.None() || later.FirstPick.None() {
		return true
	}
	slack, least, share := len(sooner.Outcomes)/10, gainDelay, gainYield
	if t.Dark(day) {
		slack, least, share = len(sooner.Outcomes)/4, float64(gainLeast)/gainStep, darkYield
	}
	delay := float64(later.FirstPick.Likely - sooner.FirstPick.Likely)
	return delay >= least*float64(days) ||
		later.Success < sooner.Success-slack ||
		later.total() < share*sooner.total() && t.yieldTells(co, sooner.FirstPick.Likely)
}

const (
	gainDelay = 0.25 // days the pick comes later for each day of waiting
	darkYield = 0.75 // of a start's yield that a later one must give where the sooner lies in the dark weeks
)

// total is what a plant gives in all, kg, mean over the futures.
func (g Growth) total() float64 {
	sum := 0.0
	for _, o := range g.Outcomes {
		sum += float64(o.Total)
	}
	return sum / float64(max(len(g.Outcomes), 1))
}

// darkH is the day under which winter crops stand still (common practice: the
// ten-hour season).
const darkH = 10.0

// Dark reports a day of under ten hours.
func (t *Table) Dark(d cal.Day) bool {
	i := t.air.at(d)
	return i >= 0 && i < len(t.air.dayH) && t.air.dayH[i] < darkH
}
