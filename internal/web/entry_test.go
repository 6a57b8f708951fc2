package web

import (
	"context"
	"errors"
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// fakeDescription is a program around the pages that keeps a garden in memory.
type fakeDescription struct {
	text  string
	kept  int
	wrote []Happening
	day   *reckon.Day
}

const begun = `garden: Test yard
place: {latitude: 47.6 N, longitude: 122.3 W}
from: 6 April 2015
media:
  old:                # ours since ever
    kind: potting mix
    since: 2013
    history:
      - {crop: tomato, until: 2014}
  fresh: {kind: compost blend, since: 2015}
spaces:
  # the sunny side
  long-bed:
    name: Long bed
    kind: raised bed
    east: 2 m
    north: 5 m
    length: 3 m
    width: 1.2 m
    depth: 40 cm
    medium: old
    water: drip
    standing:
      - {crop: kale, since: March 2015, count: 6}
      - {crop: leek, since: March 2015, count: 9}
  tub:
    kind: bag
    east: 8 m
    north: 1 m
    across: 18 in
    depth: 14 in
    medium: fresh
    water: can
wants: {salad: 4}
`

func fakeEntry(t *testing.T, text string) (*fakeDescription, http.Handler) {
	t.Helper()
	f := &fakeDescription{text: text}
	return f, entryWith(t, f, func(*Options) {})
}

// entryWith makes the pages around a description, with more options set.
func entryWith(t *testing.T, f *fakeDescription, set func(*Options)) http.Handler {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	today := cal.Of(2015, 4, 6)
	o := (&fakeGarden{}).options()
	o.Day = func(context.Context) (*reckon.Day, error) { return f.day, nil }
	o.Now = func() time.Time { return today.Time() }
	o.Entry = &Entry{Book: book, Today: func() cal.Day { return today }, Working: func() string { return "" },
		Text: func(context.Context) (string, error) { return f.text, nil },
		Keep: func(_ context.Context, text string) (string, error) {
			f.text = text
			f.kept++
			return ledger.NewID(), nil
		},
		State: func(context.Context) (*ledger.State, error) { return &ledger.State{}, nil },
		Append: func(_ context.Context, all []Happening) error {
			f.wrote = append(f.wrote, all...)
			return nil
		}}
	set(&o)
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func post(t *testing.T, h http.Handler, path string, fields map[string]string) (int, string) {
	t.Helper()
	delete(fields, "form") // each time a form of its own
	return sendForm(h, path, fields)
}

// sendForm posts a form; sent again with the same map, it is the same form.
func sendForm(h http.Handler, path string, fields map[string]string) (int, string) {
	if fields == nil {
		fields = map[string]string{}
	}
	if fields["form"] == "" {
		fields["form"] = ledger.NewID()
	}
	v := url.Values{}
	for k, x := range fields {
		v.Set(k, x)
	}
	r := httptest.NewRequest("POST", "http://localhost"+path, strings.NewReader(v.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Code, w.Body.String()
}

var faultWords = regexp.MustCompile(`class="(?:fault|problem)"[^>]*>([^<]*)`)

// TestBadAnswersAreNamedAtTheField wants each slip said at its field, nothing
// written, and what was typed still in the form.
func TestBadAnswersAreNamedAtTheField(t *testing.T) {
	for _, tt := range []struct {
		name, path, field string
		typed             map[string]string
		want              string
	}{
		{"zero", "/entry/space", "size", map[string]string{"kind": "bag", "size": "0 cm across"}, "more than|less than"},
		{"negative", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "-3 m x 1 m"}, "less than"},
		{"absurd", "/entry/space", "depth", map[string]string{"kind": "bag", "depth": "18 m"}, "Did you mean 18 cm"},
		{"no unit", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "3 x 1.2"}, "unit"},
		{"an L with too much taken out", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "L 3 m x 2 m, less 4 m x 1 m"}, "as large as the whole"},
		{"sides that do not meet", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "triangle 1 m, 1 m, 4 m"}, "do not meet"},
		{"a shape without units", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "oval 2 x 1"}, "unit"},
		{"a shape of a mile", "/entry/space", "size", map[string]string{"kind": "raised bed", "size": "half round 1600 m"}, "another unit"},
		{"outside", "/entry/space", "where", map[string]string{"kind": "bag", "where": "300 m east, 2 m north"}, "outside the plot"},
		{"two at one place", "/entry/space", "where", map[string]string{"kind": "bag", "where": "8 m east, 1 m north"}, "stands where tub stands"},
		{"a date in the future", "/entry/space", "standing", map[string]string{"kind": "bag", "standing": "2 kale, since May 2016"}, "future"},
		{"before its soil was filled", "/entry/space", "standing", map[string]string{"kind": "bag", "medium": "fresh", "standing": "2 kale, since May 2014"}, "filled in 2015"},
		{"no such crop", "/entry/space", "standing", map[string]string{"kind": "bag", "standing": "2 kalle, since 2014"}, "Did you mean kale"},
		{"something else in the book", "/entry/space", "others", map[string]string{"kind": "bag", "others": "2 kale, 40 cm across"}, "in the book, as kale"},
		{"something else without unit", "/entry/space", "others", map[string]string{"kind": "bag", "others": "comfrey, 40 across"}, "unit"},
		{"something else that fills ten beds", "/entry/space", "others", map[string]string{"kind": "bag", "others": "9 comfrey, 2 m across"}, "crowded|Look at the counts"},
		{"no crop of the book", "/entry/space", "standing", map[string]string{"kind": "bag", "standing": "2 rosebushes"}, "under “Something else that stands here”"},
		{"a name too long", "/entry/space", "name", map[string]string{"kind": "bag", "name": strings.Repeat("x", 90)}, "At most 80"},
		{"a want in words", "/entry/wants", "salad", map[string]string{"salad": "lots"}, "number of meals"},
		{"no height", "/entry/obstacle", "height", map[string]string{"kind": "wall", "size": "3 m x 10 cm", "where": "1 m east, 9 m north"}, "height"},
		{"lift without unit", "/entry/person", "lift", map[string]string{"name": "Ann", "lift": "8"}, "unit"},
		{"gone tomorrow", "/entry/ending", "on", map[string]string{"id": "tub", "on": "2015-04-07"}, "not come yet"},
		{"split at its end", "/entry/split", "length", map[string]string{"id": "long-bed", "length": "3 m"}, "Both parts"},
		{"a round one split at its end", "/entry/split", "length", map[string]string{"id": "tub", "length": "20 in"}, "The whole is 18 in"},
		{"a month too hot", "/entry/months", "january", map[string]string{"january": "90 C, 3 C, 10 mm"}, "unit"},
	} {
		f, h := fakeEntry(t, begun)
		code, body := post(t, h, tt.path, tt.typed)
		if code != http.StatusUnprocessableEntity || f.text != begun {
			t.Errorf("%s: status %d, kept %v", tt.name, code, f.text != begun)
			continue
		}
		_, rest, _ := strings.Cut(body, `id="f-`+tt.field+`"`)
		words, _, _ := strings.Cut(rest, "</p>")
		if !regexp.MustCompile(tt.want).MatchString(words) {
			t.Errorf("%s: at %s %q, want %s; all: %v", tt.name, tt.field, words, tt.want, faultWords.FindAllStringSubmatch(body, -1))
		}
		for k, typed := range tt.typed {
			if k != "id" && k != "kind" && !strings.Contains(body, strings.ReplaceAll(typed, `"`, "&#34;")) {
				t.Errorf("%s: what was typed into %s is gone", tt.name, k)
			}
		}
	}
}

