package ledger

import (
	"math"

	"bedweek/internal/cal"
)

// Wished is a wish about the plan: something to keep, to refuse, to eat more
// of, to have whatever happens, or never. Taking it back ends it.
const Wished Kind = "wish"

// PlanKept is a plan kept under a name, to be compared with and returned to.
const PlanKept Kind = "plan kept"

// What a wish can be.
const (
	WishLock    = "lock"      // keep this planned line as it is
	WishRefuse  = "refuse"    // not this line
	WishWant    = "want"      // more, or less, of a food
	WishMust    = "must"      // so many plants, whatever happens
	WishNever   = "never"     // not this crop, in a space or anywhere
	WishAway    = "away"      // nobody there to sow, pick or eat
	WishMinutes = "minutes"   // more, or fewer, minutes a week than the garden file says
	WishWater   = "water"     // so many litres a day in a dry week, for all spaces
	WishBad     = "bad years" // plan for them: not at all, somewhat or much
	WishReturn  = "return"    // lock the lines of a kept plan
)

// Wish is the body of Wished, layout 1.
type Wish struct {
	What    string  `json:"what"`
	Space   string  `json:"space,omitempty"` // "" = anywhere
	Crop    string  `json:"crop,omitempty"`
	Way     string  `json:"way,omitempty"`     // of a line: sow, set or plant
	Since   cal.Day `json:"since,omitempty"`   // of a line: it takes ground; of an absence: its first day
	Until   cal.Day `json:"until,omitempty"`   // of a line: the ground is free; of an absence: its last day
	Plants  int     `json:"plants,omitempty"`  // of a line or a must
	Food    string  `json:"food,omitempty"`    // of a want
	Meals   float64 `json:"meals,omitempty"`   // of a want, a week; below 0 = fewer
	First   int     `json:"first,omitempty"`   // of a want: first month, 1 to 12; 0 = all year
	Last    int     `json:"last,omitempty"`    // of a want: last month
	Minutes float64 `json:"minutes,omitempty"` // a week; below 0 = fewer
	Litres  float64 `json:"litres,omitempty"`  // of water, a day; left out = none
	Level   string  `json:"level,omitempty"`   // of bad years: how much
	Plan    string  `json:"plan,omitempty"`    // of a return: the entry that kept it
	Note    string  `json:"note,omitempty"`
}

// WishNote is a wish with its day and the entry that holds it.
type WishNote struct {
	Event string
	On    cal.Day
	Wish
}

type (
	// KeptPlan is the body of PlanKept, layout 1: what lasts of a plan from
	// one week to the next.
	KeptPlan struct {
		Name  string     `json:"name"`
		On    cal.Day    `json:"on"`              // the plan's date
		Worth float64    `json:"worth,omitempty"` // above leaving everything as it stands, meals
		Lines []PlanLine `json:"lines"`
		Pulls []PlanPull `json:"pulls,omitempty"`
		Note  string     `json:"note,omitempty"`
	}
	// PlanLine is one planting of a plan, not started when it was kept.
	PlanLine struct {
		Space  string  `json:"space"`
		Crop   string  `json:"crop"`
		Way    string  `json:"way"`
		Since  cal.Day `json:"since"` // Monday of the week in which it takes ground
		Until  cal.Day `json:"until"` // last day on which it holds the ground
		Plants int     `json:"plants"`
	}
	// PlanPull is when a planting that stands comes out.
	PlanPull struct {
		Planting string  `json:"planting"`
		On       cal.Day `json:"on"`
	}
)

// KeptNote is a kept plan with the entry that holds it.
type KeptNote struct {
	Event string
	KeptPlan
}

// Limits of wishes: no household eats 50 meals of one food a week more than it
// said, and a week has 10,080 minutes.
const (
	wishMeals   = 50
	wishMinutes = 10080
	wishLitres  = 20000 // a day: more is a farm's
	keptLines   = 2000
	keptLimit   = 512 << 10 // bytes of a kept plan
)

// wish lists what is wrong with the body.
func (f *Faults) wish(b Wish) {
	f.name("space", b.Space, b.What == WishLock || b.What == WishRefuse)
	f.name("crop", b.Crop, b.What == WishLock || b.What == WishRefuse || b.What == WishMust || b.What == WishNever)
	f.name("food", b.Food, b.What == WishWant)
	f.name("way", b.Way, b.What == WishLock)
	f.text("note", b.Note, noteLimit)
	f.count(b.Plants)
	switch b.What {
	case WishLock, WishRefuse, WishAway:
		f.wishDays(b)
	case WishWant:
		if b.Meals == 0 || !(math.Abs(b.Meals) <= wishMeals) {
			f.add("%q is %g; it must lie between -%d and %d, and not be 0", "meals", b.Meals, wishMeals, wishMeals)
		}
		if b.First < 0 || b.First > 12 || b.Last < 0 || b.Last > 12 || (b.First == 0) != (b.Last == 0) {
			f.add("the months are %d to %d; they lie between 1 and 12, or are both left out", b.First, b.Last)
		}
	case WishMust, WishNever:
	case WishMinutes:
		if b.Minutes == 0 || !(math.Abs(b.Minutes) <= wishMinutes) {
			f.add("%q is %g; it must lie between -%d and %d, and not be 0", "minutes", b.Minutes, wishMinutes, wishMinutes)
		}
	case WishWater:
		if !(b.Litres >= 0 && b.Litres <= wishLitres) {
			f.add("%q is %g; it must lie between 0 and %d", "litres", b.Litres, wishLitres)
		}
	case WishBad:
		if b.Level != "not at all" && b.Level != "somewhat" && b.Level != "much" {
			f.add("%q is %q; it may be not at all, somewhat or much", "level", clip(b.Level))
		}
	case WishReturn:
		if !IsID(b.Plan) {
			f.add("%q is %q; it must be the id of an entry", "plan", clip(b.Plan))
		}
	default:
		f.add("%q is %q; it may be lock, refuse, want, must, never, away, minutes, water, bad years or return", "what", clip(b.What))
	}
	if (b.What == WishLock || b.What == WishMust) && b.Plants < 1 {
		f.add("%q is missing; say how many", "plants")
	}
}

func (f *Faults) wishDays(b Wish) {
	if b.Since == 0 || b.Until == 0 || b.Since < firstDay || b.Until > lastDay || b.Until < b.Since {
		f.add("the days are %s to %s; give the first day and then the last", b.Since, b.Until)
	}
}

// kept lists what is wrong with the body.
func (f *Faults) kept(b KeptPlan) {
	f.name("name", b.Name, true)
	f.text("note", b.Note, noteLimit)
	if b.On == 0 || b.On < firstDay || b.On > lastDay {
		f.add("%q is missing; say the day of the plan", "on")
	}
	if len(b.Lines)+len(b.Pulls) > keptLines {
		f.add("the plan has %d lines; the most is %d", len(b.Lines)+len(b.Pulls), keptLines)
	}
	if math.IsNaN(b.Worth) || math.IsInf(b.Worth, 0) {
		f.add("%q is no number", "worth")
	}
	for _, l := range b.Lines {
		f.name("space", l.Space, true)
		f.name("crop", l.Crop, true)
		f.name("way", l.Way, true)
		f.count(l.Plants)
		f.wishDays(Wish{Since: l.Since, Until: l.Until})
	}
	for _, p := range b.Pulls {
		f.name("planting", p.Planting, true)
	}
}
