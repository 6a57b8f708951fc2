package weather

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
)

// Forecast is what a weather service says of the coming days.
type Forecast struct {
	Source string             // as its terms want it named, in words
	Issued cal.Day            // the garden's day on which it was made: lead 0
	Days   []FarDay           // rising, at most one a day
	Notes  []string           // in words: what was missing
	Own    *[MostFarDays]Miss // how far earlier ones were off here, by days ahead; nil = not known
}

// FarDay is one forecast day; nil is not said, never 0.
type FarDay struct {
	Day                                 cal.Day
	TmaxC, TminC, RainMM, WindMS, RadMJ *float64 // wind at 2 m
	RainChance                          *float64 // 0 to 1, of measurable rain
}

// MostFarDays is how many forecast days futures follow.
const MostFarDays = 10

// errorC is the usual error of a forecast of a day's extremes, °C (one
// standard deviation), by days ahead: about 1.5 at first and 3.5 after a week
// (from memory of services' own reports; no page read). Beyond the last it is
// taken as that of the season.
func errorC(lead int) float64 { return 1.4 + 0.3*float64(max(0, lead)) }

// fadeDays is how fast the futures go back to their own way after the last
// forecast day, the time in which a difference shrinks to a third.
const fadeDays = 2.5

// Words says where the next days come from.
func (fc *Forecast) Words() string {
	n := 0
	for _, d := range fc.Days {
		if lead := int(d.Day - fc.Issued); lead >= 0 && lead < MostFarDays {
			n++
		}
	}
	w := fmt.Sprintf("The next %d days follow the forecast of %s (%s), with %s.", n, fc.Issued.Long(), fc.Source, fc.errorWords())
	for _, note := range fc.Notes {
		w += " " + note
	}
	return w
}

// errorWords says which error the futures are given.
func (fc *Forecast) errorWords() string {
	if fc.Own != nil && fc.Own[1].High.Days >= LeastPairs && fc.Own[1].Low.Days >= LeastPairs {
		return "the error that earlier forecasts had here"
	}
	return "the error usual so far ahead"
}

// Follow returns the futures with their next days drawn around a forecast. Each
// keeps its own strays, so that weather hangs together from day to day, but
// they are shifted to the forecast and narrowed, or widened, to its usual
// error. After the last day they pass back. Days on or before the day before
// from are not touched.
//
// Rain falls in as many futures as the forecast's chance says; where it gives
// none, in nearly all for 2 mm and more, and in few for none. The wetter a
// future already was, the sooner it gets the rain, and the more.
func Follow(fs []Future, fc *Forecast, site Site, from cal.Day) []Future {
	if fc == nil || len(fs) == 0 {
		return fs
	}
	out := make([]Future, len(fs))
	for k, f := range fs {
		out[k] = f
		out[k].Days = append([]Day(nil), f.Days...)
	}
	var shift [2][]float64 // by future: what the last forecast day moved it by
	last := cal.Day(0)
	for _, d := range fc.Days {
		i := int(d.Day - fs[0].Start)
		lead := int(d.Day - fc.Issued)
		if d.Day < from || lead < 0 || lead >= MostFarDays || i < 0 || i >= len(fs[0].Days) || d.Day <= last {
			continue
		}
		last = d.Day
		shift[0] = toward(out, i, d.TmaxC, fc.spreadC(lead, true), func(x *Day) *float64 { return &x.TmaxC }, shift[0])
		shift[1] = toward(out, i, d.TminC, fc.spreadC(lead, false), func(x *Day) *float64 { return &x.TminC }, shift[1])
		rainOn(out, i, d)
		for k := range out {
			x := &out[k].Days[i]
			if d.WindMS != nil {
				x.WindMS = max(0.1, x.WindMS*(*d.WindMS)/max(0.3, meanWind(fs, i)))
			}
			ordered(x)
			x.RadMJ = radOf(*x, d, site)
		}
	}
	if last == 0 {
		return fs
	}
	for n := 1; n <= 10; n++ {
		i, w := int(last-fs[0].Start)+n, math.Exp(-float64(n)/fadeDays)
		if i >= len(fs[0].Days) {
			break
		}
		for k := range out {
			x := &out[k].Days[i]
			if shift[0] != nil {
				x.TmaxC += w * shift[0][k]
			}
			if shift[1] != nil {
				x.TminC += w * shift[1][k]
			}
			ordered(x)
		}
	}
	return out
}

