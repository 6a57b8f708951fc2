package web

import (
	"net/http"
	"net/url"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Modes are the ways the pages can be drawn. They are chosen by a plain form
// and kept in a cookie of the device; no setting of the device chooses one.
var modes = []Option{
	{Value: "plain", Words: "Plain: black on white"},
	{Value: "bed", Words: "At the bed: larger, heavier, for sun and wet hands"},
	{Value: "big", Words: "Big: the largest buttons, for a shaky or tired hand"},
	{Value: "dark", Words: "Dark: for the shed and the evening"},
}

const (
	modeCookie = "bedweek-mode"
	walkCookie = "bedweek-walk"
	cookieDays = 400
)

// modeOf is the mode a device asked for; "" = plain.
func modeOf(r *http.Request) string {
	c, err := r.Cookie(modeCookie)
	if err != nil {
		return ""
	}
	for _, m := range modes[1:] {
		if m.Value == c.Value {
			return m.Value
		}
	}
	return ""
}

// setCookie keeps a choice on the device. The pages' own script reads the mode
// when a page is shown without a signal.
func setCookie(w http.ResponseWriter, r *http.Request, name, value string) {
	http.SetCookie(w, &http.Cookie{Name: name, Value: value, Path: "/", MaxAge: cookieDays * 24 * 3600,
		SameSite: http.SameSiteLaxMode, Secure: r.TLS != nil})
}

// ModesPage offers them.
type ModesPage struct {
	Frame
	Form  string
	Modes []Option
}

func (s *site) modes(r *http.Request, day *reckon.Day) (page, error) {
	now := modeOf(r)
	if now == "" {
		now = "plain"
	}
	return &ModesPage{Frame: s.framed(r, day, "How the pages look", "modes"), Form: ledger.NewID(), Modes: choose(modes, now)}, nil
}

// saveModes sets the cookie and shows the page in the new mode.
func (s *site) saveModes(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	f := faults{}
	m := f.oneOf(r.PostForm, "mode", modes, "Choose one.")
	if len(f) > 0 {
		s.fail(w, r, errBroken)
		return
	}
	setCookie(w, r, modeCookie, m)
	http.Redirect(w, r, backTo(r.PostForm.Get("back")), http.StatusSeeOther)
}

// walkAsk is whose walk this device shows, from its cookie.
func walkAsk(r *http.Request, day *reckon.Day) reckon.WalkAsk {
	var ask reckon.WalkAsk
	c, err := r.Cookie(walkCookie)
	if err != nil {
		return ask
	}
	v, err := url.ParseQuery(c.Value)
	if err != nil {
		return ask
	}
	return readWalkAsk(v, day)
}

// readWalkAsk takes only people, spaces and minutes that there are.
func readWalkAsk(v url.Values, day *reckon.Day) reckon.WalkAsk {
	var ask reckon.WalkAsk
	for _, p := range day.People {
		if p.ID == v.Get("person") {
			ask.Person = p.ID
		}
	}
	if _, ok := spaceOf(day, v.Get("seat")); ok {
		ask.Seat = v.Get("seat")
	}
	for _, m := range walkMinutes {
		if m.Value == v.Get("minutes") {
			ask.Minutes = minutesOf[m.Value]
		}
	}
	return ask
}

var walkMinutes = []Option{
	{Value: "", Words: "A day's share of the week"}, {Value: "15", Words: "15 minutes"}, {Value: "30", Words: "30 minutes"},
	{Value: "60", Words: "1 hour"}, {Value: "120", Words: "2 hours"}, {Value: "all", Words: "As long as it takes"},
}

var minutesOf = map[string]int{"": 0, "15": 15, "30": 30, "60": 60, "120": 120, "all": reckon.AllMinutes}

// saveWalkAsk keeps whose walk it is, on this device.
func (s *site) saveWalkAsk(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	var day *reckon.Day
	if err == nil {
		day, err = s.present(r)
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	ask, v := readWalkAsk(r.PostForm, day), url.Values{}
	if ask.Person != "" {
		v.Set("person", ask.Person)
	}
	if ask.Seat != "" {
		v.Set("seat", ask.Seat)
	}
	if ask.Minutes != 0 {
		v.Set("minutes", r.PostForm.Get("minutes"))
	}
	setCookie(w, r, walkCookie, v.Encode())
	http.Redirect(w, r, "/", http.StatusSeeOther)
}
