package stand

import (
	"testing"

	"bedweek/internal/crop"
	"bedweek/internal/weather"
)

// steady is one future of days with the given means, each for some days.
func steady(e *Env, spells ...[2]float64) {
	var days []weather.Day
	for _, s := range spells {
		for range int(s[0]) {
			days = append(days, weather.Day{TmaxC: s[1] + 4, TminC: s[1] - 4, RadMJ: 10, WindMS: 2})
		}
	}
	e.Futures = []weather.Future{{Start: e.Start, Days: days}}
}

// TestHardening: ten days at 5 °C harden, hardness is the deeper the longer
// the cold up to then ([CABHARD]), and growing warmth undoes it in days.
func TestHardening(t *testing.T) {
	e := openBed(47)
	e.Start = monday(testStart)
	steady(e, [2]float64{20, 15}, [2]float64{10, 5}, [2]float64{20, 5}, [2]float64{3, 20}, [2]float64{10, 12})
	hard := NewAir(e).hard
	for _, tt := range []struct {
		day       int
		low, high float32
		from      string
	}{
		{19, 0, 0, "never cold"},
		{24, 0.45, 0.55, "half the cold"},
		{29, 0.99, 1, "[CABHARD]: up to ten days"},
		{49, 1, 1, "no more than full"},
		{52, 0, 0.01, "three days of growing warmth"},
		{62, 0, 0, "mild days keep it soft"},
	} {
		if h := hard[tt.day]; h < tt.low || h > tt.high {
			t.Errorf("day %d: hardness %.2f, want %.2f to %.2f (%s)", tt.day, h, tt.low, tt.high, tt.from)
		}
	}
}

// TestAutumnBeansHardenYoung: a hardened fava of three weeks stands a night of
// -8 °C, within the -10 to -7 at which a winter crop is damaged [FROST-NZ]; a
// soft one dies.
func TestAutumnBeansHardenYoung(t *testing.T) {
	tab := NewTable(fromBook(t, "fava-bean"), maritime(1), nil)
	p := plant{t: tab, co: tab.course(crop.Sow), u: 5}
	p.inv = 1 / p.co.goal
	if l := p.limit(&rate{hard: 1}); l > -8 || l < -10 {
		t.Errorf("a hardened young fava dies at %.1f °C, want -10 to -8", l)
	}
	if l := p.limit(&rate{}); l < -7 {
		t.Errorf("a soft young fava stands %.1f °C, want -7 at most", l)
	}
}

// TestFirstCut: what is cut whole gives more than half at the first cut, and
// leaves that are plucked for months a small part (common practice).
func TestFirstCut(t *testing.T) {
	for id, want := range map[crop.ID][2]float32{"spinach": {0.5, 0.8}, "arugula": {0.5, 0.8}, "lettuce-leaf": {0.5, 0.8}, "kale": {0.02, 0.3}, "chard": {0.02, 0.3}} {
		tab := NewTable(fromBook(t, id), maritime(1), nil)
		if got := tab.course(crop.Sow).firstCut(); got < want[0] || got > want[1] {
			t.Errorf("%s: %.2f of the yield stands at the first pick, want %.2f to %.2f", id, got, want[0], want[1])
		}
	}
}

// TestWaitingIsNoLoss: at a window's ends no year is counted twice, and beans
// open while in some years one still waits for warmth.
func TestWaitingIsNoLoss(t *testing.T) {
	a := NewAir(seattle(t, 40))
	waits := 0
	for _, c := range book(t) {
		for _, w := range a.Windows(c, 7) {
			for _, r := range w.Works {
				if r.SuccessFrom+r.WaitFrom > 21 || r.SuccessTo+r.WaitTo > 21 || r.WaitFrom > 20-fitOf20 && !w.AllYear {
					t.Errorf("%s, %s: %d and %d work, in %d and %d one waits", w.Crop, w.Way, r.SuccessFrom, r.SuccessTo, r.WaitFrom, r.WaitTo)
				}
				if w.Crop == "snap-bean-bush" && r.WaitFrom > 0 {
					waits++
				}
			}
		}
	}
	if waits == 0 {
		t.Error("beans never wait for warmth at the opening of their window")
	}
}

// TestUsualNight: a night counts as printed where the day's range is usual.
// What grows goes by the day's mean, so that days of one mean count alike
// ([CUCDAY]: cucumbers between nights of 10 and days of 28 °C); pollen goes by the
// dark hours, warmer than their lowest where the evening after a hot day is.
func TestUsualNight(t *testing.T) {
	for _, tt := range []struct{ lo, hi, least, most float64 }{{10, 20, 10, 10}, {12, 28, 13, 14.5}, {9, 15, 7, 9}} {
		if n := usualNight(tt.lo, tt.hi, nightShare); n < tt.least || n > tt.most {
			t.Errorf("the dark hours of %v after a day of %v count as %.1f °C, want %v to %v", tt.lo, tt.hi, n, tt.least, tt.most)
		}
	}
	for _, tt := range []struct {
		lo, rangeC float64
		indoor     bool
		want       float32
	}{{14, 10, false, 14}, {10, 18, false, 14}, {16, 6, false, 14}, {12, 18, true, 20}} {
		e := openBed(38)
		e.Start, e.Indoor, e.LampC = monday(testStart), tt.indoor, 20
		steadyOn(e, 30, tt.lo, tt.rangeC)
		if n := NewAir(e).night10[5]; n < tt.want-0.1 || n > tt.want+0.1 {
			t.Errorf("nights of %v °C with a range of %v (indoor %v) count as %.1f, want %v", tt.lo, tt.rangeC, tt.indoor, n, tt.want)
		}
	}
}

// steadyOn adds days with the given night and range.
func steadyOn(e *Env, days int, nightC, rangeC float64) {
	if len(e.Futures) == 0 {
		e.Futures = []weather.Future{{Start: e.Start}}
	}
	for range days {
		e.Futures[0].Days = append(e.Futures[0].Days, weather.Day{TmaxC: nightC + rangeC, TminC: nightC, RadMJ: 15, WindMS: 2})
	}
}
