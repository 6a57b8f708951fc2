package reckon

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/water"
)

// Watering as work: how likely a space must be to run dry before somebody can
// come again, and how long carrying takes. Ours.
const (
	WaterFrom  = 6  // of twenty, from which it is work of the day
	waterPress = 11 // of twenty, from which it will not wait
	canMinutes = 2.0
)

// SetOutdoors puts water and weather on the day, and the waterings among its
// tasks. dismissed holds advice not wanted, by task.
func (d *Day) SetOutdoors(dry *Dryness, sky *SkyPart, dismissed map[string]string) {
	d.Dry, d.Sky = dry, sky
	kept := make([]Task, 0, len(d.Today))
	for _, t := range d.Today {
		if t.Verb != "water" && t.Verb != "refill" {
			kept = append(kept, t)
		}
	}
	var ids []string
	for _, sp := range d.Spaces {
		ids = append(ids, sp.ID)
	}
	d.Today = inOrder(append(kept, d.waterTasks(dismissed)...), ids)
}

// waterTasks are the spaces likely to run dry before the next visit.
func (d *Day) waterTasks(dismissed map[string]string) []Task {
	if d.Dry == nil {
		return nil
	}
	var out []Task
	for _, row := range d.Dry.Rows {
		if row.Empty || row.ByNextOf20 < WaterFrom {
			continue
		}
		verb := "water"
		if row.Way == water.Reservoir {
			verb = "refill"
		}
		t := Task{ID: row.Space + "." + verb + ".", Space: row.Space, SpaceName: row.Name, Verb: verb, Object: row.Name,
			Event: string(ledger.Watered), Minutes: waterMinutes(row), Until: d.Date, Pressing: row.ByNextOf20 >= waterPress, DayCost: -1}
		for _, sp := range d.Spaces {
			if sp.ID == row.Space {
				t.Who, t.Reach = sp.Who, sp.Reach
			}
		}
		if _, gone := dismissed[t.ID]; gone {
			continue
		}
		t.Rule, t.Basis = "Water when half of what it holds for plants is spent.", "FAO-56 water balance, with your own looks at each space"
		t.Answer = Answer{
			Verdict: sentence(verb + " " + row.Name + ": " + lowerFirst(row.Give)), Reason: row.When,
			Sure: fmt.Sprintf("%s that it runs dry before %s", chance(row.ByNextOf20), d.Dry.Next), OfTwenty: row.ByNextOf20,
			Look: row.Look, Change: "Damp at a knuckle: say so, and it learns that this space dries more slowly.", Caution: row.Caution,
		}
		t.LiftKg, t.Delay = lift(verb), delayWords(t, d.Date)
		if row.Way == water.Drip {
			t.LiftKg = 0
			t.Answer.Look += " Is the line open, and does every emitter drip?"
		}
		if t.Answer.Caution == "" && row.Answer.LackL.Likely > canL {
			t.Answer.Caution = "A full can weighs about 10 kg: half cans, both hands."
		}
		out = append(out, t)
	}
	return out
}

// waterMinutes is the time at the space: by can, the carrying; a drip line or
// hose runs by itself.
func waterMinutes(row DryRow) int {
	if row.Way == water.Drip {
		return 2
	}
	return int(math.Max(2, math.Ceil(row.Answer.LackL.Likely/canL)*canMinutes))
}

// lowerFirst begins a sentence's words in the middle of another.
func lowerFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}
