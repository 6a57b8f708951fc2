package garden

import (
	"fmt"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/goccy/go-yaml/parser"
)

// steps breaks a file into patches as small as pages make them: a space's
// keys one by one, plantings one by one.
func steps(t *testing.T, text string) [][]Patch {
	t.Helper()
	file, err := parser.ParseBytes([]byte(text), 0)
	if err != nil {
		t.Fatal(err)
	}
	var all [][]Patch
	for _, section := range valueOf(file.Docs[0].Body).Pairs {
		if section.Value.Pairs == nil && section.Value.Items == nil {
			if section.Value.Text != "" {
				all = append(all, []Patch{{At: Path{section.Key}, Value: section.Value}})
			}
			continue
		}
		var one []Patch
		for _, entry := range section.Value.Pairs {
			if entry.Value.Pairs == nil || section.Key == "wants" {
				one = append(one, Patch{At: Path{section.Key, entry.Key}, Value: entry.Value})
				continue
			}
			for _, k := range entry.Value.Pairs {
				at := Path{section.Key, entry.Key, k.Key}
				switch {
				case k.Value.Items != nil && !k.Value.Line:
					for _, i := range k.Value.Items {
						one = append(one, Patch{At: append(at, New), Value: i})
					}
				case k.Value.Pairs != nil || k.Value.Items != nil || k.Value.Text != "":
					one = append(one, Patch{At: at, Value: k.Value})
				}
			}
		}
		for _, i := range section.Value.Items {
			one = append(one, Patch{At: Path{section.Key, New}, Value: i})
		}
		all = append(all, one)
	}
	return all
}

// remarks are what a gardener scribbled into the file before.
const remarks = "# the first line, ours\n\ngarden: Begun   # a working name\nplace:\n  # read off a map\n  latitude: 1 N   # roughly\n  longitude: 2 E\nspaces: {}\n# the last line\n"

// TestEnteredGardenIsTheGarden enters any garden piece by piece into a file
// with remarks, in any order of sections, and wants the same garden and every
// remark.
func TestEnteredGardenIsTheGarden(t *testing.T) {
	const seed = 20150407
	for i := range 45 {
		r := rand.New(rand.NewPCG(seed, uint64(i)))
		g := anyGarden(r)
		all := steps(t, written(g))
		r.Shuffle(len(all), func(a, b int) { all[a], all[b] = all[b], all[a] })
		text := remarks
		if i%3 == 1 {
			text = strings.ReplaceAll(text, "\n", "\r\n")
		}
		for _, section := range all {
			for _, p := range section {
				next, err := Apply([]byte(text), p)
				if err != nil {
					t.Fatalf("seed %d garden %d: %v\n%+v\nin\n%s", seed, i, err, p, text)
				}
				text = string(next)
			}
		}
		got, faults := Read("entered.yaml", []byte(text), nil)
		if len(faults) > 0 {
			t.Fatalf("seed %d garden %d: faults:\n%s\nin\n%s", seed, i, print(faults), text)
		}
		if !same(got, g) {
			t.Fatalf("seed %d garden %d differs:\n%s\n%v", seed, i, text, Diff(g, got))
		}
		for _, remark := range []string{"# the first line, ours", "# a working name", "# read off a map", "# roughly", "# the last line"} {
			if strings.Count(text, remark) != 1 {
				t.Errorf("garden %d: %q is lost or doubled in\n%s", i, remark, text)
			}
		}
	}
}

