package web

import (
	"fmt"
	"net/http"
	"net/url"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// cropRoutes are the pages about crops; none without Options.Crops.
func (s *site) cropRoutes() []route {
	if s.o.Crops == nil {
		return nil
	}
	return []route{
		{"/crops", s.cropList, nil},
		{"/crops/find", nil, s.askCrop},
		{"/crop/{slug}", s.view(s.crop), s.saveFigure},
		{"/crop/{slug}/ask", nil, s.askStart},
	}
}

// cropDesk asks for what is known of crops as the garden is now.
func (s *site) cropDesk(r *http.Request) (*reckon.CropDesk, error) {
	if s.o.Crops == nil {
		return nil, ErrNotThere
	}
	d, err := s.o.Crops(r.Context())
	if err == nil && d == nil {
		err = errGone
	}
	if err != nil {
		return nil, fmt.Errorf("asking about crops: %w", err)
	}
	return d, nil
}

// askCrop leads from a typed name to the list's answer; nothing is kept.
func (s *site) askCrop(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	to := "/crops"
	if q := clip(r.PostForm.Get("q"), 60); q != "" {
		to += "?q=" + url.QueryEscape(q)
	}
	http.Redirect(w, r, to, http.StatusSeeOther)
}

// askStart leads from the choice of a start to its page; nothing is kept.
func (s *site) askStart(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v := url.Values{}
	for _, k := range []string{"variety", "space", "way", "week"} {
		if t := r.PostForm.Get(k); t != "" {
			v.Set(k, clip(t, maxVariety))
		}
	}
	http.Redirect(w, r, "/crop/"+url.PathEscape(r.PathValue("slug"))+"?"+v.Encode()+"#grown", http.StatusSeeOther)
}

// CropsPage is the list of crops.
type CropsPage struct {
	Frame
	reckon.CropList
	Says   string
	Typed  string
	Like   []reckon.CropLine
	None   bool // nothing is like what was typed
	Form   string
	Faults []string
}

// cropList draws the list, or goes straight to a crop named exactly.
func (s *site) cropList(w http.ResponseWriter, r *http.Request) {
	if typed := r.URL.Query().Get("q"); typed != "" {
		if d, err := s.cropDesk(r); err == nil {
			if exact, _ := d.Find(typed); exact != "" {
				http.Redirect(w, r, "/crop/"+url.PathEscape(exact), http.StatusSeeOther)
				return
			}
		}
	}
	s.view(s.crops)(w, r)
}

// crops draws the list.
func (s *site) crops(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.cropDesk(r)
	if err != nil {
		return nil, err
	}
	p := &CropsPage{Frame: s.framed(r, day, "Crops", "crops"), CropList: d.List(), Typed: clip(r.URL.Query().Get("q"), 60), Faults: d.Faults, Form: ledger.NewID()}
	if p.Typed != "" {
		_, p.Like = d.Find(p.Typed)
		p.None = len(p.Like) == 0
	}
	p.Says = fmt.Sprintf("%s of this garden. %d more could be grown here. The book knows %d others.",
		plural(len(p.Named), "crop", "crops"), len(p.Could), len(p.Rest))
	return p, nil
}
