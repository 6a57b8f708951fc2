package reckon

import (
	"encoding/json"
	"math"
	"reflect"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/water"
)

func dryOf(t *testing.T, in *Inputs, p *Place, ask DryAsk) *Dryness {
	t.Helper()
	d, err := Dry(in, p, ask)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func dryInputs(t testing.TB, c demoCase) (*Inputs, *Place) {
	t.Helper()
	in := demoInputs(t, c)
	in.Weeks = 12
	p, err := NewPlace(in)
	if err != nil {
		t.Fatal(err)
	}
	return in, p
}

func (d *Dryness) row(t *testing.T, space string) DryRow {
	t.Helper()
	for _, r := range d.Rows {
		if r.Space == space {
			return r
		}
	}
	t.Fatalf("no row for %s", space)
	return DryRow{}
}

// What a gardener would say of late August in a dry summer, and what no
// answer may break. Common practice where no source is named.
func TestWhoRunsDryFirst(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	d := dryOf(t, in, p, DryAsk{FromHour: 7, NextH: 24, AwayDays: 10})
	last, standing := -1.0, 0
	for _, r := range d.Rows {
		a := r.Answer
		if r.Empty {
			continue
		}
		standing++
		if len(a.Hours) != 20 || len(a.DaysOut) != 20 {
			t.Errorf("%s: %d hours, %d days away, want twenty of each", r.Space, len(a.Hours), len(a.DaysOut))
		}
		if a.Dry.Likely < last {
			t.Errorf("%s: dry after %.0f h stands below one of %.0f h", r.Space, a.Dry.Likely, last)
		}
		last = a.Dry.Likely
		if a.Dry.Early > a.Dry.Likely || a.Dry.Likely > a.Dry.Late || a.DrinksL.Likely <= 0 || a.HoldsL <= 0 || a.LackL.Early < 0 {
			t.Errorf("%s: %+v", r.Space, a)
		}
		if (a.GiveL > 0) != (a.ByNext > 2) {
			t.Errorf("%s: gives %.1f L with %d of 20 dry by the next visit", r.Space, a.GiveL, a.ByNext)
		}
		if a.HasLine && math.Abs(a.Minutes/60*water.LineRate(dripLH, dripEveryM, dripEveryM)*areaOf(in, r.Space)-a.GiveL) > 1e-6 {
			t.Errorf("%s: %.0f minutes do not give %.1f L", r.Space, a.Minutes, a.GiveL)
		}
		for _, w := range []string{r.When, r.Give, r.Out, r.Look} {
			for _, s := range strings.Split(w, ". ") {
				if n := len(strings.Fields(s)); n > 24 {
					t.Errorf("%s: a sentence of %d words: %q", r.Space, n, s)
				}
			}
		}
	}
	if standing < 8 {
		t.Fatalf("only %d spaces hold anything in August", standing)
	}
	bed, rail := d.row(t, "long-bed"), d.row(t, "rail-south")
	if !rail.Empty && !bed.Empty && rail.Answer.Dry.Likely > bed.Answer.Dry.Likely {
		t.Errorf("the rail dries after %.0f h, the deep bed after %.0f h; rails dry first (common practice)", rail.Answer.Dry.Likely, bed.Answer.Dry.Likely)
	}
}

func areaOf(in *Inputs, space string) float64 {
	for _, s := range in.Garden.Spaces {
		if string(s.ID) == space {
			return s.AreaM2()
		}
	}
	return 0
}

func TestDryIsTheSameAgain(t *testing.T) {
	in, p := dryInputs(t, demoCases()[0])
	ask := DryAsk{FromHour: 7, NextH: 24, AwayDays: 7}
	one := dryOf(t, in, p, ask)
	in.Workers = 1
	if two := dryOf(t, in, p, ask); !reflect.DeepEqual(one, two) {
		t.Error("the same garden, date and seed on one worker give another answer")
	}
}

func TestDryJSONHoldsNumbers(t *testing.T) {
	for _, c := range demoCases() {
		in, p := dryInputs(t, c)
		d := dryOf(t, in, p, DryAsk{FromHour: 7, NextH: 24, AwayDays: 7})
		b, err := json.Marshal(d.JSON())
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		var back DryJSON
		if err := json.Unmarshal(b, &back); err != nil {
			t.Fatal(err)
		}
		n := 0
		for _, s := range back.Spaces {
			if s.Empty {
				continue
			}
			n++
			if s.LitresADay == nil || s.Dry == nil || s.SurvivesDays == nil || len(s.Hours) != 20 || s.SurvivesDays.Late > 7 {
				t.Errorf("%s, %s: %+v", c.name, s.Space, s)
			}
			if (s.Water == "drip") != (s.Minutes != nil) || (s.Water == "reservoir") != (s.TankHours != nil) {
				t.Errorf("%s, %s: water %q with minutes %v and reservoir %v", c.name, s.Space, s.Water, s.Minutes, s.TankHours)
			}
		}
		if n == 0 {
			t.Errorf("%s: nothing stands anywhere", c.name)
		}
	}
}

// entryID is an id of the ledger's form.
func entryID(letter string) string { return strings.ToUpper(strings.Repeat(letter, 26)) }

// Looks move the answer the way they say, are kept in order, and one taken
// back counts for nothing.
func TestLooksMoveTheClock(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	var space string
	base := dryOf(t, in, p, DryAsk{FromHour: 7, NextH: 24})
	for _, r := range base.Rows {
		if space == "" && r.Way == water.Can && !r.Empty && r.Answer.Dry.Likely > 0 && r.Answer.Dry.Likely < 120 {
			space = r.Space
		}
	}
	if space == "" {
		t.Fatal("no space watered by can dries within five days in August")
	}
	event := func(id string, day int, looks string) ledger.Event {
		b, _ := json.Marshal(ledger.Look{Space: space, Looks: looks})
		return ledger.Event{ID: entryID(id), Device: "d", Kind: ledger.Looked, Version: 1, Happened: in.Date + cal.Day(day), Body: b}
	}
	back, _ := json.Marshal(ledger.Void{Event: entryID("b")})
	with := func(e ...ledger.Event) DryRow {
		d := dryOf(t, in, p, DryAsk{FromHour: 9, NextH: 24, Looks: WaterSeen(e)})
		return d.row(t, space)
	}
	fresh := with(event("a", 0, "watered"))
	dry := with(event("b", 0, "dry"))
	taken := with(event("b", 0, "dry"), ledger.Event{ID: entryID("c"), Device: "d", Kind: ledger.Voided, Version: 1, Happened: in.Date, Body: back})
	if !(dry.Answer.Dry.Likely < base.row(t, space).Answer.Dry.Likely && base.row(t, space).Answer.Dry.Likely < fresh.Answer.Dry.Likely) {
		t.Errorf("%s: dry after %.0f h found dry, %.0f h unseen, %.0f h just watered; want them rising",
			space, dry.Answer.Dry.Likely, base.row(t, space).Answer.Dry.Likely, fresh.Answer.Dry.Likely)
	}
	if taken.Answer.Looks != 0 || dry.Answer.Looks != 1 {
		t.Errorf("looks counted: %d after taking it back, %d before; want 0 and 1", taken.Answer.Looks, dry.Answer.Looks)
	}
	slow := with(event("a", -9, "watered"), event("b", -1, "damp at a knuckle"))
	if slow.Answer.Rate >= 1 || !strings.Contains(slow.Learned, "slower") {
		t.Errorf("damp eight days after a watering: rate %.2f, %q; want it slower", slow.Answer.Rate, slow.Learned)
	}
	if odd := with(event("a", 0, "a bit sad")); odd.Answer.Looks != 0 {
		t.Error("a look in other words taught something")
	}
}

// Every crop of the book has a row of its own or a named one for its thirst.
func TestEveryCropHasWater(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	book, err := water.LoadBook()
	if err != nil {
		t.Fatal(err)
	}
	var without []string
	for _, c := range in.Book.Crops {
		if _, ok := book.Crop(string(c.ID)); !ok {
			without = append(without, string(c.ID))
		}
	}
	if len(without) > 0 {
		t.Errorf("no row for %v", without)
	}
}

// After a plan, water answers at once and as it would alone.
func TestResultDryIsDry(t *testing.T) {
	r := demoPlan(t, demoCases()[1])
	ask := DryAsk{FromHour: 7, NextH: 24, AwayDays: 7}
	quick, err := r.Dry(ask)
	if err != nil {
		t.Fatal(err)
	}
	if alone := dryOf(t, r.in, r.Place, ask); !reflect.DeepEqual(quick, alone) {
		t.Error("water after a plan differs from water alone")
	}
}

func TestDryRefusesNonsense(t *testing.T) {
	in, p := dryInputs(t, demoCases()[0])
	for _, ask := range []DryAsk{{FromHour: 24}, {FromHour: -1}, {AwayDays: 61}, {AwayDays: -1}, {NextH: math.NaN()}} {
		if _, err := Dry(in, p, ask); err == nil {
			t.Errorf("%+v was answered", ask)
		}
	}
}

func TestLeavesReachOverTheRim(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	for _, tt := range []struct {
		space string
		want  float64
	}{{"high-bed", (2.4 + 0.6) * (1 + 0.6)}, {"basket", math.Pi * (0.175 + 0.3) * (0.175 + 0.3)}} {
		sp, _ := in.Garden.Space(garden.SpaceID(tt.space))
		if got := leafMost(sp); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("%s: leaves over %.3f m2 at most, want %.3f (30 cm over the rim, our own choice)", tt.space, got, tt.want)
		}
	}
}

