package shade

import (
	"errors"
	"slices"
)

// ErrNotKept says that a field was made without keep.
var ErrNotKept = errors.New("shade: this field was made without keep, so its bodies cannot be changed")

// Bodies returns how many bodies the field has been given; removed ones count.
func (f *Field) Bodies() int { return len(f.bodies) }

// Add puts one more body in and returns its number.
func (f *Field) Add(b Body) (int, error) {
	f.bodies = append(f.bodies, nil)
	n := len(f.bodies) - 1
	return n, f.Replace(n, b)
}

// Remove takes a body out; its number stays, and names nothing.
func (f *Field) Remove(n int) error { return f.Replace(n, Body{}) }

// Replace puts b where body n stood: moved, grown, pruned, netted. The result
// is to the last bit that of a new field with b in its place.
//
// The price is b's old and new shadow, unless the leaves of b turn on dates at
// which no other body changed before; then the sky is sorted anew, at the
// price of a new field.
func (f *Field) Replace(n int, b Body) error {
	if !f.keep {
		return ErrNotKept
	}
	old := f.bodies[n]
	fresh := f.addParts(b)
	if f.newEpochs(fresh) {
		f.bodies[n] = fresh
		f.drop(old)
		f.run(1)
		return nil
	}
	f.tabulate(fresh)
	for i := range f.tiles {
		t := &f.tiles[i]
		ch := f.newChange(t, old, fresh, true)
		if ch == nil {
			continue // neither old nor new is known to the tile
		}
		for w := range t.lost {
			if ch.rays(w, nil) {
				t.canvas.gather(t.lost[w])
			}
		}
		k := len(t.lost)
		if ch.rays(k, f.epochs) {
			f.gatherSky(t.canvas, t.sky)
		}
		ch.commit()
	}
	f.bodies[n] = fresh
	f.drop(old)
	return nil
}

// Shades reports, by surface, whether body n is ever in the way of its sun or
// sky. On the others nothing changes when it moves away. It needs keep.
func (f *Field) Shades(n int) []bool {
	out := make([]bool, len(f.surfaces))
	for i := range f.tiles {
		t := &f.tiles[i]
		for _, p := range f.bodies[n] {
			out[t.surf] = out[t.surf] || p < len(t.tracks) && t.tracks[p] != nil
		}
	}
	return out
}

// drop frees the numbers of parts no longer standing.
func (f *Field) drop(parts []int) {
	for _, p := range parts {
		f.parts[p] = fieldPart{}
		f.spare = append(f.spare, p)
		for w := range f.codes {
			f.codes[w][p] = 0
		}
	}
}

// newEpochs reports whether fresh parts tell weeks apart that had one sky.
func (f *Field) newEpochs(fresh []int) bool {
	for _, p := range fresh {
		for w, e := range f.epochOf {
			if f.parts[p].code[w] != f.parts[p].code[f.epochs[e]] {
				return true
			}
		}
	}
	return false
}

// tabulate notes the codes of fresh parts by week.
func (f *Field) tabulate(fresh []int) {
	for w := range f.codes {
		if n := len(f.parts) - len(f.codes[w]); n > 0 {
			f.codes[w] = append(f.codes[w], make([]int32, n)...)
		}
		for _, p := range fresh {
			f.codes[w][p] = f.parts[p].code[w]
		}
	}
	for i := range f.tiles {
		t := &f.tiles[i]
		if n := len(f.parts) - len(t.shapes); n > 0 {
			t.shapes = append(t.shapes, make([]*shape, n)...)
			t.tracks = append(t.tracks, make([]*track, n)...)
		}
	}
}

// change is one body's change on one tile.
type change struct {
	f          *Field
	t          *fieldTile
	old, fresh []int
	shapes     []*shape // of fresh
	tracks     []*track // of fresh
	others     []int    // parts that stay and shade the tile
	was, is    []veil   // this ray's
	joined     []veil
	used       [2]int
	before     []uint64
	after      []uint64
}

