package crash

import (
	"bufio"
	"bytes"
	"encoding/json"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

type verdict struct {
	AuditOK bool   `json:"audit_ok"`
	Refused string `json:"refused"`
	Rows    string `json:"rows"`
	Words   string `json:"words"`
}

// TestOneBitTurned turns one bit of the file in each of many copies. Each
// copy is refused, or found by the audit, or serves every row as it was.
func TestOneBitTurned(t *testing.T) {
	r := turnBits(t, "", *flips)
	t.Logf("%d bits turned (seed %d): %d found by the audit and refused at start, %d touched no row, %d served wrong rows", *flips, *seed, r.found, r.nothing, r.wrong)
	if r.wrong > 0 {
		t.Errorf("%d copies served wrong rows in silence", r.wrong)
	}
	if r.disagree > 0 {
		t.Errorf("%d copies were found by the audit and still opened", r.disagree)
	}
	if r.changed > 0 {
		t.Errorf("%d damaged files were changed by looking at them", r.changed)
	}
	if r.found < *flips/4 {
		t.Errorf("only %d of %d were found: the bits hit little, the test saw too little", r.found, *flips)
	}
}

// TestOneBitTurnedNeedsTheChain runs the same with digests and chain off: most
// changed words must then go through, or the test above proves nothing of them.
func TestOneBitTurnedNeedsTheChain(t *testing.T) {
	r := turnBits(t, "mutant_no_chain", *flips)
	t.Logf("without digests and chain: %d of %d served wrong rows", r.wrong, *flips)
	if r.wrong < *flips/4 {
		t.Errorf("only %d of %d went through without digests and chain; want at least a quarter", r.wrong, *flips)
	}
}

// TestLogDamaged kills a child, so that its log is left, and spoils the log:
// single bits, cuts, taken away, another record's. SQLite itself ends a log at
// the first frame that does not fit, in silence.
func TestLogDamaged(t *testing.T) {
	path := child(t, "")
	whole := left(t, path)
	log := whole["ledger.db-wal"]
	if len(log) < 10000 {
		t.Fatalf("the log left has %d bytes: too little to spoil", len(log))
	}
	chance := rand.New(rand.NewPCG(*seed, 3))
	var spoilt []map[string][]byte
	with := func(wal []byte) {
		c := map[string][]byte{"ledger.db": whole["ledger.db"], "ledger.head": whole["ledger.head"]}
		if wal != nil {
			c["ledger.db-wal"] = wal
		}
		spoilt = append(spoilt, c)
	}
	for range *flips / 4 {
		b := bytes.Clone(log)
		b[chance.IntN(len(b))] ^= 1 << chance.IntN(8)
		with(b)
		with(log[:chance.IntN(len(log))])
	}
	with(nil)
	with(left(t, path)["ledger.db-wal"])
	r := judge(t, path, whole, spoilt)
	t.Logf("%d logs spoilt: %d found, %d touched no row, %d served wrong rows", len(spoilt), r.found, r.nothing, r.wrong)
	if r.wrong > 0 || r.disagree > 0 {
		t.Errorf("%d served wrong rows in silence, %d were found by the audit and still opened", r.wrong, r.disagree)
	}
	if r.found < len(spoilt)/2 {
		t.Errorf("only %d of %d were found: the test saw too little", r.found, len(spoilt))
	}
}

// TestPagesLost cuts the file off, and fills pages with zeros.
func TestPagesLost(t *testing.T) {
	path := child(t, "")
	whole := filled(t, path)
	data := whole["ledger.db"]
	chance := rand.New(rand.NewPCG(*seed, 4))
	var spoilt []map[string][]byte
	for range *flips / 5 {
		spoilt = append(spoilt, map[string][]byte{"ledger.db": data[:chance.IntN(len(data))], "ledger.head": whole["ledger.head"]})
		b := bytes.Clone(data)
		page := chance.IntN(len(b)/4096) * 4096
		clear(b[page : page+4096])
		spoilt = append(spoilt, map[string][]byte{"ledger.db": b, "ledger.head": whole["ledger.head"]})
	}
	r := judge(t, path, whole, spoilt)
	t.Logf("%d files cut or zeroed: %d found, %d touched no row, %d served wrong rows", len(spoilt), r.found, r.nothing, r.wrong)
	if r.found != len(spoilt) {
		t.Errorf("%d of %d were found, want all", r.found, len(spoilt))
	}
	if r.changed > 0 {
		t.Errorf("%d damaged files were changed by looking at them", r.changed)
	}
}

type tally struct{ found, nothing, wrong, disagree, changed int }

func turnBits(t *testing.T, tag string, n int) tally {
	t.Helper()
	path := child(t, tag)
	whole := filled(t, path)
	chance := rand.New(rand.NewPCG(*seed, 2))
	var spoilt []map[string][]byte
	for range n {
		b := bytes.Clone(whole["ledger.db"])
		b[chance.IntN(len(b))] ^= 1 << chance.IntN(8)
		spoilt = append(spoilt, map[string][]byte{"ledger.db": b, "ledger.head": whole["ledger.head"]})
	}
	return judge(t, path, whole, spoilt)
}

// judge compares what spoilt records show with what the whole one shows.
func judge(t *testing.T, path string, whole map[string][]byte, spoilt []map[string][]byte) (r tally) {
	t.Helper()
	good := checks(t, path, put(t, whole))[0]
	if !good.AuditOK || good.Refused != "" {
		t.Fatalf("the whole record: %+v", good)
	}
	var dirs []string
	for _, s := range spoilt {
		dirs = append(dirs, put(t, s))
	}
	for i, v := range checks(t, path, dirs...) {
		after, err := os.ReadFile(filepath.Join(dirs[i], "ledger.db"))
		if err != nil {
			t.Fatal(err)
		}
		if v.Refused != "" && !bytes.Equal(after, spoilt[i]["ledger.db"]) {
			r.changed++
		}
		switch {
		case !v.AuditOK && v.Refused == "":
			r.disagree++
			t.Logf("found by the audit and opened:\n%s", v.Words)
		case !v.AuditOK || v.Refused != "":
			r.found++
		case v.Rows == good.Rows:
			r.nothing++
		default:
			r.wrong++
		}
	}
	return r
}

// filled returns the files of a record that was closed in order.
func filled(t *testing.T, path string) map[string][]byte {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "whole")
	if out, err := exec.Command(path, "-clients", "4", "-count", "150", "append", dir).CombinedOutput(); err != nil {
		t.Fatalf("filling a record: %v: %s", err, out)
	}
	return take(t, dir)
}

