package reckon

import (
	"context"
	"fmt"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/stand"
)

// day assembles everything the faces draw.
func (r *Result) day(ctx context.Context, seconds map[string]float64) *Day {
	in := r.in
	d := &Day{
		Garden: in.Garden.Name, Date: in.Date, Demo: in.Demo, Place: SayPlace(in.Garden.Place),
		Weather: r.Place.Set.Words + r.sunWords(),
	}
	for w := range in.Weeks {
		d.WeekOf = append(d.WeekOf, r.Problem.Start+cal.Day(7*w))
	}
	d.Notes = r.notes()
	switch d.First = in.Quick && (in.Before == nil || in.Before.First); {
	case d.First: // asked of the full plan
	case in.Quick:
		d.Keeps, d.Changed = r.keepsBefore(in.Before.Keeps), in.Before.Changed
	default:
		d.Keeps, d.Changed = r.keeps(ctx), r.changed(ctx, in.LastWeek)
	}
	d.Heard = r.heard()
	d.Today, d.Hot = r.today(d.Keeps), r.hotToday()
	d.People, d.Minutes = people(in.Garden), in.Garden.Minutes
	d.Water = r.waterSays()
	sides := sides(in.Garden)
	d.Table = r.table(d.WeekOf)
	t := in.now()
	switch {
	case in.Quick:
		r.mendsBefore(d, in.Before)
	case !in.stopped():
		r.mendTable(ctx, d.Table)
	}
	seconds["mending the table"] = in.now() - t
	d.Plan = r.says(seconds)
	for i, sp := range in.Garden.Spaces {
		if sp.Kind == garden.LampShelf || sp.Kind == garden.Bench {
			d.Shelf = append(d.Shelf, r.trays(i)...)
		}
		said := r.spaceDay(i, d)
		said.Side, said.Near, said.Who, said.Reach = sides[i], nearBy(in.Garden, i), r.who(sp), reaches(in.Garden, sp)
		d.Spaces = append(d.Spaces, said)
	}
	d.Shelf = append(d.Shelf, r.shelfLines()...)
	for _, f := range wantedFoods(in.Garden) {
		d.Foods = append(d.Foods, string(f))
	}
	for _, f := range in.Book.Foods() {
		if !slices.Contains(d.Foods, f.Name) {
			d.Foods = append(d.Foods, f.Name)
		}
	}
	d.Papers = r.papers(d)
	for _, c := range in.Book.Crops {
		d.Crops = append(d.Crops, Choice{string(c.ID), c.Name})
	}
	sort.SliceStable(d.Crops, func(a, b int) bool { return d.Crops[a].Name < d.Crops[b].Name })
	if in.Quick && in.Before != nil {
		return d.WithLater(in.Before.Later) // of the plan before, as pull or keep
	}
	return d
}

// sunWords says so when the record holds no radiation.
func (r *Result) sunWords() string {
	if r.in.Record == nil {
		return ""
	}
	for _, g := range r.in.Record.Gaps {
		if g.Quantity == "radiation" && g.To-g.From > 300 {
			return " The record has no sunshine: it was " + g.Filled + "."
		}
	}
	return ""
}

// notes are said first: what was filled, what is guessed.
func (r *Result) notes() []string {
	var out []string
	if r.in.Record != nil {
		for _, g := range r.in.Record.Gaps {
			if g.Quantity == "radiation" && g.To-g.From > 300 {
				continue // never measured at all: said with the weather
			}
			out = append(out, sentence(fmt.Sprintf("weather: %s is missing from %s to %s. Filled: %s", g.Quantity, g.From.Long(), g.To.Long(), g.Filled)))
		}
	}
	out = append(out, r.in.doubts()...)
	if r.in.State != nil {
		out = append(out, r.in.State.Differences...)
	}
	out = append(out, r.spare()...)
	if len(r.Plan.Conflict) > 0 {
		out = append(out, "Not all wishes can be met. The page Wishes names them, and the cheapest to give up.")
	}
	return out
}

// spare names pots that stand ready and have no place in the plan.
func (r *Result) spare() []string {
	var out []string
	for _, s := range whatStands(r.in) {
		if !s.tray {
			continue
		}
		used := 0
		for _, pl := range r.Plan.Plantings {
			if o := r.Problem.Options[pl.Option]; o.MaxTotal == "tray."+s.id {
				used += pl.Plants
			}
		}
		if left := s.count - used; left > 0 {
			out = append(out, sentence(fmt.Sprintf("%s on the shelf: %s of %d %s no place in the plan%s; %s",
				named(s.crop, s.variety, s.oneOf), plants(left), s.count, hasOrHave(left), r.whySpare(s, used), giveAway(left))))
		}
	}
	return out
}

