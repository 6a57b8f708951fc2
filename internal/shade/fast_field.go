package shade

import (
	"runtime"
	"slices"
	"sync"

	"bedweek/internal/cal"
)

// Field is the light on every cell of some surfaces, in every week of a
// course, among some bodies.
//
// Method: surfaces are flat and their cells regular, so a convex solid shades,
// from one direction, one stretch of cells in each row. The stretches of all
// solids are joined as bits; each run of bits is noted at its two ends, and
// one sum along the row a week turns the notes into light. All sums are whole
// numbers: the order of the bodies, and bodies come and gone, leave no trace.
//
// A Field made with keep remembers each solid's stretches, so that a body can
// be changed for the price of its own shadow. It is not safe for use from
// several goroutines at once.
type Field struct {
	course   *Course
	surfaces []Surface
	keep     bool
	loss     []int64

	bodies  [][]int // parts of each body
	parts   []fieldPart
	spare   []int     // parts no longer used
	codes   [][]int32 // by week, by part; then by part for the sky where all weeks agree
	courses [][]int32 // distinct codes by week that parts have had
	epochOf []int     // by week: which sky it has
	epochs  []int     // a week of each epoch

	tiles []fieldTile
}

type fieldPart struct {
	Part
	live   bool
	varies bool // its code is not the same in all weeks
	code   []int32
	course int // which of the field's courses of code it has
	formed *lazyForm
}

// lazyForm makes a part's faces when a tile first needs them.
type lazyForm struct {
	once sync.Once
	form *form
}

// fieldTile is a tile with its rays and its results.
type fieldTile struct {
	tile
	slants []slant
	spread []spread  // by group of rays
	whole  []quanta  // by week, then the sky: with nothing in the way
	lost   [][]int64 // by week: four numbers to a cell
	sky    [][]int64 // by epoch
	shapes []*shape  // by part; nil = never in the way
	tracks []*track  // by part, with keep
	canvas *canvas   // with keep
	free   []float64 // by ray: cosine where a mend opens the sky; nil = no mends
}

// track remembers a part's stretches on a tile: at gives, by ray, where they
// begin in of (0 = none): first row, number of rows, then lo and hi of each.
type track struct {
	at []uint32
	of []uint16
}

func (t *track) note(ray int, rows *rows) {
	t.at[ray] = uint32(len(t.of))
	t.of = append(t.of, uint16(rows.r0), uint16(rows.r1-rows.r0+1))
	for r := rows.r0; r <= rows.r1; r++ {
		t.of = append(t.of, uint16(rows.lo[r])|uint16(rows.hi[r])<<8)
	}
}

func newTrack(rays int) *track {
	return &track{at: make([]uint32, rays), of: make([]uint16, 1, 64)}
}

// NewField works out the light on surfaces among bodies. With keep, single
// bodies can be changed afterwards. The result does not depend on workers (0 =
// as many as there are processors).
func NewField(c *Course, surfaces []Surface, bodies []Body, keep bool, workers int) *Field {
	f := &Field{course: c, surfaces: surfaces, keep: keep, loss: lossTable()}
	for i, s := range surfaces {
		for _, t := range tiles(i, s) {
			ft := fieldTile{tile: t}
			ft.slants = t.slants(c)
			ft.mend(c, s.Mends)
			ft.spread = spreads(c, ft.slants)
			f.tiles = append(f.tiles, ft)
		}
	}
	for _, b := range bodies {
		f.bodies = append(f.bodies, f.addParts(b))
	}
	f.run(workers)
	return f
}

// addParts makes room for a body's parts and returns their numbers.
func (f *Field) addParts(b Body) []int {
	out := []int{}
	for _, p := range b.Parts {
		fp := fieldPart{Part: p, live: true, formed: &lazyForm{}, code: make([]int32, f.course.Weeks())}
		for w := range fp.code {
			fp.code[w] = codeOf(p.PassesOn(f.course.Day(w)))
			fp.varies = fp.varies || fp.code[w] != fp.code[0]
		}
		fp.course = slices.IndexFunc(f.courses, func(c []int32) bool { return slices.Equal(c, fp.code) })
		if fp.course < 0 {
			fp.course = len(f.courses)
			f.courses = append(f.courses, fp.code)
		}
		if n := len(f.spare); n > 0 {
			out = append(out, f.spare[n-1])
			f.spare = f.spare[:n-1]
		} else {
			f.parts = append(f.parts, fieldPart{})
			out = append(out, len(f.parts)-1)
		}
		f.parts[out[len(out)-1]] = fp
	}
	return out
}

// form returns the part's faces, made once.
func (f *Field) form(part int) *form {
	p := &f.parts[part]
	p.formed.once.Do(func() { p.formed.form = formOf(p.Solid, f.course) })
	return p.formed.form
}

