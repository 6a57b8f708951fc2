package garden

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

// small is a garden file with nothing wrong; tests spoil one line of it.
const small = `garden: Small
place:
  latitude: 47.6 N
  longitude: 122.3 W
from: 6 April 2015
people:
  ann: {name: Ann, reach: 2'6", lift: 15 lb}
media:
  mix: {kind: potting mix, since: 2014}
obstacles:
  ash: {kind: tree, east: 9 m, north: 9 m, across: 4 m, height: 8 m, in leaf: May to October}
spaces:
  bed:
    kind: raised bed
    east: 1 m
    north: 1 m
    length: 2 m
    width: 1 m
    rim: 30 cm
    depth: 30 cm
    medium: mix
    water: can
    standing:
      - {crop: kale, since: May 2014, count: 3}
wants:
  salad: 4
nevers:
  - eggplant
seeds:
  - {crop: leek, year: 2013, count: 80}
`

func TestSmallGardenReads(t *testing.T) {
	g, faults := Read("small.yaml", []byte(small), book(t))
	if len(faults) > 0 {
		t.Fatalf("faults in a file without any:\n%s", print(faults))
	}
	s, ok := g.Space("bed")
	if !ok || s.Length.M != 2 || s.Depth.Typed != "30 cm" || s.Name != "bed" || !s.TallOK {
		t.Errorf("space bed = %+v, %v", s, ok)
	}
	if p, ok := g.Person("ann"); !ok || p.Reach.M != 0.762 || p.Reach.Typed != `2'6"` || p.Lift.Kg != 6.80388555 {
		t.Errorf("person ann = %+v, %v; want 2'6\" = 0.762 m and 15 lb = 6.80388555 kg (exact definitions)", p, ok)
	}
	if b, ok := g.Batch("mix"); !ok || b.Since != 2014 {
		t.Errorf("batch mix = %+v, %v", b, ok)
	}
	if _, ok := g.Space("shed"); ok {
		t.Error("found a space that is not there")
	}
	if g.Place.LonDeg != -122.3 || g.From != cal.Of(2015, 4, 6) {
		t.Errorf("longitude %v, from %v", g.Place.LonDeg, g.From)
	}
	want := cal.Window{Early: cal.Of(2014, 5, 1), Likely: cal.Of(2014, 5, 16), Late: cal.Of(2014, 5, 31)}
	if p := s.Standing[0]; p.Since != want || p.ID != "bed-1" {
		t.Errorf("standing = %+v, want since %v and id bed-1", p, want)
	}
}

