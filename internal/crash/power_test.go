//go:build linux

package crash

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

var cuts = flag.Int("cuts", 40, "power cuts played on one trace; 500 in the full tier")

// TestPowerCut plays the traced writes again up to a random moment. What was
// not synced by then is kept or dropped by chance, and one such write is torn
// at a sector. Nothing acknowledged before the cut may be lost.
//
// Left out: names of files. They are taken to be there once the file is.
func TestPowerCut(t *testing.T) {
	p := newOutage(t, "")
	for i := range *cuts {
		for _, f := range p.cut(t.TempDir()) {
			t.Fatalf("cut %d (seed %d): %s", i, *seed, f)
		}
	}
	t.Logf("%d cuts: %d acknowledgements held; %d unsynced writes dropped, %d kept, %d torn", *cuts, p.held, p.dropped, p.kept, p.torn)
	if p.dropped < *cuts || p.kept == 0 || p.torn == 0 {
		t.Error("too little was unsynced: the test saw too little")
	}
}

// TestPowerCutCatchesPlantedFaults: who answers early, or never syncs, must
// lose something.
func TestPowerCutCatchesPlantedFaults(t *testing.T) {
	for _, tag := range []string{"mutant_ack_early", "mutant_sync_off", "mutant_sync_normal"} {
		p, caught := newOutage(t, tag), ""
		for range 400 {
			if f := p.cut(t.TempDir()); len(f) > 0 {
				caught = f[0]
				break
			}
		}
		if caught == "" {
			t.Errorf("%s: 400 cuts lost nothing: this test cannot see that fault", tag)
		}
		t.Logf("%s: %s", tag, caught)
	}
}

// lasting are the files that count after a cut. The lock then says nothing, the
// index of the log is made anew, and the journal of the record's making is gone
// before the first answer.
var lasting = map[string]bool{"ledger.db": true, "ledger.db-wal": true, "ledger.head": true}

// change is a write to a file, or its cutting to a length.
type change struct {
	file         string
	at           int64
	data         []byte // nil = cut to at
	began, ended int
}

type outage struct {
	chance              *rand.Rand
	calls               []call
	changes             []change
	last                int // line of the trace
	first               int // line of the first acknowledgement
	held, kept, dropped int
	torn                int
}

func newOutage(t *testing.T, tag string) *outage {
	t.Helper()
	p := &outage{chance: rand.New(rand.NewPCG(*seed, 5)), calls: traced(t, tag)}
	for _, c := range p.calls {
		p.last = max(p.last, c.began)
		if c.ack != "" && p.first == 0 {
			p.first = c.began
		}
		name := filepath.Base(c.path)
		if !lasting[name] {
			continue
		}
		if ch, err := readChange(c); err != nil {
			t.Fatal(err)
		} else if ch != nil {
			ch.file = name
			p.changes = append(p.changes, *ch)
		}
	}
	if len(p.changes) < 400 || p.first == 0 {
		t.Fatalf("%d writes were traced: too little to cut", len(p.changes))
	}
	return p
}

// readChange reads `5</path>, "bytes", 4096, 32)` and `5</path>, 0)`.
func readChange(c call) (*change, error) {
	ch := &change{began: c.began, ended: c.ended}
	rest := c.args
	switch c.name {
	case "pwrite64":
		from, to := strings.Index(rest, `"`), strings.LastIndex(rest, `"`)
		if from < 0 || to <= from || strings.HasPrefix(rest[to+1:], "...") {
			return nil, fmt.Errorf("a write was not traced whole: %.80s", c.args)
		}
		text, err := strconv.Unquote(rest[from : to+1])
		if err != nil {
			return nil, fmt.Errorf("reading a traced write: %w: %.80s", err, c.args)
		}
		ch.data, rest = []byte(text), rest[to+1:]
		_, err = fmt.Sscanf(rest, ", %d, %d", new(int), &ch.at)
		return ch, err
	case "ftruncate":
		_, err := fmt.Sscanf(rest[strings.Index(rest, ">")+1:], ", %d", &ch.at)
		return ch, err
	}
	return nil, nil
}

// cut plays one power cut into dir and returns what is wrong after it.
func (p *outage) cut(dir string) []string {
	now := p.first + 1 + p.chance.IntN(p.last-p.first)
	if ch := p.changes[p.chance.IntN(len(p.changes))]; ch.began > p.first && p.chance.IntN(2) == 0 {
		now = ch.began + 1 // right after a write, before its sync
	}
	synced := map[string]int{} // all that ended before this line is on the disk
	k := killer{dir: dir, acked: map[string]string{}}
	for _, c := range p.calls {
		switch {
		case c.began >= now:
		case c.ack != "":
			k.acked[c.ack] = c.digest
		case c.syncs() && c.ok && c.ended < now:
			name := filepath.Base(c.path)
			synced[name] = max(synced[name], c.began)
		}
	}
	p.held += len(k.acked)
	files, loose := map[string][]byte{}, []change(nil)
	for _, ch := range p.changes {
		switch {
		case ch.began >= now:
		case ch.ended < synced[ch.file]:
			files[ch.file] = ch.on(files[ch.file])
		default:
			loose = append(loose, ch)
		}
	}
	tear := -1
	for i, ch := range loose {
		if len(ch.data) > 512 && p.chance.IntN(2) == 0 {
			tear = i
		}
	}
	for i, ch := range loose {
		switch {
		case i == tear:
			ch.data = ch.data[:512*(1+p.chance.IntN((len(ch.data)-1)/512))]
			p.torn++
		case p.chance.IntN(2) == 0:
			p.dropped++
			continue
		default:
			p.kept++
		}
		files[ch.file] = ch.on(files[ch.file])
	}
	for name, b := range files {
		if err := os.WriteFile(filepath.Join(dir, name), b, 0o600); err != nil {
			return []string{err.Error()}
		}
	}
	return k.faults()
}

// on returns b with the change made.
func (ch change) on(b []byte) []byte {
	end := ch.at + int64(len(ch.data))
	if ch.data == nil && end < int64(len(b)) {
		return b[:end]
	}
	if grow := end - int64(len(b)); grow > 0 {
		b = append(b, make([]byte, grow)...)
	}
	copy(b[ch.at:], ch.data)
	return b
}
