package reckon

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
	"bedweek/internal/unit"
)

// FigureRow is one figure a crop is reckoned with.
type FigureRow struct {
	Key, Words string
	Value      string // with its unit
	Range      string // "40 to 60 days", "" = a single figure
	Keys       []string
	Basis      string // in words
	Note       string
	Mine       bool
	Book       string // what the book says beneath an own figure; "not known"
}

// OwnView is one own figure with its effect.
type OwnView struct {
	Event   string
	On      cal.Day
	Words   string
	Why     string
	Stands  bool // no later one stands over it
	Before  []string
	After   []string // windows without and with it
	Plan    PlanEffect
	HasPlan bool
}

// basisWords says how well a figure is known.
func basisWords(basis string) string {
	switch basis {
	case "published":
		return "published"
	case "memory":
		return "from memory"
	case "common-practice":
		return "common practice"
	case "computed":
		return "computed"
	case crop.MineBasis:
		return "your own figure"
	}
	return basis
}

// figures lists every figure of the crop, those not known, the sources, and
// the own ones with their effect.
func (d *CropDesk) figures(v *CropView) {
	var keys []string
	for _, k := range crop.FigureKeys() {
		f, _ := v.Crop.Figure(k.Name)
		if !f.Known() {
			v.Missing = append(v.Missing, Choice{k.Name, crop.KeyWords(k.Name)})
			continue
		}
		r := FigureRow{Key: k.Name, Words: capital(crop.KeyWords(k.Name)), Value: amount(f.Value, k.Unit), Range: rangeWords(f, k.Unit),
			Basis: basisWords(f.Basis), Note: f.Note, Mine: f.Mine()}
		if r.Mine {
			r.Book = "not known"
			if f.Book != nil {
				r.Book = amount(f.Book.Value, k.Unit)
				if span := rangeWords(*f.Book, k.Unit); span != "" {
					r.Book += " (" + span + ")"
				}
				r.Keys = sourceKeys(f.Book.Source)
			}
		} else {
			r.Keys = sourceKeys(f.Source)
		}
		for _, s := range r.Keys {
			if !slices.Contains(keys, s) {
				keys = append(keys, s)
			}
		}
		v.Figures = append(v.Figures, r)
	}
	if v.Crop.GermTable != "" {
		if t, ok := d.in.Book.Table(v.Crop.GermTable); ok {
			keys = append(keys, sourceKeys(t.Source)...)
		}
	}
	all, _ := crop.Sources()
	for _, s := range all {
		if slices.Contains(keys, s.Key) {
			v.Sources = append(v.Sources, s)
		}
	}
	v.Own = d.own(v.Crop.ID)
}

func rangeWords(f crop.Figure, unit string) string {
	if f.Low == f.High {
		return ""
	}
	return amount(f.Low, "") + " to " + amount(f.High, unit)
}

func sourceKeys(source string) []string {
	var out []string
	for _, s := range strings.Split(source, "+") {
		if s = strings.TrimSpace(s); s != "" && s != crop.MineSource {
			out = append(out, s)
		}
	}
	return out
}

// own lists the own figures of a crop, newest first, with what each changes in
// the windows of the variety it is for, in a plain open bed.
func (d *CropDesk) own(id crop.ID) []OwnView {
	var out []OwnView
	for i := len(d.notes) - 1; i >= 0; i-- {
		n := d.notes[i]
		if n.Crop != string(id) {
			continue
		}
		o := OwnView{Event: n.Event, On: n.On, Words: FigureWords(n.OwnFigure), Why: n.Why, Stands: true}
		for _, later := range d.notes[i+1:] {
			if later.Crop == n.Crop && later.Variety == n.Variety && later.Figure == n.Figure {
				o.Stands = false
			}
		}
		if o.Stands {
			o.Before, o.After = d.moved(n)
		}
		o.Plan, o.HasPlan = d.effects[n.Event]
		out = append(out, o)
	}
	return out
}

