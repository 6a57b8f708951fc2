package season

import (
	"fmt"
	"math"
	"math/rand/v2"
)

// plausible makes an invented garden of so many spaces and kinds: weeks from
// March on, warm and cool kinds with windows in which they grow, harvests that
// differ by future, a shelf, minutes, families and batches. Nothing in it is
// measured; it only has the shape of a garden's problem.
func plausible(seed uint64, spaces, kinds, weeks, futures int) *Problem {
	r := rand.New(rand.NewPCG(seed, 77))
	p := &Problem{Weeks: weeks, Futures: futures, OverCost: 0.02, RestCost: 0.5, ClearMax: max(2, spaces/4), Discount: 0.002}
	p.Shelf = make([]float64, weeks)
	p.Minutes = make([]float64, weeks)
	for w := range weeks {
		p.Shelf[w] = 12 * float64(spaces)
		p.Minutes[w] = 12 * float64(spaces)
	}
	p.ShelfStart = 0
	for s := range spaces {
		a := 0.3 + 1.5*r.Float64()
		p.Spaces = append(p.Spaces, Space{ID: fmt.Sprintf("s%02d", s), AreaM2: a, VolumeL: a * 250, TallM2: a * (0.3 + 0.7*r.Float64()), SupportM: 2 * a * float64(r.IntN(2)), Batch: s})
		p.Batches = append(p.Batches, Batch{ID: fmt.Sprintf("b%02d", s), Last: map[int]int{r.IntN(6): -1 - r.IntN(60)}})
	}
	season := make([]float64, futures) // how good each future is
	for f := range season {
		season[f] = 0.7 + 0.6*r.Float64()
	}
	for k := range kinds {
		warm := r.IntN(2) == 0
		fam, grow, bear := r.IntN(6), 4+r.IntN(12), 1+r.IntN(8)
		foot := 0.01 + 0.25*r.Float64()*r.Float64()
		want := 0.5 + 2.5*r.Float64()
		food := Food{ID: fmt.Sprintf("f%02d", k), Worth: 0.6 + 0.8*r.Float64(), Shelf: r.IntN(4)}
		food.Extra = food.Worth * 0.2
		if r.IntN(5) == 0 {
			food.Shelf = 12
		}
		for range weeks {
			food.Want = append(food.Want, want)
		}
		p.Foods = append(p.Foods, food)
		perWeek := foot * (2 + 4*r.Float64())
		for s := range spaces {
			light := 0.3 + 0.7*math.Abs(math.Sin(float64(s*7+k)))
			for w := 0; w < weeks; w++ {
				year := float64((w+9)%52) / 52 // 0 = January
				warmth := math.Sin(math.Pi * year)
				if warm && (warmth < 0.75 || year > 0.6) || !warm && warmth < 0.3 {
					continue
				}
				end := min(w+grow+bear-1, weeks-1)
				if end-w < grow/2 {
					continue
				}
				o := Option{ID: fmt.Sprintf("s%02d.k%02d.w%02d", s, k, w), Crop: fmt.Sprintf("k%02d", k), Space: s, Family: fam, Interval: 20 + 10*(fam%3),
					Food: k, Week: w, End: end, Min: 1, Max: max(1, int(p.Spaces[s].AreaM2/foot)), VolumeL: foot * 200, TallFrom: -1,
					ShelfFrom: -1 << 30, Fixed: 0.4, Cost: 0.05, RotationCost: 0.15, MealsFrom: w + grow, BatchMinutes: 10}
				for i := 0; i <= end-w; i++ {
					o.Footprint = append(o.Footprint, foot*min(1, 0.2+float64(i)/float64(grow)))
					m := 0.3 * foot * 10
					if i >= grow {
						m += 2 * foot * 10
					}
					o.Minutes = append(o.Minutes, m)
				}
				if k%4 == 0 {
					o.TallFrom = w + grow/2
				}
				if k%8 == 0 && p.Spaces[s].SupportM > 0 {
					o.SupportM = 0.3
				}
				if warm && w >= 4 {
					o.ShelfFrom, o.ShelfPlaces = w-4, 1
				}
				fail := 0.1 + 0.3*r.Float64()
				o.Risk = 0.02 * fail
				for f := range futures {
					row := make([]float32, 0, bear)
					ok := r.Float64() > fail
					o.OK = append(o.OK, ok)
					for b := 0; b < bear && w+grow+b <= end; b++ {
						x := 0.0
						if ok {
							x = perWeek * light * season[f] * (0.6 + 0.8*r.Float64())
						}
						row = append(row, float32(x))
					}
					o.Meals = append(o.Meals, row)
				}
				p.Options = append(p.Options, o)
			}
		}
	}
	for s := range spaces {
		if r.IntN(3) == 0 {
			continue
		}
		k := r.IntN(kinds)
		end := 4 + r.IntN(16)
		st := Stay{ID: fmt.Sprintf("stay%02d", s), Crop: fmt.Sprintf("k%02d", k), Space: s, Family: r.IntN(6), Food: k, Plants: 4, End: min(end, weeks-1), MustKeepTo: -1, PullCost: 0.1}
		a := p.Spaces[s].AreaM2 * (0.4 + 0.6*r.Float64())
		for range st.End + 1 {
			st.Footprint = append(st.Footprint, a)
			st.Minutes = append(st.Minutes, 5*a)
		}
		st.VolumeL = a * 200
		for range futures {
			var row []float32
			for w := range st.End + 1 {
				row = append(row, float32(a*1.5*r.Float64()*float64(st.End+1-w)/float64(st.End+1)))
			}
			st.Meals = append(st.Meals, row)
		}
		p.Stays = append(p.Stays, st)
	}
	return p
}

