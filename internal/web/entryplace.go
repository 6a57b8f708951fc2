package web

import (
	"fmt"
	"io"
	"net/http"
	"net/url"
	"strings"
	"time"

	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// nearKm is how far a listed place may lie for its months to be taken as a
// guess. Common practice; hills and coasts differ more than that.
const nearKm = 250

// startWants are the meals a week taken until the household says its own: two
// people who eat a bit of everything. Ours, not measured.
var startWants = []struct{ food, meals string }{{"salad", "4"}, {"cooking greens", "3"}, {"roots", "3"}, {"beans and peas", "2"}, {"tomatoes", "3"}, {"alliums", "2"}, {"herbs", "2"}}

// beginText is the file a garden begins with; place and spaces come after.
func beginText(day string) string {
	return "# Begun on " + day + ". Change it here or on the pages; remarks stay.\n\ngarden: My garden\n"
}

// placeForm asks where the garden lies.
func (s *site) placeForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	title := "Where is your garden?"
	p := s.newForm(r, d, v, title, "/entry/place")
	p.begin = beginText(d.today.Long())
	p.Locate, p.Submit = true, "Go on"
	p.Lead = "One way is enough: a place near you, or where you are."
	coordinates, sheltered, town := "", "", ""
	gardenName := "My garden"
	p.Elsewhere = d.g == nil
	if d.g != nil {
		coordinates = d.get("place", "latitude") + ", " + d.get("place", "longitude")
		gardenName = d.g.Name
		if d.g.Place.Sheltered {
			sheltered = "yes"
		}
		p.Lead = "Change what is wrong and save."
		p.Submit = "Save"
	}
	gardenName = typedIn(v, "name", gardenName)
	coordinates = typedIn(v, "at", coordinates)
	town = typedIn(v, "town", town)
	elevation := typedIn(v, "elevation", d.get("place", "elevation"))
	if v != nil {
		sheltered = v.Get("sheltered")
	}
	towns := []Option{{Value: "", Words: "None of these"}}
	for _, t := range garden.Towns() {
		towns = append(towns, Option{Value: t.Name, Words: t.Name})
	}
	p.Groups = []Group{{Fields: []Field{
		{Name: "town", Label: "A place near you", Sort: "list", Options: choose(towns, town), Hint: "Brings twelve months of weather, from memory. You can give better ones later."},
		{Name: "at", Label: "Or latitude and longitude", Sort: "text", Value: coordinates, Hint: "As 47.6 N, 122.3 W. Any map shows them."},
	}}, {Legend: "Name, height, walls", Open: d.g != nil, Fields: []Field{
		{Name: "name", Label: "What the garden is called", Sort: "text", Value: gardenName},
		{Name: "elevation", Label: "Height above the sea", Sort: "text", Value: elevation, Hint: "As 50 m or 160 ft. May be empty."},
		{Name: "zone", Label: "Time zone", Sort: "text", Value: typedIn(v, "zone", d.get("place", "zone")), Hint: "As Europe/London. May be empty."},
		{Name: "sheltered", Label: "Walls or hedges all around?", Sort: "choice", Options: choose([]Option{{Value: "yes", Words: "Yes, little wind"}, {Value: "", Words: "No, or only some"}}, sheltered)},
		{Name: "from", Label: "The day this describes", Sort: "text", Value: typedIn(v, "from", d.get("from")), Hint: "Empty: today."},
	}}}
	p.where = map[string]string{"garden": "name", "place > latitude": "at", "place > longitude": "at", "place > elevation": "elevation", "place > zone": "zone", "from": "from"}
	if v != nil {
		s.placePatches(p, d, v)
	}
	return p, nil
}

