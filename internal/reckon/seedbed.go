package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// What the soil's daily mean at seed depth lies from the mean of breakfast or
// of the afternoon: common practice says about 5 °C in bare open ground. Past
// these a thermometer at that hour has nothing to decide. Ours.
const (
	coldLookC = 7.0 // above the least: no breakfast is too cold
	hotLookC  = 6.0 // below the most: some afternoon is too hot
)

// soilWeekC is the likely soil at seed depth in a space in the seven days from
// a day, °C, mean over the futures; false where they do not reach.
func soilWeekC(e *stand.Env, from cal.Day) (float64, bool) {
	sum, n := 0.0, 0
	for _, f := range e.Futures {
		to := min(int(from-f.Start)+7, len(f.Days))
		if to < 1 {
			continue
		}
		soil := weather.SoilC(f.Days[:to], f.Start.YearDay(), e.Site)
		for _, c := range soil[max(0, to-7):] {
			sum, n = sum+c+e.WarmC, n+1
		}
	}
	return sum / float64(max(n, 1)), n > 0
}

// seedbedLook is what to look at before seed goes into the ground: the side on
// which this week's soil may be wrong for it, else the ground.
func seedbedLook(c *crop.Crop, soilC float64, known bool) string {
	switch {
	case known && c.SoilMax.Known() && soilC > c.SoilMax.Value-hotLookC:
		return fmt.Sprintf("Push a thermometer to seed depth in mid-afternoon: above about %.0f °C little comes up. Water and shade cool it.", c.SoilMax.Value)
	case known && soilC > c.SoilMin.Value+coldLookC:
		return "Is the ground crumbly, and damp a knuckle deep?"
	}
	return fmt.Sprintf("Push a thermometer to seed depth at breakfast: %.0f °C or more is wanted.", c.SoilMin.Value)
}
