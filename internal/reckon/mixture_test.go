package reckon

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// No one crop is planned for more than about its share of a food that many
// crops serve. Without the limit the demo's alliums are bunching onions alone.
func TestNoCropIsAllOfAFood(t *testing.T) {
	for _, c := range demoCases()[:2] {
		r := demoPlan(t, c)
		served := r.model.byFood()
		eaten := map[int]map[string]float64{}
		for _, pl := range r.Plan.Plantings {
			o := &r.Problem.Options[pl.Option]
			if o.Food < 0 || o.Food == r.model.bees || isTray(*o) {
				continue
			}
			if eaten[o.Food] == nil {
				eaten[o.Food] = map[string]float64{}
			}
			eaten[o.Food][o.Crop] += float64(pl.Plants) * mealsOf(o)
		}
		limited := 0
		for food, crops := range served {
			if len(crops) < 3 {
				continue
			}
			wanted := 0.0
			for _, w := range r.Problem.Foods[food].Want {
				wanted += w
			}
			for id := range crops {
				limited++
				if most := 1.4 * shareOfMany * wanted; eaten[food][id] > most {
					t.Errorf("%s, %s: %s gives %.0f of %.0f meals wanted", c.name, r.model.foods[food], id, eaten[food][id], wanted)
				}
			}
		}
		if limited < 10 {
			t.Errorf("%s: only %d crops are limited", c.name, limited)
		}
	}
}

// What is caught by the limit: a must and a lock are above it, pots at hand
// are outside.
func TestMixtureLimits(t *testing.T) {
	option := func(crop, group string) season.Option {
		return season.Option{Crop: crop, MaxTotal: group, Meals: [][]float32{{1, 1}, {3, 3}}} // 4 meals a plant
	}
	m := &model{bees: 1, p: &season.Problem{
		Foods:  []season.Food{{Want: []float64{10, 10, 20}}, {}},
		Totals: map[string]int{},
		Options: []season.Option{option("leek", "a"), option("leek", "tray.x"), option("garlic", "b"), option("shallot", "c"),
			{Crop: "aster", Food: 1, Meals: [][]float32{{9}}}},
		Musts: []season.Must{{Crop: "garlic", Space: -1, Plants: 30}},
		Locks: []season.Planting{{Option: 3, Plants: 9}},
	}}
	m.mixFoods()
	for crop, most := range map[string]int{"leek": 5, "garlic": 30, "shallot": 9} { // half of 40 meals are 5 plants
		if got := m.p.Totals["crop."+crop]; got != most {
			t.Errorf("%s: at most %d plants, want %d", crop, got, most)
		}
	}
	if o := m.p.Options; o[0].AlsoTotal != "crop.leek" || o[0].MaxTotal != "a" || o[1].AlsoTotal != "" || o[4].AlsoTotal != "" {
		t.Errorf("groups: %q %q %q %q", o[0].AlsoTotal, o[0].MaxTotal, o[1].AlsoTotal, o[4].AlsoTotal)
	}
}

// A radish that keeps a fortnight is not sown in four beds at once to be eaten
// till winter; a carrot that keeps for months may be.
func TestWhatSpoilsIsNotSownForMonths(t *testing.T) {
	radish, carrot := &crop.Crop{}, &crop.Crop{}
	radish.ShelfDays = crop.Figure{Value: 14, Low: 7, High: 21, Source: "x"}
	carrot.ShelfDays = crop.Figure{Value: 150, Low: 90, High: 180, Source: "x"}
	m := &model{bees: -1, p: &season.Problem{Weeks: 10, Foods: []season.Food{{Shelf: 12, Want: []float64{4, 4, 4, 4, 4, 4, 4, 4, 4, 4}}}}}
	o := &season.Option{Week: 0, End: 4, MealsFrom: 0, Meals: [][]float32{{0, 0, 0, 0.2, 0.2}}}
	if got := m.eatable(o, radish); got != 40 { // two weeks of picking and two on the shelf, 4 meals each, at 0.4 a plant
		t.Errorf("%d radishes, want 40", got)
	}
	if got := m.eatable(o, carrot); got < 1e6 {
		t.Errorf("%d carrots, want no limit", got)
	}
}

// Four meals a week are wanted, in the two weeks of picking and the one they
// keep: twelve meals are at risk, however many plants there are.
func TestOnlyWhatIsEatenIsLost(t *testing.T) {
	m := &model{bees: -1, p: &season.Problem{Weeks: 10, Foods: []season.Food{{Shelf: 1, Worth: 2, Want: []float64{4, 4, 4, 4, 4, 4, 4, 4, 4, 4}}}}}
	for _, tt := range []struct {
		each      float32
		plants    int
		lost, how string
	}{
		{0.5, 12, "0.6", "twelve plants of a meal each"},
		{2.5, 3, "3.0", "three plants of five, one of them in part for nobody"},
		{25, 1, "7.2", "one plant of fifty counts for twelve"},
	} {
		o := &season.Option{Week: 1, End: 4, Meals: [][]float32{{0, 0, tt.each, tt.each}}}
		m.atRisk(o, mealsOf(o), 0.5)
		if got := fmt.Sprintf("%.1f", o.RotationCost/2); o.AtRisk != tt.plants || got != tt.lost || math.Abs(o.Risk-riskCost/rotationCost*o.RotationCost/2) > 1e-9 {
			t.Errorf("%s: %d plants at %s meals, risk %.2f; want %d at %s", tt.how, o.AtRisk, got, o.Risk, tt.plants, tt.lost)
		}
	}
	m.p.Foods[0].Want = nil
	o := &season.Option{Week: 1, End: 4, Meals: [][]float32{{0, 0, 1, 1}}}
	if m.atRisk(o, mealsOf(o), 0.5); o.RotationCost != 0 || o.Risk != 0 {
		t.Errorf("nobody wants it, and it costs %.2f and %.2f", o.RotationCost, o.Risk)
	}
}

