package garden

import (
	"fmt"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"bedweek/internal/unit"
)

func (r *reader) spaces(f fields) (spaces []Space) {
	r.points, r.plants = map[SpaceID]*token.Token{}, map[SpaceID]*token.Token{}
	r.named(f, "spaces", maxSpaces, func(p pair) {
		if s, ok := r.space(p); ok {
			spaces = append(spaces, s)
			r.points[s.ID] = p.at
		}
	})
	if p, ok := f.pairs["spaces"]; ok && null(p.value) {
		r.at(p.at, "no spaces", "Describe at least one growing space under it.")
	}
	r.plantingIDs(f, spaces)
	r.oneLimit(spaces)
	return spaces
}

func (r *reader) space(p pair) (Space, bool) {
	f, ok := r.fields(p.value, spaceShape(), p.at)
	if !ok {
		return Space{}, false
	}
	s := Space{
		ID: SpaceID(p.key), Name: f.name("name"), Kind: Kind(f.word("kind")),
		X: f.way("east"), Y: f.way("north"), TurnDeg: f.degrees("turn", unit.ParseTurn),
		Length: f.length("length", bound{0.05, 60, false}), Width: f.length("width", bound{0.05, 60, false}),
		Round: f.length("across", bound{0.05, 20, false}),
		Floor: f.length("floor", bound{-20, 300, false}), RimUp: f.length("rim", bound{0, 3, false}),
		Depth: f.length("depth", bound{0, 2, true}), Volume: f.volume("volume", bound{0, 50000, true}),
		Pockets: f.whole("pockets", bound{1, 500, false}), Water: f.word("water"), Dark: f.yes("dark", false),
	}
	if s.Name == "" && !f.has("name") {
		s.Name = p.key
	}
	f.odd(&s)
	s.Rim = rim(s.Floor, s.RimUp)
	s.TallOK = f.yes("tall", s.Grows() && s.Kind != Railing && s.Kind != Hanging && s.Kind != Tier)
	s.Medium = BatchID(f.refer("medium", "media"))
	f.sizes(s)
	s.Watering = f.watering(s)
	s.StandsOn, s.Bears = f.name("stands on"), f.bears("bears")
	r.listed(f, "supports", maxInSpace, func(n ast.Node, at *token.Token) {
		if one, ok := r.support(n, at); ok {
			s.Supports = append(s.Supports, one)
		}
	})
	r.listed(f, "covers", maxInSpace, func(n ast.Node, at *token.Token) {
		if one, ok := r.cover(n, at); ok {
			s.Covers = append(s.Covers, one)
		}
	})
	r.listed(f, "reached by", maxPeople, func(n ast.Node, at *token.Token) {
		if text, tk, ok := r.single(n, at, "reached by"); ok {
			r.refs = append(r.refs, ref{"people", text, tk})
			s.ReachedBy = append(s.ReachedBy, PersonID(text))
		}
	})
	s.Guessed = r.words(f, "guessed", spaceShape().names())
	if f.has("ended") {
		s.Until = f.day("ended")
	}
	r.listed(f, "standing", maxInSpace, func(n ast.Node, at *token.Token) {
		if one, ok := r.standing(n, at); ok {
			s.Standing = append(s.Standing, one)
		}
	})
	r.listed(f, OtherKey, maxInSpace, func(n ast.Node, at *token.Token) {
		if one, ok := r.other(n, at); ok {
			s.Others = append(s.Others, one)
		}
	})
	r.plants[s.ID] = f.where("standing")
	if len(s.Standing) == 0 {
		r.plants[s.ID] = f.where(OtherKey)
	}
	if len(s.Others) > 0 && s.Kind != "" && !s.Grows() {
		r.at(f.where(OtherKey), "something else on a "+string(s.Kind), "Nothing roots there, so it takes no ground. Take it out.")
	}
	return s, true
}

// rim adds the floor a space stands on to the height of its soil above it.
func rim(floor, up unit.Length) unit.Length {
	if !floor.Known() {
		return up
	}
	if !up.Known() {
		return floor
	}
	return unit.Length{M: floor.M + up.M, LowM: floor.LowM + up.LowM, HighM: floor.HighM + up.HighM,
		Typed: up.String() + " above a floor at " + floor.String()}
}

