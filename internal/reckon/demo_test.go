package reckon

import (
	"bytes"
	"context"
	"strings"
	"sync"
	"testing"

	"bedweek/demo"
	"bedweek/demo/story"
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// Work of the test plans: enough for the truths, quick enough for every
// change.
const testWork = 3_000_000

// demoCase is one of the three plans the truths are asked of.
type demoCase struct {
	name  string
	south bool
	date  cal.Day
}

func demoCases() []demoCase {
	return []demoCase{
		{"spring", false, cal.Of(2015, 4, 6)},
		{"late summer", false, cal.Of(2015, 8, 24)},
		{"southern spring", true, cal.Of(2015, 10, 5)},
	}
}

var demoPlans sync.Map // name to *sync.Once'd result

type planOnce struct {
	once sync.Once
	r    *Result
	err  error
}

// demoPlan plans a demo garden once for all tests.
func demoPlan(t *testing.T, c demoCase) *Result {
	t.Helper()
	v, _ := demoPlans.LoadOrStore(c.name, &planOnce{})
	p := v.(*planOnce)
	p.once.Do(func() {
		in := demoInputs(t, c)
		g, err := NewGround(in)
		if err != nil {
			p.err = err
			return
		}
		p.r, p.err = Reckon(context.Background(), in, g)
	})
	if p.err != nil {
		t.Fatal(p.err)
	}
	if p.r == nil {
		t.Fatal("the plan was not made; see the test that made it first")
	}
	return p.r
}

func demoInputs(t testing.TB, c demoCase) *Inputs {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	text := demo.GardenYAML
	if c.south {
		text = demo.SouthYAML
	}
	g, faults := garden.Read("demo", text, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	site := weather.Site{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
	in := &Inputs{Garden: g, Book: book, Date: c.date, Weeks: DefaultWeeks, Futures: 20, Seed: 1, Work: testWork}
	var wf []weather.Fault
	if c.south {
		in.Normals, wf = weather.ReadNormals("south", bytes.NewReader(demo.SouthNormalsCSV), site)
	} else {
		in.Record, wf = weather.Read("seattle", bytes.NewReader(demo.SeattleCSV), site)
	}
	if len(wf) > 0 {
		t.Fatal(wf)
	}
	if !c.south {
		state := ledger.ReplayOver(FromFile(g), storyUntil(t, g, c.date))
		in.State = &state
	}
	return in
}

// storyUntil is the demo's record to a date.
func storyUntil(t testing.TB, g *garden.Garden, date cal.Day) []ledger.Event {
	t.Helper()
	events, err := story.Events(demo.EventsCSV, g, date)
	if err != nil {
		t.Fatal(err)
	}
	for i := range events {
		events[i].Seq = int64(i + 1)
	}
	return events
}

// month returns the month of the year as the north counts it, so that one
// truth serves both halves of the earth.
func (c demoCase) month(d cal.Day) int {
	m := int(d.Month())
	if c.south {
		m = (m+5)%12 + 1
	}
	return m
}

// northDay is the day of the year as the north counts it: (month, day) turned
// by six months in the south.
func (c demoCase) md(d cal.Day) int {
	_, _, day := d.Date()
	return c.month(d)*100 + day
}

func oneOf(s string, list string) bool {
	for _, x := range strings.Fields(list) {
		if x == s {
			return true
		}
	}
	return false
}
