package crop

import (
	"bytes"
	"reflect"
	"strings"
	"testing"
)

// whole is one sound crop, our own invention, which each fault below spoils.
const whole = `crop: test-leaf
name: test leaf
latin: Herba probationis
family: Testaceae
foods: salad
class: leaf
season: cool
hardiness: hardy
ways: sow outdoors
harvest: once
habit: rosette
emergence-like: lettuce
soil-min: 2 1 3 | RECALL | memory
soil-opt: 18 15 20 | RECALL | memory
soil-max: 28 26 30 | RECALL | memory
sow-depth-mm: 5 3 8 | PRACTICE | common-practice
base: 4 2 6 | RECALL | memory | a note
opt: 20 18 22 | RECALL | memory
ceil: 28 26 30 | RECALL | memory
ref: 16
days-from-sow: 50 40 60 | RECALL + PRACTICE | memory
hold-days: 14 7 21 | PRACTICE | common-practice
harvest-days: 1 1 1 | PRACTICE | common-practice
spacing-m: 0.2 0.1 0.3 | PRACTICE | common-practice
spread-m: 0.2 0.1 0.3 | RECALL | memory
height-m: 0.2 0.1 0.3 | RECALL | memory
min-depth-m: 0.15 0.1 0.2 | PRACTICE | common-practice
volume-l: 2 1 3 | PRACTICE | common-practice
yield-kg: 0.2 0.1 0.3 | RECALL | memory
meal-kg: 0.07
shelf-days: 7 5 10 | RECALL | memory
sun-min-h: 3 2 4 | RECALL | memory
sun-best-h: 5 4 6 | RECALL | memory
dli-min: 8 6 10 | RECALL | memory
dli-best: 14 12 17 | RECALL | memory
frost-seedling: -3 -5 -1 | RECALL | memory
frost-kill: -6 -8 -4 | RECALL | memory
interval-years: 1 1 2 | PRACTICE | common-practice
batch: 4 12
minutes: 10 0.1 5
end: test-leaf
`

func TestReadWholeCrop(t *testing.T) {
	crops, faults := Read("t.txt", strings.NewReader("# ours\r\n\n"+strings.ReplaceAll(whole, "\n", "\r\n")))
	if len(crops) != 1 || len(faults) != 0 {
		t.Fatalf("%d crops, faults %v", len(crops), faults)
	}
	c := crops[0]
	if want := (Figure{Value: 4, Low: 2, High: 6, Source: "RECALL", Basis: "memory", Note: "a note"}); c.BaseC != want {
		t.Errorf("base %+v, want %+v", c.BaseC, want)
	}
	if c.GermOwn || c.GermTable != "lettuce" || len(c.Germ) != 9 {
		t.Errorf("emergence: own %v, table %q, %d rows", c.GermOwn, c.GermTable, len(c.Germ))
	}
}

type file string

func (f file) replace(old, new string) file { return file(strings.Replace(string(f), old, new, 1)) }

