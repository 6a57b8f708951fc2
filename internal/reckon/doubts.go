package reckon

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// doubts asks about weather and clock that can hardly be right.
func (in *Inputs) doubts() []string {
	today := cal.Day(0)
	if in.ByClock {
		today = in.Date
	}
	out := weather.Doubts(in.Record, in.Normals, in.site(), today)
	if in.ByClock && in.Newest > in.Date+1 {
		out = append(out, fmt.Sprintf("The last note was written on %s, and this machine says it is %s. Is its date right?", in.Newest.Long(), in.Date.Long()))
	}
	loads, err := Loads(in.Garden)
	if err != nil {
		return append(out, err.Error())
	}
	for _, l := range loads {
		if l.State != Under {
			out = append(out, l.Words)
		}
	}
	return out
}
