package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// personForm asks about one person (?id=, or new).
func (s *site) personForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	id := or(v.Get("id"), r.URL.Query().Get("id"))
	if d.g == nil {
		return nil, ErrNotThere
	}
	if _, ok := d.g.Person(garden.PersonID(id)); id != "" && !ok {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "Somebody who works here", "/entry/person")
	p.Lead = "What can be reached and lifted decides who is asked to do what."
	get := func(key string) string { return typedIn(v, key, d.get("people", id, key)) }
	seated := get("seated")
	if id == "" && v == nil {
		seated = ""
	}
	p.Groups = []Group{{Fields: []Field{
		{Name: "name", Label: "Name", Sort: "text", Value: get("name")},
		{Name: "seated", Label: "Works from a seat?", Sort: "choice", Options: choose([]Option{{Value: "", Words: "Stands"}, {Value: "yes", Words: "Seated"}}, map[bool]string{true: "yes"}[yes(seated)])},
		{Name: "reach", Label: "How far in over a rim", Sort: "text", Value: get("reach"), Hint: "As 60 cm or 24 in. May be empty."},
		{Name: "lift", Label: "The most they may lift", Sort: "text", Value: get("lift"), Hint: "As 8 kg or 15 lb. May be empty."},
		{Name: "minutes a week", Label: "Minutes a week", Sort: "text", Number: true, Value: get("minutes a week"), Hint: "May be empty."},
		{Name: "id", Sort: "hidden", Value: id},
	}}}
	if id != "" {
		p.Groups = append(p.Groups, Group{Fields: []Field{{Name: "gone", Label: "No longer here?", Sort: "checks", Options: []Option{{Value: "yes", Words: "Take this person out"}}}}})
	}
	if v == nil {
		return p, nil
	}
	if v.Get("gone") == "yes" {
		return p, s.personGone(p, d, id)
	}
	if get("name") == "" {
		p.Faults["name"] = "Give a name, or what they are called."
	}
	p.Faults.tooLong("name", get("name"), 80)
	if id == "" {
		id = freeID(get("name"), "person", func(id string) bool { _, ok := d.g.Person(garden.PersonID(id)); return ok })
	}
	p.put(get("name"), "people", id, "name")
	if yes(v.Get("seated")) {
		p.put("yes", "people", id, "seated")
	} else {
		p.put("", "people", id, "seated")
	}
	for _, k := range []string{"reach", "lift", "minutes a week"} {
		p.put(get(k), "people", id, k)
		p.where["people > "+id+" > "+k] = k
	}
	p.where["people > "+id] = "name"
	p.words = "Saved: " + get("name") + "."
	return p, nil
}

// personGone takes a person out, also from the spaces they reach.
func (s *site) personGone(p *FormPage, d *described, id string) error {
	for _, sp := range d.g.Spaces {
		if !slices.Contains(sp.ReachedBy, garden.PersonID(id)) {
			continue
		}
		items := []garden.Value{}
		for _, who := range sp.ReachedBy {
			if string(who) != id {
				items = append(items, garden.Text(string(who)))
			}
		}
		if len(items) == 0 {
			p.put("", "spaces", string(sp.ID), "reached by")
			continue
		}
		p.set(garden.Value{Line: true, Items: items}, "spaces", string(sp.ID), "reached by")
	}
	p.put("", "people", id)
	p.words = "Taken out."
	return nil
}

