package reckon

import (
	"errors"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// Inputs are everything a Day is reckoned from. One of Record and Normals is
// given.
type Inputs struct {
	Garden  *garden.Garden
	Book    *crop.Book
	Record  *weather.Record
	Normals *weather.Normals
	// Forecast of the coming days; nil = none, and everything still answers.
	Forecast *weather.Forecast
	// Told are forecasts fetched before, to be held against what came; nil =
	// none was kept.
	Told    []*weather.Forecast
	Date    cal.Day
	Weeks   int    // of the plan, 8 to 78
	Futures int    // 20 unless a test asks for fewer
	Seed    uint64 // of the futures, the worlds and the search
	Work    int    // of the search, as season.Limits counts it; more is better and slower
	Workers int    // processors used; the answer does not depend on it
	Demo    bool   // an invented scenario: every page says so
	// State is the replayed ledger; nil = only what the garden file says.
	State *ledger.State
	// Prior is the plan before this one; nil = none. A change of a planting not
	// yet started must be worth changeCost.
	Prior *ledger.KeptPlan
	// LastWeek is the plan of an earlier week, to say what changed; nil = none.
	LastWeek *ledger.KeptPlan
	// Before is the day shown so far; with Quick its pull-or-keep answers stand
	// until the full plan, or none are given when there is no day before, and
	// nothing is proved.
	Before *Day
	Quick  bool
	// Enough ends pricing and searching when it is closed; the best plan so far
	// is then worked out to its end. May be nil.
	Enough <-chan struct{}
	// Seconds is how long pricing and searching may take together, by Clock; the
	// plan then depends on the machine. 0 = Work decides.
	Seconds float64
	// Stop reports that nobody waits for the answer any more; Reckon then ends
	// with ErrOvertaken. May be nil.
	Stop func() bool
	// ByClock says that Date is the machine's own day, not a chosen one. Newest
	// is the day on which the last note was written; 0 = there is none. A clock
	// that disagrees with notes or weather is asked about.
	ByClock bool
	Newest  cal.Day
	// Progress hears what is being done, in words; may be nil.
	Progress func(string)
	// Searched hears now and then how far the search is; may be nil.
	Searched func(SoFar)
	// Clock gives seconds for the phase timings; nil = no timings. It decides
	// nothing unless Seconds are given.
	Clock func() float64

	away  cal.Window     // of a trial: nobody is there
	plain *garden.Garden // as its file says, when wishes are taken in
}

// SoFar is how far a search is.
type SoFar struct {
	Share float64 // of it that is done, 0 to 1
	Gap   float64 // share, of what the best plan so far adds to doing nothing, that no plan can be better by
	Known bool    // the gap: it is not while a must is lacking, or plans are weighed on the mean harvest
}

// Lawful spans of a plan, in weeks.
const (
	MinWeeks     = 8
	MaxWeeks     = 78
	DefaultWeeks = 60
	DefaultWork  = 6_000_000
	// pastDays is how far back the futures' shared past reaches, so that what
	// stands can be grown from its start: eighteen months covers a biennial
	// sown the spring before last.
	pastDays = 550
	// afterWeeks is how far picking is followed beyond the plan's end, so that
	// what is still coming then counts, such as garlic of the last autumn.
	// Nothing is started in these weeks.
	afterWeeks = 16
	// growWeeks is how much weather growth wants beyond the last week followed.
	growWeeks = 14
)

func (in *Inputs) site() weather.Site {
	p := in.Garden.Place
	return weather.Site{LatDeg: p.LatDeg, LonDeg: p.LonDeg, ElevM: p.Elev.M}
}

// ErrOvertaken is returned when Stop ended the work.
var ErrOvertaken = errors.New("reckon: overtaken by something newer")

func (in *Inputs) stopped() bool { return in.Stop != nil && in.Stop() }

func (in *Inputs) say(words string) {
	if in.Progress != nil {
		in.Progress(words)
	}
}

func (in *Inputs) now() float64 {
	if in.Clock == nil {
		return 0
	}
	return in.Clock()
}
