package crop

// ID is a crop's slug, such as "snap-bean-bush".
type ID string

// Figure is one number of the book with where it comes from. Low and High are
// the ends of what sources give; Value is the one used unless a future draws
// another from between them.
type Figure struct {
	Value, Low, High float64
	Source           string // key of docs/sources.md; several joined by " + "
	Basis            string // "published", "memory", "common-practice", "computed", "own"
	Note             string // what was mended and why; "" = as published
	// Book is what the book says where a gardener's own figure stands (Mine); nil
	// otherwise, or where the book has no such figure.
	Book *Figure
}

// Known reports whether a figure was given at all. An unknown figure is
// zero and must not be read as a measured zero.
func (f Figure) Known() bool { return f.Source != "" }

// Way is how a crop is started.
type Way string

// Ways of starting.
const (
	Sow    Way = "sow outdoors" // seed into its growing space
	SetOut Way = "set out"      // raised on the shelf, then set out
	Plant  Way = "plant"        // bulb, clove, tuber, slip, crown
)

// Harvest is how a crop is picked.
type Harvest string

// Ways of picking.
const (
	Once     Harvest = "once"      // a root, head or bulb per plant, pulled over a while
	CutAgain Harvest = "cut again" // leaves, regrowing
	Fruiting Harvest = "fruiting"  // a run of fruit or pods
	Flush    Harvest = "flush"     // one main head, then side shoots
	Bloom    Harvest = "bloom"     // flowers, not eaten
)

// Crop is one crop of the book.
type Crop struct {
	ID                  ID
	Name, NameUK, Latin string
	Also                []string // other names people use
	Family              string
	Foods               []string // foods it serves, best first: "salad", "beans"
	Class               string   // "leaf", "head", "root", "bulb", "tuber", "fruit", "legume", "grain", "herb", "flower"
	Warm                bool
	Hardiness           string // "hardy", "half-hardy", "tender", "very-tender"
	Perennial           bool
	Ways                []Way
	Harvest             Harvest
	Poison              string // poisonous part, "" = none known in the pack

	// Emergence: the published table and its cardinal temperatures.
	Germ                      []GermPoint // by rising soil temperature
	GermTable                 string      // name of the table Germ is taken from, "" = none
	GermOwn                   bool        // the table was measured on this crop, not on a near relation
	SoilMin, SoilOpt, SoilMax Figure      // °C; SoilOpt.Low and .High bound the good range
	EmergeDays                Figure      // only where there is no table: Low at SoilOpt, High at the ends of its range
	SowDepthMM                Figure

	// Development: thermal time between base and ceiling.
	BaseC, OptC, CeilC Figure  // °C
	RefC               float64 // mean temperature at which the printed days hold
	DaysFromSow        Figure  // to first harvest at RefC; zero = not sown to place
	DaysFromSet        Figure  // to first harvest from setting out or planting
	NurseryWeeks       Figure  // sowing to a plant fit to set out, at room warmth
	HarvestDays        Figure  // length of the picking period at RefC, if nothing ends it
	HoldDays           Figure  // how long a ready plant stands fit in cool weather (Once)

	// Size and yield of one plant at its wide spacing.
	SpacingM         Figure // equidistant, between plants
	SpreadM, HeightM Figure
	Habit            string // "upright", "rosette", "bush", "vine", "climbing", "columnar"
	Support          string // "", "helpful", "needed"
	MinDepthM        Figure
	VolumeL          Figure  // of medium a plant needs
	YieldKg          Figure  // a plant, over its whole harvest, full light
	MealKg           float64 // one meal for one person
	ShelfDays        Figure  // how long it keeps after picking

	// Light.
	SunMinH, SunBestH Figure // direct sun hours: below min not worth sowing, at best full yield
	DLIMin, DLIBest   Figure // mol/m2/day

	// Cold and heat, air temperatures in °C.
	FrostSeedling                             Figure // night at which unhardened young plants die
	FrostKill                                 Figure // night at which hardened full-grown plants die
	ChillC                                    Figure // nights below check growth (tender crops)
	SetNightMin                               Figure // least night for setting out
	SetSoilMin                                Figure // least soil for setting out
	FruitMaxDay, FruitMaxNight, FruitMinNight Figure // limits of fruit set
	HeatC                                     Figure // day above which quality is lost or it bolts

	// Bolting by cold then warmth, and by long days.
	VernMaxC   Figure // cold that counts is below this; zero = does not vernalise
	VernDays   Figure // days of it
	VernLeaves Figure // leaves (size) from which it counts
	BoltDayH   Figure // day length above which it bolts with warmth; zero = no

	// Cold needed before the harvested part forms (garlic, overwintered
	// sprouting broccoli): so many days below so much. Zero = none needed.
	// This is not bolting; without it there is no crop.
	ColdDays, ColdMaxC Figure

	// Day length wanted for the harvested part (bulbs, tubers); zero = none.
	FormDayH Figure
	// ShortDayH is the day length above which a short-day plant makes no flower
	// or tuber (roselle, chayote, sunchoke); zero = none.
	ShortDayH Figure

	// Plants that bear once a year, every year.
	FirstYears Figure // years from planting to the first crop; zero = in its first season
	BearDays   Figure // reference days from midwinter to the first pick
	RestH      Figure // hours of winter below 7.2 °C without which it hardly bears; zero = none known

	// SpentDays is the length of bloom when spent flowers are left on.
	SpentDays Figure
	// HostM is the height from which the plant can carry a climber sown at its foot.
	HostM Figure

	// Culture.
	BeeSet                                 bool   // bees must reach the flowers
	Block                                  int    // least plants in a block (wind pollinated corn), else 0
	IntervalY                              Figure // years before its family returns to the same medium
	BatchMin                               int    // smallest sensible number of plants sown together
	BatchMax                               int
	MinutesStart, MinutesWeek, MinutesPick float64 // per batch started; per plant and week; per pick round
	Winter                                 bool    // stands through a mild winter ready to pick
	Dormant                                bool    // planted as a resting crown, bare root or offset, from leaf fall to bud break
	Crown                                  bool    // comes again from buds, roots or cloves in the ground: the ground's cold kills it, not the air's
	Asked                                  bool    // offered only in gardens that name it: slow, tender, or for few tastes
	AutumnPlant                            bool    // planted in autumn for the next year (garlic, fava, overwintering onion)
	Note                                   string
}

// GermPoint is one cell of the emergence table. Missing figures are unknown,
// not zero.
type GermPoint struct {
	SoilC           float64
	Days            float64
	Pct             float64
	HasDays, HasPct bool
	None            bool // the table says no germination within the test
}
