package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"strconv"

	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// LotPage is one packet of seed.
type LotPage struct {
	Frame
	formPage
	Lot      names.Lot
	Form     string
	Says     string
	Doubt    string
	Strip    *RateStrip
	Weight   string
	Wanted   string
	Need     names.Need
	Table    []names.Need
	Parent   *names.Group
	Children []*names.Group
	Story    []TellItem
	Spaces   []Option
	Sown, Up string // of the test
	Days     string
	Count    string
	Grams    string
	Why      string
	Seeds    string // to sow
	Happened string
	What     string
	Stick    string
}

// RateStrip is the share that comes up, on a line from none to all.
type RateStrip struct {
	Low, High, Mark float64 // px
	Tested          bool
	Words           string
	Ticks           []Tick
	LowP, HighP     int
}

func rateStrip(r names.Rate) *RateStrip {
	if !r.Known {
		return nil
	}
	at := func(share float64) float64 { return 10 + 320*share }
	p := &RateStrip{Low: at(r.Low), High: at(r.High), Tested: r.Tested, LowP: int(math.Round(100 * r.Low)), HighP: int(math.Round(100 * r.High))}
	if r.Tested {
		p.Mark = at(float64(r.Up) / float64(r.Sown))
	}
	p.Words = fmt.Sprintf("Between %d and %d of 100 come up.", p.LowP, p.HighP)
	for k := 0; k <= 100; k += 20 {
		p.Ticks = append(p.Ticks, Tick{at(float64(k) / 100), strconv.Itoa(k)})
	}
	return p
}

func (s *site) lot(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	p, err := s.lotPage(r, day, d, url.Values{"day": {day.Date.String()}, "plants": {r.URL.Query().Get("plants")}})
	if err != nil {
		return nil, err
	}
	return p, nil
}

func (s *site) lotPage(r *http.Request, day *reckon.Day, d *names.Desk, v url.Values) (*LotPage, error) {
	l, ok := d.Lot(r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	p := &LotPage{Frame: s.framed(r, day, l.Name(), "lot"), formPage: formPage{Faults: faults{}}, Lot: l, Form: freshForm(v),
		Doubt: l.Doubt(), Strip: rateStrip(l.Rate), Weight: d.ByWeight(l), Wanted: v.Get("plants"),
		Story: tellItems(d.LotStory(l.ID)), Spaces: spaceOptions(d, false, v.Get("space")),
		Sown: v.Get("sown"), Up: v.Get("up"), Days: v.Get("days"), Count: v.Get("count"), Grams: v.Get("grams"), Why: v.Get("why"),
		Seeds: v.Get("seeds"), Happened: v.Get("day"), What: v.Get("what"), Stick: string(l.Tag) + ", " + clip(l.Name(), 30)}
	n, err := strconv.Atoi(p.Wanted)
	if err != nil || n < 1 || n > 500 {
		n = 6
		p.Wanted = "6"
	}
	p.Need = l.Need(n)
	for _, k := range []int{1, 2, 4, 6, 12, 24} {
		p.Table = append(p.Table, l.Need(k))
	}
	if p.Seeds == "" && !p.Need.Unknowable {
		p.Seeds = strconv.Itoa(p.Need.Most)
	}
	p.Says = "A packet of " + l.Name() + "."
	if l.Year > 0 {
		p.Says = fmt.Sprintf("%s of %d, %s.", l.Name(), l.Year, l.LeftWords())
	} else {
		p.Says = fmt.Sprintf("%s, year not known, %s.", l.Name(), l.LeftWords())
	}
	p.Says = name(p.Says)
	p.Parent, _ = d.Group(l.From)
	for _, h := range d.LotStory(l.ID) {
		if g, ok := d.Group(h.Event); ok && !h.Voided {
			p.Children = append(p.Children, g)
		}
	}
	return p, nil
}

// saveLot keeps what one of the page's forms says.
func (s *site) saveLot(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p, err := s.lotPage(r, day, d, v)
	if err != nil {
		return nil, done{}, err
	}
	f, l := p.Faults, p.Lot
	on := f.day(v, "day", day.Date)
	note := f.text(v, "note", maxNote)
	back := "/lot/" + url.PathEscape(l.ID)
	var kind ledger.Kind
	var body any
	words := ""
	switch v.Get("what") {
	case "test":
		n, up := f.count(v, "sown", true, 1), f.count(v, "up", true, 0)
		if f["sown"] == "" && n > 1000 {
			f["sown"] = "At most 1,000."
		}
		if f["up"] == "" && f["sown"] == "" && up > n {
			f["up"] = fmt.Sprintf("No more than the %d you laid out can come up.", n)
		}
		kind, body = ledger.SeedTested, ledger.Germination{Lot: l.ID, Sown: n, Up: up, Days: f.count(v, "days", false, 1), Note: note}
		words = fmt.Sprintf("Saved: %d of %d came up.", up, n)
	case "left":
		b := ledger.SeedCount{Lot: l.ID, Count: f.count(v, "count", false, 1), Grams: f.figureIn(v, "grams", 5000, "2.5"), Note: note}
		if b.Count == 0 && b.Grams == 0 && len(f) == 0 {
			f["count"] = "Say how many seeds or how many grams are left."
		}
		kind, body, words = ledger.SeedLeft, b, "Saved: what is left."
	case "gone":
		kind, body, words = ledger.SeedLeft, ledger.SeedCount{Lot: l.ID, Gone: true, Note: note}, "Saved: nothing is left of it."
	case "used":
		kind, body, words = ledger.SeedUsed, ledger.SeedUse{Lot: l.ID, Count: f.count(v, "count", true, 1), Why: f.text(v, "why", maxVariety), Note: note}, "Saved: taken out of the packet."
	case "sow":
		space := f.oneOf(v, "space", p.Spaces, "Choose where.")
		b := ledger.Started{Crop: l.CropID, Variety: l.Variety, OneOf: l.OneOf, Space: space, Count: f.count(v, "seeds", true, 1), Lot: l.ID, Note: note}
		if len(f) > 0 {
			return p, done{}, nil
		}
		out, err := s.keepEntry(r, ledger.Sown, on, "", b, func(d *names.Desk, id string) (string, string) {
			g, ok := d.Group(id)
			if !ok {
				return "Saved.", back
			}
			return fmt.Sprintf("Saved: sown. The tag is %s. On the stick: %s", g.Tag, g.Stick()), "/plant/" + url.PathEscape(id)
		})
		return p, out, err
	default:
		return nil, done{}, errBroken
	}
	if len(f) > 0 {
		return p, done{}, nil
	}
	out, err := s.keepEntry(r, kind, on, "", body, func(*names.Desk, string) (string, string) { return words, back })
	return p, out, err
}
