package reckon

import (
	"math"
	"slices"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/unit"
	"bedweek/internal/water"
	"bedweek/internal/weather"
)

func box(kind garden.Kind, l, w, depth float64, dark bool) garden.Space {
	return garden.Space{ID: "x", Kind: kind, Length: unit.Metres(l), Width: unit.Metres(w), Depth: unit.Metres(depth), RimUp: unit.Metres(depth), Dark: dark}
}

// The trade's order: small, dark and raised warms first; mulch holds it back.
// Common practice; no source gives degrees for all.
func TestMediumWarmthInTheRightOrder(t *testing.T) {
	ground, bed := box(garden.Ground, 3, 1, 0.3, false), box(garden.RaisedBed, 2.4, 1.2, 0.3, false)
	bag, black := box(garden.Bag, 0.4, 0.4, 0.4, false), box(garden.Bag, 0.4, 0.4, 0.4, true)
	mulched := bed
	mulched.Watering.Mulch = unit.Metres(0.05)
	order := []float64{mediumWarmC(mulched), mediumWarmC(bed), mediumWarmC(bag), mediumWarmC(black)}
	for i := 1; i < len(order); i++ {
		if order[i] <= order[i-1] {
			t.Errorf("warmth %v: want it to rise from mulched bed to bed, bag and black bag", order)
		}
	}
	if g := mediumWarmC(ground); g != 0 {
		t.Errorf("open ground is %.1f warmer than open ground", g)
	}
	if hotSideC(black, 35, 1) < 45 || hotSideC(black, 35, 0.1) > 38 || hotSideC(ground, 35, 1) != 35 {
		t.Errorf("sunny side of a black bag %.1f in sun, %.1f in shade; of ground %.1f", hotSideC(black, 35, 1), hotSideC(black, 35, 0.1), hotSideC(ground, 35, 1))
	}
	last := Swing{Share: 2}
	for _, m := range []float64{0.1, 0.2, 0.4, 0.8, 1.6} { // the wave shrinks and lags with depth: closed form
		s := mediumSwing(box(garden.Bag, m, m, m, false))
		if s.Share >= last.Share || s.LagH <= last.LagH || s.Share < 0 || s.Share > 1 {
			t.Errorf("%.1f m: %+v after %+v", m, s, last)
		}
		last = s
	}
	// [FAO56] eq. 47: wind at 10 m over wind at 2 m is 1/0.748.
	if got := windAt(10); math.Abs(got-1/0.748) > 0.003 || math.Abs(windAt(2)-1) > 0.001 {
		t.Errorf("wind at 10 m %.3f, at 2 m %.3f of that at 2 m", got, windAt(2))
	}
}

func coldInputs(t *testing.T) *Inputs {
	in := demoInputs(t, demoCases()[0])
	in.State = &ledger.State{}
	return in
}

// Nights that run 3 °C below the station teach it; windy ones and other
// instruments do not. One reading is believed in part.
func TestColdIsLearned(t *testing.T) {
	in := coldInputs(t)
	rail, _ := in.Garden.Space("rail-south")
	before := coldOf(in, rail)
	n := 0
	var afterOne ColdOffset
	for d := in.Date - 1; d > in.Date-300 && n < 12; d-- {
		day, ok := in.Record.At(d)
		if !ok || day.WindMS > stillWind {
			continue
		}
		in.State.Readings = append(in.State.Readings, ledger.ReadingNote{On: d, Reading: ledger.Reading{What: ledger.ReadLow, Value: day.TminC - 3, Space: "rail-south", Hour: 7}})
		if n++; n == 1 {
			afterOne = coldOf(in, rail)
		}
	}
	if n < 12 {
		t.Fatalf("only %d still nights in the record", n)
	}
	after := coldOf(in, rail)
	if !(after.C < afterOne.C && afterOne.C < before.C) || math.Abs(after.C+3) > 0.4 || after.Nights != 12 || after.SpanC >= afterOne.SpanC {
		t.Errorf("%+v, then %+v, then %+v; want it to close in on -3", before, afterOne, after)
	}
	other, _ := in.Garden.Space("long-bed")
	if c := coldOf(in, other); c.Nights != 0 {
		t.Errorf("another space learned from it: %+v", c)
	}
	p, err := NewPlace(&Inputs{Garden: in.Garden, Book: in.Book, Record: in.Record, Date: in.Date, Weeks: 12, Futures: 4, Seed: 1, State: in.State})
	if err != nil {
		t.Fatal(err)
	}
	for i, sp := range in.Garden.Spaces {
		if sp.ID == "rail-south" && p.Envs[i].NightC != -3 {
			t.Errorf("plants there meet nights %.1f off the station, want -3", p.Envs[i].NightC)
		}
	}
}