// obstacleForm asks about one thing that takes light.
func (s *site) obstacleForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	id := or(v.Get("id"), r.URL.Query().Get("id"))
	if d.g == nil {
		return nil, ErrNotThere
	}
	was, there := garden.Look(d.text, "obstacles", id)
	if id != "" && !there {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "Something that takes light", "/entry/obstacle")
	p.Lead = "A house, a wall, a tree. A rough guess is far better than nothing."
	kinds := []Option{{Value: "box", Words: "A house or shed"}, {Value: "wall", Words: "A wall or fence"}, {Value: "tree", Words: "A tree or tall bush"}, {Value: "post", Words: "A post"}, {Value: "roof", Words: "A roof you can see under"}}
	draw := []Drawing{"M8 40V20L32 6L56 20V40Z", "M4 16H60V40H4ZM4 28H60M20 16V28M44 16V28M32 28V40", "M32 42V24M32 24C14 26 12 8 28 8C34 0 52 6 48 16C54 22 44 28 32 24", "M30 6H34V42H30Z", "M4 18L32 6L60 18ZM10 18V42M54 18V42"}
	kind := typedIn(v, "kind", or(was.Get("kind"), "box"))
	months := was.Get("in leaf")
	p.Groups = []Group{{Fields: []Field{
		{Name: "name", Label: "What you call it", Sort: "text", Value: typedIn(v, "name", was.Get("name"))},
		{Name: "kind", Label: "What it is", Sort: "choice", Options: choose(kinds, kind), Draw: draw},
		{Name: "size", Label: "How wide and deep", Sort: "text", Value: typedIn(v, "size", sizeLine(was)), Hint: "As 9 m x 8 m; a wall 6 m x 10 cm; a tree 4 m across."},
		{Name: "height", Label: "How high its top is", Sort: "text", Value: typedIn(v, "height", was.Get("height")), Hint: "As 3.2 m. Or 20 paces away, 2 fists up (a fist at arm's length). Or shadow 4 m (at noon today)."},
		{Name: "where", Label: "Where its middle is", Sort: "text", Value: typedIn(v, "where", whereLine(was)), Hint: "From your corner: 4 m east, 12 m north. Add turned 90 degrees."},
	}}, {Legend: "More: underside, leaves", Open: there, Fields: []Field{
		{Name: "base", Label: "How high its underside is", Sort: "text", Value: typedIn(v, "base", was.Get("base")), Hint: "For roofs and crowns. Empty: it stands on the ground."},
		{Name: "leaf", Label: "Months a tree is in leaf", Sort: "text", Value: typedIn(v, "leaf", months), Hint: "As May to October. Empty: all year."},
		{Name: "thick", Label: "Light through its leaves", Sort: "text", Value: typedIn(v, "thick", was.Get("light in leaf")), Hint: "As 15 %. Empty: 15 %, from memory."},
		{Name: "bare", Label: "Light through bare branches", Sort: "text", Value: typedIn(v, "bare", was.Get("light bare")), Hint: "As 60 %. Empty: 60 %, from memory."},
	}}, {Fields: []Field{{Name: "id", Sort: "hidden", Value: id}}}}
	if there {
		p.Groups = append(p.Groups, Group{Fields: []Field{{Name: "gone", Label: "No longer there?", Sort: "checks", Options: []Option{{Value: "yes", Words: "Take it out"}}}}})
	}
	if v != nil {
		s.obstaclePatches(p, d, v, id, kind)
	}
	return p, nil
}

func (s *site) obstaclePatches(p *FormPage, d *described, v url.Values, id, kind string) {
	if v.Get("gone") == "yes" {
		p.put("", "obstacles", id)
		p.words = "Taken out."
		return
	}
	p.Faults.tooLong("name", v.Get("name"), 80)
	if id == "" {
		id = freeID(v.Get("name"), kind, func(id string) bool { _, ok := garden.Look(d.text, "obstacles", id); return ok })
	}
	at := func(key string) []string { return []string{"obstacles", id, key} }
	p.put(v.Get("name"), at("name")...)
	p.put(kind, at("kind")...)
	size, bad := garden.SaySize(v.Get("size"))
	p.said("size", bad)
	if v.Get("size") == "" {
		p.Faults["size"] = "Give its size. A guess is fine."
	}
	where, bad := garden.SayWhere(v.Get("where"))
	p.said("where", bad)
	if v.Get("where") == "" {
		p.Faults["where"] = "Say where its middle is. Count paces: one is about 75 cm."
	}
	height, wrong := sayHeight(v.Get("height"), d)
	if wrong != "" {
		p.Faults["height"] = wrong
	}
	for _, k := range []string{"east", "north", "turn"} {
		p.put(where.Get(k), at(k)...)
		p.where["obstacles > "+id+" > "+k] = "where"
	}
	for _, k := range []string{"length", "width", "across"} {
		p.put(size.Get(k), at(k)...)
		p.where["obstacles > "+id+" > "+k] = "size"
	}
	p.put(height, at("height")...)
	p.put(v.Get("base"), at("base")...)
	for key, field := range map[string]string{"": "size", "height": "height", "base": "base", "in leaf": "leaf", "light in leaf": "thick", "light bare": "bare", "name": "name"} {
		if key != "" {
			p.where["obstacles > "+id+" > "+key] = field
		}
	}
	p.where["obstacles > "+id] = "size"
	leaf, thick, bare := v.Get("leaf"), v.Get("thick"), v.Get("bare")
	if kind != "tree" {
		leaf, thick, bare = "", "", ""
	}
	p.put(thick, at("light in leaf")...)
	p.put(bare, at("light bare")...)
	p.put(leaf, at("in leaf")...)
	p.words = "Saved: " + or(v.Get("name"), kind) + "."
}

