package reckon

import (
	"math"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// TestOrderCoversThePlan: the order asks for as many plants as the plan starts
// from seed or sets, each start with its day, the first of them first.
func TestOrderCoversThePlan(t *testing.T) {
	for _, c := range demoCases() {
		r := demoPlan(t, c)
		want := map[string]int{}
		for _, pl := range r.Plan.Plantings {
			o := r.Problem.Options[pl.Option]
			if !strings.HasPrefix(o.MaxTotal, "tray.") {
				want[o.Crop] += pl.Plants
			}
		}
		got := map[string]int{}
		sown := 0
		for _, row := range r.Day.Papers.Order.Rows {
			got[row.CropID] = row.Plants
			plants := 0
			for _, s := range row.Starts {
				plants += s.Plants
				if s.On < r.in.Date {
					t.Errorf("%s %s: to be started on %s, which is past", c.name, row.CropID, s.On)
				}
				if s.Outdoors != (s.Verb == "sow") {
					t.Errorf("%s %s: %s, outdoors %v", c.name, row.CropID, s.Verb, s.Outdoors)
				}
				if row.Sort == "seeds" {
					sown++
				}
			}
			if plants != row.Plants || row.By != row.Starts[0].On {
				t.Errorf("%s %s: %d plants in the starts, %d in all, first %s", c.name, row.CropID, plants, row.Plants, row.By)
			}
		}
		for id, n := range want {
			if got[id] != n {
				t.Errorf("%s: %d plants of %s ordered, the plan starts %d", c.name, got[id], id, n)
			}
		}
		if len(got) != len(want) || sown < 5 {
			t.Errorf("%s: %d crops ordered, %d in the plan; %d sowings looked at", c.name, len(got), len(want), sown)
		}
	}
}

// TestKitchenIsTheTable: the wall sheet says what the table says.
func TestKitchenIsTheTable(t *testing.T) {
	for _, c := range demoCases() {
		r := demoPlan(t, c)
		k := r.Day.Papers.Kitchen
		rows := map[string]FoodRow{}
		for _, row := range r.Day.Table {
			rows[row.Name] = row
		}
		for _, row := range k.Rows {
			for w, x := range row.Weeks {
				fw := rows[row.Food].Weeks[w]
				if x.Wanted != fw.Wanted || x.Low != fw.Low || x.High != fw.High || x.Enough != count(fw.Threads) {
					t.Errorf("%s, %s week %d: %+v, the table says %+v", c.name, row.Food, w, x, fw)
				}
			}
			if len(row.From) > 0 && math.IsNaN(row.Weeks[0].High) {
				t.Error("not a number")
			}
		}
		if len(k.Rows) < 4 || len(k.WeekOf) != kitchenWeeks {
			t.Errorf("%s: %d foods over %d weeks", c.name, len(k.Rows), len(k.WeekOf))
		}
	}
}

// TestTurnoversAreInOrder: what comes out is gone before what goes in, cautions
// stand at their step, and the medium's litres follow from the space.
func TestTurnoversAreInOrder(t *testing.T) {
	cautions, mediums := 0, 0
	for _, c := range demoCases() {
		r := demoPlan(t, c)
		for _, x := range r.Day.Papers.Turnovers {
			for _, out := range x.Out {
				if len(x.In) > 0 && out.Out.Early > x.In[0].In.Likely+14 {
					t.Errorf("%s %s: %s comes out from %s, %s goes in %s", c.name, x.Space, out.Crop, out.Out.Early, x.In[0].Crop, x.In[0].In.Likely)
				}
			}
			sp, _ := r.in.Garden.Space(garden.SpaceID(x.Space))
			for _, s := range x.Steps {
				if s.Care != "" {
					cautions++
				}
				if strings.Contains(strings.ToLower(s.Do+s.Care), "safe") {
					t.Errorf("%s %s says safe: %q", c.name, x.Space, s.Do)
				}
				if !strings.HasPrefix(s.Do, "Add ") {
					continue
				}
				mediums++
				low, high := 1000*sp.AreaM2()*0.006, 1000*sp.AreaM2()*0.025
				if boxed(sp) {
					low, high = sp.VolumeL()*0.05, sp.VolumeL()*0.10
				}
				if !strings.Contains(s.Do, litreSpan(low, high)) {
					t.Errorf("%s %s: %q, want %s", c.name, x.Space, s.Do, litreSpan(low, high))
				}
				if (sp.Kind == garden.Railing || sp.Kind == garden.Hanging) && !strings.Contains(s.Care, "bracket") {
					t.Errorf("%s %s: a hanging space without its caution: %q", c.name, x.Space, s.Care)
				}
			}
		}
	}
	if cautions < 20 || mediums < 10 {
		t.Errorf("%d cautions and %d media seen", cautions, mediums)
	}
}

// TestAYearTellsItsMisses: early, late, inside, lost, above and below the
// range, not kept; each is said as it was.
func TestAYearTellsItsMisses(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g := demoInputs(t, demoCases()[0]).Garden
	space := ""
	for _, sp := range g.Spaces {
		if sp.Grows() {
			space = string(sp.ID)
			break
		}
	}
	in := cal.Of(2015, 4, 10)
	var events []ledger.Event
	add := func(on cal.Day, kind ledger.Kind, body any) string {
		e, err := ledger.NewEvent("t", on, kind, body)
		if err != nil {
			t.Fatal(err)
		}
		e.Seq = int64(len(events) + 1)
		events = append(events, e)
		return e.ID
	}
	start := func(id string) string {
		return add(in, ledger.Sown, ledger.Started{Crop: id, Space: space, Count: 10})
	}
	say := func(p string, low, high float64) {
		add(in, ledger.Forecasted, ledger.Forecast{Planting: p, Crop: "x", Space: space, FirstEarly: in + 50, FirstLikely: in + 60, FirstLate: in + 70,
			KgLow: low, KgLikely: (low + high) / 2, KgHigh: high, OfTwenty: 16})
	}
	early, late, inside, lost, silent := start("radish"), start("carrot"), start("beet"), start("lettuce-leaf"), start("chard")
	for _, p := range []string{early, late, inside, lost} {
		say(p, 1, 2)
	}
	say(early, 9, 10) // a second word changes nothing
	add(in+41, ledger.Picked, ledger.Amount{Planting: early, Kg: 2.5})
	add(in+42, ledger.Pulled, ledger.Ended{Planting: early})
	add(in+78, ledger.Picked, ledger.Amount{Planting: late, Kg: 0.4})
	add(in+90, ledger.Pulled, ledger.Ended{Planting: late})
	add(in+60, ledger.Picked, ledger.Amount{Planting: inside, Measure: "bowl"})
	undone := add(in+20, ledger.Picked, ledger.Amount{Planting: inside, Kg: 1})
	add(in+61, ledger.Voided, ledger.Void{Event: undone})
	add(in+20, ledger.Lost, ledger.Ended{Planting: lost, Cause: "eaten"})
	add(in+55, ledger.Picked, ledger.Amount{Planting: silent, Kg: 0.2})
	state := ledger.Replay(events)
	var y YearSheet
	teller := NewTeller(book, g)
	for n := range events { // as they come: what is taken back later counts no more
		teller.Hear(events[:n+1])
	}
	for _, x := range teller.yearSheets(in+120, &state) {
		if x.Space == space {
			y = x
		}
	}
	want := map[string]string{
		early:  "First pick 9 days before the window. Yield above the range, by 0.5 kg.",
		late:   "First pick 8 days after the window. Yield below the range, by 0.6 kg.",
		inside: "First pick inside the window.",
		lost:   "It was lost; 4 of 20 futures had said so.",
		silent: "",
	}
	for _, r := range y.Rows {
		if w, ok := want[r.Planting]; !ok || r.Differ != w {
			t.Errorf("%s: %q, want %q", r.Crop, r.Differ, w)
		}
		if r.Planting == silent && (r.SaidWords != "Not kept." || len(r.Dots) != 1 || r.Dots[0] != (in+55).Monday()) {
			t.Errorf("without a forecast: %+v", r)
		}
		if r.Planting == inside && r.Picks != 1 {
			t.Errorf("a pick that was taken back counts: %d", r.Picks)
		}
	}
	if len(y.Rows) != 5 || y.Kept != 4 || y.Judged != 3 || y.Held != 1 || len(y.Learned) != 3 {
		t.Errorf("%d rows, %d kept, %d judged, %d held, learned %q", len(y.Rows), y.Kept, y.Judged, y.Held, y.Learned)
	}
	if !strings.Contains(y.Learned[0], "lost: eaten") || !strings.Contains(y.Change, "Net the ") {
		t.Errorf("learned %q, change %q", y.Learned, y.Change)
	}
}