// tiny makes a random problem small enough for Brute.
func tiny(seed uint64) *Problem {
	r := rand.New(rand.NewPCG(seed, 5))
	weeks := 4 + r.IntN(5)
	futures := 1 + r.IntN(3)
	p := &Problem{Weeks: weeks, Futures: futures, Discount: 0.01 * float64(r.IntN(2))}
	if r.IntN(2) == 0 {
		p.OverCost = 0.05
		for range weeks {
			p.Minutes = append(p.Minutes, float64(r.IntN(40)))
		}
	}
	if r.IntN(2) == 0 {
		p.RestCost, p.ClearMax = 0.3, 1
	}
	p.ShelfStart = -r.IntN(3)
	for range weeks - p.ShelfStart {
		p.Shelf = append(p.Shelf, float64(r.IntN(6)))
	}
	spaces := 1 + r.IntN(2)
	batches := 1 + r.IntN(spaces)
	for b := range batches {
		p.Batches = append(p.Batches, Batch{ID: fmt.Sprint("b", b), Last: map[int]int{r.IntN(2): -1 - r.IntN(6)}})
	}
	for s := range spaces {
		p.Spaces = append(p.Spaces, Space{ID: fmt.Sprint("s", s), AreaM2: 0.5 + r.Float64(), VolumeL: 100 + 100*r.Float64(), TallM2: r.Float64(), SupportM: r.Float64(), Batch: r.IntN(batches+1) - 1})
	}
	foods := 1 + r.IntN(2)
	for k := range foods {
		f := Food{ID: fmt.Sprint("f", k), Worth: 1 + r.Float64(), Shelf: r.IntN(3)}
		f.Extra = f.Worth * r.Float64()
		for range weeks {
			f.Want = append(f.Want, 3*r.Float64())
		}
		p.Foods = append(p.Foods, f)
	}
	for i := range 3 + r.IntN(4) {
		w := r.IntN(weeks - 1)
		o := Option{Space: r.IntN(spaces), Family: r.IntN(3) - 1, Interval: r.IntN(5), Food: r.IntN(foods+1) - 1, Week: w, End: w + r.IntN(weeks-w),
			Min: 1 + r.IntN(2), VolumeL: 25 * r.Float64(), TallFrom: -1, SupportM: 0.2 * float64(r.IntN(2)), ShelfFrom: -1 << 30,
			BatchMinutes: 5, Fixed: 0.3 * r.Float64(), Cost: 0.1, Bonus: 0.3 * float64(r.IntN(2)), RotationCost: 0.5, Risk: 0.02}
		o.Max = o.Min + r.IntN(2)
		o.AtRisk = i % 3 // 0 = all, else perhaps fewer than are planted
		o.Crop = fmt.Sprint("c", r.IntN(3))
		o.ID = fmt.Sprintf("s%d.%s.%d.%d", o.Space, o.Crop, i, w)
		for range 1 + r.IntN(o.End-w+1) {
			o.Footprint = append(o.Footprint, 0.06+0.25*r.Float64())
			o.Minutes = append(o.Minutes, 4*r.Float64())
		}
		if r.IntN(3) == 0 { // work that goes on after it has left the ground
			o.Minutes = append(o.Minutes, 5, 5, 5, 5, 5)
		}
		if r.IntN(3) == 0 {
			o.TallFrom = w + r.IntN(3)
		}
		if r.IntN(3) == 0 {
			o.ShelfFrom, o.ShelfPlaces = w-1-r.IntN(4), 1
		}
		if r.IntN(4) == 0 {
			o.MaxTotal = "g"
			p.Totals = map[string]int{"g": 2 + r.IntN(3)}
			if r.IntN(2) == 0 {
				o.AlsoTotal = "h"
				p.Totals["h"] = 1 + r.IntN(3)
			}
		}
		o.MealsFrom = max(w+r.IntN(3)-1, -1)
		for range futures {
			var row []float32
			for range 1 + r.IntN(3) {
				row = append(row, float32(2*r.Float64()))
			}
			o.Meals = append(o.Meals, row)
		}
		p.Options = append(p.Options, o)
	}
	for i := range r.IntN(3) {
		st := Stay{ID: fmt.Sprint("stay", i), Crop: fmt.Sprint("c", r.IntN(3)), Space: r.IntN(spaces), Family: r.IntN(3) - 1, Food: r.IntN(foods+1) - 1,
			Plants: 2, End: r.IntN(weeks + 1), MustKeepTo: -1, Tall: r.IntN(3) == 0, SupportM: 0.1, VolumeL: 50 * r.Float64(), Tail: 0.5 * r.Float64(), PullCost: 0.2 * r.Float64()}
		if r.IntN(3) == 0 {
			st.MustKeepTo = r.IntN(st.End + 1)
		}
		for range 1 + r.IntN(weeks) {
			st.Footprint = append(st.Footprint, 0.6*r.Float64())
			st.Minutes = append(st.Minutes, 4*r.Float64())
		}
		for range futures {
			var row []float32
			for range 1 + r.IntN(weeks) {
				row = append(row, float32(1.5*r.Float64()))
			}
			st.Meals = append(st.Meals, row)
		}
		p.Stays = append(p.Stays, st)
	}
	if r.IntN(4) == 0 {
		p.Musts = append(p.Musts, Must{Crop: fmt.Sprint("c", r.IntN(3)), Space: r.IntN(spaces+1) - 1, Plants: 1 + r.IntN(2)})
		if seed%4 == 0 {
			p.Musts[0].Groups = []string{"g"}
		}
	}
	if seed%3 == 1 {
		thirsty(p, seed, 1)
	}
	p.WorstShare = [5]float64{0, 0, 0.3, 0, 1}[seed%5]
	return p
}

// thirsty gives a garden little water: what stands drinks up to so many litres
// a day for a plant, and fewer are wished for than all would drink. Its luck is
// its own, so that the rest of the garden stays as it was.
func thirsty(p *Problem, seed uint64, plantL float64) {
	r := rand.New(rand.NewPCG(seed, 6))
	p.WaterCost = 0.05 + 0.1*r.Float64()
	for range p.Weeks - r.IntN(3) { // sometimes the last weeks have no limit
		p.Water = append(p.Water, 3*plantL*float64(len(p.Spaces))*r.Float64())
	}
	for i := range p.Options {
		o := &p.Options[i]
		for range o.End - o.Week + r.IntN(3) { // one short, all its weeks, or one beyond them
			o.Water = append(o.Water, plantL*r.Float64())
		}
	}
	for i := range p.Stays {
		st := &p.Stays[i]
		for range p.Weeks {
			st.Water = append(st.Water, 2*plantL*r.Float64())
		}
	}
}
