package internal_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"
)

const module = "bedweek/internal/"

// floor orders the rooms: a package imports only from lower floors, and two
// packages on one floor do not know each other (docs/decisions/0001-rooms.md).
var floor = map[string]int{
	"unit": 0, "cal": 0, "geom": 0, "compass": 0, "chance": 0, "label": 0, "heap": 0, "photo": 0, "gate": 0, "trouble": 0,
	"sun":     1,
	"weather": 2, "shade": 2,
	"crop": 3, "water": 3,
	"garden": 4, "stand": 4,
	"ledger": 5, "season": 5,
	"reckon": 6, "verify": 6, "fetch": 6, "names": 6,
	"agenda": 7,
	"web":    8,
}

// worldly rooms may touch disk, network and clock; all others are pure.
var worldly = map[string]bool{"ledger": true, "gate": true, "web": true, "fetch": true}

// tests only, not part of the program.
var harness = map[string]bool{"crash": true, "week": true}

func TestFloors(t *testing.T) {
	seen := map[string]bool{}
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") || path == "imports_test.go" {
			return err
		}
		pkg := strings.Split(filepath.ToSlash(path), "/")[0]
		if harness[pkg] {
			return nil
		}
		mine, ok := floor[pkg]
		if !ok {
			t.Errorf("%s: package %s stands on no floor; give it one", path, pkg)
			return nil
		}
		seen[pkg] = true
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, im := range f.Imports {
			name := strings.Trim(im.Path.Value, `"`)
			if theirs, ok := strings.CutPrefix(name, module); ok {
				room := strings.Split(theirs, "/")[0]
				if room != pkg && floor[room] >= mine {
					t.Errorf("%s: %s (floor %d) may not import %s (floor %d)", path, pkg, mine, room, floor[room])
				}
			}
			switch name {
			case "os", "log", "log/slog", "net", "net/http", "database/sql", "math/rand":
				if !worldly[pkg] {
					t.Errorf("%s: %s is pure and may not import %s", path, pkg, name)
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(seen) < 5 {
		t.Fatalf("only %d packages looked at; the test no longer sees the tree", len(seen))
	}
}
