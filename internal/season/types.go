package season

import "bedweek/internal/cal"

// The problem: plain numbers, no crops, no gardens, no ledger. Weeks count
// from 0 at Start. Futures share every choice.

// Problem is one season to plan.
type Problem struct {
	Start    cal.Day // a Monday
	Weeks    int
	Futures  int
	Spaces   []Space
	Foods    []Food
	Options  []Option
	Stays    []Stay
	Batches  []Batch
	Shelf    []float64 // places by week
	Minutes  []float64 // wished minutes by week; empty = no limit
	OverCost float64   // cost of a minute over the wish
	RestCost float64   // cost (meals) of clearing one more space than ClearMax in one week
	ClearMax int       // spaces that may be cleared in one week without cost; 0 = no limit
	Musts    []Must
	Discount float64 // a week's worth of delay, e.g. 0.002
}

// Space limits what can stand together in one place.
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

// Food is something eaten. The first Want meals of a week are worth Worth
// each falling to Floor share at Want; between Want and 2 Want the worth is
// Extra; beyond, nothing. Shelf is how many weeks a pick keeps.
type Food struct {
	ID    string
	Want  []float64 // meals by week
	Worth float64
	Extra float64
	Shelf int
}

// Option is one thing that could be started: crop, space, week, way.
type Option struct {
	ID           string // "space.crop.way.week", the tie-breaker
	Crop         string
	Space        int
	Family       int         // rotation group
	Interval     int         // weeks before the family should return to the batch
	Food         int         // index in Foods, -1 = none eaten (flowers)
	Week         int         // week it takes ground
	End          int         // last week it holds ground (inclusive), at most Weeks-1
	Min, Max     int         // plants of a batch
	Footprint    []float64   // m2 per plant by week, from Week
	VolumeL      float64     // root room per plant at full size
	TallFrom     int         // week from which it is tall, -1 = never
	SupportM     float64     // per plant
	ShelfFrom    int         // week its pots take places (may be negative), -1<<30 = never
	ShelfPlaces  float64     // places per plant
	Minutes      []float64   // per plant by week from Week
	BatchMinutes float64     // once, in Week
	Fixed        float64     // cost of a batch, meals
	Cost         float64     // cost per plant, meals
	Meals        [][]float32 // [future][week from 0 of the plan - see MealsFrom] meals per plant
	MealsFrom    int
	Tail         float64 // worth per plant of what it will still give after the horizon
	Bonus        float64 // worth per plant that is not food (bloom weeks)
	RotationCost float64 // cost per plant if the family returns too early
	MaxTotal     string  // group whose total plants are limited, "" = none
	Risk         float64 // cost per plant for the hazard of a failed batch
}

// Stay is a planting in the ground. It is pulled at the end of a chosen week,
// at the latest at End; pull week -1 means "before the plan begins".
type Stay struct {
	ID         string
	Crop       string
	Space      int
	Family     int
	Food       int
	Plants     int
	End        int
	MustKeepTo int       // may not be pulled before this week (-1 = free)
	Footprint  []float64 // m2 for the whole planting by week from 0
	Tall       bool
	SupportM   float64
	VolumeL    float64
	Meals      [][]float32 // [future][week] for the whole planting
	Minutes    []float64
	Tail       float64 // worth after the horizon if kept to the end
	PullCost   float64
}

// Must wants at least Plants of Crop, in Space or (-1) anywhere.
type Must struct {
	Crop   string
	Space  int
	Plants int
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
	Value     float64 // by the search, mean over futures
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
