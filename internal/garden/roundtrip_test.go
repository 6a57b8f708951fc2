package garden

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/unit"
)

// same compares two gardens field by field.
func same(a, b *Garden) bool { return reflect.DeepEqual(a, b) }

// TestWrittenGardenReadsBack wants any garden, written as YAML, to read back
// equal in every field, and its text to fit the published schema.
func TestWrittenGardenReadsBack(t *testing.T) {
	const seed = 20150406
	s := compiled(t)
	for i := range 300 {
		g := anyGarden(rand.New(rand.NewPCG(seed, uint64(i))))
		text := written(g)
		got, faults := Read("any.yaml", []byte(text), nil)
		if len(faults) > 0 {
			t.Fatalf("seed %d garden %d: faults:\n%s\nin\n%s", seed, i, print(faults), text)
		}
		if !same(got, g) {
			t.Fatalf("seed %d garden %d differs:\n%s\ngot  %+v\nwant %+v", seed, i, text, got, g)
		}
		if i%10 == 0 {
			if err := validate(s, []byte(text)); err != nil {
				t.Fatalf("seed %d garden %d does not fit the schema: %v\n%s", seed, i, err, text)
			}
		}
	}
}

// dice makes up gardens.
type dice struct{ *rand.Rand }

func (d dice) pick(words ...string) string { return words[d.IntN(len(words))] }
func (d dice) flip() bool                  { return d.IntN(2) == 0 }

func (d dice) name() string {
	n := d.pick("Long bed", "<em>bold</em>", "yes", "12", "a: b", "# no comment", "it's", `say "hi"`, "- dash", "花 bed", "null", "~", "{x}", "*a", "&b", "!c", "%d", "@e", "`f`", "2015-03-04", "x\\n")
	return n + d.pick("", " two", " 3")
}

func (d dice) number(low, high float64) float64 {
	return math.Round((low+d.Float64()*(high-low))*100) / 100
}

// size makes a length in centimetres between low and high, as people type it.
func (d dice) size(low, high float64) unit.Length {
	cm := math.Round(low + d.Float64()*(high-low))
	typed := strconv.Itoa(int(cm)) + " cm"
	switch d.IntN(5) {
	case 0:
		typed = strconv.FormatFloat(cm/100, 'f', -1, 64) + "m"
	case 1:
		if in := math.Floor(cm / 2.54); in*2.54 >= low {
			typed = fmt.Sprintf(`%d'%d"`, int(in)/12, int(in)%12)
		}
	case 2:
		typed = strings.Replace(strconv.FormatFloat(cm/100, 'f', 2, 64), ".", ",", 1) + " m"
	case 3:
		typed = fmt.Sprintf("%d-%d cm", int(cm)-1, int(cm)+1)
		if cm-1 < low || cm+1 > high {
			typed = strconv.Itoa(int(cm)) + " cm"
		}
	}
	l, err := unit.ParseLength(typed)
	if err != nil {
		panic("garden: test length " + typed)
	}
	return l
}

func (d dice) window() (cal.Window, string) {
	day := cal.Of(2000+d.IntN(14), 1, 1+d.IntN(360))
	typed := d.pick(day.String(), day.Long(), day.Time().Format("January 2006"), "early "+day.Time().Format("Jan 2006"), "about "+day.Long(), day.Time().Format("2006"))
	w, bad := when(typed, false)
	if bad != nil {
		panic("garden: test date " + typed)
	}
	return w, typed
}

