package crash

import (
	"bufio"
	"context"
	"encoding/hex"
	"fmt"
	"io"
	"math/rand/v2"
	"os/exec"
	"strings"
	"testing"
	"time"

	"bedweek/internal/ledger"
)

// perFolder is how many kills one record goes through before a new one is begun.
const perFolder = 25

// TestKill9 kills the child 0 to 40 ms after an acknowledgement. Nothing that
// was acknowledged may be lost or doubled, and the audit must be clean.
func TestKill9(t *testing.T) {
	t.Logf("seed %d", *seed)
	k := killer{path: child(t, ""), chance: rand.New(rand.NewPCG(*seed, 0))}
	begun := time.Now()
	slowest := time.Duration(0)
	for i := range *kills {
		if i%perFolder == 0 {
			k.dir, k.acked = t.TempDir(), map[string]string{}
		}
		if err := k.kill(i%10 == 9); err != nil {
			t.Fatalf("kill %d: %v", i, err)
		}
		opening := time.Now()
		for _, fault := range k.faults() {
			t.Errorf("kill %d (seed %d): %s", i, *seed, fault)
		}
		slowest = max(slowest, time.Since(opening))
		if t.Failed() {
			return
		}
	}
	t.Logf("%d kills, %d entries acknowledged, %d found whole but not acknowledged, slowest restart with audit %v, %v in all",
		*kills, k.total, k.more, slowest.Round(time.Millisecond), time.Since(begun).Round(time.Second))
	if k.total < *kills {
		t.Errorf("only %d entries were acknowledged in %d kills: the test saw too little", k.total, *kills)
	}
}

// mostKills is how often the planted fault may get away: a kill must fall
// between the answer and the commit. Ten are enough on an idle machine; on a
// busy one forty once were not.
const mostKills = 400

// TestKill9CatchesEarlyAnswers runs the same on a child that answers before
// the commit. It must lose something.
func TestKill9CatchesEarlyAnswers(t *testing.T) {
	k := killer{path: child(t, "mutant_ack_early"), chance: rand.New(rand.NewPCG(*seed, 1)), dir: t.TempDir(), acked: map[string]string{}}
	for i := range mostKills {
		if err := k.kill(false); err != nil {
			t.Fatalf("kill %d: %v", i, err)
		}
		if f := k.faults(); len(f) > 0 {
			t.Logf("caught at kill %d: %s", i, f[0])
			return
		}
	}
	t.Errorf("%d kills of a child that answers before the commit lost nothing: this test cannot see that fault", mostKills)
}

type killer struct {
	path, dir string
	chance    *rand.Rand
	acked     map[string]string // id to digest, in this folder
	total     int               // acknowledged in all folders
	more      int               // stored and whole, though the kill came before the answer
}

// kill starts the child, waits for an acknowledgement and kills it.
func (k *killer) kill(backup bool) error {
	args := []string{"-seed", fmt.Sprint(k.chance.Uint64()), "-clients", "8", "-pictures"}
	if backup {
		args = append(args, "-backup")
	}
	cmd := exec.Command(k.path, append(args, "append", k.dir)...)
	var errors strings.Builder
	cmd.Stderr = &errors
	out, err := cmd.StdoutPipe()
	if err != nil {
		return err
	}
	if err := cmd.Start(); err != nil {
		return err
	}
	first := make(chan bool, 1)
	read := make(chan int)
	go func() { read <- k.read(out, first) }()
	select {
	case ok := <-first:
		if !ok {
			<-read
			cmd.Wait()
			return fmt.Errorf("the child ended without an acknowledgement: %s", errors.String())
		}
	case <-time.After(30 * time.Second):
		cmd.Process.Kill()
		return fmt.Errorf("no acknowledgement in 30 s")
	}
	time.Sleep(time.Duration(k.chance.Int64N(int64(40 * time.Millisecond))))
	if err := cmd.Process.Kill(); err != nil {
		return err
	}
	k.total += <-read
	cmd.Wait()
	if strings.Contains(errors.String(), "panic") {
		return fmt.Errorf("the child broke: %s", errors.String())
	}
	return nil
}

// read takes down acknowledgements until the pipe ends. A line cut off by the
// kill was never read by anybody and does not count.
func (k *killer) read(out io.Reader, first chan<- bool) (n int) {
	r := bufio.NewReader(out)
	for {
		line, err := r.ReadString('\n')
		if err != nil {
			if n == 0 {
				first <- false
			}
			return n
		}
		if f := strings.Fields(line); len(f) == 3 && f[0] == "ack" {
			if n == 0 {
				first <- true
			}
			if _, before := k.acked[f[1]]; !before {
				n++
			}
			k.acked[f[1]] = f[2]
		}
	}
}

// faults audits the record, opens it and looks for every acknowledged entry.
func (k *killer) faults() (faults []string) {
	if r := ledger.Audit(k.dir); !r.OK {
		faults = append(faults, "audit: "+r.Words())
	}
	l, err := ledger.Open(k.dir, ledger.Options{Now: time.Now, Program: "crash test"})
	if err != nil {
		return append(faults, "open: "+err.Error())
	}
	defer l.Close()
	events, err := l.Events(context.Background())
	if err != nil {
		return append(faults, "read: "+err.Error())
	}
	stored := map[string]int{}
	for _, e := range events {
		stored[e.ID]++
		want, acked := k.acked[e.ID]
		switch {
		case !acked:
			k.more++
			k.acked[e.ID] = hex.EncodeToString(e.Digest) // from now on it must stay
		case want != hex.EncodeToString(e.Digest):
			faults = append(faults, "changed: "+e.ID)
		}
	}
	for id := range k.acked {
		if n := stored[id]; n != 1 {
			faults = append(faults, fmt.Sprintf("acknowledged entry %s is there %d times", id, n))
		}
	}
	return faults
}
