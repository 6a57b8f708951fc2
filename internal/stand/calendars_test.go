package stand

import (
	"encoding/csv"
	"fmt"
	"maps"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/weather"
)

// calendarAir is a plain open bed at a place of testdata/calendar_places.csv,
// in years drawn from its monthly means.
func calendarAir(t *testing.T, row []string) *Air {
	t.Helper()
	var text strings.Builder
	text.WriteString("month,tmax_c,tmin_c,rain_mm\n")
	for i, m := range strings.Fields(row[4]) {
		fmt.Fprintf(&text, "%d,%s\n", i+1, strings.ReplaceAll(m, "/", ","))
	}
	e := openBed(0)
	for i, to := range []*float64{&e.Site.LatDeg, &e.Site.LonDeg, &e.Site.ElevM} {
		v, err := strconv.ParseFloat(row[i+1], 64)
		if err != nil {
			t.Fatal(err)
		}
		*to = v
	}
	n, faults := weather.ReadNormals(row[0], strings.NewReader(text.String()), e.Site)
	if n == nil {
		t.Fatal(faults)
	}
	e.Start = cal.Of(2018, 1, 1).Monday()
	e.Futures = weather.Make(nil, n, e.Site, e.Start, weather.Ask{Past: 30, Days: 3 * 366, N: 40, Seed: 1}).Futures
	return NewAir(e)
}

