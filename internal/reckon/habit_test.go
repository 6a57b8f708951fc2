package reckon

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// The habit is our yardstick: what a careful gardener with a printed calendar
// does. Common practice, no source.
//
//   - All warm crops go out on one day: three weeks after the mean last frost, or
//     in the week after that from which the calendar lists most of them.
//   - Each space has one crop at a time, chosen by liking and by sun, at the
//     packet's spacing, and keeps it until frost or its natural end.
//   - A cool crop is sown when a space is then empty, if the mean date on which
//     the day falls to ten hours is more than 75 % of its days to maturity away.
//   - Salads are sown again every fortnight where ground is free.
//   - One space in three rests over winter.
//
// Where the calendar says nothing the habit does what is good for it. A printed
// calendar for the place is taken to list just the starts that succeed in as
// many futures as the plan calls sure. Pots that stand ready are set out,
// seed at hand is sown before other seed, then what the book says yields most.
// A family does not return early to its medium where another crop will do.
// Foods take turns by liking and by how often they are wanted; a crop is not
// sown twice while another will do. Ground meant for a warm crop carries a quick
// cool one before. What is picked over is pulled, and what would first be picked
// after the plan's end is not sown. Gardeners differ in whether
// they pull what stands for the warm crops or wait for it, in whether they leave
// a food out rather than bring a family back early, and in whether pots that stand
// ready go out where the calendar is against it: of the eight ways the one that
// turned out best is counted.
type habit struct {
	in    *Inputs
	place *Place // of the year as it came: the habit follows what happens
	sheet *Place // of the futures: the printed calendar
	m     *model
	stays []standing
	air   map[*Place]map[int]map[crop.ID]*stand.Table

	frost        [2]cal.Day // mean last frost of this year and the next
	warmDay      [2]cal.Day // when warm crops go out
	tenHour      []cal.Day  // of each autumn
	plan         season.Plan
	nothing      []string // faults of doing nothing: not the habit's
	given        map[int]float64
	meant        map[int]bool // spaces meant for a warm crop
	salads       int
	clearsOut    bool // pulls what stands for the warm crops
	calendarOnly bool // ready pots do not count
	rotates      bool // leaves a food out rather than bring a family back early
}

// restShare: one space in so many rests over winter.
const restShare = 3

// coolBefore is when cool sowing begins again: weeks before the mean last frost,
// as packets have it.
const coolBefore = 6

// habitPlan adds to m the options the habit takes and returns its plan.
func habitPlan(in *Inputs, sheet, place *Place, m *model, stays []standing, lastFrost, firstTen func(year int) cal.Day, clearsOut, rotates, usesPots bool) season.Plan {
	h := &habit{in: in, place: place, sheet: sheet, m: m, stays: stays, air: map[*Place]map[int]map[crop.ID]*stand.Table{}, given: map[int]float64{}, meant: map[int]bool{}, clearsOut: clearsOut, rotates: rotates, calendarOnly: true}
	for k := range h.warmDay {
		h.frost[k] = lastFrost(in.Date.Year() + k)
		h.warmDay[k] = h.warmFrom(h.frost[k] + 21)
	}
	for y := in.Date.Year(); y <= in.Date.Year()+2; y++ {
		h.tenHour = append(h.tenHour, firstTen(y))
	}
	h.plan.Pull = make([]int, len(m.p.Stays))
	for i := range m.p.Stays {
		h.plan.Pull[i] = min(m.p.Stays[i].End, m.p.Weeks-1)
	}
	h.calendarOnly = !usesPots
	for sp := range m.p.Spaces {
		for _, c := range offered(in) {
			day := h.warmDay[0]
			if day < in.Date {
				day = h.warmDay[1]
			}
			h.meant[sp] = h.meant[sp] || c.Warm && len(foodsOf(in.Garden, c)) > 0 && h.suits(sp, c, int(day-m.p.Start)/7)
		}
	}
	h.nothing = season.Evaluate(m.p, &h.plan).Faults
	for w := range in.Weeks {
		h.week(w)
	}
	return h.plan
}

