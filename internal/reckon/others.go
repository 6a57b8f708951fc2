package reckon

import (
	"fmt"
	"math"
	"strconv"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/season"
	"bedweek/internal/shade"
)

// What stands in a space and is no crop of the book.
//
// Method: its ground is taken from the plan, week by week, to the last day it
// may stay; to the end of the plan when nobody said. With a height it stands as
// opaque boxes in the middle of its space and takes light there and around.
//
// Left out, and said so: its water, its food, what it gives, what it leaves
// behind in the soil.

// Else is one of them as a day's page tells it.
type Else struct {
	Name   string     // as typed
	AreaM2 float64    // ground of all of them
	Until  cal.Window // none = nobody said
	Words  string
}

// tallestShare is the most of a space its boxes cover: some ground is left to
// measure light on.
const tallestShare = 0.9

// gardenOn is the garden without what has gone by a day, or is yet to come.
func gardenOn(g *garden.Garden, on cal.Day) *garden.Garden {
	out := *g
	out.Spaces = append([]garden.Space(nil), g.Spaces...)
	for i := range out.Spaces {
		var here []garden.Other
		for _, o := range g.Spaces[i].Others {
			if o.Here(on) {
				here = append(here, o)
			}
		}
		out.Spaces[i].Others = here
	}
	return &out
}

// elseHere are the sentences about one space.
func elseHere(sp garden.Space, on cal.Day) (out []Else) {
	for _, o := range sp.Others {
		e := Else{Name: o.Name, AreaM2: math.Min(o.AreaM2(), sp.AreaM2()), Until: o.Until}
		what := "“" + o.Name + "”"
		if o.Count > 1 {
			what = strconv.Itoa(o.Count) + " " + what
		}
		switch {
		case !o.Here(on) && !o.Until.None() && o.Until.Late < on:
			e.AreaM2, e.Words = 0, fmt.Sprintf("%s: you said it stays until %s. Its ground counts as free. Is it gone?", what, o.Until)
			out = append(out, e)
			continue
		case !o.Here(on):
			continue
		}
		e.Words = fmt.Sprintf("%s: not in the book, we know nothing of its needs. It takes about %.2g m² here", what, e.AreaM2)
		if o.Until.None() {
			e.Words += ". Until when is not known, and the day it goes would tell us: till then its ground is taken."
		} else {
			e.Words += " until " + o.Until.String() + "; the plan counts with the last of these days."
		}
		if o.Height.Known() {
			e.Words += " Its shade is counted as that of a wall, in the middle of the space."
		} else {
			e.Words += " Its height is not known, so no shade of it is counted."
		}
		out = append(out, e)
	}
	return out
}

// addOthers takes the ground of what is no crop out of the plan. They stand
// behind the plantings in the problem's list.
func (m *model) addOthers(in *Inputs) {
	start := in.Date.Monday()
	for _, sp := range in.Garden.Spaces {
		at, ok := m.index[sp.ID]
		if !ok || !sp.Grows() {
			continue
		}
		for n, o := range sp.Others {
			if !o.Here(in.Date) {
				continue
			}
			end := m.p.Weeks - 1
			if !o.Until.None() {
				end = min(end, int(o.Until.Late-start)/7)
			}
			share := math.Min(1, o.AreaM2()/sp.AreaM2())
			st := season.Stay{ID: fmt.Sprintf("%s/%d", sp.ID, n+1), Space: at, Family: -1, Food: -1, Plants: o.Count,
				End: end, MustKeepTo: end, VolumeL: share * m.p.Spaces[at].VolumeL,
				Footprint: []float64{share * m.p.Spaces[at].AreaM2}, Tall: o.Height.Known() && o.Height.M >= tallM}
			m.p.Stays = append(m.p.Stays, st)
		}
	}
}

// otherBodies are the boxes of what stands in a space and has a height: side by
// side along it, together as large as the ground they take.
func otherBodies(sp garden.Space) (out []shade.Body) {
	length, width := evenBox(sp)
	total := 0.0
	for _, o := range sp.Others {
		if o.Height.Known() {
			total += o.AreaM2()
		}
	}
	if total <= 0 || length <= 0 || width <= 0 {
		return nil
	}
	fit := math.Min(1, tallestShare*length*width/total)
	side := math.Sqrt(fit * total / (length * width)) // the boxes together have the space's own form
	at := -side * length / 2
	turn := sp.TurnDeg * math.Pi / 180
	for n, o := range sp.Others {
		if !o.Height.Known() {
			continue
		}
		long := side * length * o.AreaM2() / total
		mid := at + long/2
		at += long
		out = append(out, shade.Box(fmt.Sprintf("%s else %d", sp.ID, n+1), sp.X+mid*math.Cos(turn), sp.Y-mid*math.Sin(turn), sp.TurnDeg,
			long, side*width, sp.Rim.M, sp.Rim.M+o.Height.M))
	}
	return out
}

// evenBox is a box of a space's area: its own, or for a round or odd one that of
// the same form.
func evenBox(sp garden.Space) (length, width float64) {
	length, width = sp.Length.M, sp.Width.M
	if sp.Round.Known() {
		length, width = sp.Round.M, sp.Round.M
	}
	if length <= 0 || width <= 0 {
		return 0, 0
	}
	k := math.Sqrt(sp.AreaM2() / (length * width))
	return k * length, k * width
}

// thirstless names what drinks here and is not counted.
func thirstless(sp garden.Space, on cal.Day) (out []string) {
	for _, o := range sp.Others {
		if o.Here(on) {
			out = append(out, o.Name+" (not in the book: its thirst is not counted)")
		}
	}
	return out
}
