package garden

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/unit"
)

// Change is one difference between two gardens, in words.
type Change struct {
	About string // "Long bed", "the place", "wants"
	Words string // "depth was 40 cm, is 45 cm."
}

func (c Change) String() string { return c.About + ": " + c.Words }

// fact is one thing said of something, as a person would read it.
type fact struct{ name, said string }

// thing is something of a garden that has a key of its own.
type thing struct {
	key, name string
	facts     []fact
}

// Diff lists what changed from one garden to another, in the order of the
// file: what is new, what is gone, what is different, and a new walking order.
// Two gardens with the same facts give nothing. Either may be nil.
func Diff(old, new *Garden) []Change {
	if old == nil {
		old = &Garden{}
	}
	if new == nil {
		new = &Garden{}
	}
	var all []Change
	all = append(all, compare([]thing{{"garden", "the garden", gardenFacts(old)}}, []thing{{"garden", "the garden", gardenFacts(new)}}, "")...)
	for _, section := range []struct {
		what  string
		list  func(*Garden) []thing
		order bool
	}{{"person", people, false}, {"batch of medium", batches, false}, {"space", spacesOf, true}, {"obstacle", obstaclesOf, false},
		{"want", wantsOf, false}, {"must", mustsOf, false}, {"never", neversOf, false}, {"seed lot", seedsOf, false}} {
		a, b := section.list(old), section.list(new)
		all = append(all, compare(a, b, section.what)...)
		if section.order && reordered(a, b) {
			var names []string
			for _, t := range b {
				names = append(names, t.name)
			}
			all = append(all, Change{"walking order", "is now " + list(names) + "."})
		}
	}
	return all
}

func compare(a, b []thing, what string) []Change {
	var out []Change
	for _, t := range a {
		if _, ok := keyedThing(b, t.key); !ok {
			out = append(out, Change{t.name, "this " + what + " is gone: " + sayFacts(t.facts) + "."})
		}
	}
	for _, t := range b {
		was, ok := keyedThing(a, t.key)
		if !ok {
			out = append(out, Change{t.name, "a new " + what + ": " + sayFacts(t.facts) + "."})
			continue
		}
		for _, f := range t.facts {
			before := factOf(was.facts, f.name)
			switch {
			case before == f.said:
			case before == "":
				out = append(out, Change{t.name, f.name + " is now " + f.said + "."})
			case f.said == "":
				out = append(out, Change{t.name, f.name + " was " + before + ", is no longer said."})
			default:
				out = append(out, Change{t.name, f.name + " was " + before + ", is " + f.said + "."})
			}
		}
	}
	return out
}

func keyedThing(all []thing, key string) (thing, bool) {
	for _, t := range all {
		if t.key == key {
			return t, true
		}
	}
	return thing{}, false
}

func factOf(all []fact, name string) string {
	for _, f := range all {
		if f.name == name {
			return f.said
		}
	}
	return ""
}

func sayFacts(all []fact) string {
	var parts []string
	for _, f := range all {
		if f.said != "" {
			parts = append(parts, f.name+" "+f.said)
		}
	}
	return strings.Join(parts, ", ")
}

// reordered reports whether things both have stand in another order.
func reordered(a, b []thing) bool {
	var in, order []string
	for _, t := range a {
		if _, ok := keyedThing(b, t.key); ok {
			in = append(in, t.key)
		}
	}
	for _, t := range b {
		if _, ok := keyedThing(a, t.key); ok {
			order = append(order, t.key)
		}
	}
	return !slices.Equal(in, order)
}

func sayNumber(x float64) string {
	if x == 0 {
		return ""
	}
	return plainNumber(x)
}

func sayWhole(n int) string { return sayNumber(float64(n)) }

func sayYes(b bool) string {
	if b {
		return "yes"
	}
	return ""
}

func sayLength(l unit.Length) string {
	if !l.Known() {
		return ""
	}
	return l.String()
}

func sayVolume(v unit.Volume) string {
	if !v.Known() {
		return ""
	}
	return v.String()
}

func sayDay(d cal.Day) string {
	if d == 0 {
		return ""
	}
	return d.Long()
}