// Fresh leaves do not feed anybody for a month; roots and alliums do.
func TestFoodsKeepAsTheirCropsDo(t *testing.T) {
	r := demoPlan(t, demoCases()[0])
	for i, want := range map[string][2]int{"salad": {1, 2}, "cooking greens": {1, 2}, "roots": {6, 20}, "alliums": {6, 20}, "tomatoes": {1, 2}} {
		for k, f := range r.Problem.Foods {
			if r.model.foods[k] == i && (f.Shelf < want[0] || f.Shelf > want[1]) {
				t.Errorf("%s keep %d weeks, want %d to %d", i, f.Shelf, want[0], want[1])
			}
		}
	}
}

// Who raised basil and wants some plants it out; nobody sows it beside its pots.
func TestAMustIsMetFromPotsAtHand(t *testing.T) {
	in := demoInputs(t, demoCases()[0])
	in.Futures, in.Weeks, in.Work = 8, 40, 300_000
	for _, must := range []struct {
		plants int
		raised bool // ten stand on the shelf
	}{{4, true}, {12, false}} {
		in.Garden.Musts = []garden.Must{{Crop: "basil", Plants: must.plants}}
		g, err := NewGround(in)
		if err != nil {
			t.Fatal(err)
		}
		r := planOnly(t, in, g)
		if got := len(r.Problem.Musts[0].Groups) > 0; got != must.raised {
			t.Errorf("%d basils: to be met from pots %v, want %v", must.plants, got, must.raised)
		}
		pots, sown := 0, 0
		for _, pl := range r.Plan.Plantings {
			switch o := r.Problem.Options[pl.Option]; {
			case o.Crop == "basil" && isTray(o):
				pots += pl.Plants
			case o.Crop == "basil":
				sown += pl.Plants
			}
		}
		if must.raised && pots < must.plants || pots+sown < must.plants {
			t.Errorf("%d basils: %d pots set out, %d sown", must.plants, pots, sown)
		}
	}
}

// Pots at hand may wait: they are offered in weeks for which new ones could be
// raised as well, pay no shelf while their own places are kept, and places after.
func TestPotsAtHandMayWait(t *testing.T) {
	in := &Inputs{Date: cal.Of(2015, 4, 6)}
	c := &crop.Crop{ID: "basil", NurseryWeeks: crop.Figure{Value: 6, Low: 5, High: 7, Source: "x"}}
	pots := standing{id: "store-4", tray: true, crop: c, since: cal.Window{Likely: cal.Of(2015, 3, 28)}}
	for _, tt := range []struct {
		way  crop.Way
		week int
		want []raising
	}{
		{crop.Sow, 8, []raising{{"", noShelf}}},
		{crop.SetOut, 5, []raising{{"tray.store-4", noShelf}}},
		{crop.SetOut, 6, []raising{{"tray.store-4", noShelf}, {"", 0}}},
		{crop.SetOut, 9, []raising{{"tray.store-4", 6}, {"", 3}}},
		{crop.SetOut, 20, []raising{{"", 14}}}, // too old by then
	} {
		e := Entry{Crop: c, Way: tt.way, Week: tt.week}
		e.Growth.ShelfWeeks, e.Growth.Sown = 6, in.Date+cal.Day(7*(tt.week-6))
		if got := raisings(in, e, []standing{pots}); !slices.Equal(got, tt.want) {
			t.Errorf("%s in week %d: %v, want %v", wayWord(tt.way), tt.week, got, tt.want)
		}
	}
}

// Seed is to buy when the tin is listed and does not hold it.
func TestToBuy(t *testing.T) {
	listed := &Inputs{Garden: &garden.Garden{Seeds: []garden.Seed{{Crop: "leek"}}}}
	noted := &Inputs{Garden: &garden.Garden{}, State: &ledger.State{Lots: []ledger.LotState{{Lot: ledger.Lot{Crop: "kale"}}, {Lot: ledger.Lot{Crop: "chard"}, Gone: 1}}}}
	for _, tt := range []struct {
		in   *Inputs
		crop crop.ID
		want bool
	}{
		{&Inputs{Garden: &garden.Garden{}}, "leek", false}, // nothing is said
		{listed, "leek", false},
		{listed, "kale", true},
		{noted, "kale", false},
		{noted, "chard", true}, // sown out
		{noted, "leek", true},
	} {
		if got := toBuy(tt.in, tt.crop); got != tt.want {
			t.Errorf("%s: to buy %v, want %v", tt.crop, got, tt.want)
		}
	}
}

// A name that ends in brackets takes the variety into them.
func TestBracketed(t *testing.T) {
	for name, want := range map[string]string{"kale": "kale (Black Frond)", "summer squash (zucchini)": "summer squash (zucchini; Black Frond)"} {
		if got := Bracketed(name, "Black Frond"); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
