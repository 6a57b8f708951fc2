package ledger

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func opts() Options { return Options{Now: clock(), Program: "bedweek test"} }

// pictured adds an entry with a picture of invented bytes.
func pictured(t testing.TB, l *Ledger, words string) string {
	t.Helper()
	d, err := l.KeepPhoto([]byte("picture "+words), []byte("small "+words))
	if err != nil {
		t.Fatal(err)
	}
	add(t, l, event(t, Pictured, "2015-05-02", Photo{Space: "arch", SHA256: d, Bytes: len(words) + 8, Width: 4, Height: 3}))
	return d
}

func TestRestoreIsProven(t *testing.T) {
	dir := filled(t) // two entries in the backup, one newer
	p := Backups(dir)[0]
	loss, err := WouldLose(dir, p.Path)
	if err != nil || !loss.Known || loss.Count != 1 || loss.Newer[0].Kind != Picked {
		t.Fatalf("would lose %+v, %v; want the one picking", loss, err)
	}
	b, err := Restore(dir, p.Path, opts())
	if err != nil {
		t.Fatal(err)
	}
	if b.Epoch != 1 || b.Proof.Entries != 3 || b.Before.Entries != 3 || b.Proof.Epoch != 1 {
		t.Errorf("restored: %+v; want epoch 1, the backup's 2 entries and the one that says so, and 3 backed up before", b)
	}
	l := open(t, dir)
	events, err := l.Events(context.Background())
	if err != nil || len(events) != 3 || events[2].Kind != Restored {
		t.Fatalf("%d entries, %v", len(events), err)
	}
	s, err := l.State(context.Background())
	if err != nil || s.Epoch != "1-"+events[2].ID || s.Plantings[0].Picks != 0 {
		t.Errorf("state %+v, %v; the picking must be gone and the epoch 1", s, err)
	}
	if l.Epoch() != s.Epoch {
		t.Errorf("epoch %q without the state, %q with it", l.Epoch(), s.Epoch)
	}
	l.Close()
	auditClean(t, dir)
	// What was there lies aside, whole: it opens by itself and has all three.
	aside := open(t, b.Aside)
	if seq, _ := aside.Head(); seq != 3 {
		t.Errorf("aside: %d entries, want 3", seq)
	}
	// And the backup made before has the picking too.
	in, err := eventsOf(b.Before.Path)
	if err != nil || len(in) != 3 || in[2].Kind != Picked {
		t.Errorf("backup before: %d entries, %v", len(in), err)
	}
	// The same backup again is another epoch, though the backup knows of none.
	later := opts()
	later.Now = func() time.Time { return clock()().Add(time.Hour) }
	again, err := Restore(dir, p.Path, later)
	if err != nil || again.Epoch != 2 {
		t.Errorf("restored again: epoch %d, %v; want 2", again.Epoch, err)
	}
}

func TestRestoreOfADamagedRecord(t *testing.T) {
	dir := filled(t)
	p := Backups(dir)[0]
	was := ""
	patch(t, filepath.Join(dir, dataName), func(b []byte) []byte { b = b[:len(b)/2]; was = string(b); return b })
	if _, err := Open(dir, opts()); !errors.Is(err, ErrDamaged) || !strings.Contains(err.Error(), "1 newer entries") {
		t.Fatalf("opened a cut record: %v", err)
	}
	loss, err := WouldLose(dir, p.Path)
	if err != nil || loss.Known || loss.Count != 1 || loss.NotKnown == "" {
		t.Errorf("would lose %+v, %v; want 1, told by the mark alone", loss, err)
	}
	b, err := Restore(dir, p.Path, opts())
	if err != nil {
		t.Fatal(err)
	}
	if got, err := os.ReadFile(filepath.Join(b.Aside, dataName)); err != nil || string(got) != was {
		t.Errorf("the damaged file was not kept as it was: %v", err)
	}
	if seq, _ := open(t, dir).Head(); seq != 3 {
		t.Errorf("%d entries after, want 3", seq)
	}
	auditClean(t, dir)
}

func TestRestoreRefuses(t *testing.T) {
	dir := filled(t)
	p := Backups(dir)[0]
	l := open(t, dir)
	if _, err := Restore(dir, p.Path, opts()); !errors.Is(err, ErrInUse) {
		t.Errorf("restored under an open record: %v", err)
	}
	l.Close()
	before := tree(t, dir)
	patch(t, p.Path, func(b []byte) []byte { return []byte(strings.Replace(string(b), "two rows", "two rowr", 1)) })
	spoilt := tree(t, dir)
	if _, err := Restore(dir, p.Path, opts()); !errors.Is(err, ErrDamaged) {
		t.Errorf("restored a spoilt backup: %v", err)
	}
	if _, err := Restore(dir, filepath.Join(dir, "nothing.db"), opts()); err == nil {
		t.Error("restored what is not there")
	}
	if after := tree(t, dir); after != spoilt || after == before {
		t.Errorf("a refused restore changed the folder:\n%s\nwas\n%s", after, spoilt)
	}
}

