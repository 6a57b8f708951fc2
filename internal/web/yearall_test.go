package web

import (
	"fmt"
	"math/rand/v2"
	"testing"
	"unicode/utf8"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// The whole garden's year draws every planting of every sheet once, in walking
// order, on sheets that are not too full, and no name meets another name or
// line of its lane. Letters are guessed at 5.7 of 10.5 units, as the page does.
func TestTheYearOfTheGardenIsWholeAndClear(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 9))
	for round := range 60 {
		var years []reckon.YearSheet
		want := 0
		for s := range 1 + r.IntN(30) {
			y := reckon.YearSheet{Name: fmt.Sprintf("Space %d", s), From: today - 365, To: today}
			day := y.From - 40
			for range r.IntN(7) {
				day += cal.Day(r.IntN(120))
				row := reckon.YearRow{Planting: fmt.Sprint(want), Crop: "a crop of some name"[:4+r.IntN(15)], Plants: r.IntN(60), In: min(day, y.To), Picks: r.IntN(4), Off: r.IntN(30) - 15}
				if r.IntN(2) == 0 {
					row.Ended = min(row.In+cal.Day(r.IntN(200)), y.To)
				}
				y.Rows = append(y.Rows, row)
				want++
			}
			years = append(years, y)
		}
		got, at := 0, 0
		for _, side := range yearAll(years) {
			if lanes := (side.Tall - yearAllTop) / yearAllLane; lanes > yearAllLanes+1 {
				t.Fatalf("round %d: %.0f lanes on a sheet", round, lanes)
			}
			for _, sp := range side.Spaces {
				if sp.Name != clipMiddle(years[at].Name, 28) {
					t.Fatalf("round %d: %s stands at place %d", round, sp.Name, at)
				}
				at++
				for i, a := range sp.Plants {
					got++
					if a.LabelY > side.Tall || a.LabelX < yearAllLeft {
						t.Fatalf("round %d: %s is drawn outside", round, a.Label)
					}
					for _, b := range sp.Plants[:i] {
						if a.LabelY == b.LabelY && a.left() < b.right() && b.left() < a.right() {
							t.Fatalf("round %d: %q and %q meet", round, a.Label, b.Label)
						}
					}
				}
			}
		}
		if got != want || at != len(years) {
			t.Fatalf("round %d: %d of %d plantings, %d of %d spaces", round, got, want, at, len(years))
		}
	}
}

func (m YearMark) left() float64 { return min(m.from, m.LabelX) }

func (m YearMark) right() float64 {
	return max(m.to, m.LabelX+5.7*float64(utf8.RuneCountInString(m.Label)))
}
