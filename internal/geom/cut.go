package geom

// Cut parts a figure by a straight line square to its longer side (of two alike,
// the one along x), at a distance from its low end: the west end as it lies
// unturned, or the south end of one that is deeper than long. Each part comes
// about the middle of its own box; lowMid and highMid are where these middles
// lie from the figure's. Both are nil unless the line passes through the
// figure.
func (f *Figure) Cut(atM float64) (low, high *Figure, lowMid, highMid Vec) {
	along, end := Vec{X: 1}, -f.Length/2
	if f.CutsAcross() {
		along, end = Vec{Y: 1}, -f.Width/2
	}
	at := along.Scale(end + atM)
	low, lowMid = f.side(at, along.Scale(-1))
	high, highMid = f.side(at, along)
	if low == nil || high == nil {
		return nil, nil, Vec{}, Vec{}
	}
	return low, high, lowMid, highMid
}

// CutsAcross reports whether a cut is measured from the south end, since the
// figure is deeper than long.
func (f *Figure) CutsAcross() bool { return f.Width > f.Length+TouchM }

// side is what of a figure lies on one side of a line through at, the side to
// which looks points; nil when nothing does.
func (f *Figure) side(at, looks Vec) (*Figure, Vec) {
	trim := func(all []Outline) (out []Outline) {
		for _, o := range all {
			if o = o.side(at, looks); len(o) > 2 && o.AreaM2() > TouchM*TouchM {
				out = append(out, o)
			}
		}
		return out
	}
	rings, pieces := trim(f.Rings), trim(f.Pieces)
	if len(rings) == 0 || len(pieces) == 0 {
		return nil, Vec{}
	}
	out := figure(rings, pieces)
	return out, rings[0][0].Sub(out.Rings[0][0])
}

// side keeps the corners of an outline on one side of a line, and adds those
// where its edges cross it.
func (o Outline) side(at, looks Vec) (out Outline) {
	for i, a := range o {
		b := o[(i+1)%len(o)]
		da, db := a.Sub(at).Dot(looks), b.Sub(at).Dot(looks)
		if da >= 0 {
			out = append(out, a)
		}
		if (da < 0) != (db < 0) && da != 0 && db != 0 {
			out = append(out, a.Add(b.Sub(a).Scale(da/(da-db))))
		}
	}
	return out
}
