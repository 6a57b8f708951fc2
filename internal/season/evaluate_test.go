package season

import (
	"context"
	"math"
	"slices"
	"strings"
	"testing"
)

// Cases worked by hand on paper from the rules of docs/season.md; there is no
// outside source for our own value rule.

func near(a, b float64) bool { return math.Abs(a-b) < 1e-9 }

// oneBed is one space of 1 m2 and one food, wanted 2 a week for weeks weeks,
// worth 1 a meal, 0.2 beyond the want.
func oneBed(weeks, shelf int) *Problem {
	p := &Problem{Weeks: weeks, Futures: 1,
		Spaces: []Space{{ID: "bed", AreaM2: 1, VolumeL: 100, TallM2: 1, SupportM: 1, Batch: -1}},
		Foods:  []Food{{ID: "bean", Worth: 1, Extra: 0.2, Shelf: shelf}}}
	for range weeks {
		p.Foods[0].Want = append(p.Foods[0].Want, 2)
	}
	return p
}

// crop is an option of the bed that is picked so many meals a plant by week.
func crop(id string, week, end int, foot float64, meals ...float32) Option {
	return Option{ID: "bed." + id, Crop: id, Family: -1, Week: week, End: end, Min: 1, Max: 10,
		Footprint: []float64{foot}, TallFrom: -1, ShelfFrom: -1 << 30, Meals: [][]float32{meals}, MealsFrom: week}
}

func TestEatingByHand(t *testing.T) {
	for _, tt := range []struct {
		name   string
		shelf  int
		picked []float32
		eaten  []float64
		spoilt []float64
		worth  float64
		how    string
	}{
		{"half the want", 0, []float32{1, 0, 0}, []float64{1, 0, 0}, []float64{0, 0, 0}, 1, "1 at 1"},
		{"the want", 0, []float32{2, 0, 0}, []float64{2, 0, 0}, []float64{0, 0, 0}, 1.6, "1 at 1, 1 at 0.6"},
		{"twice the want", 0, []float32{4, 0, 0}, []float64{4, 0, 0}, []float64{0, 0, 0}, 2, "1.6 and 2 at 0.2"},
		{"more than twice", 0, []float32{7, 0, 0}, []float64{4, 0, 0}, []float64{3, 0, 0}, 2, "3 spoil"},
		{"keeps one week", 1, []float32{4, 0, 0}, []float64{2, 2, 0}, []float64{0, 0, 0}, 3.2, "2 a week, twice 1.6"},
		{"keeps one week, glut", 1, []float32{7, 0, 0}, []float64{2, 4, 0}, []float64{0, 1, 0}, 3.6, "what spoils is eaten in its last week: 1.6, then 2"},
		{"oldest first", 1, []float32{3, 2, 0}, []float64{2, 2, 1}, []float64{0, 0, 0}, 4.2, "week 1 eats the old 1 and a new 1; week 2 the last: 1.6+1.6+1"},
		{"not before it is picked", 2, []float32{0, 1, 0}, []float64{0, 1, 0}, []float64{0, 0, 0}, 1, "1 at 1"},
		{"end of the plan", 3, []float32{0, 0, 5}, []float64{0, 0, 2}, []float64{0, 0, 0}, 1.6, "the rest outlives the plan and counts only as a tail"},
	} {
		p := oneBed(3, tt.shelf)
		p.Options = []Option{crop("bean.0", 0, 2, 0.1, tt.picked...)}
		v := Evaluate(p, &Plan{Plantings: []Planting{{0, 1}}, Pull: []int{}})
		if len(v.Faults) > 0 || !near(v.Value, tt.worth) {
			t.Errorf("%s: worth %.6f, want %.6f (by hand: %s); faults %v", tt.name, v.Value, tt.worth, tt.how, v.Faults)
		}
		for w, cell := range v.Table[0] {
			if !near(cell.Eaten[0], tt.eaten[w]) || !near(cell.Spoilt[0], tt.spoilt[w]) || !near(cell.Picked[0], float64(tt.picked[w])) {
				t.Errorf("%s, week %d: picked %v eaten %v spoilt %v, want %v %v %v", tt.name, w, cell.Picked[0], cell.Eaten[0], cell.Spoilt[0], tt.picked[w], tt.eaten[w], tt.spoilt[w])
			}
		}
	}
}