// A pace, a fist at arm's length and the eye above the ground: common
// practice. The height comes back as a range, since none of them is exact.
const (
	paceM     = 0.75
	fistDeg   = 10.0
	eyeM      = 1.5
	guessPart = 0.15
)

// sayHeight reads a height: a length, "20 paces away, 2 fists up", or "shadow
// 4 m" cast at noon today.
func sayHeight(typed string, d *described) (height, wrong string) {
	low := strings.ToLower(strings.TrimSpace(typed))
	if low == "" {
		return "", "Give its height. A guess is fine, such as 3-5 m."
	}
	span := func(m float64) string {
		return fmt.Sprintf("%g-%g m", math.Round(m*(1-guessPart)*10)/10, math.Round(m*(1+guessPart)*10)/10)
	}
	if rest, ok := strings.CutPrefix(low, "shadow"); ok {
		l, err := unit.ParseLength(strings.TrimSpace(rest))
		if err != nil {
			return "", err.Error()
		}
		up := noonSunDeg(d.g.Place.LatDeg, d.today)
		if up < 5 {
			return "", "The noon sun is too low today. Count paces and fists instead."
		}
		return span(l.M * math.Tan(up*math.Pi/180)), ""
	}
	if strings.Contains(low, "pace") && strings.Contains(low, "fist") {
		var n []float64
		for _, w := range strings.Fields(strings.ReplaceAll(low, ",", " ")) {
			if x, err := strconv.ParseFloat(w, 64); err == nil {
				n = append(n, x)
			}
		}
		if len(n) != 2 || n[0] <= 0 || n[1] <= 0 || n[1] > 8 {
			return "", "Write it as 20 paces away, 2 fists up."
		}
		return span(eyeM + n[0]*paceM*math.Tan(n[1]*fistDeg*math.Pi/180)), ""
	}
	if _, err := unit.ParseLength(strings.TrimSpace(typed)); err != nil {
		return "", err.Error()
	}
	return strings.TrimSpace(typed), ""
}

// noonSunDeg is the height of the sun at noon: 90 degrees less the distance
// from the latitude to the sun's declination, which is taken as a sine of the
// day. It is good to a degree, enough for a shadow paced out.
func noonSunDeg(latDeg float64, on cal.Day) float64 {
	decl := -23.44 * math.Cos(2*math.Pi*float64(on.YearDay()+10)/365)
	return 90 - math.Abs(latDeg-decl)
}

