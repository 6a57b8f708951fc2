package reckon

import (
	"encoding/json"

	"bedweek/internal/ledger"
	"bedweek/internal/water"
)

// WaterSeen returns what the ledger's looks say of the water of whole spaces:
// "watered", "damp at a knuckle", "dry" or "wilting". Looks taken back, and
// other words, are left out. The ledger keeps the day and not the hour: a look
// counts at 8 in the morning.
func WaterSeen(events []ledger.Event) []SpaceSeen {
	voided := map[string]bool{}
	for _, e := range events {
		var v ledger.Void
		if e.Kind == ledger.Voided && json.Unmarshal(e.Body, &v) == nil {
			voided[v.Event] = true
		}
	}
	var out []SpaceSeen
	for _, e := range events {
		var l ledger.Look
		if e.Kind != ledger.Looked || voided[e.ID] || json.Unmarshal(e.Body, &l) != nil || l.Space == "" {
			continue
		}
		switch w := water.Look(l.Looks); w {
		case water.Watered, water.Damp, water.DryLook, water.Wilting:
			out = append(out, SpaceSeen{Space: l.Space, On: e.Happened, Hour: lookHour, What: w})
		}
	}
	return out
}

// lookHour is the hour a look is taken to be at when only its day is known.
const lookHour = 8
