package ledger

import (
	"bytes"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"sort"
	"strconv"
	"strings"
	"testing"
)

// layoutsMost is how many layouts of one kind are looked for.
const layoutsMost = 20

// declaredKinds reads the kinds from the source, so that a new one cannot be
// forgotten here.
func declaredKinds(t *testing.T) []Kind {
	t.Helper()
	names, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	var out []Kind
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(f, func(n ast.Node) bool {
			v, ok := n.(*ast.ValueSpec)
			if !ok {
				return true
			}
			if id, ok := v.Type.(*ast.Ident); !ok || id.Name != "Kind" {
				return true
			}
			for _, x := range v.Values {
				if lit, ok := x.(*ast.BasicLit); ok && lit.Kind == token.STRING {
					s, err := strconv.Unquote(lit.Value)
					if err != nil {
						t.Fatal(err)
					}
					out = append(out, Kind(s))
				}
			}
			return true
		})
	}
	if len(out) < 17 {
		t.Fatalf("only %d kinds found in the source; the test no longer sees them", len(out))
	}
	sort.Slice(out, func(i, j int) bool { return out[i] < out[j] })
	return out
}

// bodiesOf is the file with bodies of one kind and layout, one to a line, as
// they were first written.
func bodiesOf(k Kind, version int) string {
	return filepath.Join("testdata/bodies", fmt.Sprintf("%s.%d.jsonl", strings.ReplaceAll(string(k), " ", "-"), version))
}

// TestEveryKindHasAFixture: trust plan (viii). Every kind and layout this
// program writes or reads has bodies kept as they were first written. They are
// read for ever, byte for byte, and together they set every field of the
// layout. A line once shipped is never changed; lines may be added.
func TestEveryKindHasAFixture(t *testing.T) {
	used := map[string]bool{}
	for _, k := range declaredKinds(t) {
		layouts := 0
		for version := 1; version <= layoutsMost; version++ {
			if newBody(k, version) == nil {
				continue
			}
			layouts++
			used[bodiesOf(k, version)] = true
			for _, fault := range fixtureFaults(k, version) {
				t.Error(fault)
			}
		}
		if layouts == 0 {
			t.Errorf("%q is declared, but newBody knows no layout of it", k)
		}
	}
	files, err := filepath.Glob("testdata/bodies/*")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		if !used[f] {
			t.Errorf("%s: this program does not read that kind and layout any more; it must, for ever", f)
		}
	}
}

// neverSet are fields of a shared layout that a kind refuses: a sowing begins
// its planting and cannot name it.
var neverSet = map[Kind]string{Sown: "Planting"}

// fixtureFaults says what a kind's fixture lacks.
func fixtureFaults(k Kind, version int) (faults []string) {
	name := bodiesOf(k, version)
	say := func(format string, a ...any) { faults = append(faults, name+": "+fmt.Sprintf(format, a...)) }
	b, err := os.ReadFile(name)
	if err != nil {
		say("there is no fixture of %q, layout %d. Write one body to a line there, as NewEvent writes it, every field set at least once", k, version)
		return faults
	}
	set := map[string]bool{}
	for i, line := range bytes.Split(bytes.TrimRight(b, "\n"), []byte("\n")) {
		text, body, bad := canonical(k, version, line)
		if len(bad) > 0 || !bytes.Equal(text, line) {
			say("line %d: read and written again gives %s (%v)", i+1, text, bad)
			continue
		}
		got, err := Decode(Event{ID: "x", Kind: k, Version: version, Body: line})
		if err != nil || !reflect.DeepEqual(got, body) {
			say("line %d: Decode gives %+v, %v", i+1, got, err)
			continue
		}
		v := reflect.ValueOf(body)
		for n := range v.NumField() {
			if !v.Field(n).IsZero() {
				set[v.Type().Field(n).Name] = true
			}
		}
	}
	whole := reflect.TypeOf(newBody(k, version)).Elem()
	for n := range whole.NumField() {
		if f := whole.Field(n).Name; !set[f] && neverSet[k] != f {
			say("no line sets %s", f)
		}
	}
	return faults
}

// TestAKindWithoutFixtureIsFound plants the fault.
func TestAKindWithoutFixtureIsFound(t *testing.T) {
	if f := fixtureFaults(Kind("eaten by moonlight"), 1); len(f) != 1 || !strings.Contains(f[0], "eaten-by-moonlight.1.jsonl") {
		t.Errorf("a kind without a fixture: %q", f)
	}
}
