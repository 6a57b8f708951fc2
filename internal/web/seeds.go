package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// SeedsPage is the tin and the shelf.
type SeedsPage struct {
	Frame
	Lead    string
	Trays   []TrayCard
	Picture *ShelfPicture
	Room    string
	Lots    []LotRow // those to decide about
	Rest    []LotRow
	Gone    []LotRow
	Unknown []*names.Group
	Doubts  int
	Asked   string // tag looked for in vain
	Any     bool   // there are plants to label
}

// TrayCard is one tray with the button for what comes next.
type TrayCard struct {
	names.Tray
	Form  string
	Step  string // in the address
	Verb  string
	Where string // space a whole setting out would go to
}

// LotRow is one lot of the list.
type LotRow struct {
	names.Lot
	Share string // what comes up, short
	Six   string // seeds for six plants
}

// steps are the hand-overs: their address, word and entry.
var steps = []struct {
	path, verb string
	kind       ledger.Kind
}{
	{"prick-out", "Prick out", ledger.PrickedOut},
	{"pot-on", "Pot on", ledger.PottedOn},
	{"harden", "Harden", ledger.Hardening},
	{"set-out", "Set out", ledger.PutOut},
}

func stepOf(k ledger.Kind) (path, verb string) {
	for _, s := range steps {
		if s.kind == k {
			return s.path, s.verb
		}
	}
	return "", ""
}

func (s *site) seeds(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	p := &SeedsPage{Frame: s.framed(r, day, "Seeds and trays", "seeds"), Asked: clip(r.URL.Query().Get("tag"), 60)}
	for _, t := range d.Trays() {
		c := TrayCard{Tray: t, Form: ledger.NewID()}
		c.Step, c.Verb = stepOf(t.Next)
		p.Trays = append(p.Trays, c)
	}
	p.Picture = drawShelf(p.Trays, d.Date)
	taken, all := d.Room()
	p.Room = fmt.Sprintf("About %.0f places of pots are taken.", taken)
	if all > 0 {
		p.Room = fmt.Sprintf("About %.0f of %.0f places under the lamps are taken, counted in pots of 7 cm.", taken, all)
	}
	for _, g := range d.Groups() {
		p.Any = true
		if g.Unknown() {
			p.Unknown = append(p.Unknown, g)
		}
	}
	for _, l := range d.Lots() {
		row := LotRow{Lot: l, Share: "not known", Six: "test first"}
		switch {
		case l.Pieces:
			row.Share = "pieces"
		case l.Rate.Known:
			row.Share = fmt.Sprintf("%.0f to %.0f %%", 100*l.Rate.Low, 100*l.Rate.High)
		}
		switch n := l.Need(6); {
		case n.Unknowable:
		case n.Least == n.Most:
			row.Six = fmt.Sprint(n.Least)
		default:
			row.Six = fmt.Sprintf("%d to %d", n.Least, n.Most)
		}
		if l.Gone != 0 {
			p.Gone = append(p.Gone, row)
			continue
		}
		if l.Doubt() != "" {
			p.Doubts++
			p.Lots = append(p.Lots, row)
		} else {
			p.Rest = append(p.Rest, row)
		}
	}
	p.Lead = seedsLead(p, d.Date)
	return p, nil
}

func seedsLead(p *SeedsPage, on cal.Day) string {
	s := "Nothing stands on the shelf."
	if n := len(p.Trays); n > 0 {
		s = plural(n, "tray or set of pots is", "trays or sets of pots are") + " on the shelf."
	}
	switch {
	case len(p.Lots)+len(p.Rest) == 0:
		s += " The tin is empty, as far as we know."
	case p.Doubts > 0:
		s += " " + plural(len(p.Lots)+len(p.Rest), "packet", "packets") + " in the tin; " + plural(p.Doubts, "wants", "want") + " a test before you rely on it."
	default:
		s += " " + plural(len(p.Lots)+len(p.Rest), "packet", "packets") + " in the tin."
	}
	return s
}

// ShelfPicture is the shelf as lines in time.
type ShelfPicture struct {
	Wide, Tall, Foot float64
	From, To         cal.Day
	Today            float64
	Months           []Tick
	Rows             []ShelfRow
	Says             string
}

// ShelfRow is one tray: a line from its sowing to today, five threads that end
// where it is fit to set out, and hatching from where its pot is full.
type ShelfRow struct {
	ID, Name string
	Y        float64
	Fray     string // threads to when it is fit
	Full     string // rectangle from the pot-bound window on
	FullX    float64
	FullW    float64
	Ready    cal.Window
	Bound    cal.Window
}

const (
	shelfWide = 350.0
	shelfLine = 54.0
	shelfTop  = 26.0
)