// TestEatingIsPossible checks, on random gardens, what first in, first out
// must obey: eaten and spoilt up to w never exceed what was picked up to w,
// nothing older than the shelf life is left, and no week eats over twice Want.
func TestEatingIsPossible(t *testing.T) {
	for seed := range uint64(60) {
		p := tiny(seed)
		plan := Plan{Pull: naturalEnds(p)}
		for i := range p.Options {
			plan.Plantings = append(plan.Plantings, Planting{i, p.Options[i].Max})
		}
		v := Evaluate(p, &plan)
		for k, row := range v.Table {
			for f := range p.Futures {
				var picked, eaten, gone float64
				old := make([]float64, p.Weeks)
				for w := range row {
					picked += row[w].Picked[f]
					eaten += row[w].Eaten[f]
					gone += row[w].Eaten[f] + row[w].Spoilt[f]
					old[w] = picked
					if gone > picked+1e-9 {
						t.Fatalf("seed %d food %d week %d: %.6f gone of %.6f picked", seed, k, w, gone, picked)
					}
					if due := w - p.Foods[k].Shelf; due >= 0 && gone < old[due]-1e-9 {
						t.Fatalf("seed %d food %d week %d: %.6f gone, %.6f should be", seed, k, w, gone, old[due])
					}
					if row[w].Eaten[f] > 2*row[w].Wanted+1e-9 || row[w].Eaten[f] < 0 || row[w].Spoilt[f] < -1e-12 {
						t.Fatalf("seed %d food %d week %d: eaten %v of %v wanted", seed, k, w, row[w].Eaten[f], row[w].Wanted)
					}
				}
			}
		}
	}
}