func giveAway(n int) string {
	if n == 1 {
		return "give it away, or pot it on as a spare"
	}
	return "give them away, or pot on as spares"
}

func hasOrHave(n int) string {
	if n == 1 {
		return "has"
	}
	return "have"
}

// whySpare says what keeps pots out of the plan.
func (r *Result) whySpare(s standing, used int) string {
	if used > 0 {
		return ", the rest of the ground and the table being better served"
	}
	best, cause := -1, ""
	for _, e := range r.model.entries {
		if e.Crop.ID == s.crop.ID && e.Way == crop.SetOut && trayFor([]standing{s}, e) != "" && e.Growth.Success > best {
			best, cause = e.Growth.Success, ""
			if e.Growth.Cause != stand.Fine {
				cause = ": " + string(e.Growth.Cause)
			}
		}
	}
	switch {
	case best < 0:
		return ": no week comes in which they are of an age to set out and the ground is fit"
	case best < leastTray*r.in.Futures/20:
		return fmt.Sprintf(": set out anywhere here they succeed at most %d of 20 times%s", ofTwenty(best, r.in.Futures), cause)
	}
	return fmt.Sprintf(", though they would succeed up to %d of 20 times: other crops give as much or more from the same ground. A wish says what planting them all the same costs", ofTwenty(best, r.in.Futures))
}

// trays are the pots that stand on a shelf or bench today.
func (r *Result) trays(space int) []Line {
	var out []Line
	for _, s := range whatStands(r.in) {
		if s.space != space {
			continue
		}
		l := Line{ID: s.id, Space: string(r.in.Garden.Spaces[space].ID), Crop: s.crop.Name, CropID: string(s.crop.ID),
			Variety: s.variety, Plants: s.count, Standing: true, OnShelf: s.since.Likely, OfTwenty: -1}
		if len(s.oneOf) > 0 {
			l.Variety = "one of " + list(s.oneOf)
		}
		out = append(out, l)
	}
	return out
}

// shelfLines are the raised starts of the plan, from their day on the shelf.
func (r *Result) shelfLines() []Line {
	var out []Line
	for k := range r.Plan.Plantings {
		if l := r.plantedLine(k); l.OnShelf != 0 {
			out = append(out, l)
		}
	}
	sort.SliceStable(out, func(a, b int) bool {
		if out[a].OnShelf != out[b].OnShelf {
			return out[a].OnShelf < out[b].OnShelf
		}
		return out[a].ID < out[b].ID
	})
	return out
}

// spaceDay says what one space is, does now and does next.
func (r *Result) spaceDay(i int, d *Day) SpaceDay {
	sp := r.in.Garden.Spaces[i]
	out := SpaceDay{
		ID: string(sp.ID), Name: spaceName(sp), Kind: string(sp.Kind), Size: size(sp), Water: waterWords(sp.Water),
		SunH: r.Place.Lights[i].SunH, DLI: r.Place.Lights[i].DLI,
	}
	for _, b := range r.in.Garden.Batches {
		if b.ID == sp.Medium {
			out.Medium = b.Kind
			if b.Since > 0 {
				out.Medium += fmt.Sprintf(", filled %d", b.Since)
			}
		}
	}
	if !sp.Grows() {
		if sp.Kind == garden.Heap {
			out.Now, out.Next, out.Answer = r.heapWords(i)
			return out
		}
		out.Now, out.Next, out.Answer = r.shelfWords(i)
		return out
	}
	out.Lines = r.spaceLines(string(sp.ID))
	out.Else = elseHere(sp, r.in.Date)
	out.Now, out.Next = r.nowNext(out.Lines, out.Else)
	out.IdleWeeks = r.idle(i)
	out.Answer = r.mainAnswer(out, d)
	return out
}

func waterWords(w string) string {
	switch w {
	case "can":
		return "watered by can"
	case "drip":
		return "drip line"
	case "reservoir":
		return "reservoir below"
	case "rain":
		return "rain only"
	}
	return w
}

// nowNext says in one sentence each what the space does now and next.
func (r *Result) nowNext(lines []Line, others []Else) (now, next string) {
	var here []string
	for _, l := range lines {
		if !l.Standing {
			continue
		}
		s := l.Crop
		if l.Variety != "" {
			s = Bracketed(s, l.Variety)
		}
		if l.Plants > 0 {
			s += ", " + plants(l.Plants)
		}
		if !l.Out.None() {
			s += ", until " + l.Out.String()
		}
		here = append(here, s)
	}
	for _, e := range others {
		if e.AreaM2 > 0 {
			here = append(here, e.Name+" (not in the book)")
		}
	}
	if len(here) == 0 {
		now = "Nothing stands here."
	} else {
		now = sentence(list(here))
	}
	for _, l := range lines {
		if l.Standing {
			continue
		}
		return now, sentence(fmt.Sprintf("next: %s, %s, %s %s; %s", l.Crop, plants(l.Plants), l.begun(), week(l.In.Likely), chance(l.OfTwenty)))
	}
	return now, "Nothing new is planned here yet."
}

