package reckon

import (
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
	"bedweek/internal/stand"
)

// standing is one planting that is there on the date: in the ground, or in a
// tray on the shelf or bench.
type standing struct {
	id      string
	space   int // index in the garden
	crop    *crop.Crop
	variety string
	oneOf   []string
	since   cal.Window
	setOut  bool
	count   int
	looks   string
	keep    bool
	tray    bool
	seen    cal.Day // last looked at, picked or counted; 0 = nobody said
	picked  cal.Day // last picked; 0 = never, as far as told
	assumed bool    // only taken to be as planned; see ledger.Assumed
	growth  stand.Growth
}

// looksWorth is the share of the expected picking still believed when a
// planting looks as said. Common practice, no source.
func looksWorth(looks string) float64 {
	switch looks {
	case "finished":
		return 0
	case "poor":
		return 0.5
	}
	return 1
}

// whatStands joins the garden file's standing plantings with the ledger: the
// file says what stood, the ledger what became of it and what came after.
func whatStands(in *Inputs) []standing {
	g := in.Garden
	byID := map[string]ledger.Planting{}
	if in.State != nil {
		for _, p := range in.State.Plantings {
			byID[p.ID] = p
		}
	}
	var out []standing
	inFile := map[string]bool{}
	for i, sp := range g.Spaces {
		for _, st := range sp.Standing {
			inFile[st.ID] = true
			c, ok := in.Book.Crop(crop.ID(st.Crop))
			if !ok {
				continue
			}
			s := standing{id: st.ID, space: i, crop: c, variety: st.Variety, oneOf: st.OneOf, since: st.Since,
				setOut: st.SetOut, count: st.Count, looks: st.Looks, keep: st.Keep}
			if p, ok := byID[st.ID]; ok && !applyLedger(in, &s, p) {
				continue
			}
			if s.since.Likely > in.Date {
				continue // not there yet on an earlier date
			}
			out = append(out, s)
		}
	}
	ids := make([]string, 0, len(byID))
	for id := range byID {
		ids = append(ids, id)
	}
	sort.Strings(ids)
	for _, id := range ids {
		p := byID[id]
		if inFile[id] {
			continue
		}
		c, ok := in.Book.Crop(crop.ID(p.Crop))
		if !ok {
			continue
		}
		s := standing{id: id, space: -1, crop: c, variety: p.Variety, oneOf: p.OneOf, count: p.Count, looks: p.Looks}
		day := p.Sown
		if p.SetOut != 0 {
			day, s.setOut = p.SetOut, true
		}
		if day == 0 || day > in.Date {
			continue
		}
		s.since = cal.Window{Early: day, Likely: day, Late: day}
		if !applyLedger(in, &s, p) || s.space < 0 {
			continue
		}
		out = append(out, s)
	}
	kept := out[:0]
	for _, s := range out {
		if v, ok := in.Book.Variety(s.crop.ID, s.variety); ok && s.variety != "" {
			s.crop = v // with own figures of that variety, if there are any
		}
		k := g.Spaces[s.space].Kind
		s.tray = k == garden.LampShelf || k == garden.Bench
		if s.tray && s.pastUse(in.Date) {
			continue
		}
		kept = append(kept, s)
	}
	return kept
}

// pastUse reports whether pots are older than any that are set out: somebody
// threw them away or gave them away and did not say so.
func (s standing) pastUse(on cal.Day) bool {
	return int(on-s.since.Likely) > int(7*s.crop.NurseryWeeks.High)+potsOld
}

// applyLedger brings a planting up to date; false when it no longer stands.
func applyLedger(in *Inputs, s *standing, p ledger.Planting) bool {
	if p.Ended != 0 && p.Ended <= in.Date {
		return false
	}
	for i, sp := range in.Garden.Spaces {
		if string(sp.ID) == p.Space {
			s.space = i
		}
	}
	if p.Count > 0 {
		s.count = p.Count
	}
	s.assumed = in.State.StillAssumed(p)
	s.seen, s.picked = max(p.LookedOn, p.LastPick), p.LastPick
	if p.Looks != "" {
		s.looks = p.Looks
	}
	if p.Variety != "" {
		s.variety, s.oneOf = p.Variety, nil
	} else if len(p.OneOf) > 0 {
		s.oneOf = p.OneOf
	}
	if p.SetOut != 0 && p.SetOut <= in.Date {
		s.setOut = true
		s.since = cal.Window{Early: p.SetOut, Likely: p.SetOut, Late: p.SetOut}
	}
	return true
}

