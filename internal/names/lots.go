package names

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/chance"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// Lot is one packet, jar or envelope of seed as it is today.
type Lot struct {
	ID       string
	Tag      Tag
	CropID   string
	Crop     string // shown name
	Variety  string
	OneOf    []string
	Year     int
	Source   string
	From     string // planting it was saved from
	FromFile bool
	Pieces   bool // tubers, cloves, sets: no seed to test
	Left     int  // -1 = not counted
	Grams    float64
	Gone     cal.Day
	Tests    []ledger.TestNote
	Rate     Rate
	Life     Life
	Age      int // years since the packet's; -1 = not known
}

// Rate is the share of seed that comes up, as far as it is known.
type Rate struct {
	Tested    bool
	Up, Sown  int
	On        cal.Day
	Low, High float64 // 90 % of the time within, when tested; else what it may be
	Known     bool    // something can be said at all
	Stale     bool    // tested, but more than 13 months ago
	Words     string
	Basis     string
}

// staleAfter is how long a test is believed: a season and a winter. Ours.
const staleAfter = 400

// untestedHigh is the most that is believed of seed nobody tested; untestedLow
// the least of young seed no standard names. Common practice, no source.
const (
	untestedLow  = 0.5
	untestedHigh = 0.95
)

// tin lists the lots: those of the garden file and those of the entries, those
// with something to decide first.
func (d *Desk) tin() []Lot {
	said := map[string]ledger.LotState{}
	for _, l := range d.State.Lots {
		said[l.ID] = l
	}
	var out []Lot
	inFile := map[string]bool{}
	for _, s := range d.Garden.Seeds {
		l := said[s.ID]
		l.ID, l.FromFile, l.Crop, l.Variety, l.Year = s.ID, true, string(s.Crop), s.Variety, s.Year
		inFile[s.ID] = true
		out = append(out, d.lot(l, s.Count))
	}
	for _, l := range d.State.Lots {
		if !inFile[l.ID] && l.Crop != "" {
			out = append(out, d.lot(l, l.Count))
		}
	}
	sort.SliceStable(out, func(a, b int) bool {
		if x, y := out[a].rank(), out[b].rank(); x != y {
			return x < y
		}
		if out[a].Crop != out[b].Crop {
			return out[a].Crop < out[b].Crop
		}
		return out[a].ID < out[b].ID
	})
	return out
}

// rank puts what asks for a test first, what is gone last.
func (l Lot) rank() int {
	switch {
	case l.Gone != 0:
		return 3
	case l.Doubt() != "":
		return 0
	}
	return 1
}

func (d *Desk) lot(s ledger.LotState, base int) Lot {
	l := Lot{ID: s.ID, Tag: d.lotTag(s.ID), CropID: s.Crop, Crop: d.cropName(s.Crop), Variety: s.Variety, OneOf: s.OneOf, Year: s.Year,
		Source: s.Source, From: s.From, FromFile: s.FromFile, Left: -1, Gone: s.Gone, Tests: s.Tests, Life: d.life(s.Crop), Age: -1}
	if n, ok := s.Counted(base); ok {
		l.Left = n
	}
	if g, ok := s.Weighed(s.Lot.Grams); ok {
		l.Grams = g
	}
	if l.Year > 0 {
		l.Age = max(0, d.Date.Year()-l.Year)
	}
	if c, ok := d.Book.Crop(crop.ID(s.Crop)); ok {
		l.Pieces = len(c.Ways) > 0 && c.Ways[0] == crop.Plant
	}
	l.Rate = d.rate(l)
	return l
}

// life is how long seed of a crop keeps; for a crop no list has, that of
// another crop of the same plant (cherry tomatoes are tomatoes).
func (d *Desk) life(id string) Life {
	if l, ok := d.facts.life[id]; ok {
		return l
	}
	c, ok := d.Book.Crop(crop.ID(id))
	if !ok {
		return Life{}
	}
	for _, o := range d.Book.Crops {
		if l, ok := d.facts.life[string(o.ID)]; ok && o.Latin == c.Latin {
			return l
		}
	}
	return Life{}
}