// TestChangesKeepThePast makes each change of a space or its soil, and looks at
// what is left of the file.
func TestChangesKeepThePast(t *testing.T) {
	for _, tt := range []struct {
		name, path string
		typed      map[string]string
		check      func(g *garden.Garden) string
	}{
		{"ended", "/entry/ending", map[string]string{"id": "long-bed", "on": "1 April 2015"}, func(g *garden.Garden) string {
			return said(len(g.Spaces), len(g.Ended), g.Ended[0].Standing[0].ID, g.Ended[0].Until)
		}},
		{"split", "/entry/split", map[string]string{"id": "long-bed", "length": "2 m", "name": "Short end"}, func(g *garden.Garden) string {
			a, _ := g.Space("long-bed")
			b, _ := g.Space("short-end")
			return said(a.Length, b.Length, a.X, b.X, len(a.Standing), len(b.Standing), b.Medium, g.Spaces[1].ID)
		}},
		{"a round one split", "/entry/split", map[string]string{"id": "tub", "length": "6 in", "name": "Rim of the tub"}, func(g *garden.Garden) string {
			a, _ := g.Space("tub")
			b, _ := g.Space("rim-of-the-tub")
			return said(a.Shape, b.Shape, a.Round.Known(), fmt.Sprintf("%.3f %.2f %.2f", a.AreaM2()+b.AreaM2(), a.X, b.X), b.Depth)
		}},
		{"refilled", "/entry/turnover", map[string]string{"id": "long-bed", "what": "refill", "kind": "coir mix"}, func(g *garden.Garden) string {
			a, _ := g.Space("long-bed")
			b, _ := g.Batch(a.Medium)
			old, _ := g.Batch("old")
			return said(b.Kind, b.Since, len(b.History), len(old.History), old.History[1].Crop)
		}},
		{"mixed", "/entry/turnover", map[string]string{"id": "tub", "what": "mix", "batch": "old"}, func(g *garden.Garden) string {
			a, _ := g.Space("tub")
			b, _ := g.Batch(a.Medium)
			return said(b.Kind, len(b.History), b.History[0].Crop)
		}},
		{"renamed", "/entry/space", map[string]string{"id": "tub", "kind": "bag", "name": "Blue tub", "size": "18 in across", "depth": "14 in", "where": "8 m east, 1 m north", "medium": "fresh", "water": "can"}, func(g *garden.Garden) string {
			a, _ := g.Space("tub")
			return a.Name
		}},
		{"a planting taken out keeps the others' ids", "/entry/space", map[string]string{"id": "long-bed", "kind": "raised bed", "name": "Long bed", "size": "3 m x 1.2 m", "depth": "40 cm",
			"where": "2 m east, 5 m north", "medium": "old", "water": "drip", "standing": "9 leek, since March 2015"}, func(g *garden.Garden) string {
			a, _ := g.Space("long-bed")
			return said(len(a.Standing), a.Standing[0].ID)
		}},
		{"copied", "/entry/copies", map[string]string{"id": "tub", "count": "6"}, func(g *garden.Garden) string { return said(len(g.Spaces), g.Spaces[7].Name) }},
		{"moved", "/entry/plan", map[string]string{"space": "tub", "do": "east", "step": "6 in"}, func(g *garden.Garden) string {
			a, _ := g.Space("tub")
			return fmt.Sprintf("%.4f", a.X)
		}},
		{"dragged", "/entry/plan", map[string]string{"space": "tub", "do": "to", "step": "20 cm", "east": "0.437", "north": "-1.02"}, func(g *garden.Garden) string {
			a, _ := g.Space("tub")
			return fmt.Sprintf("%.4f %.4f", a.X, a.Y)
		}},
		{"an odd shape", "/entry/space", map[string]string{"id": "long-bed", "kind": "raised bed", "name": "Long bed", "size": "L 3 m x 2 m, less 1 m x 80 cm, south west", "depth": "40 cm",
			"where": "2 m east, 5 m north", "medium": "old", "water": "drip", "standing": "6 kale, since March 2015\n9 leek, since March 2015"}, func(g *garden.Garden) string {
			a, _ := g.Space("long-bed")
			return said(a.Shape, a.Length.M, a.Width.M, fmt.Sprintf("%.2f", a.AreaM2()), len(a.Standing))
		}},
		{"turned", "/entry/plan", map[string]string{"space": "long-bed", "do": "left", "step": "20 cm"}, func(g *garden.Garden) string { a, _ := g.Space("long-bed"); return said(a.TurnDeg) }},
		{"walked", "/entry/plan", map[string]string{"space": "tub", "do": "up", "step": "20 cm"}, func(g *garden.Garden) string { return string(g.Spaces[0].ID) }},
		{"a batch renamed", "/entry/medium", map[string]string{"id": "old", "name": "aged", "kind": "potting mix", "since": "2013", "history": "tomato until 2014"}, func(g *garden.Garden) string {
			a, _ := g.Space("long-bed")
			return said(a.Medium, len(g.Batches))
		}},
	} {
		want := map[string]string{"ended": "1 1 long-bed-1 2015-04-01", "split": "2 m 100 cm 1.5 3 2 0 old short-end", "a round one split": "oval 18 in x 18 in, first 6 in oval 18 in x 18 in, beyond 6 in false 0.164 7.85 8.08 14 in", "refilled": "coir mix 2015 0 3 kale", "mixed": "compost blend 1 tomato",
			"renamed": "Blue tub", "a planting taken out keeps the others' ids": "1 long-bed-2", "copied": "8 tub 7", "moved": "8.1534", "turned": "345", "dragged": "8.4328 -0.0254", "an odd shape": "L 3 m x 2 m, less 1 m x 80 cm, south west 3 2 5.20 2", "walked": "tub", "a batch renamed": "aged 2"}[tt.name]
		f, h := fakeEntry(t, begun)
		if code, body := post(t, h, tt.path, tt.typed); code != http.StatusSeeOther {
			t.Errorf("%s: status %d: %v", tt.name, code, faultWords.FindAllStringSubmatch(body, -1))
			continue
		}
		g, faults := garden.Read("x", []byte(f.text), nil)
		if len(faults) > 0 {
			t.Errorf("%s: %v\n%s", tt.name, faults[0], f.text)
			continue
		}
		if got := tt.check(g); got != want {
			t.Errorf("%s: %s, want %s\n%s", tt.name, got, want, f.text)
		}
		for _, remark := range []string{"# ours since ever", "# the sunny side"} {
			if !strings.Contains(f.text, remark) {
				t.Errorf("%s: the remark %q is gone", tt.name, remark)
			}
		}
	}
}

