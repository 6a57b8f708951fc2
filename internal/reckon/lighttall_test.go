package reckon

import (
	"math"
	"slices"
	"testing"
	"time"

	"bedweek/internal/shade"
)

// A tall planting's cost is what the light field says with its body put in for
// good, and it stands on the pole side of its space.
func TestTallCostIsTheFieldsOwn(t *testing.T) {
	c := demoCases()[0]
	r := demoPlan(t, c)
	d := NewLightDesk(&Inputs{Garden: r.in.Garden, Date: c.date, Workers: 1}, time.UTC)
	costs, err := d.TallCosts(r)
	if err != nil {
		t.Fatal(err)
	}
	for i, one := range costs {
		if one.Hours < leastHours || one.Space == one.Neighbour || i > 0 && one.Hours > costs[i-1].Hours {
			t.Errorf("%+v", one)
		}
	}
	if len(costs) == 0 {
		t.Fatal("no tall planting of the demo takes light from any neighbour")
	}
	t.Log(costs[0].Words)
	one := costs[0]
	s, _ := d.light.surfaceOf(one.Neighbour)
	all := append(append([]shade.Body(nil), d.light.Bodies...), one.Body)
	other := shade.NewField(d.light.Field.Course(), d.light.Field.Surfaces(), all, false, 1)
	worst := math.Inf(1)
	weeks := d.light.Weeks(one.Month) // and one on either side: the day tried may lie in a week told with another month
	weeks = append(slices.Clone(weeks), (weeks[0]+51)%52, (weeks[len(weeks)-1]+1)%52)
	for _, w := range weeks {
		skip := func(i, j int) bool { return d.light.Buried(s, i, j) }
		lost := d.light.Field.Week(w).Surface(s, nil, skip).Hours.Mean - other.Week(w).Surface(s, nil, skip).Hours.Mean
		worst = min(worst, math.Abs(lost-one.Hours))
	}
	if worst > 1e-9 {
		t.Errorf("cost %.4f h; no week of or about that month has it in a new field, nearest is off by %g", one.Hours, worst)
	}
	before, _ := d.light.monthly()
	for s := range before {
		if before[s] != d.base[s] {
			t.Error("the light was changed")
		}
	}
}

// The stand keeps to the pole side on both halves of the world.
func TestTallBodyStandsOnThePoleSide(t *testing.T) {
	g := demoGarden(t, yard(southWall))
	sp := g.Spaces[0]
	for _, lat := range []float64{47, -36} {
		g.Place.LatDeg = lat
		y := 0.0
		for _, p := range tallBody(g, sp, 0.5, 2).Footprint() {
			y += p.Y / 4
		}
		if y*lat <= 0 || math.Abs(y) > 0.4 {
			t.Errorf("latitude %v: the stand's middle lies %.2f m north of the bed's", lat, y)
		}
	}
}
