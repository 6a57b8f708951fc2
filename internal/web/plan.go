package web

import (
	"fmt"
	"math"
	"net/http"
	"sort"

	"bedweek/internal/garden"
	"bedweek/internal/reckon"
)

// PlanPage is the plan's own account of itself.
type PlanPage struct {
	Frame
	Day     *reckon.Day
	Status  string
	Gain    string
	Range   string
	Bound   string // how much better another plan could be
	Seconds []Phase
	Rows    []PlanRow
	Waiting []reckon.Waiting
	OnPaper Printed
	Water   []WaterRow
}

// WaterRow is one week of water, in words.
type WaterRow struct {
	Week, Drinks, Wished, Over string
}

// Phase is the time one part of the reckoning took.
type Phase struct{ Name, Seconds string }

// PlanRow is one planting with its reasons.
type PlanRow struct {
	Item
	Where string
}

// plan draws the page.
func (s *site) plan(r *http.Request, day *reckon.Day) (page, error) {
	p := &PlanPage{Frame: s.framed(r, day, "The plan's own account", "plan"), Day: day}
	p.Status = statusWords(day.Plan.Status)
	p.Gain = fmt.Sprintf("%s meals, against %s if nothing more is planted.", meals(day.Plan.Value), meals(day.Plan.Nothing))
	p.Range = fmt.Sprintf("%s on average; %s in the lowest, %s in the highest.", meals(day.Plan.Mean), meals(day.Plan.Low), meals(day.Plan.High))
	if b := day.Plan.BadYears; b != "" && b != garden.NotAtAll {
		p.Range += fmt.Sprintf(" In the worst five of twenty %s on average: bad years are planned for, %s.", meals(day.Plan.Worst), b)
	}
	p.Bound = "Not known."
	if day.Plan.Proved {
		p.Bound = fmt.Sprintf("At most %.0f %% of what this plan adds, counted on average harvests. This was checked.", math.Ceil(100*day.Plan.Gap-1e-9))
	}
	if day.Plan.FutureProved {
		p.Bound = fmt.Sprintf("At most %.0f %% of what this plan adds over the futures; %.0f %% counted on average harvests. This was checked.",
			math.Ceil(100*day.Plan.FutureGap-1e-9), math.Ceil(100*day.Plan.Gap-1e-9))
	}
	for name := range day.Plan.Seconds {
		p.Seconds = append(p.Seconds, Phase{Name: name})
	}
	sort.Slice(p.Seconds, func(i, j int) bool { return p.Seconds[i].Name < p.Seconds[j].Name })
	for i := range p.Seconds {
		p.Seconds[i].Seconds = fmt.Sprintf("%.2f", day.Plan.Seconds[p.Seconds[i].Name])
	}
	p.Waiting = day.Waiting()
	p.Water = waterRows(day)
	rows := rowsOf(day)
	p.OnPaper = printed(day, rows)
	for _, row := range rows {
		for _, it := range row.Items {
			if !row.Shelf {
				p.Rows = append(p.Rows, PlanRow{it, row.Name})
			}
		}
	}
	return p, nil
}

// waterRows are the weeks that ask for water in a dry spell.
func waterRows(day *reckon.Day) (out []WaterRow) {
	if day.Water == nil {
		return nil
	}
	for _, w := range day.Water.Weeks {
		if w.Drinks < 0.05 {
			continue
		}
		row := WaterRow{Week: w.Week.Short(), Drinks: fmt.Sprintf("%.1f L", w.Drinks), Wished: fmt.Sprintf("%g L", w.Wants), Over: "–"}
		if over := w.Drinks - w.Wants; over >= 0.05 {
			row.Over = fmt.Sprintf("%.1f L", over)
		}
		out = append(out, row)
	}
	return out
}

// statusWords says a status in a sentence.
func statusWords(status string) string {
	switch status {
	case "proven":
		return "Proven: no better plan exists for these figures."
	case "feasible":
		return "A plan that holds. A better one may exist."
	case "infeasible":
		return "No plan meets all the wishes."
	case "interrupted":
		return "Stopped early. The plan holds, but the search was not finished."
	case "":
		return "No plan was made."
	}
	return name(status) + "."
}