// anyGarden makes a valid garden without faults.
func anyGarden(r *rand.Rand) *Garden {
	d := dice{r}
	g := &Garden{Name: d.name(), Place: Place{LatDeg: d.number(0, 90), LonDeg: d.number(-180, 180), Sheltered: d.flip()}}
	if d.flip() {
		g.Place.Weather = "record 2015.csv"
		g.Place.Elev, g.Place.Zone, g.From, g.Minutes = d.size(0, 90000), "Europe/London", cal.Of(2015, 4, 1+d.IntN(29)), d.number(1, 900)
	}
	if d.flip() {
		v, err := unit.ParseVolume(d.pick("40 L", "0 L", "10 gal", "30-50 L"))
		if err != nil {
			panic("garden: test volume")
		}
		g.WaterDay = v
	}
	if d.flip() {
		g.BadYears = d.pick(BadYearSteps()...)
	}
	for i := range d.IntN(4) {
		mass, err := unit.ParseMass(d.pick("8 kg", "15 lb", "4.5 kg"))
		if err != nil {
			panic("garden: test mass")
		}
		g.People = append(g.People, Person{ID: PersonID(fmt.Sprint("p", i)), Name: d.name(), Seated: d.flip(), Reach: d.size(30, 90), Lift: mass, Minutes: d.number(0, 100)})
	}
	for i := range 1 + d.IntN(3) {
		b := Batch{ID: BatchID(fmt.Sprint("m", i)), Kind: d.pick(mediumShape().keys[0].words...)}
		if d.flip() {
			b.Since = 2000 + d.IntN(14)
			b.History = []Grew{{Crop: "kale", Until: cal.Of(2013, 7, 1)}, {Family: d.name(), Until: cal.Of(2012, 3, 9)}}
		}
		g.Batches = append(g.Batches, b)
	}
	for i := range d.IntN(4) {
		g.Obstacles = append(g.Obstacles, d.obstacle(i))
	}
	for i := range 1 + d.IntN(8) {
		g.Spaces = append(g.Spaces, d.space(i, g))
	}
	for _, food := range []FoodID{"salad", "roots", "herbs"}[:d.IntN(4)] {
		w := Want{Food: food, Meals: d.number(1, 20), Liking: d.number(0.1, 3)}
		if d.flip() {
			w.From, w.To, w.Crops = 1+d.IntN(12), 1+d.IntN(12), []CropID{"kale", "leek"}
		}
		g.Wants = append(g.Wants, w)
	}
	if d.flip() {
		g.Musts = []Must{{Crop: "tomato", Plants: 1 + d.IntN(9), Space: g.Spaces[0].ID}, {Crop: "garlic", Plants: 3}}
		g.Nevers = []Never{{Crop: "eggplant"}, {Crop: "mint", Space: g.Spaces[0].ID}}
		g.Seeds = []Seed{{ID: "old-leek", Crop: "leek", Variety: d.name(), Year: 2011, Count: 40}, {ID: "kale-1", Crop: "kale"}}
		g.Shelf = Shelf{Places: d.number(1, 90), LightDLI: d.number(1, 20), WarmthC: d.number(1, 30)}
	}
	return g
}

func (d dice) obstacle(i int) Obstacle {
	o := Obstacle{ID: fmt.Sprint("o", i), Name: d.name(), Kind: d.pick("box", "tree", "post"), X: d.number(-90, 90), Y: d.number(-90, 90),
		TurnDeg: d.number(-90, 90), Height: d.size(100, 1000), Base: d.size(0, 80)}
	switch o.Kind {
	case "box":
		o.Length, o.Width = d.size(20, 900), d.size(10, 900)
		return o
	case "tree":
		o.LeafOn, o.LeafOff, o.LeafFrom, o.LeafTo = d.number(0, 0.5), d.number(0.5, 0.9), 1+d.IntN(12), 1+d.IntN(12)
	}
	o.Round = d.size(10, 900)
	return o
}

// odd gives a space an odd shape, with its outer box by hand where a textbook
// gives it.
func (d dice) odd(s *Space) {
	s.Shape = d.pick(FormLines()...)
	if strings.HasPrefix(s.Shape, "L") && d.flip() {
		s.Shape += d.pick(", north-west", ", south east")
	}
	f, _, wrong := figureOf(s.Shape)
	if wrong != "" {
		panic("garden: test shape " + s.Shape + ": " + wrong)
	}
	s.Figure = f
	box := func(m float64) unit.Length {
		l := unit.Metres(m)
		l.Typed = unit.FormatLength(m, unit.Metric)
		return l
	}
	s.Length, s.Width = box(f.Length), box(f.Width)
}

