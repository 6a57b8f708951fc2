package stand

import (
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Waiting in December costs nothing, in September much: a start and the same
// three weeks later (common practice; the window's own rule).
func TestGainsOfThreeWeeks(t *testing.T) {
	a := NewAir(seattle(t, 20))
	y := a.env.Start.Year()
	for _, c := range []struct {
		crop crop.ID
		day  cal.Day
		want bool
	}{
		{"spinach", cal.Of(y, time.September, 1), true},
		{"spinach", cal.Of(y, time.December, 7), false},
		{"spinach", cal.Of(y+1, time.January, 4), false},
		{"lettuce-leaf", cal.Of(y, time.June, 10), true}, // sooner on the table, and no more of it
	} {
		table := a.Table(hand(c.crop), nil)
		sooner, later := table.Grow(crop.Sow, c.day), table.Grow(crop.Sow, c.day+21)
		if got := table.Gains(crop.Sow, c.day, sooner, later, 21); got != c.want {
			t.Errorf("%s sown %s against three weeks later: gains %v (first picks %s and %s), want %v",
				c.crop, c.day, got, sooner.FirstPick, later.FirstPick, c.want)
		}
	}
}

// Leaves that stood a winter run to seed in spring, however cool it is; the
// same leaves sown after midwinter go by their own days (common practice).
func TestOverwinteredLeavesRunToSeed(t *testing.T) {
	a := NewAir(seattle(t, 20))
	table := a.Table(hand("spinach"), nil)
	y := a.env.Start.Year()
	for f, o := range table.Grow(crop.Sow, cal.Of(y, time.August, 24)).Outcomes {
		if o.First == 0 {
			continue
		}
		if late := cal.Of(y+1, time.May, 31); o.End > late {
			t.Errorf("future %d: sown in August it still stands on %s", f, o.End)
		}
	}
	stood := 0
	for _, o := range table.Grow(crop.Sow, cal.Of(y+1, time.February, 20)).Outcomes {
		if o.First > cal.Of(y+1, time.April, 20) {
			stood++
		}
	}
	if stood < 14 {
		t.Errorf("sown in February, only %d of 20 are picked after 20 April: the winter's stem is not theirs", stood)
	}
}
