package season

import (
	"cmp"
	"fmt"
	"slices"
)

// merged sums entries of the same row, in the order of the rows.
func merged(in []mpsEntry) []mpsEntry {
	slices.SortStableFunc(in, func(a, b mpsEntry) int { return cmp.Compare(a.row, b.row) })
	out := in[:0]
	for _, x := range in {
		if n := len(out); n > 0 && out[n-1].row == x.row {
			out[n-1].x += x.x
		} else {
			out = append(out, x)
		}
	}
	return out
}

// lineage is a family in a batch of medium.
type lineage struct{ batch, family int }

// rotation charges early returns. left.* is 1 when the family leaves the batch
// in a week; early.* when it left within an interval before a week; back.* are
// the plants of an option that pay.
func (f *mps) rotation() {
	e, p := f.e, f.p
	left := map[lineage]map[int]int{} // by week
	leave := func(key lineage, w, col int) {
		if left[key] == nil {
			left[key] = map[int]int{}
		}
		name := fmt.Sprintf("%s.f%d.w%02d", mpsName(p.Batches[key.batch].ID), key.family, w)
		if _, ok := left[key][w]; !ok {
			left[key][w] = f.addCol(false, 1, 0, "left.%s", name)
		}
		row := f.addRow('G', 0, "leaves.%s.%s", name, f.cols[col].name)
		f.put(row, left[key][w], 1)
		f.put(row, col, -1)
	}
	of := func(space, family int) (lineage, bool) {
		b := p.Spaces[space].Batch
		return lineage{b, family}, b >= 0 && family >= 0
	}
	for i := range e.opts {
		if key, ok := of(p.Options[i].Space, p.Options[i].Family); ok && f.y[i] >= 0 {
			leave(key, p.Options[i].End, f.y[i])
		}
	}
	for i := range e.stays {
		if key, ok := of(p.Stays[i].Space, p.Stays[i].Family); ok {
			for w := e.stays[i].first; w <= e.stays[i].last; w++ {
				leave(key, w, f.pull[i][w-e.stays[i].first])
			}
		}
	}
	early := map[string]int{}
	for i := range e.opts {
		o, src := &e.opts[i], &p.Options[i]
		key, ok := of(src.Space, src.Family)
		if !ok || f.y[i] < 0 || o.returning == 0 {
			continue
		}
		name := fmt.Sprintf("%s.f%d.i%d.w%02d", mpsName(p.Batches[key.batch].ID), key.family, src.Interval, src.Week)
		if _, known := early[name]; !known {
			early[name] = -1
			for w := max(-1, src.Week-src.Interval); w < src.Week; w++ {
				if col, some := left[key][w]; some {
					if early[name] < 0 {
						early[name] = f.addCol(false, 1, 0, "early.%s", name)
					}
					row := f.addRow('G', 0, "soon.%s.w%02d", name, w)
					f.put(row, early[name], 1)
					f.put(row, col, -1)
				}
			}
		}
		if early[name] < 0 {
			continue
		}
		most := float64(min(max(o.max, o.locked), o.atRisk))
		row := f.addRow('L', most, "back.%s", mpsName(src.ID))
		f.put(row, f.lost[i], 1)
		f.put(row, early[name], most)
		f.put(row, f.addCol(false, -1, o.returning, "pays.%s", mpsName(src.ID)), -1)
	}
}

// clearing charges weeks in which more than ClearMax spaces are cleared: where
// something has its last week and nothing stands on.
func (f *mps) clearing() {
	e, p := f.e, f.p
	if p.ClearMax <= 0 || p.RestCost == 0 {
		return
	}
	for w := -1; w < e.weeks-1; w++ {
		total := f.addRow('L', float64(p.ClearMax), "clear.w%02d", w)
		f.put(total, f.addCol(false, -1, p.RestCost, "rest.w%02d", w), -1)
		for si := range p.Spaces {
			var leaving []int
			var on []int // options that stand on
			for i := range e.opts {
				o := &p.Options[i]
				switch {
				case o.Space != si || f.y[i] < 0:
				case o.End == w:
					leaving = append(leaving, f.y[i])
				case o.Week <= w && w < o.End:
					on = append(on, f.y[i])
				}
			}
			for i := range e.stays {
				if s := &e.stays[i]; s.space == si && w >= s.first && w <= s.last {
					leaving = append(leaving, f.pull[i][w-s.first])
				}
			}
			if len(leaving) == 0 {
				continue
			}
			name := fmt.Sprintf("%s.w%02d", mpsName(p.Spaces[si].ID), w)
			cleared := f.addCol(false, 1, 0, "cleared.%s", name)
			stands := f.addCol(false, -1, 0, "stands.%s", name)
			f.put(total, cleared, 1)
			sum := f.addRow('E', 0, "standson.%s", name)
			f.put(sum, stands, -1)
			for _, col := range on {
				f.put(sum, col, 1)
			}
			for i := range e.stays {
				if e.stays[i].space == si {
					f.stands(sum, i, w+1, 1)
				}
			}
			for _, col := range leaving {
				row := f.addRow('G', 0, "clears.%s.%s", name, f.cols[col].name)
				f.put(row, cleared, 1)
				f.put(row, stands, 1)
				f.put(row, col, -1)
			}
		}
	}
}