func (s *site) placePatches(p *FormPage, d *described, v url.Values) {
	lat, lon := d.get("place", "latitude"), d.get("place", "longitude")
	typed, town := strings.TrimSpace(v.Get("at")), v.Get("town")
	var chosen garden.Town
	found := false
	for _, t := range garden.Towns() {
		if t.Name == town {
			chosen, found = t, true
		}
	}
	p.Faults.tooLong("name", v.Get("name"), 80)
	switch {
	case typed != "" && (!found || typed != lat+", "+lon):
		a, b, ok := strings.Cut(typed, ",")
		latDeg, errA := unit.ParseLatitude(strings.TrimSpace(a))
		lonDeg, errB := unit.ParseLongitude(strings.TrimSpace(b))
		switch {
		case !ok:
			p.Faults["at"] = "Write both with a comma between, as 47.6 N, 122.3 W."
		case errA != nil:
			p.Faults["at"] = "The latitude: " + errA.Error()
		case errB != nil:
			p.Faults["at"] = "The longitude: " + errB.Error()
		}
		lat, lon = strings.TrimSpace(a), strings.TrimSpace(b)
		if near, km := garden.NearestTown(latDeg, lonDeg); !found && km < nearKm {
			chosen, found = near, true
			if d.g != nil && d.g.Place.Normals != nil {
				found = false // months of one's own stay
			}
			if found {
				p.guess(d, "place")
			}
		}
	case found:
		lat, lon = chosen.Latitude, chosen.Longitude
		p.put(chosen.Elevation, "place", "elevation")
		p.put(chosen.Zone, "place", "zone")
	case lat == "":
		p.Faults["town"] = "Choose a place near you, or give latitude and longitude."
	}
	if len(p.Faults) > 0 {
		return
	}
	p.put(typedIn(v, "name", "My garden"), "garden")
	if v.Get("name") == "" {
		p.put("My garden", "garden")
	}
	p.put(lat, "place", "latitude")
	p.put(lon, "place", "longitude")
	if e := strings.TrimSpace(v.Get("elevation")); e != "" {
		p.put(e, "place", "elevation")
	}
	if z := strings.TrimSpace(v.Get("zone")); z != "" {
		p.put(z, "place", "zone")
	}
	if v.Get("sheltered") == "yes" {
		p.put("yes", "place", "sheltered")
	} else if d.get("place", "sheltered") != "" {
		p.put("", "place", "sheltered")
	}
	from := strings.TrimSpace(v.Get("from"))
	if from == "" && d.get("from") == "" {
		from = d.today.Long()
	}
	if from != "" {
		p.put(from, "from")
	}
	if found {
		p.set(garden.MonthsValue(chosen.Months), "place", "months")
		p.put(chosen.FromMemory(), "place", "months from")
	}
	if d.g == nil {
		p.set(garden.Value{Line: true, Pairs: []garden.KeyValue{}}, "spaces")
		for _, w := range startWants {
			p.put(w.meals, "wants", w.food)
		}
		p.guess(d, "wants")
		p.next = "/entry/kind"
		p.words = "Kept. Now one space."
		if !found {
			p.next = "/entry/months"
			p.words = "Kept. No listed place is near you: give twelve months."
		}
		return
	}
	p.words = "Saved: the place."
}

// guess marks keys of the whole file as guessed.
func (p *FormPage) guess(d *described, keys ...string) { p.marks(d, keys, nil) }

// known takes marks of guessing off the whole file.
func (p *FormPage) known(d *described, keys ...string) { p.marks(d, nil, keys) }

func (p *FormPage) marks(d *described, add, drop []string) {
	var have []string
	if d.g != nil {
		have = d.g.Guessed
	}
	for _, q := range p.patches { // marks this form made already
		if len(q.At) == 1 && q.At[0] == "guessed" && q.Op == garden.Put {
			have = nil
			for _, i := range q.Value.Items {
				have = append(have, i.Text)
			}
		}
	}
	p.marksAt(have, add, drop, "guessed")
}

// marksAt writes a list of guessed keys at a path.
func (p *FormPage) marksAt(have, add, drop []string, at ...string) {
	items := []garden.Value{}
	var out []string
	for _, k := range append(append([]string{}, have...), add...) {
		if !isGuessed(drop, k) && !isGuessed(out, k) {
			out = append(out, k)
			items = append(items, garden.Text(k))
		}
	}
	if len(items) == 0 {
		if len(have) > 0 {
			p.put("", at...)
		}
		return
	}
	if strings.Join(out, " ") != strings.Join(have, " ") {
		p.set(garden.Value{Line: true, Items: items}, at...)
	}
}

