package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// waters are the ways of watering in plain words.
var waters = []Option{{Value: "can", Words: "By can or hose"}, {Value: "drip", Words: "By drip line"}, {Value: "reservoir", Words: "From a store below"}, {Value: "rain", Words: "By rain alone"}}

var waterDrawings = []Drawing{
	"M20 16H44V40H20ZM44 26L60 14M20 20C8 20 8 34 20 34M56 12L62 18", "M2 12H62M14 12V18M32 12V18M50 12V18M14 24C10 30 18 30 14 24M32 24C28 30 36 30 32 24M50 24C46 30 54 30 50 24",
	"M10 6H54V40H10ZM10 26H54M16 32C20 29 24 35 28 32S36 29 40 32S46 35 50 32M32 26V14", "M14 20C8 10 24 4 28 12C34 4 50 8 48 18C58 20 54 28 46 26H16C8 26 8 20 14 20M20 32L16 40M34 32L30 40M48 32L44 40",
}

var coverChoices = []string{"insect net", "bird net", "fleece", "shade cloth", "cloche"}

// spaceFields are the fields of a space as typed or as the file has them.
type spaceFields struct {
	id, like                           string
	isNew                              bool
	kind, name, size, depth, where     string
	rim, medium, water, dark, tall     string
	pockets, supports, standing, short string
	covers, who                        []string
	more                               []string // along moreKeys
	stay, group                        string
}

// moreKeys are sizes few people know, asked in the folded group under their
// own keys.
var moreKeys = []struct{ key, label, hint string }{
	{"emitter flow", "One emitter gives", "As 2 L an hour. Printed on the drip line."},
	{"emitter spacing", "Emitters stand apart", "As 30 cm."},
	{"line spacing", "Drip lines lie apart", "As 30 cm."},
	{"reservoir", "The water store holds", "As 12 L or 3 gal."},
	{"tier share", "Share of the water this storey gets", "As 40 %."},
	{"mulch", "Mulch", "As in the file: see the formats page."},
}

// spaceForm asks about one space: new (?kind= or ?like=) or known (?id=).
func (s *site) spaceForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	q := r.URL.Query()
	if v != nil {
		q = v
	}
	f := spaceFields{id: q.Get("id"), like: q.Get("like"), kind: q.Get("kind")}
	var was garden.Value
	switch {
	case f.id != "":
		sp, ok := d.g.Space(garden.SpaceID(f.id))
		if !ok {
			return nil, ErrNotThere
		}
		was, _ = garden.Look(d.text, "spaces", f.id)
		f.fromFile(was, sp.Name)
	case f.like != "":
		if _, ok := d.g.Space(garden.SpaceID(f.like)); !ok {
			return nil, ErrNotThere
		}
		was, _ = garden.Look(d.text, "spaces", f.like)
		f.fromFile(was, "")
		f.name, f.standing, f.isNew, f.id = "", "", true, ""
		if f.kind != string(garden.Tier) {
			f.where = ""
		}
		was = garden.Value{}
	default:
		f.isNew = true
		if f.kind == "" {
			f.kind = string(garden.RaisedBed)
		}
	}
	k, ok := kindOf(f.kind)
	if !ok {
		return nil, ErrNotThere
	}
	before := f
	if v != nil {
		f.fromForm(v)
		if k, ok = kindOf(f.kind); !ok {
			return nil, errBroken
		}
	}
	title := k.words
	if !f.isNew {
		title = f.name
	}
	p := s.newForm(r, d, v, title, "/entry/space")
	p.Lead = "All of it may stay empty. What you leave out we guess, and mark as guessed."
	s.spaceGroups(p, d, f, k)
	if !f.isNew {
		id := url.QueryEscape(f.id)
		p.Links = []Link{{Href: "/entry/plan?space=" + id, Words: "Move or turn it"}, {Href: "/entry/copies?id=" + id, Words: "More like this one"},
			{Href: "/entry/space?like=" + id, Words: "One like it, to change"}, {Href: "/entry/split?id=" + id, Words: "Split it in two"}, {Href: "/entry/turnover?id=" + id, Words: "Its soil: tip, mix, refill"}, {Href: "/entry/ending?id=" + id, Words: "It is gone"}}
	}
	if v != nil {
		s.spacePatches(p, d, f, before, was, k)
	}
	return p, nil
}

