// Package garden holds what a garden is, and reads it from the file a
// gardener writes by hand.
//
// The file is YAML (1.2, without anchors, aliases and tags), described in
// docs/formats.md and by the JSON Schema that Schema returns. Read reports all
// faults at once, each with its place, the line it stands in and a remedy; a
// Garden comes only from a file without faults.
//
// Conventions: latitude north +, longitude east +; the plan's x runs east and
// y north, in metres, from a corner the gardener chooses; a space stands
// centred on its point; "turn" goes clockwise from a long side that runs
// east-west. Lengths keep what was typed.
//
// Left out: sloping ground, and writing files: pages that change a
// garden file patch its text.
package garden

import (
	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/unit"
)

// Identifiers are the words the gardener gives in the file: lower case
// letters, digits and dashes. Names shown on pages are separate and free.
type (
	SpaceID  string
	BatchID  string
	PersonID string
	CropID   string // a slug of the crop book, such as "snap-bean-bush"
	FoodID   string // what is eaten: "salad", "beans"; see Want
)

// Garden is a garden file, read and free of faults.
type Garden struct {
	Name      string
	Place     Place
	From      cal.Day // the date to plan from unless the caller says otherwise; 0 = not said
	People    []Person
	Batches   []Batch
	Spaces    []Space // in walking order
	Obstacles []Obstacle
	Wants     []Want
	Musts     []Must
	Nevers    []Never
	Seeds     []Seed
	Shelf     Shelf       // all lamps together
	Minutes   float64     // wished minutes of work a week, all people; 0 = not limited
	WaterDay  unit.Volume // wished litres a day for all spaces in a dry week; not known = not limited
	BadYears  string      // how much is planned for bad years: "", NotAtAll, Somewhat or Much
	Ended     []Space     // spaces that are no longer there, kept for their past
	Guessed   []string    // keys of the file that nobody measured or said: "wants", "weather"
}

// Place is where the garden lies. The plan drawing has x to the east and y to
// the north, in metres, from a corner of the gardener's choosing.
type Place struct {
	LatDeg, LonDeg float64
	Elev           unit.Length
	Zone           string   // IANA name
	Sheltered      bool     // walls around: less wind
	Weather        string   // file with the weather, named beside the garden file; "" = not said
	Normals        *Normals // twelve months written in the file itself; nil = none
}

// Person is somebody who works or eats here.
type Person struct {
	ID      PersonID
	Name    string
	Seated  bool
	Reach   unit.Length // how far in over a rim
	Lift    unit.Mass   // what they may lift
	Minutes float64     // minutes a week
}

// Batch is one lot of growing medium with a history. Rotation follows the
// batch, not the place.
type Batch struct {
	ID      BatchID
	Kind    string // "potting mix", "garden soil", "compost blend", "coir mix"
	Since   int    // year filled, 0 = not known
	History []Grew
}

// Grew says that a crop (or a family) grew in a batch and left in a year.
type Grew struct {
	Crop   CropID // one of Crop and Family is set
	Family string
	Until  cal.Day // 1 July of the year when only a year was given
}

// Kind is what sort of growing space this is.
type Kind string

// Kinds of growing space.
const (
	RaisedBed   Kind = "raised bed"
	ElevatedBed Kind = "elevated bed" // on legs
	Bag         Kind = "bag"
	PocketBag   Kind = "pocket bag"
	Reservoir   Kind = "reservoir planter"
	Tier        Kind = "tier" // one storey of a tiered planter
	Railing     Kind = "railing planter"
	Hanging     Kind = "hanging planter"
	Ground      Kind = "open ground"
	Bench       Kind = "bench" // potting bench: trays hardening, nothing rooted
	LampShelf   Kind = "lamp shelf"
	Heap        Kind = "heap" // of compost: nothing rooted
)

// Space is one growing space.
type Space struct {
	ID        SpaceID
	Name      string
	Kind      Kind
	X, Y      float64     // centre, metres east and north on the plan
	TurnDeg   float64     // long side turned clockwise from east-west... 0 = long side runs east-west
	Length    unit.Length // outer plan size along the long side
	Width     unit.Length
	Round     unit.Length  // diameter; when known Length and Width are not
	Shape     string       // an odd shape by its measures, as typed: "L 3 m x 2 m, less 1 m x 80 cm"
	Figure    *geom.Figure // of an odd shape; Length and Width are its outer box's then
	Floor     unit.Length  // what it stands on, above the plan's ground: a terrace; not said = the ground
	RimUp     unit.Length  // height of the soil surface above that floor, as typed: what a person reaches over
	Rim       unit.Length  // height of the soil surface above the ground: Floor + RimUp
	Depth     unit.Length  // of medium
	Volume    unit.Volume  // of medium: given, or area x depth
	Pockets   int          // separate plant places, for pocket bags and tiers
	Medium    BatchID
	Water     string // "drip", "can", "reservoir", "rain"
	Watering  Watering
	Dark      bool   // container colour: warms faster
	StandsOn  string // the surface that carries it and others, as named: "balcony"
	Bears     Bears  // what that surface, or else its own rail or hook, may carry
	Supports  []Support
	Covers    []Cover
	ReachedBy []PersonID // who can work here; empty = everyone standing
	Standing  []Standing
	Others    []Other  // what stands here and is no crop of the book
	TallOK    bool     // tall plants may stand here at all (not on a railing)
	Guessed   []string // keys that nobody measured yet: "depth", "medium"
	Until     cal.Day  // it was taken away on that day; 0 = it is there
}