// Each broken file is named by its one fault, at its line.
func TestBrokenFiles(t *testing.T) {
	swap := func(old, new string) file {
		if !strings.Contains(whole, old) {
			t.Fatalf("%q is not in the sound crop", old)
		}
		return file(strings.Replace(whole, old, new, 1))
	}
	for _, tt := range []struct {
		what string
		file file
		want string
		line int
	}{
		{"unknown key", swap("base: 4", "bsae: 4"), `no key is called "bsae"`, 17},
		{"upside-down range", swap("base: 4 2 6", "base: 4 6 2"), "range upside down", 17},
		{"value outside its range", swap("base: 4 2 6", "base: 7 2 6"), "range upside down", 17},
		{"unknown source", swap("base: 4 2 6 | RECALL", "base: 4 2 6 | MY-UNCLE"), `no source is called "MY-UNCLE"`, 17},
		{"second source unknown", swap("RECALL + PRACTICE", "RECALL + HEARSAY"), `no source is called "HEARSAY"`, 21},
		{"no source", swap("base: 4 2 6 | RECALL | memory | a note", "base: 4 2 6"), "needs numbers, a source and a basis", 17},
		{"unknown basis", swap("base: 4 2 6 | RECALL | memory", "base: 4 2 6 | RECALL | certain"), `"certain" is not a basis`, 17},
		{"impossible value", swap("ceil: 28 26 30", "ceil: 280 260 300"), "impossible: outside", 19},
		{"impossible yield", swap("yield-kg: 0.2 0.1 0.3", "yield-kg: 0 0 0"), "impossible: outside", 29},
		{"not a number", swap("ceil: 28", "ceil: warm"), `"warm" is not a number`, 19},
		{"infinity", swap("ceil: 28 26 30", "ceil: 28 26 Inf"), `"Inf" is not a number`, 19},
		{"too few numbers", swap("ceil: 28 26 30", "ceil: 28"), "needs three numbers", 19},
		{"given twice", swap("ref: 16", "ref: 16\nref: 17"), "ref is given twice, first on line 20", 21},
		{"cut short", file(strings.SplitAfter(whole, "height-m: 0.2")[0]), "cut short: crop test-leaf, begun on line 1, has no end", 26},
		{"next crop begins too soon", swap("end: test-leaf\n", "") + file(strings.ReplaceAll(whole, "test-leaf", "test-two")), "cut short: crop test-leaf", 41},
		{"wrong end", swap("end: test-leaf", "end: test-reaf"), `ends "test-reaf"`, 41},
		{"missing days", swap("days-from-sow: 50 40 60 | RECALL + PRACTICE | memory\n", ""), `may be started by "sow outdoors" but gives no days-from-sow`, 40},
		{"missing spacing", swap("spacing-m: 0.2 0.1 0.3 | PRACTICE | common-practice\n", ""), "needs spacing-m", 40},
		{"missing yield", swap("yield-kg: 0.2 0.1 0.3 | RECALL | memory\n", ""), "needs yield-kg", 40},
		{"no emergence", swap("emergence-like: lettuce\n", ""), "needs an emergence table", 40},
		{"unknown table", swap("emergence-like: lettuce", "emergence-like: lettice"), `no emergence table is called "lettice"`, 12},
		{"unknown food", swap("foods: salad", "foods: pudding"), `"pudding" is not one of`, 5},
		{"unknown way", swap("ways: sow outdoors", "ways: throw"), `"throw" is not a way of starting`, 9},
		{"unknown harvest", swap("harvest: once", "harvest: sometimes"), "not a way of picking", 10},
		{"base above optimum", swap("base: 4 2 6", "base: 18 2 20").replace("opt: 20 18 22", "opt: 18 18 22"), "base must be below opt", 41},
		{"reference below base", swap("ref: 16", "ref: 3"), "ref must lie between base and ceil", 41},
		{"batch upside down", swap("batch: 4 12", "batch: 12 4"), "upside down", 39},
		{"lonely cold", swap("batch: 4 12", "vern-max: 10 8 12 | RECALL | memory\nbatch: 4 12"), "stand together", 42},
		{"no colon", swap("ref: 16", "ref 16"), "not a line of the book", 20},
		{"empty value", swap("ref: 16", "ref:"), "ref has no value", 20},
		{"bad name", swap("crop: test-leaf", "crop: Test Leaf").replace("end: test-leaf", "end: Test Leaf"), "cannot name a crop", 1},
		{"same crop twice", whole + whole, "a second crop of this name", 42},
		{"line outside", "ref: 16\n" + whole, "a line outside any crop", 1},
		{"not UTF-8", swap("test leaf", "test le\xffaf"), "not plain UTF-8", 2},
		{"row out of order", "table: t\nsource: RECALL\nrow: 5 3 90\nrow: 0 9 90\nend: t\n", "rows must rise", 4},
		{"impossible row", "table: t\nsource: RECALL\nrow: 5 3 90\nrow: 10 3 190\nend: t\n", "not a percentage", 4},
	} {
		_, faults := Read("t.txt", strings.NewReader(string(tt.file)))
		found := false
		for _, f := range faults {
			if strings.Contains(f.What, tt.want) && f.Line == tt.line && f.File == "t.txt" {
				found = true
			}
		}
		if !found {
			t.Errorf("%s: want %q on line %d, got %v", tt.what, tt.want, tt.line, faults)
		}
	}
}

// All faults of a file are told at once, and sound crops beside a broken one
// are kept.
func TestReadListsAllFaultsAndKeepsTheRest(t *testing.T) {
	bad := strings.ReplaceAll(whole, "test-leaf", "bad-leaf")
	bad = strings.Replace(bad, "ceil: 28", "ciel: 28", 1)
	bad = strings.Replace(bad, "yield-kg: 0.2 0.1 0.3", "yield-kg: 0.2 0.3 0.1", 1)
	bad = strings.Replace(bad, "foods: salad", "foods: soup", 1)
	crops, faults := Read("t.txt", strings.NewReader(bad+whole))
	if len(crops) != 1 || crops[0].ID != "test-leaf" {
		t.Errorf("kept %v, want the sound crop alone", crops)
	}
	var all []string
	for _, f := range faults {
		all = append(all, f.String())
	}
	text := strings.Join(all, "\n")
	for _, want := range []string{
		`t.txt:19: no key is called "ciel"` + "\n    19 | ciel: 28 26 30 | RECALL | memory\n  Did you mean \"ceil\"?",
		"t.txt:29: yield-kg: range upside down",
		`t.txt:5: foods: "soup" is not one of`,
	} {
		if !strings.Contains(text, want) {
			t.Errorf("faults do not say %q:\n%s", want, text)
		}
	}
}

// A broken file of the gardener's own never touches the built-in book.
func TestBrokenFileLeavesTheBook(t *testing.T) {
	before := load(t)
	Read("own.txt", strings.NewReader("crop: tomato\nbase: 99\n"))
	if !reflect.DeepEqual(before, load(t)) {
		t.Error("the built-in book changed")
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(whole))
	f.Add([]byte(whole[:300]))
	f.Add([]byte("table: t\nsource: HM1954\nrow: 0 none 0\nrow: 5 3 90 | x\nend: t\ncrop: a\nemergence: t\nend: a\n"))
	for _, name := range []string{"book/corn.txt", "book/herbs.txt", "book/emergence.txt"} {
		b, err := bookFiles.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(b)
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		crops, faults := Read("fuzz", bytes.NewReader(b))
		for _, c := range crops {
			if g := gaps(c); len(g) > 0 {
				t.Fatalf("a crop with gaps came through: %v", g)
			}
			for soil := -10.0; soil < 60; soil += 3.7 {
				if r := c.EmergeRate(soil); !(r >= 0 && r <= 2) {
					t.Fatalf("rate %v at %v °C", r, soil)
				}
			}
		}
		var buf bytes.Buffer
		if err := Write(&buf, crops); err != nil {
			t.Fatal(err)
		}
		if len(faults) == 0 && !strings.Contains(string(b), "table") {
			again, _ := Read("again", &buf)
			if len(again) != len(crops) {
				t.Fatalf("%d crops back, want %d", len(again), len(crops))
			}
		}
	})
}