// mediumForm asks about one batch of medium.
func (s *site) mediumForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	id := or(v.Get("id"), r.URL.Query().Get("id"))
	if d.g == nil {
		return nil, ErrNotThere
	}
	was, there := garden.Look(d.text, "media", id)
	if id != "" && !there {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "A batch of soil or mix", "/entry/medium")
	p.Lead = "What grew in it stays with it, wherever it is moved."
	var kinds []Option
	for _, k := range mediumKinds {
		kinds = append(kinds, Option{Value: k, Words: name(k)})
	}
	var grew []string
	for _, h := range was.At("history").List() {
		grew = append(grew, or(h.Get("crop"), "family "+h.Get("family"))+" until "+h.Get("until"))
	}
	history := typedIn(v, "history", strings.Join(grew, "\n"))
	p.Groups = []Group{{Fields: []Field{
		{Name: "name", Label: "Short name", Sort: "text", Value: typedIn(v, "name", id), Hint: "As long-blend. It names the batch in the file."},
		{Name: "kind", Label: "What it is", Sort: "choice", Options: choose(kinds, typedIn(v, "kind", or(was.Get("kind"), mediumKinds[0])))},
		{Name: "since", Label: "Filled in the year", Sort: "text", Number: true, Value: typedIn(v, "since", was.Get("since")), Hint: "Empty: not known."},
		{Name: "history", Label: "What grew in it, one to a line", Sort: "area", Rows: 3, Value: history, Hint: "As tomato until October 2014. A year is enough. Or family Asteraceae until 2013."},
		{Name: "id", Sort: "hidden", Value: id},
	}}}
	if v == nil {
		return p, nil
	}
	if id == "" {
		id = freeID(v.Get("name"), "mix", func(id string) bool { _, ok := garden.Look(d.text, "media", id); return ok })
	}
	p.put(v.Get("kind"), "media", id, "kind")
	p.put(v.Get("since"), "media", id, "since")
	if history != strings.Join(grew, "\n") {
		p.list(p.grewLines(d, history), "media", id, "history")
	}
	for _, k := range []string{"kind", "since", "history"} {
		p.where["media > "+id+" > "+k] = k
	}
	if fresh := garden.Slug(v.Get("name")); there && fresh != "" && fresh != id {
		p.patches = append(p.patches, garden.Patch{Op: garden.Key, At: garden.Path{"media", id}, To: fresh})
		for _, sp := range append(slices.Clone(d.g.Spaces), d.g.Ended...) {
			if string(sp.Medium) == id {
				p.put(fresh, "spaces", string(sp.ID), "medium")
			}
		}
	}
	p.words = "Saved: " + id + "."
	return p, nil
}

// grewLines reads "tomato until October 2014".
func (p *FormPage) grewLines(d *described, typed string) []garden.Value {
	items := []garden.Value{}
	for _, l := range lines(typed) {
		what, until, ok := strings.Cut(l, " until ")
		if !ok {
			p.Faults["history"] = "Write each as tomato until October 2014."
			continue
		}
		v := garden.Value{Line: true, Pairs: []garden.KeyValue{}}
		if family, ok := strings.CutPrefix(what, "family "); ok {
			v = v.With("family", garden.Text(family))
		} else {
			said, _, bad := garden.SayStanding(what, d.book, false)
			p.said("history", bad)
			v = v.With("crop", garden.Text(said.Get("crop")))
		}
		items = append(items, v.With("until", garden.Text(until)))
	}
	return items
}