func TestLimitsByHand(t *testing.T) {
	base := func() (*Problem, *Plan) {
		p := oneBed(4, 1)
		p.Shelf = []float64{0, 3, 3, 3, 3, 3}
		p.ShelfStart = -2
		p.Options = []Option{crop("a.0", 0, 2, 0.25, 1), crop("b.1", 1, 3, 0.25, 1)}
		p.Stays = []Stay{{ID: "leek", Crop: "leek", Food: -1, Family: -1, Plants: 3, End: 1, MustKeepTo: -1, Footprint: []float64{0.5}}}
		return p, &Plan{Plantings: []Planting{{0, 1}, {1, 1}}, Pull: []int{1}}
	}
	for _, tt := range []struct {
		name   string
		break1 func(p *Problem, plan *Plan)
		fault  string // part of the words, "" = none
	}{
		{"as it is, just full", func(*Problem, *Plan) {}, ""},
		{"a plant too many", func(_ *Problem, plan *Plan) { plan.Plantings[1].Plants = 2 }, "space bed, week 1: 1.250 m2"},
		{"room when the leeks go", func(p *Problem, plan *Plan) { plan.Plantings[1].Plants = 2; plan.Pull[0] = 0 }, ""},
		{"what stands may be too much by itself", func(p *Problem, plan *Plan) { p.Stays[0].Footprint[0] = 3; plan.Plantings = nil }, ""},
		{"but nothing may be added", func(p *Problem, plan *Plan) { p.Stays[0].Footprint[0] = 3 }, "week 0: 3.250 m2"},
		{"roots", func(p *Problem, _ *Plan) { p.Options[0].VolumeL = 101 }, "litres of root room"},
		{"roots grow with the plant", func(p *Problem, _ *Plan) {
			p.Options[0].VolumeL, p.Options[1].VolumeL = 60, 60
			p.Options[0].Footprint = []float64{0.25, 0.25, 0.1} // 60, 60, 24 litres
			p.Options[1].Footprint = []float64{0.1, 0.1, 0.25}  // 24, 24, 60 litres in weeks 1, 2, 3
		}, ""},
		{"tall", func(p *Problem, _ *Plan) { p.Options[1].TallFrom, p.Spaces[0].TallM2 = 2, 0.2 }, "week 2: 0.250 m2 of ground for tall"},
		{"not yet tall", func(p *Problem, _ *Plan) { p.Options[1].TallFrom, p.Spaces[0].TallM2 = 4, 0.2 }, ""},
		{"support", func(p *Problem, _ *Plan) { p.Options[0].SupportM = 1.1 }, "m of support"},
		{"pots before the plan begins", func(p *Problem, _ *Plan) { p.Options[0].ShelfFrom, p.Options[0].ShelfPlaces = -2, 1 }, "shelf, week -2: 1.0 places taken, 0.0 there"},
		{"pots in the past", func(p *Problem, _ *Plan) {
			p.Options[0].ShelfFrom, p.Options[0].ShelfPlaces, p.ShelfStart = -2, 1, -1
			p.Shelf = []float64{1, 1, 1, 1, 1}
		}, ""},
		{"pots off the shelf in the week they are set out", func(p *Problem, _ *Plan) {
			p.Options[1].ShelfFrom, p.Options[1].ShelfPlaces = 0, 4
			p.Shelf = []float64{9, 9, 9, 0, 0, 0}
		}, ""},
		{"batch too large", func(_ *Problem, plan *Plan) { plan.Plantings[0].Plants = 11 }, "bed.a.0: 11 plants, want 1 to 10"},
		{"batch too small", func(p *Problem, _ *Plan) { p.Options[0].Min = 2 }, "1 plants, want 2 to 10"},
		{"min above max", func(p *Problem, _ *Plan) { p.Options[0].Min = 12 }, "want 12 to 10"},
		{"twice", func(_ *Problem, plan *Plan) { plan.Plantings[1].Option = 0 }, "planted twice"},
		{"no such option", func(_ *Problem, plan *Plan) { plan.Plantings[1].Option = 7 }, "option 7"},
		{"seed", func(p *Problem, plan *Plan) {
			p.Options[0].MaxTotal, p.Options[1].MaxTotal, p.Totals = "x", "x", map[string]int{"x": 1}
		}, "group x"},
		{"two groups", func(p *Problem, plan *Plan) {
			p.Options[0].MaxTotal, p.Options[0].AlsoTotal, p.Options[1].AlsoTotal = "x", "y", "y"
			p.Totals = map[string]int{"x": 9, "y": 1}
		}, "group y"},
		{"must met", func(p *Problem, _ *Plan) { p.Musts = []Must{{Crop: "b.1", Space: 0, Plants: 1}} }, ""},
		{"must not met", func(p *Problem, _ *Plan) { p.Musts = []Must{{Crop: "b.1", Space: -1, Plants: 2}} }, "must: 2 plants of b.1, 1 in the plan"},
		{"not by what is outside its group", func(p *Problem, _ *Plan) {
			p.Musts = []Must{{Crop: "b.1", Space: 0, Plants: 1, Groups: []string{"pots"}}}
		}, "must: 1 plants of b.1 in bed, 0"},
		{"met by its group", func(p *Problem, _ *Plan) {
			p.Musts = []Must{{Crop: "b.1", Space: 0, Plants: 1, Groups: []string{"old", "pots"}}}
			for i := range p.Options {
				p.Options[i].MaxTotal = "pots"
			}
		}, ""},
		{"must met by what stands", func(p *Problem, _ *Plan) { p.Musts = []Must{{Crop: "leek", Space: 0, Plants: 3}} }, ""},
		{"not when pulled early", func(p *Problem, plan *Plan) { p.Musts = []Must{{Crop: "leek", Space: 0, Plants: 3}}; plan.Pull[0] = 0 }, "must: 3 plants of leek in bed, 0"},
		{"kept too short", func(p *Problem, plan *Plan) { p.Stays[0].MustKeepTo = 1; plan.Pull[0] = 0 }, "leek: pulled in week 0, want 1 to 1"},
		{"kept too long", func(_ *Problem, plan *Plan) { plan.Pull[0] = 2 }, "leek: pulled in week 2"},
		{"lock", func(p *Problem, _ *Plan) { p.Locks = []Planting{{0, 2}} }, "lock: 2 plants"},
		{"lock kept", func(p *Problem, _ *Plan) { p.Locks = []Planting{{0, 1}} }, ""},
	} {
		p, plan := base()
		tt.break1(p, plan)
		got := strings.Join(Evaluate(p, plan).Faults, "; ")
		if (tt.fault == "") != (got == "") || !strings.Contains(got, tt.fault) {
			t.Errorf("%s: faults %q, want %q", tt.name, got, tt.fault)
		}
	}
}

