package web

import (
	"fmt"
	"math"
	"math/rand/v2"
	"net/http"
	"sort"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/water"
)

// fixtureDry is an invented race: figures drawn from a seed, of no meaning.
func fixtureDry(d *reckon.Day) *reckon.Dryness {
	r := rand.New(rand.NewPCG(3, 9))
	out := &reckon.Dryness{Garden: d.Garden, Date: d.Date, FromHour: 9, Days: 21, NextH: 24, Next: "tomorrow morning", Weather: d.Weather, Taken: []string{"A space counts as dry when half its water is spent."},
		Nights: []reckon.Stretch{{FromH: 9, ToH: 22}, {FromH: 33, ToH: 46}, {FromH: 57, ToH: 70}},
		Rains:  []reckon.RainDay{{Stretch: reckon.Stretch{FromH: 15, ToH: 39}, Day: d.Date + 1, OfTwenty: 8}}}
	for i, sp := range d.Spaces {
		row := reckon.DryRow{Space: sp.ID, Name: sp.Name, Way: water.Can, When: "Dry by about tomorrow (this evening to Saturday).", Look: "Lift one side.", Crops: []string{"kale"}, FullDays: 3}
		row.Empty = len(sp.Lines) == 0
		middle := 8 + 9*float64(i)
		var hours []float64
		for range 20 {
			hours = append(hours, min(495, middle*(0.7+0.6*r.Float64())))
		}
		sorted := append([]float64{}, hours...)
		sort.Float64s(sorted)
		row.Answer = water.Answer{ID: sp.ID, Hours: hours, Horizon: 495, Dry: water.Window{Early: sorted[2], Likely: sorted[10], Late: sorted[17]}, HoldsL: 12, Rate: 1}
		for _, h := range hours {
			if h < 24 {
				row.ByNextOf20++
			}
		}
		row.Hours = fmt.Sprintf("%.0f hours (%.0f to %.0f)", sorted[10], sorted[2], sorted[17])
		row.LitresADay = "2.0 L (1.5 to 2.6)"
		row.Give = "It can wait for the next visit."
		if row.ByNextOf20 > 2 {
			row.Answer.GiveL, row.Give = 6, "Give about 6 L. Dry before the next visit: likely."
			row.Checked, row.Learned = "last checked by hand 6 days ago", "It dries faster than reckoned."
		}
		row.Ground = &reckon.GroundRow{Space: sp.ID, Name: sp.Name}
		if i%3 == 0 {
			row.Ground.Line = &reckon.LineWet{EveryM: 0.3, LinesM: 0.3 + 0.2*float64(i%2), AcrossM: 0.28, DryM: 0.02 + 0.2*float64(i%2), Share: 0.7 - 0.3*float64(i%2), Words: "Each emitter wets about 28 cm across."}
		} else {
			row.Ground.Weight = &reckon.FullWeight{LowKg: 20, HighKg: 34, KgM2: 90, Words: "Full it weighs 20 to 34 kg, without plants."}
			row.Repels = "Dry mix repels water."
		}
		out.Rows = append(out.Rows, row)
	}
	sort.SliceStable(out.Rows, func(a, b int) bool { return out.Rows[a].Answer.Dry.Likely < out.Rows[b].Answer.Dry.Likely })
	out.Ration = &reckon.Ration{AllowedL: 20, NeededL: 26, Words: "Not enough.", Rows: []reckon.RationRow{{Space: "bag-1", Name: "First bag", WantL: 6, GivenL: 6, Why: "young"}}}
	g := &reckon.Going{Days: 7, From: d.Date, Back: d.Date + 7, Words: "3 spaces would not surely last.", Move: []string{"First bag: into half shade."}}
	for k := range cal.Day(6) {
		g.Visits = append(g.Visits, d.Date+1+k)
	}
	for i, sp := range d.Spaces {
		g.First = append(g.First, reckon.GoingRow{Space: sp.ID, Name: sp.Name, OfTwenty: i % 21, Lost: "lost after about 3 days (2 to 5)", Do: "Ask a helper."})
		if i < 14 {
			g.Round = append(g.Round, reckon.RoundRow{Space: sp.ID, Name: sp.Name, Give: "1 can (10 L)", How: "Slowly.", Due: []bool{true, i%2 == 0, true, false, true, i%3 == 0}})
		}
	}
	out.Going = g
	return out
}