// newChange prepares a change; nil when it cannot touch the tile. With keep it
// is meant to be committed.
func (f *Field) newChange(t *fieldTile, old, fresh []int, keep bool) *change {
	ch := &change{f: f, t: t, old: old, fresh: fresh}
	touched := false
	for _, p := range old {
		touched = touched || t.tracks[p] != nil
	}
	for _, p := range fresh {
		s := t.see(p, f.parts[p].Solid, func() *form { return f.form(p) })
		ch.shapes = append(ch.shapes, s)
		if keep {
			ch.tracks = append(ch.tracks, newTrack(len(f.course.rays)))
		}
		touched = touched || s != nil
	}
	if !touched {
		return nil
	}
	for p, tr := range t.tracks {
		if tr != nil && !slices.Contains(old, p) {
			ch.others = append(ch.others, p)
		}
	}
	ch.before, ch.after = make([]uint64, t.nv), make([]uint64, t.nv)
	return ch
}

// commit makes the fresh parts the tile's own.
func (ch *change) commit() {
	for _, p := range ch.old {
		ch.t.shapes[p], ch.t.tracks[p] = nil, nil
	}
	for i, p := range ch.fresh {
		ch.t.shapes[p], ch.t.tracks[p] = ch.shapes[i], ch.tracks[i]
		if len(ch.tracks[i].of) == 1 {
			ch.t.tracks[p] = nil
		}
	}
}

// free returns the next free veil of a list.
func (ch *change) free(list *[]veil, k, part, r0, r1 int) *veil {
	if ch.used[k] == len(*list) {
		*list = append(*list, veil{m: make([]uint64, ch.t.nv)})
	}
	v := &(*list)[ch.used[k]]
	ch.used[k]++
	v.part, v.r0, v.r1 = part, r0, r1
	return v
}

// lay puts the rows of a stretch list in a free veil of the old ones.
func (ch *change) lay(part int, of []uint16) {
	v := ch.free(&ch.was, 0, part, int(of[0]), int(of[0]+of[1])-1)
	for r, x := range of[2 : 2+of[1]] {
		v.m[v.r0+r] = bitsOf(uint8(x), uint8(x>>8))
	}
}

// rays notes in the tile's canvas what the change takes and gives over the rays
// of week w, or, after the last, of the sky in the epochs told. It reports
// whether there is anything.
func (ch *change) rays(w int, epochs []int) bool {
	c, t := ch.f.course, ch.t
	some := false
	for g := c.firstGroup[w]; g < c.firstGroup[w+1]; g++ {
		if !t.spread[g].any || !ch.near(g) {
			continue
		}
		for i := c.groups[g][0]; i < c.groups[g][1]; i++ {
			if t.slants[i].cos > 0 && ch.ray(i, w, epochs) {
				some = true
			}
		}
	}
	return some
}

// near reports whether the body's old or new shadow may come near the tile
// under a group of rays.
func (ch *change) near(g int) bool {
	for _, p := range ch.old {
		if s := ch.t.shapes[p]; s != nil && !s.missesAll(&ch.t.tile, &ch.t.spread[g]) {
			return true
		}
	}
	for _, s := range ch.shapes {
		if s != nil && !s.missesAll(&ch.t.tile, &ch.t.spread[g]) {
			return true
		}
	}
	return false
}

