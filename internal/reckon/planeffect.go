package reckon

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/crop"
	"bedweek/internal/season"
)

// PlanEffect is what an own figure changed in the plan.
type PlanEffect struct {
	Before, After           []string // the crop's plantings, in words
	Others                  int      // plantings of other crops that came or went
	WorthBefore, WorthAfter float64  // meals
	Same                    bool     // the crop is planted as before
}

// Says tells the change in a sentence.
func (e PlanEffect) Says() string {
	s := "The plan plants it as before."
	if !e.Same {
		s = "The plan plants it otherwise."
	}
	switch {
	case e.Others > 0:
		s += fmt.Sprintf(" %s of other crops came or went with it.", capital(plural(e.Others, "planting", "plantings")))
	case e.Same:
		s += " Nothing else changed either."
	}
	if d := math.Round(e.WorthAfter) - math.Round(e.WorthBefore); d != 0 {
		s += fmt.Sprintf(" The whole plan is worth %.0f meals, before %.0f.", e.WorthAfter, e.WorthBefore)
	}
	return s
}

// NewPlanEffect compares two plans of one garden and date.
func NewPlanEffect(before, after *Result, id string) PlanEffect {
	a, b := before.plantedAs(), after.plantedAs()
	e := PlanEffect{Before: a[id], After: b[id], WorthBefore: before.Plan.Value, WorthAfter: after.Plan.Value}
	e.Same = fmt.Sprint(e.Before) == fmt.Sprint(e.After)
	ids := map[string]bool{}
	for c := range a {
		ids[c] = true
	}
	for c := range b {
		ids[c] = true
	}
	for c := range ids {
		if c != id {
			e.Others += unlike(a[c], b[c]) + unlike(b[c], a[c])
		}
	}
	return e
}

// unlike counts the words of a that b has not.
func unlike(a, b []string) int {
	left := map[string]int{}
	for _, w := range b {
		left[w]++
	}
	n := 0
	for _, w := range a {
		if left[w]--; left[w] < 0 {
			n++
		}
	}
	return n
}

// plantedAs tells the plan's plantings by crop.
func (r *Result) plantedAs() map[string][]string {
	type one struct {
		week  int
		words string
	}
	all := map[string][]one{}
	for _, b := range r.batches(func(season.Option) bool { return true }) {
		o := r.model.p.Options[b.option]
		e := r.model.entries[r.model.entry[b.option]]
		verb := map[crop.Way]string{crop.SetOut: "set out", crop.Plant: "planted", crop.Sow: "sown"}[e.Way]
		all[o.Crop] = append(all[o.Crop], one{o.Week, fmt.Sprintf("%s, %s %s in %s (%s)",
			plants(b.plants), verb, week(e.Day), spaceName(r.in.Garden.Spaces[r.model.spaces[o.Space]]), ofWords(ofTwenty(e.Growth.Success, r.in.Futures)))})
	}
	out := map[string][]string{}
	for c, list := range all {
		sort.Slice(list, func(i, j int) bool {
			if list[i].week != list[j].week {
				return list[i].week < list[j].week
			}
			return list[i].words < list[j].words
		})
		for _, x := range list {
			out[c] = append(out[c], x.words)
		}
	}
	return out
}
