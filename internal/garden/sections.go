package garden

import (
	"fmt"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"bedweek/internal/cal"
	"bedweek/internal/unit"
)

// Limits on how much one file may hold. They keep the plan quick and a
// hostile file cheap.
const (
	maxSpaces    = 200
	maxPeople    = 100
	maxMedia     = 100
	maxObstacles = 200
	maxHistory   = 100
	maxInSpace   = 60 // plantings standing in one space
	maxLots      = 500
	maxWishes    = 200   // wants, musts and nevers, each
	mostWaterDay = 20000 // litres a day: more is a farm's
)

// garden reads the whole file.
func (r *reader) garden(root ast.Node) *Garden {
	start := first(root)
	f, ok := r.fields(root, fileShape(), start)
	if !ok {
		return nil
	}
	g := &Garden{Name: f.name("garden"), Minutes: f.number("minutes a week", bound{0, 20000, true}, "minutes")}
	g.BadYears = f.word("plan for bad years")
	g.WaterDay = f.volume("water a day", bound{0, mostWaterDay, false})
	if p, ok := f.pairs["place"]; ok {
		g.Place = r.place(p)
	}
	r.south = g.Place.LatDeg < 0
	g.From = f.day("from")
	r.from = g.From
	g.People = r.people(f)
	g.Batches = r.media(f)
	g.Obstacles = r.obstacles(f)
	g.Spaces = r.spaces(f)
	g.Wants = r.wants(f)
	g.Musts = r.musts(f)
	g.Nevers = r.nevers(f)
	g.Seeds = r.seeds(f)
	if p, ok := f.pairs["shelf"]; ok && !null(p.value) {
		g.Shelf = r.shelf(p)
	}
	g.Guessed = r.words(f, "guessed", fileShape().names())
	live := g.Spaces[:0]
	for _, s := range g.Spaces {
		if s.Until != 0 {
			g.Ended = append(g.Ended, s)
			continue
		}
		live = append(live, s)
	}
	if g.Spaces = live; len(live) == 0 {
		g.Spaces = nil
	}
	r.resolve()
	r.layout(g)
	return g
}

func (r *reader) place(p pair) Place {
	f, ok := r.fields(p.value, placeShape(), p.at)
	if !ok {
		return Place{}
	}
	return Place{
		LatDeg:    f.degrees("latitude", unit.ParseLatitude),
		LonDeg:    f.degrees("longitude", unit.ParseLongitude),
		Elev:      f.length("elevation", bound{-430, 6000, false}),
		Zone:      f.zone("zone"),
		Sheltered: f.yes("sheltered", false),
		Weather:   f.beside("weather"),
		Normals:   f.months("months"),
	}
}

// beside reads the name of a file that lies in the garden file's own folder.
func (f fields) beside(key string) string {
	name := f.name(key)
	if strings.ContainsAny(name, `/\:`) || strings.HasPrefix(name, "..") {
		tk := f.where(key)
		f.r.at(tk, "a file in another folder", "Put the weather file beside the garden file and give its name alone, such as weather.csv.")
		return ""
	}
	return name
}

// degrees reads a latitude, longitude or turn.
func (f fields) degrees(name string, parse func(string) (float64, error)) float64 {
	text, tk, ok := f.text(name)
	if !ok {
		return 0
	}
	deg, err := parse(text)
	if fault, isFault := err.(*unit.Fault); isFault {
		f.r.at(tk, name+" "+clip(text), fault.Remedy)
		return 0
	}
	return deg
}

// zone reads the name of a time zone, such as America/Los_Angeles. Whether
// there is such a zone is not looked up here.
func (f fields) zone(name string) string {
	text, tk, ok := f.text(name)
	if !ok {
		return ""
	}
	for _, c := range text {
		if c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '/' || c == '_' || c == '+' || c == '-' {
			continue
		}
		f.r.at(tk, name+" "+clip(text), "Write it as America/Los_Angeles or Europe/London.")
		return ""
	}
	if len(text) > maxName {
		f.r.at(tk, "a zone of "+fmt.Sprint(len(text))+" letters", "Write it as America/Los_Angeles or Europe/London.")
		return ""
	}
	return text
}

// day reads a single day.
func (f fields) day(name string) cal.Day {
	w, tk, text, ok := f.window(name)
	if !ok {
		return 0
	}
	if w.Early != w.Late {
		f.r.at(tk, name+" "+clip(text), "Write one day, as 2015-04-06 or 6 April 2015.")
		return 0
	}
	return w.Early
}

// window reads a time that may be unsure.
func (f fields) window(name string) (cal.Window, *token.Token, string, bool) {
	text, tk, ok := f.text(name)
	if !ok {
		return cal.Window{}, nil, "", false
	}
	w, bad := when(text, f.r.south)
	if bad != nil {
		f.r.at(tk, name+" "+clip(text)+" "+bad.what, bad.remedy)
		return cal.Window{}, nil, "", false
	}
	return w, tk, text, true
}

