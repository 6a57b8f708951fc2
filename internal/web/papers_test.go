package web

import (
	"fmt"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// TestYearSheetPictureAndTableAgree reads the lines, dots and brackets of every
// year page back into days and holds them against the sheet and its table.
func TestYearSheetPictureAndTableAgree(t *testing.T) {
	d := richDay()
	h := handler(t, &fakeGarden{day: d})
	rows, dots, brackets := 0, 0, 0
	for _, y := range d.Papers.Years {
		root := open(t, h, "/year/"+y.Space)
		scale := yearPicWide / float64(y.To-y.From)
		day := func(x float64) cal.Day { return y.From + cal.Day(x/scale+0.5) }
		near := func(a, b cal.Day) bool { return a-b >= -1 && a-b <= 1 } // a tenth of a px is a tenth of a day; rounding
		tabled := map[string]string{}
		for _, tr := range root.find("tr") {
			if no := tr.attr["data-row"]; no != "" {
				tabled[no] = tr.attr["data-dots"]
			}
		}
		if len(tabled) != len(y.Rows) {
			t.Fatalf("%s: %d rows in the table, the sheet has %d", y.Space, len(tabled), len(y.Rows))
		}
		for _, g := range root.find("g") {
			no, ok := g.attr["data-row"]
			if !ok {
				continue
			}
			k, _ := strconv.Atoi(no)
			row := y.Rows[k-1]
			rows++
			n := 0
			for _, p := range g.find("path") {
				switch {
				case p.class("stood"):
					s := strokes(t, p.attr["d"])[0]
					end := row.Ended
					if end == 0 {
						end = y.To
					}
					if !near(day(s.x1), row.In) || !near(day(s.x2), end) {
						t.Errorf("%s row %s: drawn from %s to %s, want %s to %s", y.Space, no, day(s.x1), day(s.x2), row.In, end)
					}
				case p.class("gave"):
					n = strings.Count(p.attr["d"], "M")
				case p.class("saidfirst"):
					brackets++
					var x1, y1, x2 float64
					fmt.Sscanf(p.attr["d"], "M%g %gv5H%gv-5", &x1, &y1, &x2)
					if !near(day(x1), row.Said.FirstEarly) || !near(day(x2), row.Said.FirstLate) {
						t.Errorf("%s row %s: bracket from %s to %s, want %s to %s", y.Space, no, day(x1), day(x2), row.Said.FirstEarly, row.Said.FirstLate)
					}
				}
			}
			dots += n
			if tabled[no] != strconv.Itoa(n) || n != len(row.Dots) {
				t.Errorf("%s row %s: %d dots, the table says %s, the sheet %d", y.Space, no, n, tabled[no], len(row.Dots))
			}
		}
	}
	if rows < 50 || dots < 50 || brackets < 40 {
		t.Errorf("%d rows, %d dots, %d brackets: the test sees too little", rows, dots, brackets)
	}
}

// TestTheLessonFileStandsAlone: one file, nothing fetched, nothing of the
// frame that knows the garden's name.
func TestTheLessonFileStandsAlone(t *testing.T) {
	d := hostileDay()
	d.Garden = "Secretgarden"
	w := httptest.NewRecorder()
	handler(t, &fakeGarden{day: d}).ServeHTTP(w, httptest.NewRequest("GET", "http://127.0.0.1/teach/bedweek-lesson.html", nil))
	body := w.Body.String()
	if w.Code != 200 || !strings.Contains(w.Header().Get("Content-Disposition"), "attachment") || !strings.Contains(body, "max-width: 46rem") {
		t.Fatalf("status %d, %q", w.Code, w.Header())
	}
	for _, bad := range []string{"Secretgarden", "<link", "<script", "src=", "url(", "@import", "href=", "<em>"} {
		if strings.Contains(body, bad) {
			t.Errorf("the file holds %q", bad)
		}
	}
}

// TestAMendIsTakenIntoThePlan sends the forms of the table: the lock is the
// mend's own line, the wants are a meal more and a meal less, and a mend that
// is gone is refused.
func TestAMendIsTakenIntoThePlan(t *testing.T) {
	d := wishDay("Some words.")
	g := &fakeGarden{day: d}
	h, err := New(g.withWishes("Some words."))
	if err != nil {
		t.Fatal(err)
	}
	sent := 0
	for _, f := range open(t, h, "/table").find("form") {
		if f.attr["action"] != "/wishes" || sent == 8 {
			continue
		}
		v := url.Values{}
		for _, in := range f.find("input") {
			v.Set(in.attr["name"], in.attr["value"])
		}
		n := len(g.events)
		if v.Get("what") == "want" {
			v.Set("food", "salad") // the fixture's foods are not the book's
		}
		if w := ask(h, "POST", "/wishes", v); w.Code != 303 || len(g.events) != n+1 {
			t.Fatalf("%v: %d, %s", v, w.Code, w.Body)
		}
		sent++
		b := g.events[n].body.(ledger.Wish)
		if v.Get("what") == "want" {
			if want := map[string]float64{"more": 1, "less": -1}[v.Get("more")]; b.Meals != want {
				t.Errorf("%v: %g meals, want %g", v, b.Meals, want)
			}
			continue
		}
		found := false
		for _, row := range d.Table {
			for _, hole := range row.Holes {
				for _, m := range hole.Mends {
					if m.Option == v.Get("mend") {
						found = b.What == "lock" && b.Space == m.Space && b.Crop == m.CropID && b.Way == m.Way && b.Since == m.Since && b.Until == m.Until && b.Plants == m.Plants
					}
				}
			}
		}
		if !found {
			t.Errorf("the wish %+v is no mend's line", b)
		}
	}
	if sent < 6 {
		t.Errorf("%d forms sent", sent)
	}
	gone := url.Values{"form": {ledger.NewID()}, "what": {"lock"}, "mend": {"nowhere"}}
	if w := ask(h, "POST", "/wishes", gone); w.Code != 410 {
		t.Errorf("a mend that is gone: %d", w.Code)
	}
}
