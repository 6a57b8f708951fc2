//go:build linux

package crash

import (
	"bufio"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"syscall"
	"testing"
)

// TestNothingLeavesThisMachine traces the whole program while its pages are
// read: it listens on this machine's own address only, and asks nobody.
func TestNothingLeavesThisMachine(t *testing.T) {
	doors, asked := traffic(t)
	if len(doors) == 0 {
		t.Error("no door was seen: the trace shows too little")
	}
	for _, d := range doors {
		if !strings.Contains(d, `"127.0.0.1"`) && !strings.Contains(d, `"::1"`) && !strings.Contains(d, `"::ffff:127.0.0.1"`) {
			t.Errorf("a door that others can reach: %s", d)
		}
	}
	if len(asked) > 0 {
		t.Errorf("it turned to somebody %d times, first: %s", len(asked), asked[0])
	}
	t.Logf("%d doors, all on this machine; nobody was asked", len(doors))
}

// The same trace must show a door of the home network, and weather asked for.
// Every such call is made to fail, so that nothing leaves here either.
func TestTrafficIsSeen(t *testing.T) {
	doors, asked := traffic(t, "-online", "-home", "-home-on", "127.0.0.2", "-home-port", "0")
	if !strings.Contains(strings.Join(doors, "\n"), `"127.0.0.2"`) {
		t.Errorf("a door on 127.0.0.2 was opened and not seen: %q", doors)
	}
	if len(asked) == 0 {
		t.Error("the weather was to be asked for, and nothing was seen")
	}
	t.Logf("%d doors, turned to somebody %d times", len(doors), len(asked))
}

var pagesAt = regexp.MustCompile(`http://127\.0\.0\.1:\d+`)

// traffic serves a garden, reads some pages, and returns the calls that opened
// a door and those that turned to somebody.
func traffic(t *testing.T, more ...string) (doors, asked []string) {
	t.Helper()
	strace := tracer(t)
	program, trace := filepath.Join(t.TempDir(), "bedweek"), filepath.Join(t.TempDir(), "trace")
	if out, err := exec.Command("go", "build", "-o", program, "../../cmd/bedweek").CombinedOutput(); err != nil {
		t.Fatalf("building the program: %v: %s", err, out)
	}
	args := []string{"-f", "-s", "160", "-o", trace, "-e", "trace=connect,bind,sendto,sendmsg", "-e", "inject=connect,sendto,sendmsg:error=ENETUNREACH",
		program, "serve", "-port", "0", "-garden", "../../browser/small-garden.yaml", "-weather", "../../demo/south-normals.csv"}
	cmd := exec.Command(strace, append(append(args, more...), filepath.Join(t.TempDir(), "data"))...)
	cmd.Stderr = os.Stderr
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	out, err := cmd.StdoutPipe()
	if err == nil {
		err = cmd.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	base := ""
	for sc := bufio.NewScanner(out); base == "" && sc.Scan(); {
		base = pagesAt.FindString(sc.Text())
	}
	for _, path := range []string{"/", "/safe", "/weather", "/dry", "/entry/weather", "/export"} {
		r, err := http.Get(base + path)
		if err != nil || r.StatusCode != http.StatusOK {
			t.Errorf("GET %s: %v, %v", path, r, err)
			continue
		}
		r.Body.Close()
	}
	syscall.Kill(-cmd.Process.Pid, syscall.SIGTERM)
	_ = cmd.Wait() // stopped, as wanted
	b, err := os.ReadFile(trace)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(string(b), "\n") {
		switch {
		case !strings.Contains(line, "AF_INET"):
		case strings.Contains(line, " bind("):
			doors = append(doors, line)
		case !strings.Contains(line, "resumed>"):
			asked = append(asked, line)
		}
	}
	return doors, asked
}