// said writes values with spaces between.
func said(values ...any) string { return strings.TrimSpace(fmt.Sprintln(values...)) }

const list = "When,Plant,Bed,What happened,Number\n2014-05-01,kale,Long bed,sown,12\n2014-06-01,tomatoes,The tub,transplanted,2\n"

// TestListIsWrittenWholeOrNotAtAll brings in a list of plantings.
func TestListIsWrittenWholeOrNotAtAll(t *testing.T) {
	f, h := fakeEntry(t, begun)
	code, body := post(t, h, "/entry/list", map[string]string{"paste": list})
	if code != http.StatusOK || !strings.Contains(body, "“The tub” is") {
		t.Fatalf("status %d, the unknown place is not asked for", code)
	}
	mapped := map[string]string{"text": list, "c-date": "1", "c-crop": "2", "c-place": "3", "c-event": "4", "c-count": "5", "go": "write"}
	if code, body = post(t, h, "/entry/list/save", mapped); code != http.StatusUnprocessableEntity || len(f.wrote) != 0 || !strings.Contains(body, "Row 3: no space is chosen") {
		t.Fatalf("status %d, %d written: %v", code, len(f.wrote), faultWords.FindAllStringSubmatch(body, -1))
	}
	mapped["p-The tub"] = "tub"
	if code, body = post(t, h, "/entry/list/save", mapped); code != http.StatusUnprocessableEntity || len(f.wrote) != 0 || !strings.Contains(body, "filled in 2015") {
		t.Fatalf("a planting before its space was filled: status %d, %d written", code, len(f.wrote))
	}
	mapped["p-The tub"] = "long-bed"
	if code, _ = post(t, h, "/entry/list/save", mapped); code != http.StatusSeeOther || len(f.wrote) != 2 || f.wrote[1].Kind != ledger.PutOut || f.wrote[1].Body.(ledger.Started).Crop != "tomato" {
		t.Fatalf("status %d, wrote %+v", code, f.wrote)
	}
	for name, text := range map[string]string{"a day to come": strings.Replace(list, "2014-05-01", "2016-05-01", 1), "no day": strings.Replace(list, "2014-05-01", "May", 1),
		"a count in words": strings.Replace(list, ",12", ",dozen", 1), "no crop": strings.Replace(list, "kale", "stones", 1)} {
		mapped["text"] = text
		if code, body := post(t, h, "/entry/list/save", mapped); code != http.StatusUnprocessableEntity || len(f.wrote) != 2 || !strings.Contains(body, "Row 2:") {
			t.Errorf("%s: status %d, %d written", name, code, len(f.wrote))
		}
	}
	mapped["text"] = strings.Replace(list, "kale", "comfrey", 1)
	if code, body := post(t, h, "/entry/list", map[string]string{"paste": mapped["text"]}); code != http.StatusOK || !strings.Contains(body, "“comfrey” is") {
		t.Errorf("a plant that is no crop is not asked for: status %d", code)
	}
	mapped["k-comfrey"] = "else"
	if code, body := post(t, h, "/entry/list/save", mapped); code != http.StatusSeeOther || len(f.wrote) != 4 || f.wrote[3].Kind != ledger.GardenSet {
		t.Fatalf("something else: status %d, wrote %+v: %v", code, f.wrote, faultWords.FindAllStringSubmatch(body, -1))
	}
	text := f.wrote[3].Body.(ledger.Garden).Text
	if !strings.Contains(text, "{name: comfrey, count: 12, takes: 40 cm across, since: 2014-05-01}") || !strings.Contains(text, "guessed: [something else]") {
		t.Errorf("something else is kept as:\n%s", text)
	}
	f.wrote = f.wrote[:2]
	delete(mapped, "k-comfrey")
	many := "date,crop,place\n" + strings.Repeat("2014-05-01,kale,Long bed\n", 10000)
	if code, body := post(t, h, "/entry/list", map[string]string{"paste": many}); code != http.StatusUnprocessableEntity || !strings.Contains(body, "10000 rows are more") {
		t.Errorf("ten thousand rows: status %d", code)
	}
	mapped["text"] = list
	for _, column := range []string{"0", "-1", "99", "9999999999999999999999", "x"} {
		mapped["c-date"] = column
		if code, _ := post(t, h, "/entry/list/save", mapped); code != http.StatusUnprocessableEntity || len(f.wrote) != 2 {
			t.Errorf("column %s: status %d, %d written", column, code, len(f.wrote))
		}
	}
	wide := strings.Repeat("a,", 20_000) + "a\n" + strings.Repeat("b,", 20_000) + "b\n"
	if code, body := post(t, h, "/entry/list", map[string]string{"paste": wide}); code != http.StatusUnprocessableEntity || !strings.Contains(body, "20001 columns are more") {
		t.Errorf("twenty thousand columns: status %d", code)
	}
}

