package reckon

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// CropDesk answers what may be grown in a garden: windows, emergence, the
// course of a start, and every figure it rests on. Windows are worked out when
// first asked for and kept. It may be asked from several goroutines.
type CropDesk struct {
	in    *Inputs
	base  *crop.Book // as built in, without own figures
	place *Place
	menu  []Entry
	plan  *Result // behind the day; may be nil
	notes []ledger.FigureNote
	// Faults are own figures that do not fit the book, in words; they are left
	// out of everything.
	Faults []string

	effects map[string]PlanEffect // by event, of own figures
	yards   *yards
}

// yards are the windows' weather and what was worked out from it. They serve
// every desk of one place.
type yards struct {
	mu    sync.Mutex
	place *Place
	made  bool
	set   weather.Set
	start cal.Day
	airs  map[int]*stand.Air // by space, openYard = a plain open bed
	known map[windowsOf][]stand.Window
	plain *stand.Air // the open bed in the plan's own futures
}

type windowsOf struct {
	crop *crop.Crop
	yard int
}

// openYard stands for a plain open bed in full sun where a space is asked for.
const openYard = -1

// errNoYears is a place without the weather for windows.
var errNoYears = errors.New("there is no weather to work windows out from")

// NewCropDesk makes a desk over a plan's ground. in holds the book with own
// figures, base the one without; plan may be nil. before, which may be nil,
// hands over what it had worked out for the same place.
func NewCropDesk(in *Inputs, base *crop.Book, ground *Ground, plan *Result, before *CropDesk) *CropDesk {
	d := &CropDesk{in: in, base: base, place: ground.Place, menu: ground.Menu, plan: plan, effects: map[string]PlanEffect{}}
	if in.State != nil {
		d.notes = in.State.Figures
	}
	if before != nil && before.yards.place == ground.Place {
		d.yards = before.yards
	} else {
		d.yards = &yards{place: ground.Place, airs: map[int]*stand.Air{}, known: map[windowsOf][]stand.Window{}}
	}
	_, faults := OwnBook(base, d.notes)
	for _, f := range faults {
		d.Faults = append(d.Faults, f.Text+": "+f.What+".")
	}
	return d
}

// Date is the day the desk answers for.
func (d *CropDesk) Date() cal.Day { return d.in.Date }

// air is the weather of a yard for windows: many years, so that its edges do
// not hang on twenty.
func (d *CropDesk) air(yard int) (*stand.Air, error) {
	y := d.yards
	if !y.made {
		y.set, y.start = windowYears(ownRecord(d.in), d.in.Normals, d.in.site())
		y.made = true
	}
	if len(y.set.Futures) == 0 {
		return nil, errNoYears
	}
	if a, ok := y.airs[yard]; ok {
		return a, nil
	}
	e := OpenBed(d.in.site(), y.start, y.set.Futures)
	if yard != openYard {
		e = env(d.in, d.in.Garden.Spaces[yard], d.place.Lights[yard], y.set.Futures)
		e.Start, e.Weeks = y.start, windowWeeks
	}
	a := stand.NewAir(e)
	y.airs[yard] = a
	return a, nil
}

// windows are the crop's windows in a yard, by way.
func (d *CropDesk) windows(c *crop.Crop, yard int) ([]stand.Window, error) {
	y := d.yards
	y.mu.Lock()
	defer y.mu.Unlock()
	if w, ok := y.known[windowsOf{c, yard}]; ok {
		return w, nil
	}
	a, err := d.air(yard)
	if err != nil {
		return nil, err
	}
	w := a.Windows(c, windowStep)
	y.known[windowsOf{c, yard}] = w
	return w, nil
}

// growing is the air of a space in the plan's twenty futures.
func (d *CropDesk) growing(yard int) *stand.Air {
	if yard != openYard {
		return d.place.Airs[yard]
	}
	y := d.yards
	y.mu.Lock()
	defer y.mu.Unlock()
	if y.plain == nil {
		e := OpenBed(d.in.site(), d.in.Date.Monday(), d.place.Set.Futures)
		e.Weeks = d.in.Weeks + afterWeeks
		y.plain = stand.NewAir(e)
	}
	return y.plain
}

// CropLine is a crop in the list.
type CropLine struct {
	ID, Name string
	Other    string // other names, "" = none
	Says     string // what it has to do with this garden, a sentence
}

// CropList is every crop in three heaps.
type CropList struct {
	Named []CropLine // named by the garden: standing, planned, in the tin, wanted
	Could []CropLine // may be grown here in the plan's weeks
	Rest  []CropLine
}