// tree lists the files of a folder with their digests.
func tree(t testing.TB, dir string) string {
	t.Helper()
	var b strings.Builder
	err := filepath.Walk(dir, func(path string, info os.FileInfo, err error) error {
		if err != nil || info.IsDir() {
			return err
		}
		sum, _, err := fileDigest(path)
		fmt.Fprintln(&b, strings.TrimPrefix(path, dir), sum)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestRestoreCutOff ends a restore before each of its steps, as a power cut
// would. The next start finishes it, once its mark is written: nothing of the
// old record is lost and nothing half is opened.
func TestRestoreCutOff(t *testing.T) {
	cut := errors.New("cut")
	for _, damaged := range []bool{false, true} {
		for n := 0; ; n++ {
			dir := filled(t)
			p := Backups(dir)[0]
			if damaged {
				patch(t, filepath.Join(dir, dataName), func(b []byte) []byte { return b[:len(b)/2] })
			}
			at, step := 0, ""
			o := opts()
			o.cut = func(s string) error {
				if step = s; at == n {
					return cut
				}
				at++
				return nil
			}
			_, err := Restore(dir, p.Path, o)
			if err == nil {
				if n < 6 {
					t.Errorf("only %d steps were cut", n)
				}
				break
			}
			if !errors.Is(err, cut) {
				t.Fatalf("cut at %d: %v", n, err)
			}
			l, err := Open(dir, opts())
			if err != nil {
				t.Errorf("cut before %q: the next start: %v", step, err)
				continue
			}
			if seq, _ := l.Head(); seq != 3 {
				t.Errorf("cut before %q: %d entries, want 3", step, seq)
			}
			events, _ := l.Events(context.Background())
			if events[2].Kind != Restored {
				t.Errorf("cut before %q: the old record came back", step)
			}
			l.Close()
			auditClean(t, dir)
			old, _ := filepath.Glob(filepath.Join(dir, asideName, "*", dataName))
			if len(old) != 1 {
				t.Errorf("cut before %q: %d old records aside, want 1", step, len(old))
			}
			if left, _ := filepath.Glob(filepath.Join(dir, "restor*")); len(left) > 0 {
				t.Errorf("cut before %q: left behind %q", step, left)
			}
		}
	}
}

func TestBackupAndRestoreBringPictures(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	d := pictured(t, l, "one")
	p, err := l.Backup(context.Background(), "")
	if err != nil || p.Photos != 1 || p.PhotoBytes != 11 {
		t.Fatalf("backup %+v, %v", p, err)
	}
	l.Close()
	auditClean(t, dir)
	path := photoPath(PhotoFolder(dir), d)
	patch(t, path, func(b []byte) []byte { b[3] ^= 1; return b })
	if r := Audit(dir); r.OK || !strings.Contains(r.Words(), "picture "+d[:12]+" is not as it was kept") {
		t.Errorf("a spoilt picture was not found:\n%s", r.Words())
	}
	if _, err := OpenPhoto(dir, d, false); !errors.Is(err, ErrDamaged) {
		t.Errorf("a spoilt picture was shown: %v", err)
	}
	l = open(t, dir)
	pictured(t, l, "two")
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Errorf("the first picture is in the backups already: %v", err)
	}
	l.Close()
	if _, err := Restore(dir, p.Path, opts()); err != nil {
		t.Fatal(err)
	}
	if b, err := OpenPhoto(dir, d, false); err != nil || string(b) != "picture one" {
		t.Errorf("the picture did not come back: %q, %v", b, err)
	}
	os.Remove(photoPath(PhotoFolder(filepath.Dir(p.Path)), d))
	if _, err := VerifyBackup(p.Path); !errors.Is(err, ErrDamaged) {
		t.Errorf("a backup without its picture was called good: %v", err)
	}
}

func TestDrill(t *testing.T) {
	dir := filled(t)
	l := open(t, dir)
	pictured(t, l, "one")
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Fatal(err)
	}
	l.Close()
	before := tree(t, dir)
	d, err := Drill(context.Background(), dir, t.TempDir(), opts())
	if err != nil || !d.OK || d.Backups != 2 {
		t.Fatalf("%+v, %v", d, err)
	}
	if last, ok := LastDrill(dir); !ok || last.Words != d.Words || !last.At.Equal(d.At) {
		t.Errorf("last drill %+v", last)
	}
	os.Remove(filepath.Join(dir, drillName))
	if after := tree(t, dir); after != before {
		t.Errorf("the drill changed the folder:\n%s", after)
	}
	patch(t, Backups(dir)[1].Path, func(b []byte) []byte { return b[:len(b)-4096] })
	if d, err := Drill(context.Background(), dir, t.TempDir(), opts()); err == nil || d.OK || d.Backups != 1 {
		t.Errorf("a drill with a spoilt backup: %+v, %v", d, err)
	}
}