// Own readings take the station's place, on their day and no other.
func TestOwnReadingsWin(t *testing.T) {
	in := coldInputs(t)
	d := in.Date - 5
	in.State.Readings = []ledger.ReadingNote{
		{On: d, Reading: ledger.Reading{What: ledger.ReadLow, Value: -4}}, {On: d, Reading: ledger.Reading{What: ledger.ReadRain, Value: 7, Hour: 8}},
		{On: d, Reading: ledger.Reading{What: ledger.ReadHigh, Value: 30, Space: "long-bed"}},
	}
	own := ownRecord(in)
	was, _ := in.Record.At(d)
	day, _ := own.At(d)
	before, _ := own.At(d - 1)
	if day.TminC != -4 || before.RainMM != 7 || day.TmaxC == 30 || was.TminC == -4 {
		t.Errorf("%s: %+v, the day before %+v", d, day, before)
	}
	for k := range own.Days {
		if x := own.Start + cal.Day(k); x != d && x != d-1 && own.Days[k] != in.Record.Days[k] {
			t.Fatalf("%s changed", x)
		}
	}
}

// A frost night: tender plants are listed and hardy ones left, a cover never
// makes it worse, and wind takes its help away.
func TestWhoFreezes(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	stays := whatStands(in)
	for _, wind := range []float64{1, 9} {
		for k := range p.Set.Futures {
			i := int(in.Date + 1 - p.Set.Futures[k].Start)
			p.Set.Futures[k].Days[i] = weather.Day{TminC: -1.5, TmaxC: 9, WindMS: wind, RadMJ: 8}
		}
		n := night(in, p, stays)
		if n.FrostOf20 != 20 || len(n.Rows) == 0 {
			t.Fatalf("frost %d of 20, %d at risk", n.FrostOf20, len(n.Rows))
		}
		tomato := false
		for _, r := range n.Rows {
			tomato = tomato || strings.Contains(strings.ToLower(r.Crop), "tomato") && r.TonightOf20 == 20
			if strings.Contains(r.Crop, "kale") {
				t.Errorf("%s is listed at -1.5 °C", r.Crop)
			}
			if r.CoveredOf20 > r.TonightOf20 || wind > windyWind && r.CoveredOf20 >= 0 && r.CoveredOf20 != r.TonightOf20 {
				t.Errorf("wind %.0f: %s lost in %d bare, %d covered", wind, r.Crop, r.TonightOf20, r.CoveredOf20)
			}
		}
		if !tomato {
			t.Error("tomatoes are not listed at -1.5 °C")
		}
	}
}

// An absence: a helper's visits never leave a space longer than it lasts in its
// dry tenth; a ration gives no more than is allowed, first to what flowers.
func TestGoingAndRation(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	d := dryOf(t, in, p, DryAsk{FromHour: 7, NextH: 72, AwayDays: 14, AllowedL: 12})
	byID := map[string]DryRow{}
	for _, r := range d.Rows {
		byID[r.Space] = r
	}
	if len(d.Going.Round) == 0 {
		t.Fatal("nobody is needed for a fortnight in August")
	}
	for _, r := range d.Going.Round {
		own := max(1, int(byID[r.Space].Answer.OutDry.Early/24))
		last := in.Date
		for i, v := range d.Going.Visits {
			if !r.Due[i] {
				continue
			}
			if int(v-last) > own {
				t.Errorf("%s: %d days between waterings, it lasts %d", r.Name, v-last, own)
			}
			last = v
		}
	}
	sum, rank := 0.0, water.RankBlooms
	for _, r := range d.Ration.Rows {
		sum += r.GivenL
		if k := byID[r.Space].rank; r.GivenL > 0 && k > rank {
			t.Errorf("%s goes after a lesser need", r.Name)
		} else {
			rank = k
		}
	}
	if sum > 12+1e-9 || d.Ration.NeededL <= 0 {
		t.Errorf("gives %.1f L of 12; needs %.1f", sum, d.Ration.NeededL)
	}
}