func sayMonths(from, to int) string {
	if from == 0 {
		return ""
	}
	return time.Month(from).String() + " to " + time.Month(to).String()
}

// sayWhen writes a window: its day, or both ends.
func sayWhen(w cal.Window) string {
	switch {
	case w.None():
		return ""
	case w.Early == w.Late:
		return w.Likely.Long()
	}
	return w.Early.Long() + " to " + w.Late.Long()
}

func gardenFacts(g *Garden) []fact {
	p := g.Place
	facts := []fact{{"name", g.Name}, {"latitude", plainNumber(p.LatDeg)}, {"longitude", plainNumber(p.LonDeg)}, {"elevation", sayLength(p.Elev)},
		{"zone", p.Zone}, {"sheltered", sayYes(p.Sheltered)}, {"weather", p.Weather}, {"day of the file", sayDay(g.From)},
		{"minutes a week", sayNumber(g.Minutes)}, {"water a day", sayVolume(g.WaterDay)}, {"plan for bad years", g.BadYears}, {"shelf places", sayNumber(g.Shelf.Places)}, {"light of the shelf", sayNumber(g.Shelf.LightDLI)},
		{"warmth of the shelf", sayNumber(g.Shelf.WarmthC)}, {"guessed", strings.Join(g.Guessed, ", ")}}
	if p.Normals != nil {
		facts = append(facts, fact{"months", p.Normals.say()})
	}
	return facts
}

func people(g *Garden) (all []thing) {
	for _, p := range g.People {
		lift := ""
		if p.Lift.Known() {
			lift = p.Lift.String()
		}
		all = append(all, thing{string(p.ID), p.Name, []fact{{"name", p.Name}, {"seated", sayYes(p.Seated)}, {"reach", sayLength(p.Reach)}, {"lift", lift}, {"minutes a week", sayNumber(p.Minutes)}}})
	}
	return all
}

func batches(g *Garden) (all []thing) {
	for _, b := range g.Batches {
		var grew []string
		for _, h := range b.History {
			grew = append(grew, strings.TrimSpace(string(h.Crop)+" "+h.Family)+" until "+h.Until.Long())
		}
		all = append(all, thing{string(b.ID), string(b.ID), []fact{{"kind", b.Kind}, {"filled", sayWhole(b.Since)}, {"history", strings.Join(grew, "; ")}}})
	}
	return all
}

func spacesOf(g *Garden) (all []thing) {
	for _, s := range append(slices.Clone(g.Spaces), g.Ended...) {
		var supports, covers, who, standing, others []string
		for _, x := range s.Supports {
			supports = append(supports, strings.TrimSpace(x.Kind+" "+x.Length.String()+" long, "+x.Height.String()+" high "+x.Side))
		}
		for _, c := range s.Covers {
			on := " as needed"
			if c.Always {
				on = " always"
			} else if c.From != 0 {
				on = " " + c.From.Long() + " to " + c.To.Long()
			}
			covers = append(covers, c.Kind+" "+strconv.Itoa(int(100*c.Light+0.5))+" %"+on)
		}
		for _, p := range s.ReachedBy {
			who = append(who, string(p))
		}
		for _, p := range s.Standing {
			standing = append(standing, sayStanding(p))
		}
		for _, o := range s.Others {
			others = append(others, sayOther(o))
		}
		volume := ""
		if s.Volume.Known() {
			volume = s.Volume.String()
		}
		long, wide := sayLength(s.Length), sayLength(s.Width)
		if s.Figure != nil {
			long, wide = "", "" // its shape says them
		}
		all = append(all, thing{string(s.ID), s.Name, []fact{{"name", s.Name}, {"kind", string(s.Kind)}, {"ended", sayDay(s.Until)},
			{"east", plainNumber(s.X) + " m"}, {"north", plainNumber(s.Y) + " m"}, {"turn", sayNumber(s.TurnDeg)},
			{"length", long}, {"width", wide}, {"across", sayLength(s.Round)}, {"shape", s.Shape}, {"floor", sayLength(s.Floor)},
			{"rim", sayLength(s.RimUp)}, {"depth", sayLength(s.Depth)}, {"volume", volume}, {"pockets", sayWhole(s.Pockets)},
			{"medium", string(s.Medium)}, {"water", s.Water}, {"stands on", s.StandsOn}, {"bears", s.Bears.Typed}, {"dark sides", sayYes(s.Dark)}, {"tall plants", sayYes(s.TallOK)},
			{"supports", strings.Join(supports, "; ")}, {"covers", strings.Join(covers, "; ")}, {"reached by", strings.Join(who, ", ")},
			{"standing", strings.Join(standing, "; ")}, {OtherKey, strings.Join(others, "; ")}, {"guessed", strings.Join(s.Guessed, ", ")}}})
	}
	return all
}

