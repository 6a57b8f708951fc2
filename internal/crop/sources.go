package crop

import (
	"fmt"
	"strings"
)

// Source is one place figures come from. Key is what figures name.
type Source struct {
	Key, Who, Title, Year, Where string
}

const (
	sourcesFile   = "book/sources.txt"
	emergenceFile = "book/emergence.txt"
)

// Sources lists the sources of the built-in book by key.
func Sources() ([]Source, error) {
	s, err := readSources()
	if err != nil {
		return s, fmt.Errorf("reading the book's sources: %w", err)
	}
	return s, nil
}

func readSources() ([]Source, error) {
	b, err := bookFiles.ReadFile(sourcesFile)
	if err != nil {
		return nil, err
	}
	var out []Source
	for i, l := range strings.Split(string(b), "\n") {
		if l == "" || strings.HasPrefix(l, "#") {
			continue
		}
		p := strings.Split(l, " | ")
		if len(p) != 5 {
			return out, fmt.Errorf("%s:%d: not five parts", sourcesFile, i+1)
		}
		out = append(out, Source{p[0], p[1], p[2], p[3], p[4]})
	}
	return out, nil
}