// sortWeeks finds the weeks with the same sky and tabulates codes by week.
func (f *Field) sortWeeks() {
	weeks := f.course.Weeks()
	f.codes = make([][]int32, weeks)
	f.epochOf, f.epochs = make([]int, weeks), nil
	for w := range weeks {
		f.codes[w] = make([]int32, len(f.parts))
		for i := range f.parts {
			if f.parts[i].live {
				f.codes[w][i] = f.parts[i].code[w]
			}
		}
		f.epochOf[w] = slices.IndexFunc(f.epochs, func(e int) bool { return slices.Equal(f.codes[e], f.codes[w]) })
		if f.epochOf[w] < 0 {
			f.epochOf[w] = len(f.epochs)
			f.epochs = append(f.epochs, w)
		}
	}
}

// layers is how many sums the sky needs: one for what is the same all year,
// and one for each epoch when some are not.
func (f *Field) layers() int {
	if len(f.epochs) < 2 {
		return 1
	}
	return 1 + len(f.epochs)
}

// run works everything out from nothing.
func (f *Field) run(workers int) {
	f.sortWeeks()
	if workers < 1 {
		workers = runtime.GOMAXPROCS(0)
	}
	workers = min(workers, len(f.tiles))
	if workers <= 1 {
		for i := range f.tiles {
			f.runTile(&f.tiles[i])
		}
		return
	}
	next := make(chan int)
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for i := range next {
				f.runTile(&f.tiles[i])
			}
		})
	}
	for i := range f.tiles {
		next <- i
	}
	close(next)
	wg.Wait()
}

// runTile works out one tile from nothing.
func (f *Field) runTile(t *fieldTile) {
	c := f.course
	cells := t.nu * t.nv * 4
	cv := newCanvas(&t.tile, f.layers(), f.loss)
	t.shapes = make([]*shape, len(f.parts))
	t.tracks = nil
	var seen []*shape
	for i := range f.parts {
		if !f.parts[i].live {
			continue
		}
		t.shapes[i] = t.see(i, f.parts[i].Solid, func() *form { return f.form(i) })
		if t.shapes[i] != nil {
			seen = append(seen, t.shapes[i])
		}
	}
	f.darkFirst(seen)
	if f.keep {
		t.canvas = cv
		t.tracks = make([]*track, len(f.parts))
		for _, p := range seen {
			t.tracks[p.part] = newTrack(len(c.rays))
		}
	}
	weeks := c.Weeks()
	t.whole = make([]quanta, weeks+1)
	t.lost = make([][]int64, weeks)
	flat := make([]int64, weeks*cells)
	for w := range weeks {
		f.castWeek(t, cv, seen, w)
		t.lost[w] = flat[w*cells : (w+1)*cells]
		cv.gather(t.lost[w])
	}
	f.castWeek(t, cv, seen, weeks)
	t.sky = nil
	for range f.epochs {
		t.sky = append(t.sky, make([]int64, cells))
	}
	f.gatherSky(cv, t.sky)
	for p, tr := range t.tracks {
		if tr != nil && len(tr.of) == 1 {
			t.tracks[p] = nil
		}
	}
}

// gatherSky adds the layers to each epoch's sky.
func (f *Field) gatherSky(cv *canvas, out [][]int64) {
	base := make([]int64, cv.nu*cv.nv*4)
	cv.layer(0)
	cv.gather(base)
	for e := range out {
		if len(out) > 1 {
			cv.layer(1 + e)
			cv.gather(out[e])
		}
		for i, v := range base {
			out[e][i] += v
		}
	}
	cv.layer(0)
}

