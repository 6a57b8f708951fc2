package ledger

import (
	"sort"
	"strings"

	"bedweek/internal/cal"
)

// Kinds of entry about seed. A lot's id is the garden file's, or the id of
// the entry that told of it.
const (
	SeedGot    Kind = "seed got"    // body: Lot; bought, given, or saved from a planting
	SeedTested Kind = "seed tested" // body: Germination
	SeedUsed   Kind = "seed used"   // body: SeedUse; given away, spilt; sowings count by themselves
	SeedLeft   Kind = "seed left"   // body: SeedCount; an assertion, replay believes it
)

// Bodies about seed, layout 1.
type (
	// Lot is one packet, jar or envelope of seed.
	Lot struct {
		Crop    string   `json:"crop"`
		Variety string   `json:"variety,omitempty"`
		OneOf   []string `json:"one_of,omitempty"`
		Year    int      `json:"year,omitempty"`   // packed for, or saved in; 0 = not known
		Source  string   `json:"source,omitempty"` // shop, friend, own
		Count   int      `json:"count,omitempty"`  // seeds; 0 = not counted
		Grams   float64  `json:"grams,omitempty"`  // 0 = not weighed
		From    string   `json:"from,omitempty"`   // the planting it was saved from
		Note    string   `json:"note,omitempty"`
	}
	// Germination is a test: so many seeds laid out, so many came up.
	Germination struct {
		Lot  string `json:"lot"`
		Sown int    `json:"sown"`
		Up   int    `json:"up"`
		Days int    `json:"days,omitempty"` // after how many days they were counted
		Note string `json:"note,omitempty"`
	}
	// SeedUse takes seed out of a lot other than by sowing it here.
	SeedUse struct {
		Lot   string  `json:"lot"`
		Count int     `json:"count,omitempty"`
		Grams float64 `json:"grams,omitempty"`
		Why   string  `json:"why,omitempty"`
		Note  string  `json:"note,omitempty"`
	}
	// SeedCount says what is left.
	SeedCount struct {
		Lot   string  `json:"lot"`
		Count int     `json:"count,omitempty"`
		Grams float64 `json:"grams,omitempty"`
		Gone  bool    `json:"gone,omitempty"` // nothing is left
		Note  string  `json:"note,omitempty"`
	}
)

// LotState is a lot replayed. Of a lot of the garden file only what the
// entries say is known here.
type LotState struct {
	ID       string
	FromFile bool
	Got      cal.Day
	Lot
	Tests []TestNote `json:",omitempty"`

	Sown      int     `json:",omitempty"` // seeds sown or used since Asserted, or from the start
	Grams     float64 `json:",omitempty"` // grams used since
	Asserted  cal.Day `json:",omitempty"` // day of the last word on what is left; 0 = none
	LeftCount int     `json:",omitempty"`
	LeftGrams float64 `json:",omitempty"`
	Gone      cal.Day `json:",omitempty"` // nothing left since; 0 = there is
}

// TestNote is a germination test with its day and entry.
type TestNote struct {
	Event    string
	On       cal.Day
	Sown, Up int
	Days     int
}

// Counted returns the seeds left of base, the lot's first count; ok is false
// when nobody ever counted them.
func (l LotState) Counted(base int) (left int, ok bool) {
	switch {
	case l.Gone != 0:
		return 0, true
	case l.Asserted != 0 && l.LeftCount > 0:
		base = l.LeftCount
	case l.Asserted != 0:
		return 0, false // weighed, not counted
	}
	if base <= 0 {
		return 0, false
	}
	return max(0, base-l.Sown), true
}

// Weighed returns the grams left of base; ok is false when nobody weighed it.
func (l LotState) Weighed(base float64) (left float64, ok bool) {
	if l.Asserted != 0 {
		base = l.LeftGrams
	}
	if base <= 0 {
		return 0, false
	}
	return max(0, base-l.Grams), true
}

// lot returns the lot an entry speaks of, nil when it is not here. An id that
// is no entry's belongs to the garden file.
func (r *replayer) lot(s step, id string) *LotState {
	l, ok := r.lots[id]
	if !ok && IsID(id) {
		r.differ("%q on %s is about a lot of seed that was taken back or has not come yet.", string(s.Kind), s.Happened.Long())
		return nil
	}
	if !ok {
		l = &LotState{ID: id, FromFile: true}
		r.lots[id] = l
	}
	return l
}

