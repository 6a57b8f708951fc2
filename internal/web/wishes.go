package web

import (
	"context"
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/unit"
)

// Wishes is what the pages about wishes, what-ifs and reasons need.
type Wishes struct {
	// Try plans the garden otherwise and compares; it takes some seconds.
	Try func(ctx context.Context, t reckon.Trial) (*reckon.Compared, error)
	// Why answers for a planned line; nil when the plan has no such line.
	Why func(ctx context.Context, line string) (*reckon.Why, error)
	// Prices are what the wishes cost; false while they are worked out.
	Prices func(ctx context.Context) ([]reckon.WishPrice, bool)
	// Likeness is the present plan as it may be kept.
	Likeness func(ctx context.Context) (*ledger.KeptPlan, error)
	// Kept are the plans kept under a name, beside the present one.
	Kept func(ctx context.Context) ([]reckon.KeptBeside, error)
}

// wishRoutes are the pages about wishes; none without Options.Wishes.
func (s *site) wishRoutes() []route {
	if s.o.Wishes == nil {
		return nil
	}
	return []route{
		{"/wishes", s.view(s.wishes), s.saveWish},
		{"/whatif", s.view(s.whatif), nil},
		{"/whatif/ask", nil, s.askWhatif},
		{"/why/{line}", s.view(s.why), nil},
	}
}

// WishesPage lists the wishes with their prices, and the plans kept.
type WishesPage struct {
	Frame
	Says     string
	Conflict string
	Waiting  bool // prices are being worked out
	Rows     []WishRow
	Kept     []KeptRow
	Foods    []Option
	Crops    []Option
	Spaces   []Option
	Months   []Option
	LastM    []Option
	More     []Option
	V        map[string]string
	Faults   faults
	Problem  string
	Steps    []Option
	Forms    [8]string
}

// WishRow is one wish.
type WishRow struct {
	Words, State, Price string
	Event, Form         string // Event "" = it stands in the garden file
}

// KeptRow is one kept plan.
type KeptRow struct {
	reckon.KeptBeside
	Return, Back string // forms
	Returned     bool   // a wish returns to it now
}

// stateWords say what became of a wish.
var stateWords = map[string]string{
	"met": "In the plan.", "done": "Done.", "past": "Its time is past.", "not met": "Not met.",
}

// wishes draws the page.
func (s *site) wishes(r *http.Request, day *reckon.Day) (page, error) {
	return s.wishesPage(r, day, url.Values{})
}

func (s *site) wishesPage(r *http.Request, day *reckon.Day, v url.Values) (*WishesPage, error) {
	p := &WishesPage{Frame: s.framed(r, day, "Wishes", "wishes"), V: map[string]string{}, Faults: faults{}}
	for k := range v {
		p.V[k] = v.Get(k)
	}
	for i := range p.Forms {
		p.Forms[i] = ledger.NewID()
	}
	prices, ready := s.o.Wishes.Prices(r.Context())
	p.Waiting = !ready && len(day.Heard) > 0
	price := map[string]reckon.WishPrice{}
	for _, x := range prices {
		price[x.Event+" "+x.Words] = x
	}
	unmet := 0
	for _, h := range day.Heard {
		row := WishRow{Words: h.Words, State: stateWords[h.State], Event: h.Event, Form: ledger.NewID()}
		if h.Wish.What != ledger.WishLock && h.Wish.What != ledger.WishMust && h.Wish.What != ledger.WishReturn && h.State == "met" {
			row.State = "Heard."
		}
		if h.Why != "" {
			row.State += " " + h.Why
		}
		if x, ok := price[h.Event+" "+h.Words]; ok {
			row.Price = x.Says
		}
		if h.State == "not met" {
			unmet++
		}
		p.Rows = append(p.Rows, row)
	}
	if ready {
		p.Conflict = reckon.Conflict(day.Heard, prices)
	} else if unmet > 0 {
		p.Conflict = "Not all wishes can be met. Which one is cheapest to give up is being worked out."
	}
	p.Says = "No wishes yet. The plan follows what your garden file says you eat."
	if n := len(p.Rows); n > 0 {
		p.Says = plural(n, "wish", "wishes") + ", each with what it costs the plan in meals."
	}
	if err := s.keptRows(r, day, p); err != nil {
		return nil, err
	}
	p.choices(day)
	return p, nil
}

func (s *site) keptRows(r *http.Request, day *reckon.Day, p *WishesPage) error {
	kept, err := s.o.Wishes.Kept(r.Context())
	if err != nil {
		return err
	}
	for _, k := range kept {
		row := KeptRow{KeptBeside: k, Return: ledger.NewID(), Back: ledger.NewID()}
		for _, h := range day.Heard {
			row.Returned = row.Returned || h.Wish.What == ledger.WishReturn && h.Wish.Plan == k.Event
		}
		p.Kept = append(p.Kept, row)
	}
	return nil
}