func rowsOf(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// printedDays reads "03-15..05-01 07-05..08-10" into the days of a year.
func printedDays(t *testing.T, s string) (on [365]bool) {
	t.Helper()
	for _, r := range strings.Fields(s) {
		from, to, _ := strings.Cut(r, "..")
		for d := monthDay(t, from); ; d = (d + 1) % 365 {
			on[d] = true
			if d == monthDay(t, to) {
				break
			}
		}
	}
	return on
}

func monthDay(t *testing.T, s string) int {
	t.Helper()
	d, err := cal.Parse("2018-" + s)
	if err != nil {
		t.Fatal(err)
	}
	return d.YearDay() - 1
}

func calendarAirOf(t *testing.T, place string) *Air {
	t.Helper()
	for _, p := range rowsOf(t, "calendar_places.csv") {
		if p[0] == place {
			return calendarAir(t, p)
		}
	}
	t.Fatalf("no place %q", place)
	return nil
}

var calendarWays = map[string]crop.Way{"sow": crop.Sow, "set": crop.SetOut, "plant": crop.Plant}

// springOnly are calendars that print the first half of the year alone and
// say nothing of the other.
var springOnly = map[string]bool{"brazos": true}

// unread are calendars first read when the windows' rules had been settled.
var unread = map[string]bool{"virginia": true, "kentucky": true}

// calendarSum counts days of a calendar and of windows.
type calendarSum struct{ printed, covered, works, worksIn, best, bestIn int }

// both is the window of two types of one plant, of which a grower may sow either.
func both(a, b Window) Window {
	a.AllYear = a.AllYear || b.AllYear
	a.Works, a.Best = append(a.Works, b.Works...), append(a.Best, b.Best...)
	return a
}

// calendarDays compares a window with printed days up to a day of the year.
func calendarDays(w Window, printed [365]bool, upTo int) (n calendarSum) {
	var best Window
	best.Works, best.AllYear = w.Best, w.AllYear && len(w.Best) > 0 && w.Best[0] == w.Works[0]
	for d, on := range printed[:upTo] {
		day := cal.Of(2018, 1, 1) + cal.Day(d)
		works, fine := w.Open(day), best.Open(day)
		n.printed += boolInt(on)
		n.covered += boolInt(on && works)
		n.works += boolInt(works)
		n.worksIn += boolInt(works && on)
		n.best += boolInt(fine)
		n.bestIn += boolInt(fine && on)
	}
	return n
}

func (s *calendarSum) add(n calendarSum) {
	s.printed, s.covered, s.works = s.printed+n.printed, s.covered+n.covered, s.works+n.works
	s.worksIn, s.best, s.bestIn = s.worksIn+n.worksIn, s.best+n.best, s.bestIn+n.bestIn
}

func (s calendarSum) shares() (covered, inside, best float64) {
	share := func(a, b int) float64 { return float64(a) / float64(max(b, 1)) }
	return share(s.covered, s.printed), share(s.worksIn, s.works), share(s.bestIn, s.best)
}

func (s calendarSum) String() string {
	c, i, b := s.shares()
	return fmt.Sprintf("covered %.3f, inside %.3f, best inside %.3f", c, i, b)
}

// TestCalendars judges windows by published calendars that no figure was set
// by: days printed that work, days that work and are printed, and printed spring starts.
func TestCalendars(t *testing.T) {
	airs := map[string]*Air{}
	sums, starts := map[string]*calendarSum{}, map[string][]int{}
	var all, told, fresh calendarSum
	lost := map[string]int{}
	for _, row := range rowsOf(t, "calendars.csv") {
		place, way := row[0], calendarWays[row[2]]
		if airs[place] == nil {
			airs[place] = calendarAirOf(t, place)
		}
		types := strings.Split(row[1], "+")
		w := airs[place].Table(fromBook(t, crop.ID(types[0])), nil).Window(way, 5)
		for _, id := range types[1:] {
			w = both(w, airs[place].Table(fromBook(t, crop.ID(id)), nil).Window(way, 5))
		}
		if from, found := strings.CutSuffix(row[3], ".."); found {
			gap := startGap(w, monthDay(t, from))
			t.Logf("%s, %s, %s: from %s, works from %+d days", place, row[1], way, from, gap)
			if gap == 365 {
				t.Errorf("%s, %s, %s: no window, where growers begin on %s", place, row[1], way, from)
			}
			starts[place] = append(starts[place], abs(gap))
			continue
		}
		printed, upTo := printedDays(t, row[3]), 365
		one := calendarDays(w, printed, upTo)
		t.Logf("%s, %s, %s: %d of %d printed days work; %d of %d that work are printed, %d of %d of the best", place, row[1], way,
			one.covered, one.printed, one.worksIn, one.works, one.bestIn, one.best)
		if sums[place] == nil {
			sums[place] = &calendarSum{}
		}
		sums[place].add(one)
		if unread[place] {
			fresh.add(one)
			continue
		}
		all.add(one)
		if !springOnly[place] {
			countLost(lost, w, printed)
		}
		if springOnly[place] {
			upTo = cal.Of(2018, 6, 30).YearDay()
		}
		told.add(calendarDays(w, printed, upTo))
	}
	for place, s := range sums {
		t.Logf("%s: %v", place, s)
	}
	t.Logf("all: %v; of the half year alone where no more is told: %v", all, told)
	t.Logf("calendars read last: %v", fresh)
	if c, i, b := all.shares(); c < 0.89 || i < 0.62 || b < 0.68 { // what was reached; docs/accuracy.md has the goals
		t.Errorf("windows cover %.2f of the printed days, want 0.89; %.2f of their days are printed, want 0.62, and %.2f of the best, want 0.68", c, i, b)
	}
	for _, why := range slices.Sorted(maps.Keys(lost)) {
		t.Logf("printed days that do not work, %s: %d", why, lost[why])
	}
	judgeStarts(t, starts)
}

// countLost counts printed days on which a window is shut, by the limit told
// for the start tried next to them.
func countLost(lost map[string]int, w Window, printed [365]bool) {
	for d, on := range printed {
		day := cal.Of(2018, 1, 1) + cal.Day(d)
		if !on || w.Open(day) {
			continue
		}
		near := slices.MinFunc(w.Tries, func(a, b Try) int {
			far := func(x Try) int {
				n := abs(x.Day.YearDay() - day.YearDay())
				return min(n, 365-n)
			}
			return far(a) - far(b)
		})
		lost[near.Limit]++
	}
}

// startGap is how many days later than printed the nearest range begins; 365
// when there is none.
func startGap(w Window, printed int) int {
	gap := 365
	for _, r := range w.Works {
		if d := r.From.YearDay() - 1 - printed; abs(d) < abs(gap) {
			gap = d
		}
	}
	return gap
}

func judgeStarts(t *testing.T, starts map[string][]int) {
	t.Helper()
	for place, d := range starts {
		slices.Sort(d)
		near := 0
		for _, x := range d {
			near += boolInt(x <= 15)
		}
		if d[len(d)/2] > 12 || near*10 < len(d)*6 {
			t.Errorf("%s: printed starts are missed by %d days in the median, %d of %d within 15", place, d[len(d)/2], near, len(d))
		}
		t.Logf("%s: starts within %d days in the median, %d of %d within 15", place, d[len(d)/2], near, len(d))
	}
}

func abs(x int) int { return max(x, -x) }
