package stand

import (
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Kind is a kind of variety a grower can choose; "" is the middle one, which
// the book's figures stand for.
type Kind string

// Kinds of variety, each at an end of the book's own ranges.
const (
	Quick    Kind = "quick kinds"        // days to the first pick at the low end
	SlowBolt Kind = "kinds slow to bolt" // day length and cold that bolt it at the high end
	CutYoung Kind = "cut young"          // leaves sown thick and cut at youngShare of the printed days
)

// KindRange is a stretch of start days, both ends included, that work with one
// kind of variety and not with the middle one. One that passes the new year has
// To before From.
type KindRange struct {
	Kind     Kind
	Days     int // from start to first pick, as printed for the kind
	From, To cal.Day
}

// quick is the crop as its quickest varieties grow: the low end of the printed
// days; nil where winter, day length or the year
// sets the time, for what stands the winter and has time, and where no range is known.
func quick(c *crop.Crop) *crop.Crop {
	if c.Perennial || c.AutumnPlant || c.Winter || ripeBy(c) == byForm || ripeBy(c) == byWinter || ripeBy(c) == byTime {
		return nil
	}
	q := *c
	sow, set := atLow(&q.DaysFromSow), atLow(&q.DaysFromSet)
	if !sow && !set {
		return nil
	}
	return &q
}

// slowBolting is the crop as varieties slow to bolt grow: the high ends of the
// day length and of the cold that send it to seed; nil where no range is known.
func slowBolting(c *crop.Crop) *crop.Crop {
	if c.Perennial || c.AutumnPlant || needsCold(c) || ripeBy(c) != bySize {
		return nil
	}
	s := *c
	light, cold := atHigh(&s.BoltDayH), atHigh(&s.VernDays)
	if !light && !cold {
		return nil
	}
	return &s
}

// cutYoung is a leaf crop that is cut whole, sown thick and cut young; nil for
// others, and for those that take longer than baby leaf is waited for.
func cutYoung(c *crop.Crop) *crop.Crop {
	days := c.DaysFromSow.Value
	if c.Class != "leaf" || c.Perennial || days == 0 {
		return nil
	}
	if c.Harvest == crop.CutAgain && c.HarvestDays.Value > days || c.Harvest == crop.Once && days > youngDays {
		return nil
	}
	y := *c
	y.DaysFromSow.Value *= youngShare
	y.Winter = false // picked in its season, not kept through the winter
	return &y
}

const (
	youngDays  = 60  // printed days up to which a crop pulled whole is also sown for baby leaf: pak choi, tatsoi (common practice)
	youngShare = 0.6 // of the printed days to leaves of a hand's length: rocket in three to four weeks of six ([COOKHAM])
)

// atLow and atHigh move a figure to an end of its range and tell whether that
// changed it.
func atLow(f *crop.Figure) bool {
	if f.Value <= 0 || f.Low <= 0 || f.Low >= f.Value {
		return false
	}
	f.Value = f.Low
	return true
}

func atHigh(f *crop.Figure) bool {
	if f.Value <= 0 || f.High <= f.Value {
		return false
	}
	f.Value = f.High
	return true
}

// as is the table of another variety of its crop: the weather's rates are
// shared unless days bolt it at another length.
func (t *Table) as(c *crop.Crop) *Table {
	if c.BoltDayH != t.Crop.BoltDayH {
		return t.air.Table(c, t.worlds)
	}
	k := *t
	k.Crop, k.courses = c, nil
	for _, way := range c.Ways {
		k.courses = append(k.courses, newCourse(c, way, t.germ))
	}
	for _, co := range k.courses {
		k.measure(co)
	}
	return &k
}

// byKinds puts, for starts that do not work with the middle variety, the trial
// of a kind with which they do. Quick kinds are taken in seasons in which the
// middle one has hardly a best day: growers choose them where time is short.
func (t *Table) byKinds(trials []trial, way crop.Way, step int) {
	t.tryKind(SlowBolt, slowBolting(t.Crop), trials, way, step, func(tr *trial) bool { return tr.cause == Bolted })
	if way == crop.Sow {
		t.tryKind(CutYoung, cutYoung(t.Crop), trials, way, step, func(*trial) bool { return true })
	}
	middle := slices.Clone(trials)
	t.tryKind(Quick, quick(t.Crop), trials, way, step, func(*trial) bool { return true })
	works := make([]bool, len(trials))
	for i, tr := range trials {
		works[i] = tr.works
	}
	for _, s := range spans(works) {
		inSpan := func(do func(i int)) {
			for k := range width(s, len(trials)) {
				do((s[0] + k) % len(trials))
			}
		}
		best := 0
		inSpan(func(i int) { best += step * boolInt(trials[i].best) })
		if best > closeDays {
			inSpan(func(i int) { trials[i] = middle[i] })
		}
	}
}

// kindRanges reads off the stretches that want a kind of variety.
func (t *Table) kindRanges(works []bool, trials []trial, way crop.Way, step int) []KindRange {
	var out []KindRange
	half := cal.Day(step / 2)
	for _, k := range []struct {
		kind Kind
		c    *crop.Crop
	}{{SlowBolt, slowBolting(t.Crop)}, {CutYoung, cutYoung(t.Crop)}, {Quick, quick(t.Crop)}} {
		if k.c == nil {
			continue
		}
		on := make([]bool, len(trials))
		for i, tr := range trials {
			on[i] = works[i] && tr.kind == k.kind
		}
		tidy(on, 1)
		for _, s := range spans(on) {
			r := KindRange{Kind: k.kind, Days: int(usualDays(k.c, way).Value + 0.5), From: t.sample(s[0], step), To: t.sample(s[1], step)}
			if !all(on) {
				r.From, r.To = r.From-half, r.To+half
			}
			out = append(out, r)
		}
	}
	slices.SortStableFunc(out, func(a, b KindRange) int { return int(a.From - b.From) })
	return out
}

// tryKind tries c as a kind at the starts that want it and do not work yet.
func (t *Table) tryKind(kind Kind, c *crop.Crop, trials []trial, way crop.Way, step int, wants func(*trial) bool) {
	var at []int
	for i := range trials {
		if !trials[i].works && wants(&trials[i]) {
			at = append(at, i)
		}
	}
	if c == nil || len(at) == 0 {
		return
	}
	k := t.as(c)
	tried := k.trials(k.course(way), step)
	on := make([]bool, len(trials))
	for _, i := range at {
		on[i] = tried[i].works
	}
	for _, s := range spans(on) {
		if width(s, len(on)) == 1 { // one start alone is within an edge's noise
			continue
		}
		for n := range width(s, len(on)) {
			i := (s[0] + n) % len(on)
			was := trials[i]
			trials[i] = tried[i]
			trials[i].kind, trials[i].best = kind, false
			trials[i].does20 = min(was.does20, trials[i].of20) // of the middle one, as the best days are
		}
	}
}
