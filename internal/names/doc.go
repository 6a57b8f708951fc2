// Package names follows one identity from packet to plate: lots of seed, the
// groups of plants that came from them, their spoken tags, and what they may be
// when nobody knows.
//
// Method: identity is what the ledger's replay says; here it is put into words
// and figures. A germination test has the exact interval of Clopper and Pearson
// (internal/chance); the number to sow counts the uncertainty of the rate too.
// Untested seed has a range, never a figure: from the least that may be sold
// (CFR-201) to 95 %, while it is younger than the shortest life of the lists in
// data/seed_life.csv. Windows of the shelf are the book's weeks to a plant fit
// to set out; waits beyond those are common practice, and say so.
//
// Left out: seed kept frozen or very dry (it lasts longer), how fast a rate
// falls with age, and telling plants apart from pictures.
package names

import (
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// Desk is all that can be said of names on one day.
type Desk struct {
	Date   cal.Day
	Garden *garden.Garden
	Book   *crop.Book
	State  *ledger.State

	standing []ledger.Planting // of the garden file, for replaying once more
	events   []ledger.Event
	back     map[string]bool
	facts    *facts
	tags     *tags
	groups   map[string]*Group
	threads  map[string]ledger.Thread
	order    []string // ids of groups
	lots     []Lot
}

// New makes the desk. Standing are the plantings of the garden file that the
// state was replayed over.
func New(g *garden.Garden, book *crop.Book, state *ledger.State, standing []ledger.Planting, events []ledger.Event, on cal.Day) (*Desk, error) {
	f, err := loadFacts()
	if err != nil {
		return nil, err
	}
	d := &Desk{Date: on, Garden: g, Book: book, State: state, standing: standing, events: events,
		back: ledger.TakenBack(events), facts: f, tags: newTags(), groups: map[string]*Group{}, threads: map[string]ledger.Thread{}}
	d.claim()
	for _, t := range state.Threads {
		d.threads[t.ID] = t
	}
	for _, p := range state.Plantings {
		d.groups[p.ID] = d.group(p)
		d.order = append(d.order, p.ID)
	}
	sort.Strings(d.order)
	d.lots = d.tin()
	return d, nil
}

// claim gives every lot and group its tag: entries in the order of writing,
// those taken back too; then what stands in the garden file.
func (d *Desk) claim() {
	for _, e := range d.events {
		switch e.Kind {
		case ledger.Sown, ledger.PutOut, ledger.PrickedOut, ledger.PottedOn, ledger.Hardening, ledger.Named, ledger.SeedGot:
			d.tags.claim(e.ID, false)
		}
	}
	var ids []string
	for _, p := range d.standing {
		ids = append(ids, p.ID)
	}
	for _, p := range d.State.Plantings {
		if !ledger.IsID(p.ID) {
			ids = append(ids, p.ID)
		}
	}
	for _, s := range d.Garden.Seeds {
		ids = append(ids, lotKey+s.ID)
	}
	for _, l := range d.State.Lots {
		if l.FromFile {
			ids = append(ids, lotKey+l.ID)
		}
	}
	sort.Strings(ids)
	for _, id := range ids {
		d.tags.claim(id, true)
	}
}

// lotKey parts the ids of the file's lots from those of its plantings.
const lotKey = "lot "

func (d *Desk) lotTag(id string) Tag {
	if t, ok := d.tags.of[id]; ok && ledger.IsID(id) {
		return t
	}
	return d.tags.of[lotKey+id]
}

// Find returns what bears a tag, as it was typed, heard or scanned.
func (d *Desk) Find(tag string) (id string, lot, ok bool) {
	id, ok = d.tags.taken[short(tag)]
	if !ok {
		return "", false, false
	}
	if len(id) > len(lotKey) && id[:len(lotKey)] == lotKey {
		return id[len(lotKey):], true, true
	}
	if _, group := d.groups[id]; group {
		return id, false, true
	}
	_, lot = d.Lot(id)
	return id, lot, lot
}

func (d *Desk) cropName(id string) string {
	if c, ok := d.Book.Crop(crop.ID(id)); ok {
		return c.Name
	}
	return id
}

func (d *Desk) spaceName(id string) string {
	if sp, ok := d.Garden.Space(garden.SpaceID(id)); ok && sp.Name != "" {
		return sp.Name
	}
	return id
}
