package reckon

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/weather"
)

// inventedGarden writes a garden file of so many spaces of all kinds under the
// sky and weather of the demo: a garden nobody shaped the plan on.
func inventedGarden(seed uint64, spaces int) string {
	r := rand.New(rand.NewPCG(seed, 8))
	var b strings.Builder
	fmt.Fprintf(&b, "garden: Invented %d\n\nplace:\n  latitude: 47.6 N\n  longitude: 122.3 W\n  elevation: 50 m\n  zone: America/Los_Angeles\n\nminutes a week: %d\n\nmedia:\n", seed, 60+25*spaces)
	media := 1 + spaces/3
	for k := range media {
		fmt.Fprintf(&b, "  lot-%d:\n    kind: %s\n    since: %d\n", k, []string{"garden soil", "compost blend", "potting mix"}[r.IntN(3)], 2008+r.IntN(6))
		if left := []string{"tomato", "potato", "kale", "onion-bulb", "carrot", "pea-shelling"}; r.IntN(2) == 0 {
			fmt.Fprintf(&b, "    history:\n      - {crop: %s, until: August 2014}\n", left[r.IntN(len(left))])
		}
	}
	fmt.Fprintf(&b, "\nobstacles:\n  house:\n    kind: box\n    east: 6 m\n    north: %.1f m\n    length: 10 m\n    width: 6 m\n    height: 6 m\n\nspaces:\n", []float64{-6, 30}[r.IntN(2)])
	for k := range spaces {
		fmt.Fprintf(&b, "  s%02d:\n", k)
		east, north := 1+3*float64(k%4), 1+2.4*float64(k/4)
		fmt.Fprintf(&b, "    east: %.1f m\n    north: %.1f m\n    medium: lot-%d\n", east, north, r.IntN(media))
		switch r.IntN(4) {
		case 0:
			fmt.Fprintf(&b, "    kind: bag\n    across: %d cm\n    rim: 40 cm\n    depth: 36 cm\n    water: can\n", 40+r.IntN(25))
		case 1:
			fmt.Fprintf(&b, "    kind: reservoir planter\n    length: %d cm\n    width: 40 cm\n    rim: 45 cm\n    depth: 28 cm\n    water: reservoir\n", 70+r.IntN(40))
		default:
			fmt.Fprintf(&b, "    kind: raised bed\n    length: %.1f m\n    width: 1 m\n    rim: 30 cm\n    depth: 35 cm\n    water: drip\n", 1.2+1.6*r.Float64())
			if r.IntN(2) == 0 {
				b.WriteString("    supports:\n      - {kind: trellis, length: 1.2 m, height: 1.8 m, side: pole}\n")
			}
		}
		if r.IntN(3) == 0 {
			stands := []string{"{crop: kale, set out: early August 2014, count: 3, looks: well}", "{crop: leek, set out: mid July 2014, count: 8, looks: well}", "{crop: spinach, since: mid October 2014, count: 8, looks: well}"}
			fmt.Fprintf(&b, "    standing:\n      - %s\n", stands[r.IntN(len(stands))])
		}
	}
	fmt.Fprintf(&b, "  lamps:\n    kind: lamp shelf\n    length: 1 m\n    width: 40 cm\n\nshelf:\n  places: %d\n  light: 12 mol a day\n  warmth: 19 C\n\nwants:\n", 12+3*spaces)
	foods := []string{"salad: %d", "cooking greens: %d", "roots: %d", "beans and peas: %d", "tomatoes: {meals: %d, liking: 1.3, months: July to October}", "alliums: %d", "brassica heads: %d", "potatoes: %d", "summer squash: {meals: %d, months: June to October}", "cucumbers: {meals: %d, months: July to September}"}
	for _, f := range foods {
		if r.IntN(5) > 0 {
			fmt.Fprintf(&b, "  "+f+"\n", 1+r.IntN(2+spaces/3))
		}
	}
	b.WriteString("\nseeds:\n")
	for _, c := range []string{"lettuce-leaf", "radish", "spinach", "kale", "carrot", "beet", "onion-bunching", "pea-edible-pod", "snap-bean-bush", "tomato-cherry", "summer-squash"} {
		if r.IntN(3) > 0 {
			fmt.Fprintf(&b, "  - {crop: %s, year: 2014, count: 200}\n", c)
		}
	}
	return b.String()
}

// inventedInputs are two gardens, each planned from spring.
func inventedInputs(t *testing.T, seed uint64, spaces int) *Inputs {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("invented", []byte(inventedGarden(seed, spaces)), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	site := weather.Site{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
	rec, wf := weather.Read("seattle", bytes.NewReader(demo.SeattleCSV), site)
	if len(wf) > 0 {
		t.Fatal(wf)
	}
	return &Inputs{Garden: g, Book: book, Record: rec, Date: cal.Of(2015, 4, 6), Weeks: DefaultWeeks, Futures: 20, Seed: 1, Work: testWork}
}

func inventedCases(t *testing.T) []hindsightCase {
	var out []hindsightCase
	for k, spaces := range []int{5, 11} {
		seed := uint64(11 + k)
		in := inventedInputs(t, seed, spaces)
		in.Work, in.Workers = DefaultWork, 2
		out = append(out, hindsightCase{fmt.Sprintf("invented, %d spaces", spaces), in})
	}
	return out
}