// toward moves one temperature of day i in every future to a forecast and its
// error, and returns by how much; a forecast that says nothing leaves it and
// passes the day before's shift on.
func toward(fs []Future, i int, want *float64, sd float64, of func(*Day) *float64, before []float64) []float64 {
	if want == nil || math.IsNaN(*want) || math.IsInf(*want, 0) {
		for k := range before {
			*of(&fs[k].Days[i]) += before[k]
		}
		return before
	}
	mean, vari := 0.0, 0.0
	for k := range fs {
		mean += *of(&fs[k].Days[i])
	}
	mean /= float64(len(fs))
	for k := range fs {
		d := *of(&fs[k].Days[i]) - mean
		vari += d * d
	}
	spread := math.Sqrt(vari / float64(len(fs)))
	scale := 0.0
	if spread > 1e-9 {
		scale = min(sd/spread, 1.5)
	}
	moved := make([]float64, len(fs))
	for k := range fs {
		x := of(&fs[k].Days[i])
		to := *want + scale*(*x-mean)
		moved[k] = to - *x
		*x = to
	}
	return moved
}

// ordered keeps the warmest of a day above its coldest.
func ordered(x *Day) {
	if x.TmaxC-x.TminC < leastRangeC {
		mid := (x.TmaxC + x.TminC) / 2
		x.TmaxC, x.TminC = mid+leastRangeC/2, mid-leastRangeC/2
	}
}

// rainOn deals a day's rain out.
func rainOn(fs []Future, i int, d FarDay) {
	if d.RainMM == nil || !(*d.RainMM >= 0) {
		return
	}
	p := rainChance(d)
	order := make([]int, len(fs))
	for k := range order {
		order[k] = k
	}
	sort.SliceStable(order, func(a, b int) bool { return fs[order[a]].Days[i].RainMM > fs[order[b]].Days[i].RainMM })
	wet := int(math.Round(p * float64(len(fs))))
	// The forecast's amount is that of a wet day; amounts fall in equal steps
	// from twice that to nothing, so that their mean is kept.
	mean := max(wetMM, *d.RainMM)
	for rank, k := range order {
		fs[k].Days[i].RainMM = 0
		if rank < wet {
			fs[k].Days[i].RainMM = max(wetMM, 2*mean*(1-(float64(rank)+0.5)/float64(wet)))
		}
	}
}

// rainChance is the forecast's own, else a guess from the amount: our own
// choice.
func rainChance(d FarDay) float64 {
	if d.RainChance != nil && *d.RainChance >= 0 && *d.RainChance <= 1 {
		return *d.RainChance
	}
	switch {
	case *d.RainMM >= 2:
		return 0.9
	case *d.RainMM >= wetMM:
		return 0.6
	}
	return 0.1
}

func meanWind(fs []Future, i int) float64 {
	sum := 0.0
	for k := range fs {
		sum += fs[k].Days[i].WindMS
	}
	return sum / float64(len(fs))
}

// radOf is a day's radiation: the forecast's, moved with the day's own range;
// without one, from the range ([FAO56] eq. 50).
func radOf(x Day, d FarDay, site Site) float64 {
	doy := d.Day.YearDay()
	most := ClearSkyMJ(RaMJ(site.LatDeg, doy), site.ElevM)
	rad := HargreavesRadMJ(x.TmaxC, x.TminC, site, doy)
	if d.RadMJ != nil && *d.RadMJ >= 0 {
		rad = *d.RadMJ
	}
	return min(most, rad)
}
