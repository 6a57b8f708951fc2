package reckon

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/shade"
)

// WhatIf is a change to one thing, tried without touching the garden.
type WhatIf struct {
	Thing int    // its number, see Things
	Do    string // one of WhatIfs
	By    float64
}

// WhatIfWay is one way to change a thing.
type WhatIfWay struct {
	Do, Words, Unit string
	Usual           float64
	Least, Most     float64
}

// WhatIfWays are the ways, with the range of their figure.
func WhatIfWays() []WhatIfWay {
	return []WhatIfWay{
		{"remove", "Take it away", "", 0, 0, 0},
		{"lower", "Make it lower, by metres", "m", 0.5, 0.05, 300},
		{"raise", "Make it higher, by metres", "m", 0.5, 0.05, 300},
		{"north", "Move it north, by metres", "m", 1, 0.05, 100},
		{"south", "Move it south, by metres", "m", 1, 0.05, 100},
		{"east", "Move it east, by metres", "m", 1, 0.05, 100},
		{"west", "Move it west, by metres", "m", 1, 0.05, 100},
		{"net", "Make it a net that lets through, per cent", "%", 80, 1, 99},
		{"prune", "Thin its crown, to let through more, per cent of what it stops", "%", 30, 1, 99},
	}
}

// Try works a change out: the hours of every space before and after, and the
// change in words. It refuses in words what makes no sense.
func (d *LightDesk) Try(q WhatIf) ([]HourChange, string, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if q.Thing < 0 || q.Thing >= len(d.light.Bodies) {
		return nil, "", ErrNoThing
	}
	var way WhatIfWay
	for _, w := range WhatIfWays() {
		if w.Do == q.Do {
			way = w
		}
	}
	if way.Do == "" {
		return nil, "", fmt.Errorf("choose what to do with it")
	}
	if way.Unit != "" && !(q.By >= way.Least && q.By <= way.Most) {
		return nil, "", fmt.Errorf("give a figure from %g to %g %s", way.Least, way.Most, way.Unit)
	}
	if rows, words, ok := d.moved(q); ok {
		return rows, words, nil
	}
	body, words, err := d.changed(q)
	if err != nil {
		return nil, "", err
	}
	rows, err := d.with(q.Thing, body)
	return rows, words, err
}

// changed is the body as it would be.
func (d *LightDesk) changed(q WhatIf) (shade.Body, string, error) {
	old, name := d.light.Bodies[q.Thing], d.thingName(q.Thing)
	switch q.Do {
	case "remove":
		return shade.Body{}, fmt.Sprintf("Without %s.", name), nil
	case "net":
		return sieved(old, func(float64) float64 { return q.By / 100 }), fmt.Sprintf("%s as a net that lets %.0f %% through.", name, q.By), nil
	case "prune":
		clear := true
		for _, p := range old.Parts {
			clear = clear && p.InLeaf == 0 && p.Bare == 0
		}
		if clear {
			return old, "", fmt.Errorf("%s lets no light through, so it cannot be thinned: make it lower, or a net", name)
		}
		return sieved(old, func(t float64) float64 {
			if t == 0 {
				return 0 // a trunk
			}
			return t + (1-t)*q.By/100
		}), fmt.Sprintf("%s thinned: it stops %.0f %% less.", name, q.By), nil
	}
	if q.Thing >= len(d.light.Garden.Obstacles) {
		return d.changedOwn(q, old, name)
	}
	o := d.light.Garden.Obstacles[q.Thing]
	words := ""
	switch q.Do {
	case "raise":
		o.Height.M += q.By
		if o.Kind == "roof" && o.Base.Known() {
			o.Base.M += q.By // it is lifted, not made thicker
		}
		words = fmt.Sprintf("%s %g m higher.", name, q.By)
	case "lower":
		foot := o.Base.M
		if o.Kind == "roof" {
			foot = 0
		}
		if o.Height.M-q.By <= foot+0.01 {
			return old, "", fmt.Errorf("%s is only %.2f m high: take it away instead", name, o.Height.M-foot)
		}
		o.Height.M -= q.By
		if o.Kind == "roof" && o.Base.Known() {
			o.Base.M -= q.By
		}
		words = fmt.Sprintf("%s %g m lower.", name, q.By)
	default:
		dx, dy := step(q.Do, q.By)
		o.X, o.Y = o.X+dx, o.Y+dy
		words = fmt.Sprintf("%s %g m to the %s.", name, q.By, q.Do)
	}
	return body(o), words, nil
}

