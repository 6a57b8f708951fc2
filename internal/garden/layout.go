package garden

import (
	"fmt"
	"math"

	"bedweek/internal/geom"
)

// slackM is how far two spaces may reach into one another on the plan before
// we call it a mistake: tapes and walls are not exact.
const slackM = 0.02

// layout reports spaces that stand in the same place, and spaces that hold
// more plants than can be.
func (r *reader) layout(g *Garden) {
	for i, s := range g.Spaces {
		for _, other := range g.Spaces[:i] {
			if clash(s, other) {
				r.at(r.points[s.ID], fmt.Sprintf("%s stands where %s stands", s.ID, other.ID),
					"Look at east, north, turn and the sizes of both.")
			}
		}
		r.crowded(s)
	}
}

// clash reports whether two spaces fill the same place. Storeys of a tiered
// planter stand over one another, and so may things at different heights.
func clash(a, b Space) bool {
	switch {
	case a.Kind == Tier && b.Kind == Tier || !placed(a) || !placed(b):
		return false
	case math.Min(a.Rim.HighM, b.Rim.HighM)-math.Max(base(a), base(b)) <= slackM && a.Rim.Known() && b.Rim.Known():
		return false
	}
	return overlapM(outline(a), outline(b)) > slackM
}

// placed reports whether a space has an outline on the plan. Shelves and
// benches may leave it out.
func placed(s Space) bool {
	return s.AreaM2() > 0 && (s.Grows() || s.X != 0 || s.Y != 0)
}

// base is the height of a space's underside above the ground.
func base(s Space) float64 { return s.Rim.LowM - math.Max(s.Depth.M, slackM*2) }

// piece is a convex part of a space's outline: corners anticlockwise, or a
// circle.
type piece struct {
	at  []geom.Vec
	mid geom.Vec
	r   float64 // 0 = corners
}

// outline is a space on the plan, as convex pieces.
func outline(s Space) []piece {
	mid := geom.Vec{X: s.X, Y: s.Y}
	if s.Round.Known() {
		return []piece{{mid: mid, r: s.Round.M / 2}}
	}
	fig := s.Figure
	if fig == nil {
		x, y := s.Length.M/2, s.Width.M/2
		fig = &geom.Figure{Pieces: []geom.Outline{{{X: -x, Y: -y}, {X: x, Y: -y}, {X: x, Y: y}, {X: -x, Y: y}}}}
	}
	var out []piece
	for _, p := range fig.At(mid, s.TurnDeg).Pieces {
		out = append(out, piece{at: p, mid: mid})
	}
	return out
}

// overlapM returns how far two outlines reach into one another, 0 or less when
// they do not: the most of any two of their pieces.
func overlapM(a, b []piece) float64 {
	most := math.Inf(-1)
	for _, p := range a {
		for _, q := range b {
			most = math.Max(most, p.into(q))
		}
	}
	return most
}

// into is how far two pieces reach into one another: the least over the axes
// that could part them.
func (p piece) into(q piece) float64 {
	axes := append(p.normals(), q.normals()...)
	for _, two := range [2][2]piece{{p, q}, {q, p}} {
		if two[0].r == 0 {
			continue
		}
		near := two[1].mid // a circle and the other's middle, or its nearest corner
		for _, c := range two[1].at {
			if c.Sub(two[0].mid).LevelLen() < near.Sub(two[0].mid).LevelLen() || near == two[1].mid {
				near = c
			}
		}
		axes = append(axes, near.Sub(two[0].mid))
	}
	least := math.Inf(1)
	for _, ax := range axes {
		if ax = ax.Unit(); ax.LevelLen() == 0 {
			continue
		}
		lowP, highP := p.along(ax)
		lowQ, highQ := q.along(ax)
		least = math.Min(least, math.Min(highP-lowQ, highQ-lowP))
	}
	return least
}

// normals are the directions square to the piece's edges.
func (p piece) normals() []geom.Vec {
	var out []geom.Vec
	for i, a := range p.at {
		b := p.at[(i+1)%len(p.at)]
		out = append(out, geom.Vec{X: b.Y - a.Y, Y: a.X - b.X})
	}
	return out
}

// along is the piece's extent along an axis.
func (p piece) along(ax geom.Vec) (low, high float64) {
	if p.r > 0 {
		m := p.mid.Dot(ax)
		return m - p.r, m + p.r
	}
	low, high = math.Inf(1), math.Inf(-1)
	for _, c := range p.at {
		d := c.Dot(ax)
		low, high = math.Min(low, d), math.Max(high, d)
	}
	return low, high
}

// crowdedTimes is how many times over a space may be filled before the count
// is taken for a slip: young plants and close sowings stand dense.
const crowdedTimes = 4

// crowded reports more plants than area could hold. Without a book's spacing
// nothing is said.
func (r *reader) crowded(s Space) {
	book, ok := r.book.(interface {
		SpacingM(id string) (float64, bool)
	})
	if !ok || s.AreaM2() <= 0 || !s.Grows() {
		return
	}
	need, count := 0.0, 0
	for _, p := range s.Standing {
		if d, ok := book.SpacingM(string(p.Crop)); ok {
			need += float64(p.Count) * d * d
			count += p.Count
		}
	}
	for _, o := range s.Others {
		need += o.AreaM2()
		count += o.Count
	}
	if count <= 1 {
		return // one tomato in a small bag is how it is done
	}
	room := s.AreaM2() + 0.05*float64(s.Pockets) // a pocket holds a plant of about 22 cm
	if need > crowdedTimes*room {
		r.at(r.plants[s.ID], fmt.Sprintf("%s is crowded", s.ID),
			fmt.Sprintf("Its plants want %.1f m², it has %.1f m². Look at the counts and the sizes.", need, room))
	}
}