// fromFile fills the fields from the file, as typed.
func (f *spaceFields) fromFile(v garden.Value, name string) {
	f.kind, f.name = v.Get("kind"), name
	f.size = sizeLine(v)
	f.depth = joinComma(v.Get("depth"), v.Get("volume"))
	f.where = whereLine(v)
	f.rim, f.medium, f.water, f.pockets = v.Get("rim"), v.Get("medium"), v.Get("water"), v.Get("pockets")
	f.dark, f.tall = v.Get("dark"), v.Get("tall")
	f.more = nil
	for _, k := range moreKeys {
		f.more = append(f.more, v.Get(k.key))
	}
	var sup, st []string
	for _, x := range v.At("supports").List() {
		sup = append(sup, garden.SupportLine(x))
	}
	for _, x := range v.At("standing").List() {
		st = append(st, garden.StandingLine(x))
	}
	for _, x := range v.At("covers").List() {
		f.covers = append(f.covers, x.Get("kind"))
	}
	for _, x := range v.At("reached by").List() {
		f.who = append(f.who, x.Text)
	}
	f.supports, f.standing = strings.Join(sup, "\n"), strings.Join(st, "\n")
}

func joinComma(a, b string) string {
	if a != "" && b != "" {
		return a + ", " + b
	}
	return a + b
}

// sizeLine writes the outer size as SaySize reads it.
func sizeLine(v garden.Value) string {
	switch {
	case v.Get("across") != "":
		return v.Get("across") + " across"
	case v.Get("length") != "":
		return v.Get("length") + " x " + v.Get("width")
	}
	return ""
}

// whereLine writes a place on the plan as SayWhere reads it.
func whereLine(v garden.Value) string {
	if v.Get("east") == "" {
		return ""
	}
	s := v.Get("east") + " east, " + v.Get("north") + " north"
	if t := v.Get("turn"); t != "" {
		s += ", turned " + t
	}
	if fl := v.Get("floor"); fl != "" {
		s += ", " + fl + " up"
	}
	return s
}

// fromForm fills the fields with what was typed.
func (f *spaceFields) fromForm(v url.Values) {
	get := func(k string) string { return strings.TrimSpace(v.Get(k)) }
	f.kind, f.name, f.size, f.depth, f.where = get("kind"), get("name"), get("size"), get("depth"), get("where")
	f.rim, f.medium, f.water, f.pockets = get("rim"), get("medium"), get("water"), get("pockets")
	f.dark, f.tall, f.supports, f.standing, f.short = get("dark"), get("tall"), get("supports"), get("standing"), get("short")
	f.covers, f.who, f.stay, f.group = v["covers"], v["who"], get("stay"), get("group")
	if f.group != "" {
		f.who = strings.Split(f.group, ", ")
	}
	f.more = nil
	for _, k := range moreKeys {
		f.more = append(f.more, get(k.key))
	}
}

