package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
)

// call runs the program as main would and returns its exit code and streams.
func call(t *testing.T, args ...string) (code int, out, err string) {
	t.Helper()
	var o, e bytes.Buffer
	w := &world{out: &o, err: &e, now: func() time.Time { return time.Date(2015, 4, 6, 8, 0, 0, 0, time.UTC) }}
	code = run(context.Background(), w, args)
	return code, o.String(), e.String()
}

func write(t *testing.T, name string, text []byte) string {
	t.Helper()
	p := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(p, text, 0o644); err != nil {
		t.Fatal(err)
	}
	return p
}

func TestEveryCommandExplainsItself(t *testing.T) {
	for _, c := range commands() {
		code, out, _ := call(t, c.name, "-h")
		if code != exitDone || !strings.HasPrefix(out, "bedweek "+c.name) || !strings.Contains(out, "\n  bedweek "+c.name) || !strings.Contains(out, "Exit 0") {
			t.Errorf("bedweek %s -h: code %d; want its name, an example and its exit codes in\n%s", c.name, code, out)
		}
	}
}

func TestWrongUsage(t *testing.T) {
	g := write(t, "garden.yaml", demo.GardenYAML)
	for _, args := range [][]string{
		{}, {"plough"}, {"plan"}, {"plan", g, g}, {"plan", g, "-weeks", "3"}, {"plan", g, "-weeks", "x"},
		{"plan", g, "-work", "-1"}, {"plan", g, "-seconds", "-1"}, {"plan", g, "-from", "6 April"}, {"plan", g, "-from", "1850-01-01"},
		{"plan", "nowhere.yaml"}, {"check"}, {"check", "nowhere.yaml"}, {"verify", "nowhere"}, {"windows", "-place", "95,0", "-weather", g},
		{"windows", "-place", "47", "-weather", g}, {"windows", "tomatoe", "-place", "47,0", "-weather", g}, {"audit", "nowhere"},
		{"demo", "x"}, {"demo", "-date", "1999-01-01"}, {"serve", "a", "b"},
	} {
		code, out, errs := call(t, args...)
		if code != exitUsage || errs == "" {
			t.Errorf("bedweek %v: code %d, words %q %q; want 2 and words", args, code, out, errs)
		}
	}
}

// Each broken input gets words, an exit code, and writes nothing.
func TestBrokenInput(t *testing.T) {
	good := string(demo.GardenYAML)
	swap := func(old, new string) []byte {
		if !strings.Contains(good, old) {
			t.Fatalf("the demo garden no longer holds %q", old)
		}
		return []byte(strings.Replace(good, old, new, 1))
	}
	for _, tt := range []struct {
		name string
		text []byte
		want string
	}{
		{"latitude 95", swap("latitude: 47.6 N", "latitude: 95 N"), "95"},
		{"zero depth", swap("depth: 22 cm", "depth: 0 cm"), "depth"},
		{"no unit", swap("depth: 22 cm", "depth: 22"), "unit"},
		{"unknown crop", swap("crop: strawberry", "crop: strawbery"), "strawberry"},
		{"300 letters", swap("garden: Tern Court", "garden: "+strings.Repeat("x", 300)), "80"},
		{"empty", nil, "nothing"},
		{"binary", []byte("garden: \x00\x01\x02"), "text"},
		{"huge", bytes.Repeat([]byte("# a remark\n"), 200000), "1 MB"},
		{"cut short", []byte(good[:len(good)/2+7]), ""},
		{"not yaml", []byte("garden: [a, b\nplace: {"), ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			p := write(t, "garden.yaml", tt.text)
			code, out, _ := call(t, "check", p)
			if code != exitNo || !strings.Contains(out, tt.want) || !strings.Contains(out, "fault") {
				t.Errorf("check: code %d, want 1 and words with %q:\n%s", code, tt.want, out)
			}
			data := filepath.Join(t.TempDir(), "data")
			if code, _, errs := call(t, "serve", "-garden", p, data); code != exitNo || errs == "" {
				t.Errorf("serve: code %d, want 1 and words: %s", code, errs)
			}
			if _, err := os.Stat(data); err == nil {
				t.Error("serve wrote a data folder for a faulty garden")
			}
		})
	}
}

func TestHostileNameIsOnlyAName(t *testing.T) {
	p := write(t, "garden.yaml", bytes.Replace(demo.GardenYAML, []byte("garden: Tern Court"), []byte(`garden: "<em>Tern</em>"`), 1))
	if code, out, _ := call(t, "check", p); code != exitDone {
		t.Errorf("a name with <em>: code %d, want 0: %s", code, out)
	}
}

