package stand

import (
	"math"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Window is when one crop can be started one way in a place: days that work
// and, within them, the best days. Ranges that pass the new year have To
// before From. Years are those of the futures and mean nothing.
type Window struct {
	Crop    crop.ID
	Way     crop.Way
	AllYear bool        // works whenever it is started
	Quick   int         // days of the book's quickest varieties, where the middle ones hardly have time; 0 = they have
	Works   []Range     // with the middle variety, or with the kinds named in Kinds
	Kinds   []KindRange // stretches of Works, by start of the year tried
	Best    []Range     // with the middle variety
	Picks   []Pick      // first picks for the early, middle and late day of each range that works
	Tries   []Try       // every start day that was tried, through a year from the env's start
}

// Try is one start day of the year in all futures, as the window counts it.
type Try struct {
	Day          cal.Day
	Of20, Best20 int        // of twenty: futures in which it works, in which it does its best
	Wait20       int        // of twenty: futures in which soil or nights are still too cold on the day
	Works, Best  bool       // the day lies in a range of the window
	Limit        string     // why it does not, in the gardener's words; "" where it works
	Kind         Kind       // with which alone it works, and of which counts and picks are told; "" = the middle one
	First        cal.Window // first pick, where there is one
}

// Range is a run of start days, both ends included, with what ends it.
type Range struct {
	From, To               cal.Day
	LimitFrom, LimitTo     string // why not sooner, why not later; "" when all year
	SuccessFrom, SuccessTo int    // of twenty years, at the ends
	WaitFrom, WaitTo       int    // of twenty years: soil or nights are still too cold there, and one waits
}

// Pick is when a start is first picked.
type Pick struct {
	Start cal.Day
	First cal.Window
}

// Limits at the edges of a window, in the gardener's words.
const (
	SoilCold   = "soil too cold"
	NightCold  = "night too cold"
	Heat       = "heat"
	ShortDay   = "short days"
	NoChill    = "chill"
	LateFlower = "flowers too late"
	NotRipe    = "not ripe before frost"
	Bolts      = "bolts"
	NoGain     = "waiting costs nothing"
	FewDays    = "a few days only"
	Less       = "smaller or later"
)

const (
	worksOf20  = 14 // of twenty (growth.md, "Counts")
	tenderOf20 = 17 // warm crops: growers avoid one loss in seven
	tenderDays = 45 // after these, slowness, cold and frost are the year's end
	bestOf20   = 17
	fitOf20    = 14   // years of twenty in which soil and nights let a careful grower start on the day
	bestShare  = 0.60 // of the smaller of the book's and the place's yield
	bestDue    = 1.2
	gainStep   = 20 // a start is not among the best when waiting this many days
	gainLeast  = 8  // delays the pick by less than this, and does not work when by less than gainDelay of it
	gainYield  = 0.97
	cloveSoilC = 16.0 // bulbs and beans for the winter wait for soil this cool (common practice)
	rootSoilC  = 6.0  // and do best while it still lets them root
	closeDays  = 10   // gaps no longer than this are closed, ranges shorter than this dropped beside longer ones
	warmSpellC = 27.0 // a fortnight's mean of highest temperatures that stunts cool crops (common practice)
	windowWait = 3    // days a start is put off in a cold spell: the day itself is asked for
)

// trial is one start day tried in all futures.
type trial struct {
	of20, does20 int // of twenty years, those included in which one waits for warmer soil or nights
	fit20        int // of twenty years: soil and nights allow it
	ok20, best20 int // of twenty years in which they do
	stood20      int // of those: good, or only started too late for a whole crop
	first        cal.Window
	kg           float64
	soil         float64 // mean seed-zone temperature on the day, °C
	cause        Cause
	warmSoil     bool // failed to come up in heat, not in cold
	hot          bool // fruit failed in heat
	swelter      bool // too slow or too small in heat, not in the dark of the year
	works, best  bool
	kind         Kind // of variety, where the middle one does not work
	gain         bool // waiting costs enough to work
	gains        bool // and to be among the best
}

// Windows tries a start every step days through a year and reads off the days
// that work, by the definition in docs/growth.md. env should be a plain open
// bed with 50 futures or more; counts are told out of twenty. They count the
// weather alone: the crop is held to the book's middle figures.
func Windows(c *crop.Crop, env *Env, step int) []Window {
	return NewAir(env).Windows(c, step)
}

// Windows is Windows for a space whose air is shared with other crops.
func (a *Air) Windows(c *crop.Crop, step int) []Window {
	t := a.Table(c, nil)
	var out []Window
	for _, way := range c.Ways {
		out = append(out, t.Window(way, step))
	}
	return out
}

// Window is the window of one way of starting.
func (t *Table) Window(way crop.Way, step int) Window {
	step = max(1, step)
	w := Window{Crop: t.Crop.ID, Way: way}
	co := t.course(way)
	if co == nil {
		return w
	}
	trials := t.trials(co, step)
	t.byKinds(trials, way, step)
	works, best := make([]bool, len(trials)), make([]bool, len(trials))
	for i, tr := range trials {
		works[i], best[i] = tr.works, tr.best
	}
	tidy(works, closeDays/step)
	tidy(best, closeDays/step)
	for i := range best {
		best[i] = best[i] && works[i]
	}
	w.AllYear = all(works)
	w.Works = t.ranges(works, trials, step, false)
	w.Kinds = t.kindRanges(works, trials, way, step)
	w.Best = t.ranges(best, trials, step, true)
	w.Picks = t.picks(works, trials, step)
	for i := range trials {
		tr := &trials[i]
		try := Try{Day: t.sample(i, step), Of20: tr.of20, Best20: tr.does20, Wait20: 20 - tr.fit20, Works: works[i], Best: best[i], First: tr.first, Kind: tr.kind}
		switch {
		case works[i]:
		case tr.works:
			try.Limit = FewDays // sound, but too short a spell beside the others
		default:
			try.Limit = t.limitWord(tr, false)
		}
		w.Tries = append(w.Tries, try)
	}
	if len(w.Best) == 0 && slices.ContainsFunc(w.Tries, func(x Try) bool { return x.Limit == NotRipe }) {
		w.Quick = quickDays(t.Crop, way)
	}
	return w
}

// quickDays is the lower end of a crop's printed days; 0 where it has none
// under the middle.
func quickDays(c *crop.Crop, way crop.Way) int {
	days := usualDays(c, way)
	if days.Low <= 0 || days.Low >= days.Value {
		return 0
	}
	return int(days.Low + 0.5)
}

// trials tries the year's starts. The last gainStep days are tried beyond the
// year so that every start can be compared with a later one.
func (t *Table) trials(co *course, step int) []trial {
	n := 365 / step
	ahead := (gainStep + step - 1) / step
	first := t.air.at(t.air.env.Start)
	all := make([]trial, n+ahead)
	scratch := tally{flow: make([]float32, t.air.n), wait: windowWait}
	for i := range all {
		all[i] = t.try(co, first+i*step, &scratch)
	}
	for i := range n {
		a := &all[i]
		warmSoil := (t.Crop.AutumnPlant && t.Crop.Class != "head" || t.Crop.Dormant) && a.soil > cloveSoilC // their seed or crown waits for cool ground
		if warmSoil || co.lasting || t.Crop.AutumnPlant && (co.way == crop.Plant || t.shortening(i*step)) {
			a.gain, a.gains = !warmSoil, !warmSoil
			if t.Crop.AutumnPlant {
				a.best20 *= boolInt(a.soil >= rootSoilC)
				a.does20 *= boolInt(a.soil >= rootSoilC)
			}
			a.works = t.enough(a) && a.gain
			a.best = a.works && a.best20 >= bestOf20
			continue
		}
		delay := t.waitCosts(co, all, i, ahead, step)
		a.gain, a.gains = delay >= t.leastGain(t.sample(i, step)), delay >= gainLeast
		a.works = t.enough(a) && a.gain
		a.best = a.works && a.best20 >= bestOf20 && a.gains
	}
	return all[:n]
}

// waitCosts is how many days later a start is picked that is made gainStep
// days later; gainStep where waiting shows in the yield, or nothing is picked.
func (t *Table) waitCosts(co *course, all []trial, i, ahead, step int) float64 {
	a, b := &all[i], &all[i+ahead]
	if a.first.None() || b.first.None() || b.kg < gainYield*a.kg && t.yieldTells(co, a.first.Likely) {
		return gainStep
	}
	return pickLater(all, i, i+ahead) - float64(ahead*step-gainStep)
}

// leastGain is the delay that waiting must cost for a start to work: as the
// plan asks of its starts (Gains).
func (t *Table) leastGain(d cal.Day) float64 {
	if t.Dark(d) {
		return gainLeast
	}
	return gainDelay * gainStep
}

// enough reports a start that works often enough: warm crops are held to the
// stricter count. Those picked for weeks are held to it for all losses but the
// year's end, since growers plant them late for a smaller crop. Years in which
// soil or nights bid one wait are no losses: nothing was sown.
func (t *Table) enough(a *trial) bool {
	switch {
	case a.fit20 < fitOf20:
		return false
	case !t.Crop.Warm:
		return a.ok20 >= worksOf20
	case t.Crop.Harvest == crop.Once:
		return a.ok20 >= tenderOf20
	}
	return a.ok20 >= worksOf20 && a.stood20 >= tenderOf20
}

// lateness reports causes that after the first weeks mean a start too late in
// the year.
func lateness(c Cause) bool {
	return c == TooSlow || c == Chilled || c == Frosted || c == Unhardened
}

// shortening reports a start day after midsummer and before midwinter.
func (t *Table) shortening(d int) bool {
	i, h := t.air.at(t.air.env.Start)+d, t.air.dayH
	return i > 0 && i < len(h) && h[i] < h[i-1]
}

// yieldTells reports starts whose date of picking is set by winter and not by
// the start, so that starting sooner shows in the yield alone.
func (t *Table) yieldTells(co *course, first cal.Day) bool {
	if t.Crop.AutumnPlant || co.ripe == byWinter || co.ripe == byForm {
		return true
	}
	i := t.air.at(first)
	return i > 0 && i < t.air.n && t.air.dayH[i] < min(longEnoughH, t.air.dayH[i-1])
}

func (t *Table) try(co *course, i int, scratch *tally) trial {
	var tr trial
	var first []cal.Day
	a := t.air
	ok, best, hot, warm, lost, swelter, refused := 0, 0, 0, 0, 0, 0, 0
	counts, kg := [len(causes)]int{}, 0.0
	due := int(bestDue / dueFactor * float64(co.limit))
	for f := range a.k {
		p := t.run(co, f, i, false, scratch, nil)
		kg += float64(p.total)
		if i >= 0 && i < a.n {
			tr.soil += float64(a.soil[f*a.n+i]) / float64(a.k)
		}
		if p.cause == Young && p.lasts() {
			ok, best = ok+1, best+1
			continue
		}
		if !p.ok {
			counts[causeIndex(p.cause)]++
			switch {
			case p.up < 0 && (p.cause == ColdSoil || p.cause == Chilled):
				refused++
			case p.end-i <= tenderDays || !lateness(p.cause):
				lost++
			}
			if p.cause == NoSet && p.end >= 0 && a.warm14[f*a.n+min(p.end, a.n-1)] > t.hotSet() {
				hot++
			}
			if (p.cause == TooSmall || p.cause == TooSlow) && !t.Crop.AutumnPlant && p.end >= 0 && a.warm14[f*a.n+min(p.end, a.n-1)] > warmSpellC {
				swelter++
			}
			if p.cause == NotUp && i >= 0 && i < a.n && a.soil[f*a.n+i] > 18 {
				warm++
			}
			continue
		}
		ok++
		first = append(first, p.date(p.first))
		from := p.start
		if co.way == crop.Sow {
			from = max(from, p.up-co.upDays)
		}
		if p.first-from <= due && p.total >= bestShare/floorShare*co.floorKg*min(1, float32(t.world(f).Yield)) {
			best++
		}
	}
	fit := max(1, a.k-refused)
	tr.kg = kg / float64(fit)
	tr.of20, tr.does20, tr.fit20 = of20(ok, a.k), of20(best, a.k), of20(a.k-refused, a.k)
	tr.ok20, tr.best20, tr.stood20 = of20(ok, fit), of20(best, fit), of20(fit-lost, fit)
	tr.first = window(first)
	most := 0
	for j, n := range counts {
		if n > most {
			most, tr.cause = n, causes[j]
		}
	}
	tr.hot = hot*2 > counts[causeIndex(NoSet)]
	tr.swelter = swelter*2 > counts[causeIndex(TooSmall)]+counts[causeIndex(TooSlow)]
	tr.warmSoil = warm*2 > counts[causeIndex(NotUp)]
	return tr
}

// lasts reports a young perennial that came through its first year.
func (p *plant) lasts() bool { return p.end-p.start >= 365 || p.end >= len(p.day)-1 }

// hotSet is the fortnight's mean of highest temperatures above which missing
// fruit is laid to heat.
func (t *Table) hotSet() float32 {
	if t.shy {
		return t.shyC
	}
	return 24
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

func of20(n, of int) int { return int(math.Floor(20*float64(n)/float64(of) + 0.5)) }

func causeIndex(c Cause) int {
	for i, x := range causes {
		if x == c {
			return i
		}
	}
	return len(causes) - 1
}

// pickLater is how many days later a start j is picked than a start i, each
// smoothed with its neighbours.
func pickLater(all []trial, i, j int) float64 {
	mean := func(i int) float64 {
		sum, n := 0.0, 0.0
		for k := max(0, i-1); k <= min(len(all)-1, i+1); k++ {
			if !all[k].first.None() {
				sum += float64(all[k].first.Likely)
				n++
			}
		}
		return sum / n
	}
	return mean(j) - mean(i)
}

// ranges reads off the runs that are on. An edge lies half-way between the
// days tried on either side of it.
func (t *Table) ranges(on []bool, trials []trial, step int, best bool) []Range {
	n := len(on)
	var out []Range
	half := cal.Day(step / 2)
	for _, s := range spans(on) {
		r := Range{From: t.sample(s[0], step), To: t.sample(s[1], step),
			SuccessFrom: trials[s[0]].of20, SuccessTo: trials[s[1]].of20,
			WaitFrom: 20 - trials[s[0]].fit20, WaitTo: 20 - trials[s[1]].fit20}
		if !all(on) {
			r.From, r.To = r.From-half, r.To+half
			r.LimitFrom = t.limitWord(&trials[(s[0]+n-1)%n], best)
			r.LimitTo = t.limitWord(&trials[(s[1]+1)%n], best)
		}
		out = append(out, r)
	}
	return out
}

func (t *Table) sample(i, step int) cal.Day { return t.air.env.Start + cal.Day(i*step) }

func (t *Table) picks(on []bool, trials []trial, step int) []Pick {
	n := len(on)
	var out []Pick
	for _, s := range spans(on) {
		last := s[1]
		if last < s[0] {
			last += n
		}
		for _, i := range []int{s[0], (s[0] + last) / 2, last} {
			out = append(out, Pick{Start: t.sample(i%n, step), First: trials[i%n].first})
		}
	}
	return out
}

// Open reports whether d, in any year, lies in a range that works.
func (w Window) Open(d cal.Day) bool {
	if w.AllYear {
		return true
	}
	for _, r := range w.Works {
		if within(d, r.From, r.To) {
			return true
		}
	}
	return false
}

// KindOn is the kind of variety with which alone d, in any year, works; "" where
// the middle one does, or nothing.
func (w Window) KindOn(d cal.Day) Kind {
	for _, k := range w.Kinds {
		if within(d, k.From, k.To) {
			return k.Kind
		}
	}
	return ""
}

// within reports whether d's day of the year lies from a to b, round the new year.
func within(d, a, b cal.Day) bool {
	x, from, to := d.YearDay(), a.YearDay(), b.YearDay()
	if from <= to {
		return x >= from && x <= to
	}
	return x >= from || x <= to
}