// soon says whether a family comes back early to the medium of a space.
func (h *habit) soon(space, w int, c *crop.Crop) bool {
	p, b, f := h.m.p, h.m.p.Spaces[space].Batch, h.m.family[c.Family]
	early := func(left int) bool { return left < w && w-left-1 < int(c.IntervalY.Value*52) }
	if b < 0 {
		return false
	}
	if left, ok := p.Batches[b].Last[f]; ok && early(left) {
		return true
	}
	for i := range p.Stays {
		if s := &p.Stays[i]; s.Family == f && p.Spaces[s.Space].Batch == b && early(h.plan.Pull[i]) {
			return true
		}
	}
	for _, pl := range h.plan.Plantings {
		if o := &p.Options[pl.Option]; o.Family == f && p.Spaces[o.Space].Batch == b && early(o.End) {
			return true
		}
	}
	return false
}

// grows says whether a crop stands somewhere in a week, sown by habit.
func (h *habit) grows(w int, c *crop.Crop) bool {
	for _, pl := range h.plan.Plantings {
		if o := &h.m.p.Options[pl.Option]; o.Crop == string(c.ID) && o.Week <= w && w <= o.End {
			return true
		}
	}
	return false
}

// grow is what comes of a start, on the sheet or as it came.
func (h *habit) grow(p *Place, space int, c *crop.Crop, way crop.Way, day cal.Day) stand.Growth {
	class := p.Class[h.m.spaces[space]]
	if h.air[p] == nil {
		h.air[p] = map[int]map[crop.ID]*stand.Table{}
	}
	if h.air[p][class] == nil {
		h.air[p][class] = map[crop.ID]*stand.Table{}
	}
	t := h.air[p][class][c.ID]
	if t == nil {
		t = p.Airs[class].Table(c, stand.Worlds(c, h.in.Futures, h.in.Seed))
		h.air[p][class][c.ID] = t
	}
	return t.Grow(way, day)
}

// nextWarm is the week of the warm crops that comes next, or past the plan.
func (h *habit) nextWarm(w int) int {
	for _, day := range h.warmDay {
		if k := int(day-h.m.p.Start) / 7; k > w && day > h.m.p.Start {
			return k
		}
	}
	return h.m.p.Weeks
}

// week is what is done in one week of the plan.
func (h *habit) week(w int) {
	monday := h.m.p.Start + cal.Day(7*w)
	for _, day := range h.warmDay {
		if monday <= day && day < monday+7 {
			h.warm(w)
		}
	}
	for sp := range h.m.p.Spaces {
		if h.empty(sp, w) && h.coolTime(monday) && !h.rests(sp, monday) {
			h.cool(sp, w)
		}
	}
	if w%2 == 0 && h.coolTime(monday) {
		h.salad(w)
	}
}

// warmFrom is the first week on or after a day that the plan can still act in
// and for which the calendar lists most warm crops.
func (h *habit) warmFrom(day cal.Day) cal.Day {
	for w := range h.in.Weeks {
		monday := h.m.p.Start + cal.Day(7*w)
		if monday+6 < day || monday.Year() != day.Year() {
			continue
		}
		fit, of := 0, 0
		for _, c := range offered(h.in) {
			if !c.Warm || len(foodsOf(h.in.Garden, c)) == 0 {
				continue
			}
			of++
			for sp := range h.m.p.Spaces {
				if h.suits(sp, c, w) {
					fit++
					break
				}
			}
		}
		if 2*fit >= of && of > 0 {
			return monday
		}
	}
	return day
}

// coolTime: from some weeks before the mean last frost until autumn.
func (h *habit) coolTime(monday cal.Day) bool {
	for k := range h.warmDay {
		last := h.frost[k]
		if monday >= last-7*coolBefore && monday.Year() == last.Year() {
			return true
		}
	}
	return false
}

// rests: one space in three takes no new sowing from September on.
func (h *habit) rests(space int, monday cal.Day) bool {
	return space%restShare == restShare-1 && monday.Month() >= 9
}

// empty says whether nothing stands in a space in a week.
func (h *habit) empty(space, w int) bool {
	for i := range h.m.p.Stays {
		if s := &h.m.p.Stays[i]; s.Space == space && w <= h.plan.Pull[i] {
			return false
		}
	}
	for _, pl := range h.plan.Plantings {
		if o := &h.m.p.Options[pl.Option]; o.Space == space && o.Week <= w && w <= o.End {
			return false
		}
	}
	return true
}

