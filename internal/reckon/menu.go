package reckon

import (
	"math"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/stand"
)

// Entry is one thing that could be started: a crop in a class of spaces, by a
// way, in a plan week, with what comes of it in every future.
type Entry struct {
	Crop   *crop.Crop
	Class  int // index of the space that stands for its class
	Way    crop.Way
	Week   int
	Day    cal.Day
	Growth stand.Growth

	// Later is what the same start a week later gives a plant, kg, mean over
	// the futures; -1 = not worked out.
	Later float64
	// Hopeless starts are kept to tell why pots at hand have no place; they are
	// never offered.
	Hopeless bool

	rows *rowsOnce // what its options take; nil = made for each
}

// Least successes of twenty for a start to be offered at all: it must at least be
// likely, as the plan's words have it, and a tender one, which waits for warmth
// and ends with it, a little more. From the sure counts on it is offered whatever
// else there is, below them only where no start of the same weeks is as sure and
// gives as much. The plan pays for each failure. Growers accept more loss with
// autumn and cool crops than with tender ones in spring (growth.md's finding on
// counts).
const (
	leastCool   = 12
	leastTender = 14
	sureCool    = 14
	sureTender  = 17
	leastTray   = 10 // of pots already raised, where nothing better offers
)

// nearWeeks is how far ahead every week is offered as a start; to farWeeks
// every second, beyond every fourth is near enough, since next week's plan
// looks again.
const (
	nearWeeks = 10
	farWeeks  = 34
)

// startWeeks returns the weeks offered as starts, counted from a Monday. Which
// of the far weeks are offered hangs on the calendar, not on that Monday: a
// start planned far ahead is offered again next week.
func startWeeks(monday cal.Day, weeks int) []int {
	first := int(monday) / 7
	var out []int
	for w := range max(weeks-2, 0) {
		n := first + w
		if w < nearWeeks || w < farWeeks && n%2 == 0 || n%4 == 0 {
			out = append(out, w)
		}
	}
	return out
}

// inSeason keeps autumn crops to the months in which growers start them:
// cloves go in from September to November; favas and onions that stand through
// the winter then or in spring. Common practice, no source; months as the
// north counts them.
func inSeason(c *crop.Crop, way crop.Way, day cal.Day, lat float64) bool {
	if !c.AutumnPlant {
		return true
	}
	m := int(day.Month())
	if lat < 0 {
		m = (m+5)%12 + 1
	}
	return m >= 9 && m <= 11 || way != crop.Plant && m >= 1 && m <= 4
}

// traysOf returns the pots of a crop that stand on a shelf.
func traysOf(stays []standing, c *crop.Crop) []standing {
	var out []standing
	for _, s := range stays {
		if s.tray && s.crop.ID == c.ID {
			out = append(out, s)
		}
	}
	return out
}

// Menu grows every crop in every class of spaces from every start week.
func Menu(in *Inputs, p *Place) []Entry {
	menu, _ := grownMenu(in, p, nil)
	return menu
}

// cell is one crop in one class of spaces. What was grown for it holds as long
// as the crop's figures are the same, and so its pointer, and no pots of it
// stand.
type cell struct {
	class int
	crop  *crop.Crop
}

// grownMenu is Menu that takes over what had been grown before for the same
// crops in the same place.
func grownMenu(in *Inputs, p *Place, had map[cell][]Entry) ([]Entry, map[cell][]Entry) {
	return menuOf(in, p, offered(in), nil, had)
}