// spaceGroups lays out the questions.
func (s *site) spaceGroups(p *FormPage, d *described, f spaceFields, k kindChoice) {
	guessed := func(keys ...string) bool {
		sp, ok := d.g.Space(garden.SpaceID(f.id))
		return ok && slices.ContainsFunc(keys, func(key string) bool { return isGuessed(sp.Guessed, key) })
	}
	grows := k.depth != ""
	first := Group{Fields: []Field{
		{Name: "name", Label: "What you call it", Sort: "text", Value: f.name, Hint: "Empty: " + name(string(k.kind)) + " and a number."},
		{Name: "size", Label: "How big", Sort: "text", Value: f.size, Guess: guessed("length", "across"), Hint: "As " + k.tape + " or 18 in across. A third measure is the depth: 2 m x 1 m x 30 cm. Odd: triangle 3 m, 2 m, 2 m."},
	}}
	hidden := []Field{{Name: "kind", Sort: "hidden", Value: f.kind}, {Name: "id", Sort: "hidden", Value: f.id}, {Name: "like", Sort: "hidden", Value: f.like}}
	standing := Field{Name: "standing", Label: "What stands in it, one planting to a line", Sort: "area", Rows: 3, Value: f.standing, Guess: guessed("standing"),
		Hint: "As 6 kale, since March 2015, well. Or: 5 kale, one of Black Frond / Curled Ebb, set out about May 2015, stays. Looks are well, poor, bolting, finished, young. Empty: nothing."}
	place := Field{Name: "where", Label: "Where it stands", Sort: "text", Value: f.where, Guess: guessed("east", "north"),
		Hint: "From your corner to its middle: 2.2 m east, 5 m north. Add turned 90 degrees, or 6 m up. Empty: beside the last one."}
	if !grows {
		first.Fields = append(first.Fields, standing, place)
		first.Fields = append(first.Fields, rimField(f))
		p.Groups = []Group{first}
		if f.isNew {
			p.Groups = append(p.Groups, Group{Legend: "More", Fields: []Field{shortField(f)}})
		}
		p.Groups = append(p.Groups, Group{Fields: hidden})
		return
	}
	depth := Field{Name: "depth", Label: "How deep the soil is, or how much it holds", Sort: "text", Value: f.depth, Guess: guessed("depth"),
		Hint: "As 30 cm, 12 in, 75 L, or both: 14 in, 15 gal. Empty: don't know, we take " + k.depth + "."}
	water := Field{Name: "water", Label: "How it gets water", Sort: "choice", Options: choose(waters, or(f.water, or(lastOf(d.g, k.kind).Water, k.water))), Draw: waterDrawings, Guess: guessed("water")}
	first.Fields = append(first.Fields, depth, standing, rimField(f), water)
	var media []Option
	media = append(media, Option{Value: "", Words: "Don't know: " + k.medium})
	for _, b := range d.g.Batches {
		media = append(media, Option{Value: string(b.ID), Words: string(b.ID) + ", " + b.Kind})
	}
	for _, m := range mediumKinds {
		media = append(media, Option{Value: "new " + m, Words: "New: " + m})
	}
	medium := f.medium
	if f.isNew && medium == "" {
		medium = string(lastOf(d.g, k.kind).Medium)
	}
	first.Fields = append(first.Fields, place, Field{Name: "medium", Label: "What it is filled with", Sort: "list", Options: choose(media, medium), Guess: guessed("medium")})
	more := Group{Legend: "More: supports, covers, who reaches it", Open: !f.isNew, Fields: []Field{
		{Name: "supports", Label: "To climb on, one to a line", Sort: "area", Rows: 2, Value: f.supports, Hint: "As trellis 3 m long, 1.8 m high, pole side. " + poleHint(d.g) + " Kinds: trellis, arch, cage, stakes, strings."},
	}}
	var covers []Option
	for _, c := range coverChoices {
		covers = append(covers, Option{Value: c, Words: name(c), Chosen: isGuessed(f.covers, c)})
	}
	more.Fields = append(more.Fields, Field{Name: "covers", Label: "Covers at hand", Sort: "checks", Options: covers})
	if len(d.g.People) > 0 {
		var who []Option
		for _, one := range d.g.People {
			who = append(who, Option{Value: string(one.ID), Words: one.Name, Chosen: isGuessed(f.who, string(one.ID))})
		}
		more.Fields = append(more.Fields, Field{Name: "group", Label: "Who reaches it", Sort: "list", Options: choose(groups(d.g), f.group), Hint: "Or mark them below."},
			Field{Name: "who", Label: "Marked one by one (none: everyone who stands)", Sort: "checks", Options: who})
	}
	more.Fields = append(more.Fields,
		Field{Name: "dark", Label: "Dark sides, warm in the sun?", Sort: "checks", Options: []Option{{Value: "yes", Words: "Yes, dark", Chosen: yes(f.dark)}}},
		Field{Name: "pockets", Label: "Separate pockets, how many", Sort: "text", Value: f.pockets, Number: true, Hint: "Empty: none."})
	for i, k := range moreKeys {
		value := ""
		if i < len(f.more) {
			value = f.more[i]
		}
		more.Fields = append(more.Fields, Field{Name: k.key, Label: k.label, Hint: k.hint, Sort: "text", Value: value})
	}
	if f.isNew {
		more.Fields = append(more.Fields, shortField(f))
	}
	p.Groups = []Group{first, more, {Fields: hidden}}
	if !f.isNew && len(guessedOf(d, f.id)) > 0 {
		p.Groups = append(p.Groups, Group{Fields: []Field{{Name: "stay", Label: "Guesses: " + guessedWords(guessedOf(d, f.id)), Sort: "checks", Options: []Option{{Value: "right", Words: "These are right as they stand", Chosen: f.stay == "right"}}}}})
	}
}

func guessedOf(d *described, id string) []string {
	sp, _ := d.g.Space(garden.SpaceID(id))
	return sp.Guessed
}

