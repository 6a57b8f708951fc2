package web

import (
	"fmt"
	"sort"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/reckon"
)

// Row is one space, or the shelf, with the lines that belong to it. The
// picture, the sentences and the table of Lines all come from rows.
type Row struct {
	ID        string // space id; "" = the seed shelf
	Name      string
	Shelf     bool
	Heap      bool
	Items     []Item
	Sentences []string
	Idle      int // weeks
}

// Item is one planting of a row.
type Item struct {
	reckon.Line
	No                    int    // over all rows, the same for the shelf and the space
	Ask                   bool   // it may be asked why
	Tray                  bool   // in pots, with no day known to move
	Ends, SpaceName       string // where it ends up, for the shelf
	Shown                 string // name with the number of plants
	Shelved, Into, Out    string // windows in words
	FirstPick, LastPick   string
	Sure, Clash, NextName string
	Wanted                string       // of a start that can wait: in how many futures it would still be wanted
	next                  *reckon.Line // the line it may clash with
}

// rowsOf makes the rows: the shelf first, then spaces in walking order. Every
// line with time on the shelf is in both places, as in the garden.
func rowsOf(day *reckon.Day) []Row {
	names := map[string]string{}
	for _, sp := range day.Spaces {
		names[sp.ID] = sp.Name
	}
	shelf := Row{Name: "Seed shelf", Shelf: true}
	seen := map[string]bool{}
	extra := map[string][]reckon.Line{}
	for _, l := range day.Shelf {
		if seen[l.ID] {
			continue
		}
		seen[l.ID] = true
		if _, has := names[l.Space]; has && l.In.None() {
			extra[l.Space] = append(extra[l.Space], l) // shown where its pots stand
			continue
		}
		shelf.Items = append(shelf.Items, itemOf(day, l, names))
		extra[l.Space] = append(extra[l.Space], l)
	}
	for _, sp := range day.Spaces {
		for _, l := range sp.Lines {
			if l.OnShelf != 0 && !l.In.None() && !seen[l.ID] {
				seen[l.ID] = true
				shelf.Items = append(shelf.Items, itemOf(day, l, names))
			}
		}
	}
	sortItems(shelf.Items)
	shelf.Sentences = shelfSentences(day, shelf.Items)
	rows := []Row{shelf}
	for _, sp := range day.Spaces {
		rows = append(rows, spaceRow(day, sp, extra[sp.ID], names))
	}
	number(rows)
	return rows
}

// number counts the lines, so that pictures and table can point to each other
// shortly. A line on the shelf and in its space has one number.
func number(rows []Row) {
	nos := map[string]int{}
	for _, row := range rows {
		for i := range row.Items {
			it := &row.Items[i]
			if nos[it.ID] == 0 {
				nos[it.ID] = len(nos) + 1
			}
			it.No = nos[it.ID]
		}
	}
}

// spaceRow makes the row of one space; more are lines known from the shelf
// only.
func spaceRow(day *reckon.Day, sp reckon.SpaceDay, more []reckon.Line, names map[string]string) Row {
	lines := append([]reckon.Line{}, sp.Lines...)
	for _, m := range more {
		known := false
		for _, l := range lines {
			known = known || l.ID == m.ID
		}
		if !known {
			lines = append(lines, m)
		}
	}
	row := Row{ID: sp.ID, Name: sp.Name, Heap: sp.Kind == string(garden.Heap), Idle: sp.IdleWeeks}
	for _, l := range lines {
		it := itemOf(day, l, names)
		it.next = clashLine(l, lines)
		if l.ClashOf > 0 {
			it.NextName = l.ClashWith
			if it.next != nil {
				it.NextName = it.next.Crop
			}
			it.Clash = fmt.Sprintf("clash in %d of 20", l.ClashOf)
		}
		row.Items = append(row.Items, it)
	}
	sortItems(row.Items)
	row.Sentences = rowSentences(day, row)
	return row
}

// clashLine finds the line another may clash with: by id, or else by the
// shown name of its crop.
func clashLine(l reckon.Line, lines []reckon.Line) *reckon.Line {
	if l.ClashOf <= 0 {
		return nil
	}
	for i := range lines {
		if lines[i].ID == l.ClashWith && lines[i].ID != l.ID {
			return &lines[i]
		}
	}
	for i := range lines {
		if lines[i].Crop == l.ClashWith && lines[i].ID != l.ID {
			return &lines[i]
		}
	}
	return nil
}

// sortItems puts items in order of time, ties by id.
func sortItems(items []Item) {
	sort.SliceStable(items, func(i, j int) bool {
		a, b := items[i], items[j]
		if startOf(a.Line) != startOf(b.Line) {
			return startOf(a.Line) < startOf(b.Line)
		}
		return a.ID < b.ID
	})
}

// startOf is the day a line begins in its space.
func startOf(l reckon.Line) cal.Day {
	if l.In.None() {
		return l.OnShelf
	}
	return l.In.Likely
}

