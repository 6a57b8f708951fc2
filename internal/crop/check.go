package crop

import (
	"fmt"
	"slices"
)

// gaps says what a crop lacks to be planned, or holds against itself, each in
// a few words. An empty answer means the crop is whole.
func gaps(c *Crop) []string {
	var out []string
	need := func(ok bool, what string) {
		if !ok {
			out = append(out, what)
		}
	}
	needed := func(f Figure, key string) { need(f.Known(), "needs "+key) }

	need(c.Name != "", "needs name")
	need(c.Latin != "", "needs latin")
	need(c.Family != "", "needs family")
	need(c.Class != "", "needs class")
	need(c.Hardiness != "", "needs hardiness")
	need(c.Habit != "", "needs habit")
	need(c.Harvest != "", "needs harvest")
	need(len(c.Ways) > 0, "needs ways")
	need(c.BatchMax > 0, "needs batch")
	for _, k := range []struct {
		f   Figure
		key string
	}{
		{c.BaseC, "base"}, {c.OptC, "opt"}, {c.CeilC, "ceil"},
		{c.SpacingM, "spacing-m"}, {c.SpreadM, "spread-m"}, {c.HeightM, "height-m"},
		{c.MinDepthM, "min-depth-m"}, {c.VolumeL, "volume-l"}, {c.HarvestDays, "harvest-days"},
		{c.SunMinH, "sun-min-h"}, {c.SunBestH, "sun-best-h"}, {c.DLIMin, "dli-min"}, {c.DLIBest, "dli-best"},
		{c.FrostSeedling, "frost-seedling"}, {c.FrostKill, "frost-kill"}, {c.IntervalY, "interval-years"},
	} {
		needed(k.f, k.key)
	}
	if c.Harvest == Bloom {
		need(len(c.Foods) == 0, "is grown for bloom, so it serves no food")
	} else {
		needed(c.YieldKg, "yield-kg")
		needed(c.ShelfDays, "shelf-days")
		need(c.MealKg > 0, "needs meal-kg")
		need(len(c.Foods) > 0, "needs foods")
	}
	if c.BearDays.Known() != (c.Perennial && (c.FirstYears.Known() || c.BearDays.Known())) {
		out = append(out, "first-years and bear-days are for perennials that bear once a year")
	}
	if c.Harvest == Once {
		needed(c.HoldDays, "hold-days")
	}
	if c.Warm {
		needed(c.ChillC, "chill")
	}
	out = append(out, wayGaps(c)...)
	return append(out, orderGaps(c)...)
}

// wayGaps looks at what each way of starting must know.
func wayGaps(c *Crop) []string {
	var out []string
	for _, w := range c.Ways {
		for _, k := range []struct {
			ways []Way
			f    Figure
			key  string
		}{
			{[]Way{Sow}, c.DaysFromSow, "days-from-sow"},
			{[]Way{SetOut, Plant}, c.DaysFromSet, "days-from-set"},
			{[]Way{SetOut}, c.NurseryWeeks, "nursery-weeks"},
			{[]Way{SetOut, Plant}, c.SetNightMin, "set-night-min"},
			{[]Way{SetOut, Plant}, c.SetSoilMin, "set-soil-min"},
			{[]Way{Sow, SetOut}, c.SoilMin, "soil-min"},
			{[]Way{Sow, SetOut}, c.SoilOpt, "soil-opt"},
			{[]Way{Sow, SetOut}, c.SoilMax, "soil-max"},
			{[]Way{Sow, SetOut}, c.SowDepthMM, "sow-depth-mm"},
		} {
			if slices.Contains(k.ways, w) && !k.f.Known() {
				out = append(out, fmt.Sprintf("may be started by %q but gives no %s", string(w), k.key))
			}
		}
		if w != Plant && len(c.Germ) == 0 && !c.EmergeDays.Known() {
			out = append(out, "needs an emergence table or emerge-days")
		}
	}
	return out
}

// orderGaps looks at figures that must stand in order.
func orderGaps(c *Crop) []string {
	var out []string
	for _, p := range []struct {
		a, b Figure
		what string
	}{
		{c.BaseC, c.OptC, "base must be below opt"},
		{c.OptC, c.CeilC, "opt must be below ceil"},
		{c.SoilMin, c.SoilOpt, "soil-min must be below soil-opt"},
		{c.SoilOpt, c.SoilMax, "soil-opt must be below soil-max"},
		{c.FruitMinNight, c.FruitMaxNight, "fruit-min-night must be below fruit-max-night"},
		{c.FruitMaxNight, c.FruitMaxDay, "fruit-max-night must be below fruit-max-day"},
	} {
		if p.a.Known() && p.b.Known() && p.a.Value >= p.b.Value {
			out = append(out, p.what)
		}
	}
	if c.SunMinH.Value > c.SunBestH.Value {
		out = append(out, "sun-min-h must not be above sun-best-h")
	}
	if c.DLIMin.Value > c.DLIBest.Value {
		out = append(out, "dli-min must not be above dli-best")
	}
	if c.BaseC.Known() && c.CeilC.Known() && (c.RefC <= c.BaseC.Value || c.RefC >= c.CeilC.Value) {
		out = append(out, "ref must lie between base and ceil")
	}
	if v := c.VernMaxC.Known(); v != c.VernDays.Known() || v != c.VernLeaves.Known() {
		out = append(out, "vern-max, vern-days and vern-leaves stand together")
	}
	if c.ColdDays.Known() != c.ColdMaxC.Known() {
		out = append(out, "cold-days and cold-max stand together")
	}
	if c.Block > 0 && c.BatchMax > 0 && c.BatchMin < c.Block {
		out = append(out, "the smallest batch must fill the block")
	}
	return out
}
