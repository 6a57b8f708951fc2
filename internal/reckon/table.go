package reckon

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
)

// quantile is the value below which a share q of xs lies, by straight line
// between the sorted values (type 7).
func quantile(xs []float64, q float64) float64 {
	if len(xs) == 0 {
		return 0
	}
	s := append([]float64(nil), xs...)
	sort.Float64s(s)
	at := q * float64(len(s)-1)
	i := int(at)
	if i+1 >= len(s) {
		return s[len(s)-1]
	}
	return s[i] + (at-float64(i))*(s[i+1]-s[i])
}

func mean(xs []float64) float64 {
	if len(xs) == 0 {
		return 0
	}
	sum := 0.0
	for _, x := range xs {
		sum += x
	}
	return sum / float64(len(xs))
}

// table says what will be on the table, food by food, worst first.
func (r *Result) table(weekOf []cal.Day) []FoodRow {
	var rows []FoodRow
	short := map[string]float64{}
	for f := range r.Problem.Foods {
		row := FoodRow{Food: r.Problem.Foods[f].ID, Name: r.model.foods[f], Weeks: make([]FoodWeek, len(weekOf))}
		for w := range row.Weeks {
			c := r.Verdict.Table[f][w]
			fw := FoodWeek{Wanted: c.Wanted, Expected: mean(c.Eaten), Low: quantile(c.Eaten, 0.1), High: quantile(c.Eaten, 0.9),
				Threads: make([]bool, len(c.Eaten)), Much: make([]bool, len(c.Eaten))}
			for k, x := range c.Eaten {
				fw.Threads[k] = c.Wanted > 0 && x >= c.Wanted/2 || c.Wanted == 0 && x > 0
				fw.Much[k] = c.Wanted > 0 && (x >= muchShare*c.Wanted || x >= c.Wanted && c.Spoilt[k] >= muchSpoilt)
			}
			if d := c.Wanted - fw.Expected; d > 0 {
				short[row.Food] += d
			}
			row.Weeks[w] = fw
		}
		for _, h := range holes(row) {
			row.Holes = append(row.Holes, Hole{From: h.from, To: h.to, Least: ofTwenty(h.least, len(row.Weeks[h.from].Threads))})
		}
		row.Answer = tableAnswer(row, weekOf)
		rows = append(rows, row)
	}
	sort.SliceStable(rows, func(a, b int) bool {
		if short[rows[a].Food] != short[rows[b].Food] {
			return short[rows[a].Food] > short[rows[b].Food]
		}
		return rows[a].Food < rows[b].Food
	})
	return rows
}

// When a future has more than is wanted of a food. Ours: half as much again is
// eaten or given away, or a meal goes to waste beside a full plate.
const (
	muchShare  = 1.5
	muchSpoilt = 1.0 // meals in a week
)

// hole is a run of wanted weeks in which most futures have too little.
type hole struct{ from, to, least int }

func holes(row FoodRow) []hole {
	var out []hole
	for w, fw := range row.Weeks {
		n := 0
		for _, t := range fw.Threads {
			if t {
				n++
			}
		}
		if fw.Wanted == 0 || 2*n >= len(fw.Threads) {
			continue
		}
		if k := len(out) - 1; k >= 0 && out[k].to == w-1 {
			out[k].to = w
			out[k].least = min(out[k].least, n)
			continue
		}
		out = append(out, hole{w, w, n})
	}
	return out
}

func weeksWord(n int) string {
	if n == 1 {
		return "a week"
	}
	return fmt.Sprintf("%d weeks", n)
}

func tableAnswer(row FoodRow, weekOf []cal.Day) Answer {
	wanted, got := 0.0, 0.0
	for _, fw := range row.Weeks {
		wanted += fw.Wanted
		got += min(fw.Expected, fw.Wanted)
	}
	a := Answer{OfTwenty: -1}
	hs := holes(row)
	switch {
	case wanted == 0:
		a.Verdict = sentence("no " + row.Name + " is wanted in these weeks")
		return a
	case len(hs) == 0:
		a.Verdict = sentence(row.Name + ": enough in every week it is wanted")
	case hs[0].from == 0 && hs[0].to == len(row.Weeks)-1:
		a.Verdict = sentence(row.Name + ": too little all through")
	default:
		h := hs[0]
		for _, x := range hs {
			if x.to-x.from > h.to-h.from {
				h = x
			}
		}
		a.Verdict = sentence(fmt.Sprintf("%s: too little for %s, %s to %s", row.Name, weeksWord(h.to-h.from+1),
			weekOf[h.from].Short(), (weekOf[h.to] + 6).Short()))
		n := ofTwenty(len(row.Weeks[h.from].Threads)-h.least, len(row.Weeks[h.from].Threads))
		a.OfTwenty, a.Sure = n, chance(n)
	}
	a.Reason = fmt.Sprintf("The plan fills %.0f %% of what is wanted over the plan's weeks.", 100*got/wanted)
	a.Change = "More ground, another crop for this food, or a smaller want."
	return a
}
