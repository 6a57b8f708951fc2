package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bedweek/demo"
)

// gardenWithWeather writes the demo garden beside its record.
func gardenWithWeather(t *testing.T) string {
	t.Helper()
	g := write(t, "garden.yaml", demo.GardenYAML)
	if err := os.WriteFile(filepath.Join(filepath.Dir(g), "seattle-weather.csv"), demo.SeattleCSV, 0o644); err != nil {
		t.Fatal(err)
	}
	return g
}

func TestWaterCommand(t *testing.T) {
	g := gardenWithWeather(t)
	w := filepath.Join(filepath.Dir(g), "seattle-weather.csv")
	code, out, errs := call(t, "water", g, "-weather", w, "-away", "7")
	if code != exitDone || !strings.Contains(out, "WHO RUNS DRY FIRST") || !strings.Contains(out, "TAKEN FOR GRANTED") || !strings.Contains(out, "Soaked on leaving") {
		t.Fatalf("code %d, %s\n%s", code, errs, out)
	}
	code, out, _ = call(t, "water", g, "-weather", w, "-date", "2015-04-20", "-json")
	var d struct {
		Date   string `json:"date"`
		Spaces []struct {
			Space string   `json:"space"`
			Give  *float64 `json:"litres_to_give"`
			Dry   *struct {
				Likely *string `json:"likely"`
			} `json:"dry"`
		} `json:"spaces"`
	}
	if err := json.Unmarshal([]byte(out), &d); code != exitDone || err != nil || d.Date != "2015-04-20" || len(d.Spaces) < 16 {
		t.Fatalf("code %d, %v, %q, %d spaces", code, err, d.Date, len(d.Spaces))
	}
}

func TestWaterWrongUsage(t *testing.T) {
	g := gardenWithWeather(t)
	for _, args := range [][]string{{"water"}, {"water", g, g}, {"water", g, "-away", "61"}, {"water", g, "-away", "-1"},
		{"water", g, "-date", "20 April"}, {"water", "nowhere.yaml"}, {"water", g, "-weather", "nowhere.csv"}} {
		if code, out, errs := call(t, args...); code != exitUsage || errs == "" || out != "" {
			t.Errorf("bedweek %v: code %d, %q %q; want 2 and words", args, code, out, errs)
		}
	}
}
