package main

import (
	"context"
	"fmt"
	"math"
	"sort"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/unit"
	"bedweek/internal/web"
)

// unknowns is what was found about the guesses of one text.
type unknowns struct {
	text string
	list []web.Unknown
	done bool
}

// Work and weeks of one small re-planning: enough to see which crops come,
// too little to be the plan.
const (
	unknownWork  = 200_000
	unknownWeeks = 40
	unknownMost  = 16 // guesses tried
)

// unknowns lists the guesses by what knowing them would change. The first call
// for a text begins the work; ready is true once it is done.
func (d *desk) unknowns(ctx context.Context) ([]web.Unknown, bool) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.in.Garden == nil {
		return nil, true
	}
	if d.unknown.text == d.text {
		return append([]web.Unknown(nil), d.unknown.list...), d.unknown.done
	}
	d.unknown = unknowns{text: d.text}
	in, text := d.in, d.text
	d.idle.Add(1)
	go func() {
		defer d.idle.Done()
		list := tryGuesses(context.WithoutCancel(ctx), in, func() bool {
			d.mu.Lock()
			defer d.mu.Unlock()
			return d.text != text
		})
		d.mu.Lock()
		defer d.mu.Unlock()
		if d.unknown.text == text {
			d.unknown.list, d.unknown.done = list, true
		}
	}()
	return nil, false
}

// ends are two gardens that differ in one guess, and how it is said.
type ends struct {
	what      web.Unknown
	low, high *garden.Garden
}

// tryGuesses plans each space alone under both ends of each guess, and orders
// the guesses by the meals between them. stop ends it early.
func tryGuesses(ctx context.Context, in reckon.Inputs, stop func() bool) []web.Unknown {
	var out []web.Unknown
	for i, e := range guesses(in.Garden) {
		if stop() {
			return out
		}
		if e.low != nil && i < unknownMost && (in.Record != nil || in.Normals != nil) {
			a, errA := small(ctx, in, e.low)
			b, errB := small(ctx, in, e.high)
			if errA == nil && errB == nil {
				e.what.Worth = math.Abs(a.Plan.Value - b.Plan.Value)
				differ, of := apart(a, b)
				e.what.Change = fmt.Sprintf("Planned alone under both ends, %d of %d plantings here differ, about %.0f meals' worth apart.", differ, of, e.what.Worth)
				if differ == 0 && e.what.Worth < 0.5 {
					e.what.Change = "Planned alone under both ends, the plan here is the same."
				}
			}
		}
		out = append(out, e.what)
	}
	sort.SliceStable(out, func(i, j int) bool {
		if a, b := out[i].Space == "", out[j].Space == ""; a != b {
			return a // weather and meals bear on everything, and are not tried
		}
		return out[i].Worth > out[j].Worth
	})
	return out
}

// small plans one small garden with little work.
func small(ctx context.Context, in reckon.Inputs, g *garden.Garden) (*reckon.Day, error) {
	in.Garden, in.Work, in.Weeks, in.Progress, in.Clock = g, unknownWork, unknownWeeks, nil, nil
	state := ledger.ReplayOver(reckon.FromFile(g), nil)
	in.State = &state
	ground, err := reckon.NewGround(&in)
	if err != nil {
		return nil, err
	}
	r, err := reckon.Reckon(ctx, &in, ground)
	if err != nil {
		return nil, err
	}
	return r.Day, nil
}

// apart counts the plantings of two days that are not in the other: another
// crop, or the same more than three weeks apart.
func apart(a, b *reckon.Day) (differ, of int) {
	list := func(d *reckon.Day) []reckon.Line {
		var out []reckon.Line
		for _, sp := range d.Spaces {
			for _, l := range sp.Lines {
				if !l.Standing {
					out = append(out, l)
				}
			}
		}
		return out
	}
	mine, theirs := list(a), list(b)
	used := make([]bool, len(theirs))
	matched := 0
	for _, l := range mine {
		for k, o := range theirs {
			if gap := l.In.Likely - o.In.Likely; !used[k] && l.CropID == o.CropID && gap <= 21 && gap >= -21 {
				used[k] = true
				matched++
				break
			}
		}
	}
	of = max(len(mine), len(theirs))
	return of - matched, of
}

// guesses lists what nobody measured, and depths known only as a range.
func guesses(g *garden.Garden) []ends {
	var out []ends
	for _, sp := range g.Spaces {
		done := map[string]bool{}
		for _, key := range append(append([]string{}, sp.Guessed...), rangeOf(sp)...) {
			if key == "north" || key == "width" {
				continue
			}
			if done[key] {
				continue
			}
			done[key] = true
			out = append(out, guessEnds(g, sp, key))
		}
	}
	for _, key := range g.Guessed {
		switch key {
		case "wants":
			out = append(out, ends{what: web.Unknown{Key: "wants", Words: "What you eat: we took two people who eat a bit of everything.", Change: "It decides what is grown at all."}})
		case "place":
			out = append(out, ends{what: web.Unknown{Key: "months", Words: "The weather: months of the nearest listed place, from memory.", Change: "It moves every date. A record of a station near you is best."}})
		}
	}
	return out
}

func rangeOf(sp garden.Space) []string {
	if sp.Depth.HighM-sp.Depth.LowM > 0.01 {
		return []string{"depth"}
	}
	return nil
}

// guessEnds makes the two ends of one guess in a garden of that space alone.
func guessEnds(g *garden.Garden, sp garden.Space, key string) ends {
	e := ends{what: web.Unknown{Space: string(sp.ID), Key: key}}
	var low, high garden.Space = sp, sp
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
	case "medium":
		e.what.Words = fmt.Sprintf("%s: what it is filled with, and what grew in it before.", name)
		e.what.Change = "Rotation follows the soil. Not tried under other soils."
		return e
	case "water":
		e.what.Words = fmt.Sprintf("%s: how it gets water. We took %s.", name, sp.Water)
		e.what.Change = "It decides how soon it runs dry. Not tried under other ways."
		return e
	case "east":
		e.what.Words = fmt.Sprintf("%s: where it stands. We put it beside the last one.", name)
		e.what.Change = "Its shade depends on it."
		return e
	default:
		e.what.Words = name + ": " + strings.ReplaceAll(key, "-", " ") + " is guessed."
		return e
	}
	e.low, e.high = alone(g, low), alone(g, high)
	return e
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
