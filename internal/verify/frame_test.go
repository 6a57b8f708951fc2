package verify

import (
	"strings"
	"testing"
)

// The frame must be able to say no: each planted fault below has to be found.
func TestCompareFindsPlantedFaults(t *testing.T) {
	tol := map[string]float64{"deg": 0.01, "seconds": 60, "date_days": 1, "relative": 0.1, "day_length_h": 0.02}
	for _, tt := range []struct {
		key       string
		got, want any
		misses    int
	}{
		{"azimuth_deg", 359.995, 0.0, 0},
		{"azimuth_deg", 359.9, 0.0, 1},
		{"day_length_A_h", 10.01, 10.0, 0},
		{"day_length_A_h", 10.03, 10.0, 1},
		{"sunrise_utc", "2025-03-19T20:25:10Z", "2025-03-19T20:24:14Z", 0},
		{"sunrise_utc", "2025-03-19T20:25:20Z", "2025-03-19T20:24:14Z", 1},
		{"first_under_10h", "2024-12-06", "2024-12-05", 0},
		{"first_under_10h", "2024-12-07", "2024-12-05", 1},
		{"value", 1.09, 1.0, 0},
		{"value", 1.11, 1.0, 1},
		{"percent", 0.0, nil, 1},
		{"percent", nil, nil, 0},
		{"percent", nil, 0.0, 1},
		{"state", "up", "down", 1},
		{"list_deg", []float64{1, 2}, []any{1.0, 2.5}, 1},
		{"list_deg", []float64{1}, []any{1.0, 2.0}, 1},
		{"ok", true, false, 1},
		{"table_deg", map[string]float64{"a": 1, "b": 2}, map[string]any{"a": 1.0}, 1},
	} {
		if got := compare([]string{tt.key}, tt.got, tt.want, tol); len(got) != tt.misses {
			t.Errorf("%s: got %v against %v: %d misses, want %d (%v)", tt.key, tt.got, tt.want, len(got), tt.misses, got)
		}
	}
}

// A figure without a tolerance must agree to its printed places.
func TestCompareWithoutTolerance(t *testing.T) {
	for _, tt := range []struct {
		got, want float64
		misses    int
	}{
		{0.266666, 0.2667, 0}, {0.26664, 0.2667, 1}, {0.5006, 0.5, 1}, {21, 20, 1}, {20.0001, 20, 1},
	} {
		if got := compare([]string{"risk"}, tt.got, tt.want, map[string]float64{"day_of_year": 1}); len(got) != tt.misses {
			t.Errorf("%v against %v: %d misses, want %d", tt.got, tt.want, len(got), tt.misses)
		}
	}
}

func TestUnansweredIsNotPassed(t *testing.T) {
	half := func(c Case) (map[string]any, bool) { return map[string]any{"a": 1.0}, true }
	c := Case{ID: "x", Expect: map[string]any{"a": 1.0, "b": 2.0}}
	if m, covered := judge(half, "t", c); len(m) != 0 || covered {
		t.Errorf("a case with an unanswered key: misses %v, covered %v; want none and not covered", m, covered)
	}
	if _, covered := judge(nil, "t", c); covered {
		t.Error("a topic without adaptor counts as covered")
	}
}

func TestParseSaysWhatIsWrong(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"", "not a case file"},
		{`{"topic":"x","cases":[]}`, "no cases"},
		{`{"topic":"x","cases":[{"id":"a","expect":{}}]}`, "could not fail"},
		{`{"topic":"x","cases":[{"id":"a","expect":{"k":1}},{"id":"a","expect":{"k":1}}]}`, "twice"},
	} {
		if _, err := Parse("f.json", []byte(tt.text)); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("Parse(%q) = %v, want a message with %q", tt.text, err, tt.want)
		}
	}
}

// TestShippedCases is the outside check itself: no case may be outside.
func TestShippedCases(t *testing.T) {
	topics, err := Shipped()
	if err != nil {
		t.Fatal(err)
	}
	r := Run(topics)
	for _, m := range r.Outside {
		t.Errorf("%s/%s %s = %v, want %v within %v (%s)", m.Topic, m.ID, m.Key, m.Got, m.Want, m.Tolerance, m.Source)
	}
	for _, k := range r.Topics {
		t.Logf("%-20s %3d cases, %3d within, %d outside, %3d not covered", k.Topic, k.Cases, k.Within, k.Outside, k.NotCovered)
	}
}
