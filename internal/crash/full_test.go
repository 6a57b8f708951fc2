//go:build linux

package crash

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

var rooms = flag.Int("rooms", 40, "disks of different size that are filled; 200 in the full tier")

// smallDisk mounts a disk of so many KB in memory. Where that is not allowed
// the test is skipped and says so, unless BEDWEEK_FULL=1 asks for every test.
func smallDisk(t *testing.T, kb int) string {
	t.Helper()
	dir := t.TempDir()
	if err := syscall.Mount("none", dir, "tmpfs", 0, fmt.Sprintf("size=%dk", kb)); err != nil {
		if os.Getenv("BEDWEEK_FULL") == "1" {
			t.Fatalf("a small disk cannot be mounted here (%v), and BEDWEEK_FULL=1 wants every test", err)
		}
		t.Skipf("a small disk cannot be mounted here (%v): a full disk was not looked at", err)
	}
	t.Cleanup(func() { syscall.Unmount(dir, syscall.MNT_DETACH) })
	return dir
}

// script writes 50 entries, 3 pictures, a backup and an import, and goes on
// after each refusal. It returns what was acknowledged, and each refusal.
type script struct {
	t        *testing.T
	l        *ledger.Ledger
	acked    []string
	pictures []string
	refused  []error
	backups  int
}

func (s *script) keep(err error) bool {
	if err != nil {
		s.refused = append(s.refused, err)
	}
	return err == nil
}

func (s *script) note(n int) {
	e, err := ledger.NewEvent("phone", cal.Of(2015, 5, 1), ledger.Sown, ledger.Started{Crop: "kale", Space: "bed", Count: 1 + n%9, Note: strings.Repeat("wet ", 200)})
	if err != nil {
		s.t.Fatal(err)
	}
	if _, err = s.l.Append(context.Background(), e); s.keep(err) {
		s.acked = append(s.acked, e.ID)
	}
}

func (s *script) picture(n int) {
	picture := bytes.Repeat([]byte{byte(n), 7, 9}, 20<<10)
	d, err := s.l.KeepPhoto(picture, picture[:900])
	if !s.keep(err) {
		return
	}
	e, err := ledger.NewEvent("phone", cal.Of(2015, 5, 1), ledger.Pictured, ledger.Photo{Space: "bed", SHA256: d, Bytes: len(picture), Width: 40, Height: 30})
	if err != nil {
		s.t.Fatal(err)
	}
	if _, err = s.l.Append(context.Background(), e); s.keep(err) {
		s.acked = append(s.acked, e.ID)
		s.pictures = append(s.pictures, d)
	}
}

func (s *script) all(importable []byte) {
	for i := range 25 {
		s.note(i)
	}
	for i := range 3 {
		s.picture(i)
	}
	if _, err := s.l.Backup(context.Background(), ""); s.keep(err) {
		s.backups++
	}
	for i := range 25 {
		s.note(i)
	}
	_, err := s.l.Import(context.Background(), bytes.NewReader(importable))
	s.keep(err)
}

