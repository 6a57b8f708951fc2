package geom

import "math"

// Figure is a flat shape on the ground, about the middle of its outer box: x
// along, y across. Its pieces are convex and fill it without overlap; its
// rings are what is drawn, the outer edge first, then holes.
type Figure struct {
	Rings         []Outline
	Pieces        []Outline
	Length, Width float64 // of the outer box
}

// figure puts rings and pieces about the middle of their box.
func figure(rings, pieces []Outline) *Figure {
	low, high := Vec{math.Inf(1), math.Inf(1), 0}, Vec{math.Inf(-1), math.Inf(-1), 0}
	for _, v := range rings[0] {
		low = Vec{math.Min(low.X, v.X), math.Min(low.Y, v.Y), 0}
		high = Vec{math.Max(high.X, v.X), math.Max(high.Y, v.Y), 0}
	}
	mid := low.Add(high).Scale(0.5)
	f := &Figure{Length: high.X - low.X, Width: high.Y - low.Y}
	for _, r := range rings {
		f.Rings = append(f.Rings, r.moved(mid.Scale(-1)))
	}
	for _, p := range pieces {
		f.Pieces = append(f.Pieces, p.moved(mid.Scale(-1)))
	}
	return f
}

func (o Outline) moved(by Vec) Outline {
	out := make(Outline, len(o))
	for i, v := range o {
		out[i] = v.Add(by)
	}
	return out
}

// At returns the figure standing about a point, turned clockwise.
func (f *Figure) At(at Vec, turnDeg float64) *Figure {
	s, c := math.Sincos(turnDeg * rad)
	put := func(all []Outline) []Outline {
		out := make([]Outline, len(all))
		for k, o := range all {
			for _, v := range o {
				out[k] = append(out[k], Vec{at.X + float64(v.X*c) + float64(v.Y*s), at.Y - float64(v.X*s) + float64(v.Y*c), at.Z})
			}
		}
		return out
	}
	return &Figure{Rings: put(f.Rings), Pieces: put(f.Pieces), Length: f.Length, Width: f.Width}
}

// AreaM2 returns the area, holes left out.
func (f *Figure) AreaM2() float64 {
	sum := 0.0
	for _, p := range f.Pieces {
		sum += p.AreaM2()
	}
	return sum
}

// PerimeterM returns the length of the outer edge.
func (f *Figure) PerimeterM() float64 {
	sum := 0.0
	for i, a := range f.Rings[0] {
		sum += f.Rings[0][(i+1)%len(f.Rings[0])].Sub(a).LevelLen()
	}
	return sum
}

// Holds reports whether a point lies in the figure; its edge belongs to it.
func (f *Figure) Holds(x, y float64) bool {
	for _, p := range f.Pieces {
		if p.Holds(Vec{x, y, 0}) {
			return true
		}
	}
	return false
}

// Holds reports whether a point lies in a convex outline with its corners
// anticlockwise; its edge belongs to it.
func (o Outline) Holds(p Vec) bool {
	for i, a := range o {
		if turn(a, o[(i+1)%len(o)], p) < -TouchM {
			return false
		}
	}
	return len(o) > 2
}

// deepLooks is how many points along and across are looked at for the deepest.
const deepLooks = 41

// DeepM returns how far the point deepest within lies from the outer edge, to
// a fortieth of the box.
func (f *Figure) DeepM() float64 {
	deep := 0.0
	for i := range deepLooks {
		for j := range deepLooks {
			p := Vec{f.Length * (float64(i)/(deepLooks-1) - 0.5), f.Width * (float64(j)/(deepLooks-1) - 0.5), 0}
			if f.Holds(p.X, p.Y) {
				deep = math.Max(deep, f.Rings[0].Away(p))
			}
		}
	}
	return deep
}

// Away is how far a point lies from the nearest edge.
func (o Outline) Away(p Vec) float64 {
	least := math.Inf(1)
	for i, a := range o {
		ab := o[(i+1)%len(o)].Sub(a)
		k := 0.0
		if n := ab.Dot(ab); n > 0 {
			k = math.Min(1, math.Max(0, p.Sub(a).Dot(ab)/n))
		}
		least = math.Min(least, p.Sub(a.Add(ab.Scale(k))).LevelLen())
	}
	return least
}

// Prisms returns upright solids with the figure's pieces as ground plan,
// standing on at; with no height there are none.
func (f *Figure) Prisms(at Vec, turnDeg, height float64) []Solid {
	if !(height > 0) {
		return nil
	}
	var out []Solid
	for _, p := range f.At(at, turnDeg).Pieces {
		n := len(p)
		corners := append(append([]Vec{}, p...), p.moved(Vec{0, 0, height})...)
		low, high := make([]int, n), make([]int, n)
		faces := [][]int{low, high}
		for i := range n {
			low[n-1-i], high[i] = i, n+i
			j := (i + 1) % n
			faces = append(faces, []int{i, j, n + j, n + i})
		}
		out = append(out, NewConvex(corners, faces))
	}
	return out
}

// EdgeTowards returns the middle of the outer edge that looks most to a
// bearing, and where that edge looks. Of two that look alike, the one farther
// out counts.
func (f *Figure) EdgeTowards(bearingDeg float64) (mid Vec, looksDeg float64) {
	to := Direction(bearingDeg, 0)
	best, far := math.Inf(-1), math.Inf(-1)
	o := f.Rings[0]
	for i, a := range o {
		b := o[(i+1)%len(o)]
		n := Vec{b.Y - a.Y, a.X - b.X, 0}.Unit() // outward: corners run anticlockwise
		m := a.Add(b).Scale(0.5)
		d, out := n.Dot(to), m.Dot(to)
		if d > best+1e-9 || d > best-1e-9 && out > far {
			best, far, mid, looksDeg = d, out, m, n.BearingDeg()
		}
	}
	return mid, looksDeg
}
