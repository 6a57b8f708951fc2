package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// weighDelays says of each task what a day's wait costs, in meals, where that
// can be counted: starts from the growth tables, pickings from the week's
// yield, pulls from planning both ways, covers from the chance of the night.
// What cannot be counted says so.
func (r *Result) weighDelays(tasks []Task, keeps []Keep) {
	m := r.model
	stay := map[string]int{}
	for i, s := range m.stays {
		stay[s.id] = i
	}
	for k := range tasks {
		t := &tasks[k]
		if !t.counted {
			t.DayCost = -1
		}
		switch t.Verb {
		case "pick":
			if i, ok := stay[t.Planting]; ok {
				s := m.stays[i]
				t.DayCost = passes(s.crop) * s.ready(r.in.Date) * mean(firstWeek(m.p.Stays[i].Meals)) / 7
			}
		case "cover":
			if i, ok := stay[t.Planting]; ok && t.Answer.OfTwenty >= 0 {
				t.DayCost = float64(t.Answer.OfTwenty) / 20 / 7 * total(m.p.Stays[i].Meals)
			}
		case "pull":
			for _, kp := range keeps {
				if kp.Planting == t.Planting && len(kp.Choices) > 1 {
					days := float64(kp.Choices[1].Pull - kp.Choices[0].Pull)
					t.DayCost = math.Max(0, kp.Choices[0].Worth-kp.Choices[1].Worth) / math.Max(1, days)
				}
			}
		}
		t.Delay = delayWords(*t, r.in.Date)
	}
}

// passes is the share of what is ready now that passes its best for a week's
// wait: ripe fruit and shoots all of it, cut leaves half, roots and heads
// little. Ours, from how long each holds; no single source.
func passes(c *crop.Crop) float64 {
	switch c.Harvest {
	case crop.Fruiting, crop.Flush:
		return 1
	case crop.CutAgain:
		return 0.5
	}
	return 0.2
}

// firstWeek is the first week's meals of each future.
func firstWeek(rows [][]float32) []float64 {
	out := make([]float64, len(rows))
	for f, row := range rows {
		if len(row) > 0 {
			out[f] = float64(row[0])
		}
	}
	return out
}

// total is the mean of all meals to come.
func total(rows [][]float32) float64 {
	sum := 0.0
	for _, row := range rows {
		for _, v := range row {
			sum += float64(v)
		}
	}
	return sum / float64(max(1, len(rows)))
}

// delayWords says it in a sentence.
func delayWords(t Task, today cal.Day) string {
	switch {
	case t.Pressing && t.Until <= today && t.Until != 0 && t.DayCost < 0:
		return "It is for today."
	case t.DayCost < 0:
		return "What a day's wait costs is not counted in meals."
	case t.DayCost < 0.05:
		return "A day's wait costs next to nothing."
	case t.DayCost < 0.35:
		return fmt.Sprintf("%s days of waiting cost about one meal.", countWord(int(math.Round(1/t.DayCost))))
	case t.DayCost < 0.75:
		return "Each day's wait costs about half a meal."
	case t.DayCost < 1.5:
		return "Each day's wait costs about one meal."
	}
	return fmt.Sprintf("Each day's wait costs about %.0f meals.", t.DayCost)
}

// countWord writes a small number out, to begin a sentence.
func countWord(n int) string {
	words := [...]string{"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten"}
	if n >= 0 && n < len(words) {
		return words[n]
	}
	return fmt.Sprint(n)
}
