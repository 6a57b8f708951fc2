package stand

import (
	"slices"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// TestWindowsSeattle compares edges with the sowing season of the maritime
// Pacific Northwest (common practice of its gardeners; three weeks' doubt,
// for printed calendars of one place differ by as much). The days that work
// reach to the season's ends, the best days not beyond them, and what works
// sooner still does so by six weeks at most.
func TestWindowsSeattle(t *testing.T) {
	const tolDays, aheadDays = 23, 42 // an end lies half a step beyond the last day tried
	a := NewAir(seattle(t, 60))
	md := func(m time.Month, d int) int { return cal.Of(2018, m, d).YearDay() }
	for _, tt := range []struct {
		crop     crop.ID
		way      crop.Way
		from, to int // day of the year; 0 = not checked
		limit    string
	}{
		{"tomato-cherry", crop.SetOut, md(5, 10), md(6, 15), ""},
		{"snap-bean-bush", crop.Sow, md(5, 10), md(7, 20), NotRipe},
		{"sweet-corn", crop.Sow, md(5, 1), md(6, 15), NotRipe},
		{"winter-squash", crop.SetOut, md(5, 15), md(6, 15), NotRipe},
		{"pea-shelling", crop.Sow, md(2, 20), 0, ""},
		{"runner-bean", crop.Sow, md(5, 10), md(7, 10), NotRipe},
		{"cucumber", crop.SetOut, md(5, 25), md(7, 1), ""},
		{"carrot", crop.Sow, md(3, 20), md(7, 31), ""},
		{"lettuce-leaf", crop.Sow, md(3, 15), md(8, 31), ""},
		{"kale", crop.Sow, md(3, 15), md(8, 10), ""},
		{"leek", crop.SetOut, md(3, 20), md(8, 1), ""},
		{"garlic", crop.Plant, md(10, 1), 0, ""},
		{"potato", crop.Plant, md(3, 17), 0, ""},
		{"broccoli", crop.SetOut, md(3, 20), md(8, 15), ""},
	} {
		c := fromBook(t, tt.crop)
		var w Window
		for _, x := range a.Windows(c, 5) {
			if x.Way == tt.way {
				w = x
			}
		}
		if len(w.Works) == 0 {
			t.Errorf("%s, %s: no window", tt.crop, tt.way)
			continue
		}
		first, last := w.Works[0], w.Works[len(w.Works)-1]
		if d := first.From.YearDay() - tt.from; tt.from > 0 && (d > tolDays || d < -aheadDays) {
			t.Errorf("%s, %s: works from %s, want about day %d", tt.crop, tt.way, first.From.Short(), tt.from)
		}
		if d := last.To.YearDay() - tt.to; tt.to > 0 && d < -tolDays {
			t.Errorf("%s, %s: works to %s, want about day %d", tt.crop, tt.way, last.To.Short(), tt.to)
		}
		if len(w.Best) == 0 {
			t.Errorf("%s, %s: no best days", tt.crop, tt.way)
			continue
		}
		if d := w.Best[0].From; tt.from > 0 && d.YearDay() < tt.from-tolDays {
			t.Errorf("%s, %s: best from %s, want about day %d", tt.crop, tt.way, d.Short(), tt.from)
		}
		if d := w.Best[len(w.Best)-1].To; tt.to > 0 && d.YearDay() > tt.to+tolDays {
			t.Errorf("%s, %s: best to %s, want about day %d", tt.crop, tt.way, d.Short(), tt.to)
		}
		if tt.limit != "" && last.LimitTo != tt.limit {
			t.Errorf("%s, %s: ended by %q, want %q", tt.crop, tt.way, last.LimitTo, tt.limit)
		}
	}
}

// TestSpinachHasTwoSeasons: long days part spring from autumn sowings of the
// middle variety; between them kinds slow to bolt are sown (common practice).
func TestSpinachHasTwoSeasons(t *testing.T) {
	w := NewAir(seattle(t, 60)).Windows(fromBook(t, "spinach"), 5)[0]
	kindOn := func(d cal.Day) Kind {
		for _, x := range w.Tries {
			if abs(x.Day.YearDay()-d.YearDay()) <= 2 {
				return x.Kind
			}
		}
		t.Fatalf("no start tried near %s", d.Short())
		return ""
	}
	if d := w.Best[0].To.YearDay() - cal.Of(2018, 4, 15).YearDay(); abs(d) > 15 {
		t.Errorf("spring spinach is best to %s, want mid-April (common practice)", w.Best[0].To.Short())
	}
	for _, tt := range []struct {
		month, day int
		kind       Kind
	}{{4, 15, ""}, {5, 20, SlowBolt}, {6, 20, SlowBolt}, {8, 25, ""}} {
		if got := kindOn(cal.Of(2030, time.Month(tt.month), tt.day)); got != tt.kind {
			t.Errorf("spinach sown on %d/%d works with %q, want %q (common practice)", tt.day, tt.month, got, tt.kind)
		}
	}
	for _, k := range w.Kinds {
		if k.Kind == SlowBolt && k.From.YearDay() < cal.Of(2018, 4, 25).YearDay() {
			t.Errorf("kinds of spinach %+v, want kinds slow to bolt from May on", w.Kinds)
		}
	}
}

// TestPakChoiInLongDays: sown in May and June for the longest days pak choi of
// the middle kind runs to seed before it is cut, and kinds slow to bolt are sown;
// from the turn of July on any kind does (common practice: from late July).
func TestPakChoiInLongDays(t *testing.T) {
	a := NewAir(seattle(t, 60))
	w := a.Windows(fromBook(t, "pak-choi"), 5)[0]
	for _, tt := range []struct {
		month, day int
		kind       Kind
		best       bool
	}{{5, 20, SlowBolt, false}, {6, 10, SlowBolt, false}, {7, 25, "", true}, {8, 10, "", true}} {
		x := slices.MinFunc(w.Tries, func(a, b Try) int {
			d := cal.Of(2018, time.Month(tt.month), tt.day).YearDay()
			return abs(a.Day.YearDay()-d) - abs(b.Day.YearDay()-d)
		})
		if !x.Works || x.Kind != tt.kind || x.Best != tt.best {
			t.Errorf("pak choi sown on %d/%d: works %v with %q, best %v; want it to work with %q, best %v", tt.day, tt.month, x.Works, x.Kind, x.Best, tt.kind, tt.best)
		}
	}
	t.Logf("pak choi works %+v, best %+v", w.Works, w.Best)
}

// TestQuickKinds: where summers are short for a crop the window is that of
// quick kinds and says so; where the middle one does its best nearby it is not widened.
func TestQuickKinds(t *testing.T) {
	w := calendarAirOf(t, "napa").Table(fromBook(t, "melon"), nil).Window(crop.Sow, 5)
	if len(w.Kinds) == 0 || w.Kinds[0].Kind != Quick || w.Kinds[0].Days != 80 {
		t.Errorf("melons of cool nights: %+v, want quick kinds of 80 days ([UFSP103], the low end)", w.Kinds)
	}
	for _, id := range []crop.ID{"snap-bean-bush", "broccoli", "carrot"} {
		c := fromBook(t, id)
		for _, w := range NewAir(seattle(t, 60)).Windows(c, 5) {
			if len(w.Best) == 1 && len(w.Works) == 1 && slices.ContainsFunc(w.Kinds, func(k KindRange) bool { return k.Kind == Quick }) {
				t.Errorf("%s, %s: best days %+v, yet quick kinds %+v", id, w.Way, w.Best, w.Kinds)
			}
		}
	}
}

// TestYoungLeaves: leaves cut whole may be sown later where they are cut young;
// what is plucked for months, or is no leaf, may not.
func TestYoungLeaves(t *testing.T) {
	a := calendarAirOf(t, "london")
	for _, tt := range []struct {
		id    crop.ID
		young bool
	}{{"arugula", true}, {"mustard-greens", true}, {"pak-choi", true}, {"kale", false}, {"parsley", false}, {"radish", false}} {
		w := a.Table(fromBook(t, tt.id), nil).Window(crop.Sow, 5)
		if got := slices.ContainsFunc(w.Kinds, func(k KindRange) bool { return k.Kind == CutYoung }); got != tt.young {
			t.Errorf("%s by the Thames: cut young %v in %+v, want %v ([COOKHAM]: rocket in three to four weeks)", tt.id, got, w.Kinds, tt.young)
		}
	}
}

// TestPeasHaveTwoSeasons: where summers are hot, sowings of late spring flower
// in the heat; by a mild coast they only give less.
func TestPeasHaveTwoSeasons(t *testing.T) {
	w := calendarAirOf(t, "minneapolis").Windows(fromBook(t, "pea-shelling"), 5)[0]
	if w.Open(cal.Of(2030, 5, 25)) || w.Open(cal.Of(2030, 6, 25)) || !w.Open(cal.Of(2030, 4, 15)) || !w.Open(cal.Of(2030, 7, 25)) {
		t.Errorf("peas inland at 45 N work %+v, want April and late July but not late May or June (common practice)", w.Works)
	}
	a := NewAir(seattle(t, 60))
	w = a.Windows(fromBook(t, "pea-shelling"), 5)[0]
	if !w.Open(cal.Of(2030, 3, 10)) || !w.Open(cal.Of(2030, 7, 15)) {
		t.Errorf("peas work %+v, want spring and July (common practice)", w.Works)
	}
	tab := a.Table(fromBook(t, "pea-shelling"), nil)
	kg := func(m time.Month, d int) float64 {
		sum := 0.0
		for _, o := range tab.Grow(crop.Sow, cal.Of(a.env.Start.Year(), m, d)).Outcomes {
			sum += float64(o.Total)
		}
		return sum
	}
	if march, june := kg(3, 10), kg(6, 5); june > 0.7*march {
		t.Errorf("peas sown on 5 June give %.2f of those of 10 March, want less than 0.7: heat drops their flowers", june/march)
	}
	w = a.Windows(fromBook(t, "fava-bean"), 5)[0]
	if w.Open(cal.Of(2030, 6, 15)) || w.Open(cal.Of(2030, 7, 20)) || !w.Open(cal.Of(2030, 2, 20)) || !w.Open(cal.Of(2030, 10, 25)) {
		t.Errorf("favas work %+v, want late winter and autumn only (common practice)", w.Works)
	}
}

// TestQuickVarieties: inland at 45 N the middle melon from seed hardly has
// time, and its quick varieties are told; beets have all they need.
func TestQuickVarieties(t *testing.T) {
	a := calendarAirOf(t, "minneapolis")
	for id, want := range map[crop.ID]int{"melon": 80, "pumpkin": 85, "beet": 0, "snap-bean-bush": 0} {
		if w := a.Windows(fromBook(t, id), 5)[0]; w.Way != crop.Sow || w.Quick != want {
			t.Errorf("%s, %s: quick varieties of %d days, want %d (the book's lower end where the middle has no best days)", id, w.Way, w.Quick, want)
		}
	}
}

// TestBestWithinWorks: best days are among those that work, and every range
// of a crop with edges says what bounds it.
func TestBestWithinWorks(t *testing.T) {
	a := NewAir(maritime(40))
	seen := 0
	for _, c := range book(t) {
		for _, w := range a.Windows(c, 7) {
			for _, r := range w.Best {
				seen++
				for d := r.From; d <= r.To; d += 7 {
					if !w.Open(d) {
						t.Errorf("%s, %s: %s is best but does not work", w.Crop, w.Way, d.Short())
					}
				}
			}
			for _, r := range w.Works {
				if !w.AllYear && (r.LimitFrom == "" || r.LimitTo == "") {
					t.Errorf("%s, %s: a range without its limits: %+v", w.Crop, w.Way, r)
				}
			}
			if len(w.Picks) != 3*len(w.Works) {
				t.Errorf("%s, %s: %d picks for %d ranges", w.Crop, w.Way, len(w.Picks), len(w.Works))
			}
		}
	}
	if seen < 40 {
		t.Fatalf("only %d best ranges", seen)
	}
}

// TestAllYear: where every day is alike, what grows there is sown all year, and
// no edge is told.
func TestAllYear(t *testing.T) {
	e := openBed(0)
	e.Start = monday(testStart)
	e.Futures = sineFutures(12, testDays, e.Start, 0, 17, 0, 9)
	a := NewAir(e)
	for _, id := range []crop.ID{"lettuce-leaf", "carrot", "chard"} {
		w := a.Windows(fromBook(t, id), 7)[0]
		if !w.AllYear || len(w.Works) != 1 || w.Works[0].LimitFrom != "" || w.Works[0].LimitTo != "" {
			t.Errorf("%s at the equator at 17 °C: %+v, want all year without edges", id, w.Works)
		}
	}
	if w := NewAir(seattle(t, 20)).Windows(fromBook(t, "lettuce-leaf"), 7)[0]; w.AllYear {
		t.Error("lettuce is sown outdoors all year in Seattle")
	}
}

func TestTidy(t *testing.T) {
	bits := func(s string) []bool {
		b := make([]bool, len(s))
		for i := range s {
			b[i] = s[i] == '1'
		}
		return b
	}
	for _, tt := range []struct{ in, want string }{
		{"0001101100", "0001111100"}, // a gap of one closes
		{"1100000001", "1100000001"}, // round the new year
		{"1011110000", "1111110000"},
		{"1000011110000000", "0000011110000000"}, // a speck beside a range goes
		{"0000100000", "0000100000"},             // a lone speck stays
		{"1111011111", "1111111111"},
		{"0000000000", "0000000000"},
	} {
		got := bits(tt.in)
		tidy(got, 2)
		for i, w := range bits(tt.want) {
			if got[i] != w {
				t.Errorf("tidy(%s) differs from %s at %d", tt.in, tt.want, i)
				break
			}
		}
	}
	if s := spans(bits("1100000001")); len(s) != 1 || s[0] != [2]int{9, 1} {
		t.Errorf("the range round the new year reads %v", s)
	}
}
