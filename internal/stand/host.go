package stand

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// HostReady tells from when a start of a tall crop can carry a climber sown at
// its foot: the day it reaches the book's HostM, as a spread over the futures
// that get so far, and how many do. Beans sown sooner pull young corn down
// (common practice). A crop without HostM is never ready.
func (t *Table) HostReady(way crop.Way, day cal.Day) (cal.Window, int) {
	co, a := t.course(way), t.air
	need, full := t.Crop.HostM.Value, t.Crop.HeightM.Value
	if co == nil || !t.Crop.HostM.Known() || full <= 0 || a.at(day) < 0 {
		return cal.Window{}, 0
	}
	share := float32(math.Min(1, need/full))
	scratch := tally{wait: waitDays}
	var days []cal.Day
	for f := range a.k {
		p := t.seed(co, f, a.at(day), false, &scratch, nil)
		i := p.start
		if i >= a.n || p.settle(&i) != Fine {
			continue
		}
		for ; i < a.n; i++ {
			if p.step(i) != lives {
				break
			}
			if co.height.at(p.u*p.inv) >= share {
				days = append(days, p.date(i))
				break
			}
		}
	}
	return window(days), len(days)
}

// BloomWeeks is, by plan week, the share of the futures in which a start of a
// flower blooms: for HarvestDays where spent flowers are cut, else for the
// book's SpentDays. Crops that are not grown for bloom get zeros.
func (t *Table) BloomWeeks(way crop.Way, day cal.Day, deadheaded bool) []float32 {
	a := t.air
	out := make([]float32, a.env.Weeks)
	co := t.course(way)
	if co == nil || t.Crop.Harvest != crop.Bloom || a.at(day) < 0 || a.at(day) >= a.n {
		return out
	}
	own := *co
	if !deadheaded && t.Crop.SpentDays.Known() {
		own.pick = float32(math.Max(t.Crop.SpentDays.Value, shortestHold))
	}
	scratch := tally{wait: waitDays}
	kg := make([]float32, len(out))
	for f := range a.k {
		clear(kg)
		p := t.seed(&own, f, a.at(day), false, &scratch, kg)
		p.scale = 1 // flowers weigh nothing in the book; here they count days
		p.begin()
		if p.first < 0 {
			continue
		}
		for w, x := range kg {
			if x > 0 {
				out[w] += 1 / float32(a.k)
			}
		}
	}
	return out
}
