package stand

import (
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/weather"
)

// Env is the air, light and ground of one space as plants meet them.
type Env struct {
	Site           weather.Site
	Start          cal.Day          // Monday of the plan's first week; Futures may begin earlier
	Weeks          int              // of the plan
	Futures        []weather.Future // all of one length, long enough for Weeks and 30 weeks more
	Light          [12]float64      // share of the open sky's daily light reaching the space, by month
	SunH           [12]float64      // hours of direct sun on a clear day, by month
	HotShade       [12]float64      // share of the open sky's light from noon to five that does not arrive, by month; 0 = none is taken
	DepthM         float64
	VolumeL        float64
	AreaM2         float64
	WarmC          float64 // medium runs warmer than open ground by this, spring daytime mean
	NightC         float64 // air at the space on still nights above (+) the record
	Thirst         float64 // 0 = watered without fail .. 1 = rain only
	Cover          float64 // degrees of frost a cover at hand keeps off on a cold night, 0 = none
	Net            float64 // share of light passing a net that is on, 1 = none
	Indoor         bool    // lamp shelf: LampDLI and LampC instead of weather
	LampDLI, LampC float64
}

// Start says what is started, how and when.
type Start struct {
	Crop *crop.Crop
	Way  crop.Way
	Day  cal.Day // sown outdoors, set out, or planted on this day
	// Age is for what already stands: Day lies in the past and growth is
	// replayed to the plan's start on the futures' shared past.
	Standing bool
	World    []World // one per future; nil = the book's middle values
}

// World is what a future believes of one crop beyond the weather: factors
// drawn from the published spread. 1 = the book's value.
type World struct {
	Days, Yield, Emerge float64
	ColdC               float64 // added to the frost limits
}

// Cause says why a start failed, or what ended it.
type Cause string

// Causes.
const (
	Fine       Cause = ""
	NotUp      Cause = "seed too cold or too hot to come up"
	Frosted    Cause = "killed by frost"
	Chilled    Cause = "checked by cold nights"
	Bolted     Cause = "bolts"
	TooHot     Cause = "too hot"
	TooSlow    Cause = "not ready in time"
	TooSmall   Cause = "too little light to grow"
	NoSet      Cause = "no fruit set"
	Spent      Cause = "natural end"
	Unhardened Cause = "frost before it hardened"
	NoBulb     Cause = "days too short to bulb"
	ColdSoil   Cause = "soil too cold"
	NoCold     Cause = "no winter cold to form a bulb"
	Young      Cause = "first crop comes in a later year"
	LongDays   Cause = "days too long to flower"
)

// Outcome is what one start comes to in one future, per plant.
type Outcome struct {
	OK    bool
	Cause Cause   // why not OK; or what ended it
	Up    cal.Day // emerged (sown) or took hold; 0 = not
	First cal.Day // first pick, 0 = none; of what stands already, the first in the plan
	Last  cal.Day // last pick
	End   cal.Day // ground free if left to its natural end
	Kg    Weekly  // by plan week, if left to its end
	Total float32 // kg in all, weeks before and after the plan included
	Later float32 // kg after the plan's last week
}

// Growth is one start in all futures with the mean picture of its size.
type Growth struct {
	Outcomes                      []Outcome
	FootprintM2                   []float32 // by plan week while it stands (mean), 0 when not there
	HeightM                       []float32 // by plan week
	Success                       int       // of the futures
	Cause                         Cause     // commonest cause of failure
	FirstPick, LastPick, EndOfUse cal.Window
	Sown                          cal.Day // day on the shelf for set-out starts
	ShelfWeeks                    int     // weeks under lamps before setting out
}