// rate says what share comes up: by a test when there is one, else as a range.
func (d *Desk) rate(l Lot) Rate {
	var r Rate
	for _, t := range l.Tests {
		if !r.Tested || t.On >= r.On {
			r.Tested, r.Up, r.Sown, r.On = true, t.Up, t.Sown, t.On
		}
	}
	switch {
	case l.Pieces:
		r.Words = "Planted as pieces, not as seed: look whether they are firm."
		r.Basis = "common practice"
		return r
	case r.Tested:
		r.Low, r.High = chance.ClopperPearson(r.Up, r.Sown, 0.9)
		r.Known, r.Stale = true, d.Date-r.On > staleAfter
		r.Words = fmt.Sprintf("Tested %s: %d of %d came up. The whole lot may give %s.", r.On.Long(), r.Up, r.Sown, percents(r.Low, r.High))
		r.Basis = "exact binomial interval, 90 %"
		if r.Stale {
			r.Words += " That is long ago: it can only have fallen since."
		}
		return r
	}
	least, listed := d.facts.least[l.CropID]
	life := l.Life
	switch {
	case life.High == 0:
		r.Words = "No list we have says how long this seed keeps."
	case l.Age < 0:
		r.Words = fmt.Sprintf("Its year is not known. Lists say it keeps %s.", years(life))
	case float64(l.Age) > life.High:
		r.Words = fmt.Sprintf("%s old. Lists say it keeps %s. It may be dead.", yearsOld(l.Age), years(life))
		r.High, r.Known = untestedHigh, true
	case float64(l.Age) > life.Low:
		r.Words = fmt.Sprintf("%s old. Lists disagree: it keeps %s.", yearsOld(l.Age), years(life))
		r.High, r.Known = untestedHigh, true
	case listed:
		r.Words = fmt.Sprintf("%s old, and lists say it keeps %s. Seed sold in the United States must come up at %s or more, or the label says so.", yearsOld(l.Age), years(life), percent(least))
		r.Low, r.High, r.Known = least, untestedHigh, true
	default:
		r.Words = fmt.Sprintf("%s old, and lists say it keeps %s. Usually half to nearly all of such seed comes up.", yearsOld(l.Age), years(life))
		r.Low, r.High, r.Known = untestedLow, untestedHigh, true
	}
	if life.High > 0 {
		r.Basis = d.sourceWords(life.Sources)
	}
	if r.Low > 0 && !listed {
		r.Basis += "; the share: common practice"
	} else if r.Low > 0 {
		r.Basis += "; " + d.facts.sources["CFR-201"]
	}
	return r
}

func (d *Desk) sourceWords(keys []string) string {
	var out []string
	for _, k := range keys {
		out = append(out, d.facts.sources[k])
	}
	return strings.Join(out, "; ")
}

// Doubt says why a lot should be tested before it is relied on, "" when it
// need not be.
func (l Lot) Doubt() string {
	switch {
	case l.Gone != 0 || l.Pieces:
		return ""
	case l.Rate.Tested && !l.Rate.Stale && l.Rate.High < 0.5:
		return "Few come up: sow many, or get new."
	case l.Rate.Tested && !l.Rate.Stale:
		return ""
	case l.Rate.Stale:
		return "Tested long ago: test again."
	case l.Life.High > 0 && l.Age < 0:
		return "Year not known: test before you rely on it."
	case l.Life.High > 0 && float64(l.Age) > l.Life.High:
		return "Older than it keeps: test before you rely on it."
	case l.Life.High > 0 && float64(l.Age) > l.Life.Low:
		return "Some lists call it too old: test it."
	}
	return ""
}

// Need is how many seeds to sow for so many plants.
type Need struct {
	Plants     int
	Least      int // 0 = not known
	Most       int
	Plain      int // wanted over the share that came up, rounded up: an even chance only
	Enough     bool
	Words      string
	Unknowable bool
}

