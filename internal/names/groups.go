package names

import (
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// Group is plants with one identity: sown together, and parted from others by
// a hand-over or a naming.
type Group struct {
	ID        string
	Tag       Tag
	CropID    string
	Crop      string // shown name
	Variety   string
	OneOf     []string
	Space     string
	SpaceName string
	Shelf     bool // stands on a lamp shelf or bench
	Count     int
	About     bool // the count is a share, not known
	Mixed     bool // a name given to one plant is not all's
	Sown      cal.Day
	SetOut    cal.Day
	Ended     cal.Day
	Cause     string
	Lot       string
	From      []string // groups it came from
	Steps     []ledger.Handed
	Named     []ledger.Called
	PickedKg  float64
	Picks     int
}

func (d *Desk) group(p ledger.Planting) *Group {
	t := d.threads[p.ID]
	g := &Group{ID: p.ID, Tag: d.tags.of[p.ID], CropID: p.Crop, Crop: d.cropName(p.Crop), Variety: p.Variety, OneOf: p.OneOf,
		Space: p.Space, SpaceName: d.spaceName(p.Space), Count: p.Count, About: t.About, Mixed: t.Mixed, Sown: p.Sown, SetOut: p.SetOut,
		Ended: p.Ended, Cause: p.Cause, Lot: p.Lot, From: t.From, Steps: t.Steps, Named: t.Named, PickedKg: p.PickedKg, Picks: p.Picks}
	if len(g.From) == 0 && p.From != "" {
		g.From = []string{p.From}
	}
	if sp, ok := d.Garden.Space(garden.SpaceID(p.Space)); ok {
		g.Shelf = !sp.Grows()
	}
	return g
}

// Group returns the plants called id.
func (d *Desk) Group(id string) (*Group, bool) {
	g, ok := d.groups[id]
	return g, ok
}

// Groups lists all groups that stand, in the garden's walking order.
func (d *Desk) Groups() []*Group {
	at := map[string]int{}
	for i, sp := range d.Garden.Spaces {
		at[string(sp.ID)] = i
	}
	var out []*Group
	for _, id := range d.order {
		if g := d.groups[id]; g.Stands(d.Date) {
			out = append(out, g)
		}
	}
	slices.SortStableFunc(out, func(a, b *Group) int { return at[a.Space] - at[b.Space] })
	return out
}

// Stands reports whether the group is there on a day.
func (g *Group) Stands(on cal.Day) bool {
	begun := g.Sown
	if begun == 0 {
		begun = g.SetOut
	}
	return begun <= on && (g.Ended == 0 || g.Ended > on)
}

// Name is the crop with its variety, or with what it may be.
func (g *Group) Name() string { return nameOf(g.Crop, g.Variety, g.OneOf) }

// Unknown reports whether the group has more than one possible name.
func (g *Group) Unknown() bool { return g.Variety == "" && len(g.OneOf) > 1 }

// CountWords says how many there are.
func (g *Group) CountWords() string {
	switch {
	case g.Count == 0:
		return "not counted"
	case g.About:
		return "about " + plantsOf(g.Count)
	}
	return plantsOf(g.Count)
}

// Pot is the pot as last said, "" when nobody did.
func (g *Group) Pot() string {
	for i := len(g.Steps) - 1; i >= 0; i-- {
		if g.Steps[i].Pot != "" {
			return g.Steps[i].Pot
		}
	}
	return ""
}

// step returns the last hand-over of a kind.
func (g *Group) step(k ledger.Kind) (ledger.Handed, bool) {
	for i := len(g.Steps) - 1; i >= 0; i-- {
		if g.Steps[i].Kind == k {
			return g.Steps[i], true
		}
	}
	return ledger.Handed{}, false
}

// Stick is a line to write on a stick: tag, name, day. At most 40 letters.
func (g *Group) Stick() string {
	name := g.Variety
	if name == "" {
		name = g.Crop
	}
	day := g.Sown
	if day == 0 {
		day = g.SetOut
	}
	s := fmt.Sprintf("%s, %s", g.Tag, name)
	if r := []rune(s); len(r) > 32 {
		s = string(r[:31]) + "…"
	}
	if day == 0 {
		return s
	}
	return s + ", " + day.Time().Format("2 Jan")
}

// Link is one station of a line of descent.
type Link struct {
	Lot   *Lot // one of Lot and Group is set
	Group *Group
	How   string // how it came to the next: "sown", "pricked out"
	On    cal.Day
	Deep  int // 0 = the one asked about; less = before, more = after
}

// Descent is the line a group stands in: packet, ancestors, itself, and what
// came from it, in order. Perhaps is true when the packet is only a likely one.
func (d *Desk) Descent(id string) (line []Link, perhaps bool) {
	g, ok := d.groups[id]
	if !ok {
		return nil, false
	}
	seen := map[string]bool{}
	var up func(g *Group, deep int)
	up = func(g *Group, deep int) {
		if seen[g.ID] || deep < -50 {
			return
		}
		seen[g.ID] = true
		for _, f := range g.From {
			if p, ok := d.groups[f]; ok {
				up(p, deep-1)
			}
		}
		if len(g.From) == 0 {
			if l, sure, ok := d.packet(g); ok {
				perhaps = !sure
				line = append(line, Link{Lot: &l, Deep: deep - 1, How: "sown"})
			}
		}
		how, on := d.birth(g)
		line = append(line, Link{Group: g, Deep: deep, How: how, On: on})
	}
	up(g, 0)
	var down func(id string, deep int)
	down = func(id string, deep int) {
		for _, c := range d.order {
			h := d.groups[c]
			if slices.Contains(h.From, id) && !seen[c] {
				seen[c] = true
				how, on := d.birth(h)
				line = append(line, Link{Group: h, Deep: deep, How: how, On: on})
				down(c, deep+1)
			}
		}
		for i := range d.lots {
			if d.lots[i].From == id {
				line = append(line, Link{Lot: &d.lots[i], Deep: deep, How: "seed saved"})
			}
		}
	}
	down(id, 1)
	return line, perhaps
}

// birth says how a group became one of its own.
func (d *Desk) birth(g *Group) (how string, on cal.Day) {
	for _, s := range g.Steps {
		if s.Event == g.ID {
			return string(s.Kind), s.On
		}
	}
	switch {
	case len(g.From) > 0 && g.SetOut != 0:
		return "set out", g.SetOut
	case len(g.From) > 0:
		return "parted from the others", 0
	case g.Sown != 0:
		return "sown", g.Sown
	case g.SetOut != 0:
		return "set out", g.SetOut
	}
	return "stood here", 0
}

// packet finds the lot a group was sown from: the one the entries name, or the
// only one of its crop and variety (sure is then false).
func (d *Desk) packet(g *Group) (l Lot, sure, ok bool) {
	if g.Lot != "" {
		if l, ok := d.Lot(g.Lot); ok {
			return l, true, true
		}
		return Lot{}, false, false
	}
	n := 0
	for _, x := range d.lots {
		if x.CropID == g.CropID && g.Variety != "" && x.Variety == g.Variety && x.From != g.ID && !x.Pieces &&
			(x.Year == 0 || g.Sown == 0 || x.Year <= g.Sown.Year()) && g.Sown != 0 {
			l, n = x, n+1
		}
	}
	return l, false, n == 1
}

// Origin says where a group comes from at last: a lot, or "" when that is not
// known.
func (d *Desk) Origin(id string) string {
	line, _ := d.Descent(id)
	for _, l := range line {
		if l.Lot != nil && l.Deep < 0 {
			return l.Lot.ID
		}
	}
	return ""
}

// species is the botanical species, of which varieties and crops cross.
func species(c *crop.Crop) string {
	words := 0
	for i, r := range c.Latin {
		if r == ' ' {
			if words++; words == 2 {
				return c.Latin[:i]
			}
		}
		if r == ';' {
			return c.Latin[:i]
		}
	}
	return c.Latin
}

// CrossingCaution says before seed is saved what else may father it.
func (d *Desk) CrossingCaution(id string) string {
	g, ok := d.groups[id]
	if !ok {
		return ""
	}
	c, ok := d.Book.Crop(crop.ID(g.CropID))
	if !ok {
		return ""
	}
	x, ok := d.facts.crossingOf(c)
	if !ok {
		return "We do not know how this crop is pollinated. Its seed may not come true."
	}
	var others []string
	for _, h := range d.Groups() {
		o, ok := d.Book.Crop(crop.ID(h.CropID))
		if h.ID == id || !ok || species(o) != species(c) || h.CropID == g.CropID && h.Variety == g.Variety && g.Variety != "" {
			continue
		}
		if w := h.Name(); !slices.Contains(others, w) {
			others = append(others, w)
		}
	}
	s := ""
	switch x.how {
	case "self":
		s = "It mostly pollinates itself: seed usually comes true."
	case "insects":
		s = "Insects carry its pollen: it crosses with others of its species, gardens around included."
	case "wind":
		s = "Wind carries its pollen far: it crosses with others of its species, gardens around included."
	}
	if len(others) > 0 && x.how != "self" {
		s += " In flower together, these would cross with it: " + orList(others) + "."
	}
	if x.year == "second" {
		s += " It flowers in its second year."
	}
	return s + " Seed of a hybrid (F1) does not come true. (Common practice of seed savers; selfing and crossing: " + d.facts.sources["MSU-DISTANCE"] + ".)"
}