// moved moves a whole space, its ground, sides and supports, when the question
// is that; the light is then worked out anew, for the ground itself moves.
func (d *LightDesk) moved(q WhatIf) ([]HourChange, string, bool) {
	id, own := strings.CutPrefix(d.light.Bodies[q.Thing].Name, "space ")
	dx, dy := step(q.Do, q.By)
	if q.Thing < len(d.light.Garden.Obstacles) || !own || dx == 0 && dy == 0 {
		return nil, "", false
	}
	g := *d.light.Garden
	g.Spaces = append(g.Spaces[:0:0], g.Spaces...)
	words := ""
	for i := range g.Spaces {
		if sp := &g.Spaces[i]; string(sp.ID) == id {
			sp.X, sp.Y = sp.X+dx, sp.Y+dy
			words = fmt.Sprintf("%s %g m to the %s, with all that belongs to it.", spaceName(*sp), q.By, q.Do)
		}
	}
	c := d.light.Field.Course()
	other := newGardenLight(&g, d.edges, d.rec, d.norm, d.light.Field.Day(0).Monday(), c.Weeks(), shade.QuickLooks(), false, 1)
	hours, mol := other.monthly()
	return d.changes(hours, mol), words, true
}

// changedOwn changes a support, or the height of a space's sides.
func (d *LightDesk) changedOwn(q WhatIf, old shade.Body, name string) (shade.Body, string, error) {
	g := *d.light.Garden
	g.Spaces = append(g.Spaces[:0:0], g.Spaces...)
	for i := range g.Spaces {
		sp := &g.Spaces[i]
		own := old.Name == "space "+string(sp.ID)
		sp.Supports = append(sp.Supports[:0:0], sp.Supports...)
		dx, dy := step(q.Do, q.By)
		for k := range sp.Supports {
			if old.Name != fmt.Sprintf("%s support %d", sp.ID, k+1) {
				continue
			}
			switch q.Do {
			case "raise":
				sp.Supports[k].Height.M += q.By
			case "lower":
				sp.Supports[k].Height.M = math.Max(0, sp.Supports[k].Height.M-q.By)
			default:
				sp.X, sp.Y = sp.X+dx, sp.Y+dy
			}
		}
		if own && (q.Do == "raise" || q.Do == "lower") {
			return old, "", fmt.Errorf("a space's height is part of the garden's description: change it there")
		}
	}
	words := fmt.Sprintf("%s %g m to the %s.", name, q.By, q.Do)
	switch q.Do {
	case "raise":
		words = fmt.Sprintf("%s %g m higher.", name, q.By)
	case "lower":
		words = fmt.Sprintf("%s %g m lower.", name, q.By)
	}
	for _, b := range bodies(&g) {
		if b.Name == old.Name {
			return b, words, nil
		}
	}
	return shade.Body{}, words, nil // lowered to nothing
}

func step(way string, by float64) (dx, dy float64) {
	switch way {
	case "north":
		return 0, by
	case "south":
		return 0, -by
	case "east":
		return by, 0
	case "west":
		return -by, 0
	}
	return 0, 0
}

// sieved is a body with other shares of light.
func sieved(b shade.Body, share func(float64) float64) shade.Body {
	out := shade.Body{Name: b.Name, Parts: append([]shade.Part(nil), b.Parts...)}
	for i := range out.Parts {
		out.Parts[i].InLeaf, out.Parts[i].Bare = share(out.Parts[i].InLeaf), share(out.Parts[i].Bare)
	}
	return out
}