// menuOf is the menu of some crops in some classes; nil = all classes.
func menuOf(in *Inputs, p *Place, crops []*crop.Crop, only []int, had map[cell][]Entry) ([]Entry, map[cell][]Entry) {
	trays := whatStands(in)
	var jobs []cell
	for i, sp := range in.Garden.Spaces {
		if !sp.Grows() || p.Class[i] != i || only != nil && !slices.Contains(only, i) {
			continue
		}
		for _, c := range crops {
			if classFits(in, p, i, c) {
				jobs = append(jobs, cell{i, c})
			}
		}
	}
	worlds := map[crop.ID][]stand.World{}
	for _, c := range crops {
		worlds[c.ID] = stand.Worlds(c, in.Futures, in.Seed)
	}
	results := make([][]Entry, len(jobs))
	each(len(jobs), in.Workers, func(k int) {
		j := jobs[k]
		pots := traysOf(trays, j.crop)
		if old, ok := had[j]; ok && len(pots) == 0 {
			results[k] = old
			return
		}
		results[k] = grown(in, p.Airs[j.class], p.Envs[j.class].Start, j.class, j.crop, worlds[j.crop.ID], pots)
	})
	var out []Entry
	cells := map[cell][]Entry{}
	for k, r := range results {
		out = append(out, r...)
		if len(traysOf(trays, jobs[k].crop)) == 0 {
			cells[jobs[k]] = r
		}
	}
	return out, cells
}

// grown runs one crop in one class of spaces from all start weeks.
func grown(in *Inputs, air *stand.Air, start cal.Day, class int, c *crop.Crop, worlds []stand.World, trays []standing) []Entry {
	lat := in.Garden.Place.LatDeg
	t := air.Table(c, worlds)
	least, sure := leastCool, sureCool
	if c.Warm {
		least, sure = leastTender, sureTender
	}
	least, sure = least*in.Futures/20, sure*in.Futures/20
	var out []Entry
	for _, w := range startWeeks(start, in.Weeks) {
		day := start + cal.Day(7*w)
		if day < in.Date {
			day = in.Date
		}
		for _, way := range c.Ways {
			if !inSeason(c, way, day, lat) {
				continue
			}
			e := Entry{Crop: c, Class: class, Way: way, Week: w, Day: day, Growth: t.Grow(way, day), Later: -1, rows: new(rowsOnce)}
			for i := range out {
				if x := &out[i]; x.Way == way && x.Week == w-1 {
					x.Later = entryKg(e)
				}
			}
			out = append(out, e)
		}
	}
	return worthOffering(surest(gaining(t, out, trays), sure, trays), max(least, 1), max(leastTray*in.Futures/20, 1), trays)
}

// Waits a start is held against: three weeks, as a window holds it against
// twenty days; in days of under ten hours any wait up to twelve weeks, until
// the light is back. A start that may well fail is held against as many weeks
// before it.
const (
	waitWeeks = 3
	darkWeeks = 12
)

// gaining drops the starts that could as well be made later: what is sown in
// December is picked no sooner than what is sown in February, and lies in the
// cold and wet meanwhile. Pots that stand ready are let be.
func gaining(t *stand.Table, all []Entry, trays []standing) []Entry {
	idle := make([]bool, len(all))
	for i, e := range all {
		if e.Way == crop.SetOut && len(trays) > 0 {
			continue
		}
		last := e.Week + waitWeeks
		if t.Dark(e.Day) {
			last = e.Week + darkWeeks
		}
		held := false
		for _, x := range all[i+1:] {
			if x.Way != e.Way || x.Week < e.Week+waitWeeks || held && x.Week > last {
				continue
			}
			held = true
			idle[i] = idle[i] || !t.Gains(e.Way, e.Day, e.Growth, x.Growth, int(x.Day-e.Day))
		}
	}
	out := all[:0]
	for i, e := range all {
		if !idle[i] {
			out = append(out, e)
		}
	}
	clear(all[len(out):])
	return out
}

// surest drops the starts that may well fail where another of the same weeks is
// better, and those so far ahead that the weeks about them are not looked at:
// next summer's tomato of April, which may well fail, would take the rotation of
// this summer's. Pots that stand ready are held against weeks that they reach.
func surest(all []Entry, sure int, trays []standing) []Entry {
	poorer := make([]bool, len(all))
	for i, e := range all {
		poorer[i] = e.Growth.Success < sure && (e.Week >= farWeeks || slices.ContainsFunc(all, func(x Entry) bool { return betterThan(x, e, trays) }))
	}
	out := all[:0]
	for i, e := range all {
		if !poorer[i] {
			out = append(out, e)
		}
	}
	clear(all[len(out):])
	return out
}

