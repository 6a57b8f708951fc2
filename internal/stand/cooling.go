package stand

import (
	"time"

	"bedweek/internal/crop"
)

// ShadeCoolsC is by how much the day's highest that leaves meet falls where all
// light from noon to five is taken, °C; in part shade, in proportion. Shade
// cloth of 30 to 50 % cools the air by 1 to 5 °C, less where wind goes through,
// and leaves and soil more (common practice, from memory). We take 2 °C at
// 40 %, the lower half, since a row of plants or a wall stands in the wind.
// Printed limits of heat hold for the open field.
const ShadeCoolsC = 5.0

// shadeC is by how much the space's own shade cools the highs of a month, 0 =
// January. A lamp shelf has none.
func (e *Env) shadeC(month int) float64 {
	if e.Indoor {
		return 0
	}
	return ShadeCoolsC * clamp01(e.HotShade[month])
}

// Bearable is the share of a month's days in the plan, over all futures, on
// which heat would neither spoil what c is grown for nor kill it, were the
// space's highs cooler by some °C: the rules that growth follows. It is 1 for
// crops that heat does not spoil, and for a month the plan does not reach.
func (a *Air) Bearable(c *crop.Crop, month time.Month, coolerC float64) float64 {
	if !spoiledByHeat(c) || a.env.Indoor {
		return 1
	}
	cooler, limit, kills := float32(coolerC), float32(c.HeatC.Value), hottestMonth(c)
	if c.Warm || c.Perennial {
		kills = 1e6
	}
	good, all := 0, 0
	for i := a.at(a.env.Start); i < min(a.n, a.at(a.env.Start)+7*a.env.Weeks); i++ {
		if i < 0 || int(a.months[i]) != int(month)-1 {
			continue
		}
		for f := range a.k {
			all++
			if at := f*a.n + i; a.warm14[at]-cooler <= limit && a.mean28[at]-cooler/2 <= kills {
				good++
			}
		}
	}
	if all == 0 {
		return 1
	}
	return float64(good) / float64(all)
}