func fixtureSky(d *reckon.Day) *reckon.SkyPart {
	s := &reckon.SkyPart{Date: d.Date, Source: d.Weather, Cold: "Your garden has run 1.5 °C below the station on still nights (7 readings; give or take 0.5)."}
	s.Night = reckon.Night{FrostOf20: 4, WeekFrosts: 11, Words: "Tonight about 2 °C in the garden (-1 to 5). Cover 2 plantings.", By: "before the sun leaves the bed", Leave: []string{"kale", "peas"},
		CoverDoes: []string{"Fleece holds off about 1.5 °C."}, DoNot: []string{"Do not let plastic touch leaves."},
		Rows: []reckon.ColdRow{{Space: "rail-a", Name: "Rail box by the door", Crop: "peppers", LimitC: 0, LowC: 1.2, TonightOf20: 5, CoveredOf20: -1, WeekOf20: 12, Verdict: "Bring it in.", Cover: "an old sheet"},
			{Space: "gate-bed", Name: "Gate bed", Crop: "basil", LimitC: 2, LowC: 2.2, TonightOf20: 9, CoveredOf20: 2, WeekOf20: 15, Verdict: "Cover it tonight.", Cover: "its fleece"}}}
	s.Heat = reckon.HeatWeek{Words: "The week's hottest day: about 19 °C.", HotOf20: 0, By: "by 11", DoNot: []string{"Do not feed dry plants."},
		Rows: []reckon.HeatRow{{Space: "bag-1", Name: "First bag", Why: "Roots at the wall get too hot.", Do: "Shade the sides.", OfTwenty: 6}}}
	s.Climate = reckon.Climate{Record: "The record has 3 whole years.", Ten: "Days are under ten hours from 1 November.", Hot: "About 5.", Title: "What 3 whole years looked like",
		Frosts: []reckon.FrostLine{{Name: "Last frost of spring", Ahead: win(d.Date+170, 12, 15), With: 20, Past: [3]string{"", "2 April", ""}, PastYears: 3}, {Name: "First frost of autumn"}},
		Years:  []reckon.YearLine{{Name: "2014", LastFrost: "2 April", FirstFrost: "none", HotDays: 9, RainMM: 1021, LongestDry: 24}}}
	for i, sp := range d.Spaces {
		s.Spaces = append(s.Spaces, reckon.SpaceWarmth{Space: sp.ID, Name: sp.Name, WarmC: 2, Swing: 0.3, LagH: 4, SideC: 33, Wind: 1, ColdC: reckon.ColdOffset{C: -1.5, Nights: i}})
	}
	s.Met = &reckon.ForecastsMet{Kept: 24, Words: "24 are kept.", Rows: []reckon.ForecastMet{{Ahead: "1 day", Days: 23, High: "0.5 °C off, on the whole 0.5 °C too warm", Low: "1.1 °C off"},
		{Ahead: "7 days", Days: 17, High: "not known yet: 17 days so far", Low: "not known yet: 17 days so far"}}}
	s.Readings = []reckon.ReadingSays{{Event: "0123456789ABCDEFGHJKMNPQRS", On: d.Date - 1, Words: "Coldest 1.5 °C in the garden."}}
	return s
}

