package web

import (
	"context"
	"fmt"
	"net/http"
	"net/url"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// withWishes adds the pages about wishes, with canned answers whose every word
// is h.
func (g *fakeGarden) withWishes(h string) Options {
	o := g.options()
	beside := []reckon.SpaceBeside{{Space: "gate-bed", Name: h, Less: []string{h, "kale, 4 plants"}}, {Space: "bed-3", Name: "Third bed", More: []string{h}}}
	o.Wishes = &Wishes{
		Try: func(_ context.Context, t reckon.Trial) (*reckon.Compared, error) {
			if t.Do == "gone" {
				return nil, fmt.Errorf("%w: choose one of the spaces", reckon.ErrTrial)
			}
			return &reckon.Compared{Question: h, Says: h, Sure: h, Better: 13, Worse: 4, Gain: 7, Limits: h, Where: h, Unmet: []string{h},
				Foods:  []reckon.FoodBeside{{Name: h, Present: 40.2, Other: 47.9, Wanted: 60, Differs: 7.7}, {Name: "roots", Present: 12, Other: 12.2, Wanted: 30}},
				Spaces: beside}, nil
		},
		Why: func(_ context.Context, line string) (*reckon.Why, error) {
			if line != "gate-bed-next" {
				return nil, nil
			}
			return &reckon.Why{ID: line, Space: "gate-bed", SpaceName: h, Says: h, For: []string{h, h, h}, Against: h, Delay: h, Change: h, Noise: h,
				Beat: []reckon.Beaten{{Words: h, GivesUp: h, Better: 3}, {Words: h, GivesUp: h}}}, nil
		},
		Prices: func(context.Context) ([]reckon.WishPrice, bool) {
			return []reckon.WishPrice{{Event: "01JZZZZZZZZZZZZZZZZZZZZZZZ", Words: h, Meals: 4, Says: h}}, true
		},
		Likeness: func(context.Context) (*ledger.KeptPlan, error) {
			return &ledger.KeptPlan{On: today, Lines: []ledger.PlanLine{{Space: "gate-bed", Crop: "carrot", Way: "sow", Since: today, Until: today + 90, Plants: 4}}}, nil
		},
		Kept: func(context.Context) ([]reckon.KeptBeside, error) {
			return []reckon.KeptBeside{{KeptNote: ledger.KeptNote{Event: "01JZZZZZZZZZZZZZZZZZZZZZZY", KeptPlan: ledger.KeptPlan{Name: h, On: today}}, Says: h, Spaces: beside}}, nil
		},
	}
	return o
}

// wishDay has wishes, one of them not met, and a change since last week.
func wishDay(h string) *reckon.Day {
	d := richDay()
	d.Foods = []string{"salad", h}
	d.Heard = []reckon.Heard{
		{Event: "01JZZZZZZZZZZZZZZZZZZZZZZZ", Words: h, State: "met", Wish: ledger.Wish{What: ledger.WishWant}, IDs: []string{"gate-bed-next"}},
		{Words: h, State: "not met", Why: h, Wish: ledger.Wish{What: ledger.WishMust}},
	}
	d.Changed = &reckon.Changed{From: today - 7, Of: 9, Kept: 8, Words: h, Changes: []reckon.Change{{Space: "gate-bed", SpaceName: h, What: "gone", Words: h, Because: h}}}
	return d
}

func TestWishPagesAreSound(t *testing.T) {
	for _, h := range []string{"Some words.", hostileText} {
		site, err := New((&fakeGarden{day: wishDay(h)}).withWishes(h))
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range []string{"/wishes", "/whatif", "/whatif?ask=skip&skip=salad", "/whatif?ask=space&space=gate-bed&do=deeper&by=x", "/whatif?ask=space&do=gone",
			"/whatif?ask=away&since=2015-11-01&until=2015-11-20", "/whatif?ask=away&since=" + url.QueryEscape(h), "/whatif?ask=minutes&minutes=10", "/whatif?ask=" + url.QueryEscape(h),
			"/why/gate-bed-next", "/why/gate-bed-now", "/plan", "/space/gate-bed", "/more"} { // the script of /lines is tried in a browser
			checkPage(t, p, open(t, site, p))
		}
		if w := ask(site, "GET", "/why/nothing", nil); w.Code != http.StatusNotFound {
			t.Errorf("no such line: %d", w.Code)
		}
	}
	plain := handler(t, &fakeGarden{day: richDay()})
	if w := ask(plain, "GET", "/wishes", nil); w.Code != http.StatusNotFound {
		t.Errorf("wishes where there are none: %d", w.Code)
	}
	if strings.Contains(ask(plain, "GET", "/plan", nil).Body.String(), "/why/") {
		t.Error("a page leads to reasons where there are none")
	}
}

// TestWishForms sends every form of the page, with slips and twice.
func TestWishForms(t *testing.T) {
	g := &fakeGarden{day: wishDay("Some words.")}
	h, err := New(g.withWishes("Some words."))
	if err != nil {
		t.Fatal(err)
	}
	base := func(what string) url.Values { return url.Values{"form": {ledger.NewID()}, "what": {what}} }
	lock := with(base("lock"), "line", "gate-bed-next")
	for _, tt := range []struct {
		v    url.Values
		want any
	}{
		{with(base("want"), "food", "salad", "meals", "2,5", "more", "less", "first", "10"), ledger.Wish{What: "want", Food: "salad", Meals: -2.5, First: 10, Last: 10}},
		{with(base("must"), "crop", "tomato", "plants", "2", "space", ""), ledger.Wish{What: "must", Crop: "tomato", Plants: 2}},
		{with(base("never"), "crop", "tomato", "space", "bag-1"), ledger.Wish{What: "never", Crop: "tomato", Space: "bag-1"}},
		{with(base("away"), "since", "2015-11-01", "until", "2015-11-20"), ledger.Wish{What: "away", Since: cal.Of(2015, 11, 1), Until: cal.Of(2015, 11, 20)}},
		{with(base("minutes"), "minutes", "−10"), ledger.Wish{What: "minutes", Minutes: -10}},
		{with(base("bad years"), "level", "somewhat"), ledger.Wish{What: "bad years", Level: "somewhat"}},
		{with(base("water"), "litres", "40"), ledger.Wish{What: "water", Litres: 40}},
		{with(base("water"), "litres", "0"), ledger.Wish{What: "water"}},
		{with(base("water"), "litres", "2 cu ft"), ledger.Wish{What: "water", Litres: 56.633693184}},
		{with(base("return"), "plan", "01JZZZZZZZZZZZZZZZZZZZZZZY"), ledger.Wish{What: "return", Plan: "01JZZZZZZZZZZZZZZZZZZZZZZY"}},
		{lock, nil},
	} {
		n := len(g.events)
		for range 2 {
			if w := ask(h, "POST", "/wishes", tt.v); w.Code != http.StatusSeeOther {
				t.Fatalf("%v: %d", tt.v, w.Code)
			}
		}
		if len(g.events) != n+1 {
			t.Fatalf("%v: %d events, want one", tt.v, len(g.events)-n)
		}
		e := g.events[n]
		if e.kind != ledger.Wished || e.form != tt.v.Get("form") || tt.want != nil && e.body != tt.want {
			t.Errorf("%v: %+v, want %+v", tt.v, e, tt.want)
		}
		if b := e.body.(ledger.Wish); tt.want == nil && (b.Space != "gate-bed" || b.Plants == 0 || b.Since != b.Since.Monday() || b.Until < b.Since) {
			t.Errorf("the lock is %+v", b)
		}
	}
	if w := ask(h, "POST", "/wishes", with(base("keep"), "name", "March")); w.Code != http.StatusSeeOther || g.events[len(g.events)-1].body.(ledger.KeptPlan).Name != "March" {
		t.Errorf("keeping a plan: %d, %+v", w.Code, g.events[len(g.events)-1])
	}
	n := len(g.events)
	for _, tt := range []struct {
		v      url.Values
		status int
		words  string
	}{
		{with(base("want"), "food", "salad", "meals", "lots"), 422, "how many meals"},
		{with(base("want"), "food", "mud", "meals", "2"), 422, "Choose a food"},
		{with(base("want"), "food", "salad", "meals", "2", "last", "3"), 422, "first month"},
		{with(base("must"), "crop", "tomato", "plants", "0"), 422, "At least 1"},
		{with(base("never"), "crop", "triffid"), 422, "Choose a crop"},
		{with(base("away"), "since", "2015-11-20", "until", "2015-11-01"), 422, "before the first"},
		{with(base("away"), "since", "2015-01-20", "until", "2015-11-01"), 422, "is past"},
		{with(base("minutes"), "minutes", "0"), 422, "minutes a week"},
		{with(base("bad years"), "level", "very"), 422, "Choose how much"},
		{with(base("water"), "litres", "much"), 422, "litres a day"},
		{with(base("water"), "litres", "-3"), 422, "litres a day"},
		{with(base("water"), "litres", ""), 422, "litres a day"},
		{with(base("keep"), "name", " "), 422, "Give the plan a name"},
		{base("hope"), 400, ""},
		{with(base("lock"), "line", "nothing"), 410, ""},
		{with(base("return"), "plan", "March"), 400, ""},
	} {
		w := ask(h, "POST", "/wishes", tt.v)
		if w.Code != tt.status || !strings.Contains(w.Body.String(), tt.words) {
			t.Errorf("%v: %d, want %d and %q", tt.v, w.Code, tt.status, tt.words)
		}
	}
	if len(g.events) != n {
		t.Errorf("slips wrote %d events", len(g.events)-n)
	}
}

// TestFoodPictureIsItsTable compares the bars with the rows behind them.
func TestFoodPictureIsItsTable(t *testing.T) {
	h, err := New((&fakeGarden{day: wishDay("x")}).withWishes("salad"))
	if err != nil {
		t.Fatal(err)
	}
	root := open(t, h, "/whatif?ask=minutes&minutes=10")
	rows := map[string]string{}
	for _, tr := range root.find("tr") {
		if f := tr.attr["data-food"]; f != "" {
			rows[f] = tr.attr["data-present"] + " " + tr.attr["data-other"]
		}
	}
	bars := 0
	for _, g := range root.find("g") {
		if f := g.attr["data-food"]; f != "" {
			bars++
			if rows[f] != g.attr["data-present"]+" "+g.attr["data-other"] {
				t.Errorf("%s: bars say %s %s, the table %s", f, g.attr["data-present"], g.attr["data-other"], rows[f])
			}
		}
	}
	if bars != 1 || len(rows) != 2 || rows["salad"] != "40 48" {
		t.Errorf("%d bars, rows %v", bars, rows)
	}
}
