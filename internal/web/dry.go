package web

import (
	"fmt"
	"math"
	"net/http"
	"net/url"
	"sort"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// DryPage says who runs dry first.
type DryPage struct {
	Frame
	Dry     *reckon.Dryness
	Says    string
	Wets    []WetDrawing
	Ground  bool // some space has a line or weighs something
	Race    *Race
	Rows    []DryCard
	Empty   []string
	Nexts   []Option
	Next    string // hours, for the forms
	AskForm string
	Litres  string
	Problem string
}

// DryCard is one space with its form.
type DryCard struct {
	reckon.DryRow
	No   int
	Form string
	Care string // its caution, or where the same one stands
}

// Race is the picture: bars from now to the hour each space runs dry.
type Race struct {
	Tall, Foot float64
	Bars       []RaceBar
	Nights     []RaceSpan
	RainSays   string // how likely, from the least to the most likely stretch
	Rains      []RaceSpan
	NextX      float64
	NextIn     bool
	Ticks      []Tick
	Says       string
}

// RaceBar is one space.
type RaceBar struct {
	Name       string
	Y, W       float64
	Thick      bool // ends before the next visit
	Dots       []Dot
	Later      int // dots beyond the picture
	Space      string
	Hours      string // all hours, for whoever reads the picture back
	BeforeNext int
}

// RaceSpan is a stretch of time across the picture.
type RaceSpan struct {
	X, W  float64
	Words string
}

// Sizes of the race, in px.
const (
	raceLeft = 6.0
	raceWide = 346.0
	raceTop  = 46.0
	raceStep = 52.0
)

// usualNext is the hours until the next visit when nothing was said.
const usualNext = 24

// nexts are the visits to choose from, in hours.
var nexts = []Option{
	{Value: "6", Words: "in 6 hours"}, {Value: "12", Words: "in 12 hours"}, {Value: "24", Words: "in 1 day"},
	{Value: "48", Words: "in 2 days"}, {Value: "72", Words: "in 3 days"}, {Value: "120", Words: "in 5 days"}, {Value: "168", Words: "in a week"},
}

// hourNow is the hour drying is counted from: the clock's on the day itself,
// else the morning round's.
func (s *site) hourNow(day *reckon.Day) int {
	now := s.o.Now()
	if cal.FromTime(now) == day.Date {
		return now.Hour()
	}
	return 7
}

// dryFor asks for the water of the day.
func (s *site) dryFor(r *http.Request, day *reckon.Day, ask reckon.DryAsk) (*reckon.Dryness, error) {
	if s.o.Dry == nil {
		return day.Dry, nil
	}
	ask.FromHour = s.hourNow(day)
	return s.o.Dry(r.Context(), ask)
}

// nextOf reads the hours until the next visit; the usual ones when it is not
// one of the choices.
func nextOf(v string) float64 {
	for _, n := range nexts {
		if n.Value == v {
			h, _ := strconv.ParseFloat(v, 64)
			return h
		}
	}
	return usualNext
}

// litresOf reads a limit; 0 = none.
func litresOf(v string) (float64, bool) {
	if v == "" {
		return 0, true
	}
	x, ok := decimal(v)
	return x, ok && x > 0 && x <= 10000
}

// dry draws the page.
func (s *site) dry(r *http.Request, day *reckon.Day) (page, error) {
	q := r.URL.Query()
	next := nextOf(q.Get("next"))
	allowed, ok := litresOf(q.Get("litres"))
	if !ok {
		allowed = 0
	}
	d, err := s.dryFor(r, day, reckon.DryAsk{NextH: next, AllowedL: allowed})
	if err != nil {
		return nil, err
	}
	p := &DryPage{Frame: s.framed(r, day, "Who runs dry first", "dry"), Dry: d, AskForm: ledger.NewID(), Litres: q.Get("litres"),
		Nexts: choose(nexts, fmt.Sprintf("%.0f", next)), Next: fmt.Sprintf("%.0f", next)}
	p.Litres = clip(p.Litres, 12)
	if !ok {
		p.Problem = "Write the litres allowed as a number, such as 40."
	}
	if d == nil {
		p.Says = "Not reckoned yet."
		return p, nil
	}
	for _, row := range d.Rows {
		if row.Empty {
			p.Empty = append(p.Empty, strings.Join(append([]string{row.Name}, row.Crops...), ": "))
			continue
		}
		p.Rows = append(p.Rows, DryCard{DryRow: row, No: len(p.Rows) + 1, Form: ledger.NewID()})
	}
	dryCare(p.Rows)
	p.Says = drySays(p.Rows, d.Next)
	if len(p.Rows) > 0 {
		p.Race = race(d, p.Rows)
		p.Wets = wetDrawings(p.Rows)
		for _, r := range p.Rows {
			if r.Ground != nil {
				p.Ground = true
			}
		}
	}
	return p, nil
}

// dryCare says each caution once among the cards.
func dryCare(rows []DryCard) {
	var cautions, places []string
	for _, r := range rows {
		cautions, places = append(cautions, r.Caution), append(places, r.Name)
	}
	for i, c := range reckon.CareOnce(cautions, places) {
		rows[i].Care = c
	}
}

// drySays counts what is likely to run dry, which is work of the day, and what
// could.
func drySays(rows []DryCard, next string) string {
	var likely []string
	could := 0
	for _, r := range rows {
		switch {
		case r.Answer.GiveL <= 0:
		case r.ByNextOf20 >= reckon.WaterFrom:
			likely = append(likely, r.Name)
		default:
			could++
		}
	}
	switch {
	case len(rows) == 0:
		return "Nothing stands anywhere, so nothing runs dry."
	case len(likely) == 0 && could == 0:
		return fmt.Sprintf("Nothing needs water before you are next here, %s.", next)
	case len(likely) == 0:
		return fmt.Sprintf("Nothing is likely to run dry before you are next here, %s. To be sure, water %s.", next, plural(could, "space", "spaces"))
	}
	s := fmt.Sprintf("Water %s now. First is %s.", plural(len(likely), "space", "spaces"), likely[0])
	if could > 0 {
		s += fmt.Sprintf(" To be sure, %d more.", could)
	}
	return s
}

// race draws the bars.
func race(d *reckon.Dryness, rows []DryCard) *Race {
	span := raceHours(d, rows)
	x := func(h float64) float64 { return raceLeft + raceWide*math.Min(math.Max(h, 0), span)/span }
	p := &Race{Foot: raceTop + raceStep*float64(len(rows)), NextX: x(d.NextH), NextIn: d.NextH <= span}
	p.Tall = p.Foot + 8
	for _, n := range d.Nights {
		if n.FromH < span {
			p.Nights = append(p.Nights, RaceSpan{X: x(n.FromH), W: x(n.ToH) - x(n.FromH)})
		}
	}
	least, most := 20, 0
	for _, n := range d.Rains {
		if n.FromH < span {
			least, most = min(least, n.OfTwenty), max(most, n.OfTwenty)
			p.Rains = append(p.Rains, RaceSpan{X: x(n.FromH), W: x(n.ToH) - x(n.FromH), Words: fmt.Sprintf("rain %d of 20", n.OfTwenty)})
		}
	}
	p.RainSays = fmt.Sprintf("%d of 20", most)
	if least < most {
		p.RainSays = fmt.Sprintf("%d to %d of 20", least, most)
	}
	for k := 0; ; k++ { // noons
		h := 12 + 24*float64(k) - float64(d.FromHour)
		if h > span {
			break
		}
		if every := int(math.Ceil(span / 24 / 6)); h >= 0 && k%every == 0 {
			p.Ticks = append(p.Ticks, Tick{math.Max(x(h), 24), (d.Date + cal.Day(k)).Time().Format("Mon 2")})
		}
	}
	for i, r := range rows {
		p.Bars = append(p.Bars, raceBar(r, raceTop+raceStep*float64(i), d.NextH, span, x))
	}
	p.Says = fmt.Sprintf("%s, shortest first. Each bar runs from now to the likely hour; its dots are twenty futures. The upright line is your next visit, %s.",
		plural(len(rows), "space", "spaces"), d.Next)
	return p
}

func raceBar(r DryCard, y, next, span float64, x func(float64) float64) RaceBar {
	b := RaceBar{Name: clip(clip(r.Name, max(12, 46-len([]rune(r.Hours))))+": "+r.Hours, 48), Y: y, W: x(r.Answer.Dry.Likely) - raceLeft, Thick: r.Answer.Dry.Likely < next, Space: r.Space, BeforeNext: r.ByNextOf20}
	hours := append([]float64{}, r.Answer.Hours...)
	sort.Float64s(hours)
	for k, h := range hours {
		if k > 0 {
			b.Hours += " "
		}
		b.Hours += strconv.FormatFloat(math.Round(h*10)/10, 'f', -1, 64)
		if h > span {
			b.Later++
			continue
		}
		b.Dots = append(b.Dots, Dot{x(h), y + 28 + float64(k%3-1)*6})
	}
	return b
}

// raceHours is how much time the picture shows: enough for the next visit and
// for the likely hour of most spaces, at least two days and at most ten.
func raceHours(d *reckon.Dryness, rows []DryCard) float64 {
	var likely []float64
	for _, r := range rows {
		likely = append(likely, r.Answer.Dry.Late)
	}
	sort.Float64s(likely)
	most := likely[(len(likely)*3)/4]
	return math.Min(240, math.Max(48, math.Max(d.NextH*1.2, most*1.05)))
}

// canL is a full watering can, litres.
const canL = 10

// foundBody is the event of an answer.
func foundBody(space, what string, hour int) (ledger.Kind, any, string, bool) {
	words := map[string]string{"damp": "damp at a knuckle", "dry": "dry", "wilting": "wilting"}
	switch what {
	case "can":
		return ledger.Watered, ledger.Watering{Space: space, Litres: canL, Hour: hour}, "a can given", true
	case "cans":
		return ledger.Watered, ledger.Watering{Space: space, Litres: 2 * canL, Hour: hour}, "two cans given", true
	case "through":
		return ledger.Watered, ledger.Watering{Space: space, Hour: hour}, "watered until it ran through", true
	}
	if w, ok := words[what]; ok {
		return ledger.Looked, ledger.LookAt{Space: space, Looks: w, Hour: hour}, w, true
	}
	return "", nil, "", false
}

// saveDry writes what was found, and says what it taught.
func (s *site) saveDry(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) { return s.foundDry(r) })
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

