package crop

// goodShare is the share of sound seed that comes up in its good range when
// no table tells: common practice for fresh seed in a garden.
const goodShare = 0.85

// EmergePct gives the percent of seed that comes up as normal seedlings at a
// constant soil temperature, and whether that is known. It is known at a row
// of the crop's own table, between two neighbouring rows, and as 0 beyond the
// tested span where the book's minimum or maximum rules emergence out (one that
// the table itself belies rules nothing out). A gap in the table, or a table
// borrowed from a near relation, is not known.
func (c *Crop) EmergePct(soilC float64) (pct float64, known bool) {
	g := c.Germ
	if len(g) == 0 || !c.GermOwn {
		return 0, false
	}
	first, last := g[0], g[len(g)-1]
	switch {
	case soilC < first.SoilC:
		return 0, first.HasPct && first.Pct == 0 ||
			c.SoilMin.Known() && c.SoilMin.Low <= first.SoilC && soilC < c.SoilMin.Low
	case soilC > last.SoilC:
		return 0, last.HasPct && last.Pct == 0 ||
			c.SoilMax.Known() && c.SoilMax.High >= last.SoilC && soilC > c.SoilMax.High
	}
	const step = 5.0 // °C between neighbouring rows of the table
	for i, p := range g {
		if p.SoilC == soilC {
			return p.Pct, p.HasPct
		}
		if p.SoilC > soilC {
			q := g[i-1]
			if !p.HasPct || !q.HasPct || p.SoilC-q.SoilC > step {
				return 0, false
			}
			return between(soilC, q.SoilC, q.Pct, p.SoilC, p.Pct), true
		}
	}
	return 0, false
}

// EmergeShare is EmergePct as a share from 0 to 1 with every gap filled, for
// a reckoning that cannot stop at the unknown: straight across gaps, falling
// to nothing at the ends EmergeSpan gives, from a relation's table where the
// crop has none, and without any table a plateau of goodShare over the good
// range of the soil.
func (c *Crop) EmergeShare(soilC float64) float64 {
	lo, hi, ok := c.EmergeSpan()
	if !ok || soilC < lo || soilC > hi {
		return 0
	}
	knots := make([][2]float64, 0, len(c.Germ)+2)
	for _, p := range c.Germ {
		if p.HasPct && p.SoilC >= lo && p.SoilC <= hi {
			knots = append(knots, [2]float64{p.SoilC, p.Pct / 100})
		}
	}
	if len(knots) == 0 {
		knots = append(knots, [2]float64{max(lo, c.SoilOpt.Low), goodShare}, [2]float64{min(hi, c.SoilOpt.High), goodShare})
	}
	return through(soilC, lo, hi, knots)
}

// EmergeRate is the progress to emergence in one day at a soil temperature, in
// 1/days: emergence comes when the sum reaches 1. It is 0 outside EmergeSpan.
// Between rows of the table the rate, not the days, runs straight. The table
// is of watered seed in a laboratory; cold field soil is slower still.
func (c *Crop) EmergeRate(soilC float64) float64 {
	lo, hi, ok := c.EmergeSpan()
	if !ok || soilC < lo || soilC > hi {
		return 0
	}
	knots := make([][2]float64, 0, len(c.Germ)+2)
	for _, p := range c.Germ {
		if p.HasDays {
			knots = append(knots, [2]float64{p.SoilC, 1 / p.Days})
		}
	}
	if len(knots) == 0 {
		knots = c.knotsOfRange(lo, hi)
	}
	if len(knots) == 0 {
		return 0
	}
	return through(soilC, lo, hi, knots)
}

// knotsOfRange stands in for a table: quickest at the optimum, slowest at the
// two ends of the good range.
func (c *Crop) knotsOfRange(lo, hi float64) [][2]float64 {
	d, o := c.EmergeDays, c.SoilOpt
	if !d.Known() || d.Low <= 0 {
		return nil
	}
	var out [][2]float64
	for _, k := range [][2]float64{{o.Low, 1 / d.High}, {o.Value, 1 / d.Low}, {o.High, 1 / d.High}} {
		inside := k[0] > lo && k[0] < hi
		if n := len(out); inside && (n == 0 || k[0] > out[n-1][0]) {
			out = append(out, k)
		}
	}
	return out
}

// EmergeDaysAt is the days to emergence at a constant soil temperature; false
// when it never comes. It fills gaps as EmergeRate does.
func (c *Crop) EmergeDaysAt(soilC float64) (days float64, ok bool) {
	const slowest = 1.0 / 400 // a seed not up in a year is not coming up
	if r := c.EmergeRate(soilC); r > slowest {
		return 1 / r, true
	}
	return 0, false
}

// EmergeSpan gives the soil temperatures between which seed comes up at all.
// With a table: from the base of the line fitted to its rising rates, kept
// between the last row that failed (or the book's minimum where colder soil was
// not tested) and the coldest row that came up; to the first failing row above
// (or, where hotter was not tested, the book's maximum if it lies well beyond
// the hottest row, else one step beyond that row).
// Without a table: the book's minimum and maximum.
func (c *Crop) EmergeSpan() (lo, hi float64, ok bool) {
	first, last := -1, -1
	for i, p := range c.Germ {
		if p.HasDays {
			if first < 0 {
				first = i
			}
			last = i
		}
	}
	if first < 0 {
		return c.SoilMin.Value, c.SoilMax.Value, c.SoilMin.Known() && c.SoilMax.Known()
	}
	const step = 5.0 // °C, one row
	cold, hot := c.Germ[first].SoilC, c.Germ[last].SoilC
	lo = c.risingBase(first, last)
	switch {
	case first > 0 && c.Germ[first-1].None:
		lo = max(lo, c.Germ[first-1].SoilC)
	case c.SoilMin.Known():
		lo = max(lo, c.SoilMin.Value)
	default:
		lo = max(lo, cold-step)
	}
	lo = min(lo, cold)
	hi = hot + step
	switch {
	case last+1 < len(c.Germ) && c.Germ[last+1].None:
		hi = c.Germ[last+1].SoilC
	case c.SoilMax.Known() && c.SoilMax.Value > hot+step/2:
		hi = c.SoilMax.Value
	}
	return lo, hi, true
}

// risingBase is the base of the line through the rows up to the fastest. With
// one row only it is far below, so that the other limits decide.
func (c *Crop) risingBase(first, last int) float64 {
	best := first
	for i := first; i <= last; i++ {
		if c.Germ[i].HasDays && c.Germ[i].Days < c.Germ[best].Days {
			best = i
		}
	}
	var soil, days []float64
	for _, p := range c.Germ[first : best+1] {
		if p.HasDays {
			soil, days = append(soil, p.SoilC), append(days, p.Days)
		}
	}
	if f, ok := FitThermal(soil, days); ok {
		return f.BaseC
	}
	return -100
}

// through runs straight from nothing at lo through the knots, by rising x, to
// nothing at hi.
func through(x, lo, hi float64, knots [][2]float64) float64 {
	x0, y0 := lo, 0.0
	for _, k := range knots {
		if x == k[0] {
			return k[1]
		}
		if x < k[0] {
			return between(x, x0, y0, k[0], k[1])
		}
		x0, y0 = k[0], k[1]
	}
	return between(x, x0, y0, hi, 0)
}

// between is the straight line from (x0, y0) to (x1, y1), never below 0.
func between(x, x0, y0, x1, y1 float64) float64 {
	if x1 <= x0 {
		return y1
	}
	return max(0, y0+(y1-y0)*(x-x0)/(x1-x0))
}
