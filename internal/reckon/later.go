package reckon

import (
	"cmp"
	"context"
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/season"
)

// Later says what decisions that can wait could be worth, and which of the
// plan's starts would still be wanted when more is known (season.LaterOf).
type Later struct {
	Until         cal.Day   // what is due before this day is held as planned
	Fixed, Fitted []float64 // by future: worth of the plan as it is, and with what comes later fitted to it, meals
	Words         string    // a paragraph

	on    cal.Day
	lines map[string]*LineLater // by option or planting
}

// LineLater is how a line of the plan fares when the weather is known.
type LineLater struct {
	Still  int     // of twenty futures in which giving it up gains less than changeCost; for what stands, the day it comes out
	Near   bool    // due in the first weeks: counted as if the weather were known today
	Else   string  // what most often takes its place in the others, by its shown name; "" = nothing
	ElseID string  // its crop
	ElseOf int     // of twenty futures in which it does
	Decide cal.Day // of a start: the day it is due
	By     string  // that day in words
	Others string  // of a start: what stands there in the other futures, in words
	Words  string  // a sentence or two; "" = nothing worth telling
}

// laterWeeks is how many weeks of the plan are held: what is due in them is
// decided before the weather is known.
const laterWeeks = 4

// The work of each of its searches, three a future: a share of the plan's own
// search, at least and at most so much.
const (
	laterShare = DefaultWork / laterMost
	laterLeast = 2_000
	laterMost  = 40_000
)

// Counts of twenty at which words change. Ours: a count moves by two or three with
// the search's luck, so from four in five on a start is to be planned on, and up
// to lowNear one that is due now is little to build on.
const (
	lowNear = 12
	planOn  = 16
)

// Later works it out once for a plan; nil when ctx ended first, for a plan that
// lacks a must, and before the full plan is there.
func (r *Result) Later(ctx context.Context) *Later {
	if r.in.Quick || r.Plan.Status == season.Infeasible {
		return nil
	}
	r.asked.later.Lock()
	defer r.asked.later.Unlock()
	if r.asked.waits == nil {
		r.asked.waits = r.waits(ctx)
	}
	return r.asked.waits
}

// begins is the week in which each option's first act is due: its pots are sown,
// or it takes ground. Pots at hand are sown already.
func (m *model) begins() []int {
	out := make([]int, len(m.p.Options))
	for i := range out {
		o := &m.p.Options[i]
		if out[i] = o.Week; o.ShelfFrom >= 0 && !isTray(*o) {
			out[i] = min(o.ShelfFrom, o.Week)
		}
	}
	return out
}

func (r *Result) waits(ctx context.Context) *Later {
	m := r.model
	l := season.LaterOf(ctx, m.p, &r.Plan, season.LaterLimits{Weeks: laterWeeks, Begins: m.begins(), Workers: r.in.Workers, ChangeCost: changeCost,
		Work: min(max(r.in.Work/laterShare, laterLeast), laterMost), Prices: prices{r.proof.certificate, r.proof.byFuture}.guide(), Seed: r.in.Seed})
	if l == nil {
		return nil
	}
	out := &Later{Until: m.p.Start + 7*laterWeeks, Fixed: l.Fixed, Fitted: l.Fitted, on: r.in.Date, lines: map[string]*LineLater{}}
	open, sure := 0, 0
	for _, s := range l.Starts {
		x := r.startLater(s)
		if !s.Held {
			open++
		}
		if !s.Held && x.Still >= planOn {
			sure++
		}
		for _, k := range s.Plantings {
			out.lines[m.p.Options[r.Plan.Plantings[k].Option].ID] = x
		}
	}
	for i, p := range l.Pulls {
		if p.Judged && i < len(m.stays) {
			out.lines[m.stays[i].id] = r.pullLater(i, p)
		}
	}
	out.Words = out.words(open, sure)
	return out
}

// words is the paragraph of the plan's own account, of so many starts that can
// wait and so many of them to be planned on.
func (l *Later) words(open, sure int) string {
	if open == 0 {
		return fmt.Sprintf("No start of the plan is due after %s, so none can wait.", (l.Until - 1).Long())
	}
	s := fmt.Sprintf("%d starts of the plan are due after %s, so they can be decided when more is known. ", open, (l.Until - 1).Long())
	if open == 1 {
		s = fmt.Sprintf("One start of the plan is due after %s, so it can be decided when more is known. ", (l.Until - 1).Long())
	}
	s += fmt.Sprintf("%d of %d would still be wanted in %d or more of 20 futures: plan on those. ", sure, open, planOn)
	gain := mean(l.Fitted) - mean(l.Fixed)
	if gain < noise {
		return s + "Deciding later would add less than a meal."
	}
	return s + fmt.Sprintf("As planned, everything is worth %.0f meals; with these starts chosen anew by one who knew all that comes, about %.0f. "+
		"Nobody knows so much: deciding later could add something between nothing and %s. This search was short; a longer one finds more.",
		mean(l.Fixed), mean(l.Fitted), meals(gain))
}