func TestTaughtSaysWhatChanged(t *testing.T) {
	row := func(rate, days float64) DryRow {
		return DryRow{Name: "bag 5", FullDays: days, DrawnFrom: 3, Answer: water.Answer{Rate: rate}}
	}
	for _, tt := range []struct {
		before, after DryRow
		want          string
	}{
		{row(1, 3), row(1.5, 2), "Bag 5 dries faster than I thought: full, it lasts 2 days, not 3 days."},
		{row(1, 2), row(0.8, 2.5), "Bag 5 dries slower than I thought: full, it lasts 2½ days, not 2 days."},
		{row(1, 2), row(1.01, 2), "Bag 5 dries about as I thought: full, it lasts 2 days."},
	} {
		if got := Taught(tt.before, tt.after); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// The neediest tier decides: 2 L needed where a quarter stays wants 8 L at the
// top (closed form).
func TestTiersArePouredFromTheTop(t *testing.T) {
	tier := func(id string, rim, share float64) garden.Space {
		s := garden.Space{ID: garden.SpaceID(id), Kind: garden.Tier, Rim: unit.Metres(rim)}
		s.Watering.TierShare = share
		return s
	}
	in := &Inputs{Garden: &garden.Garden{Spaces: []garden.Space{tier("low", 0.3, 0.25), tier("top", 0.9, 0.5)}}}
	rows := []DryRow{{Space: "low", Answer: water.Answer{GiveL: 2}}, {Space: "top", Answer: water.Answer{GiveL: 1}}}
	tierGive(in, rows)
	if rows[0].Give != "Pour about 8 L in at the top of its planter: about 2 L of it stays here." || !strings.Contains(rows[1].Give, "about 4 L of it stays") {
		t.Errorf("%q, %q", rows[0].Give, rows[1].Give)
	}
	in.Garden.Spaces[0].Watering.TierShare = 0 // not measured: nothing is promised
	rows[0].Give = "as it was"
	if tierGive(in, rows); rows[0].Give != "as it was" {
		t.Errorf("without its share: %q", rows[0].Give)
	}
}

// What is noted about water and weather stands in the history, in words.
func TestOutdoorHistory(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	var events []ledger.Event
	for _, b := range []struct {
		k    ledger.Kind
		body any
	}{{ledger.Watered, ledger.Watering{Space: "long-bed", Litres: 20, Hour: 7}}, {ledger.Looked, ledger.LookAt{Space: "long-bed", Looks: "dry", Hour: 17}},
		{ledger.Measured, ledger.Reading{What: ledger.ReadLow, Value: -1.5, Space: "long-bed"}}} {
		e, err := ledger.NewEvent("d", in.Date, b.k, b.body)
		if err != nil {
			t.Fatal(err)
		}
		events = append(events, e)
	}
	teller := NewTeller(in.Book, in.Garden)
	for n := range events {
		teller.Hear(events[:n+1])
	}
	told, _ := teller.of("long-bed")
	slices.Reverse(told)
	for i, want := range []string{"Watered at 7 o'clock, 20 L.", "Looked at this space at 17 o'clock: dry.", "Coldest -1.5 °C in this space."} {
		if i >= len(told) || told[i].Words != want {
			t.Errorf("entry %d: %+v, want %q", i, told, want)
		}
	}
}

// Watered yesterday at six and dry this evening, in August: the hours of today
// that have been count, so the thirstiest space is known to dry faster now and
// not only tomorrow.
func TestHoursOfTodayTeach(t *testing.T) {
	in, p := dryInputs(t, demoCases()[1])
	space, least := "", math.Inf(1)
	for _, r := range dryOf(t, in, p, DryAsk{FromHour: 19, NextH: 24}).Rows {
		if !r.Empty && r.Way == water.Can && r.FullDays < least {
			space, least = r.Space, r.FullDays
		}
	}
	look := func(day int, hour float64, what water.Look) SpaceSeen {
		return SpaceSeen{Space: space, On: in.Date + cal.Day(day), Hour: hour, What: what}
	}
	watered := dryOf(t, in, p, DryAsk{FromHour: 19, NextH: 24, Looks: []SpaceSeen{look(-1, 6, water.Watered)}}).row(t, space)
	dry := dryOf(t, in, p, DryAsk{FromHour: 19, NextH: 24, Looks: []SpaceSeen{look(-1, 6, water.Watered), look(0, 18, water.DryLook)}}).row(t, space)
	if !(dry.Answer.Rate > watered.Answer.Rate) || !(dry.Answer.Dry.Likely < watered.Answer.Dry.Likely) {
		t.Errorf("%s, full %.1f days: rate %.2f then %.2f; dry in %.0f h then %.0f h; want faster and sooner", space, least, watered.Answer.Rate, dry.Answer.Rate, watered.Answer.Dry.Likely, dry.Answer.Dry.Likely)
	}
	early := dryOf(t, in, p, DryAsk{FromHour: 7, NextH: 24, Looks: []SpaceSeen{look(0, 6, water.Watered)}}).row(t, space)
	late := dryOf(t, in, p, DryAsk{FromHour: 19, NextH: 24, Looks: []SpaceSeen{look(0, 6, water.Watered)}}).row(t, space)
	if !(late.Answer.LackL.Likely > early.Answer.LackL.Likely) {
		t.Errorf("watered at 6: lacks %.2f L at 7 and %.2f L at 19; want more in the evening", early.Answer.LackL.Likely, late.Answer.LackL.Likely)
	}
}