func rimField(f spaceFields) Field {
	return Field{Name: "rim", Label: "How high the soil stands above the floor", Sort: "text", Value: f.rim, Hint: "As 45 cm or 18 in. 0 cm for open ground."}
}

// poleHint says where the pole side is, by the noon shadow.
func poleHint(g *garden.Garden) string {
	if math.Abs(g.Place.LatDeg) < 23.5 {
		return "The pole side is the one away from the equator."
	}
	return "At noon shadows point to the pole side."
}

func yes(s string) bool { s = strings.ToLower(s); return s == "yes" || s == "true" }

func or(a, b string) string {
	if a == "" {
		return b
	}
	return a
}

var mediumKinds = []string{"potting mix", "garden soil", "compost blend", "coir mix"}

// lastOf is the last space of a kind, whose soil and water are offered again.
func lastOf(g *garden.Garden, k garden.Kind) garden.Space {
	for i := len(g.Spaces) - 1; i >= 0; i-- {
		if g.Spaces[i].Kind == k {
			return g.Spaces[i]
		}
	}
	return garden.Space{}
}

// groups are the sets of people marked before, to be chosen with one tap.
func groups(g *garden.Garden) []Option {
	out := []Option{{Value: "", Words: "As marked below"}}
	seen := map[string]bool{}
	add := func(ids []garden.PersonID, words string) {
		var keys, names []string
		for _, id := range ids {
			one, _ := g.Person(id)
			keys, names = append(keys, string(id)), append(names, one.Name)
		}
		key := strings.Join(keys, ", ")
		if key == "" || seen[key] {
			return
		}
		seen[key] = true
		out = append(out, Option{Value: key, Words: or(words, strings.Join(names, ", "))})
	}
	var all []garden.PersonID
	for _, one := range g.People {
		all = append(all, one.ID)
	}
	add(all, "Everybody, also from a seat")
	for _, sp := range g.Spaces {
		add(sp.ReachedBy, "")
	}
	return out
}

func shortField(f spaceFields) Field {
	return Field{Name: "short", Label: "Short name in the file", Sort: "text", Value: f.short, Hint: "Small letters and dashes. Empty: made from the name."}
}

// spacePatches turns what was typed into patches of the file. before is what
// the form showed first: what was not touched is not written.
func (s *site) spacePatches(p *FormPage, d *described, f, before spaceFields, was garden.Value, k kindChoice) {
	id := f.id
	if f.isNew {
		taken := func(id string) bool {
			_, there := garden.Look(d.text, "spaces", id)
			return there
		}
		if f.short != "" && (garden.Slug(f.short) != f.short || taken(f.short)) {
			p.Faults["short"] = "Use small letters, digits and dashes, and one no other space has."
		}
		id = freeID(or(f.short, f.name), garden.Slug(f.kind), taken)
		if f.name == "" {
			n := 1
			for _, sp := range d.g.Spaces {
				if sp.Kind == k.kind {
					n++
				}
			}
			f.name = fmt.Sprintf("%s %d", name(f.kind), n)
		}
	}
	p.Faults.tooLong("name", f.name, 80)
	at := func(key string) []string { return []string{"spaces", id, key} }
	for key, field := range map[string]string{"": "name", "name": "name", "kind": "kind", "east": "where", "north": "where", "turn": "where", "floor": "where", "length": "size", "width": "size",
		"across": "size", "depth": "depth", "volume": "depth", "rim": "rim", "medium": "medium", "water": "water", "standing": "standing", "supports": "supports", "covers": "covers", "reached by": "who", "pockets": "pockets", "short": "short"} {
		if key != "" {
			p.where["spaces > "+id+" > "+key] = field
		}
	}
	p.where["spaces > "+id] = "where"
	guesses := append([]string{}, guessedOf(d, f.id)...)
	settle := func(keys ...string) {
		guesses = slices.DeleteFunc(guesses, func(g string) bool { return slices.Contains(keys, g) })
	}
	if f.stay == "right" {
		guesses = nil
	}
	fresh := f.isNew
	if fresh || f.name != before.name {
		p.put(f.name, at("name")...)
	}
	if fresh || f.kind != before.kind {
		p.put(f.kind, at("kind")...)
	}
	// Size, with a depth as third measure.
	size := f.size
	if fresh && size == "" {
		size = k.size
		guesses = append(guesses, "length")
	} else if f.size != before.size {
		settle("length", "across")
	}
	var depthThere bool
	if fresh || f.size != before.size {
		v, bad := garden.SaySize(size)
		p.said("size", bad)
		if size == "" && !fresh {
			p.Faults["size"] = "A size is needed here. Write what it was, or a guess."
		}
		for _, key := range []string{"length", "width", "across"} {
			if v.Get(key) != "" || !fresh {
				p.put(v.Get(key), at(key)...)
			}
		}
		if dp := v.Get("depth"); dp != "" {
			p.put(dp, at("depth")...)
			depthThere = true
			settle("depth")
		}
	}
	s.spaceWhere(p, d, f, before, at, &guesses, size)
	if fresh && f.rim != "" || !fresh && f.rim != before.rim {
		p.put(f.rim, at("rim")...)
	}
	if k.depth != "" {
		s.spaceFill(p, d, f, before, k, at, &guesses, depthThere)
		s.spaceSides(p, f, before, was, at)
	}
	s.spaceStanding(p, d, f, before, was, at, &guesses)
	var have []string
	if !fresh {
		have = guessedOf(d, f.id)
	}
	p.marksExactly(have, guesses, at("guessed")...)
	p.words = "Saved: " + f.name + "."
	p.next = "/entry"
	if fresh {
		p.next = "/entry/kind"
		if len(d.g.Spaces) == 0 {
			p.next = "/entry/ready"
		}
	}
	if len(p.Faults) > 0 {
		p.openFaults()
		p.Problem = "Not saved yet: something below needs a look."
	}
}

