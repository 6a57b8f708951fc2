package reckon

import (
	"slices"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// TestMendsHoldWhatTheyPromise prices every told mend once more, with the
// plain evaluator alone, and holds its dates against its hole.
func TestMendsHoldWhatTheyPromise(t *testing.T) {
	told := 0
	for _, c := range demoCases() {
		r := demoPlan(t, c)
		study := season.NewStudy(r.Problem, &r.Plan)
		food := map[string]int{}
		for f := range r.Problem.Foods {
			food[r.Problem.Foods[f].ID] = f
		}
		option := map[string]int{}
		for i := range r.Problem.Options {
			option[r.Problem.Options[i].ID] = i
		}
		for _, row := range r.Day.Table {
			f := food[row.Food]
			for _, h := range row.Holes {
				if h.Asked && len(h.Mends) == 0 && h.Words == "" {
					t.Errorf("%s, %s: no mend, and no word why", c.name, row.Name)
				}
				for w := h.From; w <= h.To; w++ {
					n := 0
					for _, x := range row.Weeks[w].Threads {
						if x {
							n++
						}
					}
					if row.Weeks[w].Wanted == 0 || 2*n >= len(row.Weeks[w].Threads) {
						t.Errorf("%s, %s: week %d is no hole: %d threads", c.name, row.Name, w, n)
					}
				}
				for _, m := range h.Mends {
					told++
					end := r.Problem.Start + cal.Day(7*h.To+6)
					if m.By < m.From || m.From < r.in.Date || m.By > end {
						t.Errorf("%s, %s: %s from %s by %s for a hole that ends %s", c.name, row.Name, m.Option, m.From, m.By, end)
					}
					if m.Closes < 1 || m.OfTwenty < 10 || m.First < h.From || m.Last > h.To || m.Plants < 1 || m.Worth > 0 {
						t.Errorf("%s, %s: %+v", c.name, row.Name, m)
					}
					line := ledger.PlanLine{Space: m.Space, Crop: m.CropID, Way: m.Way, Since: m.Since, Until: m.Until, Plants: m.Plants}
					if i := r.model.finder().find(line); i != option[m.Option] {
						t.Errorf("%s: taken into the plan, %s would be option %d", c.name, m.Option, i)
					}
					if told > 6 { // the rest is the same working
						continue
					}
					forced, free := study.With(t.Context(), option[m.Option], mendWork)
					with, without := season.Evaluate(r.Problem, &forced.Plan), season.Evaluate(r.Problem, &free)
					if len(with.Faults) > 0 {
						t.Errorf("%s: %s breaks %v", c.name, m.Option, with.Faults)
					}
					weeks, gain := 0, 0.0
					for w := h.From; w <= h.To; w++ {
						n := 0
						for k, x := range with.Table[f][w].Eaten {
							want := with.Table[f][w].Wanted
							if 2*x >= want {
								n++
							}
							gain += (min(x, want) - min(without.Table[f][w].Eaten[k], want)) / float64(r.Problem.Futures)
						}
						if n >= 10 {
							weeks++
						}
					}
					if weeks != m.Closes || gain < m.Gain-1e-6 || gain > m.Gain+1e-6 {
						t.Errorf("%s: %s closes %d weeks and gives %.3f meals, told %d and %.3f", c.name, m.Option, weeks, gain, m.Closes, m.Gain)
					}
				}
			}
		}
	}
	if told < 20 {
		t.Errorf("%d mends told in three gardens; the test sees nothing", told)
	}
}

// TestMendsStandUntilLookedForAgain: after a note, until the longer search is
// done, a hole keeps what the day before told of it, but not what the plan has
// taken up, nor what lies in weeks that are no hole any more.
func TestMendsStandUntilLookedForAgain(t *testing.T) {
	r := demoPlan(t, demoCases()[0])
	fresh := func() *Day {
		d := &Day{WeekOf: make([]cal.Day, len(r.Problem.Foods[0].Want))}
		for w := range d.WeekOf {
			d.WeekOf[w] = r.Problem.Start + cal.Day(7*w)
		}
		d.Table = r.table(d.WeekOf)
		return d
	}
	before, d := fresh(), fresh()
	row := slices.IndexFunc(d.Table, func(f FoodRow) bool { return len(f.Holes) > 0 })
	if row < 0 {
		t.Fatal("the demo's April has no hole")
	}
	at := longest(d.Table[row].Holes)[0]
	h := &before.Table[row].Holes[at]
	taken := r.Problem.Options[r.Plan.Plantings[0].Option].ID
	h.Mends = []Mend{{Option: "kept", First: h.From, Last: h.From}, {Option: taken, First: h.From, Last: h.From}, {Option: "elsewhere", First: h.To + 1, Last: h.To + 1}}
	r.mendsBefore(d, before)
	got := d.Table[row].Holes[at]
	if len(got.Mends) != 1 || got.Mends[0].Option != "kept" || !got.Old || got.Words != "" {
		t.Errorf("carried over: %+v, want the one that is neither taken nor elsewhere", got)
	}
	before.WeekOf[0] -= 7
	d = fresh()
	r.mendsBefore(d, before)
	if got := d.Table[row].Holes[at]; len(got.Mends) != 0 || got.Words != mendsLater {
		t.Errorf("of another week's day: %+v, want none", got)
	}
}