// moved is a crop's windows without and with one own figure, all others
// holding.
func (d *CropDesk) moved(n ledger.FigureNote) (before, after []string) {
	var others []ledger.FigureNote
	for _, m := range d.notes {
		if m.Event != n.Event {
			others = append(others, m)
		}
	}
	without, _ := OwnBook(d.base, others)
	a, ok1 := without.Variety(crop.ID(n.Crop), n.Variety)
	b, ok2 := d.in.Book.Variety(crop.ID(n.Crop), n.Variety)
	if !ok1 || !ok2 {
		return nil, nil
	}
	return d.sayWindows(a), d.sayWindows(b)
}

func (d *CropDesk) sayWindows(c *crop.Crop) []string {
	var out []string
	ws, err := d.windows(c, openYard)
	if err != nil {
		return nil
	}
	for _, w := range ws {
		s := windowSays(w)
		if len(w.Picks) > 0 {
			p := w.Picks[len(w.Picks)/2]
			s += fmt.Sprintf(" Started %s: first pick %s.", p.Start.Short(), p.First)
		}
		out = append(out, s)
	}
	return out
}

// Effect tells the desk what a figure changed in the plan.
func (d *CropDesk) Effect(event string, e PlanEffect) { d.effects[event] = e }

// Notes are the own figures that hold, in the order they were given.
func (d *CropDesk) Notes() []ledger.FigureNote { return d.notes }

// FigureWords tells an own figure in a sentence without its end.
func FigureWords(f ledger.OwnFigure) string {
	s := f.Crop
	if f.Variety != "" {
		s += " (" + f.Variety + ")"
	}
	words := crop.KeyWords(f.Figure)
	if words == "" {
		words = f.Figure
	}
	s += ", " + words + ": " + amount(f.Value, f.Unit)
	if f.Low != f.High {
		s += fmt.Sprintf(" (%s to %s)", amount(f.Low, ""), amount(f.High, f.Unit))
	}
	return s
}

// FigureAsk is an own figure as it was typed.
type FigureAsk struct {
	Crop, Variety, Figure string
	Value, Low, High      string
	Why, Note             string
}

// ReadFigure turns what was typed into an own figure. Faults are by field, in
// words: "figure", "value", "low", "high".
func (d *CropDesk) ReadFigure(ask FigureAsk) (ledger.OwnFigure, map[string]string) {
	faults := map[string]string{}
	out := ledger.OwnFigure{Crop: ask.Crop, Variety: strings.TrimSpace(ask.Variety), Figure: ask.Figure,
		Typed: strings.TrimSpace(ask.Value), Why: strings.TrimSpace(ask.Why), Note: strings.TrimSpace(ask.Note)}
	key, ok := keyOf(ask.Figure)
	if !ok {
		faults["figure"] = "Choose a figure."
		return out, faults
	}
	out.Unit = key.Unit
	span := fmt.Sprintf("A plant can have %s to %s.", amount(key.Min, ""), amount(key.Max, key.Unit))
	read := func(field, typed string, to *float64) {
		v, err := readAmount(typed, key.Unit)
		switch {
		case err != nil:
			faults[field] = capital(err.Error()) + "."
		case v < key.Min || v > key.Max:
			faults[field] = fmt.Sprintf("%s is not possible. %s", capital(amount(v, key.Unit)), span)
		}
		*to = v
	}
	read("value", ask.Value, &out.Value)
	switch low, high := strings.TrimSpace(ask.Low) != "", strings.TrimSpace(ask.High) != ""; {
	case low && high:
		read("low", ask.Low, &out.Low)
		read("high", ask.High, &out.High)
		if len(faults) == 0 && out.Low > out.High {
			faults["low"] = "The least is more than the most. Swap them."
		} else if len(faults) == 0 && (out.Value < out.Low || out.Value > out.High) {
			faults["value"] = fmt.Sprintf("It does not lie between your least and your most, %s and %s.", amount(out.Low, key.Unit), amount(out.High, key.Unit))
		}
	case low:
		faults["high"] = "Give the most too, or leave both out."
	case high:
		faults["low"] = "Give the least too, or leave both out."
	}
	if len(faults) > 0 {
		return out, faults
	}
	// The whole crop must still hold together.
	if _, wrong := d.in.Book.WithChanges([]crop.Change{changeOf(out)}); len(wrong) > 0 {
		faults["value"] = capital(plainFault(wrong[0].What)) + ". " + wrong[0].Try
	}
	return out, faults
}

