package season

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"
)

// WriteMPS writes the whole expected-yield model in free MPS, minimising the
// negative value, so that any solver can check a plan's value and bound. It is
// exact: rotation, clearing and room that what stands overfills are in it,
// which the bound relaxes. docs/season.md names its rows and columns.
func WriteMPS(w io.Writer, p *Problem) error {
	f := &mps{e: newExpected(p, 1), p: p, row: map[string]int{}}
	f.plantings()
	f.standing()
	f.limits()
	f.eating()
	f.rotation()
	f.clearing()
	return f.write(w)
}

// WriteSol writes a plan beside its MPS file: the objective it should have and
// each whole-number column that is not 0, one to a line. The other columns
// follow from these.
func WriteSol(w io.Writer, p *Problem, plan *Plan, bound float64) error {
	b := bufio.NewWriter(w)
	fmt.Fprintf(b, "# objective %.9f\n# nothing %.9f\n# bound %.9f\n", -Expect(p, plan), -Expect(p, &Plan{Pull: naturalEnds(p)}), -bound)
	for _, pl := range plan.Plantings {
		id := mpsName(p.Options[pl.Option].ID)
		fmt.Fprintf(b, "start.%s 1\nplants.%s %d\n", id, id, pl.Plants)
	}
	for i, at := range plan.Pull {
		fmt.Fprintf(b, "%s 1\n", pullName(&p.Stays[i], at))
	}
	return b.Flush()
}

// mps gathers the model by columns.
type mps struct {
	e    *expected
	p    *Problem
	row  map[string]int
	rows []mpsRow
	cols []mpsCol
	y, n []int   // columns by option, -1 = never
	lost []int   // the plants that pay for what could be lost, n where that is all
	pull [][]int // columns by stay, from its first pull week
}

type mpsRow struct {
	name string
	kind byte // L, G, E
	rhs  float64
}

type mpsCol struct {
	name  string
	whole bool
	hi    float64 // most, below 0 = none
	fixed bool    // at hi
	cost  float64
	in    []mpsEntry
}

type mpsEntry struct {
	row int
	x   float64
}

func mpsName(s string) string { return strings.Join(strings.Fields(s), "_") }

func pullName(s *Stay, at int) string {
	if at < 0 {
		return "pull." + mpsName(s.ID) + ".before"
	}
	return fmt.Sprintf("pull.%s.w%02d", mpsName(s.ID), at)
}

func (f *mps) addRow(kind byte, rhs float64, format string, a ...any) int {
	name := fmt.Sprintf(format, a...)
	if r, ok := f.row[name]; ok {
		return r
	}
	f.row[name] = len(f.rows)
	f.rows = append(f.rows, mpsRow{name, kind, rhs})
	return len(f.rows) - 1
}

func (f *mps) addCol(whole bool, hi, cost float64, format string, a ...any) int {
	f.cols = append(f.cols, mpsCol{name: fmt.Sprintf(format, a...), whole: whole, hi: hi, cost: cost})
	return len(f.cols) - 1
}

func (f *mps) put(row, col int, x float64) {
	if x != 0 {
		f.cols[col].in = append(f.cols[col].in, mpsEntry{row, x})
	}
}

// plantings makes each option a batch (start, 0 or 1) and its plants.
func (f *mps) plantings() {
	f.y, f.n, f.lost = make([]int, len(f.e.opts)), make([]int, len(f.e.opts)), make([]int, len(f.e.opts))
	for i := range f.e.opts {
		o, id := &f.e.opts[i], mpsName(f.p.Options[i].ID)
		f.y[i], f.n[i] = -1, -1
		if o.min > o.max && o.locked == 0 {
			continue
		}
		f.y[i] = f.addCol(true, 1, -o.fixed, "start.%s", id)
		f.n[i] = f.addCol(true, float64(max(o.max, o.locked)), -o.each, "plants.%s", id)
		most, least := f.addRow('L', 0, "most.%s", id), f.addRow('G', 0, "least.%s", id)
		f.put(most, f.n[i], 1)
		f.put(most, f.y[i], -float64(o.max))
		f.put(least, f.n[i], 1)
		f.put(least, f.y[i], -float64(o.min))
		if o.locked > 0 {
			f.cols[f.y[i]].fixed, f.cols[f.n[i]].fixed = true, true
			f.cols[f.n[i]].hi = float64(o.locked)
		}
		f.atRisk(i, id)
	}
}

