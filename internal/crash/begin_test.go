package crash

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// TestKilledAtTheFirstStart kills the child at each write to the disk of its
// first start, and once more at each removal of a name. A record so cut off
// holds nothing yet: the audit calls it no damage, and the next start begins it.
func TestKilledAtTheFirstStart(t *testing.T) {
	strace, path := tracer(t), child(t, "")
	u := upgrade{t: t}
	for _, calls := range []string{"pwrite64", "unlink,unlinkat"} {
		n := 1
		for ; ; n++ {
			dir := filepath.Join(t.TempDir(), "data")
			cmd := exec.Command(strace, "-f", "-o", "/dev/null", "-e", "trace="+calls, "-e", fmt.Sprintf("inject=%s:signal=KILL:when=%d", calls, n), path, "open", dir)
			if within(t, 60*time.Second, cmd) == nil {
				break
			}
			_, err := os.Stat(filepath.Join(dir, "ledger.db"))
			if v := u.verdict(path, dir); err == nil && !v.AuditOK || v.Refused != "" {
				t.Errorf("killed at the %d. %s of the first start: %+v", n, calls, v)
			}
		}
		t.Logf("killed at each of %d calls: %s", n-1, calls)
		if n < 2 || calls == "pwrite64" && n < 10 {
			t.Errorf("only %d calls of %s at the first start: the test saw too little", n-1, calls)
		}
	}
}
