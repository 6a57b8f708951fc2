package web

import (
	"fmt"
	"net/http"
	"net/url"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/garden"
)

// wantsForm asks what the household eats in a week, by food, in meals.
func (s *site) wantsForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "What do you eat in a week?", "/entry/wants")
	p.Lead = "Meals a week, all eaters together. Leave out what you do not want."
	was, _ := garden.Look(d.text, "wants")
	guessed := isGuessed(d.g.Guessed, "wants")
	var fields []Field
	changed := false
	for i, food := range s.o.Entry.Book.Foods() {
		first := wantLine(was.At(food.Name))
		f := Field{Name: food.Name, Label: name(food.Name), Sort: "text", Value: typedIn(v, food.Name, first), Guess: guessed && first != ""}
		if i == 0 {
			f.Hint = "As 5. Or 9 April to October, liking 1.2; 5 November to March. Liking 1 is ordinary."
		}
		fields = append(fields, f)
		p.where["wants > "+food.Name] = food.Name
		if v == nil || f.Value == first {
			continue
		}
		changed = true
		if f.Value == "" {
			p.put("", "wants", food.Name)
			continue
		}
		val, wrong := sayWant(f.Value, d)
		if wrong != "" {
			p.Faults[food.Name] = wrong
		}
		p.set(val, "wants", food.Name)
	}
	minutes := typedIn(v, "minutes", d.get("minutes a week"))
	bad := typedIn(v, "bad", d.get("plan for bad years"))
	water := typedIn(v, "water", d.get("water a day"))
	nevers := typedIn(v, "nevers", neverLines(d))
	musts := typedIn(v, "musts", mustLines(d))
	p.where["water a day"], p.where["plan for bad years"] = "water", "bad"
	p.where["minutes a week"], p.where["nevers"], p.where["musts"] = "minutes", "nevers", "musts"
	p.Groups = []Group{{Fields: fields}, {Legend: "Musts, nevers, minutes, water, bad years", Open: len(d.g.Nevers)+len(d.g.Musts) > 0, Fields: []Field{
		{Name: "musts", Label: "Whatever happens, one to a line", Sort: "area", Rows: 2, Value: musts, Hint: "As 30 garlic, or 2 tomato in long-bed."},
		{Name: "nevers", Label: "Never, one to a line", Sort: "area", Rows: 2, Value: nevers, Hint: "As eggplant, or borage in long-bed."},
		{Name: "minutes", Label: "Minutes of work a week, all together", Sort: "text", Number: true, Value: minutes, Hint: "Empty: work is not limited."},
		{Name: "water", Label: "Water a day in a dry week, all spaces together", Sort: "text", Value: water, Hint: "As 40 L, or 10 gal. Empty: water is not limited."},
		{Name: "bad", Label: "Plan for bad years, the worst five of twenty?", Sort: "choice", Options: choose(append([]Option{{Value: "", Words: "Not said"}}, badSteps()...), bad)},
	}}}
	if guessed {
		p.Groups = append(p.Groups, Group{Fields: []Field{{Name: "stay", Label: "These meals are guessed", Sort: "checks", Options: []Option{{Value: "right", Words: "They are right as they stand", Chosen: v.Get("stay") == "right"}}}}})
	}
	if v == nil {
		return p, nil
	}
	if minutes != d.get("minutes a week") {
		p.put(minutes, "minutes a week")
	}
	if bad != d.get("plan for bad years") {
		p.put(bad, "plan for bad years")
	}
	if water != d.get("water a day") {
		p.put(water, "water a day")
	}
	if musts != mustLines(d) {
		p.list(p.cropLines(d, "musts", musts, true), "musts")
	}
	if nevers != neverLines(d) {
		p.list(p.cropLines(d, "nevers", nevers, false), "nevers")
	}
	if changed || v.Get("stay") == "right" {
		p.known(d, "wants")
	}
	p.words = "Saved: what you eat."
	return p, nil
}