func TestBrokenWeather(t *testing.T) {
	g := write(t, "garden.yaml", demo.GardenYAML)
	csv := string(demo.SeattleCSV)
	lines := strings.SplitAfter(csv, "\n")
	for _, tt := range []struct {
		name string
		text string
	}{
		{"empty", ""},
		{"binary", "date,precipitation\x00\x01"},
		{"header only", lines[0]},
		{"two months", strings.Join(lines[:60], "")},
		{"letters for numbers", strings.Replace(csv, "12.8", "warm", 1)},
		{"minimum over maximum", strings.Replace(csv, "12.8,5.0", "5.0,12.8", 1)},
		{"huge", lines[0] + strings.Repeat("x", 40<<20)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			w := write(t, "w.csv", []byte(tt.text))
			code, out, errs := call(t, "plan", g, "-weather", w, "-work", "1000")
			if code != exitNo || len(errs) < 20 || out != "" {
				t.Errorf("code %d, %d bytes printed, words %q; want 1, none and words", code, len(out), errs)
			}
		})
	}
}

// A truncated file is read as far as it goes, and what is missing is said.
func TestVerifySpeaksJSON(t *testing.T) {
	p := write(t, "cases.json", []byte(`{"topic":"sun_position","about":"x","cases":[{"id":"made_up","inputs":{"time_utc":"2010-06-15T03:30:00Z","lat_deg":1.283333,"lon_deg":103.833333},"expect":{"azimuth_deg":12.0},"tolerance":{"azimuth_deg":0.02},"source":"a wrong value on purpose","basis":"memory"}]}`))
	code, out, _ := call(t, "verify", "-json", p)
	var r struct {
		Topics []struct {
			Topic          string
			Cases, Outside int
		}
		Outside []struct{ ID, Key string }
	}
	if err := json.Unmarshal([]byte(out), &r); err != nil {
		t.Fatalf("verify -json: %v in %s", err, out)
	}
	if code != exitNo || len(r.Topics) != 1 || r.Topics[0].Outside != 1 || len(r.Outside) != 1 || r.Outside[0].Key != "azimuth_deg" {
		t.Errorf("a case with a wrong value: code %d, %+v; want 1 and one outside", code, r)
	}
	bad := write(t, "bad.json", []byte(`{"topic":`))
	if code, _, errs := call(t, "verify", bad); code != exitUsage || !strings.Contains(errs, "case file") {
		t.Errorf("a cut case file: code %d %q, want 2 and words", code, errs)
	}
}

func TestPlanKeepsItsContract(t *testing.T) {
	g := write(t, "garden.yaml", demo.GardenYAML)
	w := write(t, "w.csv", demo.SeattleCSV)
	args := []string{"plan", g, "-weather", w, "-weeks", "26", "-work", "400000", "-json"}
	code, out, errs := call(t, args...)
	if code != exitDone {
		t.Fatalf("code %d: %s", code, errs)
	}
	var p map[string]any
	if err := json.Unmarshal([]byte(out), &p); err != nil {
		t.Fatal(err)
	}
	for _, k := range []string{"status", "value", "bound", "gap", "futures", "seed", "work", "seconds", "options", "plantings", "stays", "table", "prices", "later"} {
		if _, ok := p[k]; !ok {
			t.Errorf("plan -json lacks %q", k)
		}
	}
	if v, n := p["value"].(float64), p["nothing"].(float64); v <= n {
		t.Errorf("the plan is worth %v, doing nothing %v", v, n)
	}
	for _, x := range p["plantings"].([]any) {
		pl := x.(map[string]any)
		n, ok := pl["still_of_20"].(float64)
		if !ok || n < 0 || n > 20 || (pl["else"] == nil) != (pl["else_of_20"] == nil) {
			t.Errorf("%v: still_of_20 %v, else %v in %v of 20", pl["id"], pl["still_of_20"], pl["else"], pl["else_of_20"])
		}
	}
	if l := p["later"].(map[string]any); l["fitted"].(float64) < l["fixed"].(float64) || l["until"] != "2015-05-04" {
		t.Errorf("later: %v", l)
	}
	delete(p, "seconds")
	_, again, _ := call(t, args...)
	var q map[string]any
	if err := json.Unmarshal([]byte(again), &q); err != nil {
		t.Fatal(err)
	}
	delete(q, "seconds")
	a, _ := json.Marshal(p)
	b, _ := json.Marshal(q)
	if !bytes.Equal(a, b) {
		t.Error("the same call gave two plans")
	}
}
