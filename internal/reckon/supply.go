package reckon

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/season"
	"bedweek/internal/stand"
)

// addFoods sets what is wanted, week by week. A food with several wants (more
// salad in summer) takes from each the months it names.
func (m *model) addFoods(in *Inputs) {
	for i, id := range wantedFoods(in.Garden) {
		f := season.Food{ID: string(id), Shelf: shelfWeeks(in, i), Want: make([]float64, m.p.Weeks)}
		for _, w := range in.Garden.Wants {
			if w.Food != id {
				continue
			}
			f.Worth = math.Max(f.Worth, w.Liking)
			for k := range f.Want {
				if inMonths(w.From, w.To, int((m.p.Start + cal.Day(7*k+3)).Month())) {
					f.Want[k] += w.Meals
				}
			}
		}
		if f.Worth == 0 {
			f.Worth = 1
		}
		for k := range f.Want { // a wish may ask for less than there was
			f.Want[k] = math.Max(f.Want[k], 0)
		}
		for k := in.Weeks; k < len(f.Want); k++ {
			f.Want[k] *= afterShare
		}
		f.Extra = f.Worth * extraShare
		m.p.Foods = append(m.p.Foods, f)
		m.foods = append(m.foods, string(id))
	}
	m.addBees(in)
}

// addBees makes flowers worth a little in the weeks bees fly: some plants in
// flower each week, of falling worth like any food. Counted in plants.
func (m *model) addBees(in *Inputs) {
	f := season.Food{ID: beesFood, Worth: beesWorth, Want: make([]float64, m.p.Weeks)}
	for k := range in.Weeks {
		month := int((m.p.Start + cal.Day(7*k+3)).Month())
		if in.Garden.Place.LatDeg < 0 {
			month = (month+5)%12 + 1
		}
		if inMonths(3, 10, month) {
			f.Want[k] = beesPlants
		}
	}
	m.bees = len(m.p.Foods)
	m.p.Foods = append(m.p.Foods, f)
	m.foods = append(m.foods, beesFood)
}

// inMonths reports whether a month lies in from..to, round the new year if
// from is later than to; 0 is all year.
func inMonths(from, to, month int) bool {
	if from == 0 || to == 0 {
		return true
	}
	if from <= to {
		return from <= month && month <= to
	}
	return month >= from || month <= to
}

// shelfWeeks is how long the food keeps: the middle shelf life of the crops
// here that are eaten as it, in whole weeks; 0 = eaten in the week it is picked.
func shelfWeeks(in *Inputs, food int) int {
	var days []float64
	for _, c := range offered(in) {
		if foods := foodsOf(in.Garden, c); len(foods) > 0 && foods[0] == food && c.ShelfDays.Known() {
			days = append(days, c.ShelfDays.Value)
		}
	}
	if len(days) == 0 {
		return 0
	}
	sort.Float64s(days)
	return int(math.Round((days[(len(days)-1)/2] + days[len(days)/2]) / 14))
}

// trayWeeks is the longest that pots at hand are taken to hold their places.
const trayWeeks = 6

// addShelf sets the places under lamps week by week, less what stands there.
func (m *model) addShelf(in *Inputs, stays []standing) {
	m.p.Shelf = make([]float64, m.p.Weeks)
	for k := range m.p.Shelf {
		m.p.Shelf[k] = in.Garden.Shelf.Places
	}
	for _, s := range stays {
		if !s.tray {
			continue
		}
		for k := 0; k < min(s.holds(in.Date), m.p.Weeks); k++ {
			m.p.Shelf[k] = math.Max(0, m.p.Shelf[k]-float64(s.count))
		}
	}
}

// holds is how many weeks from a date a tray keeps its places, until it is of an
// age to be set out. What is set out later asks for places from then on.
func (s standing) holds(date cal.Day) int {
	age := int(date-s.since.Likely) / 7
	return min(max(int(s.crop.NurseryWeeks.High)+1-age, 1), trayWeeks)
}

func (m *model) addMinutes(in *Inputs) {
	wish := minutesWished(in.Garden)
	if wish == 0 {
		return
	}
	m.p.Minutes = make([]float64, m.p.Weeks)
	for k := range m.p.Minutes {
		m.p.Minutes[k] = wish
	}
}

