package reckon

import (
	"context"
	"fmt"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// Changed is what a plan does otherwise than the plan of an earlier week.
type Changed struct {
	From    cal.Day // date of the earlier plan
	Of      int     // plantings it had that were still to be started
	Kept    int     // of them, still planned, a week or two either way far ahead
	Gain    float64 // worth of all changes together, meals
	Words   string
	Changes []Change
}

// Change is one planting that is planned otherwise.
type Change struct {
	Space, SpaceName string
	What             string // "gone", "moved", "new"
	Words            string
	Because          string
}

// lineDiff is two plans' lines told apart.
type lineDiff struct {
	same  [][2]ledger.PlanLine
	moved [][2]ledger.PlanLine
	gone  []ledger.PlanLine
	fresh []ledger.PlanLine
}

// diffLines matches lines of the same crop in the same space, nearest starts
// first. A slip of a week near, or two far ahead, is the same.
func diffLines(was, now []ledger.PlanLine, start cal.Day) lineDiff {
	var d lineDiff
	type pair struct{ a, b, off int }
	var pairs []pair
	for i, a := range was {
		for j, b := range now {
			if a.Space == b.Space && a.Crop == b.Crop {
				pairs = append(pairs, pair{i, j, abs(weeksFrom(start, b.Since) - max(weeksFrom(start, a.Since), 0))})
			}
		}
	}
	sort.SliceStable(pairs, func(x, y int) bool { return pairs[x].off < pairs[y].off })
	usedA, usedB := map[int]bool{}, map[int]bool{}
	for _, p := range pairs {
		if usedA[p.a] || usedB[p.b] || p.off > 8 {
			continue
		}
		usedA[p.a], usedB[p.b] = true, true
		two := [2]ledger.PlanLine{was[p.a], now[p.b]}
		slip := slipNear
		if weeksFrom(start, now[p.b].Since) >= nearWeeks-1 {
			slip = slipFar
		}
		if p.off <= slip {
			d.same = append(d.same, two)
		} else {
			d.moved = append(d.moved, two)
		}
	}
	for i, a := range was {
		if !usedA[i] {
			d.gone = append(d.gone, a)
		}
	}
	for j, b := range now {
		if !usedB[j] {
			d.fresh = append(d.fresh, b)
		}
	}
	return d
}

// changed says what this plan does otherwise than an earlier one, and why.
func (r *Result) changed(ctx context.Context, was *ledger.KeptPlan) *Changed {
	if was == nil {
		return nil
	}
	m := r.model
	var open []ledger.PlanLine
	for _, l := range was.Lines {
		if !m.done(l) && weeksFrom(m.p.Start, l.Since) >= -lateWeeks {
			open = append(open, l)
		}
	}
	d := diffLines(open, r.Likeness().Lines, m.p.Start)
	c := &Changed{From: was.On, Of: len(open), Kept: len(d.same)}
	for _, l := range d.gone {
		c.add(r, l, "gone", fmt.Sprintf("No %s, %s.", r.lineWords(l), week(l.Since)), r.whyGone(l, was))
	}
	for _, p := range d.moved {
		c.add(r, p[1], "moved", fmt.Sprintf("%s: %s, not %s.", r.lineWords(p[1]), week(p[1].Since), week(p[0].Since)), r.whyGone(p[0], was))
	}
	end := cal.Day(0)
	for _, l := range was.Lines {
		end = max(end, l.Since)
	}
	for _, l := range d.fresh {
		if l.Since > end {
			continue // beyond the end of the plan before: no change of it
		}
		why := ""
		if r.wishedFor(l) {
			why = "You wished it so."
		}
		c.add(r, l, "new", fmt.Sprintf("%s, %s.", r.lineWords(l), week(l.Since)), why)
	}
	sort.SliceStable(c.Changes, func(a, b int) bool {
		return m.index[garden.SpaceID(c.Changes[a].Space)] < m.index[garden.SpaceID(c.Changes[b].Space)]
	})
	for i := range c.Changes {
		c.Changes[i].Words = sentence(c.Changes[i].Words)
	}
	if len(c.Changes) > 0 && !r.in.stopped() {
		c.Gain = r.gainOver(ctx, was)
		r.becauseOfWorth(ctx, c, was)
	}
	c.Words = c.words()
	return c
}

func (c *Changed) add(r *Result, l ledger.PlanLine, what, words, because string) {
	c.Changes = append(c.Changes, Change{Space: l.Space, SpaceName: spaceNameOf(r.in, l.Space), What: what, Words: words, Because: because})
}

func (c *Changed) words() string {
	s := fmt.Sprintf("Of %d plantings still to come in the plan of %s, %d stand as they were.", c.Of, c.From.Long(), c.Kept)
	switch {
	case len(c.Changes) == 0:
		s += " Nothing changed."
	case c.Gain < noise:
		s += " All changes together are worth less than a meal: what was planned could no longer be done as it was."
	default:
		s += fmt.Sprintf(" All changes together are worth %s.", meals(c.Gain))
	}
	return s
}

// lineWords is "carrot in the long bed".
func (r *Result) lineWords(l ledger.PlanLine) string {
	return fmt.Sprintf("%s in %s, %s", r.model.cropName(r.in, l.Crop), spaceNameOf(r.in, l.Space), plants(l.Plants))
}

func (r *Result) wishedFor(l ledger.PlanLine) bool {
	for _, h := range r.model.heard {
		if h.Wish.What == ledger.WishMust && h.Wish.Crop == l.Crop {
			return true
		}
		for _, id := range h.IDs {
			for i := range r.Problem.Options {
				o := &r.Problem.Options[i]
				if o.ID == id && o.Crop == l.Crop && r.Problem.Spaces[o.Space].ID == l.Space {
					return true
				}
			}
		}
	}
	return false
}

// whyGone says why a line of an earlier plan is no longer planned as it was.
func (r *Result) whyGone(l ledger.PlanLine, was *ledger.KeptPlan) string {
	m := r.model
	for _, w := range r.in.wishes() {
		refused := w.What == ledger.WishRefuse && w.Space == l.Space && w.Crop == l.Crop && l.Since <= w.Until && l.Until >= w.Since
		never := w.What == ledger.WishNever && w.Crop == l.Crop && (w.Space == "" || w.Space == l.Space)
		away := w.What == ledger.WishAway && l.Since+3 >= w.Since && l.Since+3 <= w.Until
		if refused || never || away {
			return "You wished it so."
		}
	}
	known := map[string]bool{}
	for _, p := range was.Pulls {
		known[p.Planting] = true
	}
	for i, s := range m.stays {
		_, planned := m.untilOf(i, was.Lines)
		if m.p.Spaces[m.p.Stays[i].Space].ID == l.Space && !known[s.id] && !planned {
			return fmt.Sprintf("%s stands there since %s.", sentenceStart(s.crop.Name), s.since.Likely.Short())
		}
	}
	if l.Since < m.p.Start {
		return "Its week has passed and nothing was noted."
	}
	for i, s := range m.stays {
		on := m.p.Start + cal.Day(7*r.Plan.Pull[i]+6)
		for _, p := range was.Pulls {
			if p.Planting == s.id && m.p.Spaces[m.p.Stays[i].Space].ID == l.Space && abs(int(on-p.On)) >= 7 {
				return fmt.Sprintf("%s there is now to come out about %s.", sentenceStart(s.crop.Name), on.Short())
			}
		}
	}
	if m.finder().find(l) < 0 {
		return "By what is known now it would succeed too seldom, or the seed is used up."
	}
	return ""
}

// changeWork is the search behind the worth of one space's changes.
const changeWork = 60_000

// becauseOfWorth gives the changes that have no other reason theirs: what the
// space's new lines are worth against those it had, planned both ways.
func (r *Result) becauseOfWorth(ctx context.Context, c *Changed, was *ledger.KeptPlan) {
	y := season.NewStudy(r.Problem, &r.Plan)
	prior := r.model.prior(was)
	words := map[string]string{}
	for i := range c.Changes {
		x := &c.Changes[i]
		if x.Because != "" {
			continue
		}
		if _, had := words[x.Space]; !had {
			words[x.Space] = "What was planned here no longer fits as it was."
			if y != nil {
				words[x.Space] = r.worthIn(ctx, y, x.Space, prior)
			}
		}
		x.Because = words[x.Space]
	}
}

func (r *Result) worthIn(ctx context.Context, y *season.Study, space string, prior *season.Plan) string {
	at := r.model.index[garden.SpaceID(space)]
	near := y.Around(at)
	p := *r.Problem
	p.Locks = nil
	own := r.Plan
	own.Plantings = nil
	for _, pl := range r.Plan.Plantings {
		if p.Options[pl.Option].Space != at {
			own.Plantings = append(own.Plantings, pl)
		}
	}
	for _, pl := range prior.Plantings {
		if p.Options[pl.Option].Space == at {
			p.Locks = append(p.Locks, pl)
		}
	}
	back := season.NewStudy(&p, &own)
	if back == nil {
		return "What was planned here no longer fits as it was."
	}
	old, now := back.SettleIn(ctx, near, changeWork), y.SettleIn(ctx, near, changeWork)
	kept := 0
	for _, l := range p.Locks {
		for _, pl := range old.Plantings {
			if pl.Option == l.Option {
				kept++
			}
		}
	}
	gain := season.Evaluate(r.Problem, &now).Value - season.Evaluate(r.Problem, &old).Value
	switch {
	case gain >= noise:
		return fmt.Sprintf("By the weather and growth reckoned anew, this space's changes are worth %s.", meals(gain))
	case kept < len(p.Locks):
		return "What was planned here no longer fits as it was, by the growth reckoned anew."
	}
	return "It makes room for a change elsewhere; here it makes less than a meal's difference."
}

func sentenceStart(s string) string {
	t := sentence(s)
	return t[:len(t)-1]
}

// gainOver is what this plan is worth more than the earlier one carried on: all
// of its lines locked that can still be done, the rest refilled.
func (r *Result) gainOver(ctx context.Context, was *ledger.KeptPlan) float64 {
	prior := r.model.prior(was)
	p := *r.Problem
	p.Locks = prior.Plantings
	plan := season.Search(ctx, &p, season.Limits{Work: max(r.in.Work/8, 200_000), Seed: r.in.Seed, Workers: r.in.Workers, Prior: prior})
	return max(0, r.Verdict.Value-season.Evaluate(r.Problem, &plan).Value)
}
