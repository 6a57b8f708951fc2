package reckon

import (
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/unit"
)

// wished takes the gardener's wishes into the garden's own wants, musts,
// nevers, minutes, water and care for bad years. Wishes about single lines are left to the model. The
// caller's inputs stay as they are.
func (in *Inputs) wished() *Inputs {
	out := *in
	out.plain = in.Garden
	wishes := in.wishes()
	if len(wishes) == 0 {
		return &out
	}
	g := *in.Garden
	g.Wants, g.Musts, g.Nevers = slices.Clone(g.Wants), slices.Clone(g.Musts), slices.Clone(g.Nevers)
	for _, w := range wishes {
		switch w.What {
		case ledger.WishWant:
			g.Wants = append(g.Wants, garden.Want{Food: garden.FoodID(w.Food), Meals: w.Meals,
				Liking: likingOf(in.Garden, w.Food), From: w.First, To: w.Last})
		case ledger.WishMust:
			g.Musts = append(g.Musts, garden.Must{Crop: garden.CropID(w.Crop), Plants: w.Plants, Space: garden.SpaceID(w.Space)})
		case ledger.WishNever:
			g.Nevers = append(g.Nevers, garden.Never{Crop: garden.CropID(w.Crop), Space: garden.SpaceID(w.Space)})
		case ledger.WishMinutes:
			g.Minutes = max(minutesWished(&g)+w.Minutes, 1)
		case ledger.WishWater:
			g.WaterDay = litresADay(w.Litres)
		case ledger.WishBad:
			g.BadYears = w.Level
		}
	}
	out.Garden = &g
	return &out
}

// litresADay is a wish for water as the garden file would say it.
func litresADay(l float64) unit.Volume {
	return unit.Volume{L: l, LowL: l, HighL: l, Typed: fmt.Sprintf("%g L", l)}
}

// wishes are those of the record that count.
func (in *Inputs) wishes() []ledger.WishNote {
	if in.State == nil {
		return nil
	}
	return in.State.Wishes
}

// likingOf is the worth the garden file gives a food, 1 when it names none.
func likingOf(g *garden.Garden, food string) float64 {
	most := 0.0
	for _, w := range g.Wants {
		if string(w.Food) == food {
			most = max(most, w.Liking)
		}
	}
	if most == 0 {
		return 1
	}
	return most
}

// minutesWished is what the garden may ask of its people a week; 0 = no limit.
func minutesWished(g *garden.Garden) float64 {
	wish := g.Minutes
	if wish == 0 {
		for _, p := range g.People {
			wish += p.Minutes
		}
	}
	return wish
}

// wider is a ground on which every crop now offered has been grown: a wish may
// ask for one that was not.
func (g *Ground) wider(in *Inputs) *Ground {
	had := map[crop.ID]bool{}
	for c := range g.cells {
		had[c.crop.ID] = true
	}
	for _, e := range g.Menu {
		had[e.Crop.ID] = true
	}
	var more []*crop.Crop
	for _, c := range offered(in) {
		if !had[c.ID] {
			more = append(more, c)
		}
	}
	if len(more) == 0 {
		return g
	}
	out := *g
	menu, _ := menuOf(in, g.Place, more, nil, nil)
	out.Menu = append(slices.Clone(g.Menu), menu...)
	return &out
}

// absent reports whether a wish or a trial says that nobody is there on a day.
func (in *Inputs) absent(d cal.Day) bool {
	if in.away.Early != 0 && d >= in.away.Early && d <= in.away.Late {
		return true
	}
	for _, w := range in.wishes() {
		if w.What == ledger.WishAway && d >= w.Since && d <= w.Until {
			return true
		}
	}
	return false
}

// awayWeek reports whether most of a plan week has nobody there.
func (m *model) awayWeek(in *Inputs, w int) bool {
	n := 0
	for d := range cal.Day(7) {
		if in.absent(m.p.Start + cal.Day(7*w) + d) {
			n++
		}
	}
	return n >= 4
}

// leave empties the weeks of an absence: nobody starts anything, works or
// eats. What ripens then is picked by nobody.
func (m *model) leave(in *Inputs) {
	gone := make([]bool, m.p.Weeks)
	some := false
	for w := range gone {
		gone[w] = m.awayWeek(in, w)
		some = some || gone[w]
	}
	if !some {
		return
	}
	for f := range m.p.Foods {
		if f == m.bees {
			continue
		}
		for w := range m.p.Foods[f].Want {
			if gone[w] {
				m.p.Foods[f].Want[w] = 0
			}
		}
	}
	for w := range m.p.Minutes {
		if gone[w] {
			m.p.Minutes[w] = 0
		}
	}
	n := 0
	for i := range m.p.Options {
		o := m.p.Options[i]
		if gone[o.Week] || o.ShelfFrom >= 0 && gone[o.ShelfFrom] {
			continue
		}
		m.p.Options[n], m.entry[n] = o, m.entry[i]
		n++
	}
	m.p.Options, m.entry = m.p.Options[:n], m.entry[:n]
}