// marksExactly writes a list of guessed keys, each once.
func (p *FormPage) marksExactly(have, want []string, at ...string) {
	var drop []string
	for _, h := range have {
		if !isGuessed(want, h) {
			drop = append(drop, h)
		}
	}
	p.marksAt(have, want, drop, at...)
}

// spaceWhere writes the place on the plan, beside the last space when not said.
func (s *site) spaceWhere(p *FormPage, d *described, f, before spaceFields, at func(string) []string, guesses *[]string, size string) {
	if !f.isNew && f.where == before.where {
		return
	}
	if f.where == "" {
		if k, _ := kindOf(f.kind); k.depth == "" {
			return // shelves and benches need no place
		}
		x, y := besideLast(d.g, size)
		f.where = x + " east, " + y + " north"
		*guesses = append(*guesses, "east", "north")
	} else {
		*guesses = slices.DeleteFunc(*guesses, func(g string) bool { return g == "east" || g == "north" })
	}
	v, bad := garden.SayWhere(f.where)
	p.said("where", bad)
	if far, ok := farFromAll(d.g, f.id, v); ok && len(bad) == 0 {
		p.Faults["where"] = far
	}
	for _, key := range []string{"east", "north", "turn", "floor"} {
		if v.Get(key) != "" || !f.isNew {
			p.put(v.Get(key), at(key)...)
		}
	}
}

// farM is how far from everything else a space may stand before it is taken
// for a slip of the unit: a household's garden is no larger.
const farM = 60.0

func farFromAll(g *garden.Garden, id string, v garden.Value) (string, bool) {
	x, errX := unit.ParseLength(v.Get("east"))
	y, errY := unit.ParseLength(v.Get("north"))
	if errX != nil || errY != nil {
		return "", false
	}
	least := math.Inf(1)
	for _, sp := range g.Spaces {
		if string(sp.ID) != id {
			least = math.Min(least, math.Hypot(sp.X-x.M, sp.Y-y.M))
		}
	}
	for _, o := range g.Obstacles {
		least = math.Min(least, math.Hypot(o.X-x.M, o.Y-y.M))
	}
	if math.IsInf(least, 1) || least <= farM {
		return "", false
	}
	return fmt.Sprintf("That is %.0f m from everything else, outside the plot. Look at the unit.", least), true
}

