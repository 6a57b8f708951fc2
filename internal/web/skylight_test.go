package web

import (
	"context"
	"fmt"
	"io"
	"math"
	"net"
	"net/http"
	"net/url"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// skyGarden is a small invented garden whose spaces have the fixtures' names.
const skyGarden = `garden: Invented yard
place: {latitude: %s, longitude: 120 W, elevation: 50 m}
media:
  mix: {kind: potting mix}
spaces:
  gate-bed: {name: Gate bed, kind: raised bed, east: 0 m, north: 0 m, length: 3 m, width: 1 m, rim: 30 cm, depth: 30 cm, medium: mix, water: can}
  long-bed: {name: Long bed, kind: raised bed, east: 0 m, north: -2 m, length: 4.8 m, width: 0.9 m, rim: 35 cm, depth: 35 cm, medium: mix, water: can}
obstacles:
  wall: {name: Wall, kind: wall, east: 0 m, north: -5.05 m, length: 8 m, width: 10 cm, height: 3 m}
  shed: {name: Shed, kind: box, east: 5 m, north: 1 m, length: 2 m, width: 4 m, height: 4 m}
  tree: {name: Maple, kind: tree, east: -5 m, north: -3 m, across: 3 m, height: 6 m, base: 2 m, light in leaf: 15 %%, light bare: 60 %%, in leaf: May to October}
  roof: {name: <em>Roof</em>, kind: roof, east: -4 m, north: 3 m, length: 2 m, width: 2 m, height: 2.5 m}
`

// skyPages serves the pages of the fixture with the light of skyGarden and a
// real ledger.
func skyPages(t *testing.T, lat string) (http.Handler, *ledger.Ledger) {
	t.Helper()
	g, faults := garden.Read("yard", fmt.Appendf(nil, skyGarden, lat), nil)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	day := richDay()
	l, err := ledger.Open(t.TempDir(), ledger.Options{Program: "pages test", Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close() })
	o := (&fakeGarden{day: day}).options()
	o.Record = func(ctx context.Context, k ledger.Kind, on cal.Day, parent string, body any) (string, error) {
		e, err := ledger.NewEvent("phone", on, k, body)
		if err != nil {
			return "", err
		}
		e.ID, e.Parent = FormID(ctx), parent
		if _, err := l.Append(ctx, e); err != nil {
			return "", err
		}
		return e.ID, nil
	}
	o.Void = func(ctx context.Context, event string) error {
		_, err := o.Record(ctx, ledger.Voided, day.Date, event, ledger.Void{Event: event})
		return err
	}
	o.Light = func(ctx context.Context) (*reckon.LightDesk, error) {
		state, err := l.State(ctx)
		if err != nil {
			return nil, err
		}
		return reckon.NewLightDesk(&reckon.Inputs{Garden: g, Date: day.Date, Workers: 1, State: &state}, time.FixedZone("", -8*3600)), nil
	}
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	return h, l
}

// TestServeSky serves the pages with light north and south of the equator when
// asked with -serve. The browser tests of sun and shade start it.
func TestServeSky(t *testing.T) {
	if *serve == "" {
		t.Skip("no -serve")
	}
	for name, lat := range map[string]string{"north": "47.6 N", "south": "36 S", "polar": "70 N"} {
		h, _ := skyPages(t, lat)
		l, err := net.Listen("tcp", *serve+":0")
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(os.Stdout, "serving %s http://%s\n", name, l.Addr())
		go http.Serve(l, h)
	}
	io.Copy(io.Discard, os.Stdin) // until the starter closes our input
}

func readFigure(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

var points = regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`)

// The skyline drawn is the skyline of the table, and the bars are the months of
// theirs, north and south of the equator.
func TestSkylineAndTablesAgree(t *testing.T) {
	for _, lat := range []string{"47.6 N", "36 S"} {
		h, _ := skyPages(t, lat)
		root := open(t, h, "/sky/gate-bed")
		var drawn [][2]float64
		left, right, ground := 0.0, 0.0, 0.0
		table, bars := map[string]string{}, map[string]string{}
		rows := [][2]float64{}
		root.all(func(n *node) {
			switch {
			case n.name == "svg" && n.attr["data-left"] != "":
				left, right = readFigure(t, n.attr["data-left"]), readFigure(t, n.attr["data-right"])
			case n.name == "path" && n.class("solid") && drawn == nil:
				for _, m := range points.FindAllStringSubmatch(n.attr["d"], -1) {
					drawn = append(drawn, [2]float64{readFigure(t, m[1]), readFigure(t, m[2])})
				}
				ground = drawn[0][1]
			case n.name == "tr" && n.attr["data-bearing"] != "":
				rows = append(rows, [2]float64{readFigure(t, n.attr["data-bearing"]), readFigure(t, n.attr["data-edge"])})
			case n.name == "tr" && n.attr["data-month"] != "":
				table[n.attr["data-month"]] = n.attr["data-hours"]
			case n.name == "g" && n.attr["data-month"] != "":
				bars[n.attr["data-month"]] = n.attr["data-hours"]
				top := 0.0
				for _, m := range regexp.MustCompile(`V(-?[\d.]+)`).FindAllStringSubmatch(n.find("path")[0].attr["d"], -1) {
					top += readFigure(t, m[1]) / 5
				}
				if mean := (18 + barHour*barSky - top) / barHour; math.Abs(mean-readFigure(t, n.attr["data-hours"])) > 0.6 {
					t.Errorf("%s %s: threads of %.1f h, said %s", lat, n.attr["data-month"], mean, n.attr["data-hours"])
				}
			}
		})
		if len(rows) < 15 || len(table) != 12 || fmt.Sprint(table) != fmt.Sprint(bars) {
			t.Fatalf("%s: %d bearings, bars %v, table %v", lat, len(rows), bars, table)
		}
		if right <= left {
			t.Errorf("%s: the picture runs from %v to %v", lat, left, right)
		}
		for _, r := range rows {
			off := math.Mod(r[0]-left+720, 360)
			x, y := skyLeft+skyWide*off/(right-left), ground-skyUp*r[1]
			best := math.Inf(1)
			for _, p := range drawn {
				best = min(best, math.Hypot(p[0]-x, p[1]-max(y, skyTop)))
			}
			if best > 0.2 {
				t.Errorf("%s: %v° high at %v° is not drawn; nearest is %.1f px off", lat, r[1], r[0], best)
			}
		}
		words := root.words()
		if want := map[string]string{"47.6 N": "through the south to the west", "36 S": "from the west side through the north to the east"}[lat]; !strings.Contains(words, want) {
			t.Errorf("%s: nothing of %q", lat, want)
		}
		if strings.Contains(words, "space long-bed") || len(root.find("em")) > 0 {
			t.Error("a name is not the gardener's, or broke out")
		}
	}
}

// The figures on the garden's picture are those of its table.
func TestGardenPictureAndTableAgree(t *testing.T) {
	h, _ := skyPages(t, "47.6 N")
	for _, path := range []string{"/light", "/light?week=25&hour=9", "/light?week=50&hour=3&show=light"} {
		root := open(t, h, path)
		drawn, table := map[string]string{}, map[string]string{}
		root.all(func(n *node) {
			if n.attr["data-figure"] == "" {
				return
			}
			if n.name == "text" {
				drawn[n.attr["data-space"]] = n.attr["data-figure"]
				if !strings.Contains(n.words()+n.text, n.attr["data-figure"]) {
					t.Errorf("%s: %s is not printed on %s", path, n.attr["data-figure"], n.attr["data-space"])
				}
				return
			}
			table[n.attr["data-space"]] = n.attr["data-figure"]
			column := "Sun, h"
			if strings.Contains(path, "show=light") {
				column = "Light, mol/m²"
			}
			for _, c := range n.find("td") {
				if c.attr["data-label"] == column {
					said, figure := readFigure(t, strings.TrimSpace(c.words())), readFigure(t, n.attr["data-figure"])
					if math.Abs(said-figure) > 0.51 || column == "Sun, h" && said != figure {
						t.Errorf("%s: %s has %v in the table, %v on the picture", path, n.attr["data-space"], said, figure)
					}
				}
			}
		})
		if len(drawn) != 2 || fmt.Sprint(drawn) != fmt.Sprint(table) {
			t.Errorf("%s: drawn %v, table %v", path, drawn, table)
		}
		if part := open(t, h, strings.Replace(path+"&part=drawing", "/light&", "/light?", 1)); len(part.find("h2")) != 1 {
			t.Errorf("%s: the drawing alone has %d headings", path, len(part.find("h2")))
		}
	}
}

// A correction is an event, says by how much the edge moved, changes the hours,
// and is undone by /undo to the hours before.
func TestSkylineIsCorrectedAndTakenBack(t *testing.T) {
	h, l := skyPages(t, "47.6 N")
	hours := func() string {
		var out []string
		open(t, h, "/sky/gate-bed").all(func(n *node) {
			if n.name == "tr" && n.attr["data-month"] != "" {
				out = append(out, n.attr["data-hours"])
			}
		})
		return strings.Join(out, " ")
	}
	before := hours()
	for _, tt := range []struct {
		nth  int
		fill []string
		says string
	}{
		{0, []string{"bearing", "180", "move", "up"}, "moves up by 10°, about one fist"},
		{1, []string{"clock", "4.50pm", "sun", "left", "day", "2015-06-21"}, "Saved. The edge to the"},
	} {
		form := formOf(t, open(t, h, "/sky/gate-bed"), "/sky/gate-bed", tt.nth)
		w := ask(h, "POST", "/sky/gate-bed", with(form, tt.fill...))
		if w.Code != http.StatusSeeOther {
			t.Fatalf("%v: %d %s", tt.fill, w.Code, parse(t, w.Body.String()).words())
		}
		to := w.Header().Get("Location")
		page := open(t, h, to)
		if !strings.Contains(page.words(), tt.says) {
			t.Errorf("%v: the page does not say %q", tt.fill, tt.says)
		}
		if hours() == before {
			t.Errorf("%v: the hours stayed", tt.fill)
		}
		if w := ask(h, "POST", "/sky/gate-bed", with(form, tt.fill...)); w.Code != http.StatusSeeOther {
			t.Errorf("sent twice: %d", w.Code)
		}
		events, _ := l.Events(t.Context())
		if e := events[len(events)-1]; e.Kind != ledger.Skyline {
			t.Fatalf("%v: kept as %s", tt.fill, e.Kind)
		}
		if w := ask(h, "POST", "/undo", formOf(t, page, "/undo", 0)); w.Code != http.StatusSeeOther {
			t.Fatalf("taking back: %d", w.Code)
		}
		if got := hours(); got != before {
			t.Errorf("taken back: hours %s, were %s", got, before)
		}
	}
	if events, _ := l.Events(t.Context()); len(events) != 4 {
		t.Errorf("%d entries, want two corrections and two taken back", len(events))
	}
	for _, tt := range []struct {
		nth  int
		fill []string
		want string
	}{
		{0, []string{"bearing", "11", "move", "up"}, "Choose a direction"},
		{1, []string{"clock", "half ten"}, "hours and minutes"},
		{1, []string{"clock", "3:00"}, "below the level"},
		{1, []string{"clock", "10:40", "day", "2016-01-01"}, "2015"},
	} {
		form := formOf(t, open(t, h, "/sky/gate-bed"), "/sky/gate-bed", tt.nth)
		w := ask(h, "POST", "/sky/gate-bed", with(form, tt.fill...))
		page := parse(t, w.Body.String())
		if w.Code != http.StatusUnprocessableEntity || !strings.Contains(page.words(), tt.want) {
			t.Errorf("%v: %d, want 422 and %q", tt.fill, w.Code, tt.want)
		}
		if tt.nth == 1 && formOf(t, page, "/sky/gate-bed", 1).Get("clock") != tt.fill[1] {
			t.Errorf("%v: what was typed is lost", tt.fill)
		}
	}
}

// A what-if says its difference by space and month, and refuses in words.
func TestWhatIfOnThePage(t *testing.T) {
	h, _ := skyPages(t, "47.6 N")
	form := formOf(t, open(t, h, "/light"), "/light/ask", 1)
	for _, tt := range []struct {
		fill []string
		want string
	}{
		{[]string{"thing", "0", "do", "remove"}, "Without Wall."},
		{[]string{"thing", "0", "do", "lower", "by", "1,5"}, "Wall 1.5 m lower."},
		{[]string{"thing", "0", "do", "lower", "by", "3"}, "take it away instead"},
		{[]string{"thing", "0", "do", "raise", "by", "high"}, "as a number"},
		{[]string{"thing", "0", "do", "raise", "by", "1000"}, "from 0.05 to 300"},
		{[]string{"thing", "0", "do", "prune"}, "cannot be thinned"},
		{[]string{"thing", "77", "do", "remove"}, "Choose one of the things"},
		{[]string{"thing", "2", "do", "prune"}, "it stops 30 % less"},
		{[]string{"thing", "1", "do", "net", "by", "90"}, "lets 90 % through"},
	} {
		w := ask(h, "POST", "/light/ask", with(form, tt.fill...))
		to, _ := url.Parse(w.Header().Get("Location"))
		root := open(t, h, to.Path+"?"+to.RawQuery)
		if w.Code != http.StatusSeeOther || to.Fragment != "what-if" || !strings.Contains(root.words(), tt.want) {
			t.Errorf("%v: %d to %s, want %q", tt.fill, w.Code, to, tt.want)
		}
	}
}

// TestShadowIsDrawnOfAllItsParts draws the two arms of an L by themselves: what
// lies in its dent is not under them.
func TestShadowIsDrawnOfAllItsParts(t *testing.T) {
	square := func(x float64) geom.Outline {
		return geom.Outline{{X: x, Y: 1}, {X: x + 1, Y: 1}, {X: x + 1, Y: 2}, {X: x, Y: 2}}
	}
	p := LightPage{Above: &reckon.Overhead{MaxX: 10, MaxY: 10, Things: []reckon.ThingAbove{{Name: "L", Shadow: []geom.Outline{square(1), square(4)}}, {Name: "lit"}}}}
	p.draw()
	if len(p.Shadows) != 1 || strings.Count(p.Shadows[0].Path, "M") != 2 || strings.Count(p.Shadows[0].Path, "Z") != 2 {
		t.Errorf("drawn as %+v", p.Shadows)
	}
}
