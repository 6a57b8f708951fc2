package reckon

import (
	"context"
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// smallInputs are an invented garden that is quick to plan: two beds, four
// crops, forty weeks, on made months. lat turns it south with its months.
func smallInputs(t testing.TB, lat float64) *Inputs {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	bed := func(id, name string, y, long, wide, deep float64) garden.Space {
		sp := garden.Space{ID: garden.SpaceID(id), Name: name, Kind: garden.RaisedBed, TallOK: true, Y: y}
		sp.Length.M, sp.Width.M, sp.Depth.M = long, wide, deep
		return sp
	}
	g := &garden.Garden{Name: "Two beds", Spaces: []garden.Space{bed("front", "Front bed", 0, 3, 1.2, 0.35), bed("back", "Back bed", 5, 2, 1, 0.3)}}
	g.Place.LatDeg, g.Place.LonDeg = lat, 8
	g.Wants = []garden.Want{
		{Food: "salad", Meals: 3, Liking: 1, Crops: []garden.CropID{"lettuce-leaf", "spinach"}},
		{Food: "roots", Meals: 2, Liking: 1, Crops: []garden.CropID{"carrot", "beet"}},
	}
	g.Seeds = []garden.Seed{{Crop: "carrot", Variety: "Long Tom"}}
	n := &weather.Normals{Name: "made months", Site: weather.Site{LatDeg: lat, LonDeg: 8, ElevM: 100}}
	for k, mean := range [12]float64{2, 3, 6, 10, 14, 17, 19, 19, 15, 10, 6, 3} {
		m := k
		if lat < 0 {
			m = (k + 6) % 12
		}
		n.TmaxC[m], n.TminC[m], n.RainMM[m] = mean+5, mean-5, 60
	}
	date := cal.Of(2015, 4, 6)
	if lat < 0 {
		date = cal.Of(2015, 10, 5)
	}
	state := ledger.ReplayOver(FromFile(g), nil)
	return &Inputs{Garden: g, Book: book, Normals: n, Date: date, Weeks: 40, Futures: 20, Seed: 1, Work: 200_000, State: &state}
}

// smallDesk is a crop desk over a small garden with own figures.
func smallDesk(t testing.TB, in *Inputs, figures ...ledger.OwnFigure) *CropDesk {
	t.Helper()
	base := in.Book
	in.State.Figures = nil
	for i, f := range figures {
		in.State.Figures = append(in.State.Figures, ledger.FigureNote{Event: fmt.Sprintf("event-%d", i+1), On: in.Date, OwnFigure: f})
	}
	own, _ := OwnBook(base, in.State.Figures)
	with := *in
	with.Book = own
	g, err := NewGround(&with)
	if err != nil {
		t.Fatal(err)
	}
	return NewCropDesk(&with, base, g, nil, nil)
}

func days(crop, key string, value float64) ledger.OwnFigure {
	return ledger.OwnFigure{Crop: crop, Figure: key, Value: value, Unit: "days", Why: "a test"}
}

// TestDeskAndCommandAgree: the page's windows of a plain open bed are those of
// bedweek windows.
func TestDeskAndCommandAgree(t *testing.T) {
	in := smallInputs(t, 47)
	d := smallDesk(t, in)
	for _, id := range []string{"carrot", "garlic", "tomato", "kale"} {
		c, _ := in.Book.Crop(crop.ID(id))
		want, _, err := OpenBedWindows([]*crop.Crop{c}, in.Record, in.Normals, in.site())
		if err != nil {
			t.Fatal(err)
		}
		v, ok, err := d.View(id, CropAsk{Space: OpenBedID})
		if !ok || err != nil || len(v.Ways) != len(want) {
			t.Fatalf("%s: %v %v, %d ways, want %d", id, ok, err, len(v.Ways), len(want))
		}
		for i, w := range v.Ways {
			if !reflect.DeepEqual(w.Window, want[i]) {
				t.Errorf("%s, %s: the page says %s, the command %s", id, w.Way, windowSays(w.Window), windowSays(want[i]))
			}
		}
	}
}

// TestTriesTellTheRanges: what a window says of ranges is what its single days
// say, and every day outside says why.
func TestTriesTellTheRanges(t *testing.T) {
	in := smallInputs(t, 47)
	d := smallDesk(t, in)
	ranges := 0
	for _, c := range in.Book.Crops {
		ws, err := d.windows(c, openYard)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range ws {
			for _, try := range w.Tries {
				if try.Works != w.Open(try.Day) {
					t.Errorf("%s, %s, %s: works %v, the ranges say %v", c.ID, w.Way, try.Day.Short(), try.Works, w.Open(try.Day))
				}
				if try.Works == (try.Limit != "") || try.Best && !try.Works && len(w.Works) == 0 || try.Of20 < try.Best20 {
					t.Errorf("%s, %s, %s: works %v, best %v, limit %q, %d and %d of 20", c.ID, w.Way, try.Day.Short(), try.Works, try.Best, try.Limit, try.Of20, try.Best20)
				}
			}
			ranges += len(w.Works)
		}
	}
	if ranges < 100 {
		t.Fatalf("only %d ranges were looked at", ranges)
	}
}

// TestQuickVarietiesAreTold: where the middle varieties have no best days, the
// words name the quick ones, and else they do not.
func TestQuickVarietiesAreTold(t *testing.T) {
	w := stand.Window{Way: crop.Sow, Quick: 80, Works: []stand.Range{{From: cal.Of(2030, 5, 29), To: cal.Of(2030, 6, 7), LimitFrom: stand.SoilCold, LimitTo: stand.NotRipe}}}
	if s := windowSays(w); !strings.HasSuffix(s, "Quick ones, of about 80 days, have more time.") {
		t.Errorf("the words end without the quick varieties: %q", s)
	}
	if w.Quick = 0; strings.Contains(windowSays(w), "Quick") {
		t.Errorf("quick varieties are told where there are none: %q", windowSays(w))
	}
}

// TestKindsAreTold: days on which only one kind of variety works are told with
// the kind, and quick kinds are not told twice.
func TestKindsAreTold(t *testing.T) {
	works := stand.Range{From: cal.Of(2030, 3, 1), To: cal.Of(2030, 8, 31), LimitFrom: stand.SoilCold, LimitTo: stand.ShortDay}
	w := stand.Window{Way: crop.Sow, Quick: 80, Works: []stand.Range{works}, Kinds: []stand.KindRange{
		{Kind: stand.SlowBolt, Days: 46, From: cal.Of(2030, 5, 4), To: cal.Of(2030, 6, 22)},
		{Kind: stand.CutYoung, Days: 28, From: cal.Of(2030, 8, 10), To: cal.Of(2030, 8, 31)},
	}}
	for _, want := range []string{
		"4 May to 22 June only kinds slow to bolt work.",
		"10 August to 31 August only young leaves will come of it: sow thickly and cut after about 28 days.",
		"Quick ones, of about 80 days",
	} {
		if s := windowSays(w); !strings.Contains(s, want) {
			t.Errorf("the words lack %q: %q", want, s)
		}
	}
	c := &crop.Crop{Name: "test leaf"}
	may, april, august := cal.Of(2030, 5, 10), cal.Of(2030, 4, 10), cal.Of(2030, 8, 12)
	for day, want := range map[cal.Day]string{
		may:    "Sow now, until about 22 June, but only kinds slow to bolt; works",
		april:  "Sow now, until about 3 May; works",
		august: "Sow now, until about 31 August, sown thickly and cut young; works",
	} {
		if s := openSays(c, CropWindow{Verb: "sow", Window: w}, day, day, stand.Try{Day: day, Of20: 18}); !strings.HasPrefix(s, want) {
			t.Errorf("on %s the answer is %q, want %q", day.Short(), s, want)
		}
	}
	if s := middleSays(w.KindOn(may)) + middleSays(w.KindOn(april)); s != " That is the middle variety; on this day only kinds slow to bolt work." {
		t.Errorf("a start in May and one in April say %q", s)
	}
	w.Kinds = []stand.KindRange{{Kind: stand.Quick, Days: 80, From: works.From, To: works.To}}
	if s := windowSays(w); !strings.Contains(s, "Then only quick kinds work, of about 80 days.") || strings.Contains(s, "Quick ones") {
		t.Errorf("want quick kinds told once: %q", s)
	}
}

// TestWaitingIsTold: where a window opens while in some years it is still too
// cold, the answer says so beside its count.
func TestWaitingIsTold(t *testing.T) {
	c := &crop.Crop{Name: "test bean"}
	day := cal.Of(2030, 5, 20)
	w := CropWindow{Verb: "sow", Window: stand.Window{Works: []stand.Range{{From: day, To: day + 30}}}}
	for wait, want := range map[int]bool{8: true, 0: false} {
		s := openSays(c, w, day, day-20, stand.Try{Day: day, Of20: 11, Wait20: wait})
		if strings.Contains(s, "in 8 it is still too cold that day") != want || strings.Contains(s, "too cold") != want {
			t.Errorf("with %d years of waiting the answer is %q", wait, s)
		}
	}
}

// TestOwnFigureMovesEverything: a figure of one's own moves window, start,
// menu and the words; taking it back brings all of it back.
func TestOwnFigureMovesEverything(t *testing.T) {
	in := smallInputs(t, 47)
	plain := smallDesk(t, in)
	own := smallDesk(t, in, days("carrot", "days-from-sow", 130))
	a, _, _ := plain.View("carrot", CropAsk{Space: "front", Way: crop.Sow, Week: in.Date})
	b, _, _ := own.View("carrot", CropAsk{Space: "front", Way: crop.Sow, Week: in.Date})
	first := func(v *CropView) cal.Day { return v.Start.Threads[0].First }
	if first(b) < first(a)+30 {
		t.Errorf("carrots of 130 days are first picked %s, the book's %s: want a month more", first(b), first(a))
	}
	if w := windowSays(b.Ways[0].Window); w == windowSays(a.Ways[0].Window) {
		t.Errorf("the window did not move: %s", w)
	}
	if len(b.Own) != 1 || !b.Own[0].Stands || reflect.DeepEqual(b.Own[0].Before, b.Own[0].After) || len(b.Own[0].After) == 0 {
		t.Errorf("the effect is not told: %+v", b.Own)
	}
	row := b.Figures[slices.IndexFunc(b.Figures, func(r FigureRow) bool { return r.Key == "days-from-sow" })]
	c, _ := in.Book.Crop("carrot")
	if !row.Mine || row.Value != "130 days" || !strings.HasPrefix(row.Book, amount(c.DaysFromSow.Value, "days")) {
		t.Errorf("mine beside book: %+v", row)
	}
	if len(plain.menu) == 0 || reflect.DeepEqual(plain.menu, own.menu) {
		t.Error("the menu of starts did not change")
	}
	back := smallDesk(t, in)
	if !sameMenu(plain.menu, back.menu) {
		t.Error("taken back, the menu is not as before")
	}
}

func sameMenu(a, b []Entry) bool {
	return slices.EqualFunc(a, b, func(x, y Entry) bool {
		x.Crop, y.Crop = nil, nil
		return reflect.DeepEqual(x, y)
	})
}

// TestRegrownIsGroundAnew: growing only the changed crops gives the same menu
// as making the ground anew, and leaves the others untouched.
func TestRegrownIsGroundAnew(t *testing.T) {
	in := smallInputs(t, 47)
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	own, faults := in.Book.WithChanges([]crop.Change{{Crop: "carrot", Variety: "Long Tom", Figure: "days-from-sow", Value: 100}, {Crop: "beet", Figure: "yield-kg", Value: 0.3}})
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	with := *in
	with.Book = own
	re, err := g.Regrown(&with)
	if err != nil {
		t.Fatal(err)
	}
	anew, err := NewGround(&with)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(re.Menu, anew.Menu) {
		t.Error("regrown and made anew differ")
	}
	changed := map[crop.ID]bool{}
	for i := range re.Menu {
		e := re.Menu[i]
		if !slices.ContainsFunc(g.Menu, func(o Entry) bool {
			return o.Crop == e.Crop && o.Week == e.Week && o.Class == e.Class && o.Way == e.Way
		}) {
			changed[e.Crop.ID] = true
		}
	}
	if !changed["carrot"] || !changed["beet"] || len(changed) != 2 {
		t.Errorf("crops grown anew: %v, want carrot (its lot is Long Tom) and beet", changed)
	}
}

// TestMenuIsTheSameWithAnyWorkers: the numbers of growth do not depend on how
// many processors made them.
func TestMenuIsTheSameWithAnyWorkers(t *testing.T) {
	in := smallInputs(t, 47)
	var first *Ground
	for _, n := range []int{1, 2, 3, 8} {
		in.Workers = n
		g, err := NewGround(in)
		if err != nil {
			t.Fatal(err)
		}
		if first == nil {
			first = g
			if len(g.Menu) < 50 {
				t.Fatalf("only %d starts", len(g.Menu))
			}
		}
		if !reflect.DeepEqual(g.Menu, first.Menu) {
			t.Errorf("with %d workers the menu differs", n)
		}
	}
}

// TestReasonsSayMine: a planting reckoned with an own figure says so, with the
// book's beside it.
func TestReasonsSayMine(t *testing.T) {
	in := smallInputs(t, 47)
	book := in.Book
	in.Book, _ = OwnBook(book, []ledger.FigureNote{{OwnFigure: days("carrot", "days-from-sow", 60)}})
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	r, err := Reckon(context.Background(), in, g)
	if err != nil {
		t.Fatal(err)
	}
	said := 0
	for _, sp := range r.Day.Spaces {
		for _, l := range sp.Lines {
			has := strings.Contains(strings.Join(l.Reasons, " "), "Your own figure: days from sowing to the first pick 60 days (book ")
			if has != (l.CropID == "carrot") {
				t.Errorf("%s: %v", l.CropID, l.Reasons)
			}
			if has {
				said++
			}
		}
	}
	if said == 0 {
		t.Error("no carrots are planned, so nothing was tested")
	}
	in.Book = book
	g2, err := g.Regrown(in)
	if err != nil {
		t.Fatal(err)
	}
	before, err := Reckon(context.Background(), in, g2)
	if err != nil {
		t.Fatal(err)
	}
	e := NewPlanEffect(before, r, "carrot")
	if len(e.Before) == 0 && len(e.After) == 0 || e.WorthBefore == e.WorthAfter {
		t.Errorf("the effect on the plan: %+v", e)
	}
	if same := NewPlanEffect(r, r, "carrot"); !same.Same || same.Others != 0 || same.Says() != "The plan plants it as before. Nothing else changed either." {
		t.Errorf("a plan against itself: %+v, %s", same, same.Says())
	}
}

// TestReadFigure: units are taken as people write them, and what no plant can
// be is refused with what one can.
func TestReadFigure(t *testing.T) {
	d := smallDesk(t, smallInputs(t, 47))
	for _, tt := range []struct {
		key, value, low, high string
		want                  float64
		field, says           string
	}{
		{"days-from-sow", "80", "", "", 80, "", ""},
		{"days-from-sow", "12 weeks", "", "", 84, "", ""},
		{"days-from-sow", "80 days", "70", "95 days", 80, "", ""},
		{"base", "39 F", "", "", 3.89, "", ""},
		{"base", "4,5", "", "", 4.5, "", ""},
		{"frost-kill", "−8", "", "", -8, "", ""},
		{"spacing-m", "2 in", "", "", 0.0508, "", ""},
		{"spacing-m", "8 cm", "", "", 0.08, "", ""},
		{"sow-depth-mm", "1/2 in", "", "", 12.7, "", ""},
		{"yield-kg", "100 g", "", "", 0.1, "", ""},
		{"sun-min-h", "3 h", "", "", 3, "", ""},
		{"days-from-sow", "", "", "", 0, "value", "Write a number"},
		{"days-from-sow", "soon", "", "", 0, "value", "no number"},
		{"days-from-sow", "2", "", "", 0, "value", "2 days is not possible. A plant can have 5 to 500 days."},
		{"days-from-sow", "80 m", "", "", 0, "value", "not its unit"},
		{"spacing-m", "30", "", "", 0, "value", "30 m is not possible. A plant can have 0.01 to 5 m."},
		{"spacing-m", "18-24 in", "", "", 0, "value", "not one length"},
		{"days-from-sow", "80", "95", "70", 0, "low", "Swap them"},
		{"days-from-sow", "60", "70", "95", 0, "value", "between your least and your most, 70 days and 95 days"},
		{"days-from-sow", "80", "70", "", 0, "high", "Give the most too"},
		{"days-from-sow", "80", "70", "900", 0, "high", "900 days is not possible"},
		{"base", "19", "", "", 0, "value", "must lie between “warmth below which it stands still” and"},
		{"colour", "4", "", "", 0, "figure", "Choose a figure"},
	} {
		f, faults := d.ReadFigure(FigureAsk{Crop: "carrot", Figure: tt.key, Value: tt.value, Low: tt.low, High: tt.high, Why: "notes"})
		if tt.field == "" {
			if len(faults) > 0 || f.Value != tt.want {
				t.Errorf("%s %q: %v %v, want %v", tt.key, tt.value, f.Value, faults, tt.want)
			}
			continue
		}
		if !strings.Contains(faults[tt.field], tt.says) {
			t.Errorf("%s %q %q %q: %v, want at %s: %s", tt.key, tt.value, tt.low, tt.high, faults, tt.field, tt.says)
		}
	}
}

// TestFigureWordsForEveryKey: no figure is shown by its key.
func TestFigureWordsForEveryKey(t *testing.T) {
	for _, k := range crop.FigureKeys() {
		if crop.KeyWords(k.Name) == "" {
			t.Errorf("%s has no words", k.Name)
		}
	}
	if crop.KeyWords("colour") != "" {
		t.Error("words for no key")
	}
}

// TestGermGapsStayGaps: what the table does not know is not 0 %.
func TestGermGapsStayGaps(t *testing.T) {
	in := smallInputs(t, 47)
	own, gaps := 0, 0
	for _, c := range in.Book.Crops {
		rows, says := germRows(c)
		if c.GermTable == "" && !c.EmergeDays.Known() {
			if rows != nil {
				t.Errorf("%s has rows from nothing", c.ID)
			}
			continue
		}
		for _, r := range rows {
			if r.PctKnown && !c.GermOwn {
				t.Errorf("%s at %g °C: the percent of a relation is told as its own", c.ID, r.SoilC)
			}
			if !r.PctKnown {
				gaps++
				if r.Pct != 0 && c.GermOwn {
					t.Errorf("%s at %g °C: not known and yet %g", c.ID, r.SoilC, r.Pct)
				}
			} else {
				own++
			}
		}
		if !c.GermOwn && !strings.Contains(says, "not known") {
			t.Errorf("%s: %s", c.ID, says)
		}
	}
	if own < 100 || gaps < 50 {
		t.Errorf("%d figures and %d gaps: too few to judge", own, gaps)
	}
}

// TestEveryCropHasAPage: each crop answers in a sentence, in the north and in
// the south, with a start to follow or a reason why not.
func TestEveryCropHasAPage(t *testing.T) {
	for _, lat := range []float64{47, -36} {
		in := smallInputs(t, lat)
		d := smallDesk(t, in)
		for _, c := range in.Book.Crops {
			v, ok, err := d.View(string(c.ID), CropAsk{})
			if !ok || err != nil {
				t.Fatalf("%s: %v %v", c.ID, ok, err)
			}
			if !strings.HasSuffix(v.Says, ".") || len(v.Figures) < 15 || (v.Start == nil) == (v.StartNot == "") {
				t.Errorf("%s: %q, %d figures, start %v, %q", c.ID, v.Says, len(v.Figures), v.Start, v.StartNot)
			}
			if v.Start != nil {
				n := 0
				for _, f := range v.Start.Fates {
					n += f.Of20
				}
				if n != 20 || len(v.Start.Threads) != 20 {
					t.Errorf("%s: fates of %d, threads of %d, want 20", c.ID, n, len(v.Start.Threads))
				}
			}
		}
	}
}

// TestFindByTypedName takes other names, parts and slips.
func TestFindByTypedName(t *testing.T) {
	d := smallDesk(t, smallInputs(t, 47))
	if got, _ := d.Find(" Rocket "); got != "arugula" {
		t.Errorf("rocket is %q", got)
	}
	if exact, like := d.Find("onio"); exact != "" || len(like) < 4 {
		t.Errorf("onio: %q, %d like it", exact, len(like))
	}
	if _, like := d.Find("carrrot"); len(like) != 1 || like[0].ID != "carrot" {
		t.Errorf("carrrot: %v", like)
	}
	if exact, like := d.Find("qqqqqqqq"); exact != "" || like != nil {
		t.Errorf("nonsense: %q %v", exact, like)
	}
}

// TestOwnFigureOfAVariety holds for that variety alone, and a figure the book
// no longer takes is named and left out.
func TestOwnFigureOfAVariety(t *testing.T) {
	in := smallInputs(t, 47)
	tom := days("carrot", "days-from-sow", 90)
	tom.Variety = "Long Tom"
	odd := ledger.OwnFigure{Crop: "carrot", Figure: "spacing-m", Value: 30, Unit: "m"}
	d := smallDesk(t, in, tom, odd)
	if len(d.Faults) != 1 || !strings.Contains(d.Faults[0], "impossible") {
		t.Errorf("faults: %v", d.Faults)
	}
	a, _, _ := d.View("carrot", CropAsk{Variety: "Long Tom"})
	b, _, _ := d.View("carrot", CropAsk{})
	if a.Crop.DaysFromSow.Value != 90 || b.Crop.DaysFromSow.Mine() || a.Crop.SpacingM.Mine() {
		t.Errorf("Long Tom %v, any %v", a.Crop.DaysFromSow, b.Crop.DaysFromSow)
	}
	if !slices.Contains(b.Varieties, "Long Tom") {
		t.Errorf("varieties: %v", b.Varieties)
	}
	for _, e := range d.menu {
		if e.Crop.ID == "carrot" && e.Crop.DaysFromSow.Value != 90 {
			t.Fatal("the lot at hand is Long Tom, and the plan grows another")
		}
	}
}