// begun says how a planned line gets into the ground.
func (l Line) begun() string {
	if l.OnShelf != 0 || l.Way == "set" {
		return pastVerb(crop.SetOut)
	}
	if l.Way == "plant" {
		return pastVerb(crop.Plant)
	}
	return pastVerb(crop.Sow)
}

// idle counts the plan weeks in which nothing holds ground in a space.
func (r *Result) idle(space int) int {
	m := r.model
	n := 0
	for w := range m.p.Weeks {
		busy := false
		for i, st := range m.p.Stays {
			busy = busy || m.spaces[st.Space] == space && w <= r.Plan.Pull[i]
		}
		for _, pl := range r.Plan.Plantings {
			o := m.p.Options[pl.Option]
			busy = busy || m.spaces[o.Space] == space && o.Week <= w && w <= o.End
		}
		if !busy {
			n++
		}
	}
	return n
}

// mainAnswer is the space's most pressing decision: a task, a keep, or what
// comes next.
func (r *Result) mainAnswer(s SpaceDay, d *Day) Answer {
	for _, t := range d.Today {
		if t.Space == s.ID && t.Verb != "look" {
			return t.Answer
		}
	}
	for _, k := range d.Keeps {
		if k.Space == s.ID {
			return k.Answer
		}
	}
	for _, l := range s.Lines {
		if !l.Standing {
			return Answer{Verdict: "Nothing to do here this week.", Reason: s.Next, Sure: chance(l.OfTwenty), OfTwenty: l.OfTwenty,
				Look: "Is the space really as described?", Change: "What you note here changes it at once."}
		}
	}
	return Answer{Verdict: "Nothing to do here this week.", Reason: s.Now, Sure: "nothing is at stake", OfTwenty: -1,
		Look: "Is the space really as described?", Change: "What you note here changes it at once."}
}

// shelfWords says what stands on a shelf or bench.
func (r *Result) shelfWords(i int) (now, next string, a Answer) {
	n := 0
	var names []string
	for _, l := range r.trays(i) {
		n += l.Plants
		names = append(names, fmt.Sprintf("%s (%d)", l.Crop, l.Plants))
	}
	now = "Nothing stands here."
	if n > 0 {
		now = sentence(list(names))
	}
	next = "No sowing is planned here yet."
	for _, l := range r.shelfLines() {
		if l.OnShelf >= r.in.Date.Monday() {
			next = sentence(fmt.Sprintf("next: sow %s, %s, %s", l.Crop, plants(l.Plants), week(l.OnShelf)))
			break
		}
	}
	a = Answer{Verdict: "Look at the trays.", Reason: next, Sure: "common practice", OfTwenty: -1,
		Look: "Lift a pot: are roots at the holes?", Change: "Roots at the holes: pot on or set out sooner."}
	return now, next, a
}

// says is the plan's own account.
func (r *Result) says(seconds map[string]float64) PlanSays {
	v := r.Verdict
	value, nothing, worst := r.worths()
	p := PlanSays{
		Status: r.Plan.Status.String(), Value: value, Nothing: nothing, Worst: worst, BadYears: r.in.Garden.BadYears,
		Mean: mean(v.PerFuture), Low: quantile(v.PerFuture, 0.1), High: quantile(v.PerFuture, 0.9),
		Seed: r.in.Seed, Work: r.Plan.Work, Options: len(r.Problem.Options), Seconds: seconds,
	}
	p.Words = fmt.Sprintf("Weighed %d possible plantings in %d spaces over %d weeks and 20 futures. "+
		"The plan is worth %.0f meals more than leaving everything as it stands. "+
		"In the leanest two of twenty futures all of it is worth under %.0f meals, in the best two over %.0f. "+
		"%s",
		p.Options, len(r.Problem.Spaces), r.in.Weeks, p.Value-p.Nothing, p.Low, p.High, r.proof.words())
	if r.Problem.WorstShare > 0 {
		p.Words += fmt.Sprintf(" It is made for bad years too (%s): in the worst five of twenty futures it is worth %.0f meals on average.", p.BadYears, p.Worst)
	}
	p.Proof, p.Gap, p.Proved = r.proof.words(), r.proof.gap, r.proof.ok
	p.FutureGap, p.FutureProved = r.proof.futureGap, r.proof.known
	return p
}