func (ch *change) ray(i, w int, epochs []int) bool {
	f, t, cv := ch.f, ch.t, ch.t.canvas
	sky := epochs != nil
	if sky {
		w = epochs[0]
	}
	codes := f.codes[w]
	ch.used = [2]int{}
	plain, varied := true, false
	note := func(p int) {
		plain = plain && codes[p] == opaqueCode && !(sky && f.parts[p].varies)
		varied = varied || sky && f.parts[p].varies
	}
	idle := func(p int) bool { return codes[p] == 0 && !(sky && f.parts[p].varies) }
	for _, p := range ch.old {
		if tr := t.tracks[p]; tr != nil && tr.at[i] != 0 && !idle(p) {
			ch.lay(p, tr.of[tr.at[i]:])
			note(p)
		}
	}
	for k, p := range ch.fresh {
		s := ch.shapes[k]
		if s == nil || idle(p) || s.misses(&t.tile, &t.slants[i]) || !f.meet(t, s, i, &t.slants[i], &cv.rows) {
			continue
		}
		if ch.tracks != nil {
			ch.tracks[k].note(i, &cv.rows)
		}
		v := ch.free(&ch.is, 1, p, cv.rows.r0, cv.rows.r1)
		for r := v.r0; r <= v.r1; r++ {
			v.m[r] = bitsOf(cv.rows.lo[r], cv.rows.hi[r])
		}
		note(p)
	}
	was, is := ch.was[:ch.used[0]], ch.is[:ch.used[1]]
	r0, r1 := ch.differ(was, is, plain)
	if r0 > r1 {
		return false
	}
	q := f.course.rays[i].worth(t.slants[i].cos)
	cv.wipe()
	for _, p := range ch.others {
		if tr := t.tracks[p]; tr.at[i] != 0 {
			varied = ch.other(p, tr.of[tr.at[i]:], r0, r1, codes[p], sky) || varied
		}
	}
	veils := cv.veils[:cv.nveil]
	if plain && len(veils) == 0 {
		back := q.negative()
		for r := r0; r <= r1; r++ {
			a, b := ch.before[r]|cv.dark[r], ch.after[r]|cv.dark[r]
			cv.take(r, b&^a, &q)
			cv.take(r, a&^b, &back)
		}
		return true
	}
	alone, gain := ch.alone(was, is, &q, codes, varied && len(epochs) > 1)
	loss := gain.negative()
	for r := r0; r <= r1; r++ {
		if alone && !veiled(veils, r, ch.before[r]^ch.after[r]) {
			a, b := joinedBits(was, r), joinedBits(is, r)
			cv.take(r, b&^a&^cv.dark[r], &gain)
			cv.take(r, a&^b&^cv.dark[r], &loss)
			continue
		}
		// What stays dark does not change, nor does what both veil alike.
		if only := (ch.before[r] ^ ch.after[r]) &^ cv.dark[r]; only != 0 {
			ch.row(r, only, veils, was, &q, codes, epochs, varied, true)
			ch.row(r, only, veils, is, &q, codes, epochs, varied, false)
		}
	}
	return true
}

// alone reports that old and new are at most one veil each, of one code that
// holds for all that is asked, and returns what a cell behind it loses.
func (ch *change) alone(was, is []veil, q *quanta, codes []int32, many bool) (bool, quanta) {
	if many || len(was) > 1 || len(is) > 1 {
		return false, quanta{}
	}
	code := int32(0)
	for i, list := range [2][]veil{was, is} {
		if len(list) == 1 {
			c := codes[list[0].part]
			if c == 0 || i == 1 && len(was) == 1 && c != code {
				return false, quanta{}
			}
			code = c
		}
	}
	if code == opaqueCode {
		return true, *q
	}
	return true, q.dimmed(ch.t.canvas.lossOf(code))
}

// veiled reports whether any veil lies over some cells of a row.
func veiled(veils []veil, r int, m uint64) bool {
	for i := range veils {
		if veils[i].bits(r)&m != 0 {
			return true
		}
	}
	return false
}

// row notes what some cells of a row lose with the staying veils and some more.
func (ch *change) row(r int, only uint64, stay, more []veil, q *quanta, codes []int32, epochs []int, varied, giveBack bool) {
	f, cv := ch.f, ch.t.canvas
	ch.joined = append(append(ch.joined[:0], stay...), more...)
	if len(epochs) < 2 || !varied || !f.rowVaries(ch.joined, r) {
		cv.takeRow(r, 0, only, ch.joined, codes, q, giveBack)
		return
	}
	for e, w := range epochs {
		cv.layer(1 + e)
		cv.takeRow(r, 0, only, ch.joined, f.codes[w], q, giveBack)
	}
	cv.layer(0)
}