func keyOf(name string) (crop.Key, bool) {
	for _, k := range crop.FigureKeys() {
		if k.Name == name {
			return k, true
		}
	}
	return crop.Key{}, false
}

// plainFault puts words in place of the book's keys: longer keys first, whole
// words only.
func plainFault(s string) string {
	keys := crop.FigureKeys()
	slices.SortStableFunc(keys, func(a, b crop.Key) int { return len(b.Name) - len(a.Name) })
	for i, k := range keys {
		s = regexp.MustCompile(`(^|[^a-z-])`+regexp.QuoteMeta(k.Name)+`($|[^a-z-])`).ReplaceAllString(s, "${1}\x01"+strconv.Itoa(i)+"\x02${2}")
	}
	for i, k := range keys {
		s = strings.ReplaceAll(s, "\x01"+strconv.Itoa(i)+"\x02", "“"+crop.KeyWords(k.Name)+"”")
	}
	return s
}

// Typed figures without a unit are in the figure's own.
var bare = regexp.MustCompile(`^[-−+]?[0-9]*[.,]?[0-9]+$`)

// readAmount reads a typed figure in its unit: "4", "4,5", "39 F", "18 in",
// "8 weeks".
func readAmount(typed, in string) (float64, error) {
	t := strings.TrimSpace(typed)
	if t == "" {
		return 0, errors.New("write a number, such as " + example(in))
	}
	if v, ok := bareNumber(t); ok {
		return v, nil
	}
	bad := func(err error) (float64, error) {
		return 0, fmt.Errorf("%s; write it as %s", uncapital(err.Error()), example(in))
	}
	switch in {
	case "°C":
		v, err := unit.ParseTemperature(t)
		if err != nil {
			return bad(errors.New("this is no temperature"))
		}
		return round(float64(v.C), 100), nil
	case "m", "mm":
		v, err := unit.ParseLength(t)
		if err != nil || v.LowM != v.HighM {
			return bad(errors.New("this is not one length"))
		}
		if in == "mm" {
			return round(v.M*1000, 100), nil
		}
		return round(v.M, 10000), nil
	case "L":
		v, err := unit.ParseVolume(t)
		if err != nil || v.LowL != v.HighL {
			return bad(errors.New("this is not one volume"))
		}
		return round(v.L, 100), nil
	case "kg":
		v, err := unit.ParseMass(t)
		if err != nil {
			return bad(errors.New("this is no weight"))
		}
		return round(v.Kg, 10000), nil
	}
	number, word, _ := strings.Cut(t, " ")
	v, ok := bareNumber(number)
	if !ok {
		return bad(errors.New("this is no number"))
	}
	word = strings.ToLower(strings.TrimSpace(word))
	if word == in || word+"s" == in || in == "hours" && word == "h" || strings.HasPrefix(in, "mol") && word == "mol" {
		return v, nil
	}
	days := map[string]float64{"day": 1, "days": 1, "week": 7, "weeks": 7, "month": 30.4, "months": 30.4, "year": 365, "years": 365}
	if from, ok := days[word]; ok {
		if to, ok := days[in]; ok {
			return round(v*from/to, 100), nil
		}
	}
	return bad(fmt.Errorf("%q is not its unit", word))
}

// bareNumber reads a number without a unit.
func bareNumber(t string) (float64, bool) {
	if !bare.MatchString(t) {
		return 0, false
	}
	v, err := strconv.ParseFloat(strings.NewReplacer("−", "-", ",", ".").Replace(t), 64)
	return v, err == nil
}

func example(in string) string {
	switch in {
	case "°C":
		return "4 or 39 F"
	case "m":
		return "0.3 or 12 in"
	case "mm":
		return "15 or 0.5 in"
	case "L":
		return "20 or 5 US gal"
	case "kg":
		return "0.2 or 7 oz"
	case "days":
		return "60 or 8 weeks"
	}
	return "3"
}
