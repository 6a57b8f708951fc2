package web

import (
	"net/http"
	"net/url"

	"bedweek/internal/reckon"
	key "bedweek/internal/trouble"
)

// TroubleKeyPage leads from the look of a trouble to causes, or from sign and
// hour to who did it.
type TroubleKeyPage struct {
	Frame
	Sign     key.Sign // Words "" = none chosen yet
	Signs    []Option // Value is the address
	Causes   []CauseCard
	Who      bool
	Hour     string
	Hours    []Option
	Culprits []key.Culprit
	Law      string
	Nets     string
	Spray    string
	About    string // what it is about, in words; "" = nothing chosen
	WhoAt    string // address of the culprit key
	Back     string // to the sign list
	LookAt   string // to note how it looks
}

// CauseCard is a cause with the way to note a loss by it.
type CauseCard struct {
	key.Cause
	LossAt string // "" = nothing chosen to lose
}

// troubleKey draws the key. It keeps in its addresses what it is about.
func (s *site) troubleKey(r *http.Request, day *reckon.Day) (page, error) {
	b, err := key.Load()
	if err != nil {
		return nil, err
	}
	q := r.URL.Query()
	about := url.Values{}
	p := &TroubleKeyPage{Law: b.Caution("law"), Nets: b.Caution("nets"), Spray: b.Caution("spray")}
	space, planting := q.Get("space"), q.Get("planting")
	i, known := spaceOf(day, space)
	if known {
		about.Set("space", space)
		p.About, p.LookAt = day.Spaces[i].Name, noteAt(space, "looked")
		for _, l := range standingHere(day, day.Spaces[i]) {
			if l.Value == planting {
				about.Set("planting", planting)
				p.About = l.Words + ", " + day.Spaces[i].Name
				p.LookAt += "?planting=" + queryEscape(planting)
			}
		}
	}
	at := func(pairs ...string) string {
		v := url.Values{}
		for k, x := range about {
			v[k] = x
		}
		for i := 0; i < len(pairs); i += 2 {
			v.Set(pairs[i], pairs[i+1])
		}
		if len(v) == 0 {
			return "/trouble-key"
		}
		return "/trouble-key?" + v.Encode()
	}
	p.Back, p.WhoAt = at(), at("who", "yes")
	title := "What ails it?"
	if sign, ok := b.Sign(q.Get("sign")); ok {
		p.Sign, title = sign, sign.Words
		for _, c := range sign.Causes {
			card := CauseCard{Cause: c}
			if known {
				v := url.Values{"cause": {c.Loss}}
				if about.Has("planting") {
					v.Set("planting", planting)
				}
				card.LossAt = noteAt(space, "lost") + "?" + v.Encode()
			}
			p.Causes = append(p.Causes, card)
		}
	} else if q.Get("who") != "" {
		p.Who, p.Hour, title = true, q.Get("hour"), "Who did it?"
		for _, h := range []Option{{Value: "day", Words: "By day"}, {Value: "night", Words: "By night"}, {Value: "", Words: "Not known"}} {
			p.Hours = append(p.Hours, Option{Value: at("who", "yes", "hour", h.Value), Words: h.Words, Chosen: h.Value == p.Hour})
		}
		p.Culprits = b.By(p.Hour)
	} else {
		for _, sign := range b.Signs {
			p.Signs = append(p.Signs, Option{Value: at("sign", sign.ID), Words: sign.Words})
		}
	}
	p.Frame = s.framed(r, day, title, "troublekey")
	return p, nil
}
