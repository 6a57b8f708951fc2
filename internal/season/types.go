package season

import (
	"iter"
	"slices"

	"bedweek/internal/cal"
)

// The problem: plain numbers, no crops, no gardens, no ledger. Weeks count
// from 0 at Start. Futures share every choice.

// Problem is one season to plan.
type Problem struct {
	Start      cal.Day // a Monday
	Weeks      int
	Futures    int
	Spaces     []Space
	Foods      []Food
	Options    []Option
	Stays      []Stay
	Batches    []Batch
	Shelf      []float64 // places by week, from ShelfStart; weeks after the list have none
	ShelfStart int       // week of Shelf[0], 0 or negative; weeks before it are past and not counted
	Minutes    []float64 // wished minutes by week; empty or shorter = no limit in the weeks left out
	OverCost   float64   // cost of a minute over the wish
	Water      []float64 // wished litres a day in a dry week, by week; empty or shorter = no limit in the weeks left out
	WaterCost  float64   // cost of each litre a day over the wish, for a week of it
	WorstShare float64   // of a plan's worth, 0 to 1: for the mean of its worst quarter of the futures; the rest for the mean of all
	RestCost   float64   // cost (meals) of clearing one more space than ClearMax in one week
	ClearMax   int       // spaces that may be cleared in one week without cost; 0 = no limit
	Musts      []Must
	Locks      []Planting     // kept as they are, option and plants
	Totals     map[string]int // most plants of a MaxTotal group (seed left, pots ready); absent = no limit
	Discount   float64        // a meal a week later is worth 1/(1+Discount) of one now, e.g. 0.002
}

// Space limits what can stand together in one place. A limit of 0 is no room
// at all, not "unknown". What stands already never breaks a limit by itself;
// a new planting may not add to a limit that is full.
type Space struct {
	ID       string
	AreaM2   float64
	VolumeL  float64
	TallM2   float64 // footprint of tall plants that does no harm
	SupportM float64
	Batch    int // index in Batches, -1 = none
}

// Batch is a lot of medium; Last[f] is the week (negative = past) in which
// family f last left it, absent = never.
type Batch struct {
	ID   string
	Last map[int]int
}

// Food is something eaten. Of one week's meals the first half of Want is worth
// Worth each, the second half (Worth+Extra)/2, what lies between Want and
// twice Want Extra, and beyond that nothing. Lawful when
// 0 <= Extra <= Worth. A pick of week w may be eaten in weeks
// w to w+Shelf. docs/season.md says how eating is chosen.
type Food struct {
	ID    string
	Want  []float64 // meals by week; weeks after the list want none
	Worth float64   // worth of a meal, in meals
	Extra float64   // worth of a meal beyond the want, 0 to Worth
	Shelf int       // weeks a pick keeps; 0 = eaten in the week it is picked
}

// Option is one thing that could be started: crop, space, week, way. It can be
// in a plan once, with Min to Max plants; Min > Max means never. Its ID less
// the part after the last dot names the same planting in other weeks.
type Option struct {
	ID           string // "space.crop.way.week", the tie-breaker
	Crop         string
	Space        int
	Family       int         // rotation group, -1 = none
	Interval     int         // whole weeks the family should be absent from the batch; 0 = any
	Food         int         // index in Foods, -1 = none eaten (flowers)
	Week         int         // week it takes ground
	End          int         // last week it holds ground (inclusive), at most Weeks-1
	Min, Max     int         // plants of a batch
	Footprint    []float64   // m2 per plant by week, from Week; the last holds on to End
	VolumeL      float64     // root room per plant at full size; in a week it uses the share Footprint has of its largest
	TallFrom     int         // plan week from which its footprint counts as tall, -1 = never
	SupportM     float64     // per plant, while it holds ground
	ShelfFrom    int         // week its pots take places, to Week-1 (may be negative); -1<<30 = never
	ShelfPlaces  float64     // places per plant
	Minutes      []float64   // per plant by week from Week, and after End as far as the list goes (curing, drying)
	BatchMinutes float64     // once, in Week
	Water        []float64   // litres a day per plant in a dry week, by week from Week; none after the list or after End
	Fixed        float64     // cost of a batch, meals
	Cost         float64     // cost per plant, meals
	Meals        [][]float32 // [future][i] meals per plant picked in week MealsFrom+i; weeks outside the plan are not counted
	MealsFrom    int
	Tail         float64 // worth per plant of what it will still give after the horizon, as given (not discounted)
	Bonus        float64 // worth per plant that is not food (bloom weeks)
	RotationCost float64 // cost per plant if the family returns too early
	MaxTotal     string  // group whose total plants are limited, "" = none
	AlsoTotal    string  // a second such group, "" = none
	Risk         float64 // cost per plant for the hazard of a failed batch
	AtRisk       int     // most plants of a batch that Risk and RotationCost are charged for: more would not be eaten anyway; 0 = all
	OK           []bool  // by future: it makes it; not priced, only counted for the pages
}

