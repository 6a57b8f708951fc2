package crop

import (
	"fmt"
	"strings"
)

// Table is one crop's published emergence by constant soil temperature.
type Table struct {
	Name   string // slug, as the table names its crop: "bean-snap"
	Title  string
	Source string
	Basis  string
	Rows   []GermPoint // by rising soil temperature
}

// At gives the table's own row at a soil temperature in °C. Between rows and
// outside them it answers false: nothing was measured there.
func (t *Table) At(soilC float64) (GermPoint, bool) {
	const same = 0.01 // °C; rows stand 5 °C apart
	for _, r := range t.Rows {
		if soilC > r.SoilC-same && soilC < r.SoilC+same {
			return r, true
		}
	}
	return GermPoint{SoilC: soilC}, false
}

// EmergenceTable reads one table of the built-in book by its exact name,
// without the crops.
func EmergenceTable(name string) (*Table, bool) {
	for _, t := range newReader().tables {
		if t.Name == name {
			return t, true
		}
	}
	return nil, false
}

// tableLine handles one line inside a table.
func (rd *reader) tableLine(key, val string) {
	t := rd.table
	switch key {
	case "name":
		t.Title = val
	case "source":
		if !rd.sources[val] {
			rd.fault(fmt.Sprintf("no source is called %q", val), "docs/sources.md lists them.")
			return
		}
		t.Source = val
	case "basis":
		t.Basis = val
	case "row":
		p, what := row(val)
		if what != "" {
			rd.fault(what, "Write soil °C, days, percent; \"-\" for no figure, \"none\" for no germination.")
			return
		}
		if n := len(t.Rows); n > 0 && p.SoilC <= t.Rows[n-1].SoilC {
			rd.fault("rows must rise in soil temperature", "")
			return
		}
		t.Rows = append(t.Rows, p)
	default:
		rd.fault(fmt.Sprintf("no key of a table is called %q", key), "Use name, source, basis or row.")
	}
}

// row reads "soil days percent | note".
func row(val string) (p GermPoint, what string) {
	nums, _, _ := strings.Cut(val, "|")
	w := strings.Fields(nums)
	if len(w) != 3 {
		return p, "a row needs three entries"
	}
	soil, ok := parseNumber(w[0])
	if !ok || soil < -5 || soil > 60 {
		return p, fmt.Sprintf("%q is not a soil temperature", w[0])
	}
	p.SoilC = soil
	switch w[1] {
	case "-":
	case "none":
		p.None = true
	default:
		if p.Days, p.HasDays = parseNumber(w[1]); !p.HasDays || p.Days < 0.5 || p.Days > 400 {
			return p, fmt.Sprintf("%q is not days to emergence", w[1])
		}
	}
	if w[2] != "-" {
		if p.Pct, p.HasPct = parseNumber(w[2]); !p.HasPct || p.Pct < 0 || p.Pct > 100 {
			return p, fmt.Sprintf("%q is not a percentage", w[2])
		}
	}
	return p, ""
}
