package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/garden"
)

// Heights of a rim that suit a seat, m: pages on access give 60 to 75 cm, some
// 86; a gardener in a wheelchair calls 60 cm in from the rim hard work.
const (
	seatLowM  = 0.60
	seatHighM = 0.86
)

// seatTurnM is how far apart the edges of two spaces may lie to be worked from
// one seat between them: a chair turns in a circle of about 1.5 m (common
// practice of access guides), less the knees. Ours.
const seatTurnM = 1.2

// Reach says whether a person works at a space, and why.
type Reach struct {
	Person string // name
	Seated bool
	OK     bool
	Words  string // why not, or what of it is out of reach; "" = all of it
}

// PersonDay is somebody who works here.
type PersonDay struct {
	ID, Name string
	Seated   bool
	LiftKg   float64 // 0 = not said
	ReachM   float64 // 0 = not said
	Minutes  float64 // a week; 0 = not said
}

// people lists them.
func people(g *garden.Garden) []PersonDay {
	var out []PersonDay
	for _, p := range g.People {
		out = append(out, PersonDay{ID: string(p.ID), Name: p.Name, Seated: p.Seated, LiftKg: p.Lift.Kg, ReachM: p.Reach.M, Minutes: p.Minutes})
	}
	return out
}

// reaches says of each person whether the space is theirs to work: what the
// file says goes first, else standing people reach everything, and seated ones
// what has the height of a seat.
func reaches(g *garden.Garden, sp garden.Space) []Reach {
	var out []Reach
	for _, p := range g.People {
		r := Reach{Person: p.Name, Seated: p.Seated, OK: !p.Seated}
		if len(sp.ReachedBy) > 0 {
			r.OK = false
			for _, id := range sp.ReachedBy {
				r.OK = r.OK || id == p.ID
			}
			if !r.OK {
				r.Words = "not one of those the garden file names for it"
			}
		} else if p.Seated && !sp.Grows() {
			r.OK, r.Words = true, "trays can be brought to a table"
		} else if p.Seated {
			rim := sp.RimUp.M
			if sp.RimUp.Typed == "" {
				rim = sp.Rim.M
			}
			r.OK = rim >= seatLowM-0.005 && rim <= seatHighM+0.005
			if !r.OK {
				r.Words = fmt.Sprintf("its rim is %.0f cm up; a seat wants about 60 to 86", 100*rim)
			}
		}
		if far := deepest(sp); r.OK && p.Reach.M > 0 && far > p.Reach.M+0.02 {
			r.Words = fmt.Sprintf("reaches %.0f cm in; the middle lies %.0f cm in", 100*p.Reach.M, 100*far)
		}
		out = append(out, r)
	}
	return out
}

// deepest is how far its middle lies from the rim, worked from both sides.
func deepest(sp garden.Space) float64 {
	if sp.Round.M > 0 {
		return sp.Round.M / 2
	}
	if sp.Figure != nil {
		return sp.Figure.DeepM()
	}
	return math.Min(sp.Length.M, sp.Width.M) / 2
}

// edgeGap is the clear ground between two spaces on one floor, m, by their
// boxes along the compass; false when they lie on different floors or one was
// never placed.
func edgeGap(a, b garden.Space) (float64, bool) {
	if math.Abs(a.Floor.M-b.Floor.M) > 0.3 || unplaced(a) || unplaced(b) {
		return 0, false
	}
	aw, ah := halfBox(a)
	bw, bh := halfBox(b)
	dx := math.Max(0, math.Abs(a.X-b.X)-aw-bw)
	dy := math.Max(0, math.Abs(a.Y-b.Y)-ah-bh)
	return math.Hypot(dx, dy), true
}

func unplaced(sp garden.Space) bool { return sp.X == 0 && sp.Y == 0 }

// halfBox is half the width and height on the plan of the box around a space.
func halfBox(sp garden.Space) (w, h float64) {
	if sp.Round.M > 0 {
		return sp.Round.M / 2, sp.Round.M / 2
	}
	t := sp.TurnDeg * math.Pi / 180
	c, s := math.Abs(math.Cos(t)), math.Abs(math.Sin(t))
	return (c*sp.Length.M + s*sp.Width.M) / 2, (s*sp.Length.M + c*sp.Width.M) / 2
}

// nearBy lists the spaces that can be worked from one seat at a space, itself
// first.
func nearBy(g *garden.Garden, i int) []string {
	out := []string{string(g.Spaces[i].ID)}
	for k, sp := range g.Spaces {
		if gap, ok := edgeGap(g.Spaces[i], sp); k != i && ok && gap <= seatTurnM {
			out = append(out, string(sp.ID))
		}
	}
	return out
}

// sides says for every space on which hand it lies as one walks, "left",
// "right" or "" where the plan does not tell. The path is taken to run through
// the middle of each space's neighbours in walking order on the same floor.
func sides(g *garden.Garden) []string {
	out := make([]string, len(g.Spaces))
	for i, sp := range g.Spaces {
		if unplaced(sp) {
			continue
		}
		sx, sy, n := 0.0, 0.0, 0.0
		first, last := -1, -1
		for k := max(0, i-2); k <= min(len(g.Spaces)-1, i+2); k++ {
			o := g.Spaces[k]
			if unplaced(o) || math.Abs(o.Floor.M-sp.Floor.M) > 0.3 {
				continue
			}
			if first < 0 {
				first = k
			}
			last = k
			sx, sy, n = sx+o.X, sy+o.Y, n+1
		}
		if n < 3 || first == last {
			continue
		}
		dx, dy := g.Spaces[last].X-g.Spaces[first].X, g.Spaces[last].Y-g.Spaces[first].Y
		way := math.Hypot(dx, dy)
		if way < 0.5 {
			continue
		}
		off := (dx*(sp.Y-sy/n) - dy*(sp.X-sx/n)) / way // m to the left of the way
		switch {
		case off > sideM:
			out[i] = "left"
		case off < -sideM:
			out[i] = "right"
		}
	}
	return out
}

// sideM is how far off the path a space must lie to be said to lie on a side.
const sideM = 0.15