// hostileOutdoors spoils every text of water and weather.
func hostileOutdoors(d *reckon.Day, h func(*string)) {
	for i := range d.Dry.Rows {
		r := &d.Dry.Rows[i]
		for _, s := range []*string{&r.Name, &r.When, &r.Give, &r.Learned, &r.Look, &r.Caution, &r.Checked, &r.Hours, &r.LitresADay} {
			h(s)
		}
	}
	h(&d.Dry.Ration.Rows[0].Name)
	h(&d.Dry.Next)
	for i := range d.Dry.Going.Round {
		h(&d.Dry.Going.Round[i].Name)
		h(&d.Dry.Going.First[i].Name)
	}
	h(&d.Dry.Going.Move[0])
	s := d.Sky
	for _, x := range []*string{&s.Source, &s.Night.Words, &s.Heat.Words, &s.Cold, &s.Night.Rows[0].Crop, &s.Night.Leave[0], &s.Heat.Rows[0].Name, &s.Climate.Record, &s.Spaces[0].Name, &s.Readings[0].Words, &s.Met.Words, &s.Met.Rows[0].High} {
		h(x)
	}
}

// The page tells how far off forecasts were, by days ahead, and is silent where
// none was ever kept.
func TestWeatherTellsHowFarOffForecastsWere(t *testing.T) {
	d := richDay()
	text := open(t, handler(t, &fakeGarden{day: d}), "/weather").words()
	for _, want := range []string{"How far off were the forecasts?", "0.5 °C off, on the whole 0.5 °C too warm", "23 days", "not known yet: 17 days so far"} {
		if !strings.Contains(text, want) {
			t.Errorf("/weather does not say %q", want)
		}
	}
	d.Sky.Met = nil
	if text = open(t, handler(t, &fakeGarden{day: d}), "/weather").words(); strings.Contains(text, "How far off") {
		t.Error("nothing was kept, and something is told")
	}
}

// The race says what the table says: the bar's hours, the dots and the count
// before the next visit come from one answer.
func TestRaceAndTableAgree(t *testing.T) {
	d := richDay()
	root := open(t, handler(t, &fakeGarden{day: d}), "/dry")
	table := map[string]string{}
	root.all(func(n *node) {
		if n.name == "tr" && n.attr["data-space"] != "" {
			table[n.attr["data-space"]] = n.attr["data-before"]
		}
	})
	bars, last := 0, -1.0
	root.all(func(n *node) {
		if n.name != "g" || n.attr["data-hours"] == "" {
			return
		}
		bars++
		before, dots := 0, len(n.find("circle"))
		hours := strings.Fields(n.attr["data-hours"])
		for _, f := range hours {
			if h, _ := strconv.ParseFloat(f, 64); h < d.Dry.NextH {
				before++
			}
		}
		later := 0
		for _, x := range n.find("text") {
			if x.class("later") {
				fmt.Sscanf(x.text, "%d of 20", &later)
			}
		}
		if len(hours) != 20 || dots+later != 20 {
			t.Errorf("%s: %d hours, %d dots and %d later; want twenty", n.attr["data-space"], len(hours), dots, later)
		}
		if want := strconv.Itoa(before); table[n.attr["data-space"]] != want || n.attr["data-before"] != want {
			t.Errorf("%s: %s before the visit by the dots, %s in the table, %s on the bar", n.attr["data-space"], want, table[n.attr["data-space"]], n.attr["data-before"])
		}
		for _, b := range n.find("path") {
			at := strings.TrimPrefix(b.attr["d"][strings.Index(b.attr["d"], "h"):], "h")
			if w, _ := strconv.ParseFloat(at, 64); w < last-0.5 {
				t.Errorf("%s: a bar of %.1f under one of %.1f", n.attr["data-space"], w, last)
			} else {
				last = w
			}
		}
	})
	if bars != len(table) || bars == 0 {
		t.Errorf("%d bars and %d rows", bars, len(table))
	}
}

