package crop

import "math"

// Pollinated is the share of its grain that a wind-pollinated crop (one with a
// Block) sets with so many plants standing together in so many rows: little
// alone, nearly all in a block. Rows below 1 count as the squarest block. A crop
// without a Block answers 1.
//
// Growers' rule: four short rows rather than one long one, a dozen plants or
// more (common practice). The curve between is an assumption: a plant alone
// fills a tenth of its ear; each third of a block takes the gap down to 1/e.
func (c *Crop) Pollinated(plants, rows int) float64 {
	const (
		alone  = 0.1
		oneRow = 0.6 // of the share, in a single row: most pollen blows past
		full   = 4   // rows from which wind of any quarter serves
	)
	if c.Block <= 0 {
		return 1
	}
	if plants <= 0 {
		return 0
	}
	third := float64(c.Block) / 3
	share := alone + (1-alone)*(1-math.Exp(-float64(plants-1)/third))
	if rows < 1 {
		rows = int(math.Round(math.Sqrt(float64(plants))))
	}
	wide := oneRow + (1-oneRow)*float64(min(rows, full)-1)/(full-1)
	if plants < full { // too few for rows to matter
		wide = 1
	}
	return share * wide
}
