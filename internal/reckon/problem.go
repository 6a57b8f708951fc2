package reckon

import (
	"math"
	"sort"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
)

// Costs in meals of the first liking. All are common practice, no source: they
// say how a careful gardener weighs work and risk against food, and each is
// small beside what a planting gives.
const (
	costBatch    = 1.2   // a bed prepared, a sowing remembered
	costPlant    = 0.015 // seed, mix, water of one plant
	costSeedCell = 0.02  // a pot on the shelf
	potWeek      = 0.2   // a plant raised already and not thrown away, for each week under lamps: shelf, mix and care are in it
	costPacket   = 0.8   // a sowing's share of a packet that is still to buy
	overMinute   = 0.02  // a minute beyond the week's wish
	riskCost     = 0.5   // of what would be eaten of a planting, times its share of failures: a loss hurts more than it costs
	rotationCost = 0.6   // share of what would be eaten of a planting, put at risk by an early return
	afterShare   = 0.6   // of the wants after the plan's end: later sowings will serve the rest
	clearCost    = 3.0   // one more space cleared in a week than a third of them
	extraShare   = 0.12  // worth of a meal beyond the want, given away or dried
)

// Flowers for the bees, as common practice has it: something in flower in
// every week they fly. Half a dozen plants are enough for a small garden.
const (
	beesFood   = "flowers for the bees"
	beesPlants = 6
	beesWorth  = 0.15 // of a plant in flower for a week, in meals
)

// model is a season.Problem with the words behind its numbers.
type model struct {
	p       *season.Problem
	entries []Entry // growth behind the options
	entry   []int   // by option
	spaces  []int   // problem space to garden space
	index   map[garden.SpaceID]int
	foods   []string // shown name by problem food
	stays   []standing
	family  map[string]int
	bees    int // place of the flowers among the foods
	heard   []Heard
	drought *drought // nil = water is not limited
}

// newModel turns the garden, its menu and what stands into numbers.
func newModel(in *Inputs, p *Place, menu []Entry, stays []standing) *model {
	m := &model{entries: menu, index: map[garden.SpaceID]int{}, family: families(in.Book)}
	m.p = &season.Problem{
		Start: in.Date.Monday(), Weeks: in.Weeks + afterWeeks, Futures: in.Futures,
		OverCost: overMinute, RestCost: clearCost, Discount: 0.001,
		Totals: map[string]int{}, WorstShare: badShares[in.Garden.BadYears],
	}
	m.addBatches(in)
	m.addSpaces(in)
	m.p.ClearMax = max(2, len(m.p.Spaces)/3)
	m.addFoods(in)
	m.addShelf(in, stays)
	m.addMinutes(in)
	m.addWater(in, p)
	for _, s := range stays {
		if s.tray {
			m.p.Totals["tray."+s.id] = s.count
		}
	}
	for k := range menu {
		m.addOptions(in, p, k, stays)
	}
	for _, s := range stays {
		m.addStay(in, s)
	}
	m.addOthers(in)
	for _, must := range in.Garden.Musts {
		q := season.Must{Crop: string(must.Crop), Space: -1, Plants: must.Plants}
		if i, ok := m.index[must.Space]; ok && must.Space != "" {
			q.Space = i
		}
		q.Groups = m.raised(q)
		m.p.Musts = append(m.p.Musts, q)
	}
	m.refuse(in)
	m.leave(in)
	m.thin(m.spared(in))
	m.lock(in)
	m.mixFoods()
	return m
}

func families(b *crop.Book) map[string]int {
	var names []string
	seen := map[string]bool{}
	for _, c := range b.Crops {
		if !seen[c.Family] {
			seen[c.Family] = true
			names = append(names, c.Family)
		}
	}
	sort.Strings(names)
	out := map[string]int{}
	for i, n := range names {
		out[n] = i
	}
	return out
}

func (m *model) addBatches(in *Inputs) {
	start := in.Date.Monday()
	for _, b := range in.Garden.Batches {
		sb := season.Batch{ID: string(b.ID), Last: map[int]int{}}
		for _, h := range b.History {
			family := h.Family
			if c, ok := in.Book.Crop(crop.ID(h.Crop)); ok {
				family = c.Family
			}
			f, ok := m.family[family]
			if !ok {
				continue
			}
			w := int(math.Floor(float64(h.Until-start) / 7))
			if old, had := sb.Last[f]; !had || w > old {
				sb.Last[f] = w
			}
		}
		m.p.Batches = append(m.p.Batches, sb)
	}
}

func (m *model) addSpaces(in *Inputs) {
	for i, sp := range in.Garden.Spaces {
		if !sp.Grows() {
			continue
		}
		batch := -1
		for k, b := range in.Garden.Batches {
			if b.ID == sp.Medium {
				batch = k
			}
		}
		m.index[sp.ID] = len(m.p.Spaces)
		m.spaces = append(m.spaces, i)
		m.p.Spaces = append(m.p.Spaces, season.Space{
			ID: string(sp.ID), AreaM2: sp.AreaM2(), VolumeL: sp.VolumeL(),
			TallM2: tallArea(in.Garden, i), SupportM: supportM(sp), Batch: batch,
		})
	}
}

// tallArea is the ground on which tall plants may stand: all of a space with
// nothing growing close on its pole side, else the pole-side half. What they
// cost their neighbours there is a price on each start, see tallground.go.
func tallArea(g *garden.Garden, i int) float64 {
	sp := g.Spaces[i]
	if !sp.TallOK {
		return 0
	}
	pole := 1.0
	if g.Place.LatDeg < 0 {
		pole = -1
	}
	const near = 1.6 // metres: what a 1.8 m plant shades at a midsummer noon and some hours about it
	for j, o := range g.Spaces {
		if j == i || !o.Grows() || math.Abs(o.Rim.M-sp.Rim.M) > 1.2 {
			continue
		}
		dy := (o.Y - sp.Y) * pole
		if dy > 0.1 && dy-reach(sp)-reach(o) < near && math.Abs(o.X-sp.X) < reachX(sp)+reachX(o) {
			return sp.AreaM2() / 2
		}
	}
	return sp.AreaM2()
}

func reach(sp garden.Space) float64 {
	if sp.Round.Known() {
		return sp.Round.M / 2
	}
	t := sp.TurnDeg * math.Pi / 180
	return (math.Abs(sp.Length.M*math.Sin(t)) + math.Abs(sp.Width.M*math.Cos(t))) / 2
}

func reachX(sp garden.Space) float64 {
	if sp.Round.Known() {
		return sp.Round.M / 2
	}
	t := sp.TurnDeg * math.Pi / 180
	return (math.Abs(sp.Length.M*math.Cos(t)) + math.Abs(sp.Width.M*math.Sin(t))) / 2
}
