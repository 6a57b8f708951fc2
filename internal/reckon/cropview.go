package reckon

import (
	"fmt"
	"slices"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/stand"
)

// CropAsk is what is asked of one crop.
type CropAsk struct {
	Variety string
	Space   string   // space id or OpenBedID; "" = where the garden grows it or best could
	Way     crop.Way // of the start followed; "" = the one to choose now
	Week    cal.Day  // day of the start followed; 0 = the next that works
}

// OpenBedID stands for a plain open bed of 30 cm in full sun where a space is
// asked for. No space of a garden is called so: ids hold no blanks.
const OpenBedID = "open bed"

// CropView is all that can be said of a crop here.
type CropView struct {
	Crop      *crop.Crop // with own figures
	Variety   string
	Says      string // the answer for this garden and date
	Also      []string
	Here      string // where it stands and is planned, "" = nowhere
	Yard      string // where windows and start are reckoned, in words
	Varieties []string
	Types     []Choice // the same plant in other types
	Spaces    []Choice // that can hold it; the first is the plain open bed
	Space     string
	Ways      []CropWindow
	Germ      []GermRow
	GermSays  string
	Start     *StartView // nil when no start can be followed
	StartNot  string     // why not
	Figures   []FigureRow
	Missing   []Choice // figures the book does not know
	Sources   []crop.Source
	Own       []OwnView
}

// CropWindow is one way of starting through the year.
type CropWindow struct {
	Way   crop.Way
	Verb  string
	Says  string
	Tries []stand.Try // from January in the north, from July in the south
	Ends  []WindowEnd
	stand.Window
}

// WindowEnd is an end of a range with what limits it.
type WindowEnd struct {
	Best  bool
	Open  bool // the range begins here; else it ends
	Day   cal.Day
	Of20  int
	Limit string
}

// View answers about one crop; false when the book has none of that name.
func (d *CropDesk) View(id string, ask CropAsk) (*CropView, bool, error) {
	plain, ok := d.in.Book.Crop(crop.ID(id))
	if !ok {
		return nil, false, nil
	}
	v := &CropView{Variety: ask.Variety}
	v.Crop, _ = d.in.Book.Variety(plain.ID, ask.Variety)
	v.Varieties, v.Types = d.varieties(plain), d.types(plain)
	yard := d.yardFor(v, ask.Space)
	windows, err := d.windows(v.Crop, yard)
	if err != nil {
		return nil, true, err
	}
	for _, w := range windows {
		v.Ways = append(v.Ways, d.cropWindow(w))
	}
	v.answer(d)
	if here, is := d.herewards(plain); is {
		v.Here = here
	}
	v.Germ, v.GermSays = germRows(v.Crop)
	d.follow(v, yard, ask)
	d.figures(v)
	return v, true, nil
}

// yardFor chooses where to reckon: the space asked for, else where the garden
// grows the crop or best could, else a plain open bed. It lists the choices.
func (d *CropDesk) yardFor(v *CropView, asked string) int {
	v.Spaces = []Choice{{OpenBedID, "a plain open bed in full sun"}}
	best, sun, chosen := openYard, -1.0, openYard
	for i, sp := range d.in.Garden.Spaces {
		if !sp.Grows() || d.place.Airs[i] == nil || !spaceFits(d.in.Garden, sp, v.Crop) {
			continue
		}
		v.Spaces = append(v.Spaces, Choice{string(sp.ID), spaceName(sp)})
		sum := 0.0
		for _, h := range d.place.Lights[i].SunH {
			sum += h
		}
		if sum > sun {
			best, sun = i, sum
		}
		if string(sp.ID) == asked {
			chosen = i
		}
	}
	if chosen == openYard && asked != OpenBedID {
		chosen = best
		if i, ok := d.usualYard(v.Crop); ok {
			chosen = i
		}
	}
	if chosen == openYard {
		v.Space, v.Yard = OpenBedID, "a plain open bed in full sun"
		return chosen
	}
	v.Space, v.Yard = string(d.in.Garden.Spaces[chosen].ID), spaceName(d.in.Garden.Spaces[chosen])
	return chosen
}

