package reckon

import (
	"context"
	"fmt"
	"maps"
	"math"
	"os"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/season"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// replay is one plan followed to the letter through a real year that was kept
// out of its futures. All three are priced by season.Evaluate on that year, in
// each of the plan's crop worlds: what a crop does is no better known after the
// weather is.
type replay struct {
	year                          int
	expected                      float64 // what the plan said of itself, mean over its futures
	nothing, plan, hindsight, won float64 // won = the habit's
	planFood, wonFood             float64 // worth of what is eaten, no costs taken off
}

// shifted moves a record by whole years, so that the days of that year fall on
// the plan's own. weather.Make keeps what lies in the plan's span out of the
// fit, and nothing after the date counts as known.
func shifted(rec *weather.Record, date cal.Day, year int) *weather.Record {
	_, m, d := date.Date()
	r := *rec
	r.Start += date - cal.Of(year, m, d)
	return &r
}

// asItCame is the place under the weather of the record, the same past before
// it. Days beyond the record's end are the mean year's.
func asItCame(in *Inputs, p *Place) *Place {
	out := *p
	f := p.Set.Futures[0]
	days := append([]weather.Day(nil), f.Days...)
	mean, _ := weather.MeanYear(in.Record, nil, in.site())
	for i := int(in.Date.Monday() - f.Start); i < len(days); i++ {
		day := f.Start + cal.Day(i)
		days[i] = mean[min(day.YearDay(), len(mean))-1]
		if x, ok := in.Record.At(day); ok {
			days[i] = x
		}
	}
	came := weather.Future{Start: f.Start, Days: days, From: "as it came"}
	out.Set.Futures = make([]weather.Future, in.Futures)
	for k := range out.Set.Futures {
		out.Set.Futures[k] = came
	}
	out.Envs, out.Airs = nil, make([]*stand.Air, len(p.Airs))
	for i, sp := range in.Garden.Spaces {
		out.Envs = append(out.Envs, env(in, sp, p.Lights[i], out.Set.Futures))
	}
	each(len(out.Envs), in.Workers, func(i int) {
		if in.Garden.Spaces[i].Grows() {
			out.Airs[i] = stand.NewAir(out.Envs[i])
		}
	})
	return &out
}

// afterwards is the problem of one who knows the weather: the plan's own options
// with what the year makes of them, and all that the year would have offered.
func afterwards(in *Inputs, plan *model, came *Place, stays []standing) *model {
	after := append([]standing(nil), stays...)
	growStanding(in, came, after)
	best := newModel(in, came, Menu(in, came), after)
	out := *plan
	p := *plan.p
	out.p = &p
	out.entry = append([]int(nil), plan.entry...)
	out.entries = append([]Entry(nil), plan.entries...)
	p.Totals = maps.Clone(p.Totals)
	p.Options = append([]season.Option(nil), plan.p.Options...)
	p.Stays = append([]season.Stay(nil), plan.p.Stays...)
	// What stands gives what the year makes of it, to the end planned for.
	for i := range p.Stays {
		p.Stays[i].Meals = best.p.Stays[i].Meals
	}
	lived := cameOf(in, came, plan)
	for i := range p.Options {
		o := &p.Options[i]
		x := plan.option(in, &lived[plan.entry[i]], o.End)
		o.Meals, o.MealsFrom, o.OK, o.Risk, o.RotationCost, o.AtRisk, o.Minutes = x.Meals, x.MealsFrom, x.OK, x.Risk, x.RotationCost, x.AtRisk, x.Minutes
	}
	for i, o := range best.p.Options {
		e := best.entries[best.entry[i]]
		o.ID = "known." + o.ID
		p.Options = append(p.Options, o)
		out.entry = append(out.entry, len(out.entries))
		out.entries = append(out.entries, e)
	}
	for name, most := range best.p.Totals {
		p.Totals[name] = max(p.Totals[name], most)
	}
	return &out
}

// cameOf is the plan's menu with what the year makes of each start, on the
// ground that was set aside for it.
func cameOf(in *Inputs, came *Place, plan *model) []Entry {
	type kind struct {
		class int
		crop  crop.ID
	}
	var kinds []kind
	of := map[kind][]int{}
	for k, e := range plan.entries {
		x := kind{e.Class, e.Crop.ID}
		if of[x] == nil {
			kinds = append(kinds, x)
		}
		of[x] = append(of[x], k)
	}
	out := append([]Entry(nil), plan.entries...)
	each(len(kinds), in.Workers, func(i int) {
		list := of[kinds[i]]
		c := plan.entries[list[0]].Crop
		t := came.Airs[kinds[i].class].Table(c, stand.Worlds(c, in.Futures, in.Seed))
		for _, k := range list {
			g := t.Grow(out[k].Way, out[k].Day)
			g.FootprintM2, g.HeightM = out[k].Growth.FootprintM2, out[k].Growth.HeightM
			out[k].Growth, out[k].rows = g, nil
		}
	})
	return out
}

// replayYear plans without a year, then lives it.
func replayYear(t *testing.T, in *Inputs, year int) replay {
	t.Helper()
	rec := in.Record
	_, m, d := in.Date.Date()
	from := cal.Of(year, m, d)
	last := meanLastFrost(rec, from, from+cal.Day(7*(in.Weeks+afterWeeks)))
	one := *in
	one.Record = shifted(rec, in.Date, year)
	g, err := NewGround(&one)
	if err != nil {
		t.Fatal(err)
	}
	stays := whatStands(&one)
	growStanding(&one, g.Place, stays)
	model := newModel(&one, g.Place, g.Menu, stays)
	ctx := context.Background()
	plan := season.Search(ctx, model.p, season.Limits{Work: in.Work, Seed: in.Seed, Workers: in.Workers, Prices: prove(ctx, in, model.p).guide()})

	came := asItCame(&one, g.Place)
	after := afterwards(&one, model, came, stays)
	price := func(p *season.Problem, plan *season.Plan) float64 {
		v := season.Evaluate(p, plan)
		for _, f := range v.Faults {
			if !isMustFault(f) {
				t.Errorf("%d: %s", year, f)
			}
		}
		return v.Value
	}
	out := replay{year: year, expected: plan.Value}
	nothing := season.Plan{Pull: make([]int, len(after.p.Stays))}
	for i := range after.p.Stays {
		nothing.Pull[i] = min(after.p.Stays[i].End, after.p.Weeks-1)
	}
	out.nothing, out.plan = price(after.p, &nothing), price(after.p, &plan)
	out.planFood = season.Evaluate(after.p, &plan).Parts.Food
	// One who knows the weather searches as long, once afresh and once from the
	// plan itself; the better counts.
	lim := season.Limits{Work: in.Work, Seed: in.Seed, Workers: in.Workers, Prices: prove(ctx, in, after.p).guide()}
	fresh := season.Search(ctx, after.p, lim)
	lim.Prior = &plan
	from2 := season.Search(ctx, after.p, lim)
	out.hindsight = math.Max(price(after.p, &fresh), price(after.p, &from2))
	out.won = math.Inf(-1)
	for way := range 8 {
		h := *after
		p := *after.p
		p.Options, h.entry, h.p = nil, nil, &p // it makes its own
		habit := habitPlan(&one, g.Place, came, &h, stays, last, tenHours(in.Garden.Place.LatDeg), way&1 > 0, way&2 > 0, way&4 > 0)
		if x := price(h.p, &habit); x > out.won {
			out.won, out.wonFood = x, season.Evaluate(h.p, &habit).Parts.Food
		}
		if os.Getenv("HABIT_SAYS") != "" {
			for _, pl := range habit.Plantings {
				o := h.p.Options[pl.Option]
				t.Logf("    %s x%d, weeks %d to %d", o.ID, pl.Plants, o.Week, o.End)
			}
			v := season.Evaluate(h.p, &habit)
			t.Logf("    habit %+v", v.Parts)
			v = season.Evaluate(after.p, &plan)
			t.Logf("    plan %+v", v.Parts)
		}
	}
	return out
}

// TestHindsight replays real years that the plans did not see. It takes
// minutes and so runs only when asked:
//
//	RECKON_HINDSIGHT=1 go test ./internal/reckon -run TestHindsight -v -timeout 60m
func TestHindsight(t *testing.T) {
	if os.Getenv("RECKON_HINDSIGHT") == "" {
		t.Skip("runs when RECKON_HINDSIGHT is set")
	}
	var all []replay
	for _, c := range hindsightCases(t) {
		var of []replay
		for _, year := range []int{2012, 2013, 2014} {
			r := replayYear(t, c.in, year)
			t.Logf("%s, %d: said %.0f; nothing %.0f, plan %.0f, hindsight %.0f, habit %.0f: %s", c.name, year, r.expected, r.nothing, r.plan, r.hindsight, r.won, ratios(r))
			of = append(of, r)
		}
		t.Logf("%s, all years: %s", c.name, ratios(of...))
		all = append(all, of...)
	}
	t.Logf("all: %s", ratios(all...))
}

// ratios says both figures, of sums over replays: of the whole worth and of
// what is added to doing nothing.
func ratios(rs ...replay) string {
	var s replay
	for _, r := range rs {
		s.planFood, s.wonFood = s.planFood+r.planFood, s.wonFood+r.wonFood
		s.nothing, s.plan, s.hindsight, s.won = s.nothing+r.nothing, s.plan+r.plan, s.hindsight+r.hindsight, s.won+r.won
	}
	return fmt.Sprintf("of hindsight %.1f %% (above nothing %.1f %%), times the habit %.2f (above nothing %.2f; food alone, no costs, %.2f)",
		100*s.plan/s.hindsight, 100*(s.plan-s.nothing)/(s.hindsight-s.nothing), s.plan/s.won, (s.plan-s.nothing)/(s.won-s.nothing), s.planFood/s.wonFood)
}

type hindsightCase struct {
	name string
	in   *Inputs
}

func hindsightCases(t *testing.T) []hindsightCase {
	var out []hindsightCase
	for _, c := range demoCases() {
		if c.south {
			continue // its climate is invented and has no year that came
		}
		in := demoInputs(t, c)
		in.Work, in.Workers = DefaultWork, 2
		out = append(out, hindsightCase{"demo, " + c.date.String(), in})
	}
	out = append(out, inventedCases(t)...)
	if only := os.Getenv("RECKON_HINDSIGHT"); only != "1" {
		kept := out[:0]
		for _, c := range out {
			if strings.Contains(c.name, only) {
				kept = append(kept, c)
			}
		}
		out = kept
	}
	return out
}

// TestHabitKeepsItsRules: the yardstick does what it says, on an invented
// garden in a year it lives through.
func TestHabitKeepsItsRules(t *testing.T) {
	in := inventedInputs(t, 12, 8)
	in.Futures = 4
	rec := in.Record
	in.Record = shifted(rec, in.Date, 2013)
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	stays := whatStands(in)
	growStanding(in, g.Place, stays)
	last := meanLastFrost(rec, cal.Of(2013, 4, 6), cal.Of(2014, 9, 20))
	if md := last(2015); md < cal.Of(2015, 2, 15) || md > cal.Of(2015, 4, 30) {
		t.Errorf("mean last frost on %s: want February to April at Seattle's airport", md)
	}
	if ten := tenHours(47.6)(2015); ten < cal.Of(2015, 10, 28) || ten > cal.Of(2015, 11, 15) {
		t.Errorf("ten-hour day on %s: want about 1 November at 47.6 degrees north", ten)
	}
	came := asItCame(in, g.Place)
	for way := range 8 {
		m := newModel(in, g.Place, nil, stays)
		nothing := season.Plan{Pull: make([]int, len(m.p.Stays))}
		for i := range m.p.Stays {
			nothing.Pull[i] = min(m.p.Stays[i].End, m.p.Weeks-1)
		}
		plan := habitPlan(in, g.Place, came, m, stays, last, tenHours(47.6), way&1 > 0, way&2 > 0, way&4 > 0)
		v := season.Evaluate(m.p, &plan)
		for _, f := range v.Faults {
			if !isMustFault(f) {
				t.Errorf("way %d: %s", way, f)
			}
		}
		none := season.Evaluate(m.p, &nothing)
		if v.Parts.Food < 2*none.Parts.Food || len(plan.Plantings) < 2*len(m.p.Spaces) {
			t.Errorf("way %d: %d plantings and food worth %.1f, nothing gives %.1f: the yardstick hardly gardens", way, len(plan.Plantings), v.Parts.Food, none.Parts.Food)
		}
		warm := map[int]bool{}
		for _, pl := range plan.Plantings {
			o := m.p.Options[pl.Option]
			c, _ := in.Book.Crop(crop.ID(o.Crop))
			monday := m.p.Start + cal.Day(7*o.Week)
			if c.Warm {
				warm[o.Week] = true
			}
			if o.Space%restShare == restShare-1 && monday.Month() >= 9 {
				t.Errorf("way %d: %s is sown on %s where the ground rests", way, o.ID, monday)
			}
		}
		if len(warm) == 0 || len(warm) > 2 {
			t.Errorf("way %d: warm crops go out in weeks %v, want one day a year", way, warm)
		}
	}
}
