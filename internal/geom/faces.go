package geom

import "math"

// Faces returns a solid's surface as flat convex faces, corners anticlockwise
// seen from outside. Round solids get sides flat pieces to the turn, corners on
// the true surface, so they lie within 1 - cos(180°/sides) of the radius (0.2 %
// at 48). A thin sheet or disc is one face, told from the side of A×B or of
// its facing. A skyline has none.
func Faces(s Solid, sides int) (at []Vec, faces [][]int) {
	switch s := s.(type) {
	case Box:
		return boxFaces(s)
	case Convex:
		return s.Corners, s.Faces
	case Sheet:
		return s.Rim(Vec{}), [][]int{{0, 1, 2, 3}}
	case Disc:
		return discFaces(s, sides)
	case Cylinder:
		return turned(s.At, [][2]float64{{s.Radius, 0}, {s.Radius, s.Height}}, sides)
	case Cone:
		return turned(s.At, [][2]float64{{s.Radius, 0}, {0, s.Height}}, sides)
	case Dome:
		return turned(s.At, arc(s.Radius, s.Height, 0, sides), sides)
	case Ellipsoid:
		return turned(s.At, arc(s.Radius, s.HalfHeight, -90, sides), sides)
	}
	return nil, nil
}

func boxFaces(b Box) ([]Vec, [][]int) {
	return b.Rim(Vec{}), [][]int{
		{0, 1, 3, 2}, {4, 6, 7, 5}, // along -, +
		{0, 4, 5, 1}, {2, 3, 7, 6}, // across -, +
		{0, 2, 6, 4}, {1, 5, 7, 3}, // below, above
	}
}

func discFaces(s Disc, sides int) ([]Vec, [][]int) {
	a, b := s.Axes()
	var at []Vec
	var f []int
	for i := range sides {
		q, k := math.Sincos(2 * math.Pi * float64(i) / float64(sides))
		at = append(at, s.At.Add(a.Scale(s.Radius*k)).Add(b.Scale(s.Radius*q)))
		f = append(f, i)
	}
	return at, [][]int{f}
}

// arc lists radius and height along an elliptic profile from an angle to the
// top, a piece for each of sides to the turn.
func arc(radius, height, fromDeg float64, sides int) [][2]float64 {
	n := max(2, int(math.Round((90-fromDeg)/360*float64(sides))))
	var out [][2]float64
	for i := range n + 1 {
		s, c := math.Sincos((fromDeg + (90-fromDeg)*float64(i)/float64(n)) * rad)
		if math.Abs(c) < 1e-12 {
			c = 0
		}
		out = append(out, [2]float64{radius * c, height * s})
	}
	return out
}

// turned makes the solid whose profile (radius, height), from foot to top,
// turns about the vertical; it is closed where the profile ends off the axis.
func turned(foot Vec, profile [][2]float64, sides int) (at []Vec, faces [][]int) {
	ring := make([][]int, len(profile))
	for i, p := range profile {
		n := sides
		if p[0] == 0 {
			n = 1
		}
		for j := range n {
			s, c := math.Sincos(2 * math.Pi * float64(j) / float64(sides))
			ring[i] = append(ring[i], len(at))
			at = append(at, foot.Add(Vec{p[0] * c, p[0] * s, p[1]}))
		}
	}
	if low := ring[0]; len(low) > 1 {
		var f []int
		for j := range low {
			f = append(f, low[len(low)-1-j])
		}
		faces = append(faces, f)
	}
	for i := 0; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		for j := range sides {
			k := (j + 1) % sides
			switch {
			case len(a) > 1 && len(b) > 1:
				faces = append(faces, []int{a[j], a[k], b[k], b[j]})
			case len(a) > 1:
				faces = append(faces, []int{a[j], a[k], b[0]})
			case len(b) > 1:
				faces = append(faces, []int{a[0], b[k], b[j]})
			}
		}
	}
	if top := ring[len(ring)-1]; len(top) > 1 {
		faces = append(faces, top)
	}
	return at, faces
}
