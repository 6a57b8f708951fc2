package main

import (
	"context"
	"fmt"
	"math"
	"sort"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
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
	unknownMost  = 24 // guesses tried; alike spaces count once
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
		keep := func(list []web.Unknown, done bool) bool {
			d.mu.Lock()
			defer d.mu.Unlock()
			select {
			case <-d.over:
				return false
			default:
			}
			if d.text != text {
				return false
			}
			d.unknown.list, d.unknown.done = list, done
			return true
		}
		tryGuesses(context.WithoutCancel(ctx), in, keep)
	}()
	return nil, false
}

// ends are two gardens that differ in one guess, and how it is said. after,
// when set, makes the low end of what the high end's plan holds.
type ends struct {
	what      web.Unknown
	low, high *garden.Garden
	after     func(high *reckon.Day) *garden.Garden
	whole     bool   // the whole garden is planned, not one space
	alike     string // guesses that say the same are tried once; "" = none is alike
}

// tryGuesses plans under both ends of each guess, and orders the guesses by the
// meals between them; those not tried come last. keep takes the list after each
// and ends the work by returning false.
func tryGuesses(ctx context.Context, in reckon.Inputs, keep func(list []web.Unknown, done bool) bool) {
	all := guesses(in.Garden)
	out := make([]web.Unknown, len(all))
	for i, e := range all {
		out[i] = e.what
	}
	tried := make([]bool, len(all))
	known := map[string]int{}
	can := in.Record != nil || in.Normals != nil
	for i, e := range all {
		if !keep(ordered(out, tried), false) {
			return
		}
		if was, ok := known[e.alike]; ok && e.alike != "" {
			out[i].Worth, out[i].Change, tried[i] = out[was].Worth, "As for "+spaceNamed(in.Garden, out[was].Space)+", which is alike: "+out[was].Change, tried[was]
			continue
		}
		if e.high == nil || !can || len(known) >= unknownMost {
			continue
		}
		if change, worth, ok := between(ctx, in, e); ok {
			out[i].Change, out[i].Worth, tried[i] = change, worth, true
			known[or(e.alike, fmt.Sprint(i))] = i
		}
	}
	keep(ordered(out, tried), true)
}

func or(a, b string) string {
	if a == "" {
		return b
	}
	return a
}

func spaceNamed(g *garden.Garden, id string) string {
	sp, _ := g.Space(garden.SpaceID(id))
	return sp.Name
}

// ordered is the list by worth, those not tried last.
func ordered(list []web.Unknown, tried []bool) []web.Unknown {
	at := make([]int, len(list))
	for i := range at {
		at[i] = i
	}
	sort.SliceStable(at, func(a, b int) bool {
		if x, y := tried[at[a]], tried[at[b]]; x != y {
			return x
		}
		return list[at[a]].Worth > list[at[b]].Worth
	})
	out := make([]web.Unknown, len(list))
	for i, k := range at {
		out[i] = list[k]
	}
	return out
}

// between plans both ends of a guess. Its worth is what planning for the wrong
// end loses, whichever way round loses more: both ends' plans are carried on at
// one end with hardly any search, so that they are priced alike.
func between(ctx context.Context, in reckon.Inputs, e ends) (change string, worth float64, ok bool) {
	b, err := small(ctx, in, e.high, nil)
	if err != nil {
		return "", 0, false
	}
	if e.after != nil {
		e.low = e.after(b.Day)
	}
	a, err := small(ctx, in, e.low, nil)
	if err != nil {
		return "", 0, false
	}
	for _, way := range []struct {
		g            *garden.Garden
		right, wrong *reckon.Result
	}{{e.low, a, b}, {e.high, b, a}} {
		var value [2]float64
		for i, plan := range []*reckon.Result{way.right, way.wrong} {
			k := plan.Likeness()
			r, err := small(ctx, in, way.g, &k)
			if err != nil {
				return "", 0, false
			}
			value[i] = r.Plan.Value
		}
		worth = math.Max(worth, value[0]-value[1])
	}
	differ, of := apart(a.Day, b.Day)
	how, where := "Planned alone", "here"
	if e.whole {
		how, where = "Planned quickly", "in all"
	}
	if differ == 0 {
		return how + " under both ends, the plan " + where + " is the same.", worth, true
	}
	lost := "next to nothing"
	if worth >= 0.5 {
		lost = fmt.Sprintf("about %.0f meals' worth", worth)
	}
	return fmt.Sprintf("%s under both ends, %d of %d plantings %s differ. A plan for the wrong end loses %s.", how, differ, of, where, lost), worth, true
}

// small plans one small garden with little work; with a plan to begin at, with
// next to none.
func small(ctx context.Context, in reckon.Inputs, g *garden.Garden, from *ledger.KeptPlan) (*reckon.Result, error) {
	in.Garden, in.Work, in.Weeks, in.Progress, in.Clock = g, unknownWork, unknownWeeks, nil, nil
	if in.Prior = from; from != nil {
		in.Work = 1
	}
	if g.Place.Normals != nil && in.Record == nil {
		in.Normals = monthsOf(g)
	}
	state := ledger.ReplayOver(reckon.FromFile(g), nil)
	in.State = &state
	ground, err := reckon.NewGround(&in)
	if err != nil {
		return nil, err
	}
	return reckon.Reckon(ctx, &in, ground)
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