// atRisk makes the plants of an option that pay for what could be lost: all, or
// no more than are at risk (lost), where many is 1 once there are more.
func (f *mps) atRisk(i int, id string) {
	o := &f.e.opts[i]
	f.lost[i] = f.n[i]
	if most := max(o.max, o.locked); o.atRisk < most {
		f.lost[i] = f.addCol(false, -1, 0, "lost.%s", id)
		many := f.addCol(true, 1, 0, "many.%s", id)
		few, all := f.addRow('L', 0, "few.%s", id), f.addRow('L', 0, "all.%s", id)
		f.put(few, f.n[i], 1)
		f.put(few, f.lost[i], -1)
		f.put(few, many, -float64(most-o.atRisk))
		f.put(all, many, float64(o.atRisk))
		f.put(all, f.lost[i], -1)
	}
	f.cols[f.lost[i]].cost += o.risk
}

// standing makes each pull week of each stay a choice of one.
func (f *mps) standing() {
	f.pull = make([][]int, len(f.e.stays))
	for i := range f.e.stays {
		s, src := &f.e.stays[i], &f.p.Stays[i]
		one := f.addRow('E', 1, "pulled.%s", mpsName(src.ID))
		for w := s.first; w <= s.last; w++ {
			cost := s.pullCost
			if w == s.last {
				cost = -s.tail
			}
			c := f.addCol(true, 1, cost, "%s", pullName(src, w))
			f.put(one, c, 1)
			f.pull[i] = append(f.pull[i], c)
		}
	}
}

// stands puts x into a row for each pull week of stay i from week w on.
func (f *mps) stands(row, i, w int, x float64) {
	s := &f.e.stays[i]
	for at := max(w, s.first); at <= s.last; at++ {
		f.put(row, f.pull[i][at-s.first], x)
	}
}

// rowName names a limit of the expected-yield model.
func (f *mps) rowName(r int) string {
	e, p := f.e, f.p
	switch {
	case r < e.rows.shelf:
		kind := [kinds]string{"ground", "roots", "tall", "support"}[r/e.weeks%kinds]
		return fmt.Sprintf("%s.%s.w%02d", kind, mpsName(p.Spaces[r/(kinds*e.weeks)].ID), r%e.weeks)
	case r < e.rows.minutes:
		return fmt.Sprintf("shelf.w%02d", r-e.rows.shelf+p.ShelfStart)
	case r < e.rows.water:
		return fmt.Sprintf("minutes.w%02d", r-e.rows.minutes)
	case r < e.rows.groups:
		return fmt.Sprintf("water.w%02d", r-e.rows.water)
	case r < e.rows.musts:
		return "total." + mpsName(e.group[r-e.rows.groups])
	}
	return fmt.Sprintf("must.%d.%s", r-e.rows.musts, mpsName(p.Musts[r-e.rows.musts].Crop))
}

// limits writes room, shelf, minutes, water, totals and musts.
func (f *mps) limits() {
	e := f.e
	used := map[int]bool{}
	add := func(r int) int {
		kind := byte('L')
		if r >= e.rows.musts {
			kind = 'G'
		}
		return f.addRow(kind, e.limit[r], "%s", f.rowName(r))
	}
	for r := e.rows.minutes; r < e.rows.end; r++ {
		row := add(r)
		switch {
		case r < e.rows.water:
			f.put(row, f.addCol(false, -1, f.p.OverCost, "over.w%02d", r-e.rows.minutes), -1)
		case r < e.rows.groups:
			f.put(row, f.addCol(false, -1, f.p.WaterCost, "overwater.w%02d", r-e.rows.water), -1)
		}
	}
	for i := range e.opts {
		if f.n[i] < 0 {
			continue
		}
		e.eachRow(&e.opts[i], func(r int, x float64) {
			used[r] = used[r] || x != 0
			f.put(add(r), f.n[i], x)
		})
		if r := e.rows.minutes + e.opts[i].week; r < e.rows.water {
			f.put(add(r), f.y[i], e.opts[i].batchMinutes)
		}
	}
	sum := make([]float64, e.rows.shelf)
	for i := range e.stays {
		s := &e.stays[i]
		for w := 0; w <= s.last; w++ {
			for k := range kinds {
				r := e.room(s.space, k, w)
				if sum[r] += s.full[k][w]; used[r] {
					f.stands(add(r), i, w, s.full[k][w])
				}
			}
			if r := e.rows.minutes + w; r < e.rows.water {
				f.stands(add(r), i, w, s.minutes[w])
			}
			if r := e.rows.water + w; r < e.rows.groups {
				f.stands(add(r), i, w, s.water[w])
			}
		}
		for _, r := range s.musts {
			f.put(add(r), f.pull[i][len(f.pull[i])-1], float64(s.plants))
		}
	}
	// Where what stands is more than the limit it breaks nothing by itself:
	// the limit holds once something new takes part of it.
	for r, all := range sum {
		if most := e.limit[r] - tolerance; used[r] && all > most {
			row, name := add(r), f.rowName(r)
			f.rows[row].rhs = all + tolerance
			fresh := f.addCol(true, 1, 0, "new.%s", name)
			f.put(row, fresh, all-most)
			onlyIf := f.addRow('L', tolerance, "ifnew.%s", name)
			f.put(onlyIf, fresh, -most)
			for i := range e.opts {
				if f.n[i] >= 0 && e.opts[i].space == r/(kinds*e.weeks) {
					e.eachRow(&e.opts[i], func(q int, x float64) {
						if q == r {
							f.put(onlyIf, f.n[i], x)
						}
					})
				}
			}
		}
	}
}

