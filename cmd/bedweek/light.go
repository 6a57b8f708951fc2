package main

import (
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime"

	"bedweek/internal/crop"
	"bedweek/internal/reckon"
	"bedweek/internal/shade"
)

const helpLight = `bedweek light GARDEN [-weather FILE] [-year Y] [-week N] [-json] [-export DIR]

Print how much sun and light reach each space of a garden file: hours of
direct sun, the part of the sky in view, and daily light, by month. Each space
is looked at in cells of a hand's breadth (10 cm); least, mean and most are
given. What grows in the garden is not counted as shade.

  bedweek light demo/garden.yaml
  bedweek light demo/garden.yaml -week 25 -json
  bedweek light demo/garden.yaml -year 2025 -export scene

  -weather FILE  a daily record or twelve monthly normals, for the mean light;
                 without it the file named in the garden file is used, and
                 without that only clear days are told
  -year Y        the year, 1900 to 2100; else that of the garden file's date,
                 else this one
  -week N        one week only, 1 to 52: week 1 has the year's first Thursday
  -json          print JSON
  -export DIR    also write the scene for any ray tracer: scene.obj,
                 transmittance.csv, receptors.csv, sun.csv, and our answers,
                 light.csv. They are explained in docs/shade.md.

Exit 0: printed. 1: faults in a file. 2: wrong usage.
`

func runLight(_ context.Context, w *world, args []string) int {
	fs := flags("light")
	file := fs.String("weather", "", "")
	year := fs.Int("year", 0, "")
	week := fs.Int("week", 0, "")
	asJSON := fs.Bool("json", false, "")
	dir := fs.String("export", "", "")
	names, code, done := parse(w, fs, helpLight, args)
	if done {
		return code
	}
	given := map[string]bool{}
	fs.Visit(func(f *flag.Flag) { given[f.Name] = true })
	switch {
	case len(names) != 1:
		return wrong(w, "light", "name one garden file")
	case given["year"] && (*year < 1900 || *year > 2100):
		return wrong(w, "light", "-year %d: want 1900 to 2100", *year)
	case given["week"] && (*week < 1 || *week > 52):
		return wrong(w, "light", "-week %d: want 1 to 52", *week)
	case given["export"] && *dir == "":
		return wrong(w, "light", "-export: name a folder")
	}
	l, code := gardenLight(w, names[0], *file, year)
	if l == nil {
		return code
	}
	if *dir != "" {
		if err := exportLight(*dir, l, *year, *week); err != nil {
			fmt.Fprintf(w.err, "bedweek light: %v\n", err)
			return exitNo
		}
	}
	if !*asJSON {
		printLight(w.out, l.JSON(*year, *week))
		return exitDone
	}
	enc := json.NewEncoder(w.out)
	enc.SetIndent("", " ")
	if err := enc.Encode(l.JSON(*year, *week)); err != nil {
		fmt.Fprintf(w.err, "bedweek light: writing: %v\n", err)
		return exitNo
	}
	return exitDone
}

// gardenLight reads the garden and its weather, if any, and works out its
// light; year 0 is set to the garden's or this one.
func gardenLight(w *world, path, weatherPath string, year *int) (*reckon.GardenLight, int) {
	text, err := os.ReadFile(path)
	if err != nil {
		fmt.Fprintf(w.err, "bedweek light: reading the garden: %v\n", err)
		return nil, exitUsage
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek light: %v\n", err)
		return nil, exitNo
	}
	g, ok := readGarden(w, path, text, book)
	if !ok {
		return nil, exitNo
	}
	var c climate
	named := filepath.Join(filepath.Dir(path), g.Place.Weather)
	switch _, err := os.Stat(named); {
	case weatherPath == "" && g.Place.Weather == "":
	case weatherPath == "" && err != nil:
		fmt.Fprintf(w.err, "bedweek light: the weather file %s is not there: only clear days are told\n", named)
	default:
		var code int
		if c, code = weatherFor(w, "light", weatherPath, path, g); code != exitDone {
			return nil, code
		}
	}
	if *year == 0 {
		date, err := planDate(w, "", g)
		if err != nil {
			return nil, wrong(w, "light", "%v", err)
		}
		*year = min(max(date.Year(), 1900), 2100)
	}
	return reckon.NewGardenLight(g, c.record, c.normals, shade.YearStart(*year), 52, shade.FineLooks(), false, runtime.GOMAXPROCS(0)), exitDone
}

// exportLight writes the five files.
func exportLight(dir string, l *reckon.GardenLight, year, week int) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return fmt.Errorf("making the folder: %w", err)
	}
	var weeks []int
	for k := range l.Field.Course().Weeks() {
		if week == 0 || k == week-1 {
			weeks = append(weeks, k)
		}
	}
	e := l.Export(year, weeks)
	for _, f := range []struct {
		name  string
		write func(io.Writer) error
	}{
		{"scene.obj", e.SceneOBJ}, {"transmittance.csv", e.TransmittanceCSV}, {"receptors.csv", e.ReceptorsCSV},
		{"sun.csv", e.SunCSV}, {"light.csv", e.LightCSV},
	} {
		if err := writeFile(filepath.Join(dir, f.name), f.write); err != nil {
			return err
		}
	}
	return nil
}

func writeFile(path string, write func(io.Writer) error) error {
	f, err := os.Create(path)
	if err != nil {
		return fmt.Errorf("making %s: %w", path, err)
	}
	err = write(f)
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err != nil {
		return fmt.Errorf("writing %s: %w", path, err)
	}
	return nil
}

// printLight prints the light as tables, a space at a time.
func printLight(w io.Writer, l reckon.LightJSON) {
	when := "by month"
	if l.Week > 0 {
		when = fmt.Sprintf("week %d", l.Week)
	}
	fmt.Fprintf(w, "%s, %d, %s\n", l.Garden, l.Year, when)
	para(w, "", fmt.Sprintf("Hours of direct sun a day on a clear day (through leaves and nets, by the share they let through); light in mol/m2 a day, mean of: %s; the sky's light that reaches the ground, of 100.", l.Mean))
	for _, s := range l.Spaces {
		fmt.Fprintf(w, "\n%s\n", s.Name)
		if len(s.Times) == 0 || s.Times[0].Cells == 0 {
			fmt.Fprintln(w, "   no open ground")
			continue
		}
		line(w, "", s.Times, func(t reckon.LightTimeJSON) string { return monthWord(t.Month) })
		line(w, "sun, mean", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.1f", t.Hours.Mean) })
		line(w, "  darkest", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.1f", t.Hours.Min) })
		line(w, "  sunniest", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.1f", t.Hours.Max) })
		line(w, "light", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.1f", t.MolMean.Mean) })
		line(w, "  clear day", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.1f", t.MolClear.Mean) })
		line(w, "sky", s.Times, func(t reckon.LightTimeJSON) string { return fmt.Sprintf("%.0f", 100*t.SkyView.Mean) })
		line(w, "6 h of sun", s.Times, func(t reckon.LightTimeJSON) string {
			return fmt.Sprintf("%.0f%%", 100*t.Areas[len(t.Areas)-1])
		})
	}
}

func line(w io.Writer, head string, times []reckon.LightTimeJSON, cell func(reckon.LightTimeJSON) string) {
	fmt.Fprintf(w, "   %-11s", head)
	for _, t := range times {
		fmt.Fprintf(w, "%5s", cell(t))
	}
	fmt.Fprintln(w)
}

func monthWord(m int) string {
	return [12]string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}[m-1]
}