// TestEachFault spoils the small garden in one place and wants exactly one
// fault, with these words, in this line. "from" is the line the fault stands
// in, counted in the spoilt text.
func TestEachFault(t *testing.T) {
	long := strings.Repeat("n", 300)
	for _, tt := range []struct {
		old, new string
		line     int
		what     string
		remedy   string // part of it
	}{
		{"122.3 W", "122.3 W\n  weather: ../w.csv", 5, "a file in another folder", "beside the garden file"},
		{"depth: 30 cm", "depth: 30", 20, "depth 30: a length without a unit", "60 cm or 2'6\""},
		{"depth: 30 cm", "depth: 0 cm", 20, "depth 0 cm", "more than 0"},
		{"depth: 30 cm", "depth: 18 m", 20, "depth 18 m", "Did you mean 18 cm?"},
		{"depth: 30 cm", "depth: -3 cm", 20, "depth -3 cm", "more than 0"},
		{"depth: 30 cm", "depth: \"30\"", 20, "depth 30: a length without a unit", "Add the unit"},
		{"depth: 30 cm", "volume: 700 gal\n    depth: 30 cm", 20, "volume 700 gal", "about 600 L"},
		{"depth: 30 cm", "depth:", 20, "depth without a value", "take the line out"},
		{"depth: 30 cm", "depth: [1 m, 2 m]", 20, "depth holds more than one value", "one value"},
		{"depth: 30 cm", "depht: 30 cm\n    depth: 30 cm", 20, "unknown key depht", "Did you mean depth?"},
		{"depth: 30 cm", "colour: red\n    depth: 30 cm", 20, "unknown key colour", "The keys of a space are"},
		{"depth: 30 cm", "depth: 30 cm\n    depth: 30 cm", 21, "depth written twice", "line 20"},
		{"    kind: raised bed\n", "", 13, "a space without kind", "kind:"},
		{"garden: Small\n", "", 1, "a garden file without garden", "garden:"},
		{"garden: Small", "garden: " + long, 1, "garden of 300 letters", "at most 80"},
		{"garden: Small", "garden: \"bell\\x07\"", 1, "garden with a letter that does not show", "again"},
		{"47.6 N", "95", 3, "latitude 95", "between -90 and 90"},
		{"122.3 W", "222.3 W", 4, "longitude 222.3 W", "between -180 and 180"},
		{"6 April 2015", "April 2015", 5, "from April 2015", "one day"},
		{"6 April 2015", "6 April 1815", 5, "from 6 April 1815 is out of range", "1900 to 2200"},
		{"6 April 2015", "2015-02-30", 5, "from 2015-02-30 is a day that month does not have", "number of the day"},
		{"since: May 2014", "since: June 2015", 24, "since June 2015 lies in the future", "6 April 2015"},
		{"since: May 2014", "since: winter 2014", 24, "since winter 2014 lies in two years", "January 2014"},
		{"since: May 2014", "since: 03/04/2014", 24, "since 03/04/2014 can be read two ways", "2015-03-04"},
		{"since: May 2014", "since: May 2014, set out: May 2014", 24, "a planting with since and set out", "Keep one"},
		{"since: May 2014, ", "", 24, "a planting without a date", "since:"},
		{"count: 3", "count: 3.5", 24, "count 3.5", "whole number"},
		{"count: 3", "count: 3, variety: A, one of: [A, B]", 24, "a planting with a variety and one of", "Keep variety"},
		{"count: 3", "count: 300", 24, "bed is crowded", "Look at the counts"},
		{"crop: kale", "crop: kael", 24, "unknown crop kael", "Did you mean kale?"},
		{"medium: mix", "medium: mixx", 21, "unknown batch of medium mixx", "Did you mean mix?"},
		{"water: can", "water: can\n    reached by: [anne]", 23, "unknown person anne", "Did you mean ann?"},
		{"water: can", "water: can\n    supports: [{kind: arch, length: 1 m}]", 23, "a support without height", "height:"},
		{"  - eggplant", "  - {crop: eggplant, space: bad}", 28, "unknown space bad", "Did you mean bed?"},
		{"salad: 4", "salad: 400", 26, "meals 400", "0 to 200"},
		{"salad: 4", "salads: 4", 26, "unknown food salads", "Did you mean salad?"},
		{"salad: 4", "salad: {meals: 4, liking: 9}", 26, "liking 9", "0 to 5"},
		{"salad: 4", "salad: {meals: 4, months: Juno}", 26, "months Juno", "June to October"},
		{"year: 2013", "year: 2031", 30, "year 2031 lies in the future", "year"},
		{"lift: 15 lb", "lift: 15 cm", 7, `lift 15 cm: "cm" is no unit of mass`, "8 kg"},
		{"across: 4 m, ", "", 11, "a tree without across", "across"},
		{"height: 8 m", "height: 8 m, base: 9 m", 11, "a base above the top", "underside"},
		{"kind: tree", "kind: post", 11, "in leaf of a post", "Only trees"},
		{"  bed:\n", "  Bed one:\n", 13, "id Bed one", "bed-one"},
		{"since: 2014}", "since: &y 2014}", 9, "an anchor (&)", "Write the value out"},
		{"since: 2014}", "since: *y}", 9, "an alias (*)", "Write the value out"},
		{"since: 2014}", "since: !int 2014}", 9, "a tag (!)", "Write the value out"},
		{"seeds:\n", "seeds: [\n", 29, "not read as YAML", "quotes and brackets"},
		{"    kind: raised bed", "\tkind: raised bed", 14, "a tab at the start of a line", "spaces"},
		{"seeds:\n", "---\nseeds:\n", 30, "a second document", "---"},
	} {
		if !strings.Contains(small, tt.old) {
			t.Fatalf("the small garden has no %q", tt.old)
		}
		_, faults := Read("small.yaml", []byte(strings.Replace(small, tt.old, tt.new, 1)), book(t))
		if len(faults) != 1 {
			t.Errorf("%q for %q: %d faults, want 1:\n%s", clip(tt.new), tt.old, len(faults), print(faults))
			continue
		}
		f := faults[0]
		if f.Line != tt.line || !strings.HasPrefix(f.What, tt.what) || !strings.Contains(f.Remedy, tt.remedy) {
			t.Errorf("%q for %q: got line %d, want %d, %q with %q:\n%s", clip(tt.new), tt.old, f.Line, tt.line, tt.what, tt.remedy, f)
		}
	}
}

