package web

import (
	"net/http"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// Drawing is a plain line drawing, in a box of 64 by 44.
type Drawing string

// kindChoice is one kind of growing space in plain words.
type kindChoice struct {
	kind   garden.Kind
	words  string
	draw   Drawing
	tape   string // the measures a tape gives
	size   string // taken when nobody measured; common practice
	depth  string // the usual range of medium; common practice
	water  string
	medium string
}

// kindChoices lists the kinds in the order they are asked. Usual sizes and
// depths are common practice, no source.
var kindChoices = []kindChoice{
	{garden.RaisedBed, "A bed with sides", "M6 18H50L58 30H14ZM6 18V28L14 40H58V30M14 30V40", "3 m x 1.2 m", "2 m x 1 m", "20-40 cm", "can", "compost blend"},
	{garden.Ground, "Open ground", "M2 30H62M8 30V26M20 30V26M32 30V26M44 30V26M56 30V26M2 38H62", "5 m x 60 cm", "3 m x 1 m", "20-40 cm", "can", "garden soil"},
	{garden.Bag, "A bag or a pot", "M16 12H48L44 40H20ZM16 12C24 16 40 16 48 12", "45 cm across", "45 cm across", "25-40 cm", "can", "potting mix"},
	{garden.PocketBag, "A bag with pockets", "M16 8H48V40H16ZM22 16H30V20H22ZM36 16H44V20H36ZM22 28H30V32H22ZM36 28H44V32H36Z", "50 cm across", "50 cm across", "40-60 cm", "can", "potting mix"},
	{garden.Reservoir, "A planter with a water store", "M8 12H56V40H8ZM8 30H56M14 35C18 32 22 38 26 35S34 32 38 35S46 38 50 35", "80 cm x 40 cm", "80 cm x 40 cm", "20-30 cm", "reservoir", "potting mix"},
	{garden.ElevatedBed, "A bed on legs", "M6 14H58V26H6ZM10 26V42M54 26V42", "1.5 m x 60 cm", "1.2 m x 60 cm", "15-30 cm", "can", "potting mix"},
	{garden.Tier, "One storey of tiers", "M4 42H60V32H4ZM14 32V22H50V32M24 22V12H40V22", "90 cm across", "60 cm across", "15-25 cm", "can", "potting mix"},
	{garden.Railing, "A box on a rail", "M2 22H62M10 22V42M54 22V42M16 10H48V24H16Z", "90 cm x 20 cm", "80 cm x 20 cm", "15-20 cm", "can", "potting mix"},
	{garden.Hanging, "A hanging basket", "M32 2L16 22M32 2L48 22M14 22H50C48 34 42 40 32 40S16 34 14 22", "35 cm across", "35 cm across", "15-25 cm", "can", "potting mix"},
	{garden.Bench, "A bench for trays", "M4 18H60V24H4ZM10 24V42M54 24V42M14 18V14H28V18", "1.6 m x 60 cm", "1.2 m x 60 cm", "", "", ""},
	{garden.LampShelf, "A shelf with lamps", "M8 4H56V40M8 4V40M8 34H56M14 10H50M22 34V28H30V34M36 34V28H44V34", "1.2 m x 50 cm", "1.2 m x 50 cm", "", "", ""},
	{garden.Heap, "A compost heap", "M4 42H60M8 42C14 20 24 12 32 12S50 20 56 42M18 34H26M30 24H36M38 34H46", "1 m x 1 m", "1 m x 1 m", "", "", ""},
}

func kindOf(k string) (kindChoice, bool) {
	for _, c := range kindChoices {
		if string(c.kind) == k {
			return c, true
		}
	}
	return kindChoice{}, false
}

// KindPage asks what kind of space comes next.
type KindPage struct {
	Frame
	First   bool
	Kinds   []KindLink
	Last    *HubSpace
	Form    string
	Working string
	HasDay  bool
	Count   int
}

// KindLink is one kind to choose, with its drawing.
type KindLink struct {
	Kind, Words string
	Draw        Drawing
}

func (s *site) kindPage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	if d.g == nil {
		http.Redirect(w, r, "/entry/place", http.StatusSeeOther)
		return
	}
	p := &KindPage{Frame: s.entryFrame(r, d, "What is it?", "entrykind"), Form: ledger.NewID(), Count: len(d.g.Spaces), First: len(d.g.Spaces) == 0, Working: s.o.Entry.Working()}
	for _, k := range kindChoices {
		p.Kinds = append(p.Kinds, KindLink{string(k.kind), k.words, k.draw})
	}
	if n := len(d.g.Spaces); n > 0 {
		sp := d.g.Spaces[n-1]
		p.Last = &HubSpace{ID: string(sp.ID), Name: sp.Name}
	}
	day, err := s.o.Day(r.Context())
	p.HasDay = err == nil && day != nil
	s.draw(w, r, http.StatusOK, p)
}