// left returns the files of a record whose program was killed at rest, all it
// wrote acknowledged. Killed in mid-write the log may end in an entry nobody
// was promised, and losing that one is no fault.
func left(t *testing.T, path string) map[string][]byte {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "left")
	cmd := exec.Command(path, "-clients", "4", "-count", "12", "-wait", "append", dir)
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	idle := false
	for sc := bufio.NewScanner(out); !idle && sc.Scan(); {
		idle = sc.Text() == "idle"
	}
	if !idle {
		t.Fatal("the child ended before it came to rest")
	}
	if err := cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	_ = cmd.Wait() // killed, as wanted
	return take(t, dir)
}

func take(t *testing.T, dir string) map[string][]byte {
	t.Helper()
	out := map[string][]byte{}
	for _, name := range []string{"ledger.db", "ledger.db-wal", "ledger.head"} {
		b, err := os.ReadFile(filepath.Join(dir, name))
		if err == nil {
			out[name] = b
		} else if !os.IsNotExist(err) {
			t.Fatal(err)
		}
	}
	return out
}

func put(t *testing.T, files map[string][]byte) string {
	t.Helper()
	dir := t.TempDir()
	for name, content := range files {
		if err := os.WriteFile(filepath.Join(dir, name), content, 0o600); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

func checks(t *testing.T, path string, dirs ...string) []verdict {
	t.Helper()
	cmd := exec.Command(path, append([]string{"check"}, dirs...)...)
	var out, words bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &words
	if err := cmd.Run(); err != nil {
		t.Fatalf("checking: %v: %s", err, words.String())
	}
	var all []verdict
	sc := bufio.NewScanner(&out)
	sc.Buffer(nil, 1<<20)
	for sc.Scan() {
		var v verdict
		if err := json.Unmarshal(sc.Bytes(), &v); err != nil {
			t.Fatal(err)
		}
		all = append(all, v)
	}
	if len(all) != len(dirs) {
		t.Fatalf("%d verdicts for %d records", len(all), len(dirs))
	}
	return all
}