// exported is an events.json of 60 entries.
func exported(t *testing.T) []byte {
	t.Helper()
	l, err := ledger.Open(t.TempDir(), ledger.Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	s := script{t: t, l: l}
	for i := range 60 {
		s.note(i)
	}
	out := filepath.Join(t.TempDir(), "out")
	if err := l.Export(context.Background(), out); err != nil {
		t.Fatal(err)
	}
	b, err := os.ReadFile(filepath.Join(out, "events.json"))
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// TestDiskFills runs the script on disks from hardly enough for a record
// upward. Nothing acknowledged is lost, no half picture or backup is left,
// reading goes on, and after room is made writing goes on without a restart.
// Trust plan (ii).
func TestDiskFills(t *testing.T) {
	importable := exported(t)
	refusedAtAll, wentThrough, stopped := 0, 0, 0
	step := max(4, 5000 / *rooms / 4 * 4)
	for i := range *rooms {
		kb := 130 + i*step
		disk := smallDisk(t, kb)
		dir := filepath.Join(disk, "data")
		l, err := ledger.Open(dir, ledger.Options{Now: time.Now})
		if err != nil {
			if kb > 400 {
				t.Errorf("%d KB: %v", kb, err)
			}
			syscall.Unmount(disk, syscall.MNT_DETACH)
			continue
		}
		s := script{t: t, l: l}
		s.all(importable)
		for _, err := range s.refused {
			if errors.Is(err, ledger.ErrStopped) {
				stopped++
			} else if !errors.Is(err, ledger.ErrNoSpace) {
				t.Errorf("%d KB: refused, but not for want of room: %v", kb, err)
			}
		}
		if len(s.refused) > 0 {
			refusedAtAll++
			if i == *rooms-1 {
				t.Logf("%d KB, the last: %v", kb, s.refused)
			}
		} else {
			wentThrough++
		}
		if _, err := l.Events(context.Background()); err != nil {
			t.Errorf("%d KB: reading: %v", kb, err)
		}
		// room is made; writing goes on in the same program
		if err := syscall.Mount("none", disk, "tmpfs", syscall.MS_REMOUNT, fmt.Sprintf("size=%dk", kb+8<<10)); err != nil {
			t.Fatal(err)
		}
		before := len(s.refused)
		s.note(1)
		s.picture(9)
		if _, err := l.Backup(context.Background(), ""); s.keep(err) {
			s.backups++
		}
		if n := len(s.refused); n > before {
			t.Errorf("%d KB: with room again: %v", kb, s.refused[before:])
		}
		s.look(dir, kb)
		syscall.Unmount(disk, syscall.MNT_DETACH)
	}
	t.Logf("%d disks: %d refused something, %d had room for all; writing stopped for good %d times", *rooms, refusedAtAll, wentThrough, stopped)
	if stopped > 0 {
		t.Errorf("a full disk stopped writing for good %d times; it must go on once there is room", stopped)
	}
	if refusedAtAll < *rooms/4 || wentThrough == 0 {
		t.Errorf("%d refused and %d went through: the sizes miss the edge", refusedAtAll, wentThrough)
	}
}

// look closes the record and compares it with what was acknowledged.
func (s *script) look(dir string, kb int) {
	s.t.Helper()
	events, err := s.l.Events(context.Background())
	if err != nil {
		s.t.Errorf("%d KB: %v", kb, err)
	}
	have := map[string]int{}
	for _, e := range events {
		have[e.ID]++
	}
	for _, id := range s.acked {
		if have[id] != 1 {
			s.t.Errorf("%d KB: acknowledged and there %d times", kb, have[id])
		}
	}
	for _, d := range s.pictures {
		if _, err := ledger.OpenPhoto(dir, d, false); err != nil {
			s.t.Errorf("%d KB: an acknowledged picture: %v", kb, err)
		}
	}
	s.l.Close()
	if r := ledger.Audit(dir); !r.OK {
		s.t.Errorf("%d KB: %s", kb, r.Words())
	}
	if n := len(ledger.Backups(dir)); n < s.backups {
		s.t.Errorf("%d KB: %d backups were called proven, %d are there", kb, s.backups, n)
	}
	filepath.Walk(dir, func(path string, info os.FileInfo, err error) error {
		if err == nil && strings.HasPrefix(info.Name(), ".making-") && strings.Contains(path, "photos") {
			s.t.Errorf("%d KB: half a picture is left: %s", kb, path)
		}
		return nil
	})
}

// TestFileMayGrowNoFurther runs the child under a limit on the size of its
// files, which the system tells in another way than a full disk.
func TestFileMayGrowNoFurther(t *testing.T) {
	path := child(t, "")
	for _, blocks := range []int{600, 900, 1500} { // of 512 or 1024 bytes, as the shell counts
		k := killer{path: path, dir: filepath.Join(t.TempDir(), "data"), acked: map[string]string{}}
		cmd := exec.Command("sh", "-c", fmt.Sprintf("ulimit -f %d; exec \"$0\" -clients 2 -count 2000 append \"$1\"", blocks), path, k.dir)
		out, err := cmd.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		n := k.read(out, make(chan bool, 1))
		err = cmd.Wait()
		if err == nil {
			t.Errorf("%d blocks: the child never met the limit in %d entries", blocks, n)
		}
		if n < 20 {
			t.Errorf("%d blocks: only %d acknowledged: the test saw too little", blocks, n)
		}
		for _, f := range k.faults() {
			t.Errorf("%d blocks: %s", blocks, f)
		}
		t.Logf("%d blocks: %d acknowledged before the limit (%v), all there", blocks, n, err)
	}
}
