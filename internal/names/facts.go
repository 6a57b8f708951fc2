package names

import (
	"bytes"
	"embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"sync"

	"bedweek/internal/crop"
)

//go:embed data
var data embed.FS

// facts are the figures of data, by crop.
type facts struct {
	life     map[string]Life
	perGram  map[string][2]float64
	least    map[string]float64 // share that must come up to be sold unlabelled
	crossing map[string]crossing
	features map[string][]feature
	sources  map[string]string
}

// Life is how many years seed of a crop keeps, as the lists say.
type Life struct {
	Low, High float64
	Sources   []string // keys
}

type crossing struct{ how, year string }

type feature struct {
	name, value string
	week        int // after sowing, from which it can be seen
}

var loadFacts = sync.OnceValues(readFacts)

func readFacts() (*facts, error) {
	f := &facts{life: map[string]Life{}, perGram: map[string][2]float64{}, least: map[string]float64{},
		crossing: map[string]crossing{}, features: map[string][]feature{}, sources: map[string]string{}}
	text, err := data.ReadFile("data/sources.txt")
	if err != nil {
		return nil, err
	}
	for _, line := range strings.Split(strings.TrimSpace(string(text)), "\n") {
		key, words, ok := strings.Cut(line, "|")
		if !ok {
			return nil, fmt.Errorf("names: sources.txt: %q has no words", line)
		}
		f.sources[strings.TrimSpace(key)] = strings.TrimSpace(words)
	}
	for name, take := range map[string]func([]string) error{
		"seed_life.csv": f.takeLife, "germination.csv": f.takeLeast, "crossing.csv": f.takeCrossing, "features.csv": f.takeFeature,
	} {
		if err := rows(name, take); err != nil {
			return nil, err
		}
	}
	return f, nil
}

func rows(name string, take func([]string) error) error {
	text, err := data.ReadFile("data/" + name)
	if err != nil {
		return err
	}
	r := csv.NewReader(bytes.NewReader(text))
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		return fmt.Errorf("names: %s: %w", name, err)
	}
	for _, row := range all[1:] {
		if err := take(row); err != nil {
			return fmt.Errorf("names: %s: %v: %w", name, row, err)
		}
	}
	return nil
}

func (f *facts) takeLife(row []string) error {
	if _, ok := f.sources[row[5]]; !ok {
		return fmt.Errorf("no source %q", row[5])
	}
	if row[1] != "" {
		low, high, err := pair(row[1], row[2])
		if err != nil {
			return err
		}
		l, has := f.life[row[0]]
		if !has {
			l.Low, l.High = low, high
		}
		l.Low, l.High = min(l.Low, low), max(l.High, high)
		l.Sources = append(l.Sources, row[5])
		f.life[row[0]] = l
	}
	if row[3] != "" {
		low, high, err := pair(row[3], row[4])
		if err != nil {
			return err
		}
		g, has := f.perGram[row[0]]
		if !has {
			g = [2]float64{low, high}
		}
		f.perGram[row[0]] = [2]float64{min(g[0], low), max(g[1], high)}
	}
	return nil
}

func pair(a, b string) (low, high float64, err error) {
	if low, err = strconv.ParseFloat(a, 64); err != nil {
		return 0, 0, err
	}
	high, err = strconv.ParseFloat(b, 64)
	return low, high, err
}

func (f *facts) takeLeast(row []string) error {
	v, err := strconv.ParseFloat(row[1], 64)
	f.least[row[0]] = v / 100
	return err
}

func (f *facts) takeCrossing(row []string) error {
	switch row[1] {
	case "self", "insects", "wind":
	default:
		return fmt.Errorf("pollinated by %q", row[1])
	}
	f.crossing[row[0]] = crossing{row[1], row[2]}
	return nil
}

func (f *facts) takeFeature(row []string) error {
	week, err := strconv.Atoi(row[3])
	f.features[row[0]] = append(f.features[row[0]], feature{row[1], row[2], week})
	return err
}

// crossingOf finds how a crop is pollinated, by itself or by its family.
func (f *facts) crossingOf(c *crop.Crop) (crossing, bool) {
	if x, ok := f.crossing[string(c.ID)]; ok {
		return x, true
	}
	x, ok := f.crossing[c.Family]
	return x, ok
}