// AreaM2 returns the surface for planting.
func (s Space) AreaM2() float64 {
	if s.Figure != nil {
		return s.Figure.AreaM2()
	}
	if s.Round.Known() {
		return 0.7853981633974483 * s.Round.M * s.Round.M
	}
	return s.Length.M * s.Width.M
}

// VolumeL returns the medium's volume in litres.
func (s Space) VolumeL() float64 {
	if s.Volume.Known() {
		return s.Volume.L
	}
	return s.AreaM2() * s.Depth.M * 1000
}

// Grows reports whether crops root here through their life (not lamps, not
// bench, not heap).
func (s Space) Grows() bool { return s.Kind != LampShelf && s.Kind != Bench && s.Kind != Heap }

// Support is something to climb on.
type Support struct {
	Kind   string // "trellis", "arch", "cage", "stakes", "strings"
	Length unit.Length
	Height unit.Length
	Side   string // "pole", "equator", "east", "west", "middle"; where in the space
}

// Cover is a net, cloth or lid at hand for a space.
type Cover struct {
	Kind     string  // "insect net", "bird net", "fleece", "shade cloth", "cloche"
	Light    float64 // share of light that passes, 0-1
	From, To cal.Day // when it is on; zero = on as needed
	Always   bool
}

// Standing is a planting in the ground (or on the shelf) on the file's date.
type Standing struct {
	ID      string // the planting's own id, made from space and order when not given
	Crop    CropID
	Variety string     // "" = not known
	OneOf   []string   // "one of these"
	Since   cal.Window // sown or set out since about then
	SetOut  bool       // Since is the setting out, not the sowing
	Count   int
	Looks   string // "well", "poor", "bolting", "finished", "young"; "" = not said
	Keep    bool   // the gardener says it stays
}

// Obstacle is something that takes light.
type Obstacle struct {
	ID                    string
	Name                  string
	Kind                  string  // "box", "wall", "post", "tree", "roof"
	X, Y                  float64 // centre
	TurnDeg               float64
	Length, Width, Height unit.Length // Height: of its top above the ground, not above Base
	Base                  unit.Length // height of its underside above the ground
	Round                 unit.Length // diameter of a post or crown
	LeafOn, LeafOff       float64     // share of light passing a tree's crown; walls 0
	LeafFrom, LeafTo      int         // first and last month in leaf, 1-12; 0 = evergreen
}

// Want is what the household eats, by food and week.
type Want struct {
	Food     FoodID
	Crops    []CropID // which crops serve it; empty = the book's own list
	Meals    float64  // meals a week, all eaters
	Liking   float64  // worth of the first meal, 1 = ordinary
	From, To int      // months when wanted, 0 = all year
}

// Must is a planting wished whatever happens.
type Must struct {
	Crop   CropID
	Plants int
	Space  SpaceID // "" = anywhere
}

// Never is a crop not wanted, anywhere or in one space.
type Never struct {
	Crop  CropID
	Space SpaceID // "" = anywhere
}

// Seed is a lot of seed or planting pieces in the tin.
type Seed struct {
	ID      string
	Crop    CropID
	Variety string
	Year    int // packed for; 0 = not known
	Count   int // 0 = plenty
}

// Shelf is what stands under lamps: places for trays or pots.
type Shelf struct {
	Places   float64 // pots or cells of about 7 cm
	LightDLI float64 // mol/m2/day at leaf height
	WarmthC  float64
}

// Space returns the space called id.
func (g *Garden) Space(id SpaceID) (Space, bool) {
	for _, s := range g.Spaces {
		if s.ID == id {
			return s, true
		}
	}
	return Space{}, false
}

// Person returns the person called id.
func (g *Garden) Person(id PersonID) (Person, bool) {
	for _, p := range g.People {
		if p.ID == id {
			return p, true
		}
	}
	return Person{}, false
}

// Batch returns the batch of medium called id.
func (g *Garden) Batch(id BatchID) (Batch, bool) {
	for _, b := range g.Batches {
		if b.ID == id {
			return b, true
		}
	}
	return Batch{}, false
}
