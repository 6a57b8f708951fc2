package reckon

import (
	"context"
	"fmt"
	"math"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/season"
)

// whyWork is the search behind each forced choice of a why.
const whyWork = 150_000

// Why says of one planned line why it is there and then.
type Why struct {
	ID               string
	Line             Line
	Space, SpaceName string
	Says             string // the line in a sentence
	For              []string
	Against          string
	Beat             []Beaten
	Delay            string // what starting later costs
	Change           string // what would change it
	Noise            string
	Locked           bool
}

// Beaten is an alternative that was tried in its place.
type Beaten struct {
	Words   string // what would stand there
	GivesUp string
	Meals   float64 // given up, meals, 0 or more
	Better  int     // of twenty futures in which it would have been better
	NotSeen bool    // less than the noise
}

// WhyOf answers for a line of the plan by its ID; false when the plan has no
// such line still to start. It is worked out once for a plan.
func (r *Result) WhyOf(ctx context.Context, id string) (*Why, bool) {
	at := -1
	for k, pl := range r.Plan.Plantings {
		if r.Problem.Options[pl.Option].ID == id {
			at = k
		}
	}
	if at < 0 {
		return nil, false
	}
	r.asked.mu.Lock()
	y := r.asked.whys[id]
	r.asked.mu.Unlock()
	if y != nil {
		return y, true
	}
	y = r.why(ctx, at)
	if ctx.Err() == nil {
		r.asked.mu.Lock()
		if r.asked.whys == nil {
			r.asked.whys = map[string]*Why{}
		}
		r.asked.whys[id] = y
		r.asked.mu.Unlock()
	}
	return y, true
}

// why forces the choice the other way: without it, without it and what took
// its place, and later.
func (r *Result) why(ctx context.Context, at int) *Why {
	m := r.model
	pl := r.Plan.Plantings[at]
	o := m.p.Options[pl.Option]
	e := m.entries[m.entry[pl.Option]]
	y := &Why{ID: o.ID, Line: r.plantedLine(at), Space: m.p.Spaces[o.Space].ID}
	y.SpaceName = spaceNameOf(r.in, y.Space)
	verb := "Sow"
	switch e.Way {
	case crop.SetOut:
		verb = "Set out"
	case crop.Plant:
		verb = "Plant"
	}
	y.Says = fmt.Sprintf("%s %s in %s: %s, %s.", verb, named(e.Crop, r.lotVariety(o.Crop), nil), y.SpaceName, plants(pl.Plants), week(e.Day))
	y.Locked = slices.ContainsFunc(m.p.Locks, func(l season.Planting) bool { return l.Option == pl.Option })
	study := season.NewStudy(r.Problem, &r.Plan)
	y.Noise = "Tried by planning again in this space and the three nearest to it in medium and foods. Less than a meal is not told apart."

	var without, beside, late season.Forced
	next := r.nextOffered(pl.Option)
	each(2, r.in.Workers, func(k int) {
		if k == 0 {
			without = study.Without(ctx, at, whyWork)
			crops := []string{o.Crop}
			for _, in := range without.Instead {
				crops = append(crops, m.p.Options[in.Option].Crop)
			}
			beside = study.Besides(ctx, at, crops, whyWork)
			return
		}
		if next > 0 {
			late = study.Delay(ctx, pl.Option, next, whyWork)
		}
	})
	first, ok := r.beaten(without)
	if ok {
		y.Beat = append(y.Beat, first)
	}
	if b, ok2 := r.beaten(beside); ok2 && len(without.Instead) > 0 && b.Words != first.Words {
		b.Meals = math.Max(b.Meals, first.Meals) // forbidding more never makes a plan better
		b.GivesUp, b.NotSeen = givesUp(b.Meals)
		y.Beat = append(y.Beat, b)
	}
	y.For = r.reasonsFor(at, o, e, first)
	y.Against = r.against(o, e, first, ok)
	y.Delay = r.delayWords(o, next, late)
	y.Change = r.wouldChange(o, e, first, ok, y.Locked)
	return y
}

