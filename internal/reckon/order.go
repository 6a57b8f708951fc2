package reckon

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Order is what the plan starts from seeds, sets and young plants. What the
// tin has of it is names.Desk.Supply. Shops and prices are not known here and
// not guessed.
type Order struct {
	Rows []OrderRow // by the day of the first start
}

// OrderRow is one crop of the order.
type OrderRow struct {
	Crop, CropID string
	Sort         string  // "seeds", else what is planted: "tubers", "sets or cloves", "young plants"
	Plants       int     // wanted over the plan
	By           cal.Day // of the first start
	Starts       []OrderStart
}

// OrderStart is one sowing or planting the order serves.
type OrderStart struct {
	On       cal.Day // the pot is filled, or the row sown
	Verb     string
	Plants   int
	Outdoors bool // seed sown in its place: slugs, crust and weather take some
	Space    string
}

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
		s := OrderStart{On: b.on, Verb: b.verb, Plants: b.plants, Space: b.space, Outdoors: b.way == crop.Sow}
		if b.way == crop.Plant {
			row.Sort = plantedAs(c)
		}
		row.Plants += s.Plants
		row.By = min(row.By, b.on)
		row.Starts = append(row.Starts, s)
	}
	o := &Order{}
	for _, row := range rows {
		sort.SliceStable(row.Starts, func(a, b int) bool { return row.Starts[a].On < row.Starts[b].On })
		o.Rows = append(o.Rows, *row)
	}
	sort.Slice(o.Rows, func(a, b int) bool {
		x, y := o.Rows[a], o.Rows[b]
		if x.By != y.By {
			return x.By < y.By
		}
		return x.CropID < y.CropID
	})
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
		if isTray(o) {
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