// monthsForm asks for twelve monthly means.
func (s *site) monthsForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "Twelve months of weather", "/entry/months")
	p.Lead = "For each month: mean daily maximum, mean daily minimum, rain. Any station near you prints them."
	p.Links = []Link{{Href: "/entry/weather", Words: "Give a weather file instead"}}
	s.offerArchive(p, d)
	var fields []Field
	for m := time.January; m <= time.December; m++ {
		key := strings.ToLower(m.String())
		f := Field{Name: key, Label: m.String(), Sort: "text", Value: typedIn(v, key, d.get("place", "months", key))}
		if m == time.January {
			f.Hint = "As 9 C, 3 C, 140 mm or 48 F, 37 F, 5.5 in."
		}
		fields = append(fields, f)
		p.where["place > months > "+key] = key
	}
	fields = append(fields, Field{Name: "from", Label: "Where they come from", Sort: "text", Value: typedIn(v, "from", d.get("place", "months from")), Hint: "May be empty."})
	p.Groups = []Group{{Fields: fields}}
	if v == nil {
		return p, nil
	}
	var typed [12]string
	for m := time.January; m <= time.December; m++ {
		key := strings.ToLower(m.String())
		typed[m-1] = strings.TrimSpace(v.Get(key))
		if _, _, _, wrong := garden.ParseMonth(typed[m-1]); wrong != "" {
			p.Faults[key] = wrong
		}
	}
	p.Faults.tooLong("from", v.Get("from"), 80)
	p.set(garden.MonthsValue(typed), "place", "months")
	p.put(v.Get("from"), "place", "months from")
	p.put("", "place", "weather")
	p.known(d, "place")
	p.words = "Saved: twelve months."
	if len(d.g.Spaces) == 0 {
		p.next = "/entry/kind"
	}
	return p, nil
}

// maxUpload bounds a file given to the pages, in bytes: fifty years of daily
// weather are about 2 MB.
const maxUpload = 8 << 20

// weatherForm asks for a weather file.
func (s *site) weatherForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "A weather file", "/entry/weather")
	p.Lead = "A daily record (date, maximum, minimum, rain) or twelve monthly means, as CSV."
	p.Files = true
	s.offerArchive(p, d)
	p.Links = []Link{{Href: "/entry/months", Words: "Type twelve months instead"}}
	p.Groups = []Group{{Fields: []Field{
		{Name: "file", Label: "The file", Sort: "file"},
		{Name: "paste", Label: "Or paste it here", Sort: "area", Rows: 4, Value: typedIn(v, "paste", "")},
	}}}
	return p, nil
}

// readUpload reads a form that may carry one file, and returns the file or
// what was pasted instead.
func readUpload(r *http.Request) (name string, data []byte, err error) {
	kind, _, _ := strings.Cut(r.Header.Get("Content-Type"), ";")
	if strings.TrimSpace(strings.ToLower(kind)) != "multipart/form-data" {
		if err := readForm(r); err != nil {
			return "", nil, err
		}
		return "pasted.csv", pasted(r), nil
	}
	if err := r.ParseMultipartForm(maxUpload); err != nil {
		if troubleOf(err).err == errLarge {
			return "", nil, errLarge
		}
		return "", nil, errBroken
	}
	if f, h, err := r.FormFile("file"); err == nil {
		defer f.Close()
		if data, err = io.ReadAll(f); err != nil {
			return "", nil, errBroken
		}
		if len(data) > 0 {
			return h.Filename, data, nil
		}
	}
	return "pasted.csv", pasted(r), nil
}

// pasted is what was pasted. A browser sends every line end as two bytes.
func pasted(r *http.Request) []byte {
	return []byte(strings.ReplaceAll(r.PostForm.Get("paste"), "\r\n", "\n"))
}

// saveWeather keeps a weather file and names it in the garden.
func (s *site) saveWeather(w http.ResponseWriter, r *http.Request) {
	name, data, err := readUpload(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	s.saveRead(w, r, func(r *http.Request, d *described, v url.Values) (*FormPage, error) {
		p, err := s.weatherForm(r, d, v)
		if err != nil {
			return nil, err
		}
		if len(strings.TrimSpace(string(data))) == 0 {
			p.Faults["file"] = "Choose a file, or paste its lines below."
			return p, nil
		}
		file, wrong, err := s.o.Entry.Weather(r.Context(), name, data)
		if err != nil {
			return nil, fmt.Errorf("keeping a weather file: %w", err)
		}
		if len(wrong) > 0 {
			p.Faults["file"] = strings.Join(wrong[:min(len(wrong), 5)], " ")
			return p, nil
		}
		p.useWeather(d, file)
		p.words = "Saved: the weather."
		return p, nil
	})
}

// useWeather names a kept weather file in the garden, in place of months.
func (p *FormPage) useWeather(d *described, file string) {
	p.put(file, "place", "weather")
	p.put("", "place", "months")
	p.put("", "place", "months from")
	p.known(d, "place")
	if len(d.g.Spaces) == 0 {
		p.next = "/entry/kind"
	}
}