// space makes a space on a point of its own, 80 m from the next.
func (d dice) space(i int, g *Garden) Space {
	s := Space{ID: SpaceID(fmt.Sprint("s", i)), Name: d.name(), Kind: Kind(d.pick(spaceShape().keys[1].words...)),
		X: float64(i%4)*80 + d.number(0, 9), Y: float64(i/4)*80 + d.number(0, 9), TurnDeg: d.number(-90, 180), RimUp: d.size(0, 200),
		Depth: d.size(10, 60), Medium: g.Batches[0].ID, Water: d.pick("drip", "can", "rain"), Dark: d.flip(), TallOK: d.flip(), Pockets: d.IntN(5)}
	if d.flip() {
		s.Floor = d.size(100, 900)
	}
	s.Rim = rim(s.Floor, s.RimUp)
	s.Watering = d.watering(s)
	if d.flip() {
		s.StandsOn = d.name() + fmt.Sprint(i)
	}
	s.Bears = []Bears{{}, {Typed: "not known"}, {Kg: 150, Typed: "150 kg"}, {KgM2: 250, Typed: "250 kg/m2"}}[d.IntN(4)]
	switch d.IntN(3) {
	case 0:
		s.Round = d.size(30, 200)
	case 1:
		s.Length, s.Width = d.size(60, 400), d.size(20, 130)
	default:
		d.odd(&s)
	}
	if d.flip() {
		v, err := unit.ParseVolume("4 gal")
		if err != nil {
			panic("garden: test volume")
		}
		if v.L < 1.5*s.AreaM2()*s.Depth.LowM*1000 {
			s.Volume = v
		}
		s.Supports = []Support{{Kind: "trellis", Length: d.size(50, 200), Height: d.size(50, 200), Side: d.pick("", "pole", "east")}}
		s.Covers = []Cover{{Kind: "fleece", Light: d.number(0.1, 0.9), Always: true}, {Kind: "bird net", Light: 0.5},
			{Kind: "insect net", Light: 0.5, From: cal.Of(2015, 5, 1), To: cal.Of(2015, 6, 30)}}
		for _, p := range g.People {
			s.ReachedBy = append(s.ReachedBy, p.ID)
		}
	}
	for n := range d.IntN(3) {
		w, _ := d.window()
		p := Standing{ID: fmt.Sprintf("%s-%d", s.ID, n+1), Crop: "kale", Since: w, SetOut: d.flip(), Count: 1 + d.IntN(40), Looks: d.pick("", "well", "young"), Keep: d.flip()}
		if d.flip() {
			p.Variety = d.name()
		} else {
			p.OneOf = []string{d.name(), d.name()}
		}
		s.Standing = append(s.Standing, p)
	}
	for range d.IntN(3) {
		if !s.Grows() {
			break
		}
		w, _ := d.window()
		o := Other{Name: d.name(), Count: 1 + d.IntN(2), Takes: d.pick("20 cm across", "4 in x 5 in"), Height: d.size(20, 200), Since: w}
		o.OneM2, _ = ground(o.Takes)
		s.Others = append(s.Others, o)
	}
	return s
}

// watering makes what a file may say of a space's water, half of the time.
func (d dice) watering(s Space) (w Watering) {
	if d.flip() {
		return w
	}
	w.Mulch = d.size(1, 10)
	if s.Kind == Tier {
		w.TierShare = d.number(0, 0.9)
	}
	if s.Water == "drip" {
		w.EmitterLH = []Flow{{2, "2 L/h"}, {0.5, "0.5 L an hour"}, {3.785411784, "1 gph"}, {1.892705892, "0.5 gal/h"}}[d.IntN(4)]
		w.EmitterEvery, w.LinesEvery = d.size(10, 60), d.size(20, 60)
	}
	return w
}

// yamlLines writes a garden as a gardener's editor might.
type yamlLines struct{ strings.Builder }

func (y *yamlLines) put(indent int, key string, value any) {
	text := ""
	switch v := value.(type) {
	case string:
		text = quoted(v)
	case bool:
		text = map[bool]string{true: "yes", false: "no"}[v]
	case float64:
		text = plainNumber(v)
	case int:
		text = strconv.Itoa(v)
	case unit.Length:
		text = v.Typed
	case unit.Volume:
		text = v.Typed
	case unit.Mass:
		text = v.Typed
	default:
		text = fmt.Sprint(v)
	}
	if text == "" || text == `""` {
		return
	}
	fmt.Fprintf(y, "%s%s: %s\n", strings.Repeat("  ", indent), key, text)
}

