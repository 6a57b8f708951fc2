package shade

import "math/bits"

// veil is one half-clear part's shadow over a tile's rows.
type veil struct {
	part   int
	r0, r1 int
	m      []uint64
}

// canvas holds the shadows of one ray on a tile, row by row, and gathers what
// they take. It is scratch space of one worker.
type canvas struct {
	nu, nv int
	dark   []uint64 // opaque
	veils  []veil
	nveil  int
	sums   []quanta // the layer in hand: differences by row and column, nu+1 to a row
	layers [][]quanta
	flood  quanta // what every cell loses, in layer 0
	loss   []int64
	rows   rows
	m      [maxVeils]uint64
	code   [maxVeils]int32
}

// maxVeils is how many pieces of different loss one row may be cut in. A row
// has at most 64 cells, and pieces do not overlap.
const maxVeils = 65

func newCanvas(t *tile, layers int, loss []int64) *canvas {
	c := &canvas{nu: t.nu, nv: t.nv, dark: make([]uint64, t.nv), loss: loss, rows: newRows(t.nv)}
	for range layers {
		c.layers = append(c.layers, make([]quanta, (t.nu+1)*t.nv))
	}
	c.layer(0)
	return c
}

// layer chooses which sums are written to.
func (c *canvas) layer(k int) { c.sums = c.layers[k] }

func (c *canvas) wipe() {
	clear(c.dark)
	c.nveil = 0
}

// veil returns an empty veil for a part over rows r0..r1.
func (c *canvas) veil(part, r0, r1 int) *veil {
	if c.nveil == len(c.veils) {
		c.veils = append(c.veils, veil{m: make([]uint64, c.nv)})
	}
	v := &c.veils[c.nveil]
	c.nveil++
	v.part, v.r0, v.r1 = part, r0, r1
	return v
}

// bitsOf is the mask of columns lo up to hi, which may be 64.
func bitsOf(lo, hi uint8) uint64 { return ^uint64(0) >> (64 - hi) & (^uint64(0) << lo) }

// take notes a loss over the runs of a mask: added where a run begins,
// subtracted where it ends.
func (c *canvas) take(row int, m uint64, q *quanta) {
	d := c.sums[row*(c.nu+1) : (row+1)*(c.nu+1)]
	for m != 0 {
		a := bits.TrailingZeros64(m)
		b := a + bits.TrailingZeros64(^(m >> a))
		p := &d[a]
		p[0] += q[0]
		p[1] += q[1]
		p[2] += q[2]
		p[3] += q[3]
		p = &d[b]
		p[0] -= q[0]
		p[1] -= q[1]
		p[2] -= q[2]
		p[3] -= q[3]
		if b == 64 {
			return
		}
		m &= ^uint64(0) << b
	}
}

// split cuts some cells of a row of veils into pieces that do not overlap, each
// with the sum of its codes; what turns out dark is added to dark. codes are by
// part.
func (c *canvas) split(row int, dark, only uint64, veils []veil, codes []int32) (n int, allDark uint64) {
	for i := range veils {
		v := &veils[i]
		if row < v.r0 || row > v.r1 {
			continue
		}
		m := v.m[row] & only
		code := codes[v.part]
		if m == 0 || code == 0 {
			continue
		}
		if code == opaqueCode {
			dark |= m
			continue
		}
		for j := n - 1; j >= 0 && m != 0; j-- {
			both := c.m[j] & m
			if both == 0 {
				continue
			}
			m &^= both
			if both == c.m[j] {
				c.code[j] += code
				continue
			}
			c.m[j] &^= both
			c.m[n], c.code[n] = both, c.code[j]+code
			n++
		}
		if m != 0 {
			c.m[n], c.code[n] = m, code
			n++
		}
	}
	return n, dark
}

// takeRow notes all that a row loses in what is dark and, in the cells of only,
// behind veils; or, with giveBack, gives it back.
func (c *canvas) takeRow(row int, dark, only uint64, veils []veil, code []int32, q *quanta, giveBack bool) {
	n, dark := c.split(row, dark, only&^dark, veils, code)
	if dark != 0 {
		if giveBack {
			d := q.negative()
			c.take(row, dark, &d)
		} else {
			c.take(row, dark, q)
		}
	}
	for i := range n {
		m := c.m[i] &^ dark
		if m == 0 {
			continue
		}
		d := q.dimmed(c.lossOf(c.code[i]))
		if giveBack {
			d = d.negative()
		}
		c.take(row, m, &d)
	}
}

// lossOf is the loss of a sum of codes.
func (c *canvas) lossOf(code int32) int64 {
	if int(code) < len(c.loss) {
		return c.loss[code]
	}
	return lossUnit
}

// gather adds the differences, summed along each row, to out, four numbers to a
// cell, and leaves the layer clean.
func (c *canvas) gather(out []int64) {
	for i := range c.flood {
		if c.flood[i] != 0 {
			for k := i; k < len(out); k += 4 {
				out[k] += c.flood[i]
			}
			c.flood[i] = 0
		}
	}
	for r := range c.nv {
		d := c.sums[r*(c.nu+1) : (r+1)*(c.nu+1)]
		o := out[r*c.nu*4 : (r+1)*c.nu*4]
		var s quanta
		for i := range c.nu {
			p := &d[i]
			s[0] += p[0]
			s[1] += p[1]
			s[2] += p[2]
			s[3] += p[3]
			o[i*4] += s[0]
			o[i*4+1] += s[1]
			o[i*4+2] += s[2]
			o[i*4+3] += s[3]
		}
	}
	clear(c.sums)
}
