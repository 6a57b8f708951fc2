package names

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Wanted is one start that needs seed or pieces.
type Wanted struct {
	On       cal.Day
	Plants   int
	Outdoors bool // sown in its place
}

// outdoorShare is what is left of what comes up outdoors after slugs, crust
// and weather: common practice, no source.
const outdoorShare = 0.6

// up is how many must come up.
func (w Wanted) up() int {
	if w.Outdoors {
		return int(math.Ceil(float64(w.Plants) / outdoorShare))
	}
	return w.Plants
}

// Supply is what the tin has for a crop's starts, and what it lacks.
type Supply struct {
	Takes []Take
	Least int     // seeds to buy when nearly all of them come up; 0 = none
	Most  int     // when as few come up as fresh seed may; 0 = none
	By    cal.Day // of the first start the tin does not serve; 0 = it serves them all
	Short int     // plants the tin does not serve
	Basis string  // where the share of bought seed comes from
}

// Take is what one lot of the tin gives.
type Take struct {
	Lot
	Seeds  int    // to sow of it, by the worse end of what it may give
	Plants int    // it serves, nine times in ten
	Doubts string // why it is not counted on, "" = it is
}

// Supply shares the tin out over a crop's starts, the earliest first. Tested
// lots are taken before those known by a list only, older ones before younger.
// A lot in doubt, or one nobody counted, is told of and not relied on: what it
// would serve is bought, unless a test or a count says otherwise.
func (d *Desk) Supply(cropID string, starts []Wanted) Supply {
	starts = append([]Wanted{}, starts...)
	sort.SliceStable(starts, func(a, b int) bool { return starts[a].On < starts[b].On })
	s := Supply{}
	var good []int
	for _, l := range d.lots {
		if l.CropID != cropID || l.Gone != 0 || l.Left == 0 {
			continue
		}
		t := Take{Lot: l, Doubts: l.unreliable()}
		if t.Doubts == "" {
			good = append(good, len(s.Takes))
		}
		s.Takes = append(s.Takes, t)
	}
	sort.SliceStable(good, func(a, b int) bool {
		x, y := s.Takes[good[a]], s.Takes[good[b]]
		if x.Rate.Tested != y.Rate.Tested {
			return x.Rate.Tested
		}
		return x.Age > y.Age
	})
	fresh := d.bought(cropID)
	for _, w := range starts {
		short := w.up()
		for _, i := range good {
			if s.Takes[i].serve(&short); short == 0 {
				break
			}
		}
		if short == 0 {
			continue
		}
		if s.By == 0 {
			s.By = w.On
		}
		n := fresh.Need(short)
		s.Short += w.Plants
		s.Least += n.Least
		s.Most += max(n.Least, n.Most)
	}
	if s.Most > 0 {
		s.Basis = fresh.Rate.Words
	}
	return s
}

// unreliable says why the number that comes up, or the number there is, cannot
// be counted on.
func (l Lot) unreliable() string {
	if why := l.Doubt(); why != "" {
		return why
	}
	switch {
	case l.Left < 0:
		return "Not counted: count it, and it may serve."
	case !l.Pieces && !l.Rate.Known:
		return "No list says how it keeps: test it."
	}
	return ""
}

// serve takes what n plants need. Seed of two lots is not put together: half a
// row from each would come up nine times in ten each, not both. Pieces are.
func (t *Take) serve(n *int) {
	need := t.Need(*n)
	switch seeds := max(need.Least, need.Most); {
	case t.Pieces:
		got := min(*n, t.Left-t.Seeds)
		t.Seeds, t.Plants, *n = t.Seeds+got, t.Plants+got, *n-got
	case !need.Unknowable && t.Seeds+seeds <= t.Left:
		t.Seeds, t.Plants, *n = t.Seeds+seeds, t.Plants+*n, 0
	}
}

// bought is fresh seed of a crop as a shop sells it: untested, this year's.
func (d *Desk) bought(cropID string) Lot {
	l := Lot{CropID: cropID, Left: -1, Life: d.life(cropID)}
	if c, ok := d.Book.Crop(crop.ID(cropID)); ok {
		l.Pieces = len(c.Ways) > 0 && c.Ways[0] == crop.Plant
	}
	l.Rate = d.rate(l)
	if !l.Pieces && l.Rate.Low == 0 { // no list knows it
		l.Rate = Rate{Low: untestedLow, High: untestedHigh, Known: true, Words: "Usually half to nearly all of fresh seed comes up.", Basis: "common practice"}
	}
	return l
}

// Words says the lot in one line: name, what is left, what comes up, what is
// taken.
func (t Take) Words() string {
	s := fmt.Sprintf("%s, %s, %s.", t.Tag, t.Name(), t.LeftWords())
	switch {
	case t.Rate.Tested:
		s += " " + t.Rate.Words
	case t.Age >= 0 && !t.Pieces:
		s += fmt.Sprintf(" %s old.", capital(yearsOld(t.Age)))
		if t.Rate.Known && t.Rate.Low > 0 {
			s += fmt.Sprintf(" Not tested: it may give %s.", percents(t.Rate.Low, t.Rate.High))
		}
	}
	switch {
	case t.Doubts != "":
		s += " Not counted on. " + t.Doubts
	case t.Plants > 0 && t.Pieces:
		s += fmt.Sprintf(" Plant %s.", thousands(t.Seeds))
	case t.Plants > 0:
		s += fmt.Sprintf(" Sow %s: %s come up, 9 times in 10.", thousands(t.Seeds), plantsOf(t.Plants))
	default:
		s += " Too little is left for a start."
	}
	return s
}
