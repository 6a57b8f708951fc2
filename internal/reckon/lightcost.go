package reckon

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/shade"
)

// ErrNoThing says that nothing of that name stands in the light.
var ErrNoThing = errors.New("nothing of that name stands here")

// leastHours is the least change of a month's mean worth a line, hours a day.
const leastHours = 0.1

// ThingCost is what one thing takes from the spaces around it.
type ThingCost struct {
	No    int // its number among the bodies
	Name  string
	Total float64 // hours a day, over the months and spaces: for the order
	Rows  []HourChange
}

// HourChange is one space's sun, before and after something is changed, as
// mean hours a day by month.
type HourChange struct {
	Space, Name   string
	Before, After [12]float64
	MolBefore     [12]float64
	MolAfter      [12]float64
	Most          int // month of the greatest change
}

// By is the change in a month, hours a day.
func (h HourChange) By(m int) float64 { return h.After[m] - h.Before[m] }

// Thing is something that takes light, for a choice.
type Thing struct {
	No   int
	Name string
	Kind string // of an obstacle; "support" or "space" else
}

// Things lists what takes light.
func (d *LightDesk) Things() []Thing {
	var out []Thing
	for i, b := range d.light.Bodies {
		t := Thing{No: i, Name: d.thingName(i), Kind: "support"}
		if i < len(d.light.Garden.Obstacles) {
			t.Kind = d.light.Garden.Obstacles[i].Kind
		} else if strings.HasPrefix(b.Name, containerName) {
			t.Kind = "space"
		}
		out = append(out, t)
	}
	return out
}

// thingName is a body's name as the gardener gave it.
func (d *LightDesk) thingName(i int) string {
	g := d.light.Garden
	name := d.light.Bodies[i].Name
	if i < len(g.Obstacles) {
		return name
	}
	if id, ok := strings.CutPrefix(name, containerName); ok {
		if sp, ok := g.Space(garden.SpaceID(id)); ok {
			return spaceName(sp) + ", its sides"
		}
	}
	if id, n, ok := strings.Cut(name, " support "); ok {
		if sp, ok := g.Space(garden.SpaceID(id)); ok {
			return fmt.Sprintf("%s, support %s", spaceName(sp), n)
		}
	}
	if id, n, ok := strings.Cut(name, " else "); ok {
		sp, ok := g.Space(garden.SpaceID(id))
		if k, err := strconv.Atoi(n); ok && err == nil && k >= 1 && k <= len(sp.Others) {
			return sp.Others[k-1].Name + " in " + spaceName(sp)
		}
	}
	return name
}

// Costs says what each thing takes from the spaces, the dearest first: the
// light with it away, less the light as it is. It is worked out once; other
// questions are answered between one thing and the next.
func (d *LightDesk) Costs() ([]ThingCost, error) {
	if costs := d.knownCosts(); costs != nil {
		return costs, nil
	}
	out := []ThingCost{}
	for i := range d.light.Bodies {
		c, err := d.costOf(i)
		if err != nil {
			return nil, err
		}
		if len(c.Rows) > 0 {
			at := len(out)
			for at > 0 && out[at-1].Total < c.Total {
				at--
			}
			out = append(out[:at], append([]ThingCost{c}, out[at:]...)...)
		}
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.costs = out
	return out, nil
}

// knownCosts are the costs when they are worked out already.
func (d *LightDesk) knownCosts() []ThingCost {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.costs
}

// costOf is what one thing takes from the spaces.
func (d *LightDesk) costOf(i int) (ThingCost, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	c := ThingCost{No: i, Name: d.thingName(i)}
	rows, err := d.with(i, shade.Body{})
	if err != nil {
		return c, err
	}
	for _, r := range rows {
		if math.Abs(r.By(r.Most)) < leastHours {
			continue
		}
		c.Rows = append(c.Rows, r)
		for m := range 12 {
			c.Total += r.By(m)
		}
	}
	return c, nil
}

// with works out the light with b where body n stands, and puts n back. Every
// space is told, in walking order. Ground that b stands on is no part of its
// space while it does; ground that n stood on is.
func (d *LightDesk) with(n int, b shade.Body) ([]HourChange, error) {
	if n < 0 || n >= len(d.light.Bodies) {
		return nil, ErrNoThing
	}
	touched := d.light.Field.Shades(n)
	if err := d.light.Field.Replace(n, b); err != nil {
		return nil, fmt.Errorf("changing the scene: %w", err)
	}
	buried := d.light.buried
	d.light.buried = d.buriedWith(n, b)
	for s, shades := range d.light.Field.Shades(n) {
		touched[s] = touched[s] || shades || !slices.Equal(buried[s], d.light.buried[s])
	}
	hours, mol := slices.Clone(d.base), slices.Clone(d.mol)
	d.light.monthlyOf(touched, hours, mol)
	d.light.buried = buried
	if err := d.light.Field.Replace(n, d.light.Bodies[n]); err != nil {
		return nil, fmt.Errorf("putting the scene back: %w", err)
	}
	return d.changes(hours, mol), nil
}

// changes tells every space's light before and after.
func (d *LightDesk) changes(hours, mol [][12]float64) []HourChange {
	var out []HourChange
	for s := range hours {
		sp := d.light.Space(s)
		h := HourChange{Space: string(sp.ID), Name: spaceName(sp), Before: d.base[s], After: hours[s], MolBefore: d.mol[s], MolAfter: mol[s]}
		for m := range 12 {
			if math.Abs(h.By(m)) > math.Abs(h.By(h.Most))+1e-9 {
				h.Most = m
			}
		}
		out = append(out, h)
	}
	return out
}

// buriedWith is what no longer counts as ground with b where body n stands.
func (d *LightDesk) buriedWith(n int, b shade.Body) [][]bool {
	out := append([][]bool(nil), d.light.buried...)
	var all []shade.Body
	for s, surface := range d.light.Field.Surfaces() {
		if !anyTrue(buried(surface, []shade.Body{d.light.Bodies[n]})) && !anyTrue(buried(surface, []shade.Body{b})) {
			continue
		}
		if all == nil {
			all = append(all, d.light.Bodies...)
			all[n] = b
		}
		out[s] = buried(surface, all)
	}
	return out
}

func anyTrue(bs []bool) bool {
	for _, b := range bs {
		if b {
			return true
		}
	}
	return false
}