// differ fills before and after so that they differ in the rows that change,
// and returns the first and last of these; where they differ are the cells that
// may change. When plain they are the cells that old and new keep dark.
func (ch *change) differ(was, is []veil, plain bool) (r0, r1 int) {
	low, high := ch.t.nv, -1
	for _, list := range [2][]veil{was, is} {
		for i := range list {
			low, high = min(low, list[i].r0), max(high, list[i].r1)
		}
	}
	for r := low; r <= high; r++ {
		ch.before[r], ch.after[r] = 0, 0
		if plain {
			ch.before[r], ch.after[r] = joinedBits(was, r), joinedBits(is, r)
		} else {
			ch.after[r] = ch.unlike(was, is, r)
		}
	}
	for low <= high && ch.before[low] == ch.after[low] {
		low++
	}
	for high >= low && ch.before[high] == ch.after[high] {
		high--
	}
	return low, high
}

func joinedBits(list []veil, r int) (m uint64) {
	for i := range list {
		m |= list[i].bits(r)
	}
	return m
}

// bits are the veil's cells in a row.
func (v *veil) bits(r int) uint64 {
	if r < v.r0 || r > v.r1 {
		return 0
	}
	return v.m[r]
}

// unlike returns the cells of a row that old and new veils may not leave
// alike: where they differ piece by piece, or, when the pieces do not match,
// all they cover.
func (ch *change) unlike(was, is []veil, r int) (m uint64) {
	match := len(was) == len(is)
	for i := 0; match && i < len(was); i++ {
		match = ch.f.parts[was[i].part].course == ch.f.parts[is[i].part].course
		m |= was[i].bits(r) ^ is[i].bits(r)
	}
	if match {
		return m
	}
	return joinedBits(was, r) | joinedBits(is, r)
}

// other lays a staying part's rows between r0 and r1, and reports whether it
// changes through the year.
func (ch *change) other(p int, of []uint16, r0, r1 int, code int32, sky bool) (varies bool) {
	cv := ch.t.canvas
	varies = sky && ch.f.parts[p].varies
	a := int(of[0])
	from, to := max(r0, a), min(r1, a+int(of[1])-1)
	if from > to || code == 0 && !varies {
		return false
	}
	if code == opaqueCode && !varies {
		for r := from; r <= to; r++ {
			x := of[2+r-a]
			cv.dark[r] |= bitsOf(uint8(x), uint8(x>>8))
		}
		return false
	}
	v := cv.veil(p, from, to)
	for r := from; r <= to; r++ {
		x := of[2+r-a]
		v.m[r] = bitsOf(uint8(x), uint8(x>>8))
	}
	return varies
}

// Peek returns the light of week w as it would be with b where body n stands,
// and changes nothing. A number never given out means one more body. Its price
// is that of one week and the sky.
func (f *Field) Peek(w, n int, b Body) (*WeekLight, error) {
	if !f.keep {
		return nil, ErrNotKept
	}
	var old []int
	if n >= 0 && n < len(f.bodies) {
		old = f.bodies[n]
	}
	fresh := f.addParts(b)
	f.tabulate(fresh)
	out := &WeekLight{f: f, week: w}
	k := len(f.codes)
	for i := range f.tiles {
		t := &f.tiles[i]
		lost, sky := t.lost[w], t.sky[f.epochOf[w]]
		ch := f.newChange(t, old, fresh, false)
		if ch != nil && ch.rays(w, nil) {
			lost = slices.Clone(lost)
			t.canvas.gather(lost)
		}
		if ch != nil && ch.rays(k, []int{w}) {
			sky = slices.Clone(sky)
			t.canvas.gather(sky)
		}
		out.lost, out.sky = append(out.lost, lost), append(out.sky, sky)
	}
	f.drop(fresh)
	return out, nil
}
