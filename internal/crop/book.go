package crop

import (
	"bytes"
	"cmp"
	"embed"
	"fmt"
	"slices"
	"strings"
	"sync"
)

// bookFiles is the built-in book: crops, emergence tables and sources as text.
//
//go:embed book/*.txt
var bookFiles embed.FS

// Book is a set of crops with the emergence tables they rest on.
type Book struct {
	Crops  []*Crop  // by ID
	Tables []*Table // by name

	varieties []variety // with figures of their own, see WithChanges

	plainly sync.Once
	names   []called // made by called
}

// Load reads the built-in book. It never panics: if a file had a fault, the
// error lists it and the book holds every crop that is whole.
func Load() (*Book, error) {
	rd := newReader()
	entries, err := bookFiles.ReadDir("book")
	if err != nil {
		return &Book{}, fmt.Errorf("opening the crop book: %w", err)
	}
	for _, e := range entries { // ReadDir sorts by name
		name := "book/" + e.Name()
		if name == sourcesFile || name == emergenceFile {
			continue
		}
		b, err := bookFiles.ReadFile(name)
		if err != nil {
			return &Book{}, fmt.Errorf("opening the crop book: %w", err)
		}
		rd.read(name, bytes.NewReader(b))
	}
	b := &Book{Crops: rd.crops, Tables: rd.tables}
	b.sort()
	if _, err := readSources(); err != nil {
		return b, fmt.Errorf("reading the crop book: %w", err)
	}
	if len(rd.faults) > 0 {
		var all []string
		for _, f := range rd.faults {
			all = append(all, f.String())
		}
		return b, fmt.Errorf("reading the crop book: %s", strings.Join(all, "\n"))
	}
	return b, nil
}

func (b *Book) sort() {
	slices.SortFunc(b.Crops, func(x, y *Crop) int { return cmp.Compare(x.ID, y.ID) })
	slices.SortFunc(b.Tables, func(x, y *Table) int { return cmp.Compare(x.Name, y.Name) })
}

// Crop finds a crop by its exact ID.
func (b *Book) Crop(id ID) (*Crop, bool) {
	i, ok := slices.BinarySearchFunc(b.Crops, id, func(c *Crop, id ID) int { return cmp.Compare(c.ID, id) })
	if !ok {
		return nil, false
	}
	return b.Crops[i], true
}

// Table finds an emergence table by its exact name, such as "bean-snap".
func (b *Book) Table(name string) (*Table, bool) {
	for _, t := range b.Tables {
		if t.Name == name {
			return t, true
		}
	}
	return nil, false
}

// With returns a new book in which own crops stand beside the built-in ones
// and replace those of the same ID. b is not changed.
func (b *Book) With(own []*Crop) *Book {
	out := &Book{Tables: slices.Clone(b.Tables), varieties: slices.Clone(b.varieties)}
	for _, c := range b.Crops {
		if !slices.ContainsFunc(own, func(o *Crop) bool { return o.ID == c.ID }) {
			out.Crops = append(out.Crops, c)
		}
	}
	out.Crops = append(out.Crops, own...)
	out.sort()
	return out
}
