package web

import (
	"strings"
	"testing"

	"bedweek/internal/reckon"
)

// After a mend is taken, or while a search runs, the table, the keep page and
// the wishes say that what stands there is from before, with a way to look again,
// and still show all of it.
func TestPagesSayThatThePlanIsBeingWorkedOut(t *testing.T) {
	day := richDay()
	g := &fakeGarden{day: day}
	o := g.options()
	words := ""
	o.Searching = func() string { return words }
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	say := func(path string) string {
		root := open(t, h, path)
		s := ""
		root.all(func(n *node) {
			if n.name == "p" && n.attr["role"] == "status" {
				s += n.words()
			}
		})
		return s
	}
	for _, path := range []string{"/table", "/keep"} {
		words, day.Notes = "", nil
		if s := say(path); s != "" {
			t.Errorf("%s: nothing goes on, and it says %q", path, s)
		}
		words = "A better plan is being searched behind this one: 40 of 100 parts done."
		if s := say(path); !strings.Contains(s, "40 of 100") || !strings.Contains(s, "holds meanwhile") {
			t.Errorf("%s: while a search runs it says %q", path, s)
		}
		day.Notes = []string{reckon.Anew}
		if s := say(path); !strings.Contains(s, "from before") {
			t.Errorf("%s: after a note it says %q", path, s)
		}
		if body := ask(h, "GET", path, nil).Body.String(); !strings.Contains(body, `href="`+path+`">Look again`) || strings.Count(body, "<h2") < 3 {
			t.Errorf("%s: no way to look again, or nothing to look at meanwhile", path)
		}
	}
}
