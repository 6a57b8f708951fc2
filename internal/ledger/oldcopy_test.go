package ledger

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"testing"
)

// TestOldCopiesComeBackForEver: trust plan (viii). An old backup is restored
// and an old export taken over by this program, directly, with the same
// entries, chain, pictures and state. testdata/v1 was written by the first
// program that made backups, testdata/pictured on 28 November 2026. Neither is
// ever written again; a new layout adds a folder.
func TestOldCopiesComeBackForEver(t *testing.T) {
	for _, tt := range []struct {
		folder  string
		entries int
		picture string
	}{{"testdata/v1", 18, ""}, {"testdata/pictured", 19, "picture first"}} {
		t.Run(filepath.Base(tt.folder), func(t *testing.T) { oldCopy(t, tt.folder, tt.entries, tt.picture) })
	}
}

func oldCopy(t *testing.T, folder string, entries int, picture string) {
	ctx := context.Background()
	work := t.TempDir() // nothing is opened in testdata itself
	if err := os.CopyFS(work, os.DirFS(folder)); err != nil {
		t.Fatal(err)
	}
	golden, err := os.ReadFile(filepath.Join(work, "state.json"))
	if err != nil {
		t.Fatal(err)
	}
	all := listBackups(filepath.Join(work, "backups"))
	if len(all) != 1 || int(all[0].Entries) != entries {
		t.Fatalf("the backup is not one any more: %+v", all)
	}
	back := t.TempDir()
	if _, err := Restore(back, all[0].Path, opts()); err != nil {
		t.Fatalf("restoring: %v", err)
	}
	l := open(t, back)
	events, err := l.Events(ctx)
	if err != nil || len(events) != entries+1 || events[entries].Kind != Restored {
		t.Fatalf("restored: %d entries, %v; want %d and the one that says so", len(events), err, entries)
	}
	restored := Replay(events[:entries])
	if got := indented(t, restored); !bytes.Equal(got, golden) {
		t.Errorf("restored state:\n%s\nwant:\n%s", got, golden)
	}
	into := open(t, t.TempDir())
	if n, err := into.ImportFolder(ctx, filepath.Join(work, "export")); err != nil || n != entries {
		t.Fatalf("taking over the export: %d entries, %v; want %d", n, err, entries)
	}
	st, err := into.State(ctx)
	if err != nil || !bytes.Equal(indented(t, st), golden) {
		t.Errorf("taken over, %v:\n%s\nwant:\n%s", err, indented(t, st), golden)
	}
	if _, chain := into.Head(); !bytes.Equal(chain, mustHex(all[0].Chain)) {
		t.Error("the export taken over has another chain than the backup")
	}
	for _, x := range []*Ledger{l, into} {
		for _, p := range restored.Pictures {
			if b, err := OpenPhoto(x.Dir(), p.SHA256, false); err != nil || string(b) != picture {
				t.Errorf("the picture: %q, %v", b, err)
			}
		}
		x.Close()
		auditClean(t, x.Dir())
	}
}
