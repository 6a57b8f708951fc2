package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/shade"
)

// What tall plantings of the plan take from their neighbours.
//
// Method: a planting that is tall stands as a box over the pole side of its
// space, as wide as its plants need, from the rim to its height of that week;
// leafLight of the light passes it. Each fourth week is tried against the scene
// without it, as it stands in that week.
//
// Left out: gaps between plants, and the shade within its own space.

// leafLight is the share of light that passes a stand of tall plants: common
// practice, no source; a row of pole beans or tomatoes lets about a third by.
const leafLight = 0.3

// TallCost is what one tall planting takes from one neighbour.
type TallCost struct {
	Planting      string // option id
	Crop          string
	Space, Name   string // where it stands
	HeightM       float64
	Neighbour     string // space id
	NeighbourName string
	Month         int // 1 to 12, of the greatest loss
	Hours         float64
	HoursByMonth  [12]float64
	Words         string
	Body          shade.Body `json:"-"`
}

// TallCosts tells what each tall planting of a day's plan costs the spaces
// around it, the dearest first; under leastHours nothing is said.
func (d *LightDesk) TallCosts(r *Result) ([]TallCost, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if r == nil || r.model == nil {
		return nil, nil
	}
	if d.tall.of == r {
		return d.tall.costs, nil
	}
	var out []TallCost
	for k, pl := range r.Plan.Plantings {
		o := r.Problem.Options[pl.Option]
		if o.TallFrom < 0 || pl.Plants < 1 {
			continue
		}
		sp := r.in.Garden.Spaces[r.model.spaces[o.Space]]
		g := r.model.entries[r.model.entry[pl.Option]].Growth
		line := r.plantedLine(k)
		from, to := r.Problem.Start+cal.Day(7*o.TallFrom), r.Problem.Start+cal.Day(7*o.End)
		worst := map[int]*TallCost{}
		for day := from; day <= to && day < from+365; day += 28 {
			week := int(day-r.Problem.Start)/7 - o.Week
			at := min(max(week+o.Week, 0), len(g.HeightM)-1) // heights go by plan week, places by the planting's own
			if at < 0 {
				break
			}
			area := float64(pl.Plants) * o.Footprint[min(max(week, 0), len(o.Footprint)-1)]
			body := tallBody(r.in.Garden, sp, area, float64(g.HeightM[at]))
			w := d.Week52(day) - 1
			peek, err := d.light.Field.Peek(w, len(d.light.Bodies), body)
			if err != nil {
				return nil, fmt.Errorf("trying a tall planting: %w", err)
			}
			now := d.light.Field.Week(w)
			month := int(day.Month()) - 1
			for s := range d.light.Field.Surfaces() {
				if string(d.light.Space(s).ID) == string(sp.ID) {
					continue
				}
				skip := func(i, j int) bool { return d.light.Buried(s, i, j) }
				lost := now.Surface(s, nil, skip).Hours.Mean - peek.Surface(s, nil, skip).Hours.Mean
				if lost < leastHours {
					continue
				}
				c := worst[s]
				if c == nil {
					c = &TallCost{Planting: o.ID, Crop: line.Crop, Space: string(sp.ID), Name: spaceName(sp),
						Neighbour: string(d.light.Space(s).ID), NeighbourName: spaceName(d.light.Space(s))}
					worst[s] = c
				}
				c.HoursByMonth[month] = max(c.HoursByMonth[month], lost)
				if lost > c.Hours {
					c.Hours, c.Month, c.HeightM, c.Body = lost, month+1, float64(g.HeightM[at]), body
				}
			}
		}
		for s := range d.light.Field.Surfaces() {
			if c := worst[s]; c != nil {
				c.Words = c.says(d.date)
				at := len(out)
				for at > 0 && out[at-1].Hours < c.Hours {
					at--
				}
				out = append(out[:at], append([]TallCost{*c}, out[at:]...)...)
			}
		}
	}
	d.tall = tallAnswer{r, out}
	return out, nil
}

// tallAnswer is TallCosts' answer for the last plan it was asked about.
type tallAnswer struct {
	of    *Result
	costs []TallCost
}

// says tells a cost in a sentence, its months told in the order they come
// from a date on.
func (c *TallCost) says(from cal.Day) string {
	first, last, n := 0, 0, 0
	for k := range 12 {
		m := (int(from.Month()) - 1 + k) % 12
		if c.HoursByMonth[m] >= leastHours {
			if n == 0 {
				first = m + 1
			}
			last, n = m+1, n+1
		}
	}
	when := "in " + monthName(c.Month)
	if n > 1 {
		when = fmt.Sprintf("in %s, its dearest month from %s to %s", monthName(c.Month), monthName(first), monthName(last))
	}
	return fmt.Sprintf("%s in %s, %.1f m tall, costs %s %.1f h of sun a day %s.", capital(c.Crop), c.Name, c.HeightM, c.NeighbourName, c.Hours, when)
}

// tallBody is a stand of tall plants on a space's pole side.
func tallBody(g *garden.Garden, sp garden.Space, areaM2, heightM float64) shade.Body {
	share := 1.0
	if a := sp.AreaM2(); a > 0 {
		share = min(max(areaM2/a, 0.05), 1)
	}
	at, turn, length, width := geom.Vec{X: sp.X, Y: sp.Y, Z: sp.Rim.M}, sp.TurnDeg, sp.Length.M, sp.Width.M
	if sp.Round.Known() {
		turn, length, width = 0, sp.Round.M*math.Sqrt(math.Pi)/2, sp.Round.M*math.Sqrt(math.Pi)/2
	}
	if sp.Figure != nil { // a box of its area
		k := math.Sqrt(sp.AreaM2() / (length * width))
		length, width = k*length, k*width
	}
	pole := geom.Direction(0, 0)
	if g.Place.LatDeg < 0 {
		pole = geom.Direction(180, 0)
	}
	across, along := geom.Direction(turn, 0), geom.Direction(turn+90, 0)
	move := func(axis geom.Vec, size float64) geom.Vec {
		d := axis
		if axis.Dot(pole) < 0 {
			d = axis.Scale(-1)
		}
		return d.Scale(size * (1 - share) / 2)
	}
	if math.Abs(across.Dot(pole)) >= math.Abs(along.Dot(pole)) {
		at = at.Add(move(across, width))
		width *= share
	} else {
		at = at.Add(move(along, length))
		length *= share
	}
	return shade.Body{Name: "tall plants", Parts: []shade.Part{{Solid: geom.NewBox(at, turn, length, width, heightM), InLeaf: leafLight, Bare: leafLight}}}
}

func monthName(m int) string {
	return [12]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}[(m+11)%12]
}
