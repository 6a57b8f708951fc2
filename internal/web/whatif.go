package web

import (
	"errors"
	"fmt"
	"math"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// WhatIfPage asks what would be if, and sets the answer beside the plan.
type WhatIfPage struct {
	Frame
	Spaces  []Option
	Ways    []Option
	Skips   []Option
	V       map[string]string
	Problem string
	At      string // the part the problem is in
	Answer  *reckon.Compared
	Foods   []FoodBars
	Keep    *KeepTrial
	Forms   [4]string
}

// FoodBars is one food of the answer; the bars and the table are made from it.
type FoodBars struct {
	Name, Present, Other, Wanted, Differs string
	Y, PresentW, OtherW, WantedX          float64
	Same                                  bool
}

// KeepTrial is the way to keep what was tried.
type KeepTrial struct {
	Form   string
	Words  string
	Fields []Option // name and value
	Href   string   // of a page instead of a form
}

// whatif draws the page.
func (s *site) whatif(r *http.Request, day *reckon.Day) (page, error) {
	q := r.URL.Query()
	p := &WhatIfPage{Frame: s.framed(r, day, "What if…?", "whatif"), V: map[string]string{"by": "10", "minutes": "10"}}
	for i := range p.Forms {
		p.Forms[i] = ledger.NewID()
	}
	for k := range q {
		p.V[k] = clip(q.Get(k), 60)
	}
	p.Spaces = choose(spaceChoices(day), q.Get("space"))
	for _, w := range reckon.TrialWays() {
		p.Ways = append(p.Ways, Option{Value: w.ID, Words: w.Name})
	}
	p.Ways = choose(p.Ways, q.Get("do"))
	for _, f := range foodChoices(day) {
		p.Skips = append(p.Skips, Option{Value: f.Value, Words: "all " + f.Words})
	}
	p.Skips = choose(append(p.Skips, cropChoices(day)...), q.Get("skip"))
	p.At = q.Get("ask")
	if p.At == "" {
		return p, nil
	}
	t, words := trialOf(q, day)
	if words != "" {
		p.Problem = words
		return p, nil
	}
	c, err := s.o.Wishes.Try(r.Context(), t)
	if errors.Is(err, reckon.ErrTrial) {
		_, words, _ := strings.Cut(err.Error(), ": ")
		p.Problem = "This cannot be tried: " + words + "."
		return p, nil
	}
	if err != nil {
		return nil, fmt.Errorf("trying: %w", err)
	}
	p.Answer = c
	p.Foods = foodBars(c.Foods)
	p.Keep = keepTrial(t, day)
	return p, nil
}

// askWhatif takes a question to the page that answers it. It writes nothing.
func (s *site) askWhatif(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v := url.Values{}
	for _, k := range []string{"ask", "space", "do", "by", "minutes", "skip", "since", "until"} {
		if x := r.PostForm.Get(k); x != "" {
			v.Set(k, clip(x, 60))
		}
	}
	http.Redirect(w, r, "/whatif?"+v.Encode(), http.StatusSeeOther)
}

// trialOf reads the question; words say what is wrong with it.
func trialOf(q url.Values, day *reckon.Day) (reckon.Trial, string) {
	var t reckon.Trial
	f := faults{}
	switch q.Get("ask") {
	case "space":
		t.Space, t.Do = q.Get("space"), q.Get("do")
		if t.Do == "deeper" {
			x, ok := decimal(q.Get("by"))
			if !ok || x < 1 || x > 100 {
				return t, "Write how much deeper in centimetres, 1 to 100."
			}
			t.By = x
		}
	case "minutes":
		x, ok := decimal(q.Get("minutes"))
		if !ok || x == 0 || math.Abs(x) > 10080 {
			return t, "Write minutes a week, such as 10, or -10 for fewer."
		}
		t.Minutes = x
	case "skip":
		if t.Skip = q.Get("skip"); t.Skip == "" {
			return t, "Choose what to skip."
		}
	case "away":
		t.Away.Early, t.Away.Late = f.ahead(q, "since", day.Date), f.ahead(q, "until", day.Date)
		t.Away.Likely = t.Away.Early
		for _, field := range []string{"since", "until"} {
			if f[field] != "" {
				return t, f[field]
			}
		}
		if t.Away.Late < t.Away.Early {
			return t, "The last day comes before the first."
		}
	default:
		return t, "Choose one of the questions."
	}
	return t, ""
}

// keepTrial is how a trial is made to stay.
func keepTrial(t reckon.Trial, day *reckon.Day) *KeepTrial {
	k := &KeepTrial{Form: ledger.NewID()}
	switch {
	case t.Minutes != 0:
		k.Words = "Plan with these minutes from now on"
		k.Fields = []Option{{Value: "what", Words: ledger.WishMinutes}, {Value: "minutes", Words: fmt.Sprintf("%g", t.Minutes)}}
	case t.Skip != "":
		for _, c := range day.Crops {
			if c.ID == t.Skip {
				k.Words = "Never plan " + c.Name
				k.Fields = []Option{{Value: "what", Words: ledger.WishNever}, {Value: "crop", Words: c.ID}}
				return k
			}
		}
		return nil
	case t.Away.Early != 0:
		k.Words = "Plan for being away then"
		k.Fields = []Option{{Value: "what", Words: ledger.WishAway}, {Value: "since", Words: dayText(t.Away.Early)}, {Value: "until", Words: dayText(t.Away.Late)}}
	default:
		k.Words, k.Href = "Done it? Then change the garden", "/entry"
	}
	return k
}

func dayText(d cal.Day) string { return d.String() }

// Sizes of the bars of food, px.
const (
	foodTall = 46.0
	foodWide = 350.0
)

// foodBars puts the foods that differ first, with their bars.
func foodBars(foods []reckon.FoodBeside) []FoodBars {
	most := 1.0
	for _, f := range foods {
		most = math.Max(most, math.Max(f.Wanted, math.Max(f.Present, f.Other)))
	}
	var differ, same []FoodBars
	for _, f := range foods {
		l := FoodBars{Name: f.Name, Present: whole(f.Present), Other: whole(f.Other), Wanted: whole(f.Wanted),
			PresentW: foodWide * f.Present / most, OtherW: foodWide * f.Other / most, WantedX: foodWide * f.Wanted / most}
		d := math.Round(f.Other) - math.Round(f.Present)
		switch {
		case d > 0:
			l.Differs = "+" + whole(d)
		case d < 0:
			l.Differs = "−" + whole(-d)
		default:
			l.Differs, l.Same = "the same", true
			same = append(same, l)
			continue
		}
		differ = append(differ, l)
	}
	out := append(differ, same...)
	for i := range out {
		out[i].Y = foodTall * float64(i)
	}
	return out
}

func whole(x float64) string { return fmt.Sprintf("%.0f", math.Abs(math.Round(x))) }

// Differing are the foods whose meals differ.
func (p *WhatIfPage) Differing() []FoodBars {
	var out []FoodBars
	for _, f := range p.Foods {
		if !f.Same {
			out = append(out, f)
		}
	}
	return out
}

// BarsTall is the height of the picture of foods, px.
func (p *WhatIfPage) BarsTall() float64 { return foodTall * float64(len(p.Differing())) }