// betterThan reports whether a start of the same crop and class stands in for
// another: same way, within three weeks, as sure and giving as much, and surer or
// giving more.
func betterThan(x, e Entry, trays []standing) bool {
	if x.Way != e.Way || max(x.Week-e.Week, e.Week-x.Week) > waitWeeks {
		return false
	}
	surer, more := x.Growth.Success-e.Growth.Success, x.total()-e.total()
	if surer < 0 || more < 0 || surer == 0 && more == 0 {
		return false
	}
	return e.Way != crop.SetOut || plantsFor(x, e, trays)
}

// plantsFor reports whether one setting out has the plants of another: the same
// pots at hand, or where those do not reach, time to raise some.
func plantsFor(x, e Entry, trays []standing) bool {
	if pots := trayFor(trays, e); pots != "" {
		return trayFor(trays, x) == pots
	}
	return x.Week >= x.Growth.ShelfWeeks
}

// total is what a plant gives in all, kg, mean over the futures, weeks beyond the
// plan's included.
func (e *Entry) total() float64 {
	sum := 0.0
	for _, o := range e.Growth.Outcomes {
		sum += float64(o.Total)
	}
	return sum / float64(max(len(e.Growth.Outcomes), 1))
}

// worthOffering keeps what succeeds often enough. Where pots stand ready and
// none of their settings out reaches that, the best that there is stays: their
// cost is spent, and throwing them away helps nobody. Under the least for pots
// it is kept as hopeless.
func worthOffering(all []Entry, least, leastPots int, trays []standing) []Entry {
	best := -1
	reaches := func(e Entry) bool { return e.Way == crop.SetOut && trayFor(trays, e) != "" }
	for _, e := range all {
		if reaches(e) {
			best = max(best, e.Growth.Success)
		}
	}
	out := all[:0]
	for _, e := range all {
		last := best < least && reaches(e) && e.Growth.Success >= best-1
		e.Hopeless = last && e.Growth.Success < leastPots
		if e.Growth.Success >= least || last {
			out = append(out, e)
		}
	}
	clear(all[len(out):])
	return out
}

// known reports whether a household knows a crop: the book does not hold it
// back until asked for, or the garden file names it. A salad want is not a
// wish for five beds of sorrel.
func known(g *garden.Garden, c *crop.Crop) bool {
	id := garden.CropID(c.ID)
	if !c.Asked || isMust(g, id) {
		return true
	}
	for _, w := range g.Wants {
		if slices.Contains(w.Crops, id) {
			return true
		}
	}
	for _, s := range g.Seeds {
		if s.Crop == id {
			return true
		}
	}
	for _, sp := range g.Spaces {
		for _, s := range sp.Standing {
			if s.Crop == id {
				return true
			}
		}
	}
	return false
}

// offered returns the crops worth growing here: those the household knows
// that serve a want, a must or the bees, and are not refused everywhere.
func offered(in *Inputs) []*crop.Crop {
	var out []*crop.Crop
	for _, c := range in.Book.Crops {
		if never(in.Garden, garden.CropID(c.ID), "") || !known(in.Garden, c) {
			continue
		}
		if len(foodsOf(in.Garden, c)) > 0 || isMust(in.Garden, garden.CropID(c.ID)) || c.Harvest == crop.Bloom {
			out = append(out, asGrown(in, c))
		}
	}
	return out
}

func never(g *garden.Garden, id garden.CropID, space garden.SpaceID) bool {
	for _, n := range g.Nevers {
		if n.Crop == id && (n.Space == "" || n.Space == space) {
			return true
		}
	}
	return false
}