// way reads a place on the plan in metres east or north of its corner.
func (f fields) way(name string) float64 { return f.length(name, bound{-500, 500, false}).M }

// sizes checks that a space can be drawn, and that its sizes agree.
func (f fields) sizes(s Space) {
	flat := f.has("length") || f.has("width")
	switch {
	case f.has("shape") && (flat || f.has("across")):
		f.r.at(f.where("shape"), "a space with a shape and other sizes", "The shape says its own measures. Take length, width and across out.")
	case f.has("shape"):
	case f.has("across") && flat:
		f.r.at(f.where("across"), "a space both across and long", "Write across for a round one, length and width for the others.")
	case !f.has("across") && !(f.has("length") && f.has("width")):
		f.r.at(f.at, "the size of a space is missing", "Add length and width, across for a round one, or shape for an odd one.")
	}
	if s.Kind != "" && s.Grows() {
		for _, name := range []string{"east", "north", "medium", "water"} {
			if !f.has(name) {
				f.r.at(f.at, "a space without "+name, "Add a line "+name+": to it.")
			}
		}
		if !f.has("depth") && !f.has("volume") {
			f.r.at(f.at, "a space without depth", "Add the depth of medium, as depth: 30 cm, or its volume.")
		}
	}
	if s.Volume.Known() && s.Depth.Known() && s.AreaM2() > 0 {
		if holds := s.AreaM2() * s.Depth.M * 1000; s.Volume.LowL > 1.5*holds {
			f.r.at(f.where("volume"), "volume "+s.Volume.Typed,
				fmt.Sprintf("Its size and depth hold about %.0f L. Look at the unit, or at the sizes.", holds))
		}
	}
}

func (r *reader) support(n ast.Node, at *token.Token) (Support, bool) {
	f, ok := r.fields(n, supportShape(), at)
	if !ok {
		return Support{}, false
	}
	return Support{Kind: f.word("kind"), Length: f.length("length", bound{0, 60, true}),
		Height: f.length("height", bound{0, 6, true}), Side: f.word("side")}, true
}

// coverLight is the share of light a cover passes when the file does not say:
// common practice for meshes in use, not new.
func coverLight(kind string) (float64, bool) {
	switch kind {
	case "bird net":
		return 0.95, true
	case "insect net", "fleece":
		return 0.85, true
	case "cloche":
		return 0.8, true
	}
	return 0, false
}

func (r *reader) cover(n ast.Node, at *token.Token) (Cover, bool) {
	f, ok := r.fields(n, coverShape(), at)
	if !ok {
		return Cover{}, false
	}
	c := Cover{Kind: f.word("kind")}
	if share, ok := f.share("light"); ok {
		c.Light = share
	} else if usual, ok := coverLight(c.Kind); ok {
		c.Light = usual
	} else if c.Kind != "" && !f.has("light") {
		r.at(at, "a "+c.Kind+" without light", "Add the share that passes, as light: 70 %.")
	}
	text, tk, ok := f.text("on")
	switch {
	case !ok || text == "as needed":
	case text == "always":
		c.Always = true
	default:
		w, bad := when(text, r.south)
		if bad != nil {
			r.at(tk, "on "+clip(text)+" "+bad.what, "Write always, as needed, or 1 May 2015 to 30 June 2015.")
			break
		}
		c.From, c.To = w.Early, w.Late
	}
	return c, true
}

func (r *reader) standing(n ast.Node, at *token.Token) (Standing, bool) {
	f, ok := r.fields(n, standingShape(), at)
	if !ok {
		return Standing{}, false
	}
	s := Standing{Crop: f.crop("crop"), Variety: f.name("variety"), Count: f.whole("count", bound{1, 20000, false}),
		Looks: f.word("looks"), Keep: f.yes("keep", false)}
	if text, tk, ok := f.text("id"); ok && r.id(text, tk) {
		s.ID = text
	}
	r.listed(f, "one of", 20, func(n ast.Node, at *token.Token) {
		if text, tk, ok := r.single(n, at, "one of"); ok && r.nameFits(text, tk, "one of") {
			s.OneOf = append(s.OneOf, text)
		}
	})
	if f.has("variety") && f.has("one of") {
		r.at(f.where("one of"), "a planting with a variety and one of", "Keep variety when you know it, one of when you do not.")
	}
	key := "since"
	if f.has("set out") {
		key, s.SetOut = "set out", true
	}
	switch {
	case f.has("since") && f.has("set out"):
		r.at(f.where("set out"), "a planting with since and set out", "Keep one: since for sowing or planting, set out for young plants.")
	case !f.has(key):
		r.at(at, "a planting without a date", "Add since: early March 2015, or a guess such as about 2013.")
	}
	if w, tk, text, ok := f.window(key); ok {
		s.Since = w
		f.past(w, tk, text, key)
	}
	return s, true
}

