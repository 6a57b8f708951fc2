package stand

import (
	"hash/fnv"
	"math"

	"bedweek/internal/crop"
)

// Limits of what a future may believe of a crop beside the book's value.
const (
	tenthZ    = 1.2816 // standard normal at 90 %
	mostZ     = 1.6449 // draws stay within nine in ten
	leastDays = 0.88   // a gardener's one variety differs less than all varieties do
	mostDays  = 1.15
	daysDoubt = 0.05 // doubt where the book gives no spread
	yieldLow  = 0.5
	yieldHigh = 1.6
	yieldBelt = 0.25
	emergeSD  = 0.08
	coldSDC   = 0.8 // °C doubt of a frost limit
)

// Worlds draws what n futures believe of a crop: factors on its days, yield
// and emergence and an offset of its cold limits. The ends of the published
// spread count as its 10 and 90 % points. Draws are spread evenly
// (Kronecker sequences), so that twenty cover the range; future k is the same
// whatever n is.
func Worlds(c *crop.Crop, n int, seed uint64) []World {
	out := make([]World, n)
	h := fnv.New64a()
	h.Write([]byte(c.ID))
	start := h.Sum64() ^ seed*0x9e3779b97f4a7c15
	days := c.DaysFromSow
	if days.Value == 0 {
		days = c.DaysFromSet
	}
	for k := range out {
		z := draw(start, k)
		out[k] = World{
			Days:   clamp(spread(days, z[0], daysDoubt), leastDays, mostDays),
			Yield:  clamp(spread(c.YieldKg, z[1], yieldBelt), yieldLow, yieldHigh),
			Emerge: clamp(1+emergeSD*z[2], 0.8, 1.2),
			ColdC:  coldSDC * z[3],
		}
	}
	return out
}

func clamp(x, lo, hi float64) float64 { return math.Max(lo, math.Min(hi, x)) }

// spread turns a standard normal draw into a factor on f's value.
func spread(f crop.Figure, z, doubt float64) float64 {
	if f.Value <= 0 {
		return 1
	}
	low, high := f.Value*(1-doubt), f.Value*(1+doubt)
	if f.Low > 0 && f.Low < f.Value {
		low = f.Low
	}
	if f.High > f.Value {
		high = f.High
	}
	if z < 0 {
		return 1 + z/tenthZ*(1-low/f.Value)
	}
	return 1 + z/tenthZ*(high/f.Value-1)
}

// draw gives four standard normal numbers for future k: steps of badly
// approximable irrationals (golden, silver, bronze and the root of three),
// each from its own start.
func draw(start uint64, k int) [4]float64 {
	steps := [4]float64{0.6180339887498949, 0.41421356237309515, 0.30277563773199456, 0.7320508075688772}
	var z [4]float64
	for d := range z {
		start = start*6364136223846793005 + 1442695040888963407
		u := float64(start>>11)/(1<<53) + float64(k+1)*steps[d]
		u -= math.Floor(u)
		z[d] = clamp(math.Sqrt2*math.Erfinv(2*clamp(u, 1e-6, 1-1e-6)-1), -mostZ, mostZ)
	}
	return z
}

// Middle returns the world that believes the book's values.
func Middle() World { return World{Days: 1, Yield: 1, Emerge: 1} }
