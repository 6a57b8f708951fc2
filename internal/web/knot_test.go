package web

import (
	"context"
	"net/http"
	"net/url"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// tied is a kept garden in which two devices counted one planting on one day.
func tied(t *testing.T) (k *keptGarden, h http.Handler, counts [2]string) {
	t.Helper()
	k, h = kept(t, t.TempDir(), fixedNow)
	return k, h, k.tie(t)
}

// tie writes a sowing and two counts of it.
func (k *keptGarden) tie(t *testing.T) (counts [2]string) {
	t.Helper()
	put := func(device string, kind ledger.Kind, body any) string {
		e, err := ledger.NewEvent(device, cal.Of(2015, 10, 7), kind, body)
		if err == nil {
			_, err = k.led.Append(context.Background(), e)
		}
		if err != nil {
			t.Fatal(err)
		}
		return e.ID
	}
	sown := put("home", ledger.Sown, ledger.Started{Crop: "kale", Space: "gate-bed", Count: 9})
	counts[0] = put("<i>Ann's</i> phone", ledger.Counted, ledger.Count{Planting: sown, Count: 7, Note: "one & all"})
	counts[1] = put("home", ledger.Counted, ledger.Count{Planting: sown, Count: 5})
	return counts
}

// left returns how many knots there are, and the count that is used.
func (k *keptGarden) left(t *testing.T) (knots, count int) {
	t.Helper()
	s, err := k.led.State(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return len(s.Disputes), s.Plantings[len(s.Plantings)-1].Count
}

// TestKnot: two answers side by side; one, all, or a third is kept; and a form
// sent twice, also after a restart, is one choice.
func TestKnot(t *testing.T) {
	for _, tt := range []struct {
		name, choice, third string
		form                int // which form of the page
		count, more         int // the count used after it, and entries written
	}{
		{"the first", "0", "", 0, 7, 1}, {"the second", "1", "", 0, 5, 1}, {"all", "both", "", 0, 5, 1}, {"a third", "third", "6", 1, 6, 3},
	} {
		t.Run(tt.name, func(t *testing.T) {
			k, h, counts := tied(t)
			body := ask(h, "GET", "/safe", nil).Body.String()
			page := soundOf(t, body)
			checkPage(t, "/safe", page)
			for _, want := range []string{"7 counted on 7 October 2015", "5 counted on 7 October 2015", "&lt;i&gt;Ann", "kept 8 October 2015, 09:00", "one &amp; all"} {
				if !strings.Contains(body, want) {
					t.Errorf("the page does not say %q", want)
				}
			}
			v := formOf(t, page, "/knot", tt.form)
			v["answer"] = counts[:]
			if tt.choice == "0" || tt.choice == "1" {
				v.Set("choice", counts[tt.choice[0]-'0'])
			} else {
				v.Set("choice", tt.choice)
			}
			if tt.third != "" {
				v.Set("third", "many")
				if w := ask(h, "POST", "/knot", v); w.Code != http.StatusUnprocessableEntity || !strings.Contains(w.Body.String(), `value="many"`) {
					t.Errorf("a slip: %d, and what was typed must stay", w.Code)
				}
				v.Set("third", tt.third)
			}
			before, _ := k.led.Head()
			again, err := New(k.options(richDay())) // a program that remembers no form
			if err != nil {
				t.Fatal(err)
			}
			for i, door := range []http.Handler{h, h, again} {
				if w := ask(door, "POST", "/knot", v); w.Code != http.StatusSeeOther {
					t.Fatalf("sent %d times: %d %s", i+1, w.Code, w.Body)
				}
			}
			after, _ := k.led.Head()
			if knots, count := k.left(t); knots != 0 || count != tt.count || int(after-before) != tt.more {
				t.Errorf("%d knots are left, %d counted, %d entries written; want 0, %d, %d", knots, count, after-before, tt.count, tt.more)
			}
		})
	}
}

// TestKnotRefuses what is no choice among the answers shown.
func TestKnotRefuses(t *testing.T) {
	k, h, counts := tied(t)
	before, _ := k.led.Head()
	for _, v := range []url.Values{
		{"answer": counts[:1], "choice": {counts[0]}}, {"answer": counts[:], "choice": {"neither"}}, {"answer": counts[:], "choice": {ledger.NewID()}},
		{"answer": {"x", "y"}, "choice": {"both"}}, {"choice": {"both"}},
	} {
		v.Set("form", ledger.NewID())
		if w := ask(h, "POST", "/knot", v); w.Code != http.StatusBadRequest {
			t.Errorf("%v: %d", v, w.Code)
		}
	}
	if after, _ := k.led.Head(); after != before {
		t.Error("something was written")
	}
}
