package weather

import (
	"bedweek/internal/cal"
)

// FrostYear is a growing year's last spring and first autumn day at or below a
// threshold. North of the equator it is a calendar year, spring to 31 July and
// autumn from 1 August. South of it the year runs from 1 July, spring to 31
// January, autumn from 1 February, and is named for its first year.
type FrostYear struct {
	Year              int
	LastSpring        cal.Day
	FirstAutumn       cal.Day
	HasLast, HasFirst bool
	Whole             bool // every day of the year is in the record
}

// FreeDays returns the days strictly between last spring and first autumn
// frost; ok is false when either did not come.
func (y FrostYear) FreeDays() (days int, ok bool) {
	if !y.HasLast || !y.HasFirst {
		return 0, false
	}
	return int(y.FirstAutumn-y.LastSpring) - 1, true
}

// FrostYears lists the growing years of a run of days, oldest first. south
// says that the place lies south of the equator.
func FrostYears(start cal.Day, days []Day, thresholdC float64, south bool) []FrostYear {
	var out []FrostYear
	first, autumn := 1, 8
	if south {
		first, autumn = 7, 2
	}
	for from, to := range seasons(start, len(days), first) {
		y := FrostYear{Year: from.Year(), Whole: from >= start && to < start+cal.Day(len(days))}
		turn := cal.Of(from.Year(), monthOf(autumn), 1)
		if turn < from {
			turn = cal.Of(from.Year()+1, monthOf(autumn), 1)
		}
		for d := max(from, start); d <= to && d < start+cal.Day(len(days)); d++ {
			if days[d-start].TminC > thresholdC {
				continue
			}
			if d < turn {
				y.LastSpring, y.HasLast = d, true
			} else if !y.HasFirst {
				y.FirstAutumn, y.HasFirst = d, true
			}
		}
		out = append(out, y)
	}
	return out
}

// FrostWinter is a winter's first and last day at or below a threshold. North
// of the equator a winter runs from 1 July to 30 June, south of it it is the
// calendar year, so that a first frost in January is not lost.
type FrostWinter struct {
	From, To    cal.Day
	First, Last cal.Day // 0 when Days is 0
	Days        int     // at or below the threshold
	Whole       bool
}

// FrostWinters lists the winters of a run of days, oldest first, cut ones
// (not Whole) included.
func FrostWinters(start cal.Day, days []Day, thresholdC float64, south bool) []FrostWinter {
	first := 7
	if south {
		first = 1
	}
	var out []FrostWinter
	for from, to := range seasons(start, len(days), first) {
		w := FrostWinter{From: from, To: to, Whole: from >= start && to < start+cal.Day(len(days))}
		for d := max(from, start); d <= to && d < start+cal.Day(len(days)); d++ {
			if days[d-start].TminC > thresholdC {
				continue
			}
			if w.Days == 0 {
				w.First = d
			}
			w.Last = d
			w.Days++
		}
		out = append(out, w)
	}
	return out
}

// seasons yields the twelve-month stretches beginning on the first of a month
// that touch n days from start.
func seasons(start cal.Day, n, month int) func(yield func(from, to cal.Day) bool) {
	return func(yield func(from, to cal.Day) bool) {
		for y := start.Year() - 1; ; y++ {
			from, to := cal.Of(y, monthOf(month), 1), cal.Of(y+1, monthOf(month), 1)-1
			if from >= start+cal.Day(n) {
				return
			}
			if to >= start && !yield(from, to) {
				return
			}
		}
	}
}

// FrostChance counts the futures with a night at or below a threshold from day
// from to day to. Futures that do not reach the days are not counted in of.
func FrostChance(fs []Future, thresholdC float64, from, to cal.Day) (count, of int) {
	for _, f := range fs {
		if to < f.Start || from >= f.Start+cal.Day(len(f.Days)) {
			continue
		}
		of++
		for d := max(from, f.Start); d <= to && d < f.Start+cal.Day(len(f.Days)); d++ {
			if f.Days[d-f.Start].TminC <= thresholdC {
				count++
				break
			}
		}
	}
	return count, of
}

// FrostDates says when, over the futures, the last night at or below a
// threshold comes between two days, and the first. with is how many futures
// have any; the windows are the middle four in five of those, and empty when
// there is none.
func FrostDates(fs []Future, thresholdC float64, from, to cal.Day) (first, last cal.Window, with int) {
	var firsts, lasts []float64
	for _, f := range fs {
		a, b := cal.Day(0), cal.Day(0)
		found := false
		for d := max(from, f.Start); d <= to && d < f.Start+cal.Day(len(f.Days)); d++ {
			if f.Days[d-f.Start].TminC <= thresholdC {
				if !found {
					a, found = d, true
				}
				b = d
			}
		}
		if found {
			firsts, lasts = append(firsts, float64(a)), append(lasts, float64(b))
		}
	}
	return window(firsts), window(lasts), len(firsts)
}

// window is the middle four in five of some days (type 7 quantiles).
func window(days []float64) cal.Window {
	at := func(p float64) cal.Day {
		q, _ := Quantile(days, p, 7)
		return cal.Day(q + 0.5)
	}
	if len(days) == 0 {
		return cal.Window{}
	}
	return cal.Window{Early: at(0.1), Likely: at(0.5), Late: at(0.9)}
}
