package reckon

import (
	"fmt"

	"bedweek/internal/garden"
)

// batchTests ask for the one test each lot of medium wants: beans in a new one,
// a soil test in one that has fed plants for years.
func (r *Result) batchTests() []Task {
	var out []Task
	for _, b := range r.in.Garden.Batches {
		at := -1
		for i, sp := range r.in.Garden.Spaces {
			if sp.Medium == b.ID && sp.Grows() {
				at = i
				break
			}
		}
		if at < 0 {
			continue
		}
		if t, ok := r.beanTest(at, b); ok {
			out = append(out, t)
		} else if t, ok := r.soilTest(at, b); ok {
			out = append(out, t)
		}
	}
	return out
}

// beanTest is for a lot filled this year in which nothing has grown.
func (r *Result) beanTest(at int, b garden.Batch) (Task, bool) {
	sp := r.in.Garden.Spaces[at]
	if b.Since != r.in.Date.Year() || len(b.History) > 0 || r.lastDone(string(sp.ID), "test") != 0 {
		return Task{}, false
	}
	t := r.task(at, "test", fmt.Sprintf("the new %s", b.Kind), "")
	t.Event, t.Minutes, t.Until = EventDone, 15, r.in.Date+14
	t.Rule = "Beans or peas: three pots of it, three of a mix you trust, two to three weeks, to the third set of leaves."
	t.Basis = "Washington State University, bioassay protocol (read as excerpt)"
	t.Answer = Answer{
		Verdict: sentence(fmt.Sprintf("test the new %s in %s with beans", b.Kind, t.SpaceName)),
		Reason:  "Weed killer in hay, manure or compost outlasts the heap. Beans show it before your tomatoes do.",
		Sure:    "not known for this lot, and this would tell", OfTwenty: -1,
		Look:    "New leaves cupped or twisted in its pots alone: do not use it.",
		Change:  "Beans or tomatoes already grow well in it: no need, say so.",
		Caution: potDust,
	}
	return t, true
}

// soilYears is how many years may pass between two soil tests: common practice.
const soilYears = 3

// soilTest is for beds and ground that were fed for years, outside the season.
func (r *Result) soilTest(at int, b garden.Batch) (Task, bool) {
	sp := r.in.Garden.Spaces[at]
	last := r.lastDone(string(sp.ID), "test")
	old := b.Since == 0 || r.in.Date.Year()-b.Since >= soilYears
	if b.Kind != "garden soil" && b.Kind != "compost blend" || !old || !monthIn(r.in.Date, 10, 3, r.in.Garden.Place.LatDeg < 0) ||
		last != 0 && r.in.Date < last+soilYears*365 {
		return Task{}, false
	}
	t := r.task(at, "test", "the "+b.Kind, "")
	t.Event, t.Minutes, t.Until = EventDone, 20, r.in.Date+60
	t.Rule = "Every three years, before more compost goes on."
	t.Basis = "common practice; a help desk's case: phosphorus 70 to 170 in six years of compost, and falling yields"
	t.Answer = Answer{
		Verdict: sentence(fmt.Sprintf("test the %s of %s", b.Kind, t.SpaceName)),
		Reason:  "More compost each year can lower yields. A test tells what it lacks.",
		Sure:    "not known, and this would tell", OfTwenty: -1,
		Look:   "Take ten small samples from spade depth, mix them, send a cup.",
		Change: "A test within three years: say when.",
	}
	if sp.Kind == garden.Ground {
		t.Answer.Caution = "Near an old house or road ask for lead too. The US level for homes is 200 mg/kg (October 2025); states may be stricter. The health department comes first."
	}
	return t, true
}