// growStanding runs what stands to its natural end in every future.
func growStanding(in *Inputs, p *Place, stays []standing) {
	each(len(stays), in.Workers, func(i int) {
		s := &stays[i]
		if s.tray {
			return
		}
		way := crop.Sow
		switch {
		case s.setOut && hasWay(s.crop, crop.SetOut):
			way = crop.SetOut
		case hasWay(s.crop, crop.Sow):
		default:
			way = s.crop.Ways[0]
		}
		if s.crop.AutumnPlant && hasWay(s.crop, crop.Plant) {
			way = crop.Plant
		}
		day := max(s.since.Likely, in.Date.Monday()-pastDays+10)
		s.growth = p.Airs[s.space].Table(s.crop, stand.Worlds(s.crop, in.Futures, in.Seed)).Stand(way, day)
	})
}

func hasWay(c *crop.Crop, w crop.Way) bool {
	for _, x := range c.Ways {
		if x == w {
			return true
		}
	}
	return false
}

// whole is how much more a planting picked plant by plant still gives than its
// mean course says: the course thins out as plants are pulled, but those
// counted today are all there yet.
func whole(o stand.Outcome) float64 {
	left := o.Kg.Sum()
	if left <= 0 {
		return 1
	}
	return math.Max(1, float64(o.Total)/left)
}

// unseenPart is how far the picking of a planting nobody has seen for a while
// may lie from what is expected, either way. Ours, not measured.
const unseenPart = 0.4

// unseen widens the spread of what is only assumed: the futures' pickings are
// stretched evenly from less to more, and their mean stays.
func unseen(future, of int) float64 {
	return 1 + unseenPart*(2*(float64(future)+0.5)/float64(of)-1)
}

// offers reports whether a crop can be started in the plan at all.
func (m *model) offers(crop string) bool {
	for i := range m.p.Options {
		if m.p.Options[i].Crop == crop {
			return true
		}
	}
	return false
}

// over reports whether a planting was seen to be finished and nothing keeps it.
func (s standing) over() bool {
	return s.looks == "finished" && !s.keep && !s.crop.Perennial
}

// nearlyOver marks the crop of a planting that ends well before the plan does.
const nearlyOver = " (nearly over)"

// addStay makes the pull-or-keep choice of one planting in the ground.
func (m *model) addStay(in *Inputs, s standing) {
	if s.tray {
		return
	}
	g := s.growth
	weeks := m.p.Weeks
	start := in.Date.Monday()
	end := int(math.Floor(float64(g.EndOfUse.Late-start) / 7))
	if g.EndOfUse.None() {
		end = 2
	}
	if s.crop.Perennial {
		end = weeks - 1
	}
	if s.over() {
		end = 0 // said to be over: this week is its last
	}
	end = min(max(end, 0), weeks-1)
	st := season.Stay{
		ID: s.id, Crop: string(s.crop.ID), Space: m.index[in.Garden.Spaces[s.space].ID], Family: m.family[s.crop.Family],
		Food: -1, Plants: s.count, End: end, MustKeepTo: -1, VolumeL: s.crop.VolumeL.Low * float64(s.count),
		Tall: s.crop.HeightM.Value >= tallM,
	}
	if s.keep || s.crop.Perennial {
		st.MustKeepTo = end
	}
	if end < weeks-26 && m.offers(st.Crop) {
		// A must speaks of the season to come: what is nearly over does not
		// count for it, where it can be started again.
		st.Crop += nearlyOver
	}
	if s.crop.Support == "needed" && s.crop.Habit == "climbing" {
		st.SupportM = s.crop.SpacingM.Value * float64(s.count)
	}
	area := m.p.Spaces[st.Space].AreaM2
	top := 0.0
	st.Footprint = make([]float64, end+1)
	st.Minutes = make([]float64, end+1)
	for w := range st.Footprint {
		f := 0.0
		if w < len(g.FootprintM2) {
			f = float64(g.FootprintM2[w]) * float64(s.count)
		}
		top = math.Max(top, f)
		st.Footprint[w] = math.Min(math.Max(f, top), area)
		st.Minutes[w] = s.crop.MinutesWeek * float64(s.count)
	}
	st.Water = m.drought.drinks(s.crop, in.Garden.Spaces[s.space], s.space, 0, st.Footprint)
	if foods := foodsOf(in.Garden, s.crop); len(foods) > 0 {
		st.Food = foods[0]
	}
	share := looksWorth(s.looks) * float64(s.count)
	st.Meals = make([][]float32, len(g.Outcomes))
	for f, out := range g.Outcomes {
		row := make([]float32, end+1)
		share := share
		if s.assumed {
			share *= unseen(f, len(g.Outcomes))
		}
		if s.crop.Harvest == crop.Once {
			share *= whole(out)
		}
		for w, kg := range out.Kg.All() {
			if st.Food < 0 || s.crop.MealKg <= 0 {
				break
			}
			v := float64(kg) * share / s.crop.MealKg
			if s.looks == "bolting" && w > 1 {
				v = 0
			}
			if w <= end {
				row[w] = float32(v)
			}
		}
		st.Meals[f] = row
	}
	m.p.Stays = append(m.p.Stays, st)
	m.stays = append(m.stays, s)
}
