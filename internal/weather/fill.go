package weather

import (
	"fmt"

	"bedweek/internal/cal"
)

// quantities in the order they are filled and listed.
func quantities() []string { return []string{"tmax", "tmin", "rain", "wind", "radiation"} }

// filler holds a record's columns while gaps are filled. NaN never enters:
// have says what is known.
type filler struct {
	start cal.Day
	col   map[string][]float64
	have  map[string][]bool // as read
	doy   []int
	gaps  []Gap
}

func newFiller(start cal.Day, n int) *filler {
	f := &filler{start: start, col: map[string][]float64{}, have: map[string][]bool{}, doy: make([]int, n)}
	for _, q := range quantities() {
		f.col[q], f.have[q] = make([]float64, n), make([]bool, n)
	}
	for i := range f.doy {
		f.doy[i] = (start + cal.Day(i)).YearDay()
	}
	return f
}

// load copies the sheet's rows and returns how many lie outside the span.
func (f *filler) load(s *Sheet) (outside int) {
	for i := range s.Rows {
		at := int(s.Rows[i].Day - f.start)
		if at < 0 || at >= len(f.doy) {
			outside++
			continue
		}
		for _, q := range quantities() {
			if p := *s.Rows[i].cell(q); p != nil {
				f.col[q][at], f.have[q][at] = *p, true
			}
		}
	}
	return outside
}

func (f *filler) has(q string) bool {
	for _, h := range f.have[q] {
		if h {
			return true
		}
	}
	return false
}

// spread lays rain totals of several days evenly over their days, where those
// have no reading of their own.
func (f *filler) spread(totals []total) {
	for _, t := range totals {
		end := int(t.last - f.start)
		from := end - t.days + 1
		if from < 0 || end >= len(f.doy) {
			continue
		}
		var open []int
		for i := from; i <= end; i++ {
			if !f.have["rain"][i] {
				open = append(open, i)
			}
		}
		if len(open) != t.days {
			continue // some of these days were measured too; the total would count twice
		}
		for _, i := range open {
			f.col["rain"][i], f.have["rain"][i] = t.rainMM/float64(t.days), true
		}
		f.gap("rain", from, end, fmt.Sprintf("a total of %.1f mm over %d days, spread evenly", t.rainMM, t.days))
	}
}

func (f *filler) gap(q string, from, to int, how string) {
	f.gaps = append(f.gaps, Gap{Quantity: q, From: f.start + cal.Day(from), To: f.start + cal.Day(to), Filled: how})
}

// fillAll fills every run of missing days, quantity by quantity. Radiation is
// left to be worked out from the temperatures.
func (f *filler) fillAll() {
	for _, q := range quantities() {
		if q == "radiation" || q == "wind" && !f.has(q) {
			continue
		}
		var by *byDate
		have := f.have[q]
		for i := 0; i < len(have); i++ {
			if have[i] {
				continue
			}
			j := i
			for j+1 < len(have) && !have[j+1] {
				j++
			}
			if by == nil {
				by = newByDate(f.doy, f.col[q], have)
			}
			f.fillRun(q, i, j, by)
			i = j
		}
	}
}

// fillRun fills days i to j. One or two days of temperature or wind get a
// straight line; everything else the mean of the same fortnight.
func (f *filler) fillRun(q string, i, j int, by *byDate) {
	col := f.col[q]
	inside := i > 0 && j+1 < len(col)
	if q != "rain" && inside && j-i < 2 {
		a, b, n := col[i-1], col[j+1], float64(j-i+2)
		for k := i; k <= j; k++ {
			w := float64(k-i+1) / n
			col[k] = a*(1-w) + b*w
		}
		f.gap(q, i, j, "a straight line between the days before and after")
		return
	}
	how := ""
	for k := i; k <= j; k++ {
		v, words := by.mean(f.doy[k])
		col[k] = v
		if how == "" || how == words {
			how = words
		} else {
			how = "mean of the same weeks in the other years"
		}
	}
	f.gap(q, i, j, how)
}

// byDate sums a quantity by day of the year, so that the mean of any fortnight
// is at hand.
type byDate struct {
	sum, n [367]float64
	all    float64
}

func newByDate(doy []int, col []float64, have []bool) *byDate {
	b := &byDate{}
	total, n := 0.0, 0.0
	for i, h := range have {
		if h {
			b.sum[doy[i]] += col[i]
			b.n[doy[i]]++
			total, n = total+col[i], n+1
		}
	}
	if n > 0 {
		b.all = total / n
	}
	return b
}

// mean returns the mean within a week of doy, or of a wider window when fewer
// than five days are known there.
func (b *byDate) mean(doy int) (v float64, how string) {
	for _, w := range []struct {
		half int
		how  string
	}{{7, "mean of the same fortnight in the other years"}, {15, "mean of the same month in the other years"}, {30, "mean of the same two months in the other years"}} {
		sum, n := 0.0, 0.0
		for k := doy - w.half; k <= doy+w.half; k++ {
			d := (k+365)%366 + 1 // 1..366, round the year's end
			sum, n = sum+b.sum[d], n+b.n[d]
		}
		if n >= 5 {
			return sum / n, w.how
		}
	}
	return b.all, "mean of all days of the record, for want of better"
}

// temperaturesAndRain writes the filled columns, keeping tmin below tmax where
// one of them was filled.
func (f *filler) temperaturesAndRain(rec *Record) {
	tx, tn, rain := f.col["tmax"], f.col["tmin"], f.col["rain"]
	for i := range rec.Days {
		d := &rec.Days[i]
		d.TmaxC, d.TminC, d.RainMM = tx[i], tn[i], max(0, rain[i])
		if d.TminC <= d.TmaxC {
			continue
		}
		// Only a filled value can cross, as the reader refuses crossed pairs.
		if f.have["tmax"][i] {
			d.TminC = d.TmaxC - filledRangeC
		} else {
			d.TmaxC = d.TminC + filledRangeC
		}
	}
}

// filledRangeC is the daily range given to a day whose filled temperature
// would cross the recorded one: that of a dull day. An assumption.
const filledRangeC = 4.0

// wind brings wind to 2 m and says so.
func (f *filler) wind(rec *Record, heightM float64) {
	if !f.has("wind") {
		for i := range rec.Days {
			rec.Days[i].WindMS = defaultWind
		}
		f.gap("wind", 0, len(rec.Days)-1, "2 m/s, the mean of the world's stations (FAO-56)")
		rec.Gaps = f.gaps
		return
	}
	for i := range rec.Days {
		rec.Days[i].WindMS = WindAt2M(max(0, f.col["wind"][i]), heightM)
	}
	if heightM == stationWindM {
		rec.Notes = append(rec.Notes, "The wind was taken to be measured at 10 m and was brought down to 2 m (FAO-56, equation 47).")
	}
}

// radiation works out what was not recorded from the daily range.
func (f *filler) radiation(rec *Record) {
	from := -1
	for i := range rec.Days {
		d := &rec.Days[i]
		if f.have["radiation"][i] {
			d.RadMJ = f.col["radiation"][i]
			if from >= 0 {
				f.gap("radiation", from, i-1, filledRadiation)
				from = -1
			}
			continue
		}
		if from < 0 {
			from = i
		}
		d.RadMJ = HargreavesRadMJ(d.TmaxC, d.TminC, rec.Site, f.doy[i])
	}
	if from >= 0 {
		f.gap("radiation", from, len(rec.Days)-1, filledRadiation)
	}
	rec.Gaps = f.gaps
}

const filledRadiation = "worked out from the day's warmest and coldest (FAO-56, equation 50)"
