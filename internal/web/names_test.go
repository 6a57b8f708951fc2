package web

import (
	"bytes"
	"context"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// namesText is an invented garden; %s is a name typed into it.
const namesText = `garden: Names
place: {latitude: 47.6 N, longitude: 122.3 W}
media:
  mix: {kind: compost blend}
spaces:
  gate-bed: {kind: raised bed, east: 1 m, north: 1 m, medium: mix, water: can, length: 3 m, width: 1 m, depth: 30 cm, name: "NAME bed"}
  bench: {kind: bench, east: 3 m, north: 1 m, length: 1 m, width: 50 cm}
  store:
    kind: lamp shelf
    length: 1 m
    width: 50 cm
    standing:
      - {id: tray-1, crop: kale, one of: ["NAME one", "NAME two"], since: 1 September 2015, count: 12}
      - {id: tray-2, crop: kale, variety: "NAME three", since: 1 September 2015, count: 6}
shelf: {places: 48, light: 13 mol a day, warmth: 20 C}
seeds:
  - {id: kale-a, crop: kale, variety: "NAME one", year: 2014, count: 80}
  - {id: leek-a, crop: leek, variety: "NAME leek", year: 2011, count: 150}
`

// named is a garden with pages about names over a real ledger.
type namedGarden struct {
	t    *testing.T
	led  *ledger.Ledger
	g    *garden.Garden
	book *crop.Book
	h    http.Handler
	day  *reckon.Day
}

func (n *namedGarden) desk(ctx context.Context) (*names.Desk, error) {
	events, err := n.led.Events(ctx)
	if err != nil {
		return nil, err
	}
	standing := reckon.FromFile(n.g)
	state := ledger.ReplayOver(standing, events)
	return names.New(n.g, n.book, &state, standing, events, today)
}

// namedWith makes the garden with a name in all its names.
func namedWith(t *testing.T, typed string) *namedGarden {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("names.yaml", []byte(strings.ReplaceAll(namesText, "NAME", typed)), garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	d := richDay()
	d.Spaces = append(d.Spaces, reckon.SpaceDay{ID: "store", Name: "Store"})
	for _, c := range book.Crops {
		d.Crops = append(d.Crops, reckon.Choice{ID: string(c.ID), Name: c.Name})
	}
	l, err := ledger.Open(t.TempDir(), ledger.Options{Program: "pages test", Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close() })
	n := &namedGarden{t: t, led: l, g: g, book: book, day: d}
	o := (&fakeGarden{day: d}).options()
	o.Names = n.desk
	o.Record = func(ctx context.Context, k ledger.Kind, on cal.Day, parent string, body any) (string, error) {
		e, err := ledger.NewEvent("phone", on, k, body)
		if err != nil {
			return "", err
		}
		e.ID, e.Parent = FormID(ctx), parent
		out, err := l.Append(ctx, e)
		if err != nil {
			return "", err
		}
		return out[0].ID, nil
	}
	if n.h, err = New(o); err != nil {
		t.Fatal(err)
	}
	return n
}

// send fills a form of a page as a browser would, and returns where it leads.
func (n *namedGarden) send(page, action string, nth int, fill ...string) string {
	n.t.Helper()
	v := with(formOf(n.t, open(n.t, n.h, page), action, nth), fill...)
	w := ask(n.h, "POST", action, v)
	if w.Code != http.StatusSeeOther {
		n.t.Fatalf("%s to %s: %d, want 303\n%s", page, action, w.Code, parse(n.t, w.Body.String()).find("main")[0].words())
	}
	return w.Header().Get("Location")
}

func (n *namedGarden) last() ledger.Event {
	events, err := n.led.Events(context.Background())
	if err != nil || len(events) == 0 {
		n.t.Fatalf("%d entries, %v", len(events), err)
	}
	return events[len(events)-1]
}

// hostileName fits where a variety does.
const hostileName = `<em>x</em>"'&amp; מימין`

// TestNamesPagesAreSound draws each page with a plain and with a hostile name.
func TestNamesPagesAreSound(t *testing.T) {
	for _, typed := range []string{"Black", strings.ReplaceAll(hostileName, `"`, `\"`)} {
		n := namedWith(t, typed)
		for _, p := range []string{"/seeds", "/seeds?tag=Nobody+12", "/seeds/new", "/lot/kale-a", "/lot/leek-a?plants=24", "/plant/tray-1", "/plant/tray-2",
			"/plant/tray-1/move/prick-out", "/plant/tray-1/move/pot-on", "/plant/tray-2/move/harden", "/plant/tray-1/move/set-out", "/plant/tray-2/seed",
			"/which/tray-1", "/which/tray-2", "/which/tray-1?answer=is&name=Some", "/which/tray-1?answer=not&name=" + url.QueryEscape(typed+" one"), "/labels", "/labels?id=tray-1&sheet=own&lw=x", "/labels?id=tray-1&id=lot+kale-a"} {
			root := open(t, n.h, p)
			checkPage(t, typed+" "+p, root)
			if typed != "Black" && strings.HasPrefix(p, "/plant/tray-1") && !strings.Contains(root.words(), "<em>x</em>") {
				t.Errorf("%s: the typed name is not shown as text", p)
			}
		}
		for _, p := range []string{"/lot/nobody", "/plant/nobody", "/which/nobody", "/plant/tray-1/move/fly", "/P/NOBODY-12"} {
			if w := ask(n.h, "GET", p, nil); w.Code != http.StatusNotFound {
				t.Errorf("%s: %d, want 404", p, w.Code)
			}
		}
	}
}

func number64(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatalf("%q is no number", s)
	}
	return x
}

// TestShelfPictureAndTableAgree reads the windows of the picture back from its
// strokes and compares them with the table's.
func TestShelfPictureAndTableAgree(t *testing.T) {
	root := open(t, namedWith(t, "Black").h, "/seeds")
	var svg *node
	for _, s := range root.find("svg") {
		if s.attr["data-from"] != "" {
			svg = s
		}
	}
	if svg == nil {
		t.Fatal("no picture")
	}
	from, _ := cal.Parse(svg.attr["data-from"])
	to, _ := cal.Parse(svg.attr["data-to"])
	at := func(d cal.Day) float64 { return 8 + shelfWide*float64(d-from)/float64(to-from) }
	rows := map[string][2]string{}
	for _, tr := range root.find("tr") {
		if id := tr.attr["data-tray"]; id != "" {
			rows[id] = [2]string{tr.attr["data-ready"], tr.attr["data-bound"]}
		}
	}
	seen := 0
	for _, g := range svg.find("g") {
		row, ok := rows[g.attr["data-tray"]]
		if !ok || row[0] != g.attr["data-ready"] || row[1] != g.attr["data-bound"] {
			t.Errorf("%s: picture %q %q, table %q", g.attr["data-tray"], g.attr["data-ready"], g.attr["data-bound"], row)
			continue
		}
		seen++
		var days [3]cal.Day
		for i, f := range strings.Fields(row[0]) {
			days[i], _ = cal.Parse(f)
		}
		least, most := 1e9, -1e9
		for _, p := range strings.Split(g.find("path")[0].attr["d"], "M")[1:] {
			_, end, _ := strings.Cut(p, "H")
			x := number64(t, end)
			least, most = min(least, x), max(most, x)
		}
		if least < at(days[0])-1 || most > at(days[2])+1 || most-least < (at(days[2])-at(days[0]))*0.9 {
			t.Errorf("threads end between %.1f and %.1f, the window lies from %.1f to %.1f px", least, most, at(days[0]), at(days[2]))
		}
		for i, f := range strings.Fields(row[1]) {
			days[i], _ = cal.Parse(f)
		}
		r := g.find("rect")[0]
		if x, w := number64(t, r.attr["x"]), number64(t, r.attr["width"]); x < at(days[0])-1 || x > at(days[0])+1 || x+w < at(days[2])-1 || x+w > at(days[2])+1 {
			t.Errorf("hatched from %.1f by %.1f px, the window lies from %.1f to %.1f", x, w, at(days[0]), at(days[2]))
		}
	}
	if seen != len(rows) || seen != 2 {
		t.Errorf("%d trays drawn, %d in the table, 2 stand there", seen, len(rows))
	}
}

// TestAPlantKeepsItsNameThroughAllHands plays one life through the forms.
func TestAPlantKeepsItsNameThroughAllHands(t *testing.T) {
	n := namedWith(t, "Black")
	lot := n.send("/seeds/new", "/seeds/new", 0, "crop", "kale", "variety", "Tall", "year", "2015", "count", "50")
	lotID := n.last().ID
	if !strings.HasPrefix(lot, "/lot/"+lotID) {
		t.Fatalf("a new packet leads to %s", lot)
	}
	n.send("/lot/"+lotID, "/lot/"+lotID, 1, "sown", "20", "up", "18")
	n.send("/lot/"+lotID, "/lot/"+lotID, 0, "seeds", "12", "space", "store")
	tray := n.last().ID
	to := n.send("/plant/"+tray, "/plant/"+tray+"/move/prick-out", 0)
	if !strings.HasPrefix(to, "/plant/"+tray) {
		t.Errorf("one tap leads to %s", to)
	}
	if e := n.last(); e.Kind != ledger.PrickedOut || !strings.Contains(string(e.Body), `"pot":"7 cm"`) {
		t.Errorf("one tap wrote %s %s", e.Kind, e.Body)
	}
	n.send("/plant/"+tray+"/move/pot-on", "/plant/"+tray+"/move/pot-on", 0, "how", "some", "count", "9", "rest", "gone")
	to = n.send("/plant/"+tray+"/move/set-out", "/plant/"+tray+"/move/set-out", 0, "how", "some", "count", "5", "space", "gate-bed")
	out := n.last().ID
	if !strings.HasPrefix(to, "/plant/"+out) {
		t.Errorf("a part set out leads to %s, want its own page", to)
	}
	seed := n.send("/plant/"+out+"/seed", "/plant/"+out+"/seed", 0, "grams", "2,5")
	d, err := n.desk(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if o := d.Origin(out); o != lotID {
		t.Errorf("the plants in the bed come from %q, want the packet %s", o, lotID)
	}
	if g, _ := d.Group(out); g.Count != 5 || g.Variety != "Tall" || g.Space != "gate-bed" {
		t.Errorf("%+v", g)
	}
	if l, _ := d.Lot(lotID); l.Left != 38 || len(l.Tests) != 1 {
		t.Errorf("%+v", l)
	}
	saved, _ := d.Lot(n.last().ID)
	if !strings.HasPrefix(seed, "/lot/"+saved.ID) || saved.From != out || saved.Grams != 2.5 || saved.Variety != "Tall" {
		t.Errorf("saved seed: %+v", saved)
	}
	g, _ := d.Group(out)
	for _, p := range []string{"/P/" + g.Tag.Short()} {
		if w := ask(n.h, "GET", p, nil); w.Code != http.StatusSeeOther || w.Header().Get("Location") != "/plant/"+out {
			t.Errorf("%s: %d to %s", p, w.Code, w.Header().Get("Location"))
		}
	}
	if to := n.send("/seeds", "/seeds/find", 0, "tag", strings.ToLower(string(g.Tag))); to != "/plant/"+out {
		t.Errorf("the tag typed opens %s", to)
	}
	root := open(t, n.h, "/plant/"+out)
	if w := root.words(); !strings.Contains(w, "Pricked out") || !strings.Contains(w, "Potted on") || !strings.Contains(w, string(g.Tag)) {
		t.Errorf("its page does not tell its life: %s", w)
	}
}

// TestOneOfTheseIsNarrowed: two trays are mixed up at setting out; the page
// shows what an answer changes before it is given, and gives it.
func TestOneOfTheseIsNarrowed(t *testing.T) {
	n := namedWith(t, "Black")
	at := "/plant/tray-2/move/set-out"
	v := with(formOf(t, open(t, n.h, at), at, 0), "how", "some", "count", "4", "space", "gate-bed", "doubt", "yes", "other", "tray-1")
	if w := ask(n.h, "POST", at, v); w.Code != http.StatusSeeOther {
		t.Fatalf("%d", w.Code)
	}
	mix := n.last()
	if mix.Kind != ledger.PutOut || mix.Version != 2 {
		t.Fatalf("%s, layout %d", mix.Kind, mix.Version)
	}
	d, _ := n.desk(context.Background())
	g, _ := d.Group(mix.ID)
	if !g.Unknown() || len(g.OneOf) != 3 || g.Count != 4 {
		t.Fatalf("%+v", g)
	}
	page := "/which/" + mix.ID
	to := n.send(page, page+"/ask", 0, "answer", "is", "name", "Black three", "count", "")
	root := open(t, n.h, to)
	if w := root.find("main")[0].words(); !strings.Contains(w, "becomes") || !strings.Contains(w, "Black three") {
		t.Fatalf("what it changes is not shown: %s", w)
	}
	before := n.last().ID
	if before != mix.ID {
		t.Fatal("asking wrote an entry")
	}
	n.send(to, page, 0)
	d, _ = n.desk(context.Background())
	if g, _ := d.Group(mix.ID); g.Variety != "Black three" {
		t.Errorf("agreed, and it is %s", g.Name())
	}
	n.send("/which/tray-1", "/which/tray-1/looks", 0, "variety", "Black one", "value", "curled")
	if e := n.last(); e.Kind != ledger.Described {
		t.Errorf("wrote %s", e.Kind)
	}
	n.send("/which/tray-1", "/which/tray-1", 0, "answer", "cannot")
	if e := n.last(); e.Kind != ledger.Named {
		t.Errorf("wrote %s", e.Kind)
	}
}

func TestNamesFaultsAtTheField(t *testing.T) {
	n := namedWith(t, "Black")
	for _, tt := range []struct {
		page, action string
		nth          int
		fill         []string
		want         string
	}{
		{"/seeds/new", "/seeds/new", 0, []string{"crop", "", "year", "12"}, "Choose which crop."},
		{"/seeds/new", "/seeds/new", 0, []string{"crop", "kale", "year", "12"}, "Write the year on the packet"},
		{"/seeds/new", "/seeds/new", 0, []string{"crop", "kale", "grams", "heavy"}, "Write a number"},
		{"/lot/kale-a", "/lot/kale-a", 1, []string{"sown", "10", "up", "11"}, "No more than the 10"},
		{"/lot/kale-a", "/lot/kale-a", 2, []string{"count", ""}, "Say how many seeds"},
		{"/plant/tray-1/move/set-out", "/plant/tray-1/move/set-out", 0, []string{"how", "all", "space", ""}, "Choose where"},
		{"/plant/tray-1/move/prick-out", "/plant/tray-1/move/prick-out", 0, []string{"how", "some", "count", "few"}, "whole number"},
		{"/plant/tray-1/move/prick-out", "/plant/tray-1/move/prick-out", 0, []string{"how", "all", "doubt", "yes"}, "Say how many"},
		{"/which/tray-1", "/which/tray-1/looks", 0, []string{"value", ""}, "Say in a word or two"},
	} {
		v := with(formOf(t, open(t, n.h, tt.page), tt.action, tt.nth), tt.fill...)
		w := ask(n.h, "POST", tt.action, v)
		if w.Code != http.StatusUnprocessableEntity || !strings.Contains(w.Body.String(), tt.want) {
			t.Errorf("%s %v: %d, want 422 and %q", tt.page, tt.fill, w.Code, tt.want)
		}
		checkPage(t, tt.page, parse(t, w.Body.String()))
	}
	if seq, _ := n.led.Head(); seq != 0 {
		t.Errorf("%d entries were written by faulty forms", seq)
	}
}

func TestLabelsAreSent(t *testing.T) {
	n := namedWith(t, "Лук")
	to := n.send("/labels", "/labels/ask", 0, "id", "tray-1", "from", "3")
	root := open(t, n.h, to)
	href := ""
	for _, a := range root.find("a") {
		if strings.HasPrefix(a.attr["href"], "/labels.pdf") {
			href = a.attr["href"]
		}
	}
	w := ask(n.h, "GET", href, nil)
	if w.Code != 200 || w.Header().Get("Content-Type") != "application/pdf" || !bytes.HasPrefix(w.Body.Bytes(), []byte("%PDF-")) {
		t.Fatalf("%s: %d %s", href, w.Code, w.Header().Get("Content-Type"))
	}
	if w := ask(n.h, "GET", "/labels.pdf?id=tray-1&from=99", nil); w.Code != http.StatusSeeOther {
		t.Errorf("place 99 of 21: %d, want to be led back", w.Code)
	}
	if s := open(t, namedWith(t, "白菜").h, "/labels?id=tray-2").words(); !strings.Contains(s, "Not in our letters") {
		t.Error("a name that cannot be printed is not said")
	}
}

// TestLineUpShowsOwnPictures: a picture of plants known to be of one sort
// stands in the line-up, under a hostile name too.
func TestLineUpShowsOwnPictures(t *testing.T) {
	for _, typed := range []string{"Black", strings.ReplaceAll(hostileName, `"`, `\"`)} {
		n := namedWith(t, typed)
		if len(open(t, n.h, "/which/tray-1").find("img")) > 0 {
			t.Fatal("a picture before anybody took one")
		}
		sown, err := ledger.NewEvent("phone", today-90, ledger.Sown, ledger.Started{Crop: "kale", Variety: strings.ReplaceAll(typed, `\"`, `"`) + " two", Space: "gate-bed", Count: 4})
		if err != nil {
			t.Fatal(err)
		}
		shot, err := ledger.NewEvent("phone", today-9, ledger.Pictured, ledger.Photo{Planting: sown.ID, SHA256: strings.Repeat("ab", 32), Bytes: 9, Width: 40, Height: 30})
		if err != nil {
			t.Fatal(err)
		}
		if _, err := n.led.Append(t.Context(), sown, shot); err != nil {
			t.Fatal(err)
		}
		root := open(t, n.h, "/which/tray-1")
		checkPage(t, "line-up", root)
		if img := root.find("img"); len(img) != 1 || !strings.Contains(img[0].attr["src"], strings.Repeat("ab", 32)+".small.jpg") || img[0].attr["alt"] == "" {
			t.Errorf("%q: %d pictures in the line-up, want one with words", typed, len(img))
		}
	}
}
