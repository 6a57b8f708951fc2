package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bedweek/demo"
	"bedweek/internal/reckon"
)

func TestLightKeepsItsContract(t *testing.T) {
	g := write(t, "garden.yaml", demo.GardenYAML)
	dir := filepath.Join(t.TempDir(), "scene")
	code, out, errs := call(t, "light", g, "-week", "25", "-json", "-export", dir)
	if code != exitDone || !strings.Contains(errs, "is not there: only clear days") {
		t.Fatalf("code %d, words %q; want 0 and that the weather is missing", code, errs)
	}
	var l reckon.LightJSON
	if err := json.Unmarshal([]byte(out), &l); err != nil {
		t.Fatal(err)
	}
	if l.Year != 2015 || l.Week != 25 || len(l.Spaces) < 16 || l.Spaces[4].Times[0].Hours.Max <= 0 {
		t.Errorf("year %d, week %d, %d spaces", l.Year, l.Week, len(l.Spaces))
	}
	rows := map[string]int{}
	for name, head := range map[string]string{ // as the contract writes them
		"transmittance.csv": "name,value",
		"receptors.csv":     "id,x,y,z,nx,ny,nz,surface",
		"sun.csv":           "group,step,azimuth_deg,elevation_deg,hours,direct_mol_m2_h,diffuse_mol_m2_h",
		"light.csv":         "id,group,hours_opaque,hours,sky_view,mol_m2_day",
	} {
		f, err := os.Open(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		all, err := csv.NewReader(f).ReadAll()
		f.Close()
		if err != nil || strings.Join(all[0], ",") != head || len(all) < 10 {
			t.Errorf("%s: %v, %d rows, head %v", name, err, len(all), all[0])
		}
		rows[name] = len(all)
	}
	if rows["light.csv"] != rows["receptors.csv"] {
		t.Errorf("%d answers for %d receptors in one week", rows["light.csv"], rows["receptors.csv"])
	}
	obj, err := os.ReadFile(filepath.Join(dir, "scene.obj"))
	if err != nil || !strings.Contains(string(obj), "\no Neighbour_s_maple_crown\n") {
		t.Errorf("scene.obj: %v; want the maple's crown as an object", err)
	}
	if code, out, _ := call(t, "light", g); code != exitDone || !strings.Contains(out, "Long bed") || !strings.Contains(out, "Dec") {
		t.Errorf("code %d, printed %q", code, out)
	}
}

func TestLightRefuses(t *testing.T) {
	g := write(t, "garden.yaml", demo.GardenYAML)
	for _, args := range [][]string{
		{"light"}, {"light", g, g}, {"light", "nowhere.yaml"}, {"light", g, "-week", "0"}, {"light", g, "-week", "53"},
		{"light", g, "-year", "1700"}, {"light", g, "-year", "0"}, {"light", g, "-weather", "nowhere.csv"}, {"light", g, "-export", ""},
	} {
		if code, _, errs := call(t, args...); code != exitUsage || errs == "" {
			t.Errorf("bedweek %v: code %d, words %q; want 2 and words", args, code, errs)
		}
	}
	file := write(t, "file", []byte("x"))
	if code, _, errs := call(t, "light", g, "-export", filepath.Join(file, "dir")); code != exitNo || errs == "" {
		t.Errorf("export under a file: code %d, words %q; want 1 and words", code, errs)
	}
	bad := write(t, "bad.yaml", []byte("garden: x\n"))
	if code, _, errs := call(t, "light", bad); code != exitNo || errs == "" {
		t.Errorf("a broken garden: code %d, words %q; want 1 and words", code, errs)
	}
}