// risked is how many of n plants pay for what could be lost.
func (o *Option) risked(n int) float64 {
	if o.AtRisk > 0 {
		n = min(n, o.AtRisk)
	}
	return float64(n)
}

// totals yields the groups an option belongs to that have a limit.
func (o *Option) totals(p *Problem) iter.Seq[string] {
	return func(yield func(string) bool) {
		for _, name := range [...]string{o.MaxTotal, o.AlsoTotal} {
			if _, ok := p.Totals[name]; ok && name != "" && !yield(name) {
				return
			}
		}
	}
}

// Stay is a planting in the ground. It is pulled at the end of a chosen week,
// at the latest at End; pull week -1 means "before the plan begins". An End at
// or after the last week counts as the last week.
type Stay struct {
	ID         string
	Crop       string
	Space      int
	Family     int
	Food       int
	Plants     int
	End        int
	MustKeepTo int       // first lawful pull week (-1 = free)
	Footprint  []float64 // m2 for the whole planting by week from 0; the last holds on
	Tall       bool
	SupportM   float64
	VolumeL    float64     // at full size, shared by week as in Option
	Meals      [][]float32 // [future][week] for the whole planting
	Minutes    []float64
	Water      []float64 // litres a day in a dry week for the whole planting, by week from 0
	Tail       float64   // worth after the horizon if kept to End
	PullCost   float64   // cost of pulling before End
}

// Must wants at least Plants of Crop, in Space or (-1) anywhere. Plants that
// stand already count when they are kept to their End; of what is started, only
// Groups count where there are any (pots at hand before new seed).
type Must struct {
	Crop   string
	Space  int
	Plants int
	Groups []string // MaxTotal groups; none = any option
}

// counts says whether plants of an option help to meet the must.
func (m *Must) counts(o *Option) bool {
	return o.Crop == m.Crop && (m.Space == -1 || m.Space == o.Space) &&
		(len(m.Groups) == 0 || slices.Contains(m.Groups, o.MaxTotal))
}

// Planting is a chosen option.
type Planting struct {
	Option int
	Plants int
}

// Plan is a choice with what it is worth and how it was reached.
type Plan struct {
	Status    Status
	Plantings []Planting
	Pull      []int   // per stay: last week it stands
	Value     float64 // by the search: mean over the futures, the worst by their share
	Nothing   float64 // worth of doing nothing
	Seed      uint64
	Work      int      // search moves tried
	Weighed   int      // options looked at
	Conflict  []string // why Infeasible, in words
}

// Status is what a search has to say of its plan.
type Status int

// Statuses.
const (
	Proven      Status = iota + 1 // no better plan exists (only brute force says so)
	Feasible                      // valid
	Infeasible                    // no plan meets the musts; Conflict names why
	Interrupted                   // the work limit or the caller stopped it
)

func (s Status) String() string {
	switch s {
	case Proven:
		return "proven"
	case Feasible:
		return "feasible"
	case Infeasible:
		return "infeasible"
	case Interrupted:
		return "interrupted"
	}
	return "none"
}

// waterCounts says whether litres over a wish cost anything.
func (p *Problem) waterCounts() bool { return len(p.Water) > 0 && p.WaterCost > 0 }
