package web

import (
	"net/http"
	"net/url"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// weatherFrom says where a garden's weather file comes from, "" = not known.
func (s *site) weatherFrom(g *garden.Garden) string {
	if g == nil || g.Place.Weather == "" || s.o.Entry.WeatherFrom == nil {
		return ""
	}
	return s.o.Entry.WeatherFrom(g.Place.Weather)
}

// offerArchive puts the one tap that fetches the weather below a form.
func (s *site) offerArchive(p *FormPage, d *described) {
	if s.o.Entry.Archive != nil {
		p.Fetch, p.FetchNow = ledger.NewID(), s.weatherFrom(d.g)
	}
}

// saveArchive fetches twenty years for the place. The asking is done before
// anything is locked: a slow service holds up nobody else's notes. A form that
// was saved before asks nobody.
func (s *site) saveArchive(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	if s.o.Entry.Archive == nil {
		s.fail(w, r, ErrNotThere)
		return
	}
	var (
		file  string
		words string
		why   error
	)
	if s.firstTime(r) {
		file, words, why = s.o.Entry.Archive(r.Context())
	}
	s.saveRead(w, r, func(r *http.Request, d *described, _ url.Values) (*FormPage, error) {
		p, err := s.weatherForm(r, d, nil)
		if err != nil {
			return nil, err
		}
		if why != nil {
			p.Problem = "Nothing was fetched, and what you had stays. " + name(plainErr(why))
			return p, nil
		}
		p.useWeather(d, file)
		p.words = "Fetched: " + words + "."
		return p, nil
	})
}
