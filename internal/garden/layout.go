package garden

import (
	"fmt"
	"math"
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

// box is a rectangle or, with Half equal and round set, a circle.
type box struct {
	x, y, half, wide float64 // centre and half sides, m
	cos, sin         float64 // of the long side, clockwise from east
	round            bool
}

func outline(s Space) box {
	turn := s.TurnDeg * math.Pi / 180
	b := box{x: s.X, y: s.Y, half: s.Length.M / 2, wide: s.Width.M / 2, cos: math.Cos(turn), sin: -math.Sin(turn)}
	if s.Round.Known() {
		b.half, b.wide, b.round = s.Round.M/2, s.Round.M/2, true
	}
	return b
}

// overlapM returns how far two outlines reach into one another, 0 or less when
// they do not: the least over the axes that could part them.
func overlapM(a, b box) float64 {
	axes := [][2]float64{{a.cos, a.sin}, {-a.sin, a.cos}, {b.cos, b.sin}, {-b.sin, b.cos}}
	if a.round || b.round {
		if d := math.Hypot(b.x-a.x, b.y-a.y); d > 0 {
			axes = append(axes, [2]float64{(b.x - a.x) / d, (b.y - a.y) / d})
		}
	}
	for _, p := range [][2]box{{a, b}, {b, a}} { // a circle and the nearest corner
		if p[0].round && !p[1].round {
			if ax, ok := cornerAxis(p[0], p[1]); ok {
				axes = append(axes, ax)
			}
		}
	}
	least := math.Inf(1)
	for _, ax := range axes {
		apart := math.Abs(float64((b.x-a.x)*ax[0]) + float64((b.y-a.y)*ax[1]))
		least = math.Min(least, reach(a, ax)+reach(b, ax)-apart)
	}
	return least
}

// reach is half the extent of an outline along an axis.
func reach(b box, ax [2]float64) float64 {
	if b.round {
		return b.half
	}
	along := math.Abs(float64(b.cos*ax[0]) + float64(b.sin*ax[1]))
	across := math.Abs(float64(-b.sin*ax[0]) + float64(b.cos*ax[1]))
	return float64(b.half*along) + float64(b.wide*across)
}

// cornerAxis points from a circle's centre to the nearest corner of a
// rectangle.
func cornerAxis(c, rect box) ([2]float64, bool) {
	best, ax := math.Inf(1), [2]float64{}
	for _, sign := range [][2]float64{{1, 1}, {1, -1}, {-1, 1}, {-1, -1}} {
		x := rect.x + sign[0]*rect.half*rect.cos - sign[1]*rect.wide*rect.sin - c.x
		y := rect.y + sign[0]*rect.half*rect.sin + sign[1]*rect.wide*rect.cos - c.y
		if d := math.Hypot(x, y); d > 0 && d < best {
			best, ax = d, [2]float64{x / d, y / d}
		}
	}
	return ax, best < math.Inf(1)
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
	if !ok || s.AreaM2() <= 0 || s.Kind == LampShelf || s.Kind == Bench {
		return
	}
	need, count := 0.0, 0
	for _, p := range s.Standing {
		if d, ok := book.SpacingM(string(p.Crop)); ok {
			need += float64(p.Count) * d * d
			count += p.Count
		}
	}
	if count <= 1 {
		return // one tomato in a small bag is how it is done
	}
	room := s.AreaM2() + 0.05*float64(s.Pockets) // a pocket holds a plant of about 22 cm
	if need > crowdedTimes*room {
		r.at(r.points[s.ID], fmt.Sprintf("%s is crowded", s.ID),
			fmt.Sprintf("Its plants want %.1f m², it has %.1f m². Look at the counts and the sizes.", need, room))
	}
}
