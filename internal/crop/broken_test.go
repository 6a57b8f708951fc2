package crop

import (
	"reflect"
	"strings"
	"testing"
)

// TestCutShortAnywhere cuts a book file at every line and, within its first
// crop, at every byte. Each cut that loses something is named, whole crops
// before it are kept, and the built-in book stays as it was.
func TestCutShortAnywhere(t *testing.T) {
	before := load(t)
	two := whole + strings.ReplaceAll(whole, "test-leaf", "test-two")
	for cut := range len(two) {
		part := two[:cut]
		if cut > len(whole) && part[cut-1] != '\n' && cut%7 != 0 {
			continue
		}
		crops, faults := Read("own.txt", strings.NewReader(part))
		kept := 0
		switch { // an end without its line feed is still an end
		case cut >= len(two)-1:
			kept = 2
		case cut >= len(whole)-1:
			kept = 1
		}
		wholeCut := cut == 0 || cut == len(whole)-1 || cut == len(whole) || cut == len(two)-1
		if len(crops) != kept {
			t.Fatalf("cut after %d bytes: %d crops kept, want %d", cut, len(crops), kept)
		}
		if (len(faults) == 0) != wholeCut {
			t.Fatalf("cut after %d bytes, in %q: faults %v", cut, part[max(0, cut-30):], faults)
		}
		for _, f := range faults {
			if f.Line < 1 || f.What == "" || f.File != "own.txt" {
				t.Fatalf("cut after %d bytes: a fault without its place: %+v", cut, f)
			}
		}
	}
	if after := load(t); !reflect.DeepEqual(before, after) {
		t.Error("the built-in book changed")
	}
}

// TestTooLongFile: what lies beyond the longest file taken is not dropped in
// silence.
func TestTooLongFile(t *testing.T) {
	pad := strings.Repeat("# nothing but a remark, to fill the file up to its limit\n", mostBytes/57)
	_, faults := Read("own.txt", strings.NewReader(whole+pad+whole))
	found := false
	for _, f := range faults {
		found = found || strings.Contains(f.What, "longer than")
	}
	if !found {
		t.Errorf("a file of %d bytes is cut in silence: %v", len(whole)+len(pad)+len(whole), faults)
	}
	if crops, faults := Read("own.txt", strings.NewReader(whole+pad[:len(pad)-len(whole)-200])); len(crops) != 1 || len(faults) != 0 {
		t.Errorf("a file just short enough: %d crops, %v", len(crops), faults)
	}
}

// TestManyFaultsAtOnce: a file with every kind of slip tells them all, each at
// its line, and the built-in book still loads and plans.
func TestManyFaultsAtOnce(t *testing.T) {
	bad := whole
	for _, s := range [][2]string{
		{"base: 4 2 6 | RECALL", "base: 6 2 4 | RECALL"},
		{"opt: 20 18 22 | RECALL", "opt: 20 18 22 | HEARSAY"},
		{"spacing-m: 0.2 0.1 0.3", "spacing-m: 20 10 30"},
		{"days-from-sow: 50 40 60", "days-from-sow: 50 60 40"},
		{"yield-kg: 0.2 0.1 0.3 | RECALL | memory", "yield-kg: 0.2 0.1 0.3 | RECALL | certain"},
		{"hold-days: 14", "hold-dyas: 14"},
	} {
		if !strings.Contains(bad, s[0]) {
			t.Fatalf("%q is not in the sound crop", s[0])
		}
		bad = strings.Replace(bad, s[0], s[1], 1)
	}
	cut := bad[:strings.Index(bad, "batch:")]
	crops, faults := Read("own.txt", strings.NewReader(cut))
	if len(crops) != 0 {
		t.Error("a broken crop was kept")
	}
	var all []string
	for _, f := range faults {
		all = append(all, f.String())
	}
	text := strings.Join(all, "\n")
	for _, want := range []string{
		"own.txt:17: base: range upside down: low 2, value 6, high 4",
		`own.txt:18: opt: no source is called "HEARSAY"`,
		"own.txt:24: spacing-m: impossible: outside 0.01 to 5 m",
		"own.txt:21: days-from-sow: range upside down",
		`own.txt:29: yield-kg: "certain" is not a basis`,
		`own.txt:22: no key is called "hold-dyas"`,
		"cut short: crop test-leaf, begun on line 1, has no end",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("not told: %s\n%s", want, text)
		}
	}
	if b, err := Load(); err != nil || len(b.Crops) != len(wanted) {
		t.Errorf("the built-in book: %d crops, %v", len(b.Crops), err)
	}
}

// TestVarietyFaults: a variety's figure is judged as the crop's own is, and a
// fault of one change leaves the others and the book alone.
func TestVarietyFaults(t *testing.T) {
	b := load(t)
	mine, faults := b.WithChanges([]Change{
		{Crop: "carrot", Variety: "Long Tom", Figure: "spacing-m", Value: 12},
		{Crop: "carrot", Variety: "Long Tom", Figure: "days-from-sow", Value: 80, Low: 90, High: 70},
		{Crop: "carrot", Variety: "Long Tom", Figure: "opt", Value: 6, Low: 6, High: 6}, // lawful: above its base
		{Crop: "carrot", Variety: "Long Tom", Figure: "ceil", Value: 15.5},              // below its optimum
		{Crop: "carrot", Variety: "Long Tom", Figure: "vern-days", Value: 30},           // the book has the other two
		{Crop: "carrot", Variety: "Long Tom", Figure: "yield-kg", Value: 0.12},
		{Crop: "kale", Variety: "Curly", Figure: "vern-max", Value: 8}, // alone it is nothing
		{Crop: "carrot", Variety: "Long Tom", Figure: "colour", Value: 1},
	})
	want := map[int]string{1: "impossible", 2: "upside down", 4: "opt must be below ceil|ref must lie between", 8: "no figure is called"}
	for _, f := range faults {
		w, ok := want[f.Line]
		if f.Line == 7 { // only where the book has no figures of cold for it
			ok, w = true, "stand together"
		}
		hit := false
		for _, one := range strings.Split(w, "|") {
			hit = hit || strings.Contains(f.What, one)
		}
		if !ok || !hit {
			t.Errorf("change %d: %s", f.Line, f)
		}
		delete(want, f.Line)
	}
	for line, w := range want {
		t.Errorf("change %d has no fault, want %s", line, w)
	}
	v, _ := mine.Variety("carrot", "Long Tom")
	if v.YieldKg.Value != 0.12 || v.SpacingM.Mine() || v.DaysFromSow.Mine() {
		t.Error("the sound figure must hold and the broken ones not")
	}
	if _, faults := mine.WithChanges(nil); len(faults) > 0 {
		t.Error(faults)
	}
	if x, _ := b.Crop("carrot"); x.YieldKg.Mine() {
		t.Error("the book itself was changed")
	}
}