// TestRound answers each space of a round and looks at what is written.
func TestRound(t *testing.T) {
	f, h := fakeEntry(t, begun)
	f.day = richDay()
	f.day.Date = cal.Of(2015, 4, 6)
	for _, tt := range []struct {
		space, answer string
		want          string // kinds written
	}{
		{"gate-bed", "as planned", "assumed picked"}, {"strip", "as planned", "assumed sown"}, {"bag-3", "not done", "assumed"}, {"bag-3", "gone", "assumed lost"},
	} {
		f.wrote = nil
		code, body := post(t, h, "/entry/round", map[string]string{"space": tt.space, "answer": tt.answer})
		var kinds []string
		for _, w := range f.wrote {
			kinds = append(kinds, string(w.Kind))
			if _, err := ledger.NewEvent("x", w.On, w.Kind, w.Body); err != nil {
				t.Errorf("%s %s: %v", tt.space, tt.answer, err)
			}
		}
		if got := strings.Join(kinds, " "); code != http.StatusSeeOther || got != tt.want {
			t.Errorf("%s %s: status %d, wrote %q, want %q: %.200s", tt.space, tt.answer, code, got, tt.want, body)
		}
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost/entry/round", nil))
	if w.Code != http.StatusOK || strings.Count(w.Body.String(), "As planned") != len(f.day.Spaces) {
		t.Errorf("the round: status %d, %d spaces", w.Code, strings.Count(w.Body.String(), "As planned"))
	}
	parse(t, w.Body.String())
	// What was said of one space today is told there, and no other is answered.
	h = entryWith(t, f, func(o *Options) {
		o.Entry.State = func(context.Context) (*ledger.State, error) {
			return &ledger.State{Assumed: []ledger.AssumedNote{{Assumption: ledger.Assumption{Space: "strip", What: "not done"}, On: f.day.Date}}}, nil
		}
	})
	w = httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost/entry/round", nil))
	body := w.Body.String()
	_, strip, _ := strings.Cut(body, `name="space" value="strip"`)
	if strings.Count(body, "Said: not done.") != 1 || strings.Count(body, "As planned") != len(f.day.Spaces)-1 || strip != "" || !strings.Contains(body, "1 of ") {
		t.Errorf("one space said: %d told, %d asked", strings.Count(body, "Said: not done."), strings.Count(body, "As planned"))
	}
}

// TestEntryPagesAreWellFormed draws every page of the description, also with
// markup in every name.
func TestEntryPagesAreWellFormed(t *testing.T) {
	hostile := strings.NewReplacer("Test yard", `"<em>yard</em> & 'co'"`, "Long bed", `"<script>x</script>"`).Replace(begun)
	for _, text := range []string{"", begun, hostile} {
		_, h := fakeEntry(t, text)
		for _, path := range []string{"/entry", "/entry/place", "/entry/kind", "/entry/space?kind=tier", "/entry/space?id=long-bed", "/entry/plan", "/entry/copies?id=tub", "/entry/split?id=long-bed", "/entry/ending?id=tub",
			"/entry/turnover?id=tub", "/entry/person", "/entry/obstacle", "/entry/medium", "/entry/medium?id=old", "/entry/wants", "/entry/tin", "/entry/months", "/entry/weather", "/entry/unknown", "/entry/file", "/entry/list"} {
			w := httptest.NewRecorder()
			h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost"+path, nil))
			switch {
			case w.Code == http.StatusSeeOther || w.Code == http.StatusNotFound && text == "":
			case w.Code != http.StatusOK:
				t.Errorf("%s: status %d", path, w.Code)
			default:
				n := parse(t, w.Body.String())
				if len(n.find("em")) > 0 {
					t.Errorf("%s: a typed tag became a tag", path)
				}
			}
		}
	}
}

// TestFetchedWeather taps once for twenty years: what comes is named in the
// garden, and when nothing comes all stays and the page says so.
func TestFetchedWeather(t *testing.T) {
	f, plain := fakeEntry(t, begun)
	if code, _ := post(t, plain, "/entry/archive", nil); code != http.StatusNotFound {
		t.Errorf("without a service: status %d", code)
	}
	var fail error
	asked := 0
	h := entryWith(t, f, func(o *Options) {
		o.Entry.Archive = func(context.Context) (string, string, error) {
			asked++
			return "weather-01234567.csv", "20 years", fail
		}
		o.Entry.WeatherFrom = func(file string) string { return "An archive, fetched 1 April 2015 & " + file }
	})
	fail = errors.New("asking the archive: it could not be reached: no route")
	if code, body := post(t, h, "/entry/archive", nil); code != http.StatusUnprocessableEntity || f.text != begun || !strings.Contains(body, "what you had stays. Asking the archive: it could not be reached: no route.") {
		t.Errorf("a service that is away: status %d, changed %v: %v", code, f.text != begun, faultWords.FindAllStringSubmatch(body, -1))
	}
	fail = nil
	form := map[string]string{"form": ledger.NewID()}
	if code, _ := sendForm(h, "/entry/archive", form); code != http.StatusSeeOther || !strings.Contains(f.text, "weather: weather-01234567.csv") {
		t.Errorf("fetched: status %d\n%s", code, f.text)
	}
	if code, _ := sendForm(h, "/entry/archive", form); code != http.StatusSeeOther || asked != 2 {
		t.Errorf("the same form again: status %d, the archive was asked %d times, want 2", code, asked)
	}
	for _, path := range []string{"/entry", "/entry/weather", "/entry/months"} {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost"+path, nil))
		if !strings.Contains(w.Body.String(), "fetched 1 April 2015 &amp; weather-01234567.csv") {
			t.Errorf("%s does not say where the weather is from", path)
		}
		parse(t, w.Body.String())
	}
}