func TestRotationByHand(t *testing.T) {
	for _, tt := range []struct {
		name          string
		last          map[int]int
		first, second [2]int // week and end
		secondFamily  int
		interval      int
		stayPull      int // -2 = no stay
		want          float64
	}{
		{"long enough apart", nil, [2]int{0, 1}, [2]int{4, 5}, 1, 2, -2, 0},
		{"one week short", nil, [2]int{0, 1}, [2]int{4, 5}, 1, 3, -2, 1},
		{"another family", nil, [2]int{0, 1}, [2]int{4, 5}, 2, 3, -2, 0},
		{"side by side", nil, [2]int{0, 4}, [2]int{4, 5}, 1, 3, -2, 0},
		{"interval 0 is never early", nil, [2]int{0, 1}, [2]int{2, 5}, 1, 0, -2, 0},
		{"history, absent weeks -5 to -1", map[int]int{1: -6}, [2]int{0, 1}, [2]int{1, 2}, 1, 5, -2, 0},
		{"history, both too early", map[int]int{1: -6}, [2]int{0, 1}, [2]int{0, 2}, 1, 6, -2, 2},
		{"a stay pulled before", nil, [2]int{0, 1}, [2]int{1, 2}, 1, 3, -1, 2},
		{"a stay beside them", nil, [2]int{0, 1}, [2]int{1, 2}, 1, 3, 5, 0},
		{"a stay before the second only", nil, [2]int{0, 5}, [2]int{4, 5}, 1, 3, 2, 1},
	} {
		p := oneBed(6, 0)
		p.Batches = []Batch{{ID: "mix", Last: tt.last}}
		p.Spaces[0].Batch = 0
		for i, at := range [][2]int{tt.first, tt.second} {
			o := crop(string(rune('a'+i)), at[0], at[1], 0.1)
			o.Food, o.Family, o.Interval, o.RotationCost, o.Meals = -1, 1, tt.interval, 1, nil
			p.Options = append(p.Options, o)
		}
		p.Options[1].Family = tt.secondFamily
		plan := Plan{Plantings: []Planting{{0, 1}, {1, 1}}, Pull: []int{}}
		if tt.stayPull > -2 {
			p.Stays = []Stay{{ID: "old", Food: -1, Family: 1, End: 5, MustKeepTo: -1}}
			plan.Pull = []int{tt.stayPull}
		}
		v := Evaluate(p, &plan)
		if len(v.Faults) > 0 || v.Parts.Rotation != tt.want {
			t.Errorf("%s: rotation costs %v, want %v by hand; faults %v", tt.name, v.Parts.Rotation, tt.want, v.Faults)
		}
	}
}

func TestCostsByHand(t *testing.T) {
	p := oneBed(3, 0)
	o := crop("a", 0, 1, 0.1, 1, 1)
	o.Fixed, o.Cost, o.Risk, o.Bonus, o.Tail = 0.5, 0.1, 0.02, 0.3, 0.04
	o.Minutes, o.BatchMinutes = []float64{5, 10}, 7
	p.Options = []Option{o}
	p.Minutes, p.OverCost = []float64{10, 100}, 0.01
	p.Discount = 0.25
	p.Stays = []Stay{{ID: "old", Food: 0, Family: -1, End: 2, MustKeepTo: -1, Minutes: []float64{4, 4, 4}, Tail: 2, PullCost: 0.7, Meals: [][]float32{{0, 0, 1}}}}
	p.Batches, p.ClearMax, p.RestCost = nil, 0, 1
	for _, tt := range []struct {
		pull int
		want float64
		how  string
	}{
		// Food 2 plants: 2 meals a week, 1.6, then 1.6/1.25 = 1.28. Costs 0.5 + 0.2
		// + 0.04. Bonus 0.6, tail 0.08. Minutes week 0: 7 + 10 = 17 and 4 of the old.
		{2, 1.6 + 1.28 - 0.74 + 0.68 - 0.11 + 2 + 1/1.5625, "21 minutes, 11 over; the old one to its end, a meal in week 2"},
		{0, 1.6 + 1.28 - 0.74 + 0.68 - 0.11 - 0.7, "pulled after week 0"},
		{-1, 1.6 + 1.28 - 0.74 + 0.68 - 0.07 - 0.7, "pulled before: 17 minutes, 7 over"},
	} {
		v := Evaluate(p, &Plan{Plantings: []Planting{{0, 2}}, Pull: []int{tt.pull}})
		if len(v.Faults) > 0 || !near(v.Value, tt.want) {
			t.Errorf("pull %d: %.9f, want %.9f (%s); faults %v", tt.pull, v.Value, tt.want, tt.how, v.Faults)
		}
	}
}

