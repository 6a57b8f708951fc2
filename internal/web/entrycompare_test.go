package web

import (
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"regexp"
	"strings"
	"testing"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

var (
	asked   = flag.String("asked", "", "print what a person would type for each space of this garden file, as JSON, for the browser tests")
	compare = flag.String("compare", "", "compare two garden files, a,b, for the browser tests")
)

// answers are what a person types into the page of one space.
type answers struct {
	ID, Name, Kind, Size, Depth, Where, Rim, Medium, Water, Dark, Pockets string
	Supports, Standing                                                    string
	Covers, Who                                                           []string
}

// TestAsked prints a garden file as answers to the pages' questions.
func TestAsked(t *testing.T) {
	if *asked == "" {
		t.Skip("no -asked")
	}
	text, err := os.ReadFile(*asked)
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]any{}
	var spaces []answers
	all, _ := garden.Look(text, "spaces")
	for _, sp := range all.Pairs {
		var f spaceFields
		f.fromFile(sp.Value, sp.Value.Get("name"))
		spaces = append(spaces, answers{sp.Key, f.name, f.kind, f.size, f.depth, f.where, f.rim, f.medium, f.water, f.dark, f.pockets, f.supports, f.standing, f.covers, f.who})
	}
	out["spaces"] = spaces
	d := &described{text: text}
	seeds, _ := garden.Look(text, "seeds")
	var tin []string
	for _, s := range seeds.List() {
		tin = append(tin, seedLine(s))
	}
	wants := map[string]string{}
	w, _ := garden.Look(text, "wants")
	for _, k := range w.Keys() {
		wants[k] = wantLine(w.At(k))
	}
	out["seeds"], out["wants"], out["musts"], out["nevers"] = tin, wants, mustLines(d), neverLines(d)
	type row map[string]string
	var people, media, things []row
	v, _ := garden.Look(text, "people")
	for _, p := range v.Pairs {
		people = append(people, row{"name": p.Value.Get("name"), "seated": p.Value.Get("seated"), "reach": p.Value.Get("reach"), "lift": p.Value.Get("lift"), "minutes a week": p.Value.Get("minutes a week")})
	}
	v, _ = garden.Look(text, "media")
	for _, p := range v.Pairs {
		var grew []string
		for _, h := range p.Value.At("history").List() {
			grew = append(grew, or(h.Get("crop"), "family "+h.Get("family"))+" until "+h.Get("until"))
		}
		media = append(media, row{"name": p.Key, "kind": p.Value.Get("kind"), "since": p.Value.Get("since"), "history": strings.Join(grew, "\n")})
	}
	v, _ = garden.Look(text, "obstacles")
	for _, p := range v.Pairs {
		o := p.Value
		things = append(things, row{"name": o.Get("name"), "kind": o.Get("kind"), "size": sizeLine(o), "height": o.Get("height"), "where": whereLine(o), "base": o.Get("base"), "leaf": o.Get("in leaf"), "thick": o.Get("light in leaf"), "bare": o.Get("light bare")})
	}
	out["people"], out["media"], out["things"] = people, media, things
	b, err := json.Marshal(out)
	if err != nil {
		t.Fatal(err)
	}
	fmt.Printf("asked %s\n", b)
}

// TestCompare prints how two garden files differ, ids of obstacles aside.
func TestCompare(t *testing.T) {
	if *compare == "" {
		t.Skip("no -compare")
	}
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	var g [2]*garden.Garden
	for i, name := range strings.Split(*compare, ",") {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var faults []garden.Fault
		if g[i], faults = garden.Read(name, text, garden.FromBook(book)); len(faults) > 0 {
			t.Fatal(faults[0])
		}
		for k := range g[i].Obstacles {
			g[i].Obstacles[k].ID = fmt.Sprint(k)
		}
	}
	for _, c := range garden.Diff(g[0], g[1]) {
		fmt.Printf("differs %s\n", c)
	}
	fmt.Println("compared")
}

var sentence = regexp.MustCompile(`[^.?!]+[.?!]`)

// TestEntryReadsEasily wants short sentences on the pages of the description.
func TestEntryReadsEasily(t *testing.T) {
	files, err := uiFiles.ReadDir("ui/entry")
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, f := range files {
		b, err := uiFiles.ReadFile("ui/entry/" + f.Name())
		if err != nil || !strings.HasSuffix(f.Name(), ".html") {
			continue
		}
		ends := strings.NewReplacer("</li>", ".", "</p>", ".", "</a>", ".", "</h1>", ".", "</h2>", ".", "</button>", ".", "</caption>", ".", "</label>", ".")
		plain := regexp.MustCompile(`\{\{[^}]*\}\}|<[^>]*>`).ReplaceAllString(ends.Replace(string(b)), " ")
		for _, s := range sentence.FindAllString(plain, -1) {
			seen++
			if n := len(strings.Fields(s)); n > 20 {
				t.Errorf("%s: %d words: %s", f.Name(), n, strings.Join(strings.Fields(s), " "))
			}
		}
	}
	if seen < 20 {
		t.Fatalf("%d sentences seen", seen)
	}
}