// TestWholeFileFaults wants files that are no garden refused as a whole.
func TestWholeFileFaults(t *testing.T) {
	for name, tt := range map[string]struct{ text, what string }{
		"empty":       {"", "nothing in the file"},
		"blank":       {" \n\n", "nothing in the file"},
		"comments":    {"# nothing yet\n", "nothing in the file but comments"},
		"binary":      {"garden: \x00\x01", "not a text file"},
		"latin-1":     {"garden: caf\xe9\n", "letters in another encoding, first in line 1"},
		"huge":        {"garden: big\n" + strings.Repeat("# more\n", 200000), "1400012 bytes"},
		"entries":     {strings.Repeat("a: 1\n", 70000), "more entries than a garden has"},
		"endless":     {"garden: " + strings.Repeat("x", 9000), "line 1 is very long"},
		"brackets":    {"garden: " + strings.Repeat("[", 5000), "line 1 opens too many brackets"},
		"deep braces": {"a:\n" + strings.Repeat("{a:\n", 5000), "line 62 opens too many brackets"},
	} {
		g, faults := Read("f.yaml", []byte(tt.text), nil)
		if g != nil || len(faults) != 1 || faults[0].What != tt.what || faults[0].Remedy == "" {
			t.Errorf("%s: %d faults, want %q:\n%s", name, len(faults), tt.what, print(faults))
		}
	}
}

// TestBombsCostNothing wants anchors refused before they grow.
func TestBombsCostNothing(t *testing.T) {
	bomb := "a: &a [x, x, x, x, x, x, x, x, x]\n"
	for c := 'b'; c <= 'k'; c++ {
		p := string(c - 1)
		bomb += string(c) + ": &" + string(c) + " [" + strings.Repeat("*"+p+", ", 8) + "*" + p + "]\n"
	}
	_, faults := Read("bomb.yaml", []byte(bomb), nil)
	if len(faults) < 11 || len(faults) > maxFaults+1 {
		t.Errorf("%d faults", len(faults))
	}
}

func TestTooManySpaces(t *testing.T) {
	var b strings.Builder
	b.WriteString("garden: G\nplace: {latitude: 1, longitude: 1}\nspaces:\n")
	for i := range 231 {
		b.WriteString("  s" + plainNumber(float64(i)) + ": {kind: bench, length: 1 m, width: 1 m}\n")
	}
	_, faults := Read("many.yaml", []byte(b.String()), nil)
	if len(faults) != 1 || faults[0].What != "231 spaces" || !strings.Contains(faults[0].Remedy, "at most 200") {
		t.Errorf("faults:\n%s", print(faults))
	}
}