func TestRainSharesAndWords(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	for i, sp := range in.Garden.Spaces {
		want := map[string]float64{"bench": 0, "tier-top": 1, "tier-mid": 1 - 0.40*0.40/(0.65*0.65), "tier-low": 1 - 0.65*0.65/(0.9*0.9), "long-bed": 1}
		if w, ok := want[string(sp.ID)]; ok && math.Abs(rainShare(in.Garden, i)-w) > 1e-9 {
			t.Errorf("%s: catches %.3f of the rain, want %.3f (closed form, areas above it)", sp.ID, rainShare(in.Garden, i), w)
		}
	}
	date := cal.Of(2015, 7, 20) // a Monday
	for _, tt := range []struct {
		hours float64
		want  string
	}{{0, "now"}, {3, "this morning"}, {6, "this afternoon"}, {13, "this evening"}, {18, "before dawn tomorrow"}, {50, "Wednesday morning"}, {200, "28 July"}} {
		if got := moment(date, 7, tt.hours); got != tt.want {
			t.Errorf("%.0f hours from 7 o'clock: %q, want %q", tt.hours, got, tt.want)
		}
	}
	for _, tt := range []struct {
		rate float64
		want string
	}{{1, "about as reckoned"}, {1.6, "faster"}, {0.6, "slower"}} {
		if got := learned(water.Answer{Looks: 2, Rate: tt.rate, Dry: water.Window{Likely: 48}, Horizon: 500}); !strings.Contains(got, tt.want) {
			t.Errorf("rate %.1f: %q, want %q in it", tt.rate, got, tt.want)
		}
	}
}