// warm sets all warm crops out: each space that has sun for one and is empty,
// or is emptied for it, takes one.
func (h *habit) warm(w int) {
	spaces := make([]int, len(h.m.p.Spaces))
	for i := range spaces {
		spaces[i] = i
	}
	sort.SliceStable(spaces, func(a, b int) bool { return h.m.p.Spaces[spaces[a]].AreaM2 > h.m.p.Spaces[spaces[b]].AreaM2 })
	for _, sp := range spaces {
		if !h.empty(sp, w) && !(h.clearsOut && h.canClear(sp, w)) {
			continue
		}
		pulls := slices.Clone(h.plan.Pull)
		if !h.empty(sp, w) {
			for i := range h.m.p.Stays {
				if s := &h.m.p.Stays[i]; s.Space == sp {
					h.plan.Pull[i] = min(h.plan.Pull[i], w-1)
				}
			}
		}
		if !h.take(sp, w, true) {
			h.plan.Pull = pulls
		}
	}
}

// canClear: nothing stands there that must be kept, and nothing of the plan.
func (h *habit) canClear(space, w int) bool {
	for i := range h.m.p.Stays {
		if s := &h.m.p.Stays[i]; s.Space == space && s.MustKeepTo > w-1 {
			return false
		}
	}
	for _, pl := range h.plan.Plantings {
		if o := &h.m.p.Options[pl.Option]; o.Space == space && o.Week <= w && w <= o.End {
			return false
		}
	}
	return true
}

func (h *habit) cool(space, w int) { h.take(space, w, false) }

// take gives a space its crop: foods in turn, for each the first crop that
// suits.
func (h *habit) take(space, w int, warm bool) bool {
	var foods []int
	for f := range h.m.foods[:len(h.m.foods)-1] { // not the flowers
		foods = append(foods, f)
	}
	turn := func(f int) float64 {
		want := 0.0
		for _, x := range h.m.p.Foods[f].Want {
			want = math.Max(want, x)
		}
		return want * h.m.p.Foods[f].Worth / (h.m.p.Spaces[space].AreaM2 + h.given[f])
	}
	sort.SliceStable(foods, func(a, b int) bool { return turn(foods[a]) > turn(foods[b]) })
	// An early return, or the same crop twice, only for want of another: of any
	// food where rotation comes first, else of the same.
	try := func(f, pass int) bool {
		for _, c := range h.crops(f) {
			if c.Warm != warm || !h.suits(space, c, w) || pass < 2 && h.soon(space, w, c) || pass%2 == 0 && h.grows(w, c) {
				continue
			}
			if h.put(space, w, c, 1<<30) > 0 {
				h.given[f] += h.m.p.Spaces[space].AreaM2
				return true
			}
		}
		return false
	}
	for k := range 4 * len(foods) {
		f, pass := k/4, k%4
		if h.rotates {
			f, pass = k%len(foods), k/len(foods)
		}
		if try(foods[f], pass) {
			return true
		}
	}
	return false
}

// book is what the book says a square metre yields, in meals.
func book(c *crop.Crop) float64 {
	return c.YieldKg.Value / math.Max(c.MealKg, 0.01) / (c.SpacingM.Value * c.SpacingM.Value)
}

// crops are those of a food, ready pots first, then seed at hand, then the
// rest, each by what the book says they yield.
func (h *habit) crops(food int) []*crop.Crop {
	var out []*crop.Crop
	for _, c := range offered(h.in) {
		if fs := foodsOf(h.in.Garden, c); len(fs) > 0 && fs[0] == food && !c.Perennial {
			out = append(out, c)
		}
	}
	rank := func(c *crop.Crop) int {
		if len(traysOf(h.stays, c)) > 0 {
			return 0
		}
		for _, s := range h.in.Garden.Seeds {
			if s.Crop == garden.CropID(c.ID) {
				return 1
			}
		}
		return 2
	}
	sort.SliceStable(out, func(a, b int) bool {
		if rank(out[a]) != rank(out[b]) {
			return rank(out[a]) < rank(out[b])
		}
		if book(out[a]) != book(out[b]) {
			return book(out[a]) > book(out[b])
		}
		return out[a].ID < out[b].ID
	})
	return out
}

