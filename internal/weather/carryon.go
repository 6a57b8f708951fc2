package weather

import (
	"fmt"

	"bedweek/internal/cal"
)

// CarriedOn returns the record with days after its end added, as far as they
// follow without a hole and have their temperatures and rain. Wind not said is
// taken as 2 m/s, radiation as that of the day's range. added is how many.
func (r *Record) CarriedOn(days []FarDay, source string) (out *Record, added int) {
	o := *r
	o.Days = append([]Day(nil), r.Days...)
	for _, d := range days {
		if d.Day < o.Start+cal.Day(len(o.Days)) {
			continue
		}
		if d.Day > o.Start+cal.Day(len(o.Days)) || d.TmaxC == nil || d.TminC == nil || d.RainMM == nil {
			break
		}
		day := Day{TmaxC: *d.TmaxC, TminC: *d.TminC, RainMM: *d.RainMM, WindMS: defaultWind}
		if d.WindMS != nil {
			day.WindMS = *d.WindMS
		}
		ordered(&day)
		day.RadMJ = radOf(day, d, r.Site)
		o.Days = append(o.Days, day)
		added++
	}
	if added == 0 {
		return r, 0
	}
	o.Notes = append(append([]string(nil), r.Notes...), fmt.Sprintf("%d days from %s on come from elsewhere: %s.", added, (r.End()+1).Long(), source))
	return &o, added
}
