package crop

import (
	"bytes"
	"math/rand/v2"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
)

func load(t testing.TB) *Book {
	t.Helper()
	b, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func mustCrop(t testing.TB, id ID) *Crop {
	t.Helper()
	c, ok := load(t).Crop(id)
	if !ok {
		t.Fatalf("no crop %q in the book", id)
	}
	return c
}

// Every edible plant and flower of our list, and the types that decide.
var wanted = strings.Fields(`ageratum amaranth-leaf anise-hyssop artichoke arugula asparagus basil beet bitter-melon
	black-eyed-susan blackberry blueberry-shb borage broccoli broccoli-raab brussels-sprouts
	buckwheat cabbage calendula california-poppy carrot cauliflower celeriac celery celosia
	chamomile chard chayote chervil chicory chives choy-sum cilantro collards coneflower
	corn-salad cornflower cosmos cowpea crimson-clover cucumber daikon dill dragon-fruit
	dry-corn edamame eggplant endive fava-bean fennel-florence fig gai-lan garden-cress garlic
	garlic-chives ginger gomphrena ground-cherry kale kohlrabi kumquat lavender leek lemon
	lemon-balm lemongrass lettuce-head lettuce-leaf lettuce-romaine lima-bean lime luffa
	malabar-spinach mandarin marigold-african marigold-french marjoram mealycup-sage melon
	milkweed-narrowleaf miners-lettuce mint mizuna mustard-greens napa-cabbage nasturtium
	nz-spinach okra onion-bulb onion-bunching orange oregano pak-choi parsley parsnip
	passionfruit pea-edible-pod pea-overwintering pea-shelling peanut pepper-hot pepper-sweet perilla phacelia
	potato pumpkin purslane radish raspberry rhubarb roselle rosemary runner-bean rutabaga sage
	salsify shallot snap-bean-bush snap-bean-pole snapdragon sorrel spinach sprouting-broccoli
	statice strawberry summer-squash sunchoke sunflower sweet-alyssum sweet-corn sweet-pea
	sweet-potato taro tarragon tatsoi thyme tithonia tomatillo tomato turmeric turnip viola
	water-spinach watercress watermelon winter-squash yardlong-bean yarrow zinnia tomato-bush
	tomato-cherry onion-overwintering onion-short-day onion-intermediate cauliflower-winter
	cabbage-winter cabbage-spring strawberry-day-neutral sweet-corn-early potato-early`)

func TestBookHoldsTheWantedCrops(t *testing.T) {
	b := load(t)
	for _, id := range wanted {
		if _, ok := b.Crop(ID(id)); !ok {
			t.Errorf("no crop %q in the book", id)
		}
	}
	if len(b.Crops) != len(wanted) {
		t.Errorf("%d crops in the book, %d wanted", len(b.Crops), len(wanted))
	}
	if !slices.IsSortedFunc(b.Crops, func(x, y *Crop) int { return strings.Compare(string(x.ID), string(y.ID)) }) {
		t.Error("crops are not in order of ID")
	}
}

// Written apart from gaps, so that a hole there shows here.
func TestEveryCropIsWhole(t *testing.T) {
	for _, c := range load(t).Crops {
		for _, k := range figKeys() {
			f := *k.at(c)
			if f.Known() && (f.Low > f.Value || f.Value > f.High) {
				t.Errorf("%s %s: %v not between %v and %v", c.ID, k.name, f.Value, f.Low, f.High)
			}
			if !f.Known() && f != (Figure{}) {
				t.Errorf("%s %s: a figure without a source: %+v", c.ID, k.name, f)
			}
		}
		for name, f := range map[string]Figure{"spacing": c.SpacingM, "spread": c.SpreadM, "height": c.HeightM, "volume": c.VolumeL, "depth": c.MinDepthM, "harvest days": c.HarvestDays, "best sun": c.SunBestH, "best light": c.DLIBest} {
			if f.Value <= 0 {
				t.Errorf("%s: %s is %v", c.ID, name, f.Value)
			}
		}
		if c.Harvest != Bloom && (c.YieldKg.Value <= 0 || c.MealKg <= 0 || len(c.Foods) == 0) {
			t.Errorf("%s: yield %v, meal %v, foods %v", c.ID, c.YieldKg.Value, c.MealKg, c.Foods)
		}
		for _, w := range c.Ways {
			days := c.DaysFromSet.Value
			if w == Sow {
				days = c.DaysFromSow.Value
			}
			if days <= 0 {
				t.Errorf("%s: %s has no days to harvest", c.ID, w)
			}
			if w == SetOut && c.NurseryWeeks.Value <= 0 {
				t.Errorf("%s: set out without weeks of raising", c.ID)
			}
			if w != Plant {
				if _, ok := c.EmergeDaysAt(c.SoilOpt.Value); !ok {
					t.Errorf("%s: seed never comes up at its best, %v °C", c.ID, c.SoilOpt.Value)
				}
			}
		}
		if !(c.BaseC.Value < c.RefC && c.RefC < c.CeilC.Value && c.OptC.Value < c.CeilC.Value) {
			t.Errorf("%s: base %v, ref %v, opt %v, ceil %v out of order", c.ID, c.BaseC.Value, c.RefC, c.OptC.Value, c.CeilC.Value)
		}
	}
}

// A plant's yield at its wide spacing must not add up to more than the best
// outdoor beds give.
func TestYieldPerAreaIsPossible(t *testing.T) {
	const most = 10 // kg/m², a good season of climbing tomatoes outdoors, [knott5] field and intensive beds 4-9
	for _, c := range load(t).Crops {
		if y := c.YieldKg.Value / (c.SpacingM.Value * c.SpacingM.Value); y > most {
			t.Errorf("%s gives %.1f kg/m², most %v", c.ID, y, most)
		}
	}
}

// Rules every gardener knows; basis common practice unless said.
func TestWaysFollowPractice(t *testing.T) {
	for _, tt := range []struct {
		ids  string
		ways []Way
	}{
		{"carrot parsnip radish turnip arugula cilantro dill corn-salad", []Way{Sow}}, // never pricked out
		{"tomato pepper-sweet eggplant celery leek brussels-sprouts", []Way{SetOut}},
		{"potato garlic strawberry onion-overwintering", []Way{Plant}},
		{"snap-bean-bush beet lettuce-leaf kale summer-squash", []Way{Sow, SetOut}},
		{"onion-bulb", []Way{Plant, SetOut, Sow}},
	} {
		for _, id := range strings.Fields(tt.ids) {
			if got := mustCrop(t, ID(id)).Ways; !slices.Equal(got, tt.ways) {
				t.Errorf("%s: ways %v, want %v", id, got, tt.ways)
			}
		}
	}
	for _, id := range []ID{"garlic", "fava-bean", "onion-overwintering"} {
		if !mustCrop(t, id).AutumnPlant {
			t.Errorf("%s is not planted in autumn", id)
		}
	}
	if c := mustCrop(t, "sweet-corn"); c.Block < 12 || c.BatchMin < c.Block {
		t.Errorf("sweet corn: block %d, batch from %d: wind needs a block", c.Block, c.BatchMin)
	}
}

// Figures the tables we copied from hold wrongly, and what they must be.
func TestMendedFigures(t *testing.T) {
	for _, tt := range []struct {
		id       ID
		key      string
		min, max float64
		from     string
	}{
		{"kale", "frost-kill", -18, -10, "kill row -15 to -10 against a class range of -3.9"},
		{"leek", "frost-kill", -15, -7, "kill row against the class range"},
		{"spinach", "frost-kill", -15, -9, "kill row -15 to -9 against the class range -3.9"},
		{"garlic", "frost-kill", -25, -12, "kill row"},
		{"carrot", "frost-kill", -10, -6, "kill row; taxa said half-hardy"},
		{"tomato", "frost-kill", -2, 0, "0 to 5 was a chill range"},
		{"cucumber", "frost-kill", -2, 0, "0 to 5 was a chill range"},
		{"eggplant", "base", 10, 12, "15.6 is a regression base"},
		{"cucumber", "base", 10, 12.8, "15.5 is a regression base on the maximum"},
		{"melon", "chill", 10, 12, "a night limit of 15 kills melons wherever they are grown"},
		{"pepper-sweet", "fruit-min-night", 13, 16, "8-10 raised set of seedless fruit"},
		{"lettuce-leaf", "soil-max", 26, 33, "35 against 12 % at 30 and none at 35 [HM1954]"},
		{"tomato", "opt", 25, 30, "the printed 18-24 are monthly means"},
		{"turnip", "days-from-sow", 45, 60, "35-45 was of greens"},
	} {
		c := mustCrop(t, tt.id)
		i := slices.IndexFunc(figKeys(), func(k figKey) bool { return k.name == tt.key })
		f := *figKeys()[i].at(c)
		if f.Value < tt.min || f.Value > tt.max {
			t.Errorf("%s %s = %v, want %v to %v (%s)", tt.id, tt.key, f.Value, tt.min, tt.max, tt.from)
		}
		if f.Note == "" {
			t.Errorf("%s %s was mended but has no note", tt.id, tt.key)
		}
	}
	for _, id := range []ID{"carrot", "beet", "chard", "cilantro"} {
		if h := mustCrop(t, id).Hardiness; h != "hardy" {
			t.Errorf("%s is %s: its kill rows reach -5 to -10", id, h)
		}
	}
}

func TestFoodsAreAllServed(t *testing.T) {
	b := load(t)
	foods := b.Foods()
	if len(foods) != 23 {
		t.Errorf("%d foods, want 23", len(foods))
	}
	for _, f := range foods {
		if len(f.Crops) == 0 {
			t.Errorf("no crop serves %q", f.Name)
		}
		second := false
		for _, id := range f.Crops {
			c, _ := b.Crop(id)
			if c.Harvest == Bloom {
				t.Errorf("%s is grown for its flowers and serves %q", id, f.Name)
			}
			if c.Foods[0] != f.Name {
				second = true
			} else if second {
				t.Errorf("%s: %s names it first but stands behind a crop that does not", f.Name, id)
			}
		}
	}
	if got := foods[0].Crops[0]; got != "arugula" {
		t.Errorf("first crop for salad is %q, want the first by ID among those naming salad first", got)
	}
}

func TestBookRoundTrip(t *testing.T) {
	b := load(t)
	var buf bytes.Buffer
	if err := Write(&buf, b.Crops); err != nil {
		t.Fatal(err)
	}
	again, faults := Read("again", bytes.NewReader(buf.Bytes()))
	for _, f := range faults {
		t.Error(f)
	}
	if len(again) != len(b.Crops) {
		t.Fatalf("%d crops back, want %d", len(again), len(b.Crops))
	}
	for i := range again {
		if !reflect.DeepEqual(again[i], b.Crops[i]) {
			t.Errorf("%s came back changed:\n%+v\n%+v", b.Crops[i].ID, again[i], b.Crops[i])
		}
	}
}

// The list for people and the list for the program are one.
func TestSourcesAreListedForPeople(t *testing.T) {
	doc, err := os.ReadFile("../../docs/sources.md")
	if err != nil {
		t.Fatal(err)
	}
	src, err := Sources()
	if err != nil || len(src) < 40 {
		t.Fatalf("%d sources, %v", len(src), err)
	}
	for _, s := range src {
		if !strings.Contains(string(doc), "| "+s.Key+" | "+s.Who+" | ") {
			t.Errorf("docs/sources.md does not list %s with its author", s.Key)
		}
		if s.Who == "" || s.Title == "" {
			t.Errorf("%s has no author or title", s.Key)
		}
	}
	for _, key := range []string{"ZALOM83", "MCMASTER97"} {
		if !strings.Contains(string(doc), "| "+key+" | ") {
			t.Errorf("docs/sources.md does not list %s", key)
		}
	}
}

// A recalled value may not call itself published.
func TestBasisFitsSource(t *testing.T) {
	for _, c := range load(t).Crops {
		for _, k := range figKeys() {
			f := *k.at(c)
			if f.Basis == "published" && (strings.Contains(f.Source, "RECALL") || strings.Contains(f.Source, "PRACTICE")) {
				t.Errorf("%s %s: %s cannot be published", c.ID, k.name, f.Source)
			}
		}
	}
}

func TestNearest(t *testing.T) {
	b := load(t)
	for _, tt := range []struct {
		name string
		want ID
	}{
		{"tomato", "tomato"}, {"Tomatoes", "tomato"}, {"tomatoe", "tomato"},
		{"aubergine", "eggplant"}, {"courgettes", "summer-squash"}, {"zucchini", "summer-squash"},
		{"rocket", "arugula"}, {"coriander", "cilantro"}, {"broad beans", "fava-bean"},
		{"mangetout", "pea-edible-pod"}, {"beetroot", "beet"}, {"swiss chard", "chard"},
		{"spring onions", "onion-bunching"}, {"scallions", "onion-bunching"},
		{"bok choy", "pak-choi"}, {"pak choi", "pak-choi"}, {"mache", "corn-salad"},
		{"lamb's lettuce", "corn-salad"}, {"letuce", "lettuce-leaf"}, {"sweetcorn", "sweet-corn"},
		{"dwarf French bean", "snap-bean-bush"}, {"runner beans", "runner-bean"},
		{"carot", "carrot"}, {"lettuces", "lettuce-leaf"}, {"beans", "snap-bean-bush"}, {"Onions", "onion-bulb"}, {"peas", "pea-shelling"}, {"purple sprouting broccoli", "sprouting-broccoli"},
	} {
		got, ok := b.Nearest(tt.name)
		if !ok || got != tt.want {
			t.Errorf("Nearest(%q) = %q, %v; want %q", tt.name, got, ok, tt.want)
		}
	}
	for _, name := range []string{"", "  ", "bulldozer", "x", "qqqqqqqqqqq"} {
		if got, ok := b.Nearest(name); ok {
			t.Errorf("Nearest(%q) = %q, want none", name, got)
		}
	}
}

func TestWithLeavesTheBookAlone(t *testing.T) {
	b := load(t)
	own := *mustCrop(t, "carrot")
	own.Name = "our carrot"
	c := own
	c.ID = "our-carrot"
	out := b.With([]*Crop{&own, &c})
	if len(out.Crops) != len(b.Crops)+1 {
		t.Errorf("%d crops, want %d", len(out.Crops), len(b.Crops)+1)
	}
	if got, _ := out.Crop("carrot"); got.Name != "our carrot" {
		t.Errorf("own crop did not replace the built-in one: %q", got.Name)
	}
	if got, _ := b.Crop("carrot"); got.Name != "carrot" {
		t.Errorf("the built-in book was changed: %q", got.Name)
	}
}

// TestNearestMissesNothing: passing over names of other lengths finds what
// comparing every letter of every name finds, for names with slips in them.
func TestNearestMissesNothing(t *testing.T) {
	b := load(t)
	all := b.called()
	closest := func(want string, most int, words bool) (ID, int) {
		best, id := most+1, ID("")
		for _, c := range all {
			for _, n := range c.names {
				of := []string{n}
				if words {
					of = strings.Fields(n)
				}
				for _, w := range of {
					if d := distance(want, w); d < best {
						best, id = d, c.id
					}
				}
			}
		}
		return id, best
	}
	r := rand.New(rand.NewPCG(7, 1))
	found := 0
	for range 500 {
		of := all[r.IntN(len(all))].names
		name := []byte(of[r.IntN(len(of))])
		for range r.IntN(5) {
			at := r.IntN(len(name) + 1)
			name = slices.Insert(name, at, byte('a'+r.IntN(26)))
			if r.IntN(2) == 0 {
				name = slices.Delete(name, at/2, at/2+1)
			}
		}
		want := plain(string(name))
		if want == "" {
			continue
		}
		near := 1
		if len(want) < 5 {
			near = 0
		}
		id, d := closest(want, slips(want), false)
		if d > slips(want) {
			id, d = closest(want, near, true)
			if d > near {
				id = ""
			}
		}
		got, ok := b.Nearest(string(name))
		if got != id || ok != (id != "") {
			t.Errorf("Nearest(%q) = %q, %v; comparing all finds %q", name, got, ok, id)
		}
		if ok {
			found++
		}
	}
	if found < 100 || found == 500 {
		t.Errorf("%d of 500 names were found: the slips miss the edge", found)
	}
}
