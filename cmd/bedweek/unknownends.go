package main

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/reckon"
	"bedweek/internal/unit"
	"bedweek/internal/web"
)

// guesses lists what nobody measured, and depths known only as a range: what
// bears on the whole garden first, since it may not be tried to the end.
func guesses(g *garden.Garden) []ends {
	var out []ends
	for _, key := range g.Guessed {
		switch key {
		case "wants":
			out = append(out, wantEnds(g))
		case "place":
			out = append(out, monthEnds(g))
		}
	}
	for _, sp := range g.Spaces {
		keys := slices.Clone(sp.Guessed)
		if sp.Depth.HighM-sp.Depth.LowM > 0.01 {
			keys = append(keys, "depth")
		}
		done := map[string]bool{"north": true, "width": true} // told with east and length
		for _, key := range keys {
			if !done[key] {
				done[key] = true
				out = append(out, guessEnds(g, sp, key))
			}
		}
	}
	return out
}

// Ends of what bears on the whole garden. Ours, not measured: a household's own
// word for what it eats is often out by a third; months of a town near by by
// 1.5 degrees.
const (
	wantPart = 1.0 / 3
	monthC   = 1.5
)

func wantEnds(g *garden.Garden) ends {
	e := ends{whole: true, what: web.Unknown{Key: "wants", Words: "What you eat: we took two people who eat a bit of everything.", Change: "It decides what is grown at all. Not tried."}}
	times := func(by float64) *garden.Garden {
		out := *g
		out.Wants = slices.Clone(g.Wants)
		for i := range out.Wants {
			out.Wants[i].Meals *= by
		}
		return &out
	}
	e.low, e.high = times(1-wantPart), times(1+wantPart)
	return e
}

func monthEnds(g *garden.Garden) ends {
	e := ends{whole: true, what: web.Unknown{Key: "months", Words: "The weather: months of the nearest listed place, from memory.", Change: "It moves every date. Not tried. A record of a station near you is best."}}
	if g.Place.Normals == nil {
		return e
	}
	warmer := func(by float64) *garden.Garden {
		out, n := *g, *g.Place.Normals
		for m := range 12 {
			n.TmaxC[m] += by
			n.TminC[m] += by
		}
		out.Place.Normals = &n
		return &out
	}
	e.low, e.high = warmer(-monthC), warmer(monthC)
	return e
}

// guessEnds makes the two ends of one guess in a garden of that space alone.
func guessEnds(g *garden.Garden, sp garden.Space, key string) ends {
	e := ends{what: web.Unknown{Space: string(sp.ID), Key: key, Change: "Not tried."}}
	if len(sp.Standing) == 0 && key != "east" {
		e.alike = fmt.Sprintln(key, sp.Kind, sp.Length, sp.Width, sp.Round, sp.Shape, sp.Depth, sp.Volume, sp.Rim, sp.Water, sp.Medium, sp.Dark, sp.ReachedBy)
	}
	low, high := sp, sp
	name := sp.Name
	switch key {
	case "depth":
		low.Depth, high.Depth = unit.Metres(sp.Depth.LowM), unit.Metres(sp.Depth.HighM)
		e.what.Words = fmt.Sprintf("%s: how deep it is. We took %s.", name, sp.Depth)
	case "length", "across":
		if sp.Round.Known() {
			low.Round, high.Round = unit.Metres(0.7*sp.Round.M), unit.Metres(1.3*sp.Round.M)
			e.what.Words = fmt.Sprintf("%s: how big it is. We took %s across.", name, sp.Round)
		} else {
			low.Length, high.Length = unit.Metres(0.7*sp.Length.M), unit.Metres(1.3*sp.Length.M)
			e.what.Words = fmt.Sprintf("%s: how big it is. We took %s by %s.", name, sp.Length, sp.Width)
		}
	case "standing":
		low.Standing = nil
		e.what.Words = fmt.Sprintf("%s: how many stand there, and since when.", name)
	case garden.OtherKey:
		low.Others, high.Others = wider(sp.Others, 0.7), wider(sp.Others, 1.3)
		e.what.Words = fmt.Sprintf("%s: how much ground the other things take that stand there.", name)
	case "medium":
		e.what.Words = fmt.Sprintf("%s: what it is filled with, and what grew in it before.", name)
		e.high = alone(g, high)
		e.after = func(day *reckon.Day) *garden.Garden { return tired(alone(g, low), sp.Medium, day) }
		return e
	case "water":
		low.Water, high.Water = "rain", "drip"
		e.what.Words = fmt.Sprintf("%s: how it gets water. We took %s; the ends are rain alone and a drip line.", name, sp.Water)
	case "east":
		e.what.Words = fmt.Sprintf("%s: where it stands. We put it beside the last one.", name)
		shaded, ok := behind(g, sp)
		if !ok {
			e.what.Change = "No house, wall or tree is described that could shade it, so its place changes nothing yet."
			return e
		}
		low.X, low.Y = shaded.X, shaded.Y
		high.X, high.Y = sp.X, sp.Y+farAway
		e.what.Words = fmt.Sprintf("%s: where it stands. The ends are the open, and the pole side of the tallest thing.", name)
	default:
		e.what.Words = name + ": " + strings.ReplaceAll(key, "-", " ") + " is guessed."
		return e
	}
	e.low, e.high = alone(g, low), alone(g, high)
	return e
}

// farAway is so far from everything, m, that nothing shades.
const farAway = 400

// behind is a space moved to the pole side of the tallest thing, a metre off.
func behind(g *garden.Garden, sp garden.Space) (garden.Space, bool) {
	var tall garden.Obstacle
	for _, o := range g.Obstacles {
		if o.Kind != "roof" && o.Height.M > tall.Height.M {
			tall = o
		}
	}
	if !(tall.Height.M > 1) {
		return sp, false
	}
	off := 1 + math.Max(math.Max(tall.Length.M, tall.Width.M), tall.Round.M)/2 + math.Max(math.Max(sp.Length.M, sp.Width.M), sp.Round.M)/2
	if g.Place.LatDeg < 0 {
		off = -off
	}
	sp.X, sp.Y = tall.X, tall.Y+off
	return sp, true
}

// tired is a garden whose batch bore, until last autumn, what a plan would put
// into it.
func tired(g *garden.Garden, batch garden.BatchID, day *reckon.Day) *garden.Garden {
	g.Batches = slices.Clone(g.Batches)
	for i := range g.Batches {
		if g.Batches[i].ID != batch {
			continue
		}
		seen := map[string]bool{}
		for _, sp := range day.Spaces {
			for _, l := range sp.Lines {
				if !l.Standing && !seen[l.CropID] {
					seen[l.CropID] = true
					g.Batches[i].History = append(slices.Clip(g.Batches[i].History), garden.Grew{Crop: garden.CropID(l.CropID), Until: cal.Of(day.Date.Year()-1, 10, 1)})
				}
			}
		}
	}
	return g
}

// alone is the garden with one space only; obstacles and wishes stay.
func alone(g *garden.Garden, sp garden.Space) *garden.Garden {
	out := *g
	out.Spaces = []garden.Space{sp}
	out.Musts, out.Nevers = nil, nil
	for _, n := range g.Nevers {
		if n.Space == "" || n.Space == sp.ID {
			out.Nevers = append(out.Nevers, n)
		}
	}
	return &out
}

// wider is what stands and is no crop, each times as wide.
func wider(all []garden.Other, times float64) []garden.Other {
	out := append([]garden.Other(nil), all...)
	for i := range out {
		out[i].OneM2 *= times * times
	}
	return out
}
