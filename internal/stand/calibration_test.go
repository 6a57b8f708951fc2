package stand

import (
	"math"
	"testing"

	"bedweek/internal/crop"
)

// continental is a warm inland place: 27 °C in July, frost in winter.
func continental(n int) *Env {
	e := openBed(39)
	e.Start = monday(testStart)
	e.Futures = sineFutures(n, testDays, e.Start, 39, 13, 12, 2)
	return e
}

// season is a crop's good season in a place: the start in the middle of its
// longest best range (else the longest that works) and its likely pick.
func season(a *Air, c *crop.Crop, way crop.Way) (days float64, width int) {
	tab := a.Table(c, nil)
	w := tab.Window(way, 7)
	ranges := w.Best
	if len(ranges) == 0 {
		ranges = w.Works
	}
	for _, r := range ranges {
		span := (int(r.To-r.From) + 364) % 364
		if span+1 <= width {
			continue
		}
		mid := r.From + (r.To-r.From)/2
		if r.To < r.From {
			mid = r.From
		}
		g := tab.Grow(way, mid)
		if g.Success == 0 {
			continue
		}
		width, days = span+1, float64(g.FirstPick.Likely-mid)
	}
	return days, width
}

// TestDaysInSeason: in a crop's own good season the first pick falls within
// the days the book prints, widened by 15 %, for most crops. Crops that wait
// for next year's days (bulbs planted in autumn, winter sprouts, perennials)
// are held to the calendar by TestStarts.
func TestDaysInSeason(t *testing.T) {
	const (
		widen = 0.15
		want  = 0.85
	)
	airs := []*Air{NewAir(seattle(t, 20)), NewAir(continental(20))}
	in, all := 0, 0
	for _, c := range book(t) {
		if c.AutumnPlant || c.Perennial || needsCold(c) {
			continue
		}
		for _, way := range c.Ways {
			f := c.DaysFromSet
			if way == crop.Sow {
				f = c.DaysFromSow
			}
			if !f.Known() {
				continue
			}
			hit, best, got := false, 0, 0.0
			for _, a := range airs {
				if d, width := season(a, c, way); width > best {
					best, got = width, d
				}
			}
			low, high := math.Min(f.Low, f.Value), math.Max(f.High, f.Value)
			hit = got >= low*(1-widen) && got <= high*(1+widen)
			all++
			if hit {
				in++
			} else {
				t.Logf("%s, %s: %.0f days, the book says %.0f to %.0f", c.ID, way, got, low, high)
			}
		}
	}
	t.Logf("%d of %d within the book's days widened by 15 %%", in, all)
	if float64(in) < want*float64(all) || all < 60 {
		t.Errorf("%d of %d crops and ways within the book's days, want %.0f %%", in, all, 100*want)
	}
}
