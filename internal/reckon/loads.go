package reckon

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// LoadState is what full weights are against a limit.
type LoadState int

// States of a load, in rising order of concern.
const (
	Under    LoadState = iota // even the heavier end lies under the figure given
	NotAsked                  // nobody knows the limit
	MayPass                   // the heavier end lies over it
	Passes                    // even the lighter end lies over it
)

// Load is what stands full on one surface, against what that may carry.
type Load struct {
	Surface       string   // "Balcony", or the one space it carries
	Names         []string // what stands on it
	LowKg, HighKg float64  // drained but full, without plants
	LowM2, HighM2 float64  // kg on each square metre under the heaviest of them
	Bears         garden.Bears
	State         LoadState
	Words         string // one line, with its caution
}

// askOf closes every line about a load: no figure here judges a structure.
const askOf = " Plants, lamps, people and snow come on top. Ask a structural engineer or the landlord; local code comes first."

// Loads weighs what stands on each surface a garden speaks of, in walking order.
func Loads(g *garden.Garden) ([]Load, error) {
	book, err := water.LoadBook()
	if err != nil {
		return nil, err
	}
	var out []Load
	place := map[string]int{}
	for _, sp := range g.Spaces {
		if sp.StandsOn == "" && sp.Bears.Typed == "" {
			continue
		}
		name, key := spaceName(sp), "one "+string(sp.ID)
		if sp.StandsOn != "" {
			name, key = sp.StandsOn, "all "+sp.StandsOn
		}
		i, ok := place[key]
		if !ok {
			i = len(out)
			place[key] = i
			out = append(out, Load{Surface: name})
		}
		w := fullWeight(sp, medium(g, book, sp))
		if !sp.Grows() {
			w = potsWeight(g, sp, medium(g, book, sp))
		}
		out[i].add(sp, w)
	}
	for i := range out {
		out[i].judge()
	}
	return out, nil
}

// Small pots on a bench or lamp shelf: square, of 7 cm, with about 0.28 L of mix
// (common practice; the garden file counts a shelf's places by them), and up to
// 1 cm of water left in the trays they stand in.
const (
	smallPotL   = 0.28
	smallPotM2  = 0.07 * 0.07
	trayWaterMM = 10.0
)

// potsWeight is a bench or lamp shelf full of small pots, watered: as many as
// the garden file counts on all lamp shelves, shared out evenly, or as the
// bench's length and width hold. nil when neither is known. Lamps and the
// shelf itself are left out.
func potsWeight(g *garden.Garden, sp garden.Space, m water.Medium) *FullWeight {
	area, pots := sp.AreaM2(), 0.0
	if sp.Kind == garden.LampShelf {
		shelves := 0.0
		for _, o := range g.Spaces {
			if o.Kind == garden.LampShelf {
				shelves++
			}
		}
		pots = g.Shelf.Places / shelves
	}
	if pots <= 0 {
		pots = math.Floor(area/smallPotM2 + 1e-6)
	}
	if pots <= 0 {
		return nil
	}
	low, _ := water.SaturatedLoad(pots*smallPotL, m.DryKgM3.At(0), m.Full.At(0), 0, 0, area)
	high, _ := water.SaturatedLoad(pots*smallPotL, m.DryKgM3.At(1), m.Full.At(1), pots*smallPotM2*trayWaterMM, 0, area)
	return &FullWeight{LowKg: low.Kg, HighKg: high.Kg, LowKgM2: low.KgM2, KgM2: high.KgM2,
		Words: fmt.Sprintf("With %.0f small pots, watered, it carries %.0f to %.0f kg, without lamps.", pots, low.Kg, high.Kg)}
}

// add puts one space on the surface; a bench of no known size adds its limit
// alone.
func (l *Load) add(sp garden.Space, w *FullWeight) {
	if sp.Bears.Known() || l.Bears.Typed == "" {
		l.Bears = sp.Bears
	}
	if w == nil {
		return
	}
	l.Names = append(l.Names, spaceName(sp))
	l.LowKg, l.HighKg = l.LowKg+w.LowKg, l.HighKg+w.HighKg
	l.LowM2, l.HighM2 = max(l.LowM2, w.LowKgM2), max(l.HighM2, w.KgM2)
}

// judge holds the weight against the limit and says it.
func (l *Load) judge() {
	b := l.Bears
	low, high, most, per := l.LowKg, l.HighKg, b.Kg, "kg"
	if b.KgM2 > 0 {
		low, high, most, per = l.LowM2, l.HighM2, b.KgM2, "kg on a square metre"
	}
	on := "What stands there"
	if len(l.Names) > 0 {
		on = strings.Join(l.Names, ", ")
	}
	if b.KgM2 > 0 && len(l.Names) > 1 {
		on = "the heaviest of " + on
	}
	head := fmt.Sprintf("%s: full, %s weighs %.0f to %.0f %s.", l.Surface, on, low, high, per)
	switch {
	case len(l.Names) == 0:
		l.State = NotAsked
		head = l.Surface + ": what stands there is not known by weight here. Weigh a full tray and count."
	case !b.Known():
		l.State = NotAsked
		head += " What carries it may bear is not known."
	case low > most:
		l.State = Passes
		head += fmt.Sprintf(" That is more than the %s given. Take load off before you water.", b.Typed)
	case high > most:
		l.State = MayPass
		head += fmt.Sprintf(" That may be more than the %s given. Weigh one full before you add any.", b.Typed)
	default:
		head += fmt.Sprintf(" The figure given is %s.", b.Typed)
	}
	l.Words = sentence(head) + askOf
}
