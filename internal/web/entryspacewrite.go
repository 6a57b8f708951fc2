package web

import (
	"fmt"
	"slices"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

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
	p.space = id
	p.Faults.tooLong("name", f.name, 80)
	at := func(key string) []string { return []string{"spaces", id, key} }
	for key, field := range map[string]string{"": "name", "name": "name", "kind": "kind", "east": "where", "north": "where", "turn": "where", "floor": "where", "length": "size", "width": "size",
		"across": "size", "shape": "size", "depth": "depth", "volume": "depth", "rim": "rim", "medium": "medium", "water": "water", "standing": "standing", garden.OtherKey: "others", "supports": "supports", "covers": "covers", "reached by": "who", "pockets": "pockets", "short": "short"} {
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
		for _, key := range []string{"length", "width", "across", "shape"} {
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
	if k.depth != "" {
		p.spaceOthers(d, f, before, was, at, &guesses)
	}
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