// wantLine writes a want as sayWant reads it.
func wantLine(v garden.Value) string {
	var parts []string
	for _, one := range v.List() {
		if one.Text != "" {
			parts = append(parts, one.Text)
			continue
		}
		s := one.Get("meals")
		if m := one.Get("months"); m != "" {
			s += " " + m
		}
		if l := one.Get("liking"); l != "" {
			s += ", liking " + l
		}
		var crops []string
		for _, c := range one.At("crops").List() {
			crops = append(crops, c.Text)
		}
		if len(crops) > 0 {
			s += ", only " + strings.Join(crops, " / ")
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, "; ")
}

var mealsHead = regexp.MustCompile(`^([0-9]+(?:[.,][0-9]+)?)\s*(?:meals?)?\s*(.*)$`)

// sayWant reads "9 April to October, liking 1.2; 5 November to March".
func sayWant(typed string, d *described) (garden.Value, string) {
	out := garden.Value{Items: []garden.Value{}}
	for _, one := range strings.Split(typed, ";") {
		v := garden.Value{Line: true, Pairs: []garden.KeyValue{}}
		for i, part := range strings.Split(one, ",") {
			part = strings.TrimSpace(part)
			low := strings.ToLower(part)
			m := mealsHead.FindStringSubmatch(part)
			switch {
			case i == 0 && m == nil:
				return out, "Begin with a number of meals, as 5."
			case i == 0:
				v = v.With("meals", garden.Text(strings.Replace(m[1], ",", ".", 1))).With("months", garden.Text(m[2]))
			case strings.HasPrefix(low, "liking "):
				v = v.With("liking", garden.Text(strings.TrimSpace(part[7:])))
			case strings.HasPrefix(low, "only "):
				items := []garden.Value{}
				for _, c := range strings.Split(part[5:], "/") {
					said, _, bad := garden.SayStanding(c, d.book, false)
					if len(bad) > 0 {
						return out, bad[0].Words
					}
					items = append(items, garden.Text(said.Get("crop")))
				}
				v = v.With("crops", garden.Value{Line: true, Items: items})
			case part != "":
				return out, "Write it as 9 April to October, liking 1.2."
			}
		}
		out.Items = append(out.Items, v)
	}
	if len(out.Items) == 1 {
		if v := out.Items[0]; len(v.Pairs) == 1 {
			return garden.Text(v.Get("meals")), ""
		}
		return out.Items[0], ""
	}
	return out, ""
}

func neverLines(d *described) string {
	var out []string
	v, _ := garden.Look(d.text, "nevers")
	for _, n := range v.List() {
		out = append(out, inSpace(or(n.Text, n.Get("crop")), n.Get("space")))
	}
	return strings.Join(out, "\n")
}

func mustLines(d *described) string {
	var out []string
	v, _ := garden.Look(d.text, "musts")
	for _, m := range v.List() {
		out = append(out, inSpace(m.Get("plants")+" "+m.Get("crop"), m.Get("space")))
	}
	return strings.Join(out, "\n")
}

func inSpace(what, space string) string {
	if space == "" {
		return what
	}
	return what + " in " + space
}

// cropLines reads musts ("30 garlic in long-bed") and nevers ("eggplant").
func (p *FormPage) cropLines(d *described, field, typed string, counted bool) []garden.Value {
	items := []garden.Value{}
	for _, l := range lines(typed) {
		what, where, _ := strings.Cut(l, " in ")
		said, _, bad := garden.SayStanding(what, d.book, false)
		p.said(field, bad)
		v := garden.Value{Line: true, Pairs: []garden.KeyValue{{Key: "crop", Value: garden.Text(said.Get("crop"))}}}
		if counted {
			v = v.With("plants", garden.Text(or(said.Get("count"), "1")))
		}
		if where != "" {
			id := ""
			for _, sp := range d.g.Spaces {
				if string(sp.ID) == where || strings.EqualFold(sp.Name, where) {
					id = string(sp.ID)
				}
			}
			if id == "" {
				p.Faults[field] = "No space is called " + where + "."
			}
			v = v.With("space", garden.Text(id))
		} else if !counted {
			v = garden.Text(said.Get("crop"))
		}
		items = append(items, v)
	}
	return items
}

// tinForm asks about the seed tin and the lamps.
func (s *site) tinForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "Seeds and lamps", "/entry/tin")
	p.Lead = "Seeds in the tin, and what stands under lamps."
	var have []string
	was, _ := garden.Look(d.text, "seeds")
	for _, l := range was.List() {
		have = append(have, seedLine(l))
	}
	seeds := typedIn(v, "seeds", strings.Join(have, "\n"))
	p.Groups = []Group{{Fields: []Field{
		{Name: "seeds", Label: "Seeds, one packet to a line", Sort: "area", Rows: 6, Value: seeds, Hint: "As 300 lettuce-leaf Ruffled Tide, packed 2014. No count: plenty."},
		{Name: "places", Label: "Pots or cells under lamps", Sort: "text", Number: true, Value: typedIn(v, "places", d.get("shelf", "places")), Hint: "Of about 7 cm. Empty: no lamps."},
		{Name: "light", Label: "Light at leaf height", Sort: "text", Value: typedIn(v, "light", d.get("shelf", "light")), Hint: "As 13 mol a day. May be empty."},
		{Name: "warmth", Label: "Warmth there", Sort: "text", Value: typedIn(v, "warmth", d.get("shelf", "warmth")), Hint: "As 20 C or 68 F. May be empty."},
	}}}
	p.where["seeds"], p.where["shelf > places"], p.where["shelf > light"], p.where["shelf > warmth"], p.where["shelf"] = "seeds", "places", "light", "warmth", "places"
	if v == nil {
		return p, nil
	}
	if typed := lines(seeds); !slices.Equal(typed, have) {
		items := []garden.Value{}
		for _, l := range typed {
			i := slices.Index(have, l)
			if i >= 0 {
				items = append(items, was.List()[i])
				continue
			}
			items = append(items, p.saySeed(d, l))
		}
		p.list(items, "seeds")
	}
	if v.Get("places") == "" {
		p.put("", "shelf")
	} else {
		for _, k := range []string{"places", "light", "warmth"} {
			if t := strings.TrimSpace(v.Get(k)); t != d.get("shelf", k) {
				p.put(t, "shelf", k)
			}
		}
	}
	p.words = "Saved: seeds and lamps."
	return p, nil
}

