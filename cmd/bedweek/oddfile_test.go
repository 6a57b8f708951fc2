package main

import (
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/photo"
	"bedweek/internal/weather"
)

// TestOddFiles: trust plan (v). Every importer, whatever bytes it is given:
// no panic, either something read or a fault in words, never half of it kept,
// memory as before. Bytes are good files spoiled, cut, repeated, and noise.
func TestOddFiles(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	crops := garden.FromBook(book)
	g, faults := garden.Read("south", demo.SouthYAML, crops)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	dir := t.TempDir()
	full := t.TempDir()
	now := func() time.Time { return g.From.Time() }
	src, err := ledger.Open(full, ledger.Options{Now: now})
	if err != nil {
		t.Fatal(err)
	}
	defer src.Close()
	for i := range 20 {
		e, err := ledger.NewEvent("phone", g.From, ledger.Sown, ledger.Started{Crop: "kale", Space: "bed", Count: i, Note: "a <b> é"})
		if err == nil {
			_, err = src.Append(context.Background(), e)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	proof, err := src.Backup(context.Background(), "")
	if err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(t.TempDir(), "out")
	if err := src.Export(context.Background(), out); err != nil {
		t.Fatal(err)
	}
	read := func(path string) []byte {
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		return b
	}
	events, copied, manifest := read(filepath.Join(out, "events.json")), read(proof.Path), read(manifestOf(t, proof.Path))
	into, err := ledger.Open(dir, ledger.Options{Now: now})
	if err != nil {
		t.Fatal(err)
	}
	defer into.Close()
	spoilt := t.TempDir()
	words := func(n int) error {
		if n == 0 {
			return nil
		}
		return fmt.Errorf("%d faults", n)
	}
	importers := []struct {
		name string
		good []byte
		most int // tries at most, for those that are slow
		read func(b []byte) (got bool, err error)
	}{
		{"garden file", demo.SouthYAML, 0, func(b []byte) (bool, error) {
			g, f := garden.Read("odd", b, crops)
			return g != nil, words(len(f))
		}},
		{"daily weather", demo.SeattleCSV[:6000], 0, func(b []byte) (bool, error) {
			r, f := weather.Read("odd", bytes.NewReader(b), siteOf(g))
			return r != nil, words(len(f))
		}},
		{"monthly weather", demo.SouthNormalsCSV, 0, func(b []byte) (bool, error) {
			r, f := weather.ReadNormals("odd", bytes.NewReader(b), siteOf(g))
			return r != nil, words(len(f))
		}},
		{"hourly weather", []byte("date,temperature\n2010-01-01T01:00:00,4\n2010-01-01T02:00:00,3.5\n"), 0, func(b []byte) (bool, error) {
			r, f := weather.ReadHourly("odd", bytes.NewReader(b))
			return r != nil, words(len(f))
		}},
		{"picture", aPhoto(t), 0, func(b []byte) (bool, error) {
			k, err := photo.Read(b)
			return len(k.JPEG) > 0, err
		}},
		{"exported record", events, 0, func(b []byte) (bool, error) {
			before, _ := into.Head()
			n, err := into.Import(context.Background(), bytes.NewReader(b))
			after, _ := into.Head()
			if err != nil && after != before || err == nil && int(after-before) != n {
				return true, fmt.Errorf("half taken over: %d entries, said %d, %w", after-before, n, err)
			}
			return err == nil, err
		}},
		{"backup", copied, 1000, func(b []byte) (bool, error) {
			path := filepath.Join(spoilt, proof.File)
			os.WriteFile(path, b, 0o600)
			os.WriteFile(manifestOf(t, path), manifest, 0o600)
			_, err := ledger.VerifyBackup(path)
			if err == nil && !bytes.Equal(b, copied) {
				return true, fmt.Errorf("a changed backup was proven")
			}
			return err == nil, err
		}},
		{"backup's manifest", manifest, 1000, func(b []byte) (bool, error) {
			path := filepath.Join(spoilt, proof.File)
			os.WriteFile(path, copied, 0o600)
			os.WriteFile(manifestOf(t, path), b, 0o600)
			_, err := ledger.VerifyBackup(path)
			return err == nil, err
		}},
	}
	for _, im := range importers {
		t.Run(strings.ReplaceAll(im.name, " ", "-"), func(t *testing.T) {
			r := rand.New(rand.NewPCG(5, uint64(len(im.good))))
			if got, err := im.read(im.good); !got {
				t.Fatalf("the good one is refused: %v", err)
			}
			var m runtime.MemStats
			runtime.GC()
			runtime.ReadMemStats(&m)
			held, peak := m.HeapAlloc, uint64(0)
			tries, taken := *odd, 0
			if im.most > 0 {
				tries = min(tries, im.most)
			}
			for i := range tries {
				b := oddBytes(r, im.good)
				got, err := tried(t, im.read, b)
				if !got && err == nil {
					t.Fatalf("neither read nor a fault: %.300q", b)
				}
				if got && err != nil && (strings.Contains(err.Error(), "half taken over") || strings.Contains(err.Error(), "was proven")) {
					t.Fatalf("%v for %.300q", err, b)
				}
				if got {
					taken++
				}
				if i%50 == 0 {
					runtime.ReadMemStats(&m)
					peak = max(peak, m.HeapAlloc)
				}
			}
			runtime.GC()
			runtime.ReadMemStats(&m)
			if m.HeapAlloc > held+heldMost {
				t.Errorf("%d MB are held, %d MB at the start", m.HeapAlloc>>20, held>>20)
			}
			if peak > 512<<20 {
				t.Errorf("%d MB at once", peak>>20)
			}
			t.Logf("%d tries, %d still read; heap %d MB before, %d MB at most", tries, taken, held>>20, peak>>20)
		})
	}
	if rep := ledger.Audit(dir); !rep.OK {
		t.Errorf("after all that: %s", rep.Words())
	}
}

func tried(t *testing.T, read func([]byte) (bool, error), b []byte) (got bool, err error) {
	t.Helper()
	defer func() {
		if p := recover(); p != nil {
			t.Fatalf("panic %v for %.300q", p, b)
		}
	}()
	return read(b)
}

// oddBytes spoils a good file, or makes one up.
func oddBytes(r *rand.Rand, good []byte) []byte {
	switch r.IntN(12) {
	case 0:
		b := make([]byte, r.IntN(3000))
		for i := range b {
			b[i] = byte(r.Uint32())
		}
		return b
	case 1:
		return []byte(oddValue(r))
	case 2:
		return bytes.Repeat(good, r.IntN(12))
	}
	return mutated(r, good)
}

// manifestOf finds the manifest beside a backup.
func manifestOf(t *testing.T, backup string) string {
	t.Helper()
	stem := strings.TrimSuffix(backup, ".db")
	for _, c := range []string{stem + ".json", backup + ".json", stem + ".manifest.json"} {
		if _, err := os.Stat(c); err == nil {
			return c
		}
	}
	return stem + ".json"
}