// plantingIDs gives plantings their ids, from space and order where the file
// gives none, and reports ids given twice.
func (r *reader) plantingIDs(f fields, spaces []Space) {
	taken := map[string]bool{}
	for _, s := range spaces {
		for _, p := range s.Standing {
			if p.ID == "" {
				continue
			}
			if taken[p.ID] {
				r.at(r.points[s.ID], "planting id "+p.ID+" given twice", "Give each planting an id of its own, or leave ids out.")
			}
			taken[p.ID] = true
		}
	}
	for _, s := range spaces {
		for i := range s.Standing {
			id := fmt.Sprintf("%s-%d", s.ID, i+1)
			for n := 2; s.Standing[i].ID == "" && taken[id]; n++ {
				id = fmt.Sprintf("%s-%d-%d", s.ID, i+1, n)
			}
			if s.Standing[i].ID == "" {
				s.Standing[i].ID, taken[id] = id, true
			}
		}
	}
}

func (r *reader) obstacles(f fields) (all []Obstacle) {
	r.named(f, "obstacles", maxObstacles, func(p pair) {
		f, ok := r.fields(p.value, obstacleShape(), p.at)
		if !ok {
			return
		}
		o := Obstacle{ID: p.key, Name: f.name("name"), Kind: f.word("kind"),
			X: f.way("east"), Y: f.way("north"), TurnDeg: f.degrees("turn", unit.ParseTurn),
			Length: f.length("length", bound{0, 500, true}), Width: f.length("width", bound{0, 500, true}),
			Round: f.length("across", bound{0, 60, true}), Height: f.length("height", bound{0, 300, true}),
			Base: f.length("base", bound{0, 300, false})}
		if o.Name == "" && !f.has("name") {
			o.Name = p.key
		}
		f.outline(o.Kind)
		if o.Base.Known() && o.Height.Known() && o.Base.M >= o.Height.M {
			r.at(f.where("base"), "a base above the top", "Both are heights above the ground: the underside and the top.")
		}
		f.leaves(&o)
		all = append(all, o)
	})
	return all
}

// outline checks that an obstacle has the sizes its kind needs.
func (f fields) outline(kind string) {
	round := kind == "post" || kind == "tree"
	switch {
	case kind == "":
	case round && !f.has("across"):
		f.r.at(f.at, "a "+kind+" without across", "Add its width across, as across: 4 m.")
	case !round && !(f.has("length") && f.has("width")):
		f.r.at(f.at, "the size of a "+kind+" is missing", "Add length and width. A thin wall is 10 cm wide.")
	}
}

// Shares of light a deciduous crown passes when the file does not say, in
// leaf and bare: from memory, measured crowns spread widely about them.
const (
	crownInLeaf = 0.15
	crownBare   = 0.6
)

func (f fields) leaves(o *Obstacle) {
	if o.Kind != "tree" {
		for _, name := range []string{"light in leaf", "light bare", "in leaf"} {
			if f.has(name) {
				f.r.at(f.where(name), name+" of a "+o.Kind, "Only trees have leaves. Take the line out.")
			}
		}
		return
	}
	o.LeafOn, o.LeafOff = crownInLeaf, crownBare
	if share, ok := f.share("light in leaf"); ok {
		o.LeafOn = share
	}
	if share, ok := f.share("light bare"); ok {
		o.LeafOff = share
	}
	text, tk, ok := f.text("in leaf")
	if !ok || text == "always" {
		o.LeafOff = o.LeafOn
		return
	}
	from, to, ok := months(text)
	if !ok || from == 0 {
		f.r.at(tk, "in leaf "+clip(text), "Write the months, as May to October, or always.")
		return
	}
	o.LeafFrom, o.LeafTo = from, to
}