// startLater puts one start in words.
func (r *Result) startLater(s season.LaterStart) *LineLater {
	m := r.model
	line := r.plantedLine(s.Plantings[0])
	x := &LineLater{Still: ofTwenty(s.Still, r.in.Futures), Near: s.Held, ElseOf: ofTwenty(s.Instead.Futures, r.in.Futures), Decide: line.In.Likely}
	if line.OnShelf != 0 && s.Begins*7 < int(line.In.Likely.Monday()-m.p.Start) {
		x.Decide = max(line.OnShelf, r.in.Date)
	}
	inPlace := ""
	switch in := s.Instead; {
	case in.Futures == 0:
	case in.Crop != "":
		x.ElseID = in.Crop
		x.Else = m.cropName(r.in, in.Crop)
		inPlace = x.Else
		if in.Crop == line.CropID {
			inPlace = "the same crop in other weeks"
		}
	case in.Stay >= 0:
		st := m.p.Stays[in.Stay]
		x.ElseID = st.Crop
		x.Else = m.cropName(r.in, st.Crop)
		inPlace = "the " + x.Else + " that stands there, longer"
	default:
		inPlace = "nothing in its place"
	}
	if inPlace = "mostly " + inPlace; 2*x.ElseOf <= 20-x.Still {
		inPlace = "one thing or another"
	}
	if x.By = x.Decide.Short(); x.Decide.Year() != r.in.Date.Year() {
		x.By = x.Decide.Long()
	}
	x.Others = inPlace
	x.Words = x.startWords(line.begun())
	return x
}

// Open reports whether a start can wait and is not one to plan on.
func (x *LineLater) Open() bool { return !x.Near && x.Still < planOn }

// startWords says a start's count; of what is due now, only a low one is worth
// words.
func (x *LineLater) startWords(begun string) string {
	switch {
	case x.Near && x.Still > lowNear:
		return ""
	case x.Near:
		return fmt.Sprintf("Only %d of 20 futures reward it. In the others one who knew what comes would have %s.", x.Still, x.Others)
	case x.Still >= planOn:
		return fmt.Sprintf("In %d of 20 futures it would still be %s: plan on it.", x.Still, begun)
	}
	return fmt.Sprintf("In %d of 20 futures it would still be %s; in the others %s. Decide by %s.", x.Still, begun, x.Others, x.By)
}

// pullLater puts the day what stands comes out in words.
func (r *Result) pullLater(i int, p season.LaterPull) *LineLater {
	n := r.in.Futures
	x := &LineLater{Still: ofTwenty(p.Still, n), Decide: r.Problem.Start + cal.Day(7*r.Plan.Pull[i]+6)}
	does, other := "come out about then", "sooner"
	if r.Plan.Pull[i] >= min(r.Problem.Stays[i].End, r.Problem.Weeks-1) {
		does = "stay to its end"
	}
	if p.After > p.Earlier {
		other = "later"
	}
	if x.Still < planOn {
		x.Words = fmt.Sprintf("In %d of 20 futures it would still %s; in the others it would mostly make room %s.", x.Still, does, other)
	}
	return x
}

// WithLater is the day with what could be decided later told on its lines and
// on tasks that few futures reward. It is the day itself for nil, or what was
// asked on another date; else a copy.
func (d *Day) WithLater(l *Later) *Day {
	if l == nil || l.on != d.Date {
		return d
	}
	out := *d
	out.Later = l
	out.Shelf = l.told(d.Shelf)
	out.Spaces = slices.Clone(d.Spaces)
	for i := range out.Spaces {
		out.Spaces[i].Lines = l.told(d.Spaces[i].Lines)
	}
	out.Today = slices.Clone(d.Today)
	for i := range out.Today {
		if x := l.lines[out.Today[i].line]; x != nil && x.Near {
			out.Today[i].Reward = x.Words
		}
	}
	return &out
}

func (l *Later) told(lines []Line) []Line {
	out := slices.Clone(lines)
	for i := range out {
		out[i].Later = l.lines[out[i].ID]
	}
	return out
}

// Waiting is a start that can wait and is not one to plan on.
type Waiting struct {
	Line
	SpaceName string
}

// Says tells it in full sentences.
func (w Waiting) Says() string {
	return sentence(w.Crop+" in "+w.SpaceName) + " " + w.Later.Words
}

// Waiting lists them, the one to decide first at the head.
func (d *Day) Waiting() []Waiting {
	var out []Waiting
	for _, sp := range d.Spaces {
		for _, l := range sp.Lines {
			if x := l.Later; x != nil && x.Open() && !l.Standing {
				out = append(out, Waiting{l, sp.Name})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Waiting) int {
		return cmp.Or(cmp.Compare(a.Later.Decide, b.Later.Decide), cmp.Compare(a.ID, b.ID))
	})
	return out
}

// known is the answer if it is worked out, else nil.
func (r *Result) known() *Later {
	r.asked.later.Lock()
	defer r.asked.later.Unlock()
	return r.asked.waits
}

// json is the answer in the promised form; nil for none.
func (l *Later) json() *LaterJSON {
	if l == nil {
		return nil
	}
	return &LaterJSON{Until: l.Until, Fixed: mean(l.Fixed), Fitted: mean(l.Fitted), FixedAll: l.Fixed, FittedAll: l.Fitted, ChangeCost: changeCost}
}

// figures are those of one line; nil where nothing is known or nothing takes
// its place.
func (l *Later) figures(id string) (still *int, instead *string, of *int) {
	if l == nil || l.lines[id] == nil {
		return nil, nil, nil
	}
	x := *l.lines[id]
	if x.ElseID == "" {
		return &x.Still, nil, nil
	}
	return &x.Still, &x.ElseID, &x.ElseOf
}
