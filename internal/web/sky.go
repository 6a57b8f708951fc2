package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// SkyPage is the view from one space: My Skyline.
type SkyPage struct {
	Frame
	Space    reckon.SpaceDay
	View     *reckon.SkylineView
	Says     string
	Wide     float64
	Tall     float64
	Ground   float64 // y of the level
	Solid    string  // path of everything opaque
	Veils    []SkyVeil
	Paths    []SkyPath
	Compass  []Tick
	Heights  []Tick // y, words
	Seen     []Dot
	Facing   string // how the picture runs
	Where    string // where along the bed the light changes
	Bars     []SkyBar
	BarFoot  float64
	Rows     []reckon.SkyPoint // every ten degrees
	Rowwords []string
	Bearings []Option
	Edges    []SkyEdge
	Form     string
	FormSun  string
	Clock    string
	Happened string
	Left     bool
	Faults   faults
	Problem  string
	Names    []string
	Before   *reckon.SpaceDay
	After    *reckon.SpaceDay
}

// SkyVeil is something that lets some light through.
type SkyVeil struct {
	Path  string
	Words string
}

// SkyPath is the sun's way on one day; hidden stretches are thin.
type SkyPath struct {
	Name, Full, Half, Hid, Words string
	X, Y                         float64 // of the name
	Hours                        []SkyHour
}

// SkyHour is a full hour on a path.
type SkyHour struct {
	X, Y  float64
	WordY float64
	Words string
}

// SkyBar is one month: five threads, one for each part of the space.
type SkyBar struct {
	reckon.MonthSun
	Month, Short string
	X            float64
	Threads      string
	CloudY       float64
	TopY         float64
	LowY, HighY  float64
}

// SkyEdge is a correction with its way back.
type SkyEdge struct {
	Words, Event, Form string
}

// Sizes of the skyline, in px.
const (
	skyLeft  = 8.0
	skyWide  = 350.0
	skyUp    = 2.2 // px a degree of height
	skyTop   = 16.0
	barHour  = 7.0 // px an hour
	barSky   = 16.0
	barAside = 29.0
)

// sky draws the page.
func (s *site) sky(r *http.Request, day *reckon.Day) (page, error) {
	return s.skyPage(r, day, url.Values{"day": {day.Date.String()}, "bearing": {r.URL.Query().Get("bearing")}})
}

