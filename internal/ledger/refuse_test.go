package ledger

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/hex"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// filled makes a closed record with a few entries and one backup.
func filled(t testing.TB) string {
	t.Helper()
	dir := t.TempDir()
	l := open(t, dir)
	s := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	add(t, l, s, event(t, Looked, "2015-05-01", Look{Planting: s.ID, Looks: "well", Note: "two rows"}))
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Fatal(err)
	}
	add(t, l, event(t, Picked, "2015-07-01", Amount{Planting: s.ID, Kg: 0.4}))
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	return dir
}

// contents reads every file below dir.
func contents(t testing.TB, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.Walk(dir, func(path string, st os.FileInfo, err error) error {
		if err != nil || st.IsDir() {
			return err
		}
		b, err := os.ReadFile(path)
		out[path] = string(b)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func patch(t testing.TB, path string, change func([]byte) []byte) {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, change(b), 0o600); err != nil {
		t.Fatal(err)
	}
}

func exec(t testing.TB, dir string, statements ...string) {
	t.Helper()
	db, err := sql.Open("sqlite", dsn(filepath.Join(dir, dataName)))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	for _, q := range statements {
		if _, err := db.Exec(q); err != nil {
			t.Fatalf("%s: %v", q, err)
		}
	}
}

func TestRefusals(t *testing.T) {
	for _, tt := range []struct {
		name  string
		spoil func(t *testing.T, dir string)
		want  error
		words []string
	}{
		{"newer layout", func(t *testing.T, dir string) {
			exec(t, dir, "INSERT INTO schema_version VALUES (2, 'x', 'x', 'bedweek 9.1', 'x', 'x')", "PRAGMA user_version = 2")
		}, ErrNewer, []string{"layout 2", "bedweek 9.1", "up to 1", "Nothing was read or changed"}},
		{"newer layout in the list only", func(t *testing.T, dir string) {
			exec(t, dir, "INSERT INTO schema_version VALUES (2, 'x', 'x', 'bedweek 9.1', 'x', 'x')")
		}, ErrNewer, []string{"layout 2", "bedweek 9.1"}},
		{"not a record", func(t *testing.T, dir string) {
			patch(t, filepath.Join(dir, dataName), func([]byte) []byte { return []byte(strings.Repeat("my notes\n", 50)) })
		}, ErrNotLedger, []string{"Last proven backup: 12 April 2015", "2 entries", "1 newer entries"}},
		{"another program's database", func(t *testing.T, dir string) {
			exec(t, dir, "PRAGMA application_id = 7")
		}, ErrNotLedger, nil},
		{"emptied", func(t *testing.T, dir string) {
			patch(t, filepath.Join(dir, dataName), func([]byte) []byte { return nil })
		}, ErrDamaged, []string{"empty", "Last proven backup"}},
		{"taken away", func(t *testing.T, dir string) {
			os.Remove(filepath.Join(dir, dataName))
		}, ErrDamaged, []string{"3 entries were kept", "Last proven backup"}},
		{"cut to half", func(t *testing.T, dir string) {
			patch(t, filepath.Join(dir, dataName), func(b []byte) []byte { return b[:len(b)/2] })
		}, ErrDamaged, []string{"Nothing was changed", "Last proven backup"}},
		{"cut to 50 bytes", func(t *testing.T, dir string) {
			patch(t, filepath.Join(dir, dataName), func(b []byte) []byte { return b[:50] })
		}, ErrDamaged, []string{"cut off after 50 bytes"}},
		{"a note changed", func(t *testing.T, dir string) {
			patch(t, filepath.Join(dir, dataName), func(b []byte) []byte { return bytes.Replace(b, []byte("two rows"), []byte("ten rows"), 1) })
		}, ErrDamaged, []string{"entry 2", "not those that were written"}},
		{"an entry added behind our back", func(t *testing.T, dir string) {
			exec(t, dir, "INSERT INTO event SELECT 4, 'x', parent, device, happened, written, kind, version, body, digest, chain FROM event WHERE seq = 3")
		}, ErrDamaged, []string{"entry 4"}},
		{"an entry taken out", func(t *testing.T, dir string) {
			exec(t, dir, "DROP TRIGGER event_no_delete", "DELETE FROM event WHERE seq = 2",
				"CREATE TRIGGER event_no_delete BEFORE DELETE ON event\n\tBEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END")
		}, ErrDamaged, []string{"entry 3", "does not follow"}},
		{"a guard taken off", func(t *testing.T, dir string) {
			exec(t, dir, "DROP TRIGGER event_no_update")
		}, ErrDamaged, []string{"not those of layout 1"}},
		{"an old copy put in its place", func(t *testing.T, dir string) {
			b, err := os.ReadFile(Backups(dir)[0].Path)
			if err != nil {
				t.Fatal(err)
			}
			patch(t, filepath.Join(dir, dataName), func([]byte) []byte { return b })
		}, ErrDamaged, []string{"entry 3 was kept, but the file ends at 2", "newest 1 entries"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			dir := filled(t)
			tt.spoil(t, dir)
			before := contents(t, dir)
			_, err := Open(dir, Options{Now: clock()})
			if !errors.Is(err, tt.want) {
				t.Fatalf("Open: %v, want %v", err, tt.want)
			}
			for _, w := range tt.words {
				if !strings.Contains(err.Error(), w) {
					t.Errorf("Open: %q does not say %q", err, w)
				}
			}
			for path, was := range before {
				b, err := os.ReadFile(path)
				if filepath.Base(path) != lockName && (err != nil || string(b) != was) {
					t.Errorf("%s was changed (%v)", filepath.Base(path), err)
				}
			}
			if r := Audit(dir); r.OK {
				t.Errorf("the audit found nothing:\n%s", r.Words())
			}
		})
	}
}

func TestSecondWriterIsNamed(t *testing.T) {
	dir := t.TempDir()
	open(t, dir)
	_, err := Open(dir, Options{Now: clock()})
	if !errors.Is(err, ErrInUse) || !strings.Contains(err.Error(), "bedweek test, process ") {
		t.Errorf("second Open: %v, want ErrInUse with the holder's name", err)
	}
}

func TestLogLostIsFound(t *testing.T) {
	live := t.TempDir()
	l := open(t, live)
	add(t, l, event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30}))
	copied := t.TempDir() // the database and the mark, without the log
	for _, name := range []string{dataName, headName} {
		b, err := os.ReadFile(filepath.Join(live, name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(copied, name), b, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := Open(copied, Options{Now: clock()}); !errors.Is(err, ErrDamaged) {
		t.Errorf("Open of a copy without its log: %v, want ErrDamaged", err)
	}
}

func TestOldSQLite(t *testing.T) {
	for _, tt := range []struct {
		version string
		ok      bool
	}{
		{"3.51.2", false}, {"3.7.0", false}, {"2.99.9", false}, {"", false}, // "PRAGMA" bug range of the release notes
		{"3.51.3", true}, {"3.51.10", true}, {"3.54.1", true}, {"4.0", true},
	} {
		if err := judgeSQLite(tt.version); (err == nil) != tt.ok || err != nil && !errors.Is(err, ErrOldSQLite) {
			t.Errorf("SQLite %q: %v, want accepted = %v", tt.version, err, tt.ok)
		}
	}
	if err := checkSQLite(); err != nil {
		t.Errorf("the SQLite in this build: %v", err)
	}
}

func TestSharedDrives(t *testing.T) {
	for _, tt := range []struct {
		kind folderKind
		ok   bool
	}{
		{folderKind{name: "NFS", remote: true, known: true}, false},
		{folderKind{name: "disk", known: true}, true},
		{folderKind{name: "memory", memory: true, known: true}, true},
		{folderKind{}, true},
	} {
		if note, err := tt.kind.judge("x"); (err == nil) != tt.ok || err != nil && !errors.Is(err, ErrNetwork) || tt.kind.name == "disk" && note != "" {
			t.Errorf("%+v: %q, %v", tt.kind, note, err)
		}
	}
	if k := kindOfFolder(t.TempDir()); k.remote || !k.known {
		t.Skipf("the temporary folder itself is on a shared drive or unknown: %+v", k)
	}
}

func TestDiskFullIsNotTheEnd(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	ctx := context.Background()
	var pages int
	if err := l.writer.QueryRowContext(ctx, "PRAGMA page_count").Scan(&pages); err != nil {
		t.Fatal(err)
	}
	if _, err := l.writer.ExecContext(ctx, "PRAGMA max_page_count = "+number(pages+2, false)); err != nil {
		t.Fatal(err)
	}
	kept := 0
	var err error
	for i := 0; i < 200 && err == nil; i++ {
		_, err = l.Append(ctx, event(t, Sown, "2015-05-01", Started{Crop: "pea", Space: "arch", Count: 3, Note: strings.Repeat("n", 500)}))
		if err == nil {
			kept++
		}
	}
	if !errors.Is(err, ErrNoSpace) || kept == 0 {
		t.Fatalf("kept %d, then %v; want some, then ErrNoSpace", kept, err)
	}
	if l.Stopped() != nil {
		t.Fatalf("a full disk stopped writing for good: %v", l.Stopped())
	}
	if st, err := l.State(ctx); err != nil || st.Events != kept {
		t.Errorf("%d entries, %v; want the %d acknowledged", st.Events, err, kept)
	}
	if _, err := l.writer.ExecContext(ctx, "PRAGMA max_page_count = 1000000"); err != nil {
		t.Fatal(err)
	}
	add(t, l, event(t, Sown, "2015-05-02", Started{Crop: "pea", Space: "arch", Count: 3}))
	if seq, _ := l.Head(); int(seq) != kept+1 {
		t.Errorf("%d entries, want %d", seq, kept+1)
	}
	auditClean(t, dir)
}

func TestFirstWriteErrorStopsWriting(t *testing.T) {
	for _, tt := range []struct {
		name  string
		spoil func(l *Ledger)
		mend  func(l *Ledger)
	}{
		{"database", func(l *Ledger) { l.writer.ExecContext(context.Background(), "PRAGMA query_only = 1") },
			func(l *Ledger) { l.writer.ExecContext(context.Background(), "PRAGMA query_only = 0") }},
		{"mark", func(l *Ledger) { l.last.f.Close() }, func(l *Ledger) { l.last, _ = openHead(l.dir) }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			dir := t.TempDir()
			l := open(t, dir)
			look := func() Event { return event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}) }
			add(t, l, look())
			tt.spoil(l)
			if _, err := l.Append(context.Background(), look()); !errors.Is(err, ErrStopped) {
				t.Fatalf("first: %v, want ErrStopped", err)
			}
			tt.mend(l) // the disk says that all is well again: it is not believed
			if _, err := l.Append(context.Background(), look()); !errors.Is(err, ErrStopped) {
				t.Errorf("second: %v, want ErrStopped", err)
			}
			select {
			case <-l.Failed():
			default:
				t.Error("Failed is not closed")
			}
			if _, err := l.Events(context.Background()); err != nil {
				t.Errorf("reading after the stop: %v", err)
			}
			l.Close()
			l = open(t, dir)
			auditClean(t, dir)
		})
	}
}

func TestMark(t *testing.T) {
	m := mark{12, bytes.Repeat([]byte{0xab}, 32)}
	if got, ok := parseMark(m.text()); !ok || got.seq != 12 || hex.EncodeToString(got.chain) != hex.EncodeToString(m.chain) {
		t.Errorf("read back %+v, %v", got, ok)
	}
	for i := range m.text() {
		if _, ok := parseMark(m.text()[:i]); ok {
			t.Errorf("a mark cut to %d bytes was taken", i)
		}
	}
}