// varieties are those the garden knows of a crop: in the tin, standing, or
// with own figures.
func (d *CropDesk) varieties(c *crop.Crop) []string {
	var out []string
	add := func(v string) {
		if v != "" && !slices.Contains(out, v) {
			out = append(out, v)
		}
	}
	for _, s := range d.in.Garden.Seeds {
		if string(s.Crop) == string(c.ID) {
			add(s.Variety)
		}
	}
	for _, s := range whatStands(d.in) {
		if s.crop.ID == c.ID {
			add(s.variety)
			for _, o := range s.oneOf {
				add(o)
			}
		}
	}
	for _, n := range d.notes {
		if n.Crop == string(c.ID) {
			add(n.Variety)
		}
	}
	slices.Sort(out)
	return out
}

// types are the book's other crops of the same plant: onion by day length,
// tomato by growth.
func (d *CropDesk) types(c *crop.Crop) []Choice {
	var out []Choice
	for _, o := range d.in.Book.Crops {
		if o.ID != c.ID && sameKind(o, c) {
			out = append(out, Choice{string(o.ID), o.Name})
		}
	}
	return out
}

// sameKind reports two types of one plant: one species, and a slug that begins
// with the same word. Cabbage and kale are one species and two crops.
func sameKind(a, b *crop.Crop) bool {
	first := func(c *crop.Crop) string { w, _, _ := strings.Cut(string(c.ID), "-"); return w }
	kin := func(c *crop.Crop) string {
		w := strings.Fields(c.Latin)
		return strings.Join(w[:min(2, len(w))], " ")
	}
	return kin(a) == kin(b) && (first(a) == first(b) || strings.HasSuffix(string(a.ID), string(b.ID)) || strings.HasSuffix(string(b.ID), string(a.ID)))
}

// cropWindow turns the year so that it begins in midwinter's month.
func (d *CropDesk) cropWindow(w stand.Window) CropWindow {
	out := CropWindow{Way: w.Way, Verb: wayVerb(w.Way), Window: w}
	first := 1
	if d.in.Garden.Place.LatDeg < 0 {
		first = 7
	}
	n, k := len(w.Tries), 0
	for i, t := range w.Tries {
		if ahead(t.Day, first) < ahead(w.Tries[k].Day, first) {
			k = i
		}
	}
	for i := range n {
		out.Tries = append(out.Tries, w.Tries[(k+i)%n])
	}
	if !w.AllYear {
		for _, set := range []struct {
			best bool
			rs   []stand.Range
		}{{false, w.Works}, {true, w.Best}} {
			for _, r := range set.rs {
				out.Ends = append(out.Ends, WindowEnd{set.best, true, r.From, r.SuccessFrom, r.LimitFrom}, WindowEnd{set.best, false, r.To, r.SuccessTo, r.LimitTo})
			}
		}
	}
	out.Says = windowSays(w)
	return out
}

// ahead is how many days of the year lie between a month's first and d.
func ahead(d cal.Day, month int) int {
	_, m, day := d.Date()
	return ((int(m)-month+12)%12)*31 + day
}

// YearFrom is the first month of a crop's year as it is drawn.
func (d *CropDesk) YearFrom() int {
	if d.in.Garden.Place.LatDeg < 0 {
		return 7
	}
	return 1
}

func windowSays(w stand.Window) string {
	head := capital(wayVerb(w.Way))
	switch {
	case w.AllYear:
		return head + " on any day of the year." + kindsSay(w)
	case len(w.Works) == 0:
		return head + ": never works here (" + commonLimit(w) + ")." + quickSays(w)
	}
	var works []string
	for _, r := range w.Works {
		if r.From == r.To {
			works = append(works, fmt.Sprintf("about %s only (sooner: %s; later: %s)", r.From.Short(), r.LimitFrom, r.LimitTo))
			continue
		}
		works = append(works, fmt.Sprintf("from about %s (sooner: %s) to about %s (later: %s)", r.From.Short(), r.LimitFrom, r.To.Short(), r.LimitTo))
	}
	s := head + " " + strings.Join(works, ", and ") + "." + kindsSay(w)
	var best []string
	for _, r := range w.Best {
		if r.From == r.To {
			best = append(best, "about "+r.From.Short())
			continue
		}
		best = append(best, r.From.Short()+" to "+r.To.Short())
	}
	if len(best) == 0 {
		return s + " No days are best: even then it gives little or late." + quickSays(w)
	}
	if slices.EqualFunc(w.Works, w.Best, func(a, b stand.Range) bool { return a.From == b.From && a.To == b.To }) {
		return s + " All of them are best."
	}
	return s + " Best " + list(best) + "."
}