// sameSowing keeps the shorter editions of a sowing together within what the
// space holds. What spoils before it can be eaten is kept to that in the whole
// garden: four beds of radish on one day feed nobody longer.
func (m *model) sameSowing(o *season.Option, e Entry) {
	id, most := string(m.p.Spaces[o.Space].ID)+".", o.Max
	if n := m.eatable(o, e.Crop); n < math.MaxInt {
		id, most = "", max(n, o.Min)
		o.Max = min(o.Max, most)
	}
	o.MaxTotal = fmt.Sprintf("%s%s.%s.w%02d", id, e.Crop.ID, wayWord(e.Way), e.Week)
	m.p.Totals[o.MaxTotal] = max(m.p.Totals[o.MaxTotal], most)
}

// eatable is how many plants of a batch the household can eat before the crop
// spoils, where it keeps less long than its food does: the want of the weeks it
// is picked in and of those it keeps.
func (m *model) eatable(o *season.Option, c *crop.Crop) int {
	each := mealsOf(o)
	if o.Food < 0 || o.Food == m.bees || each <= 0 || !c.ShelfDays.Known() {
		return math.MaxInt
	}
	keeps := int(math.Round(c.ShelfDays.Value / 7))
	if keeps >= m.p.Foods[o.Food].Shelf {
		return math.MaxInt
	}
	return int(math.Ceil(wantedWhile(&m.p.Foods[o.Food], o, keeps) / each))
}

// atRisk sets what an early return and a failure cost of an option whose plants
// give so many meals each: shares of what would be eaten. So a plant counts for
// no more than is wanted while the batch is picked and keeps, and no more plants
// count than serve that.
func (m *model) atRisk(o *season.Option, meals, failures float64) {
	if o.Food < 0 || meals <= 0 {
		return
	}
	food := &m.p.Foods[o.Food]
	wanted := wantedWhile(food, o, food.Shelf)
	o.AtRisk = max(1, int(math.Ceil(wanted/meals)))
	worth := food.Worth * math.Min(meals, wanted)
	o.RotationCost, o.Risk = rotationCost*worth, riskCost*worth*failures
}

func atWeek(rows []float64, w int) float64 {
	if w < 0 || w >= len(rows) {
		return 0
	}
	return rows[w]
}

// addOptions makes the options of one menu entry: for each space of its class,
// to its natural end and, where the picking is long, cut short to free the
// ground.
func (m *model) addOptions(in *Inputs, p *Place, k int, stays []standing) {
	e := m.entries[k]
	if e.Hopeless {
		return
	}
	full := fullFootprint(e.Growth)
	from := raisings(in, e, stays)
	ends := ends(e, m.p.Weeks)
	for i, sp := range in.Garden.Spaces {
		if p.Class[i] != e.Class || !spaceFits(in.Garden, sp, e.Crop) {
			continue
		}
		most := mostPlants(sp, e.Crop, full)
		least := max(e.Crop.BatchMin, 1)
		if e.Crop.Block > 0 {
			least = e.Crop.Block
		} else if least > most {
			least = most
		}
		if most < least || most < 1 {
			continue
		}
		if isMust(in.Garden, garden.CropID(e.Crop.ID)) {
			least = 1
		}
		for _, r := range from {
			for v, end := range ends {
				o := m.option(in, &m.entries[k], end)
				o.Space, o.Min, o.Max = m.index[sp.ID], least, most
				o.ShelfFrom, o.MaxTotal = r.shelfFrom, r.tray
				o.Water = m.drought.drinks(e.Crop, sp, i, o.Week, o.Footprint)
				o.Cost += tallPrice(sp, p.Toll[i], m.p.Start, o.Week, o.TallFrom, o.Footprint)
				word := wayWord(e.Way)
				if r.tray != "" {
					o.Bonus, o.Fixed = potWeek*float64(e.Growth.ShelfWeeks), costBatch
					word = "pot"
				} else {
					m.sameSowing(&o, e)
				}
				o.ID = fmt.Sprintf("%s.%s.%s%d.w%02d", sp.ID, e.Crop.ID, word, v, e.Week)
				m.p.Options = append(m.p.Options, o)
				m.entry = append(m.entry, k)
			}
		}
	}
}

// raising is where the plants of a start come from: a tray at hand, or the shelf
// from a week on, or the seed itself.
type raising struct {
	tray      string
	shelfFrom int
}

// raisings lists what an entry may be started from: pots at hand first, though
// new ones could be raised in time. What would have had to be sown already comes
// from a tray or not at all.
func raisings(in *Inputs, e Entry, stays []standing) []raising {
	if e.Way != crop.SetOut {
		return []raising{{"", noShelf}}
	}
	var out []raising
	for _, s := range stays {
		if tray := trayFor([]standing{s}, e); tray != "" {
			from := noShelf
			if left := s.holds(in.Date); left < e.Week {
				from = left
			}
			out = append(out, raising{tray, from})
			break
		}
	}
	if from := e.Week - e.Growth.ShelfWeeks; from >= 0 {
		out = append(out, raising{"", from})
	}
	return out
}