// The wet circles drawn are those of the table, to scale.
func TestWetCirclesAndTableAgree(t *testing.T) {
	root := open(t, handler(t, &fakeGarden{day: richDay()}), "/dry")
	table, drawn := map[string]string{}, 0
	root.all(func(n *node) {
		if n.name == "tr" && n.attr["data-across"] != "" {
			table[n.attr["data-ground"]] = n.attr["data-across"]
		}
	})
	root.all(func(n *node) {
		if n.name != "svg" || n.attr["data-r"] == "" {
			return
		}
		drawn++
		want := readFigure(t, table[n.attr["data-space"]]) * 100 / 2 * cmPx
		circles := 0
		for _, c := range n.find("circle") {
			if c.class("wet") {
				circles++
				if math.Abs(readFigure(t, c.attr["r"])-want) > 0.06 {
					t.Errorf("%s: a circle of %s px, want %.1f", n.attr["data-space"], c.attr["r"], want)
				}
			}
		}
		if circles != 6 {
			t.Errorf("%d circles", circles)
		}
	})
	if drawn != 2 || len(table) < 5 {
		t.Errorf("%d drawings, %d lines in the table", drawn, len(table))
	}
}

// Each answer is one entry of the ledger, as it says.
func TestWaterAnswersAreEntries(t *testing.T) {
	d := richDay()
	h, l := realGarden(t, d)
	for _, tt := range []struct {
		found string
		kind  ledger.Kind
		body  string
	}{
		{"can", ledger.Watered, `"litres":10`}, {"cans", ledger.Watered, `"litres":20`}, {"through", ledger.Watered, `"space":"gate-bed"`},
		{"damp", ledger.Looked, `"looks":"damp at a knuckle"`}, {"dry", ledger.Looked, `"looks":"dry"`}, {"wilting", ledger.Looked, `"looks":"wilting"`},
	} {
		form := with(formOf(t, open(t, h, "/dry?next=72"), "/dry", 0), "space", "gate-bed")
		w := ask(h, "POST", "/dry", with(form, "found", tt.found))
		if w.Code != http.StatusSeeOther || !strings.HasPrefix(w.Header().Get("Location"), "/dry?next=72&saved=") {
			t.Fatalf("%s: %d to %q", tt.found, w.Code, w.Header().Get("Location"))
		}
		page := ask(h, "GET", w.Header().Get("Location"), nil).Body.String()
		if !strings.Contains(page, "Saved: Gate bed") {
			t.Errorf("%s: the page does not say it was saved", tt.found)
		}
		events, err := l.Events(t.Context())
		if err != nil {
			t.Fatal(err)
		}
		e := events[len(events)-1]
		if e.Kind != tt.kind || !strings.Contains(string(e.Body), tt.body) || e.Happened != d.Date {
			t.Errorf("%s: %s %s", tt.found, e.Kind, e.Body)
		}
	}
	form := formOf(t, open(t, h, "/dry"), "/dry", 0)
	if w := ask(h, "POST", "/dry", with(form, "found", "flooded")); w.Code != http.StatusBadRequest {
		t.Errorf("an answer not on the list: %d, want 400", w.Code)
	}
	if w := ask(h, "POST", "/dry", with(form, "found", "dry", "space", "moon")); w.Code != http.StatusNotFound {
		t.Errorf("a space that is not there: %d, want 404", w.Code)
	}
	for _, tt := range []struct{ field, value, to string }{{"next", "48", "/dry?next=48"}, {"litres", "40", "/dry?litres=40&next=24"}, {"days", "9", "/away?days=9"}} {
		f := formOf(t, open(t, h, "/dry"), "/dry/ask", 0)
		f.Del("litres")
		if w := ask(h, "POST", "/dry/ask", with(f, tt.field, tt.value)); w.Header().Get("Location") != tt.to {
			t.Errorf("%s %s leads to %q, want %q", tt.field, tt.value, w.Header().Get("Location"), tt.to)
		}
	}
}

