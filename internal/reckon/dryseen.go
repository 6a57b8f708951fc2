package reckon

import (
	"bedweek/internal/ledger"
	"bedweek/internal/water"
)

// WaterSeen returns what the ledger says of the water of whole spaces: waterings,
// and looks "damp at a knuckle", "dry" or "wilting". Entries taken back, and
// other words, are left out. Where only the day is kept, a look counts at 8 in
// the morning.
func WaterSeen(events []ledger.Event) []SpaceSeen {
	var out []SpaceSeen
	for _, l := range ledger.Replay(events).Wet {
		out = append(out, seen(l))
	}
	return out
}

func seen(l ledger.WetLook) SpaceSeen {
	hour := l.Hour
	if hour == 0 {
		hour = lookHour
	}
	return SpaceSeen{Space: l.Space, On: l.On, Hour: float64(hour), What: water.Look(l.Looks), Litres: l.Litres}
}

// lookHour is the hour a look is taken to be at when only its day is known.
const lookHour = 8