// turnoverForm tips, mixes or refills what a space is filled with.
func (s *site) turnoverForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	id := or(v.Get("id"), r.URL.Query().Get("id"))
	if d.g == nil {
		return nil, ErrNotThere
	}
	sp, ok := d.g.Space(garden.SpaceID(id))
	if !ok || sp.Medium == "" {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "The soil in "+sp.Name, "/entry/turnover")
	p.Lead = "Now: " + string(sp.Medium) + ". Its history goes where it goes."
	what := []Option{{Value: "refill", Words: "Tipped out, filled afresh"}, {Value: "move", Words: "Filled with another batch we have"}, {Value: "mix", Words: "Mixed with another batch"}}
	var others, kinds []Option
	for _, b := range d.g.Batches {
		if b.ID != sp.Medium {
			others = append(others, Option{Value: string(b.ID), Words: string(b.ID) + ", " + b.Kind})
		}
	}
	for _, k := range mediumKinds {
		kinds = append(kinds, Option{Value: k, Words: name(k)})
	}
	if len(others) == 0 {
		what = what[:1]
	}
	p.Groups = []Group{{Fields: []Field{{Name: "what", Label: "What was done", Sort: "choice", Options: choose(what, typedIn(v, "what", "refill"))},
		{Name: "kind", Label: "If filled afresh: with what", Sort: "list", Options: choose(kinds, typedIn(v, "kind", mediumKinds[0]))}}}}
	if len(others) > 0 {
		p.Groups[0].Fields = append(p.Groups[0].Fields, Field{Name: "batch", Label: "If another batch: which", Sort: "list", Options: choose(others, typedIn(v, "batch", others[0].Value))})
	}
	p.Groups[0].Fields = append(p.Groups[0].Fields, Field{Name: "id", Sort: "hidden", Value: id})
	if v == nil {
		return p, nil
	}
	taken := func(id string) bool { _, ok := garden.Look(d.text, "media", id); return ok }
	year := fmt.Sprint(d.today.Year())
	grown := p.grownIn(d, sp)
	switch p.Faults.oneOf(v, "what", what, "Choose what was done.") {
	case "refill":
		kind := p.Faults.oneOf(v, "kind", kinds, "Choose what it was filled with.")
		fresh := freeID(id+"-"+year, "mix", taken)
		p.put(kind, "media", fresh, "kind")
		p.put(year, "media", fresh, "since")
		p.put(fresh, "spaces", id, "medium")
	case "move":
		b := p.Faults.oneOf(v, "batch", others, "Choose the batch.")
		p.put(b, "spaces", id, "medium")
	case "mix":
		b, ok := d.g.Batch(garden.BatchID(p.Faults.oneOf(v, "batch", others, "Choose the batch.")))
		if !ok {
			break
		}
		mine, _ := garden.Look(d.text, "media", string(sp.Medium))
		theirs, _ := garden.Look(d.text, "media", string(b.ID))
		fresh := freeID(string(sp.Medium)+"-mixed", "mix", taken)
		p.put(or(mine.Get("kind"), b.Kind), "media", fresh, "kind")
		history := append(append(slices.Clone(mine.At("history").List()), theirs.At("history").List()...), grown...)
		for i := range history {
			history[i].Line = true
		}
		p.list(history, "media", fresh, "history")
		p.put(fresh, "spaces", id, "medium")
		grown = nil
	}
	// What stands now goes into the old batch's own history when it is tipped.
	for _, g := range grown {
		p.set(g, "media", string(sp.Medium), "history", garden.New)
	}
	p.marksExactly(sp.Guessed, without(sp.Guessed, "medium"), "spaces", id, "guessed")
	p.words = "Saved: the soil in " + sp.Name + "."
	return p, nil
}

// grownIn lists what stands in a space as lines of a batch's history.
func (p *FormPage) grownIn(d *described, sp garden.Space) []garden.Value {
	var out []garden.Value
	for _, st := range sp.Standing {
		out = append(out, garden.Value{Line: true, Pairs: []garden.KeyValue{{Key: "crop", Value: garden.Text(string(st.Crop))}, {Key: "until", Value: garden.Text(d.today.Long())}}})
	}
	return out
}

// endingForm says that a space is gone. Its past stays in the file.
func (s *site) endingForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	sp, err := d.asked(r, v)
	if err != nil {
		return nil, err
	}
	id := string(sp.ID)
	p := s.newForm(r, d, v, sp.Name+" is gone", "/entry/ending")
	p.Lead = "It leaves the plan. Its past stays."
	p.Groups = []Group{{Fields: []Field{{Name: "on", Label: "Since which day", Sort: "text", Value: typedIn(v, "on", d.today.Long())},
		{Name: "slip", Label: "Was it ever there?", Sort: "checks", Options: []Option{{Value: "yes", Words: "It was entered by mistake: take it out altogether"}}}, {Name: "id", Sort: "hidden", Value: id}}}}
	if v == nil {
		return p, nil
	}
	p.where["spaces > "+id+" > ended"] = "on"
	if v.Get("slip") == "yes" {
		p.put("", "spaces", id)
	} else {
		if on, err := cal.Parse(v.Get("on")); err == nil && on > d.today {
			p.Faults["on"] = "That day has not come yet."
		}
		p.put(v.Get("on"), "spaces", id, "ended")
	}
	p.words = sp.Name + " is out of the plan."
	return p, nil
}
