package ledger

import (
	"bytes"
	"context"
	"errors"
	"os"
	"path/filepath"
	"testing"
)

// TestImportIsAFixedPoint: export, import into an empty record, export again
// gives the same files; a second import adds nothing.
func TestImportIsAFixedPoint(t *testing.T) {
	ctx := context.Background()
	l := open(t, t.TempDir())
	add(t, l, everyKind(t)...)
	pictured(t, l, "one")
	out := filepath.Join(t.TempDir(), "out")
	plan := Extra{Name: "plan.ics", Data: []byte("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n")}
	if err := l.Export(ctx, out, plan); err != nil {
		t.Fatal(err)
	}
	other := open(t, t.TempDir())
	n, err := other.ImportFolder(ctx, out)
	if err != nil || n != 19 {
		t.Fatalf("%d entries came in, %v; want 19", n, err)
	}
	again := filepath.Join(t.TempDir(), "again")
	if err := other.Export(ctx, again, plan); err != nil {
		t.Fatal(err)
	}
	if a, b := tree(t, out), tree(t, again); a != b {
		t.Errorf("exported again it differs:\n%s\n%s", a, b)
	}
	if n, err := other.ImportFolder(ctx, out); err != nil || n != 0 {
		t.Errorf("a second time: %d entries, %v", n, err)
	}
	if len(Backups(other.Dir())) != 1 {
		t.Error("no backup was made before the second import")
	}
	auditClean(t, other.Dir())
}

func TestImportRefusesWhatWasChanged(t *testing.T) {
	ctx := context.Background()
	l := open(t, t.TempDir())
	add(t, l, everyKind(t)...)
	out := filepath.Join(t.TempDir(), "out")
	if err := l.Export(ctx, out); err != nil {
		t.Fatal(err)
	}
	whole, err := os.ReadFile(filepath.Join(out, "events.json"))
	if err != nil {
		t.Fatal(err)
	}
	other := open(t, t.TempDir())
	for name, b := range map[string][]byte{
		"a word changed":   bytes.Replace(whole, []byte("eaten"), []byte("eatem"), 1),
		"a line taken out": append(bytes.Clone(whole[:2]), whole[bytes.Index(whole, []byte("},\n"))+3:]...),
		"cut":              whole[:len(whole)/2],
		"empty":            nil,
		"another file":     []byte(`{"events": 3}`),
	} {
		if n, err := other.Import(ctx, bytes.NewReader(b)); !errors.Is(err, ErrNotLedger) || n != 0 {
			t.Errorf("%s: %d entries, %v", name, n, err)
		}
	}
	if seq, _ := other.Head(); seq != 0 {
		t.Errorf("%d entries came in", seq)
	}
}