// TestManyFaultsAreCut wants an endless list to end in a count.
func TestManyFaultsAreCut(t *testing.T) {
	text := "garden: G\n" + strings.Repeat("x: 1\ny: 2\n", 1000)
	_, faults := Read("many.yaml", []byte(text), nil)
	last := faults[len(faults)-1]
	if len(faults) != maxFaults+1 || !strings.HasSuffix(last.What, "more faults") {
		t.Errorf("%d faults, the last %q", len(faults), last.What)
	}
}

// TestTextStaysText wants markup in names kept as the letters it is.
func TestTextStaysText(t *testing.T) {
	text := strings.NewReplacer("Small", "<em>Small</em> & 'co' 花", "name: Ann", "name: <em>").Replace(small)
	g, faults := Read("em.yaml", []byte(text), book(t))
	if len(faults) > 0 {
		t.Fatal(print(faults))
	}
	if g.Name != "<em>Small</em> & 'co' 花" || g.People[0].Name != "<em>" {
		t.Errorf("names %q, %q", g.Name, g.People[0].Name)
	}
}

// TestLineEndsAndMarks wants files of other editors read alike.
func TestLineEndsAndMarks(t *testing.T) {
	plain, _ := Read("a", []byte(small), book(t))
	for name, text := range map[string]string{
		"carriage returns": strings.ReplaceAll(small, "\n", "\r\n"),
		"byte order mark":  "\ufeff" + small,
		"no last line end": strings.TrimRight(small, "\n"),
	} {
		g, faults := Read("a", []byte(text), book(t))
		if len(faults) > 0 || !same(g, plain) {
			t.Errorf("%s: differs, %d faults:\n%s", name, len(faults), print(faults))
		}
	}
}

func TestReadLeavesTextAlone(t *testing.T) {
	text := []byte(small)
	Read("a", text, book(t))
	if !bytes.Equal(text, []byte(small)) {
		t.Error("Read changed its input")
	}
}

// TestDemoGardens reads both and looks at what later rooms rely on.
func TestDemoGardens(t *testing.T) {
	for _, tt := range []struct {
		name   string
		spaces int
		south  bool
		from   cal.Day
	}{
		{"garden.yaml", 20, false, cal.Of(2015, 4, 6)},
		{"south.yaml", 7, true, cal.Of(2015, 10, 5)},
	} {
		text, err := os.ReadFile("../../demo/" + tt.name)
		if err != nil {
			t.Fatal(err)
		}
		g, faults := Read(tt.name, text, book(t))
		if len(faults) > 0 {
			t.Fatalf("%s:\n%s", tt.name, print(faults))
		}
		if len(g.Spaces) != tt.spaces || g.From != tt.from || (g.Place.LatDeg < 0) != tt.south {
			t.Errorf("%s: %d spaces, from %v, latitude %v", tt.name, len(g.Spaces), g.From, g.Place.LatDeg)
		}
		if s, ok := g.Space("terrace-box"); ok && (s.RimUp.M != 0.4 || s.Floor.M != 6 || s.Rim.M != 6.4) {
			t.Errorf("terrace box: rim %v m, floor %v m, together %v m; want 0.4, 6 and 6.4 (the file's own figures)", s.RimUp.M, s.Floor.M, s.Rim.M)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(small))
	for _, name := range []string{"demo/garden.yaml", "demo/south.yaml", "testdata/gardens/thirty-faults.yaml"} {
		text, err := os.ReadFile("../../" + name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Add([]byte("a: &a [*a]"))
	f.Add([]byte("? a\n: b"))
	b := book(f)
	f.Fuzz(func(t *testing.T, text []byte) {
		g, faults := Read("fuzz.yaml", text, b)
		if (g == nil) != (len(faults) > 0) {
			t.Errorf("garden %v with %d faults", g != nil, len(faults))
		}
		for _, one := range faults {
			if one.What == "" || one.Remedy == "" || one.Line > 0 && (one.Col < 1 || one.Excerpt == "") {
				t.Errorf("a fault without words or place: %+v", one)
			}
			if one.What == "not read as YAML" && one.Line == 0 {
				t.Logf("parser stopped without a place on %q", text)
			}
		}
	})
}