// choices fills the lists of the forms.
func (p *WishesPage) choices(day *reckon.Day) {
	p.Crops, p.Foods, p.Spaces = cropChoices(day), foodChoices(day), append([]Option{{Value: "", Words: "anywhere"}}, spaceChoices(day)...)
	for m := 1; m <= 12; m++ {
		p.Months = append(p.Months, Option{Value: strconv.Itoa(m), Words: time.Month(m).String()})
	}
	p.LastM = append([]Option{{Value: "", Words: "that month only"}}, p.Months...)
	p.Months = append([]Option{{Value: "", Words: "all year"}}, p.Months...)
	p.Steps = choose(badSteps(), p.V["level"])
	p.More = []Option{{Value: "more", Words: "more"}, {Value: "less", Words: "less"}}
	p.Crops, p.Spaces = choose(p.Crops, p.V["crop"]), choose(p.Spaces, p.V["space"])
	p.Foods, p.More = choose(p.Foods, p.V["food"]), choose(p.More, p.V["more"])
	p.Months, p.LastM = choose(p.Months, p.V["first"]), choose(p.LastM, p.V["last"])
}

// badSteps are how much bad years may be planned for.
func badSteps() []Option {
	var out []Option
	for _, w := range garden.BadYearSteps() {
		out = append(out, Option{Value: w, Words: w})
	}
	return out
}

func cropChoices(day *reckon.Day) []Option {
	var out []Option
	for _, c := range day.Crops {
		out = append(out, Option{Value: c.ID, Words: c.Name})
	}
	return out
}

// foodChoices are the foods wanted, and then the others of the book.
func foodChoices(day *reckon.Day) []Option {
	var out []Option
	seen := map[string]bool{}
	for _, f := range day.Foods {
		if !seen[f] {
			seen[f] = true
			out = append(out, Option{Value: f, Words: f})
		}
	}
	return out
}

// spaceChoices are the spaces in which something can grow.
func spaceChoices(day *reckon.Day) []Option {
	var out []Option
	for _, sp := range day.Spaces {
		if (garden.Space{Kind: garden.Kind(sp.Kind)}).Grows() {
			out = append(out, Option{Value: sp.ID, Words: sp.Name})
		}
	}
	return out
}

// saveWish records one wish, or keeps the plan under a name.
func (s *site) saveWish(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *WishesPage
	err := s.once(w, r, func() (done, error) {
		day, err := s.present(r)
		if err != nil {
			return done{}, err
		}
		f := faults{}
		kind, body, words, err := s.wishOf(r, day, f)
		if err == nil && len(f) > 0 {
			if p, err = s.wishesPage(r, day, r.PostForm); err == nil {
				p.Faults = f
				err = errForm
			}
		}
		if err != nil {
			return done{}, err
		}
		event, err := s.o.Record(withForm(r, r.PostForm.Get("form")), kind, day.Date, "", body)
		return done{event: event, words: words + " The plan is being worked out with it.", back: "/wishes", undo: true}, err
	})
	if err == nil {
		return
	}
	if p == nil {
		s.fail(w, r, err)
		return
	}
	t := troubleOf(err)
	p.Problem = t.words
	s.draw(w, r, t.status, p)
}

// wishOf reads the form as one event; words at the fields say what is wrong.
func (s *site) wishOf(r *http.Request, day *reckon.Day, f faults) (ledger.Kind, any, string, error) {
	v := r.PostForm
	crop := func() string { return f.oneOf(v, "crop", cropChoices(day), "Choose a crop.") }
	space := func() string {
		if v.Get("space") == "" {
			return ""
		}
		return f.oneOf(v, "space", spaceChoices(day), "Choose a space, or anywhere.")
	}
	b := ledger.Wish{What: v.Get("what")}
	words := "Your wish is kept."
	switch b.What {
	case "keep":
		k, err := s.o.Wishes.Likeness(r.Context())
		if err != nil {
			return "", nil, "", err
		}
		if k.Name = f.text(v, "name", 80); k.Name == "" && f["name"] == "" {
			f["name"] = "Give the plan a name, such as " + day.Date.Month().String() + "."
		}
		if strings.ContainsAny(k.Name, "\n\t") {
			f["name"] = "Write the name on one line."
		}
		return ledger.PlanKept, *k, "The plan is kept as \"" + k.Name + "\".", nil
	case ledger.WishLock, ledger.WishRefuse:
		words = "Kept as planned: "
		if b.What == ledger.WishRefuse {
			words = "Not this: "
		}
		l, ok := plannedLine(day, v.Get("line"))
		if at := v.Get("mend"); at != "" && b.What == ledger.WishLock {
			l, ok = mendLineOf(day, at)
			words = "Taken into the plan: "
		}
		if !ok {
			return "", nil, "", errGone
		}
		b.Space, b.Crop, b.Way, b.Plants = l.Space, l.CropID, l.Way, l.Plants
		b.Since, b.Until = l.In.Likely.Monday(), max(l.Holds, l.In.Likely.Monday())
		words += l.Crop + "."
	case ledger.WishWant:
		b.Food = f.oneOf(v, "food", foodChoices(day), "Choose a food.")
		x, ok := decimal(v.Get("meals"))
		if !ok || x <= 0 || x > 50 {
			f["meals"] = "Write how many meals a week, such as 2."
		}
		if b.Meals = x; v.Get("more") == "less" {
			b.Meals = -x
		}
		b.First = month(f, v, "first")
		if b.Last = month(f, v, "last"); b.Last == 0 {
			b.Last = b.First
		}
		if b.First == 0 && b.Last != 0 {
			f["first"] = "Choose the first month too."
		}
	case ledger.WishMust:
		b.Crop, b.Space, b.Plants = crop(), space(), f.count(v, "plants", true, 1)
	case ledger.WishNever:
		b.Crop, b.Space = crop(), space()
	case ledger.WishAway:
		b.Since, b.Until = f.ahead(v, "since", day.Date), f.ahead(v, "until", day.Date)
		if len(f) == 0 && b.Until < b.Since {
			f["until"] = "The last day comes before the first."
		}
	case ledger.WishMinutes:
		x, ok := decimal(v.Get("minutes"))
		if b.Minutes = x; !ok || x == 0 || x > 10080 || x < -10080 {
			f["minutes"] = "Write minutes a week, such as 10, or -10 for fewer."
		}
	case ledger.WishWater:
		x, wrong := litresIn(v.Get("litres"))
		if b.Litres = x; wrong != "" {
			f["litres"] = wrong
		}
	case ledger.WishBad:
		b.Level = f.oneOf(v, "level", badSteps(), "Choose how much.")
	case ledger.WishReturn:
		if b.Plan = v.Get("plan"); !ledger.IsID(b.Plan) {
			return "", nil, "", errBroken
		}
		words = "The plan goes back, as far as its lines can still be started."
	default:
		return "", nil, "", errBroken
	}
	return ledger.Wished, b, words, nil
}

