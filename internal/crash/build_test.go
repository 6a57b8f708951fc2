package crash

import (
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"sync"
	"testing"
	"time"
)

var (
	kills  = flag.Int("kills", 30, "how many times the child is killed; 300 in the check of each change")
	raised = flag.Int("raised", 10, "how many times the child is killed while it brings a record to a newer layout")
	fails  = flag.Int("fails", 0, "the last sync that is made to fail, each from the first on; 0 = seven of the first thirty")
	asks   = flag.Int("asks", 200, "how many requests are traced to the disk")
	flips  = flag.Int("flips", 100, "how many single bits are turned")
	seed   = flag.Uint64("seed", 1, "of the moments of killing and the bits turned")
)

// nextLayouts is the tag of a child that knows two layouts more.
const nextLayouts = "next_layouts"

// builds holds one child for each planted fault.
type builds struct {
	dir  string
	once map[string]func() (string, error)
}

var made builds

func TestMain(m *testing.M) {
	flag.Parse()
	dir, err := os.MkdirTemp("", "crash")
	if err != nil {
		panic(err)
	}
	made = builds{dir: dir, once: map[string]func() (string, error){}}
	for _, tag := range []string{"", "mutant_ack_early", "mutant_sync_off", "mutant_sync_normal", "mutant_no_chain", nextLayouts, nextLayouts + ",mutant_mark_early"} {
		made.once[tag] = sync.OnceValues(func() (string, error) { return build(dir, tag) })
	}
	code := m.Run()
	os.RemoveAll(dir)
	os.Exit(code)
}

func build(dir, tag string) (string, error) {
	out := filepath.Join(dir, "child_"+tag)
	args := []string{"build", "-o", out}
	if tag != "" {
		args = append(args, "-tags", tag)
	}
	cmd := exec.Command("go", append(args, "./child")...)
	cmd.Stderr = os.Stderr
	return out, cmd.Run()
}

// child returns the path of the child built with a planted fault, "" for none.
func child(t *testing.T, tag string) string {
	t.Helper()
	path, err := made.once[tag]()
	if err != nil {
		t.Fatalf("building the child %s: %v", tag, err)
	}
	return path
}

// tracer returns strace. Without it the test is skipped and says so, unless
// BEDWEEK_FULL=1 asks for every test.
func tracer(t *testing.T) string {
	t.Helper()
	path, err := exec.LookPath("strace")
	if err == nil {
		err = exec.Command(path, "-o", os.DevNull, "true").Run()
	}
	if err == nil {
		return path
	}
	if os.Getenv("BEDWEEK_FULL") == "1" {
		t.Fatalf("strace does not run here (%v), and BEDWEEK_FULL=1 wants every test", err)
	}
	t.Skipf("strace does not run here (%v): whether the disk is asked in time was not looked at", err)
	return ""
}

// within fails when cmd takes longer than d.
func within(t *testing.T, d time.Duration, cmd *exec.Cmd) error {
	t.Helper()
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	slow := time.AfterFunc(d, func() { cmd.Process.Kill() })
	defer slow.Stop()
	return cmd.Wait()
}
