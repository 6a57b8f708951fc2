package reckon

import (
	"context"
	"math"
	"slices"
	"strings"
	"testing"

	"bedweek/internal/ledger"
	"bedweek/internal/season"
	"bedweek/internal/water"
)

// dryBeds is the small garden with its water limited, the back bed left to the
// rain, and a wish or none.
func dryBeds(t *testing.T, wish string) *Inputs {
	in := smallInputs(t, 47)
	in.Garden.Spaces[1].Water = "rain"
	if wish != "" {
		in.Garden.WaterDay = litresADay(0)
		in.Garden.WaterDay.Typed = wish
	}
	return in
}

// TestNoWishForWaterCountsNone: without a wish nothing carries litres.
func TestNoWishForWaterCountsNone(t *testing.T) {
	in := dryBeds(t, "")
	m := modelled(t, in)
	for _, o := range m.p.Options {
		if o.Water != nil {
			t.Fatalf("%s drinks %v", o.ID, o.Water)
		}
	}
	if m.p.Water != nil || m.p.WaterCost != 0 {
		t.Errorf("water %v at %v", m.p.Water, m.p.WaterCost)
	}
}

// TestDrinksByHand: an option's litres are the dry week's pull times its
// ground, the crop's coefficient of the paper and the space's exposure, over
// what is lost on the way; a bed left to the rain is given none.
func TestDrinksByHand(t *testing.T) {
	in := dryBeds(t, "0 L")
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	m, err := modelOf(in, g)
	if err != nil {
		t.Fatal(err)
	}
	if len(m.p.Water) != m.p.Weeks || slices.Max(m.p.Water) != 0 || math.Abs(m.p.WaterCost-0.35) > 1e-12 {
		t.Fatalf("wished %v at %v, want none in any week at 7 x 0.05", m.p.Water, m.p.WaterCost)
	}
	sky := water.NewSky(g.Place.Set.Futures, in.site(), m.p.Start-21, 21+7*m.p.Weeks, 1)
	seen := map[string]int{}
	for _, o := range m.p.Options {
		if o.Space == 1 {
			if o.Water != nil {
				t.Fatalf("%s is left to the rain and drinks %v", o.ID, o.Water)
			}
			continue
		}
		kc := map[string]float64{"lettuce-leaf": 1, "spinach": 1, "carrot": 1.05, "beet": 1.05}[o.Crop] // [FAO56] table 12
		if kc == 0 {
			continue
		}
		seen[o.Crop]++
		for k, got := range o.Water {
			mm := sky.DryTenthMM(g.Place.Lights[0].Share, 1, 21+7*(o.Week+k+1), 21)
			if want := mm * 1.075 * kc * o.Footprint[k] / 0.9; math.Abs(got-want) > 1e-9 {
				t.Fatalf("%s, week %d: %.5f L a day, want %.5f", o.ID, o.Week+k, got, want)
			}
		}
	}
	if len(seen) != 4 {
		t.Errorf("looked at %v, want four crops", seen)
	}
	// Made months: July asks for much, November for little.
	if july, november := m.drought.dryMM[0][15], m.drought.dryMM[0][33]; july < 2 || july > 8 || november > july/4 {
		t.Errorf("a dry week in July asks for %.2f mm a day, in November for %.2f", july, november)
	}
}

// TestPlanWithLittleWater: with no water wished the plan drinks less than with
// plenty, it still is a plan, its words say how much is too much, and the wish
// on the pages does what the garden file does.
func TestPlanWithLittleWater(t *testing.T) {
	planOf := func(in *Inputs) *Result {
		in.Quick, in.Work = true, 60_000
		return planned(t, in)
	}
	plenty := dryBeds(t, "900 L")
	plenty.Garden.WaterDay = litresADay(900)
	full, none := planOf(plenty), planOf(dryBeds(t, "0 L"))
	drunk := func(r *Result) (sum float64) {
		for _, w := range r.Day.Water.Weeks {
			sum += w.Drinks
		}
		return sum
	}
	t.Logf("plenty: %.1f meals, %s", full.Plan.Value, full.Day.Water.Words)
	t.Logf("none: %.1f meals, %s", none.Plan.Value, none.Day.Water.Words)
	if none.Plan.Status != season.Feasible || drunk(none) >= drunk(full) || none.Plan.Value >= full.Plan.Value {
		t.Errorf("with no water %v, %.1f meals and %.0f L; with plenty %.1f meals and %.0f L", none.Plan.Status, none.Plan.Value, drunk(none), full.Plan.Value, drunk(full))
	}
	if !strings.Contains(full.Day.Water.Words, "No dry week asks for more") || !strings.Contains(none.Day.Water.Words, "0 L a day are wished. In ") {
		t.Errorf("words: %q and %q", full.Day.Water.Words, none.Day.Water.Words)
	}
	asked := dryBeds(t, "")
	asked.State.Wishes = []ledger.WishNote{{Event: "x", Wish: ledger.Wish{What: ledger.WishWater}}}
	wished := planOf(asked)
	if wished.Plan.Value != none.Plan.Value || !slices.Equal(wished.Plan.Plantings, none.Plan.Plantings) {
		t.Errorf("wished on the pages: %.3f meals, in the garden file %.3f", wished.Plan.Value, none.Plan.Value)
	}
	if len(wished.Day.Heard) != 1 || !strings.Contains(wished.Day.Heard[0].Why, "a day more in a dry week") {
		t.Fatalf("heard %+v", wished.Day.Heard)
	}
	price, ok := wished.priceOf(context.Background(), wished.Day.Heard[0])
	t.Logf("%s %s", price.Words, price.Says)
	if !ok || price.Meals <= 0 {
		t.Errorf("price %+v", price)
	}
	if full.JSON().Water[15].Wished != 900 {
		t.Error("the JSON does not say the wish")
	}
}