func seedLine(v garden.Value) string {
	s := strings.TrimSpace(v.Get("crop") + " " + v.Get("variety"))
	if n := v.Get("count"); n != "" && n != "plenty" {
		s = n + " " + s
	}
	if y := v.Get("year"); y != "" {
		s += ", packed " + y
	}
	return s
}

// saySeed reads "300 lettuce-leaf Ruffled Tide, packed 2014".
func (p *FormPage) saySeed(d *described, typed string) garden.Value {
	head, rest, _ := strings.Cut(typed, ",")
	count := ""
	if first, more, ok := strings.Cut(strings.TrimSpace(head), " "); ok {
		if n, err := strconv.Atoi(first); err == nil {
			count, head = fmt.Sprint(n), more
		}
	}
	said, _, bad := garden.SayStanding(head, d.book, false)
	p.said("seeds", bad)
	v := garden.Value{Line: true, Pairs: []garden.KeyValue{{Key: "crop", Value: garden.Text(said.Get("crop"))}}}
	v = v.With("variety", garden.Text(said.Get("variety")))
	if rest = strings.TrimSpace(rest); rest != "" {
		year, ok := strings.CutPrefix(rest, "packed ")
		if !ok {
			p.Faults["seeds"] = "Write each as 300 lettuce-leaf Ruffled Tide, packed 2014."
		}
		v = v.With("year", garden.Text(year))
	}
	return v.With("count", garden.Text(count))
}
