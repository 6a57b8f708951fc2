package web

import (
	"math"
	"net/http"
	"net/url"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// compassWords are eight bearings, each 45 degrees clockwise from the last.
var compassWords = [8]string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}

// splitEnd is how long a space is where it is cut, and the end in words from
// which a cut is measured.
func splitEnd(sp garden.Space) (long unit.Length, end string) {
	m, bearing, odd := sp.CutLengthM()
	switch {
	case sp.Round.Known():
		long = sp.Round
	case odd:
		long = unit.Metres(m)
		long.Typed = unit.FormatLength(m, sp.Length.System())
	default:
		long, bearing = sp.Length, math.Mod(270+sp.TurnDeg+360, 360)
	}
	return long, compassWords[int(math.Round(bearing/45))%8]
}

// splitForm makes two spaces of one, by a straight cut across it.
func (s *site) splitForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	sp, err := d.asked(r, v)
	if err != nil {
		return nil, err
	}
	id := string(sp.ID)
	long, end := splitEnd(sp)
	p := s.newForm(r, d, v, "Split "+sp.Name, "/entry/split")
	p.Lead = "The first part keeps its name, its past and what stands in it. The second has the same soil."
	half := or(typedIn(v, "length", ""), unit.FormatLength(long.M/2, long.System()))
	p.Groups = []Group{{Fields: []Field{{Name: "length", Label: "Length of the first part", Sort: "text", Value: half,
		Hint: "From its " + end + " end, cut straight across. The whole is " + long.String() + " long."},
		{Name: "name", Label: "What the second part is called", Sort: "text", Value: typedIn(v, "name", nextName(d.g, sp.Name))}, {Name: "id", Sort: "hidden", Value: id}}}}
	if v == nil {
		return p, nil
	}
	p.where["spaces > "+id+" > shape"] = "length"
	first, err := unit.ParseLength(half)
	switch {
	case err != nil:
		p.Faults["length"] = err.Error()
	case first.M <= garden.LeastPartM || first.M >= long.M-garden.LeastPartM:
		p.Faults["length"] = "Both parts need some length. The whole is " + long.String() + "."
	}
	p.Faults.tooLong("name", v.Get("name"), 80)
	if len(p.Faults) == 0 {
		p.splitPatches(d, sp, half, first.M, or(v.Get("name"), nextName(d.g, sp.Name)))
	}
	return p, nil
}

// splitPatches writes the first part in the space's place and the second as a
// new one next to it in the walk.
func (p *FormPage) splitPatches(d *described, sp garden.Space, half string, firstM float64, second string) {
	id := string(sp.ID)
	was, _ := garden.Look(d.text, "spaces", id)
	fresh := freeID(second, "space", func(id string) bool { _, ok := garden.Look(d.text, "spaces", id); return ok })
	sizes := map[string][2]string{}
	one, two, odd := sp.Cut(half)
	if odd {
		sizes["shape"] = [2]string{one.Shape, two.Shape}
		sizes["across"] = [2]string{}
	} else {
		rest := sp.Length.M - firstM
		sin, cos := math.Sincos(sp.TurnDeg * math.Pi / 180)
		one.East, one.North = sp.X-rest/2*cos, sp.Y+rest/2*sin
		two.East, two.North = sp.X+firstM/2*cos, sp.Y-firstM/2*sin
		sizes["length"] = [2]string{half, unit.FormatLength(rest, sp.Length.System())}
	}
	sizes["east"] = [2]string{onPlan(one.East, feet(was)), onPlan(two.East, feet(was))}
	sizes["north"] = [2]string{onPlan(one.North, feet(was)), onPlan(two.North, feet(was))}
	sizes["volume"] = [2]string{}
	other := was.With("standing", garden.Value{}).With(garden.OtherKey, garden.Value{}).With("name", garden.Text(second))
	for _, key := range []string{"across", "length", "shape", "volume", "east", "north"} {
		if both, ok := sizes[key]; ok {
			p.put(both[0], "spaces", id, key)
			other = other.With(key, garden.Text(both[1]))
		}
	}
	other.Line = false
	p.set(other, "spaces", fresh)
	for i, one := range d.g.Spaces[:len(d.g.Spaces)-1] {
		if one.ID == sp.ID {
			p.patches = append(p.patches, garden.Patch{Op: garden.Move, At: garden.Path{"spaces", fresh}, To: string(d.g.Spaces[i+1].ID)})
		}
	}
	p.words = "Split: " + sp.Name + " and " + second + "."
}