func (s *site) foundDry(r *http.Request) (done, error) {
	day, err := s.present(r)
	if err != nil {
		return done{}, err
	}
	i, ok := spaceOf(day, r.PostForm.Get("space"))
	if !ok {
		return done{}, ErrNotThere
	}
	sp := day.Spaces[i]
	kind, body, words, ok := foundBody(sp.ID, r.PostForm.Get("found"), s.hourNow(day))
	if !ok {
		return done{}, errBroken
	}
	next := nextOf(r.PostForm.Get("next"))
	before, _ := s.dryRow(r, day, sp.ID, next)
	e, err := s.o.Record(withForm(r, r.PostForm.Get("form")), kind, day.Date, "", body)
	if err != nil {
		return done{}, err
	}
	said := "Saved: " + sp.Name + ", " + words + "."
	if after, ok := s.dryRow(r, day, sp.ID, next); ok {
		said += " " + reckon.Taught(before, after) + " " + after.When
	}
	return done{event: e, words: said, back: fmt.Sprintf("/dry?next=%.0f", next), undo: true}, nil
}

func (s *site) dryRow(r *http.Request, day *reckon.Day, space string, next float64) (reckon.DryRow, bool) {
	d, err := s.dryFor(r, day, reckon.DryAsk{NextH: next})
	if err != nil || d == nil {
		return reckon.DryRow{}, false
	}
	for _, row := range d.Rows {
		if row.Space == space {
			return row, true
		}
	}
	return reckon.DryRow{}, false
}

// askDry turns the small forms of the water pages into addresses.
func (s *site) askDry(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	v := url.Values{}
	to := "/dry"
	if days := r.PostForm.Get("days"); days != "" {
		to = "/away"
		v.Set("days", clip(days, 6))
	} else {
		v.Set("next", fmt.Sprintf("%.0f", nextOf(r.PostForm.Get("next"))))
		if l := r.PostForm.Get("litres"); l != "" {
			v.Set("litres", clip(l, 12))
		}
	}
	http.Redirect(w, r, to+"?"+v.Encode(), http.StatusSeeOther)
}