// litresIn reads litres a day as typed, in litres where no unit is said.
func litresIn(typed string) (float64, string) {
	const remedy = "Write litres a day, such as 40, or 10 gal."
	if x, ok := decimal(typed); ok {
		typed = fmt.Sprintf("%g L", x)
	}
	v, err := unit.ParseVolume(typed)
	if err != nil || !(v.L >= 0 && v.L <= 20000) {
		return 0, remedy
	}
	return v.L, ""
}

func month(f faults, v url.Values, field string) int {
	t := v.Get(field)
	if t == "" {
		return 0
	}
	n, err := strconv.Atoi(t)
	if err != nil || n < 1 || n > 12 {
		f[field] = "Choose a month."
		return 0
	}
	return n
}

// ahead reads a day from today on, at most two years ahead.
func (f faults) ahead(v url.Values, field string, today cal.Day) cal.Day {
	d, err := cal.Parse(strings.TrimSpace(v.Get(field)))
	switch {
	case err != nil:
		f[field] = "Write the day as year-month-day, such as " + (today + 14).String() + "."
	case d < today:
		f[field] = "That day is past. Today is " + today.Long() + "."
	case d > today+731:
		f[field] = "That is more than two years ahead."
	}
	return d
}

// plannedLine finds a line still to be started by its id.
func plannedLine(day *reckon.Day, id string) (reckon.Line, bool) {
	for _, sp := range day.Spaces {
		for _, l := range sp.Lines {
			if l.ID == id && !l.Standing {
				return l, true
			}
		}
	}
	return reckon.Line{}, false
}

// WhyPage says why a line is there and then.
type WhyPage struct {
	Frame
	Why       *reckon.Why
	Later     *reckon.LineLater // how it fares when more is known; nil = not known
	Standing  *reckon.Line      // a planting that stands: pull or keep answers for it
	SpaceName string
	Keep      *Question
	Lock      string
	Refuse    string
	Yours     []WishRow // wishes about this line
}

// why draws the page.
func (s *site) why(r *http.Request, day *reckon.Day) (page, error) {
	id := r.PathValue("line")
	p := &WhyPage{Lock: ledger.NewID(), Refuse: ledger.NewID()}
	for _, sp := range day.Spaces {
		i := slices.IndexFunc(sp.Lines, func(l reckon.Line) bool { return l.ID == id && l.Standing })
		if i < 0 {
			continue
		}
		p.Frame = s.framed(r, day, "Why is this here?", "why")
		p.Standing, p.SpaceName, p.Later = &sp.Lines[i], sp.Name, sp.Lines[i].Later
		for k, q := range day.Keeps {
			if q.Planting == id {
				qu := question(k, q, q.Best)
				p.Keep = &qu
			}
		}
		return p, nil
	}
	y, err := s.o.Wishes.Why(r.Context(), id)
	if err != nil {
		return nil, fmt.Errorf("asking why: %w", err)
	}
	if y == nil {
		return nil, ErrNotThere
	}
	p.Frame = s.framed(r, day, "Why here, why now?", "why")
	p.Why, p.SpaceName = y, y.SpaceName
	if l, ok := plannedLine(day, id); ok {
		p.Later = l.Later
	}
	for _, h := range day.Heard {
		if slices.Contains(h.IDs, id) && h.Event != "" {
			p.Yours = append(p.Yours, WishRow{Words: h.Words, Event: h.Event, Form: ledger.NewID()})
		}
	}
	return p, nil
}
