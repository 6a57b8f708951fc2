package web

import (
	"fmt"
	"math"
	"net/http"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// SpacePage is one growing space.
type SpacePage struct {
	Frame
	Space   reckon.SpaceDay
	Wide    Panel
	Halves  []Panel
	Row     Row
	Sun     []SunMonth
	SunSays string
	Do      []Option
	History []HistoryItem
	Before  *reckon.SpaceDay // neighbours in walking order
	After   *reckon.SpaceDay
	Picture *Picture // newest kept one
	Entry   bool     // the garden can be changed by pages
}

// halfYear is the days of one narrow panel of a space's page.
const halfYear cal.Day = 26 * 7

// SunMonth is one bar of the sun picture, and one row of its table.
type SunMonth struct {
	Month, Short, Hours, Light string
	X, Y, H                    float64
}

// HistoryItem is one note with its way back.
type HistoryItem struct {
	reckon.Note
	Form string
}

// noteKinds are the things to note about a space.
var noteKinds = []Option{
	{Value: "sown", Words: "Sown"},
	{Value: "set-out", Words: "Set out"},
	{Value: "picked", Words: "Picked"},
	{Value: "pulled", Words: "Pulled"},
	{Value: "lost", Words: "Lost"},
	{Value: "counted", Words: "Counted"},
	{Value: "looked", Words: "Looked"},
}

// heapKinds are those of a heap.
var heapKinds = []Option{{Value: "looked", Words: "Looked"}}

func thingsToNote(sp reckon.SpaceDay) []Option {
	if sp.Kind == string(garden.Heap) {
		return heapKinds
	}
	return noteKinds
}

// spaceOf finds a space by its id.
func spaceOf(day *reckon.Day, id string) (int, bool) {
	for i := range day.Spaces {
		if day.Spaces[i].ID == id {
			return i, true
		}
	}
	return 0, false
}

// space draws the page of one space.
func (s *site) space(r *http.Request, day *reckon.Day) (page, error) {
	i, ok := spaceOf(day, r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	sp := day.Spaces[i]
	p := &SpacePage{Frame: s.framed(r, day, sp.Name, "space"), Space: sp, Do: thingsToNote(sp), Entry: s.o.Entry != nil}
	var err error
	if p.Picture, err = s.newestPicture(r, sp); err != nil {
		return nil, err
	}
	rows := rowsOf(day)
	row := rows[len(rows)-len(day.Spaces)+i]
	p.Row = row
	from := wholeFrom(day)
	p.Wide = drawPanel(day, []Row{row}, span{from, wholeTo(day)}, wideOne, "wide")
	for k := cal.Day(0); k < 2; k++ {
		half := span{from + k*halfYear, from + (k+1)*halfYear}
		p.Halves = append(p.Halves, drawPanel(day, []Row{row}, half, narrowOne, fmt.Sprintf("h%d", k+1)))
	}
	p.Sun = sunMonths(sp)
	p.SunSays = sunSays(sp.SunH)
	for _, n := range sp.History {
		p.History = append(p.History, HistoryItem{n, ledger.NewID()})
	}
	if i > 0 {
		p.Before = &day.Spaces[i-1]
	}
	if i+1 < len(day.Spaces) {
		p.After = &day.Spaces[i+1]
	}
	return p, nil
}

// CropLinks are the crops of the space, each once, to read about.
func (p *SpacePage) CropLinks() []reckon.Choice {
	if !p.Crops {
		return nil
	}
	var out []reckon.Choice
	seen := map[string]bool{}
	for _, it := range p.Row.Items {
		if it.CropID != "" && !seen[it.CropID] {
			seen[it.CropID] = true
			out = append(out, reckon.Choice{ID: it.CropID, Name: it.Crop})
		}
	}
	return out
}

// monthNames in full and in one letter.
var monthNames = [12]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}

// sunTall is the height of a bar of 16 hours, in px.
const sunTall = 80.0

// sunMonths places the bars: 28 px a month, 5 px an hour.
func sunMonths(sp reckon.SpaceDay) []SunMonth {
	out := make([]SunMonth, 12)
	for m := range out {
		h := math.Min(math.Max(sp.SunH[m], 0), 16) * sunTall / 16
		out[m] = SunMonth{
			Month: monthNames[m], Short: monthNames[m][:1],
			Hours: fmt.Sprintf("%.0f", sp.SunH[m]), Light: fmt.Sprintf("%.0f", sp.DLI[m]),
			X: float64(m)*28 + 4, Y: 20 + sunTall - h, H: h,
		}
	}
	return out
}

// sunSays is the sentence before the bars.
func sunSays(h [12]float64) string {
	least, most := 0, 0
	for m := range h {
		if h[m] < h[least] {
			least = m
		}
		if h[m] > h[most] {
			most = m
		}
	}
	return fmt.Sprintf("On a clear day: about %.0f hours in %s, about %.0f in %s.", h[most], monthNames[most], h[least], monthNames[least])
}
