package reckon

import (
	"fmt"
	"math"
	"sort"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// SkyPart is the weather of this garden as a person asks about it: who freezes
// tonight, who cooks this week, and what the years are like.
type SkyPart struct {
	Date     cal.Day
	Source   string // where the coming days come from
	Forecast bool   // they follow a forecast
	Night    Night
	Heat     HeatWeek
	Climate  Climate
	Cold     string // what own thermometers have taught
	Spaces   []SpaceWarmth
	Readings []ReadingSays // newest first
	Met      *ForecastsMet // how far earlier forecasts were off; nil = none was kept
}

// Night is the coming night.
type Night struct {
	LowC       Window
	Lows       []float64 // by future, at the garden
	FrostOf20  int       // at or below 0 °C
	Words      string
	By         string
	Rows       []ColdRow // at risk tonight or within seven nights
	Leave      []string  // what stands and needs nothing
	CoverDoes  []string
	DoNot      []string
	WindyOf20  int
	WeekFrosts int // of twenty: a frost within seven nights
}

// Window is a tenth, a half and nine tenths.
type Window struct{ Early, Likely, Late float64 }

// ColdRow is a planting and the cold.
type ColdRow struct {
	Space, Name, Crop string
	LimitC            float64
	LowC              float64 // likely low at the space tonight
	TonightOf20       int     // at or below the limit tonight, bare
	CoveredOf20       int     // the same under its cover; -1 = none at hand
	WeekOf20          int     // within seven nights, bare
	Verdict, Cover    string
}

// HeatWeek is the coming seven days.
type HeatWeek struct {
	Words     string
	HighC     Window // the hottest day of the week
	HotOf20   int    // a day of 30 °C or more
	NightOf20 int    // a night that stays at 20 °C or more
	Rows      []HeatRow
	DoNot     []string
	By        string
}

// HeatRow is a space and the heat.
type HeatRow struct {
	Space, Name, Why, Do string
	OfTwenty             int
}

// SpaceWarmth is how a space's medium and air differ.
type SpaceWarmth struct {
	Space, Name string
	WarmC       float64 // medium over open ground, spring
	Swing       float64 // share of the day's swing in its middle
	LagH        float64
	ColdC       ColdOffset
	SideC       float64 // at its sunny side on the week's likely hottest day
	Wind        float64 // share of the wind at 2 m
}

// ReadingSays is an own reading, with its entry, to take back.
type ReadingSays struct {
	Event string
	On    cal.Day
	Words string
}

// freezeC and other lines of the thermometer, °C. hotDayC and hotNightC are the
// usual definitions of hot days and tropical nights.
const (
	freezeC   = 0.0
	hotDayC   = 30.0
	hotNightC = 20.0
	rootHotC  = 40.0 // roots at a container's wall are harmed from about here (from memory)
	askFrom   = 2    // of twenty, from which a risk is listed for the week
)

// Sky says what the weather does to the garden on the day of a result.
func (r *Result) Sky(state *ledger.State) *SkyPart {
	in := *r.in
	if state != nil {
		in.State = state
	}
	r.climate.once.Do(func() { r.climate.is = climateOf(&in, r.Place) })
	return sky(&in, r.Place, r.model.stays, r.climate.is)
}

// climate is what one plan's place and futures say of the year, made when it is
// first asked for: notes do not change it.
type climate struct {
	once sync.Once
	is   Climate
}

func sky(in *Inputs, p *Place, stays []standing, climate Climate) *SkyPart {
	s := &SkyPart{Date: in.Date, Source: p.Set.Words, Forecast: in.Forecast != nil, Met: in.ForecastsMet()}
	s.Night = night(in, p, stays)
	s.Heat = heat(in, p, stays)
	s.Climate = climate
	s.Cold = coldWords(in)
	for i, sp := range in.Garden.Spaces {
		if !sp.Grows() {
			continue
		}
		sw, l := mediumSwing(sp), p.Lights[i].Share[in.Date.Month()-1]
		s.Spaces = append(s.Spaces, SpaceWarmth{Space: string(sp.ID), Name: spaceName(sp), WarmC: mediumWarmC(sp), Swing: sw.Share, LagH: sw.LagH,
			ColdC: coldOf(in, sp), SideC: hotSideC(sp, s.Heat.HighC.Likely, l), Wind: windAt(sp.Rim.M + 0.3)})
	}
	if in.State != nil {
		for k := len(in.State.Readings) - 1; k >= 0 && len(s.Readings) < 12; k-- {
			s.Readings = append(s.Readings, readingSays(in, in.State.Readings[k]))
		}
	}
	return s
}

func readingSays(in *Inputs, r ledger.ReadingNote) ReadingSays {
	where := "the garden"
	if sp, ok := in.Garden.Space(garden.SpaceID(r.Space)); ok && r.Space != "" {
		where = spaceName(sp)
	}
	return ReadingSays{Event: r.Event, On: r.On, Words: sentence(readingWords(r.Reading, where))}
}

// readingWords says a reading and where it was taken.
func readingWords(r ledger.Reading, where string) string {
	switch r.What {
	case ledger.ReadLow:
		return fmt.Sprintf("coldest %.1f °C in %s", r.Value, where)
	case ledger.ReadHigh:
		return fmt.Sprintf("warmest %.1f °C in %s", r.Value, where)
	case ledger.ReadHeap:
		return fmt.Sprintf("%.0f °C in the middle of %s", r.Value, where)
	}
	return fmt.Sprintf("%.1f mm in the gauge of %s", r.Value, where)
}

func coldWords(in *Inputs) string {
	c := gardenCold(in)
	switch {
	case in.Record == nil:
		return "Without a daily record of a station, readings teach nothing about cold. They still win for their day."
	case c.Nights == 0:
		return "No reading of a still night yet. Hang a thermometer that keeps the lowest, and note it in the morning."
	}
	word := "above"
	if c.C < 0 {
		word = "below"
	}
	return fmt.Sprintf("Your garden has run %.1f °C %s the station on still nights (%d readings; give or take %.1f).", math.Abs(c.C), word, c.Nights, c.SpanC)
}

// at is a future's day.
func at(f weather.Future, d cal.Day) (weather.Day, bool) {
	i := int(d - f.Start)
	if i < 0 || i >= len(f.Days) {
		return weather.Day{}, false
	}
	return f.Days[i], true
}

// stillness is 1 on a still night and 0 on a windy one.
func stillness(windMS float64) float64 {
	return math.Max(0, math.Min(1, (windyWind-windMS)/(windyWind-stillWind)))
}

// night looks at the night that ends tomorrow morning, and the six after it.
func night(in *Inputs, p *Place, stays []standing) Night {
	n := Night{}
	own := gardenCold(in).C
	fs := p.Set.Futures
	frost, windy, week := 0, 0, 0
	for _, f := range fs {
		d, ok := at(f, in.Date+1)
		if !ok {
			continue
		}
		low := d.TminC + own*stillness(d.WindMS)
		n.Lows = append(n.Lows, low)
		if low <= freezeC {
			frost++
		}
		if d.WindMS >= windyWind {
			windy++
		}
		for k := cal.Day(1); k <= 7; k++ {
			if d, ok := at(f, in.Date+k); ok && d.TminC+own*stillness(d.WindMS) <= freezeC {
				week++
				break
			}
		}
	}
	n.LowC = windowOf(n.Lows)
	n.FrostOf20, n.WindyOf20, n.WeekFrosts = ofTwenty(frost, len(fs)), ofTwenty(windy, len(fs)), ofTwenty(week, len(fs))
	_, set := weather.SunUpSolarH(in.Garden.Place.LatDeg, in.Date.YearDay())
	n.By = fmt.Sprintf("before the sun leaves the bed, about %02.0f:00 by the sun", math.Max(12, math.Floor(set-2)))
	for _, st := range stays {
		if st.tray || st.count <= 0 || !in.Garden.Spaces[st.space].Grows() {
			continue
		}
		row, risk := coldRow(in, p, st)
		if risk {
			n.Rows = append(n.Rows, row)
		} else {
			n.Leave = append(n.Leave, row.Crop)
		}
	}
	sort.SliceStable(n.Rows, func(a, b int) bool {
		x, y := n.Rows[a], n.Rows[b]
		if x.TonightOf20 != y.TonightOf20 {
			return x.TonightOf20 > y.TonightOf20
		}
		if x.WeekOf20 != y.WeekOf20 {
			return x.WeekOf20 > y.WeekOf20
		}
		return x.Space < y.Space
	})
	n.Leave = distinct(n.Leave)
	cover := 0
	for _, r := range n.Rows {
		if r.TonightOf20 > 0 {
			cover++
		}
	}
	n.Words = fmt.Sprintf("Tonight about %.0f °C in the garden (%.0f to %.0f). Frost: %s.", n.LowC.Likely, n.LowC.Early, n.LowC.Late, chance(n.FrostOf20))
	switch {
	case cover > 0:
		n.Words += fmt.Sprintf(" Cover %s.", plantingsWord(cover))
	case len(n.Rows) > 0:
		n.Words += " Nothing needs a cover tonight; keep covers at hand this week."
	default:
		n.Words += " Nothing needs a cover tonight, nor this week."
	}
	n.CoverDoes = []string{
		"Fleece to the ground holds off about 1.5 °C, a lid or cloche about 2 °C (common practice).",
		"It works on still, clear nights, by keeping the warmth of the ground. In wind it does little.",
		"Put it on dry, weigh it down all round, off again by mid-morning.",
	}
	n.DoNot = []string{
		"Do not let plastic touch leaves.", "Do not wet leaves before a frost; water the ground by day instead.",
		"Do not light fires or heaters under covers.", "Do not cut back frosted leaves until growth starts.",
	}
	return n
}

func plantingsWord(n int) string {
	if n == 1 {
		return "1 planting"
	}
	return fmt.Sprintf("%d plantings", n)
}

// coldRow counts the futures in which the cold kills a planting.
func coldRow(in *Inputs, p *Place, st standing) (ColdRow, bool) {
	sp := in.Garden.Spaces[st.space]
	limit := st.crop.FrostKill.Value
	if st.crop.FrostSeedling.Known() && in.Date-st.since.Likely < youngDays {
		limit = math.Max(limit, st.crop.FrostSeedling.Value)
	}
	row := ColdRow{Space: string(sp.ID), Name: spaceName(sp), Crop: named(st.crop, st.variety, st.oneOf), LimitC: limit, CoveredOf20: -1}
	if !st.crop.FrostKill.Known() && !st.crop.FrostSeedling.Known() {
		return row, false
	}
	gain, kind := coverOf(sp)
	cold := coldOf(in, sp).C
	bare, covered, week := 0, 0, 0
	var lows []float64
	for _, f := range p.Set.Futures {
		for k := cal.Day(1); k <= 7; k++ {
			d, ok := at(f, in.Date+k)
			if !ok {
				break
			}
			still := stillness(d.WindMS)
			low := d.TminC + cold*still
			if k == 1 {
				lows = append(lows, low)
				if low <= limit {
					bare++
				}
				if low+gain*still <= limit {
					covered++
				}
			}
			if low <= limit {
				week++
				break
			}
		}
	}
	of := len(p.Set.Futures)
	row.LowC, row.TonightOf20, row.WeekOf20 = windowOf(lows).Likely, ofTwenty(bare, of), ofTwenty(week, of)
	if gain > 0 {
		row.CoveredOf20 = ofTwenty(covered, of)
	}
	row.Verdict, row.Cover = coverWords(row, sp, kind)
	return row, row.TonightOf20 > 0 || row.WeekOf20 >= askFrom
}

// coverOf is the best cover at hand for a space and the cold it holds off, °C,
// as growth takes it.
func coverOf(sp garden.Space) (gain float64, kind string) {
	for _, c := range sp.Covers {
		g := 0.0
		switch c.Kind {
		case "fleece":
			g = 1.5
		case "cloche":
			g = 2
		}
		if g > gain {
			gain, kind = g, c.Kind
		}
	}
	return gain, kind
}

func coverWords(r ColdRow, sp garden.Space, kind string) (verdict, with string) {
	movable := canBeMoved(sp)
	switch {
	case r.TonightOf20 == 0:
		verdict = fmt.Sprintf("Have a cover ready: %s this week.", chance(r.WeekOf20))
	case r.CoveredOf20 >= 0 && r.CoveredOf20 <= 2:
		verdict = "Cover it tonight."
	case movable:
		verdict = "Bring it in, or against the house wall. A cover alone may not save it."
	default:
		verdict = "Cover it tonight, two layers. It may still be lost."
	}
	switch {
	case kind == "cloche":
		with = "its lid or cloche, pressed down"
	case kind != "":
		with = "its " + kind + ", to the ground, weighed down"
	default:
		with = "nothing is noted at hand: an old sheet on canes, not touching"
	}
	return verdict, with
}

// heat looks at today and the six days after.
func heat(in *Inputs, p *Place, stays []standing) HeatWeek {
	h := HeatWeek{By: "water before 9 and shade by 11 in the morning, by the sun"}
	var highs []float64
	hot, nights := 0, 0
	for _, f := range p.Set.Futures {
		most, warm := math.Inf(-1), math.Inf(-1)
		for k := range cal.Day(7) {
			if d, ok := at(f, in.Date+k); ok {
				most, warm = math.Max(most, d.TmaxC), math.Max(warm, d.TminC)
			}
		}
		highs = append(highs, most)
		if most >= hotDayC {
			hot++
		}
		if warm >= hotNightC {
			nights++
		}
	}
	of := len(p.Set.Futures)
	h.HighC, h.HotOf20, h.NightOf20 = windowOf(highs), ofTwenty(hot, of), ofTwenty(nights, of)
	h.Words = fmt.Sprintf("The week's hottest day: about %.0f °C (%.0f to %.0f). A day of 30 °C or more: %s.", h.HighC.Likely, h.HighC.Early, h.HighC.Late, chance(h.HotOf20))
	for i, sp := range in.Garden.Spaces {
		if !sp.Grows() {
			continue
		}
		if row, ok := heatRow(in, p, stays, i, highs); ok {
			h.Rows = append(h.Rows, row)
		}
	}
	sort.SliceStable(h.Rows, func(a, b int) bool { return h.Rows[a].OfTwenty > h.Rows[b].OfTwenty })
	if len(h.Rows) == 0 {
		h.Words += " Nothing that stands is at risk from heat this week."
	}
	h.DoNot = []string{
		"Do not feed dry or wilted plants.", "Do not set plants out or prune in a hot spell.",
		"Do not judge thirst by leaves at noon: feel the mix, many leaves hang and recover.",
		"Shade cloth loose over hoops, not on leaves; off again when it cools.",
	}
	return h
}

// heatRow says what heat does in one space: to the crops' quality, and to roots
// at a container's sunny side.
func heatRow(in *Inputs, p *Place, stays []standing, i int, highs []float64) (HeatRow, bool) {
	sp := in.Garden.Spaces[i]
	row := HeatRow{Space: string(sp.ID), Name: spaceName(sp)}
	light := p.Lights[i].Share[in.Date.Month()-1]
	var crops []string
	worst, roots, stands := 0, 0, false
	for _, st := range stays {
		if st.space != i || st.tray || st.count <= 0 {
			continue
		}
		stands = true
		if !st.crop.HeatC.Known() {
			continue
		}
		n := 0
		for _, x := range highs {
			if x >= st.crop.HeatC.Value {
				n++
			}
		}
		if of := ofTwenty(n, len(highs)); of >= rainDrawnOf {
			crops = append(crops, named(st.crop, st.variety, st.oneOf))
			worst = max(worst, of)
		}
	}
	if !stands {
		return row, false
	}
	if wallRatio(sp) > 0 {
		for _, x := range highs {
			if hotSideC(sp, x, light) >= rootHotC {
				roots++
			}
		}
	}
	k := ofTwenty(roots, len(highs))
	row.OfTwenty = max(worst, k)
	switch {
	case k >= rainDrawnOf && sp.Dark:
		row.Why = "Dark sides in the sun: roots at the wall get too hot."
		row.Do = "Shade the sides: a board, a pale cloth, or pots in front. Not wrapped in plastic."
	case k >= rainDrawnOf:
		row.Why = "Roots at the sunny wall get too hot."
		row.Do = "Shade the sunny side; stand containers close together."
	case len(crops) > 0:
		row.Why = sentence(list(distinct(crops)) + " lose quality, bolt or drop flowers")
		row.Do = "Shade cloth through midday, water early, pick what is ready."
	}
	return row, row.Why != "" && row.OfTwenty >= rainDrawnOf
}

// windowOf takes a tenth, the middle and nine tenths.
func windowOf(v []float64) Window {
	if len(v) == 0 {
		return Window{}
	}
	return Window{quantile(v, 0.1), quantile(v, 0.5), quantile(v, 0.9)}
}

// distinct drops later copies.
func distinct(words []string) []string {
	seen := map[string]bool{}
	var out []string
	for _, w := range words {
		if !seen[w] {
			seen[w] = true
			out = append(out, w)
		}
	}
	return out
}
