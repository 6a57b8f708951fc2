package web

import (
	"math"
	"net/http"
	"net/url"
	"slices"
	"strings"

	"bedweek/internal/garden"
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
	others                             string
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
	{"stands on", "What carries it", "As balcony, roof, shelf. One name for all that stand on it."},
	{"bears", "What that may carry", "As 150 kg in all, 250 kg/m2, 2.5 kN/m2, or not known. Ask the landlord or a structural engineer."},
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
		f.name, f.standing, f.others, f.isNew, f.id = "", "", "", true, ""
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
	s.offerCompass(p, d.g.Place)
	if err := s.askPicture(r, p, f.id, title); err != nil {
		return nil, err
	}
	if !f.isNew {
		id := url.QueryEscape(f.id)
		p.Links = []Link{{Href: "/entry/plan?space=" + id, Words: "Move or turn it"}, {Href: "/entry/copies?id=" + id, Words: "More like this one"},
			{Href: "/entry/space?like=" + id, Words: "One like it, to change"}, {Href: "/entry/turnover?id=" + id, Words: "Its soil: tip, mix, refill"}, {Href: "/entry/split?id=" + id, Words: "Split it in two"}, {Href: "/entry/ending?id=" + id, Words: "It is gone"}}
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
	var sup, st, others []string
	for _, x := range v.At("supports").List() {
		sup = append(sup, garden.SupportLine(x))
	}
	for _, x := range v.At("standing").List() {
		st = append(st, garden.StandingLine(x))
	}
	for _, x := range v.At(garden.OtherKey).List() {
		others = append(others, garden.OtherLine(x))
	}
	for _, x := range v.At("covers").List() {
		f.covers = append(f.covers, x.Get("kind"))
	}
	for _, x := range v.At("reached by").List() {
		f.who = append(f.who, x.Text)
	}
	f.supports, f.standing, f.others = strings.Join(sup, "\n"), strings.Join(st, "\n"), strings.Join(others, "\n")
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
	case v.Get("shape") != "":
		return v.Get("shape")
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
	f.others = get("others")
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
		{Name: "size", Label: "How big", Sort: "text", Value: f.size, Guess: guessed("length", "across"), Shapes: oddShapes(), Hint: "As " + k.tape + " or 18 in across. A third measure is the depth: 2 m x 1 m x 30 cm."},
	}}
	hidden := []Field{{Name: "kind", Sort: "hidden", Value: f.kind}, {Name: "id", Sort: "hidden", Value: f.id}, {Name: "like", Sort: "hidden", Value: f.like}}
	standing := Field{Name: "standing", Label: "What stands in it, one planting to a line", Sort: "area", Rows: 3, Value: f.standing, Guess: guessed("standing"),
		Hint: "As 6 kale, since March 2015, well. Or: 5 kale, one of Black Frond / Curled Ebb, set out about May 2015, stays. Looks are well, poor, bolting, finished, young. Empty: nothing."}
	place := Field{Name: "where", Label: "Where it stands", Sort: "text", Value: f.where, Guess: guessed("east", "north"),
		Hint: "From your corner to its middle: 2.2 m east, 5 m north. Add turned 90 degrees, or 6 m up. Empty: beside the last one."}
	if !grows {
		rim := rimField(f)
		if k.kind == garden.Heap {
			rim.Label, rim.Hint = "How high it is", "As 80 cm or 3 ft."
		} else {
			first.Fields = append(first.Fields, standing)
		}
		first.Fields = append(first.Fields, place, rim)
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
	more := Group{Legend: "More: other plants, supports, covers, who reaches it", Open: !f.isNew, Fields: []Field{
		othersField(f, guessed(garden.OtherKey)),
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
	rare := Group{Legend: "Rare: drip line, mulch, what carries it"}
	for i, k := range moreKeys {
		value := ""
		if i < len(f.more) {
			value = f.more[i]
		}
		rare.Open = rare.Open || value != ""
		rare.Fields = append(rare.Fields, Field{Name: k.key, Label: k.label, Hint: k.hint, Sort: "text", Value: value})
	}
	if f.isNew {
		rare.Fields = append(rare.Fields, shortField(f))
	}
	p.Groups = []Group{first, more, rare, {Fields: hidden}}
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