// itemOf puts a line in words.
func itemOf(day *reckon.Day, l reckon.Line, names map[string]string) Item {
	it := Item{Line: l, Ends: l.Space, SpaceName: names[l.Space], Shown: lineName(l)}
	if l.OnShelf != 0 {
		it.Shelved = "from " + dayFrom(l.OnShelf, day.Date)
	}
	it.Into = window(l.In, day.Date)
	if l.Standing && l.In.Likely <= day.Date {
		it.Into = "stands since " + window(l.In, day.Date)
	}
	if l.In.None() {
		it.Tray = true
		it.Into = "no day yet"
	}
	it.Out = window(l.Out, day.Date)
	switch {
	case l.Out.None() && it.Tray:
		it.Out = "no day yet"
	case l.Out.None():
		it.Out = "stays"
	}
	if !l.First.None() {
		it.FirstPick = window(l.First, day.Date)
	}
	if !l.Last.None() {
		it.LastPick = window(l.Last, day.Date)
	}
	if l.OfTwenty >= 0 && !l.Standing {
		it.Sure = fmt.Sprintf("%d of 20", l.OfTwenty)
	}
	if x := l.Later; x != nil && !x.Near && !l.Standing {
		it.Wanted = fmt.Sprintf("still wanted in %d", x.Still)
	}
	return it
}

// lineName is "carrots (24)".
func lineName(l reckon.Line) string {
	n := l.Crop
	if n == "" {
		n = "not known"
	}
	if l.Plants > 0 {
		n += fmt.Sprintf(" (%d)", l.Plants)
	}
	return n
}

// shelfSentences says the shelf in short sentences.
func shelfSentences(day *reckon.Day, items []Item) []string {
	if len(items) == 0 {
		return []string{"Nothing is on the shelf, and nothing is planned for it."}
	}
	var out []string
	for _, it := range items {
		where := it.SpaceName
		if where == "" {
			where = "its space"
		}
		on := "Sow"
		if it.OnShelf <= day.Date {
			on = "There now:"
		}
		s := fmt.Sprintf("%s %s", on, it.Shown)
		if it.OnShelf > day.Date {
			s += " on " + dayFrom(it.OnShelf, day.Date)
		}
		if it.Tray {
			out = append(out, fmt.Sprintf("%s %s; no day to set out yet.", on, it.Shown))
			continue
		}
		out = append(out, s+fmt.Sprintf("; out to %s about %s.", where, dayFrom(it.In.Likely, day.Date)))
	}
	return out
}

// rowSentences says a space in short sentences: what stands, how long the
// ground is bare, what follows, where they may clash.
func rowSentences(day *reckon.Day, row Row) []string {
	if len(row.Items) == 0 {
		if row.Heap {
			return []string{"A heap: nothing grows here."}
		}
		return []string{"Nothing stands here and nothing is planned."}
	}
	var out []string
	busy := day.Date
	for _, it := range row.Items {
		if it.Tray {
			out = append(out, fmt.Sprintf("In pots: %s; no day to set out yet.", it.Shown))
			continue
		}
		out = append(out, bare(busy, it.Line)...)
		out = append(out, itemSentence(day, it, it.In.Likely < busy && it.In.Likely > day.Date))
		if it.Clash != "" {
			out = append(out, fmt.Sprintf("C%s: %s would still give when %s is due.", strings.TrimPrefix(it.Clash, "c"), it.Crop, orNext(it.NextName)))
		}
		end := it.Line.Out.Likely
		if it.Line.Out.None() {
			end = wholeTo(day)
		}
		busy = max(busy, end)
	}
	return out
}

// bare says the gap before a line, when it is a week or more.
func bare(busy cal.Day, l reckon.Line) []string {
	gap := int(l.In.Likely - busy)
	if gap < 7 {
		return nil
	}
	return []string{fmt.Sprintf("Bare for about %s.", plural((gap+3)/7, "week", "weeks"))}
}

// itemSentence says one line; beside, when something else stands there too.
func itemSentence(day *reckon.Day, it Item, beside bool) string {
	stays := "and it stays"
	if !it.Line.Out.None() {
		stays = "until " + window(it.Line.Out, day.Date)
	}
	if it.Standing {
		return fmt.Sprintf("Now: %s, %s.", it.Shown, stays)
	}
	word := "Then"
	if beside {
		word = "Beside it"
	}
	s := fmt.Sprintf("%s %s, from about %s %s.", word, it.Shown, dayFrom(it.In.Likely, day.Date), stays)
	if it.Sure != "" {
		s += fmt.Sprintf(" It makes it in %s.", it.Sure)
	}
	if it.Wanted != "" {
		s = strings.TrimSuffix(s, ".") + "; " + it.Wanted + "."
	}
	return s
}

func orNext(n string) string {
	if n == "" {
		return "the next crop"
	}
	return n
}