func (s *site) skyPage(r *http.Request, day *reckon.Day, v url.Values) (*SkyPage, error) {
	i, ok := spaceOf(day, r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	d, err := s.lightDesk(r)
	if err != nil {
		return nil, err
	}
	sp := day.Spaces[i]
	p := &SkyPage{Frame: s.framed(r, day, "The sky from "+sp.Name, "sky"), Space: sp, Form: ledger.NewID(), FormSun: ledger.NewID(),
		Clock: clip(v.Get("clock"), 10), Happened: v.Get("day"), Left: v.Get("sun") == "left", Faults: faults{}}
	if i > 0 {
		p.Before = &day.Spaces[i-1]
	}
	if i+1 < len(day.Spaces) {
		p.After = &day.Spaces[i+1]
	}
	view, ok := d.Skyline(sp.ID)
	if !ok {
		p.Says = "This space has no ground under the open sky."
		return p, nil
	}
	p.View = view
	p.Script = s.assets.href["sky.js"]
	p.Facing = "from the east side through the south to the west side"
	if view.South {
		p.Facing = "from the west side through the north to the east side"
	}
	p.Where = whereWords(view.Strips)
	p.draw()
	p.bars()
	p.table(v.Get("bearing"))
	p.Says = skySays(view)
	return p, nil
}

// skySays is the answer in a sentence.
func skySays(v *reckon.SkylineView) string {
	most, least := 0, 0
	for m := range v.Months {
		if v.Months[m].Mean > v.Months[most].Mean {
			most = m
		}
		if v.Months[m].Mean < v.Months[least].Mean {
			least = m
		}
	}
	return fmt.Sprintf("On a clear day: %s of sun in %s, %s in %s.", spanWords(v.Months[most]), monthNames[most], spanWords(v.Months[least]), monthNames[least])
}

// sameH is how far the parts of a bed may differ, in hours, and still be
// called alike.
const sameH = 0.3

// whereWords says where along a bed the light changes; "" when it is too short
// to ask.
func whereWords(strips []reckon.Strip) string {
	if len(strips) == 0 {
		return ""
	}
	least, most := 0, 0
	for i := range strips {
		if strips[i].Hours < strips[least].Hours {
			least = i
		}
		if strips[i].Hours > strips[most].Hours {
			most = i
		}
	}
	if strips[most].Hours-strips[least].Hours < sameH {
		return fmt.Sprintf("nearly alike from end to end, %.1f h in the growing half of the year.", strips[most].Hours)
	}
	var all []string
	for _, s := range strips {
		all = append(all, fmt.Sprintf("%s %.1f h", s.Name, s.Hours))
	}
	return "most at the " + place(strips[most].Name) + ", least at the " + place(strips[least].Name) + ": " + strings.Join(all, ", ") + ", in the growing half of the year."
}

// place makes a strip's name stand after "at the".
func place(strip string) string {
	if to, ok := strings.CutPrefix(strip, "towards "); ok {
		return "part towards " + to
	}
	return strip
}

// spanWords tells a month's hours, as a range where the space's parts differ.
func spanWords(m reckon.MonthSun) string {
	lo, hi := m.Hours[0], m.Hours[4]
	if m.High > 0 {
		lo, hi = math.Min(lo, m.Low), math.Max(hi, m.High)
	}
	a, b := fmt.Sprintf("%.0f", lo), fmt.Sprintf("%.0f", hi)
	if a == b {
		return "about " + a + " h"
	}
	return a + " to " + b + " h"
}

func (p *SkyPage) x(bearing float64) float64 { return skyLeft + skyWide*p.View.X(bearing) }
func (p *SkyPage) y(height float64) float64  { return p.Ground - skyUp*height }

// draw places the picture.
func (p *SkyPage) draw() {
	v := p.View
	high := 30.0
	for _, path := range v.Paths {
		for _, s := range path.Steps {
			high = math.Max(high, s.HeightDeg+4)
		}
	}
	high = math.Min(high, 90)
	p.Wide, p.Ground = skyLeft*2+skyWide, skyTop+skyUp*high
	p.Tall = p.Ground + 34
	cap := func(h float64) float64 { return math.Min(h, high) }
	var b strings.Builder
	fmt.Fprintf(&b, "M%s %s", px(skyLeft), px(p.Ground))
	for _, one := range v.Points {
		x := p.at(one.BearingDeg)
		fmt.Fprintf(&b, "L%s %s", px(x), px(p.y(cap(one.EdgeDeg))))
		if one.Seen {
			p.Seen = append(p.Seen, Dot{x, p.y(cap(one.EdgeDeg))})
		}
	}
	fmt.Fprintf(&b, "L%s %sZ", px(skyLeft+skyWide), px(p.Ground))
	p.Solid = b.String()
	p.veils(cap)
	for _, path := range v.Paths {
		p.Paths = append(p.Paths, p.path(path))
	}
	for deg := 0.0; deg < 360; deg += 45 {
		x := p.x(deg)
		if x < skyLeft-1 || x > skyLeft+skyWide+1 {
			continue
		}
		words := [8]string{"N", "NE", "E", "SE", "S", "SW", "W", "NW"}[int(deg/45)]
		p.Compass = append(p.Compass, Tick{math.Min(math.Max(x, 14), p.Wide-14), words})
	}
	for h := 10.0; h < high; h += 10 {
		if int(h)%30 == 0 || h == 10 {
			p.Heights = append(p.Heights, Tick{p.y(h), fmt.Sprintf("%.0f°", h)})
		}
	}
}

// at is x for a bearing among the points, whose last may lie at the far end.
func (p *SkyPage) at(bearing float64) float64 {
	x := p.x(bearing)
	for x < skyLeft-1 {
		x += skyWide
	}
	return math.Min(x, skyLeft+skyWide)
}

// veils groups neighbouring bearings with one veil into one shape.
func (p *SkyPage) veils(cap func(float64) float64) {
	pts := p.View.Points
	for i := 0; i < len(pts); {
		if pts[i].VeilHigh == 0 {
			i++
			continue
		}
		j := i
		for j+1 < len(pts) && pts[j+1].VeilHigh > 0 && pts[j+1].Veil == pts[i].Veil {
			j++
		}
		var b strings.Builder
		for k := i; k <= j; k++ {
			fmt.Fprintf(&b, "%s%s %s", map[bool]string{true: "M", false: "L"}[k == i], px(p.at(pts[k].BearingDeg)-2*edgeOf(k, i, j)), px(p.y(cap(pts[k].VeilHigh))))
		}
		for k := j; k >= i; k-- {
			fmt.Fprintf(&b, "L%s %s", px(p.at(pts[k].BearingDeg)-2*edgeOf(k, i, j)), px(p.y(cap(pts[k].VeilLow))))
		}
		words := fmt.Sprintf("%s lets %.0f %% of the light through", pts[i].Veil, 100*pts[i].Leaf)
		if pts[i].Leaf != pts[i].Bare {
			words = fmt.Sprintf("%s lets %.0f %% of the light through in leaf, %.0f %% bare", pts[i].Veil, 100*pts[i].Leaf, 100*pts[i].Bare)
		}
		p.Veils = append(p.Veils, SkyVeil{b.String() + "Z", words})
		known := false
		for _, n := range p.Names {
			known = known || n == words
		}
		if !known {
			p.Names = append(p.Names, words)
		}
		i = j + 1
	}
}

// edgeOf widens a shape seen at one bearing only, so that it has an area.
func edgeOf(k, i, j int) float64 {
	if i == j {
		return 0.5
	}
	return 0
}

// path draws one day's sun; stretches behind something are left out.
func (p *SkyPage) path(in reckon.SunPath) SkyPath {
	out := SkyPath{Name: in.Name, Words: in.Words()}
	var full, half, hid strings.Builder
	top := -1.0
	for i, s := range in.Steps {
		x, y := p.x(s.BearingDeg), p.y(s.HeightDeg)
		if s.HeightDeg > top {
			top, out.X, out.Y = s.HeightDeg, x, y-6
		}
		if h := math.Round(s.Hour); math.Abs(s.Hour-h) < 1.0/12 && int(h)%3 == 0 && s.Passes > 0.01 {
			under := y + 14
			if under > p.Ground-2 {
				under = y - 7
			}
			out.Hours = append(out.Hours, SkyHour{x, y, under, fmt.Sprintf("%.0f", h)})
		}
		if i == 0 {
			continue
		}
		last := in.Steps[i-1]
		lx := p.x(last.BearingDeg)
		if math.Abs(x-lx) > skyWide/2 { // over the picture's ends
			continue
		}
		piece := fmt.Sprintf("M%s %sL%s %s", px(lx), px(p.y(last.HeightDeg)), px(x), px(y))
		switch m := math.Min(s.Passes, last.Passes); {
		case m >= 0.99:
			full.WriteString(piece)
		case m >= 0.01:
			half.WriteString(piece)
		default:
			hid.WriteString(piece)
		}
	}
	out.Full, out.Half, out.Hid = full.String(), half.String(), hid.String()
	out.X = math.Min(math.Max(out.X, 30), p.Wide-30)
	return out
}

// bars places the months: a thread for each tenth, three tenths, … of the
// space's ground.
func (p *SkyPage) bars() {
	p.BarFoot = 18 + barHour*barSky
	hour := barHour // px an hour: less where the sun stays up for longer
	for _, one := range p.View.Months {
		hour = math.Min(hour, barHour*barSky/math.Max(math.Max(one.Most, one.High), barSky))
	}
	for m, one := range p.View.Months {
		b := SkyBar{MonthSun: one, Month: monthNames[m], Short: monthNames[m][:1], X: skyLeft + float64(m)*barAside, CloudY: -1, TopY: p.BarFoot - hour*one.Most}
		for k, h := range one.Hours {
			b.Threads += fmt.Sprintf("M%s %sV%s", px(b.X+2+float64(k)*4.5), px(p.BarFoot), px(p.BarFoot-hour*h))
			b.TopY = math.Min(b.TopY, p.BarFoot-hour*h)
		}
		if one.Cloudy >= 0 {
			b.CloudY = p.BarFoot - hour*one.Cloudy
		}
		if one.High > 0 {
			b.LowY, b.HighY = p.BarFoot-hour*one.Low, p.BarFoot-hour*one.High
			b.TopY = math.Min(b.TopY, b.HighY)
		}
		b.TopY = math.Max(b.TopY, 14)
		p.Bars = append(p.Bars, b)
	}
}

// table lists the points every ten degrees, and the bearings to choose from.
func (p *SkyPage) table(chosen string) {
	for _, one := range p.View.Points {
		if int(math.Round(one.BearingDeg))%10 != 0 {
			continue
		}
		p.Rows = append(p.Rows, one)
		value := fmt.Sprintf("%.0f", one.BearingDeg)
		p.Bearings = append(p.Bearings, Option{Value: value, Words: fmt.Sprintf("%s: now %.0f° high", reckon.Compass(one.BearingDeg), one.EdgeDeg), Chosen: value == chosen})
	}
	if chosen == "" {
		p.Bearings[len(p.Bearings)/2].Chosen = true
	}
	for _, e := range p.View.Edges {
		p.Edges = append(p.Edges, SkyEdge{Words: reckon.EdgeWords(e.Edge), Event: e.Event, Form: ledger.NewID()})
	}
}

// saveSky keeps a correction, or shows the page again with words at the field.
func (s *site) saveSky(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *SkyPage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		q, err := s.skyPage(r, day, r.PostForm)
		if err != nil {
			return done{}, err
		}
		d, err := s.lightDesk(r)
		if err != nil {
			return done{}, err
		}
		p = q
		e, words, on := p.correction(d, day.Date, r.PostForm)
		if len(p.Faults) > 0 {
			return done{}, errForm
		}
		event, err := s.o.Record(withForm(r, r.PostForm.Get("form")), ledger.Skyline, on, "", e)
		return done{event: event, words: "Saved. " + words + " The plan takes it up.", back: "/sky/" + url.PathEscape(p.Space.ID), undo: true}, err
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

// correction reads the form as one event; words at the fields say what is
// wrong.
func (p *SkyPage) correction(d *reckon.LightDesk, today cal.Day, v url.Values) (ledger.Edge, string, cal.Day) {
	if v.Get("move") != "" {
		fists, ok := map[string]float64{"up": 1, "half-up": 0.5, "half-down": -0.5, "down": -1}[v.Get("move")]
		bearing := -1.0
		for _, one := range p.Rows {
			if fmt.Sprintf("%.0f", one.BearingDeg) == v.Get("bearing") {
				bearing = one.BearingDeg
			}
		}
		if !ok || bearing < 0 {
			p.Faults["bearing"] = "Choose a direction."
			return ledger.Edge{}, "", today
		}
		e, words, err := d.ByHand(p.Space.ID, bearing, fists)
		if err != nil {
			p.Faults["bearing"] = name(err.Error()) + "."
		}
		return e, words, today
	}
	on := p.Faults.day(v, "day", today)
	hour, err := clockOf(v.Get("clock"))
	if err != nil {
		p.Faults["clock"] = "Write the time as hours and minutes, such as 10:40."
	}
	if len(p.Faults) > 0 {
		return ledger.Edge{}, "", on
	}
	e, words, err := d.SeenSun(p.Space.ID, on, hour, v.Get("sun") == "left")
	if err != nil {
		p.Faults["clock"] = name(err.Error()) + "."
	}
	return e, words, on
}