// kindsSay tells on which days only one kind of variety works.
func kindsSay(w stand.Window) string {
	words := func(k stand.KindRange) string {
		switch k.Kind {
		case stand.Quick:
			return fmt.Sprintf(" only quick kinds work, of about %d days", k.Days)
		case stand.CutYoung:
			return fmt.Sprintf(" only young leaves will come of it: sow thickly and cut after about %d days", k.Days)
		}
		return " only kinds slow to bolt work"
	}
	s := ""
	for _, k := range w.Kinds {
		when := k.From.Short() + " to " + k.To.Short()
		if len(w.Works) == 1 && k.From == w.Works[0].From && k.To == w.Works[0].To {
			when = "then" // the whole of it
		}
		s += " " + capital(when) + words(k) + "."
	}
	return s
}

// quickSays tells of varieties that have the time the middle ones lack.
func quickSays(w stand.Window) string {
	if w.Quick == 0 || slices.ContainsFunc(w.Kinds, func(k stand.KindRange) bool { return k.Kind == stand.Quick }) {
		return ""
	}
	return fmt.Sprintf(" This is a middle variety. Quick ones, of about %d days, have more time.", w.Quick)
}

// commonLimit is what stands in the way on most days.
func commonLimit(w stand.Window) string {
	n := map[string]int{}
	best := "short days"
	for _, t := range w.Tries {
		n[t.Limit]++
		if t.Limit != "" && n[t.Limit] > n[best] {
			best = t.Limit
		}
	}
	return best
}

// at is the try nearest a day of any year.
func tryAt(w stand.Window, d cal.Day) (stand.Try, bool) {
	best, gap := -1, 400
	for i, t := range w.Tries {
		g := (t.Day.YearDay() - d.YearDay() + 365) % 365
		if g = min(g, 365-g); g < gap {
			best, gap = i, g
		}
	}
	if best < 0 {
		return stand.Try{}, false
	}
	return w.Tries[best], true
}

// nextOpen is the first day from d on that lies in a range that works.
func nextOpen(w stand.Window, d cal.Day) (cal.Day, bool) {
	for x := d; x < d+366; x++ {
		if w.Open(x) {
			return x, true
		}
	}
	return 0, false
}

// lastOpen is the last day of the range that d lies in, as far as the kind of
// variety that works on d goes.
func lastOpen(w stand.Window, d cal.Day) cal.Day {
	x := d
	for x < d+366 && w.Open(x+1) && w.KindOn(x+1) == w.KindOn(d) {
		x++
	}
	return x
}

// kindAsk is what to choose where only one kind of variety works.
func kindAsk(k stand.Kind) string {
	switch k {
	case "":
		return ""
	case stand.CutYoung:
		return ", sown thickly and cut young"
	}
	return ", but only " + string(k)
}

// answer says what to do about the crop at this garden and date: the way that
// is open now or opens soonest first.
func (v *CropView) answer(d *CropDesk) {
	type one struct {
		open cal.Day
		best int
		says string
	}
	var all []one
	for _, w := range v.Ways {
		day, ok := nextOpen(w.Window, d.in.Date)
		if !ok {
			v.Also = append(v.Also, w.Says)
			continue
		}
		t, _ := tryAt(w.Window, day)
		all = append(all, one{day, t.Best20, openSays(v.Crop, w, day, d.in.Date, t)})
	}
	slices.SortStableFunc(all, func(a, b one) int {
		if a.open != b.open {
			return int(a.open - b.open)
		}
		return b.best - a.best
	})
	if len(all) == 0 {
		v.Says = v.Yard + ": " + v.Crop.Name + " works on no day of the year."
		v.Says = capital(v.Says)
		return
	}
	v.Says = capital(v.Yard + ": " + uncapital(all[0].says))
	var more []string
	for _, o := range all[1:] {
		more = append(more, o.says)
	}
	v.Also = append(more, v.Also...)
}

