package names

import (
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// Happening is one entry of a line's story, in words.
type Happening struct {
	Event  string
	On     cal.Day
	Words  string
	Of     Tag // the group it was written about, when another of the line
	Voided bool
}

// Story tells what happened to a group and, before it was one, to those it
// came from: oldest first.
func (d *Desk) Story(id string) []Happening {
	line := map[string]bool{}
	until := map[string]int64{} // of an ancestor: the place of the entry that parted it
	seq := map[string]int64{}
	for _, e := range d.events {
		seq[e.ID] = e.Seq
	}
	var up func(id string, last int64)
	up = func(id string, last int64) {
		if g, ok := d.groups[id]; ok && !line[id] {
			line[id], until[id] = true, last
			for _, f := range g.From {
				up(f, seq[g.ID])
			}
		}
	}
	up(id, 1<<62)
	var out []Happening
	for _, e := range d.events {
		about, words := d.tell(e)
		for _, p := range about {
			if !line[p] || e.Seq > until[p] {
				continue
			}
			h := Happening{Event: e.ID, On: e.Happened, Words: words, Voided: d.back[e.ID]}
			if p != id && e.ID != id {
				h.Of = d.tags.of[p]
			}
			out = append(out, h)
			break
		}
	}
	return out
}

// LotStory tells what happened to a lot, oldest first.
func (d *Desk) LotStory(id string) []Happening {
	var out []Happening
	for _, e := range d.events {
		body, err := ledger.Decode(e)
		if err != nil {
			continue
		}
		words, lot := "", ""
		switch b := body.(type) {
		case ledger.Lot:
			lot, words = e.ID, "Got"
			if b.From != "" {
				words = "Saved from " + string(d.tags.of[b.From])
			}
			if b.Source != "" {
				words += ", " + b.Source
			}
			words += "." + note(b.Note)
		case ledger.Germination:
			lot, words = b.Lot, fmt.Sprintf("Tested: %d of %d came up.", b.Up, b.Sown)+note(b.Note)
		case ledger.SeedUse:
			lot, words = b.Lot, "Used: "+amount(b.Count, b.Grams)+why(b.Why)+"."+note(b.Note)
		case ledger.SeedCount:
			lot, words = b.Lot, "Left: "+amount(b.Count, b.Grams)+"."+note(b.Note)
			if b.Gone {
				words = "Used up, or thrown away." + note(b.Note)
			}
		case ledger.Started:
			if e.Kind == ledger.Sown {
				lot, words = b.Lot, fmt.Sprintf("Sown in %s, %s.", d.spaceName(b.Space), amount(b.Count, 0))+note(b.Note)
			}
		}
		if lot == id {
			out = append(out, Happening{Event: e.ID, On: e.Happened, Words: words, Of: d.tags.of[e.ID], Voided: d.back[e.ID]})
		}
	}
	return out
}

func note(s string) string {
	if s == "" {
		return ""
	}
	return " " + capital(s) + "."
}

func why(s string) string {
	if s == "" {
		return ""
	}
	return ", " + s
}

func amount(n int, grams float64) string {
	switch {
	case n > 0 && grams > 0:
		return fmt.Sprintf("%d seeds, %.3g g", n, grams)
	case grams > 0:
		return fmt.Sprintf("%.3g g", grams)
	case n > 0:
		return fmt.Sprintf("%d seeds", n)
	}
	return "not counted"
}

// tell puts an entry into words, with the groups it is about.
func (d *Desk) tell(e ledger.Event) (about []string, words string) {
	body, err := ledger.Decode(e)
	if err != nil {
		return nil, ""
	}
	switch b := body.(type) {
	case ledger.Started:
		about = []string{e.ID}
		if b.Planting != "" {
			about = append(about, b.Planting)
		}
		words = fmt.Sprintf("%s in %s", capital(string(e.Kind)), d.spaceName(b.Space)) + counted(b.Count)
		if l, ok := d.Lot(b.Lot); ok {
			words += ", from the packet " + string(l.Tag)
		}
		words += "." + note(b.Note)
	case ledger.Handover:
		about = append([]string{e.ID}, b.OneOf...)
		if b.Planting != "" {
			about = append(about, b.Planting)
		}
		words = capital(string(e.Kind)) + counted(b.Count)
		if b.Pot != "" {
			words += ", pots of " + b.Pot
		}
		if b.Space != "" {
			words += ", to " + d.spaceName(b.Space)
		}
		if b.Rest == "gone" {
			words += "; there are no others"
		}
		if len(b.OneOf) > 0 {
			words += fmt.Sprintf("; from one of %d trays, nobody knows which", len(b.OneOf))
		}
		words += "." + note(b.Note)
	case ledger.Moved:
		about = append([]string{e.ID}, b.OneOf...)
		words = fmt.Sprintf("Set out in %s%s; from one of %d trays, nobody knows which.", d.spaceName(b.Space), counted(b.Count), len(b.OneOf)) + note(b.Note)
	case ledger.Naming:
		about = append(d.reached(e.ID), b.Planting)
		switch {
		case b.Is != "":
			words = "Named " + b.Is
		case len(b.Not) > 0:
			words = "It is not " + orList(b.Not)
		default:
			words = "Looked at, and could not tell"
		}
		if b.By != "" {
			words += ", by " + b.By
		}
		words += "." + note(b.Note)
	case ledger.Amount:
		about = []string{b.Planting}
		words = "Picked"
		if b.Kg > 0 {
			words += fmt.Sprintf(" %.2f kg", b.Kg)
		} else if b.Measure != "" {
			words += " a " + b.Measure
		}
		words += "." + note(b.Note)
	case ledger.Ended:
		about, words = []string{b.Planting}, capital(string(e.Kind))+counted(b.Count)+why(b.Cause)+"."+note(b.Note)
	case ledger.Count:
		about, words = []string{b.Planting}, fmt.Sprintf("Counted: %d.", b.Count)+note(b.Note)
	case ledger.Look:
		about, words = []string{b.Planting}, "Looked: "+b.Looks+"."+note(b.Note)
	case ledger.LookAt:
		about, words = []string{b.Planting}, "Looked: "+b.Looks+"."+note(b.Note)
	case ledger.Lot:
		about, words = []string{b.From}, "Seed saved, "+amount(b.Count, b.Grams)+": packet "+string(d.tags.of[e.ID])+"."+note(b.Note)
	}
	return about, words
}

func counted(n int) string {
	if n == 0 {
		return ""
	}
	return ", " + plantsOf(n)
}

// reached lists the groups a naming touched.
func (d *Desk) reached(event string) []string {
	var out []string
	for id, t := range d.threads {
		if slices.ContainsFunc(t.Named, func(c ledger.Called) bool { return c.Event == event }) {
			out = append(out, id)
		}
	}
	slices.Sort(out)
	return out
}