// darkFirst puts opaque parts first, large ones leading, so that a ray that
// meets darkness everywhere is done with early. Ties keep the parts' order.
func (f *Field) darkFirst(seen []*shape) {
	size := func(p *shape) float64 {
		d := p.high.Sub(p.low)
		if f.parts[p.part].code[0] != opaqueCode || f.parts[p.part].varies {
			return -1
		}
		return max(d.X*d.Y, d.X*d.Z, d.Y*d.Z)
	}
	slices.SortStableFunc(seen, func(a, b *shape) int {
		switch x, y := size(a), size(b); {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
}

// stander is a shape as it stands in one week.
type stander struct {
	*shape
	code   int32
	varies bool // sky only: it changes through the year
}

// castWeek sends the rays of week w (the sky's after the last) over a tile.
func (f *Field) castWeek(t *fieldTile, cv *canvas, seen []*shape, w int) {
	c := f.course
	sky := w == len(f.codes)
	codes := f.codes[0]
	if !sky {
		codes = f.codes[w]
	}
	var all, near []stander
	for _, p := range seen {
		s := stander{p, codes[p.part], sky && f.parts[p.part].varies}
		if s.code != 0 || s.varies {
			all = append(all, s)
		}
	}
	if t.free != nil {
		for i := c.first[w]; i < c.first[w+1]; i++ {
			if t.free[i] > 0 {
				for k, v := range c.rays[i].worth(t.free[i]) {
					t.whole[w][k] += v
				}
			}
		}
	}
	for g := c.firstGroup[w]; g < c.firstGroup[w+1]; g++ {
		if !t.spread[g].any {
			continue
		}
		near = near[:0]
		for _, p := range all {
			if !p.missesAll(&t.tile, &t.spread[g]) {
				near = append(near, p)
			}
		}
		for i := c.groups[g][0]; i < c.groups[g][1]; i++ {
			s := &t.slants[i]
			if s.cos <= 0 {
				continue
			}
			q := c.rays[i].worth(s.cos)
			for k := range q {
				t.whole[w][k] += q[k]
			}
			if len(near) > 0 {
				f.cast(t, cv, near, i, s, codes, &q)
			}
		}
	}
}

// cast sends one ray over a tile, past the shapes that may be in its way.
func (f *Field) cast(t *fieldTile, cv *canvas, near []stander, i int, s *slant, codes []int32, q *quanta) {
	cv.nveil = 0
	rw := &cv.rows
	any, varied, dark := false, false, false
	for k := range near {
		p := &near[k]
		if p.misses(&t.tile, s) || !f.meet(t, p.shape, i, s, rw) {
			continue
		}
		if f.keep {
			t.tracks[p.part].note(i, rw)
		}
		if dark {
			continue
		}
		if !any {
			any = true
			clear(cv.dark)
		}
		if p.code == opaqueCode && !p.varies {
			full := t.full
			for r := rw.r0; r <= rw.r1; r++ {
				m := cv.dark[r] | bitsOf(rw.lo[r], rw.hi[r])
				cv.dark[r] = m
				full &= m
			}
			if full == t.full && rw.r1-rw.r0 == t.nv-1 {
				if dark = true; !f.keep {
					break
				}
			}
			continue
		}
		varied = varied || p.varies
		v := cv.veil(p.part, rw.r0, rw.r1)
		for r := rw.r0; r <= rw.r1; r++ {
			v.m[r] = bitsOf(rw.lo[r], rw.hi[r])
		}
	}
	if !any {
		return
	}
	if dark {
		for k := range q {
			cv.flood[k] += q[k]
		}
		return
	}
	veils := cv.veils[:cv.nveil]
	if len(veils) == 0 {
		for r, m := range cv.dark {
			if m != 0 {
				cv.take(r, m, q)
			}
		}
		return
	}
	if len(veils) == 1 && !varied {
		behind := q.dimmed(cv.lossOf(codes[veils[0].part]))
		for r, m := range cv.dark {
			if m != 0 {
				cv.take(r, m, q)
			}
			if v := veils[0].bits(r) &^ m; v != 0 {
				cv.take(r, v, &behind)
			}
		}
		return
	}
	for r, m := range cv.dark {
		if !varied || !f.rowVaries(veils, r) {
			cv.takeRow(r, m, t.full, veils, codes, q, false)
			continue
		}
		for e, w := range f.epochs {
			cv.layer(1 + e)
			cv.takeRow(r, m, t.full, veils, f.codes[w], q, false)
		}
		cv.layer(0)
	}
}

// meet works out a shape's rows under a ray.
func (f *Field) meet(t *fieldTile, p *shape, i int, s *slant, out *rows) bool {
	if p.kind != far {
		return p.project(&t.tile, f.parts[p.part].formed.form, f.course, i, s, out)
	}
	d := f.course.rays[i].d
	if !f.parts[p.part].Solid.Crosses(t.o, d) {
		return false
	}
	out.r0, out.r1 = 0, t.nv-1
	for r := range t.nv {
		out.lo[r], out.hi[r] = 0, uint8(t.nu)
	}
	return true
}

// rowVaries reports whether a part that changes through the year shades a row.
func (f *Field) rowVaries(veils []veil, row int) bool {
	for i := range veils {
		v := &veils[i]
		if f.parts[v.part].varies && row >= v.r0 && row <= v.r1 && v.m[row] != 0 {
			return true
		}
	}
	return false
}

// Course returns the suns and sky the field was made with.
func (f *Field) Course() *Course { return f.course }

// Surfaces returns the surfaces, in order.
func (f *Field) Surfaces() []Surface { return f.surfaces }

// Day returns the day that stands for week w.
func (f *Field) Day(w int) cal.Day { return f.course.Day(w) }