func (r *replayer) gotLot(s step, b Lot) {
	r.lots[s.ID] = &LotState{ID: s.ID, Got: s.Happened, Lot: b}
}

func (r *replayer) testLot(s step, b Germination) {
	if l := r.lot(s, b.Lot); l != nil {
		l.Tests = append(l.Tests, TestNote{Event: s.ID, On: s.Happened, Sown: b.Sown, Up: b.Up, Days: b.Days})
	}
}

func (r *replayer) useLot(s step, id string, count int, grams float64) {
	if id == "" {
		return
	}
	if l := r.lot(s, id); l != nil {
		l.Sown += count
		l.Grams += grams
	}
}

func (r *replayer) countLot(s step, b SeedCount) {
	l := r.lot(s, b.Lot)
	if l == nil {
		return
	}
	l.Asserted, l.LeftCount, l.LeftGrams, l.Sown, l.Grams, l.Gone = s.Happened, b.Count, b.Grams, 0, 0, 0
	if b.Gone {
		l.Gone = s.Happened
	}
}

// lotStates lists the lots by id, each a copy.
func (r *replayer) lotStates() []LotState {
	var out []LotState
	for _, l := range r.lots {
		c := *l
		c.Tests = append([]TestNote(nil), l.Tests...)
		out = append(out, c)
	}
	sort.Slice(out, func(i, j int) bool { return out[i].ID < out[j].ID })
	return out
}

// Limits of what is believed of seed: a kilogram is a field's, and nobody lays
// out more than a thousand seeds for a test at home.
const (
	gramsLimit = 5000
	testLimit  = 1000
	firstYear  = 1900
	lastYear   = 2199
)

func (f *Faults) lot(b Lot) {
	f.name("crop", b.Crop, true)
	f.text("variety", b.Variety, nameLimit)
	f.text("source", b.Source, nameLimit)
	f.text("note", b.Note, noteLimit)
	f.name("from", b.From, false)
	f.count(b.Count)
	f.grams(b.Grams)
	if b.Year != 0 && (b.Year < firstYear || b.Year > lastYear) {
		f.add("%q is %d; it must lie between %d and %d", "year", b.Year, firstYear, lastYear)
	}
	f.oneOf(b.OneOf)
}

func (f *Faults) oneOf(names []string) {
	if len(names) > 20 {
		f.add("%q names %d; the most is 20", "one_of", len(names))
	}
	for _, v := range names {
		f.text("one_of", v, nameLimit)
	}
}

func (f *Faults) grams(g float64) {
	if !(g >= 0 && g <= gramsLimit) {
		f.add("%q is %g; it must lie between 0 and %d", "grams", g, gramsLimit)
	}
}

func (f *Faults) germination(b Germination) {
	f.name("lot", b.Lot, true)
	f.text("note", b.Note, noteLimit)
	if b.Sown < 1 || b.Sown > testLimit {
		f.add("%q is %d; it must lie between 1 and %d", "sown", b.Sown, testLimit)
	}
	if b.Up < 0 || b.Up > b.Sown {
		f.add("%q is %d; it must lie between 0 and the %d laid out", "up", b.Up, b.Sown)
	}
	if b.Days < 0 || b.Days > 400 {
		f.add("%q is %d; it must lie between 0 and 400", "days", b.Days)
	}
}

func (f *Faults) seedUse(b SeedUse) {
	f.name("lot", b.Lot, true)
	f.text("why", b.Why, wordsLimit)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	f.grams(b.Grams)
	if b.Count == 0 && b.Grams == 0 {
		f.add("%q or %q is missing; say how much", "count", "grams")
	}
}

func (f *Faults) seedCount(b SeedCount) {
	f.name("lot", b.Lot, true)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	f.grams(b.Grams)
	if b.Gone == (b.Count > 0 || b.Grams > 0) {
		f.add("say what is left as %q or %q, or that it is %s", "count", "grams", strings.TrimSpace("gone"))
	}
}
