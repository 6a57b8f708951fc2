package ledger

import (
	"bytes"
	"context"
	"encoding/hex"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

func TestBackupIsProven(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	for range 50 {
		add(t, l, event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30}))
	}
	p, err := l.Backup(context.Background(), "")
	if err != nil {
		t.Fatal(err)
	}
	seq, chain := l.Head()
	if p.Entries != seq || p.Entries != 50 || p.Plantings != 50 || p.Chain != hex.EncodeToString(chain) || p.Layout != 1 || p.Program != "bedweek test" || p.Bytes == 0 {
		t.Errorf("proof %+v; head %d %x", p, seq, chain)
	}
	again, err := VerifyBackup(p.Path)
	if err != nil || again.SHA256 != p.SHA256 || again.Entries != 50 {
		t.Errorf("verified again: %+v, %v", again, err)
	}
	// The copy, put in a folder of its own, is a record that opens.
	other := t.TempDir()
	b, err := os.ReadFile(p.Path)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(other, dataName), b, 0o600); err != nil {
		t.Fatal(err)
	}
	o := open(t, other)
	if got, gotChain := o.Head(); got != seq || !bytes.Equal(gotChain, chain) {
		t.Errorf("the copy opened: head %d", got)
	}
	if left, _ := filepath.Glob(filepath.Join(BackupFolder(dir), making+"*")); len(left) > 0 {
		t.Errorf("left behind: %q", left)
	}
	if list := Backups(dir); len(list) != 1 || list[0].File != p.File {
		t.Errorf("listed: %+v", list)
	}
	auditClean(t, dir)
}

func TestSpoiltBackupIsFound(t *testing.T) {
	for _, tt := range []struct {
		name  string
		spoil func(t *testing.T, p Proof)
		words string
	}{
		{"a bit of a note", func(t *testing.T, p Proof) {
			patch(t, p.Path, func(b []byte) []byte { return bytes.Replace(b, []byte("two rows"), []byte("two rowr"), 1) })
		}, "not those that were written"},
		{"a bit nobody reads", func(t *testing.T, p Proof) {
			patch(t, p.Path, func(b []byte) []byte { b[92] ^= 1; return b }) // version-valid-for number of the header
		}, "not the file its manifest tells of"},
		{"cut", func(t *testing.T, p Proof) { patch(t, p.Path, func(b []byte) []byte { return b[:len(b)-4096] }) }, "damaged"},
		{"the copy is gone", func(t *testing.T, p Proof) { os.Remove(p.Path) }, "not there"},
		{"the manifest says more", func(t *testing.T, p Proof) {
			patch(t, manifestOf(p.Path), func(b []byte) []byte {
				return bytes.Replace(b, []byte(`"entries": 2`), []byte(`"entries": 3`), 1)
			})
		}, "not the file its manifest tells of"},
	} {
		dir := filled(t)
		tt.spoil(t, Backups(dir)[0])
		r := Audit(dir)
		last := r.Checks[len(r.Checks)-1]
		if r.OK || last.Name != "backups" || last.OK || !strings.Contains(last.Words, tt.words) {
			t.Errorf("%s: %+v, want the backups wrong and %q", tt.name, last, tt.words)
		}
	}
}

func TestBackupNeedsRoom(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	add(t, l, event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}))
	var size int64
	for _, name := range []string{dataName, dataName + "-wal"} {
		st, err := os.Stat(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		size += st.Size()
	}
	l.free = func(string) (uint64, bool) { return uint64(2.2*float64(size)) - 1, true }
	if _, err := l.Backup(context.Background(), ""); !errors.Is(err, ErrNoSpace) || !strings.Contains(err.Error(), "Nothing was begun") {
		t.Errorf("one byte too little: %v, want ErrNoSpace (trust.md ii: 2.2 times)", err)
	}
	if files, _ := os.ReadDir(BackupFolder(dir)); len(files) > 0 {
		t.Errorf("left behind: %v", files)
	}
	l.free = func(string) (uint64, bool) { return uint64(2.2*float64(size)) + 1, true }
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Errorf("just enough room: %v", err)
	}
	auditClean(t, dir)
}

func TestBackupLeftHalfDone(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	add(t, l, event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}))
	p, err := l.Backup(context.Background(), "")
	if err != nil {
		t.Fatal(err)
	}
	os.Remove(manifestOf(p.Path)) // killed between the two names
	half := filepath.Join(BackupFolder(dir), making+"x")
	if err := os.WriteFile(half, []byte("half"), 0o600); err != nil {
		t.Fatal(err)
	}
	r := Audit(dir)
	if !r.OK || !strings.Contains(r.Words(), "has no manifest and does not count") {
		t.Errorf("audit:\n%s", r.Words())
	}
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(half); err == nil {
		t.Error("the half copy is still there")
	}
}

