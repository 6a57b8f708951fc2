package reckon

import (
	"context"
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/season"
)

// noise is the difference in meals below which two choices count as equal:
// season.md found the sign to hold above about one meal.
const noise = 1.0

// keepWork is the search behind one pull week.
const keepWork = 40_000

// keepHorizon is how many weeks ahead the pull-or-keep question is asked.
const keepHorizon = 16

// keeps asks pull or keep of everything that stands and could be pulled, by
// planning both ways.
func (r *Result) keeps(ctx context.Context) []Keep {
	study := season.NewStudy(r.Problem, &r.Plan)
	if study == nil {
		return nil
	}
	study.Workers = r.in.Workers
	var out []Keep
	for i, s := range r.model.stays {
		st := r.Problem.Stays[i]
		last := min(st.End, r.Problem.Weeks-1)
		if r.in.stopped() {
			return nil
		}
		if st.MustKeepTo >= last || last < 1 || s.crop.Perennial {
			continue
		}
		if r.Plan.Pull[i] > keepHorizon && last > keepHorizon {
			continue
		}
		if k, ok := r.keep(ctx, study, i); ok {
			out = append(out, k)
		}
	}
	sort.SliceStable(out, func(a, b int) bool {
		pa, pb := out[a].Choices[out[a].Best].Pull, out[b].Choices[out[b].Best].Pull
		if pa != pb {
			return pa < pb
		}
		return out[a].Planting < out[b].Planting
	})
	return out
}

// pullWeeks are the weeks tried: now, and steps to the natural end, with the
// plan's own choice among them.
func pullWeeks(last, chosen int) []int {
	step := max(1, (min(last, keepHorizon)+4)/5)
	var out []int
	for w := 0; w < last && w <= keepHorizon; w += step {
		out = append(out, w)
	}
	out = append(out, last, chosen)
	sort.Ints(out)
	k := 0
	for i, w := range out {
		if w < 0 {
			continue
		}
		if i == 0 || k == 0 || w != out[k-1] {
			out[k] = w
			k++
		}
	}
	return out[:k]
}

func (r *Result) keep(ctx context.Context, study *season.Study, i int) (Keep, bool) {
	m := r.model
	s := m.stays[i]
	st := r.Problem.Stays[i]
	sp := r.in.Garden.Spaces[s.space]
	k := Keep{Planting: s.id, Space: string(sp.ID), SpaceName: spaceName(sp), Crop: named(s.crop, s.variety, s.oneOf)}
	best := math.Inf(-1)
	for _, f := range study.KeepCurve(ctx, i, pullWeeks(min(st.End, r.Problem.Weeks-1), r.Plan.Pull[i]), keepWork) {
		if !f.Possible {
			continue
		}
		c := KeepChoice{
			Pull: r.Problem.Start + cal.Day(7*f.Week+6), NextMakes: -1, Worth: f.Worth, DotMeals: f.Meals,
			MealsLow: quantile(f.Meals, 0.1), MealsLikely: quantile(f.Meals, 0.5), MealsHigh: quantile(f.Meals, 0.9),
		}
		if f.Next >= 0 && f.NextOK != nil {
			n := 0
			for _, ok := range f.NextOK {
				if ok {
					n++
				}
			}
			c.NextMakes, c.DotNext = ofTwenty(n, len(f.NextOK)), f.NextOK
			if k.Next == "" {
				k.Next = m.entries[m.entry[f.Next]].Crop.Name
			}
		}
		k.Choices = append(k.Choices, c)
		if f.Worth > best+1e-9 {
			best, k.Best = f.Worth, len(k.Choices)-1
		}
	}
	if len(k.Choices) < 2 {
		return k, false
	}
	r.preferPlan(&k, i)
	r.atMostItsMeals(&k, st.Food)
	best = k.Choices[k.Best].Worth
	k.Either = true
	for j := range k.Choices {
		k.Either = k.Either && k.Choices[j].Worth > best-noise
	}
	k.Answer = keepAnswer(k, s)
	return k, true
}

// preferPlan takes the plan's own pull week as best when no other is clearly
// better, by twice the noise, so that the pages tell one story.
func (r *Result) preferPlan(k *Keep, i int) {
	own := r.Problem.Start + cal.Day(7*r.Plan.Pull[i]+6)
	for j, c := range k.Choices {
		if c.Pull == own && c.Worth > k.Choices[k.Best].Worth-2*noise {
			k.Best = j
		}
	}
}

// atMostItsMeals holds the cost of pulling early to the meals given up: free
// ground never makes the rest of a plan worse, so a larger difference is the
// search's own noise.
func (r *Result) atMostItsMeals(k *Keep, food int) {
	worth := 0.0
	if food >= 0 {
		worth = r.Problem.Foods[food].Worth
	}
	b := k.Choices[k.Best]
	for j := range k.Choices[:k.Best] {
		c := &k.Choices[j]
		given := math.Max(0, mean(b.DotMeals)-mean(c.DotMeals)) * worth
		c.Worth = math.Max(c.Worth, b.Worth-given)
	}
}

func keepAnswer(k Keep, s standing) Answer {
	b := k.Choices[k.Best]
	a := Answer{OfTwenty: -1, Look: "Look for new shoots, buds and stretching stems before you decide.",
		Change: "If it is finished, or looks better than this, say so and the plan follows."}
	now := k.Choices[0]
	switch {
	case k.Either:
		a.Verdict = sentence(k.Crop + " in " + k.SpaceName + ": either is fine")
		a.Reason = "Pulling now or later makes less than a meal of difference."
		a.Sure = "the difference is smaller than the doubt"
	case k.Best == 0:
		a.Verdict = sentence(fmt.Sprintf("pull %s in %s this week", k.Crop, k.SpaceName))
		a.Reason = fmt.Sprintf("It still gives %s; waiting to %s costs %s.", span(now.MealsLow, now.MealsHigh), k.Choices[1].Pull.Short(), meals(-k.Choices[1].Worth))
	default:
		a.Verdict = sentence(fmt.Sprintf("keep %s in %s until about %s", k.Crop, k.SpaceName, b.Pull.Short()))
		a.Reason = fmt.Sprintf("Until then it gives %s. Pulling now would cost %s.", span(b.MealsLow, b.MealsHigh), meals(math.Max(0, b.Worth-now.Worth)))
	}
	if !k.Either && b.NextMakes >= 0 && k.Next != "" {
		a.OfTwenty = b.NextMakes
		a.Sure = fmt.Sprintf("%s that the next crop makes it", chance(b.NextMakes))
		a.Reason += fmt.Sprintf(" Next here: %s.", k.Next)
	} else if a.Sure == "" {
		a.Sure = "by planning both ways over twenty futures"
	}
	return a
}