// suits: the crop may stand there, its sun class is met at midsummer, the
// calendar has it for that week, and a cool crop has time before the ten-hour
// day. On ground meant for a warm crop a cool one must be done before it.
func (h *habit) suits(space int, c *crop.Crop, w int) bool {
	g, day := h.m.spaces[space], h.day(w)
	if !spaceFits(h.in.Garden, h.in.Garden.Spaces[g], c) || h.place.Lights[g].SunH[5] < c.SunMinH.Value {
		return false
	}
	if !inSeason(c, h.way(c), day, h.in.Garden.Place.LatDeg) {
		return false
	}
	least := sureCool
	if c.Warm {
		least = sureTender
	}
	if !h.calendarOnly && len(traysOf(h.stays, c)) > 0 {
		least = leastTray // pots that stand are set out sooner than thrown away
	}
	if h.grow(h.sheet, space, c, h.way(c), day).Success*20 < least*h.in.Futures {
		return false
	}
	if c.Warm || c.AutumnPlant {
		return true
	}
	days := c.DaysFromSow.Value
	if days == 0 || h.way(c) == crop.SetOut {
		days = c.DaysFromSet.Value
	}
	if warm := h.nextWarm(w); h.meant[space] && warm-w < 16 && h.m.p.Start+cal.Day(7*warm) < day+cal.Day(days)+14 {
		return false
	}
	for _, ten := range h.tenHour {
		if ten >= day {
			return float64(ten-day) > 0.75*days
		}
	}
	return false
}

func (h *habit) day(w int) cal.Day { return max(h.m.p.Start+cal.Day(7*w), h.in.Date) }

// way is how the habit starts a crop: warm crops and those never sown to place
// are set out, others sown.
func (h *habit) way(c *crop.Crop) crop.Way {
	if c.Warm && hasWay(c, crop.SetOut) || !hasWay(c, crop.Sow) {
		if hasWay(c, crop.SetOut) {
			return crop.SetOut
		}
	}
	if hasWay(c, crop.Sow) {
		return crop.Sow
	}
	return c.Ways[0]
}

// salad sows a strip, a fortnight's want, where ground is free.
func (h *habit) salad(w int) {
	food := slices.Index(h.m.foods, "salad")
	if food < 0 {
		return
	}
	day := h.day(w)
	list := slices.DeleteFunc(h.crops(food), func(c *crop.Crop) bool { return c.Warm })
	for turn := range list {
		c := list[(turn+h.salads)%len(list)]
		strip := int(math.Ceil(2 * once0(h.m.p.Foods[food].Want, w) * c.MealKg / math.Max(c.YieldKg.Value, 0.01)))
		for sp := range h.m.p.Spaces {
			if h.suits(sp, c, w) && !h.rests(sp, day) && h.put(sp, w, c, max(strip, c.BatchMin)) > 0 {
				h.salads++
				return
			}
		}
	}
}

func once0(row []float64, w int) float64 {
	if w < len(row) {
		return row[w]
	}
	return 0
}