// longestDelay is how many weeks on a start still counts as the same, late.
const longestDelay = 4

// nextOffered is in how many weeks the same planting is next offered; 0 = not.
func (r *Result) nextOffered(option int) int {
	o := r.Problem.Options[option]
	best := 0
	for i := range r.Problem.Options {
		q := &r.Problem.Options[i]
		if q.Space == o.Space && q.Crop == o.Crop && q.Week > o.Week && sameStart(q.ID) == sameStart(o.ID) {
			if d := q.Week - o.Week; d <= longestDelay && (best == 0 || d < best) {
				best = d
			}
		}
	}
	return best
}

// sameStart is an option's ID less its week.
func sameStart(id string) string {
	for i := len(id) - 1; i >= 0; i-- {
		if id[i] == '.' {
			return id[:i]
		}
	}
	return id
}

// beaten puts a forced plan in words.
func (r *Result) beaten(f season.Forced) (Beaten, bool) {
	if !f.Possible {
		return Beaten{}, false
	}
	b := Beaten{Meals: math.Max(0, -f.Worth), Words: "Nothing more would be started there"}
	for _, d := range f.PerFuture {
		if d > 0.5 {
			b.Better++
		}
	}
	b.Better = ofTwenty(b.Better, len(f.PerFuture))
	instead := slices.Clone(f.Instead)
	sort.SliceStable(instead, func(x, y int) bool {
		return r.Problem.Options[instead[x].Option].Week < r.Problem.Options[instead[y].Option].Week
	})
	var words []string
	for _, in := range instead {
		q := r.Problem.Options[in.Option]
		e := r.model.entries[r.model.entry[in.Option]]
		words = append(words, fmt.Sprintf("%s (%d, %s)", e.Crop.Name, in.Plants, week(e.Day)))
		_ = q
	}
	if len(words) > 0 {
		b.Words = sentenceStart(list(words[:min(len(words), 3)]))
	}
	b.GivesUp, b.NotSeen = givesUp(b.Meals)
	return b, true
}

func givesUp(x float64) (string, bool) {
	if x < noise {
		return "gives up less than a meal: no difference seen", true
	}
	return "gives up " + meals(x), false
}

// reasonsFor are the three strongest reasons: what it gives, how scarce that is
// then, and how it fares here and now.
func (r *Result) reasonsFor(at int, o season.Option, e Entry, first Beaten) []string {
	var out []string
	if s := r.reasons(o, e, r.Plan.Plantings[at].Plants); len(s) > 0 {
		out = append(out, s[0])
	}
	if s := r.scarce(at, o, e); s != "" {
		out = append(out, s)
	}
	if n := ofTwenty(e.Growth.Success, r.in.Futures); n >= 0 {
		out = append(out, fmt.Sprintf("It makes it here in %d of 20 futures, started then; first pick %s.", n, e.Growth.FirstPick.String()))
	}
	if b := r.Problem.Spaces[o.Space].Batch; b >= 0 && len(out) < 3 {
		if last, had := r.Problem.Batches[b].Last[o.Family]; had {
			out = append(out, fmt.Sprintf("Its family left this medium %s before.", weeksWord(o.Week-last)))
		} else {
			out = append(out, "Nothing of its family is noted in this medium.")
		}
	}
	if len(out) < 3 && !first.NotSeen && first.Meals > 0 {
		out = append(out, fmt.Sprintf("Without it the whole plan %s.", first.GivesUp))
	}
	return out[:min(3, len(out))]
}

// scarce says how much of its food, in the weeks it gives, comes from it.
func (r *Result) scarce(at int, o season.Option, e Entry) string {
	if o.Food < 0 || o.Food == r.model.bees || len(o.Meals) == 0 {
		return ""
	}
	n := float64(r.Plan.Plantings[at].Plants)
	own, all := 0.0, 0.0
	for w, fw := range r.Verdict.Table[o.Food] {
		mine := 0.0
		for _, row := range o.Meals {
			if k := w - o.MealsFrom; k >= 0 && k < len(row) {
				mine += float64(row[k]) * n / float64(len(o.Meals))
			}
		}
		if mine > 0 {
			own += mine
			all += mean(fw.Picked)
		}
	}
	if all <= 0 || own <= 0 {
		return ""
	}
	share := int(math.Round(20 * own / math.Max(all, own)))
	if share >= 19 {
		return fmt.Sprintf("Nothing else gives %s in its weeks of picking.", r.model.foods[o.Food])
	}
	return fmt.Sprintf("In its weeks of picking it gives %.0f %% of all %s.", 5*float64(share), r.model.foods[o.Food])
}

