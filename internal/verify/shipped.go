package verify

import (
	"embed"
	"fmt"
	"sort"
)

// The published cases that ship inside the program.
//
//go:embed cases/*.json
var shipped embed.FS

// Shipped returns the cases inside the program, by file name.
func Shipped() ([]Topic, error) {
	entries, err := shipped.ReadDir("cases")
	if err != nil {
		return nil, fmt.Errorf("reading the shipped cases: %w", err)
	}
	names := make([]string, 0, len(entries))
	for _, e := range entries {
		names = append(names, e.Name())
	}
	sort.Strings(names)
	var out []Topic
	for _, n := range names {
		b, err := shipped.ReadFile("cases/" + n)
		if err != nil {
			return nil, fmt.Errorf("reading %s: %w", n, err)
		}
		t, err := Parse(n, b)
		if err != nil {
			return nil, err
		}
		out = append(out, t)
	}
	return out, nil
}
