package names

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// Tray is one group on a shelf or bench, with what it needs and when.
type Tray struct {
	*Group
	Days   int        // since it was sown
	Places float64    // of the shelf, in pots of 7 cm
	Prick  cal.Window // none = pricked out already, or sown in its own pot
	Ready  cal.Window // fit to set out
	Bound  cal.Window // its pot holds it no longer
	Next   ledger.Kind
	Says   string // what next, and when
	Light  string
	Basis  string
}

// Waits of the shelf that no book gives, in days: common practice, no source.
const (
	leafEarly, leafLate       = 7, 14  // from up to the first true leaf
	hardEarly, hardLate       = 7, 14  // of hardening
	boundLikely, boundLate    = 14, 35 // past the last week of the book
	potEarly, potMid, potLate = 21, 28, 42
)

// Trays lists what stands on shelf and bench, the most pressing first.
func (d *Desk) Trays() []Tray {
	var out []Tray
	for _, g := range d.Groups() {
		if g.Shelf {
			out = append(out, d.tray(g))
		}
	}
	return out
}

// Tray returns one group's state on the shelf.
func (d *Desk) Tray(id string) (Tray, bool) {
	if g, ok := d.groups[id]; ok && g.Shelf && g.Stands(d.Date) {
		return d.tray(g), true
	}
	return Tray{}, false
}

func (d *Desk) tray(g *Group) Tray {
	t := Tray{Group: g, Places: places(g), Basis: "weeks: the crop book; waits on the shelf: common practice"}
	if g.Sown != 0 {
		t.Days = int(d.Date - g.Sown)
	}
	c, ok := d.Book.Crop(crop.ID(g.CropID))
	if !ok {
		t.Says = "This crop is not in the book: nothing can be said of its days."
		return t
	}
	t.Light = d.light(c)
	if g.Sown == 0 || c.NurseryWeeks.Value == 0 {
		t.Says = "The book has no weeks on the shelf for it. Set it out when roots hold the pot together."
		t.Next = ledger.PutOut
		return t
	}
	day := func(weeks float64) cal.Day { return g.Sown + cal.Day(math.Round(7*weeks)) }
	w := c.NurseryWeeks
	t.Ready = cal.Window{Early: day(w.Low), Likely: day(w.Value), Late: day(w.High)}
	t.Bound = cal.Window{Early: day(w.High), Likely: day(w.High) + boundLikely, Late: day(w.High) + boundLate}
	if s, ok := g.step(ledger.PottedOn); ok {
		t.Bound = cal.Window{Early: max(t.Bound.Early, s.On+potEarly), Likely: max(t.Bound.Likely, s.On+potMid), Late: max(t.Bound.Late, s.On+potLate)}
	}
	d.next(&t, c)
	return t
}

// ownPot reports whether a crop is sown straight into its own pot: large seed,
// and roots that dislike it. Common practice.
func ownPot(c *crop.Crop) bool {
	switch c.Family {
	case "Cucurbitaceae", "Fabaceae", "Poaceae":
		return true
	}
	return false
}

// next says which hand-over comes next.
func (d *Desk) next(t *Tray, c *crop.Crop) {
	_, pricked := t.step(ledger.PrickedOut)
	_, potted := t.step(ledger.PottedOn)
	hard, hardening := t.step(ledger.Hardening)
	if !pricked && !potted && !hardening && !ownPot(c) {
		warm := d.Garden.Shelf.WarmthC
		if warm == 0 {
			warm = 20
		}
		if up, ok := c.EmergeDaysAt(warm); ok {
			t.Prick = cal.Window{Early: t.Sown + cal.Day(up) + leafEarly, Likely: t.Sown + cal.Day(up) + (leafEarly+leafLate)/2, Late: t.Sown + cal.Day(up) + leafLate}
		}
	}
	switch {
	case hardening:
		t.Next = ledger.PutOut
		t.Says = fmt.Sprintf("Hardening since %s. It takes %d to %d days: set out from %s.", hard.On.Short(), hardEarly, hardLate, around(cal.Window{Early: hard.On + hardEarly, Likely: hard.On + (hardEarly+hardLate)/2, Late: hard.On + hardLate}))
	case !t.Prick.None() && d.Date < t.Ready.Early-hardEarly:
		t.Next = ledger.PrickedOut
		t.Says = "Prick out at the first true leaf, " + around(t.Prick) + "."
		if d.Date > t.Prick.Late {
			t.Says = "Prick out now if they are crowded: the first true leaf came " + around(t.Prick) + ". In cells of their own they may stay."
		}
	case d.Date >= t.Bound.Likely:
		t.Next = ledger.PottedOn
		t.Says = "The pot holds it no longer: it was full " + around(t.Bound) + ". Set out, pot on, or give away."
	case d.Date >= t.Ready.Early-hardLate:
		t.Next = ledger.Hardening
		t.Says = fmt.Sprintf("Fit to set out %s. Start hardening %d to %d days before: shade and stillness first.", around(t.Ready), hardEarly, hardLate)
	default:
		t.Next = ledger.PottedOn
		t.Says = "Look under the pot: roots at the holes want a larger one. Fit to set out " + around(t.Ready) + "."
	}
}

// around writes a window short: "about 3 June (20 May to 15 June)".
func around(w cal.Window) string {
	if w.None() {
		return "on a day nobody knows"
	}
	if w.Early == w.Late {
		return "about " + w.Likely.Short()
	}
	return fmt.Sprintf("about %s (%s to %s)", w.Likely.Short(), w.Early.Short(), w.Late.Short())
}

// Around is around for the pages.
func Around(w cal.Window) string { return around(w) }

// light says what the lamp gives against what the crop wants.
func (d *Desk) light(c *crop.Crop) string {
	dose := d.Garden.Shelf.LightDLI
	if dose <= 0 {
		return "Nobody measured the lamp."
	}
	switch {
	case !c.DLIMin.Known():
		return fmt.Sprintf("The lamp gives %.0f mol a day.", dose)
	case dose < c.DLIMin.Value:
		return fmt.Sprintf("Short of light: the lamp gives %.0f mol a day, grown plants want %.0f or more. Expect long stems.", dose, c.DLIMin.Value)
	}
	return fmt.Sprintf("Light enough: %.0f mol a day from the lamp, %.0f is the least for grown plants.", dose, c.DLIMin.Value)
}

// places is the room a group takes, in pots of 7 cm: a pot of another size
// takes its square.
func places(g *Group) float64 {
	n := float64(max(g.Count, 1))
	if cm := centimetres(g.Pot()); cm > 0 {
		return n * cm * cm / 49
	}
	return n
}

// centimetres reads the number of a pot's size; 0 when it has none.
func centimetres(pot string) float64 {
	text, _, _ := strings.Cut(strings.Replace(strings.TrimSpace(pot), ",", ".", 1), " ")
	v, err := strconv.ParseFloat(strings.TrimSuffix(text, "cm"), 64)
	if err != nil || v < 1 || v > 60 {
		return 0
	}
	return v
}

// Room says how full the shelf is.
func (d *Desk) Room() (taken, all float64) {
	for _, t := range d.Trays() {
		if sp, ok := d.Garden.Space(gardenID(t.Space)); ok && sp.Kind == lampShelf {
			taken += t.Places
		}
	}
	return taken, d.Garden.Shelf.Places
}
