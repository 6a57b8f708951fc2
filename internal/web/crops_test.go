package web

import (
	"context"
	"fmt"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strings"
	"sync"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/weather"
)

// cropGround is an invented garden of two beds on made months, reckoned once
// for all tests: its crop pages are real ones.
var cropGround = sync.OnceValues(func() (*reckon.Inputs, *reckon.Ground) {
	book, err := crop.Load()
	if err != nil {
		panic(err)
	}
	g := &garden.Garden{Name: "Two beds"}
	for i, name := range []string{"Front bed", hostileText} {
		sp := garden.Space{ID: garden.SpaceID(fmt.Sprintf("bed-%d", i+1)), Name: name, Kind: garden.RaisedBed, TallOK: true, Y: 5 * float64(i)}
		sp.Length.M, sp.Width.M, sp.Depth.M = 3, 1.2, 0.35
		g.Spaces = append(g.Spaces, sp)
	}
	g.Place.LatDeg, g.Place.LonDeg = 47, 8
	g.Wants = []garden.Want{{Food: "roots", Meals: 2, Liking: 1, Crops: []garden.CropID{"carrot", "beet"}}}
	g.Seeds = []garden.Seed{{Crop: "carrot", Variety: hostileText}}
	n := &weather.Normals{Name: "made months", Site: weather.Site{LatDeg: 47, LonDeg: 8, ElevM: 100}}
	for k, mean := range [12]float64{2, 3, 6, 10, 14, 17, 19, 19, 15, 10, 6, 3} {
		n.TmaxC[k], n.TminC[k], n.RainMM[k] = mean+5, mean-5, 60
	}
	in := &reckon.Inputs{Garden: g, Book: book, Normals: n, Date: today, Weeks: 52, Futures: 20, Seed: 1, Work: 1000}
	ground, err := reckon.NewGround(in)
	if err != nil {
		panic(err)
	}
	return in, ground
})

// withCrops adds the crop pages, with own figures as they are kept.
func (g *fakeGarden) withCrops() Options {
	o := g.options()
	o.Crops = func(context.Context) (*reckon.CropDesk, error) {
		in, ground := cropGround()
		with := *in
		state := ledger.ReplayOver(nil, nil)
		for _, e := range g.events {
			if f, ok := e.body.(ledger.OwnFigure); ok {
				state.Figures = append(state.Figures, ledger.FigureNote{Event: e.form, On: e.on, OwnFigure: f})
			}
		}
		with.State = &state
		with.Book, _ = reckon.OwnBook(in.Book, state.Figures)
		d := reckon.NewCropDesk(&with, in.Book, ground, nil, nil)
		for _, f := range state.Figures {
			d.Effect(f.Event, reckon.PlanEffect{Before: []string{hostileText}, Others: 2, WorthBefore: 10, WorthAfter: 12})
		}
		return d, nil
	}
	return o
}

