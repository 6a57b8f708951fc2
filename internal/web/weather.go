package web

import (
	"fmt"
	"net/http"
	"net/url"
	"slices"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// WeatherPage says who freezes, who cooks, and what the years are like.
type WeatherPage struct {
	Frame
	Sky      *reckon.SkyPart
	Readings []ReadingItem
	Form     string
	Whats    []Option
	Places   []Option
	Value    string
	Happened string
	Faults   faults
	Problem  string
}

// ReadingItem is an own reading with its way back.
type ReadingItem struct {
	reckon.ReadingSays
	Form string
}

// whats are the instruments.
var whats = []Option{
	{Value: ledger.ReadLow, Words: "Coldest of the night, °C"},
	{Value: ledger.ReadHigh, Words: "Warmest of the day, °C"},
	{Value: ledger.ReadRain, Words: "Rain in the gauge, mm"},
}

// heapMiddle is asked where there is a heap.
var heapMiddle = Option{Value: ledger.ReadHeap, Words: "Middle of the heap, °C"}

func isHeap(day *reckon.Day, id string) bool {
	return slices.ContainsFunc(day.Spaces, func(sp reckon.SpaceDay) bool { return sp.ID == id && sp.Kind == string(garden.Heap) })
}

// weather draws the page.
func (s *site) weather(r *http.Request, day *reckon.Day) (page, error) {
	return s.weatherPage(r, day, url.Values{"day": {day.Date.String()}, "form": {ledger.NewID()}, "what": {ledger.ReadLow}}), nil
}

func (s *site) weatherPage(r *http.Request, day *reckon.Day, v url.Values) *WeatherPage {
	p := &WeatherPage{Frame: s.framed(r, day, "Weather of this garden", "weather"), Sky: day.Sky, Form: v.Get("form"), Value: clip(v.Get("value"), 20),
		Happened: v.Get("day"), Faults: faults{}, Whats: choose(whats, v.Get("what"))}
	p.Places = []Option{{Value: "", Words: "The garden's own instrument"}}
	heap := false
	for _, sp := range day.Spaces {
		heap = heap || sp.Kind == string(garden.Heap)
		p.Places = append(p.Places, Option{Value: sp.ID, Words: sp.Name})
	}
	p.Places = choose(p.Places, v.Get("space"))
	if heap {
		p.Whats = choose(append(append([]Option{}, whats...), heapMiddle), v.Get("what"))
	}
	if !ledger.IsID(p.Form) {
		p.Form = ledger.NewID()
	}
	if p.Sky != nil {
		for _, x := range p.Sky.Readings {
			p.Readings = append(p.Readings, ReadingItem{x, ledger.NewID()})
		}
	}
	return p
}

// saveReading writes an own reading.
func (s *site) saveReading(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *WeatherPage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		p = s.weatherPage(r, day, r.PostForm)
		f := p.Faults
		what := f.oneOf(r.PostForm, "what", p.Whats, "Choose what was read.")
		space := f.oneOf(r.PostForm, "space", p.Places, "Choose a place of the list.")
		on := f.day(r.PostForm, "day", day.Date)
		x, ok := decimal(p.Value)
		low, high := -70.0, 60.0
		switch what {
		case ledger.ReadRain:
			low, high = 0, 2000
		case ledger.ReadHeap:
			high = 100
			if !isHeap(day, space) {
				f["space"] = "Choose the heap it was read in."
			}
		}
		switch {
		case !ok:
			f["value"] = "Write a number, such as 3.5."
		case x > high && what == ledger.ReadHeap:
			f["value"] = fmt.Sprintf("%g is hotter than any heap. Is it in °F? Then it is %.0f °C.", x, (x-32)/1.8)
		case x > high && what != ledger.ReadRain:
			f["value"] = fmt.Sprintf("%g is hotter than any garden. Is it in °F? Then it is %.1f °C.", x, (x-32)/1.8)
		case x < low || x > high:
			f["value"] = fmt.Sprintf("Write a number from %g to %g.", low, high)
		}
		if len(f) > 0 {
			return done{}, errForm
		}
		body := ledger.Reading{What: what, Value: x, Space: space, Hour: s.hourNow(day)}
		e, err := s.o.Record(withForm(r, p.Form), ledger.Measured, on, "", body)
		return done{event: e, words: "Saved. Your own reading wins over the station for its day.", back: "/weather", undo: true}, err
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
