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
		why := "It takes ground that another change left, or pays better there."
		if l.Since > end {
			why = "Its week was beyond the end of the plan before."
		} else if r.wishedFor(l) {
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
	if len(c.Changes) > 0 {
		c.Gain = r.gainOver(ctx, was)
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
		if m.p.Spaces[m.p.Stays[i].Space].ID == l.Space && !known[s.id] {
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
	return "Another use of the ground is worth more now; the sum is said above."
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
