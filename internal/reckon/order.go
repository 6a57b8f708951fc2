package reckon

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	seeds "bedweek/internal/chance"
	"bedweek/internal/crop"
)

// Order is what must be got for the plan: seeds, sets and young plants. Shops
// and prices are not known here and not guessed.
type Order struct {
	Rows  []OrderRow // what must be bought first, by the day it is needed
	Words string
	Notes []string // how the numbers were made
}

// OrderRow is one crop of the order.
type OrderRow struct {
	Crop, CropID string
	Varieties    string  // in the tin, "" = any
	Sort         string  // "seeds", else what is planted: "tubers", "sets or cloves", "young plants"
	Plants       int     // wanted over the plan
	Least, Most  int     // to have, so that nine times in ten enough come up: best and worst seed
	Tin          string  // what is at hand, in words; "" = none
	Have         int     // seeds at hand; -1 = plenty, no count
	Buy          int     // to buy by the worst seed, 0 = none
	By           cal.Day // of the first start the tin does not serve; of the first at all when it serves them all
	Starts       []OrderStart
	Test         bool // old enough to be tested first
}

// OrderStart is one sowing or planting the order serves.
type OrderStart struct {
	On          cal.Day // the pot is filled, or the row sown
	Verb        string
	Plants      int
	Least, Most int
	Space       string
}

// What part of the seed comes up. The best is the book's table at the crop's
// good soil; the worst takes off for tired seed and, outdoors, for weather,
// slugs and crust. The shares taken off are common practice, no source.
const (
	orderSure    = 0.9
	tiredShare   = 0.85 // of the table, on the shelf
	outdoorShare = 0.6  // of the table, sown outdoors
	soundShare   = 0.85 // where no table tells: fresh seed in a garden
	oldSeed      = 3    // years from which a test comes first
)

// orderOf lists what the plan asks for.
func (r *Result) orderOf() *Order {
	rows := map[string]*OrderRow{}
	for _, b := range r.orderBatches() {
		c := b.crop
		row := rows[string(c.ID)]
		if row == nil {
			row = &OrderRow{Crop: c.Name, CropID: string(c.ID), Sort: "seeds", By: b.on}
			rows[row.CropID] = row
		}
		s := OrderStart{On: b.on, Verb: b.verb, Plants: b.plants, Space: b.space, Least: b.plants, Most: b.plants}
		if b.way == crop.Plant {
			row.Sort = plantedAs(c)
		} else {
			best := comesUp(c)
			worst := best * tiredShare
			if b.way == crop.Sow {
				worst = best * outdoorShare
			}
			s.Least = seedsFor(b.plants, best)
			s.Most = seedsFor(b.plants, worst)
		}
		row.Plants += s.Plants
		row.Least += s.Least
		row.Most += s.Most
		row.By = min(row.By, b.on)
		row.Starts = append(row.Starts, s)
	}
	o := &Order{}
	for _, row := range rows {
		sort.SliceStable(row.Starts, func(a, b int) bool { return row.Starts[a].On < row.Starts[b].On })
		r.fromTin(row)
		o.Rows = append(o.Rows, *row)
	}
	sort.Slice(o.Rows, func(a, b int) bool {
		x, y := o.Rows[a], o.Rows[b]
		if (x.Buy > 0) != (y.Buy > 0) {
			return x.Buy > 0
		}
		if x.By != y.By {
			return x.By < y.By
		}
		return x.CropID < y.CropID
	})
	buy := 0
	for _, row := range o.Rows {
		if row.Buy > 0 {
			buy++
		}
	}
	switch {
	case len(o.Rows) == 0:
		o.Words = "The plan sows and plants nothing new. Nothing is to be bought."
	case buy == 0:
		o.Words = "All that the plan sows is in the tin."
	default:
		o.Words = fmt.Sprintf("To buy for %d of %d crops, the first by %s.", buy, len(o.Rows), o.Rows[0].By.Short())
	}
	o.Notes = []string{
		"Two numbers: for seed as good as the book's table, and for tired seed in rough weather. Each gives enough plants in nine sowings of ten.",
		"Taken off for tired seed: 15 % on the shelf, 40 % outdoors. That is common practice, not measured; your own test tells better.",
		"The tin is as you last described it. Prices and shops are not known here.",
	}
	return o
}

// plantedAs names what is bought of a crop that is not sown.
func plantedAs(c *crop.Crop) string {
	switch c.Class {
	case "tuber":
		return "tubers"
	case "bulb":
		return "sets or cloves"
	}
	return "young plants"
}

// orderBatch is one start of the plan that needs seed.
type orderBatch struct {
	crop   *crop.Crop
	way    crop.Way
	on     cal.Day
	verb   string
	plants int
	space  string
}

// orderBatches lists the plan's starts, without those from pots that stand.
func (r *Result) orderBatches() []orderBatch {
	m := r.model
	at := map[string]int{}
	var out []orderBatch
	for _, pl := range r.Plan.Plantings {
		o := m.p.Options[pl.Option]
		e := m.entries[m.entry[pl.Option]]
		if e.Way == crop.SetOut && o.ShelfFrom == noShelf {
			continue // from a tray that is there
		}
		b := orderBatch{crop: e.Crop, way: e.Way, on: e.Day, verb: "sow", plants: pl.Plants, space: spaceName(r.in.Garden.Spaces[m.spaces[o.Space]])}
		switch e.Way {
		case crop.SetOut:
			b.on, b.verb = max(r.in.Date, e.Day-cal.Day(7*e.Growth.ShelfWeeks)), "sow on the shelf"
		case crop.Plant:
			b.verb = "plant"
		}
		key := fmt.Sprint(e.Crop.ID, e.Way, e.Week, o.Space)
		if i, ok := at[key]; ok {
			out[i].plants += pl.Plants
			continue
		}
		at[key] = len(out)
		out = append(out, b)
	}
	return out
}

// comesUp is the share of sound seed that comes up at the crop's good soil.
func comesUp(c *crop.Crop) float64 {
	if c.SoilOpt.Known() {
		if s := c.EmergeShare(c.SoilOpt.Value); s > 0 {
			return math.Min(s, 0.98)
		}
	}
	return soundShare
}

// seedsFor is the least number of seeds for so many plants, nine times in ten.
func seedsFor(plants int, share float64) int {
	n, ok := seeds.SeedsNeeded(share, plants, orderSure)
	if !ok {
		return 2 * plants
	}
	return n
}

// fromTin takes what is at hand off the order.
func (r *Result) fromTin(row *OrderRow) {
	var names, said []string
	for _, s := range r.in.Garden.Seeds {
		if string(s.Crop) != row.CropID {
			continue
		}
		words := "plenty"
		if s.Count > 0 {
			words = fmt.Sprintf("about %d", s.Count)
			if row.Have >= 0 {
				row.Have += s.Count
			}
		} else {
			row.Have = -1
		}
		if s.Year > 0 {
			words += fmt.Sprintf(", packed for %d", s.Year)
			y, _, _ := r.in.Date.Date()
			row.Test = row.Test || y-s.Year >= oldSeed
		}
		if s.Variety != "" {
			names = append(names, s.Variety)
			words = s.Variety + ": " + words
		}
		said = append(said, words)
	}
	row.Varieties, row.Tin = list(names), list(said)
	if row.Have >= 0 {
		row.Buy = max(0, row.Most-row.Have)
	}
	// What the tin serves first need not be bought for.
	left := row.Have
	for _, s := range row.Starts {
		if row.Buy > 0 && s.Most > left {
			row.By = s.On
			break
		}
		left -= s.Most
	}
}
