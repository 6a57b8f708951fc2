package garden

import (
	"flag"
	"os"
	"strings"
	"testing"

	"bedweek/internal/crop"
)

var update = flag.Bool("update", false, "rewrite the expected faults")

func book(t testing.TB) Crops {
	t.Helper()
	b, err := crop.Load()
	if err != nil {
		t.Fatalf("loading the crop book: %v", err)
	}
	return FromBook(b)
}

func print(faults []Fault) string {
	var b strings.Builder
	for _, f := range faults {
		b.WriteString(f.String())
	}
	return b.String()
}

// TestThirtyFaults reads a file with thirty slips, one in each line that ends
// in a number, and wants each of them said once, at its line, with a remedy.
func TestThirtyFaults(t *testing.T) {
	text, err := os.ReadFile("../../testdata/gardens/thirty-faults.yaml")
	if err != nil {
		t.Fatal(err)
	}
	g, faults := Read("thirty-faults.yaml", text, book(t))
	if g != nil {
		t.Error("a garden came from a file with faults")
	}
	var want []int // lines marked in the file itself
	for i, line := range strings.Split(string(text), "\n") {
		if _, mark, ok := strings.Cut(line, "# "); ok && mark[0] >= '1' && mark[0] <= '9' {
			want = append(want, i+1)
		}
	}
	if len(want) != 30 || len(faults) != 30 {
		t.Errorf("%d lines are marked and %d faults found, want 30 of both", len(want), len(faults))
	}
	for i := range min(len(want), len(faults)) {
		if faults[i].Line != want[i] {
			t.Errorf("fault %d is in line %d, marked is line %d:\n%s", i+1, faults[i].Line, want[i], faults[i])
			break
		}
	}
	for _, f := range faults {
		if f.Remedy == "" || f.What == "" || f.Excerpt == "" || f.Col < 1 {
			t.Errorf("a fault lacks place or remedy: %+v", f)
		}
		for _, sentence := range strings.FieldsFunc(f.Remedy, func(r rune) bool { return r == '.' || r == '?' }) {
			if n := len(strings.Fields(sentence)); n > 20 && !strings.Contains(sentence, "foods are") && !strings.Contains(sentence, "keys of") {
				t.Errorf("a sentence of %d words: %q", n, sentence)
			}
		}
	}
	const golden = "../../testdata/gardens/thirty-faults.txt"
	if *update {
		if err := os.WriteFile(golden, []byte(print(faults)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	expect, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got := print(faults); got != string(expect) {
		t.Errorf("faults differ from %s (rewrite with -update after reading them):\n%s", golden, got)
	}
}
