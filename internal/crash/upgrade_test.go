package crash

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"testing"
	"time"

	"bedweek/internal/ledger"
)

// TestKilledWhileRaised kills the child while it brings a record over two
// newer layouts. The record must then be of one layout and whole, hold a
// proven backup once it is newer, be left alone by a program that does not
// know the newer one, and come up to date at the next start with every entry.
func TestKilledWhileRaised(t *testing.T) {
	t.Logf("seed %d", *seed)
	u := newUpgrade(t, nextLayouts, 600)
	chance := rand.New(rand.NewPCG(*seed, 9))
	at := map[string]int{}
	for i := range *raised {
		dir := filepath.Join(t.TempDir(), "data")
		for _, f := range u.killed(dir, time.Duration(chance.Int64N(int64(u.takes)))) {
			t.Errorf("kill %d (seed %d): %s", i, *seed, f)
		}
		at[u.layout]++
		if t.Failed() {
			return
		}
		os.RemoveAll(dir)
	}
	t.Logf("%d kills within %v: found at layout %v", *raised, u.takes.Round(time.Millisecond), at)
	if *raised >= 100 && (at["1"] == 0 || at["2"] == 0 || at["3"] == 0) {
		t.Errorf("the kills left layouts %v: each of 1, 2 and 3 should be met", at)
	}
}

// TestKilledWhileRaisedCatchesEarlyMark runs the same on a child that writes
// the number of a layout before it makes the layout.
func TestKilledWhileRaisedCatchesEarlyMark(t *testing.T) {
	u := newUpgrade(t, nextLayouts+",mutant_mark_early", 600)
	chance := rand.New(rand.NewPCG(*seed, 10))
	for i := range mostKills {
		dir := filepath.Join(t.TempDir(), "data")
		if f := u.killed(dir, time.Duration(chance.Int64N(int64(u.takes)))); len(f) > 0 {
			t.Logf("caught at kill %d: %s", i, f[0])
			return
		}
		os.RemoveAll(dir)
	}
	t.Errorf("%d kills of a child that marks a layout before it is made lost nothing: this test cannot see that fault", mostKills)
}

type upgrade struct {
	t        *testing.T
	old, new string        // children
	from     string        // a record of layout 1
	rows     string        // what it serves
	takes    time.Duration // to bring it up to date
	layout   string        // found after the last cut

	holdsKB, needsKB int // the old record, and more than making it new needs beside it
}

// newUpgrade makes a record of so many appends by each of two hands.
func newUpgrade(t *testing.T, tag string, appends int) *upgrade {
	u := &upgrade{t: t, old: child(t, ""), new: child(t, tag), from: filepath.Join(t.TempDir(), "first")}
	if out, err := exec.Command(u.old, "-clients", "2", "-count", fmt.Sprint(appends), "append", u.from).CombinedOutput(); err != nil {
		t.Fatalf("writing a record: %v\n%.500s", err, out)
	}
	dir := filepath.Join(t.TempDir(), "whole")
	u.copyTo(dir)
	begun := time.Now()
	if out, err := exec.Command(u.new, "open", dir).CombinedOutput(); err != nil {
		t.Fatalf("bringing it up to date: %v\n%s", err, out)
	}
	u.takes = time.Since(begun)
	u.holdsKB = folderKB(t, u.from)
	u.needsKB = 512 + 5*(folderKB(t, dir)-u.holdsKB)/2 // the log beside the tables
	u.rows = u.verdict(u.new, dir).Rows
	if v := u.verdict(u.old, u.from); v.Rows != u.rows || u.rows == "" {
		t.Fatalf("brought up to date in peace the record serves other rows: %+v", v)
	}
	return u
}

// folderKB is the size of a folder's files in whole pages.
func folderKB(t *testing.T, dir string) (kb int) {
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		st, err := d.Info()
		if err == nil {
			kb += 4 * int((st.Size()+4095)/4096)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return kb
}

func (u *upgrade) copyTo(dir string) {
	if err := os.CopyFS(dir, os.DirFS(u.from)); err != nil {
		u.t.Fatal(err)
	}
}

func (u *upgrade) verdict(child, dir string) (v verdict) {
	out, err := exec.Command(child, "check", dir).Output()
	if err == nil {
		err = json.Unmarshal(out, &v)
	}
	if err != nil {
		u.t.Fatalf("checking: %v: %s", err, out)
	}
	return v
}

var ofLayout = regexp.MustCompile(`it has layout (\d)`)

// killed brings a copy up to date, kills that after a while, and returns what
// is wrong afterwards.
func (u *upgrade) killed(dir string, after time.Duration) (faults []string) {
	u.copyTo(dir)
	cmd := exec.Command(u.new, "open", dir)
	if err := cmd.Start(); err != nil {
		u.t.Fatal(err)
	}
	time.Sleep(after)
	cmd.Process.Kill()
	cmd.Wait()
	return u.left(dir)
}

// left returns what is wrong with a record after it was cut off while it was
// brought up to date: it must be the old one whole, or a newer one whole.
func (u *upgrade) left(dir string) (faults []string) {
	u.layout = "1"
	v := u.verdict(u.old, dir)
	if m := ofLayout.FindStringSubmatch(v.Refused); m != nil {
		u.layout = m[1]
		if len(ledger.Backups(dir)) == 0 {
			faults = append(faults, "the layout was changed before there was a backup")
		}
	} else if !v.AuditOK || v.Rows != u.rows {
		faults = append(faults, fmt.Sprintf("the older program found neither the old record nor a newer one: %+v", v))
	}
	if v := u.verdict(u.new, dir); !v.AuditOK || v.Refused != "" || v.Rows != u.rows {
		faults = append(faults, fmt.Sprintf("the newer program did not bring it up to date: %+v", v))
	}
	return faults
}
