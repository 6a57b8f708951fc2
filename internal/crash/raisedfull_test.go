//go:build linux

package crash

import (
	"fmt"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"bedweek/internal/ledger"
)

// TestDiskFillsWhileRaised brings a record over two newer layouts on disks from
// hardly enough for the record upward. Each refusal says that there is no room,
// and leaves the old record whole or a newer one whole; once there is room the
// next start brings it up to date. Trust plan (viii), disk full.
func TestDiskFillsWhileRaised(t *testing.T) {
	u := newUpgrade(t, nextLayouts, 100)
	at, refused := map[string]int{}, 0
	n := max(12, *rooms/4)
	for i := range n {
		said, faults := u.crammed(t, i, n)
		for _, f := range faults {
			t.Errorf("disk %d of %d: %s", i, n, f)
		}
		if said != "" {
			refused++
			if !strings.Contains(said, ledger.ErrNoSpace.Error()) {
				t.Errorf("disk %d of %d: refused, but not for want of room: %s", i, n, said)
			}
		}
		at[u.layout]++
	}
	t.Logf("%d disks: %d refused, found at layout %v", n, refused, at)
	if refused < n/4 || refused == n || at["1"] == 0 || at["2"] == 0 || at["3"] == 0 {
		t.Errorf("%d of %d refused, layouts %v: the sizes miss the edge", refused, n, at)
	}
}

// TestDiskFillsWhileRaisedCatchesEarlyMark runs the same on a child that writes
// the number of a layout before it makes the layout.
func TestDiskFillsWhileRaisedCatchesEarlyMark(t *testing.T) {
	u := newUpgrade(t, nextLayouts+",mutant_mark_early", 100)
	for i := range 12 {
		if _, f := u.crammed(t, i, 12); len(f) > 0 {
			t.Logf("caught at disk %d: %s", i, f[0])
			return
		}
	}
	t.Error("a child that marks a layout before it is made left every record whole: this test cannot see that fault")
}

// crammed brings a copy up to date on disk i of n, the last with room for all,
// then makes room. It returns why that was refused and what is wrong after.
func (u *upgrade) crammed(t *testing.T, i, n int) (said string, faults []string) {
	kb := u.needsKB * (i + 1) / n
	disk := smallDisk(t, u.holdsKB+kb)
	defer syscall.Unmount(disk, syscall.MNT_DETACH)
	dir := filepath.Join(disk, "data")
	u.copyTo(dir)
	if out, err := exec.Command(u.new, "open", dir).CombinedOutput(); err != nil {
		said = string(out)
	}
	if err := syscall.Mount("none", disk, "tmpfs", syscall.MS_REMOUNT, fmt.Sprintf("size=%dk", u.holdsKB+2*u.needsKB)); err != nil {
		t.Fatal(err)
	}
	return said, u.left(dir)
}
