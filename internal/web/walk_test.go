package web

import (
	"fmt"
	"math"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TestRibbonPictureAndTableAgree reads the ribbon's flags back: each space once
// and in walking order, on its side, as long as its minutes to one scale,
// hollow where it begins with a look, and the table and the list say the same.
func TestRibbonPictureAndTableAgree(t *testing.T) {
	for name, d := range map[string]*reckon.Day{"rich": richDay(), "hostile": hostileDay()} {
		root := open(t, handler(t, &fakeGarden{day: d}), "/")
		walk := d.Walk(reckon.WalkAsk{})
		type row struct{ side, stops, minutes string }
		table := map[string]row{}
		for _, tr := range root.find("tr") {
			id, ok := tr.attr["data-flag"]
			if !ok {
				continue
			}
			td := tr.find("td")
			table[id] = row{strings.TrimSpace(td[0].words()), strings.TrimSpace(td[1].words()), strings.TrimSpace(td[3].words())}
		}
		n, scale := 0, 0.0
		for _, g := range root.find("g") {
			if !g.class("flag") {
				continue
			}
			f := walk.Flags[n]
			n++
			if g.attr["data-space"] != f.Space || g.attr["data-minutes"] != strconv.Itoa(f.Minutes) || g.attr["data-side"] != f.Side {
				t.Errorf("%s: flag %d is %v, want %+v", name, n, g.attr, f)
			}
			r, ok := table[f.Space]
			if !ok || r.minutes != strconv.Itoa(f.Minutes) || f.Side != "" && r.side != f.Side {
				t.Errorf("%s: the table says %+v of %s, the walk %+v", name, r, f.Space, f)
			}
			if len(f.Stops) == 0 {
				if len(g.find("rect")) != 0 || r.stops != "–" {
					t.Errorf("%s: %s has nothing to do and a flag", name, f.Space)
				}
				continue
			}
			rect := g.find("rect")[0]
			w, _ := strconv.ParseFloat(rect.attr["width"], 64)
			x, _ := strconv.ParseFloat(rect.attr["x"], 64)
			if f.Side == "left" && x+w > ribbonMid || f.Side != "left" && x < ribbonMid {
				t.Errorf("%s: %s hangs on the wrong side, from %v for %v", name, f.Space, x, w)
			}
			if (rect.attr["class"] == "open") != f.Hollow {
				t.Errorf("%s: %s is %s, hollow is %v", name, f.Space, rect.attr["class"], f.Hollow)
			}
			if w > ribbonMin && f.Minutes > 0 {
				s := w / float64(f.Minutes)
				if scale != 0 && math.Abs(s-scale) > 0.05 {
					t.Errorf("%s: %s is drawn at %v px a minute, others at %v", name, f.Space, s, scale)
				}
				scale = s
			}
		}
		if n != len(walk.Flags) || n != len(table) || scale == 0 {
			t.Errorf("%s: %d flags drawn, %d in the table, want %d", name, n, len(table), len(walk.Flags))
		}
		stops := 0
		for _, li := range root.find("li") {
			if no := li.attr["data-stop"]; no != "" {
				stops++
				if no != strconv.Itoa(stops) || !strings.Contains(li.words(), walk.Stops[stops-1].Object) {
					t.Errorf("%s: the list's stop %s is not the walk's", name, no)
				}
			}
		}
		if stops != len(walk.Stops) || stops == 0 {
			t.Errorf("%s: %d stops listed, want %d", name, stops, len(walk.Stops))
		}
	}
}

// TestWalkAnswersLeadOn sends the answers of a stop: done keeps the place, not
// yet goes one on, and the words of the press are kept.
func TestWalkAnswersLeadOn(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	v := with(formOf(t, open(t, h, "/walk?stop=1"), "/task", 0), "answer", "did bowl")
	w := ask(h, "POST", "/task", v)
	if to := w.Header().Get("Location"); !strings.HasPrefix(to, "/walk?stop=1&saved=") {
		t.Errorf("done leads to %q, want the same number", to)
	}
	if b, ok := g.events[0].body.(ledger.Amount); !ok || b.Measure != "bowl" {
		t.Errorf("kept %+v, want a bowl picked", g.events[0])
	}
	v = with(formOf(t, open(t, h, "/walk?stop=2"), "/task", 0), "answer", "not yet")
	if to := ask(h, "POST", "/task", v).Header().Get("Location"); !strings.HasPrefix(to, "/walk?stop=3&saved=") {
		t.Errorf("not yet leads to %q, want one on", to)
	}
	v = with(formOf(t, open(t, h, "/walk?stop=1"), "/task", 0), "answer", "did barrow")
	if code := ask(h, "POST", "/task", v).Code; code == 303 && len(g.events) > 2 {
		if b := g.events[2].body.(ledger.Amount); b.Measure != "" {
			t.Errorf("an unknown measure was kept: %q", b.Measure)
		}
	}
}

// walkAs draws a page with a device's choices.
func walkAs(t *testing.T, d *reckon.Day, path, who, mode string) *node {
	t.Helper()
	r := httptest.NewRequest("GET", "http://127.0.0.1"+path, nil)
	r.Header.Set("Cookie", walkCookie+"="+who+"; "+modeCookie+"="+mode)
	w := httptest.NewRecorder()
	handler(t, &fakeGarden{day: d}).ServeHTTP(w, r)
	if w.Code != 200 {
		t.Fatalf("GET %s: %d", path, w.Code)
	}
	return parse(t, w.Body.String())
}

// TestWalkOfASeatedPerson keeps what she reaches, asks others for the rest by
// name, and ignores a cookie that names nobody.
func TestWalkOfASeatedPerson(t *testing.T) {
	d := richDay()
	all := open(t, handler(t, &fakeGarden{day: d}), "/").words()
	page := walkAs(t, d, "/", "person=ann", "").words()
	if !strings.Contains(page, "2 stops") || !strings.Contains(page, "For somebody else: 3") || !strings.Contains(page, "Ask Ben.") {
		t.Errorf("the seated walk says: %.400s", page)
	}
	if strings.Contains(all, "For somebody else") {
		t.Error("whoever comes is told to ask somebody else")
	}
	if none := walkAs(t, d, "/", "person=nobody&minutes=7", "sideways"); none.find("html")[0].attr["data-mode"] != "" || strings.Contains(none.words(), "For somebody else") {
		t.Error("a cookie that names nobody changes the walk")
	}
}

// TestASheetSaysACautionOnce gives every task and every thirsty space the same
// caution: each sheet has it in full at the first and points back from the
// others, while a stop by itself has it whole.
func TestASheetSaysACautionOnce(t *testing.T) {
	const care = "Listed as poisonous: berries."
	d := richDay()
	for i := range d.Today {
		d.Today[i].Answer.Caution = care
	}
	for i := range d.Dry.Rows {
		d.Dry.Rows[i].Caution = care
	}
	shown := handler(t, &fakeGarden{day: d})
	for path, want := range map[string]int{"/walk/strip": 1, "/dry": 1, "/walk?stop=1": 1, "/walk?stop=2": 1} {
		page := open(t, shown, path).words()
		if got := strings.Count(page, care); got != want {
			t.Errorf("%s says the caution %d times, want %d", path, got, want)
		}
		if again := strings.Contains(page, "As at "); again == strings.Contains(path, "stop=") {
			t.Errorf("%s points to a caution elsewhere: %v", path, again)
		}
	}
	for _, n := range open(t, shown, "/").find("ol") {
		if n.class("jobs") && strings.Count(n.words(), care) != 1 {
			t.Errorf("the printed day says the caution %d times, want once", strings.Count(n.words(), care))
		}
	}
}

// TestAStopSaysHow: whoever does it for the first time reads how many and how
// far apart on the stop itself, and on the printed day.
func TestAStopSaysHow(t *testing.T) {
	d := richDay()
	shown := handler(t, &fakeGarden{day: d})
	for i, st := range d.Walk(reckon.WalkAsk{}).Stops {
		page := open(t, shown, stopAt(i+1)).words()
		if got := strings.Contains(page, "How: "); got != (st.How != "") {
			t.Errorf("stop %d says how: %v, and its task %q", st.No, got, st.How)
		}
		if st.How != "" && (!strings.Contains(page, st.How) || strings.Count(open(t, shown, "/").words(), st.How) != 2) { // folded in the list, and for paper
			t.Errorf("stop %d does not say %q, or the day not in both its lists", st.No, st.How)
		}
	}
}

// TestModesAreKept sets each mode by its form and sees it on the next page.
func TestModesAreKept(t *testing.T) {
	h := handler(t, &fakeGarden{day: richDay()})
	for _, m := range modes {
		v := with(formOf(t, open(t, h, "/modes"), "/modes", 0), "mode", m.Value)
		w := ask(h, "POST", "/modes", v)
		if w.Code != 303 || !strings.Contains(w.Header().Get("Set-Cookie"), modeCookie+"="+m.Value) {
			t.Fatalf("%s: %d, cookie %q", m.Value, w.Code, w.Header().Get("Set-Cookie"))
		}
		want := m.Value
		if want == "plain" {
			want = ""
		}
		if got := walkAs(t, richDay(), "/lines", "", m.Value).find("html")[0].attr["data-mode"]; got != want {
			t.Errorf("%s: the page is drawn as %q", m.Value, got)
		}
	}
	if w := ask(h, "POST", "/modes", url.Values{"form": {ledger.NewID()}, "mode": {"glitter"}}); w.Code != 400 {
		t.Errorf("an unknown mode: %d, want 400", w.Code)
	}
}

// TestTokenContrast computes the contrast of every pair of tokens that text or
// a line is drawn in. WCAG 2.2 defines the ratio; 7:1 for text, 4.5:1 for
// lines, as interface.md asks.
func TestTokenContrast(t *testing.T) {
	b, err := uiFiles.ReadFile("ui/base/base.css")
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, line := range strings.Split(string(b), "\n") {
		i := strings.Index(line, "{ --ink:")
		if i < 0 || strings.Contains(line, "@media print") {
			continue
		}
		tok := map[string]string{}
		for _, part := range strings.Split(line[i+1:], ";") {
			name, value, ok := strings.Cut(strings.TrimSpace(part), ":")
			if ok && strings.HasPrefix(name, "--") {
				tok[name] = strings.TrimSpace(value)
			}
		}
		seen++
		for _, p := range []struct {
			front, back string
			least       float64
		}{{"--ink", "--paper", 7}, {"--ink", "--wash", 7}, {"--faint", "--paper", 4.5}} {
			if got := contrast(t, tok[p.front], tok[p.back]); got < p.least {
				t.Errorf("%s on %s is %.2f:1, want %v: %s", p.front, p.back, got, p.least, line)
			}
		}
	}
	if seen < 3 {
		t.Errorf("%d sets of tokens found, want the plain, the dark and the pictures'", seen)
	}
	if got := contrast(t, "#000", "#fff"); math.Abs(got-21) > 0.001 {
		t.Errorf("black on white is %v:1, want 21 (WCAG 2.2)", got)
	}
}

// contrast is WCAG 2.2's ratio of two colours.
func contrast(t *testing.T, a, b string) float64 {
	x, y := luminance(t, a), luminance(t, b)
	if x < y {
		x, y = y, x
	}
	return (x + 0.05) / (y + 0.05)
}

func luminance(t *testing.T, c string) float64 {
	t.Helper()
	c = strings.TrimPrefix(c, "#")
	if len(c) == 3 {
		c = fmt.Sprintf("%c%c%c%c%c%c", c[0], c[0], c[1], c[1], c[2], c[2])
	}
	n, err := strconv.ParseUint(c, 16, 32)
	if err != nil || len(c) != 6 {
		t.Fatalf("%q is no colour", c)
	}
	lin := func(v uint64) float64 {
		x := float64(v&255) / 255
		if x <= 0.04045 {
			return x / 12.92
		}
		return math.Pow((x+0.055)/1.055, 2.4)
	}
	return 0.2126*lin(n>>16) + 0.7152*lin(n>>8) + 0.0722*lin(n)
}
