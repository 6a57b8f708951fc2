package garden

import (
	"os"
	"strings"
	"testing"
)

// TestFormatsPage wants every key and word of the file explained in
// docs/formats.md, and its example to read without faults.
func TestFormatsPage(t *testing.T) {
	page, err := os.ReadFile("../../docs/formats.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, sh := range shapes() {
		for _, k := range sh.keys {
			for _, word := range append([]string{k.name}, k.words...) {
				if !strings.Contains(string(page), word) {
					t.Errorf("docs/formats.md does not speak of %q (%s)", word, sh.what)
				}
			}
		}
	}
	_, rest, _ := strings.Cut(string(page), "```yaml\n")
	example, _, ok := strings.Cut(rest, "```")
	if !ok {
		t.Fatal("docs/formats.md has no example")
	}
	if _, faults := Read("example", []byte(example), book(t)); len(faults) > 0 {
		t.Errorf("the example has faults:\n%s", print(faults))
	}
	deep := strings.Replace(small, "depth: 30 cm", "depth: 18 m", 1)
	_, faults := Read("garden.yaml", []byte(deep), book(t))
	said := faults[0].Remedy
	if !strings.Contains(string(page), said) {
		t.Errorf("docs/formats.md shows another remedy than %q", said)
	}
	for _, food := range book(t).(fromBook).FoodNames() {
		if !strings.Contains(string(page), food) {
			t.Errorf("docs/formats.md does not list the food %q", food)
		}
	}
}