// besideLast is the next free place in a row to the east.
func besideLast(g *garden.Garden, size string) (east, north string) {
	half := 0.5
	if v, bad := garden.SaySize(size); len(bad) == 0 {
		for _, key := range []string{"length", "across"} {
			if l, err := unit.ParseLength(v.Get(key)); err == nil {
				half = l.M / 2
			}
		}
	}
	edge, y, any := 0.0, 0.0, false
	for _, sp := range g.Spaces {
		if !sp.Grows() && sp.X == 0 && sp.Y == 0 {
			continue
		}
		reach := sp.Round.M / 2
		if !sp.Round.Known() {
			reach = math.Max(sp.Length.M, sp.Width.M) / 2
		}
		if !any || sp.X+reach > edge {
			edge, y = sp.X+reach, sp.Y
		}
		any = true
	}
	if any {
		edge += 0.4 // a path between
	}
	x := math.Ceil((edge+half)*10) / 10
	return metres(x), metres(y)
}

func metres(x float64) string { return fmt.Sprintf("%g m", math.Round(x*100)/100) }

// spaceFill writes depth, volume, medium and water, guessing what is not said.
func (s *site) spaceFill(p *FormPage, d *described, f, before spaceFields, k kindChoice, at func(string) []string, guesses *[]string, depthThere bool) {
	drop := func(keys ...string) {
		*guesses = slices.DeleteFunc(*guesses, func(g string) bool { return slices.Contains(keys, g) })
	}
	switch {
	case depthThere && (f.depth == "" || f.depth == before.depth):
	case f.depth == "" && f.isNew:
		p.put(k.depth, at("depth")...)
		*guesses = append(*guesses, "depth")
	case f.depth == "" && f.depth != before.depth:
		p.put(k.depth, at("depth")...)
		p.put("", at("volume")...)
		*guesses = append(*guesses, "depth")
	case f.isNew || f.depth != before.depth:
		depth, volume := "", ""
		for _, part := range strings.Split(f.depth, ",") {
			part = strings.TrimSuffix(strings.TrimSpace(part), " deep")
			_, errL := unit.ParseLength(part)
			_, errV := unit.ParseVolume(part)
			switch {
			case errL == nil:
				depth = part
			case errV == nil:
				volume = part
			default:
				p.Faults["depth"] = errL.Error()
			}
		}
		if depth != "" || !f.isNew {
			if depth != "" || !depthThere {
				p.put(depth, at("depth")...)
			}
		}
		if volume != "" || !f.isNew {
			p.put(volume, at("volume")...)
		}
		drop("depth")
	}
	if f.isNew || f.medium != before.medium {
		medium := f.medium
		kind, isNew := strings.CutPrefix(medium, "new ")
		switch {
		case medium == "" && f.isNew:
			kind, isNew = k.medium, true
			*guesses = append(*guesses, "medium")
			for _, b := range d.g.Batches { // one batch for all we know nothing of
				if b.Kind == kind && b.Since == 0 && len(b.History) == 0 {
					medium, isNew = string(b.ID), false
				}
			}
		case medium == "":
			p.Faults["medium"] = "Choose what it is filled with."
		default:
			drop("medium")
		}
		if isNew {
			medium = freeID(kind, "mix", func(id string) bool { _, ok := d.g.Batch(garden.BatchID(id)); return ok })
			p.put(kind, "media", medium, "kind")
		}
		p.put(medium, at("medium")...)
	}
	if f.isNew && f.water == "" {
		f.water = k.water
		*guesses = append(*guesses, "water")
	} else if f.water != before.water && !f.isNew {
		drop("water")
	}
	if f.isNew || f.water != before.water {
		p.put(f.water, at("water")...)
	}
}

