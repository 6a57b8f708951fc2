// Package reckon joins everything that can be said today: the garden, the
// replayed ledger, the growth tables and the season plan become one Day, which
// every face (phone, print, command line) draws without computing.
package reckon

import "bedweek/internal/cal"

// Day is all that can be said on one date.
type Day struct {
	Garden  string
	Date    cal.Day
	Demo    bool     // invented scenario: every page says so
	Place   string   // "47.61 N 122.33 W, 60 m"
	Weather string   // in words, what record, which years, how the futures were made
	Notes   []string // said at the top of Today: gaps filled, guesses that matter
	Today   []Task
	Spaces  []SpaceDay // in walking order
	Shelf   []Line     // what is on the seed shelf, now and planned
	Keeps   []Keep     // pull-or-keep, most pressing first
	Table   []FoodRow  // worst first
	Plan    PlanSays
	WeekOf  []cal.Day // Monday of each plan week, the common time axis
	Crops   []Choice  // for forms: crops of the book, by name
	Foods   []string  // for forms: those wanted, then the book's others
	Papers  *Papers   // what is printed and kept; nil = not made
	Dry     *Dryness  // who runs dry first; nil = not reckoned
	People  []PersonDay
	Minutes float64    // wished minutes of work a week, all people; 0 = not limited
	Water   *WaterSays // what the plan drinks in dry weeks against the wish; nil = water is not limited
	Spent   int        // minutes of the work noted as done today: the walk has so many fewer
	Hot     *HotDay    // a hot day shortens the list; nil = it is not
	Sky     *SkyPart   // frost, heat and the years; nil = not reckoned
	Heard   []Heard    // what became of each wish
	Changed *Changed   // against the plan of an earlier week; nil = none is known
	Later   *Later     // what can wait; nil = not yet known
	First   bool       // made quickly, so that there is something to see: pull or keep is not yet asked
}

// Answer is the five-part answer every decision gives.
type Answer struct {
	Verdict  string // "Sow carrots in the long bed this week."
	Reason   string
	Sure     string // "likely (16 of 20)"
	OfTwenty int    // 0-20; -1 = not a matter of counts
	Look     string // what to look at first
	Change   string // what would change it
	Caution  string // one safety line at the moment of action, "" = none
}

// Task is one thing to do, one verb and one object.
type Task struct {
	ID        string // stable: space.verb.planting
	Space     string // space id; "" = shelf
	SpaceName string
	Verb      string // "sow", "set out", "pick", "pull", "look", "cover", "thin", "tie", "pot on" and more
	Object    string
	Planting  string // planting id, "" = none yet
	Crop      string
	Count     int
	Answer    Answer
	Minutes   int
	Until     cal.Day  // can wait until; 0 = no end known
	Pressing  bool     // this week
	Event     string   // ledger kind the "did it" button writes: "sown", "set out", "picked", "pulled", "looked", "watered", or EventDone
	Who       []string // people who can reach it
	Reach     []Reach  // each person, with why not
	How       string   // how many, how deep, how far apart; how it is taken; "" = nothing to add
	Rule      string   // when it is done, in a line; "" = it is computed
	Basis     string   // where the rule comes from
	Delay     string   // what a day's wait costs, in words
	DayCost   float64  // meals a day's wait costs; -1 = not counted
	LiftKg    float64  // to carry; 0 = nothing to speak of
	Which     bool     // it asks which sort a planting is
	Hollow    bool     // look first: it cannot be seen from here
	Names     bool     // a hand-over at which names get lost: write the label
	Reward    string   // said of a start that few futures reward; "" = enough do, or not known
	counted   bool
	line      string // of a start: its option
}

// SpaceDay is one space: what it is, what it does now and next.
type SpaceDay struct {
	ID, Name, Kind string
	Size           string // as typed: "2.4 m x 1.2 m, 30 cm deep"
	Medium         string
	Water          string
	SunH           [12]float64 // direct sun, clear day, by month
	DLI            [12]float64 // mol/m2/day, mean sky
	Now            string      // one sentence
	Next           string      // one sentence
	Answer         Answer      // the space's main decision
	Lines          []Line
	Else           []Else // what stands here and is no crop of the book
	IdleWeeks      int
	History        []Note // the newest, newest first
	Older          int    // entries not in History
	Learned        []string
	Side           string   // "left" or "right" as one walks, "" = the plan does not tell
	Near           []string // spaces that can be worked from one seat here, itself first
	Who            []string // people who reach it
	Reach          []Reach
}

// Line is a planting as it travels: shelf, bed, end. Windows carry the fray.
type Line struct {
	ID          string // planting id or option id
	Space       string // where it ends up
	Crop        string // shown name
	CropID      string
	Variety     string
	Plants      int
	Standing    bool       // already in the ground
	OnShelf     cal.Day    // on the shelf from; 0 = never
	In          cal.Window // into the ground (sown, set out); for standing: since
	First, Last cal.Window // picks; none = none
	Out         cal.Window // ground free again
	OfTwenty    int
	Reasons     []string
	ClashOf     int // futures of twenty in which it still stands when the next is due
	ClashWith   string
	Way         string     // of a planned line: "sow", "set", "plant"
	Holds       cal.Day    // of a planned line: last day on which the plan gives it the ground
	Later       *LineLater // how it fares when more is known; nil = not known
}

// Keep is the pull-or-keep question for one standing planting.
type Keep struct {
	Planting         string
	Space, SpaceName string
	Crop             string
	Next             string // crop that would follow, "" = none
	Answer           Answer
	Choices          []KeepChoice // by pull week, early first
	Best             int          // index in Choices
	Either           bool         // within the noise
}

// KeepChoice is one date to pull on, with both costs counted.
type KeepChoice struct {
	Pull                             cal.Day
	MealsLow, MealsLikely, MealsHigh float64   // still to pick until then
	NextMakes                        int       // of twenty, next crop makes it when pulled then; -1 = none follows
	Worth                            float64   // worth of the whole plan against the best choice, meals (0 or less)
	DotMeals                         []float64 // twenty: meals until then, one per future
	DotNext                          []bool    // twenty: the next crop makes it
}

// FoodRow is one food over the weeks.
type FoodRow struct {
	Food   string
	Name   string
	Weeks  []FoodWeek // along Day.WeekOf
	Holes  []Hole     // in order of time
	Answer Answer
}

// FoodWeek is one food in one week, in meals.
type FoodWeek struct {
	Wanted, Expected, Low, High float64
	Threads                     []bool // twenty: there is enough to speak of (half the want) in that future
	Much                        []bool // twenty: there is more than is wanted, enough to give away
}

// PlanSays is the plan's own account of itself.
type PlanSays struct {
	Status          string
	Value, Nothing  float64
	Mean, Low, High float64 // over the twenty futures
	Worst           float64 // mean of the worst five of twenty
	BadYears        string  // how much it is made for them: "", "not at all", "somewhat", "much"
	Seed            uint64
	Work            int
	Options         int
	Seconds         map[string]float64 `json:"seconds"`
	Words           string             // one honest paragraph
	Proof           string             // what is proved of it, a sentence
	Gap             float64            // no plan is better by more than this share of its worth above doing nothing
	Proved          bool               // the gap was verified; else it is not known
	FutureGap       float64            // the same of Mean, the futures told apart
	FutureProved    bool
}

// Note is one thing that happened, from the ledger.
type Note struct {
	ID       string
	Happened cal.Day
	Written  string
	Kind     string // ledger kind
	Words    string // a sentence
	Voided   bool
}

// Choice is an id with its shown name.
type Choice struct{ ID, Name string }