// needMost ends the search: nobody sows more for a household's row.
const needMost = 3000

// needSure is how sure the number is.
const needSure = 0.9

// Need answers "how many must I sow for n plants, nine times in ten".
func (l Lot) Need(n int) Need {
	out := Need{Plants: n, Enough: true}
	r := l.Rate
	switch {
	case l.Pieces:
		out.Least, out.Most = n, n
		out.Words = fmt.Sprintf("%d: one piece a plant, and a spare or two.", n)
	case r.Tested && !r.Stale:
		k, ok := chance.SeedsNeededUnsure(r.Up, r.Sown, n, needSure, needMost)
		if !ok {
			out.Unknowable = true
			out.Words = fmt.Sprintf("After a test with %d of %d up, not even %s seeds make %d plants likely. Get new seed.", r.Up, r.Sown, thousands(needMost), n)
			return out
		}
		out.Least, out.Most = k, k
		out.Plain, _ = chance.NaiveSeeds(float64(r.Up)/float64(r.Sown), n)
		out.Words = fmt.Sprintf("Sow %d for %s, to have them 9 times in 10. It counts that %d of %d in a test leaves the true share unsure.", k, plantsOf(n), r.Up, r.Sown)
		if out.Plain > 0 && out.Plain < k {
			out.Words += fmt.Sprintf(" Just %d would do it about every other time.", out.Plain)
		}
	case r.Known && r.Low > 0 && !r.Stale:
		out.Least, _ = chance.SeedsNeeded(r.High, n, needSure)
		out.Most, _ = chance.SeedsNeeded(r.Low, n, needSure)
		out.Words = fmt.Sprintf("Sow %d to %d for %s, to have them 9 times in 10: %d if %s come up, %d if only %s do. A test narrows it.",
			out.Least, out.Most, plantsOf(n), out.Least, percent(r.High), out.Most, percent(r.Low))
	default:
		out.Unknowable = true
		out.Least, _ = chance.SeedsNeeded(untestedHigh, n, needSure)
		out.Words = fmt.Sprintf("Not known. Even if %s came up it takes %d seeds for %s. Test 20 seeds first: that would tell us.", percent(untestedHigh), out.Least, plantsOf(n))
		out.Most = 0
	}
	if l.Left >= 0 && max(out.Least, out.Most) > l.Left {
		out.Enough = false
		out.Words += fmt.Sprintf(" There are %d left.", l.Left)
	}
	return out
}

// Lots lists the lots, those to decide about first.
func (d *Desk) Lots() []Lot { return d.lots }

// Lot returns the lot called id.
func (d *Desk) Lot(id string) (Lot, bool) {
	for _, l := range d.lots {
		if l.ID == id {
			return l, true
		}
	}
	return Lot{}, false
}

// Name is the lot's crop with its variety.
func (l Lot) Name() string { return nameOf(l.Crop, l.Variety, l.OneOf) }

// LeftWords says what is left.
func (l Lot) LeftWords() string {
	var out []string
	switch {
	case l.Gone != 0:
		return "none left"
	case l.Left >= 0:
		out = append(out, fmt.Sprintf("%s left", thousands(l.Left)))
	}
	if l.Grams > 0 {
		out = append(out, fmt.Sprintf("%.3g g left", l.Grams))
	}
	if len(out) == 0 {
		return "not counted"
	}
	return strings.Join(out, ", ")
}

// ByWeight estimates how many seeds a lot of known weight holds.
func (d *Desk) ByWeight(l Lot) string {
	g, ok := d.facts.perGram[l.CropID]
	if l.Grams <= 0 || !ok {
		return ""
	}
	return fmt.Sprintf("%.3g g are about %s to %s seeds.", l.Grams, thousands(int(math.Round(l.Grams*g[0]))), thousands(int(math.Round(l.Grams*g[1]))))
}