// spaceSides writes what is in the folded group.
func (s *site) spaceSides(p *FormPage, f, before spaceFields, was garden.Value, at func(string) []string) {
	if f.dark != before.dark && (f.dark != "" || yes(before.dark)) {
		p.put(f.dark, at("dark")...)
	}
	if f.isNew && f.like != "" && before.dark != "" {
		p.put(f.dark, at("dark")...)
	}
	if f.pockets != "" || !f.isNew && f.pockets != before.pockets {
		if f.isNew || f.pockets != before.pockets {
			p.put(f.pockets, at("pockets")...)
		}
	}
	for i, k := range moreKeys {
		had := ""
		if i < len(before.more) && !f.isNew {
			had = before.more[i]
		}
		if f.more[i] != had {
			p.put(f.more[i], at(k.key)...)
		}
		p.where[garden.Path(at(k.key)).String()] = k.key
	}
	if f.supports != before.supports || f.isNew && f.supports != "" {
		items := []garden.Value{}
		for _, l := range lines(f.supports) {
			v, bad := garden.SaySupport(l)
			p.said("supports", bad)
			items = append(items, v)
		}
		p.list(items, at("supports")...)
	}
	if !slices.Equal(f.covers, before.covers) || f.isNew && len(f.covers) > 0 {
		items := []garden.Value{}
		old := was.At("covers").List()
		for _, kind := range f.covers {
			if !slices.Contains(coverChoices, kind) {
				continue
			}
			v := garden.Value{Line: true, Pairs: []garden.KeyValue{{Key: "kind", Value: garden.Text(kind)}}}
			if kind == "shade cloth" {
				v = v.With("light", garden.Text("50 %"))
			}
			v = v.With("on", garden.Text("as needed"))
			for _, o := range old {
				if o.Get("kind") == kind {
					v = o
				}
			}
			items = append(items, v)
		}
		p.list(items, at("covers")...)
	}
	if !slices.Equal(f.who, before.who) || f.isNew && len(f.who) > 0 {
		items := []garden.Value{}
		for _, w := range f.who {
			items = append(items, garden.Text(w))
		}
		if len(items) == 0 {
			p.put("", at("reached by")...)
		} else {
			p.set(garden.Value{Line: true, Items: items}, at("reached by")...)
		}
	}
}

// list writes a list, or drops it when empty.
func (p *FormPage) list(items []garden.Value, at ...string) {
	if len(items) == 0 {
		p.put("", at...)
		return
	}
	p.set(garden.Value{Items: items}, at...)
}

// spaceStanding writes what stands. A line not touched stays as it is; ids
// of plantings behind one taken out are written down, so that their past
// stays with them.
func (s *site) spaceStanding(p *FormPage, d *described, f, before spaceFields, was garden.Value, at func(string) []string, guesses *[]string) {
	typed, had := lines(f.standing), lines(before.standing)
	if f.isNew {
		had = nil
	}
	if slices.Equal(typed, had) {
		return
	}
	guessed := false
	var fresh []garden.Value
	for _, l := range typed {
		v, blank, bad := garden.SayStanding(l, d.book, d.g.Place.LatDeg < 0)
		if len(bad) > 0 {
			p.said("standing", bad)
			continue
		}
		if blank.Count {
			v = v.With("count", garden.Text(fmt.Sprint(s.usualCount(v.Get("crop"), f))))
			guessed = true
		}
		if blank.Since {
			v = v.With("since", garden.Text(s.usualSince(v.Get("crop"), d.today)))
			guessed = true
		}
		fresh = append(fresh, v)
	}
	if p.Faults["standing"] != "" {
		return
	}
	if guessed && !isGuessed(*guesses, "standing") {
		*guesses = append(*guesses, "standing")
	} else if !guessed {
		*guesses = slices.DeleteFunc(*guesses, func(g string) bool { return g == "standing" })
	}
	old := was.At("standing").List()
	sp, _ := d.g.Space(garden.SpaceID(f.id))
	path := at("standing")
	switch {
	case len(old) == 0:
		p.list(fresh, path...)
	case len(typed) >= len(had): // lines changed in place, then lines added
		for i, v := range fresh {
			step := append(slices.Clone(path), fmt.Sprint(i))
			if i >= len(old) {
				p.set(v, append(slices.Clone(path), garden.New)...)
				continue
			}
			if typed[i] == had[i] {
				continue
			}
			for _, key := range []string{"crop", "variety", "one of", "since", "set out", "count", "looks", "keep"} {
				if a, b := old[i].At(key), v.At(key); !sameValue(a, b) {
					if !v.Has(key) {
						p.put("", append(slices.Clone(step), key)...)
						continue
					}
					p.set(b, append(slices.Clone(step), key)...)
				}
			}
		}
	default: // lines taken out: keep the others' ids
		var items []garden.Value
		for _, v := range fresh {
			for j, l := range had {
				if garden.StandingLine(v) == l && j < len(sp.Standing) {
					v = old[j]
					if !v.Has("id") {
						v.Pairs = append([]garden.KeyValue{{Key: "id", Value: garden.Text(sp.Standing[j].ID)}}, v.Pairs...)
					}
					break
				}
			}
			items = append(items, v)
		}
		p.list(items, path...)
	}
	if s.laterThanFile(d, fresh) {
		p.put(d.today.Long(), "from")
	}
}

// laterThanFile reports whether plantings began after the day the file speaks
// of, which then moves on to today.
func (s *site) laterThanFile(d *described, all []garden.Value) bool {
	if d.g.From == 0 || d.g.From >= d.today {
		return false
	}
	return true
}