func TestMinutesAfterTheEndByHand(t *testing.T) {
	p := oneBed(4, 0)
	o := crop("onion", 0, 1, 0.1)
	o.Minutes = []float64{1, 2, 30, 40, 50} // the last is after the plan
	p.Options, p.Minutes, p.OverCost = []Option{o}, []float64{0, 0, 0, 0}, 1
	v := Evaluate(p, &Plan{Plantings: []Planting{{0, 1}}, Pull: []int{}})
	if v.Parts.Over != 73 {
		t.Errorf("minutes cost %v, want 1+2+30+40 = 73", v.Parts.Over)
	}
}

func TestWaterByHand(t *testing.T) {
	p := oneBed(4, 0)
	o := crop("a", 0, 1, 0.1)
	o.Water = []float64{2, 3, 9} // the last is after it left
	p.Options, p.WaterCost = []Option{o}, 0.1
	p.Stays = []Stay{{ID: "old", Food: -1, Family: -1, End: 3, MustKeepTo: -1, Water: []float64{1, 1, 4, 4}}}
	p.ClearMax = 0
	for _, tt := range []struct {
		wish []float64
		pull int
		want float64
		how  string
	}{
		{nil, 3, 0, "no limit"},
		{[]float64{4, 4}, 3, 0.1 * (1 + 3), "two plants and the old one drink 5, 7 of 4; the weeks after have no limit"},
		{[]float64{4, 4, 0}, 3, 0.1 * (1 + 3 + 4), "and 4 of none"},
		{[]float64{4, 4, 0}, 0, 0.1 * (1 + 2), "pulled after week 0: 5, 6, 0"},
		{[]float64{0, 0, 0, 0}, -1, 0.1 * (4 + 6), "no water at all, and the old one gone"},
	} {
		p.Water = tt.wish
		v := Evaluate(p, &Plan{Plantings: []Planting{{0, 2}}, Pull: []int{tt.pull}})
		if len(v.Faults) > 0 || !near(v.Parts.Thirst, tt.want) {
			t.Errorf("%v, pull %d: litres cost %.9f, want %.9f (%s); faults %v", tt.wish, tt.pull, v.Parts.Thirst, tt.want, tt.how, v.Faults)
		}
		dry := v.Value
		p.Water = nil
		if wet := Evaluate(p, &Plan{Plantings: []Planting{{0, 2}}, Pull: []int{tt.pull}}); !near(wet.Value-dry, tt.want) {
			t.Errorf("%v, pull %d: the plan loses %.9f, want %.9f", tt.wish, tt.pull, wet.Value-dry, tt.want)
		}
	}
}

// TestWorstShareByHand: eight futures pick 0 to 7 meals of a want of 2; the two
// worst are those that pick none and one.
func TestWorstShareByHand(t *testing.T) {
	p := oneBed(1, 0)
	o := crop("a", 0, 0, 0.1)
	o.Fixed = 0.5
	p.Foods[0].Worth, p.Foods[0].Extra, p.Futures = 1, 0, 8 // 1 for the first meal, 0.5 for the second
	for f := range 8 {
		o.Meals = append(o.Meals[:f:f], []float32{float32((3 * f) % 8)})
	}
	p.Options = []Option{o}
	const mean, worst = (0+1+6*1.5)/8 - 0.5, (0+1)/2.0 - 0.5
	for _, share := range []float64{0, 0.25, 1} {
		p.WorstShare = share
		v := Evaluate(p, &Plan{Plantings: []Planting{{0, 1}}})
		if want := (1-share)*mean + share*worst; len(v.Faults) > 0 || !near(v.Value, want) || !near(v.Parts.Lean, share*(mean-worst)) {
			t.Errorf("share %v: %.6f, want %.6f by hand; %v", share, v.Value, want, v.Faults)
		}
		if x := Expect(p, &Plan{Plantings: []Planting{{0, 1}}}); x < mean-1e-9 {
			t.Errorf("share %v: expected %.6f, below the mean %.6f", share, x, mean)
		}
	}
	for _, tt := range []struct {
		by   []float64
		want float64
	}{{nil, 0}, {[]float64{3}, 3}, {[]float64{3, 1, 2}, 1}, {[]float64{5, 4, 3, 2, 1, 6, 7, 8}, 1.5}} {
		if got := WorstMean(tt.by); got != tt.want {
			t.Errorf("the worst of %v are worth %v, want %v", tt.by, got, tt.want)
		}
	}
}

