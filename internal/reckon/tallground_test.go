package reckon

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/weather"
)

// twoBeds are alike in all but where they lie, one behind the other in the
// noon sun.
const twoBeds = `garden: Two beds
place: {latitude: %s, longitude: 120 W, elevation: 50 m}
from: %s
media:
  mix: {kind: compost blend}
spaces:
  north-bed: {kind: raised bed, east: 0 m, north: 1 m, length: 3 m, width: 1 m, rim: 30 cm, depth: 40 cm, medium: mix, water: drip}
  south-bed: {kind: raised bed, east: %s, north: -0.5 m, length: 3 m, width: 1 m, rim: 30 cm, depth: 40 cm, medium: mix, water: drip}
wants:
  sweet corn: 2
`

func twoBedsInputs(t *testing.T, lat, from, east string) *Inputs {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("two", fmt.Appendf(nil, twoBeds, lat, from, east), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	south := strings.HasSuffix(lat, "S")
	n := &weather.Normals{}
	for m := range 12 {
		x := -math.Cos(2 * math.Pi * float64(m) / 12)
		if south {
			x = -x
		}
		n.TmaxC[m], n.TminC[m], n.RainMM[m] = 15+9*x, 6+6*x, 50
	}
	return &Inputs{Garden: g, Book: book, Normals: n, Date: g.From, Weeks: 40, Futures: 20, Seed: 1, Work: 400_000}
}

// tollOf is what a garden's place says of tall plants.
func tollOf(t *testing.T, in *Inputs) [][12]float64 {
	t.Helper()
	p, err := NewPlace(in)
	if err != nil {
		t.Fatal(err)
	}
	return p.Toll
}

// A stand in the bed on the equator's side costs the other bed light; one on
// the pole side, or to the side and far off, costs next to nothing. North and
// south of the equator, most where the sun is low.
func TestTallTollFollowsTheLight(t *testing.T) {
	year := func(x [12]float64) (sum float64) {
		for _, m := range x {
			sum += m
		}
		return sum
	}
	for _, tt := range []struct {
		lat, from, east string
		dear, cheap     int // by space; -1 = neither
		winter          int // month
	}{
		{"47 N", "6 April 2015", "0 m", 1, 0, 11},
		{"47 S", "5 October 2015", "0 m", 0, 1, 5},
		{"47 N", "6 April 2015", "15 m", -1, 0, 11},
	} {
		in := twoBedsInputs(t, tt.lat, tt.from, tt.east)
		got := tollOf(t, in)
		if tt.dear < 0 {
			if got[0] != ([12]float64{}) && year(got[0])+year(got[1]) > 0.2 {
				t.Errorf("15 m apart: %v", got)
			}
			continue
		}
		if year(got[tt.dear]) < 4*year(got[tt.cheap]) || year(got[tt.dear]) < 1 {
			t.Errorf("%s: %.2f meals a week by month on the equator's side, %.2f on the pole side", tt.lat, got[tt.dear], got[tt.cheap])
		}
		summer := (tt.winter + 6) % 12
		if got[tt.dear][tt.winter] <= got[tt.dear][summer] {
			t.Errorf("%s: the low sun's shadow costs %.2f, the high sun's %.2f", tt.lat, got[tt.dear][tt.winter], got[tt.dear][summer])
		}
	}
}

// The price is the toll of the plant's tall weeks, by hand.
func TestTallPriceByHand(t *testing.T) {
	in := twoBedsInputs(t, "47 N", "6 April 2015", "0 m")
	sp := in.Garden.Spaces[0] // 3 m2
	toll := [12]float64{3: 10, 4: 20}
	// Weeks from Monday 6 April, tall from week 2: those of 23 and 30 April
	// count at 10, that of 7 May at 20, by 0.3 of 3 m2.
	got := tallPrice(sp, toll, in.Date.Monday(), 1, 2, []float64{0.3, 0.3, 0.3, 0.3})
	if want := 0.3 / 3 * (10 + 10 + 20); math.Abs(got-want) > 1e-9 {
		t.Errorf("%.3f meals, want %.3f", got, want)
	}
	if tallPrice(sp, toll, in.Date.Monday(), 1, -1, []float64{0.3}) != 0 {
		t.Error("a low plant pays")
	}
}

// tallIn is the m2-weeks of tall plants the plan puts in a space.
func tallIn(r *Result, id string) (sum float64) {
	for _, pl := range r.Plan.Plantings {
		o := r.Problem.Options[pl.Option]
		if o.TallFrom < 0 || r.Problem.Spaces[o.Space].ID != id {
			continue
		}
		for w := o.TallFrom; w <= o.End && w-o.Week < len(o.Footprint); w++ {
			sum += float64(pl.Plants) * o.Footprint[w-o.Week]
		}
	}
	return sum
}

// The plan puts tall plants on the pole side because the numbers say so: with
// the two beds' numbers changed over, and made ten times as large so that the
// search cannot miss them, it puts them on the other.
func TestThePlanPutsTallToThePoleSide(t *testing.T) {
	in := twoBedsInputs(t, "47 N", "6 April 2015", "0 m")
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	place := func() (north, south float64) {
		r, err := Reckon(context.Background(), in, g)
		if err != nil {
			t.Fatal(err)
		}
		return tallIn(r, "north-bed"), tallIn(r, "south-bed")
	}
	north, south := place()
	t.Logf("toll %.2f; north %.1f, south %.1f m2-weeks", g.Place.Toll, north, south)
	if north <= 1.5*south || north == 0 {
		t.Errorf("%.1f m2-weeks of tall plants in the north bed, %.1f in the south", north, south)
	}
	g.Place.Toll[0], g.Place.Toll[1] = g.Place.Toll[1], g.Place.Toll[0]
	for i := range g.Place.Toll {
		for m := range g.Place.Toll[i] {
			g.Place.Toll[i][m] *= 10
		}
	}
	north, south = place()
	t.Logf("changed over: north %.1f, south %.1f m2-weeks", north, south)
	if south <= 1.5*north || south == 0 {
		t.Errorf("numbers changed over: %.1f m2-weeks in the north bed, %.1f in the south", north, south)
	}
}

// sideBeds are two long beds beside each other, one of them nearer the equator.
const sideBeds = `garden: Beds side by side
place: {latitude: %s, longitude: 120 W, elevation: 50 m}
from: 2 March 2015
media:
  mix: {kind: compost blend}
spaces:
  west-bed: {kind: raised bed, east: -70 cm, north: %s, length: 3 m, width: 1 m, turn: 90, rim: 30 cm, depth: 40 cm, medium: mix, water: drip}
  east-bed: {kind: raised bed, east: 70 cm, north: %s, length: 3 m, width: 1 m, turn: 90, rim: 30 cm, depth: 40 cm, medium: mix, water: drip}
wants:
  salad: {meals: 6, crops: [lettuce-leaf, lettuce-romaine, tatsoi]}
  sweet corn: 2
`

// sideInputs are the beds at 33 N, in the climate of twoBeds made sideHotterC
// warmer (29 and 17 °C in the warmest month), or at 47 N in that climate as it is.
func sideInputs(t *testing.T, west, east string, hot bool) *Inputs {
	t.Helper()
	in, lat := twoBedsInputs(t, "47 N", "2 March 2015", "0 m"), "47 N"
	if hot {
		lat = "33 N"
		for m := range 12 {
			in.Normals.TmaxC[m] += sideHotterC
			in.Normals.TminC[m] += sideHotterC
		}
	}
	g, faults := garden.Read("side", fmt.Appendf(nil, sideBeds, lat, west, east), garden.FromBook(in.Book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	in.Garden = g
	return in
}

const sideHotterC = 5

// In a hot place tall plants belong to the west of salads, where their
// afternoon shade is welcome; in a cool place on the pole side, where they take
// least. So with the west bed nearer the equator the choice turns with the
// warmth, and with the garden mirrored it does not. Where nobody wants salads
// there is no gain, and heat turns nothing.
func TestWelcomeShadeTurnsTheChoice(t *testing.T) {
	summer := func(x [12]float64) (sum float64) {
		for m := time.May; m <= time.September; m++ {
			sum += x[m-1]
		}
		return sum
	}
	for _, tt := range []struct {
		name, west, east string
		hot, salads      bool
		toWest           bool
	}{
		{"hot", "-60 cm", "60 cm", true, true, true},
		{"cool", "-60 cm", "60 cm", false, true, false},
		{"hot, no salads", "-60 cm", "60 cm", true, false, false},
		{"hot, mirrored", "60 cm", "-60 cm", true, true, true},
		{"cool, mirrored", "60 cm", "-60 cm", false, true, true},
	} {
		in := sideInputs(t, tt.west, tt.east, tt.hot)
		if !tt.salads {
			in.Garden.Wants = in.Garden.Wants[1:]
		}
		toll := tollOf(t, in)
		west, east := summer(toll[0]), summer(toll[1])
		t.Logf("%s: %.2f meals a week in the west bed, %.2f in the east one, summed over five months", tt.name, west, east)
		if tt.toWest && west > 0.9*east || !tt.toWest && east > 0.9*west {
			t.Errorf("%s: %.2f in the west bed, %.2f in the east one", tt.name, west, east)
		}
	}
}

// The plan follows: in the hot garden its corn stands to the west, in the cool
// one to the east. Numbers are made ten times as large, as above, and eight
// seeds are summed, since rotation sends a second batch to the other bed.
func TestThePlanSeeksWelcomeShade(t *testing.T) {
	for _, hot := range []bool{true, false} {
		west, east := 0.0, 0.0
		for seed := range uint64(8) {
			r := sidePlan(t, hot, seed+1)
			west, east = west+tallIn(r, "west-bed"), east+tallIn(r, "east-bed")
			if value, _, bound := r.Expected(); bound < value {
				t.Errorf("a bound of %.2f is proved, and the plan is worth %.2f", bound, value)
			}
		}
		t.Logf("hot %v: west %.1f, east %.1f m2-weeks of tall plants", hot, west, east)
		if hot && west <= 2*east || !hot && east <= 2*west || west+east == 0 {
			t.Errorf("hot %v: %.1f m2-weeks of tall plants in the west bed, %.1f in the east one", hot, west, east)
		}
	}
}

// sidePlan plans the beds side by side, the west one nearer the equator.
func sidePlan(t *testing.T, hot bool, seed uint64) *Result {
	t.Helper()
	in := sideInputs(t, "-60 cm", "60 cm", hot)
	in.Seed, in.Work = seed, 3*in.Work // a third of it leaves more to luck: 85 of 202 m2-weeks in the wrong bed, not 69 of 237
	corn := &in.Garden.Wants[1]
	corn.Meals = 3            // a crop is planned for what is wanted of its food, and no more
	if corn.Liking = 4; hot { // as many batches as the cool place has
		corn.From, corn.To = 8, 9
	}
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	for i := range g.Place.Toll {
		for m := range g.Place.Toll[i] {
			g.Place.Toll[i][m] *= 10
		}
	}
	r, err := Reckon(context.Background(), in, g)
	if err != nil {
		t.Fatal(err)
	}
	return r
}