func sameValue(a, b garden.Value) bool {
	if a.Text != b.Text || len(a.Items) != len(b.Items) {
		return false
	}
	for i := range a.Items {
		if !sameValue(a.Items[i], b.Items[i]) {
			return false
		}
	}
	return true
}

// usualCount is half of what the space would hold of a crop, at least one.
func (s *site) usualCount(id string, f spaceFields) int {
	c, ok := s.o.Entry.Book.Crop(crop.ID(id))
	v, bad := garden.SaySize(f.size)
	if !ok || len(bad) > 0 || !c.SpacingM.Known() || c.SpacingM.Value <= 0 {
		return 1
	}
	length, errL := unit.ParseLength(v.Get("length"))
	width, errW := unit.ParseLength(v.Get("width"))
	area := length.M * width.M
	if errL != nil || errW != nil {
		across, err := unit.ParseLength(v.Get("across"))
		if err != nil {
			return 1
		}
		area = math.Pi / 4 * across.M * across.M
	}
	return max(1, min(200, int(area/(c.SpacingM.Value*c.SpacingM.Value)/2)))
}

// usualSince is the last half year, or two years for what stands for years.
func (s *site) usualSince(id string, today cal.Day) string {
	back := cal.Day(180)
	if c, ok := s.o.Entry.Book.Crop(crop.ID(id)); ok && c.Perennial {
		back = 730
	}
	return (today - back).Long() + " to " + today.Long()
}

// copiesForm makes several spaces like one.
func (s *site) copiesForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	id := or(v.Get("id"), r.URL.Query().Get("id"))
	if d.g == nil {
		return nil, ErrNotThere
	}
	sp, ok := d.g.Space(garden.SpaceID(id))
	if !ok {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "More like "+sp.Name, "/entry/copies")
	p.Lead = "They stand in a row to the east, empty, each to be moved and named."
	n := typedIn(v, "count", "1")
	p.Groups = []Group{{Fields: []Field{{Name: "count", Label: "How many more", Sort: "text", Number: true, Value: n}, {Name: "id", Sort: "hidden", Value: id}}}}
	p.Submit, p.next = "Make them", "/entry"
	if v == nil {
		return p, nil
	}
	count := p.Faults.count(v, "count", true, 1)
	if count > 40 {
		p.Faults["count"] = "At most 40 at once."
	}
	if len(p.Faults) > 0 {
		return p, nil
	}
	was, _ := garden.Look(d.text, "spaces", id)
	g := *d.g
	g.Spaces = slices.Clone(d.g.Spaces)
	made := map[string]bool{}
	taken := func(id string) bool {
		_, there := garden.Look(d.text, "spaces", id)
		return there || made[id]
	}
	for range count {
		fresh := freeID(string(sp.ID), "space", taken)
		made[fresh] = true
		east, north := besideLast(&g, sizeLine(was))
		one := was.With("standing", garden.Value{}).With("name", garden.Text(nextName(&g, sp.Name))).
			With("east", garden.Text(east)).With("north", garden.Text(north))
		one.Line = false
		marks := garden.Value{Line: true}
		for _, k := range append(slices.DeleteFunc(slices.Clone(sp.Guessed), func(k string) bool { return k == "standing" || k == "east" || k == "north" }), "east", "north") {
			marks.Items = append(marks.Items, garden.Text(k))
		}
		p.set(one.With("guessed", marks), "spaces", fresh)
		x, _ := unit.ParseLength(east)
		y, _ := unit.ParseLength(north)
		next := sp
		next.Name = nextName(&g, sp.Name)
		next.X, next.Y = x.M, y.M
		g.Spaces = append(g.Spaces, next)
	}
	p.words = fmt.Sprintf("Made %s like %s.", plural(count, "space", "spaces"), sp.Name)
	return p, nil
}

// nextName counts a name up until no space has it: Bag 1 gives Bag 2.
func nextName(g *garden.Garden, name string) string {
	base := strings.TrimRight(name, "0123456789 ")
	if base == "" {
		base = name
	}
	for n := 2; ; n++ {
		try := fmt.Sprintf("%s %d", base, n)
		if !slices.ContainsFunc(g.Spaces, func(sp garden.Space) bool { return sp.Name == try }) {
			return try
		}
	}
}