// eating writes the foods: used U and eaten D, both summed from week 0, with
// D(w) <= U(w) <= D(w+shelf) and U rising by no more than what is picked.
func (f *mps) eating() {
	e := f.e
	for k := range e.cells {
		id, shelf := mpsName(f.p.Foods[k].ID), f.p.Foods[k].Shelf
		var u, d []int
		for w := range e.weeks {
			u = append(u, f.addCol(false, -1, 0, "used.%s.w%02d", id, w))
			d = append(d, f.addCol(false, -1, 0, "eaten.%s.w%02d", id, w))
			picked := f.addRow('L', 0, "picked.%s.w%02d", id, w)
			rises := f.addRow('G', 0, "rises.%s.w%02d", id, w)
			sum := f.addRow('E', 0, "sum.%s.w%02d", id, w)
			first := f.addRow('L', 0, "first.%s.w%02d", id, w)
			f.put(picked, u[w], 1)
			f.put(rises, u[w], 1)
			f.put(sum, d[w], 1)
			f.put(first, d[w], 1)
			f.put(first, u[w], -1)
			if w > 0 {
				f.put(picked, u[w-1], -1)
				f.put(rises, u[w-1], -1)
				f.put(sum, d[w-1], -1)
			}
			for j, c := range e.cells[k][w*segments : w*segments+segments] {
				f.put(sum, f.addCol(false, c.most, -c.worth, "eat.%s.w%02d.%d", id, w, j+1), -1)
			}
		}
		for w := 0; w+shelf < e.weeks; w++ {
			keeps := f.addRow('L', 0, "keeps.%s.w%02d", id, w)
			f.put(keeps, u[w], 1)
			f.put(keeps, d[w+shelf], -1)
		}
	}
	for i := range e.opts {
		if o := &e.opts[i]; f.n[i] >= 0 && len(o.meals) > 0 {
			for a, x := range o.meals[0] {
				f.put(f.addRow('L', 0, "picked.%s.w%02d", mpsName(f.p.Foods[o.food].ID), o.lo+a), f.n[i], -x)
			}
		}
	}
	for i := range e.stays {
		if s := &e.stays[i]; s.food >= 0 {
			for w, x := range s.meals[0] {
				f.stands(f.addRow('L', 0, "picked.%s.w%02d", mpsName(f.p.Foods[s.food].ID), w), i, w, -x)
			}
		}
	}
}

// write writes the sections.
func (f *mps) write(w io.Writer) error {
	b := bufio.NewWriter(w)
	fmt.Fprintf(b, "NAME season\nROWS\n N cost\n")
	for _, r := range f.rows {
		fmt.Fprintf(b, " %c %s\n", r.kind, r.name)
	}
	fmt.Fprintf(b, "COLUMNS\n")
	whole := false
	mark := func(to bool) {
		if to != whole {
			fmt.Fprintf(b, " M MARKER 'MARKER' %s\n", map[bool]string{true: "'INTORG'", false: "'INTEND'"}[to])
			whole = to
		}
	}
	number := func(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
	for i := range f.cols {
		c := &f.cols[i]
		mark(c.whole)
		fmt.Fprintf(b, " %s cost %s\n", c.name, number(c.cost))
		for _, in := range merged(c.in) {
			fmt.Fprintf(b, " %s %s %s\n", c.name, f.rows[in.row].name, number(in.x))
		}
	}
	mark(false)
	fmt.Fprintf(b, "RHS\n")
	for _, r := range f.rows {
		if r.rhs != 0 {
			fmt.Fprintf(b, " RHS %s %s\n", r.name, number(r.rhs))
		}
	}
	fmt.Fprintf(b, "BOUNDS\n")
	for _, c := range f.cols {
		switch {
		case c.fixed:
			fmt.Fprintf(b, " FX BND %s %s\n", c.name, number(c.hi))
		case c.hi >= 0:
			fmt.Fprintf(b, " UP BND %s %s\n", c.name, number(c.hi))
		}
	}
	fmt.Fprintf(b, "ENDATA\n")
	return b.Flush()
}
