package ledger

import (
	"encoding/json"
	"time"

	"bedweek/internal/cal"
)

// Kind says what happened.
type Kind string

// Kinds of event. Old kinds and versions are decoded for ever.
const (
	GardenSet Kind = "garden"    // a garden file was accepted; body: Garden
	Sown      Kind = "sown"      // body: Started
	PutOut    Kind = "set out"   // body: Started or Moved
	Picked    Kind = "picked"    // body: Amount
	Pulled    Kind = "pulled"    // body: Ended
	Lost      Kind = "lost"      // body: Ended with a cause
	Counted   Kind = "counted"   // body: Count; an assertion, replay believes it
	Looked    Kind = "looked"    // body: Look
	Voided    Kind = "voided"    // body: Void; takes another event back
	Dismissed Kind = "dismissed" // body: Dismissal; a piece of advice not wanted
	Watered   Kind = "watered"   // body: Watering
	Measured  Kind = "measured"  // body: Reading; own thermometer or rain gauge
)

// Event is one entry of the ledger, never changed once written.
type Event struct {
	Seq      int64
	ID       string // made on the device: 26 characters, see NewID
	Parent   string // the event this one answers or corrects
	Device   string
	Happened cal.Day   // civil day in the garden, as the gardener says
	Written  time.Time // instant, UTC
	Kind     Kind
	Version  int // of the body's layout
	Body     json.RawMessage
	Digest   []byte
	Chain    []byte

	body any // understood already; see Recall
}

// Bodies, version 1. Planting ids are those of the garden file's standing
// plantings or the id of the event that started the planting.
type (
	// Started is a sowing or setting out.
	Started struct {
		Planting string   `json:"planting,omitempty"` // given for a setting out of what stood on the shelf
		Crop     string   `json:"crop"`
		Variety  string   `json:"variety,omitempty"`
		OneOf    []string `json:"one_of,omitempty"`
		Space    string   `json:"space"`
		Count    int      `json:"count"`
		Lot      string   `json:"lot,omitempty"`
		Note     string   `json:"note,omitempty"`
	}
	// Amount is a picking.
	Amount struct {
		Planting string  `json:"planting"`
		Kg       float64 `json:"kg,omitempty"`
		Measure  string  `json:"measure,omitempty"` // "handful", "bowl", "bucket"
		Note     string  `json:"note,omitempty"`
	}
	// Ended is a planting pulled or lost.
	Ended struct {
		Planting string `json:"planting"`
		Count    int    `json:"count,omitempty"` // 0 = all of it
		Cause    string `json:"cause,omitempty"`
		Note     string `json:"note,omitempty"`
	}
	// Count is a count by eye.
	Count struct {
		Planting string `json:"planting"`
		Count    int    `json:"count"`
		Note     string `json:"note,omitempty"`
	}
	// Look is how something looked.
	Look struct {
		Planting string `json:"planting,omitempty"`
		Space    string `json:"space,omitempty"`
		Looks    string `json:"looks"` // "well", "poor", "bolting", "finished", "young", or free words
		Note     string `json:"note,omitempty"`
	}
	// Void takes an event back.
	Void struct {
		Event string `json:"event"`
		Why   string `json:"why,omitempty"`
	}
	// Dismissal keeps a piece of advice away.
	Dismissal struct {
		Task string `json:"task"`
		Why  string `json:"why,omitempty"`
	}
	// Garden is the whole garden file as text.
	Garden struct {
		Text   string `json:"text"`
		SHA256 string `json:"sha256"`
	}
)

// State is the ledger replayed: what stands, what came, what was said.
type State struct {
	GardenText  string
	Plantings   []Planting // by id
	Dismissed   map[string]string
	Events      int
	Last        cal.Day
	Differences []string // counts by eye that disagree with the sum, in words

	SpaceLooks []SpaceLook // how whole spaces looked last, by space
	Disputes   []Dispute   // two answers to one question, until one is taken back

	Wet      []WetLook     `json:",omitempty"` // waterings, and looks at whole spaces with their hour, in replay order
	Readings []ReadingNote `json:",omitempty"` // own thermometer and gauge, in replay order

	Assumed []AssumedNote `json:",omitempty"` // answers of rounds after time away, in replay order
	Edges   []EdgeNote    `json:",omitempty"` // corrections of skylines, in replay order

	Forecasts []ForecastNote `json:",omitempty"` // what was said would come, the first of each planting, by planting
	Figures   []FigureNote   `json:",omitempty"` // own figures of crops, in replay order

	Wishes []WishNote `json:",omitempty"` // wishes about the plan, in replay order
	Kept   []KeptNote `json:",omitempty"` // plans kept under a name, in replay order

	Pictures []PictureNote `json:",omitempty"` // photos, in replay order
	Lots     []LotState    `json:"-"`          // lots of seed the entries speak of, by id
	Traits   []TraitNote   `json:"-"`          // how varieties look, in replay order
	Threads  []Thread      `json:"-"`          // where plantings came from and what they are called, by id
	Done     []DoneNote    `json:",omitempty"` // work noted as done, in replay order
	Sounds   []SoundNote   `json:",omitempty"` // voice notes, in replay order
	Epoch    string        `json:",omitempty"` // of the record: "" = never restored, else a number and the entry that began it
}

// SpaceLook is how a whole space looked, as last said.
type SpaceLook struct {
	Space string
	Looks string
	On    cal.Day
}

// Dispute is one question with different answers from different devices,
// neither written with the other in view. All are kept. The last in replay
// order is used until a person takes the others back.
type Dispute struct {
	Planting string // or the space, for a look at a whole space
	Kind     Kind
	Events   []string // ids, in replay order
	Words    []string // each answer in words, same order
}

// Planting is one planting as the ledger knows it.
type Planting struct {
	ID       string
	Crop     string
	Variety  string
	OneOf    []string
	Space    string
	Sown     cal.Day // 0 = not sown here
	SetOut   cal.Day // 0 = not set out
	Count    int
	Ended    cal.Day // 0 = stands
	Cause    string
	Looks    string
	LookedOn cal.Day
	PickedKg float64
	Picks    int
	LastPick cal.Day
	Lot      string

	Known    bool   // Count is known: given at the start or counted by eye
	Began    int    // the count it started with, 0 = not known
	Removed  int    // plants pulled, lost or moved away since the last count
	From     string // the planting it was set out from, when only a part was
	FromFile bool   // stands in the garden file; see ReplayOver
}
