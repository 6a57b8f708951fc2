package web

import (
	"net/http"
	"net/url"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// CropPage is all that is known of one crop here.
type CropPage struct {
	Frame
	View       *reckon.CropView
	Slug       string
	Years      []YearPicture
	Germ       []GermColumn
	GermShares bool // how many seeds come up is known at some warmth
	Grown      *StartPicture
	Spaces     []Option
	Ways       []Option
	Weeks      []Option
	Sorts      []Option // varieties
	Own        []OwnItem
	Figure     FigureForm
	FormAsk    string
	Query      string // of this page as it was asked for, without what is said once
	Query1     string // the same for a link that adds to it
	Stale      bool   // the plan does not know the last figure yet
	Problem    string
	Faults     faults
}

// OwnItem is an own figure with its way back.
type OwnItem struct {
	reckon.OwnView
	Form string
}

// FigureForm is the form for a figure of one's own.
type FigureForm struct {
	Form                           string
	Keys                           []Option
	Variety, Value, Low, High, Why string
	Book                           string // what is reckoned with now
	Open                           bool
}

// cropAsk reads an address.
func cropAsk(q url.Values) reckon.CropAsk {
	ask := reckon.CropAsk{Variety: clip(q.Get("variety"), maxVariety), Space: q.Get("space"), Way: crop.Way(q.Get("way"))}
	if d, err := cal.Parse(q.Get("week")); err == nil {
		ask.Week = d
	}
	return ask
}

// crop draws the page.
func (s *site) crop(r *http.Request, day *reckon.Day) (page, error) {
	return s.cropPage(r, day, url.Values{"figure": {r.URL.Query().Get("change")}, "variety": {r.URL.Query().Get("variety")}})
}

func (s *site) cropPage(r *http.Request, day *reckon.Day, form url.Values) (*CropPage, error) {
	d, err := s.cropDesk(r)
	if err != nil {
		return nil, err
	}
	slug, q := r.PathValue("slug"), r.URL.Query()
	v, ok, err := d.View(slug, cropAsk(q))
	if err != nil {
		return nil, err
	}
	if !ok {
		return nil, ErrNotThere
	}
	p := &CropPage{Frame: s.framed(r, day, name(v.Crop.Name), "crop"), View: v, Slug: slug, Faults: faults{}, FormAsk: ledger.NewID()}
	q.Del("saved")
	q.Del("change")
	if p.Query = q.Encode(); p.Query != "" {
		p.Query, p.Query1 = "?"+p.Query, p.Query+"&"
	}
	for i, w := range v.Ways {
		p.Years = append(p.Years, drawYear(w, d.YearFrom(), d.Date(), string(rune('a'+i))))
	}
	p.Germ, p.GermShares = drawGerm(v.Germ), sharesKnown(v.Germ)
	if v.Start != nil {
		p.Grown = drawStart(v.Start)
		for _, w := range v.Start.Ways {
			p.Ways = append(p.Ways, Option{Value: w.ID, Words: name(w.Name), Chosen: w.ID == string(v.Start.Way)})
		}
		for _, day := range v.Start.Dates {
			p.Weeks = append(p.Weeks, Option{Value: day.String(), Words: "week of " + day.Monday().Long(), Chosen: day == v.Start.Day})
		}
	}
	for _, sp := range v.Spaces {
		p.Spaces = append(p.Spaces, Option{Value: sp.ID, Words: sp.Name, Chosen: sp.ID == v.Space})
	}
	if len(v.Varieties) > 0 || v.Variety != "" {
		p.Sorts = append(p.Sorts, Option{Value: "", Words: "any of it", Chosen: v.Variety == ""})
		all := v.Varieties
		if v.Variety != "" && !slices.Contains(all, v.Variety) {
			all = append(slices.Clone(all), v.Variety)
		}
		for _, name := range all {
			p.Sorts = append(p.Sorts, Option{Value: name, Words: name, Chosen: name == v.Variety})
		}
	}
	for _, o := range v.Own {
		p.Own = append(p.Own, OwnItem{o, ledger.NewID()})
	}
	p.Stale = len(day.Notes) > 0 && day.Notes[0] == reckon.Anew
	p.form(form)
	return p, nil
}

// form fills the form for an own figure with what was typed.
func (p *CropPage) form(v url.Values) {
	f := FigureForm{Form: ledger.NewID(), Variety: clip(v.Get("variety"), 200), Value: clip(v.Get("value"), 60),
		Low: clip(v.Get("low"), 60), High: clip(v.Get("high"), 60), Why: clip(v.Get("why"), 300), Open: v.Get("figure") != ""}
	for _, r := range p.View.Figures {
		f.Keys = append(f.Keys, Option{Value: r.Key, Words: r.Words + ": " + r.Value, Chosen: r.Key == v.Get("figure")})
		if r.Key == v.Get("figure") {
			f.Book = r.Value
			if r.Range != "" {
				f.Book += " (" + r.Range + ")"
			}
		}
	}
	for _, m := range p.View.Missing {
		f.Keys = append(f.Keys, Option{Value: m.ID, Words: name(m.Name) + ": not known", Chosen: m.ID == v.Get("figure")})
	}
	p.Figure = f
}

// saveFigure keeps an own figure, or shows the page again with words at the
// fields.
func (s *site) saveFigure(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *CropPage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		if p, err = s.cropPage(r, day, r.PostForm); err != nil {
			return done{}, err
		}
		p.Figure.Open = true
		d, err := s.cropDesk(r)
		if err != nil {
			return done{}, err
		}
		v := r.PostForm
		variety, why := p.Faults.text(v, "variety", maxVariety), p.Faults.text(v, "why", 200)
		f, wrong := d.ReadFigure(reckon.FigureAsk{Crop: p.Slug, Variety: variety, Figure: v.Get("figure"),
			Value: v.Get("value"), Low: v.Get("low"), High: v.Get("high"), Why: why})
		for field, words := range wrong {
			p.Faults[field] = words
		}
		if why == "" {
			p.Faults["why"] = "Say where it comes from, such as: two years of my notes."
		}
		if len(p.Faults) > 0 {
			return done{}, errForm
		}
		event, err := s.o.Record(withForm(r, v.Get("form")), ledger.Figured, day.Date, "", f)
		back := "/crop/" + url.PathEscape(p.Slug)
		if variety != "" {
			back += "?variety=" + url.QueryEscape(variety)
		}
		return done{event: event, words: "Saved. Your own figure: " + reckon.FigureWords(f) + ". What it changes stands below.", back: back, undo: true}, err
	})
	if err == nil {
		return
	}
	if p == nil {
		s.fail(w, r, err)
		return
	}
	t := troubleOf(err)
	p.Problem = t.words
	s.draw(w, r, t.status, p)
}