const noShelf = -1 << 30

func wayWord(w crop.Way) string {
	switch w {
	case crop.SetOut:
		return "set"
	case crop.Plant:
		return "plant"
	}
	return "sow"
}

func fullFootprint(g stand.Growth) float64 {
	full := 0.0
	for _, f := range g.FootprintM2 {
		full = math.Max(full, float64(f))
	}
	return full
}

// ends returns the weeks by which the option gives its ground back: when three
// futures in four have finished, and for long pickings two earlier cuts. Herbs
// planted for years are not dug up again within one.
func ends(e Entry, weeks int) []int {
	g := e.Growth
	natural := weekIndex(e, g.EndOfUse.Late)
	first := weekIndex(e, g.FirstPick.Likely)
	if natural <= e.Week {
		natural = e.Week + 1
	}
	out := []int{min(natural, weeks-1)}
	if run := natural - first; run >= 8 && e.Crop.Harvest != crop.Once {
		shares := []float64{0.5}
		if run >= 18 {
			shares = []float64{0.66, 0.33}
		}
		for _, share := range shares {
			cut := first + int(float64(run)*share)
			if e.Crop.Perennial && e.Crop.Harvest == crop.CutAgain && cut < e.Week+52 {
				continue
			}
			if cut > e.Week && cut < weeks-1 && cut < out[len(out)-1] {
				out = append(out, cut)
			}
		}
	} else if e.Crop.Harvest == crop.Once && run >= 5 {
		if cut := first + 3; cut < min(natural, weeks-1) {
			out = append(out, cut)
		}
	}
	return out
}

func weekIndex(e Entry, d cal.Day) int {
	start := e.Day - cal.Day(7*e.Week)
	return int(math.Floor(float64(d-start.Monday()) / 7))
}

// option fills what does not depend on the space. Its rows are shared with
// other options: nobody may write to them.
func (m *model) option(in *Inputs, e *Entry, end int) season.Option {
	c, g := e.Crop, e.Growth
	o := season.Option{
		Crop: string(c.ID), Family: m.family[c.Family], Interval: int(c.IntervalY.Value * 52),
		Food: -1, Week: e.Week, End: end, ShelfPlaces: 1,
		VolumeL: c.VolumeL.Low, Fixed: costBatch, Cost: costPlant, BatchMinutes: c.MinutesStart,
	}
	if e.Way == crop.SetOut {
		o.Cost += costSeedCell
	}
	if toBuy(in, c.ID) {
		o.Fixed += costPacket
	}
	if c.Support == "needed" && c.Habit == "climbing" {
		o.SupportM = c.SpacingM.Value
	}
	if foods := foodsOf(in.Garden, c); len(foods) > 0 {
		o.Food = foods[0]
	}
	if c.Harvest == crop.Bloom {
		o.Food = m.bees
	}
	r := e.rowsTo(rowsKey{end, m.p.Start, o.Food >= 0})
	o.Footprint, o.Minutes, o.TallFrom = r.footprint, r.minutes, r.tallFrom
	o.OK, o.Meals, o.MealsFrom = r.ok, r.meals, r.mealsFrom
	nf := float64(max(len(g.Outcomes), 1))
	m.atRisk(&o, r.sum/nf, 1-float64(g.Success)/nf)
	return o
}

// anyAt reports whether any row gives something at a place.
func anyAt(meals [][]float32, k int) bool {
	for _, row := range meals {
		if k >= 0 && k < len(row) && row[k] > 0 {
			return true
		}
	}
	return false
}

// inBloom reports whether a plant flowers in the week of a Monday.
func inBloom(o stand.Outcome, monday cal.Day) bool {
	return o.First != 0 && o.First <= monday+6 && o.Last >= monday
}

// Pots may be set out a little young, or much older than they should be when
// they are potted on meanwhile. Common practice, no source.
const (
	potsYoung = 10 // days
	potsOld   = 70
)

// trayFor names the tray on the shelf that could be set out as this entry, or
// "": same crop, neither too young nor too old by then.
func trayFor(stays []standing, e Entry) string {
	for _, s := range stays {
		if s.tray && s.crop.ID == e.Crop.ID {
			need := e.Growth.Sown
			if d := int(s.since.Likely - need); d <= potsYoung && d >= -potsOld {
				return "tray." + s.id
			}
		}
	}
	return ""
}