// against is the best reason not to.
func (r *Result) against(o season.Option, e Entry, first Beaten, ok bool) string {
	fails := 20 - ofTwenty(e.Growth.Success, r.in.Futures)
	switch {
	case ok && first.NotSeen:
		return fmt.Sprintf("%s would do as well: the difference is less than a meal.", first.Words)
	case fails >= 2 && e.Growth.Cause != "":
		return fmt.Sprintf("It fails in %d of 20 futures: %s.", fails, e.Growth.Cause)
	case r.early(o):
		return "Its family returns to this medium early: sickness in the ground is likelier."
	case ok && first.Better > 0:
		return fmt.Sprintf("In %d of 20 futures this would have been better: %s.", first.Better, lower(first.Words))
	case fails > 0 && e.Growth.Cause != "":
		return fmt.Sprintf("It fails in %d of 20 futures: %s.", fails, e.Growth.Cause)
	}
	return fmt.Sprintf("It takes the ground for %s.", weeksWord(o.End-o.Week+1))
}

// early reports whether the plan pays for an early return of the family.
func (r *Result) early(o season.Option) bool {
	b := r.Problem.Spaces[o.Space].Batch
	if b < 0 || o.Family < 0 || o.Interval == 0 {
		return false
	}
	if last, had := r.Problem.Batches[b].Last[o.Family]; had && last < o.Week && o.Week-last-1 < o.Interval {
		return true
	}
	for i, st := range r.Problem.Stays {
		if r.Problem.Spaces[st.Space].Batch == b && st.Family == o.Family && r.Plan.Pull[i] < o.Week && o.Week-r.Plan.Pull[i]-1 < o.Interval {
			return true
		}
	}
	for _, pl := range r.Plan.Plantings {
		q := r.Problem.Options[pl.Option]
		if r.Problem.Spaces[q.Space].Batch == b && q.Family == o.Family && q.End < o.Week && o.Week-q.End-1 < o.Interval {
			return true
		}
	}
	return false
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return string(s[0]|0x20) + s[1:]
}

func (r *Result) delayWords(o season.Option, next int, f season.Forced) string {
	when := "A week's delay"
	if next > 1 {
		when = fmt.Sprintf("A delay of %s", weeksWord(next))
	}
	switch {
	case next == 0:
		return "It cannot be started here a little later: this is the last week in which it does well."
	case !f.Possible:
		return when + " is not possible beside what follows."
	case -f.Worth < noise:
		return when + " costs less than a meal: no difference seen."
	}
	return fmt.Sprintf("%s costs %s.", when, meals(-f.Worth))
}

// wouldChange says what would turn the choice.
func (r *Result) wouldChange(o season.Option, e Entry, first Beaten, ok bool, locked bool) string {
	if locked {
		return "You locked it. Take the wish back to let the plan choose."
	}
	if !ok {
		return "Nothing else fits there by what is known now."
	}
	last, _ := r.waitOf(o, e)
	until := r.Problem.Start + cal.Day(7*last+6)
	s := fmt.Sprintf("If it is not started by %s, the plan looks again.", until.Long())
	if first.Meals < 3 {
		s += fmt.Sprintf(" A wish for more of another food could turn it: %s is close.", lower(first.Words))
	} else {
		s += " One meal more or less would not turn it."
	}
	return s
}

func (r *Result) waitOf(o season.Option, e Entry) (int, float64) {
	for _, pl := range r.Plan.Plantings {
		if r.Problem.Options[pl.Option].ID == o.ID {
			return r.wait(pl.Option)
		}
	}
	return o.Week, 0
}
