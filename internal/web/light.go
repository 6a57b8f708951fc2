package web

import (
	"errors"
	"fmt"
	"math"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// LightPage is the garden from above in one week, at one hour, with what takes
// light from what.
type LightPage struct {
	Frame
	Above    *reckon.Overhead
	Says     string
	When     string
	Week     int
	Hour     string
	HourSays string
	WeekSays string
	First    string // Monday of week 1, for the script
	Mol      bool
	Part     bool // the drawing alone, for the script
	Wide     float64
	Tall     float64
	Shadows  []Shape
	Things   []Shape
	Over     []Shape // drawn over the shadows
	Spaces   []SpaceShape
	SunX     float64
	SunY     float64
	ScaleW   float64
	Key      []KeyStep
	Half     string
	Limits   []reckon.Threshold
	Suits    []reckon.Suit
	Costs    []CostTable
	Tall2    []reckon.TallCost
	TallDone bool
	Pick     []Option
	Ways     []Option
	By       string
	If       *IfPart
	Problem  string
	Form     string
	FormIf   string
	Months   [12]string
}

// Shape is an outline on the drawing.
type Shape struct {
	Path  string
	Name  string
	Half  bool
	X, Y  float64
	Words string
}

// SpaceShape is a space on the drawing, and a row of its table.
type SpaceShape struct {
	reckon.SpaceAbove
	Path   string
	Step   int
	Figure string // printed on it
	LX, LY float64
	Lead   string // a line from the label, when it could not lie on the space
	Now    string // in the sun at that hour, in words
}

// KeyStep is one step of the amounts.
type KeyStep struct {
	Step  int
	Words string
}

// CostTable is what one thing takes, for the months in which it matters.
type CostTable struct {
	Name string
	Says string
	Rows []reckon.HourChange
}

// IfPart is the answer to a what-if.
type IfPart struct {
	Words string
	Says  string
	Rows  []reckon.HourChange
}

// aboveWide is the width of the drawing, px.
const aboveWide = 350.0

// light draws the page for the week, hour and question of its address.
func (s *site) light(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.lightDesk(r)
	if err != nil {
		return nil, err
	}
	q := r.URL.Query()
	week, err := strconv.Atoi(q.Get("week"))
	if err != nil || week < 1 || week > 52 {
		week = d.Week52(day.Date)
	}
	hour := 12.0
	if h, err := strconv.ParseFloat(q.Get("hour"), 64); err == nil && h >= 0 && h <= 24 {
		hour = math.Round(h*4) / 4
	}
	p := &LightPage{Frame: s.framed(r, day, "Sun and shade", "light"), Above: d.Overhead(week, hour), Week: week,
		Hour: strconv.FormatFloat(hour, 'f', -1, 64), Mol: q.Get("show") == "light", Form: ledger.NewID(), FormIf: ledger.NewID()}
	p.Script = s.assets.href["light.js"]
	p.HourSays, p.WeekSays = clock(hour), p.Above.Day.Monday().Short()
	p.First = (p.Above.Day.Monday() - cal.Day(7*(p.Above.Week-1))).String()
	p.draw()
	if q.Get("part") == "drawing" { // asked for by the script: the rest stays as it is
		p.Part = true
		return p, nil
	}
	p.Half, p.Suits = d.HalfYear()
	p.Limits = reckon.Thresholds()
	costs, err := d.Costs()
	if err != nil {
		return nil, err
	}
	for _, c := range costs {
		p.Costs = append(p.Costs, CostTable{Name: c.Name, Says: costSays(c.Rows), Rows: c.Rows})
	}
	if s.o.TallCosts != nil {
		if p.Tall2, err = s.o.TallCosts(r.Context()); err != nil {
			return nil, err
		}
		p.TallDone = true
	}
	for m := range monthNames {
		p.Months[m] = monthNames[m][:3]
	}
	p.ask(d, q)
	return p, nil
}

// costSays is the greatest single cost in words.
func costSays(rows []reckon.HourChange) string {
	worst := rows[0]
	for _, r := range rows {
		if r.By(r.Most) > worst.By(worst.Most) {
			worst = r
		}
	}
	return fmt.Sprintf("%s %.1f h a day in %s", worst.Name, worst.By(worst.Most), monthNames[worst.Most])
}

// ask fills the what-if form, and its answer when a question came.
func (p *LightPage) ask(d *reckon.LightDesk, q url.Values) {
	things := d.Things()
	for _, t := range things {
		p.Pick = append(p.Pick, Option{Value: strconv.Itoa(t.No), Words: t.Name})
	}
	for _, w := range reckon.WhatIfWays() {
		p.Ways = append(p.Ways, Option{Value: w.Do, Words: w.Words})
	}
	p.Pick, p.Ways, p.By = choose(p.Pick, q.Get("thing")), choose(p.Ways, q.Get("do")), clip(q.Get("by"), 8)
	if q.Get("do") == "" {
		return
	}
	thing, err := strconv.Atoi(q.Get("thing"))
	if err != nil {
		thing = -1
	}
	by, ok := 0.0, true
	if p.By != "" {
		by, ok = decimal(p.By)
	} else {
		for _, w := range reckon.WhatIfWays() {
			if w.Do == q.Get("do") {
				by = w.Usual
			}
		}
	}
	if !ok {
		p.Problem = "Write the figure as a number, such as 0.5."
		return
	}
	rows, words, err := d.Try(reckon.WhatIf{Thing: thing, Do: q.Get("do"), By: by})
	if err != nil {
		p.Problem = name(err.Error()) + "."
		if errors.Is(err, reckon.ErrNoThing) {
			p.Problem = "Choose one of the things that stand here."
		}
		return
	}
	p.If = &IfPart{Words: words}
	gain, lose := 0, 0
	for _, r := range rows {
		switch by := r.By(r.Most); {
		case by >= 0.05:
			gain++
		case by <= -0.05:
			lose++
		default:
			continue
		}
		p.If.Rows = append(p.If.Rows, r)
	}
	p.If.Says = fmt.Sprintf("%s would get more sun, %s less.", capitalPlural(gain), plural(lose, "space", "spaces"))
	if gain+lose == 0 {
		p.If.Says = "No space would notice: all differ by less than three minutes a day."
	}
}

func capitalPlural(n int) string { return name(plural(n, "space", "spaces")) }

// draw places the garden on the page, to scale.
func (p *LightPage) draw() {
	o := p.Above
	k := aboveWide / (o.MaxX - o.MinX)
	p.Wide, p.Tall = aboveWide, k*(o.MaxY-o.MinY)
	at := func(v geom.Vec) (x, y float64) { return k * (v.X - o.MinX), k * (o.MaxY - v.Y) }
	path := func(out geom.Outline) string {
		var b strings.Builder
		for i, v := range thinned(out) {
			x, y := at(v)
			fmt.Fprintf(&b, "%s%s %s", map[bool]string{true: "M", false: "L"}[i == 0], px(far(x)), px(far(y)))
		}
		if b.Len() == 0 {
			return ""
		}
		return b.String() + "Z"
	}
	for _, t := range o.Things {
		if t.Shadow != nil {
			all := ""
			for _, s := range t.Shadow {
				all += path(s)
			}
			p.Shadows = append(p.Shadows, Shape{Path: all, Name: t.Name, Half: t.Half})
		}
	}
	for _, t := range o.Things {
		one := Shape{Path: path(t.Outline), Name: t.Name, Half: t.Half || t.High}
		if t.Solid {
			p.Over = append(p.Over, one)
		} else {
			p.Things = append(p.Things, one)
		}
	}
	p.SunX, p.SunY = 26, 26
	if o.Up {
		a := o.BearingDeg * math.Pi / 180
		p.SunX, p.SunY = 26+16*math.Sin(a), 26-16*math.Cos(a)
	}
	p.ScaleW = k
	var taken [][4]float64
	for _, sp := range o.Spaces {
		one := SpaceShape{SpaceAbove: sp, Path: path(sp.Outline), Step: sp.SunStep, Figure: "–", Now: nowWords(o.Up, sp)}
		if !sp.Covered {
			one.Figure = fmt.Sprintf("%.1f", sp.Light.Hours.Mean)
			if p.Mol {
				one.Step, one.Figure = sp.MolStep, fmt.Sprintf("%.0f", sp.Light.MolMean.Mean)
			}
		}
		cx, cy := 0.0, 0.0
		for _, v := range sp.Outline {
			x, y := at(v)
			cx, cy = cx+x/float64(len(sp.Outline)), cy+y/float64(len(sp.Outline))
		}
		one.LX, one.LY = free(&taken, cx, cy, 9+6.5*float64(len(one.Figure)+len(strconv.Itoa(sp.No))), p.Wide, p.Tall)
		if math.Hypot(one.LX-cx, one.LY-cy) > 12 {
			one.Lead = fmt.Sprintf("M%s %sL%s %s", px(cx), px(cy), px(one.LX), px(one.LY))
		}
		p.Spaces = append(p.Spaces, one)
	}
	for i, w := range reckon.StepWords(p.Mol) {
		p.Key = append(p.Key, KeyStep{i + 1, w})
	}
	p.When = fmt.Sprintf("Week of %s, %s o’clock", o.Day.Monday().Short(), clock(o.Hour))
	p.Says = p.says()
}

// says is the picture in a sentence.
func (p *LightPage) says() string {
	o := p.Above
	if !o.Up {
		return p.When + ": the sun is down."
	}
	in := 0
	for _, s := range o.Spaces {
		if !s.Covered && s.Lit >= 0.5 {
			in++
		}
	}
	return fmt.Sprintf("%s: the sun stands in the %s, %.0f° high. %s of %d lie in it.", p.When, reckon.Compass(o.BearingDeg), o.HeightDeg, capitalPlural(in), len(o.Spaces))
}

func nowWords(up bool, s reckon.SpaceAbove) string {
	switch {
	case s.Covered:
		return "no open sky"
	case !up:
		return "sun down"
	case s.Lit >= 0.95:
		return "in the sun"
	case s.Lit < 0.05:
		return "in shade"
	}
	return fmt.Sprintf("%.0f %% of the sun", 100*s.Lit)
}

// thinned leaves out corners of round outlines that no eye would miss.
func thinned(o geom.Outline) geom.Outline {
	if len(o) <= 48 {
		return o
	}
	var out geom.Outline
	for i := range 48 {
		out = append(out, o[i*len(o)/48])
	}
	return out
}

// far keeps a shadow's corner within what a picture holds.
func far(x float64) float64 { return math.Min(math.Max(x, -3000), 3000) }

// free finds a place for a label of a width near x, y where none is yet.
func free(taken *[][4]float64, x, y, w, wide, tall float64) (float64, float64) {
	const h = 14.0
	clash := func(a, b float64) bool {
		if a-w/2 < 1 || a+w/2 > wide-1 || b-h/2 < 1 || b+h/2 > tall-1 {
			return true
		}
		for _, t := range *taken {
			if math.Abs(a-t[0]) < (w+t[2])/2+1 && math.Abs(b-t[1]) < h+1 {
				return true
			}
		}
		return false
	}
	bx, by := x, y
search:
	for ring := 0.0; ring <= 10; ring++ {
		for k := range 16 {
			a := float64(k) * math.Pi / 8
			bx, by = x+ring*8*math.Cos(a), y+ring*8*math.Sin(a)
			if !clash(bx, by) {
				break search
			}
		}
		bx, by = x, y
	}
	*taken = append(*taken, [4]float64{bx, by, w, h})
	return bx, by
}

// askLight turns the forms of the page into an address; nothing is kept.
func (s *site) askLight(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v := url.Values{}
	for _, k := range []string{"week", "hour", "show", "thing", "do", "by"} {
		if t := r.PostForm.Get(k); t != "" {
			v.Set(k, clip(t, 12))
		}
	}
	to := "/light?" + v.Encode()
	if v.Get("do") != "" {
		to += "#what-if"
	}
	http.Redirect(w, r, to, http.StatusSeeOther)
}