func quoted(s string) string {
	var b strings.Builder
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(s); err != nil {
		panic("garden: test text")
	}
	return strings.TrimSpace(b.String())
}

func month(n int) string { return cal.Of(2015, 1, 1).Time().AddDate(0, n-1, 0).Format("January") }

func written(g *Garden) string {
	y := &yamlLines{}
	y.put(0, "garden", g.Name)
	y.WriteString("place:\n")
	y.put(1, "latitude", g.Place.LatDeg)
	y.put(1, "longitude", g.Place.LonDeg)
	y.put(1, "elevation", g.Place.Elev)
	y.put(1, "zone", g.Place.Zone)
	y.put(1, "sheltered", g.Place.Sheltered)
	y.put(1, "weather", g.Place.Weather)
	if g.From != 0 {
		y.put(0, "from", g.From.String())
	}
	if g.Minutes != 0 {
		y.put(0, "minutes a week", g.Minutes)
	}
	if g.WaterDay.Known() {
		y.put(0, "water a day", g.WaterDay)
	}
	if g.BadYears != "" {
		y.put(0, "plan for bad years", g.BadYears)
	}
	y.WriteString("people:\n")
	for _, p := range g.People {
		y.WriteString("  " + string(p.ID) + ":\n")
		y.put(2, "name", p.Name)
		y.put(2, "seated", p.Seated)
		y.put(2, "reach", p.Reach)
		y.put(2, "lift", p.Lift)
		y.put(2, "minutes a week", p.Minutes)
	}
	y.WriteString("media:\n")
	for _, b := range g.Batches {
		y.WriteString("  " + string(b.ID) + ":\n")
		y.put(2, "kind", b.Kind)
		if b.Since != 0 {
			y.put(2, "since", b.Since)
			fmt.Fprintf(y, "    history:\n      - {crop: kale, until: 2013}\n      - {family: %s, until: 9 March 2012}\n", quoted(b.History[1].Family))
		}
	}
	y.obstacles(g.Obstacles)
	y.WriteString("spaces:\n")
	for _, s := range g.Spaces {
		y.space(s)
	}
	y.wishes(g)
	return y.String()
}

func (y *yamlLines) obstacles(all []Obstacle) {
	y.WriteString("obstacles:\n")
	for _, o := range all {
		y.WriteString("  " + o.ID + ":\n")
		y.put(2, "name", o.Name)
		y.put(2, "kind", o.Kind)
		y.put(2, "east", plainNumber(o.X)+" m")
		y.put(2, "north", plainNumber(o.Y)+" m")
		y.put(2, "turn", o.TurnDeg)
		y.put(2, "length", o.Length)
		y.put(2, "width", o.Width)
		y.put(2, "across", o.Round)
		y.put(2, "height", o.Height)
		y.put(2, "base", o.Base)
		if o.Kind == "tree" {
			y.put(2, "light in leaf", o.LeafOn)
			y.put(2, "light bare", o.LeafOff)
			y.put(2, "in leaf", month(o.LeafFrom)+" to "+month(o.LeafTo))
		}
	}
}

