package crash

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"bedweek/internal/ledger"
)

// TestDiskIsAskedBeforeTheAnswer traces the child and looks, between each
// request and its acknowledgement, for a write to the log and an fsync of the
// log that began after the last such write and ended well.
func TestDiskIsAskedBeforeTheAnswer(t *testing.T) {
	calls := traced(t, "", "-backup", "-pictures")
	asked, faults := auditOrder(calls)
	if len(faults) > 0 {
		t.Errorf("%d of %d acknowledgements came too early; the first: %s", len(faults), asked, faults[0])
	}
	if asked < *asks {
		t.Errorf("only %d acknowledgements were traced, want %d", asked, *asks)
	}
	seen := map[string]int{}
	for _, kind := range []string{".db", ".small.jpg", ".jpg"} {
		n, faults := auditNames(calls, kind)
		if seen[kind] = n; n == 0 {
			t.Errorf("no rename to a name in %s was traced", kind)
		}
		for _, f := range faults {
			t.Error(f)
		}
	}
	t.Logf("%d acknowledgements, each after an fsync of its writes; files synced, renamed, folder synced: %v", asked, seen)
}

// The same audit must catch the planted faults.
func TestDiskAuditCatchesPlantedFaults(t *testing.T) {
	for _, tag := range []string{"mutant_ack_early", "mutant_sync_off", "mutant_sync_normal"} {
		asked, faults := auditOrder(traced(t, tag))
		if len(faults) == 0 {
			t.Errorf("%s: the audit found nothing wrong in %d acknowledgements", tag, asked)
			continue
		}
		t.Logf("%s: caught at %d of %d acknowledgements: %s", tag, len(faults), asked, faults[0])
	}
}

// TestFailedSyncEndsWriting makes the n-th fsync of each thread fail, and all
// after it. Nothing may be acknowledged any more, and the child must end.
func TestFailedSyncEndsWriting(t *testing.T) {
	strace := tracer(t)
	path := child(t, "")
	places := []int{1, 2, 3, 5, 8, 13, 30}
	if *fails > 0 {
		places = nil
		for n := range *fails {
			places = append(places, n+1)
		}
	}
	for _, n := range places {
		dir := filepath.Join(t.TempDir(), "data")
		trace := filepath.Join(t.TempDir(), "trace")
		cmd := exec.Command(strace, "-f", "-y", "-s", "160", "-ttt", "-o", trace, "-e", "trace=fsync,fdatasync,write,exit_group",
			"-e", fmt.Sprintf("inject=fsync,fdatasync:error=EIO:when=%d+", n), path, "-clients", "1", "-count", "400", "-marks", "append", dir)
		err := within(t, 60*time.Second, cmd)
		code := -1
		if cmd.ProcessState != nil {
			code = cmd.ProcessState.ExitCode()
		}
		if code != 3 && code != 1 {
			t.Errorf("fsync %d fails: the child ended with %d (%v), want 3, or 1 before it was open", n, code, err)
		}
		failed, acks := 0.0, map[string]string{}
		for _, c := range readTrace(t, trace) {
			switch {
			case c.injected:
				if failed == 0 {
					failed = c.at
				}
			case c.ack != "" && failed > 0:
				t.Errorf("fsync %d fails: %s was acknowledged after it", n, c.ack)
			case c.ack != "":
				acks[c.ack] = c.digest
			case c.name == "exit_group" && c.at-failed > 1:
				t.Errorf("fsync %d fails: the child went on for %.1f s", n, c.at-failed)
			}
		}
		if failed == 0 {
			t.Errorf("fsync %d never failed: the test saw nothing", n)
		}
		k := killer{dir: dir, acked: acks}
		if len(acks) > 0 && code != 3 {
			t.Errorf("fsync %d fails: the child ended with %d, want 3: writing did not stop for good", n, code)
		}
		for _, f := range k.restart() {
			t.Errorf("fsync %d fails: after a restart: %s", n, f)
		}
		if n == 30 && len(acks) < 10 {
			t.Errorf("fsync 30 fails: only %d acknowledged before it, want 10: the test saw too little", len(acks))
		}
		t.Logf("fsync %d fails: %d acknowledged before it, all there after a restart", n, len(acks))
	}
}

// restart is faults, for a folder that may not have got as far as a record:
// such a folder must begin one.
func (k *killer) restart() []string {
	if len(k.acked) == 0 {
		l, err := ledger.Open(k.dir, ledger.Options{Now: time.Now, Program: "crash test"})
		if err != nil {
			return []string{"open: " + err.Error()}
		}
		if err := l.Close(); err != nil {
			return []string{"close: " + err.Error()}
		}
	}
	return k.faults()
}

// call is one call to the system, by the lines where it began and ended.
type call struct {
	thread, name, path, target string
	began, ended               int
	at                         float64 // seconds
	ok, injected               bool
	req, ack, digest           string
	args                       string
}