// A heap's heat is asked only where there is a heap, and of that heap.
func TestHeapIsRead(t *testing.T) {
	rich := richDay()
	rich.Spaces = append(rich.Spaces, reckon.SpaceDay{ID: "heap", Name: "Heap by the shed", Kind: "heap"})
	h, l := realGarden(t, rich)
	for _, tt := range []struct{ space, value, want string }{
		{"heap", "58", ""}, {"", "58", "Choose the heap"}, {rich.Spaces[0].ID, "58", "Choose the heap"}, {"heap", "140", "Is it in °F? Then it is 60 °C."},
	} {
		form := formOf(t, open(t, h, "/weather"), "/weather", 0)
		w := ask(h, "POST", "/weather", with(form, "what", "heap", "value", tt.value, "space", tt.space))
		if tt.want == "" && w.Code != http.StatusSeeOther || tt.want != "" && !strings.Contains(parse(t, w.Body.String()).words(), tt.want) {
			t.Errorf("%q %s: %d, want %q", tt.space, tt.value, w.Code, tt.want)
		}
	}
	if events, _ := l.Events(t.Context()); len(events) != 1 || !strings.Contains(string(events[0].Body), `"what":"heap"`) {
		t.Errorf("%d entries, want the good one", len(events))
	}
}

// A reading is an entry; a slip is said at its field and nothing typed is lost.
func TestReadingsAreEntries(t *testing.T) {
	h, l := realGarden(t, richDay())
	for _, tt := range []struct{ what, value, want string }{
		{"low", "-1,5", ""}, {"rain", "12.5", ""}, {"high", "86", "Is it in °F? Then it is 30.0 °C."},
		{"low", "cold", "Write a number"}, {"rain", "-3", "from 0 to 2000"}, {"wind", "3", "Choose what was read"}, {"heap", "30", "Choose what was read"},
	} {
		form := formOf(t, open(t, h, "/weather"), "/weather", 0)
		w := ask(h, "POST", "/weather", with(form, "what", tt.what, "value", tt.value))
		if tt.want == "" {
			if w.Code != http.StatusSeeOther {
				t.Errorf("%s %s: %d, want 303", tt.what, tt.value, w.Code)
			}
			continue
		}
		page := parse(t, w.Body.String())
		if w.Code != http.StatusUnprocessableEntity || !strings.Contains(page.words(), tt.want) {
			t.Errorf("%s %s: %d, want 422 and %q", tt.what, tt.value, w.Code, tt.want)
		}
		if got := formOf(t, page, "/weather", 0).Get("value"); got != tt.value {
			t.Errorf("%s: %q came back as %q", tt.what, tt.value, got)
		}
	}
	if events, _ := l.Events(t.Context()); len(events) != 2 || !strings.Contains(string(events[0].Body), `"value":-1.5`) {
		t.Errorf("%d entries, want the two good ones", len(events))
	}
}

// TestDrySaysWhatIsLikely: what is likely to run dry is work of the day; what
// could is told beside it and not counted as that.
func TestDrySaysWhatIsLikely(t *testing.T) {
	row := func(name string, of20 int) DryCard {
		r := reckon.DryRow{Name: name, ByNextOf20: of20}
		if of20 > 2 {
			r.Answer.GiveL = 3
		}
		return DryCard{DryRow: r}
	}
	for _, tt := range []struct {
		rows []DryCard
		want string
	}{
		{nil, "Nothing stands anywhere, so nothing runs dry."},
		{[]DryCard{row("Bag", 1)}, "Nothing needs water before you are next here, in 1 day."},
		{[]DryCard{row("Bag", 5), row("Tub", 3)}, "Nothing is likely to run dry before you are next here, in 1 day. To be sure, water 2 spaces."},
		{[]DryCard{row("Bag", 5), row("Tub", 12), row("Bed", 6)}, "Water 2 spaces now. First is Tub. To be sure, 1 more."},
	} {
		if got := drySays(tt.rows, "in 1 day"); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}