// TestOnlyTheChangeChanges makes each kind of change to the demonstration
// garden and compares the lines left over.
func TestOnlyTheChangeChanges(t *testing.T) {
	b, err := os.ReadFile("../../demo/garden.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name  string
		patch Patch
		gone  []string // lines of the old file no longer there
		fresh []string // lines that are new
	}{
		{"a size", Patch{At: Path{"spaces", "long-bed", "depth"}, Value: Text(`1'6"`)}, []string{"    depth: 40 cm"}, []string{`    depth: 1'6"`}},
		{"the same again", Patch{At: Path{"spaces", "long-bed", "depth"}, Value: Text("40 cm")}, nil, nil},
		{"a line with a remark", Patch{At: Path{"minutes a week"}, Value: Text("480")}, []string{"minutes a week: 600             # what all six together can give"}, []string{"minutes a week: 480             # what all six together can give"}},
		{"in brackets", Patch{At: Path{"spaces", "long-bed", "standing", "1", "count"}, Value: Text("12")},
			[]string{"      - {crop: leek, variety: Grey Pier, set out: mid July 2014, count: 14, looks: well}"},
			[]string{"      - {crop: leek, variety: Grey Pier, set out: mid July 2014, count: 12, looks: well}"}},
		{"a new key in its order", Patch{At: Path{"spaces", "bag-small", "turn"}, Value: Text("30 degrees")}, nil, []string{"    turn: 30 degrees"}},
		{"a new key in brackets", Patch{At: Path{"spaces", "long-bed", "standing", "1", "keep"}, Value: Text("yes")},
			[]string{"      - {crop: leek, variety: Grey Pier, set out: mid July 2014, count: 14, looks: well}"},
			[]string{"      - {crop: leek, variety: Grey Pier, set out: mid July 2014, count: 14, looks: well, keep: yes}"}},
		{"out of brackets", Patch{Op: Drop, At: Path{"spaces", "long-bed", "standing", "1", "variety"}},
			[]string{"      - {crop: leek, variety: Grey Pier, set out: mid July 2014, count: 14, looks: well}"},
			[]string{"      - {crop: leek, set out: mid July 2014, count: 14, looks: well}"}},
		{"a planting more", Patch{At: Path{"spaces", "bag-small", "standing", New}, Value: Value{Line: true, Pairs: []KeyValue{{"crop", Text("kale")}, {"since", Text("March 2015")}, {"count", Text("2")}}}},
			nil, []string{"    standing:", "      - {crop: kale, since: March 2015, count: 2}"}},
		{"a planting less", Patch{Op: Drop, At: Path{"spaces", "long-bed", "standing", "0"}},
			[]string{"      - {crop: garlic, variety: Purple Skerry, since: 18 October 2014, count: 40, looks: well, keep: yes}"}, nil},
		{"a never less", Patch{Op: Drop, At: Path{"nevers", "0"}}, []string{"  - eggplant                   # one household cannot stand it"}, nil},
		{"a want", Patch{At: Path{"wants", "salad"}, Value: Text("7")},
			[]string{"    - {meals: 9, liking: 1.2, months: April to October}", "    - {meals: 5, months: November to March}", "  salad:"}, []string{"  salad: 7"}},
		{"a person gone", Patch{Op: Drop, At: Path{"people", "ike"}},
			[]string{"  ike:", "    name: Ike                   # a bad back: no lifting", "    reach: 55 cm", "    lift: 6 kg", "    minutes a week: 60"}, nil},
		{"a shelf", Patch{At: Path{"shelf", "places"}, Value: Text("60")}, []string{"  places: 48"}, []string{"  places: 60"}},
		{"an id", Patch{Op: Key, At: Path{"spaces", "basket"}, To: "window-basket"}, []string{"  basket:"}, []string{"  window-basket:"}},
		{"moved up", Patch{Op: Move, At: Path{"spaces", "basket"}, To: "tier-low"}, nil, nil},
		{"moved down", Patch{Op: Move, At: Path{"spaces", "tier-low"}, To: "basket"}, nil, nil},
		{"moved last", Patch{Op: Move, At: Path{"obstacles", "house"}}, nil, nil},
	} {
		out, err := Apply(b, tt.patch)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		gone, fresh := lineCount(string(b), string(out)), lineCount(string(out), string(b))
		if fmt.Sprint(gone) != fmt.Sprint(counted(tt.gone)) || fmt.Sprint(fresh) != fmt.Sprint(counted(tt.fresh)) {
			t.Errorf("%s: gone %v, new %v; want %v and %v", tt.name, gone, fresh, tt.gone, tt.fresh)
		}
		if tt.patch.Op == Key || tt.name == "a person gone" {
			continue // names of it elsewhere are the caller's
		}
		g, faults := Read("garden.yaml", out, book(t))
		if len(faults) > 0 {
			t.Errorf("%s: %s", tt.name, print(faults))
			continue
		}
		if tt.patch.Op == Move && tt.patch.At[0] == "spaces" {
			order := ""
			for _, s := range g.Spaces {
				order += string(s.ID) + " "
			}
			want := map[string]string{"moved up": "basket tier-low tier-mid", "moved down": "tier-low basket"}[tt.name]
			if !strings.Contains(order, want) {
				t.Errorf("%s: order %s, want %s in it", tt.name, order, want)
			}
		}
	}
}

// lineCount counts the lines of a that b has fewer of.
func lineCount(a, b string) map[string]int {
	n := map[string]int{}
	for _, l := range strings.Split(a, "\n") {
		n[l]++
	}
	for _, l := range strings.Split(b, "\n") {
		n[l]--
	}
	for l, k := range n {
		if k <= 0 {
			delete(n, l)
		}
	}
	return n
}

func counted(lines []string) map[string]int {
	n := map[string]int{}
	for _, l := range lines {
		n[l]++
	}
	return n
}

// TestTypedTextReadsBack wants whatever is typed into a name to come back.
func TestTypedTextReadsBack(t *testing.T) {
	for _, typed := range []string{`2'6"`, "yes", "null", "~", "12", "a: b", "# x", "it's", `say "hi"`, "- x", "花", "{x}", "*a", "0x1F", "1e3", "2015-03-04",
		"ends:", "a #b", "a\\b", "'", `"`, "[", "<em>", "true", "...", "---", "? x", "! x", "<<", "=", "a, b", "key: [1", "\u00a0x"} {
		out, err := Apply([]byte(remarks), Patch{At: Path{"garden"}, Value: Text(typed)},
			Patch{At: Path{"people", "p"}, Value: Value{Pairs: []KeyValue{{"name", Text(typed)}}, Line: true}})
		if err != nil {
			t.Errorf("%q: %v", typed, err)
			continue
		}
		g, faults := Read("x.yaml", out, nil)
		if len(faults) > 0 {
			t.Errorf("%q: %s\n%s", typed, print(faults), out)
			continue
		}
		if want := strings.TrimSpace(typed); g.Name != want || g.People[0].Name != want {
			t.Errorf("typed %q, read %q and %q", typed, g.Name, g.People[0].Name)
		}
	}
}

func TestPatchesThatCannotBe(t *testing.T) {
	for _, p := range []Patch{{}, {At: Path{"garden", "x"}, Value: Text("1")}, {Op: Move, At: Path{"spaces", "none"}}, {Op: Key, At: Path{"place"}, To: "garden"}} {
		if out, err := Apply([]byte(remarks), p); err == nil {
			t.Errorf("%+v: no fault, text\n%s", p, out)
		}
	}
	if _, err := Apply([]byte("garden: [a"), Patch{At: Path{"garden"}, Value: Text("b")}); err == nil {
		t.Error("a text that is no YAML was changed")
	}
}
