package web

import (
	"fmt"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// WalkPage is one stop of the walk, or its end.
type WalkPage struct {
	Frame
	Walk   *reckon.Walk
	Stop   *StopCard // nil = the walk is over
	Before string    // address of the stop before, "" = none
	After  string    // of the next one, or of the end
	Ribbon *Ribbon
}

// StopCard is one stop with its form.
type StopCard struct {
	reckon.Stop
	Form     string
	Day      string
	DidIt    string
	Here     string // address of this stop: what is done leaves the list, so the next takes its number
	Next     string // address of the next
	Measures []Option
	Packets  []Option
	At       string // the space the answer is about
	Label    string // a line to write on a stick, "" = none
}

// stopCard makes the card of a stop.
func stopCard(day *reckon.Day, st reckon.Stop) StopCard {
	c := StopCard{Stop: st, Form: ledger.NewID(), Day: day.Date.String(), DidIt: didIt(st.Task), Here: stopAt(st.No), Next: stopAt(st.No + 1), At: spaceFor(day, st.Task)}
	if st.Event == string(ledger.Picked) {
		c.Measures = measures[:3]
	}
	return c
}

func stopAt(n int) string { return "/walk?stop=" + strconv.Itoa(n) }

// walk draws one stop.
func (s *site) walk(r *http.Request, day *reckon.Day) (page, error) {
	w := day.Walk(walkAsk(r, day))
	n, err := strconv.Atoi(r.URL.Query().Get("stop"))
	if err != nil || n < 1 {
		n = 1
	}
	p := &WalkPage{Walk: w}
	title := "The walk is done"
	if n <= len(w.Stops) {
		c := stopCard(day, w.Stops[n-1])
		c.Packets = packetChoices(s.namesIf(r.Context()), c.Task)
		p.Stop, p.After = &c, stopAt(n+1)
		title = c.Where
	} else {
		n = len(w.Stops) + 1
	}
	if n > 1 {
		p.Before = stopAt(n - 1)
	}
	p.Frame = s.framed(r, day, title, "walk")
	return p, nil
}

// StripPage is the walk on paper, folded to the size of a pocket.
type StripPage struct {
	Frame
	Walk *reckon.Walk
	Day  *reckon.Day
	Care []string // of each stop
}

func (s *site) strip(r *http.Request, day *reckon.Day) (page, error) {
	w := day.Walk(walkAsk(r, day))
	return &StripPage{Frame: s.framed(r, day, "The walk on paper", "strip"), Walk: w, Day: day, Care: stopCare(w.Stops)}, nil
}

// stopCare is the caution of each stop on a sheet that holds them all.
func stopCare(stops []reckon.Stop) []string {
	var cautions, places []string
	for _, st := range stops {
		cautions, places = append(cautions, st.Answer.Caution), append(places, "stop "+strconv.Itoa(st.No))
	}
	return reckon.CareOnce(cautions, places)
}

// Ribbon is the path unrolled from the gate on, with a flag for every space.
type Ribbon struct {
	Tall  float64
	Foot  float64 // where the path ends
	Says  string
	Flags []RibbonFlag
}

// RibbonFlag is one space on its side of the path. Its length is minutes.
type RibbonFlag struct {
	reckon.Flag
	Rest           bool // nothing to do here
	Y              float64
	X, W           float64
	NameX, VerbX   float64
	NameEnd        bool // the name ends at NameX
	Shown, Does    string
	Numbers, Hands string
}

// Sizes of the ribbon, in px.
const (
	ribbonWide = 360.0
	ribbonMid  = 180.0
	ribbonHalf = 7.0   // half the path's width
	ribbonMost = 164.0 // the longest flag
	ribbonMin  = 12.0
	flagRow    = 46.0
	restRow    = 9.0
)

// drawRibbon places the flags. Lengths are to scale: the longest fills its side.
func drawRibbon(w *reckon.Walk) *Ribbon {
	r := &Ribbon{Says: ribbonSays(w)}
	most := 15
	for _, f := range w.Flags {
		most = max(most, f.Minutes)
	}
	y := 26.0
	for _, f := range w.Flags {
		g := RibbonFlag{Flag: f, Rest: len(f.Stops) == 0, Y: y, Hands: "side not known"}
		g.W = ribbonMin
		if !g.Rest {
			g.W = max(ribbonMin, ribbonMost*float64(f.Minutes)/float64(most))
		}
		switch f.Side {
		case "left":
			g.X, g.NameX, g.VerbX, g.NameEnd, g.Hands = ribbonMid-ribbonHalf-g.W, ribbonMid-ribbonHalf-4, ribbonMid+ribbonHalf+8, true, "left"
		case "right":
			g.X, g.NameX, g.VerbX, g.Hands = ribbonMid+ribbonHalf, ribbonMid+ribbonHalf+4, ribbonMid-ribbonHalf-8, "right"
		default: // across the path, as far as anybody knows
			g.X, g.NameX, g.VerbX = ribbonMid+ribbonHalf, ribbonMid+ribbonHalf+4, ribbonMid-ribbonHalf-8
		}
		g.Numbers = numbers(f.Stops)
		g.Shown, g.Does = clipMiddle(f.Name, 20), clip(g.Numbers+" "+f.Verbs, 20)
		if g.Rest {
			y += restRow
		} else {
			y += flagRow
		}
		r.Flags = append(r.Flags, g)
	}
	r.Foot = y + 4
	r.Tall = y + 26
	return r
}

// numbers writes stops in a row: "3", "3 and 4", "3 to 6".
func numbers(stops []int) string {
	switch n := len(stops); {
	case n == 0:
		return ""
	case n == 1:
		return strconv.Itoa(stops[0])
	default:
		return fmt.Sprintf("%d–%d", stops[0], stops[n-1])
	}
}

func ribbonSays(w *reckon.Walk) string {
	busy := 0
	for _, f := range w.Flags {
		if len(f.Stops) > 0 {
			busy++
		}
	}
	return fmt.Sprintf("The path, with work in %d of %s. A flag's length is its minutes; a hollow one begins with a look.", busy, plural(len(w.Flags), "space", "spaces"))
}

// taskFrom makes the task of a note that waited without a signal: what was on
// the list then may be gone from it now.
func taskFrom(v url.Values) reckon.Task {
	n, _ := strconv.Atoi(v.Get("count"))
	return reckon.Task{ID: v.Get("task"), Space: v.Get("space"), Verb: v.Get("verb"), Object: v.Get("object"), Planting: v.Get("planting"),
		Crop: v.Get("crop"), Count: n, Event: v.Get("event")}
}

// nextStop is where an answer given on the walk leads: what was done leaves
// the list, so that the next stop has its number; not yet goes one on. An
// answer given elsewhere leads back to Today.
func nextStop(v url.Values, on int) string {
	n, err := strconv.Atoi(v.Get("stop"))
	if err != nil || n < 1 || n > 9999 {
		return "/"
	}
	return stopAt(n + on)
}

// clipMiddle shortens a name to n letters from its middle: names of one kind
// often differ only at the end.
func clipMiddle(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	head := n/2 - 1
	tail := string(r[len(r)-(n-1-head):])
	if _, whole, ok := strings.Cut(tail, " "); ok && len(whole) > 2 {
		tail = whole
	}
	return strings.TrimSpace(string(r[:head])) + "… " + strings.TrimSpace(tail)
}
