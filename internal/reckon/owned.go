package reckon

import (
	"fmt"
	"slices"
	"strings"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// OwnBook is the crop book with the gardener's own figures in place of the
// book's, later ones over earlier. Faults name figures that no longer fit the
// book, by their place in notes; the others hold. Without notes it is book
// itself.
func OwnBook(book *crop.Book, notes []ledger.FigureNote) (*crop.Book, []crop.Fault) {
	if len(notes) == 0 {
		return book, nil
	}
	return book.WithChanges(changesOf(notes))
}

func changesOf(notes []ledger.FigureNote) []crop.Change {
	out := make([]crop.Change, len(notes))
	for i, n := range notes {
		out[i] = changeOf(n.OwnFigure)
	}
	return out
}

func changeOf(f ledger.OwnFigure) crop.Change {
	return crop.Change{Crop: crop.ID(f.Crop), Variety: f.Variety, Figure: f.Figure, Value: f.Value, Low: f.Low, High: f.High, Why: f.Why}
}

// lotOf is the variety of the first seed lot at hand for a crop, "" = none.
func lotOf(g *garden.Garden, id crop.ID) string {
	for _, s := range g.Seeds {
		if string(s.Crop) == string(id) {
			return s.Variety
		}
	}
	return ""
}

// toBuy reports whether seed of a crop is still to buy: the household lists
// what is in its tin, in the file or by notes, and this is not in it. An empty
// list says nothing.
func toBuy(in *Inputs, id crop.ID) bool {
	known := len(in.Garden.Seeds) > 0
	if slices.ContainsFunc(in.Garden.Seeds, func(s garden.Seed) bool { return string(s.Crop) == string(id) }) {
		return false
	}
	if in.State == nil {
		return known
	}
	for _, l := range in.State.Lots {
		if known = true; l.Crop == string(id) && l.Gone == 0 {
			return false
		}
	}
	return known
}

// asGrown is a crop as this garden would start it: with the own figures of the
// variety at hand, where there are any.
func asGrown(in *Inputs, c *crop.Crop) *crop.Crop {
	if v, ok := in.Book.Variety(c.ID, lotOf(in.Garden, c.ID)); ok {
		return v
	}
	return c
}

// ownReason says which of the gardener's figures a crop is reckoned with, ""
// when there are none.
func ownReason(c *crop.Crop) string {
	var said []string
	for _, k := range crop.FigureKeys() {
		f, _ := c.Figure(k.Name)
		if !f.Mine() {
			continue
		}
		s := fmt.Sprintf("%s %s", crop.KeyWords(k.Name), amount(f.Value, k.Unit))
		if f.Book != nil {
			s += fmt.Sprintf(" (book %s)", amount(f.Book.Value, k.Unit))
		}
		said = append(said, s)
	}
	switch len(said) {
	case 0:
		return ""
	case 1:
		return "Your own figure: " + said[0] + "."
	case 2, 3:
		return "Your own figures: " + list(said) + "."
	}
	return fmt.Sprintf("Your own figures: %s and %d more.", strings.Join(said[:2], ", "), len(said)-2)
}

// amount writes a figure with its unit, without needless digits.
func amount(v float64, unit string) string {
	s := strings.TrimRight(strings.TrimRight(fmt.Sprintf("%.3f", v), "0"), ".")
	if s == "-0" {
		s = "0"
	}
	s = strings.Replace(s, "-", "−", 1)
	if one, ok := map[string]string{"days": "day", "weeks": "week", "years": "year", "hours": "hour", "leaves": "leaf"}[unit]; ok && v == 1 {
		unit = one
	}
	return strings.TrimSpace(s + " " + unit)
}
