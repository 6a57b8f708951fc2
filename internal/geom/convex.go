package geom

import "math"

// Convex is a solid with flat faces and no dents, such as a house with a
// sloped roof; make one with [NewConvex].
type Convex struct {
	Corners []Vec
	Faces   [][]int // corners of each face, anticlockwise seen from outside
	planes  []plane
}

// plane is the half-space Dot(n) <= c.
type plane struct {
	n Vec
	c float64
}

// NewConvex returns the solid with the given corners and faces. Faces without
// area take no part; a solid without volume is met nowhere.
func NewConvex(corners []Vec, faces [][]int) Convex {
	s := Convex{Corners: corners, Faces: faces}
	for _, f := range faces {
		n := newell(corners, f)
		if l := n.Len(); l > 0 {
			n = n.Scale(1 / l)
			s.planes = append(s.planes, plane{n, n.Dot(corners[f[0]])})
		}
	}
	return s
}

// newell returns the normal of a polygon, twice its area long.
func newell(at []Vec, face []int) Vec {
	n, o := Vec{}, at[face[0]]
	for i := 1; i+1 < len(face); i++ {
		n = n.Add(at[face[i]].Sub(o).Cross(at[face[i+1]].Sub(o)))
	}
	return n
}

// Crosses cuts the ray by each face's plane.
func (s Convex) Crosses(o, d Vec) bool {
	if len(s.planes) < 4 {
		return false
	}
	near, far := 0.0, math.Inf(1)
	for _, p := range s.planes {
		room, rate := p.c-p.n.Dot(o), p.n.Dot(d)
		if math.Abs(rate) < 1e-15 {
			if room <= TouchM {
				return false
			}
			continue
		}
		if rate > 0 {
			far = math.Min(far, room/rate)
		} else {
			near = math.Max(near, room/rate)
		}
	}
	return far-near > TouchM
}

// Rim returns the corners.
func (s Convex) Rim(Vec) []Vec { return s.Corners }

// NewGable returns a house or shed standing on at: a box up to the eaves and a
// ridge along the long side, at a share of the width from the near side (0 and
// 1 are lean-to roofs, 0.5 an even gable; the near side is the one that faces
// south at turn 0).
func NewGable(at Vec, turnDeg, length, width, eaves, ridge, ridgeShare float64) Convex {
	b := NewBox(at, turnDeg, length, width, eaves)
	across := [5]Vec{{0, -0.5, 0}, {0, 0.5, 0}, {0, 0.5, eaves}, {0, ridgeShare - 0.5, ridge}, {0, -0.5, eaves}}
	var c []Vec
	for _, end := range [2]float64{-0.5, 0.5} {
		for _, p := range across {
			c = append(c, at.Add(b.world(Vec{end * length, p.Y * width, p.Z})))
		}
	}
	return NewConvex(c, [][]int{
		{0, 4, 3, 2, 1}, {5, 6, 7, 8, 9}, // the two gable ends
		{0, 1, 6, 5}, {1, 2, 7, 6}, {2, 3, 8, 7}, {3, 4, 9, 8}, {4, 0, 5, 9},
	})
}
