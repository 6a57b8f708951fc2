package web

import (
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// PlantPage is one group of plants: what it is, where from, what happened,
// what next.
type PlantPage struct {
	Frame
	Group   *names.Group
	Says    string
	Tray    *TrayCard
	Next    []reckon.Line // of the plan, when it is in the ground
	Tasks   []reckon.Task
	Line    []LinkItem
	Perhaps bool
	NoRoot  bool
	Story   []TellItem
	Stick   string
	Steps   []Option // hand-overs to choose from
	Mates   []string
}

// LinkItem is one station of the line of descent.
type LinkItem struct {
	names.Link
	Here  bool
	Words string
	Href  string
}

func (s *site) plant(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	id := r.PathValue("id")
	g, ok := d.Group(id)
	if !ok {
		return nil, ErrNotThere
	}
	p := &PlantPage{Frame: s.framed(r, day, g.Name()+" "+string(g.Tag), "plant"), Group: g, Story: tellItems(d.Story(id)), Stick: g.Stick()}
	p.Says = plantSays(g)
	if t, ok := d.Tray(id); ok {
		c := TrayCard{Tray: t, Form: ledger.NewID()}
		c.Step, c.Verb = stepOf(t.Next)
		p.Tray = &c
	}
	if g.Ended == 0 {
		for _, st := range steps {
			if g.Shelf || st.kind == ledger.PottedOn || st.kind == ledger.PutOut {
				p.Steps = append(p.Steps, Option{Value: st.path, Words: st.verb})
			}
		}
		for _, t := range day.Today {
			if t.Planting == id {
				p.Tasks = append(p.Tasks, t)
			}
		}
	}
	line, perhaps := d.Descent(id)
	p.Perhaps = perhaps
	p.NoRoot = true
	for _, l := range line {
		item := LinkItem{Link: l}
		if l.Lot != nil {
			item.Words, item.Href = fmt.Sprintf("Packet %s: %s", l.Lot.Tag, l.Lot.Name()), "/lot/"+url.PathEscape(l.Lot.ID)
			p.NoRoot = p.NoRoot && l.Deep > 0
		} else {
			item.Here = l.Group.ID == id
			item.Words, item.Href = fmt.Sprintf("%s: %s, %s, %s", l.Group.Tag, l.Group.Name(), l.Group.CountWords(), l.Group.SpaceName), "/plant/"+url.PathEscape(l.Group.ID)
		}
		p.Line = append(p.Line, item)
	}
	return p, nil
}

// plantSays is the first sentence about a group.
func plantSays(g *names.Group) string {
	s := name(g.CountWords()) + ", " + g.SpaceName
	if g.Ended != 0 {
		s = name(g.Name()) + " stood in " + g.SpaceName + " until " + g.Ended.Long()
		if g.Cause != "" {
			s += ": " + g.Cause
		}
		return s + "."
	}
	switch {
	case g.SetOut != 0 && g.Sown != 0:
		s += ", sown " + g.Sown.Long() + ", set out " + g.SetOut.Long()
	case g.SetOut != 0:
		s += ", set out " + g.SetOut.Long()
	case g.Sown != 0:
		s += ", sown " + g.Sown.Long()
	}
	return s + "."
}

// HandPage is one hand-over.
type HandPage struct {
	Frame
	formPage
	Group    *names.Group
	Step     string
	Verb     string
	Kind     ledger.Kind
	Form     string
	All      string // word on the one-tap button
	Spaces   []Option
	Space    string
	Pots     []Option
	Others   []Option // other trays of the crop it may have come from
	Doubt    bool
	Count    string
	Rest     string
	Happened string
	Note     string
	Lead     string
	Caution  string
	AskPot   bool
	AskSpace bool
	Known    bool
}

// usualPots are pots by their width. A place of the shelf is a pot of 7 cm.
var usualPots = []string{"cells of 4 cm", "7 cm", "9 cm", "11 cm", "13 cm"}

// potFor is the pot a hand-over usually goes to. Common practice.
func potFor(k ledger.Kind, now string) string {
	switch k {
	case ledger.PrickedOut:
		return "7 cm"
	case ledger.PottedOn:
		switch now {
		case "9 cm":
			return "11 cm"
		case "11 cm", "13 cm":
			return "13 cm"
		}
		return "9 cm"
	}
	return ""
}

func (s *site) handOver(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	p, err := s.handPage(r, day, d, url.Values{"day": {day.Date.String()}, "space": {r.URL.Query().Get("space")}})
	if err != nil {
		return nil, err
	}
	return p, nil
}

func (s *site) handPage(r *http.Request, day *reckon.Day, d *names.Desk, v url.Values) (*HandPage, error) {
	g, ok := d.Group(r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	i := slices.IndexFunc(steps, func(s struct {
		path, verb string
		kind       ledger.Kind
	}) bool {
		return s.path == r.PathValue("step")
	})
	if i < 0 {
		return nil, ErrNotThere
	}
	st := steps[i]
	p := &HandPage{Frame: s.framed(r, day, st.verb+": "+g.Name(), "move"), formPage: formPage{Faults: faults{}}, Group: g, Step: st.path, Verb: st.verb, Kind: st.kind,
		Form: freshForm(v), Count: v.Get("count"), Rest: v.Get("rest"), Happened: v.Get("day"), Note: v.Get("note"), Doubt: v.Get("doubt") != "",
		AskPot: st.kind == ledger.PrickedOut || st.kind == ledger.PottedOn, Known: g.Count > 0}
	p.Space = v.Get("space")
	if p.Space == "" {
		p.Space = usualSpace(day, d, g, st.kind)
	}
	p.Spaces = spaceOptions(d, st.kind == ledger.PutOut, p.Space)
	if st.kind == ledger.PutOut && p.Space == "" {
		p.Spaces = append([]Option{{Value: "", Words: "Choose where", Chosen: true}}, p.Spaces...)
	}
	pot := v.Get("pot")
	if pot == "" && !v.Has("form") {
		pot = potFor(st.kind, g.Pot())
	}
	for _, w := range usualPots {
		p.Pots = append(p.Pots, Option{Value: w, Words: w, Chosen: w == pot})
	}
	p.Pots = append(p.Pots, Option{Value: "", Words: "Not said", Chosen: pot == ""})
	for _, h := range d.Groups() {
		if h.ID != g.ID && h.Shelf && h.CropID == g.CropID {
			p.Others = append(p.Others, Option{Value: h.ID, Words: string(h.Tag) + ": " + h.Name() + ", " + h.CountWords(), Chosen: slices.Contains(v["other"], h.ID)})
		}
	}
	p.All = "All of them"
	if g.Count > 0 {
		p.All = "All " + strconv.Itoa(g.Count)
	}
	if st.kind == ledger.PutOut || st.kind == ledger.Hardening {
		p.All += " go there"
	}
	p.Lead = moveLead(st.kind)
	if st.kind == ledger.PutOut || st.kind == ledger.PottedOn || st.kind == ledger.PrickedOut {
		p.Caution = "Dampen dusty mix, open a door, wash hands: potting dust can carry Legionella."
	}
	return p, nil
}

func moveLead(k ledger.Kind) string {
	switch k {
	case ledger.PrickedOut:
		return "Hold a leaf, not the stem. One stick to each pot or row, before the next tray."
	case ledger.PottedOn:
		return "Move the stick with the plant, before the next one."
	case ledger.Hardening:
		return "Shade and stillness first; a little more sun and wind each day."
	}
	return "Move the stick with the plant, before the next tray."
}

// usualSpace is where a hand-over most likely goes: the plan's place for a
// setting out, a bench for hardening, else where it stands.
func usualSpace(day *reckon.Day, d *names.Desk, g *names.Group, k ledger.Kind) string {
	switch k {
	case ledger.PutOut:
		for _, t := range day.Today {
			if t.Verb == "set out" && t.Crop == g.CropID {
				return t.Space
			}
		}
		best, at := "", 0
		for _, sp := range day.Spaces {
			for _, l := range sp.Lines {
				if !l.Standing && l.CropID == g.CropID && l.OnShelf != 0 && (best == "" || int(l.In.Likely) < at) {
					best, at = sp.ID, int(l.In.Likely)
				}
			}
		}
		return best
	case ledger.Hardening:
		for _, sp := range d.Garden.Spaces {
			if sp.Kind == garden.Bench {
				return string(sp.ID)
			}
		}
	}
	return g.Space
}

// saveHand keeps a hand-over.
func (s *site) saveHand(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p, err := s.handPage(r, day, d, v)
	if err != nil {
		return nil, done{}, err
	}
	f, g := p.Faults, p.Group
	on := f.day(v, "day", day.Date)
	note := f.text(v, "note", maxNote)
	space := p.Space
	if space == "" || !slices.ContainsFunc(p.Spaces, func(o Option) bool { return o.Value == space }) {
		f["space"] = "Choose where they go."
	}
	count, rest := 0, ""
	if v.Get("how") == "some" {
		count = f.count(v, "count", true, 1)
		if v.Get("rest") == "gone" {
			rest = "gone"
		}
	}
	pot := ""
	if p.AskPot {
		if pot = f.text(v, "pot", 40); pot == "" && !v.Has("pot") { // the one-tap form asks nothing
			pot = potFor(p.Kind, g.Pot())
		}
	}
	var from []string
	if v.Get("doubt") != "" {
		from = []string{g.ID}
		for _, o := range p.Others {
			if o.Chosen {
				from = append(from, o.Value)
			}
		}
		if len(from) < 2 {
			f["doubt"] = "Mark the other trays they may have come from."
		}
		if count == 0 && f["count"] == "" {
			f["count"] = "Say how many were moved, such as 6."
		}
	}
	if len(f) > 0 {
		return p, done{}, nil
	}
	var body any
	switch {
	case p.Kind == ledger.PutOut && len(from) > 0:
		body = ledger.Moved{OneOf: from, Space: space, Count: count, Note: note}
	case p.Kind == ledger.PutOut:
		n := count
		if n == 0 {
			n = g.Count
		}
		body = ledger.Started{Planting: g.ID, Crop: g.CropID, Space: space, Count: n, Note: note}
	case len(from) > 0:
		body = ledger.Handover{OneOf: from, Space: space, Count: count, Rest: "", Pot: pot, Note: note}
	default:
		to := space
		if to == g.Space {
			to = ""
		}
		body = ledger.Handover{Planting: g.ID, Space: to, Count: count, Rest: rest, Pot: pot, Note: note}
	}
	out, err := s.keepEntry(r, p.Kind, on, "", body, func(d *names.Desk, id string) (string, string) {
		h, own := d.Group(id)
		if !own {
			h, _ = d.Group(g.ID)
		}
		said := fmt.Sprintf("Saved: %s, %s.", strings.ToLower(pastOf(p.Kind)), h.CountWords())
		if own {
			said += fmt.Sprintf(" These are now %s. On the stick: %s", h.Tag, h.Stick())
		} else {
			said += fmt.Sprintf(" They are still %s.", h.Tag)
		}
		return said, "/plant/" + url.PathEscape(h.ID)
	})
	return p, out, err
}

func pastOf(k ledger.Kind) string { return string(k) }

// SeedPage saves seed from a group.
type SeedPage struct {
	Frame
	formPage
	Group                  *names.Group
	Form                   string
	Caution                string
	Count, Grams, Happened string
	Words                  string
}

func (s *site) saveSeedPage(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	p, err := s.seedForm(r, day, d, url.Values{"day": {day.Date.String()}})
	if err != nil {
		return nil, err
	}
	return p, nil
}

func (s *site) seedForm(r *http.Request, day *reckon.Day, d *names.Desk, v url.Values) (*SeedPage, error) {
	g, ok := d.Group(r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	return &SeedPage{Frame: s.framed(r, day, "Seed saved from "+g.Name(), "seed"), formPage: formPage{Faults: faults{}}, Group: g, Form: freshForm(v),
		Caution: d.CrossingCaution(g.ID), Count: v.Get("count"), Grams: v.Get("grams"), Happened: v.Get("day"), Words: v.Get("note")}, nil
}

func (s *site) saveSeed(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p, err := s.seedForm(r, day, d, v)
	if err != nil {
		return nil, done{}, err
	}
	f, g := p.Faults, p.Group
	on := f.day(v, "day", day.Date)
	b := ledger.Lot{Crop: g.CropID, Variety: g.Variety, OneOf: g.OneOf, Year: on.Year(), Source: "saved here",
		Count: f.count(v, "count", false, 1), Grams: f.figureIn(v, "grams", 5000, "2.5"), From: g.ID, Note: f.text(v, "note", maxNote)}
	if len(f) > 0 {
		return p, done{}, nil
	}
	out, err := s.keepEntry(r, ledger.SeedGot, on, "", b, func(d *names.Desk, id string) (string, string) {
		l, _ := d.Lot(id)
		return fmt.Sprintf("Saved: a new packet, %s. Write it on the envelope.", l.Tag), "/lot/" + url.PathEscape(id)
	})
	return p, out, err
}