// named calls read for each id of a section, up to most of them.
func (r *reader) named(f fields, section string, most int, read func(p pair)) {
	p, ok := f.pairs[section]
	if !ok || null(p.value) {
		return
	}
	all, ok := r.pairs(p.value, section)
	if !ok {
		return
	}
	if len(all) > most {
		r.at(p.at, fmt.Sprintf("%d %s", len(all), section), fmt.Sprintf("A garden file holds at most %d. Split the garden into two files.", most))
		all = all[:most]
	}
	for _, one := range all {
		r.id(one.key, one.at)
		r.declared[section] = append(r.declared[section], one.key)
		read(one) // even under a bad id, so that all faults are told at once
	}
}

// listed calls read for each entry of a list, up to most of them.
func (r *reader) listed(f fields, section string, most int, read func(n ast.Node, at *token.Token)) {
	p, ok := f.pairs[section]
	if !ok || null(p.value) {
		return
	}
	all := r.items(p.value)
	if len(all) > most {
		r.at(p.at, fmt.Sprintf("%d entries in %s", len(all), section), fmt.Sprintf("It holds at most %d.", most))
		all = all[:most]
	}
	for _, n := range all {
		if null(n) {
			r.at(p.at, "an empty entry in "+section, "Take the lone dash out, or write the entry.")
			continue
		}
		read(n, first(bare(n)))
	}
}

func (r *reader) people(f fields) (people []Person) {
	r.named(f, "people", maxPeople, func(p pair) {
		f, ok := r.fields(p.value, personShape(), p.at)
		if !ok {
			return
		}
		people = append(people, Person{
			ID: PersonID(p.key), Name: f.name("name"), Seated: f.yes("seated", false),
			Reach:   f.length("reach", bound{0.1, 1.5, false}),
			Lift:    f.mass("lift", bound{0, 150, false}),
			Minutes: f.number("minutes a week", bound{0, 10080, false}, "minutes"),
		})
	})
	return people
}

func (r *reader) media(f fields) (batches []Batch) {
	r.named(f, "media", maxMedia, func(p pair) {
		f, ok := r.fields(p.value, mediumShape(), p.at)
		if !ok {
			return
		}
		b := Batch{ID: BatchID(p.key), Kind: f.word("kind"), Since: f.year("since")}
		r.listed(f, "history", maxHistory, func(n ast.Node, at *token.Token) {
			if grew, ok := r.grew(n, at); ok {
				b.History = append(b.History, grew)
			}
		})
		batches = append(batches, b)
	})
	return batches
}

// year reads a year that has begun.
func (f fields) year(name string) int {
	y := f.whole(name, bound{firstYear, lastYear, false})
	if y != 0 && f.r.from != 0 && y > f.r.from.Year()+1 {
		f.r.at(f.where(name), fmt.Sprintf("%s %d lies in the future", name, y), "Look at the year.")
		return 0
	}
	return y
}

func (r *reader) grew(n ast.Node, at *token.Token) (Grew, bool) {
	f, ok := r.fields(n, grewShape(), at)
	if !ok {
		return Grew{}, false
	}
	g := Grew{Crop: f.crop("crop"), Family: f.name("family")}
	if f.has("crop") == f.has("family") {
		r.at(at, "a line of history needs a crop or a family", "Write one of them: crop: tomato")
		return Grew{}, false
	}
	w, tk, text, ok := f.window("until")
	if !ok {
		return g, false
	}
	g.Until = w.Likely
	if w.Late-w.Early > 300 { // only a year was given
		g.Until = cal.Of(w.Early.Year(), 7, 1)
	}
	f.past(w, tk, text, "until")
	return g, true
}

// past reports a time later than the file's own date.
func (f fields) past(w cal.Window, tk *token.Token, text, name string) {
	if f.r.from != 0 && w.Early > f.r.from {
		f.r.at(tk, name+" "+clip(text)+" lies in the future", "The file speaks of "+f.r.from.Long()+". Look at the year.")
	}
}

// crop reads a crop's id and looks it up.
func (f fields) crop(name string) CropID {
	text, tk, ok := f.text(name)
	if !ok {
		return ""
	}
	return f.r.crop(text, tk)
}

func (r *reader) crop(text string, tk *token.Token) CropID {
	if r.book == nil {
		if !r.id(text, tk) {
			return ""
		}
		return CropID(text)
	}
	if r.book.Known(text) {
		return CropID(text)
	}
	remedy := "Write a crop of the book, such as lettuce-leaf."
	if len(text) <= maxName {
		if id, ok := r.book.Nearest(text); ok {
			remedy = "Did you mean " + id + "?"
		}
	}
	r.at(tk, "unknown crop "+clip(text), remedy)
	return ""
}

func (r *reader) shelf(p pair) Shelf {
	f, ok := r.fields(p.value, shelfShape(), p.at)
	if !ok {
		return Shelf{}
	}
	s := Shelf{Places: f.number("places", bound{0, 5000, true}), LightDLI: f.number("light", bound{0, 60, true}, "mol a day", "mol")}
	if text, tk, ok := f.text("warmth"); ok {
		t, err := unit.ParseTemperature(text)
		switch {
		case err != nil:
			r.typed(err, tk, "warmth", text)
		case t.C < 0 || t.C > 45:
			r.at(tk, "warmth "+clip(text), "A shelf is between 0 °C and 45 °C. Look at the unit.")
		default:
			s.WarmthC = float64(t.C)
		}
	}
	return s
}