func sayOther(o Other) string {
	words := fmt.Sprintf("%d %s, %s", o.Count, o.Name, o.Takes)
	if o.Height.Known() {
		words += ", " + o.Height.String() + " high"
	}
	for _, t := range []struct {
		word string
		w    cal.Window
	}{{"since", o.Since}, {"until", o.Until}} {
		if !t.w.None() {
			words += ", " + t.word + " " + sayWhen(t.w)
		}
	}
	return words
}

func sayStanding(p Standing) string {
	words := fmt.Sprintf("%d %s", p.Count, p.Crop)
	if p.Variety != "" {
		words += " " + p.Variety
	}
	if len(p.OneOf) > 0 {
		words += ", one of " + strings.Join(p.OneOf, " or ")
	}
	how := ", since "
	if p.SetOut {
		how = ", set out "
	}
	words += how + sayWhen(p.Since)
	if p.Looks != "" {
		words += ", " + p.Looks
	}
	if p.Keep {
		words += ", stays"
	}
	return words + " (" + p.ID + ")"
}

func obstaclesOf(g *Garden) (all []thing) {
	for _, o := range g.Obstacles {
		all = append(all, thing{o.ID, o.Name, []fact{{"name", o.Name}, {"kind", o.Kind}, {"east", plainNumber(o.X) + " m"}, {"north", plainNumber(o.Y) + " m"},
			{"turn", sayNumber(o.TurnDeg)}, {"length", sayLength(o.Length)}, {"width", sayLength(o.Width)}, {"across", sayLength(o.Round)},
			{"height", sayLength(o.Height)}, {"underside", sayLength(o.Base)}, {"light in leaf", sayNumber(o.LeafOn)}, {"light bare", sayNumber(o.LeafOff)},
			{"in leaf", sayMonths(o.LeafFrom, o.LeafTo)}}})
	}
	return all
}

// numbered gives things without ids one, by order among their like.
func numbered(all []thing) []thing {
	seen := map[string]int{}
	for i := range all {
		seen[all[i].key]++
		all[i].key += " " + strconv.Itoa(seen[all[i].key])
	}
	return all
}

func wantsOf(g *Garden) (all []thing) {
	for _, w := range g.Wants {
		var crops []string
		for _, c := range w.Crops {
			crops = append(crops, string(c))
		}
		all = append(all, thing{string(w.Food), string(w.Food), []fact{{"meals a week", sayNumber(w.Meals)}, {"liking", plainNumber(w.Liking)},
			{"months", sayMonths(w.From, w.To)}, {"crops", strings.Join(crops, ", ")}}})
	}
	return numbered(all)
}

func mustsOf(g *Garden) (all []thing) {
	for _, m := range g.Musts {
		all = append(all, thing{string(m.Crop), string(m.Crop), []fact{{"plants", sayWhole(m.Plants)}, {"space", string(m.Space)}}})
	}
	return numbered(all)
}

func neversOf(g *Garden) (all []thing) {
	for _, n := range g.Nevers {
		where := string(n.Space)
		if where == "" {
			where = "anywhere"
		}
		all = append(all, thing{string(n.Crop), string(n.Crop), []fact{{"in", where}}})
	}
	return numbered(all)
}

func seedsOf(g *Garden) (all []thing) {
	for _, s := range g.Seeds {
		n := sayWhole(s.Count)
		if n == "" {
			n = "plenty"
		}
		all = append(all, thing{s.ID, strings.TrimSpace(string(s.Crop) + " " + s.Variety), []fact{{"crop", string(s.Crop)}, {"variety", s.Variety}, {"year", sayWhole(s.Year)}, {"count", n}}})
	}
	return all
}