func traced(t *testing.T, tag string, more ...string) []call {
	t.Helper()
	strace := tracer(t)
	trace := filepath.Join(t.TempDir(), "trace")
	args := append([]string{"-f", "-y", "-x", "-s", "70000", "-ttt", "-o", trace,
		"-e", "trace=fsync,fdatasync,pwrite64,write,ftruncate,rename,renameat,renameat2", child(t, tag)}, more...)
	args = append(args, "-clients", "1", "-count", fmt.Sprint(*asks), "-marks", "append", filepath.Join(t.TempDir(), "data"))
	cmd := exec.Command(strace, args...)
	var words strings.Builder
	cmd.Stderr = &words
	if err := within(t, 120*time.Second, cmd); err != nil {
		t.Fatalf("tracing the child: %v: %s", err, words.String())
	}
	return readTrace(t, trace)
}

// readTrace reads strace's lines: "THREAD TIME name(args) = result", or the
// same cut in two by "<unfinished ...>" and "<... name resumed>".
func readTrace(t *testing.T, path string) []call {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out []call
	open := map[string]int{}
	sc := bufio.NewScanner(f)
	sc.Buffer(nil, 1<<20)
	for n := 1; sc.Scan(); n++ {
		thread, rest, _ := strings.Cut(strings.TrimSpace(sc.Text()), " ")
		stamp, rest, _ := strings.Cut(strings.TrimSpace(rest), " ")
		rest = strings.TrimSpace(rest)
		if strings.HasPrefix(rest, "<... ") {
			if i, ok := open[thread]; ok {
				out[i].ended = n
				out[i].finish(rest)
				delete(open, thread)
			}
			continue
		}
		name, args, ok := strings.Cut(rest, "(")
		if !ok || strings.HasPrefix(rest, "---") || strings.HasPrefix(rest, "+++") {
			continue
		}
		c := call{thread: thread, name: name, began: n, ended: n, args: args}
		fmt.Sscanf(stamp, "%g", &c.at)
		c.arguments(args)
		if strings.Contains(rest, "<unfinished ...>") {
			open[thread] = len(out)
			c.ended = 1 << 30
		} else {
			c.finish(rest)
		}
		out = append(out, c)
	}
	return out
}

func (c *call) finish(rest string) {
	i := strings.LastIndex(rest, " = ")
	c.ok = i >= 0 && !strings.HasPrefix(rest[i:], " = -")
	c.injected = strings.Contains(rest, "(INJECTED)")
}

func (c *call) arguments(args string) {
	if strings.HasPrefix(c.name, "rename") {
		if q := strings.Split(args, `"`); len(q) >= 4 {
			c.path, c.target = q[1], q[3]
		}
		return
	}
	if _, after, ok := strings.Cut(args, "<"); ok {
		c.path, _, _ = strings.Cut(after, ">")
	}
	if _, text, ok := strings.Cut(args, `"`); ok && c.name == "write" {
		line, _, _ := strings.Cut(text, `\n`)
		f := strings.Fields(line)
		switch {
		case len(f) == 3 && f[0] == "ack":
			c.ack, c.digest = f[1], f[2]
		case len(f) == 2 && f[0] == "req":
			c.req = f[1]
		}
	}
}

func (c call) syncs() bool { return c.name == "fsync" || c.name == "fdatasync" }

// auditOrder goes from each request to its first acknowledgement. A request
// whose entries were here already writes nothing and is left out.
func auditOrder(calls []call) (asked int, faults []string) {
	seen := map[string]bool{}
	for i := 0; i < len(calls); i++ {
		if calls[i].req == "" || seen[calls[i].req] {
			continue
		}
		seen[calls[i].req] = true
		lastWrite, open, ack := -1, false, -1
		for j := i + 1; j < len(calls); j++ {
			if calls[j].ack != "" {
				ack = j
				break
			}
			if calls[j].name == "pwrite64" && strings.HasSuffix(calls[j].path, "ledger.db-wal") {
				lastWrite = j
			}
		}
		if ack < 0 {
			continue
		}
		asked++
		synced := false
		if lastWrite >= 0 {
			open = calls[lastWrite].ended > calls[ack].began
			for _, c := range calls[lastWrite+1 : ack] {
				if c.syncs() && strings.HasSuffix(c.path, "ledger.db-wal") && c.ok &&
					c.began > calls[lastWrite].ended && c.ended < calls[ack].began {
					synced = true
				}
			}
		}
		switch {
		case lastWrite < 0:
			faults = append(faults, calls[ack].ack+": nothing was written before it was acknowledged")
		case open || !synced:
			faults = append(faults, calls[ack].ack+": the disk was not asked to keep it before it was acknowledged")
		}
	}
	return asked, faults
}

// auditNames looks, for each rename to a name of a kind (a proven copy, a
// picture), for an fsync of the file before and of its folder after.
func auditNames(calls []call, kind string) (n int, faults []string) {
	for i, c := range calls {
		if !strings.HasPrefix(c.name, "rename") || !strings.HasSuffix(c.target, kind) {
			continue
		}
		n++
		file, folder := false, false
		for j, d := range calls {
			if d.syncs() && d.ok && j < i && d.path == c.path {
				file = true
			}
			if d.syncs() && d.ok && j > i && d.path == filepath.Dir(c.target) {
				folder = true
			}
		}
		if !file || !folder {
			faults = append(faults, fmt.Sprintf("%s: synced before its name: %v, folder synced after: %v", filepath.Base(c.target), file, folder))
		}
	}
	return n, faults
}