func (y *yamlLines) space(s Space) {
	y.WriteString("  " + string(s.ID) + ":\n")
	y.put(2, "name", s.Name)
	y.put(2, "kind", string(s.Kind))
	y.put(2, "east", plainNumber(s.X)+" m")
	y.put(2, "north", plainNumber(s.Y)+" m")
	y.put(2, "turn", s.TurnDeg)
	if s.Figure == nil {
		y.put(2, "length", s.Length)
		y.put(2, "width", s.Width)
	}
	y.put(2, "across", s.Round)
	y.put(2, "shape", s.Shape)
	y.put(2, "floor", s.Floor)
	y.put(2, "rim", s.RimUp)
	y.put(2, "depth", s.Depth)
	y.put(2, "volume", s.Volume)
	if s.Pockets > 0 {
		y.put(2, "pockets", s.Pockets)
	}
	y.put(2, "medium", string(s.Medium))
	y.put(2, "water", s.Water)
	y.put(2, "emitter flow", s.Watering.EmitterLH.Typed)
	y.put(2, "emitter spacing", s.Watering.EmitterEvery)
	y.put(2, "line spacing", s.Watering.LinesEvery)
	y.put(2, "mulch", s.Watering.Mulch)
	if s.Kind == Tier {
		y.put(2, "tier share", s.Watering.TierShare)
	}
	y.put(2, "stands on", s.StandsOn)
	y.put(2, "bears", s.Bears.Typed)
	y.put(2, "dark", s.Dark)
	y.put(2, "tall", s.TallOK)
	y.WriteString("    supports:\n")
	for _, p := range s.Supports {
		side := ""
		if p.Side != "" {
			side = ", side: " + p.Side
		}
		fmt.Fprintf(y, "      - {kind: %s, length: %s, height: %s%s}\n", p.Kind, quoted(p.Length.Typed), quoted(p.Height.Typed), side)
	}
	y.WriteString("    covers:\n")
	for _, c := range s.Covers {
		on := "as needed"
		if c.Always {
			on = "always"
		}
		if c.From != 0 {
			on = c.From.Long() + " to " + c.To.Long()
		}
		fmt.Fprintf(y, "      - {kind: %s, light: %s, on: %s}\n", c.Kind, plainNumber(c.Light), on)
	}
	if len(s.ReachedBy) > 0 {
		fmt.Fprintf(y, "    reached by: [%s]\n", strings.Trim(strings.ReplaceAll(fmt.Sprint(s.ReachedBy), " ", ", "), "[]"))
	}
	y.WriteString("    standing:\n")
	for _, p := range s.Standing {
		fmt.Fprintf(y, "      - crop: %s\n", p.Crop)
		y.put(4, "variety", p.Variety)
		if p.OneOf != nil {
			fmt.Fprintf(y, "        one of: [%s, %s]\n", quoted(p.OneOf[0]), quoted(p.OneOf[1]))
		}
		y.put(4, map[bool]string{false: "since", true: "set out"}[p.SetOut], said(p.Since))
		y.put(4, "count", p.Count)
		y.put(4, "looks", p.Looks)
		y.put(4, "keep", p.Keep)
	}
	fmt.Fprintf(y, "    %s:\n", OtherKey)
	for _, o := range s.Others {
		fmt.Fprintf(y, "      - takes: %s\n", o.Takes)
		y.put(4, "name", o.Name)
		y.put(4, "count", o.Count)
		y.put(4, "height", o.Height)
		y.put(4, "since", said(o.Since))
	}
}

// said finds words for a window by trying those window makes.
func said(w cal.Window) string {
	mid := w.Likely
	for _, typed := range []string{mid.String(), mid.Time().Format("January 2006"), "early " + mid.Time().Format("Jan 2006"), "about " + mid.Long(), mid.Time().Format("2006")} {
		if got, bad := when(typed, false); bad == nil && got == w {
			return typed
		}
	}
	panic("garden: test window")
}

func (y *yamlLines) wishes(g *Garden) {
	y.WriteString("wants:\n")
	for _, w := range g.Wants {
		months, crops := "", ""
		if w.From != 0 {
			months = ", months: " + month(w.From) + " - " + month(w.To)
			crops = ", crops: [kale, leek]"
		}
		fmt.Fprintf(y, "  %s: {meals: %s, liking: %s%s%s}\n", w.Food, plainNumber(w.Meals), plainNumber(w.Liking), months, crops)
	}
	if g.Musts == nil {
		return
	}
	fmt.Fprintf(y, "musts:\n  - {crop: tomato, plants: %d, space: %s}\n  - {crop: garlic, plants: 3}\n", g.Musts[0].Plants, g.Musts[0].Space)
	fmt.Fprintf(y, "nevers:\n  - eggplant\n  - {crop: mint, space: %s}\n", g.Nevers[1].Space)
	fmt.Fprintf(y, "seeds:\n  - {id: old-leek, crop: leek, variety: %s, year: 2011, count: 40}\n  - {crop: kale, count: plenty}\n", quoted(g.Seeds[0].Variety))
	fmt.Fprintf(y, "shelf:\n  places: %s\n  light: %s mol a day\n  warmth: %s C\n", plainNumber(g.Shelf.Places), plainNumber(g.Shelf.LightDLI), plainNumber(g.Shelf.WarmthC))
}