func cropHandler(t testing.TB, g *fakeGarden) http.Handler {
	t.Helper()
	h, err := New(g.withCrops())
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// TestCropPagesAreSound draws the list and many crops with hostile names.
func TestCropPagesAreSound(t *testing.T) {
	h := cropHandler(t, &fakeGarden{day: richDay(), events: []written{{kind: ledger.Figured, on: today, form: "0123456789ABCDEFGHJKMNPQRS",
		body: ledger.OwnFigure{Crop: "carrot", Variety: clip(hostileText, 60), Figure: "days-from-sow", Value: 99, Unit: "days", Why: hostileText}}}})
	paths := []string{"/crops", "/crops?q=bea", "/crops?q=" + url.QueryEscape(hostileText), "/crop/carrot?variety=" + url.QueryEscape(hostileText) + "&space=bed-2&week=x&way=y",
		"/crop/carrot?change=base", "/crop/carrot?change=nothing&week=2016-03-07", "/lines", "/space/gate-bed", "/more"}
	in, _ := cropGround()
	for i, c := range in.Book.Crops {
		if i%4 == 0 || c.ID == "carrot" {
			paths = append(paths, "/crop/"+string(c.ID))
		}
	}
	for _, p := range paths {
		checkPage(t, p, open(t, h, p))
	}
	if w := ask(h, "GET", "/crop/nothing", nil); w.Code != http.StatusNotFound {
		t.Errorf("no such crop: %d", w.Code)
	}
	if w := ask(h, "GET", "/crops?q=rocket", nil); w.Code != http.StatusSeeOther || w.Header().Get("Location") != "/crop/arugula" {
		t.Errorf("rocket leads to %d %s", w.Code, w.Header().Get("Location"))
	}
	plain, err := New((&fakeGarden{day: richDay()}).options())
	if err != nil {
		t.Fatal(err)
	}
	if w := ask(plain, "GET", "/crops", nil); w.Code != http.StatusNotFound {
		t.Errorf("crops without a desk: %d", w.Code)
	}
	if strings.Contains(ask(plain, "GET", "/more", nil).Body.String(), "/crops") {
		t.Error("the door to crops is shown where there are none")
	}
	for _, page := range []string{"/more", "/lines", "/space/gate-bed"} {
		want := map[string]string{"/more": `href="/crops"`}[page]
		if want == "" {
			want = `href="/crop/`
		}
		if !strings.Contains(ask(h, "GET", page, nil).Body.String(), want) {
			t.Errorf("%s does not lead to crops", page)
		}
	}
}

// class finds the one path of a class under n.
func pathOf(n *node, class string) string {
	for _, p := range n.find("path") {
		if p.class(class) {
			return p.attr["d"]
		}
	}
	return ""
}

// across counts the strokes that pass over x.
func across(t *testing.T, d string, x float64) int {
	n := 0
	for _, s := range strokes(t, d) {
		if s.x1 <= x && x < s.x2 {
			n++
		}
	}
	return n
}

// TestYearPictureAndTableAgree reads the year's threads back into counts and
// holds them against the table, day by day.
func TestYearPictureAndTableAgree(t *testing.T) {
	h := cropHandler(t, &fakeGarden{day: richDay()})
	checked, frayed := 0, 0
	for _, slug := range []string{"carrot", "tomato", "kale", "garlic", "spinach"} {
		root := open(t, h, "/crop/"+slug)
		var tables []*node
		for _, tb := range root.find("table") {
			if rows := tb.find("tr"); len(rows) > 1 && rows[1].attr["data-of20"] != "" {
				tables = append(tables, tb)
			}
		}
		i := 0
		for _, svg := range root.find("svg") {
			if svg.attr["data-way"] == "" {
				continue
			}
			best, works, some := pathOf(svg, "t-best"), pathOf(svg, "t-works"), pathOf(svg, "t-some")
			for _, tr := range tables[i].find("tr")[1:] {
				var of20, best20 int
				fmt.Sscan(tr.attr["data-of20"], &of20)
				fmt.Sscan(tr.attr["data-best20"], &best20)
				from, _, _ := strings.Cut(strings.TrimSpace(tr.find("th")[0].text), " to ")
				var day int
				var month string
				fmt.Sscan(from, &day, &month)
				m := slices.Index(monthNames[:], month) + 1
				x := yearX(cal.Of(2015, 1, 1)+cal.Day(dayOfYearFrom(day2015(m, day), 1)), 1) + 2.5
				if x > yearLeft+yearWide {
					continue
				}
				word := strings.TrimSpace(tr.find("td")[2].text)
				got := [3]int{across(t, best, x), across(t, works, x), across(t, some, x)}
				want := [3]int{0, 0, of20}
				if word == "best" || strings.HasPrefix(word, "works") { // "works with quick kinds" too
					want = [3]int{best20, of20 - best20, 0}
				}
				if got != want {
					t.Errorf("%s, %s: the picture has %v threads of best, works and else, the table %v (%s)", slug, from, got, want, word)
				}
				checked++
				if of20 > 0 && of20 < 20 {
					frayed++
				}
			}
			i++
		}
		if i != len(tables) || i == 0 {
			t.Errorf("%s: %d pictures and %d tables", slug, i, len(tables))
		}
	}
	if checked < 60 || frayed < 20 {
		t.Fatalf("%d stretches, %d of them frayed: too few to judge", checked, frayed)
	}
}

func day2015(month, day int) cal.Day {
	d := cal.Of(2015, 1, 1)
	for int(d.Month()) != month {
		d++
	}
	return d + cal.Day(day-1)
}

// TestStartPictureAndTableAgree: each future's thread begins to be heavy on
// its first pick and ends on its last, and a cross stands where the table says
// that it fails.
func TestStartPictureAndTableAgree(t *testing.T) {
	h := cropHandler(t, &fakeGarden{day: richDay()})
	picks, fails := 0, 0
	for _, path := range []string{"/crop/spinach?week=2016-03-07&space=bed-1", "/crop/kale?week=2016-05-02&space=bed-1", "/crop/carrot?week=2016-07-25&space=bed-1"} {
		root := open(t, h, path)
		in, _ := cropGround()
		rows := map[string]*node{}
		for _, tr := range root.find("tr") {
			if f := tr.attr["data-future"]; f != "" {
				rows[f] = tr
			}
		}
		threads := 0
		for _, svg := range root.find("svg") {
			if !svg.class("start") {
				continue
			}
			scale, from := startScale(t, svg, rows)
			for _, g := range svg.find("g") {
				tr := rows[g.attr["data-future"]]
				if tr == nil {
					t.Fatalf("%s: thread %s is not in the table", path, g.attr["data-future"])
				}
				threads++
				failed := strings.Contains(tr.find("th")[0].text, "fails")
				if (pathOf(g, "s-stop") != "") != failed {
					t.Errorf("%s, %s: the cross and the table disagree", path, g.attr["data-future"])
				}
				if failed {
					fails++
				}
				first, ok := longDay(tr.find("td")[0].text)
				heavy := pathOf(g, "s-pick")
				if ok != (heavy != "") {
					t.Errorf("%s, %s: first pick %v, heavy %q", path, g.attr["data-future"], first, heavy)
				}
				if heavy == "" || scale == 0 {
					continue
				}
				picks++
				last, _ := longDay(tr.find("td")[1].text)
				s := strokes(t, heavy)[0]
				if a, b := startLeft+scale*float64(first-from), math.Min(startLeft+scale*float64(last-from), startLeft+startWide); math.Abs(s.x1-a) > 0.6 || s.x2 < b-0.6 || s.x2 > b+3 {
					t.Errorf("%s, %s: picked from %.1f to %.1f px, the table says %.1f to %.1f", path, g.attr["data-future"], s.x1, s.x2, a, b)
				}
			}
		}
		if threads != in.Futures || len(rows) != in.Futures {
			t.Errorf("%s: %d threads and %d rows, want %d", path, threads, len(rows), in.Futures)
		}
	}
	if picks < 20 || fails < 1 {
		t.Fatalf("%d picks and %d failures: too few to judge", picks, fails)
	}
}

// startScale reads px a day and the first day off two month rules of the
// picture: their distance is that of the firsts they stand for.
func startScale(t *testing.T, svg *node, rows map[string]*node) (scale float64, from cal.Day) {
	t.Helper()
	type known struct {
		x float64
		d cal.Day
	}
	var all []known
	for f, tr := range rows { // thread ends that are drawn exactly
		d, ok := longDay(tr.find("td")[0].text)
		if !ok {
			continue
		}
		for _, g := range svg.find("g") {
			if g.attr["data-future"] == f {
				all = append(all, known{strokes(t, pathOf(g, "s-pick"))[0].x1, d})
			}
		}
	}
	slices.SortFunc(all, func(a, b known) int { return int(a.d - b.d) })
	if len(all) < 2 || all[0].d == all[len(all)-1].d {
		return 0, 0
	}
	var months []float64
	for _, p := range svg.find("path") {
		if p.class("month") {
			var x float64
			fmt.Sscanf(p.attr["d"], "M%g", &x)
			months = append(months, x)
		}
	}
	if len(months) < 2 {
		return 0, 0
	}
	scale = (months[1] - months[0]) / 30.5
	if n := len(months) - 1; n > 2 {
		scale = (months[n] - months[0]) / (30.44 * float64(n))
	}
	a, b := all[0], all[len(all)-1]
	if own := (b.x - a.x) / float64(b.d-a.d); math.Abs(own-scale) > 0.06*scale+0.02 {
		t.Errorf("the threads run at %.3f px a day, the months at %.3f", own, scale)
	} else {
		scale = own
	}
	return scale, a.d - cal.Day(math.Round((a.x-startLeft)/scale))
}

// longDay reads "28 June 2015".
func longDay(s string) (cal.Day, bool) {
	var day, year int
	var month string
	if n, _ := fmt.Sscan(strings.TrimSpace(s), &day, &month, &year); n != 3 {
		return 0, false
	}
	m := slices.Index(monthNames[:], month) + 1
	d := cal.Of(year, 1, 1)
	for m > 0 && int(d.Month()) != m {
		d++
	}
	return d + cal.Day(day-1), m > 0
}

// TestGermOfDaysAlone: where it is known nowhere how many seeds come up, the
// picture holds the days alone and does not say nine times that it is not known.
func TestGermOfDaysAlone(t *testing.T) {
	h := cropHandler(t, &fakeGarden{day: richDay()})
	for _, tt := range []struct {
		slug string
		tall string
	}{{"pak-choi", "0 0 366 70"}, {"carrot", "0 0 366 190"}} {
		for _, svg := range open(t, h, "/crop/"+tt.slug).find("svg") {
			if !svg.class("germ") {
				continue
			}
			if box := svg.attr["viewbox"] + svg.attr["viewBox"]; box != tt.tall {
				t.Errorf("%s: the picture of emergence is %q, want %q", tt.slug, box, tt.tall)
			}
			for _, g := range svg.find("g") {
				if tt.slug == "pak-choi" && strings.Contains(g.words(), "known") {
					t.Errorf("pak choi: %q in the picture", g.words())
				}
			}
		}
	}
}

// TestGermPictureAndTableAgree counts the seeds drawn against the percent of
// the table; a gap is drawn as not known, unless nothing is.
func TestGermPictureAndTableAgree(t *testing.T) {
	h := cropHandler(t, &fakeGarden{day: richDay()})
	known, gaps := 0, 0
	for _, slug := range []string{"carrot", "tomato", "kale", "spinach"} {
		root := open(t, h, "/crop/"+slug)
		table := map[string]string{}
		for _, tr := range root.find("tr") {
			if s := tr.attr["data-soil"]; s != "" {
				table[s] = tr.find("td")[0].text
			}
		}
		for _, g := range root.find("g") {
			soil := g.attr["data-soil"]
			if soil == "" {
				continue
			}
			full := 0
			for _, p := range g.find("path") {
				if p.class("seed") && len(g.find("path")) > 0 {
					var x, a, b float64
					fmt.Sscanf(strings.Replace(p.attr["d"], "V", " ", 1), "M%g %g %g", &x, &a, &b)
					n := int(math.Round((a-b)/germSeed)) + 1
					hollow := false
					for _, o := range g.find("path") {
						hollow = hollow || o.class("inside") && o.attr["d"] == p.attr["d"]
					}
					if !hollow {
						full = n
					}
				}
			}
			var pct float64
			if n, _ := fmt.Sscan(table[soil], &pct); n != 1 {
				gaps++
				if len(g.find("path")) > 1 || strings.Contains(g.words(), "not") == (slug == "kale") { // of kale nothing is known
					t.Errorf("%s at %s: a gap is drawn as seeds", slug, soil)
				}
				continue
			}
			known++
			if want := int(math.Round(pct / 5)); full != want {
				t.Errorf("%s at %s: %d seeds are filled, the table's %g %% are %d", slug, soil, full, pct, want)
			}
		}
	}
	if known < 12 || gaps < 1 {
		t.Fatalf("%d known and %d gaps: too few to judge", known, gaps)
	}
}

// TestOwnFigureForm: slips are said at their field and nothing is kept; a
// sound one is one event however often it is sent, and stands on the page.
func TestOwnFigureForm(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := cropHandler(t, g)
	id := ledger.NewID()
	send := func(form url.Values) (int, string) {
		form.Set("form", id)
		w := ask(h, "POST", "/crop/carrot", form)
		return w.Code, w.Body.String()
	}
	for _, tt := range []struct{ value, low, high, why, says string }{
		{"2", "", "", "notes", "2 days is not possible. A plant can have 5 to 500 days."},
		{"soon", "", "", "notes", "no number"},
		{"80", "90", "70", "notes", "Swap them"},
		{"80", "", "", "", "Say where it comes from"},
		{hostileText, "", "", hostileText, "no number"},
	} {
		code, body := send(url.Values{"figure": {"days-from-sow"}, "value": {tt.value}, "low": {tt.low}, "high": {tt.high}, "why": {tt.why}})
		if code != http.StatusUnprocessableEntity || !strings.Contains(body, tt.says) {
			t.Errorf("%q %q %q %q: %d, want 422 and %q", tt.value, tt.low, tt.high, tt.why, code, tt.says)
		}
		root := parse(t, body)
		checkPage(t, "slip "+tt.value, root)
		kept := false
		for _, n := range root.find("input") {
			kept = kept || n.attr["name"] == "value" && n.attr["value"] == clip(tt.value, 60)
		}
		if !kept {
			t.Errorf("%q: what was typed is lost", tt.value)
		}
	}
	if len(g.events) != 0 {
		t.Fatalf("slips were kept: %+v", g.events)
	}
	good := url.Values{"figure": {"days-from-sow"}, "value": {"12 weeks"}, "low": {"70"}, "high": {"95"}, "why": {"two years of notes"}}
	for range 2 {
		if code, body := send(good); code != http.StatusSeeOther {
			t.Fatalf("a sound figure: %d %.300s", code, body)
		}
	}
	if len(g.events) != 1 || g.events[0].kind != ledger.Figured {
		t.Fatalf("events: %+v", g.events)
	}
	if f := g.events[0].body.(ledger.OwnFigure); f.Value != 84 || f.Low != 70 || f.Unit != "days" || f.Typed != "12 weeks" || f.Crop != "carrot" {
		t.Errorf("kept: %+v", f)
	}
	root := open(t, h, "/crop/carrot")
	words := root.words()
	for _, want := range []string{"mine 84 days", "Your own figures", "Without it", "two years of notes", "your own figure"} {
		if !strings.Contains(words, want) {
			t.Errorf("the page does not say %q", want)
		}
	}
}
