package agenda

import (
	"bytes"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

func day() *reckon.Day {
	in := cal.Of(2015, 4, 20)
	return &reckon.Day{Garden: "Invented yard", Date: cal.Of(2015, 4, 6),
		Today: []reckon.Task{{ID: "bed.sow.1", SpaceName: "Gate bed", Verb: "sow", Object: "peas; early, \"snap\"\nrow two", Until: cal.Of(2015, 4, 9), Answer: reckon.Answer{Verdict: strings.Repeat("Möhre ½ ✓ ", 30)}}},
		Spaces: []reckon.SpaceDay{{ID: "bed", Name: "Gate bed", Lines: []reckon.Line{
			{ID: "x", Crop: "kale", In: cal.Window{Early: in - 5, Likely: in, Late: in + 9}, Out: cal.Window{Early: in + 90, Likely: in + 100, Late: in + 120}, OfTwenty: 17},
			{ID: "y", Crop: "leeks\x00\x07", Standing: true, In: cal.Window{Early: in, Likely: in, Late: in}, OfTwenty: -1},
		}}}}
}

// TestCalendarIsReadBack reads the text with another function of the module,
// and holds it to RFC 5545, 3.1: CR LF after each line, at most 75 octets.
func TestCalendarIsReadBack(t *testing.T) {
	stamp := time.Date(2015, 4, 6, 7, 0, 0, 0, time.UTC)
	text := Write(day(), stamp)
	if bytes.Contains(bytes.ReplaceAll(text, []byte("\r\n"), nil), []byte("\n")) || !bytes.HasSuffix(text, []byte("END:VCALENDAR\r\n")) {
		t.Error("a line does not end in CR LF")
	}
	for _, line := range strings.Split(string(text), "\r\n") {
		if len(line) > 75 {
			t.Errorf("a line of %d octets: %q", len(line), line)
		}
	}
	c, err := ics.ParseCalendar(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	got := map[string]*ics.VEvent{}
	ids := map[string]bool{}
	for _, e := range c.Events() {
		got[e.GetProperty(ics.ComponentPropertySummary).Value] = e
		ids[e.Id()] = true
	}
	if len(got) != 3 || len(ids) != 3 {
		t.Fatalf("%d entries with %d ids, want 3: the task, kale in and kale out", len(got), len(ids))
	}
	for words, want := range map[string][2]string{
		"Gate bed: sow peas; early, \"snap\"\nrow two": {"20150406", "20150410"},
		"Gate bed: kale into the ground":               {"20150420", "20150421"},
		"Gate bed: kale out, ground free":              {"20150729", "20150730"},
	} {
		e := got[words]
		if e == nil {
			t.Errorf("%q is missing; have %v", words, got)
			continue
		}
		from, to := e.GetProperty(ics.ComponentPropertyDtStart).Value, e.GetProperty(ics.ComponentPropertyDtEnd).Value
		if from != want[0] || to != want[1] {
			t.Errorf("%q from %s to %s, want %v", words, from, to, want)
		}
	}
	if d := got["Gate bed: kale into the ground"].GetProperty(ics.ComponentPropertyDescription).Value; !strings.Contains(d, "17 of 20") || !strings.Contains(d, "between") {
		t.Errorf("it does not say how sure: %q", d)
	}
	if !bytes.Equal(text, Write(day(), stamp)) {
		t.Error("written twice, it differs")
	}
	if _, err := ics.ParseCalendar(bytes.NewReader(Write(nil, stamp))); err != nil {
		t.Errorf("the empty calendar: %v", err)
	}
}