func drawShelf(trays []TrayCard, on cal.Day) *ShelfPicture {
	p := &ShelfPicture{Wide: shelfWide + 16, From: on - 14, To: on + 42}
	n := 0
	for _, t := range trays {
		if t.Ready.None() || t.Sown == 0 {
			continue
		}
		n++
		p.From, p.To = min(p.From, t.Sown), max(p.To, t.Bound.Late)
	}
	if n == 0 {
		return nil
	}
	x := func(d cal.Day) float64 { return 8 + shelfWide*float64(d-p.From)/float64(p.To-p.From) }
	p.Today = x(on)
	y := shelfTop
	for _, t := range trays {
		if t.Ready.None() || t.Sown == 0 {
			continue
		}
		mid := y + 32
		row := ShelfRow{ID: t.ID, Name: clip(t.Group.Name(), 40), Y: y + 16, Ready: t.Ready, Bound: t.Bound}
		for k, q := range endAt {
			end := x(t.Sown) + (x(t.Sown+1)-x(t.Sown))*(along(t.Ready, q)-float64(t.Sown))
			row.Fray += fmt.Sprintf("M%s %sH%s", px(x(t.Sown)), px(mid-4+2*float64(k)), px(end))
		}
		row.FullX, row.FullW = x(t.Bound.Early), x(t.Bound.Late)-x(t.Bound.Early)
		p.Rows = append(p.Rows, row)
		y += shelfLine
	}
	p.Foot, p.Tall = y, y+22
	for d := p.From; d <= p.To; d++ {
		if _, _, day := d.Date(); day == 1 {
			p.Months = append(p.Months, Tick{math.Min(math.Max(x(d), 18), p.Wide-18), monthNames[d.Month()-1][:3]})
		}
	}
	p.Says = fmt.Sprintf("%s from sowing to the days they are fit to set out.", plural(n, "tray", "trays"))
	return p
}

// LotFormPage tells of a new lot.
type LotFormPage struct {
	Frame
	formPage
	Form                                       string
	Crops                                      []Option
	Variety, Year, Source, Count, Grams, Words string
	Happened                                   string
}

func (s *site) newLot(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	return s.lotForm(r, day, d, url.Values{"day": {day.Date.String()}, "crop": {r.URL.Query().Get("crop")}}), nil
}

func (s *site) lotForm(r *http.Request, day *reckon.Day, d *names.Desk, v url.Values) *LotFormPage {
	return &LotFormPage{Frame: s.framed(r, day, "A packet came in", "lotform"), formPage: formPage{Faults: faults{}}, Form: freshForm(v),
		Crops: cropOptions(day, v.Get("crop"), "Choose a crop"), Variety: v.Get("variety"), Year: v.Get("year"), Source: v.Get("source"),
		Count: v.Get("count"), Grams: v.Get("grams"), Words: v.Get("note"), Happened: v.Get("day")}
}

func (s *site) saveNewLot(r *http.Request, day *reckon.Day, d *names.Desk) (filled, done, error) {
	v := r.PostForm
	p := s.lotForm(r, day, d, v)
	f := p.Faults
	b := ledger.Lot{Crop: f.oneOf(v, "crop", p.Crops, "Choose a crop of the list."), Variety: f.text(v, "variety", maxVariety), Source: f.text(v, "source", maxVariety),
		Count: f.count(v, "count", false, 1), Grams: f.figureIn(v, "grams", 5000, "2.5"), Note: f.text(v, "note", maxNote)}
	if b.Crop == "" && f["crop"] == "" {
		f["crop"] = "Choose which crop."
	}
	b.Year = f.year(v, day.Date)
	on := f.day(v, "day", day.Date)
	if len(f) > 0 {
		return p, done{}, nil
	}
	out, err := s.keepEntry(r, ledger.SeedGot, on, "", b, func(d *names.Desk, id string) (string, string) {
		l, _ := d.Lot(id)
		return fmt.Sprintf("Saved: %s. Its tag is %s. Write it on the packet.", l.Name(), l.Tag), "/lot/" + url.PathEscape(id)
	})
	return p, out, err
}

// year reads the year of a packet; 0 when empty.
func (f faults) year(v url.Values, today cal.Day) int {
	y := f.count(v, "year", false, 1)
	if _, slip := f["year"]; !slip && y != 0 && (y < today.Year()-60 || y > today.Year()+1) {
		f["year"] = fmt.Sprintf("Write the year on the packet, such as %d.", today.Year()-1)
		return 0
	} else if slip {
		f["year"] = fmt.Sprintf("Write the year on the packet, such as %d.", today.Year()-1)
	}
	return y
}
