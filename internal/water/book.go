package water

import (
	"bytes"
	"embed"
	"encoding/csv"
	"fmt"
	"strconv"
)

//go:embed book/*.csv
var pages embed.FS

// Range is a figure with its ends; Known is false when no source gives it.
type Range struct {
	Low, High float64
	Known     bool
}

// At returns the figure a share of the way from its low to its high end.
func (r Range) At(share float64) float64 { return r.Low + (r.High-r.Low)*share }

// Medium is what a space is filled with. Shares are of its volume.
type Medium struct {
	Name    string
	Full    Range // water left after free draining
	Wilt    Range // water left when plants wilt for good
	Holds   Range // between the two: what plants can take
	Air     Range
	DryKgM3 Range
	REWMM   Range // lost from a wet surface at full speed, of 10 cm
	TEWMM   Range // lost from it at all
	RiseM   Range // how high water climbs in it from a reservoir
	Source  string
	Basis   string
	Note    string
}

// Crop is what water needs to know of a crop. Coefficients are for 45 % least
// humidity and 2 m/s.
type Crop struct {
	Name                   string
	As                     string // the row taken for it, "" = its own
	KcIni, KcMid, KcEnd    float64
	KcbIni, KcbMid, KcbEnd float64 // basal: the leaves alone
	KcStaked               float64 // middle, grown on tall supports; 0 = not given
	HeightM                float64
	RootM                  Range
	P                      float64 // share of the water used before it feels it, at 5 mm a day
	Source, Basis, Note    string
}

// Salt is a crop's answer to salt: E. V. Maas, Crop salt tolerance (1990).
type Salt struct{ ThresholdDSM, SlopePct float64 }

// Book holds the figures of media and crops.
type Book struct {
	media map[string]Medium
	crops map[string]Crop
	salts map[string]Salt
}

// LoadBook reads the figures that ship inside the program.
func LoadBook() (*Book, error) {
	b := &Book{media: map[string]Medium{}, crops: map[string]Crop{}, salts: map[string]Salt{}}
	for _, page := range []struct {
		name string
		take func(row) error
	}{{"media", b.takeMedium}, {"crops", b.takeCrop}, {"wick_salt", b.takeSalt}} {
		if err := eachRow("book/"+page.name+".csv", page.take); err != nil {
			return nil, fmt.Errorf("water: reading %s: %w", page.name, err)
		}
	}
	return b, nil
}

// Medium returns a medium by name; ok is false for one not in the book.
func (b *Book) Medium(name string) (Medium, bool) { m, ok := b.media[name]; return m, ok }

// Crop returns a crop by its slug. One the book does not hold gets the figures
// of small vegetables, and ok is false.
func (b *Book) Crop(slug string) (Crop, bool) {
	if c, ok := b.crops[slug]; ok {
		return c, true
	}
	c := b.crops["group-small-vegetables"]
	c.Name, c.As = slug, "group-small-vegetables"
	return c, false
}

// Salt returns a crop's answer to salt, if it is known.
func (b *Book) Salt(slug string) (Salt, bool) { s, ok := b.salts[slug]; return s, ok }

// row is one line of a page, by heading.
type row map[string]string

func eachRow(name string, take func(row) error) error {
	text, err := pages.ReadFile(name)
	if err != nil {
		return err
	}
	lines, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
	if err != nil {
		return err
	}
	for i, l := range lines[1:] {
		r := row{}
		for k, head := range lines[0] {
			r[head] = l[k]
		}
		if err := take(r); err != nil {
			return fmt.Errorf("line %d: %w", i+2, err)
		}
	}
	return nil
}

// num returns a figure; ok is false when the cell is empty.
func (r row) num(key string) (v float64, ok bool, err error) {
	if r[key] == "" {
		return 0, false, nil
	}
	v, err = strconv.ParseFloat(r[key], 64)
	if err != nil || v < 0 {
		return 0, false, fmt.Errorf("%s %q: want a number, 0 or more", key, r[key])
	}
	return v, true, nil
}

func (r row) span(key string) (Range, error) {
	low, okLow, err := r.num(key + "_low")
	if err != nil {
		return Range{}, err
	}
	high, okHigh, err := r.num(key + "_high")
	if err != nil || !okLow || !okHigh {
		return Range{}, err
	}
	if high < low {
		return Range{}, fmt.Errorf("%s runs from %g down to %g", key, low, high)
	}
	return Range{low, high, true}, nil
}

func (b *Book) takeMedium(r row) error {
	m := Medium{Name: r["medium"], Source: r["source"], Basis: r["basis"], Note: r["note"]}
	for _, s := range []struct {
		key string
		to  *Range
	}{
		{"full", &m.Full}, {"wilt", &m.Wilt}, {"holds", &m.Holds}, {"air", &m.Air}, {"dry_kg_m3", &m.DryKgM3},
		{"rew_mm", &m.REWMM}, {"tew_mm", &m.TEWMM}, {"rise_m", &m.RiseM},
	} {
		var err error
		if *s.to, err = r.span(s.key); err != nil {
			return err
		}
	}
	b.media[m.Name] = m
	return nil
}

// soilOnlyLess is what the single coefficient of a full crop has over its
// basal one when the surface is seldom wet. [FAO56] tables 12 and 17 differ by
// 0.05 to 0.10.
const soilOnlyLess = 0.05

func (b *Book) takeCrop(r row) error {
	c := Crop{Name: r["crop"], As: r["as"], Source: r["source"], Basis: r["basis"], Note: r["note"], P: 0.4}
	basal := true
	for _, f := range []struct {
		key string
		to  *float64
	}{
		{"kc_ini", &c.KcIni}, {"kc_mid", &c.KcMid}, {"kc_end", &c.KcEnd}, {"kcb_ini", &c.KcbIni}, {"kcb_mid", &c.KcbMid},
		{"kcb_end", &c.KcbEnd}, {"kc_staked", &c.KcStaked}, {"height_m", &c.HeightM}, {"p", &c.P},
	} {
		v, ok, err := r.num(f.key)
		if err != nil {
			return err
		}
		if ok {
			*f.to = v
		}
		basal = basal && (ok || f.key != "kcb_mid")
	}
	if !basal {
		c.KcbIni, c.KcbMid, c.KcbEnd = 0.15, c.KcMid-soilOnlyLess, c.KcEnd-soilOnlyLess
	}
	if c.HeightM == 0 {
		c.HeightM = 0.3
	}
	if low, ok, _ := r.num("root_low_m"); ok {
		high, _, _ := r.num("root_high_m")
		c.RootM = Range{low, high, true}
	} else {
		c.RootM = Range{0.3, 0.6, false}
	}
	b.crops[c.Name] = c
	return nil
}

func (b *Book) takeSalt(r row) error {
	if r["topic"] != "salt-tolerance" {
		return nil
	}
	v, ok, err := r.num("low")
	if err != nil || !ok {
		return err
	}
	s := b.salts[r["crop"]]
	switch r["quantity"] {
	case "ECe_threshold":
		s.ThresholdDSM = v
	case "yield_loss_slope":
		s.SlopePct = v
	default:
		return nil
	}
	b.salts[r["crop"]] = s
	return nil
}