func uncapital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// openSays is one way's answer.
func openSays(c *crop.Crop, w CropWindow, day, today cal.Day, t stand.Try) string {
	s := ""
	last := lastOpen(w.Window, day)
	switch {
	case w.AllYear:
		s = capital(w.Verb) + " on any day"
	case day == today:
		s = fmt.Sprintf("%s now, until about %s", capital(w.Verb), dayOf(last, today))
	case day == last:
		s = fmt.Sprintf("%s about %s and hardly on another day", capital(w.Verb), dayOf(day, today))
	default:
		s = fmt.Sprintf("%s from about %s to about %s", capital(w.Verb), dayOf(day, today), dayOf(last, today))
	}
	s += kindAsk(w.KindOn(day))
	s += fmt.Sprintf("; works %s", ofWords(t.Of20))
	if t.Wait20 > 0 {
		s += fmt.Sprintf(", and in %d it is still too cold that day", t.Wait20)
	}
	switch {
	case t.First.None() && c.FirstYears.Known() && c.FirstYears.Value > 0:
		s += fmt.Sprintf("; first crop after about %s", amount(c.FirstYears.Value, "years"))
	case t.First.None():
		s += "; first pick not known"
	default:
		first := cal.Window{Early: t.First.Early - t.Day + day, Likely: t.First.Likely - t.Day + day, Late: t.First.Late - t.Day + day}
		what := "first pick "
		if c.Harvest == crop.Bloom {
			what = "first flowers "
		}
		s += "; " + what + seenFrom(first, today)
	}
	return s + "."
}

// dayOf writes a day, with its year when that is not today's.
func dayOf(d, today cal.Day) string {
	if d.Year() != today.Year() {
		return d.Long()
	}
	return d.Short()
}

// GermRow is emergence at one soil temperature.
type GermRow struct {
	SoilC     float64
	Pct       float64
	PctKnown  bool
	Days      float64
	DaysKnown bool
	None      bool // the table says none came up
	Best      bool // in the good range
}

// germRows lists emergence by soil warmth, gaps kept as gaps.
func germRows(c *crop.Crop) ([]GermRow, string) {
	if c.GermTable == "" && !c.EmergeDays.Known() {
		return nil, ""
	}
	good := func(t float64) bool { return c.SoilOpt.Known() && t >= c.SoilOpt.Low && t <= c.SoilOpt.High }
	var out []GermRow
	says := ""
	for t := 0.0; t <= 40; t += 5 {
		r := GermRow{SoilC: t, Best: good(t)}
		for _, p := range c.Germ {
			if p.SoilC == t {
				r.Days, r.DaysKnown, r.None = p.Days, p.HasDays, p.None
			}
		}
		r.Pct, r.PctKnown = c.EmergePct(t)
		if c.GermTable == "" {
			if t < c.SoilMin.Value || t > c.SoilMax.Value {
				r.None = true
			} else if days, ok := c.EmergeDaysAt(t); ok {
				r.Days, r.DaysKnown = days, true
			}
		}
		out = append(out, r)
	}
	switch {
	case c.GermOwn:
		says = "Measured on this crop, in a laboratory. Cold garden soil is slower and loses more seed."
	case c.GermTable != "":
		says = "Days are those of a near relation (" + strings.ReplaceAll(c.GermTable, "-", " ") + "). How much comes up is not known for this crop."
	default:
		says = "No table of this crop was found. Days are reckoned from its range; how much comes up is not known."
	}
	if c.SoilOpt.Known() {
		says = fmt.Sprintf("It comes up best in soil of %s to %s. ", amount(c.SoilOpt.Low, "°C"), amount(c.SoilOpt.High, "°C")) + says
	}
	return out, says
}