// put starts up to most plants of a crop at packet spacing and returns how many
// there is room for. Pots come from trays that stand, else from the shelf.
func (h *habit) put(space, w int, c *crop.Crop, most int) int {
	m, g := h.m, h.m.spaces[space]
	day := max(m.p.Start+cal.Day(7*w), h.in.Date)
	way := h.way(c)
	class := h.place.Class[g]
	grown := func(way crop.Way) Entry {
		return Entry{Crop: c, Class: class, Way: way, Week: w, Day: day, Growth: h.grow(h.place, space, c, way, day)}
	}
	// Ground meant for a warm crop is cleared for it.
	stands := func(e Entry) season.Option {
		end := ends(e, m.p.Weeks)[0]
		if over := e.Growth.LastPick; !over.None() {
			end = max(min(end, weekIndex(e, over.Late)+1), w+1)
		}
		if warm := h.nextWarm(w); h.meant[space] && !c.Warm && !c.AutumnPlant && warm-w < 16 {
			end = min(end, warm-1)
		}
		return m.option(h.in, &e, end)
	}
	e := grown(way)
	if h.pastTheEnd(space, c, way, day) {
		return 0
	}
	o := stands(e)
	o.Space, o.ShelfFrom = space, noShelf
	if way == crop.SetOut {
		o.ShelfFrom = w - e.Growth.ShelfWeeks
		if tray := trayFor(h.stays, e); tray != "" {
			o.ShelfFrom, o.MaxTotal = noShelf, tray
			o.Bonus = potWeek * float64(e.Growth.ShelfWeeks)
		} else if o.ShelfFrom < 0 {
			if way = crop.Sow; !hasWay(c, way) {
				return 0
			}
			e = grown(way)
			o = stands(e)
			o.Space, o.ShelfFrom = space, noShelf
		}
	}
	o.ID = fmt.Sprintf("habit.%s.%s.%s.w%02d", m.p.Spaces[space].ID, c.ID, wayWord(way), w)
	full := fullFootprint(e.Growth)
	packet := m.p.Spaces[space].AreaM2 / (c.SpacingM.Value * c.SpacingM.Value)
	filled := *c
	filled.BatchMax = 1 << 20 // the whole space, whatever a sensible batch is
	o.Min, o.Max = 1, min(int(packet+1e-6), mostPlants(h.in.Garden.Spaces[g], &filled, full), most)
	if o.MaxTotal != "" {
		o.Max = min(o.Max, m.p.Totals[o.MaxTotal])
	}
	if o.Max < 1 {
		return 0
	}
	m.p.Options = append(m.p.Options, o)
	m.entry = append(m.entry, -1)
	at := len(m.p.Options) - 1
	for n := o.Max; n > 0; n = n * 3 / 4 {
		h.plan.Plantings = append(h.plan.Plantings, season.Planting{Option: at, Plants: n})
		if h.lawful() {
			return n
		}
		h.plan.Plantings = h.plan.Plantings[:len(h.plan.Plantings)-1]
	}
	m.p.Options, m.entry = m.p.Options[:at], m.entry[:at]
	return 0
}

// pastTheEnd: by the calendar it is first picked after the plan's last week, where
// nothing is counted. The plan does not sow that either.
func (h *habit) pastTheEnd(space int, c *crop.Crop, way crop.Way, day cal.Day) bool {
	first := h.grow(h.sheet, space, c, way, day).FirstPick
	return first.None() || first.Likely >= h.m.p.Start+cal.Day(7*h.m.p.Weeks)
}

// lawful: no fault that doing nothing has not.
func (h *habit) lawful() bool {
	return !slices.ContainsFunc(season.Evaluate(h.m.p, &h.plan).Faults, func(f string) bool { return !slices.Contains(h.nothing, f) && !isMustFault(f) })
}

func isMustFault(f string) bool { return len(f) >= 4 && f[:4] == "must" }

// meanLastFrost is the mean day of the year of the last spring frost in whole
// years of a record, days in skip left out, as a date of any year.
func meanLastFrost(rec *weather.Record, from, to cal.Day) func(year int) cal.Day {
	sum, n := 0, 0
	for _, y := range weather.FrostYears(rec.Start, rec.Days, 0, false) {
		if y.HasLast && (y.LastSpring < from || y.LastSpring >= to) {
			sum += y.LastSpring.YearDay()
			n++
		}
	}
	mean := 100
	if n > 0 {
		mean = sum / n
	}
	return func(year int) cal.Day { return cal.Of(year, 1, 1) + cal.Day(mean-1) }
}

// tenHours is the day of a year from which the day, sunrise to sunset as
// almanacs count them (the sun's upper edge, air's bending in: 0.833 degrees),
// is shorter than ten hours.
func tenHours(latDeg float64) func(year int) cal.Day {
	dayH := func(d int) float64 {
		decl := 0.409 * math.Sin(2*math.Pi/365*float64(d)-1.39) // [FAO56] eq. 24
		lat := latDeg * math.Pi / 180
		x := (math.Sin(-0.833*math.Pi/180) - math.Sin(lat)*math.Sin(decl)) / (math.Cos(lat) * math.Cos(decl))
		return 24 / math.Pi * math.Acos(math.Max(-1, math.Min(1, x)))
	}
	return func(year int) cal.Day {
		for d := 200; d < 360; d++ {
			if dayH(d) < 10 {
				return cal.Of(year, 1, 1) + cal.Day(d-1)
			}
		}
		return cal.Of(year, 12, 31)
	}
}