func isMust(g *garden.Garden, id garden.CropID) bool {
	for _, m := range g.Musts {
		if m.Crop == id {
			return true
		}
	}
	return false
}

// wantedFoods lists the foods wanted, each once, in the order of the file.
func wantedFoods(g *garden.Garden) []garden.FoodID {
	var out []garden.FoodID
	for _, w := range g.Wants {
		if !slices.Contains(out, w.Food) {
			out = append(out, w.Food)
		}
	}
	return out
}

// foodsOf returns the places, in wantedFoods, of the foods a crop serves: a
// want that names the crop first, then the crop's own foods in their order. A
// want that names its crops takes no others.
func foodsOf(g *garden.Garden, c *crop.Crop) []int {
	foods := wantedFoods(g)
	named := map[garden.FoodID]bool{} // wants with a list of their own
	var out []int
	for i, f := range foods {
		for _, w := range g.Wants {
			if w.Food != f || len(w.Crops) == 0 {
				continue
			}
			named[f] = true
			if slices.Contains(w.Crops, garden.CropID(c.ID)) && !slices.Contains(out, i) {
				out = append(out, i)
			}
		}
	}
	for _, own := range c.Foods {
		if i := slices.Index(foods, garden.FoodID(own)); i >= 0 && !named[foods[i]] {
			out = append(out, i)
		}
	}
	return out
}

// classFits reports whether any space of the class can hold the crop.
func classFits(in *Inputs, p *Place, class int, c *crop.Crop) bool {
	for i, sp := range in.Garden.Spaces {
		if p.Class[i] == class && spaceFits(in.Garden, sp, c) {
			return true
		}
	}
	return false
}

// tallM is the height from which a plant counts as tall, and shades.
const tallM = 1.1

// spaceFits reports whether a crop may stand in a space at all: depth, root
// room for one plant, something to climb, no sprawler over a railing, no
// closed net over what bees must set.
func spaceFits(g *garden.Garden, sp garden.Space, c *crop.Crop) bool {
	if !sp.Grows() || never(g, garden.CropID(c.ID), sp.ID) {
		return false
	}
	least := c.MinDepthM.Low
	if least == 0 {
		least = c.MinDepthM.Value
	}
	if sp.Depth.M < least-0.01 || c.VolumeL.Low > sp.VolumeL()*1.05 {
		return false
	}
	small := sp.Kind == garden.Railing || sp.Kind == garden.Hanging || sp.Kind == garden.Tier || sp.Kind == garden.PocketBag
	if small && (c.HeightM.Value > 0.7 || c.Habit == "vine" || c.Habit == "climbing") {
		return false
	}
	if c.HeightM.Value >= tallM && !sp.TallOK {
		return false
	}
	if c.Support == "needed" && c.Habit == "climbing" && supportM(sp) == 0 {
		return false
	}
	if c.BeeSet {
		for _, cv := range sp.Covers {
			if cv.Always && cv.Kind == "insect net" {
				return false
			}
		}
	}
	return true
}

func supportM(sp garden.Space) float64 {
	sum := 0.0
	for _, s := range sp.Supports {
		sum += s.Length.M
	}
	return sum
}

// mostPlants returns how many plants of a crop a space can hold at full size.
func mostPlants(sp garden.Space, c *crop.Crop, fullM2 float64) int {
	n := float64(c.BatchMax)
	if fullM2 > 0 {
		n = math.Min(n, sp.AreaM2()/fullM2+1e-6)
	}
	if v := c.VolumeL.Low; v > 0 {
		n = math.Min(n, sp.VolumeL()/v+1e-6)
	}
	if c.Support == "needed" && c.Habit == "climbing" && c.SpacingM.Value > 0 {
		n = math.Min(n, supportM(sp)/c.SpacingM.Value+1e-6)
	}
	if sp.Pockets > 0 {
		n = math.Min(n, float64(sp.Pockets))
	}
	return int(n)
}