// TestPlanForBadYears: two crops give as much on average, one evenly and one
// now and then. Only one fits. A share for the worst futures takes the even one,
// though the other is worth a little more on average.
func TestPlanForBadYears(t *testing.T) {
	p := oneBed(1, 0)
	p.Futures = 4
	p.Foods[0].Want[0] = 100
	even, wild := crop("even", 0, 0, 1), crop("wild", 0, 0, 1)
	even.Max, wild.Max = 1, 1
	even.Meals, wild.Meals = [][]float32{{2}, {2}, {2}, {2}}, [][]float32{{0}, {1}, {4}, {4}}
	p.Options = []Option{even, wild}
	for _, tt := range []struct {
		share float64
		want  int
	}{{0, 1}, {0.05, 1}, {0.3, 0}, {1, 0}} { // at 1/9 both are worth 2: 2.25 - 2.25 x 1/9
		p.WorstShare = tt.share
		plan := Search(context.Background(), p, Limits{Work: 20_000})
		if best := Brute(p); len(plan.Plantings) != 1 || plan.Plantings[0].Option != tt.want || best.Plantings[0].Option != tt.want || !near(best.Value, plan.Value) {
			t.Errorf("share %v: search %v worth %v, brute force %v worth %v, want option %d", tt.share, plan.Plantings, plan.Value, best.Plantings, best.Value, tt.want)
		}
	}
}

func TestClearingByHand(t *testing.T) {
	p := oneBed(4, 0)
	p.Spaces = append(p.Spaces, Space{ID: "box", AreaM2: 1, Batch: -1})
	p.ClearMax, p.RestCost = 1, 0.5
	for i, at := range [][2]int{{0, 1}, {0, 1}, {0, 2}, {0, 3}} {
		o := crop(string(rune('a'+i)), at[0], at[1], 0.1)
		o.Food, o.Meals, o.Space = -1, nil, i%2
		p.Options = append(p.Options, o)
	}
	for _, tt := range []struct {
		options []int
		want    float64
		how     string
	}{
		{[]int{0, 1}, 0.5, "both spaces in week 1"},
		{[]int{0}, 0, "one is free"},
		{[]int{0, 1, 2}, 0, "the bed holds on to week 2"},
		{[]int{2, 3}, 0, "week 2 and the end of the plan, which does not count"},
	} {
		plan := Plan{Pull: []int{}}
		for _, i := range tt.options {
			plan.Plantings = append(plan.Plantings, Planting{i, 1})
		}
		if v := Evaluate(p, &plan); len(v.Faults) > 0 || v.Parts.Clearing != tt.want {
			t.Errorf("%v: clearing costs %v, want %v (%s); faults %v", tt.options, v.Parts.Clearing, tt.want, tt.how, v.Faults)
		}
	}
	p.Stays = []Stay{{ID: "x", Food: -1, Family: -1, End: 2, MustKeepTo: -1}, {ID: "y", Space: 1, Food: -1, Family: -1, End: 2, MustKeepTo: -1}}
	if v := Evaluate(p, &Plan{Pull: []int{-1, -1}}); v.Parts.Clearing != 0.5 {
		t.Errorf("both pulled before the plan: clearing costs %v, want 0.5", v.Parts.Clearing)
	}
}

func TestValueIsTheMeanOfTheFutures(t *testing.T) {
	p := oneBed(1, 0)
	p.Futures = 2
	o := crop("a", 0, 0, 0.1)
	o.Meals = [][]float32{{4}, {0}}
	p.Options = []Option{o}
	v := Evaluate(p, &Plan{Plantings: []Planting{{0, 1}}, Pull: []int{}})
	// 4 meals are worth 2, none 0: mean 1. The mean harvest, 2, would be worth 1.6.
	if !near(v.Value, 1) || !slices.Equal(v.PerFuture, []float64{2, 0}) {
		t.Errorf("value %v of %v, want 1 of [2 0]", v.Value, v.PerFuture)
	}
}