// List sorts the book's crops by what they have to do with the garden.
func (d *CropDesk) List() CropList {
	var out CropList
	for _, c := range byName(d.in.Book.Crops) {
		says, here := d.herewards(c)
		start := d.firstStart(c)
		line := CropLine{ID: string(c.ID), Name: c.Name, Other: otherNames(c)}
		switch {
		case here:
			line.Says = strings.TrimSpace(says + " " + start)
			out.Named = append(out.Named, line)
		case start != "":
			line.Says = start
			out.Could = append(out.Could, line)
		default:
			out.Rest = append(out.Rest, line)
		}
	}
	return out
}

func byName(crops []*crop.Crop) []*crop.Crop {
	out := slices.Clone(crops)
	slices.SortStableFunc(out, func(a, b *crop.Crop) int { return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name)) })
	return out
}

func otherNames(c *crop.Crop) string {
	var out []string
	for _, n := range append(strings.Split(c.NameUK, ", "), c.Also...) {
		if n != "" && n != c.Name && !slices.Contains(out, n) {
			out = append(out, n)
		}
	}
	return strings.Join(out, ", ")
}

// herewards says where a crop stands, is planned or is named, and whether it
// is at all.
func (d *CropDesk) herewards(c *crop.Crop) (says string, here bool) {
	g := d.in.Garden
	var stands, next []string
	for _, s := range whatStands(d.in) {
		if n := spaceName(g.Spaces[s.space]); s.crop.ID == c.ID && !slices.Contains(stands, n) {
			stands = append(stands, n)
		}
	}
	if d.plan != nil {
		for _, pl := range d.plan.Plan.Plantings {
			o := d.plan.model.p.Options[pl.Option]
			if n := spaceName(g.Spaces[d.plan.model.spaces[o.Space]]); o.Crop == string(c.ID) && !slices.Contains(next, n) {
				next = append(next, n)
			}
		}
	}
	if len(stands) > 0 {
		says = sentence("stands in " + list(firstFew(stands)))
	}
	if len(next) > 0 {
		says = strings.TrimSpace(says + " " + sentence("planned for "+list(firstFew(next))))
	}
	for _, f := range d.notes {
		here = here || f.Crop == string(c.ID)
	}
	return says, here || says != "" || named1(g, c)
}

// firstFew keeps a list short.
func firstFew(words []string) []string {
	const most = 3
	if len(words) <= most {
		return words
	}
	return append(slices.Clone(words[:most-1]), plural(len(words)-most+1, "more space", "more spaces"))
}

func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// named1 reports a crop named in the garden file itself.
func named1(g *garden.Garden, c *crop.Crop) bool {
	id := garden.CropID(c.ID)
	if isMust(g, id) {
		return true
	}
	for _, w := range g.Wants {
		if slices.Contains(w.Crops, id) {
			return true
		}
	}
	for _, s := range g.Seeds {
		if s.Crop == id {
			return true
		}
	}
	return false
}

// firstStart is the next start the plan's menu offers, in words; "" = none.
func (d *CropDesk) firstStart(c *crop.Crop) string {
	var best *Entry
	for i := range d.menu {
		e := &d.menu[i]
		if e.Crop.ID != c.ID || e.Hopeless {
			continue
		}
		if best == nil || e.Week < best.Week || e.Week == best.Week && e.Growth.Success > best.Growth.Success {
			best = e
		}
	}
	if best == nil {
		return ""
	}
	when := "this week"
	if best.Week > 0 {
		when = "in " + week(best.Day)
	}
	return sentence(capital(wayVerb(best.Way)) + " " + when + ": works " + ofWords(ofTwenty(best.Growth.Success, d.in.Futures)))
}

func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func ofWords(n int) string { return fmt.Sprintf("%d of 20", n) }

// wayVerb is what is done for a way of starting.
func wayVerb(w crop.Way) string {
	switch w {
	case crop.SetOut:
		return "set out"
	case crop.Plant:
		return "plant"
	}
	return "sow outdoors"
}

// Find looks a typed name up: the crop of exactly that name, or all whose
// names hold it, or the one most like it.
func (d *CropDesk) Find(typed string) (exact string, like []CropLine) {
	typed = strings.ToLower(strings.TrimSpace(typed))
	if typed == "" {
		return "", nil
	}
	if id, ok := d.in.Book.Named(typed); ok {
		return string(id), nil
	}
	for _, c := range byName(d.in.Book.Crops) {
		for _, n := range append([]string{string(c.ID), c.Name, c.NameUK, c.Latin, c.Family}, c.Also...) {
			if strings.Contains(strings.ToLower(n), typed) {
				like = append(like, CropLine{ID: string(c.ID), Name: c.Name, Other: otherNames(c), Says: d.firstStart(c)})
				break
			}
		}
	}
	if len(like) == 0 {
		if id, ok := d.in.Book.Nearest(typed); ok {
			c, _ := d.in.Book.Crop(id)
			like = append(like, CropLine{ID: string(id), Name: c.Name, Other: otherNames(c), Says: d.firstStart(c)})
		}
	}
	return "", like
}