func TestThin(t *testing.T) {
	var all []Proof
	end := time.Date(2026, 11, 25, 3, 0, 0, 0, time.UTC)
	for d := end.AddDate(-5, 0, 0); !d.After(end); d = d.AddDate(0, 0, 1) { // one a day for five years
		for _, h := range []int{0, 12} {
			at := d.Add(time.Duration(h) * time.Hour)
			all = append(all, Proof{File: at.Format(time.RFC3339), Made: at})
		}
	}
	keep, drop := thin(all)
	days, weeks, months, years := map[string]bool{}, map[string]bool{}, map[string]bool{}, map[int]bool{}
	for _, p := range keep {
		y, w := p.Made.ISOWeek()
		days[p.Made.Format("2006-01-02")] = true
		weeks[strings.Join([]string{number(y, false), number(w, false)}, "-")] = true
		months[p.Made.Format("2006-01")] = true
		years[p.Made.Year()] = true
	}
	for i := range 7 {
		if d := end.AddDate(0, 0, -i).Format("2006-01-02"); !days[d] {
			t.Errorf("day %s is not kept (trust.md O4: 7 daily)", d)
		}
	}
	for i := range 8 {
		if y, w := end.AddDate(0, 0, -7*i).ISOWeek(); !weeks[number(y, false)+"-"+number(w, false)] {
			t.Errorf("week %d of %d is not kept (trust.md O4: 8 weekly)", w, y)
		}
	}
	for i := range 24 {
		if m := time.Date(2026, 11-time.Month(i), 1, 0, 0, 0, 0, time.UTC).Format("2006-01"); !months[m] {
			t.Errorf("month %s is not kept (trust.md O4: 24 monthly)", m)
		}
	}
	for y := 2021; y <= 2026; y++ {
		if !years[y] {
			t.Errorf("year %d is not kept (trust.md O4: one a year for ever)", y)
		}
	}
	if len(keep) > 7+8+24+6 || len(keep)+len(drop) != len(all) {
		t.Errorf("%d kept, %d dropped of %d", len(keep), len(drop), len(all))
	}
	if again, more := thin(keep); len(more) > 0 || len(again) != len(keep) {
		t.Errorf("thinned twice, %d more go", len(more))
	}
}

func TestThinBackups(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	add(t, l, event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}))
	var last Proof
	for range 3 { // on one day: one is enough
		var err error
		if last, err = l.Backup(context.Background(), ""); err != nil {
			t.Fatal(err)
		}
	}
	good, err := os.ReadFile(last.Path)
	if err != nil {
		t.Fatal(err)
	}
	patch(t, last.Path, func(b []byte) []byte { return b[:5000] })
	if gone, err := l.ThinBackups(); err == nil || len(gone) > 0 || len(Backups(dir)) != 3 {
		t.Errorf("newest spoilt: %d removed, %v; want none and a reason", len(gone), err)
	}
	patch(t, last.Path, func([]byte) []byte { return good })
	if gone, err := l.ThinBackups(); err != nil || len(gone) != 2 || len(Backups(dir)) != 1 {
		t.Errorf("%d removed, %v; want 2", len(gone), err)
	}
	auditClean(t, dir)
}

// twoSteps is a program of the future with one more migration.
func twoSteps(t *testing.T, second string) fstest.MapFS {
	t.Helper()
	first, err := layouts.ReadFile("migrations/0001_ledger.sql")
	if err != nil {
		t.Fatal(err)
	}
	return fstest.MapFS{
		"migrations/0001_ledger.sql": {Data: first},
		"migrations/0002_photo.sql":  {Data: []byte(second)},
	}
}

func TestRaisingTheLayout(t *testing.T) {
	dir := filled(t)
	future := twoSteps(t, "CREATE TABLE photo (digest BLOB PRIMARY KEY) STRICT")
	l, err := Open(dir, Options{Now: clock(), Program: "bedweek 2", files: future})
	if err != nil {
		t.Fatal(err)
	}
	if n := len(Backups(dir)); n != 2 {
		t.Errorf("%d backups, want one more, made before the layout was changed", n)
	}
	if events, err := l.Events(context.Background()); err != nil || len(events) != 3 {
		t.Errorf("%d entries, %v; want 3", len(events), err)
	}
	// The old program, even before the new one has ended its work, changes nothing.
	before, _ := os.ReadFile(filepath.Join(dir, dataName))
	if _, err := Open(dir, Options{Now: clock()}); !errors.Is(err, ErrNewer) || !strings.Contains(err.Error(), "bedweek 2") {
		t.Errorf("the old program: %v, want ErrNewer", err)
	}
	l.Close()
	if _, err := Open(dir, Options{Now: clock()}); !errors.Is(err, ErrNewer) {
		t.Errorf("the old program: %v, want ErrNewer", err)
	}
	after, _ := os.ReadFile(filepath.Join(dir, dataName))
	if !bytes.Equal(before, after) {
		t.Error("the old program changed the file")
	}
	if l, err = Open(dir, Options{Now: clock(), files: future}); err != nil {
		t.Fatal(err)
	}
	l.Close()
	// Other steps under the same numbers are not these steps.
	if _, err := Open(dir, Options{Now: clock(), files: twoSteps(t, "CREATE TABLE picture (digest BLOB PRIMARY KEY) STRICT")}); !errors.Is(err, ErrDamaged) {
		t.Errorf("a changed migration: %v, want ErrDamaged", err)
	}
}

func TestBrokenMigrationChangesNothing(t *testing.T) {
	dir := filled(t)
	broken := twoSteps(t, "CREATE TABLE photo (digest BLOB PRIMARY KEY) STRICT; DROP TABLE planting; CREATE TABLE photo (x)")
	if _, err := Open(dir, Options{Now: clock(), files: broken}); err == nil {
		t.Fatal("a broken migration: no error")
	}
	l := open(t, dir) // the old layout, whole
	if st, err := l.State(context.Background()); err != nil || st.Events != 3 || len(st.Plantings) != 1 {
		t.Errorf("%+v, %v", st, err)
	}
	auditClean(t, dir)
}
