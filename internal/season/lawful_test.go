package season

import (
	"context"
	"math"
	"testing"
)

// TestEmptyProblems: lawful problems with something missing give an empty
// plan, not a panic.
func TestEmptyProblems(t *testing.T) {
	for name, change := range map[string]func(p *Problem){
		"nothing at all": func(p *Problem) { *p = Problem{} },
		"no spaces":      func(p *Problem) { p.Spaces, p.Options, p.Stays, p.Musts = nil, nil, nil, nil },
		"no foods": func(p *Problem) {
			p.Foods = nil
			for i := range p.Options {
				p.Options[i].Food = -1
			}
			for i := range p.Stays {
				p.Stays[i].Food = -1
			}
		},
		"no options":        func(p *Problem) { p.Options = nil },
		"no weeks":          func(p *Problem) { p.Weeks, p.Options = 0, nil },
		"no futures":        func(p *Problem) { p.Futures = 0 },
		"one future":        func(p *Problem) { p.Futures = 1 },
		"more futures":      func(p *Problem) { p.Futures = 9 },
		"min above max":     func(p *Problem) { p.Options[0].Min = p.Options[0].Max + 1; p.Options[1].Max = 0 },
		"negative max":      func(p *Problem) { p.Options[0].Max = -4 },
		"no meals":          func(p *Problem) { p.Options[0].Meals = nil; p.Options[1].Meals = [][]float32{nil} },
		"meals far outside": func(p *Problem) { p.Options[0].MealsFrom = 900; p.Options[1].MealsFrom = -900 },
		"no want":           func(p *Problem) { p.Foods[0].Want = nil },
		"no shelf":          func(p *Problem) { p.Shelf = nil },
		"no footprint":      func(p *Problem) { p.Options[0].Footprint = nil },
		"long rows":         func(p *Problem) { p.Minutes = make([]float64, 99); p.Options[0].Minutes = make([]float64, 99) },
		"long water": func(p *Problem) {
			p.Water, p.WaterCost, p.Options[0].Water = make([]float64, 99), 1, make([]float64, 99)
		},
		"all for the worst": func(p *Problem) { p.WorstShare = 1 },
		"water for nothing": func(p *Problem) { p.Water, p.WaterCost = make([]float64, 99), 0 },
		"stays end later": func(p *Problem) {
			for i := range p.Stays {
				p.Stays[i].End = 999
			}
		},
		"keep beyond": func(p *Problem) {
			for i := range p.Stays {
				p.Stays[i].End, p.Stays[i].MustKeepTo = 999, 998
			}
		},
		"stays over": func(p *Problem) {
			for i := range p.Stays {
				p.Stays[i].End, p.Stays[i].MustKeepTo = -1, -1
			}
		},
	} {
		for seed := range uint64(6) {
			p := tiny(seed)
			change(p)
			if faults := Check(p); len(faults) > 0 {
				t.Fatalf("%s: not lawful: %v", name, faults)
			}
			plan := Search(context.Background(), p, Limits{Work: 2000, Seed: seed})
			v := Evaluate(p, &plan)
			if math.Abs(v.Value-plan.Value) > agreed || math.IsNaN(v.Value) {
				t.Errorf("%s, seed %d: search %.12f, evaluator %.12f", name, seed, plan.Value, v.Value)
			}
			if plan.Status == Feasible && len(v.Faults) > 0 {
				t.Errorf("%s, seed %d: %v", name, seed, v.Faults)
			}
			for i := range p.Stays {
				KeepCurve(context.Background(), p, &plan, i, []int{-5, -1, 0, 3, 999}, 200)
			}
			for i := range p.Options {
				Delay(context.Background(), p, &plan, i, 1, 200)
			}
			for i := range plan.Plantings {
				Without(context.Background(), p, &plan, i, 200)
			}
		}
	}
}

// TestUnlawfulProblems: what cannot be read is refused in words.
func TestUnlawfulProblems(t *testing.T) {
	for name, change := range map[string]func(p *Problem){
		"space":       func(p *Problem) { p.Options[0].Space = 9 },
		"food":        func(p *Problem) { p.Options[0].Food = 9 },
		"batch":       func(p *Problem) { p.Spaces[0].Batch = 9 },
		"end":         func(p *Problem) { p.Options[0].End = p.Weeks },
		"backwards":   func(p *Problem) { p.Options[0].End = p.Options[0].Week - 1 },
		"area":        func(p *Problem) { p.Spaces[0].AreaM2 = -1 },
		"not number":  func(p *Problem) { p.Options[0].Cost = math.NaN() },
		"endless":     func(p *Problem) { p.Options[0].Footprint[0] = math.Inf(1) },
		"meals":       func(p *Problem) { p.Options[0].Meals[0][0] = -1 },
		"extra":       func(p *Problem) { p.Foods[0].Extra = p.Foods[0].Worth + 1 },
		"lock":        func(p *Problem) { p.Locks = []Planting{{99, 1}} },
		"must":        func(p *Problem) { p.Musts = []Must{{Crop: "x", Space: 9, Plants: 1}} },
		"weeks":       func(p *Problem) { p.Weeks = -1 },
		"shelf start": func(p *Problem) { p.ShelfStart = 1 },
	} {
		p := tiny(1)
		change(p)
		plan := Search(context.Background(), p, Limits{Work: 1000})
		if plan.Status != Infeasible || len(plan.Conflict) == 0 {
			t.Errorf("%s: search says %v, %v", name, plan.Status, plan.Conflict)
		}
		if v := Evaluate(p, &plan); len(v.Faults) == 0 {
			t.Errorf("%s: the evaluator finds no fault", name)
		}
		if Brute(p).Status != Infeasible || NewStudy(p, &plan) != nil {
			t.Errorf("%s: brute force or study takes it", name)
		}
	}
}

// FuzzSearch bends random problems and wants agreement or words, no panic.
func FuzzSearch(f *testing.F) {
	for seed := range uint64(12) {
		f.Add(seed, int8(0), int8(0), int8(0), int8(0), 1.0)
	}
	f.Add(uint64(3), int8(-2), int8(3), int8(-1), int8(5), 0.0)
	f.Fuzz(func(t *testing.T, seed uint64, dmin, dend, dfood, dkeep int8, scale float64) {
		p := tiny(seed)
		o := &p.Options[int(seed%uint64(len(p.Options)))]
		o.Min += int(dmin)
		o.End += int(dend)
		o.Food += int(dfood)
		o.Cost *= scale
		o.Footprint[0] *= scale
		for i := range p.Stays {
			p.Stays[i].MustKeepTo += int(dkeep)
		}
		plan := Search(context.Background(), p, Limits{Work: 500, Seed: seed})
		if len(Check(p)) > 0 {
			if plan.Status != Infeasible || len(plan.Conflict) == 0 {
				t.Fatalf("unlawful, and yet %v", plan.Status)
			}
			return
		}
		v := Evaluate(p, &plan)
		if d := math.Abs(v.Value - plan.Value); !(d <= agreed*max(1, math.Abs(v.Value))) {
			t.Fatalf("search %.12f, evaluator %.12f", plan.Value, v.Value)
		}
		if plan.Status == Feasible && len(v.Faults) > 0 {
			t.Fatalf("faults %v", v.Faults)
		}
	})
}
