package names

import (
	"fmt"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

func gardenID(s string) garden.SpaceID { return garden.SpaceID(s) }

const lampShelf = garden.LampShelf

// Which is the question "which one is this?" about one group.
type Which struct {
	*Group
	Known      bool        // it has a name; the page then asks whether it is right
	Candidates []Candidate // at most three, likeliest first
	Others     []string    // more that it could be
	Even       bool        // nothing tells them apart yet
	Feature    string      // the one to look at, "" = none is known
	Seen       cal.Window  // when it can be seen; none = not known
	Young      bool        // not yet
	Basis      string
	Missing    []string // varieties whose feature nobody described
	Features   []string // to choose from, when describing
}

// Candidate is one name it could have.
type Candidate struct {
	Name   string
	From   string // group it would come from
	Of20   int
	Value  string              // of the feature, "" = not described
	By     string              // who says so
	Shape  string              // drawing of the value, "" = words only
	Behind string              // why so many dots
	Own    *ledger.PictureNote // the latest picture taken here of plants known to be it; nil = none
}

// usual features to describe a variety by.
var usualFeatures = []string{"leaf edge", "leaf colour", "stalk colour", "leaf hair", "habit", "flower", "fruit", "pod", "root colour", "smell", "seed"}

// shownMost is how many candidates fit the eye.
const shownMost = 3

// Which asks about a group.
func (d *Desk) Which(id string) (*Which, bool) {
	g, ok := d.groups[id]
	if !ok {
		return nil, false
	}
	w := &Which{Group: g, Known: !g.Unknown()}
	names, from, weights, behind := d.possible(g)
	if w.Even = len(names) > 1; w.Even {
		for _, x := range weights {
			w.Even = w.Even && x == weights[0]
		}
	}
	w.pickFeature(d, names)
	dots := []int{}
	if len(names) > 0 {
		dots = twenty(weights)
	}
	for i, n := range names {
		c := Candidate{Name: n, From: from[i], Of20: dots[i], Behind: behind[i]}
		if t, ok := d.trait(g.CropID, n, w.Feature); ok && w.Feature != "" {
			c.Value, c.By, c.Shape = t.Value, byWords(t.By), shapeOf(w.Feature, t.Value)
		} else if w.Feature != "" {
			w.Missing = append(w.Missing, n)
		}
		c.Own = d.ownPicture(g, n)
		w.Candidates = append(w.Candidates, c)
	}
	slices.SortStableFunc(w.Candidates, func(a, b Candidate) int { return b.Of20 - a.Of20 })
	if len(w.Candidates) > shownMost {
		for _, c := range w.Candidates[shownMost:] {
			w.Others = append(w.Others, c.Name)
		}
		w.Candidates = w.Candidates[:shownMost]
	}
	w.Features = usualFeatures
	return w, true
}

// ownPicture is the latest picture of other plants that bear a name for sure.
func (d *Desk) ownPicture(g *Group, variety string) (latest *ledger.PictureNote) {
	for i, n := range d.State.Pictures {
		h, ok := d.groups[n.Planting]
		if ok && h.ID != g.ID && h.CropID == g.CropID && h.Variety == variety && (latest == nil || n.On >= latest.On) {
			latest = &d.State.Pictures[i]
		}
	}
	return latest
}

// possible lists the names a group can have with their weights: by the plants
// taken from each group when it is one of several, else even.
func (d *Desk) possible(g *Group) (names, from []string, weights []float64, behind []string) {
	add := func(n, f string, w float64, why string) {
		for i := range names {
			if names[i] == n {
				weights[i] += w
				return
			}
		}
		names, from, weights, behind = append(names, n), append(from, f), append(weights, w), append(behind, why)
	}
	if g.Unknown() {
		for _, k := range d.threads[g.ID].Takes {
			if p, ok := d.groups[k.From]; ok && k.Count > 0 && slices.Contains(g.OneOf, p.Variety) {
				add(p.Variety, p.ID, float64(k.Count), "by how many stood in "+string(p.Tag))
			}
		}
		for _, n := range g.OneOf {
			if !slices.Contains(names, n) {
				add(n, "", 1, "nothing tells them apart yet")
			}
		}
		return
	}
	if g.Variety != "" {
		add(g.Variety, "", 1, "as noted")
	}
	for _, h := range d.Groups() { // what else of this crop it could have been swapped with
		if h.CropID == g.CropID && h.Variety != "" && h.ID != g.ID {
			add(h.Variety, "", 1, "stands in "+h.SpaceName)
		}
	}
	for _, l := range d.lots {
		if l.CropID == g.CropID && l.Variety != "" {
			add(l.Variety, "", 1, "is in the tin")
		}
	}
	return
}

func (d *Desk) trait(crop, variety, feature string) (ledger.Trait, bool) {
	for i := len(d.State.Traits) - 1; i >= 0; i-- {
		if t := d.State.Traits[i].Trait; t.Crop == crop && t.Feature == feature && strings.EqualFold(t.Variety, variety) {
			return t, true
		}
	}
	return ledger.Trait{}, false
}

// pickFeature chooses the one feature that parts the candidates: the one with
// the most different values described; seen sooner wins among equals. Without
// any, the crop's usual one is named.
func (w *Which) pickFeature(d *Desk, names []string) {
	best, bestParts := "", 1
	var all []string
	for _, t := range d.State.Traits {
		if t.Crop == w.CropID && !slices.Contains(all, t.Feature) {
			all = append(all, t.Feature)
		}
	}
	for _, f := range all {
		values := map[string]bool{}
		for _, n := range names {
			if t, ok := d.trait(w.CropID, n, f); ok {
				values[strings.ToLower(t.Value)] = true
			}
		}
		if len(values) > bestParts || len(values) == bestParts && best != "" && d.week(w.CropID, f) < d.week(w.CropID, best) {
			best, bestParts = f, len(values)
		}
	}
	w.Basis = "how they look: as described here"
	if best == "" {
		for _, f := range d.facts.features[w.CropID] {
			best = f.name
			break
		}
		w.Basis = "what to look at: common practice"
	}
	w.Feature = best
	begun := w.Sown
	if begun == 0 || best == "" {
		return
	}
	if week := d.week(w.CropID, best); week > 0 {
		at := begun + cal.Day(7*week)
		w.Seen = cal.Window{Early: at - 7, Likely: at, Late: at + 14}
		w.Young = d.Date < w.Seen.Early
		w.Basis += "; when it shows: common practice"
	}
}

// week is from when a feature shows, weeks after sowing; 0 = not known.
func (d *Desk) week(crop, feature string) int {
	for _, f := range d.facts.features[crop] {
		if f.name == feature {
			return f.week
		}
	}
	switch feature {
	case "leaf edge", "leaf hair", "leaf colour", "stalk colour", "smell":
		return 5
	}
	return 0
}

func byWords(by string) string {
	switch by {
	case "packet":
		return "from the packet"
	case "own eyes":
		return "seen here"
	}
	return "as somebody said"
}

// Lookalikes says how a crop's near relations differ by the feature looked at:
// for when the crop itself is in doubt.
func (d *Desk) Lookalikes(g *Group) []string {
	c, ok := d.Book.Crop(crop.ID(g.CropID))
	if !ok {
		return nil
	}
	var out []string
	for _, o := range d.Book.Crops {
		if species(o) != species(c) || o.ID == c.ID {
			continue
		}
		for _, f := range d.facts.features[string(o.ID)] {
			if f.value != "" {
				out = append(out, fmt.Sprintf("%s: %s %s, from about week %d", o.Name, f.name, f.value, f.week))
			}
		}
	}
	return out
}

// Change is one group that a correction would change.
type Change struct {
	*Group        // as it would be
	Was    string // the name before
	Now    string
	Count  int // plants before, when they change
	Lost   bool
	Packet string // what would change about its packet, "" = nothing
}

// Preview tells what a correction would change besides the group itself.
func (d *Desk) Preview(b ledger.Naming) ([]Change, error) {
	e, err := ledger.NewEvent("preview", d.Date, ledger.Named, b)
	if err != nil {
		return nil, err
	}
	if n := len(d.events); n > 0 {
		e.Seq = d.events[n-1].Seq + 1
	} else {
		e.Seq = 1
	}
	state := ledger.ReplayOver(d.standing, append(slices.Clone(d.events), e))
	after, err := New(d.Garden, d.Book, &state, d.standing, append(slices.Clone(d.events), e), d.Date)
	if err != nil {
		return nil, err
	}
	var out []Change
	for _, id := range after.order {
		g, was := after.groups[id], d.groups[id]
		switch {
		case was == nil:
			out = append(out, Change{Group: g, Was: "part of " + string(d.groups[b.Planting].Tag), Now: g.Name()})
		case was.Name() != g.Name() || was.Count != g.Count || was.Lot != g.Lot:
			c := Change{Group: g, Was: was.Name(), Now: g.Name()}
			if was.Count != g.Count {
				c.Count = was.Count
			}
			if was.Lot != g.Lot {
				c.Packet = "no longer counted as from its packet"
				if l, ok := after.Lot(g.Lot); ok {
					c.Packet = "now from the packet " + string(l.Tag)
				}
			}
			out = append(out, c)
		}
	}
	return out, nil
}
