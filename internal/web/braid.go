package web

import (
	"fmt"
	"time"
)

// Braid is the picture of "Is it safe?": each device a strand, tied into the
// rope where its entries came home. A loose end holds entries that have not.
// Its table says the same.
type Braid struct {
	Tall    float64
	Rope    float64
	Strands []BraidStrand
	Weeks   []Tick
	Says    string
}

// BraidStrand is one device.
type BraidStrand struct {
	Name   string
	Y      float64
	Ties   string // path of the ties
	Loose  string // path of the loose end, "" = none
	Words  string // at the end
	Kept   string
	Last   string
	Unsent string
}

// Sizes of the braid, px.
const (
	braidWide  = 344.0
	braidLeft  = 8.0
	braidEnd   = 250.0 // today
	braidWeeks = 8
	braidStep  = 46.0
)

// braid draws the last eight weeks.
func braid(now time.Time, strands []Strand) Braid {
	b := Braid{Rope: 34}
	b.Tall = b.Rope + braidStep*float64(len(strands)) + 22
	span := time.Duration(braidWeeks) * 7 * 24 * time.Hour
	at := func(t time.Time) float64 {
		return braidLeft + (braidEnd-braidLeft)*(1-float64(now.Sub(t))/float64(span))
	}
	for w := braidWeeks; w >= 0; w -= 2 {
		t := Tick{X: at(now.Add(-time.Duration(w) * 7 * 24 * time.Hour)), Words: fmt.Sprintf("%d weeks ago", w)}
		if w == 0 {
			t.Words = "now"
		} else if w != braidWeeks {
			t.Words = ""
		}
		b.Weeks = append(b.Weeks, t)
	}
	waiting := 0
	for i, s := range strands {
		d := BraidStrand{Name: s.Name, Y: b.Rope + braidStep*float64(i+1), Kept: fmt.Sprint(s.Entries), Last: ago(now, s.Last)}
		for _, h := range s.Homes {
			if x := at(h); x >= braidLeft {
				d.Ties += fmt.Sprintf("M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f", x-12, d.Y, x-4, d.Y, x-6, b.Rope, x, b.Rope)
			}
		}
		switch {
		case s.Waiting < 0:
			d.Unsent, d.Words = "not known", ""
		case s.Waiting == 0:
			d.Unsent = "none, " + ago(now, s.Heard)
		default:
			waiting += s.Waiting
			d.Unsent = fmt.Sprintf("%s, %s", plural(s.Waiting, "entry", "entries"), ago(now, s.Heard))
			d.Words = fmt.Sprintf("%d unsent", s.Waiting)
			d.Loose = fmt.Sprintf("M%.1f %.1fC%.1f %.1f %.1f %.1f %.1f %.1f", braidEnd, d.Y, braidEnd+6, d.Y-9, braidEnd+12, d.Y+9, braidEnd+20, d.Y)
		}
		if s.Revoked {
			d.Unsent += "; shut out"
		}
		b.Strands = append(b.Strands, d)
	}
	b.Says = plural(len(strands), "device has", "devices have") + " brought entries home. "
	if waiting == 0 {
		b.Says += "None is known to hold any back."
	} else {
		b.Says += plural(waiting, "entry has", "entries have") + " not come home."
	}
	return b
}
