package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

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
		if long, _, _, ok := garden.Box(v); ok {
			half = long / 2
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

// asked is the space that a form or an address names; ErrNotThere when the
// garden has none of that id.
func (d *described) asked(r *http.Request, v url.Values) (garden.Space, error) {
	if d.g == nil {
		return garden.Space{}, ErrNotThere
	}
	sp, ok := d.g.Space(garden.SpaceID(or(v.Get("id"), r.URL.Query().Get("id"))))
	if !ok {
		return garden.Space{}, ErrNotThere
	}
	return sp, nil
}

// copiesForm makes several spaces like one.
func (s *site) copiesForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	sp, err := d.asked(r, v)
	if err != nil {
		return nil, err
	}
	id := string(sp.ID)
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
		one := was.With("standing", garden.Value{}).With(garden.OtherKey, garden.Value{}).With("name", garden.Text(nextName(&g, sp.Name))).
			With("east", garden.Text(east)).With("north", garden.Text(north))
		one.Line = false
		marks := garden.Value{Line: true}
		for _, k := range append(slices.DeleteFunc(slices.Clone(sp.Guessed), func(k string) bool { return k == "standing" || k == garden.OtherKey || k == "east" || k == "north" }), "east", "north") {
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
