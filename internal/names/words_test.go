package names

import (
	"fmt"
	"strings"
	"testing"
)

// TestWordsAreToldApartByEar: no two words of a list lie close, by letters
// (edits) and by a rough spelling of their sound. The bound is ours; nobody
// has listened yet (docs/hand-tests.md).
func TestWordsAreToldApartByEar(t *testing.T) {
	for name, list := range map[string]string{"first": firstWords, "second": secondWords} {
		words := strings.Fields(list)
		if len(words) != 64 {
			t.Errorf("%s: %d words, want 64", name, len(words))
		}
		seen := map[string]bool{}
		for i, a := range words {
			if seen[a] {
				t.Errorf("%s: %q twice", name, a)
			}
			seen[a] = true
			for _, b := range words[i+1:] {
				if d := edits(sound(a), sound(b)); d < 2 {
					t.Errorf("%s: %q and %q sound alike (%d apart)", name, a, b, d)
				}
			}
		}
	}
}

// sound is a rough spelling by ear of English: silent and double letters go.
func sound(s string) string {
	for _, p := range [][2]string{{"ght", "t"}, {"gh", "f"}, {"ph", "f"}, {"ck", "k"}, {"kn", "n"}, {"wh", "w"}, {"mb", "m"}, {"ee", "i"}, {"ea", "i"}, {"oo", "u"}, {"ow", "o"}, {"ou", "o"}, {"ie", "i"}, {"c", "k"}, {"q", "k"}, {"z", "s"}} {
		s = strings.ReplaceAll(s, p[0], p[1])
	}
	var b strings.Builder
	last := rune(0)
	for _, r := range s {
		if r != last {
			b.WriteRune(r)
		}
		last = r
	}
	return b.String()
}

// edits is the least number of letters to put in, take out or change.
func edits(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		before := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			d := before
			if a[i-1] != b[j-1] {
				d++
			}
			before, row[j] = row[j], min(d, row[j]+1, row[j-1]+1)
		}
	}
	return row[len(b)]
}

func TestTagsNeverClashAndNeverChange(t *testing.T) {
	now, seen := newTags(), map[Tag]bool{}
	var first Tag
	for i := range 20000 {
		id := fmt.Sprintf("plant-%d", i)
		now.claim(id, i%2 == 0)
		tag := now.of[id]
		if seen[tag] {
			t.Fatalf("%s: %s is taken", id, tag)
		}
		seen[tag] = true
		if i == 0 {
			first = tag
		}
	}
	now.claim("plant-0", true)
	if now.of["plant-0"] != first {
		t.Errorf("the first tag changed from %s to %s", first, now.of["plant-0"])
	}
	if got := short(" brown heron, 42"); got != "BROWN-HERON-42" {
		t.Errorf("typed: %s", got)
	}
}
